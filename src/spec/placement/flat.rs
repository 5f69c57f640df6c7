//! What a drawing tells of the garment: how large it is drawn, and where its seams and edges are.
//!
//! Nobody draws seams for the program. But dimension lines lie on the drawing, and their points say
//! in words where they begin, end and run: `neck seam at shoulder`, `hem edge, along the side`.
//! Where those words name a line of the construction, the drawing shows where it is. The reading is
//! of names and of the English of the library's wordings; what it found is always said beside the
//! picture, so that whoever looks can judge it.

use super::{Axis, Found, Leg, OnFlat, Plan, Values, mm};
use crate::spec::document::{
    Basis, DimensionLine, Drawing, Line, LineKind, Measure, Point, Spec, Spot,
};
use crate::spec::id::ItemId;

/// How large a drawing shows the garment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    /// Units of which the drawing's width has 10 000, for one millimetre of the garment.
    pub units_per_mm: f64,
    /// So many dimension lines say so ...
    pub agree: usize,
    /// ... of so many.
    pub of: usize,
}

/// Lines agree when they are within this part of the middle one.
const AGREE: f64 = 0.05;
/// Shorter ones are drawn too roughly to tell a scale, in millimetres.
const SHORT: f64 = 20.0;
/// A letter may stand so far beside a small artwork, in millimetres.
const BESIDE: f64 = 20.0;
/// Into so many pieces a curve is cut.
const PIECES: u16 = 32;
/// The width of every drawing, in its units.
const WIDE: f64 = 10_000.0;

/// The scale of a drawing in a size; nothing when fewer than half of its straight dimension lines
/// agree. They are asked in the base size, which a flat is drawn in. In another size the garment is
/// taken to be larger or smaller all over, by as much as the agreeing lines' values are together.
pub fn scale(spec: &Spec, drawing: &Drawing, size: &ItemId, values: Values<'_>) -> Option<Scale> {
    let base = spec.header.base_size.as_ref().unwrap_or(size);
    let lines = drawing.lines.iter().filter_map(|line| {
        let point = spec.point(&line.item)?;
        let flat = line.via.is_none() && !is_stretched(point);
        let value = mm(values(&point.id, base)?);
        let lies = match point.basis? {
            Basis::Full => value / 2.0,
            Basis::Half | Basis::Linear => value,
        };
        let (from, to) = (at(drawing, line.from), at(drawing, line.to));
        let long = (from.0 - to.0).hypot(from.1 - to.1);
        let told = flat && lies >= SHORT && long > 0.0;
        told.then_some((long / lies, value, &point.id))
    });
    let mut lines: Vec<(f64, f64, &ItemId)> = lines.collect();
    lines.sort_by(|one, other| one.0.total_cmp(&other.0));
    let (middle, ..) = *lines.get(lines.len() / 2)?;
    let of = lines.len();
    lines.retain(|(ratio, ..)| (ratio / middle - 1.0).abs() <= AGREE);
    let both = lines.iter().filter_map(|(_, value, point)| {
        let here = mm(values(point, size)?);
        Some((*value, here))
    });
    let (in_base, here) = both.fold((0.0, 0.0), |sum, it| (sum.0 + it.0, sum.1 + it.1));
    (2 * lines.len() > of && here > 0.0).then_some(Scale {
        units_per_mm: middle * in_base / here,
        agree: lines.len(),
        of,
    })
}

fn is_stretched(point: &Point) -> bool {
    use Measure::{CuffStretched, NeckStretched, WaistStretched};
    let pulled = [CuffStretched, NeckStretched, WaistStretched];
    point.how.stretched || point.measure.is_some_and(|it| pulled.contains(&it))
}

/// A spot in the drawing's units, the height in those of the width.
fn at(drawing: &Drawing, spot: Spot) -> (f64, f64) {
    let tall = f64::from(drawing.height) / f64::from(drawing.width);
    (f64::from(spot.x), f64::from(spot.y) * tall)
}

/// Where an item's letter stands.
pub fn letter(drawing: &Drawing, item: &ItemId) -> Option<(f64, f64)> {
    let marker = drawing.markers.iter().find(|it| it.item == *item)?;
    let (x, y) = (marker.x, marker.y);
    Some(at(drawing, Spot { x, y }))
}

/// A drawing that a plan is laid on.
pub struct Flat<'a> {
    pub spec: &'a Spec,
    pub drawing: &'a Drawing,
    /// Of the artwork.
    pub letter: Option<(f64, f64)>,
}

/// A spot where a line of the construction is, and the point that says so.
#[derive(Debug, Clone, Copy)]
struct Seen<'a> {
    at: (f64, f64),
    point: &'a ItemId,
}

impl Flat<'_> {
    /// Where the plan lies. A line that is either side of the artwork's middle is turned to the side
    /// that brings the artwork to its letter.
    pub fn lay(&self, plan: &mut Plan, scale: Scale) -> Option<OnFlat> {
        let units = scale.units_per_mm;
        let tall = WIDE * f64::from(self.drawing.height) / f64::from(self.drawing.width);
        let near = self.letter.unwrap_or((WIDE / 2.0, tall / 2.0));
        // Seams run askew: where one is depends on where the artwork comes to lie by the other.
        let first = (
            self.start(plan, Axis::Across, near, units)?,
            self.start(plan, Axis::Down, near, units)?,
        );
        let centre = (
            first.0.0 + plan.width * units / 2.0,
            first.1.0 + plan.height * units / 2.0,
        );
        let (left, across) = self.start(plan, Axis::Across, centre, units)?;
        let (top, down) = self.start(plan, Axis::Down, centre, units)?;
        self.turn(plan, (left, top), units);
        Some(OnFlat {
            drawing: self.drawing.id.clone(),
            width: WIDE / units,
            height: tall / units,
            left: left / units,
            top: top / units,
            scale,
            across,
            down,
        })
    }

    /// Where the box begins on an axis, in units, and what tells it.
    fn start(&self, plan: &Plan, axis: Axis, near: (f64, f64), units: f64) -> Option<(f64, Found)> {
        let length = match axis {
            Axis::Across => plan.width,
            Axis::Down => plan.height,
        };
        let letter = self.letter.map(|letter| along(axis, letter));
        let centred = |letter: f64| letter - length * units / 2.0;
        let by_letter = letter.map(|letter| (centred(letter), Found::Letter));
        let Some(leg) = plan.leg(axis) else {
            return by_letter;
        };
        let Some((line, found)) = self.line(leg, near) else {
            return by_letter;
        };
        let start = self.beside(leg, line, length, units);
        let Some(letter) = letter else {
            return Some((start, found));
        };
        let end = start + length * units;
        let away = f64::max(start - letter, letter - end) / units;
        match found {
            Found::Line(point) if away > length + BESIDE => {
                Some((centred(letter), Found::LetterInstead { point, away }))
            }
            found => Some((start, found)),
        }
    }

    /// Where the box begins when its line is here.
    fn beside(&self, leg: &Leg, line: f64, length: f64, units: f64) -> f64 {
        let start = line - leg.line_at * units;
        let turned = line - (length - leg.line_at) * units;
        let far = |start: f64| {
            let letter = self.letter.map(|letter| along(leg.axis, letter));
            letter.map_or(0.0, |letter| (start + length * units / 2.0 - letter).abs())
        };
        if leg.either_side && far(turned) < far(start) {
            turned
        } else {
            start
        }
    }

    /// Turns the plan's lines to the side that the box was laid for.
    fn turn(&self, plan: &mut Plan, start: (f64, f64), units: f64) {
        let near = (
            start.0 + plan.width * units / 2.0,
            start.1 + plan.height * units / 2.0,
        );
        let (width, height) = (plan.width, plan.height);
        for leg in plan.legs.iter_mut().filter(|leg| leg.either_side) {
            let Some((line, _)) = self.line(leg, near) else {
                continue;
            };
            let length = match leg.axis {
                Axis::Across => width,
                Axis::Down => height,
            };
            let at = (line - along(leg.axis, start)) / units;
            if (at > length / 2.0) != (leg.line_at > length / 2.0) {
                leg.turned(length);
            }
            leg.either_side = false;
        }
    }

    /// Where a leg's line is on its axis, beside a spot.
    fn line(&self, leg: &Leg, near: (f64, f64)) -> Option<(f64, Found)> {
        let mut lines = self.spec.construction.lines.iter();
        let line = lines.find(|line| line.id == leg.line)?;
        if line.kind == Some(LineKind::CentreLine)
            && let Some(middle) = self.middle()
        {
            return Some((middle, Found::Middle));
        }
        let seen = self.seen(line);
        // On the side of the artwork that the distance is taken to: a garment has two side seams.
        let here = along(leg.axis, near);
        let facing = seen.iter().filter(|seen| match leg.either_side {
            true => true,
            false if leg.line_at <= 0.0 => along(leg.axis, seen.at) <= here,
            false => along(leg.axis, seen.at) >= here,
        });
        beside(facing, leg.axis, near).map(|(at, point)| (at, Found::Line(point.clone())))
    }

    /// The middle of the longest level line that measures a whole width.
    fn middle(&self) -> Option<f64> {
        use Measure::*;
        const WHOLE: [Measure; 9] = [
            Chest,
            Waist,
            WaistStretched,
            Hip,
            Hem,
            ShoulderWidth,
            AcrossFront,
            AcrossBack,
            NeckWidth,
        ];
        let level = self.drawing.lines.iter().filter(|line| {
            let point = self.spec.point(&line.item);
            let measure = point.and_then(|point| point.measure);
            let level = line.from.y.abs_diff(line.to.y) < 200;
            level && measure.is_some_and(|measure| WHOLE.contains(&measure))
        });
        let longest = level.max_by_key(|line| line.from.x.abs_diff(line.to.x))?;
        Some((f64::from(longest.from.x) + f64::from(longest.to.x)) / 2.0)
    }

    /// Every spot of the drawing where the line is, as how-to-measures say.
    fn seen(&self, line: &Line) -> Vec<Seen<'_>> {
        let names: Vec<Vec<String>> = self
            .spec
            .construction
            .lines
            .iter()
            .map(|it| words(&it.name))
            .collect();
        let own = words(&line.name);
        let mut seen = Vec::new();
        for drawn in &self.drawing.lines {
            let Some(point) = self.spec.point(&drawn.item) else {
                continue;
            };
            let mut see = |at| {
                seen.push(Seen {
                    at,
                    point: &point.id,
                });
            };
            for (text, spot) in [(&point.how.start, drawn.from), (&point.how.end, drawn.to)] {
                let ends = clauses(text).any(|clause| clause.names(&own, &names, false));
                if ends {
                    see(at(self.drawing, spot));
                }
                if clauses(text).any(|clause| clause.names(&own, &names, true)) {
                    curve(self.drawing, drawn).for_each(&mut see);
                }
            }
        }
        seen
    }
}

fn along(axis: Axis, at: (f64, f64)) -> f64 {
    match axis {
        Axis::Across => at.0,
        Axis::Down => at.1,
    }
}

/// Where on an axis a line is that was seen at these spots, beside a spot: between the two on either
/// side of it, or at the nearest.
fn beside<'a>(
    seen: impl Iterator<Item = &'a Seen<'a>>,
    axis: Axis,
    near: (f64, f64),
) -> Option<(f64, &'a ItemId)> {
    let other = match axis {
        Axis::Across => Axis::Down,
        Axis::Down => Axis::Across,
    };
    let here = along(other, near);
    let mut below: Option<&Seen<'_>> = None;
    let mut above: Option<&Seen<'_>> = None;
    for spot in seen {
        let place = along(other, spot.at);
        if place <= here && below.is_none_or(|it| along(other, it.at) < place) {
            below = Some(spot);
        }
        if place >= here && above.is_none_or(|it| along(other, it.at) > place) {
            above = Some(spot);
        }
    }
    match (below, above) {
        (Some(below), Some(above)) => {
            let (from, to) = (along(other, below.at), along(other, above.at));
            let part = if to > from {
                (here - from) / (to - from)
            } else {
                0.0
            };
            let (low, high) = (along(axis, below.at), along(axis, above.at));
            let nearer = if part < 0.5 { below } else { above };
            Some((low + part * (high - low), nearer.point))
        }
        (one, two) => one.or(two).map(|spot| (along(axis, spot.at), spot.point)),
    }
}

/// Spots along a dimension line, its ends among them.
fn curve<'a>(
    drawing: &'a Drawing,
    line: &'a DimensionLine,
) -> impl Iterator<Item = (f64, f64)> + 'a {
    let (from, to) = (at(drawing, line.from), at(drawing, line.to));
    let via = line.via.map(|via| at(drawing, via));
    (0..=PIECES).map(move |piece| {
        let t = f64::from(piece) / f64::from(PIECES);
        let mix = |from: f64, via: Option<f64>, to: f64| match via {
            None => from + t * (to - from),
            Some(via) => (1.0 - t) * (1.0 - t) * from + 2.0 * t * (1.0 - t) * via + t * t * to,
        };
        (
            mix(from.0, via.map(|it| it.0), to.0),
            mix(from.1, via.map(|it| it.1), to.1),
        )
    })
}

/// A piece of a how-to-measure, as words; one that tells what the tape runs along.
struct Clause {
    words: Vec<String>,
    along: bool,
    /// The first of its text: the place itself, not what is added to it.
    first: bool,
}

fn clauses(text: &str) -> impl Iterator<Item = Clause> + '_ {
    text.split([',', ';']).enumerate().map(|(number, clause)| {
        let mut words = words(clause);
        let along = words.first().is_some_and(|word| word == "along");
        if along {
            words.remove(0);
        }
        Clause {
            words,
            along,
            first: number == 0,
        }
    })
}

impl Clause {
    /// Whether it names the line of these words: all of the line's words stand in it, or all of its
    /// own stand in the line's name and in no other that is as short.
    fn names(&self, line: &[String], all: &[Vec<String>], along: bool) -> bool {
        if self.along != along || line.is_empty() {
            return false;
        }
        let within = |part: &[String], whole: &[String]| part.iter().all(|it| whole.contains(it));
        if within(line, &self.words) {
            return true;
        }
        let telling = self.words.iter().any(|it| !COMMON.contains(&it.as_str()));
        if !(self.first || along) || !telling || !within(&self.words, line) {
            return false;
        }
        let mut others = all.iter().filter(|it| within(&self.words, it));
        others.all(|other| other == line || other.len() > line.len())
    }
}

/// Words that many lines share: alone they name none.
const COMMON: [&str; 9] = [
    "back", "bottom", "edge", "fold", "front", "line", "lower", "seam", "upper",
];

/// The words of a name that tell it from others.
fn words(text: &str) -> Vec<String> {
    const SMALL: [&str; 10] = [
        "a", "an", "and", "at", "in", "of", "on", "other", "the", "to",
    ];
    let lower = text.to_lowercase();
    let words = lower.split(|it: char| !it.is_alphanumeric());
    words
        .filter(|word| !word.is_empty() && !SMALL.contains(word))
        .map(str::to_owned)
        .collect()
}
