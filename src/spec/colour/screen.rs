//! From L*a*b* to the value that stands for it on a screen, and back. Always an approximation, and
//! always labelled so: no screen is calibrated for cloth.
//!
//! L*a*b* to XYZ by ISO/CIE 11664-4; from the reading's white to the screen's (D65) by the Bradford
//! transform (ICC.1, annex E); XYZ to sRGB by IEC 61966-2-1. Textiles are measured for the 10°
//! observer, screens are defined for 2°: such a reading is taken from its own observer's white in
//! the same way, which is one approximation more.
//!
//! What the screen cannot show is clipped, each of red, green and blue on its own, and said.

use std::fmt;

use palette::chromatic_adaptation::AdaptIntoUnclamped;
use palette::convert::{FromColorUnclamped, IntoColorUnclamped};
use palette::white_point::{D50, D50Degree10, D65, D65Degree10, WhitePoint};
use palette::xyz::meta::HasXyzMeta;
use palette::{Srgb, Xyz};
use serde::{Deserialize, Serialize};

use super::coordinates;
use crate::spec::decimal::Decimal;
use crate::spec::document::{Colour, Illuminant, Lab, Observer};

/// A screen value, written `#rrggbb`: red, green and blue of sRGB.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Screen(pub [u8; 3]);

#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no screen value: # and six hexadecimal digits")]
pub struct NotAScreenValue;

/// What a screen shows of a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OnScreen {
    pub screen: Screen,
    /// The colour lies outside what a screen can show: this is the value clipped.
    pub clipped: bool,
}

/// Why a reading has no screen value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum NotOnScreen {
    /// Under this lamp cloth looks otherwise than by daylight, and how is not in the three numbers:
    /// it would take the cloth's whole spectrum.
    #[error("a reading under {0:?} says nothing about daylight")]
    Illuminant(Illuminant),
    #[error("no colour of any surface")]
    NoColour,
}

/// What stands for a colour of the document on a screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Shown {
    pub screen: Screen,
    /// Computed from L*a*b*; else it was typed.
    pub computed: bool,
    /// See [`OnScreen::clipped`]; what is typed is never clipped.
    pub clipped: bool,
}

/// The screen value of a reading under D50 or D65.
pub fn on_screen(lab: &Lab) -> Result<OnScreen, NotOnScreen> {
    let coordinates = coordinates(lab).ok_or(NotOnScreen::NoColour)?;
    let srgb = match (lab.illuminant, lab.observer) {
        (Illuminant::D50, Observer::Two) => to_srgb::<D50>(coordinates),
        (Illuminant::D50, Observer::Ten) => to_srgb::<D50Degree10>(coordinates),
        (Illuminant::D65, Observer::Two) => to_srgb::<D65>(coordinates),
        (Illuminant::D65, Observer::Ten) => to_srgb::<D65Degree10>(coordinates),
        (lamp @ (Illuminant::A | Illuminant::F11), _) => {
            return Err(NotOnScreen::Illuminant(lamp));
        }
    };
    let steps = srgb.map(|part| (part * 255.0).round());
    let clipped = steps.iter().any(|step| !(0.0..=255.0).contains(step));
    // The conversion takes what is below 0 or above 255 for 0 or 255.
    let screen = Screen(steps.map(|step| step as u8));
    Ok(OnScreen { screen, clipped })
}

/// L*a*b* of a screen value for the 2° observer, which sRGB is defined for, to two digits behind
/// the sign. [`on_screen`] gives the same value back.
pub fn from_screen(screen: Screen, illuminant: Illuminant) -> Result<Lab, NotOnScreen> {
    let coordinates = match illuminant {
        Illuminant::D50 => to_lab::<D50>(screen),
        Illuminant::D65 => to_lab::<D65>(screen),
        Illuminant::A | Illuminant::F11 => return Err(NotOnScreen::Illuminant(illuminant)),
    };
    let rounded = |number| Decimal::from_f64(number, 2).expect("L*a*b* of sRGB is below 200");
    let [l, a, b] = coordinates.map(rounded);
    Ok(Lab {
        l,
        a,
        b,
        illuminant,
        observer: Observer::Two,
    })
}

/// A colour of the document on a screen: computed where it has a reading by daylight, else as
/// typed; nothing where it has neither.
pub fn shown(colour: &Colour) -> Option<Shown> {
    if let Some(Ok(OnScreen { screen, clipped })) = colour.lab.as_ref().map(on_screen) {
        return Some(Shown {
            screen,
            computed: true,
            clipped,
        });
    }
    let typed = colour.screen.as_deref()?;
    Some(Shown {
        screen: Screen::read(typed).ok()?,
        computed: false,
        clipped: false,
    })
}

/// How far two neighbouring parts differ in lightness, |ΔL*| under D65: 0 for the same, 100 for
/// black beside white. Hue and chroma may differ all the same.
pub fn lightness_contrast(one: Screen, other: Screen) -> f64 {
    let [[one, ..], [other, ..]] = [to_lab::<D65>(one), to_lab::<D65>(other)];
    (one - other).abs()
}

fn to_srgb<W: WhitePoint<f64> + HasXyzMeta<XyzMeta = W>>([l, a, b]: [f64; 3]) -> [f64; 3] {
    let lab: palette::Lab<W, f64> = palette::Lab::new(l, a, b);
    let xyz: Xyz<W, f64> = lab.into_color_unclamped();
    let xyz: Xyz<D65, f64> = xyz.adapt_into_unclamped();
    Srgb::from_color_unclamped(xyz).into()
}

fn to_lab<W: WhitePoint<f64> + HasXyzMeta<XyzMeta = W>>(screen: Screen) -> [f64; 3] {
    let srgb = Srgb::from(screen.0).into_format::<f64>();
    let xyz: Xyz<D65, f64> = srgb.into_color_unclamped();
    let xyz: Xyz<W, f64> = xyz.adapt_into_unclamped();
    let lab: palette::Lab<W, f64> = xyz.into_color_unclamped();
    lab.into()
}

impl Screen {
    /// As people type it: `#1F3A5F`, `1f3a5f`.
    pub fn read(text: &str) -> Result<Self, NotAScreenValue> {
        let text = text.trim();
        let digits = text.strip_prefix('#').unwrap_or(text);
        if digits.len() != 6 || !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            return Err(NotAScreenValue);
        }
        let number = u32::from_str_radix(digits, 16).map_err(|_| NotAScreenValue)?;
        let [_, red, green, blue] = number.to_be_bytes();
        Ok(Self([red, green, blue]))
    }
}

impl fmt::Display for Screen {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [red, green, blue] = self.0;
        write!(f, "#{red:02x}{green:02x}{blue:02x}")
    }
}

impl TryFrom<String> for Screen {
    type Error = NotAScreenValue;

    fn try_from(text: String) -> Result<Self, NotAScreenValue> {
        let screen = Self::read(&text)?;
        if screen.to_string() == text {
            Ok(screen)
        } else {
            Err(NotAScreenValue)
        }
    }
}

impl From<Screen> for String {
    fn from(screen: Screen) -> Self {
        screen.to_string()
    }
}
