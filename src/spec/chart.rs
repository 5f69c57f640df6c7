//! The size chart: every point's value in every size, from its base, its grade and its step.
//!
//! Values are graded unrounded and each is rounded once, half away from zero. The rounded chart is
//! frozen into the revision: it is the contract, and every deviation is taken from it.

mod grader;

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::document::{Point, Spec};
use super::id::ItemId;
use super::units::{Length, Unit};
use grader::Grader;

/// The chart as a revision holds it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Chart {
    /// The master unit, which the values are shown in.
    pub unit: Unit,
    pub base_size: ItemId,
    /// The columns, in the order of the spec's sizes.
    pub sizes: Vec<ItemId>,
    /// In the order of the spec's points.
    pub rows: Vec<Row>,
    /// The values on the second axis, in the order of the points and of the axis.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lengths: Vec<LengthRow>,
}

/// One point's line of the chart.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Row {
    pub point: ItemId,
    /// One for each size, each a multiple of `step`.
    pub values: Vec<Length>,
    /// How much below the value still passes; not negative.
    pub minus: Length,
    /// How much above the value still passes; not negative.
    pub plus: Length,
    pub step: Length,
    /// The sizes whose tolerance is another one.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub tolerances: BTreeMap<ItemId, Allowed>,
    /// How much left and right may differ, for a point that is there twice.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pair_limit: Option<Length>,
    /// What each size must reach when stretched, each a multiple of `step`. Empty where the point
    /// does not say.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub stretched: Vec<Length>,
}

/// The tolerance of one size; neither side is negative.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Allowed {
    pub minus: Length,
    pub plus: Length,
}

/// One point's values at one value of the second axis, for a point that it changes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LengthRow {
    pub point: ItemId,
    /// The value of the second axis.
    pub length: ItemId,
    /// One for each size, each a multiple of the point's step.
    pub values: Vec<Length>,
}

/// What grading found for every point of a draft, in the order of its points.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Graded {
    pub points: Vec<GradedPoint>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GradedPoint {
    pub point: ItemId,
    /// Its values, or everything that keeps them from being worked out.
    pub result: Result<Values, Vec<GradeFault>>,
}

/// One point's values in the order of the sizes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Values {
    pub exact: Vec<Length>,
    pub rounded: Vec<Length>,
    /// What each size must reach when stretched, rounded. Empty where the point does not say.
    pub stretched: Vec<Length>,
    /// The rounded values at each value of the second axis that changes the point.
    pub lengths: Vec<(ItemId, Vec<Length>)>,
}

impl Values {
    fn all_rounded(&self) -> impl Iterator<Item = &Length> {
        let lengths = self.lengths.iter().flat_map(|(_, values)| values);
        self.rounded.iter().chain(&self.stretched).chain(lengths)
    }
}

/// Why a point has no line in the chart.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum GradeFault {
    #[error("no base value")]
    NoBase,
    /// The spec's, not the point's: missing, or not one of the sizes.
    #[error("no base size among the sizes")]
    NoBaseSize,
    #[error("no grade")]
    NoGrade,
    /// Missing, zero or negative.
    #[error("no rounding step")]
    NoStep,
    #[error("no step between the neighbours {from} and {to}")]
    GapUncovered { from: ItemId, to: ItemId },
    #[error("two steps between the neighbours {from} and {to}")]
    GapDoubled { from: ItemId, to: ItemId },
    #[error("the segment from {from} to {to} does not lead to a later size")]
    SegmentBackwards { from: ItemId, to: ItemId },
    #[error("{size} is no size of this spec")]
    UnknownSize { size: ItemId },
    #[error("no value for the size {size}")]
    SizeWithoutValue { size: ItemId },
    #[error("{point} is no point of this spec")]
    UnknownPoint { point: ItemId },
    /// From this point through its sources until it comes back.
    #[error("derived from itself")]
    DerivedCycle { points: Vec<ItemId> },
    #[error("derived from {point}, which cannot be graded")]
    SourceFaulty { point: ItemId },
    #[error("the base value is not what the grade gives at the base size")]
    BaseDisagrees { typed: Length, graded: Length },
    #[error("longer than a kilometre")]
    TooLong,
}

/// Grades every point of a draft. A fault in one never keeps another from its line.
pub fn grade(spec: &Spec) -> Graded {
    let points = &spec.points.points;
    let mut grader = Grader::new(spec, points.iter().collect());
    let points = points.iter().enumerate().map(|(index, point)| GradedPoint {
        point: point.id.clone(),
        result: grader.values(index),
    });
    Graded {
        points: points.collect(),
    }
}

/// Grades one point as it is being typed: in the place of the spec's point of that id, or beside
/// the others when it is new.
pub fn grade_point(spec: &Spec, point: &Point) -> Result<Values, Vec<GradeFault>> {
    let mut points: Vec<&Point> = spec.points.points.iter().collect();
    let index = match points.iter().position(|other| other.id == point.id) {
        Some(index) => index,
        None => {
            points.push(point);
            points.len() - 1
        }
    };
    points[index] = point;
    Grader::new(spec, points).values(index)
}

/// The steps from each value to the next: those actually left, when the values are rounded.
pub fn steps(values: &[Length]) -> impl Iterator<Item = Length> + '_ {
    values.windows(2).map(|pair| pair[1] - pair[0])
}

impl Graded {
    pub fn values(&self, point: &ItemId) -> Option<&Values> {
        let graded = self.points.iter().find(|graded| graded.point == *point)?;
        graded.result.as_ref().ok()
    }

    /// The chart, with a row for each point that has values and both tolerances: every one, when
    /// the readiness checks found no error. Nothing when the unit or the base size is missing.
    pub fn chart(&self, spec: &Spec) -> Option<Chart> {
        let base_size = spec.header.base_size.clone()?;
        let sizes: Vec<ItemId> = spec.sizes.sizes.iter().map(|s| s.id.clone()).collect();
        let mut chart = Chart {
            unit: spec.header.unit?,
            base_size,
            rows: Vec::with_capacity(self.points.len()),
            lengths: Vec::new(),
            sizes,
        };
        for (point, graded) in spec.points.points.iter().zip(&self.points) {
            if let Ok(values) = &graded.result
                && let Some(row) = row(point, values, &chart.sizes)
            {
                chart.rows.push(row);
                let lengths = values.lengths.iter().map(|(length, values)| LengthRow {
                    point: point.id.clone(),
                    length: length.clone(),
                    values: values.clone(),
                });
                chart.lengths.extend(lengths);
            }
        }
        Some(chart)
    }
}

/// A point's line of the chart; nothing while a tolerance or the rounding step is missing.
fn row(point: &Point, values: &Values, sizes: &[ItemId]) -> Option<Row> {
    let own = Allowed {
        minus: point.minus?.nm,
        plus: point.plus?.nm,
    };
    let of_size = |size: &ItemId| {
        let allowed = point.allowed(size)?;
        (allowed != own).then(|| (size.clone(), allowed))
    };
    let tolerances = match point.tolerances.is_empty() {
        true => BTreeMap::new(),
        false => sizes.iter().filter_map(of_size).collect(),
    };
    Some(Row {
        point: point.id.clone(),
        values: values.rounded.clone(),
        minus: own.minus,
        plus: own.plus,
        step: point.step?.nm,
        tolerances,
        pair_limit: point.pair_limit.map(|limit| limit.nm),
        stretched: values.stretched.clone(),
    })
}

impl Point {
    /// The tolerance in a size: its own where it has one, else the point's. Nothing while a side is
    /// missing.
    pub fn allowed(&self, size: &ItemId) -> Option<Allowed> {
        let own = self.tolerances.get(size);
        let minus = own.and_then(|own| own.minus).or(self.minus)?;
        let plus = own.and_then(|own| own.plus).or(self.plus)?;
        Some(Allowed {
            minus: minus.nm,
            plus: plus.nm,
        })
    }
}

impl Row {
    /// How much a piece of this size may be off.
    pub fn tolerance(&self, size: &ItemId) -> Allowed {
        let own = Allowed {
            minus: self.minus,
            plus: self.plus,
        };
        self.tolerances.get(size).copied().unwrap_or(own)
    }
}

impl Chart {
    pub fn row(&self, point: &ItemId) -> Option<&Row> {
        self.rows.iter().find(|row| row.point == *point)
    }

    /// Where the size stands among the columns.
    pub fn column(&self, size: &ItemId) -> Option<usize> {
        self.sizes.iter().position(|other| other == size)
    }

    pub fn value(&self, point: &ItemId, size: &ItemId) -> Option<Length> {
        let column = self.column(size)?;
        self.row(point)?.values.get(column).copied()
    }
}

#[cfg(test)]
mod tests;
