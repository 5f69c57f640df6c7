//! The brand's styles, and the start of a new one.

use askama::Template;
use axum::extract::State;

use super::numbering::{Begin, Numbering};
use super::starts::{Choice, Chosen, choices, hand_over};
use crate::access::{Permit, act, grant};
use crate::language::Text;
use crate::store::StyleCard;
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
    numbering: Numbering,
    /// What it may begin with, and the value that is chosen.
    starts: Vec<Choice>,
    start: String,
    errors: Errors,
}

pub async fn show(may: May<act::Browse>, State(app): State<App>) -> Answer {
    page(&styles(&may.permit, &may.who, &app).await?)
}

pub async fn create(may: May<act::Create>, State(app): State<App>, form: Form) -> Answer {
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    let mut errors = Errors::default();
    let numbering = Numbering::read(&app, &browse).await?;
    let actor = &may.who.session.actor;
    let chosen = Chosen::read(&app, actor, form.fields.text("start")).await?;
    let flats = chosen.keep_flats(&app).await?;
    let begin = Begin {
        app: &app,
        t: may.who.t,
        permit: &may.permit,
        fields: &form.fields,
        from: chosen.from.as_ref(),
    };
    if let Some(style) = begin.style(&numbering, chosen.spec, &mut errors).await? {
        hand_over(&app, actor, &style, flats).await?;
        return go(&format!("/styles/{style}/draft/header?said=made"));
    }
    page_again(&StylesPage {
        number: form.fields.text("number").to_owned(),
        name: form.fields.text("name").to_owned(),
        start: form.fields.text("start").to_owned(),
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
        numbering: Numbering::read(app, permit).await?,
        starts: choices(app, who.t, permit).await?,
        start: String::new(),
        errors: Errors::default(),
    })
}
