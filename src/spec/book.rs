//! The tables in force: those that ship with the program, with what an owner has corrected.
//!
//! Much of what the program knows of names and figures was written down from memory, and says so.
//! Whoever holds the official text puts the right words in, each row with where they stand; checks
//! and label texts then go by them. A revision keeps the corrections that it was made with.

mod shelf;

use std::sync::{Arc, LazyLock};

use serde::{Deserialize, Serialize};

use super::body::Letters;
use super::composition::{Files, Tables};
use super::document::words;
use super::safety::Figures;
use super::stitch;
use super::table::{Source, Status, TableError};
use super::terms::{self, Term};

use shelf::{Form, shelved};

words! {
    /// A table that ships with the program.
    Table "table" {
        FibreNames "fibre_names",
        ComponentNames "component_names",
        LabelPhrases "label_phrases",
        FibreRules "fibre_rules",
        SafetyFigures "safety_figures",
        SafetyBands "safety_bands",
        Stitches "stitches",
        Seams "seams",
        LetterCodes "letter_codes",
        Terms "terms",
    }
}

/// What an owner put in the place of a row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Correction {
    pub table: Table,
    /// The row's key, as [`Row::key`].
    pub row: String,
    /// Of every column that [`Table::columns`] names, in their order.
    pub values: Vec<String>,
    pub status: Status,
    /// The day, as `YYYY-MM-DD`.
    pub on: String,
    /// Where it stands, in the owner's words.
    pub source: String,
}

/// One row of a table, to look at and to correct.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// The columns that tell it from others: `cotton`, `de`; `eu`, `tolerance`.
    pub key: Vec<String>,
    /// Of every column that [`Table::columns`] names, in their order.
    pub values: Vec<String>,
    /// What it says beside its values, in English; empty for most tables.
    pub says: String,
    pub source: Source,
}

/// Why a correction is not taken.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotCorrected {
    #[error("the table has no such row")]
    NoRow,
    #[error("the row has {expected} columns, not {given}")]
    Columns { expected: usize, given: usize },
    /// A comma or a line break, or a number sign at the beginning: the tables are kept as lines
    /// with commas in them.
    #[error("{value:?} holds a sign that tables cannot hold")]
    Sign { value: String },
    /// With the values the table makes no sense any more.
    #[error(transparent)]
    Unreadable(TableError),
}

/// Everything that checks, label texts and translations go by.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Book {
    pub composition: Tables,
    pub stitches: stitch::Tables,
    pub letters: Letters,
    pub safety: Figures,
    pub terms: Vec<Term>,
    /// What is not as it ships, in the order of tables and rows.
    pub corrections: Vec<Correction>,
}

static SHIPPED: LazyLock<Arc<Book>> = LazyLock::new(|| {
    let book = Book::corrected(Vec::new());
    Arc::new(book.expect("a test reads the shipped tables"))
});

impl Book {
    pub fn shipped() -> &'static Arc<Book> {
        &SHIPPED
    }

    /// The shipped tables with these corrections, at most one of a row.
    ///
    /// Errors: the first that cannot be.
    pub fn corrected(mut corrections: Vec<Correction>) -> Result<Book, NotCorrected> {
        corrections.sort_by(|one, other| (one.table, &one.row).cmp(&(other.table, &other.row)));
        let text = |table: Table| table.text(&corrections);
        let composition = Tables::read(Files {
            fibres: &text(Table::FibreNames)?,
            components: &text(Table::ComponentNames)?,
            phrases: &text(Table::LabelPhrases)?,
            rules: &text(Table::FibreRules)?,
        })?;
        let stitches = stitch::Tables::read(&text(Table::Stitches)?, &text(Table::Seams)?)?;
        let letters = Letters::read(&text(Table::LetterCodes)?)?;
        let figures = text(Table::SafetyFigures)?;
        let safety = Figures::read(&figures, &text(Table::SafetyBands)?)?;
        Ok(Book {
            composition,
            stitches,
            letters,
            safety,
            terms: terms::read(&text(Table::Terms)?)?,
            corrections,
        })
    }

    /// What stands in the place of a row.
    pub fn correction(&self, table: Table, row: &Row) -> Option<&Correction> {
        let key = row.key();
        let mut all = self.corrections.iter();
        all.find(|it| it.table == table && it.row == key)
    }
}

impl Row {
    /// The key in one word: `cotton.de`.
    pub fn key(&self) -> String {
        self.key.join(".")
    }
}

impl Table {
    /// The columns that can be corrected, by their names in the table.
    pub fn columns(self) -> Vec<&'static str> {
        shelved(self).values()
    }

    /// The rows as they ship, in the table's order.
    pub fn rows(self) -> Vec<Row> {
        shelved(self).rows()
    }

    /// The shipped row of this key.
    pub fn row(self, key: &str) -> Option<Row> {
        self.rows().into_iter().find(|row| row.key() == key)
    }

    /// The table's text with the corrections that are of it.
    fn text(self, corrections: &[Correction]) -> Result<String, NotCorrected> {
        let shelved = shelved(self);
        let columns = self.columns().len();
        let own = corrections.iter().filter(|it| it.table == self);
        let own: Vec<&Correction> = own.collect();
        for correction in &own {
            if correction.values.len() != columns {
                return Err(NotCorrected::Columns {
                    expected: columns,
                    given: correction.values.len(),
                });
            }
            let breaks = |value: &&String| {
                value.contains([',', '\n', '\r'])
                    || value.starts_with('#')
                    || value.trim() != **value
            };
            if let Some(value) = correction.values.iter().find(breaks) {
                let value = value.clone();
                return Err(NotCorrected::Sign { value });
            }
            if self.row(&correction.row).is_none() {
                return Err(NotCorrected::NoRow);
            }
        }
        Ok(match shelved.form {
            Form::Lines { .. } => shelf::lines(shelved.text, &shelved, &own),
            Form::Rules => shelf::rules(shelved.text, &own),
        })
    }
}

impl From<TableError> for NotCorrected {
    fn from(why: TableError) -> Self {
        NotCorrected::Unreadable(why)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::composition::text;
    use crate::spec::document::{CordPlace, Fibre, Market, Word};
    use crate::spec::{Digest, example};

    fn correction(table: Table, row: &str, values: &[&str]) -> Correction {
        Correction {
            table,
            row: row.to_owned(),
            values: values.iter().map(|it| (*it).to_owned()).collect(),
            status: Status::Verified,
            on: "2026-12-01".to_owned(),
            source: "the printed text, page 12".to_owned(),
        }
    }

    fn corrected(table: Table, row: &str, values: &[&str]) -> Result<Book, NotCorrected> {
        Book::corrected(vec![correction(table, row, values)])
    }

    #[test]
    fn without_corrections_it_is_what_ships() {
        let book = Book::shipped();
        assert_eq!(book.composition, *Tables::shipped());
        assert_eq!(book.stitches, *stitch::Tables::shipped());
        assert_eq!(book.letters, *Letters::shipped());
        assert_eq!(book.safety, *Figures::shipped());
    }

    #[test]
    fn every_row_can_be_put_in_its_own_place() {
        let mut rows = 0;
        for table in Table::ALL {
            let columns = table.columns();
            let mut keys = std::collections::BTreeSet::new();
            let same = table.rows().into_iter().map(|row| {
                assert_eq!(row.values.len(), columns.len(), "{table:?} {row:?}");
                assert!(keys.insert(row.key()), "{table:?} {row:?} is there twice");
                let values: Vec<&str> = row.values.iter().map(String::as_str).collect();
                let mut same = correction(*table, &row.key(), &values);
                (same.status, same.on) = (row.source.status, row.source.on.clone());
                same
            });
            let same: Vec<Correction> = same.collect();
            assert!(!same.is_empty(), "{table:?}");
            rows += same.len();
            let book = Book::corrected(same).unwrap();
            assert_eq!(book.composition, *Tables::shipped(), "{table:?}");
            assert_eq!(book.stitches, *stitch::Tables::shipped(), "{table:?}");
            assert_eq!(book.letters, *Letters::shipped(), "{table:?}");
            assert_eq!(book.safety, *Figures::shipped(), "{table:?}");
        }
        assert!(rows > 600, "{rows}");
    }

    #[test]
    fn a_corrected_name_is_on_the_label_and_is_checked() {
        let spec = example::half_zip(Digest::of(b"front"));
        let label = |book: &Book| {
            text(&spec, Market::Eu, "de", &book.composition)
                .whole()
                .unwrap()
        };
        let shipped = label(Book::shipped());
        assert!(shipped.contains("Oberstoff"), "{shipped}");
        let book = corrected(Table::ComponentNames, "main.de", &["Außenstoff"]).unwrap();
        assert_eq!(label(&book), shipped.replace("Oberstoff", "Außenstoff"));
        let wording = book.composition.fibre(Fibre::Cotton, Market::Eu, "de");
        assert_eq!(
            wording,
            Tables::shipped().fibre(Fibre::Cotton, Market::Eu, "de")
        );
    }

    #[test]
    fn a_corrected_rule_has_its_new_figure_and_source() {
        let book = corrected(Table::FibreRules, "eu.tolerance", &["3.5", ""]).unwrap();
        let tolerance = &book.composition.rules.eu.tolerance;
        assert_eq!(tolerance.percent.to_string(), "3.5");
        assert!(tolerance.source.is_verified());
        assert_eq!(tolerance.source.on, "2026-12-01");
        let book = corrected(Table::FibreRules, "us.functional", &["", "elastane"]).unwrap();
        assert_eq!(
            book.composition.rules.us.functional.fibres,
            [Fibre::Elastane]
        );
    }

    #[test]
    fn a_corrected_figure_is_reckoned_with() {
        let book = corrected(Table::SafetyFigures, "en_cord_sleeve_mm", &["120"]).unwrap();
        let most = book.safety.en_cord(CordPlace::Sleeve, false).unwrap();
        assert_eq!(most.as_nm(), 120_000_000);
    }

    #[test]
    fn what_makes_no_sense_is_refused() {
        let refused = |table, row, values: &[&str]| corrected(table, row, values).unwrap_err();
        let phrase = Table::LabelPhrases;
        assert_eq!(
            refused(phrase, "other_fibres.tlh", &["x"]),
            NotCorrected::NoRow
        );
        assert_eq!(
            refused(phrase, "other_fibres.de", &[]),
            NotCorrected::Columns {
                expected: 1,
                given: 0
            }
        );
        for value in ["a, b", "a\nb", "# a", " a"] {
            let value = value.to_owned();
            assert_eq!(
                refused(phrase, "other_fibres.de", &[&value]),
                NotCorrected::Sign { value }
            );
        }
        for (table, row, values) in [
            (Table::FibreRules, "eu.tolerance", ["three", ""]),
            (Table::FibreRules, "eu.tolerance", ["", ""]),
            (Table::FibreRules, "eu.tolerance", ["3", "wool"]),
            (Table::FibreRules, "us.functional", ["3", ""]),
            (Table::FibreRules, "us.functional", ["", "spandex"]),
        ] {
            let why = refused(table, row, &values);
            assert!(
                matches!(why, NotCorrected::Unreadable(_)),
                "{values:?}: {why:?}"
            );
        }
        let why = refused(Table::SafetyFigures, "en_cord_legs_mm", &["none"]);
        assert!(matches!(why, NotCorrected::Unreadable(_)), "{why:?}");
    }
}
