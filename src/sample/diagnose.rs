//! Why the measurements of a round are off: the patterns that carry a cause, told apart.
//!
//! A cause is a column of a regression: shrinkage moves each value of a fabric along a direction by
//! a share of itself, a wrong seam allowance by one length, a wrong grade by a share of its steps, a
//! single point by itself alone. Wrong labels and slips of entry change the measurements or what
//! they are held against. The reading of all measurements that costs least by an extended
//! information criterion is told (`fit.rs` says how it is weighed and by whose method, `search.rs`
//! how it is looked for). A single point is an outlier in the mean-shift model: it gets a parameter
//! of its own, so that it bends no other estimate (She and Owen, "Outlier detection using
//! nonconvex penalized regression", JASA 106, 2011; both papers from memory).
//!
//! Compared with rules of thumb on each pattern by itself (medians, signs, Theil-Sen slopes) this
//! keeps two faults apart that lie on the same points, and does not let points of a few millimetres,
//! where noise is a tenth of the value, outvote those of half a metre. `tests/samples` prints how
//! often it is right.

mod atom;
mod data;
mod entry;
mod fit;
mod search;
mod state;
mod told;

use crate::spec::{ItemId, Length, PieceId};

use super::contract::{Contract, Piece};
use super::finding::{Finding, Lack, Repeatability, RepeatedBy};
use data::Data;
use fit::Prior;

/// The scatter of a single value where nothing was measured twice, in nanometres. Common practice,
/// no source.
pub const ASSUMED: Length = Length::nm(1_500_000);

/// How many readings the assumption is worth beside those of the round.
const ASSUMED_WEIGHT: f64 = 4.0;

/// So many points measured by several people at least, and they say better than an assumption how
/// far a value can be repeated. Our own choice.
const ENOUGH_PAIRS: usize = 8;

/// What the measurements of a round show.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Diagnosis {
    /// The most telling first.
    pub findings: Vec<Finding>,
    /// Values that are out of tolerance and that no cause explains beyond what measuring can do.
    pub again: Vec<Again>,
    /// What there is not enough data for.
    pub lacks: Vec<Lack>,
    pub repeatability: Repeatability,
    /// The scatter of a single value about what the findings explain, as a standard deviation.
    pub scatter: Length,
}

/// A value to measure again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Again {
    pub piece: PieceId,
    pub point: ItemId,
}

/// Finds what these pieces show. `spared` are the values that nobody should reason with, by the
/// number of the piece and the point. `None` when nothing was measured, or when a piece or the base
/// size is none of the contract's.
pub fn diagnose(
    contract: &Contract,
    pieces: &[Piece],
    spared: impl Fn(usize, &ItemId) -> bool,
) -> Option<Diagnosis> {
    let data = Data::new(contract, pieces, spared)?;
    let measured = by_measurers(pieces);
    let (deviation, weight) = match measured {
        Some((deviation, pairs)) => (deviation, pairs as f64),
        None => (data::cm(ASSUMED), ASSUMED_WEIGHT),
    };
    let prior = Prior {
        weight,
        variance: deviation * deviation,
    };
    let (reading, criterion) = search::search(&data, prior)?;
    let told = told::Told::new(&data, pieces, &reading);
    let by_measurers = measured.map(|(deviation, pairs)| Repeatability {
        deviation: data::length(deviation),
        source: RepeatedBy::Measurers(pairs),
    });
    let repeatability = by_measurers
        .or_else(|| told.by_pieces())
        .unwrap_or(Repeatability {
            deviation: ASSUMED,
            source: RepeatedBy::Assumed,
        });
    Some(Diagnosis {
        scatter: data::length(criterion.deviation(&reading.fit)),
        findings: told.findings(),
        again: told.again(),
        lacks: told.lacks(contract),
        repeatability,
    })
}

/// The scatter of a single value from points of a piece that several people measured, in
/// centimetres, with the number of such points: 1.4826 times the median gap, by the square root of
/// two. The median, because a dispute about how to measure says nothing of how well either does it.
fn by_measurers(pieces: &[Piece]) -> Option<(f64, usize)> {
    let mut gaps = Vec::new();
    for piece in pieces {
        for (number, one) in piece.readings.iter().enumerate() {
            for other in &piece.readings[number + 1..] {
                let both = one.values.iter();
                let both = both.filter_map(|(point, value)| {
                    let other = other.values.get(point)?;
                    Some(data::cm(*value - *other).abs())
                });
                gaps.extend(both);
            }
        }
    }
    let pairs = gaps.len();
    // A tape is read to a millimetre: people who agree on every one still differ by half of that.
    let deviation = (1.4826 * fit::median(&mut gaps) / 2.0_f64.sqrt()).max(0.05);
    (pairs >= ENOUGH_PAIRS).then_some((deviation, pairs))
}
