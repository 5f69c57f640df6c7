//! How the changes of points of measure read.

use super::*;
use crate::spec::document::*;

#[test]
fn the_letters_and_places_of_points() {
    assert_eq!(
        says(|spec| spec.points.points[1].letter = "BB".to_owned()),
        ["BB Bottom width: re-lettered: B → BB"]
    );
    let last_first = |spec: &mut Spec| {
        let last = spec.points.points.pop().expect("it has ten");
        spec.points.points.insert(0, last);
    };
    assert_eq!(
        says(last_first),
        ["J Zip length: moved in the list: place 10 → place 1"]
    );
    assert_eq!(
        says(|spec| drop(spec.points.points.remove(7))),
        ["H Cuff height: point of measure removed. \
          XS 2 1/2 in, S 2 1/2 in, M 2 1/2 in, L 2 1/2 in, XL 2 1/2 in"]
    );
}

#[test]
fn the_rules_of_points() {
    let steps = |first: i64, second: i64| {
        says(move |spec| {
            let grade = &mut spec.points.points[1].grade;
            let Some(Grade::Segments { segments }) = grade else {
                panic!("it is graded in segments");
            };
            segments[0].step = entered(first);
            segments[1].step = entered(second);
        })
    };
    assert_eq!(
        steps(16, 24),
        [
            "B Bottom width: Grade rule L–XL: 1 1/4 in (3.2 cm) → 1 1/2 in (3.8 cm) \
             (1 size changes, base M does not). XL 22 1/4 → 22 1/2 in"
        ]
    );
    assert_eq!(
        steps(12, 24),
        [
            "B Bottom width: Grade: XS–L 1 in (2.5 cm), L–XL 1 1/4 in (3.2 cm) → \
             XS–L 3/4 in (1.9 cm), L–XL 1 1/2 in (3.8 cm) (3 sizes change, base M does not). \
             XS 18 → 18 1/2 in, S 19 → 19 1/4 in, L 21 → 20 3/4 in"
        ]
    );
    // What follows another point says so.
    let longer = says(|spec| spec.points.points[2].base = Some(entered(464)));
    assert_eq!(longer.len(), 2);
    assert!(
        longer[0].starts_with(
            "C Body length: Base value: 28 1/2 in (72.4 cm) → 29 in (73.7 cm) \
             (all 5 sizes change). XS 27 1/4 → 27 3/4 in, "
        ),
        "{longer:?}"
    );
    assert!(
        longer[1].starts_with("J Zip length: values changed (follows C Body length). XS 8 1/4 →"),
        "{longer:?}"
    );
    let shorter = says(|spec| {
        spec.points.points[9].grade = Some(Grade::Derived {
            from: id("point-c"),
            offset: entered(-304 - 8),
        });
    });
    assert!(
        shorter[0].starts_with(
            "J Zip length: Grade: C Body length minus 19 in (48.3 cm) → \
             C Body length minus 19 1/2 in (49.5 cm) (all 5 sizes change)."
        ),
        "{shorter:?}"
    );
}

#[test]
fn a_rule_that_is_written_otherwise_moves_nothing() {
    let said = says(|spec| {
        let Some(Grade::Segments { segments }) = &mut spec.points.points[1].grade else {
            panic!("it is graded in segments");
        };
        let mut first = segments[0].clone();
        first.to = id("size-s");
        segments[0].from = id("size-s");
        segments.insert(0, first);
    });
    assert_eq!(
        said,
        [
            "B Bottom width: Grade: XS–L 1 in (2.5 cm), L–XL 1 1/4 in (3.2 cm) → \
             XS–S 1 in (2.5 cm), S–L 1 in (2.5 cm), L–XL 1 1/4 in (3.2 cm) (no value changes)"
        ]
    );
}

#[test]
fn the_other_fields_of_points() {
    let said = says(|spec| {
        let point = &mut spec.points.points[1];
        point.plus = Some(entered(8));
        point.pair_limit = Some(entered(2));
        let wider = Tolerance {
            minus: None,
            plus: Some(entered(8)),
        };
        point.tolerances.insert(id("size-xl"), wider);
        point.how.closure = Some(Closure::Closed);
        // The same length in another unit.
        let base = point.base.expect("it has a base");
        point.base = Some(Entered {
            unit: Unit::Cm,
            ..base
        });
    });
    assert_eq!(
        said,
        [
            "B Bottom width: Opening: empty → Closed",
            "B Bottom width: Tolerance +: 1/4 in (0.6 cm) → 1/2 in (1.2 cm)",
            "B Bottom width: Tolerance by size: empty → XL +1/2 in (1.2 cm)",
            "B Bottom width: Left and right may differ by: empty → 1/8 in (0.3 cm)",
            "B Bottom width: Base value: 20 in (50.8 cm) → 50.8 cm (20 in)",
        ]
    );
}
