//! An invitation, or a new link for somebody who lost their session.
//!
//! Chat programs fetch links to show a preview: a GET spends nothing, the button does. The page
//! names the person whom the link is for.

use askama::Template;
use axum::Extension;
use axum::extract::{Path, State};
use axum::response::IntoResponse;

use super::{From, language, name};
use crate::access::Role;
use crate::language::{Language, Text};
use crate::store::WayIn;
use crate::web::App;
use crate::web::form::{Errors, PublicForm};
use crate::web::frame::Frame;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::visit::{Visitor, set_session};

#[derive(Template)]
#[template(path = "entry/join.html")]
struct JoinPage {
    t: Text,
    frame: Frame,
    key: String,
    /// Whom the link is for.
    person: String,
    org: String,
    role: Role,
    languages: &'static [Language],
    language: Language,
    errors: Errors,
}

#[derive(Template)]
#[template(path = "entry/spent.html")]
struct SpentPage {
    t: Text,
    frame: Frame,
}

pub async fn show(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    Path(key): Path<String>,
) -> Answer {
    let Some(found) = found(&app, &key).await? else {
        return spent(&visitor);
    };
    page(&join_page(&visitor, key, found, Errors::default()))
}

pub async fn submit(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    From(peer): From,
    Path(key): Path<String>,
    PublicForm(fields): PublicForm,
) -> Answer {
    let brake = format!("join {peer}");
    if !app.attempts.open(&brake) {
        return Err(Problem::TooManyTries);
    }
    let Some(found) = found(&app, &key).await? else {
        app.attempts.wrong(&brake);
        return spent(&visitor);
    };
    let language = language(visitor.t, &fields);
    let mut errors = Errors::default();
    let name = name(language.text(), &fields, "name", &mut errors);
    if !errors.is_empty() {
        let found = Found {
            person: name,
            language,
            ..found
        };
        return page_again(&join_page(&visitor, key, found, errors));
    }
    let token = app
        .store
        .use_way_in(&key, Some((&name, language.tag())))
        .await?;
    Ok(([set_session(&app, &token)], go("/")?).into_response())
}

struct Found {
    person: String,
    org: String,
    role: Role,
    language: Language,
}

async fn found(app: &App, key: &str) -> Result<Option<Found>, Problem> {
    Ok(match app.store.way_in(key).await? {
        Some(WayIn::For {
            name,
            org_name,
            role,
            language,
        }) => Some(Found {
            person: name,
            org: org_name,
            role,
            language: Language::from_tag(&language).unwrap_or(Language::ORIGINAL),
        }),
        _ => None,
    })
}

fn join_page(visitor: &Visitor, key: String, found: Found, errors: Errors) -> JoinPage {
    // In the language that the link was made for: the reader's browser is often set to another.
    let t = if visitor.visit.is_some() {
        visitor.t
    } else {
        found.language.text()
    };
    JoinPage {
        t,
        frame: Frame::outside(t),
        key,
        person: found.person,
        org: found.org,
        role: found.role,
        languages: Language::ALL,
        language: found.language,
        errors,
    }
}

fn spent(visitor: &Visitor) -> Answer {
    let spent = SpentPage {
        t: visitor.t,
        frame: Frame::outside(visitor.t),
    };
    let answer = page(&spent)?;
    Ok((axum::http::StatusCode::GONE, answer).into_response())
}
