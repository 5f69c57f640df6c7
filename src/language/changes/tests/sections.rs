//! How the changes of every section read.

use super::*;
use crate::spec::decimal::Decimal;
use crate::spec::document::*;

fn tenths(count: i64) -> Option<Decimal> {
    Some(Decimal::new(count, 1))
}

fn material<'a>(spec: &'a mut Spec, letter: &str) -> &'a mut Material {
    let materials = &mut spec.materials.materials;
    let found = materials.iter_mut().find(|it| it.letter == letter);
    found.expect("the example has it")
}

#[test]
fn the_header() {
    let said = says(|spec| {
        let header = &mut spec.header;
        header.name = "Shoal".to_owned();
        header.markets.push(Market::Us);
        header.languages.clear();
        header.origin.clear();
        header.year = Some(2027);
        header.asymmetric = true;
        header.measured = Some(MeasuringState::AfterWashes(3));
        header.exemptions.push(Exemption {
            code: "drawstring".to_owned(),
            reason: "Sewn in at both ends".to_owned(),
            by: "Iris Tide".to_owned(),
        });
    });
    for line in [
        "Name: Shoal half-zip → Shoal",
        "Sold in: United States added",
        "Made in: Vietnam → empty",
        "Measured: After garment finish → After 3 washes",
        "Left and right differ: no → yes",
        "Rules set aside, with the reason: empty → drawstring: Sewn in at both ends, Iris Tide",
    ] {
        assert!(said.iter().any(|it| it == line), "{line}: {said:#?}");
    }
}

#[test]
fn the_sizes() {
    let girth = |from, to| BodyRange {
        dimension: Some(BodyDimension::ChestGirth),
        from: mm(from),
        to: mm(to),
    };
    let said = says(|spec| {
        spec.sizes.sizes[0].body.push(girth(880, 920));
        spec.sizes.sizes[1].ages = Some(Ages { from: 36, to: 48 });
        spec.sizes.sizes[2].label = "medium".to_owned();
        spec.sizes.lengths.push(LengthOption {
            id: id("length-long"),
            code: "L34".to_owned(),
            label: "long".to_owned(),
        });
    });
    assert_eq!(
        said,
        [
            "XS: For a body of: empty → Chest girth: 88.0 cm (34 5/8 in) to 92.0 cm (36 1/4 in)",
            "S: For ages, months: empty → 36 to 48",
            "M medium: Label: empty → medium",
            "L34 long: length added",
        ]
    );
}

#[test]
fn the_drawings() {
    let said = says(|spec| {
        let drawing = &mut spec.drawings.drawings[0];
        (drawing.width, drawing.height) = (1200, 1350);
        drawing.markers[0].x = 1200;
        drawing.markers[1].item = id("point-a");
        drawing.markers.remove(2);
        drawing.blow_ups.push(BlowUp {
            id: id("circle"),
            drawing: drawing.id.clone(),
            at: Spot::default(),
            radius: 400,
        });
    });
    assert_eq!(
        said,
        [
            "Front: Picture (fingerprint): 800 × 900, 2d8d6 93177 → 1200 × 1350, 2d8d6 93177",
            "C Body length: letter removed on the drawing Front",
            "A Chest width: letter moved on the drawing Front: \
             50 % from the left, 38 % from the top → 12 % from the left, 38 % from the top",
            "A Chest width: on the drawing Front: \
             B Bottom width: 50 % from the left, 92 % from the top → \
             A Chest width: 50 % from the left, 92 % from the top",
            "Front: circle added on the drawing Front",
        ]
    );
}

#[test]
fn the_colourways() {
    let said = says(|spec| {
        let colourways = &mut spec.colourways;
        colourways.parts.remove(3);
        colourways.colourways[0].pieces = Some(400);
        let ink = colourways.cells.get_mut(&id("colourway-ink"));
        let ink = ink.expect("the example has it");
        ink.insert(id("part-2"), Cell::Natural {});
        for row in colourways.cells.values_mut() {
            row.remove(&id("part-4"));
        }
    });
    assert_eq!(
        said,
        [
            "P4 Neck tape: part removed",
            "INK Ink: Pieces: empty → 400",
            "P2 Rib of cuff and hem: Colour, in colourway INK Ink: \
             dyed to match P1 Main fabric → natural",
        ]
    );
}

#[test]
fn the_materials() {
    let said = says(|spec| {
        let jersey = material(spec, "F1");
        jersey.fabric.mass = tenths(3100);
        jersey.fabric.structure = Some(Structure::Knitted(Knitted {
            knit: "loopback".to_owned(),
            yarn: Some(Yarn {
                count: tenths(300),
                system: Some(YarnSystem::Ne),
                ply: Some(2),
            }),
            courses: tenths(145),
            tubular: true,
            ..Knitted::default()
        }));
        jersey.consumption.amount = tenths(12);
        jersey.consumption.by_size = [
            (id("size-l"), Decimal::new(13, 1)),
            (id("size-xl"), Decimal::new(14, 1)),
        ]
        .into();
        jersey.wastage = Some(Wastage {
            percent: tenths(50),
            basis: Some(WastageBasis::LossOfInput),
        });
        jersey.minimum = Some(Minimum {
            quantity: tenths(3000),
            unit: Some(Measured::Metre),
            level: Some(MinimumLevel::Colour),
        });
        jersey.care.wash = Some(Wash::Hand);
        jersey.evidence[0].report = "Bay Textile Laboratory, F1-2026-090".to_owned();
        let rib = material(spec, "F2");
        rib.composition[0].percent = tenths(930);
        rib.composition[1].percent = tenths(70);
        material(spec, "T2").parts.push(id("part-1"));
        spec.materials.materials.remove(2);
    });
    assert_eq!(
        said,
        [
            "T1 Coil zip: material removed",
            "F1 Brushed loopback jersey: Mass, g/m²: 320 → 310",
            "F1 Brushed loopback jersey: How it is made: empty → \
             Knitted: loopback, yarn Ne 30/2, courses per cm 14.5, tubular",
            "F1 Brushed loopback jersey: For one garment: 1.1 m → 1.2 m",
            "F1 Brushed loopback jersey: For one garment, by size: empty → L 1.3 m, XL 1.4 m",
            "F1 Brushed loopback jersey: Wastage: empty → 5 % lost of what is bought",
            "F1 Brushed loopback jersey: Minimum order: empty → 300 m for each colour",
            "F1 Brushed loopback jersey: Washing: Wash at 40 °C → Wash by hand, at most 40 °C",
            "F1 Brushed loopback jersey: Evidence, Azo dyes, report: \
             Bay Textile Laboratory, F1-2026-031 → Bay Textile Laboratory, F1-2026-090",
            "F2 2 × 2 rib: Composition: 95 % cotton, 5 % elastane → 93 % cotton, 7 % elastane",
            "T2 Twill tape: Parts: P1 Main fabric added",
        ]
    );
}

#[test]
fn of_a_value_for_each_size_those_that_differ_are_told() {
    let mut old = half_zip(Digest::of(b"front"));
    let amounts = |l: i64, xl: i64| {
        let amounts = [("size-m", 11), ("size-l", l), ("size-xl", xl)];
        let amounts = amounts.map(|(size, tenths)| (id(size), Decimal::new(tenths, 1)));
        amounts.into()
    };
    material(&mut old, "F1").consumption.by_size = amounts(12, 13);
    let says = |change: &dyn Fn(&mut Spec)| {
        let mut new = old.clone();
        change(&mut new);
        sentences(&old, &new)
    };
    assert_eq!(
        says(&|spec| material(spec, "F1").consumption.by_size = amounts(12, 14)),
        ["F1 Brushed loopback jersey: For one garment, by size, XL: 1.3 m → 1.4 m"]
    );
    assert_eq!(
        says(&|spec| material(spec, "F1").consumption.by_size = amounts(13, 14)),
        ["F1 Brushed loopback jersey: For one garment, by size: \
             L 1.2 m, XL 1.3 m → L 1.3 m, XL 1.4 m"]
    );
    let less = |spec: &mut Spec| {
        let by_size = &mut material(spec, "F1").consumption.by_size;
        by_size.remove(&id("size-l"));
    };
    assert_eq!(
        says(&less),
        ["F1 Brushed loopback jersey: For one garment, by size: L 1.2 m removed"]
    );
}

#[test]
fn what_a_fabric_is_made_of_is_told_member_by_member() {
    let mut old = half_zip(Digest::of(b"front"));
    let twill = |warp: i64, ends: i64| {
        Some(Structure::Woven(Woven {
            weave: "twill 2/1".to_owned(),
            warp: Some(Yarn {
                count: tenths(warp),
                system: Some(YarnSystem::Tex),
                ply: None,
            }),
            ends: tenths(ends),
            ..Woven::default()
        }))
    };
    material(&mut old, "F1").fabric.structure = twill(200, 400);
    let says = |structure| {
        let mut new = old.clone();
        material(&mut new, "F1").fabric.structure = structure;
        sentences(&old, &new)
    };
    assert_eq!(
        says(twill(250, 400)),
        ["F1 Brushed loopback jersey: How it is made, woven, warp: 20 tex → 25 tex"]
    );
    assert_eq!(
        says(twill(250, 380)),
        ["F1 Brushed loopback jersey: How it is made, woven: \
             warp 20 tex, threads per cm, warp 40 → warp 25 tex, threads per cm, warp 38"]
    );
    let knitted = Structure::Knitted(Knitted {
        knit: "jersey".to_owned(),
        ..Knitted::default()
    });
    assert_eq!(
        says(Some(knitted)),
        ["F1 Brushed loopback jersey: How it is made: \
             Woven: twill 2/1, warp 20 tex, threads per cm, warp 40 → Knitted: jersey"]
    );
}

#[test]
fn the_construction() {
    let said = says(|spec| {
        let callouts = &mut spec.construction.callouts;
        callouts[0].density = tenths(35);
        callouts[0].thread = None;
        callouts[2].letter = "2".to_owned();
        callouts.remove(1);
        spec.construction.lines[1].name = "Collar seam".to_owned();
    });
    assert_eq!(
        said,
        [
            "Collar seam: Name: Neck seam → Collar seam",
            "2 hem seam: callout removed",
            "1 neck seam: Stitches per cm: 4 → 3.5",
            "1 neck seam: Thread: T3 Sewing thread → empty",
            "2 zip: re-lettered: 3 → 2",
        ]
    );
}

#[test]
fn the_artwork() {
    let says = |edit: &dyn Fn(&mut Band)| says(|s| edit(&mut s.artwork.artworks[0].bands[0]));
    assert_eq!(
        says(&|band| band.distances[1].distance = Some(entered(88))),
        ["AW1 Wave: Size and place, from Neck seam to its top: \
             5 in (12.7 cm) → 5 1/2 in (14.0 cm)"]
    );
    assert_eq!(
        says(&|band| band.width = Some(entered(88))),
        ["AW1 Wave: Size and place, width: 1 1/4 in (3.2 cm) → 5 1/2 in (14.0 cm)"]
    );
    assert_eq!(
        says(&|band| {
            band.width = Some(entered(16));
            band.height = Some(entered(8));
        }),
        [
            "AW1 Wave: Size and place: 1 1/4 in (3.2 cm) × 5/8 in (1.6 cm) → \
             1 in (2.5 cm) × 1/2 in (1.3 cm)"
        ]
    );
    // What is no sixteenth is told as it was typed.
    assert_eq!(
        says(&|band| {
            band.from = Some(id("size-xs"));
            band.to = Some(id("size-m"));
            band.width = mm(25);
            band.distances.truncate(1);
        }),
        [
            "AW1 Wave: Size and place: 1 1/4 in (3.2 cm) × 5/8 in (1.6 cm), \
             from Centre front to its left (as it is read): 3 in (7.6 cm), \
             from Neck seam to its top: 5 in (12.7 cm) → \
             XS–M: 2.5 cm (1 in) × 5/8 in (1.6 cm), \
             from Centre front to its left (as it is read): 3 in (7.6 cm)"
        ]
    );
}

#[test]
fn an_artwork_drawn_again_is_one_line() {
    let said = says(|spec| {
        let artwork = &mut spec.artwork.artworks[0];
        artwork.file = Some(Digest::of(b"again"));
        artwork.pixels_across = Some(640);
        artwork.pixels_down = Some(320);
    });
    let again = Digest::of(b"again").fingerprint();
    let front = Digest::of(b"front").fingerprint();
    let wanted = format!("AW1 Wave: Picture (fingerprint): {front} → 640 × 320, {again}");
    assert_eq!(said, [wanted]);
}

#[test]
fn the_labels() {
    let said = says(|spec| {
        spec.labels.care.wash = Some(Wash::Normal30);
        let label = &mut spec.labels.labels[0];
        label.distances[0].distance = Some(entered(10));
        label.texts.push(LabelText {
            market: Some(Market::Eu),
            language: "de".to_owned(),
            text: "Baumwolle".to_owned(),
        });
        spec.labels.labels[1].contents.pop();
    });
    assert_eq!(
        said,
        [
            "Washing: Wash at 30 °C, mild → Wash at 30 °C",
            "L1 Brand label: Texts: empty → European Union, de: Baumwolle",
            "L1 Brand label: Distances, from Neck seam to its top: \
             1/2 in (1.3 cm) → 5/8 in (1.6 cm)",
            "L2 Care and composition label: Filled in by the program: Size removed",
        ]
    );
}

#[test]
fn the_packing() {
    let said = says(|spec| {
        let packing = &mut spec.packing;
        packing.carton.length = Some(entered(400));
        packing.steps.swap(0, 1);
        packing.ratio.push(RatioPack {
            id: id("pack-a"),
            name: "A".to_owned(),
            ..RatioPack::default()
        });
    });
    assert_eq!(
        said,
        [
            "Carton, length: 24 in (61.0 cm) → 25 in (63.5 cm)",
            "Put the size sticker on the front of the bag: moved in the list: place 2 → place 1",
            "A: ratio pack added",
        ]
    );
}
