//! Signing a revision.

use axum::extract::{Path, State};

use super::number;
use super::sheet::{Around, Sheet};
use super::sign_box::sign;
use crate::access::act;
use crate::exchange::revision::Frozen;
use crate::language::Text;
use crate::store::Sign;
use crate::web::App;
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};

pub async fn submit(
    may: MayOn<act::Sign>,
    State(app): State<App>,
    Path((style, n)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let n = number(&n)?;
    let revision = app.store.revision(&may.permit.also()?, n).await?;
    let figures = figures(may.who.t, &revision.frozen);
    sign(&may, &app, Sign::Revision(n), &figures, &form).await?;
    go(&format!("/styles/{style}/revisions/{n}?said=signed#sign"))
}

/// What stands on the page of a revision that somebody signs, as one text.
pub fn figures(t: Text, frozen: &Frozen) -> String {
    Sheet::of(t, frozen, Around::default()).figures()
}
