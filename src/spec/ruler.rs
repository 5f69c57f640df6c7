//! Ruler marks, to draw a thing at its true size beside.

use super::units::Unit;

/// A mark of a ruler.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mark {
    /// From the ruler's beginning, in millimetres.
    pub at: f64,
    pub rank: Rank,
    /// Whole centimetres or inches that it stands for; only on marks of that rank.
    pub number: Option<u32>,
}

/// How long a mark is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rank {
    /// A millimetre, or an eighth of an inch.
    Fine,
    /// Half of what is numbered.
    Half,
    /// A centimetre, or an inch.
    Whole,
}

/// The marks of a ruler that is at least so long: up to the next numbered one. In centimetres and
/// millimetres for metric units, else in inches and eighths.
pub fn marks(length: f64, unit: Unit) -> Vec<Mark> {
    let (whole, parts) = match unit {
        Unit::Cm | Unit::Mm => (10.0, 10),
        Unit::Inch => (25.4, 8),
    };
    // No ruler for what is no length, and none longer than ten metres.
    let wholes = (length.clamp(0.0, 10_000.0) / whole).ceil() as u32;
    let marks = (0..=wholes * parts).map(|number| {
        let part = number % parts;
        Mark {
            at: f64::from(number) * whole / f64::from(parts),
            rank: match part {
                0 => Rank::Whole,
                _ if 2 * part == parts => Rank::Half,
                _ => Rank::Fine,
            },
            number: (part == 0).then_some(number / parts),
        }
    });
    marks.collect()
}

/// A bank card's width and height in millimetres (ISO/IEC 7810, ID-1): most people have one to hold
/// against a screen.
pub const CARD: (f64, f64) = (85.6, 53.98);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ruler_has_a_mark_for_every_millimetre() {
        let marks = marks(32.0, Unit::Cm);
        assert_eq!(marks.len(), 41);
        assert_eq!(marks[0].number, Some(0));
        assert_eq!((marks[5].at, marks[5].rank), (5.0, Rank::Half));
        assert_eq!((marks[7].at, marks[7].rank), (7.0, Rank::Fine));
        let last = marks.last().unwrap();
        assert_eq!(
            (last.at, last.rank, last.number),
            (40.0, Rank::Whole, Some(4))
        );
    }

    #[test]
    fn an_inch_has_eight_eighths_of_its_own_length() {
        let marks = marks(50.8, Unit::Inch);
        assert_eq!(marks.len(), 17);
        assert_eq!((marks[16].at, marks[16].number), (50.8, Some(2)));
        assert_eq!((marks[1].at, marks[1].rank), (3.175, Rank::Fine));
        assert_eq!(marks[4].rank, Rank::Half);
    }

    #[test]
    fn what_is_no_length_has_one_mark() {
        for length in [0.0, -5.0, f64::NAN] {
            assert_eq!(marks(length, Unit::Cm).len(), 1, "{length}");
        }
        assert_eq!(marks(1e12, Unit::Cm).len(), 10_001);
    }
}
