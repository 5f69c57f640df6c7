//! What the brand does with a round: receives it, ends its measuring, goes on with it past a newer
//! revision, decides it.

use axum::extract::{Path, State};

use crate::access::act;
use crate::exchange::round::{Move, Outcome};
use crate::spec::RoundId;
use crate::store::{Decide, StoreError};
use crate::web::App;
use crate::web::both::round::{Sent, address, load};
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::ways_on;

/// Receives the pieces, or says that measuring is done, which asks once when values are missing;
/// the rules refuse any other move.
pub async fn receive(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = RoundId::new(round);
    let mv = Move::from_name(form.fields.text("move")).ok_or(Problem::BadForm)?;
    let reader = may.permit.also::<act::Read>()?;
    let page = load(&may.who, &reader, &app, &id, None).await?;
    if let Some(asking) = page.asking(mv, &form) {
        return page_again(&asking);
    }
    app.store.receive_round(&may.permit, &id, mv).await?;
    go(&format!("{}?said=moved", address(may.permit.style(), &id)))
}

/// Goes on with the round although a newer revision exists.
pub async fn go_on(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    _form: Form,
) -> Answer {
    let id = RoundId::new(round);
    app.store.continue_round(&may.permit, &id).await?;
    go(&format!("{}?said=moved", address(may.permit.style(), &id)))
}

/// Ends the round for the newer revision that the page showed, and asks for the same pieces with it.
pub async fn restart(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let newer: u32 = form.fields.number("revision").ok_or(Problem::BadForm)?;
    let t = may.who.t;
    let reason = t
        .say("rounds-restart-reason")
        .with("revision", newer)
        .to_string();
    let store = &app.store;
    let id = RoundId::new(round);
    let id = store
        .restart_round(&may.permit, &id, newer, &reason)
        .await?;
    go(&format!("{}?said=made", address(may.permit.style(), &id)))
}

/// Decides the round. What the rules refuse comes back with the form as it was filled in.
pub async fn decide(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let id = RoundId::new(round);
    let reader = may.permit.also::<act::Read>()?;
    let mut sent = Sent::read(&form.fields);
    let Some(outcome) = sent.outcome else {
        sent.refused = Some((t.say("rounds-outcome-missing").to_string(), Vec::new()));
        return page_again(&load(&may.who, &reader, &app, &id, Some(sent)).await?);
    };
    let decide = Decide {
        outcome,
        reason: &sent.reason,
        changes: match outcome {
            Outcome::ApprovedWithChanges => &sent.changes,
            _ => &[],
        },
        language: t.lang(),
    };
    match app.store.decide(&may.permit, &id, decide).await {
        Ok(()) => go(&format!(
            "{}?said=decided",
            address(may.permit.style(), &id)
        )),
        Err(StoreError::Refused(why, style)) => {
            sent.refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style)));
            page_again(&load(&may.who, &reader, &app, &id, Some(sent)).await?)
        }
        Err(other) => Err(other.into()),
    }
}
