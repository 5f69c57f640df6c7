//! The first page of a new installation: the brand and its first owner.

use askama::Template;
use axum::Extension;
use axum::extract::{Path, State};
use axum::response::IntoResponse;

use super::{From, credentials, language, name};
use crate::language::{Language, Text};
use crate::store::{SetUp, WayIn};
use crate::web::App;
use crate::web::form::{Errors, Fields, PublicForm};
use crate::web::frame::Frame;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::visit::{Visitor, set_session};

#[derive(Template)]
#[template(path = "entry/set_up.html")]
struct SetUpPage {
    t: Text,
    frame: Frame,
    key: String,
    fields: Fields,
    languages: &'static [Language],
    errors: Errors,
}

pub async fn show(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    Path(key): Path<String>,
) -> Answer {
    must_be_open(&app, &key).await?;
    page(&SetUpPage {
        t: visitor.t,
        frame: Frame::outside(visitor.t),
        key,
        fields: Fields::default(),
        languages: Language::ALL,
        errors: Errors::default(),
    })
}

pub async fn submit(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    From(peer): From,
    Path(key): Path<String>,
    PublicForm(fields): PublicForm,
) -> Answer {
    let brake = format!("set-up {peer}");
    if !app.attempts.open(&brake) {
        return Err(Problem::TooManyTries);
    }
    if let Err(problem) = must_be_open(&app, &key).await {
        app.attempts.wrong(&brake);
        return Err(problem);
    }
    let t = visitor.t;
    let mut errors = Errors::default();
    let brand = name(t, &fields, "brand", &mut errors);
    let owner = name(t, &fields, "name", &mut errors);
    let (login, password) = credentials(t, &fields, &mut errors);
    if !errors.is_empty() {
        return page_again(&SetUpPage {
            t,
            frame: Frame::outside(t),
            key,
            fields,
            languages: Language::ALL,
            errors,
        });
    }
    let hash = app.passwords.hash(password).await;
    let hash = hash.map_err(|cause| Problem::fault(&cause))?;
    let new = SetUp {
        brand: &brand,
        owner: &owner,
        language: language(t, &fields).tag(),
        login: &login,
        password_hash: &hash,
    };
    let token = app.store.set_up(&key, new).await?;
    Ok(([set_session(&app, &token)], go("/")?).into_response())
}

async fn must_be_open(app: &App, key: &str) -> Result<(), Problem> {
    match app.store.way_in(key).await? {
        Some(WayIn::SetUp) => Ok(()),
        _ => Err(Problem::NotFound),
    }
}
