//! The brand's styles, and the start of a new one.

use askama::Template;
use axum::extract::State;

use crate::access::{Permit, act, grant};
use crate::language::Text;
use crate::spec::Spec;
use crate::store::{StoreError, StyleCard};
use crate::web::App;
use crate::web::form::{Errors, Form};
use crate::web::frame::Frame;
use crate::web::may::{May, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/styles.html")]
struct StylesPage {
    t: Text,
    frame: Frame,
    styles: Vec<StyleCard>,
    /// May start a style.
    creates: bool,
    number: String,
    name: String,
    errors: Errors,
}

pub async fn show(may: May<act::Browse>, State(app): State<App>) -> Answer {
    page(&styles(&may.permit, &may.who, &app).await?)
}

pub async fn create(may: May<act::Create>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let mut start = Spec::default();
    let mut errors = Errors::default();
    start.header.number = form.fields.line(t, "number", &mut errors);
    start.header.name = form.fields.line(t, "name", &mut errors);
    for (field, text) in [
        ("number", &start.header.number),
        ("name", &start.header.name),
    ] {
        if text.is_empty() {
            errors.add(field, t.say("error-missing"));
        }
    }
    if errors.is_empty() {
        match app.store.create_style(&may.permit, &start).await {
            Ok(style) => return go(&format!("/styles/{style}/draft/header?said=made")),
            Err(StoreError::Unique(_)) => errors.add("number", t.say("error-number-taken")),
            Err(other) => return Err(other.into()),
        }
    }
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    page_again(&StylesPage {
        number: start.header.number,
        name: start.header.name,
        errors,
        ..styles(&browse, &may.who, &app).await?
    })
}

async fn styles(permit: &Permit<act::Browse>, who: &Who, app: &App) -> Result<StylesPage, Problem> {
    Ok(StylesPage {
        t: who.t,
        frame: who.frame(),
        styles: app.store.styles(permit).await?,
        creates: grant::<act::Create>(&who.session.actor).is_ok(),
        number: String::new(),
        name: String::new(),
        errors: Errors::default(),
    })
}
