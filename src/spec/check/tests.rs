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

type Edit = fn(&mut Spec);
type Name = Option<&'static str>;
type Case = (Code, Name, Name, Edit, Edit);

/// For every code: the item and field that it names, an edit of the example that trips it, and
/// the nearest one that does not.
#[rustfmt::skip]
const CASES: &[Case] = &[
    (Code::IdTwice, Some("part-1"), None,
        |s| s.colourways.colourways[0].id = id("part-1"),
        |s| s.drawings.drawings[0].markers[0].id = id("marker-new")),
    (Code::NumberMissing, None, Some("number"),
        |s| s.header.number = " ".to_owned(),
        |s| s.header.number = "1".to_owned()),
    (Code::NameMissing, None, Some("name"),
        |s| s.header.name.clear(),
        |s| s.header.name = "x".to_owned()),
    (Code::BaseSizeMissing, None, Some("base_size"),
        |s| s.header.base_size = None,
        |s| s.header.base_size = Some(id("size-gone"))),
    (Code::BaseSizeUnknown, None, Some("base_size"),
        |s| s.header.base_size = Some(id("size-gone")),
        |s| s.header.base_size = Some(id("size-xl"))),
    (Code::UnitMissing, None, Some("unit"),
        |s| s.header.unit = None,
        |s| s.header.unit = Some(Unit::Cm)),
    (Code::MeasuringStateMissing, None, Some("measured"),
        |s| s.header.measured = None,
        |s| s.header.measured = Some(MeasuringState::AfterWashes(3))),
    (Code::SizesNone, None, None,
        |s| s.sizes.sizes.clear(),
        |s| s.sizes.sizes.truncate(1)),
    (Code::SizeCodeMissing, Some("size-s"), Some("code"),
        |s| s.sizes.sizes[1].code = " ".to_owned(),
        |s| s.sizes.sizes[1].code = "0".to_owned()),
    (Code::SizeCodeTwice, Some("size-l"), Some("code"),
        |s| s.sizes.sizes[3].code = " xs".to_owned(),
        |s| s.sizes.sizes[3].code = "xss".to_owned()),
    (Code::DrawingsNone, None, None,
        |s| s.drawings.drawings.clear(),
        |s| s.drawings.drawings[0].markers.clear()),
    (Code::MarkerAdrift, Some("marker-p2"), None,
        |s| { s.colourways.parts.remove(1); },
        |s| { s.colourways.parts.remove(2); }),
    (Code::MarkerOutside, Some("marker-a"), None,
        |s| s.drawings.drawings[0].markers[0].x = 10_001,
        |s| s.drawings.drawings[0].markers[0].x = 10_000),
    (Code::PointUnmarked, Some("point-a"), None,
        |s| { s.drawings.drawings[0].markers.remove(0); },
        |s| { s.drawings.drawings[0].markers.pop(); }),
    (Code::PointsNone, None, None,
        |s| s.points.points.clear(),
        |s| s.points.points.truncate(1)),
    (Code::PointLetterMissing, Some("point-b"), Some("letter"),
        |s| point(s, "B").letter.clear(),
        |s| point(s, "B").letter = "AA".to_owned()),
    (Code::PointLetterTwice, Some("point-b"), Some("letter"),
        |s| point(s, "B").letter = "a".to_owned(),
        |s| point(s, "B").letter = "A'".to_owned()),
    (Code::PointNameMissing, Some("point-b"), Some("name"),
        |s| point(s, "B").name = "\u{a0}".to_owned(),
        |s| point(s, "B").name = ".".to_owned()),
    (Code::PointBasisMissing, Some("point-b"), Some("basis"),
        |s| point(s, "B").basis = None,
        |s| point(s, "B").basis = Some(Basis::Full)),
    (Code::PointBaseMissing, Some("point-b"), Some("base"),
        |s| point(s, "B").base = None,
        |s| { assert_eq!(point(s, "J").base, None, "derived"); }),
    (Code::PointGradeMissing, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = None,
        |s| point(s, "B").grade = Some(Grade::Same {})),
    (Code::PointMinusMissing, Some("point-b"), Some("minus"),
        |s| point(s, "B").minus = None,
        |s| point(s, "B").minus = inches("0")),
    (Code::PointPlusMissing, Some("point-b"), Some("plus"),
        |s| point(s, "B").plus = None,
        |s| point(s, "B").plus = inches("0")),
    (Code::ToleranceNegative, Some("point-b"), Some("plus"),
        |s| point(s, "B").plus = inches("-1/64"),
        |s| point(s, "B").plus = inches("0")),
    (Code::ToleranceUnit, Some("point-b"), Some("minus"),
        |s| point(s, "B").minus = inches("6mm"),
        |s| point(s, "B").minus = inches("1/16")),
    (Code::PointStepMissing, Some("point-b"), Some("step"),
        |s| point(s, "B").step = inches("0"),
        |s| point(s, "B").step = inches("1/64")),
    (Code::StepUnit, Some("point-b"), Some("step"),
        |s| point(s, "B").step = inches("1mm"),
        |s| point(s, "B").base = inches("50.8cm")),
    (Code::HowStartMissing, Some("point-b"), Some("how.start"),
        |s| point(s, "B").how.start.clear(),
        |s| point(s, "B").how.path = None),
    (Code::HowEndMissing, Some("point-b"), Some("how.end"),
        |s| point(s, "B").how.end.clear(),
        |s| point(s, "B").how.note.clear()),
    (Code::GradeGapUncovered, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-m", "1"), ("size-l", "size-xl", "1")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-l", "1"), ("size-l", "size-xl", "1")])),
    (Code::GradeGapTwice, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-l", "1"), ("size-m", "size-xl", "1")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-m", "1"), ("size-m", "size-xl", "1")])),
    (Code::GradeBackwards, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "1"), ("size-m", "size-m", "1")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "1")])),
    (Code::GradeSizeUnknown, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "1"), ("size-xl", "size-2xl", "1")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "1")])),
    (Code::GradeSizeMissing, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = explicit(&[("size-xs", "18"), ("size-s", "19"), ("size-l", "21")]),
        |s| point(s, "B").grade = explicit(&[("size-xs", "18"), ("size-s", "19"), ("size-l", "21"), ("size-xl", "22")])),
    (Code::GradeSourceMissing, Some("point-j"), Some("grade"),
        |s| point(s, "J").grade = derived("part-1"),
        |s| point(s, "J").grade = derived("point-i")),
    (Code::GradeCycle, Some("point-j"), Some("grade"),
        |s| point(s, "J").grade = derived("point-j"),
        |s| point(s, "J").grade = derived("point-h")),
    (Code::GradeBaseDisagrees, Some("point-j"), Some("base"),
        |s| point(s, "J").base = inches("9"),
        |s| point(s, "J").base = inches("9 1/2")),
    (Code::GradeTooLong, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "39370")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-xl", "1000")])),
    (Code::GradeReverses, Some("point-b"), Some("grade"),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-m", "1"), ("size-m", "size-l", "0"), ("size-l", "size-xl", "-1/2")]),
        |s| point(s, "B").grade = segments(&[("size-xs", "size-m", "1"), ("size-m", "size-l", "0"), ("size-l", "size-xl", "1/2")])),
    (Code::ToleranceOverlaps, Some("point-a"), Some("plus"),
        |s| point(s, "A").plus = inches("5/8"),
        |s| point(s, "A").plus = inches("9/16")),
    (Code::StepCoarse, Some("point-b"), Some("step"),
        |s| point(s, "B").step = inches("1/4"),
        |s| { let b = point(s, "B"); b.step = inches("1/4"); b.minus = inches("1/4"); b.plus = inches("3/4"); }),
    (Code::StepsUneven, Some("point-e"), Some("step"),
        |s| point(s, "E").grade = segments(&[("size-xs", "size-xl", "3/16")]),
        |s| point(s, "E").grade = segments(&[("size-xs", "size-m", "1/8"), ("size-m", "size-xl", "1/4")])),
    (Code::GradeHalfOrFull, Some("point-f"), Some("grade"),
        |s| { point(s, "F").base = inches("19"); point(s, "F").grade = segments(&[("size-xs", "size-xl", "2")]); },
        |s| { point(s, "F").base = inches("19"); point(s, "F").grade = segments(&[("size-xs", "size-xl", "1 3/4")]); }),
    (Code::ValueNotPositive, Some("point-h"), None,
        |s| point(s, "H").base = inches("1/32"),
        |s| point(s, "H").base = inches("1/16")),
    (Code::PartsNone, None, None,
        |s| s.colourways.parts.clear(),
        |s| s.colourways.parts.truncate(1)),
    (Code::ColourwaysNone, None, None,
        |s| s.colourways.colourways.clear(),
        |s| s.colourways.colourways.truncate(1)),
    (Code::PartLetterMissing, Some("part-3"), Some("letter"),
        |s| s.colourways.parts[2].letter.clear(),
        |s| s.colourways.parts[2].letter = "P9".to_owned()),
    (Code::PartLetterTwice, Some("part-3"), Some("letter"),
        |s| s.colourways.parts[2].letter = "a".to_owned(),
        |s| s.colourways.parts[2].letter = "P33".to_owned()),
    (Code::PartNameMissing, Some("part-3"), Some("name"),
        |s| s.colourways.parts[2].name.clear(),
        |s| s.colourways.parts[2].name = "tape".to_owned()),
    (Code::ColourwayNameMissing, Some("colourway-chalk"), Some("name"),
        |s| { s.colourways.colourways[1].name.clear(); s.colourways.colourways[1].code.clear(); },
        |s| s.colourways.colourways[1].name.clear()),
    (Code::ColourwayCodeTwice, Some("colourway-chalk"), Some("code"),
        |s| s.colourways.colourways[1].code = "ink ".to_owned(),
        |s| s.colourways.colourways[1].code.clear()),
    (Code::CellEmpty, Some("part-1"), None,
        |s| { s.colourways.cells.get_mut(&id("colourway-chalk")).unwrap().remove(&id("part-1")); },
        |s| *cell(s, "colourway-chalk", "part-1") = Cell::None {}),
    (Code::CellColourUnnamed, Some("part-1"), None,
        |s| { colour(s).name.clear(); colour(s).reference.clear(); },
        |s| colour(s).name.clear()),
    (Code::CellScreenMalformed, Some("part-1"), None,
        |s| colour(s).screen = Some("#12345g".to_owned()),
        |s| colour(s).screen = Some("#12345F".to_owned())),
    (Code::CellMatchMissing, Some("part-3"), None,
        |s| *cell(s, "colourway-ink", "part-3") = matching("point-a"),
        |s| *cell(s, "colourway-ink", "part-3") = matching("part-2")),
    (Code::CellMatchNone, Some("part-3"), None,
        |s| *cell(s, "colourway-chalk", "part-3") = matching("part-4"),
        |s| *cell(s, "colourway-chalk", "part-3") = matching("part-1")),
    (Code::CellMatchCycle, Some("part-3"), None,
        |s| *cell(s, "colourway-ink", "part-3") = matching("part-3"),
        |s| *cell(s, "colourway-ink", "part-3") = matching("part-1")),
];

/// A finding of every code, for those who say what it means.
pub(crate) fn one_of_each() -> Vec<Finding> {
    let tripped = |(code, _, _, trips, _): &Case| {
        let mut findings = after(trips).into_iter();
        findings.find(|finding| finding.code == *code)
    };
    CASES.iter().filter_map(tripped).collect()
}

#[test]
fn every_check_trips_and_just_does_not() {
    for (code, item, field, trips, does_not) in CASES {
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
    let cases: BTreeSet<_> = CASES.iter().map(|case| case.0).collect();
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
            Code::BaseSizeMissing,
            Code::UnitMissing,
            Code::MeasuringStateMissing,
            Code::SizesNone,
            Code::DrawingsNone,
            Code::PointsNone,
            Code::PartsNone,
            Code::ColourwaysNone,
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
