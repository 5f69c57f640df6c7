//! Writing a length: Latin digits, no grouping, one decimal sign for the whole revision.

use std::fmt::{self, Write};

use serde::{Deserialize, Serialize};

use super::{Entered, Length, Unit};

/// The decimal sign, fixed for a revision in every language: a print must not mix 28,5 and 28.5.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DecimalSign {
    #[default]
    Point,
    Comma,
}

impl DecimalSign {
    pub const fn sign(self) -> char {
        match self {
            DecimalSign::Point => '.',
            DecimalSign::Comma => ',',
        }
    }
}

impl Length {
    /// The length rounded to `step` (half away from zero), without the unit: `28 1/2` in inches,
    /// `72.0` in centimetres at a step of 0.1 cm. For a chart's values, which are multiples of
    /// their step already, and for a reference value in the other unit.
    pub fn show(self, unit: Unit, step: Length, sign: DecimalSign) -> String {
        let places = match unit {
            Unit::Inch => 0,
            Unit::Cm | Unit::Mm => metric_places(step.0, unit),
        };
        self.rounded(step).written(unit, places, sign)
    }

    /// The length as it is, without rounding and without the unit. For what was typed or
    /// measured, and for deviations. [`Entered::read`] gives the same length back.
    pub fn exact(self, unit: Unit, sign: DecimalSign) -> String {
        let places = match unit {
            Unit::Inch => 0,
            // Three decimals could be read as thousands: a fourth says that they are decimals.
            Unit::Cm | Unit::Mm if metric_places(self.0, unit) == 3 => 4,
            Unit::Cm | Unit::Mm => 0,
        };
        self.written(unit, places, sign)
    }

    fn written(self, unit: Unit, places: usize, sign: DecimalSign) -> String {
        let mut text = String::with_capacity(12);
        if self.0 < 0 {
            text.push('-');
        }
        match unit {
            Unit::Inch => inches(&mut text, self.0.abs(), sign),
            Unit::Cm | Unit::Mm => metric(&mut text, self.0.abs(), unit, places, sign),
        }
        .expect("a string takes whatever is written");
        text
    }
}

impl Entered {
    /// As it was typed, in its own unit and without it: exact.
    pub fn exact(self, sign: DecimalSign) -> String {
        self.nm.exact(self.unit, sign)
    }
}

fn metric(text: &mut String, nm: i64, unit: Unit, places: usize, sign: DecimalSign) -> fmt::Result {
    let (whole, rest) = (nm / unit.nanometres(), nm % unit.nanometres());
    write!(text, "{whole}")?;
    let places = places.max(metric_places(nm, unit));
    if places == 0 {
        return Ok(());
    }
    let cut = 10_i64.pow((zeroes(unit) - places) as u32);
    write!(text, "{}{:0places$}", sign.sign(), rest / cut)
}

/// How many decimals a length needs in a metric unit.
fn metric_places(nm: i64, unit: Unit) -> usize {
    let mut rest = nm.abs() % unit.nanometres();
    if rest == 0 {
        return 0;
    }
    let mut places = zeroes(unit);
    while rest % 10 == 0 {
        rest /= 10;
        places -= 1;
    }
    places
}

/// The decimals of a nanometre.
fn zeroes(unit: Unit) -> usize {
    unit.nanometres().ilog10() as usize
}

/// A reduced fraction of a power of two, as on a tape; else a decimal where there is one
/// (28.3 in); else the fraction that it is, which only a converted value can be.
fn inches(text: &mut String, nm: i64, sign: DecimalSign) -> fmt::Result {
    let inch = Unit::Inch.nanometres();
    let (whole, rest) = (nm / inch, nm % inch);
    if rest == 0 {
        return write!(text, "{whole}");
    }
    let common = greatest_common_divisor(rest, inch);
    let (part, divisor) = (rest / common, inch / common);
    if !divisor.unsigned_abs().is_power_of_two() && 1_000_000 % divisor == 0 {
        let millionths = format!("{:06}", part * (1_000_000 / divisor));
        let decimals = millionths.trim_end_matches('0');
        return write!(text, "{whole}{}{decimals}", sign.sign());
    }
    if whole > 0 {
        write!(text, "{whole} ")?;
    }
    write!(text, "{part}/{divisor}")
}

fn greatest_common_divisor(a: i64, b: i64) -> i64 {
    if b == 0 {
        a
    } else {
        greatest_common_divisor(b, a % b)
    }
}
