//! Signing out, here or everywhere.

use axum::extract::State;
use axum::response::IntoResponse;

use crate::access::act;
use crate::web::App;
use crate::web::form::Form;
use crate::web::may::May;
use crate::web::page::{Answer, go};
use crate::web::visit::clear_session;

pub async fn submit(may: May<act::Enter>, State(app): State<App>, _form: Form) -> Answer {
    app.store.end_session(&may.who.token).await?;
    Ok(([clear_session(&app)], go("/sign-in")?).into_response())
}

pub async fn everywhere(may: May<act::Enter>, State(app): State<App>, _form: Form) -> Answer {
    app.store.end_sessions(&may.permit).await?;
    Ok(([clear_session(&app)], go("/sign-in")?).into_response())
}
