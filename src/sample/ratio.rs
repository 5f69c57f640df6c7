//! Percentages and factors, exact to the last digit that is shown.

use std::fmt;

use crate::spec::{DecimalSign, Length};

/// A share in hundredths of a percent: −400 is −4 %.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Percent(i64);

/// A factor in ten-thousandths: 10417 is × 1.0417.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Factor(i64);

impl Percent {
    pub const fn hundredths(hundredths: i64) -> Self {
        Self(hundredths)
    }

    pub const fn as_hundredths(self) -> i64 {
        self.0
    }

    /// (after − before) / before, rounded once, half away from zero. `None` unless `before` is
    /// positive.
    pub fn of_change(before: Length, after: Length) -> Option<Percent> {
        let change = i128::from((after - before).as_nm());
        quotient(change * 10_000, i128::from(before.as_nm())).map(Percent)
    }

    /// Of a share that statistics gave: 0.025 is 2.5 %. What is no number is none.
    pub fn of_share(share: f64) -> Percent {
        Percent(rounded(share * 10_000.0))
    }

    pub const fn is_negative(self) -> bool {
        self.0 < 0
    }

    /// `-2.5`, `4`: without a sign for percent.
    pub fn show(self, sign: DecimalSign) -> String {
        shown(self.0, 2, sign)
    }
}

impl Factor {
    pub const fn as_ten_thousandths(self) -> i64 {
        self.0
    }

    /// What the pattern is multiplied with so that it comes out right after it changed by `s`:
    /// 1 / (1 + s), which is before / after, and never 1 − s. `None` unless both are positive.
    pub fn of_change(before: Length, after: Length) -> Option<Factor> {
        let before = i128::from(before.as_nm());
        let factor = quotient(before * 10_000, i128::from(after.as_nm()))?;
        (factor > 0).then_some(Factor(factor))
    }

    /// The same for a change that statistics gave: −0.04 is answered by × 1.0417.
    pub fn of_share(share: f64) -> Option<Factor> {
        let factor = 1.0 / (1.0 + share);
        (share > -1.0).then(|| Factor(rounded(factor * 10_000.0)))
    }

    /// `1.0417`.
    pub fn show(self, sign: DecimalSign) -> String {
        shown(self.0, 4, sign)
    }
}

/// To the nearest whole number, half away from zero; only by a positive divisor.
fn quotient(dividend: i128, divisor: i128) -> Option<i64> {
    if divisor <= 0 {
        return None;
    }
    let half = divisor / 2 * dividend.signum();
    i64::try_from((dividend + half) / divisor).ok()
}

/// Half away from zero; beyond all sense it stops at the ends.
fn rounded(value: f64) -> i64 {
    value.round() as i64
}

/// With `digits` digits behind the sign, less the zeros at their end.
fn shown(parts: i64, digits: usize, sign: DecimalSign) -> String {
    let text = format!("{:0width$}", parts.unsigned_abs(), width = digits + 1);
    let (whole, fraction) = text.split_at(text.len() - digits);
    let fraction = fraction.trim_end_matches('0');
    let minus = if parts < 0 { "-" } else { "" };
    match fraction {
        "" => format!("{minus}{whole}"),
        _ => format!("{minus}{whole}{}{fraction}", sign.sign()),
    }
}

impl fmt::Display for Percent {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.show(DecimalSign::Point))
    }
}

impl fmt::Display for Factor {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.show(DecimalSign::Point))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(mm: i64) -> Length {
        Length::nm(mm * 1_000_000)
    }

    #[test]
    fn four_per_cent_lost_are_made_up_by_a_24th() {
        // The worked example: 1 / (1 − 0.04) = 1.041666..., not 1.04.
        let (before, after) = (mm(500), mm(480));
        let change = Percent::of_change(before, after).unwrap();
        assert_eq!(change.to_string(), "-4");
        assert_eq!(
            Factor::of_change(before, after).unwrap().to_string(),
            "1.0417"
        );
        assert_eq!(Factor::of_share(-0.04).unwrap().to_string(), "1.0417");
        // A piece that grew by 4 % is made smaller: 1 / 1.04 = 0.961538...
        assert_eq!(Factor::of_share(0.04).unwrap().to_string(), "0.9615");
        assert_eq!(
            Factor::of_change(mm(500), mm(520)).unwrap().to_string(),
            "0.9615"
        );
    }

    #[test]
    fn a_change_is_rounded_half_away_from_zero() {
        let change = |before, after| Percent::of_change(mm(before), mm(after)).unwrap();
        assert_eq!(change(800, 801).as_hundredths(), 13, "0.125 %");
        assert_eq!(change(800, 799).as_hundredths(), -13);
        assert_eq!(change(300, 301).as_hundredths(), 33);
        assert_eq!(change(300, 300).to_string(), "0");
        assert_eq!(Percent::of_share(-0.0255).to_string(), "-2.55");
        assert_eq!(Percent::of_share(0.0255).show(DecimalSign::Comma), "2,55");
        assert_eq!(Percent::hundredths(-5).to_string(), "-0.05");
    }

    #[test]
    fn without_a_length_before_there_is_no_change() {
        assert_eq!(Percent::of_change(mm(0), mm(5)), None);
        assert_eq!(Percent::of_change(mm(-5), mm(5)), None);
        assert_eq!(Factor::of_change(mm(5), mm(0)), None);
        assert_eq!(Factor::of_share(-1.0), None);
    }
}
