//! The brand's own style numbers: a mask such as `{season}{seq:3}` or
//! `{kind}-{seq:4}/{colourway:2}{check}`.
//!
//! - Text outside braces stands as it is.
//! - `{seq:3}` is the running counter, here with three digits; every mask has one. It runs on its
//!   own for each choice of list entries: each season begins with 001. After 999 it is full, never
//!   wider.
//! - `{colourway:2}` gives each colourway a number of its own. It comes after the running counter;
//!   the style's own number leaves it out, with the text just before it.
//! - `{check}` is the check character of all that stands before it, as ISO/IEC 7064 places it. It
//!   comes after the running counter.
//! - Any other name is a list's, and stands for one of its codes.
//!
//! Case and spaces are for the eye: numbers that differ in nothing else are the same number, and
//! reading takes them so.

mod check;
mod mask;
mod read;

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

pub use check::CheckSystem;
pub use mask::NotAMask;
pub use read::NotANumber;

use mask::Piece;

/// A scheme that holds together: parsed from what the settings hold, which it is kept as.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Written", into = "Written")]
pub struct NumberScheme {
    written: Written,
    pieces: Vec<Piece>,
}

/// A scheme as the brand writes it and its settings hold it.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Written {
    pub mask: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lists: Vec<List>,
    /// Which check character `{check}` stands for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub check: Option<CheckSystem>,
}

/// What one place of the number is chosen from: the seasons, the kinds of garment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct List {
    /// As the mask calls it.
    pub name: String,
    pub entries: Vec<Entry>,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// As it stands in the number.
    pub code: String,
    pub meaning: String,
}

/// What a number says.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Number {
    pub choices: Choices,
    /// Of the running counter, from 1.
    pub count: u32,
    /// From 1; nothing for the style itself.
    pub colourway: Option<u32>,
}

/// The code chosen from each list that the mask names, by the list's name.
pub type Choices = BTreeMap<String, String>;

/// Why there is no such number.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NoNumber {
    #[error("nothing is chosen from the list {list:?}")]
    ChoiceMissing { list: String },
    #[error("the mask has no list {list:?}")]
    UnknownList { list: String },
    #[error("the list {list:?} has no code {code:?}")]
    UnknownCode { list: String, code: String },
    #[error("counters begin with 1")]
    Zero,
    /// Wider it would be another mask's number: the brand changes the mask or the choice.
    #[error("the counter {name:?} of {digits} digits is full")]
    CounterFull { name: &'static str, digits: u8 },
    #[error("the mask has no counter for colourways")]
    NoColourways,
    /// Codes that run into each other, `A` + `BC` and `AB` + `C`.
    #[error("{number:?} may be read in two ways")]
    TwoReadings { number: String },
}

/// What counters are called in masks.
const SEQ: &str = "seq";
const COLOURWAY: &str = "colourway";
const CHECK: &str = "check";

impl NumberScheme {
    pub fn written(&self) -> &Written {
        &self.written
    }

    /// The lists that the mask names, in their order in the number.
    pub fn lists(&self) -> impl Iterator<Item = &List> {
        self.pieces.iter().filter_map(|piece| match piece {
            Piece::List(at) => Some(&self.written.lists[*at]),
            _ => None,
        })
    }

    /// Whether colourways have numbers of their own.
    pub fn numbers_colourways(&self) -> bool {
        self.pieces
            .iter()
            .any(|piece| matches!(piece, Piece::Colourway(_)))
    }

    /// Writes the number of a style, or of one of its colourways. [`NumberScheme::read`] gives the
    /// same back: what could be read in two ways is refused.
    pub fn format(&self, number: &Number) -> Result<String, NoNumber> {
        let choices = self.chosen(&number.choices)?;
        if number.colourway.is_some() && !self.numbers_colourways() {
            return Err(NoNumber::NoColourways);
        }
        let mut text = String::new();
        for piece in self.form(number.colourway.is_some()) {
            match piece {
                Piece::Text(fixed) => text += fixed,
                Piece::List(at) => text += &choices[&self.written.lists[*at].name],
                Piece::Count(digits) => text += &count(SEQ, number.count, *digits)?,
                Piece::Colourway(digits) => {
                    let colourway = number.colourway.unwrap_or_default();
                    text += &count(COLOURWAY, colourway, *digits)?;
                }
                Piece::Check(system) => {
                    let check = system.characters(&text);
                    text += &check.expect("a mask is refused with what its system does not take");
                }
            }
        }
        match self.read(&text) {
            Ok(_) => Ok(text),
            Err(_) => Err(NoNumber::TwoReadings { number: text }),
        }
    }

    /// The number to propose for a new style with these choices: one above the highest taken. A
    /// gap is not filled: somebody may still know the number that was given up. What was taken
    /// outside the scheme does not count.
    pub fn next<'a>(
        &self,
        choices: &Choices,
        taken: impl IntoIterator<Item = &'a str>,
    ) -> Result<String, NoNumber> {
        let choices = self.chosen(choices)?;
        let highest = self.taken(taken).filter(|number| number.choices == choices);
        let highest = highest.map(|number| number.count).max();
        self.format(&Number {
            choices,
            count: highest.unwrap_or(0).saturating_add(1),
            colourway: None,
        })
    }

    /// The number to propose for a new colourway of a style: one above the style's highest, gaps
    /// as in [`NumberScheme::next`].
    pub fn next_colourway<'a>(
        &self,
        style: &Number,
        taken: impl IntoIterator<Item = &'a str>,
    ) -> Result<String, NoNumber> {
        let choices = self.chosen(&style.choices)?;
        let of_style = |number: &Number| (&number.choices, number.count) == (&choices, style.count);
        let highest = self.taken(taken).filter(of_style);
        let highest = highest.filter_map(|number| number.colourway).max();
        self.format(&Number {
            choices: choices.clone(),
            count: style.count,
            colourway: Some(highest.unwrap_or(0).saturating_add(1)),
        })
    }

    /// All that may be read of numbers taken, with their check characters right or wrong: a
    /// proposal must not differ from one of them by the check character alone.
    fn taken<'a>(&self, taken: impl IntoIterator<Item = &'a str>) -> impl Iterator<Item = Number> {
        taken
            .into_iter()
            .flat_map(|text| self.readings(text))
            .map(|reading| reading.number)
    }

    /// The choices with each code as its list writes it.
    fn chosen(&self, choices: &Choices) -> Result<Choices, NoNumber> {
        for list in choices.keys() {
            if !self.lists().any(|known| known.name == *list) {
                return Err(NoNumber::UnknownList { list: list.clone() });
            }
        }
        let chosen = self.lists().map(|list| {
            let name = list.name.clone();
            let Some(code) = choices.get(&name) else {
                return Err(NoNumber::ChoiceMissing { list: name });
            };
            match list.entries.iter().find(|it| same_number(&it.code, code)) {
                Some(entry) => Ok((name, entry.code.clone())),
                None => Err(NoNumber::UnknownCode {
                    list: name,
                    code: code.clone(),
                }),
            }
        });
        chosen.collect()
    }

    /// The pieces of a colourway's number, or of the style's own: without the colourway's counter
    /// and the text just before it.
    fn form(&self, colourway: bool) -> impl Iterator<Item = &Piece> {
        self.pieces
            .iter()
            .enumerate()
            .filter_map(move |(at, piece)| {
                let next = self.pieces.get(at + 1);
                let left_out = match piece {
                    Piece::Colourway(_) => true,
                    Piece::Text(_) => matches!(next, Some(Piece::Colourway(_))),
                    _ => false,
                };
                (colourway || !left_out).then_some(piece)
            })
    }
}

/// Whether two numbers differ in nothing but case and spaces.
pub fn same_number(one: &str, other: &str) -> bool {
    normal(one) == normal(other)
}

/// The number among those taken that this one would be mistaken for.
pub fn collision<'a>(number: &str, taken: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    taken.into_iter().find(|it| same_number(it, number))
}

/// Without spaces, in upper case.
fn normal(text: &str) -> String {
    let letters = text.chars().filter(|c| !c.is_whitespace());
    letters.flat_map(char::to_uppercase).collect()
}

fn count(name: &'static str, count: u32, digits: u8) -> Result<String, NoNumber> {
    let width = usize::from(digits);
    let text = format!("{count:0width$}");
    match (count, text.len() > width) {
        (0, _) => Err(NoNumber::Zero),
        (_, true) => Err(NoNumber::CounterFull { name, digits }),
        (_, false) => Ok(text),
    }
}

impl TryFrom<Written> for NumberScheme {
    type Error = NotAMask;

    fn try_from(written: Written) -> Result<Self, NotAMask> {
        let pieces = mask::pieces(&written)?;
        Ok(Self { written, pieces })
    }
}

impl From<NumberScheme> for Written {
    fn from(scheme: NumberScheme) -> Self {
        scheme.written
    }
}

#[cfg(test)]
mod tests;
