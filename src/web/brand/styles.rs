//! The brand's styles, and the start of a new one.

use askama::Template;
use axum::extract::State;

use super::numbering::{Begin, Numbering};
use crate::access::{Permit, act, grant};
use crate::language::Text;
use crate::spec::Spec;
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
    errors: Errors,
}

pub async fn show(may: May<act::Browse>, State(app): State<App>) -> Answer {
    page(&styles(&may.permit, &may.who, &app).await?)
}

pub async fn create(may: May<act::Create>, State(app): State<App>, form: Form) -> Answer {
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    let mut errors = Errors::default();
    let numbering = Numbering::read(&app, &browse).await?;
    let begun = Begin {
        app: &app,
        t: may.who.t,
        permit: &may.permit,
        fields: &form.fields,
        from: None,
    };
    if let Some(style) = begun
        .style(&numbering, Spec::default(), &mut errors)
        .await?
    {
        return go(&format!("/styles/{style}/draft/header?said=made"));
    }
    page_again(&StylesPage {
        number: form.fields.text("number").to_owned(),
        name: form.fields.text("name").to_owned(),
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
        errors: Errors::default(),
    })
}
