//! Words of the trade in the factories' languages, from a table that may be replaced.

use std::sync::LazyLock;

use super::table::{self, Source, TableError};

/// One row of the table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Term {
    /// The English spellings.
    pub words: Vec<String>,
    /// As a BCP 47 tag.
    pub language: String,
    pub text: String,
    /// How far it was checked.
    pub source: Source,
}

static SHIPPED: LazyLock<Vec<Term>> =
    LazyLock::new(|| read(include_str!("data/terms.csv")).expect("a test reads the shipped table"));

/// The table that ships with the program.
pub fn shipped() -> &'static [Term] {
    &SHIPPED
}

/// From a text of the shipped table's form: columns `term,language,text,status,on`.
pub fn read(text: &str) -> Result<Vec<Term>, TableError> {
    table::rows("terms", text, |[words, language, text, status, on]| {
        Ok(Term {
            words: words.split(" or ").map(str::to_owned).collect(),
            language: language.to_owned(),
            text: text.to_owned(),
            source: Source::read(status, on)?,
        })
    })
}
