//! Decimal numbers that are no lengths: percentages, masses, counts per centimetre, colour
//! coordinates. Exact; never binary floating point.

use std::fmt;
use std::iter::Sum;

use rust_decimal::prelude::{FromPrimitive, ToPrimitive};
use serde::{Deserialize, Serialize};

use super::units::DecimalSign;

/// A decimal number, written in documents as text: `-?(0|[1-9]\d*)(\.\d*[1-9])?`, never `-0`.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(try_from = "String", into = "String")]
pub struct Decimal(rust_decimal::Decimal);

#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("no decimal number")]
pub struct NotADecimal;

impl Decimal {
    pub const ZERO: Decimal = Decimal(rust_decimal::Decimal::ZERO);
    pub const ONE: Decimal = Decimal(rust_decimal::Decimal::ONE);
    pub const HUNDRED: Decimal = Decimal(rust_decimal::Decimal::ONE_HUNDRED);

    /// At most this many digits, before and behind the sign together.
    pub const DIGITS: usize = 18;

    /// As people type it: `5`, `0.5`, `,5`, `12,50`, `-3`, `−3`. One sign, no grouping.
    pub fn read(text: &str) -> Result<Self, NotADecimal> {
        let text = text.trim().replace('−', "-").replace(',', ".");
        let digits = text.strip_prefix('-').unwrap_or(&text);
        let count = digits.bytes().filter(u8::is_ascii_digit).count();
        let plain = digits
            .bytes()
            .all(|byte| byte.is_ascii_digit() || byte == b'.');
        if !plain || count == 0 || count > Self::DIGITS {
            return Err(NotADecimal);
        }
        let number = text.parse().map_err(|_| NotADecimal)?;
        Ok(Self::of(number))
    }

    pub fn new(digits: i64, behind_the_sign: u32) -> Self {
        Self::of(rust_decimal::Decimal::new(digits, behind_the_sign))
    }

    /// The same number in its one form.
    pub fn of(number: rust_decimal::Decimal) -> Self {
        Self(number.normalize())
    }

    pub fn number(self) -> rust_decimal::Decimal {
        self.0
    }

    /// For formulas that are no decimal arithmetic: colour differences.
    pub fn to_f64(self) -> f64 {
        self.0
            .to_f64()
            .expect("eighteen digits lie within the range")
    }

    /// A number of such a formula, to so many digits behind the sign; nothing when it has more
    /// digits before it than a decimal holds.
    pub fn from_f64(number: f64, digits: u32) -> Option<Self> {
        // To nine digits first: 1.005 must not come out as 1.00 because binary has 1.00499...
        let number = Self::of(rust_decimal::Decimal::from_f64(number)?);
        Some(number.rounded(9).rounded(digits))
    }

    pub fn is_positive(self) -> bool {
        self.0 > rust_decimal::Decimal::ZERO
    }

    pub fn is_negative(self) -> bool {
        self.0 < rust_decimal::Decimal::ZERO
    }

    /// Nothing where the sum is too large for 28 digits; so with the other three.
    pub fn plus(self, other: Self) -> Option<Self> {
        self.0.checked_add(other.0).map(Self::of)
    }

    pub fn minus(self, other: Self) -> Option<Self> {
        self.0.checked_sub(other.0).map(Self::of)
    }

    /// Rounded at the 28th digit where it has more.
    pub fn times(self, other: Self) -> Option<Self> {
        self.0.checked_mul(other.0).map(Self::of)
    }

    /// Rounded at the 28th digit; nothing where the divisor is zero.
    pub fn over(self, divisor: Self) -> Option<Self> {
        self.0.checked_div(divisor.0).map(Self::of)
    }

    /// `100 + percent` hundredths of it.
    pub fn and_percent(self, percent: Self) -> Option<Self> {
        self.times(Self::HUNDRED.plus(percent)?)?
            .over(Self::HUNDRED)
    }

    /// To so many digits behind the sign, half away from zero.
    pub fn rounded(self, digits: u32) -> Self {
        let strategy = rust_decimal::RoundingStrategy::MidpointAwayFromZero;
        Self::of(self.0.round_dp_with_strategy(digits, strategy))
    }

    /// Every digit, with this sign.
    pub fn show(self, sign: DecimalSign) -> String {
        self.to_string().replace('.', &sign.sign().to_string())
    }
}

/// What people type would have to be added ten thousand million times to reach the end, where the
/// sum stays.
impl Sum for Decimal {
    fn sum<I: Iterator<Item = Decimal>>(all: I) -> Decimal {
        let zero = rust_decimal::Decimal::ZERO;
        Self::of(all.fold(zero, |sum, it| sum.saturating_add(it.0)))
    }
}

impl fmt::Display for Decimal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl TryFrom<String> for Decimal {
    type Error = NotADecimal;

    fn try_from(text: String) -> Result<Self, NotADecimal> {
        let decimal = Self::read(&text)?;
        if decimal.to_string() == text {
            Ok(decimal)
        } else {
            Err(NotADecimal)
        }
    }
}

impl From<Decimal> for String {
    fn from(decimal: Decimal) -> Self {
        decimal.to_string()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn what_people_type_is_read() {
        for (typed, kept) in [
            ("5", "5"),
            (" 12,50 ", "12.5"),
            (",5", "0.5"),
            ("-3.0", "-3"),
            ("−0,25", "-0.25"),
            ("-0", "0"),
            ("007", "7"),
        ] {
            assert_eq!(
                Decimal::read(typed).map(String::from).as_deref(),
                Ok(kept),
                "{typed}"
            );
        }
        for wrong in [
            "",
            ".",
            "-",
            "1.2.3",
            "1 000",
            "1e3",
            "5 %",
            "१",
            "1234567890123456789",
        ] {
            assert_eq!(Decimal::read(wrong), Err(NotADecimal), "{wrong}");
        }
    }

    #[test]
    fn a_document_holds_it_in_one_form() {
        for wrong in ["1.0", "01", "-0", ".5", "1,5", "+1"] {
            assert!(Decimal::try_from(wrong.to_owned()).is_err(), "{wrong}");
        }
        assert_eq!(
            Decimal::try_from("97.5".to_owned()),
            Ok(Decimal::new(975, 1))
        );
    }

    #[test]
    fn half_is_rounded_away_from_zero() {
        assert_eq!(Decimal::new(25, 1).rounded(0), Decimal::new(3, 0));
        assert_eq!(Decimal::new(-25, 1).rounded(0), Decimal::new(-3, 0));
        assert_eq!(Decimal::new(1234, 1).show(DecimalSign::Comma), "123,4");
    }

    #[test]
    fn what_does_not_fit_is_nothing() {
        let large = Decimal::read("999999999999999999").unwrap();
        let tiny = Decimal::read("0.00000000000000001").unwrap();
        assert_eq!(large.times(large), None);
        assert_eq!(large.over(Decimal::ZERO), None);
        assert_eq!(large.over(tiny).and_then(|it| it.times(large)), None);
        assert_eq!(
            Decimal::new(2, 0)
                .over(Decimal::new(3, 0))
                .map(|it| it.rounded(4)),
            Some(Decimal::new(6667, 4))
        );
        assert_eq!(
            Decimal::new(180, 0).and_percent(Decimal::new(5, 0)),
            Some(Decimal::new(189, 0))
        );
        assert_eq!(
            Decimal::new(1, 1).plus(Decimal::new(2, 1)),
            Some(Decimal::new(3, 1))
        );
        assert_eq!(
            Decimal::new(3, 1).minus(Decimal::new(2, 1)),
            Some(Decimal::new(1, 1))
        );
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_again(digits in -999_999_999_999i64..999_999_999_999, behind in 0u32..6) {
            let decimal = Decimal::new(digits, behind);
            prop_assert_eq!(Decimal::read(&decimal.to_string()), Ok(decimal));
            prop_assert_eq!(Decimal::try_from(decimal.to_string()), Ok(decimal));
        }
    }
}
