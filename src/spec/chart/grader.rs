//! Works out the values of one draft's points, each after what it is derived from.

use std::collections::HashMap;

use super::{GradeFault, Values};
use crate::spec::document::{Grade, Point, Segment, Spec};
use crate::spec::id::ItemId;
use crate::spec::units::Length;

type Exact = Result<Vec<Length>, Vec<GradeFault>>;

pub struct Grader<'a> {
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
    pub fn new(spec: &'a Spec, points: Vec<&'a Point>) -> Self {
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

    /// What the point at this place comes to.
    pub fn values(&mut self, index: usize) -> Result<Values, Vec<GradeFault>> {
        self.resolve(index);
        let exact = self.exact[index].clone().expect("resolved just now");
        let step = self.points[index].step.map(|step| step.nm);
        let Some(step) = step.filter(|step| step.is_positive()) else {
            let mut faults = exact.err().unwrap_or_default();
            faults.push(GradeFault::NoStep);
            return Err(faults);
        };
        let exact = exact?;
        let point = self.points[index];
        let more = |by: Length| -> Vec<Length> {
            let moved = exact.iter().map(|value| (*value + by).rounded(step));
            moved.collect()
        };
        let base = self.base_size.map(|size| exact[size]);
        let stretched = point.stretched_min.zip(base);
        let stretched = stretched.map(|(least, base)| more(least.nm - base));
        let options = self.spec.sizes.lengths.iter().map(|option| &option.id);
        let lengths = options.filter_map(|id| Some((id.clone(), more(self.adds(point, id)?))));
        let values = Values {
            rounded: more(Length::ZERO),
            stretched: stretched.unwrap_or_default(),
            lengths: lengths.collect(),
            exact,
        };
        if values.all_rounded().all(|value| value.in_bounds()) {
            Ok(values)
        } else {
            Err(vec![GradeFault::TooLong])
        }
    }

    /// What a value of the second axis adds to a point whose exact values are known: its own
    /// addition, else that of the point it is derived from.
    fn adds(&self, point: &Point, length: &ItemId) -> Option<Length> {
        let mut at = point;
        loop {
            if let Some(own) = at.lengths.get(length) {
                return Some(own.nm);
            }
            let Some(Grade::Derived { from, .. }) = &at.grade else {
                return None;
            };
            at = self.points[*self.point_index.get(from)?];
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
