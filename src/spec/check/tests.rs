mod artwork;
mod colourways;
mod construction;
mod drawings;
mod edges;
mod header;
mod items;
mod labels;
mod materials;
mod packing;
mod points;
mod relations;
mod safety;

use std::collections::{BTreeSet, HashSet};

use super::*;
use crate::spec::chart::grade;
use crate::spec::document::*;
use crate::spec::example::half_zip;
use crate::spec::id::Digest;
use crate::spec::units::{Entered, Unit};

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn inches(text: &str) -> Option<Entered> {
    Some(Entered::read(text, Unit::Inch).unwrap())
}

fn mm(text: &str) -> Option<Entered> {
    Some(Entered::read(text, Unit::Mm).unwrap())
}

fn decimal(text: &str) -> Decimal {
    Decimal::read(text).unwrap()
}

fn found(spec: &Spec) -> Vec<Finding> {
    check(spec, &grade(spec))
}

fn after(edit: impl FnOnce(&mut Spec)) -> Vec<Finding> {
    let mut spec = half_zip(Digest::of(b"front"));
    edit(&mut spec);
    found(&spec)
}

fn point<'a>(spec: &'a mut Spec, letter: &str) -> &'a mut Point {
    let points = &mut spec.points.points;
    points
        .iter_mut()
        .find(|point| point.letter == letter)
        .unwrap()
}

fn segments(steps: &[(&str, &str, &str)]) -> Option<Grade> {
    let segments = steps.iter().map(|(from, to, step)| Segment {
        from: id(from),
        to: id(to),
        step: inches(step).unwrap(),
    });
    Some(Grade::Segments {
        segments: segments.collect(),
    })
}

fn derived(from: &str) -> Option<Grade> {
    Some(Grade::Derived {
        from: id(from),
        offset: inches("1").unwrap(),
    })
}

fn explicit(values: &[(&str, &str)]) -> Option<Grade> {
    let values = values
        .iter()
        .map(|(size, value)| (id(size), inches(value).unwrap()));
    Some(Grade::Explicit {
        values: values.collect(),
    })
}

fn cell<'a>(spec: &'a mut Spec, colourway: &str, part: &str) -> &'a mut Cell {
    let row = spec.colourways.cells.get_mut(&id(colourway)).unwrap();
    row.get_mut(&id(part)).unwrap()
}

fn colour(spec: &mut Spec) -> &mut Colour {
    match cell(spec, "colourway-ink", "part-1") {
        Cell::Colour(colour) => colour,
        other => panic!("{other:?}"),
    }
}

fn matching(part: &str) -> Cell {
    Cell::DyedToMatch { part: id(part) }
}

fn material<'a>(spec: &'a mut Spec, name: &str) -> &'a mut Material {
    let mut materials = spec.materials.materials.iter_mut();
    let id = id(&format!("material-{name}"));
    materials.find(|material| material.id == id).unwrap()
}

fn callout<'a>(spec: &'a mut Spec, letter: &str) -> &'a mut Callout {
    let mut callouts = spec.construction.callouts.iter_mut();
    callouts.find(|callout| callout.letter == letter).unwrap()
}

fn artwork(spec: &mut Spec) -> &mut Artwork {
    &mut spec.artwork.artworks[0]
}

fn label<'a>(spec: &'a mut Spec, name: &str) -> &'a mut Label {
    let mut labels = spec.labels.labels.iter_mut();
    let id = id(&format!("label-{name}"));
    labels.find(|label| label.id == id).unwrap()
}

/// A child's garment whose sizes are all for these months of age.
fn child(spec: &mut Spec, from: u16, to: u16) {
    spec.header.wearer = Some(Wearer::Children);
    for size in &mut spec.sizes.sizes {
        // Letters are US child sizes too.
        size.code = format!("age {}", size.id);
        size.ages = Some(Ages { from, to });
    }
}

/// Sold in the US and nowhere else.
fn us(spec: &mut Spec) {
    spec.header.markets = vec![Market::Us];
}

fn exempt(code: &str, reason: &str) -> Vec<Exemption> {
    vec![Exemption {
        code: code.to_owned(),
        reason: reason.to_owned(),
        by: "Nell".to_owned(),
    }]
}

type Edit = fn(&mut Spec);
type Name = Option<&'static str>;
type Case = (Code, Name, Name, Edit, Edit);

/// For every code: the item and field that it names, an edit of the example that trips it, and
/// the nearest one that does not.
const CASES: &[&[Case]] = &[
    artwork::CASES,
    colourways::CASES,
    construction::CASES,
    drawings::CASES,
    header::CASES,
    items::CASES,
    labels::CASES,
    materials::CASES,
    packing::CASES,
    points::CASES,
    relations::CASES,
    safety::CASES,
];

fn cases() -> impl Iterator<Item = &'static Case> {
    CASES.iter().copied().flatten()
}

/// A finding of every code, for those who say what it means.
pub(crate) fn one_of_each() -> Vec<Finding> {
    let tripped = |(code, _, _, trips, _): &Case| {
        let mut findings = after(trips).into_iter();
        findings.find(|finding| finding.code == *code)
    };
    cases().filter_map(tripped).collect()
}

#[test]
fn every_check_trips_and_just_does_not() {
    for (code, item, field, trips, does_not) in cases() {
        let tripped = after(trips);
        let of_code: Vec<_> = tripped
            .iter()
            .filter(|finding| finding.code == *code)
            .collect();
        let [finding] = of_code[..] else {
            panic!("{code:?} wanted once: {tripped:?}");
        };
        assert_eq!(finding.item, item.map(id), "{code:?}");
        assert_eq!(finding.field, *field, "{code:?}");
        let spared = after(does_not);
        assert!(
            spared.iter().all(|finding| finding.code != *code),
            "{code:?}: {spared:?}"
        );
    }
}

#[test]
fn every_code_has_a_case_and_a_name_of_its_own() {
    let cases: BTreeSet<_> = cases().map(|case| case.0).collect();
    assert_eq!(cases, Code::ALL.iter().copied().collect());
    let names: HashSet<_> = Code::ALL.iter().map(|code| code.name()).collect();
    assert_eq!(names.len(), Code::ALL.len());
    let kebab = |name: &str| name.bytes().all(|b| b.is_ascii_lowercase() || b == b'-');
    assert!(names.into_iter().all(kebab));
}

#[test]
fn the_example_is_ready() {
    assert_eq!(after(|_| {}), []);
}

#[test]
fn an_empty_spec_lacks_everything() {
    let codes: Vec<_> = found(&Spec::default()).iter().map(|f| f.code).collect();
    assert_eq!(
        codes,
        [
            Code::NumberMissing,
            Code::NameMissing,
            Code::WearerMissing,
            Code::MarketsNone,
            Code::BaseSizeMissing,
            Code::UnitMissing,
            Code::MeasuringStateMissing,
            Code::SizesNone,
            Code::DrawingsNone,
            Code::PointsNone,
            Code::PartsNone,
            Code::ColourwaysNone,
            Code::MaterialsNone,
        ]
    );
}

#[test]
fn a_finding_carries_the_figures_of_its_sentence() {
    let findings = after(|spec| point(spec, "A").plus = inches("5/8"));
    let [finding] = &findings[..] else {
        panic!("{findings:?}");
    };
    assert_eq!(
        finding.facts,
        [
            ("letter", "A".into()),
            ("name", "Chest width".into()),
            ("from", "XS".into()),
            ("to", "S".into()),
            ("step", inches("1").unwrap().nm.into()),
            ("minus", inches("3/8").unwrap().nm.into()),
            ("plus", inches("5/8").unwrap().nm.into()),
        ]
    );
    assert_eq!(finding.severity(), Severity::Warning);

    let findings = after(|spec| {
        point(spec, "C").grade = derived("point-j");
    });
    assert_eq!(findings.len(), 2, "{findings:?}");
    assert!(findings[0].facts.contains(&("letters", "C ← J ← C".into())));
    assert!(findings[1].facts.contains(&("letters", "J ← C ← J".into())));

    let findings = after(|spec| {
        spec.colourways.cells.remove(&id("colourway-ink"));
    });
    let cells = findings
        .iter()
        .filter(|finding| finding.code == Code::CellEmpty);
    let cells: Vec<_> = cells
        .map(|finding| (&finding.item, &finding.colourway))
        .collect();
    assert_eq!(cells.len(), 4);
    assert_eq!(cells[0], (&Some(id("part-1")), &Some(id("colourway-ink"))));
}

#[test]
fn a_longer_circle_of_matching_is_found_at_each_of_its_parts() {
    let findings = after(|spec| {
        *cell(spec, "colourway-ink", "part-1") = matching("part-3");
    });
    let items: Vec<_> = findings
        .iter()
        .map(|finding| (finding.code, finding.item.clone()))
        .collect();
    let circle = |part| (Code::CellMatchCycle, Some(id(part)));
    // Part 2 matches part 1, which is in the circle with part 3.
    assert_eq!(
        items,
        [circle("part-1"), circle("part-2"), circle("part-3")]
    );
}

#[test]
fn a_warning_comes_once_for_an_item() {
    let findings = after(|spec| {
        for point in &mut spec.points.points {
            point.critical = true;
            point.minus = inches("4");
            point.step = inches("5");
            point.base = point.base.and(inches("-7"));
        }
        point(spec, "C").grade = segments(&[
            ("size-xs", "size-s", "1"),
            ("size-s", "size-m", "-1"),
            ("size-m", "size-xl", "3"),
        ]);
    });
    let warnings = findings.iter().filter(|finding| !finding.is_error());
    let keys: Vec<_> = warnings
        .map(|finding| (finding.code, finding.item.clone()))
        .collect();
    let unique: HashSet<_> = keys.iter().collect();
    assert!(keys.len() > 20, "{keys:?}");
    assert_eq!(unique.len(), keys.len());
}
