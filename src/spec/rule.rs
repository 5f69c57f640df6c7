//! A grade in one line, as people write it and read it on paper.
//!
//! - `same`: the same in all sizes
//! - `2`: this step between all neighbouring sizes
//! - `XS-L 2, L-2XL 2 1/2`: steps by segment
//! - `XS=50, S=52.5`: a value for each size
//! - `=C - 19`: the point C, and so much less
//!
//! Pieces are parted by `;`, or by a comma that is not a decimal sign (no digit on one side of it).

use std::collections::BTreeMap;

use super::document::{Grade, Segment, Size};
use super::id::ItemId;
use super::units::{DecimalSign, Entered, Length, NotALength, Unit};

/// What a rule may name, and the unit that its bare numbers are in.
#[derive(Debug, Clone)]
pub struct Names<'a> {
    pub sizes: &'a [Size],
    /// The points with their letters.
    pub points: Vec<(&'a ItemId, &'a str)>,
    /// The master unit, when the spec has one.
    pub unit: Option<Unit>,
}

/// Why a text is not taken as a grade.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotAGrade {
    #[error("{piece:?} is none of the ways to write a grade")]
    Unreadable { piece: String },
    /// Size codes or letters that are there twice, or that run into each other.
    #[error("{piece:?} may be read in two ways")]
    TwoReadings { piece: String },
    #[error("{code:?} is no size")]
    UnknownSize { code: String },
    #[error("two values for the size {code:?}")]
    SizeTwice { code: String },
    #[error("{text:?} does not begin with the letter of a point")]
    UnknownPoint { text: String },
    /// A step alone says nothing where there are no two sizes.
    #[error("there are no two sizes")]
    TooFewSizes,
    #[error("{typed:?}: {why}")]
    Length { typed: String, why: NotALength },
}

/// What stands for a size or point that is not in the spec any more.
const GONE: &str = "?";
const SAME: &str = "same";
const DASHES: [char; 6] = ['-', '−', '‐', '‑', '–', '—'];

/// Writes a grade so that [`read`] gives the same one back, as long as its sizes and points are
/// there and no two share a label.
pub fn write(grade: &Grade, names: &Names) -> String {
    let size = |id: &ItemId| {
        let found = names.sizes.iter().find(|size| size.id == *id);
        found.map_or(GONE, |size| size.code.as_str())
    };
    let length = |entered: &Entered| write_length(*entered, names.unit);
    match grade {
        Grade::Same {} => SAME.to_owned(),
        Grade::Segments { segments } => {
            if let ([only], [first, .., last]) = (segments.as_slice(), names.sizes)
                && (&only.from, &only.to) == (&first.id, &last.id)
            {
                return length(&only.step);
            }
            let piece =
                |s: &Segment| format!("{}-{} {}", size(&s.from), size(&s.to), length(&s.step));
            let pieces: Vec<String> = segments.iter().map(piece).collect();
            pieces.join(", ")
        }
        Grade::Explicit { values } => {
            let known = names.sizes.iter().map(|size| &size.id);
            let gone = values.keys().filter(|id| size(id) == GONE);
            let piece = |id: &ItemId| Some(format!("{}={}", size(id), length(values.get(id)?)));
            let pieces: Vec<String> = known.chain(gone).filter_map(piece).collect();
            pieces.join(", ")
        }
        Grade::Derived { from, offset } => {
            let found = names.points.iter().find(|(id, _)| *id == from);
            let letter = found.map_or(GONE, |(_, letter)| letter);
            let far = Entered {
                nm: offset.nm.abs(),
                ..*offset
            };
            match offset.nm {
                nm if nm.is_positive() => format!("={letter} + {}", length(&far)),
                nm if nm.is_negative() => format!("={letter} - {}", length(&far)),
                _ => format!("={letter}"),
            }
        }
    }
}

/// A length as it stands in a form: without its unit where that is the spec's own.
pub fn write_length(entered: Entered, unit: Option<Unit>) -> String {
    let number = entered.exact(DecimalSign::Point);
    if unit == Some(entered.unit) {
        number
    } else {
        format!("{number} {}", entered.unit)
    }
}

/// Reads a grade, strictly: what has no single meaning is refused with the piece that has none.
pub fn read(text: &str, names: &Names) -> Result<Grade, NotAGrade> {
    let text = text.trim();
    if text.eq_ignore_ascii_case(SAME) {
        return Ok(Grade::Same {});
    }
    if let Some(formula) = text.strip_prefix('=') {
        return derived(formula.trim(), names);
    }
    if text.contains('=') {
        return explicit(text, names);
    }
    match Entered::read_in(text, names.unit) {
        Ok(step) => {
            let [first, .., last] = names.sizes else {
                return Err(NotAGrade::TooFewSizes);
            };
            let segment = Segment {
                from: first.id.clone(),
                to: last.id.clone(),
                step,
            };
            Ok(Grade::Segments {
                segments: vec![segment],
            })
        }
        Err(NotALength::NotANumber) => {
            let segments = pieces(text).map(|piece| segment(piece, names));
            let segments = segments.collect::<Result<_, _>>()?;
            Ok(Grade::Segments { segments })
        }
        Err(why) => Err(NotAGrade::Length {
            typed: text.to_owned(),
            why,
        }),
    }
}

fn derived(formula: &str, names: &Names) -> Result<Grade, NotAGrade> {
    let unknown = || NotAGrade::UnknownPoint {
        text: formula.to_owned(),
    };
    let labels = names.points.iter().map(|(id, letter)| (*id, *letter));
    let mut found = Vec::new();
    for (from, rest) in begins_with(formula, labels) {
        let rest = rest.trim_start();
        if rest.is_empty() {
            let unit = names.unit.unwrap_or(Unit::Cm);
            let nm = Length::ZERO;
            found.push((from, Ok(Entered { nm, unit })));
        } else if rest.starts_with('+') || rest.starts_with(DASHES) {
            found.push((from, length(rest, names.unit)));
        }
    }
    let (from, offset) = one_reading(formula, found)?.ok_or_else(unknown)?;
    Ok(Grade::Derived {
        from: from.clone(),
        offset,
    })
}

fn explicit(text: &str, names: &Names) -> Result<Grade, NotAGrade> {
    let mut values = BTreeMap::new();
    for piece in pieces(text) {
        let unreadable = || NotAGrade::Unreadable {
            piece: piece.to_owned(),
        };
        let (code, value) = piece.split_once('=').ok_or_else(unreadable)?;
        let code = code.trim();
        let mut same = names
            .sizes
            .iter()
            .filter(|size| same_label(&size.code, code));
        let size = match (same.next(), same.next()) {
            (Some(size), None) => size,
            (None, _) => {
                let code = code.to_owned();
                return Err(NotAGrade::UnknownSize { code });
            }
            (Some(_), Some(_)) => {
                let piece = piece.to_owned();
                return Err(NotAGrade::TwoReadings { piece });
            }
        };
        let value = length(value, names.unit)?;
        if values.insert(size.id.clone(), value).is_some() {
            let code = code.to_owned();
            return Err(NotAGrade::SizeTwice { code });
        }
    }
    Ok(Grade::Explicit { values })
}

/// `XS-L 2`.
fn segment(piece: &str, names: &Names) -> Result<Segment, NotAGrade> {
    let labels = || {
        names
            .sizes
            .iter()
            .map(|size| (&size.id, size.code.as_str()))
    };
    let mut found = Vec::new();
    for (from, rest) in begins_with(piece, labels()) {
        let Some(rest) = rest.trim_start().strip_prefix(DASHES) else {
            continue;
        };
        for (to, rest) in begins_with(rest.trim_start(), labels()) {
            // Without a space the end of a code could be the beginning of a number.
            if rest.starts_with([' ', ':', '\u{a0}']) {
                let step = rest.trim_start_matches([' ', ':', '\u{a0}']);
                found.push(((from, to), length(step, names.unit)));
            }
        }
    }
    let unreadable = || NotAGrade::Unreadable {
        piece: piece.to_owned(),
    };
    let ((from, to), step) = one_reading(piece, found)?.ok_or_else(unreadable)?;
    Ok(Segment {
        from: from.clone(),
        to: to.clone(),
        step,
    })
}

/// Of all readings the one whose length can be read; nothing when there is none at all.
fn one_reading<T>(
    piece: &str,
    found: Vec<(T, Result<Entered, NotAGrade>)>,
) -> Result<Option<(T, Entered)>, NotAGrade> {
    let mut why = None;
    let mut good = Vec::new();
    for (label, length) in found {
        match length {
            Ok(length) => good.push((label, length)),
            Err(error) => why = Some(error),
        }
    }
    match (good.pop(), good.is_empty(), why) {
        (Some(only), true, _) => Ok(Some(only)),
        (Some(_), false, _) => Err(NotAGrade::TwoReadings {
            piece: piece.to_owned(),
        }),
        (None, _, Some(why)) => Err(why),
        (None, _, None) => Ok(None),
    }
}

fn length(typed: &str, unit: Option<Unit>) -> Result<Entered, NotAGrade> {
    Entered::read_in(typed, unit).map_err(|why| NotAGrade::Length {
        typed: typed.trim().to_owned(),
        why,
    })
}

/// Everything whose label the text begins with, and what follows the label.
fn begins_with<'t, 'n>(
    text: &'t str,
    labels: impl Iterator<Item = (&'n ItemId, &'n str)>,
) -> impl Iterator<Item = (&'n ItemId, &'t str)> {
    labels.filter_map(move |(id, label)| {
        let label = label.trim();
        let letters = label.chars().count();
        let end = text
            .char_indices()
            .nth(letters)
            .map_or(text.len(), |(at, _)| at);
        let (head, rest) = text.split_at(end);
        (letters > 0 && same_label(head, label)).then_some((id, rest))
    })
}

fn same_label(one: &str, other: &str) -> bool {
    one.trim().to_lowercase() == other.trim().to_lowercase()
}

/// The pieces of a rule, trimmed; empty ones (a comma at the end) left out.
fn pieces(text: &str) -> impl Iterator<Item = &str> {
    let is_digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
    let mut cuts = Vec::new();
    let mut start = 0;
    for (at, c) in text.char_indices() {
        let rest = &text[at + c.len_utf8()..];
        let decimal = is_digit(text[..at].chars().next_back()) && is_digit(rest.chars().next());
        if c == ';' || c == '\n' || c == ',' && !decimal {
            cuts.push(&text[start..at]);
            start = at + c.len_utf8();
        }
    }
    cuts.push(&text[start..]);
    cuts.into_iter()
        .map(str::trim)
        .filter(|piece| !piece.is_empty())
}

#[cfg(test)]
mod tests;
