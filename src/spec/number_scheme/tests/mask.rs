//! Masks and lists that do not hold together.

use super::NotAMask::*;
use super::*;

#[test]
fn a_mask_that_does_not_hold_together_is_refused_with_the_place() {
    let name = str::to_owned;
    for (mask, check, why) in [
        ("", None, NoCounter),
        ("{kind}", None, NoCounter),
        ("é{seq:3", None, BraceOpen { at: 2 }),
        ("é{kind}-}{seq:3}", None, BraceClosed { at: 9 }),
        (
            "-{sort}",
            None,
            Unknown {
                at: 2,
                name: name("sort"),
            },
        ),
        (
            "{}{seq:3}",
            None,
            Unknown {
                at: 1,
                name: name(""),
            },
        ),
        (
            "A{seq}",
            None,
            Digits {
                at: 2,
                name: name("seq"),
            },
        ),
        (
            "{seq:0}",
            None,
            Digits {
                at: 1,
                name: name("seq"),
            },
        ),
        (
            "{seq:10}",
            None,
            Digits {
                at: 1,
                name: name("seq"),
            },
        ),
        (
            "{seq:3}{colourway:x}",
            None,
            Digits {
                at: 8,
                name: name("colourway"),
            },
        ),
        (
            "{kind:2}{seq:3}",
            None,
            NotCounted {
                at: 1,
                name: name("kind"),
            },
        ),
        (
            "{seq:3}{check:1}",
            Some(Mod37_2),
            NotCounted {
                at: 8,
                name: name("check"),
            },
        ),
        (
            "{kind}{seq:3}{ kind }",
            None,
            Twice {
                at: 14,
                name: name("kind"),
            },
        ),
        (
            "{seq:3}{seq:2}",
            None,
            Twice {
                at: 8,
                name: name("seq"),
            },
        ),
        (
            "{colourway:2}{seq:3}",
            None,
            BeforeCounter {
                at: 1,
                name: name("colourway"),
            },
        ),
        (
            "{check}{seq:3}",
            Some(Mod37_2),
            BeforeCounter {
                at: 1,
                name: name("check"),
            },
        ),
        ("{seq:3}{check}", None, NoSystem { at: 8 }),
        ("{seq:3}", Some(Mod37_2), NoPlace),
        (
            "12-B{seq:3}{check}",
            Some(Mod11_10),
            UnprotectedText {
                at: 4,
                character: 'B',
            },
        ),
        (
            "Ä{seq:3}{check}",
            Some(Mod37_36),
            UnprotectedText {
                at: 1,
                character: 'Ä',
            },
        ),
        (
            "*{seq:3}{check}",
            Some(Mod37_2),
            UnprotectedText {
                at: 1,
                character: '*',
            },
        ),
        (
            "{kind}{seq:3}{check}",
            Some(Mod11_2),
            UnprotectedCode {
                list: name("kind"),
                code: name("JK"),
                character: 'J',
            },
        ),
    ] {
        let found = NumberScheme::try_from(written(mask, check));
        assert_eq!(found, Err(why), "{mask}");
    }
    // Behind the check character nothing is protected.
    assert!(NumberScheme::try_from(written("{seq:3}{check}Ä", Some(Mod11_10))).is_ok());
    let long = "x".repeat(94) + "{seq:3}";
    assert_eq!(NumberScheme::try_from(written(&long, None)), Err(TooLong));
    assert!(NumberScheme::try_from(written(&long[1..], None)).is_ok());
}

#[test]
fn a_list_that_does_not_hold_together_is_refused() {
    let refused = |lists: Vec<List>| {
        let mask = "{seq:3}".to_owned();
        NumberScheme::try_from(Written {
            mask,
            lists,
            check: None,
        })
        .unwrap_err()
    };
    for name in ["", "seq", "check", "colourway", "a b", "a:b", "a}"] {
        let why = ListName {
            name: name.to_owned(),
        };
        assert_eq!(refused(vec![list(name, &["A"])]), why);
    }
    let list_name = "kind".to_owned();
    assert_eq!(
        refused(vec![list("kind", &["A"]), list("kind", &["B"])]),
        ListName {
            name: list_name.clone()
        }
    );
    assert_eq!(
        refused(vec![list("kind", &[])]),
        ListEmpty {
            list: list_name.clone()
        }
    );
    assert_eq!(
        refused(vec![list("kind", &[" "])]),
        CodeEmpty {
            list: list_name.clone()
        }
    );
    assert_eq!(
        refused(vec![list("kind", &["JK", "j k"])]),
        CodeTwice {
            list: list_name,
            code: "j k".to_owned()
        }
    );
    let names = ["a", "b", "c", "d", "e", "f", "g"];
    let seven = Written {
        mask: "{a}{b}{c}{d}{e}{f}{g}{seq:1}".to_owned(),
        lists: names.map(|name| list(name, &["A"])).to_vec(),
        check: None,
    };
    assert_eq!(NumberScheme::try_from(seven), Err(TooManyLists));
}
