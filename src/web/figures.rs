//! Lengths as pages show them: in the revision's unit, with its decimal sign, in Latin digits.

use crate::exchange::revision::Frozen;
use crate::spec::{DecimalSign, Length, Unit};

/// How one revision writes its numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Figures {
    pub unit: Unit,
    pub sign: DecimalSign,
}

impl Figures {
    pub fn of(frozen: &Frozen) -> Self {
        Self {
            unit: frozen.chart.unit,
            sign: frozen.decimal,
        }
    }

    /// With the decimals of the step, so that a column lines up; a value between two steps with as
    /// many as it needs.
    pub fn value(self, length: Length, step: Length) -> String {
        let text = if length.is_multiple_of(step) {
            length.show(self.unit, step, self.sign)
        } else {
            length.exact(self.unit, self.sign)
        };
        text.replace('-', "−")
    }

    /// A difference, with its sign: `+1 1/8`, `−0.5`, `0.0`.
    pub fn difference(self, length: Length, step: Length) -> String {
        let plus = if length.is_positive() { "+" } else { "" };
        format!("{plus}{}", self.value(length, step))
    }

    /// `−3/8 +3/8`.
    pub fn tolerance(self, minus: Length, plus: Length, step: Length) -> String {
        let (minus, plus) = (self.value(minus, step), self.value(plus, step));
        format!("−{minus} +{plus}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const CM: Figures = Figures {
        unit: Unit::Cm,
        sign: DecimalSign::Comma,
    };
    const INCH: Figures = Figures {
        unit: Unit::Inch,
        sign: DecimalSign::Point,
    };

    fn mm(tenths: i64) -> Length {
        Length::nm(tenths * 100_000)
    }

    fn sixteenths(count: i64) -> Length {
        Length::nm(count * 1_587_500)
    }

    #[test]
    fn a_column_has_one_number_of_decimals() {
        assert_eq!(CM.value(mm(5300), mm(10)), "53,0");
        assert_eq!(CM.value(mm(5305), mm(10)), "53,05");
        assert_eq!(INCH.value(sixteenths(28 * 16 + 8), sixteenths(2)), "28 1/2");
    }

    #[test]
    fn a_difference_says_its_side() {
        assert_eq!(CM.difference(mm(-50), mm(10)), "−0,5");
        assert_eq!(INCH.difference(sixteenths(18), sixteenths(2)), "+1 1/8");
        assert_eq!(INCH.difference(Length::ZERO, sixteenths(2)), "0");
        let tolerance = INCH.tolerance(sixteenths(6), sixteenths(4), sixteenths(2));
        assert_eq!(tolerance, "−3/8 +1/4");
    }
}
