//! Stitch types by ISO 4915 and seam classes by ISO 4916, from a table that may be replaced.

use std::sync::LazyLock;

use super::document::{SeamClass, Word, words};
use super::table::{self, Source, TableError};

words! {
    /// Classes of stitches by ISO 4915: the first digit of the number.
    StitchClass "stitch-class" {
        /// One thread that chains with itself.
        Chain "100",
        /// Made by hand, or as if.
        Hand "200",
        Lock "300",
        /// Chains of several threads.
        MultiChain "400",
        Overedge "500",
        Covering "600",
    }
}

/// One type of stitch.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stitch {
    /// `301`, `504`.
    pub number: String,
    pub class: StitchClass,
    pub needles: Option<u8>,
    /// Those of the needles too.
    pub threads: Option<u8>,
    /// In a few words of English; empty where only the number is known.
    pub meaning: String,
    pub source: Source,
}

/// The letters that FED-STD-751A has for a class of ISO 4916.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Seam {
    pub class: SeamClass,
    /// Empty where no one letter code covers the class.
    pub letters: String,
    pub source: Source,
}

/// What is known of stitches and seams.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tables {
    pub stitches: Vec<Stitch>,
    pub seams: Vec<Seam>,
}

static SHIPPED: LazyLock<Tables> = LazyLock::new(|| {
    let stitches = include_str!("data/stitches.csv");
    let seams = include_str!("data/seams.csv");
    Tables::read(stitches, seams).expect("a test reads the shipped tables")
});

impl Tables {
    pub fn shipped() -> &'static Tables {
        &SHIPPED
    }

    /// From texts of the shipped tables' form, in `src/spec/data`.
    pub fn read(stitches: &str, seams: &str) -> Result<Tables, TableError> {
        let stitches = table::rows("stitches", stitches, read_stitch)?;
        let seams = table::rows("seams", seams, |[class, letters, status, on]| {
            Ok(Seam {
                class: table::word(class)?,
                letters: letters.to_owned(),
                source: Source::read(status, on)?,
            })
        })?;
        Ok(Tables { stitches, seams })
    }

    pub fn stitch(&self, number: &str) -> Option<&Stitch> {
        let number = number.trim();
        self.stitches.iter().find(|stitch| stitch.number == number)
    }

    /// Whether the table has this number. It may be typed as a combination: `401+504`.
    pub fn knows(&self, number: &str) -> bool {
        number.split('+').all(|part| self.stitch(part).is_some())
    }

    pub fn seam(&self, class: SeamClass) -> Option<&Seam> {
        self.seams.iter().find(|seam| seam.class == class)
    }
}

fn read_stitch(columns: [&str; 6]) -> Result<Stitch, String> {
    let [number, needles, threads, meaning, status, on] = columns;
    let count = |text: &str| match text {
        "" => Ok(None),
        _ => text
            .parse()
            .map(Some)
            .map_err(|_| format!("no count `{text}`")),
    };
    Ok(Stitch {
        number: number.to_owned(),
        class: class(number).ok_or_else(|| format!("no stitch `{number}`"))?,
        needles: count(needles)?,
        threads: count(threads)?,
        meaning: meaning.to_owned(),
        source: Source::read(status, on)?,
    })
}

/// The class that three digits belong to, whether or not there is such a stitch.
pub fn class(number: &str) -> Option<StitchClass> {
    let number = number.trim();
    let is_number = number.len() == 3 && number.bytes().all(|digit| digit.is_ascii_digit());
    is_number.then(|| StitchClass::from_word(&format!("{}00", &number[..1])))?
}

/// The class that a full designation of ISO 4916 begins with: `2.04.06` is lapped. Nothing unless
/// it is one digit of a class and two pairs of digits.
pub fn seam_class(code: &str) -> Option<SeamClass> {
    let parts: Vec<&str> = code.trim().split('.').collect();
    let [class, shape, stitched] = parts.as_slice() else {
        return None;
    };
    let is_pair = |part: &str| part.len() == 2 && part.bytes().all(|it| it.is_ascii_digit());
    (is_pair(shape) && is_pair(stitched)).then(|| SeamClass::from_word(class))?
}

#[cfg(test)]
mod tests {
    use super::*;

    fn published(text: &'static str) -> impl Iterator<Item = &'static str> {
        text.lines().filter(|line| !line.starts_with('#')).skip(1)
    }

    #[test]
    fn the_shipped_table_has_the_published_stitches() {
        let table = include_str!("../../tests/reference/stitch_types.csv");
        let mut verified = 0;
        for row in published(table) {
            let columns: Vec<&str> = row.split(',').collect();
            let stitch = Tables::shipped().stitch(columns[0]).expect(row);
            assert_eq!(stitch.meaning, columns[1].replace(',', ";"));
            assert_eq!(
                stitch.needles.map(|it| it.to_string()).as_deref(),
                Some(columns[2])
            );
            assert_eq!(
                stitch.threads.map(|it| it.to_string()).as_deref(),
                Some(columns[3])
            );
            let is_verified = columns.last().is_some_and(|it| it.starts_with("verified"));
            assert_eq!(stitch.source.is_verified(), is_verified, "{row}");
            verified += usize::from(is_verified);
        }
        let all = Tables::shipped().stitches.iter();
        assert_eq!(all.filter(|it| it.source.is_verified()).count(), verified);
        assert_eq!(verified, 15);
    }

    #[test]
    fn the_first_digit_is_the_class() {
        for (number, found) in [
            ("101", Some(StitchClass::Chain)),
            (" 301 ", Some(StitchClass::Lock)),
            ("607", Some(StitchClass::Covering)),
            ("701", None),
            ("30", None),
            ("3o1", None),
            ("é01", None),
        ] {
            assert_eq!(class(number), found, "{number}");
        }
        let numbers = Tables::shipped().stitches.windows(2);
        assert!(
            numbers
                .into_iter()
                .all(|pair| pair[0].number < pair[1].number)
        );
    }

    #[test]
    fn a_stitch_is_known_by_its_number() {
        for known in ["301", "504", "401+504", "401 + 504", " 514 "] {
            assert!(Tables::shipped().knows(known), "{known}");
        }
        for unknown in ["", "299", "3010", "301+", "lockstitch", "610"] {
            assert!(!Tables::shipped().knows(unknown), "{unknown}");
        }
    }

    #[test]
    fn a_designation_begins_with_its_class() {
        for (code, found) in [
            ("2.04.06", Some(SeamClass::Lapped)),
            (" 1.01.01 ", Some(SeamClass::Superimposed)),
            ("9.01.01", None),
            ("2.4.6", None),
            ("2.04", None),
            ("2.04.06.01", None),
            ("", None),
        ] {
            assert_eq!(seam_class(code), found, "{code}");
        }
    }

    #[test]
    fn the_shipped_classes_are_the_published_ones() {
        let table = include_str!("../../tests/reference/seam_classes.csv");
        assert_eq!(published(table).count(), SeamClass::ALL.len());
        for (row, class) in published(table).zip(SeamClass::ALL) {
            assert!(row.starts_with(class.word()), "{row}");
            let seam = Tables::shipped().seam(*class).expect(row);
            let letters = row.rsplit(',').next().unwrap_or_default();
            // What is in brackets there is no letter code of that class alone.
            let letters = if letters.starts_with('(') {
                ""
            } else {
                letters
            };
            assert_eq!(seam.letters, letters);
        }
    }

    #[test]
    fn an_edited_table_is_refused_where_it_is_wrong() {
        let seams = include_str!("data/seams.csv");
        let head = "number,needles,threads,meaning,status,on\n";
        let read = |row: &str| Tables::read(&format!("{head}{row}"), seams);
        assert!(read("301,1,2,lockstitch,verified,2026-11-25").is_ok());
        for (row, what) in [
            ("901,1,2,x,verified,2026-11-25", "no stitch `901`"),
            ("301,one,2,x,verified,2026-11-25", "no count `one`"),
            ("301,1,2,x,checked,2026-11-25", "no status `checked`"),
        ] {
            assert_eq!(read(row).unwrap_err().what, what);
        }
    }
}
