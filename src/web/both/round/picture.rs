//! Pictures of deviations: for each point a strip with its tolerance, and a line over the sizes.
//!
//! Within, over and under are shapes, whose value it is is an outline or a filled shape, so that it
//! all reads in black and white. Lengths here are units of the `viewBox`, about a pixel on a phone.

use std::collections::BTreeSet;

use crate::access::Side;
use crate::sample::deviation::{Deviation, Limits, Verdict, columns};
use crate::sample::evaluation::Evaluation;
use crate::sample::steps::mean;
use crate::spec::document::Point;
use crate::spec::{ItemId, Length};
use crate::store::Round;
use crate::web::figures::Figures;

/// A strip's middle, and how far it reaches to either side of that.
const MIDDLE: f64 = 182.0;
const REACH: f64 = 126.0;
/// A lane of one size.
const LANE: f64 = 22.0;

/// The tolerance takes up so much of what a picture reaches. Our own choice: what is far out is out,
/// and how much the tolerance is used up can be seen.
const TOLERANCE: f64 = 0.4;

/// One point: a lane for each size that was measured.
pub struct Strip {
    pub point: ItemId,
    pub letter: String,
    pub name: String,
    pub critical: bool,
    pub watched: bool,
    pub height: f64,
    pub lanes: Vec<Lane>,
    /// What the lanes show, in figures.
    pub values: Vec<Shown>,
}

pub struct Lane {
    pub code: String,
    /// Of its middle.
    pub y: f64,
    pub top: f64,
    /// The tolerance: from, and how wide.
    pub band: (f64, f64),
    pub marks: Vec<Mark>,
}

/// One value as a shape.
pub struct Mark {
    /// As a path's `d`.
    pub shape: String,
    /// It is the brand's.
    pub filled: bool,
    /// Lies beyond the picture: an arrow, as a path's `d`.
    pub beyond: Option<String>,
}

/// A deviation in figures.
pub struct Shown {
    pub piece: u32,
    pub size: String,
    pub side: Side,
    pub off: String,
    pub mark: &'static str,
}

/// The lines of one point over the sizes.
pub struct Lines {
    pub letter: String,
    pub name: String,
    /// The sizes with their places.
    pub sizes: Vec<(f64, String)>,
    /// The tolerance, as the points of a polygon.
    pub band: String,
    /// The means, as the points of a polyline.
    pub line: String,
    pub marks: Vec<Mark>,
    /// What the marks at the side say: where, and how much.
    pub scale: Vec<(f64, String)>,
}

/// The strips of all points that were measured: those that are out or watched, then the others.
pub fn strips(round: &Round, watched: &BTreeSet<ItemId>) -> [Vec<Strip>; 2] {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let figures = Figures::of(&round.frozen);
    let mut groups = [Vec::new(), Vec::new()];
    for point in &round.frozen.spec.points.points {
        let Some(row) = round.frozen.chart.row(&point.id) else {
            continue;
        };
        let mut out = false;
        let mut values = Vec::new();
        let mut lanes: Vec<Lane> = Vec::new();
        for (size, code) in sizes(round) {
            let Some(limits) = columns.get(size).and_then(|it| it.get(&point.id)) else {
                continue;
            };
            let unit = unit([limits]);
            let middle = LANE * (lanes.len() as f64 + 0.5);
            let mut marks = Vec::new();
            for (piece, side, value) in readings(round, size, &point.id) {
                let judged = limits.judge(value);
                out |= judged.verdict.is_out();
                marks.push(across(&judged, unit, middle, side));
                values.push(Shown {
                    piece,
                    size: code.to_owned(),
                    side,
                    off: figures.difference(judged.d, row.step),
                    mark: judged.verdict.mark(),
                });
            }
            if marks.is_empty() {
                continue;
            }
            let (from, to) = (-cm(limits.minus) / unit, cm(limits.plus) / unit);
            lanes.push(Lane {
                code: code.to_owned(),
                y: middle,
                top: middle - LANE / 2.0,
                band: (tenths(MIDDLE + from * REACH), tenths((to - from) * REACH)),
                marks,
            });
        }
        if lanes.is_empty() {
            continue;
        }
        let watched = watched.contains(&point.id);
        groups[usize::from(!out && !watched)].push(Strip {
            point: point.id.clone(),
            letter: point.letter.clone(),
            name: point.name.clone(),
            critical: point.critical,
            watched,
            height: LANE * lanes.len() as f64,
            lanes,
            values,
        });
    }
    groups
}

/// Every value of a point in a size that counts for its side: number of the piece, side, value.
fn readings(round: &Round, size: &ItemId, point: &ItemId) -> Vec<(u32, Side, Length)> {
    let pieces = round.pieces.iter().filter(|piece| piece.size == *size);
    let sides = |number, id| {
        [Side::Factory, Side::Brand].map(|side| (number, side, round.values(id, Some(side))))
    };
    let values = pieces.flat_map(|piece| sides(piece.number, &piece.id));
    values
        .filter_map(|(number, side, values)| Some((number, side, *values.get(point)?)))
        .collect()
}

/// The sizes of the chart with their codes.
fn sizes(round: &Round) -> impl Iterator<Item = (&ItemId, &str)> {
    let sizes = round.frozen.chart.sizes.iter();
    sizes.filter_map(|id| Some((id, round.frozen.spec.size(id)?.code.as_str())))
}

/// So many centimetres are as far as a picture reaches.
fn unit<'a>(limits: impl IntoIterator<Item = &'a Limits>) -> f64 {
    let widest = limits.into_iter().map(|it| it.minus.max(it.plus)).max();
    // Without any tolerance a centimetre fills the picture.
    match widest {
        Some(widest) if widest.is_positive() => cm(widest) / TOLERANCE,
        _ => 1.0,
    }
}

fn cm(length: Length) -> f64 {
    length.as_nm() as f64 / 1e7
}

fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

/// A value on a strip, which reaches `unit` centimetres to either side.
fn across(judged: &Deviation, unit: f64, y: f64, side: Side) -> Mark {
    let place = cm(judged.d) / unit;
    let x = tenths(MIDDLE + place.clamp(-1.0, 1.0) * REACH);
    let beyond = match place {
        place if place > 1.0 => Some(format!("M{} {}l4 4l-4 4", x + 7.5, y - 4.0)),
        place if place < -1.0 => Some(format!("M{} {}l-4 4l4 4", x - 7.5, y - 4.0)),
        _ => None,
    };
    Mark {
        shape: shape(judged.verdict, x, y),
        filled: side == Side::Brand,
        beyond,
    }
}

fn shape(verdict: Verdict, x: f64, y: f64) -> String {
    match verdict {
        Verdict::Within => format!("M{} {y}a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0z", x - 4.5),
        Verdict::Over { .. } => format!("M{x} {}l6 10.5h-12z", y - 6.0),
        Verdict::Under { .. } => format!("M{x} {}l6 -10.5h-12z", y + 6.0),
    }
}

/// A picture of lines: its middle, how far it reaches up and down, and where sizes may stand.
const LEVEL: f64 = 66.0;
const UP: f64 = 54.0;
const FIRST: f64 = 62.0;
const LAST: f64 = 300.0;

/// The lines of points that were measured in two sizes or more, by the values that count: those
/// with one that is out, then the others.
pub fn lines(round: &Round, evaluation: &Evaluation) -> [Vec<Lines>; 2] {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let mut groups = [Vec::new(), Vec::new()];
    for point in &round.frozen.spec.points.points {
        let all = evaluation.by_size(&point.id);
        let measured = sizes(round).filter_map(|(size, code)| {
            let limits = columns.get(size)?.get(&point.id)?;
            let values = all.iter().filter(|(of, _)| *of == size);
            let values: Vec<Length> = values.map(|(_, d)| *d).collect();
            (!values.is_empty()).then_some(Measured {
                code,
                limits,
                values,
            })
        });
        let measured: Vec<Measured<'_>> = measured.collect();
        if measured.len() < 2 {
            continue;
        }
        let out = measured.iter().any(Measured::is_out);
        groups[usize::from(!out)].push(drawn(round, point, &measured));
    }
    groups
}

/// One size of a point.
struct Measured<'a> {
    code: &'a str,
    limits: &'a Limits,
    /// Deviations.
    values: Vec<Length>,
}

impl Measured<'_> {
    fn judged(&self) -> impl Iterator<Item = Deviation> {
        let values = self.values.iter();
        values.map(|d| self.limits.judge(self.limits.spec + *d))
    }

    fn is_out(&self) -> bool {
        self.judged().any(|it| it.verdict.is_out())
    }
}

fn drawn(round: &Round, point: &Point, measured: &[Measured<'_>]) -> Lines {
    let widest = measured.iter().flat_map(|it| &it.values);
    let widest = widest.map(|d| cm(d.abs())).fold(0.0, f64::max);
    // The tolerance is to be seen whole, and every value too.
    let unit = unit(measured.iter().map(|it| it.limits));
    let unit = (unit * TOLERANCE * 1.4).max(widest * 1.1);
    let apart = (LAST - FIRST) / (measured.len() - 1) as f64;
    let x = |at: usize| tenths(FIRST + apart * at as f64);
    let y = |d: Length| tenths(LEVEL - cm(d) / unit * UP);
    let minus = |limits: &Limits| Length::ZERO - limits.minus;
    let upper = measured.iter().enumerate();
    let upper = upper.map(|(at, it)| format!("{},{}", x(at), y(it.limits.plus)));
    let lower = measured.iter().enumerate().rev();
    let lower = lower.map(|(at, it)| format!("{},{}", x(at), y(minus(it.limits))));
    let band: Vec<String> = upper.chain(lower).collect();
    let means = measured.iter().enumerate().filter_map(|(at, it)| {
        let mean = mean(it.values.iter().copied())?;
        Some(format!("{},{}", x(at), y(mean)))
    });
    let means: Vec<String> = means.collect();
    let marks = measured.iter().enumerate().flat_map(|(at, it)| {
        let marks = it.judged().map(move |judged| (at, judged));
        marks.collect::<Vec<_>>()
    });
    let figures = Figures::of(&round.frozen);
    let step = round.frozen.chart.row(&point.id).map(|row| row.step);
    let first = measured[0].limits;
    let scale = [first.plus, Length::ZERO, minus(first)].map(|d| {
        let written = figures.difference(d, step.unwrap_or_default());
        (y(d), written)
    });
    let [plus, zero, minus] = scale;
    let scale = match plus.0 + 12.0 <= zero.0 && zero.0 + 12.0 <= minus.0 {
        true => vec![plus, zero, minus],
        // Too near each other to be read.
        false => vec![zero],
    };
    Lines {
        letter: point.letter.clone(),
        name: point.name.clone(),
        sizes: measured
            .iter()
            .enumerate()
            .map(|(at, it)| (x(at), it.code.to_owned()))
            .collect(),
        band: band.join(" "),
        line: means.join(" "),
        marks: marks
            .map(|(at, judged)| Mark {
                shape: shape(judged.verdict, x(at), y(judged.d)),
                filled: true,
                beyond: None,
            })
            .collect(),
        scale,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(mm: i64) -> Length {
        Length::nm(mm * 1_000_000)
    }

    fn limits(minus: i64, plus: i64) -> Limits {
        Limits {
            spec: mm(500),
            minus: mm(minus),
            plus: mm(plus),
            critical: false,
        }
    }

    #[test]
    fn what_is_exactly_on_tolerance_stands_on_the_edge_of_the_band_and_is_round() {
        let limits = limits(5, 10);
        let unit = unit([&limits]);
        let edge = tenths(MIDDLE + cm(mm(10)) / unit * REACH);
        let mark = across(&limits.judge(mm(510)), unit, 11.0, Side::Factory);
        assert_eq!(
            mark.shape,
            format!("M{} 11a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0z", edge - 4.5)
        );
        assert_eq!(edge, 232.4);
        assert!(!mark.filled && mark.beyond.is_none());
    }

    #[test]
    fn over_points_up_under_points_down_and_what_is_far_out_has_an_arrow() {
        let limits = limits(5, 10);
        let unit = unit([&limits]);
        let over = across(&limits.judge(mm(511)), unit, 11.0, Side::Brand);
        assert!(over.shape.ends_with("l6 10.5h-12z") && over.filled);
        let under = across(&limits.judge(mm(494)), unit, 11.0, Side::Brand);
        assert!(under.shape.ends_with("l6 -10.5h-12z") && under.beyond.is_none());
        let far = across(&limits.judge(mm(540)), unit, 11.0, Side::Brand);
        assert_eq!(far.beyond.as_deref(), Some("M315.5 7l4 4l-4 4"));
        assert!(far.shape.starts_with("M308 "));
    }

    #[test]
    fn without_a_tolerance_a_picture_reaches_a_centimetre() {
        assert_eq!(unit([&limits(0, 0)]), 1.0);
    }
}
