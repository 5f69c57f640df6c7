//! Cases of the points of measure and of their grades.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
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
    (Code::ToleranceSizeUnknown, Some("point-b"), Some("tolerances"),
        |s| of_size(s, "size-gone", "1/4"),
        |s| of_size(s, "size-m", "1/4")),
    (Code::LengthsPartial, Some("point-b"), Some("lengths"),
        |s| lengths(s, &["long"]),
        |s| lengths(s, &["short", "long"])),
];

fn of_size(spec: &mut Spec, size: &str, plus: &str) {
    let own = Tolerance {
        minus: None,
        plus: inches(plus),
    };
    point(spec, "B").tolerances.insert(id(size), own);
}

fn lengths(spec: &mut Spec, changed_by: &[&str]) {
    for code in ["short", "long"] {
        spec.sizes.lengths.push(LengthOption {
            id: id(code),
            code: code.to_owned(),
            ..LengthOption::default()
        });
    }
    for length in changed_by {
        let more = inches("1").unwrap();
        point(spec, "B").lengths.insert(id(length), more);
    }
}

#[test]
fn a_tolerance_of_a_size_takes_the_place_of_the_points_own() {
    // S grows by 1 in from XS. Below S 3/8 may be missing, above XS 3/8 be too much.
    let overlaps = |size: &'static str, minus: &'static str, plus: &'static str| {
        let findings = after(|spec| {
            let own = Tolerance {
                minus: inches(minus),
                plus: inches(plus),
            };
            point(spec, "A").tolerances.insert(id(size), own);
        });
        findings.iter().any(|it| it.code == Code::ToleranceOverlaps)
    };
    assert!(overlaps("size-xs", "0", "5/8"));
    assert!(!overlaps("size-xs", "5/8", "9/16"));
    assert!(overlaps("size-s", "5/8", "0"));
    assert!(!overlaps("size-xl", "3/8", "2"));
}

#[test]
fn every_tolerance_is_positive_and_of_the_specs_kind_of_unit() {
    for (typed, code) in [
        ("-1/8", Code::ToleranceNegative),
        ("3mm", Code::ToleranceUnit),
    ] {
        let typed = inches(typed);
        let of_size = Tolerance {
            minus: typed,
            plus: None,
        };
        let found = |edit: &dyn Fn(&mut Point)| {
            let findings = after(|spec| edit(point(spec, "B")));
            let finding = findings.into_iter().find(|it| it.code == code);
            finding.and_then(|it| it.field)
        };
        let pair = found(&|point| point.pair_limit = typed);
        assert_eq!(pair, Some("pair_limit"));
        let own = found(&|point| {
            point.tolerances.insert(id("size-m"), of_size.clone());
        });
        assert_eq!(own, Some("tolerances"));
    }
}
