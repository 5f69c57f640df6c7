//! Saving a value, or why there is none.

use std::collections::BTreeMap;

use super::place::At;
use crate::access::act;
use crate::exchange::measuring::Reason;
use crate::exchange::revision::Frozen;
use crate::language::Text;
use crate::sample::ask::{Ask, Slip, asks};
use crate::sample::deviation::columns;
use crate::spec::document::Point;
use crate::spec::{Entered, ItemId, Length};
use crate::store::{NewMeasurement, NewSkip, Piece, Round};
use crate::web::App;
use crate::web::figures::Figures;
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::problem::Problem;

/// What was sent and not saved, with the reason.
pub enum Unsaved {
    Error(String),
    Ask(String),
}

/// Saves one value, or says why not yet.
pub async fn value(
    may: &MayOn<act::Measure>,
    app: &App,
    at: &At<'_>,
    form: &Form,
) -> Result<Result<(), Unsaved>, Problem> {
    let t = may.who.t;
    let At {
        round,
        piece,
        point,
        ..
    } = *at;
    let typed = form.fields.text("value");
    let key = key(form)?;
    let entered = match read(t, round, typed) {
        Ok(entered) => entered,
        Err(sentence) => return Ok(Err(Unsaved::Error(sentence))),
    };
    let mut values = at.values(piece);
    let before = values.insert(point.id.clone(), entered.nm);
    // Once answered, for just this value, the question is not put again.
    if form.fields.text("anyway") != typed
        && let Some(ask) = question(at, &values)
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
        wash: at.wash,
        key: key.to_owned(),
    };
    let kept = app.store.measure(&may.permit, &round.id, &[new]).await?;
    if !kept.refused.is_empty() {
        let sentence = t.say("rounds-key-used").to_string();
        return Ok(Err(Unsaved::Error(sentence)));
    }
    Ok(Ok(()))
}

/// Saves why there is no value.
pub async fn skip(
    may: &MayOn<act::Measure>,
    app: &App,
    at: &At<'_>,
    reason: &str,
    form: &Form,
) -> Result<Result<(), Unsaved>, Problem> {
    let new = NewSkip {
        piece: at.piece.id.clone(),
        point: at.point.id.clone(),
        reason: Reason::from_name(reason).ok_or(Problem::BadForm)?,
        key: key(form)?.to_owned(),
    };
    if !app.store.skip(&may.permit, &at.round.id, &new).await? {
        let sentence = may.who.t.say("rounds-key-used").to_string();
        return Ok(Err(Unsaved::Error(sentence)));
    }
    Ok(Ok(()))
}

fn key(form: &Form) -> Result<&str, Problem> {
    let key = form.fields.text("key");
    if key.is_empty() || key.len() > 64 {
        return Err(Problem::BadForm);
    }
    Ok(key)
}

/// A typed value in the unit of the round's revision, or why it is none.
pub fn read(t: Text, round: &Round, typed: &str) -> Result<Entered, String> {
    match Entered::read(typed, round.frozen.chart.unit) {
        Ok(entered) if entered.nm.is_positive() => Ok(entered),
        Ok(_) => Err(t.say("rounds-not-positive").to_string()),
        Err(why) => Err(t.not_a_length(why, typed).to_string()),
    }
}

/// What to ask before this value of the piece is saved: about the value itself, and once the piece
/// is complete about the piece as a whole.
fn question(at: &At<'_>, values: &BTreeMap<ItemId, Length>) -> Option<Ask> {
    questions(at.round, at.piece, at.wash.is_none(), values)
        .into_iter()
        .find(|ask| match ask {
            Ask::Slip { point: about, .. } => *about == at.point.id,
            Ask::OtherSize { .. } | Ask::Copied => true,
        })
}

/// What to ask before these values of a piece are saved. About the piece as a whole only once it is
/// complete, and `comparable`: in the state that the spec's numbers hold for.
pub fn questions(
    round: &Round,
    piece: &Piece,
    comparable: bool,
    values: &BTreeMap<ItemId, Length>,
) -> Vec<Ask> {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let Some(column) = columns.get(&piece.size) else {
        return Vec::new();
    };
    let complete = column.keys().all(|id| values.contains_key(id));
    let mut asks = asks(&columns, &piece.size, values);
    asks.retain(|ask| matches!(ask, Ask::Slip { .. }) || (complete && comparable));
    asks
}

/// The question in words; `value` was typed for `point`.
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
