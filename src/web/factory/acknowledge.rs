//! A factory says that it has read a revision and works to no other.

use axum::extract::{Path, State};

use crate::access::act;
use crate::web::App;
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;

pub async fn submit(
    may: MayOn<act::Acknowledge>,
    State(app): State<App>,
    Path((style, n)): Path<(String, String)>,
    _form: Form,
) -> Answer {
    let n: u32 = n.parse().map_err(|_| Problem::NotFound)?;
    app.store.acknowledge(&may.permit, n).await?;
    go(&format!("/styles/{style}/revisions/{n}?said=acknowledged"))
}
