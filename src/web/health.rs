//! For whoever watches the machine.

use axum::extract::State;

use super::App;
use super::problem::Problem;

/// Answers when the database does.
pub async fn show(State(app): State<App>) -> Result<&'static str, Problem> {
    app.store.is_founded().await?;
    Ok("ok\n")
}
