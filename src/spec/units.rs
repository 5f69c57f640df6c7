//! Lengths in whole nanometres, and how people write them.
//!
//! Everything is exact: reading refuses what is no whole nanometre, and nothing is rounded unless
//! the caller says to which step.

mod read;
mod write;

use std::fmt;
use std::ops::{Add, Neg, Sub};

use serde::{Deserialize, Serialize};

use super::document::Basis;

pub use read::NotALength;
pub use write::DecimalSign;

/// A length in nanometres. 1/64 in is 396 875 nm and 0.1 cm is 1 000 000 nm: both exact.
///
/// What is typed or read from a document lies within [`Length::MAX`] on either side of zero.
/// Sums of such lengths may go beyond it but cannot wrap: it would take nine million of them.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(try_from = "i64", into = "i64")]
pub struct Length(i64);

/// A number of nanometres beyond [`Length::MAX`]: no dimension of a garment.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("{0} nm is longer than a kilometre")]
pub struct TooLong(pub i64);

/// A unit that lengths are written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    Cm,
    Mm,
    Inch,
}

/// A length with the unit that it was typed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entered {
    pub nm: Length,
    pub unit: Unit,
}

impl Length {
    pub const ZERO: Length = Length(0);

    /// One kilometre: the longest that is taken.
    pub const MAX: Length = Length(1_000_000_000_000);

    /// A length that is known to lie within [`Length::MAX`]; panics when it does not. Numbers
    /// from outside come through `try_from`.
    pub const fn nm(nm: i64) -> Self {
        assert!(nm.unsigned_abs() <= Self::MAX.0.unsigned_abs());
        Self(nm)
    }

    pub const fn as_nm(self) -> i64 {
        self.0
    }

    /// Whether it is short enough to be stored.
    pub const fn in_bounds(self) -> bool {
        self.0.unsigned_abs() <= Self::MAX.0.unsigned_abs()
    }

    pub const fn is_negative(self) -> bool {
        self.0 < 0
    }

    pub const fn is_positive(self) -> bool {
        self.0 > 0
    }

    pub const fn abs(self) -> Length {
        Length(self.0.abs())
    }

    /// The nearest multiple of `step`; half way between two, the one further from zero.
    /// A step that is not positive leaves the length as it is.
    pub const fn rounded(self, step: Length) -> Length {
        Length(round_ratio(self.0, 1, step.0))
    }

    /// The nearest multiple of `step` that is not further from zero.
    /// A step that is not positive leaves the length as it is.
    pub const fn truncated(self, step: Length) -> Length {
        Length(truncate_ratio(self.0, 1, step.0))
    }

    /// Whether it is a whole number of steps.
    pub const fn is_multiple_of(self, step: Length) -> bool {
        step.0 > 0 && self.0 % step.0 == 0
    }

    /// Twice the length: the way round, from a half laid flat.
    pub const fn doubled(self) -> Length {
        Length(self.0 * 2)
    }

    /// Half the length, rounded once to `step`, half away from zero. For display only: half of
    /// 1/64 in is no whole nanometre.
    pub const fn halved(self, step: Length) -> Length {
        Length(round_ratio(self.0, 2, step.0))
    }

    /// Half of a tolerance, to the multiple of `step` not further from zero: never wider.
    pub const fn tolerance_halved(self, step: Length) -> Length {
        Length(truncate_ratio(self.0, 2, step.0))
    }

    /// A tolerance for display in another unit, at that unit's finest step, towards zero:
    /// conversion never widens it.
    pub const fn tolerance_in(self, unit: Unit) -> Length {
        self.truncated(unit.fine_step())
    }
}

/// `nm / divisor` to the nearest multiple of `step`, half away from zero.
const fn round_ratio(nm: i64, divisor: i64, step: i64) -> i64 {
    if step <= 0 {
        return nm / divisor;
    }
    let unit = step * divisor;
    let whole = nm / unit;
    let rest = nm % unit;
    // Compared without doubling the rest, which a huge step would overflow.
    let up = rest.abs() >= unit - rest.abs();
    step * (whole + if up { rest.signum() } else { 0 })
}

const fn truncate_ratio(nm: i64, divisor: i64, step: i64) -> i64 {
    if step <= 0 {
        return nm / divisor;
    }
    nm / (step * divisor) * step
}

/// The same value on the other basis, for display beside the one that was entered: half from
/// full rounded once to `step`, full from half exactly. A linear point has no other basis.
pub const fn other_basis(value: Length, basis: Basis, step: Length) -> Option<(Basis, Length)> {
    match basis {
        Basis::Half => Some((Basis::Full, value.doubled())),
        Basis::Full => Some((Basis::Half, value.halved(step))),
        Basis::Linear => None,
    }
}

impl Unit {
    pub const ALL: [Unit; 3] = [Unit::Cm, Unit::Mm, Unit::Inch];

    /// The name in forms and in the document.
    pub const fn name(self) -> &'static str {
        match self {
            Unit::Cm => "cm",
            Unit::Mm => "mm",
            Unit::Inch => "inch",
        }
    }

    pub fn from_name(name: &str) -> Option<Unit> {
        Unit::ALL.into_iter().find(|unit| unit.name() == name)
    }

    /// The international symbol, the same in every language.
    pub const fn symbol(self) -> &'static str {
        match self {
            Unit::Cm => "cm",
            Unit::Mm => "mm",
            Unit::Inch => "in",
        }
    }

    /// How many nanometres it has, by definition of the metre and of the international inch.
    pub const fn nanometres(self) -> i64 {
        match self {
            Unit::Cm => 10_000_000,
            Unit::Mm => 1_000_000,
            Unit::Inch => 25_400_000,
        }
    }

    /// The steps that a point may be rounded to, the finest first: 1/16, 1/8, 1/4 in; 0.1,
    /// 0.5 cm; 1, 5 mm. Common practice, no source.
    pub const fn steps(self) -> &'static [Length] {
        const INCH: &[Length] = &[Length(1_587_500), Length(3_175_000), Length(6_350_000)];
        const METRIC: &[Length] = &[Length(1_000_000), Length(5_000_000)];
        match self {
            Unit::Cm | Unit::Mm => METRIC,
            Unit::Inch => INCH,
        }
    }

    /// The finest step: what a value of another unit is shown to as a reference.
    pub const fn fine_step(self) -> Length {
        self.steps()[0]
    }

    /// Centimetres and millimetres share their steps; inches do not fit them.
    pub const fn is_metric(self) -> bool {
        !matches!(self, Unit::Inch)
    }
}

impl TryFrom<i64> for Length {
    type Error = TooLong;

    fn try_from(nm: i64) -> Result<Self, TooLong> {
        let length = Length(nm);
        if length.in_bounds() {
            Ok(length)
        } else {
            Err(TooLong(nm))
        }
    }
}

impl From<Length> for i64 {
    fn from(length: Length) -> i64 {
        length.0
    }
}

impl Add for Length {
    type Output = Length;

    fn add(self, other: Length) -> Length {
        Length(self.0 + other.0)
    }
}

impl Sub for Length {
    type Output = Length;

    fn sub(self, other: Length) -> Length {
        Length(self.0 - other.0)
    }
}

impl Neg for Length {
    type Output = Length;

    fn neg(self) -> Length {
        Length(-self.0)
    }
}

impl fmt::Display for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol())
    }
}

#[cfg(test)]
mod tests;
