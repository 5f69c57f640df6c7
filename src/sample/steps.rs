//! The size set: the steps that the pieces have, against the frozen ones.

use std::collections::BTreeMap;

use crate::spec::{ItemId, Length};

use super::contract::{Contract, Piece};

/// From one measured size to the next one that was measured.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SizeStep {
    pub from: ItemId,
    pub to: ItemId,
    /// By the chart; of sizes in between, all their steps together.
    pub frozen: Length,
    /// Between the means of the pieces of each size.
    pub actual: Length,
}

impl SizeStep {
    /// How much more the garment grows than it should.
    pub fn more(&self) -> Length {
        self.actual - self.frozen
    }

    /// Whether it shrinks where it should grow, or grows where it should shrink.
    pub fn reverses(&self) -> bool {
        self.actual.as_nm().signum() * self.frozen.as_nm().signum() < 0
    }
}

/// The steps of every point that was measured in two sizes or more, in the order of the sizes. The
/// points come in the order of the chart.
pub fn steps(contract: &Contract, pieces: &[Piece]) -> Vec<(ItemId, Vec<SizeStep>)> {
    let measured: Vec<(&ItemId, BTreeMap<ItemId, Length>)> = pieces
        .iter()
        .map(|piece| (&piece.size, piece.values()))
        .collect();
    let of_point = |point: &ItemId| {
        let sizes = contract.sizes.iter().filter_map(|size| {
            let frozen = contract.columns.get(size)?.get(point)?.spec;
            let pieces = measured.iter().filter(|(of, _)| *of == size);
            let values = pieces.filter_map(|(_, values)| values.get(point));
            Some((size, frozen, mean(values.copied())?))
        });
        let sizes: Vec<_> = sizes.collect();
        let steps = sizes.windows(2).map(|pair| {
            let ((from, frozen, actual), (to, next_frozen, next_actual)) = (&pair[0], &pair[1]);
            SizeStep {
                from: (*from).clone(),
                to: (*to).clone(),
                frozen: *next_frozen - *frozen,
                actual: *next_actual - *actual,
            }
        });
        steps.collect::<Vec<_>>()
    };
    let points = contract.points.iter();
    points
        .map(|place| (place.point.clone(), of_point(&place.point)))
        .filter(|(_, steps)| !steps.is_empty())
        .collect()
}

/// Rounded once to a whole nanometre, half up; of none, none.
pub fn mean(values: impl Iterator<Item = Length>) -> Option<Length> {
    let (mut sum, mut count) = (0_i64, 0_i64);
    for value in values {
        sum += value.as_nm();
        count += 1;
    }
    let half_up = |count| sum.div_euclid(count) + i64::from(sum.rem_euclid(count) * 2 >= count);
    (count > 0).then(|| Length::nm(half_up(count)))
}

#[cfg(test)]
mod tests;
