//! Faults of parts, colourways, materials and construction.

use fellseam::spec::Decimal;
use fellseam::spec::document::*;

use super::spoil::*;
use super::{Fault, HALF_ZIP, JACKET, SHORTS, fault};

pub fn faults() -> Vec<Fault> {
    [colours(), fabrics(), trims(), callouts()].concat()
}

fn colours() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "part-letter-missing", "part-5", |s| {
            part(s, "5").letter.clear()
        }),
        fault(HALF_ZIP, "part-letter-twice", "part-5", |s| {
            part(s, "5").letter = "P4".to_owned();
        }),
        fault(HALF_ZIP, "part-name-missing", "part-5", |s| {
            part(s, "5").name.clear()
        }),
        fault(HALF_ZIP, "part-without-material", "part-7", |s| {
            material(s, "puller").parts.clear();
        }),
        fault(JACKET, "colourway-name-missing", "colourway-fern", |s| {
            let fern = colourway(s, "frn");
            fern.id = id("colourway-fern");
            fern.code.clear();
            fern.name.clear();
            let cells = &mut s.colourways.cells;
            let row = cells.remove(&id("colourway-frn")).expect("its cells");
            cells.insert(id("colourway-fern"), row);
        }),
        fault(JACKET, "colourway-code-twice", "colourway-frn", |s| {
            colourway(s, "frn").code = "sun".to_owned();
        }),
        fault(JACKET, "cell-empty", "part-10", |s| {
            let cells = s.colourways.cells.get_mut(&id("colourway-tde"));
            cells.expect("a colourway").remove(&id("part-10"));
        }),
        fault(JACKET, "cell-colour-unnamed", "part-10", |s| {
            let colour = colour(s, "colourway-sun", "part-10");
            colour.name.clear();
            colour.reference.clear();
        }),
        fault(SHORTS, "cell-screen-malformed", "part-3", |s| {
            colour(s, "colourway-pne", "part-3").screen = Some("chalk".to_owned());
        }),
        fault(SHORTS, "cell-match-missing", "part-3", |s| {
            cell(s, "colourway-pne", "part-3", matching("part-99"));
        }),
        // The mark is not there in this colourway.
        fault(SHORTS, "cell-match-none", "part-3", |s| {
            cell(s, "colourway-tde", "part-3", matching("part-12"));
        })
        .follows(&[("cell-match-none", "part-4")]),
        fault(SHORTS, "cell-match-cycle", "part-3", |s| {
            cell(s, "colourway-tde", "part-3", matching("part-4"));
        })
        .follows(&[("cell-match-cycle", "part-4")]),
    ]
}

fn fabrics() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "composition-missing", "material-f4", |s| {
            material(s, "f4").composition.clear();
        }),
        fault(HALF_ZIP, "composition-total", "material-f2", |s| {
            material(s, "f2").composition[1].percent = Some(Decimal::new(45, 1));
        }),
        fault(SHORTS, "share-incomplete", "material-f2", |s| {
            material(s, "f2").composition[1].fibre = None;
        }),
        fault(SHORTS, "component-missing", "material-f2", |s| {
            material(s, "f2").component = None;
        }),
        fault(HALF_ZIP, "claim-hundred", "material-f2", |s| {
            material(s, "f2").name = "2 × 2 rib, 100 % cotton".to_owned();
        }),
        fault(HALF_ZIP, "fibre-twice", "material-f2", |s| {
            material(s, "f2").composition[1].fibre = Some(Fibre::Cotton);
        }),
        fault(HALF_ZIP, "virgin-wool", "material-f2", |s| {
            material(s, "f2").composition[1].fibre = Some(Fibre::VirginWool);
        }),
        fault(SHORTS, "mass-disagrees", "material-f1", |s| {
            material(s, "f1").fabric.mass = whole(140);
        }),
        fault(HALF_ZIP, "minimum-unmet", "material-f1", |s| {
            let minimum = material(s, "f1").minimum.as_mut();
            minimum.expect("a minimum").quantity = whole(1000);
        }),
        fault(JACKET, "fabrics-none", "", |s| {
            for material in &mut s.materials.materials {
                if material.is_fabric() {
                    material.kind = Some(MaterialKind::Other);
                }
            }
        }),
    ]
}

fn trims() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "material-kind-missing", "material-thread", |s| {
            material(s, "thread").kind = None;
        }),
        fault(HALF_ZIP, "material-unused", "material-shoulder-tape", |s| {
            callout(s, "3").tape = None;
        }),
        fault(HALF_ZIP, "zip-size-missing", "material-pocket-zip", |s| {
            let zip = material(s, "pocket-zip");
            zip.zip.opening = None;
            zip.length = None;
        }),
        fault(SHORTS, "letter-missing", "material-tip", |s| {
            material(s, "tip").letter.clear()
        }),
        fault(SHORTS, "letter-twice", "material-tip", |s| {
            material(s, "tip").letter = "T2".to_owned();
        }),
        fault(SHORTS, "item-name-missing", "material-tip", |s| {
            material(s, "tip").name.clear()
        }),
        fault(SHORTS, "reference-gone", "material-front-zip", |s| {
            material(s, "front-zip").zip.opening = Some(id("point-zz"));
        }),
        fault(SHORTS, "reference-gone", "material-elastic", |s| {
            let elastic = material(s, "elastic");
            elastic.length_by_size.insert(id("size-xs"), mm(630));
        }),
    ]
}

fn callouts() -> Vec<Fault> {
    vec![
        fault(JACKET, "callout-text-missing", "callout-8", |s| {
            callout(s, "8").text.clear()
        }),
        fault(JACKET, "stitch-unknown", "callout-8", |s| {
            callout(s, "8").stitch = "310+".to_owned();
        }),
        fault(JACKET, "seam-code-unlike", "callout-8", |s| {
            callout(s, "8").seam_code = "2.04.06".to_owned();
        }),
        fault(JACKET, "line-gone", "callout-8", |s| {
            callout(s, "8").line = Some(id("line-zz"));
        }),
        fault(JACKET, "reference-gone", "callout-8", |s| {
            callout(s, "8").detail = Some(id("drawing-zz"));
        }),
        fault(JACKET, "letter-twice", "callout-8", |s| {
            callout(s, "8").letter = "7".to_owned()
        }),
    ]
}
