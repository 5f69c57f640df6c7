use proptest::prelude::*;

use super::*;

const POINT: DecimalSign = DecimalSign::Point;

fn inches(text: &str) -> Length {
    Entered::read(text, Unit::Inch).unwrap().nm
}

fn cm(text: &str) -> Length {
    Entered::read(text, Unit::Cm).unwrap().nm
}

#[test]
fn people_type_lengths_in_many_ways() {
    let twenty_eight_and_a_half = Length::nm(723_900_000);
    for typed in [
        "28 1/2",
        "28½",
        "28-1/2\"",
        "28 ½",
        "28.5",
        "28,5",
        "28-½",
        " 28 1/2 in",
        "28 1⁄2″",
        "28.500",
        "+28.5 inch",
        "২৮.৫",
        "٢٨٫٥",
        "２８．５",
        "57/2",
        "28 2/4",
        "28\u{a0}1/2",
        "28  1/2''",
        "28 1/2 IN.",
    ] {
        let read = Entered::read(typed, Unit::Inch);
        let wanted = Entered {
            nm: twenty_eight_and_a_half,
            unit: Unit::Inch,
        };
        assert_eq!(read, Ok(wanted), "{typed}");
    }
    assert_eq!(cm("28"), Length::nm(280_000_000));
    assert_eq!(cm("71.1cm"), Length::nm(711_000_000));
    assert_eq!(inches("71.1 cm"), Length::nm(711_000_000));
    assert_eq!(cm("12mm"), Length::nm(12_000_000));
    assert_eq!(cm("-0.5"), Length::nm(-5_000_000));
    assert_eq!(cm("−0,5"), Length::nm(-5_000_000));
    assert_eq!(inches("-28 1/2"), -twenty_eight_and_a_half);
    assert_eq!(inches("-½"), Length::nm(-12_700_000));
    assert_eq!(cm("1/2"), Length::nm(5_000_000));
    assert_eq!(cm(".5"), Length::nm(5_000_000));
    assert_eq!(cm("0.375"), Length::nm(3_750_000));
    assert_eq!(inches("28.125"), inches("28 1/8"));
    assert_eq!(inches("1/64"), Length::nm(396_875));
    assert_eq!(inches("0.015625"), Length::nm(396_875));
    assert_eq!(cm("-0"), Length::ZERO);
}

#[test]
fn every_fraction_that_has_a_sign_of_its_own_is_read() {
    for (sign, written) in [
        ("½", "1/2"),
        ("¼", "1/4"),
        ("¾", "3/4"),
        ("⅛", "1/8"),
        ("⅜", "3/8"),
        ("⅝", "5/8"),
        ("⅞", "7/8"),
        ("⅓", "1/3"),
        ("⅔", "2/3"),
        ("⅕", "1/5"),
        ("⅖", "2/5"),
        ("⅗", "3/5"),
        ("⅘", "4/5"),
        ("⅙", "1/6"),
        ("⅚", "5/6"),
    ] {
        for unit in Unit::ALL {
            let read = Entered::read(sign, unit);
            assert_eq!(read, Entered::read(written, unit), "{sign}");
            assert_ne!(read, Err(NotALength::NotANumber), "{sign}");
            let read = Entered::read(&format!("7{sign}"), unit);
            assert_eq!(read, Entered::read(&format!("7 {written}"), unit));
        }
    }
    // Not finer than a nanometre: thirds of nothing, fifths of everything.
    assert_eq!(inches("⅖"), Length::nm(10_160_000));
    assert_eq!(Entered::read("⅔", Unit::Cm), Err(NotALength::TooFine));
}

#[test]
fn every_script_of_the_factory_languages_has_digits() {
    for typed in [
        "28,5",
        "٢٨٫٥",
        "۲۸٫۵",
        "२८.५",
        "২৮.৫",
        "๒๘.๕",
        "၂၈.၅",
        "២៨.៥",
        "２８．５",
    ] {
        assert_eq!(cm(typed), Length::nm(285_000_000), "{typed}");
    }
}

#[test]
fn every_reason_has_a_code_of_its_own() {
    use NotALength::*;
    let all = [
        (Empty, "empty"),
        (NotANumber, "not-a-number"),
        (UnknownUnit, "unknown-unit"),
        (UnitMissing, "unit-missing"),
        (MayBeThousands, "may-be-thousands"),
        (ZeroDivisor, "zero-divisor"),
        (FractionNotProper, "fraction-not-proper"),
        (TooFine, "too-fine"),
        (TooLong, "too-long"),
    ];
    for (why, code) in all {
        assert_eq!(why.code(), code);
    }
    assert_eq!(Entered::read_in("28", None), Err(UnitMissing));
}

#[test]
fn more_digits_than_any_tape_has_are_refused_at_any_number_of_them() {
    for count in [19, 20, 30, 35, 38, 39, 45, 400] {
        let digits = "9".repeat(count);
        for unit in Unit::ALL {
            let too_long = Err(NotALength::TooLong);
            assert_eq!(Entered::read(&digits, unit), too_long, "{count}");
            assert_eq!(Entered::read(&format!("{digits}/2"), unit), too_long);
            assert_eq!(Entered::read(&format!("1/{digits}"), unit), too_long);
            let fine = Entered::read(&format!("0.{digits}"), unit);
            assert_eq!(fine, Err(NotALength::TooFine), "{count}");
        }
    }
}

#[test]
fn the_typed_unit_is_kept() {
    assert_eq!(Entered::read("12mm", Unit::Cm).unwrap().unit, Unit::Mm);
    assert_eq!(Entered::read("12", Unit::Cm).unwrap().unit, Unit::Cm);
    assert_eq!(Entered::read("12 \"", Unit::Cm).unwrap().unit, Unit::Inch);
}

#[test]
fn nonsense_is_refused_with_its_reason() {
    use NotALength::*;
    for (typed, why) in [
        ("", Empty),
        ("  ", Empty),
        ("cm", NotANumber),
        ("abc", NotANumber),
        ("-", NotANumber),
        ("28.", NotANumber),
        ("28 5", NotANumber),
        ("--5", NotANumber),
        ("5-", NotANumber),
        ("28 - 1/2", NotANumber),
        ("28 -1/2", NotANumber),
        ("28- 1/2", NotANumber),
        ("28.5 1/2", NotANumber),
        ("28.5½", NotANumber),
        ("1/2/3", NotANumber),
        ("/2", NotANumber),
        ("1/", NotANumber),
        ("28cm5", NotANumber),
        ("1e3", NotANumber),
        ("½½", NotANumber),
        ("28 m", UnknownUnit),
        ("28'", UnknownUnit),
        ("NaN", NotANumber),
        ("1,250", MayBeThousands),
        ("1.250 mm", MayBeThousands),
        ("1,234.5", MayBeThousands),
        ("1.234.567", MayBeThousands),
        ("1/0", ZeroDivisor),
        ("28 0/0", ZeroDivisor),
        ("28 3/2", FractionNotProper),
        ("28 2/2", FractionNotProper),
        ("1/3", TooFine),
        ("28⅓", TooFine),
        ("0.00000001", TooFine),
        ("0.00000000000000000000001", TooFine),
        ("100001", TooLong),
        ("99999999999999999999999", TooLong),
        ("999999999999999999", TooLong),
        ("9223372036854775807/1", TooLong),
    ] {
        assert_eq!(Entered::read(typed, Unit::Cm), Err(why), "{typed:?}");
    }
    assert_eq!(
        Entered::read("28.1234567", Unit::Inch),
        Err(TooFine),
        "no whole nanometre"
    );
    assert_eq!(cm("100000"), Length::MAX);
    assert_eq!(cm("-100000"), -Length::MAX);
}

#[test]
fn published_conversions_hold() {
    let rows: Vec<_> = include_str!("../../../tests/reference/length_conversions.csv")
        .lines()
        .filter(|line| line.starts_with("inch "))
        .collect();
    assert_eq!(rows.len(), 3);
    for row in rows {
        let [_, input, millimetres] = row.split(',').collect::<Vec<_>>()[..] else {
            panic!("{row}");
        };
        let written = inches(input).exact(Unit::Mm, POINT);
        assert_eq!(written.trim_end_matches('0'), millimetres, "{row}");
        // One more zero, for three decimals alone could be thousands.
        let back = Entered::read(&format!("{millimetres}0"), Unit::Mm);
        assert_eq!(back.unwrap().nm, inches(input), "{row}");
    }
}

/// Common practice, no source, but the inch is 25.4 mm by definition: what is two inches wide is
/// 50.8 mm on paper, to the nanometre, however it was typed and whatever the master unit is.
#[test]
fn two_inches_are_exactly_50_8_mm() {
    for typed in ["2\"", "2 in", "2.0\"", "64/32 inch", "5.08 cm"] {
        for unit in Unit::ALL {
            let nm = Entered::read(typed, unit).unwrap().nm;
            assert_eq!(nm, Length::nm(50_800_000));
            assert_eq!(nm.exact(Unit::Mm, POINT), "50.8");
            assert_eq!(nm.show(Unit::Mm, cm("0.01"), DecimalSign::Comma), "50,8");
        }
    }
}

#[test]
fn lengths_are_written_as_a_tape_reads() {
    let eighth = inches("1/8");
    assert_eq!(inches("28.5").show(Unit::Inch, eighth, POINT), "28 1/2");
    assert_eq!(inches("0.375").show(Unit::Inch, eighth, POINT), "3/8");
    assert_eq!(inches("-28.5").show(Unit::Inch, eighth, POINT), "-28 1/2");
    assert_eq!(inches("-0.5").show(Unit::Inch, eighth, POINT), "-1/2");
    assert_eq!(inches("0").show(Unit::Inch, eighth, POINT), "0");
    assert_eq!(inches("28 1/16").show(Unit::Inch, eighth, POINT), "28 1/8");
    assert_eq!(inches("28 1/2").show(Unit::Cm, cm("0.1"), POINT), "72.4");
    assert_eq!(cm("28").show(Unit::Cm, cm("0.1"), POINT), "28.0");
    assert_eq!(
        cm("28").show(Unit::Cm, cm("0.1"), DecimalSign::Comma),
        "28,0"
    );
    assert_eq!(cm("28.5").show(Unit::Mm, cm("0.1"), POINT), "285");
    assert_eq!(cm("-0.04").show(Unit::Cm, cm("0.1"), POINT), "0.0");
    assert_eq!(cm("28.5").show(Unit::Cm, cm("1"), POINT), "29");
    assert_eq!(cm("28.55").show(Unit::Cm, Length::ZERO, POINT), "28.55");
    assert_eq!(cm("28.5").exact(Unit::Cm, POINT), "28.5");
    assert_eq!(cm("28.0").exact(Unit::Cm, POINT), "28");
    assert_eq!(inches("28.3").exact(Unit::Inch, POINT), "28.3");
    assert_eq!(cm("1").exact(Unit::Inch, POINT), "50/127");
    assert_eq!(inches("28 1/2").exact(Unit::Cm, POINT), "72.39");
    assert_eq!(inches("3 1/32").exact(Unit::Cm, POINT), "7.699375");
    assert_eq!(
        Length::nm(28_125_000 * 10).exact(Unit::Cm, POINT),
        "28.1250",
        "three decimals would read as thousands"
    );
}

#[test]
fn rounding_goes_half_away_from_zero_once() {
    let step = cm("0.5");
    for (exact, rounded) in [
        ("2.24", "2.0"),
        ("2.25", "2.5"),
        ("2.74", "2.5"),
        ("2.75", "3"),
        ("-2.24", "-2"),
        ("-2.25", "-2.5"),
        ("-2.75", "-3"),
        ("0", "0"),
    ] {
        assert_eq!(cm(exact).rounded(step), cm(rounded), "{exact}");
    }
    // Rounded to 0.1 first, 2.245 would become 2.25 and then 2.5: once only.
    assert_eq!(cm("2.2450").rounded(step), cm("2"));
    assert_eq!(inches("3/32").rounded(inches("1/16")), inches("1/8"));
    assert_eq!(inches("-3/32").rounded(inches("1/16")), inches("-1/8"));
}

#[test]
fn a_step_that_is_none_rounds_nothing() {
    for step in [Length::ZERO, cm("-0.5")] {
        assert_eq!(cm("2.24").rounded(step), cm("2.24"));
        assert_eq!(cm("2.24").truncated(step), cm("2.24"));
        assert_eq!(cm("2.24").halved(step), cm("1.12"));
        assert_eq!(cm("2.24").tolerance_halved(step), cm("1.12"));
        assert!(!cm("2").is_multiple_of(step));
    }
    assert!(cm("2").is_multiple_of(cm("0.5")) && cm("-2").is_multiple_of(cm("0.5")));
    assert!(!cm("2.1").is_multiple_of(cm("0.5")));
}

#[test]
fn a_unit_is_found_by_its_name() {
    for unit in Unit::ALL {
        assert_eq!(Unit::from_name(unit.name()), Some(unit));
    }
    assert_eq!(Unit::from_name("in"), None);
}

#[test]
fn a_converted_tolerance_is_never_wider() {
    assert_eq!(cm("1").tolerance_in(Unit::Inch), inches("3/8"));
    assert_eq!(cm("0.5").tolerance_in(Unit::Inch), inches("3/16"));
    assert_eq!(inches("1/4").tolerance_in(Unit::Cm), cm("0.6"));
    assert_eq!(inches("1/4").tolerance_in(Unit::Inch), inches("1/4"));
    assert_eq!(cm("0").tolerance_in(Unit::Inch), Length::ZERO);
    assert_eq!(
        inches("3/8").tolerance_halved(inches("1/16")),
        inches("3/16")
    );
    assert_eq!(inches("3/8").tolerance_halved(inches("1/8")), inches("1/8"));
}

#[test]
fn half_and_full_are_derived_for_display() {
    let step = inches("1/16");
    let full = inches("28 1/16");
    assert_eq!(
        other_basis(full, Basis::Full, step),
        Some((Basis::Half, inches("14 1/16"))),
        "14 1/32 rounds once, away from zero"
    );
    assert_eq!(
        other_basis(inches("14"), Basis::Half, step),
        Some((Basis::Full, inches("28")))
    );
    assert_eq!(other_basis(full, Basis::Linear, step), None);
}

#[test]
fn a_stored_length_is_bounded() {
    assert!(serde_json::from_str::<Length>("1000000000000").is_ok());
    assert!(serde_json::from_str::<Length>("1000000000001").is_err());
    assert!(serde_json::from_str::<Length>("1.5").is_err());
    assert_eq!(serde_json::to_string(&inches("1/64")).unwrap(), "396875");
    assert_eq!(Length::try_from(i64::MIN), Err(TooLong(i64::MIN)));
}

#[test]
fn steps_are_offered_by_unit() {
    let shown =
        |unit: Unit| -> Vec<String> { unit.steps().iter().map(|s| s.exact(unit, POINT)).collect() };
    assert_eq!(shown(Unit::Inch), ["1/16", "1/8", "1/4"]);
    assert_eq!(shown(Unit::Cm), ["0.1", "0.5"]);
    assert_eq!(shown(Unit::Mm), ["1", "5"]);
}

fn any_unit() -> impl Strategy<Value = Unit> {
    proptest::sample::select(&Unit::ALL[..])
}

fn any_sign() -> impl Strategy<Value = DecimalSign> {
    proptest::sample::select(&[DecimalSign::Point, DecimalSign::Comma][..])
}

fn any_length() -> impl Strategy<Value = Length> {
    let max = Length::MAX.as_nm();
    prop_oneof![
        (-max..=max).prop_map(Length::nm),
        // What is really typed: 64ths of an inch, hundredths of a centimetre.
        (-20_000i64..20_000).prop_map(|n| Length::nm(n * 396_875)),
        (-200_000i64..200_000).prop_map(|n| Length::nm(n * 100_000)),
    ]
}

proptest! {
    #[test]
    fn what_is_written_exactly_reads_the_same(
        length in any_length(), unit in any_unit(), sign in any_sign(), other in any_unit(),
    ) {
        let written = length.exact(unit, sign);
        let read = Entered::read(&written, unit);
        prop_assert_eq!(read, Ok(Entered { nm: length, unit }), "{}", written);
        let with_unit = format!("{written} {unit}");
        let read = Entered::read(&with_unit, other);
        prop_assert_eq!(read, Ok(Entered { nm: length, unit }), "{}", with_unit);
    }

    #[test]
    fn what_is_shown_at_a_step_reads_as_the_rounded_value(
        length in any_length(), unit in any_unit(), sign in any_sign(), n in 0usize..2,
    ) {
        let step = unit.steps()[n];
        let shown = length.show(unit, step, sign);
        let read = Entered::read(&shown, unit).unwrap().nm;
        prop_assert_eq!(read, length.rounded(step), "{}", shown);
    }

    #[test]
    fn rounding_moves_at_most_half_a_step(length in any_length(), unit in any_unit()) {
        for step in unit.steps() {
            let rounded = length.rounded(*step);
            prop_assert!(rounded.is_multiple_of(*step));
            prop_assert!((rounded - length).abs().doubled() <= *step);
            prop_assert_eq!(rounded.rounded(*step), rounded);
            prop_assert_eq!((-length).rounded(*step), -rounded);
            let truncated = length.truncated(*step);
            prop_assert!(truncated.abs() <= length.abs());
            prop_assert!((length - truncated).abs() < *step);
        }
    }

    #[test]
    fn halving_rounds_once(length in any_length(), unit in any_unit()) {
        let step = unit.fine_step();
        let half = length.halved(step);
        prop_assert!((half.doubled() - length).abs() <= step);
        prop_assert_eq!(length.doubled().halved(step), length.rounded(step));
        prop_assert!(length.tolerance_halved(step).abs().doubled() <= length.abs());
    }

    #[test]
    fn reading_never_panics(text in "[-+ 0-9.,/½\"a-z২]{0,24}", unit in any_unit()) {
        let _ = Entered::read(&text, unit);
    }
}
