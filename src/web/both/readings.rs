//! Every value of a round's pieces side by side: typed, pasted or read from a sheet, and saved all at
//! once or not at all.

mod cells;
mod fill;

use askama::Template;
use axum::extract::{Path, Query, State};

use crate::access::act;
use crate::exchange::measuring::{Wash, may_measure};
use crate::exchange::round::Kind;
use crate::language::Text;
use crate::spec::document::Point;
use crate::spec::{ItemId, Unit};
use crate::store::Round;
use crate::web::App;
use crate::web::figures::Figures;
use crate::web::form::{Errors, Form};
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

use super::measure::{points, round_of, state, state_name};
use super::round::address;
use cells::{Typed, check};

#[derive(Template)]
#[template(path = "both/readings.html")]
struct ReadingsPage {
    t: Text,
    frame: Frame,
    number_and_name: String,
    /// The round's address.
    base: String,
    kind: Kind,
    number: u32,
    /// The state that the values are taken in: what it is called, and its name in addresses.
    wash: Option<Wash>,
    states: [(String, String, bool); 2],
    unit: Unit,
    pieces: Vec<PieceHead>,
    rows: Vec<Row>,
    /// The form's own key: what is sent twice counts once.
    key: String,
    errors: Errors,
    /// What to look at before it is saved, and the answer that saves it all the same.
    asks: Vec<String>,
    anyway: String,
    /// What was pasted, and what came of it.
    pasted: String,
    told: Vec<String>,
    first: u32,
}

struct PieceHead {
    number: u32,
    size: String,
}

struct Row {
    point: ItemId,
    letter: String,
    name: String,
    cells: Vec<CellField>,
}

/// One value to type.
struct CellField {
    /// Of its field.
    name: String,
    typed: String,
    /// As it is saved, for the script to mark what differs.
    saved: String,
    spec: String,
    /// What is wrong with it.
    error: Option<String>,
    locked: bool,
}

/// In which state of the pieces.
#[derive(serde::Deserialize)]
pub struct Asked {
    #[serde(default)]
    wash: String,
}

pub async fn show(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Answer {
    let round = round_of(&may, &app, round).await?;
    let wash = state(&round, &asked.wash)?;
    page(&ReadingsPage::of(
        &may,
        &app,
        &round,
        wash,
        &Typed::default(),
    ))
}

/// Saves, or fills the fields from what was pasted, to be looked at first.
pub async fn submit(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(asked): Query<Asked>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let round = round_of(&may, &app, round).await?;
    let wash = state(&round, &asked.wash)?;
    let mut typed = Typed::read(&round, &form.fields);
    if form.fields.text("do") == "fill" {
        let filled = fill::fill(t, &app, &round, &mut typed, &form).await?;
        let mut again = ReadingsPage::of(&may, &app, &round, wash, &typed);
        form.fields.raw("pasted").clone_into(&mut again.pasted);
        again.first = filled.first;
        again.told = filled.told;
        for sentence in filled.errors {
            again.errors.add("pasted", sentence);
        }
        return match again.errors.is_empty() {
            true => page(&again),
            false => page_again(&again),
        };
    }
    let key = form.fields.text("key").to_owned();
    if key.is_empty() || key.len() > 40 {
        return Err(Problem::BadForm);
    }
    let side = may.permit.side();
    let checked = check(t, &round, side, wash, &typed, &key);
    let agreed = checked.asks.is_empty() || form.fields.text("anyway") == checked.answer;
    if !checked.errors.is_empty() || !agreed {
        let mut again = ReadingsPage::of(&may, &app, &round, wash, &typed);
        again.put(checked);
        again.key = key;
        return page_again(&again);
    }
    let kept = app
        .store
        .measure(&may.permit, &round.id, &checked.new)
        .await?;
    if !kept.refused.is_empty() {
        let mut again = ReadingsPage::of(&may, &app, &round, wash, &typed);
        again.errors.add("key", t.say("rounds-key-used"));
        return page_again(&again);
    }
    let to = address(may.permit.style(), &round.id);
    go(&format!("{to}?said=measured"))
}

impl ReadingsPage {
    fn of(
        may: &MayOn<act::Measure>,
        app: &App,
        round: &Round,
        wash: Option<Wash>,
        typed: &Typed,
    ) -> ReadingsPage {
        let t = may.who.t;
        let side = may.permit.side();
        let figures = Figures::of(&round.frozen);
        let spec = &round.frozen.spec;
        let saved: Vec<_> = round
            .pieces
            .iter()
            .map(|it| round.values_in(wash, &it.id, Some(side)))
            .collect();
        let row = |point: &Point| {
            let step = round
                .frozen
                .chart
                .row(&point.id)
                .map(|row| row.step)
                .unwrap_or_default();
            let cells = round.pieces.iter().zip(&saved).map(|(piece, values)| {
                let value = values.get(&point.id);
                let saved = value.map_or_else(String::new, |it| figures.value(*it, step));
                let name = cells::field(piece, point);
                let asked = round.frozen.chart.value(&point.id, &piece.size);
                CellField {
                    typed: typed
                        .get(&name)
                        .map_or_else(|| saved.clone(), ToOwned::to_owned),
                    saved,
                    spec: asked.map_or_else(String::new, |it| figures.value(it, step)),
                    error: None,
                    locked: may_measure(round.state, side, value.is_some()).is_err(),
                    name,
                }
            });
            Row {
                point: point.id.clone(),
                letter: point.letter.clone(),
                name: point.name.clone(),
                cells: cells.collect(),
            }
        };
        let state = |other: Option<Wash>| {
            let query = other.map_or_else(String::new, |it| format!("?wash={}", it.name()));
            (state_name(t, round, other), query, other == wash)
        };
        ReadingsPage {
            t,
            frame: may.who.frame(),
            number_and_name: format!("{} {}", spec.header.number, spec.header.name),
            base: address(may.permit.style(), &round.id),
            kind: round.kind,
            number: round.number,
            wash,
            states: [state(None), state(Some(round.other_state()))],
            unit: figures.unit,
            pieces: round
                .pieces
                .iter()
                .map(|piece| PieceHead {
                    number: piece.number,
                    size: spec
                        .size(&piece.size)
                        .map_or_else(String::new, |it| it.code.clone()),
                })
                .collect(),
            rows: points(round).map(row).collect(),
            key: app.store.world().id(),
            errors: Errors::default(),
            asks: Vec::new(),
            anyway: String::new(),
            pasted: String::new(),
            told: Vec::new(),
            first: round.pieces.first().map_or(1, |it| it.number),
        }
    }

    /// Puts what is wrong, or to be looked at, into the page.
    fn put(&mut self, checked: cells::Checked) {
        for cell in self.rows.iter_mut().flat_map(|row| &mut row.cells) {
            cell.error = checked.errors.of(&cell.name).map(ToOwned::to_owned);
        }
        self.asks = checked.asks;
        self.anyway = checked.answer;
        self.errors = checked.errors;
    }

    /// The query of the state.
    fn query(&self) -> String {
        self.wash
            .map_or_else(String::new, |it| format!("?wash={}", it.name()))
    }

    fn is_wrong(&self) -> bool {
        self.rows
            .iter()
            .flat_map(|row| &row.cells)
            .any(|cell| cell.error.is_some())
    }
}
