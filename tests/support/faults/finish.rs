//! Faults of artwork, labels, packing and safety.

use fellseam::spec::document::*;

use super::spoil::*;
use super::{Fault, HALF_ZIP, JACKET, SHORTS, fault};

pub fn faults() -> Vec<Fault> {
    [artworks(), labels(), packing(), cords(), evidence()].concat()
}

fn artworks() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "artwork-size-missing", "artwork-emblem", |s| {
            artwork(s).bands[1].height = None;
        }),
        fault(
            HALF_ZIP,
            "artwork-distances-missing",
            "artwork-emblem",
            |s| {
                artwork(s).bands[1].distances.truncate(1);
            },
        ),
        fault(HALF_ZIP, "artwork-size-uncovered", "artwork-emblem", |s| {
            artwork(s).bands.truncate(1);
        }),
        fault(HALF_ZIP, "artwork-size-twice", "artwork-emblem", |s| {
            artwork(s).bands[0].to = Some(id("size-xl"));
        }),
        fault(JACKET, "artwork-file-missing", "artwork-heron", |s| {
            artwork(s).file = None
        }),
        fault(JACKET, "artwork-coarse", "artwork-heron", |s| {
            let heron = artwork(s);
            heron.form = Some(ArtworkForm::Raster);
            heron.pixels_across = Some(1800);
            heron.pixels_down = Some(1400);
        }),
        fault(JACKET, "artwork-live-text", "artwork-heron", |s| {
            artwork(s).unsafe_text = true
        }),
        fault(SHORTS, "text-too-small", "artwork-mark", |s| {
            artwork(s).smallest_text = Some(mm(1));
        }),
        fault(SHORTS, "line-gone", "artwork-mark", |s| {
            artwork(s).bands[0].distances[0].line = Some(id("line-zz"));
        }),
        fault(SHORTS, "reference-gone", "artwork-mark", |s| {
            artwork(s).drawing = Some(id("drawing-zz"));
        }),
    ]
}

fn labels() -> Vec<Fault> {
    vec![
        // Where it is not due, it is customary that the same label tells the care.
        fault(HALF_ZIP, "composition-label-missing", "", |s| {
            let care = label(s, "care");
            care.kind = Some(LabelKind::Other);
            care.contents.clear();
        })
        .follows(&[("care-customary", "")]),
        fault(HALF_ZIP, "care-customary", "", |s| {
            s.labels.care = Care::default()
        }),
        fault(JACKET, "care-harsh", "", |s| {
            s.labels.care.wash = Some(Wash::Normal60)
        }),
        fault(SHORTS, "care-missing", "", |s| {
            s.labels.care.wash = None;
            s.labels.care.dry_clean = None;
        }),
        fault(SHORTS, "care-label-missing", "", |s| {
            let care = label(s, "care");
            care.kind = Some(LabelKind::Other);
            care.contents.retain(|it| *it != LabelContent::Care);
        }),
        fault(SHORTS, "origin-label-missing", "", |s| {
            let contents = &mut label(s, "care").contents;
            contents.retain(|it| *it != LabelContent::Origin);
        }),
        fault(JACKET, "label-size-missing", "label-name", |s| {
            label(s, "name").width = None
        }),
        fault(JACKET, "label-place-missing", "label-name", |s| {
            label(s, "name").distances.clear();
        }),
        fault(JACKET, "label-language-missing", "label-name", |s| {
            label(s, "name").texts.retain(|it| it.language != "fr");
        }),
        fault(JACKET, "text-too-small", "label-care", |s| {
            label(s, "care").text_height = Some(mm(1));
        }),
        fault(JACKET, "letter-missing", "label-brand", |s| {
            label(s, "brand").letter.clear()
        }),
    ]
}

fn packing() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "ratio-empty", "ratio-twelve", |s| {
            s.packing.ratio[0].pieces.clear();
        }),
        fault(HALF_ZIP, "ratio-remainder", "ratio-twelve", |s| {
            colourway(s, "oat").pieces = Some(610);
        }),
        fault(HALF_ZIP, "reference-gone", "ratio-twelve", |s| {
            s.packing.ratio[0].colourway = Some(id("colourway-zz"));
        }),
        fault(HALF_ZIP, "id-twice", "step-1", |s| {
            s.packing.steps[1].id = id("step-1");
        }),
    ]
}

fn cords() -> Vec<Fault> {
    use CordEnds::{Free, Loop, Toggled};
    use CordPlace::{Back, Hem, HoodNeck, Sleeve};
    vec![
        fault(JACKET, "cord-place-missing", "material-hood-elastic", |s| {
            hood_cord(s, None, Some(Loop));
        }),
        // It is sold in both markets.
        fault(JACKET, "cord-hood-neck-us", "material-hood-elastic", |s| {
            hood_cord(s, Some(HoodNeck), Some(Loop));
        })
        .follows(&[("cord-hood-neck-eu", "material-hood-elastic")]),
        fault(JACKET, "cord-hood-neck-eu", "material-hood-elastic", |s| {
            s.header.markets = vec![Market::Eu];
            hood_cord(s, Some(HoodNeck), Some(Loop));
        }),
        fault(JACKET, "cord-free-ends-eu", "material-hood-elastic", |s| {
            s.header.markets = vec![Market::Eu];
            hood_cord(s, Some(HoodNeck), Some(Free));
        })
        .follows(&[("cord-hood-neck-eu", "material-hood-elastic")]),
        fault(JACKET, "cord-exempted", "material-hood-elastic", |s| {
            hood_cord(s, Some(HoodNeck), Some(Loop));
            s.header.exemptions = ["cord-hood-neck-us", "cord-hood-neck-eu"]
                .map(|code| Exemption {
                    code: code.to_owned(),
                    reason: "a closed ring of elastic, sewn in all round".to_owned(),
                    by: "the owner".to_owned(),
                })
                .into();
        }),
        fault(JACKET, "cord-free-missing", "material-hood-elastic", |s| {
            hood_cord(s, Some(Hem), Some(Loop)).free = None;
        }),
        fault(JACKET, "cord-long-us", "material-hood-elastic", |s| {
            hood_cord(s, Some(Hem), Some(Loop)).free = Some(mm(90));
        }),
        fault(JACKET, "cord-toggled-us", "material-hood-elastic", |s| {
            hood_cord(s, Some(Hem), Some(Toggled));
        }),
        fault(JACKET, "cord-loose-us", "material-hood-elastic", |s| {
            hood_cord(s, Some(Hem), Some(Loop)).bartacked = false;
        }),
        fault(JACKET, "cord-long-eu", "material-hood-elastic", |s| {
            hood_cord(s, Some(Sleeve), Some(Loop)).free = Some(mm(90));
        }),
        fault(JACKET, "cord-back-eu", "material-hood-elastic", |s| {
            hood_cord(s, Some(Back), Some(Loop));
        }),
    ]
}

fn evidence() -> Vec<Fault> {
    use EvidenceKind::{AzoDyes, Lead, Nickel, SmallParts};
    vec![
        fault(JACKET, "evidence-small-parts", "material-snap", |s| {
            without(s, "snap", SmallParts);
        }),
        fault(JACKET, "evidence-lead", "material-reflective", |s| {
            without(s, "reflective", Lead);
        }),
        fault(HALF_ZIP, "evidence-nickel", "material-front-zip", |s| {
            without(s, "front-zip", Nickel);
        }),
        fault(SHORTS, "evidence-azo-dyes", "material-f2", |s| {
            without(s, "f2", AzoDyes)
        }),
        fault(SHORTS, "evidence-flammability", "material-f1", |s| {
            material(s, "f1").fabric.raised = true;
        }),
        fault(JACKET, "evidence-sleepwear", "material-f1", |s| {
            s.header.worn = Some(Worn::Sleepwear);
        })
        .follows(&[
            ("evidence-sleepwear", "material-f2"),
            ("evidence-sleepwear", "material-f3"),
        ]),
    ]
}
