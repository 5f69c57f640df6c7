//! A style copied: to a new season, or as the start of another.

use askama::Template;
use axum::extract::State;

use super::numbering::{Begin, Numbering};
use crate::access::{act, grant};
use crate::language::Text;
use crate::spec::{Spec, StyleId};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/copy.html")]
struct CopyPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    /// Of the style that is copied.
    title: String,
    number: String,
    name: String,
    season: String,
    numbering: Numbering,
    errors: Errors,
}

async fn copy_page(
    app: &App,
    who: &Who,
    style: &StyleId,
    spec: &Spec,
    fields: &Fields,
    errors: Errors,
) -> Result<CopyPage, Problem> {
    let browse = grant::<act::Browse>(&who.session.actor)?;
    let header = &spec.header;
    Ok(CopyPage {
        t: who.t,
        frame: who.frame(),
        style: style.clone(),
        title: format!("{} {}", header.number, header.name),
        number: fields.text("number").to_owned(),
        name: match fields.has("name") {
            true => fields.text("name").to_owned(),
            false => header.name.clone(),
        },
        season: fields.text("season").to_owned(),
        numbering: Numbering::read(app, &browse).await?,
        errors,
    })
}

pub async fn show(may: MayOn<act::Write>, State(app): State<App>) -> Answer {
    let draft = app.store.draft(&may.permit.also()?).await?;
    let (style, none) = (may.permit.style(), Fields::default());
    page(&copy_page(&app, &may.who, style, &draft.spec, &none, Errors::default()).await?)
}

pub async fn submit(may: MayOn<act::Write>, State(app): State<App>, form: Form) -> Answer {
    let review = may.permit.also()?;
    let draft = app.store.draft(&review).await?;
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    let numbering = Numbering::read(&app, &browse).await?;
    let mut errors = Errors::default();
    let mut start = draft.spec.for_another_style();
    start.header.season = form.fields.line(may.who.t, "season", &mut errors);
    let begin = Begin {
        app: &app,
        t: may.who.t,
        permit: &grant::<act::Create>(&may.who.session.actor)?,
        fields: &form.fields,
        from: Some(&review),
    };
    if let Some(style) = begin.style(&numbering, start, &mut errors).await? {
        return go(&format!("/styles/{style}/draft/header?said=made"));
    }
    let style = may.permit.style();
    page_again(&copy_page(&app, &may.who, style, &draft.spec, &form.fields, errors).await?)
}
