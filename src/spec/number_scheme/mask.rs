//! A mask taken apart, with the place of whatever does not hold together.

use super::{CHECK, COLOURWAY, CheckSystem, SEQ, Written, normal};

/// One piece of a mask.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece {
    Text(String),
    /// Which of the scheme's lists.
    List(usize),
    /// The running counter, with so many digits.
    Count(u8),
    /// The colourways' counter, with so many digits.
    Colourway(u8),
    Check(CheckSystem),
}

/// Why a scheme is not taken. `at` is the place in the mask, in characters from 1.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotAMask {
    #[error("longer than {} characters", MOST_CHARACTERS)]
    TooLong,
    #[error("the brace at {at} is never closed")]
    BraceOpen { at: usize },
    #[error("the brace at {at} closes nothing")]
    BraceClosed { at: usize },
    #[error("at {at}: {name:?} is neither a counter nor the check character nor a list")]
    Unknown { at: usize, name: String },
    #[error("at {at}: the counter {name:?} needs its number of digits, {name}:1 to {name}:9")]
    Digits { at: usize, name: String },
    #[error("at {at}: {name:?} has no number of digits")]
    NotCounted { at: usize, name: String },
    #[error("at {at}: {name:?} is there a second time")]
    Twice { at: usize, name: String },
    #[error("without the running counter, seq")]
    NoCounter,
    #[error("at {at}: {name:?} stands before the running counter")]
    BeforeCounter { at: usize, name: String },
    #[error("at {at}: a check character, but no system to work it out by")]
    NoSystem { at: usize },
    #[error("a system for the check character, but no place for it")]
    NoPlace,
    #[error("more than {} lists", MOST_LISTS)]
    TooManyLists,
    /// Empty, one of the mask's own words, with a brace, colon or space, or there before.
    #[error("{name:?} is no name for a list, or already one")]
    ListName { name: String },
    #[error("the list {list:?} is empty")]
    ListEmpty { list: String },
    #[error("a code of the list {list:?} is empty")]
    CodeEmpty { list: String },
    #[error("the code {code:?} is in the list {list:?} twice")]
    CodeTwice { list: String, code: String },
    #[error("at {at}: {character:?} cannot be protected by this check system")]
    UnprotectedText { at: usize, character: char },
    /// Of a list that stands before the check character.
    #[error(
        "{character:?} in the code {code:?} of {list:?} cannot be protected by this check system"
    )]
    UnprotectedCode {
        list: String,
        code: String,
        character: char,
    },
}

/// So long that nobody misses more, so short that it fits a label.
const MOST_CHARACTERS: usize = 100;
/// Each may be read in several ways, which multiply.
const MOST_LISTS: usize = 6;

/// Takes a scheme apart.
pub fn pieces(written: &Written) -> Result<Vec<Piece>, NotAMask> {
    lists(written)?;
    if written.mask.chars().count() > MOST_CHARACTERS {
        return Err(NotAMask::TooLong);
    }
    let mut pieces: Vec<Piece> = Vec::new();
    // Where each begins.
    let mut places = Vec::new();
    let mut at = 1;
    let mut rest = written.mask.as_str();
    while !rest.is_empty() {
        let (part, piece) = match rest.strip_prefix('{') {
            Some(inside) => {
                let end = inside.find('}').ok_or(NotAMask::BraceOpen { at })?;
                (&rest[..end + 2], field(written, &inside[..end], at)?)
            }
            None => {
                let end = rest.find('{').unwrap_or(rest.len());
                let text = &rest[..end];
                if let Some(before) = text.find('}') {
                    let at = at + text[..before].chars().count();
                    return Err(NotAMask::BraceClosed { at });
                }
                (text, Piece::Text(text.to_owned()))
            }
        };
        let name = || {
            let inside = part.trim_matches(['{', '}']);
            let name = inside.split(':').next().unwrap_or(inside);
            name.trim().to_owned()
        };
        let counted = pieces.iter().any(|it| matches!(it, Piece::Count(_)));
        match &piece {
            Piece::Text(_) => (),
            _ if pieces.iter().any(|it| same_field(it, &piece)) => {
                return Err(NotAMask::Twice { at, name: name() });
            }
            Piece::Colourway(_) | Piece::Check(_) if !counted => {
                return Err(NotAMask::BeforeCounter { at, name: name() });
            }
            _ => (),
        }
        pieces.push(piece);
        places.push(at);
        at += part.chars().count();
        rest = &rest[part.len()..];
    }
    if !pieces.iter().any(|it| matches!(it, Piece::Count(_))) {
        return Err(NotAMask::NoCounter);
    }
    let lists = pieces.iter().filter(|it| matches!(it, Piece::List(_)));
    if lists.count() > MOST_LISTS {
        return Err(NotAMask::TooManyLists);
    }
    if let Some(system) = written.check {
        let check = pieces.iter().position(|it| matches!(it, Piece::Check(_)));
        let check = check.ok_or(NotAMask::NoPlace)?;
        for (piece, at) in pieces[..check].iter().zip(places) {
            protected(written, piece, at, system)?;
        }
    }
    Ok(pieces)
}

fn same_field(one: &Piece, other: &Piece) -> bool {
    match (one, other) {
        (Piece::List(one), Piece::List(other)) => one == other,
        _ => std::mem::discriminant(one) == std::mem::discriminant(other),
    }
}

/// What stands between two braces.
fn field(written: &Written, inside: &str, at: usize) -> Result<Piece, NotAMask> {
    let (name, digits) = match inside.split_once(':') {
        Some((name, digits)) => (name.trim(), Some(digits.trim())),
        None => (inside.trim(), None),
    };
    let owned = || name.to_owned();
    if name == SEQ || name == COLOURWAY {
        let digits = match digits.map(str::as_bytes) {
            Some([digit @ b'1'..=b'9']) => digit - b'0',
            _ => return Err(NotAMask::Digits { at, name: owned() }),
        };
        return Ok(if name == SEQ {
            Piece::Count(digits)
        } else {
            Piece::Colourway(digits)
        });
    }
    let piece = if name == CHECK {
        Piece::Check(written.check.ok_or(NotAMask::NoSystem { at })?)
    } else {
        let list = written.lists.iter().position(|list| list.name == name);
        Piece::List(list.ok_or_else(|| NotAMask::Unknown { at, name: owned() })?)
    };
    match digits {
        Some(_) => Err(NotAMask::NotCounted { at, name: owned() }),
        None => Ok(piece),
    }
}

/// Whether the check system takes whatever a piece may bring into the number.
fn protected(
    written: &Written,
    piece: &Piece,
    at: usize,
    system: CheckSystem,
) -> Result<(), NotAMask> {
    let strange = |text: &str| text.chars().enumerate().find(|(_, c)| !system.takes(*c));
    match piece {
        Piece::Text(text) => match strange(text) {
            Some((within, character)) => Err(NotAMask::UnprotectedText {
                at: at + within,
                character,
            }),
            None => Ok(()),
        },
        Piece::List(list) => {
            let list = &written.lists[*list];
            for entry in &list.entries {
                if let Some((_, character)) = strange(&entry.code) {
                    return Err(NotAMask::UnprotectedCode {
                        list: list.name.clone(),
                        code: entry.code.clone(),
                        character,
                    });
                }
            }
            Ok(())
        }
        Piece::Count(_) | Piece::Colourway(_) | Piece::Check(_) => Ok(()),
    }
}

fn lists(written: &Written) -> Result<(), NotAMask> {
    for (at, list) in written.lists.iter().enumerate() {
        let (name, earlier) = (list.name.as_str(), &written.lists[..at]);
        let own = [SEQ, COLOURWAY, CHECK].contains(&name);
        let marks = |c: char| c.is_whitespace() || ['{', '}', ':'].contains(&c);
        let again = earlier.iter().any(|it| it.name == name);
        let list = || name.to_owned();
        if name.is_empty() || name.contains(marks) || own || again {
            return Err(NotAMask::ListName { name: list() });
        }
        let entries = &written.lists[at].entries;
        if entries.is_empty() {
            return Err(NotAMask::ListEmpty { list: list() });
        }
        let codes: Vec<String> = entries.iter().map(|it| normal(&it.code)).collect();
        for (at, code) in codes.iter().enumerate() {
            if code.is_empty() {
                return Err(NotAMask::CodeEmpty { list: list() });
            }
            if codes[..at].contains(code) {
                let code = entries[at].code.clone();
                return Err(NotAMask::CodeTwice { list: list(), code });
            }
        }
    }
    Ok(())
}
