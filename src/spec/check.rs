//! Readiness: what keeps a draft from being published, and what needs a reason.
//!
//! An error blocks publishing. A warning needs a typed reason, which the revision prints. A
//! finding holds codes, ids and values; what it says to a reader is said in the reader's language.

mod artwork;
mod code;
mod colourways;
mod construction;
mod drawings;
mod grading;
mod header;
mod items;
mod known;
mod labels;
mod materials;
mod packing;
mod points;
mod relations;
mod safety;
mod usual;

use std::collections::HashSet;

use super::book::Book;
use super::chart::Graded;
use super::decimal::Decimal;
use super::document::{Section, Spec, Word};
use super::id::ItemId;
use super::item::Item;
use super::units::{Length, Unit};

pub use code::Code;
use known::Known;

/// The version of these rules, which a revision keeps: it changes when a check is added or judges
/// otherwise.
pub const RULES: u32 = 2;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Severity {
    Error,
    Warning,
}

/// One thing that was found, and where to mend it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    pub code: Code,
    pub section: Section,
    pub item: Option<ItemId>,
    /// The colourway of a cell, whose part is `item`.
    pub colourway: Option<ItemId>,
    /// The field of the document: `base`, `how.start`.
    pub field: Option<&'static str>,
    /// What the sentence names: texts as the brand wrote them, lengths to be shown in the master
    /// unit.
    pub facts: Vec<(&'static str, Fact)>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fact {
    Text(String),
    /// To be shown in the master unit.
    Length(Length),
    /// To be shown in this unit, whatever the master unit is.
    LengthIn(Length, Unit),
    Number(Decimal),
    /// Words of the document, by set and name: to be shown in the reader's language, as a list.
    Words(Vec<(&'static str, &'static str)>),
    /// Fields of the document, as a list.
    Fields(Vec<&'static str>),
}

/// Everything there is to say about a draft, in the order of its sections. A warning comes at most
/// once for each item.
///
/// By the tables that ship with the program; see [`check_by`].
pub fn check(spec: &Spec, graded: &Graded) -> Vec<Finding> {
    check_by(Book::shipped(), spec, graded)
}

/// As [`check`], by the tables in force.
pub fn check_by(book: &Book, spec: &Spec, graded: &Graded) -> Vec<Finding> {
    let known = Known::of(spec, graded);
    let mut findings = Vec::new();
    header::header(spec, &mut findings);
    header::sizes(spec, &mut findings);
    drawings::drawings(&known, &mut findings);
    points::points(&known, &mut findings);
    relations::relations(&known, &mut findings);
    usual::usual(spec, &mut findings);
    colourways::colourways(&known, &mut findings);
    materials::materials(&known, &book.composition, &mut findings);
    construction::construction(&known, &book.stitches, &mut findings);
    artwork::artwork(&known, &mut findings);
    labels::labels(&known, &mut findings);
    packing::packing(spec, &mut findings);
    safety::safety(spec, &book.safety, &mut findings);
    items::items(&known, &mut findings);
    findings.sort_by_key(|finding| finding.section);
    let mut warned = HashSet::new();
    findings.retain(|finding| {
        finding.is_error() || warned.insert((finding.code, finding.item.clone()))
    });
    findings
}

/// A finding on an item, with what it is known by.
fn on<'a>(item: impl Into<Item<'a>>, code: Code) -> Finding {
    let item = item.into();
    let finding = Finding::new(code, item.section()).item(item.id());
    finding.fact("item", item.known_by().as_str())
}

impl Finding {
    fn new(code: Code, section: Section) -> Self {
        Self {
            code,
            section,
            item: None,
            colourway: None,
            field: None,
            facts: Vec::new(),
        }
    }

    fn item(mut self, item: &ItemId) -> Self {
        self.item = Some(item.clone());
        self
    }

    fn field(mut self, field: &'static str) -> Self {
        self.field = Some(field);
        self
    }

    fn fact(mut self, name: &'static str, fact: impl Into<Fact>) -> Self {
        self.facts.push((name, fact.into()));
        self
    }

    pub fn severity(&self) -> Severity {
        self.code.severity()
    }

    pub fn is_error(&self) -> bool {
        self.severity() == Severity::Error
    }
}

impl From<&str> for Fact {
    fn from(text: &str) -> Self {
        Fact::Text(text.to_owned())
    }
}

impl From<String> for Fact {
    fn from(text: String) -> Self {
        Fact::Text(text)
    }
}

impl From<Length> for Fact {
    fn from(length: Length) -> Self {
        Fact::Length(length)
    }
}

impl From<Decimal> for Fact {
    fn from(number: Decimal) -> Self {
        Fact::Number(number)
    }
}

impl Fact {
    fn word(word: impl Word) -> Self {
        Fact::words([word])
    }

    fn field(field: &'static str) -> Self {
        Fact::Fields(vec![field])
    }

    fn words<W: Word>(words: impl IntoIterator<Item = W>) -> Self {
        let words = words.into_iter().map(|word| (W::KIND, word.word()));
        Fact::Words(words.collect())
    }
}

/// Empty, or nothing but spaces.
fn blank(text: &str) -> bool {
    text.trim().is_empty()
}

/// Labels are one to a reader when they differ in case or in the spaces around them.
fn same_label(label: &str) -> String {
    label.trim().to_lowercase()
}

/// Several things in one sentence.
fn listed<'a>(texts: impl IntoIterator<Item = &'a str>) -> String {
    let texts: Vec<&str> = texts.into_iter().collect();
    texts.join(", ")
}

#[cfg(test)]
pub(crate) mod tests;
