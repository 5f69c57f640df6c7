//! Measuring a piece on a phone: one point after the other, with its drawing.
//!
//! The page holds a form for every point of the piece and shows one of them. Without script each is
//! a page of its own; the script moves between them, so that measuring goes on without a connection.

mod picture;
mod place;
mod save;

use askama::Template;
use axum::Json;
use axum::extract::{Path, Query, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::IntoResponse;
use serde_json::json;

use crate::access::act;
use crate::exchange::measuring::{Reason, Wash, may_measure};
use crate::exchange::round::Kind;
use crate::language::{Beside, Message, Text};
use crate::spec::document::{Basis, HowToMeasure, Point};
use crate::spec::{ItemId, PersonId, RoundId, Unit};
use crate::store::{Piece, Round};
use crate::web::App;
use crate::web::figures::Figures;
use crate::web::form::Form;
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

use super::round::address;
use picture::Picture;
use place::{At, Place};
pub use place::{points, state};
use save::Unsaved;
pub use save::{questions, read, sentence};

#[derive(Template)]
#[template(path = "both/measure.html")]
struct MeasurePage {
    t: Text,
    frame: Frame,
    /// Whose values wait in this browser.
    person: PersonId,
    /// The round's address.
    base: String,
    kind: Kind,
    number: u32,
    piece: PieceLink,
    pieces: Vec<PieceLink>,
    /// The state that the spec's numbers hold for, and the other one.
    states: [StateLink; 2],
    /// A point can be left out with a reason.
    skips: bool,
    unit: Unit,
    /// The decimal sign of the revision.
    sign: char,
    points: Vec<PointForm>,
    /// How many points of this piece the reader's side has measured.
    measured: usize,
}

struct PieceLink {
    href: String,
    number: u32,
    size: String,
    /// Points that the reader's side has neither measured nor left out with a reason.
    missing: usize,
}

/// To the same piece in this state.
struct StateLink {
    name: String,
    href: String,
    current: bool,
}

/// One point's page.
struct PointForm {
    id: ItemId,
    /// This point's address, to show it and to send its value to.
    href: String,
    /// From 1.
    place: usize,
    letter: String,
    name: String,
    beside: Option<Beside>,
    /// Beside start, end and note, where something stands there.
    how_beside: Vec<Beside>,
    picture: Option<Picture>,
    how: HowToMeasure,
    basis: Option<Basis>,
    spec: String,
    tolerance: String,
    current: bool,
    /// The reader's side has measured it.
    measured: bool,
    typed: String,
    key: String,
    error: Option<String>,
    /// A question before this value is saved.
    ask: Option<String>,
    /// Why no value is taken.
    locked: Option<String>,
    /// Why the reader's side left it out.
    skipped: Option<Reason>,
    /// The point before, if there is one, and the way on without measuring.
    back: Option<(ItemId, String)>,
    next: (Option<ItemId>, String),
}

pub async fn show(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(place): Query<Place>,
) -> Answer {
    let round = round_of(&may, &app, round).await?;
    let at = At::find(&round, may.permit.side(), &place)?;
    page(&measure(&may, &app, &at))
}

pub async fn submit(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(place): Query<Place>,
    headers: HeaderMap,
    form: Form,
) -> Answer {
    let round = round_of(&may, &app, round).await?;
    let at = At::find(&round, may.permit.side(), &place)?;
    let script = headers
        .get(header::ACCEPT)
        .is_some_and(|accept| accept.as_bytes().starts_with(b"application/json"));
    let next = at.after(may.permit.style(), at.point).1;
    let saved = match form.fields.text("skip") {
        "" => save::value(&may, &app, &at, &form).await?,
        reason => save::skip(&may, &app, &at, reason, &form).await?,
    };
    match saved {
        Ok(()) if script => Ok(Json(json!({ "next": next })).into_response()),
        Ok(()) => go(&next),
        Err(unsaved) if script => {
            let (what, sentence) = match unsaved {
                Unsaved::Error(sentence) => ("error", sentence),
                Unsaved::Ask(sentence) => ("ask", sentence),
            };
            let said = Json(json!({ what: true, "sentence": sentence }));
            Ok((StatusCode::UNPROCESSABLE_ENTITY, said).into_response())
        }
        Err(unsaved) => {
            let mut again = measure(&may, &app, &at);
            let shown = again.points.iter_mut().find(|form| form.current);
            if let Some(shown) = shown {
                shown.typed = form.fields.text("value").to_owned();
                match unsaved {
                    Unsaved::Error(sentence) => shown.error = Some(sentence),
                    Unsaved::Ask(sentence) => shown.ask = Some(sentence),
                }
            }
            page_again(&again)
        }
    }
}

/// The round, if values of the reader's side can be taken at all.
pub async fn round_of(may: &MayOn<act::Measure>, app: &App, id: String) -> Result<Round, Problem> {
    let reader = may.permit.also::<act::Read>()?;
    let round = app.store.round(&reader, &RoundId::new(id)).await?;
    may_measure(round.state, may.permit.side(), true)
        .map_err(|why| Problem::Refused(why, Some(may.permit.style().clone())))?;
    Ok(round)
}

fn measure(may: &MayOn<act::Measure>, app: &App, at: &At<'_>) -> MeasurePage {
    let At { round, piece, .. } = *at;
    let t = may.who.t;
    let style = may.permit.style();
    let base = address(style, &round.id);
    let figures = Figures::of(&round.frozen);
    let values = at.values(piece);
    let skipped = at.skipped(piece);
    let beside = |words: &str| t.beside(&round.frozen, words);
    let mut before: Option<ItemId> = None;
    let form = |(place, point): (usize, &Point)| {
        let row = round.frozen.chart.row(&point.id)?;
        let spec = round.frozen.chart.value(&point.id, &piece.size)?;
        let allowed = row.tolerance(&piece.size);
        let value = values.get(&point.id);
        let back = before.replace(point.id.clone());
        Some(PointForm {
            id: point.id.clone(),
            href: at.href(style, piece, &point.id),
            place: place + 1,
            letter: point.letter.clone(),
            name: point.name.clone(),
            beside: beside(&point.name),
            how_beside: [&point.how.start, &point.how.end, &point.how.note]
                .into_iter()
                .filter_map(|words| beside(words))
                .collect(),
            picture: Picture::of(style, &round.frozen.spec, &point.id),
            how: point.how.clone(),
            basis: point.basis,
            spec: figures.value(spec, row.step),
            tolerance: figures.tolerance(allowed.minus, allowed.plus, row.step),
            current: point.id == at.point.id,
            measured: value.is_some(),
            typed: value.map_or_else(String::new, |value| figures.value(*value, row.step)),
            key: app.store.world().id(),
            error: None,
            ask: None,
            locked: may_measure(round.state, at.side, value.is_some())
                .err()
                .map(|why| t.why(&why).to_string()),
            skipped: skipped.get(&point.id).copied(),
            back: back.map(|id| (id.clone(), at.href(style, piece, &id))),
            next: at.after(style, point),
        })
    };
    let points: Vec<PointForm> = points(round).enumerate().filter_map(form).collect();
    let link = |piece: &Piece| {
        let size = round.frozen.spec.size(&piece.size);
        PieceLink {
            href: at.to_piece(style, piece, at.wash),
            number: piece.number,
            size: size.map_or(String::new(), |size| size.code.clone()),
            missing: at.due(piece).count(),
        }
    };
    let state = |wash: Option<Wash>| StateLink {
        name: state_name(t, round, wash),
        href: at.to_piece(style, piece, wash),
        current: wash == at.wash,
    };
    MeasurePage {
        t,
        // Nothing on it is anybody else's: it needs no news, and a phone keeps its battery.
        frame: may.who.frame().told_by(None),
        person: may.permit.person().clone(),
        kind: round.kind,
        number: round.number,
        piece: link(piece),
        pieces: round.pieces.iter().map(link).collect(),
        states: [state(None), state(Some(round.other_state()))],
        skips: at.wash.is_none(),
        unit: figures.unit,
        sign: figures.sign.sign(),
        measured: points.iter().filter(|point| point.measured).count(),
        points,
        base,
    }
}

/// What the state of a piece is called: the spec's own as the spec says it.
pub fn state_name(t: Text, round: &Round, wash: Option<Wash>) -> String {
    match (wash, round.frozen.spec.header.measured) {
        (Some(wash), _) => t.name(&wash).to_string(),
        (None, Some(state)) => t.name(&state).to_string(),
        (None, None) => t.say("rounds-state-spec").to_string(),
    }
}

impl MeasurePage {
    /// What a value of this point counts: a large word, and what it means.
    fn basis(&self, basis: &Basis) -> (Message, Option<Message>) {
        let t = self.t;
        match basis {
            Basis::Half => (t.say("rounds-half"), Some(t.say("rounds-half-how"))),
            Basis::Full => (t.say("rounds-full"), Some(t.say("rounds-full-how"))),
            Basis::Linear => (t.say("rounds-length"), None),
        }
    }
}
