//! Points carried over from another spec. What its sizes do not answer is asked, never guessed: a
//! grade rule is adapted only where the sizes match.

use super::chart::{Values, grade};
use super::document::{Grade, Point, Segment, Size, Tolerance};
use super::id::ItemId;
use super::units::{Entered, Length, Unit};
use super::{Spec, letters};

/// A point as it would stand in the spec that takes it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Carried {
    /// In the spec that it comes from.
    pub source: ItemId,
    /// With an id of its own and the next letter.
    pub point: Point,
    /// What its sizes do not answer: left empty in the point.
    pub asks: Vec<Ask>,
    /// What is not carried over.
    pub left: Vec<Left>,
}

/// What somebody has to say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ask {
    /// The value at the base size, which the other spec has not.
    Base,
    /// The rule, since the sizes are not the same.
    Grade,
    /// The rule: it follows a point that is not carried over.
    Source,
}

/// What is left behind.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Left {
    /// No part here has its part's name.
    Part,
    /// Tolerances of sizes that are not here.
    Tolerances,
    /// What lengths add that are not here.
    Lengths,
    /// The stretched value, which is one of the base size.
    Stretched,
    /// The rounding step, which is in the other kind of unit: it gets the usual one.
    Step,
}

/// The rounding step that a new point begins with: that of the point before, else the usual one of
/// the unit (common practice, no source: 1/8 in, 0.1 cm).
pub fn usual_step(spec: &Spec) -> Option<Entered> {
    let unit = spec.header.unit;
    let before = spec.points.points.last().and_then(|point| point.step);
    before.or(unit.map(|unit| Entered {
        nm: unit.steps()[usize::from(unit == Unit::Inch)],
        unit,
    }))
}

/// The points that are chosen of `from`, in their order there, as they would stand in `to`. Ids that
/// are no points of `from` are passed over.
pub fn carry(
    from: &Spec,
    to: &Spec,
    chosen: &[ItemId],
    new_id: &mut dyn FnMut() -> ItemId,
) -> Vec<Carried> {
    let chosen: Vec<&Point> = from
        .points
        .points
        .iter()
        .filter(|point| chosen.contains(&point.id))
        .collect();
    let ids: Vec<(&ItemId, ItemId)> = chosen.iter().map(|point| (&point.id, new_id())).collect();
    let taken = to.points.points.iter().map(|point| point.letter.as_str());
    let graded = grade(from);
    let sizes = Matching::new(from, to);
    let each = chosen.iter().zip(&ids).zip(letters::after(taken));
    each.map(|((point, (_, id)), letter)| {
        let values = graded.values(&point.id);
        let mut carried = Carried {
            source: point.id.clone(),
            point: Point {
                id: id.clone(),
                letter,
                ..(*point).clone()
            },
            asks: Vec::new(),
            left: Vec::new(),
        };
        carried.base(point, values, &sizes);
        carried.rule(point, values, &sizes, &ids);
        carried.rest(point, from, to, &sizes);
        carried
    })
    .collect()
}

/// Which sizes of the one are those of the other, by their codes.
struct Matching<'a> {
    from: &'a [Size],
    to: &'a [Size],
    /// For each size here the place of the same one there.
    places: Vec<Option<usize>>,
    /// Where the base size of either stands in the other spec's sizes.
    from_base: Option<usize>,
    to_base: Option<usize>,
}

impl<'a> Matching<'a> {
    fn new(from: &'a Spec, to: &'a Spec) -> Matching<'a> {
        let (there, here) = (&from.sizes.sizes, &to.sizes.sizes);
        let places: Vec<Option<usize>> = here.iter().map(|size| only(there, &size.code)).collect();
        let base = to.header.base_size.as_ref();
        let base = base.and_then(|base| here.iter().position(|size| size.id == *base));
        let there_base = from.header.base_size.as_ref();
        Matching {
            from_base: there_base.and_then(|base| there.iter().position(|it| it.id == *base)),
            to_base: base.and_then(|base| places[base]),
            from: there,
            to: here,
            places,
        }
    }

    /// The places of all sizes here, where every one is there and in the same order.
    fn whole(&self) -> Option<Vec<usize>> {
        let places: Vec<usize> = self.places.iter().copied().collect::<Option<_>>()?;
        let rises = places.windows(2).all(|pair| pair[0] < pair[1]);
        (places.len() > 1 && rises).then_some(places)
    }

    /// The size here that is this one of there.
    fn here(&self, size: &ItemId) -> Option<&'a ItemId> {
        let place = self.from.iter().position(|it| it.id == *size)?;
        let here = self.places.iter().position(|it| *it == Some(place))?;
        Some(&self.to[here].id)
    }
}

/// The place of the only size with this code.
fn only(sizes: &[Size], code: &str) -> Option<usize> {
    let mut same = sizes.iter().enumerate();
    let mut same = same
        .by_ref()
        .filter(|(_, size)| same_words(&size.code, code));
    let found = same.next().map(|(place, _)| place);
    found.filter(|_| same.next().is_none())
}

fn same_words(one: &str, other: &str) -> bool {
    let one = one.trim().to_lowercase();
    !one.is_empty() && one == other.trim().to_lowercase()
}

impl Carried {
    /// The value at the base size here; what is stretched moves with it.
    fn base(&mut self, point: &Point, values: Option<&Values>, sizes: &Matching<'_>) {
        let everywhere = matches!(point.grade, Some(Grade::Same {}));
        if everywhere || (sizes.to_base.is_some() && sizes.to_base == sizes.from_base) {
            return;
        }
        let by = match (values, sizes.from_base, sizes.to_base) {
            (Some(values), Some(there), Some(here)) => {
                Some(values.exact[here] - values.exact[there])
            }
            _ => None,
        };
        let moved = |entered: Entered| {
            let nm = by.map(|by| entered.nm + by).filter(|nm| nm.in_bounds())?;
            Some(Entered { nm, ..entered })
        };
        self.point.base = point.base.and_then(moved);
        self.point.stretched_min = point.stretched_min.and_then(moved);
        if point.base.is_some() && self.point.base.is_none() {
            self.asks.push(Ask::Base);
        }
        if point.stretched_min.is_some() && self.point.stretched_min.is_none() {
            self.left.push(Left::Stretched);
        }
    }

    fn rule(
        &mut self,
        point: &Point,
        values: Option<&Values>,
        sizes: &Matching<'_>,
        ids: &[(&ItemId, ItemId)],
    ) {
        self.point.grade = match &point.grade {
            None => return,
            Some(Grade::Same {}) => Some(Grade::Same {}),
            Some(Grade::Derived { from, offset }) => {
                let known = ids.iter().find(|(old, _)| *old == from);
                known.map(|(_, new)| Grade::Derived {
                    from: new.clone(),
                    offset: *offset,
                })
            }
            Some(Grade::Explicit { values }) => sizes.whole().and_then(|_| {
                let moved =
                    |(size, value): (&ItemId, &Entered)| Some((sizes.here(size)?.clone(), *value));
                let values: std::collections::BTreeMap<_, _> =
                    values.iter().filter_map(moved).collect();
                (values.len() == sizes.to.len()).then_some(Grade::Explicit { values })
            }),
            Some(Grade::Segments { segments }) => {
                let unit = segments.first().map(|segment| segment.step.unit);
                let exact = values.map(|values| &values.exact);
                match (unit, exact, sizes.whole()) {
                    (Some(unit), Some(exact), Some(places)) => {
                        Some(steps(exact, &places, sizes.to, unit))
                    }
                    _ => None,
                }
            }
        };
        if self.point.grade.is_none() {
            let derived = matches!(point.grade, Some(Grade::Derived { .. }));
            self.asks
                .push(if derived { Ask::Source } else { Ask::Grade });
        }
    }

    fn rest(&mut self, point: &Point, from: &Spec, to: &Spec, sizes: &Matching<'_>) {
        let mut left = |what: Left, is_left: bool| {
            if is_left {
                self.left.push(what);
            }
        };
        self.point.part = point.part.as_ref().and_then(|part| {
            let name = &from.colourways.parts.iter().find(|it| it.id == *part)?.name;
            let parts = &to.colourways.parts;
            let same = parts.iter().find(|it| same_words(&it.name, name))?;
            Some(same.id.clone())
        });
        left(
            Left::Part,
            point.part.is_some() && self.point.part.is_none(),
        );
        let moved =
            |(size, own): (&ItemId, &Tolerance)| Some((sizes.here(size)?.clone(), own.clone()));
        self.point.tolerances = point.tolerances.iter().filter_map(moved).collect();
        let lost = self.point.tolerances.len() < point.tolerances.len();
        left(Left::Tolerances, lost);
        let moved = |(length, adds): (&ItemId, &Entered)| {
            let there = from.sizes.lengths.iter().find(|it| it.id == *length)?;
            let mut here = to.sizes.lengths.iter();
            let here = here.find(|it| same_words(&it.code, &there.code))?;
            Some((here.id.clone(), *adds))
        };
        self.point.lengths = point.lengths.iter().filter_map(moved).collect();
        let lost = self.point.lengths.len() < point.lengths.len();
        left(Left::Lengths, lost);
        let foreign = |step: Entered| {
            let unit = to.header.unit;
            unit.is_some_and(|unit| unit.is_metric() != step.unit.is_metric())
        };
        if point.step.is_some_and(foreign) {
            left(Left::Step, true);
            self.point.step = usual_step(to);
        }
    }
}

/// The rule whose steps are those between these places of the unrounded values; equal ones that
/// follow each other are one segment.
fn steps(exact: &[Length], places: &[usize], sizes: &[Size], unit: Unit) -> Grade {
    let mut segments: Vec<Segment> = Vec::new();
    for (pair, ends) in places.windows(2).zip(sizes.windows(2)) {
        let nm = exact[pair[1]] - exact[pair[0]];
        match segments.last_mut().filter(|last| last.step.nm == nm) {
            Some(last) => last.to = ends[1].id.clone(),
            None => segments.push(Segment {
                from: ends[0].id.clone(),
                to: ends[1].id.clone(),
                step: Entered { nm, unit },
            }),
        }
    }
    Grade::Segments { segments }
}

#[cfg(test)]
mod tests;
