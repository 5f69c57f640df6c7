//! Signing a revision.

use axum::extract::{Path, State};

use super::number;
use super::sheet::{Around, Sheet};
use super::sign_box::sign;
use crate::access::act;
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
    let sheet = Sheet::of(may.who.t, &revision.frozen, Around::default());
    sign(&may, &app, Sign::Revision(n), &sheet.figures(), &form).await?;
    go(&format!("/styles/{style}/revisions/{n}?said=signed#sign"))
}
