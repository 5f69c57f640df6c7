use super::*;
use crate::spec::document::*;
use crate::spec::id::Digest;
use crate::spec::units::Unit;

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn entered(mm: i64) -> Entered {
    Entered {
        nm: Length::nm(mm * 1_000_000),
        unit: Unit::Mm,
    }
}

fn distance(line: &str, anchor: Anchor, mm: i64) -> Distance {
    Distance {
        line: Some(id(line)),
        anchor: Some(anchor),
        distance: Some(entered(mm)),
    }
}

fn band(width: i64, height: i64, distances: Vec<Distance>) -> Band {
    Band {
        width: Some(entered(width)),
        height: Some(entered(height)),
        distances,
        ..Band::default()
    }
}

fn line(name: &str, text: &str, kind: LineKind) -> Line {
    Line {
        id: id(name),
        name: text.to_owned(),
        kind: Some(kind),
    }
}

fn point(name: &str, base: i64, measure: Option<Measure>, start: &str, end: &str) -> Point {
    Point {
        id: id(name),
        measure,
        basis: Some(Basis::Half),
        base: Some(entered(base)),
        how: HowToMeasure {
            start: start.to_owned(),
            end: end.to_owned(),
            ..HowToMeasure::default()
        },
        ..Point::default()
    }
}

fn drawn(item: &str, from: (u16, u16), to: (u16, u16), via: Option<(u16, u16)>) -> DimensionLine {
    let spot = |(x, y)| Spot { x, y };
    DimensionLine {
        id: id(&format!("line-of-{item}")),
        item: id(item),
        from: spot(from),
        to: spot(to),
        via: via.map(spot),
    }
}

/// A body 500 mm wide on a square drawing of 1000 mm: 10 units are a millimetre.
fn spec() -> Spec {
    let mut spec = Spec::default();
    spec.header.base_size = Some(id("m"));
    spec.sizes.sizes = ["s", "m", "l"]
        .map(|size| Size {
            id: id(size),
            code: size.to_uppercase(),
            ..Size::default()
        })
        .into();
    spec.construction.lines = vec![
        line("centre", "Centre front", LineKind::CentreLine),
        line("neck", "Neck seam", LineKind::Seam),
        line("side", "Side seam", LineKind::Seam),
        line("hem", "Hem edge", LineKind::Fold),
        line("vent", "Edge of the side vent", LineKind::Fold),
    ];
    spec.points.points = vec![
        point(
            "chest",
            500,
            Some(Measure::Chest),
            "side, below armhole",
            "other side, straight",
        ),
        point(
            "length",
            700,
            None,
            "neck seam at centre front",
            "hem edge, straight down",
        ),
        point("outer", 600, None, "armhole", "hem edge, along the side"),
    ];
    spec.drawings.drawings = vec![Drawing {
        id: id("front"),
        view: View::Front,
        title: String::new(),
        file: Digest::of(b"front"),
        width: 1000,
        height: 1000,
        markers: vec![Marker {
            id: id("marker"),
            item: id("print"),
            x: 6500,
            y: 3000,
        }],
        lines: vec![
            drawn("chest", (2500, 3000), (7500, 3000), None),
            drawn("length", (5000, 1000), (5000, 8000), None),
            drawn("outer", (7500, 2000), (8500, 8000), None),
        ],
        blow_ups: Vec::new(),
    }];
    spec
}

fn artwork(band: Band) -> Artwork {
    Artwork {
        id: id("print"),
        drawing: Some(id("front")),
        bands: vec![band],
        ..Artwork::default()
    }
}

fn placed(spec: &Spec, band: Band) -> Placed {
    let values = |point: &ItemId, _: &ItemId| Some(spec.point(point)?.base?.nm);
    let artwork = artwork(band);
    place(spec, &artwork, &artwork.bands[0], &values).expect("it has a size")
}

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() < 0.05
}

#[test]
fn a_line_lies_on_the_side_that_its_distance_is_taken_to() {
    let distances = vec![
        distance("centre", Anchor::Left, 50),
        distance("hem", Anchor::Bottom, 65),
    ];
    let plan = plan(&spec(), &band(40, 30, distances)).unwrap();
    assert_eq!((plan.width, plan.height), (40.0, 30.0));
    let [left, below] = plan.legs.as_slice() else {
        panic!("two distances");
    };
    assert_eq!(
        (left.axis, left.line_at, left.anchor_at),
        (Axis::Across, -50.0, (0.0, 15.0))
    );
    assert_eq!(
        (below.axis, below.line_at, below.anchor_at),
        (Axis::Down, 95.0, (20.0, 30.0))
    );
    assert!(plan.is_whole());
    assert_eq!(plan.extent(), (-50.0, 0.0, 40.0, 95.0));
}

#[test]
fn a_distance_to_the_middle_goes_the_way_that_is_left() {
    let axes = |distances: Vec<Distance>| -> Vec<Axis> {
        let plan = plan(&spec(), &band(40, 30, distances)).unwrap();
        plan.legs.iter().map(|leg| leg.axis).collect()
    };
    let centre = distance("centre", Anchor::Centre, 0);
    assert_eq!(axes(vec![centre.clone()]), [Axis::Across]);
    // From the hem to the middle, beside the centre line: upwards; beside a top distance: across.
    let hem = distance("hem", Anchor::Centre, 200);
    assert_eq!(axes(vec![centre, hem.clone()]), [Axis::Across, Axis::Down]);
    let neck = distance("neck", Anchor::Top, 60);
    assert_eq!(axes(vec![neck, hem]), [Axis::Down, Axis::Across]);
}

#[test]
fn half_a_distance_makes_no_leg_and_no_size_no_plan() {
    let mut half = distance("neck", Anchor::Top, 60);
    half.line = None;
    let both = distance("hem", Anchor::Bottom, 65);
    let plan_ = plan(&spec(), &band(40, 30, vec![half, both])).unwrap();
    assert_eq!(plan_.legs.len(), 1);
    assert!(!plan_.is_whole());
    assert_eq!(plan(&spec(), &band(0, 30, Vec::new())), None);
    assert_eq!(plan(&spec(), &Band::default()), None);
}

#[test]
fn a_drawing_is_as_large_as_most_of_its_lines_say() {
    let spec = spec();
    let values = |point: &ItemId, _: &ItemId| Some(spec.point(point)?.base?.nm);
    let drawing = &spec.drawings.drawings[0];
    let found = scale(&spec, drawing, &id("m"), &values).unwrap();
    // The outer line is drawn 6083 units long and measures 600 mm: 1 % more than the others say.
    assert!(near(found.units_per_mm, 10.0), "{found:?}");
    assert_eq!((found.agree, found.of), (3, 3));

    // In a size that is a tenth larger, the same picture is a tenth smaller: by the lines together,
    // though one of them is the same in all sizes.
    let larger = |point: &ItemId, size: &ItemId| {
        let base = spec.point(point)?.base?.nm.as_nm();
        let grows = *size == id("l") && *point != id("outer");
        Some(Length::nm(if grows { base / 20 * 23 } else { base }))
    };
    let found = scale(&spec, drawing, &id("l"), &larger).unwrap();
    assert!(near(found.units_per_mm, 10.0 / 1.1), "{found:?}");
    assert_eq!(found.agree, 3);
}

#[test]
fn lines_that_contradict_each_other_give_no_scale() {
    let mut spec = spec();
    for (point, base) in spec.points.points.iter_mut().zip([500, 1000, 2000]) {
        point.base = Some(entered(base));
    }
    let values = |point: &ItemId, _: &ItemId| Some(spec.point(point)?.base?.nm);
    let drawing = &spec.drawings.drawings[0];
    assert_eq!(scale(&spec, drawing, &id("m"), &values), None);
    let none = |_: &ItemId, _: &ItemId| None;
    assert_eq!(scale(&spec, drawing, &id("m"), &none), None);
}

#[test]
fn curved_and_stretched_lines_say_nothing_of_the_scale() {
    let mut spec = spec();
    spec.points.points[0].how.stretched = true;
    spec.drawings.drawings[0].lines[1].via = Some(Spot { x: 1, y: 1 });
    spec.points.points[2].basis = Some(Basis::Full);
    let values = |point: &ItemId, _: &ItemId| Some(spec.point(point)?.base?.nm);
    let found = scale(&spec, &spec.drawings.drawings[0], &id("m"), &values).unwrap();
    // Only the outer one is left, and a full 600 mm lies 300 mm wide.
    assert_eq!(found.of, 1);
    assert!(near(found.units_per_mm, 6082.76 / 300.0), "{found:?}");
}

#[test]
fn a_plan_is_laid_by_the_centre_line_and_by_a_seam_where_a_line_ends() {
    let distances = vec![
        distance("centre", Anchor::Left, 100),
        distance("neck", Anchor::Top, 150),
    ];
    let flat = placed(&spec(), band(80, 60, distances)).flat.unwrap();
    // The middle of the chest line is at 500 mm, the neck seam at 100 mm.
    assert!(near(flat.left, 600.0) && near(flat.top, 250.0), "{flat:?}");
    assert!(near(flat.width, 1000.0) && near(flat.height, 1000.0));
    assert_eq!(flat.across, Found::Middle);
    assert_eq!(flat.down, Found::Line(id("length")));
}

#[test]
fn a_seam_that_runs_askew_is_taken_where_the_artwork_is() {
    let distances = vec![
        distance("side", Anchor::Right, 50),
        distance("hem", Anchor::Bottom, 450),
    ];
    let flat = placed(&spec(), band(80, 60, distances)).flat.unwrap();
    // Its middle is 320 mm below the upper edge of the picture, where the outer line has come
    // 120/600 of its way from 750 mm to 850 mm.
    assert!(near(flat.top, 290.0), "{flat:?}");
    assert!(near(flat.left, 770.0 - 130.0), "{flat:?}");
    assert_eq!(flat.across, Found::Line(id("outer")));
}

#[test]
fn what_no_line_tells_is_told_by_the_letter() {
    let mut spec = spec();
    let distances = vec![
        distance("vent", Anchor::Left, 100),
        distance("neck", Anchor::Top, 150),
    ];
    let band = band(80, 60, distances);
    let flat = placed(&spec, band.clone()).flat.unwrap();
    assert_eq!(flat.across, Found::Letter);
    assert!(near(flat.left, 610.0), "{flat:?}");
    spec.drawings.drawings[0].markers.clear();
    assert_eq!(placed(&spec, band).flat, Err(NoFlat::NoPlace));
}

#[test]
fn a_letter_far_from_where_the_line_leads_is_followed_and_told_of() {
    let mut spec = spec();
    spec.drawings.drawings[0].markers[0].y = 6000;
    let distances = vec![
        distance("centre", Anchor::Left, 100),
        distance("neck", Anchor::Top, 150),
    ];
    let flat = placed(&spec, band(80, 60, distances)).flat.unwrap();
    // By the neck seam it lies from 250 to 310 mm; the letter stands at 600 mm.
    let Found::LetterInstead { point, away } = flat.down else {
        panic!("{flat:?}");
    };
    assert_eq!(point, id("length"));
    assert!(near(away, 290.0), "{away}");
    assert!(near(flat.top, 570.0));
}

#[test]
fn a_distance_to_the_middle_is_turned_to_the_side_of_the_letter() {
    let distances = vec![
        distance("centre", Anchor::Centre, 150),
        distance("neck", Anchor::Top, 150),
    ];
    let right = placed(&spec(), band(80, 60, distances.clone()));
    assert!(near(right.flat.unwrap().left, 500.0 + 150.0 - 40.0));
    assert_eq!(right.plan.legs[0].line_at, 40.0 - 150.0);
    let mut spec = spec();
    spec.drawings.drawings[0].markers[0].x = 3500;
    let left = placed(&spec, band(80, 60, distances));
    assert!(near(left.flat.unwrap().left, 500.0 - 150.0 - 40.0));
    assert_eq!(left.plan.legs[0].line_at, 40.0 + 150.0);
    assert!(!left.plan.legs[0].either_side);
}

#[test]
fn why_there_is_no_flat_is_told() {
    let mut spec = spec();
    let both = band(80, 60, vec![distance("centre", Anchor::Left, 100)]);
    spec.drawings.drawings[0].lines.clear();
    assert_eq!(placed(&spec, both.clone()).flat, Err(NoFlat::NoScale));
    spec.drawings.drawings.clear();
    assert_eq!(placed(&spec, both).flat, Err(NoFlat::NoDrawing));
}

#[test]
fn a_band_is_shown_in_the_base_size_or_in_its_first() {
    let mut band = band(80, 60, Vec::new());
    assert_eq!(size_of(&spec(), &band), Some(id("m")));
    band.from = Some(id("l"));
    assert_eq!(size_of(&spec(), &band), Some(id("l")));
    band.from = Some(id("gone"));
    assert_eq!(size_of(&spec(), &band), None);
}
