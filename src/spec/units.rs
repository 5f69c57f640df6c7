//! Lengths in whole nanometres, and how people write them.

use serde::{Deserialize, Serialize};

/// A length in nanometres. 1/64 in is 396 875 nm and 0.1 cm is 1 000 000 nm: both exact.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Length(i64);

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

    pub const fn nm(nm: i64) -> Self {
        Self(nm)
    }

    pub const fn as_nm(self) -> i64 {
        self.0
    }
}
