//! What a row holds beside its values: tolerances by size, the second axis, pairs, stretching.

use proptest::prelude::*;

use super::*;
use crate::spec::canon::{from_canonical, to_canonical};
use crate::spec::document::{LengthOption, Tolerance};

/// An inseam with two lengths beside the one that its values are for.
fn trousers() -> Spec {
    let mut inseam = point("inseam", Some("32"), segments(&[("XS", "XL", "1/4")]));
    inseam.lengths = [(id("short"), inches("-2")), (id("long"), inches("1 9/16"))].into();
    let mut outseam = point("outseam", None, derived("inseam", "10"));
    outseam.lengths = [(id("long"), inches("2"))].into();
    let waist = point("waist", Some("15"), segments(&[("XS", "XL", "1")]));
    let mut spec = spec(vec![waist, inseam, outseam]);
    spec.sizes.lengths = ["short", "regular", "long"]
        .map(|code| LengthOption {
            id: id(code),
            code: code.to_owned(),
            ..LengthOption::default()
        })
        .into();
    spec
}

fn chart(spec: &Spec) -> Chart {
    grade(spec).chart(spec).unwrap()
}

#[test]
fn a_size_has_its_own_tolerance_where_one_is_typed() {
    let mut chest = point("a", Some("20"), Some(Grade::Same {}));
    let tolerance = |minus: Option<&str>, plus: Option<&str>| Tolerance {
        minus: minus.map(inches),
        plus: plus.map(inches),
    };
    chest.tolerances = [
        (id("XL"), tolerance(Some("3/8"), Some("5/8"))),
        (id("L"), tolerance(None, Some("5/8"))),
        // As the point's own, and of no size of this spec.
        (id("S"), tolerance(Some("1/4"), None)),
        (id("3XL"), tolerance(Some("1"), Some("1"))),
    ]
    .into();
    let chart = chart(&spec(vec![chest]));
    let row = &chart.rows[0];
    assert_eq!(row.tolerances.len(), 2);
    let allowed = |size: &str| {
        let allowed = row.tolerance(&id(size));
        [allowed.minus, allowed.plus].to_vec()
    };
    assert_eq!(allowed("M"), lengths(&["1/4", "1/2"]));
    assert_eq!(allowed("S"), lengths(&["1/4", "1/2"]));
    assert_eq!(allowed("L"), lengths(&["1/4", "5/8"]));
    assert_eq!(allowed("XL"), lengths(&["3/8", "5/8"]));
}

#[test]
fn the_second_axis_adds_to_the_exact_value_and_is_rounded_once() {
    let spec = trousers();
    let chart = chart(&spec);
    let rows: Vec<_> = chart
        .lengths
        .iter()
        .map(|row| (row.point.as_str(), row.length.as_str()))
        .collect();
    let wanted = [
        ("inseam", "short"),
        ("inseam", "long"),
        ("outseam", "short"),
        ("outseam", "long"),
    ];
    assert_eq!(rows, wanted, "no row where nothing is added");
    assert_eq!(
        chart.lengths[0].values,
        lengths(&["29 1/2", "29 3/4", "30", "30 1/4", "30 1/2"])
    );
    // 31 1/2 + 1 9/16 is 33 1/16: half way to 33 1/8, away from zero.
    assert_eq!(
        chart.lengths[1].values,
        lengths(&["33 1/8", "33 3/8", "33 5/8", "33 7/8", "34 1/8"])
    );
    assert_eq!(
        chart.lengths[2].values[2],
        inches("40").nm,
        "a derived point follows its source"
    );
    assert_eq!(
        chart.lengths[3].values[2],
        inches("44").nm,
        "unless it says its own"
    );
}

#[test]
fn a_stretched_minimum_grades_as_the_point_does() {
    let mut waist = point("waist", Some("14"), segments(&[("XS", "XL", "9/16")]));
    waist.stretched_min = Some(inches("20 1/16"));
    waist.pair_limit = Some(inches("1/8"));
    let chart = chart(&spec(vec![
        waist,
        point("b", Some("3"), Some(Grade::Same {})),
    ]));
    // 18 15/16, 19 1/2, 20 1/16, 20 5/8, 21 3/16, each rounded once.
    assert_eq!(
        chart.rows[0].stretched,
        lengths(&["19", "19 1/2", "20 1/8", "20 5/8", "21 1/4"])
    );
    assert_eq!(chart.rows[0].pair_limit, Some(inches("1/8").nm));
    assert_eq!(chart.rows[1].stretched, []);
    assert_eq!(chart.rows[1].pair_limit, None);
}

#[test]
fn what_is_too_long_on_either_axis_has_no_row() {
    let long = Entered {
        nm: Length::nm(Length::MAX.as_nm() - 1),
        unit: Unit::Cm,
    };
    let mut spec = trousers();
    spec.points.points[1].lengths.insert(id("long"), long);
    assert_eq!(
        grade(&spec).points[1].result,
        Err(vec![GradeFault::TooLong])
    );
    let mut spec = trousers();
    spec.points.points[0].stretched_min = Some(long);
    assert_eq!(
        grade(&spec).points[0].result,
        Err(vec![GradeFault::TooLong])
    );
}

#[test]
fn a_chart_is_read_from_what_it_is_written_as() {
    let mut spec = trousers();
    spec.points.points[0].stretched_min = Some(inches("20"));
    spec.points.points[0].pair_limit = Some(inches("1/8"));
    let tolerance = Tolerance {
        minus: Some(inches("1")),
        plus: None,
    };
    spec.points.points[0].tolerances.insert(id("XL"), tolerance);
    let chart = chart(&spec);
    let bytes = to_canonical(&chart).unwrap();
    assert_eq!(from_canonical::<Chart>(&bytes).unwrap(), chart);
    let text = String::from_utf8(bytes).unwrap();
    assert!(
        text.contains(
            r#""pair_limit":3175000,"plus":12700000,"point":"waist","step":3175000,"stretched":["#
        ) && text.contains(r#""tolerances":{"XL":{"minus":25400000,"plus":12700000}}"#)
            && text.contains(r#""lengths":[{"length":"short","point":"inseam","values":["#),
        "{text}"
    );
}

fn cm(nm: i64) -> Entered {
    Entered {
        nm: Length::nm(nm),
        unit: Unit::Cm,
    }
}

proptest! {
    /// A rule in segments and the values that it gives, typed one by one, are one chart.
    #[test]
    fn segments_and_the_values_they_give_are_one_chart(
        base in 0i64..2_000_000_000, steps in proptest::collection::vec(-20_000_000i64..40_000_000, 4),
        step in 1i64..7_000_000,
    ) {
        let names = ["XS", "S", "M", "L", "XL"];
        let rules = names.windows(2).zip(&steps).map(|(pair, step)| Segment {
            from: id(pair[0]), to: id(pair[1]), step: cm(*step),
        });
        let mut graded = point("a", None, Some(Grade::Segments { segments: rules.collect() }));
        graded.base = Some(cm(base));
        graded.step = Some(cm(step));
        let values = only(graded.clone()).unwrap();
        let typed = names.iter().zip(&values.exact);
        let typed = typed.map(|(name, value)| (id(name), cm(value.as_nm())));
        let mut explicit = graded.clone();
        explicit.grade = Some(Grade::Explicit { values: typed.collect() });
        prop_assert_eq!(chart(&spec(vec![explicit])), chart(&spec(vec![graded])));
    }

    /// Halving base and steps before anything is rounded gives exactly half of every exact value.
    #[test]
    fn half_of_the_typed_is_half_of_the_exact(
        base in 0i64..1_000_000_000, steps in proptest::collection::vec(-20_000_000i64..40_000_000, 4),
    ) {
        let names = ["XS", "S", "M", "L", "XL"];
        let at = |times: i64| {
            let rules = names.windows(2).zip(&steps).map(|(pair, step)| Segment {
                from: id(pair[0]), to: id(pair[1]), step: cm(*step * times),
            });
            let mut point = point("a", None, Some(Grade::Segments { segments: rules.collect() }));
            point.base = Some(cm(base * times));
            only(point).unwrap().exact
        };
        let full = at(2);
        let halved: Vec<Length> = full.iter().map(|value| value.halved(Length::nm(1))).collect();
        prop_assert_eq!(halved, at(1));
    }

    /// On every axis a value is a multiple of the step, and no further than half of one from the
    /// exact one.
    #[test]
    fn every_axis_is_rounded_once(
        base in 0i64..2_000_000_000, gap in -20_000_000i64..40_000_000,
        added in -100_000_000i64..100_000_000, stretched in 0i64..2_000_000_000,
        step in 1i64..7_000_000,
    ) {
        let segment = Segment { from: id("XS"), to: id("XL"), step: cm(gap) };
        let mut point = point("a", None, Some(Grade::Segments { segments: vec![segment] }));
        point.base = Some(cm(base));
        point.step = Some(cm(step));
        point.stretched_min = Some(cm(stretched));
        point.lengths.insert(id("long"), cm(added));
        let mut spec = spec(vec![point]);
        spec.sizes.lengths.push(LengthOption { id: id("long"), ..LengthOption::default() });
        let graded = grade(&spec);
        let exact = &graded.values(&id("a")).unwrap().exact;
        let chart = graded.chart(&spec).unwrap();
        let near = |rounded: Length, exact: i64| {
            rounded.as_nm() % step == 0 && (rounded.as_nm() - exact).abs() * 2 <= step
        };
        for (index, exact) in exact.iter().enumerate() {
            let nm = exact.as_nm();
            prop_assert!(near(chart.rows[0].values[index], nm));
            prop_assert!(near(chart.rows[0].stretched[index], stretched + nm - base));
            prop_assert!(near(chart.lengths[0].values[index], nm + added));
        }
    }

    /// The bytes are stable: what is read from them is written as them again.
    #[test]
    fn the_bytes_of_a_chart_are_stable(
        base in 0i64..2_000_000_000, plus in proptest::collection::btree_map("XS|S|L|XL", 0i64..9_000_000, 0..4),
        pair in proptest::option::of(0i64..9_000_000), stretched in proptest::option::of(0i64..9_000_000),
    ) {
        let mut spec = trousers();
        let point = &mut spec.points.points[1];
        point.base = Some(cm(base));
        point.pair_limit = pair.map(cm);
        point.stretched_min = stretched.map(cm);
        let tolerance = |nm: i64| Tolerance { minus: None, plus: Some(cm(nm)) };
        point.tolerances = plus.iter().map(|(size, nm)| (id(size), tolerance(*nm))).collect();
        let chart = chart(&spec);
        let bytes = to_canonical(&chart).unwrap();
        let read: Chart = from_canonical(&bytes).unwrap();
        prop_assert_eq!(&read, &chart);
        prop_assert_eq!(to_canonical(&read).unwrap(), bytes);
        for (size, nm) in plus {
            prop_assert_eq!(read.rows[1].tolerance(&id(&size)).plus, Length::nm(nm));
        }
    }
}
