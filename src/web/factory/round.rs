//! What a factory does with a round: starts the work, dispatches the pieces.

use axum::extract::{Path, State};

use crate::access::act;
use crate::exchange::round::Move;
use crate::spec::RoundId;
use crate::web::App;
use crate::web::both::round::address;
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;

/// Starts or dispatches; the rules refuse any other move.
pub async fn submit_move(
    may: MayOn<act::Dispatch>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = RoundId::new(round);
    let mv = Move::from_name(form.fields.text("move")).ok_or(Problem::BadForm)?;
    app.store.dispatch_round(&may.permit, &id, mv).await?;
    go(&format!("{}?said=moved", address(may.permit.style(), &id)))
}
