//! Reading a number back into what it says.

use super::mask::Piece;
use super::{Number, NumberScheme, normal};

/// Why a text is not taken as a number of the scheme.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum NotANumber {
    #[error("it does not follow the mask")]
    OtherMask,
    /// Something in it was mistyped.
    #[error("the check character does not fit")]
    Check,
    #[error("it may be read in two ways")]
    TwoReadings,
}

/// One way to read a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Reading {
    pub number: Number,
    /// Whether the check character is right, where the mask has one.
    pub checked: bool,
}

impl NumberScheme {
    /// Reads the number of a style or colourway, whatever its case and spaces.
    pub fn read(&self, text: &str) -> Result<Number, NotANumber> {
        let readings = self.readings(text);
        let misread = !readings.is_empty();
        let mut checked = readings.into_iter().filter(|it| it.checked);
        match (checked.next(), checked.next()) {
            (Some(only), None) => Ok(only.number),
            (Some(_), Some(_)) => Err(NotANumber::TwoReadings),
            (None, _) if misread => Err(NotANumber::Check),
            (None, _) => Err(NotANumber::OtherMask),
        }
    }

    /// Every way to read it: as a style's number and, where they have numbers, as a colourway's.
    pub(super) fn readings(&self, text: &str) -> Vec<Reading> {
        let text = normal(text);
        let mut found = Vec::new();
        for colourway in [false, true] {
            if colourway && !self.numbers_colourways() {
                continue;
            }
            let pieces: Vec<&Piece> = self.form(colourway).collect();
            let nothing = Reading {
                number: Number {
                    choices: Default::default(),
                    count: 0,
                    colourway: None,
                },
                checked: true,
            };
            self.follow(&pieces, &text, 0, nothing, &mut found);
        }
        found
    }

    /// Reads on from a place of the text, and adds each reading that comes to the end of both.
    fn follow(
        &self,
        pieces: &[&Piece],
        text: &str,
        from: usize,
        so_far: Reading,
        found: &mut Vec<Reading>,
    ) {
        let rest = &text[from..];
        let Some((piece, pieces)) = pieces.split_first() else {
            if rest.is_empty() {
                found.push(so_far);
            }
            return;
        };
        let mut go_on = |read: &str, reading: Reading| {
            self.follow(pieces, text, from + read.len(), reading, found);
        };
        match piece {
            Piece::Text(fixed) => {
                let fixed = normal(fixed);
                if rest.starts_with(&fixed) {
                    go_on(&fixed, so_far);
                }
            }
            Piece::List(at) => {
                let list = &self.written.lists[*at];
                for entry in &list.entries {
                    let code = normal(&entry.code);
                    if rest.starts_with(&code) {
                        let mut reading = so_far.clone();
                        let (name, code_as_written) = (list.name.clone(), entry.code.clone());
                        reading.number.choices.insert(name, code_as_written);
                        go_on(&code, reading);
                    }
                }
            }
            Piece::Count(digits) => {
                if let Some((read, count)) = counted(rest, *digits) {
                    let mut reading = so_far;
                    reading.number.count = count;
                    go_on(read, reading);
                }
            }
            Piece::Colourway(digits) => {
                if let Some((read, count)) = counted(rest, *digits) {
                    let mut reading = so_far;
                    reading.number.colourway = Some(count);
                    go_on(read, reading);
                }
            }
            Piece::Check(system) => {
                if let Some(check) = rest.get(..system.length()) {
                    let checked = system.holds(&text[..from], check);
                    go_on(check, Reading { checked, ..so_far });
                }
            }
        }
    }
}

/// So many digits, and what they count; counters begin with 1.
fn counted(rest: &str, digits: u8) -> Option<(&str, u32)> {
    let read = rest.get(..usize::from(digits))?;
    if !read.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let count = read.parse().ok()?;
    (count > 0).then_some((read, count))
}
