//! What washing did to the pieces that were measured before and after it.

use askama::Template;

use crate::exchange::measuring::Wash;
use crate::language::{Evaluated, Text, shown};
use crate::sample::contract::Contract;
use crate::sample::wash::washed;
use crate::spec::{ItemId, PieceId};
use crate::store::{Piece, Round};
use crate::web::both::measure::points;
use crate::web::figures::Figures;

use super::judgement::named;

#[derive(Template)]
#[template(path = "both/washes.html")]
pub struct Washes {
    t: Text,
    pieces: Vec<PieceWashed>,
}

/// One piece.
struct PieceWashed {
    number: u32,
    size: String,
    /// By fabric and direction: what washing does there, and the pattern that answers it.
    groups: Vec<String>,
    /// How many of them changed by no more than measuring explains.
    rest: usize,
    rows: Vec<Row>,
}

/// One point.
struct Row {
    letter: String,
    name: String,
    before: String,
    after: String,
    percent: String,
}

impl Washes {
    /// `None` when no piece was measured in both states.
    pub fn of(t: Text, round: &Round) -> Option<Washes> {
        let contract = Contract::of(&round.frozen.spec, &round.frozen.chart);
        let pieces = round.pieces.iter();
        let pieces: Vec<PieceWashed> = pieces
            .filter_map(|piece| of_piece(t, round, &contract, piece))
            .collect();
        (!pieces.is_empty()).then_some(Washes { t, pieces })
    }
}

fn of_piece(t: Text, round: &Round, contract: &Contract, piece: &Piece) -> Option<PieceWashed> {
    let figures = Figures::of(&round.frozen);
    let as_spec = round.values(&piece.id, None);
    let other = round.values_in(Some(round.other_state()), &piece.id, None);
    let washed = match round.other_state() {
        Wash::After => washed(contract, &as_spec, &other),
        Wash::Before => washed(contract, &other, &as_spec),
    };
    let item = |id: &ItemId| named(round, id);
    let said = Evaluated {
        t,
        item: &item,
        piece: &|_: &PieceId| piece.number.to_string(),
        unit: figures.unit,
        sign: figures.sign,
    };
    let rows = points(round).filter_map(|point| {
        let change = washed.points.get(&point.id)?;
        let step = round.frozen.chart.row(&point.id)?.step;
        Some(Row {
            letter: point.letter.clone(),
            name: point.name.clone(),
            before: figures.value(change.before, step),
            after: figures.value(change.after, step),
            percent: shown(change.percent.show(figures.sign)),
        })
    });
    let rows: Vec<Row> = rows.collect();
    let carried = washed.groups.iter().filter(|it| it.is_carried());
    let size = round.frozen.spec.size(&piece.size);
    (!rows.is_empty()).then(|| PieceWashed {
        number: piece.number,
        size: size.map_or_else(String::new, |it| it.code.clone()),
        groups: carried.map(|group| said.wash(group).to_string()).collect(),
        rest: washed.groups.iter().filter(|it| !it.is_carried()).count(),
        rows,
    })
}
