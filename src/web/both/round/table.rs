//! Pieces by points: what was measured, beside what the frozen chart asks for.

use std::collections::{BTreeMap, BTreeSet};

use crate::access::Side;
use crate::exchange::measuring::Reason;
use crate::sample::deviation::{Column, Limits, Verdict, apart, columns};
use crate::spec::document::Point;
use crate::spec::{ItemId, Length, PieceId};
use crate::store::{Measured, Piece, Round};
use crate::web::figures::Figures;

/// The whole table. Pieces of one size stand together, behind the spec's values for that size.
pub struct Table {
    pub sizes: Vec<SizeColumn>,
    pub rows: Vec<Row>,
    /// Whether both sides measured: then each value says whose it is.
    pub both: bool,
}

/// One size of the round.
pub struct SizeColumn {
    pub code: String,
    pub pieces: Vec<PieceColumn>,
}

pub struct PieceColumn {
    pub number: u32,
    /// Its place among the buttons that choose a piece on a narrow screen, from 1.
    pub place: usize,
}

pub struct Row {
    pub point: ItemId,
    pub letter: String,
    pub name: String,
    pub critical: bool,
    /// It failed in an earlier round.
    pub watched: bool,
    /// The tolerance, where it is one for all sizes of the round.
    pub tolerance: Option<String>,
    /// In the order of the table's sizes.
    pub cells: Vec<SizeCells>,
}

/// A row's cells of one size.
pub struct SizeCells {
    pub spec: String,
    pub tolerance: String,
    /// In the order of the size's pieces.
    pub pieces: Vec<Cell>,
}

#[derive(Default)]
pub struct Cell {
    /// The factory's, then the brand's; empty: not measured yet.
    pub readings: Vec<Reading>,
    /// The two sides differ by more than half the tolerance.
    pub apart: bool,
    /// Why nobody measured it.
    pub skipped: Option<Reason>,
}

/// What one side measured.
pub struct Reading {
    pub side: Side,
    pub value: String,
    pub off: String,
    pub verdict: Verdict,
}

impl Cell {
    /// What decides: the brand's reading where there is one.
    pub fn verdict(&self) -> Option<Verdict> {
        Some(self.readings.last()?.verdict)
    }

    /// The class that frames the cell.
    pub fn class(&self) -> &'static str {
        match self.verdict() {
            None => "missing",
            Some(verdict) => class(verdict),
        }
    }
}

impl Reading {
    pub fn class(&self) -> &'static str {
        class(self.verdict)
    }

    pub fn is_over(&self) -> bool {
        matches!(self.verdict, Verdict::Over { .. })
    }

    pub fn is_under(&self) -> bool {
        matches!(self.verdict, Verdict::Under { .. })
    }
}

fn class(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Within => "",
        Verdict::Over { .. } => "over",
        Verdict::Under { .. } => "under",
    }
}

impl SizeColumn {
    /// The classes that show the size's spec with any of its pieces on a narrow screen.
    pub fn turns(&self) -> String {
        let turns: Vec<String> = self
            .pieces
            .iter()
            .map(|piece| format!("s{}", piece.place))
            .collect();
        turns.join(" ")
    }
}

/// The newest value of every piece, side and point.
type Newest<'a> = BTreeMap<(&'a PieceId, Side, &'a ItemId), Length>;

impl Table {
    pub fn of(round: &Round, watched: Option<&BTreeSet<ItemId>>) -> Table {
        let spec = &round.frozen.spec;
        let newest: Newest<'_> = round
            .measurements
            .iter()
            .filter(|value| value.wash.is_none())
            .map(|value| ((&value.piece, value.side, &value.point), value.value))
            .collect();
        let skipped = round.pieces.iter();
        let skipped = skipped.map(|it| (it.id.clone(), round.skipped(&it.id, None)));
        let skipped: BTreeMap<_, _> = skipped.collect();
        let sizes = sizes(round);
        let columns = columns(spec, &round.frozen.chart);
        let row = |point: &Point| {
            let cells = sizes
                .iter()
                .filter_map(|(size, pieces)| {
                    cells(round, columns.get(size)?, point, pieces, &newest, &skipped)
                })
                .collect::<Vec<_>>();
            let one = cells.first().map(|cells| &cells.tolerance);
            let one = one.filter(|one| cells.iter().all(|cells| cells.tolerance == **one));
            Row {
                point: point.id.clone(),
                letter: point.letter.clone(),
                name: point.name.clone(),
                critical: point.critical,
                watched: watched.is_some_and(|it| it.contains(&point.id)),
                tolerance: one.cloned(),
                cells,
            }
        };
        let mut place = 0;
        Table {
            rows: spec.points.points.iter().map(row).collect(),
            sizes: sizes
                .iter()
                .map(|(size, pieces)| SizeColumn {
                    code: spec.size(size).map_or(String::new(), |it| it.code.clone()),
                    pieces: pieces
                        .iter()
                        .map(|piece| {
                            place += 1;
                            PieceColumn {
                                number: piece.number,
                                place,
                            }
                        })
                        .collect(),
                })
                .collect(),
            both: both(&round.measurements),
        }
    }

    /// Every piece with its size's code, in the order of the table.
    pub fn pieces(&self) -> impl Iterator<Item = (&PieceColumn, &str)> {
        self.sizes
            .iter()
            .flat_map(|size| size.pieces.iter().map(|piece| (piece, size.code.as_str())))
    }
}

/// The sizes of the round in the order of the chart, with their pieces.
fn sizes(round: &Round) -> Vec<(&ItemId, Vec<&Piece>)> {
    round
        .frozen
        .chart
        .sizes
        .iter()
        .map(|size| {
            let pieces = round.pieces.iter().filter(|piece| piece.size == *size);
            (size, pieces.collect::<Vec<_>>())
        })
        .filter(|(_, pieces)| !pieces.is_empty())
        .collect()
}

fn both(measurements: &[Measured]) -> bool {
    [Side::Brand, Side::Factory]
        .iter()
        .all(|side| measurements.iter().any(|value| value.side == *side))
}

/// `None`: the chart has no line for the point.
fn cells(
    round: &Round,
    column: &Column,
    point: &Point,
    pieces: &[&Piece],
    newest: &Newest<'_>,
    skipped: &BTreeMap<PieceId, BTreeMap<ItemId, Reason>>,
) -> Option<SizeCells> {
    let limits = column.get(&point.id)?;
    let step = round.frozen.chart.row(&point.id)?.step;
    let figures = Figures::of(&round.frozen);
    let cell = |piece: &&Piece| {
        let value = |side| newest.get(&(&piece.id, side, &point.id)).copied();
        let reading = |side| {
            let judged = limits.judge(value(side)?);
            Some(Reading {
                side,
                value: figures.value(judged.measured, step),
                off: figures.difference(judged.d, step),
                verdict: judged.verdict,
            })
        };
        Cell {
            readings: [Side::Factory, Side::Brand]
                .into_iter()
                .filter_map(reading)
                .collect(),
            apart: differ(limits, value(Side::Factory), value(Side::Brand)),
            skipped: skipped
                .get(&piece.id)
                .and_then(|it| it.get(&point.id))
                .copied(),
        }
    };
    Some(SizeCells {
        spec: figures.value(limits.spec, step),
        tolerance: figures.tolerance(limits.minus, limits.plus, step),
        pieces: pieces.iter().map(cell).collect(),
    })
}

fn differ(limits: &Limits, factory: Option<Length>, brand: Option<Length>) -> bool {
    factory
        .zip(brand)
        .is_some_and(|(factory, brand)| apart(limits, factory, brand))
}
