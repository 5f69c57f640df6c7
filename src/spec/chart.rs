//! The size chart: every point's value in every size, from its base, its grade and its step.
//!
//! Values are graded unrounded and each is rounded once, half away from zero. The rounded chart is
//! frozen into the revision: it is the contract, and every deviation is taken from it.

use std::collections::HashMap;

use serde::{Deserialize, Serialize};

use super::document::{Grade, Point, Segment, Spec};
use super::id::ItemId;
use super::units::{Length, Unit};

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
    let mut grader = Grader::new(spec, spec.points.points.iter().collect());
    let points = (0..grader.points.len())
        .map(|index| GradedPoint {
            point: grader.points[index].id.clone(),
            result: grader.values(index),
        })
        .collect();
    Graded { points }
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
        let rows = spec.points.points.iter().zip(&self.points);
        let rows = rows.filter_map(|(point, graded)| {
            Some(Row {
                point: point.id.clone(),
                values: graded.result.as_ref().ok()?.rounded.clone(),
                minus: point.minus?.nm,
                plus: point.plus?.nm,
                step: point.step?.nm,
            })
        });
        Some(Chart {
            unit: spec.header.unit?,
            base_size: spec.header.base_size.clone()?,
            sizes: spec.sizes.sizes.iter().map(|s| s.id.clone()).collect(),
            rows: rows.collect(),
        })
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

type Exact = Result<Vec<Length>, Vec<GradeFault>>;

struct Grader<'a> {
    spec: &'a Spec,
    points: Vec<&'a Point>,
    point_index: HashMap<&'a ItemId, usize>,
    size_index: HashMap<&'a ItemId, usize>,
    base_size: Option<usize>,
    /// The unrounded values of each point, once they are known.
    exact: Vec<Option<Exact>>,
    /// Where a point stands in the chain of sources that is being followed.
    place: Vec<usize>,
}

impl<'a> Grader<'a> {
    fn new(spec: &'a Spec, points: Vec<&'a Point>) -> Self {
        let sizes = &spec.sizes.sizes;
        let size_index: HashMap<_, _> = sizes.iter().map(|s| &s.id).zip(0..).collect();
        let base_size = spec.header.base_size.as_ref();
        Self {
            spec,
            point_index: points.iter().map(|point| &point.id).zip(0..).collect(),
            base_size: base_size.and_then(|id| size_index.get(id).copied()),
            size_index,
            exact: vec![None; points.len()],
            place: vec![0; points.len()],
            points,
        }
    }

    fn values(&mut self, index: usize) -> Result<Values, Vec<GradeFault>> {
        self.resolve(index);
        let exact = self.exact[index].clone().expect("resolved just now");
        let step = self.points[index].step.map(|step| step.nm);
        let Some(step) = step.filter(|step| step.is_positive()) else {
            let mut faults = exact.err().unwrap_or_default();
            faults.push(GradeFault::NoStep);
            return Err(faults);
        };
        let exact = exact?;
        let rounded: Vec<_> = exact.iter().map(|value| value.rounded(step)).collect();
        if rounded.iter().all(|value| value.in_bounds()) {
            Ok(Values { exact, rounded })
        } else {
            Err(vec![GradeFault::TooLong])
        }
    }

    /// Works out the unrounded values of a point, after those of all that it is derived from.
    fn resolve(&mut self, index: usize) {
        let mut chain = Vec::new();
        let mut at = Some(index);
        while let Some(here) = at.filter(|here| self.exact[*here].is_none()) {
            if chain.get(self.place[here]) == Some(&here) {
                let cycle = chain.split_off(self.place[here]);
                for turn in 0..cycle.len() {
                    let mut points: Vec<_> =
                        cycle.iter().map(|i| self.points[*i].id.clone()).collect();
                    points.rotate_left(turn);
                    self.exact[cycle[turn]] = Some(Err(vec![GradeFault::DerivedCycle { points }]));
                }
                break;
            }
            self.place[here] = chain.len();
            chain.push(here);
            at = match &self.points[here].grade {
                Some(Grade::Derived { from, .. }) => self.point_index.get(from).copied(),
                _ => None,
            };
        }
        while let Some(here) = chain.pop() {
            self.exact[here] = Some(self.exactly(self.points[here]));
        }
    }

    /// The unrounded values of a point whose source, if it has one, is resolved.
    fn exactly(&self, point: &Point) -> Exact {
        let base = point.base.map(|base| base.nm);
        let mut faults = Vec::new();
        let values = match &point.grade {
            Some(Grade::Same {}) => base.map(|base| vec![base; self.spec.sizes.sizes.len()]),
            Some(Grade::Segments { segments }) => self.segments(segments, base, &mut faults),
            Some(Grade::Explicit { values }) => {
                for size in values.keys().filter(|id| !self.size_index.contains_key(id)) {
                    faults.push(GradeFault::UnknownSize { size: size.clone() });
                }
                let of_size = |(index, id): (usize, &ItemId)| {
                    let typed = values.get(id).map(|typed| typed.nm);
                    typed.or(base.filter(|_| self.base_size == Some(index)))
                };
                let ids = || self.spec.sizes.sizes.iter().map(|size| &size.id);
                let missing = ids().enumerate().filter(|size| of_size(*size).is_none());
                faults.extend(
                    missing.map(|(_, size)| GradeFault::SizeWithoutValue { size: size.clone() }),
                );
                ids().enumerate().map(of_size).collect()
            }
            Some(Grade::Derived { from, offset }) => self.derived(from, offset.nm, &mut faults),
            None => {
                faults.push(GradeFault::NoGrade);
                None
            }
        };
        let needs_base = !matches!(
            point.grade,
            Some(Grade::Explicit { .. } | Grade::Derived { .. })
        );
        if needs_base && base.is_none() {
            faults.insert(0, GradeFault::NoBase);
        }
        if let (Some(values), Some(typed), Some(index)) = (&values, base, self.base_size)
            && values[index] != typed
        {
            let graded = values[index];
            faults.push(GradeFault::BaseDisagrees { typed, graded });
        }
        match values {
            Some(values) if faults.is_empty() => Ok(values),
            _ => Err(faults),
        }
    }

    /// Base ± the sum of the steps. Nothing, and at least one fault, when that cannot be told.
    fn segments(
        &self,
        segments: &[Segment],
        base: Option<Length>,
        faults: &mut Vec<GradeFault>,
    ) -> Option<Vec<Length>> {
        let sizes = &self.spec.sizes.sizes;
        let mut gaps: Vec<Option<Length>> = vec![None; sizes.len().saturating_sub(1)];
        let mut doubled = vec![false; gaps.len()];
        for Segment { from, to, step } in segments {
            let index = |id| self.size_index.get(id).copied();
            let (Some(first), Some(last)) = (index(from), index(to)) else {
                for size in [from, to].into_iter().filter(|id| index(id).is_none()) {
                    faults.push(GradeFault::UnknownSize { size: size.clone() });
                }
                continue;
            };
            if first >= last {
                let (from, to) = (from.clone(), to.clone());
                faults.push(GradeFault::SegmentBackwards { from, to });
                continue;
            }
            for gap in first..last {
                doubled[gap] |= gaps[gap].replace(step.nm).is_some();
            }
        }
        for (gap, pair) in sizes.windows(2).enumerate() {
            let ends = || (pair[0].id.clone(), pair[1].id.clone());
            if gaps[gap].is_none() {
                let (from, to) = ends();
                faults.push(GradeFault::GapUncovered { from, to });
            } else if doubled[gap] {
                let (from, to) = ends();
                faults.push(GradeFault::GapDoubled { from, to });
            }
        }
        let Some(base_size) = self.base_size else {
            faults.push(GradeFault::NoBaseSize);
            return None;
        };
        if !faults.is_empty() {
            return None;
        }
        let gaps: Vec<Length> = gaps.into_iter().collect::<Option<_>>()?;
        let mut values = vec![base?; sizes.len()];
        for index in base_size + 1..sizes.len() {
            values[index] = in_bounds(values[index - 1] + gaps[index - 1], faults)?;
        }
        for index in (0..base_size).rev() {
            values[index] = in_bounds(values[index + 1] - gaps[index], faults)?;
        }
        Some(values)
    }

    fn derived(
        &self,
        from: &ItemId,
        offset: Length,
        faults: &mut Vec<GradeFault>,
    ) -> Option<Vec<Length>> {
        let point = from.clone();
        let Some(source) = self.point_index.get(from) else {
            faults.push(GradeFault::UnknownPoint { point });
            return None;
        };
        let Some(Ok(values)) = &self.exact[*source] else {
            faults.push(GradeFault::SourceFaulty { point });
            return None;
        };
        let moved = values
            .iter()
            .map(|value| in_bounds(*value + offset, faults));
        moved.collect()
    }
}

/// The value, unless it is too long to be kept: so the next sum cannot overflow either.
fn in_bounds(value: Length, faults: &mut Vec<GradeFault>) -> Option<Length> {
    if value.in_bounds() {
        Some(value)
    } else {
        faults.push(GradeFault::TooLong);
        None
    }
}

#[cfg(test)]
mod tests;
