//! `fellseam chart`: the size chart of a spec.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use serde::Serialize;

use super::Ended;
use super::given::{Given, InBoth, answer};
use crate::language::other_unit;
use crate::spec::chart::{Chart, Row};
use crate::spec::document::Point;
use crate::spec::{Item, ItemId, Length, Unit};

/// The values of a revision are those that it froze; of a bare spec they are worked out.
#[derive(Debug, Args)]
#[command(after_help = "Ends with 0 when every point has its line, \
    with 1 when one has not, with 2 when the file cannot be read.")]
pub struct ChartOf {
    /// A spec as JSON, bare or within a revision's document, or a style's archive; `-` is standard
    /// input.
    file: PathBuf,
}

#[derive(Serialize)]
struct Answer {
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<Unit>,
    #[serde(skip_serializing_if = "Option::is_none")]
    reference_unit: Option<Unit>,
    #[serde(skip_serializing_if = "Option::is_none")]
    base_size: Option<ItemId>,
    points: Vec<Line>,
    /// The points that have no line.
    without: Vec<Without>,
}

#[derive(Serialize)]
struct Line {
    point: ItemId,
    letter: String,
    name: String,
    step: InBoth,
    #[serde(skip_serializing_if = "Option::is_none")]
    pair_limit: Option<InBoth>,
    sizes: Vec<OfSize>,
    /// On the second axis.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    lengths: Vec<OfLength>,
}

#[derive(Serialize)]
struct OfSize {
    size: ItemId,
    code: String,
    /// Before it was rounded.
    #[serde(skip_serializing_if = "Option::is_none")]
    exact: Option<InBoth>,
    rounded: InBoth,
    minus: InBoth,
    plus: InBoth,
    #[serde(skip_serializing_if = "Option::is_none")]
    stretched: Option<InBoth>,
}

#[derive(Serialize)]
struct OfLength {
    length: ItemId,
    code: String,
    /// In the order of the sizes.
    rounded: Vec<InBoth>,
}

#[derive(Serialize)]
struct Without {
    point: ItemId,
    letter: String,
    name: String,
    why: Vec<String>,
}

impl ChartOf {
    pub fn run(self) -> Ended {
        answer(Given::read(&self.file).map(|given| {
            let chart = given.chart.as_ref();
            let row = |point: &Point| chart.and_then(|chart| Some((chart, chart.row(&point.id)?)));
            let points = || given.spec.points.points.iter();
            let lines = points().filter_map(|it| row(it).map(|row| line(&given, it, row)));
            let without = points().filter(|it| row(it).is_none());
            let without: Vec<_> = without.map(|it| self::without(&given, it)).collect();
            let code = ExitCode::from(u8::from(!without.is_empty()));
            let answer = Answer {
                unit: chart.map(|chart| chart.unit),
                reference_unit: chart.map(|chart| other_unit(chart.unit)),
                base_size: chart.map(|chart| chart.base_size.clone()),
                points: lines.collect(),
                without,
            };
            (answer, code)
        }))
    }
}

fn line(given: &Given, point: &Point, (chart, row): (&Chart, &Row)) -> Line {
    let (unit, sign) = (chart.unit, given.sign);
    let value = |nm: Length| InBoth::of(nm, unit, row.step, sign);
    let tolerance = |nm: Length| InBoth::of_tolerance(nm, unit, sign);
    let code = |id: &ItemId| given.spec.item(id).map_or("", Item::letter).to_owned();
    let exact = given.graded.values(&point.id).map(|values| &values.exact);
    let sizes = chart.sizes.iter().zip(&row.values).enumerate();
    let sizes = sizes.map(|(column, (size, rounded))| {
        let allowed = row.tolerance(size);
        let exact = exact.and_then(|exact| exact.get(column));
        OfSize {
            size: size.clone(),
            code: code(size),
            exact: exact.map(|nm| value(*nm)),
            rounded: value(*rounded),
            minus: tolerance(allowed.minus),
            plus: tolerance(allowed.plus),
            stretched: row.stretched.get(column).map(|nm| value(*nm)),
        }
    });
    let lengths = chart.lengths.iter().filter(|it| it.point == point.id);
    let lengths = lengths.map(|it| OfLength {
        length: it.length.clone(),
        code: code(&it.length),
        rounded: it.values.iter().map(|nm| value(*nm)).collect(),
    });
    Line {
        point: point.id.clone(),
        letter: point.letter.clone(),
        name: point.name.clone(),
        step: InBoth::of(row.step, unit, row.step, sign),
        pair_limit: row.pair_limit.map(tolerance),
        sizes: sizes.collect(),
        lengths: lengths.collect(),
    }
}

fn without(given: &Given, point: &Point) -> Without {
    let mut graded = given.graded.points.iter();
    let graded = graded.find(|graded| graded.point == point.id);
    let faults = graded.and_then(|graded| graded.result.as_ref().err());
    let faults = faults.into_iter().flatten().map(ToString::to_string);
    let missing = [
        (given.spec.header.unit.is_none(), "no master unit"),
        (given.spec.header.base_size.is_none(), "no base size"),
        (point.minus.is_none(), "no tolerance below the value"),
        (point.plus.is_none(), "no tolerance above the value"),
    ];
    let missing = missing.into_iter().filter(|(missing, _)| *missing);
    Without {
        point: point.id.clone(),
        letter: point.letter.clone(),
        name: point.name.clone(),
        why: faults
            .chain(missing.map(|(_, why)| why.to_owned()))
            .collect(),
    }
}
