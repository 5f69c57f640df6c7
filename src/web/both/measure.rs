//! Measuring a piece on a phone: one point after the other, with its drawing.
//!
//! The page holds a form for every point of the piece and shows one of them. Without script each is
//! a page of its own; the script moves between them, so that measuring goes on without a connection.

mod picture;

use std::collections::BTreeMap;

use askama::Template;
use axum::Json;
use axum::extract::{Path, Query, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::IntoResponse;
use serde_json::json;

use crate::access::{Side, act};
use crate::exchange::revision::Frozen;
use crate::exchange::round::{Kind, may_measure};
use crate::language::{Beside, Message, Text};
use crate::sample::ask::{Ask, Slip, asks};
use crate::sample::deviation::columns;
use crate::spec::document::{Basis, HowToMeasure, Point};
use crate::spec::{Entered, ItemId, Length, PersonId, RoundId, Unit};
use crate::store::{NewMeasurement, Piece, Round};
use crate::web::App;
use crate::web::figures::Figures;
use crate::web::form::Form;
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

use super::round::address;
use picture::Picture;

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
    /// Values that the reader's side has not measured.
    missing: usize,
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
    /// The point before, if there is one, and the way on without measuring.
    back: Option<(ItemId, String)>,
    skip: (Option<ItemId>, String),
}

/// Which point of which piece; the first that is missing, when it is not said.
#[derive(serde::Deserialize)]
pub struct Place {
    piece: Option<String>,
    point: Option<String>,
}

/// What was sent and not saved, with the reason.
enum Unsaved {
    Error(String),
    Ask(String),
}

pub async fn show(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(place): Query<Place>,
) -> Answer {
    let round = round_of(&may, &app, round).await?;
    let (piece, point) = find(&round, &place, may.permit.side())?;
    page(&measure(&may, &app, &round, piece, point))
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
    let (piece, point) = find(&round, &place, may.permit.side())?;
    let script = headers
        .get(header::ACCEPT)
        .is_some_and(|accept| accept.as_bytes().starts_with(b"application/json"));
    let next = after(&may, &round, piece, point).1;
    match save(&may, &app, &round, piece, point, &form).await? {
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
            let mut again = measure(&may, &app, &round, piece, point);
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

/// Saves one value, or says why not yet.
async fn save(
    may: &MayOn<act::Measure>,
    app: &App,
    round: &Round,
    piece: &Piece,
    point: &Point,
    form: &Form,
) -> Result<Result<(), Unsaved>, Problem> {
    let t = may.who.t;
    let typed = form.fields.text("value");
    let key = form.fields.text("key");
    if key.is_empty() || key.len() > 64 {
        return Err(Problem::BadForm);
    }
    let entered = match Entered::read(typed, round.frozen.chart.unit) {
        Ok(entered) if entered.nm.is_positive() => entered,
        Ok(_) => {
            let sentence = t.say("rounds-not-positive").to_string();
            return Ok(Err(Unsaved::Error(sentence)));
        }
        Err(why) => {
            let sentence = t.not_a_length(why, typed).to_string();
            return Ok(Err(Unsaved::Error(sentence)));
        }
    };
    let mut values = round.values(&piece.id, Some(may.permit.side()));
    let before = values.insert(point.id.clone(), entered.nm);
    // Once answered, for just this value, the question is not put again.
    if form.fields.text("anyway") != typed
        && let Some(ask) = question(round, piece, point, &values)
    {
        let sentence = sentence(t, &round.frozen, ask, entered.nm, point);
        return Ok(Err(Unsaved::Ask(sentence)));
    }
    if before == Some(entered.nm) {
        return Ok(Ok(()));
    }
    let new = NewMeasurement {
        piece: piece.id.clone(),
        point: point.id.clone(),
        value: entered.nm,
        unit: entered.unit,
        key: key.to_owned(),
    };
    let kept = app.store.measure(&may.permit, &round.id, &[new]).await?;
    if !kept.refused.is_empty() {
        let sentence = t.say("rounds-key-used").to_string();
        return Ok(Err(Unsaved::Error(sentence)));
    }
    Ok(Ok(()))
}

/// What to ask before this value of the piece is saved: about the value itself, and once the piece
/// is complete about the piece as a whole.
fn question(
    round: &Round,
    piece: &Piece,
    point: &Point,
    values: &BTreeMap<ItemId, Length>,
) -> Option<Ask> {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let complete = columns
        .get(&piece.size)?
        .keys()
        .all(|id| values.contains_key(id));
    asks(&columns, &piece.size, values)
        .into_iter()
        .find(|ask| match ask {
            Ask::Slip { point: about, .. } => *about == point.id,
            Ask::OtherSize { .. } | Ask::Copied => complete,
        })
}

/// The question in words.
pub fn sentence(t: Text, frozen: &Frozen, ask: Ask, value: Length, point: &Point) -> String {
    let figures = Figures::of(frozen);
    let said = match ask {
        Ask::Slip { slip, .. } => {
            let step = frozen.chart.row(&point.id).map(|row| row.step);
            let value = figures.value(value, step.unwrap_or_default());
            t.say(match slip {
                Slip::Doubled => "rounds-ask-doubled",
                Slip::Halved => "rounds-ask-halved",
                Slip::CmAsInch => "rounds-ask-cm-as-inch",
                Slip::InchAsCm => "rounds-ask-inch-as-cm",
                Slip::TenTimes => "rounds-ask-ten-times",
                Slip::Tenth => "rounds-ask-tenth",
            })
            .with("value", format!("{value} {}", figures.unit.symbol()))
        }
        Ask::OtherSize { size } => {
            let code = frozen.spec.size(&size).map(|size| size.code.as_str());
            t.say("rounds-ask-other-size")
                .with("size", code.unwrap_or_default())
        }
        Ask::Copied => t.say("rounds-ask-copied"),
    };
    said.to_string()
}

/// The round, if values of the reader's side can be taken at all.
async fn round_of(may: &MayOn<act::Measure>, app: &App, id: String) -> Result<Round, Problem> {
    let reader = may.permit.also::<act::Read>()?;
    let round = app.store.round(&reader, &RoundId::new(id)).await?;
    may_measure(round.state, may.permit.side(), true)
        .map_err(|why| Problem::Refused(why, Some(may.permit.style().clone())))?;
    Ok(round)
}

/// The points that the frozen chart has a line for.
fn points(round: &Round) -> impl Iterator<Item = &Point> {
    let chart = &round.frozen.chart;
    let points = round.frozen.spec.points.points.iter();
    points.filter(|point| chart.row(&point.id).is_some())
}

/// The first point of this piece that the side has still to measure, other than `but`.
fn missing<'a>(
    round: &'a Round,
    piece: &Piece,
    side: Side,
    but: Option<&ItemId>,
) -> Option<&'a Point> {
    may_measure(round.state, side, false).ok()?;
    let values = round.values(&piece.id, Some(side));
    points(round).find(|point| !values.contains_key(&point.id) && Some(&point.id) != but)
}

fn find<'a>(
    round: &'a Round,
    place: &Place,
    side: Side,
) -> Result<(&'a Piece, &'a Point), Problem> {
    let pieces = || round.pieces.iter();
    let values = |piece: &Piece| round.values(&piece.id, Some(side));
    let piece = match &place.piece {
        Some(id) => pieces().find(|piece| piece.id.as_str() == id),
        // When nothing is missing, or may be added, there are values to correct.
        None => pieces()
            .find(|piece| missing(round, piece, side, None).is_some())
            .or_else(|| pieces().find(|piece| !values(piece).is_empty()))
            .or(round.pieces.first()),
    };
    let piece = piece.ok_or(Problem::NotFound)?;
    let point = match &place.point {
        Some(id) => points(round).find(|point| point.id.as_str() == id),
        None => missing(round, piece, side, None)
            .or_else(|| points(round).find(|point| values(piece).contains_key(&point.id)))
            .or_else(|| points(round).next()),
    };
    Ok((piece, point.ok_or(Problem::NotFound)?))
}

fn href(base: &str, piece: &Piece, point: &ItemId) -> String {
    format!("{base}/measure?piece={}&point={point}", piece.id)
}

/// Where to go from a point: the next of the piece, else the first that is missing, else the next
/// piece, else the round. The point is named when it is of the same piece.
fn after(
    may: &MayOn<act::Measure>,
    round: &Round,
    piece: &Piece,
    point: &Point,
) -> (Option<ItemId>, String) {
    let base = address(may.permit.style(), &round.id);
    let side = may.permit.side();
    let follows = points(round).skip_while(|it| it.id != point.id).nth(1);
    if let Some(next) = follows.or_else(|| missing(round, piece, side, Some(&point.id))) {
        return (Some(next.id.clone()), href(&base, piece, &next.id));
    }
    let others = round.pieces.iter().filter(|other| other.id != piece.id);
    let next = others
        .filter_map(|other| Some((other, missing(round, other, side, None)?)))
        .next();
    match next {
        Some((piece, point)) => (None, href(&base, piece, &point.id)),
        None => (None, format!("{base}?said=measured")),
    }
}

fn measure(
    may: &MayOn<act::Measure>,
    app: &App,
    round: &Round,
    piece: &Piece,
    current: &Point,
) -> MeasurePage {
    let side = may.permit.side();
    let base = address(may.permit.style(), &round.id);
    let figures = Figures::of(&round.frozen);
    let values = round.values(&piece.id, Some(side));
    let beside = |words: &str| may.who.t.beside(&round.frozen, words);
    let mut before: Option<ItemId> = None;
    let form = |(place, point): (usize, &Point)| {
        let row = round.frozen.chart.row(&point.id)?;
        let spec = round.frozen.chart.value(&point.id, &piece.size)?;
        let allowed = row.tolerance(&piece.size);
        let value = values.get(&point.id);
        let back = before.replace(point.id.clone());
        Some(PointForm {
            id: point.id.clone(),
            href: href(&base, piece, &point.id),
            place: place + 1,
            letter: point.letter.clone(),
            name: point.name.clone(),
            beside: beside(&point.name),
            how_beside: [&point.how.start, &point.how.end, &point.how.note]
                .into_iter()
                .filter_map(|words| beside(words))
                .collect(),
            picture: Picture::of(may.permit.style(), &round.frozen.spec, &point.id),
            how: point.how.clone(),
            basis: point.basis,
            spec: figures.value(spec, row.step),
            tolerance: figures.tolerance(allowed.minus, allowed.plus, row.step),
            current: point.id == current.id,
            measured: value.is_some(),
            typed: value.map_or_else(String::new, |value| figures.value(*value, row.step)),
            key: app.store.world().id(),
            error: None,
            ask: None,
            locked: may_measure(round.state, side, value.is_some())
                .err()
                .map(|why| may.who.t.why(&why).to_string()),
            back: back.map(|id| (id.clone(), href(&base, piece, &id))),
            skip: after(may, round, piece, point),
        })
    };
    let points: Vec<PointForm> = points(round).enumerate().filter_map(form).collect();
    let link = |piece: &Piece| {
        let values = round.values(&piece.id, Some(side));
        let size = round.frozen.spec.size(&piece.size);
        PieceLink {
            href: format!("{base}/measure?piece={}", piece.id),
            number: piece.number,
            size: size.map_or(String::new(), |size| size.code.clone()),
            missing: points
                .iter()
                .filter(|point| !values.contains_key(&point.id))
                .count(),
        }
    };
    MeasurePage {
        t: may.who.t,
        // Nothing on it is anybody else's: it needs no news, and a phone keeps its battery.
        frame: may.who.frame().told_by(None),
        person: may.permit.person().clone(),
        kind: round.kind,
        number: round.number,
        piece: link(piece),
        pieces: round.pieces.iter().map(link).collect(),
        unit: figures.unit,
        sign: figures.sign.sign(),
        measured: points.iter().filter(|point| point.measured).count(),
        points,
        base,
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
