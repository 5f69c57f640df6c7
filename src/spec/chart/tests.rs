mod frozen;

use proptest::prelude::*;

use super::*;
use crate::spec::document::{Grade, Segment, Size};
use crate::spec::units::Entered;

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn inches(text: &str) -> Entered {
    Entered::read(text, Unit::Inch).unwrap()
}

fn lengths(texts: &[&str]) -> Vec<Length> {
    texts.iter().map(|text| inches(text).nm).collect()
}

fn segment(from: &str, to: &str, step: &str) -> Segment {
    Segment {
        from: id(from),
        to: id(to),
        step: inches(step),
    }
}

fn segments(segments: &[(&str, &str, &str)]) -> Option<Grade> {
    let segments = segments
        .iter()
        .map(|(from, to, step)| segment(from, to, step));
    Some(Grade::Segments {
        segments: segments.collect(),
    })
}

fn derived(from: &str, offset: &str) -> Option<Grade> {
    Some(Grade::Derived {
        from: id(from),
        offset: inches(offset),
    })
}

fn point(name: &str, base: Option<&str>, grade: Option<Grade>) -> Point {
    Point {
        id: id(name),
        letter: name.to_uppercase(),
        name: name.to_owned(),
        how: Default::default(),
        basis: None,
        direction: None,
        key: false,
        critical: false,
        minus: Some(inches("1/4")),
        plus: Some(inches("1/2")),
        base: base.map(inches),
        grade,
        step: Some(inches("1/8")),
        ..Point::default()
    }
}

/// XS to XL with M as the base size.
fn spec(points: Vec<Point>) -> Spec {
    let mut spec = Spec::default();
    spec.header.base_size = Some(id("M"));
    spec.header.unit = Some(Unit::Inch);
    for size in ["XS", "S", "M", "L", "XL"] {
        spec.sizes.sizes.push(Size {
            id: id(size),
            code: size.to_owned(),
            label: String::new(),
            ..Size::default()
        });
    }
    spec.points.points = points;
    spec
}

fn only(point: Point) -> Result<Values, Vec<GradeFault>> {
    let spec = spec(vec![point]);
    let graded = grade(&spec).points.remove(0).result;
    assert_eq!(graded, grade_point(&spec, &spec.points.points[0]));
    graded
}

fn faults(point: Point) -> Vec<GradeFault> {
    only(point).unwrap_err()
}

#[test]
fn values_go_up_and_down_from_the_base() {
    let grade = segments(&[("XS", "M", "1/2"), ("M", "L", "5/8"), ("L", "XL", "3/4")]);
    let values = only(point("a", Some("28 1/2"), grade)).unwrap();
    let wanted = lengths(&["27 1/2", "28", "28 1/2", "29 1/8", "29 7/8"]);
    assert_eq!(values.rounded, wanted);
    assert_eq!(values.exact, wanted);
    let left: Vec<_> = steps(&values.rounded).collect();
    assert_eq!(left, lengths(&["1/2", "1/2", "5/8", "3/4"]));
}

#[test]
fn each_size_is_rounded_once_from_the_unrounded_sum() {
    let grade = segments(&[("XS", "XL", "3/16")]);
    let values = only(point("a", Some("10"), grade)).unwrap();
    assert_eq!(
        values.exact,
        lengths(&["9 5/8", "9 13/16", "10", "10 3/16", "10 3/8"])
    );
    // 9 13/16 lies half way and goes up, away from zero; the steps left are 1/4 1/8 1/4 1/8.
    assert_eq!(
        values.rounded,
        lengths(&["9 5/8", "9 7/8", "10", "10 1/4", "10 3/8"])
    );
    let left: Vec<_> = steps(&values.rounded).collect();
    assert_eq!(left, lengths(&["1/4", "1/8", "1/4", "1/8"]));
}

#[test]
fn a_shrinking_grade_is_graded() {
    let values = only(point("a", Some("3"), segments(&[("XS", "XL", "-1/2")]))).unwrap();
    assert_eq!(values.rounded, lengths(&["4", "3 1/2", "3", "2 1/2", "2"]));
}

#[test]
fn the_same_value_in_all_sizes() {
    let values = only(point("a", Some("1 1/2"), Some(Grade::Same {}))).unwrap();
    assert_eq!(values.rounded, lengths(&["1 1/2"; 5]));
}

#[test]
fn explicit_values_take_the_base_at_the_base_size() {
    let explicit = |typed: &[(&str, &str)]| {
        let values = typed.iter().map(|(size, value)| (id(size), inches(value)));
        Some(Grade::Explicit {
            values: values.collect(),
        })
    };
    let others = [("XS", "5"), ("S", "5"), ("L", "6"), ("XL", "6 1/2")];
    let values = only(point("a", Some("5 1/2"), explicit(&others))).unwrap();
    assert_eq!(values.rounded, lengths(&["5", "5", "5 1/2", "6", "6 1/2"]));

    let size = id("M");
    assert_eq!(
        faults(point("a", None, explicit(&others))),
        [GradeFault::SizeWithoutValue { size }]
    );
    let wrong = [("XS", "5"), ("M", "5"), ("L", "6"), ("3XL", "7")];
    assert_eq!(
        faults(point("a", Some("5 1/2"), explicit(&wrong))),
        [
            GradeFault::UnknownSize { size: id("3XL") },
            GradeFault::SizeWithoutValue { size: id("S") },
            GradeFault::SizeWithoutValue { size: id("XL") },
        ]
    );
    let whole = [("XS", "5"), ("S", "5"), ("M", "5"), ("L", "6"), ("XL", "6")];
    assert_eq!(
        faults(point("a", Some("5 1/2"), explicit(&whole))),
        [GradeFault::BaseDisagrees {
            typed: inches("5 1/2").nm,
            graded: inches("5").nm
        }]
    );
    assert!(only(point("a", Some("5"), explicit(&whole))).is_ok());
}

#[test]
fn every_gap_is_covered_exactly_once() {
    let gap = |from: &str, to: &str| (id(from), id(to));
    let (from, to) = gap("M", "L");
    assert_eq!(
        faults(point(
            "a",
            Some("9"),
            segments(&[("XS", "M", "1"), ("L", "XL", "1")])
        )),
        [GradeFault::GapUncovered { from, to }]
    );
    let (from, to) = gap("S", "M");
    assert_eq!(
        faults(point(
            "a",
            Some("9"),
            segments(&[("XS", "M", "1"), ("S", "XL", "1")])
        )),
        [GradeFault::GapDoubled { from, to }]
    );
    let all_wrong = segments(&[
        ("M", "XS", "1"),
        ("M", "M", "1"),
        ("M", "9", "1"),
        ("S", "M", "1"),
    ]);
    let (m, xs) = gap("M", "XS");
    assert_eq!(
        faults(point("a", None, all_wrong)),
        [
            GradeFault::NoBase,
            GradeFault::SegmentBackwards {
                from: m.clone(),
                to: xs
            },
            GradeFault::SegmentBackwards {
                from: m.clone(),
                to: m
            },
            GradeFault::UnknownSize { size: id("9") },
            GradeFault::GapUncovered {
                from: id("XS"),
                to: id("S")
            },
            GradeFault::GapUncovered {
                from: id("M"),
                to: id("L")
            },
            GradeFault::GapUncovered {
                from: id("L"),
                to: id("XL")
            },
        ]
    );
}

#[test]
fn what_is_missing_is_told_all_at_once() {
    let mut bare = point("a", None, None);
    bare.step = None;
    assert_eq!(
        faults(bare.clone()),
        [GradeFault::NoBase, GradeFault::NoGrade, GradeFault::NoStep]
    );
    bare.step = Some(inches("0"));
    assert!(faults(bare).contains(&GradeFault::NoStep));

    let mut spec = spec(vec![point("a", Some("9"), segments(&[("XS", "XL", "1")]))]);
    spec.header.base_size = Some(id("4XL"));
    assert_eq!(
        grade(&spec).points[0].result,
        Err(vec![GradeFault::NoBaseSize])
    );
}

#[test]
fn a_derived_point_follows_the_unrounded_source() {
    // The source's exact values are 10, 10 3/16 ...: rounded first, 10 1/4 - 1 would give 9 1/4.
    let mut front = point("front", Some("10"), segments(&[("XS", "XL", "3/16")]));
    front.step = Some(inches("1"));
    let spec = spec(vec![
        point("tape", None, derived("zip", "1/4")),
        point("zip", None, derived("front", "-1")),
        front,
    ]);
    let graded = grade(&spec);
    let zip = graded.values(&id("zip")).unwrap();
    assert_eq!(
        zip.rounded,
        lengths(&["8 5/8", "8 7/8", "9", "9 1/4", "9 3/8"])
    );
    assert_eq!(zip.exact[3], inches("9 3/16").nm);
    let tape = graded.values(&id("tape")).unwrap();
    assert_eq!(tape.exact[3], inches("9 7/16").nm);
}

#[test]
fn a_derived_cycle_is_named_and_what_hangs_on_it_too() {
    let spec = spec(vec![
        point("a", None, derived("b", "1")),
        point("b", None, derived("c", "1")),
        point("c", None, derived("b", "1")),
        point("d", None, derived("d", "1")),
        point("e", None, derived("gone", "1")),
        point("f", Some("9"), Some(Grade::Same {})),
    ]);
    let graded = grade(&spec);
    let fault = |index: usize| graded.points[index].result.clone();
    let cycle = |points: &[&str]| {
        let points = points.iter().map(|name| id(name)).collect();
        Err(vec![GradeFault::DerivedCycle { points }])
    };
    assert_eq!(
        fault(0),
        Err(vec![GradeFault::SourceFaulty { point: id("b") }])
    );
    assert_eq!(fault(1), cycle(&["b", "c"]));
    assert_eq!(fault(2), cycle(&["c", "b"]));
    assert_eq!(fault(3), cycle(&["d"]));
    assert_eq!(
        fault(4),
        Err(vec![GradeFault::UnknownPoint { point: id("gone") }])
    );
    assert!(fault(5).is_ok());
}

#[test]
fn a_long_chain_needs_no_deep_stack() {
    let mut points = vec![point("0", Some("1"), Some(Grade::Same {}))];
    for n in 1..20_000 {
        points.insert(
            0,
            point(&n.to_string(), None, derived(&(n - 1).to_string(), "0")),
        );
    }
    let graded = grade(&spec(points));
    assert!(graded.points.iter().all(|point| point.result.is_ok()));
}

#[test]
fn nothing_overflows() {
    let mut huge = point("a", None, segments(&[("XS", "XL", "1")]));
    let max = Entered {
        nm: Length::MAX,
        unit: Unit::Inch,
    };
    huge.base = Some(max);
    assert_eq!(faults(huge.clone()), [GradeFault::TooLong]);
    huge.grade = Some(Grade::Same {});
    huge.step = Some(Entered {
        nm: Length::nm(Length::MAX.as_nm() - 1),
        unit: Unit::Inch,
    });
    assert!(only(huge.clone()).is_ok());
    huge.step = Some(Entered {
        nm: Length::nm(600_000_000_000),
        unit: Unit::Inch,
    });
    assert_eq!(
        faults(huge),
        [GradeFault::TooLong],
        "rounded up past the bound"
    );
}

#[test]
fn one_point_is_graded_as_it_is_typed() {
    let spec = spec(vec![
        point("front", Some("10"), Some(Grade::Same {})),
        point("zip", None, derived("front", "-1")),
    ]);
    let mut edited = spec.points.points[1].clone();
    edited.grade = derived("front", "-2");
    let values = grade_point(&spec, &edited).unwrap();
    assert_eq!(values.rounded, lengths(&["8"; 5]));
    let fresh = point("new", None, derived("zip", "1"));
    let values = grade_point(&spec, &fresh).unwrap();
    assert_eq!(values.rounded, lengths(&["10"; 5]));
    let looped = point("front", None, derived("zip", "1"));
    let points = vec![id("front"), id("zip")];
    assert_eq!(
        grade_point(&spec, &looped),
        Err(vec![GradeFault::DerivedCycle { points }])
    );
}

#[test]
fn the_chart_is_what_a_revision_holds() {
    let grade_rule = segments(&[("XS", "XL", "1/2")]);
    let mut spec = spec(vec![
        point("a", Some("28 1/2"), grade_rule),
        point("b", None, None),
    ]);
    let chart = grade(&spec).chart(&spec).unwrap();
    assert_eq!(
        chart.rows.len(),
        1,
        "a point that cannot be graded has no row"
    );
    let json = r#"{"unit":"inch","base_size":"M","sizes":["XS","S","M","L","XL"],"rows":[{"point":"a","values":[698500000,711200000,723900000,736600000,749300000],"minus":6350000,"plus":12700000,"step":3175000}]}"#;
    assert_eq!(serde_json::to_string(&chart).unwrap(), json);
    assert_eq!(serde_json::from_str::<Chart>(json).unwrap(), chart);
    assert_eq!(chart.value(&id("a"), &id("L")), Some(inches("29").nm));
    assert_eq!(chart.value(&id("a"), &id("4XL")), None);
    assert_eq!(chart.value(&id("b"), &id("L")), None);
    spec.header.unit = None;
    assert_eq!(grade(&spec).chart(&spec), None);
}

proptest! {
    /// Against the definition: value(i) = base ± the sum of the steps between.
    #[test]
    fn values_are_the_base_and_the_sum_of_steps(
        base in -100_000i64..1_000_000,
        gaps in proptest::collection::vec((-2i64..6).prop_map(|n| n * 2_345), 0..20),
        base_size in any::<prop::sample::Index>(),
        joined in proptest::collection::vec(any::<bool>(), 20),
        step in 1i64..10_000,
    ) {
        let unit = Unit::Cm;
        let entered = |nm| Entered { nm: Length::nm(nm), unit };
        let count = gaps.len() + 1;
        let base_size = base_size.index(count);
        let sizes: Vec<_> = (0..count).map(|n| id(&n.to_string())).collect();
        // Neighbouring gaps with one step may be one segment.
        let mut rules: Vec<Segment> = Vec::new();
        for (gap, nm) in gaps.iter().enumerate() {
            match rules.last_mut() {
                Some(last) if joined[gap] && last.step == entered(*nm) => last.to = sizes[gap + 1].clone(),
                _ => rules.push(Segment {
                    from: sizes[gap].clone(), to: sizes[gap + 1].clone(), step: entered(*nm),
                }),
            }
        }
        rules.reverse();
        let mut point = point("a", None, Some(Grade::Segments { segments: rules }));
        point.base = Some(entered(base));
        point.step = Some(entered(step));
        let mut spec = spec(vec![point]);
        spec.sizes.sizes = sizes.iter().map(|id| Size {
            id: id.clone(), code: String::new(), label: String::new(), ..Size::default() }).collect();
        spec.header.base_size = Some(sizes[base_size].clone());
        let values = grade(&spec).points.remove(0).result.unwrap();
        for index in 0..count {
            let (low, high) = (index.min(base_size), index.max(base_size));
            let between: i64 = gaps[low..high].iter().sum();
            let wanted = if index < base_size { base - between } else { base + between };
            prop_assert_eq!(values.exact[index], Length::nm(wanted));
            prop_assert!((values.rounded[index].as_nm() - wanted).abs() * 2 <= step);
            prop_assert_eq!(values.rounded[index].as_nm() % step, 0);
        }
    }
}
