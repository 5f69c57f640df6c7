//! Against published values, and what a colour never does.

use proptest::prelude::*;

use super::*;
use crate::spec::document::Colour;

const SHARMA: &str = include_str!("../../../tests/reference/ciede2000_sharma2005.csv");
const CMC: &str = include_str!("../../../tests/reference/cmc_cie76.csv");
const SRGB: &str = include_str!("../../../tests/reference/srgb_lab.csv");

const CIE76: Formula = Formula::Cie76 {};
const CIEDE2000: Formula = Formula::Ciede2000 {};

fn cmc(l: &str, c: &str) -> Formula {
    let [l, c] = [l, c].map(number);
    Formula::Cmc { l, c }
}

fn number(text: &str) -> Decimal {
    Decimal::read(text).unwrap()
}

/// Under D65 for the 10° observer, as textiles are measured.
fn lab(l: &str, a: &str, b: &str) -> Lab {
    let [l, a, b] = [l, a, b].map(number);
    Lab {
        l,
        a,
        b,
        illuminant: Illuminant::D65,
        observer: Observer::Ten,
    }
}

/// The rows below the remarks and the names of the columns.
fn rows(csv: &str) -> Vec<Vec<&str>> {
    let lines = csv.lines().filter(|line| !line.starts_with('#'));
    let rows = lines.skip(1).map(|line| line.split(',').collect());
    rows.collect()
}

fn near(found: f64, published: &str, tolerance: f64, row: &[&str]) {
    let published: f64 = published.parse().unwrap();
    let far = (found - published).abs();
    assert!(far <= tolerance, "{found} is not {published}: {row:?}");
}

#[test]
fn ciede2000_gives_the_published_pairs() {
    let rows = rows(SHARMA);
    assert_eq!(rows.len(), 34);
    for row in &rows {
        let [standard, sample] = [1, 4].map(|at| lab(row[at], row[at + 1], row[at + 2]));
        let found = unrounded(&standard, &sample, CIEDE2000).unwrap();
        // Published to four digits.
        near(found, row[7], 0.000_05, row);
    }
}

#[test]
fn cmc_and_cie76_give_the_reference_values() {
    let rows = rows(CMC);
    assert!(rows.len() > 10);
    for row in &rows {
        let [standard, sample] = [0, 3].map(|at| lab(row[at], row[at + 1], row[at + 2]));
        let found = |formula| unrounded(&standard, &sample, formula).unwrap();
        near(found(CIE76), row[6], 0.000_001, row);
        near(found(cmc("2", "1")), row[7], 0.000_001, row);
        near(found(cmc("1", "1")), row[8], 0.000_001, row);
        let swapped = unrounded(&sample, &standard, cmc("2", "1")).unwrap();
        near(swapped, row[9], 0.000_001, row);
    }
}

#[test]
fn srgb_gives_the_reference_values_under_both_lights() {
    let rows = rows(SRGB);
    assert!(rows.len() >= 10);
    for row in &rows {
        let screen = Screen::read(row[0]).unwrap();
        for (light, at) in [(Illuminant::D65, 1), (Illuminant::D50, 4)] {
            let lab = from_screen(screen, light).unwrap();
            for (found, published) in [lab.l, lab.a, lab.b].iter().zip(&row[at..]) {
                // 0.03 is what published matrices differ by, see the file's remarks.
                near(found.to_f64(), published, 0.03, row);
            }
        }
    }
}

#[test]
fn unlike_readings_are_not_compared() {
    let standard = lab("50", "10", "10");
    let other = Lab {
        illuminant: Illuminant::F11,
        ..standard
    };
    assert_eq!(
        difference(&standard, &other, CIEDE2000),
        Err(Incomparable::Illuminants {
            standard: Illuminant::D65,
            sample: Illuminant::F11,
        })
    );
    let other = Lab {
        observer: Observer::Two,
        ..standard
    };
    assert_eq!(
        difference(&standard, &other, CIE76),
        Err(Incomparable::Observers {
            standard: Observer::Ten,
            sample: Observer::Two,
        })
    );
    for wrong in [
        lab("-0.1", "0", "0"),
        lab("151", "0", "0"),
        lab("50", "201", "0"),
        lab("50", "0", "-201"),
    ] {
        let found = difference(&standard, &wrong, CIE76);
        assert_eq!(found, Err(Incomparable::NoColour));
        assert_eq!(on_screen(&wrong), Err(NotOnScreen::NoColour));
    }
    for wrong in [
        cmc("0", "1"),
        cmc("2", "-1"),
        cmc("2", "10.1"),
        cmc("0.09", "1"),
    ] {
        let found = difference(&standard, &standard, wrong);
        assert_eq!(found, Err(Incomparable::Weight));
    }
    // Any light will do as long as it is the same.
    let by_lamp = Lab {
        illuminant: Illuminant::F11,
        ..standard
    };
    assert_eq!(difference(&by_lamp, &by_lamp, CIEDE2000), Ok(Decimal::ZERO));
}

#[test]
fn a_reading_passes_up_to_and_with_the_limit() {
    let limit = Limit {
        formula: CIE76,
        at_most: number("1"),
    };
    let standard = lab("50.1", "0", "0");
    for (l, difference, passes) in [
        ("51.1", "1", true),
        // Rounded first: what is shown as 1.00 is 1.00.
        ("51.104", "1", true),
        ("51.105", "1.01", false),
        ("49.09", "1.01", false),
    ] {
        let judged = judge(&standard, &lab(l, "0", "0"), &limit).unwrap();
        let difference = number(difference);
        assert_eq!(judged, Judged { difference, passes }, "{l}");
    }
}

#[test]
fn a_limit_is_kept_in_the_settings_as_it_is_named() {
    let json = r#"{"formula":{"cmc":{"l":"2","c":"1"}},"at_most":"0.8"}"#;
    let limit: Limit = serde_json::from_str(json).unwrap();
    assert_eq!(limit.formula, cmc("2", "1"));
    assert_eq!(serde_json::to_string(&limit).unwrap(), json);
    let unknown = r#"{"formula":{"cie76":{"k":"2"}},"at_most":"0.8"}"#;
    assert!(serde_json::from_str::<Limit>(unknown).is_err());
}

#[test]
fn the_lamps_that_a_screen_cannot_stand_for_are_named() {
    for lamp in [Illuminant::A, Illuminant::F11] {
        let reading = Lab {
            illuminant: lamp,
            ..lab("50", "0", "0")
        };
        let why = NotOnScreen::Illuminant(lamp);
        assert_eq!(on_screen(&reading), Err(why));
        assert_eq!(from_screen(Screen([1, 2, 3]), lamp), Err(why));
    }
}

#[test]
fn white_and_grey_are_neutral_under_every_daylight() {
    for illuminant in [Illuminant::D50, Illuminant::D65] {
        for observer in [Observer::Two, Observer::Ten] {
            for (l, screen) in [("100", "#ffffff"), ("53.585", "#808080"), ("0", "#000000")] {
                let reading = Lab {
                    illuminant,
                    observer,
                    ..lab(l, "0", "0")
                };
                let screen = Screen::read(screen).unwrap();
                let clipped = false;
                assert_eq!(on_screen(&reading), Ok(OnScreen { screen, clipped }));
            }
        }
    }
}

#[test]
fn what_a_screen_cannot_show_is_clipped_and_said() {
    let clipped = |l, a, b| on_screen(&lab(l, a, b)).unwrap();
    // A fluorescent yellow, and a turquoise beyond the screen's green and blue.
    let yellow = clipped("105", "-20", "120");
    assert!(yellow.clipped);
    assert_eq!(yellow.screen.0[2], 0);
    assert!(clipped("50", "-100", "-30").clipped);
    assert!(!clipped("50", "20", "-10").clipped);
}

#[test]
fn a_screen_value_has_one_form() {
    for typed in ["#1F3A5F", "1f3a5f", " #1f3a5F "] {
        let screen = Screen::read(typed).unwrap();
        assert_eq!(screen, Screen([0x1f, 0x3a, 0x5f]));
        assert_eq!(screen.to_string(), "#1f3a5f");
    }
    for wrong in [
        "", "#", "#1f3a5", "#1f3a5f0", "#1f3a5g", "+1f3a5", "##1f3a5",
    ] {
        assert_eq!(Screen::read(wrong), Err(NotAScreenValue), "{wrong}");
    }
    assert!(Screen::try_from("#1F3A5F".to_owned()).is_err());
}

#[test]
fn the_reading_goes_before_what_was_typed() {
    let typed = Some("#102030".to_owned());
    let with = |lab| Colour {
        lab,
        screen: typed.clone(),
        ..Colour::default()
    };
    let daylight = lab("53.585", "0", "0");
    let lamp = Lab {
        illuminant: Illuminant::A,
        ..daylight
    };
    let found = |colour: &Colour| shown(colour).map(|it| (it.screen.to_string(), it.computed));
    assert_eq!(
        found(&with(Some(daylight))),
        Some(("#808080".to_owned(), true))
    );
    assert_eq!(
        found(&with(Some(lamp))),
        Some(("#102030".to_owned(), false))
    );
    assert_eq!(found(&with(None)), Some(("#102030".to_owned(), false)));
    assert_eq!(found(&Colour::default()), None);
}

#[test]
fn contrast_is_the_difference_in_lightness() {
    let [white, black, grey] = [[255; 3], [0; 3], [128; 3]].map(Screen);
    assert!((lightness_contrast(white, black) - 100.0).abs() < 0.001);
    assert!((lightness_contrast(grey, white) - 46.415).abs() < 0.001);
    assert_eq!(lightness_contrast(grey, grey), 0.0);
}

fn any_lab() -> impl Strategy<Value = Lab> {
    let number = |from: i64, to: i64| (from..=to).prop_map(|digits| Decimal::new(digits, 2));
    let coordinates = (
        number(0, 10_000),
        number(-12_800, 12_800),
        number(-12_800, 12_800),
    );
    coordinates.prop_map(|(l, a, b)| Lab {
        l,
        a,
        b,
        illuminant: Illuminant::D65,
        observer: Observer::Ten,
    })
}

proptest! {
    #[test]
    fn cie76_and_ciede2000_are_symmetric(one in any_lab(), other in any_lab()) {
        for formula in [CIE76, CIEDE2000] {
            let there = unrounded(&one, &other, formula).unwrap();
            let back = unrounded(&other, &one, formula).unwrap();
            prop_assert!((there - back).abs() < 1e-9, "{formula:?}: {there} {back}");
        }
    }

    #[test]
    fn equal_colours_have_no_difference_and_unequal_ones_have(
        one in any_lab(),
        other in any_lab(),
    ) {
        for formula in [CIE76, CIEDE2000, cmc("2", "1")] {
            prop_assert_eq!(unrounded(&one, &one, formula), Ok(0.0));
            let far = unrounded(&one, &other, formula).unwrap();
            prop_assert_eq!(far > 0.0, one != other, "{:?} {}", formula, far);
            prop_assert!(far.is_finite());
        }
    }

    #[test]
    fn a_screen_value_comes_back_through_lab(red: u8, green: u8, blue: u8) {
        let screen = Screen([red, green, blue]);
        for light in [Illuminant::D50, Illuminant::D65] {
            let lab = from_screen(screen, light).unwrap();
            let back = OnScreen { screen, clipped: false };
            prop_assert_eq!(on_screen(&lab), Ok(back), "{:?}", lab);
        }
    }
}
