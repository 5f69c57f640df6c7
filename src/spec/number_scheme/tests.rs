//! The number scheme as brands use it.

mod mask;

use proptest::prelude::*;

use super::CheckSystem::*;
use super::*;

fn list(name: &str, codes: &[&str]) -> List {
    let entry = |code: &&str| Entry {
        code: (*code).to_owned(),
        meaning: format!("meaning of {code}"),
    };
    List {
        name: name.to_owned(),
        entries: codes.iter().map(entry).collect(),
    }
}

fn written(mask: &str, check: Option<CheckSystem>) -> Written {
    Written {
        mask: mask.to_owned(),
        lists: vec![
            list("season", &["S27", "W27", "S28"]),
            list("kind", &["JK", "TR", "T"]),
        ],
        check,
    }
}

fn scheme(mask: &str) -> NumberScheme {
    let check = mask.contains("{check}").then_some(Mod37_36);
    NumberScheme::try_from(written(mask, check)).unwrap()
}

fn choices(pairs: &[(&str, &str)]) -> Choices {
    let pairs = pairs.iter();
    pairs
        .map(|(list, code)| ((*list).to_owned(), (*code).to_owned()))
        .collect()
}

fn number(pairs: &[(&str, &str)], count: u32, colourway: Option<u32>) -> Number {
    Number {
        choices: choices(pairs),
        count,
        colourway,
    }
}

#[test]
fn a_number_is_written_by_its_mask_and_read_back() {
    for (mask, of, text) in [
        (
            "{season}{seq:3}",
            number(&[("season", "W27")], 7, None),
            "W27007",
        ),
        (
            "{kind}-{seq:4}/{colourway:2}",
            number(&[("kind", "JK")], 12, None),
            "JK-0012",
        ),
        (
            "{kind}-{seq:4}/{colourway:2}",
            number(&[("kind", "JK")], 12, Some(3)),
            "JK-0012/03",
        ),
        ("HT {seq:1}", number(&[], 9, None), "HT 9"),
        // The text before the colourway goes with it, what follows stays.
        (
            "{seq:2}.{colourway:1}-{kind}",
            number(&[("kind", "T")], 1, None),
            "01-T",
        ),
        (
            "{seq:2}.{colourway:1}-{kind}",
            number(&[("kind", "T")], 1, Some(2)),
            "01.2-T",
        ),
    ] {
        let scheme = scheme(mask);
        assert_eq!(scheme.format(&of).as_deref(), Ok(text), "{mask}");
        assert_eq!(scheme.read(text), Ok(of.clone()));
        assert_eq!(scheme.read(&format!(" {} ", text.to_lowercase())), Ok(of));
    }
}

#[test]
fn the_check_character_stands_for_what_is_before_it() {
    let of = number(&[("kind", "JK")], 12, Some(3));
    let style = number(&[("kind", "JK")], 12, None);
    let check = |text: &str| Mod37_36.characters(text).unwrap();

    let whole = scheme("{kind}-{seq:4}/{colourway:2}-{check}");
    let text = format!("JK-0012/03-{}", check("JK001203"));
    assert_eq!(whole.format(&of), Ok(text));
    let text = format!("JK-0012-{}", check("JK0012"));
    assert_eq!(whole.format(&style), Ok(text));

    // One for the style alone, which its colourways share.
    let shared = scheme("{kind}-{seq:4}{check}/{colourway:2}");
    let text = format!("JK-0012{}/03", check("JK0012"));
    assert_eq!(shared.format(&of).as_ref(), Ok(&text));
    assert_eq!(shared.read(&text.to_lowercase()), Ok(of));

    let wrong = text.replace("0012", "0013");
    assert_eq!(shared.read(&wrong), Err(NotANumber::Check));
    assert_eq!(shared.read("JK-0012"), Err(NotANumber::OtherMask));
}

#[test]
fn two_check_digits_have_the_room_of_two() {
    let written = written("2027-{seq:3}-{check}", Some(Mod97_10));
    let scheme = NumberScheme::try_from(written).unwrap();
    let text = scheme.format(&number(&[], 4, None)).unwrap();
    // By hand: 202700400 leaves 82 over 97, and 98 - 82 = 16.
    assert_eq!(text, "2027-004-16");
    assert_eq!(scheme.read("2027-004-61"), Err(NotANumber::Check));
    assert_eq!(scheme.read("2027-004-1"), Err(NotANumber::OtherMask));
}

#[test]
fn what_is_no_number_is_refused() {
    let scheme = scheme("{kind}-{seq:2}");
    let jacket = [("kind", "JK")];
    let refused = |number: &Number| scheme.format(number).unwrap_err();
    assert_eq!(
        refused(&number(&[], 1, None)),
        NoNumber::ChoiceMissing {
            list: "kind".to_owned()
        }
    );
    assert_eq!(
        refused(&number(&[("kind", "XX")], 1, None)),
        NoNumber::UnknownCode {
            list: "kind".to_owned(),
            code: "XX".to_owned()
        }
    );
    assert_eq!(
        refused(&number(&[("kind", "JK"), ("season", "S27")], 1, None)),
        NoNumber::UnknownList {
            list: "season".to_owned()
        }
    );
    assert_eq!(refused(&number(&jacket, 0, None)), NoNumber::Zero);
    assert_eq!(
        refused(&number(&jacket, 1, Some(1))),
        NoNumber::NoColourways
    );
    let full = NoNumber::CounterFull {
        name: "seq",
        digits: 2,
    };
    assert_eq!(refused(&number(&jacket, 100, None)), full);
    assert_eq!(
        scheme.next(&choices(&jacket), ["JK-99"]),
        Err(full),
        "never wider"
    );
    for other in [
        "", "JK", "JK-1", "JK-001", "JK-00", "XX-01", "JK_01", "JK-0٣", "JK-0é",
    ] {
        assert_eq!(scheme.read(other), Err(NotANumber::OtherMask), "{other}");
    }
}

#[test]
fn the_next_number_is_one_above_the_highest() {
    let scheme = scheme("{kind}-{seq:3}/{colourway:2}");
    let next = |code: &str, taken: &[&str]| {
        let choices = choices(&[("kind", code)]);
        scheme.next(&choices, taken.iter().copied()).unwrap()
    };
    assert_eq!(next("JK", &[]), "JK-001");
    // The gap stays; other kinds and foreign numbers do not count; colourways do.
    let taken = ["JK-001", "jk-0 04", "TR-009", "K 17", "JK-006/02"];
    assert_eq!(next("JK", &taken), "JK-007");
    assert_eq!(next("jk", &taken), "JK-007");
    assert_eq!(next("T", &taken), "T-001");

    let style = scheme.read("JK-006").unwrap();
    let next = |taken: &[&str]| scheme.next_colourway(&style, taken.iter().copied());
    assert_eq!(next(&["JK-006"]).as_deref(), Ok("JK-006/01"));
    assert_eq!(next(&taken).as_deref(), Ok("JK-006/03"));
    assert_eq!(
        next(&["JK-006/99"]),
        Err(NoNumber::CounterFull {
            name: "colourway",
            digits: 2
        })
    );
}

#[test]
fn a_proposal_differs_from_the_taken_by_more_than_the_check_character() {
    let scheme = scheme("{kind}{seq:3}{check}");
    let first = scheme.next(&choices(&[("kind", "JK")]), []).unwrap();
    let mistyped = format!("JK001{}", if first.ends_with('0') { '1' } else { '0' });
    assert_eq!(scheme.read(&mistyped), Err(NotANumber::Check));
    let next = scheme.next(&choices(&[("kind", "JK")]), [mistyped.as_str()]);
    assert!(next.unwrap().starts_with("JK002"));
}

#[test]
fn case_and_spaces_make_no_other_number() {
    assert!(same_number("JK-0012", " jk-00 12 "));
    assert!(!same_number("JK-0012", "JK0012"));
    let taken = ["TR-0012", "jk-0012"];
    assert_eq!(collision("JK-0012", taken), Some("jk-0012"));
    assert_eq!(collision("JK-0013", taken), None);
}

#[test]
fn codes_that_run_into_each_other_make_no_number() {
    let written = Written {
        mask: "{one}{two}{seq:1}".to_owned(),
        lists: vec![list("one", &["A", "AB"]), list("two", &["BC", "C"])],
        check: None,
    };
    let scheme = NumberScheme::try_from(written).unwrap();
    let of = |one, two| number(&[("one", one), ("two", two)], 1, None);
    for (one, two) in [("A", "BC"), ("AB", "C")] {
        let number = "ABC1".to_owned();
        let refused = scheme.format(&of(one, two));
        assert_eq!(refused, Err(NoNumber::TwoReadings { number }));
    }
    assert_eq!(scheme.read("ABC1"), Err(NotANumber::TwoReadings));
    assert_eq!(scheme.format(&of("A", "C")).as_deref(), Ok("AC1"));
}

#[test]
fn the_settings_hold_a_scheme_as_it_is_written() {
    let json = r#"{"mask":"{kind}{seq:3}{check}","lists":[{"name":"kind","entries":[{"code":"JK","meaning":"Jacket"}]}],"check":"mod_37_36"}"#;
    let scheme: NumberScheme = serde_json::from_str(json).unwrap();
    assert_eq!(serde_json::to_string(&scheme).unwrap(), json);
    assert!(!scheme.numbers_colourways());
    assert_eq!(
        scheme.lists().map(|list| &list.name).collect::<Vec<_>>(),
        ["kind"]
    );
    for wrong in [
        r#"{"mask":"{seq:3}","colour":1}"#,
        r#"{"mask":"{seq:3}","lists":[{"name":"kind","entries":[{"code":"JK","meaning":"","rank":1}]}]}"#,
        r#"{"mask":"{sequence:3}"}"#,
        r#"{"mask":"{seq:3}{check}","check":"mod_10"}"#,
    ] {
        assert!(
            serde_json::from_str::<NumberScheme>(wrong).is_err(),
            "{wrong}"
        );
    }
}

proptest! {
    #[test]
    fn what_is_written_is_read_and_the_next_is_free(
        season in 0usize..3,
        kind in 0usize..3,
        counts in prop::collection::vec((1u32..999, prop::option::of(1u32..9)), 1..20),
    ) {
        let scheme = scheme("{season}{kind}-{seq:3}/{colourway:1}{check}");
        let pairs = [("season", ["S27", "W27", "S28"][season]), ("kind", ["JK", "TR", "T"][kind])];
        let of = |(count, colourway): &(u32, Option<u32>)| number(&pairs, *count, *colourway);
        let numbers: Vec<Number> = counts.iter().map(of).collect();
        let taken: Vec<String> = numbers.iter().map(|it| scheme.format(it).unwrap()).collect();
        for (number, text) in numbers.iter().zip(&taken) {
            prop_assert_eq!(&scheme.read(text).unwrap(), number);
        }
        let taken = || taken.iter().map(String::as_str);
        let next = scheme.next(&choices(&pairs), taken()).unwrap();
        prop_assert_eq!(collision(&next, taken()), None);
        let highest = counts.iter().map(|(count, _)| *count).max().unwrap();
        prop_assert_eq!(scheme.read(&next).unwrap(), number(&pairs, highest + 1, None));
    }

    /// One wrong character never gives another number of the scheme.
    #[test]
    fn a_slip_in_a_protected_number_is_seen(count in 1u32..1000, at in 0usize..9, slip in "[0-9A-Z]") {
        for system in [Mod37_2, Mod37_36] {
            let scheme = written("{season}{kind}-{seq:3}{check}", Some(system));
            let scheme = NumberScheme::try_from(scheme).unwrap();
            let pairs = [("season", "S27"), ("kind", "JK")];
            let mut text = scheme.format(&number(&pairs, count, None)).unwrap();
            text.replace_range(at..=at, &slip);
            match scheme.read(&text) {
                Ok(read) => prop_assert_eq!(scheme.format(&read), Ok(text)),
                Err(why) => prop_assert_ne!(why, NotANumber::TwoReadings),
            }
        }
    }

    #[test]
    fn whatever_is_typed_as_a_mask_or_number_is_answered(mask: String, text: String) {
        let _ = NumberScheme::try_from(written(&mask, Some(Mod37_36)));
        let scheme = scheme("{season}{kind}-{seq:3}/{colourway:1}{check}");
        prop_assert_eq!(scheme.read(&text).is_ok(), scheme.read(&text.to_lowercase()).is_ok());
    }
}
