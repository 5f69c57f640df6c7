//! What a round is judged by, and what was measured in it.

use std::collections::BTreeMap;

use crate::spec::document::{Basis, Direction, MaterialKind};
use crate::spec::{Chart, ItemId, Length, PieceId, Spec};

use super::deviation::{Column, columns};
use super::steps::mean;

/// The frozen chart, with what is known of where its points lie.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Contract {
    /// The size that the others are graded from.
    pub base: ItemId,
    /// In their order.
    pub sizes: Vec<ItemId>,
    /// In the order of the chart.
    pub points: Vec<Place>,
    /// What each size may measure.
    pub columns: BTreeMap<ItemId, Column>,
}

/// Where a point lies on the garment.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Place {
    pub point: ItemId,
    /// What it is measured on: a fabric's line among the materials, or a part. Points of the same
    /// one shrink alike.
    pub fabric: Option<ItemId>,
    /// Along the length or across the width.
    pub along: Option<Direction>,
    pub basis: Option<Basis>,
}

/// One garment of a round.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Piece {
    pub id: PieceId,
    /// The size that it is said to be.
    pub size: ItemId,
    /// One for each of those who measured it. Of a point that several measured, the last one's value
    /// is what the piece is judged by.
    pub readings: Vec<Reading>,
}

/// One piece, measured through by one side.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Reading {
    /// Who measured.
    pub by: String,
    /// The newest value of each point, in the point's own basis.
    pub values: BTreeMap<ItemId, Length>,
}

impl Contract {
    /// Of a published spec and the chart that was frozen with it. Points are of one fabric when
    /// their parts are made of the same line of fabric; where a part has none or several, the part
    /// itself counts.
    pub fn of(spec: &Spec, chart: &Chart) -> Contract {
        let place = |point: &ItemId| {
            let known = spec.points.points.iter().find(|it| it.id == *point);
            let part = known.and_then(|it| it.part.as_ref());
            Place {
                point: point.clone(),
                fabric: part.map(|part| fabric_of(spec, part)),
                along: known.and_then(|it| it.direction),
                basis: known.and_then(|it| it.basis),
            }
        };
        Contract {
            base: chart.base_size.clone(),
            sizes: chart.sizes.clone(),
            points: chart.rows.iter().map(|row| place(&row.point)).collect(),
            columns: columns(spec, chart),
        }
    }
}

fn fabric_of(spec: &Spec, part: &ItemId) -> ItemId {
    let is_fabric = |kind: Option<MaterialKind>| {
        matches!(
            kind,
            Some(
                MaterialKind::WovenFabric | MaterialKind::KnittedFabric | MaterialKind::OtherFabric
            )
        )
    };
    let lines = spec.materials.materials.iter();
    let mut lines = lines.filter(|it| is_fabric(it.kind) && it.parts.contains(part));
    match (lines.next(), lines.next()) {
        (Some(line), None) => line.id.clone(),
        _ => part.clone(),
    }
}

impl Piece {
    /// What the piece is judged by.
    pub fn decisive(&self) -> BTreeMap<ItemId, Length> {
        let values = self.readings.iter().flat_map(|it| &it.values);
        values
            .map(|(point, value)| (point.clone(), *value))
            .collect()
    }

    /// What the piece is taken to measure where causes are looked for: the mean of those who measured
    /// each point, rounded once to a whole nanometre.
    pub fn values(&self) -> BTreeMap<ItemId, Length> {
        let mut all: BTreeMap<&ItemId, Vec<Length>> = BTreeMap::new();
        for (point, value) in self.readings.iter().flat_map(|it| &it.values) {
            all.entry(point).or_default().push(*value);
        }
        let means = all.into_iter().filter_map(|(point, values)| {
            let mean = mean(values.into_iter())?;
            Some((point.clone(), mean))
        });
        means.collect()
    }
}

#[cfg(test)]
mod tests;
