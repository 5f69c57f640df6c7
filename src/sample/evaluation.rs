//! A round of pieces, evaluated: verdicts, disputes, causes, and what to watch.
//!
//! Out of tolerance is a verdict. A cause needs evidence beyond what measuring can repeat; without
//! it, the value is to be measured again.

use std::collections::{BTreeMap, BTreeSet};

use crate::spec::{ItemId, Length, PieceId};

use super::contract::{Contract, Piece};
use super::deviation::{Judged, Summary, apart, judge};
use super::diagnose::{Diagnosis, diagnose};
use super::steps::{SizeStep, steps};

/// Everything that follows from the measurements of a round.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Evaluation {
    /// In the order given.
    pub pieces: Vec<JudgedPiece>,
    pub summary: Summary,
    /// Points on whose measuring two sides must agree before they argue about the piece.
    pub disputes: Vec<Dispute>,
    /// `None` when nothing was measured, or a piece is of a size that the chart has not.
    pub diagnosis: Option<Diagnosis>,
    /// Points that failed in an earlier round, in the order of the chart.
    pub watch: Vec<Watched>,
    /// Of points measured in two sizes or more.
    pub steps: Vec<(ItemId, Vec<SizeStep>)>,
}

/// One piece with its verdicts. A strip of deviations is drawn from it: each point has its limits.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct JudgedPiece {
    pub piece: PieceId,
    pub size: ItemId,
    pub judged: Judged,
}

/// One point of one piece, measured by two who differ by more than half the tolerance.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dispute {
    pub piece: PieceId,
    pub point: ItemId,
    /// Who measured the least, and what.
    pub least: (String, Length),
    /// Who measured the most, and what.
    pub most: (String, Length),
    /// Half of the wider tolerance: so much they may differ.
    pub allowed: Length,
}

impl Dispute {
    pub fn gap(&self) -> Length {
        self.most.1 - self.least.1
    }
}

/// A round that was decided before.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Earlier {
    /// What the round is called.
    pub round: String,
    /// The points that were out in it.
    pub failed: BTreeSet<ItemId>,
}

/// A point that failed before.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Watched {
    pub point: ItemId,
    /// The rounds in which it failed, in the order given.
    pub rounds: Vec<String>,
    /// On how many pieces it was measured now.
    pub measured: usize,
    /// On how many of them it is out again.
    pub out: usize,
}

/// Evaluates the pieces of a round by the frozen chart. Points or sizes that the chart has not are
/// left out of the verdicts.
pub fn evaluate(contract: &Contract, pieces: &[Piece], earlier: &[Earlier]) -> Evaluation {
    let judged: Vec<JudgedPiece> = pieces
        .iter()
        .map(|piece| JudgedPiece {
            piece: piece.id.clone(),
            size: piece.size.clone(),
            judged: judged(contract, piece),
        })
        .collect();
    let disputes: Vec<Dispute> = pieces
        .iter()
        .flat_map(|piece| disputes(contract, piece))
        .collect();
    let disputed: BTreeSet<(&PieceId, &ItemId)> =
        disputes.iter().map(|it| (&it.piece, &it.point)).collect();
    let spared = |piece: usize, point: &ItemId| disputed.contains(&(&pieces[piece].id, point));
    let diagnosis = diagnose(contract, pieces, spared);
    Evaluation {
        summary: Summary::of(judged.iter().map(|it| &it.judged)),
        watch: watch(contract, &judged, earlier),
        steps: steps(contract, pieces),
        pieces: judged,
        diagnosis,
        disputes,
    }
}

fn judged(contract: &Contract, piece: &Piece) -> Judged {
    match contract.columns.get(&piece.size) {
        Some(column) => judge(column, &piece.decisive()),
        None => Judged {
            points: BTreeMap::new(),
        },
    }
}

/// The points that are out on one of these pieces: what later rounds are told as having failed.
pub fn failed(contract: &Contract, pieces: &[Piece]) -> BTreeSet<ItemId> {
    let judged = pieces.iter().map(|piece| judged(contract, piece));
    judged.flat_map(out_of).collect()
}

fn out_of(judged: Judged) -> impl Iterator<Item = ItemId> {
    let points = judged.points.into_iter();
    points.filter_map(|(point, (_, deviation))| deviation?.verdict.is_out().then_some(point))
}

/// The points of a piece whose lowest and highest reading are too far apart, in the chart's order.
fn disputes(contract: &Contract, piece: &Piece) -> Vec<Dispute> {
    let Some(column) = contract.columns.get(&piece.size) else {
        return Vec::new();
    };
    let of_point = |point: &ItemId| {
        let limits = column.get(point)?;
        let readings = piece.readings.iter();
        let mut values: Vec<(Length, &str)> = readings
            .filter_map(|it| Some((*it.values.get(point)?, it.by.as_str())))
            .collect();
        values.sort_unstable();
        let ((least, by_least), (most, by_most)) = (*values.first()?, *values.last()?);
        apart(limits, least, most).then(|| Dispute {
            piece: piece.id.clone(),
            point: point.clone(),
            least: (by_least.to_owned(), least),
            most: (by_most.to_owned(), most),
            allowed: limits
                .minus
                .max(limits.plus)
                .tolerance_halved(Length::nm(1)),
        })
    };
    let points = contract.points.iter();
    points.filter_map(|place| of_point(&place.point)).collect()
}

fn watch(contract: &Contract, judged: &[JudgedPiece], earlier: &[Earlier]) -> Vec<Watched> {
    let of_point = |point: &ItemId| {
        let rounds = earlier.iter().filter(|it| it.failed.contains(point));
        let rounds: Vec<String> = rounds.map(|it| it.round.clone()).collect();
        let values = judged.iter();
        let values: Vec<bool> = values
            .filter_map(|it| it.judged.points.get(point)?.1)
            .map(|deviation| deviation.verdict.is_out())
            .collect();
        (!rounds.is_empty()).then(|| Watched {
            point: point.clone(),
            rounds,
            measured: values.len(),
            out: values.iter().filter(|out| **out).count(),
        })
    };
    let points = contract.points.iter();
    points.filter_map(|place| of_point(&place.point)).collect()
}

impl Evaluation {
    /// The deviations of one point by size, in the order of the pieces: what a line over the sizes
    /// is drawn from.
    pub fn by_size(&self, point: &ItemId) -> Vec<(&ItemId, Length)> {
        let pieces = self.pieces.iter();
        pieces
            .filter_map(|it| Some((&it.size, it.judged.points.get(point)?.1?.d)))
            .collect()
    }
}

#[cfg(test)]
mod tests;
