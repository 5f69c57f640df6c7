use proptest::prelude::*;

use super::*;

fn sizes(codes: &[&str]) -> Vec<Size> {
    let size = |code: &&str| Size {
        id: ItemId::new(format!("size-{code}")),
        code: (*code).to_owned(),
        label: String::new(),
        ..Size::default()
    };
    codes.iter().map(size).collect()
}

fn with<T>(codes: &[&str], unit: Option<Unit>, see: impl FnOnce(&Names) -> T) -> T {
    let sizes = sizes(codes);
    let (c, d) = (ItemId::new("point-c"), ItemId::new("point-d"));
    see(&Names {
        sizes: &sizes,
        points: vec![(&c, "C"), (&d, "D2")],
        unit,
    })
}

const ALPHA: [&str; 5] = ["XS", "S", "M", "L", "2XL"];

fn alpha(text: &str) -> Result<Grade, NotAGrade> {
    with(&ALPHA, Some(Unit::Cm), |names| read(text, names))
}

fn cm(text: &str) -> Entered {
    Entered::read(text, Unit::Cm).unwrap()
}

fn steps(steps: &[(&str, &str, &str)]) -> Grade {
    let segment = |(from, to, step): &(&str, &str, &str)| Segment {
        from: ItemId::new(format!("size-{from}")),
        to: ItemId::new(format!("size-{to}")),
        step: cm(step),
    };
    Grade::Segments {
        segments: steps.iter().map(segment).collect(),
    }
}

#[test]
fn a_rule_is_written_in_five_ways() {
    assert_eq!(alpha("same"), Ok(Grade::Same {}));
    assert_eq!(alpha(" Same "), Ok(Grade::Same {}));
    assert_eq!(alpha("2"), Ok(steps(&[("XS", "2XL", "2")])));
    assert_eq!(alpha("-0,5"), Ok(steps(&[("XS", "2XL", "-0.5")])));
    let two = steps(&[("XS", "L", "2"), ("L", "2XL", "2.5")]);
    for text in [
        "XS-L 2.0, L-2XL 2.5",
        "xs-l 2,0, l-2xl 2,5",
        "XS–L: 2; L – 2XL: 2,5",
        "XS-L 2,L-2XL 2.5,",
        "XS-L 2cm\nL-2XL 25 mm",
    ] {
        let read = alpha(text);
        if text.contains("mm") {
            assert!(matches!(read, Ok(Grade::Segments { segments }) if segments.len() == 2));
        } else {
            assert_eq!(read, Ok(two.clone()), "{text}");
        }
    }
    let values = BTreeMap::from([
        (ItemId::new("size-XS"), cm("50")),
        (ItemId::new("size-2XL"), cm("52.5")),
    ]);
    assert_eq!(alpha("XS=50, 2xl = 52,5"), Ok(Grade::Explicit { values }));
    let derived = |from: &str, offset| Grade::Derived {
        from: ItemId::new(from),
        offset: cm(offset),
    };
    assert_eq!(alpha("=C - 1.5"), Ok(derived("point-c", "-1.5")));
    assert_eq!(alpha("= c−1,5"), Ok(derived("point-c", "-1.5")));
    assert_eq!(alpha("=D2 + 3"), Ok(derived("point-d", "3")));
    assert_eq!(alpha("=C"), Ok(derived("point-c", "0")));
}

#[test]
fn what_has_no_single_meaning_is_refused_with_its_piece() {
    let unreadable = |piece: &str| {
        Err(NotAGrade::Unreadable {
            piece: piece.to_owned(),
        })
    };
    assert_eq!(alpha("XS-Q 2"), unreadable("XS-Q 2"));
    assert_eq!(alpha("XS-L 2, twice"), unreadable("twice"));
    assert_eq!(alpha("XS-L2"), unreadable("XS-L2"));
    assert_eq!(alpha("XS=50, S"), unreadable("S"));
    let length = |typed: &str, why| {
        let typed = typed.to_owned();
        Err(NotAGrade::Length { typed, why })
    };
    assert_eq!(alpha("XS-L 2x"), length("2x", NotALength::UnknownUnit));
    assert_eq!(alpha("1,250"), length("1,250", NotALength::MayBeThousands));
    assert_eq!(alpha("=C - q"), length("- q", NotALength::UnknownUnit));
    assert_eq!(
        alpha("XS=50, XS=51"),
        Err(NotAGrade::SizeTwice {
            code: "XS".to_owned()
        })
    );
    assert_eq!(
        alpha("Q=50"),
        Err(NotAGrade::UnknownSize {
            code: "Q".to_owned()
        })
    );
    for text in ["=Q", "=", "=CC", "=C2"] {
        let found = alpha(text);
        assert!(
            matches!(found, Err(NotAGrade::UnknownPoint { .. })),
            "{text}"
        );
    }
    let one = with(&["M"], Some(Unit::Cm), |names| read("2", names));
    assert_eq!(one, Err(NotAGrade::TooFewSizes));
    let twice = with(&["M", "m", "L"], Some(Unit::Cm), |names| {
        read("M-L 2", names)
    });
    assert!(matches!(twice, Err(NotAGrade::TwoReadings { .. })));
}

#[test]
fn numbers_as_size_codes_are_told_from_steps() {
    let codes = ["2", "24", "4", "42", "5-6", "6"];
    let read = |text| with(&codes, Some(Unit::Cm), |names| read(text, names));
    let one = |from, to| Ok(steps(&[(from, to, "2")]));
    assert_eq!(read("2-42 2"), one("2", "42"));
    assert_eq!(read("24-5-6 2"), one("24", "5-6"));
    assert_eq!(
        read("4-42 2, 42-6 2"),
        Ok(steps(&[("4", "42", "2"), ("42", "6", "2")]))
    );
}

#[test]
fn a_spec_without_a_unit_takes_only_lengths_that_name_theirs() {
    let read = |text| with(&ALPHA, None, |names| read(text, names));
    assert_eq!(read("2 cm"), Ok(steps(&[("XS", "2XL", "2")])));
    let why = NotALength::UnitMissing;
    let typed = "2".to_owned();
    assert_eq!(read("2"), Err(NotAGrade::Length { typed, why }));
}

#[test]
fn what_is_gone_is_written_as_a_gap() {
    let rule = steps(&[("XS", "4XL", "2")]);
    let written = with(&ALPHA, Some(Unit::Cm), |names| write(&rule, names));
    assert_eq!(written, "XS-? 2");
    assert!(alpha(&written).is_err());
}

fn entered() -> impl Strategy<Value = Entered> {
    let unit = prop_oneof![Just(Unit::Cm), Just(Unit::Mm), Just(Unit::Inch)];
    let sixteenths = (-3000i64..3000).prop_map(|n| n * 1_587_500);
    let tenths = (-3000i64..3000).prop_map(|n| n * 1_000_000);
    (
        prop_oneof![sixteenths, tenths, -9_000_000_000i64..9_000_000_000],
        unit,
    )
        .prop_map(|(nm, unit)| {
            // In inches only what can be typed in inches: a fraction of a power of two.
            let nm = match unit {
                Unit::Inch => nm / 396_875 * 396_875,
                Unit::Cm | Unit::Mm => nm,
            };
            let nm = Length::nm(nm);
            Entered { nm, unit }
        })
}

fn grade() -> impl Strategy<Value = Grade> {
    let size = || (0..ALPHA.len()).prop_map(|i| ItemId::new(format!("size-{}", ALPHA[i])));
    let segment = (size(), size(), entered());
    let segment = segment.prop_map(|(from, to, step)| Segment { from, to, step });
    let point = prop_oneof![Just(ItemId::new("point-c")), Just(ItemId::new("point-d"))];
    prop_oneof![
        Just(Grade::Same {}),
        proptest::collection::vec(segment, 1..4).prop_map(|segments| Grade::Segments { segments }),
        proptest::collection::btree_map(size(), entered(), 1..5)
            .prop_map(|values| Grade::Explicit { values }),
        (point, entered()).prop_map(|(from, offset)| Grade::Derived { from, offset }),
    ]
}

proptest! {
    #[test]
    fn every_grade_reads_back_from_its_writing(grade in grade(), master in 0usize..3) {
        with(&ALPHA, Some(Unit::ALL[master]), |names| {
            let written = write(&grade, names);
            let mut expected = grade.clone();
            // An offset of nothing has no unit to keep.
            if let Grade::Derived { offset, .. } = &mut expected
                && offset.nm == Length::ZERO
            {
                offset.unit = Unit::ALL[master];
            }
            prop_assert_eq!(read(&written, names), Ok(expected), "{}", written);
            Ok(())
        })?;
    }

    #[test]
    fn nothing_that_is_typed_breaks_the_reader(text in ".{0,40}", rule in "[XSML0-9=+, ;:-]{0,20}") {
        let _ = alpha(&text);
        let _ = alpha(&rule);
    }
}
