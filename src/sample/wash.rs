//! What washing does to a piece: % = (after − before) / before.
//!
//! The pattern is answered by × 1 / (1 + s), which is before / after: after a loss of 4 % it is cut
//! × 1.0417 and not × 1.04, because what is added is lost by its share as well.

use std::collections::BTreeMap;

use crate::spec::document::Direction;
use crate::spec::{ItemId, Length};

use super::contract::Contract;
use super::diagnose::ASSUMED;
use super::ratio::{Factor, Percent};

/// One value before and after, or several together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Change {
    pub before: Length,
    pub after: Length,
    pub percent: Percent,
    pub correction: Factor,
}

impl Change {
    /// `None` unless both lengths are positive.
    pub fn new(before: Length, after: Length) -> Option<Change> {
        Some(Change {
            before,
            after,
            percent: Percent::of_change(before, after)?,
            correction: Factor::of_change(before, after)?,
        })
    }
}

/// What washing did to a fabric along a direction.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GroupChange {
    /// The fabric's line among the materials, or the part.
    pub fabric: Option<ItemId>,
    pub along: Option<Direction>,
    pub points: Vec<ItemId>,
    /// Of all its points laid end to end, so that a millimetre of reading counts little on a long
    /// one and does not count more on a short one.
    pub together: Change,
}

impl GroupChange {
    /// Whether the points together changed by more than measuring explains: by more than two standard
    /// deviations of a sum of differences, each of two readings of which one scatters as assumed where
    /// nothing was measured twice. What is not carried calls for no pattern correction.
    pub fn is_carried(&self) -> bool {
        let change = i128::from((self.together.after - self.together.before).as_nm());
        let scatter = i128::from(ASSUMED.as_nm());
        // change > 2 · scatter · √(2n), squared.
        change * change > 8 * self.points.len() as i128 * scatter * scatter
    }
}

/// One washed piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Washed {
    /// The points that were measured before and after.
    pub points: BTreeMap<ItemId, Change>,
    /// In the order of the chart.
    pub groups: Vec<GroupChange>,
}

/// Compares a piece before and after washing, point by point and by fabric and direction.
pub fn washed(
    contract: &Contract,
    before: &BTreeMap<ItemId, Length>,
    after: &BTreeMap<ItemId, Length>,
) -> Washed {
    let both = before.iter().filter_map(|(point, before)| {
        let change = Change::new(*before, *after.get(point)?)?;
        Some((point.clone(), change))
    });
    let points: BTreeMap<ItemId, Change> = both.collect();
    let mut groups: Vec<GroupChange> = Vec::new();
    for place in &contract.points {
        let Some(change) = points.get(&place.point) else {
            continue;
        };
        let same =
            |group: &&mut GroupChange| group.fabric == place.fabric && group.along == place.along;
        match groups.iter_mut().find(same) {
            Some(group) => {
                let (before, after) = (group.together.before, group.together.after);
                let sum = Change::new(before + change.before, after + change.after);
                group.points.push(place.point.clone());
                group.together = sum.unwrap_or(group.together);
            }
            None => groups.push(GroupChange {
                fabric: place.fabric.clone(),
                along: place.along,
                points: vec![place.point.clone()],
                together: *change,
            }),
        }
    }
    Washed { points, groups }
}

#[cfg(test)]
mod tests;
