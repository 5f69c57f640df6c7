//! What a factory does with a round: starts the work, dispatches the pieces.

use axum::extract::{Path, State};

use crate::access::act;
use crate::exchange::Refused;
use crate::exchange::round::Move;
use crate::spec::RoundId;
use crate::web::App;
use crate::web::both::round::{SendForm, address, load};
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page_again};
use crate::web::problem::Problem;

/// Starts, or dispatches, which asks once when values are missing; no other move is a factory's.
pub async fn submit_move(
    may: MayOn<act::Dispatch>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = RoundId::new(round);
    match Move::from_name(form.fields.text("move")) {
        Some(Move::Start) => app.store.start_round(&may.permit, &id).await?,
        Some(Move::Dispatch) => return dispatch(&may, &app, &id, &form).await,
        _ => return Err(Problem::BadForm),
    }
    go(&format!("{}?said=moved", address(may.permit.style(), &id)))
}

async fn dispatch(may: &MayOn<act::Dispatch>, app: &App, id: &RoundId, form: &Form) -> Answer {
    let reader = may.permit.also::<act::Read>()?;
    let load = async || load(&may.who, &reader, app, id, None).await;
    let typed = SendForm::read(may.who.t, &form.fields);
    let Some(sending) = typed.sending() else {
        let state = app.store.round(&reader, id).await?.state;
        // What cannot be sent now is refused for that reason, however the form was filled in.
        let again = load().await?.sending(typed);
        let style = may.permit.style().clone();
        let refused = || Problem::Refused(Refused::RoundNotIn { state }, Some(style));
        let again = again.ok_or_else(refused)?;
        return page_again(&again);
    };
    if let Some(asking) = load().await?.asking(Move::Dispatch, form) {
        return page_again(&asking);
    }
    app.store.dispatch_round(&may.permit, id, sending).await?;
    go(&format!("{}?said=moved", address(may.permit.style(), id)))
}
