//! Whether the letter of a size fits the body that it is for: a help against slips, not a rule.
//! Brands size as they like.

use std::sync::LazyLock;

use super::document::Wearer;
use super::table::{self, Source, TableError};
use super::units::Length;

/// The girths that a letter stands for: from the first to below the second.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letter {
    /// `XXS` to `3XL`.
    pub code: String,
    /// Of the chest.
    pub men: (Length, Length),
    /// Of the bust.
    pub women: (Length, Length),
    pub source: Source,
}

/// The bands of EN 13402-3, smallest first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Letters(pub Vec<Letter>);

static SHIPPED: LazyLock<Letters> = LazyLock::new(|| {
    let text = include_str!("data/letter_codes.csv");
    Letters::read(text).expect("a test reads the shipped table")
});

impl Letters {
    pub fn shipped() -> &'static Letters {
        &SHIPPED
    }

    /// From a text of the shipped table's form, in `src/spec/data`.
    pub fn read(text: &str) -> Result<Letters, TableError> {
        let cm = |text: &str| {
            let cm: Option<i64> = text.parse().ok().filter(|cm| (1..1000).contains(cm));
            let cm = cm.ok_or_else(|| format!("no girth `{text}`"))?;
            Ok::<_, String>(Length::nm(cm * 10_000_000))
        };
        let read = |[code, men, men_to, women, women_to, status, on]: [&str; 7]| {
            Ok(Letter {
                code: code.to_owned(),
                men: (cm(men)?, cm(men_to)?),
                women: (cm(women)?, cm(women_to)?),
                source: Source::read(status, on)?,
            })
        };
        table::rows("letter codes", text, read).map(Letters)
    }

    /// The letter of a girth: a man's chest, a woman's bust. Nothing beyond the bands, for children
    /// (whose sizes go by height) and for unisex (which the bands do not know).
    pub fn letter(&self, wearer: Wearer, girth: Length) -> Option<&Letter> {
        self.0.iter().find(|letter| {
            let (from, to) = match wearer {
                Wearer::Men => letter.men,
                Wearer::Women => letter.women,
                Wearer::Unisex | Wearer::Children | Wearer::Infants => return false,
            };
            from <= girth && girth < to
        })
    }
}

/// The letter that the shipped bands have for a girth; see [`Letters::letter`].
pub fn plausible_letter(wearer: Wearer, girth: Length) -> Option<&'static str> {
    let letter = Letters::shipped().letter(wearer, girth)?;
    Some(&letter.code)
}

/// Whether two codes are one letter: `2XL` is `XXL`.
pub fn is_same_letter(one: &str, other: &str) -> bool {
    match (rank(one), rank(other)) {
        (Some(one), Some(other)) => one == other,
        _ => false,
    }
}

/// From M: L is 1, XL 2, XXL 3, S −1. Nothing for what is no letter.
fn rank(code: &str) -> Option<i32> {
    let code = code.trim().to_uppercase();
    let extra = code.strip_suffix(['S', 'L']);
    match (extra, code.as_str()) {
        (_, "M") => Some(0),
        (Some(extra), _) => {
            let count = match extra.strip_suffix('X') {
                _ if extra.bytes().all(|it| it == b'X') => i32::try_from(extra.len()).ok()?,
                Some(digit @ ("2" | "3" | "4" | "5" | "6")) => digit.parse().ok()?,
                _ => return None,
            };
            Some(if code.ends_with('L') {
                count + 1
            } else {
                -count - 1
            })
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn cm(cm: i64) -> Length {
        Length::nm(cm * 10_000_000)
    }

    fn published() -> Vec<Vec<&'static str>> {
        let table = include_str!("../../tests/reference/en13402_letter_codes.csv");
        let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
        rows.map(|row| row.split(',').collect()).collect()
    }

    #[test]
    fn the_bands_are_the_published_ones() {
        let millimetre = Length::nm(1_000_000);
        for row in published() {
            let number = |column: usize| cm(row[column].parse().unwrap());
            for (wearer, column) in [(Wearer::Men, 1), (Wearer::Women, 3)] {
                let letter = |girth| plausible_letter(wearer, girth);
                assert_eq!(letter(number(column)), Some(row[0]));
                assert_eq!(letter(number(column + 1) - millimetre), Some(row[0]));
            }
        }
        assert_eq!(published().len(), Letters::shipped().0.len());
        assert_eq!(plausible_letter(Wearer::Men, cm(70) - millimetre), None);
        assert_eq!(plausible_letter(Wearer::Women, cm(143)), None);
    }

    #[test]
    fn one_girth_is_another_letter_for_another_body() {
        assert_eq!(plausible_letter(Wearer::Men, cm(98)), Some("M"));
        assert_eq!(plausible_letter(Wearer::Women, cm(98)), Some("L"));
        for wearer in [Wearer::Unisex, Wearer::Children, Wearer::Infants] {
            assert_eq!(plausible_letter(wearer, cm(98)), None);
        }
    }

    #[test]
    fn a_letter_may_be_written_two_ways() {
        for (one, other) in [
            ("XXL", "2xl"),
            ("3XL", "XXXL"),
            ("2XS", "XXS"),
            (" m ", "M"),
        ] {
            assert!(is_same_letter(one, other), "{one} {other}");
        }
        for (one, other) in [
            ("XL", "XXL"),
            ("S", "L"),
            ("S", "M"),
            ("XL", "XS"),
            ("38", "38"),
            ("1XL", "XL"),
            ("TALL", "TALL"),
            ("", ""),
        ] {
            assert!(!is_same_letter(one, other), "{one} {other}");
        }
    }

    #[test]
    fn an_edited_table_is_refused_where_it_is_wrong() {
        let text = "code,a,b,c,d,status,on\nS,86,94,82,ninety,seen,2026-11-25\n";
        let wrong = Letters::read(text).unwrap_err();
        assert_eq!(wrong.to_string(), "letter codes, line 2: no girth `ninety`");
    }
}
