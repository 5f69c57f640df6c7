//! Deviation: d = measured − frozen spec value, and its verdict.
//!
//! Exactly on tolerance passes. With a zero tolerance any deviation on that side is out.

use std::collections::{BTreeMap, BTreeSet};

use crate::spec::chart::Row;
use crate::spec::{Chart, ItemId, Length, Spec};

/// What one point of one size may measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// The frozen chart's value.
    pub spec: Length,
    /// How much smaller it may be; not negative.
    pub minus: Length,
    /// How much larger it may be; not negative.
    pub plus: Length,
    pub critical: bool,
}

/// What a measured value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    Within,
    /// ▲ Larger than the tolerance allows, by this much more.
    Over {
        by: Length,
    },
    /// ▼ Smaller than the tolerance allows, by this much more.
    Under {
        by: Length,
    },
}

impl Verdict {
    pub fn is_out(self) -> bool {
        self != Verdict::Within
    }

    /// `▲`, `▼` or nothing: a shape, so that it reads without colour.
    pub fn mark(self) -> &'static str {
        match self {
            Verdict::Within => "",
            Verdict::Over { .. } => "▲",
            Verdict::Under { .. } => "▼",
        }
    }
}

/// How much of the tolerance a deviation uses up on its side: z = |d| / tolerance, exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Use {
    /// |d|.
    pub deviation: Length,
    /// The tolerance on that side; not zero.
    pub tolerance: Length,
}

impl Use {
    /// In thousandths, rounded up, so that more than 1000 is exactly what is out.
    pub fn permille(self) -> u64 {
        let deviation = u128::from(self.deviation.as_nm().unsigned_abs());
        let tolerance = u128::from(self.tolerance.as_nm().unsigned_abs().max(1));
        u64::try_from((deviation * 1000).div_ceil(tolerance)).unwrap_or(u64::MAX)
    }
}

/// One measured value beside its limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Deviation {
    pub measured: Length,
    /// measured − spec: positive is larger.
    pub d: Length,
    pub verdict: Verdict,
    /// `None` with a zero tolerance on that side.
    pub used: Option<Use>,
}

impl Limits {
    pub fn judge(&self, measured: Length) -> Deviation {
        let d = measured - self.spec;
        let tolerance = if d.is_negative() {
            self.minus
        } else {
            self.plus
        };
        let by = d.abs() - tolerance;
        let verdict = match (by.is_positive(), d.is_negative()) {
            (false, _) => Verdict::Within,
            (true, false) => Verdict::Over { by },
            (true, true) => Verdict::Under { by },
        };
        Deviation {
            measured,
            d,
            verdict,
            used: tolerance.is_positive().then_some(Use {
                deviation: d.abs(),
                tolerance,
            }),
        }
    }
}

/// Whether two sides that measured the same piece are more than half the tolerance apart: then
/// they must agree how to measure before they argue about the piece. The wider tolerance counts.
pub fn apart(limits: &Limits, one: Length, other: Length) -> bool {
    (one - other).abs().doubled() > limits.minus.max(limits.plus)
}

/// What a size's points may measure.
pub type Column = BTreeMap<ItemId, Limits>;

/// The columns of every size of a published spec, from its frozen chart.
pub fn columns(spec: &Spec, chart: &Chart) -> BTreeMap<ItemId, Column> {
    let critical: BTreeSet<&ItemId> = spec
        .points
        .points
        .iter()
        .filter(|point| point.critical)
        .map(|point| &point.id)
        .collect();
    let column = |index: usize, size: &ItemId| -> Column {
        let limits = |row: &Row| {
            let allowed = row.tolerance(size);
            let limits = Limits {
                spec: *row.values.get(index)?,
                minus: allowed.minus,
                plus: allowed.plus,
                critical: critical.contains(&row.point),
            };
            Some((row.point.clone(), limits))
        };
        chart.rows.iter().filter_map(limits).collect()
    };
    chart
        .sizes
        .iter()
        .enumerate()
        .map(|(index, size)| (size.clone(), column(index, size)))
        .collect()
}

/// One piece, judged.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Judged {
    /// Every point of the column, with its deviation where it was measured.
    pub points: BTreeMap<ItemId, (Limits, Option<Deviation>)>,
}

/// Judges one piece: the newest value of each point, in the point's own basis. Values of points
/// that the column has not are left out.
pub fn judge(column: &Column, values: &BTreeMap<ItemId, Length>) -> Judged {
    let points = column
        .iter()
        .map(|(point, limits)| {
            let deviation = values.get(point).map(|value| limits.judge(*value));
            (point.clone(), (*limits, deviation))
        })
        .collect();
    Judged { points }
}

/// How a piece, or all pieces of a round, came out.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Summary {
    /// Values that are due: points of the column, of every piece.
    pub points: usize,
    pub measured: usize,
    pub missing: usize,
    pub out: usize,
    /// Critical points out of tolerance, and on how many pieces.
    pub critical_out: BTreeMap<ItemId, usize>,
}

impl Summary {
    /// Of one piece, or of all pieces of a round.
    pub fn of<'a>(pieces: impl IntoIterator<Item = &'a Judged>) -> Summary {
        let mut summary = Summary::default();
        for piece in pieces {
            for (point, (limits, deviation)) in &piece.points {
                summary.points += 1;
                let Some(deviation) = deviation else {
                    summary.missing += 1;
                    continue;
                };
                summary.measured += 1;
                if deviation.verdict.is_out() {
                    summary.out += 1;
                    if limits.critical {
                        *summary.critical_out.entry(point.clone()).or_default() += 1;
                    }
                }
            }
        }
        summary
    }
}

#[cfg(test)]
mod tests;
