//! Colours as numbers: how far a sample's reading lies from the standard's, and what a screen can
//! show of one.
//!
//! Two readings are compared only when light and observer are the same: the same cloth has other
//! numbers under another lamp. A difference is rounded once, to two digits behind the sign as
//! instruments show it (common practice, no source), and it is this number that passes or fails:
//! what is shown is what was judged.

mod cmc;
mod neighbours;
mod screen;

use palette::color_difference::{Ciede2000, EuclideanDistance};
use palette::white_point::Any;
use serde::{Deserialize, Serialize};

use super::decimal::Decimal;
use super::document::{Illuminant, Lab, Observer};

pub use neighbours::{Beside, Neighbour, neighbours};
pub use screen::{
    NotAScreenValue, NotOnScreen, OnScreen, Screen, Shown, from_screen, lightness_contrast,
    on_screen, shown,
};

/// How a colour difference is worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Formula {
    /// ΔE*ab, the distance in L*a*b* (CIE 1976; ISO/CIE 11664-4).
    Cie76 {},
    /// CMC(l:c) by ISO 105-J03: 2:1 where a shade passes or fails, 1:1 where it is only seen.
    /// Not symmetric: it is the standard's ellipsoid that counts. Weights from 0.1 to 10.
    Cmc { l: Decimal, c: Decimal },
    /// ΔE00, CIEDE2000 with all weights 1 (ISO/CIE 11664-6).
    Ciede2000 {},
}

/// The brand's limit: a reading passes up to and with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    pub formula: Formula,
    pub at_most: Decimal,
}

/// A reading against a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Judged {
    /// Two digits behind the sign.
    pub difference: Decimal,
    pub passes: bool,
}

/// Why two readings have no difference.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Incomparable {
    #[error("the standard was measured under {standard:?}, the sample under {sample:?}")]
    Illuminants {
        standard: Illuminant,
        sample: Illuminant,
    },
    #[error("the standard was measured for another observer than the sample")]
    Observers {
        standard: Observer,
        sample: Observer,
    },
    #[error("one of them is no colour of any surface")]
    NoColour,
    /// Of CMC(l:c).
    #[error("a weight is not between 0.1 and 10")]
    Weight,
}

/// The difference of a sample from its standard, rounded to two digits behind the sign.
pub fn difference(standard: &Lab, sample: &Lab, formula: Formula) -> Result<Decimal, Incomparable> {
    let unrounded = unrounded(standard, sample, formula)?;
    let rounded = Decimal::from_f64(unrounded, 2);
    Ok(rounded.expect("the bounds of colours and weights keep it below 10 000"))
}

/// Whether a sample passes.
pub fn judge(standard: &Lab, sample: &Lab, limit: &Limit) -> Result<Judged, Incomparable> {
    let difference = difference(standard, sample, limit.formula)?;
    let passes = difference <= limit.at_most;
    Ok(Judged { difference, passes })
}

fn unrounded(standard: &Lab, sample: &Lab, formula: Formula) -> Result<f64, Incomparable> {
    if standard.illuminant != sample.illuminant {
        return Err(Incomparable::Illuminants {
            standard: standard.illuminant,
            sample: sample.illuminant,
        });
    }
    if standard.observer != sample.observer {
        return Err(Incomparable::Observers {
            standard: standard.observer,
            sample: sample.observer,
        });
    }
    let of = |lab| coordinates(lab).ok_or(Incomparable::NoColour);
    let (standard, sample) = (of(standard)?, of(sample)?);
    let lab = |[l, a, b]: [f64; 3]| -> palette::Lab<Any, f64> { palette::Lab::new(l, a, b) };
    Ok(match formula {
        Formula::Cie76 {} => lab(standard).distance(lab(sample)),
        Formula::Cmc { l, c } => cmc::difference(standard, sample, weight(l)?, weight(c)?),
        Formula::Ciede2000 {} => lab(standard).difference(lab(sample)),
    })
}

impl Lab {
    /// Whether any surface has such a colour; see the bounds of [`NotOnScreen::NoColour`].
    pub fn is_of_a_surface(&self) -> bool {
        coordinates(self).is_some()
    }
}

/// L*, a*, b* as numbers to reckon with; nothing for what no surface has. The bounds are wide (a
/// fluorescent cloth goes beyond L* 100) and our own: they keep out slips and the arithmetic
/// within what can be shown.
fn coordinates(lab: &Lab) -> Option<[f64; 3]> {
    let [l, a, b] = [lab.l.to_f64(), lab.a.to_f64(), lab.b.to_f64()];
    let real = (0.0..=150.0).contains(&l) && a.abs() <= 200.0 && b.abs() <= 200.0;
    real.then_some([l, a, b])
}

fn weight(weight: Decimal) -> Result<f64, Incomparable> {
    let number = weight.to_f64();
    let usable = (0.1..=10.0).contains(&number);
    usable.then_some(number).ok_or(Incomparable::Weight)
}

#[cfg(test)]
mod tests;
