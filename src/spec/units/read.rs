//! Reading a length as people type it.

use super::{Entered, Length, Unit};

/// Why a text is not taken as a length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, thiserror::Error)]
pub enum NotALength {
    #[error("nothing was typed")]
    Empty,
    #[error("this is not a number")]
    NotANumber,
    #[error("the unit is none of cm, mm, inch")]
    UnknownUnit,
    /// The text names no unit, and the spec has none yet.
    #[error("without a unit")]
    UnitMissing,
    /// `1,250` mm: a decimal sign for one reader, thousands for another.
    #[error("this may be read as thousands")]
    MayBeThousands,
    #[error("a fraction of nothing")]
    ZeroDivisor,
    /// `28 3/2`: a slip more often than 29 1/2.
    #[error("the fraction after a whole number is not below one")]
    FractionNotProper,
    /// No whole number of nanometres: 1/3 cm, or more digits than any tape has.
    #[error("finer than can be kept exactly")]
    TooFine,
    #[error("longer than a kilometre")]
    TooLong,
}

impl NotALength {
    /// A short stable name, for messages.
    pub const fn code(self) -> &'static str {
        match self {
            NotALength::Empty => "empty",
            NotALength::NotANumber => "not-a-number",
            NotALength::UnknownUnit => "unknown-unit",
            NotALength::UnitMissing => "unit-missing",
            NotALength::MayBeThousands => "may-be-thousands",
            NotALength::ZeroDivisor => "zero-divisor",
            NotALength::FractionNotProper => "fraction-not-proper",
            NotALength::TooFine => "too-fine",
            NotALength::TooLong => "too-long",
        }
    }
}

impl Entered {
    /// Reads what a person typed: `28`, `28.5`, `28,5`, `28 1/2`, `28½`, `28-1/2"`, `71.1cm`,
    /// `-0.5`. Without a unit it is in `unit`. The value is kept exactly or refused.
    ///
    /// There is no grouping: in centimetres and millimetres a decimal sign before exactly three
    /// digits (`1,250`) is refused, for half of the world reads it as a thousand. In inches it
    /// stays a decimal (`28.125` is 28 1/8, and a thousand inches is no garment).
    pub fn read(text: &str, unit: Unit) -> Result<Entered, NotALength> {
        Self::read_in(text, Some(unit))
    }

    /// As [`Entered::read`], for a spec that may have no unit yet: the text must name one then.
    pub fn read_in(text: &str, unit: Option<Unit>) -> Result<Entered, NotALength> {
        let text = plain(text);
        let text = text.trim();
        if text.is_empty() {
            return Err(NotALength::Empty);
        }
        let is_number = |c: char| c.is_ascii_digit() || " .,/+-".contains(c);
        let end = text.find(|c| !is_number(c)).unwrap_or(text.len());
        let (number, suffix) = text.split_at(end);
        if number.trim().is_empty() {
            return Err(NotALength::NotANumber);
        }
        let unit = match suffix.to_lowercase().as_str() {
            "" => unit.ok_or(NotALength::UnitMissing)?,
            "cm" | "㎝" => Unit::Cm,
            "mm" | "㎜" => Unit::Mm,
            "\"" | "''" | "in" | "in." | "inch" | "inches" => Unit::Inch,
            other if other.contains(|c: char| c.is_ascii_digit()) => {
                return Err(NotALength::NotANumber);
            }
            _ => return Err(NotALength::UnknownUnit),
        };
        let (negative, number) = match number.trim() {
            number if number.starts_with('-') => (true, number[1..].trim_start()),
            number if number.starts_with('+') => (false, number[1..].trim_start()),
            number => (false, number),
        };
        let nm = match number.split_once('/') {
            Some((left, divisor)) => fraction(left, divisor, unit)?,
            None => decimal(number, unit)?,
        };
        let nm = i64::try_from(if negative { -nm } else { nm }).map_err(|_| NotALength::TooLong)?;
        let nm = Length::try_from(nm).map_err(|_| NotALength::TooLong)?;
        Ok(Entered { nm, unit })
    }
}

/// `1/2`, `28 1/2` or `28-1/2`, with `left` what stands before the stroke.
fn fraction(left: &str, divisor: &str, unit: Unit) -> Result<i128, NotALength> {
    let (whole, part) = if let Some((whole, part)) = left.rsplit_once(' ') {
        (Some(whole.trim_end()), part)
    } else if let Some((whole, part)) = left.rsplit_once('-') {
        (Some(whole), part)
    } else {
        (None, left)
    };
    let part = digits(part)?;
    let divisor = digits(divisor)?;
    if divisor == 0 {
        return Err(NotALength::ZeroDivisor);
    }
    let whole = match whole {
        Some(whole) => {
            let whole = digits(whole)?;
            if part >= divisor {
                return Err(NotALength::FractionNotProper);
            }
            whole
        }
        None => 0,
    };
    let unit = i128::from(unit.nanometres());
    exactly(part * unit, divisor).map(|part| whole * unit + part)
}

/// `28`, `28.5`, `28,5`, `.5`.
fn decimal(number: &str, unit: Unit) -> Result<i128, NotALength> {
    let Some((whole, part)) = number.split_once(['.', ',']) else {
        return Ok(digits(number)? * i128::from(unit.nanometres()));
    };
    if part.contains(['.', ',']) {
        return Err(NotALength::MayBeThousands);
    }
    let typed = part.len();
    if typed > MOST_DIGITS {
        return Err(NotALength::TooFine);
    }
    let tail = digits(part)?;
    let whole = if whole.is_empty() { 0 } else { digits(whole)? };
    if unit.is_metric() && typed == 3 && whole != 0 {
        return Err(NotALength::MayBeThousands);
    }
    let scale = (0..typed).fold(1, |scale, _| scale * 10);
    let unit = i128::from(unit.nanometres());
    exactly(tail * unit, scale).map(|part| whole * unit + part)
}

fn exactly(product: i128, divisor: i128) -> Result<i128, NotALength> {
    if product % divisor == 0 {
        Ok(product / divisor)
    } else {
        Err(NotALength::TooFine)
    }
}

/// Few enough that a product with a unit cannot overflow, far more than a tape has.
const MOST_DIGITS: usize = 18;

/// ASCII digits alone.
fn digits(text: &str) -> Result<i128, NotALength> {
    if text.is_empty() || !text.bytes().all(|byte| byte.is_ascii_digit()) {
        return Err(NotALength::NotANumber);
    }
    if text.len() > MOST_DIGITS {
        return Err(NotALength::TooLong);
    }
    text.parse().map_err(|_| NotALength::TooLong)
}

/// Every writing of a digit, a fraction, a dash, a decimal sign and an inch mark as one.
fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if let Some(digit) = latin_digit(c) {
            out.push(digit);
        } else if let Some(fraction) = vulgar_fraction(c) {
            if out.ends_with(|c: char| c.is_ascii_digit()) {
                out.push(' ');
            }
            out.push_str(fraction);
        } else {
            out.push(match c {
                '⁄' | '∕' | '／' => '/',
                '−' | '‐' | '‑' | '–' | '－' => '-',
                '٫' | '．' => '.',
                '，' => ',',
                '″' | '”' | '“' | '＂' => '"',
                '’' | '′' => '\'',
                c if c.is_whitespace() => ' ',
                c => c,
            });
        }
    }
    out
}

/// The digit of any script that a reader of the factory languages may have on the keyboard.
fn latin_digit(c: char) -> Option<char> {
    /// Each zero starts a run of ten: Latin, Arabic, Persian, Devanagari, Bengali, Thai, Burmese,
    /// Khmer, full width.
    const ZEROES: [char; 9] = ['0', '٠', '۰', '०', '০', '๐', '၀', '០', '０'];
    ZEROES.iter().find_map(|zero| {
        let value = u32::from(c).checked_sub(u32::from(*zero))?;
        char::from_digit(value, 10)
    })
}

fn vulgar_fraction(c: char) -> Option<&'static str> {
    Some(match c {
        '½' => "1/2",
        '¼' => "1/4",
        '¾' => "3/4",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        '⅓' => "1/3",
        '⅔' => "2/3",
        '⅕' => "1/5",
        '⅖' => "2/5",
        '⅗' => "3/5",
        '⅘' => "4/5",
        '⅙' => "1/6",
        '⅚' => "5/6",
        _ => return None,
    })
}
