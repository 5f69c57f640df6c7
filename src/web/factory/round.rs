//! What a factory does with a round: starts the work, dispatches the pieces.

use axum::extract::{Path, State};

use crate::access::act;
use crate::exchange::round::Move;
use crate::spec::RoundId;
use crate::web::App;
use crate::web::both::round::{address, load};
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page_again};
use crate::web::problem::Problem;

/// Starts, or dispatches, which asks once when values are missing; the rules refuse any other move.
pub async fn submit_move(
    may: MayOn<act::Dispatch>,
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
    app.store.dispatch_round(&may.permit, &id, mv).await?;
    go(&format!("{}?said=moved", address(may.permit.style(), &id)))
}
