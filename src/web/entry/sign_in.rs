//! Signing in by name and password.

use askama::Template;
use axum::extract::{Query, State};
use axum::response::IntoResponse;
use serde::Deserialize;

use super::From;
use crate::language::Text;
use crate::web::App;
use crate::web::form::PublicForm;
use crate::web::frame::Frame;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::visit::{Visitor, set_session};
use axum::Extension;

#[derive(Template)]
#[template(path = "entry/sign_in.html")]
struct SignInPage {
    t: Text,
    frame: Frame,
    /// Where to go afterwards.
    then: String,
    login: String,
    wrong: bool,
}

#[derive(Deserialize)]
pub struct Then {
    #[serde(default)]
    then: String,
}

pub async fn show(Extension(visitor): Extension<Visitor>, Query(query): Query<Then>) -> Answer {
    if visitor.visit.is_some() {
        return go(inside(&query.then));
    }
    page(&SignInPage {
        t: visitor.t,
        frame: Frame::outside(visitor.t),
        then: inside(&query.then).to_owned(),
        login: String::new(),
        wrong: false,
    })
}

pub async fn submit(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    From(peer): From,
    PublicForm(fields): PublicForm,
) -> Answer {
    let login = fields.text("login").to_lowercase();
    let keys = [format!("login {login}"), format!("peer {peer}")];
    if !keys.iter().all(|key| app.attempts.open(key)) {
        return Err(Problem::TooManyTries);
    }
    let known = app.store.password(&login).await?;
    let (person, hash) = known.unzip();
    let right = app
        .passwords
        .check(fields.raw("password").to_owned(), hash)
        .await;
    let Some(person) = person.filter(|_| right) else {
        keys.iter().for_each(|key| app.attempts.wrong(key));
        return page_again(&SignInPage {
            t: visitor.t,
            frame: Frame::outside(visitor.t),
            then: inside(fields.text("then")).to_owned(),
            login,
            wrong: true,
        });
    };
    app.attempts.right(&keys[0]);
    let token = app.store.open_session(&person).await?;
    let to = go(inside(fields.text("then")))?;
    Ok(([set_session(&app, &token)], to).into_response())
}

/// An address of this site, or its first page: a link may not lead a signed-in person elsewhere.
fn inside(then: &str) -> &str {
    let local = then.starts_with('/') && !then.starts_with("//") && !then.contains('\\');
    if local && !then.contains(|c: char| c.is_control()) {
        then
    } else {
        "/"
    }
}

#[cfg(test)]
mod tests {
    use super::inside;

    #[test]
    fn after_signing_in_one_stays_on_this_site() {
        assert_eq!(inside("/styles/7?said=saved"), "/styles/7?said=saved");
        for elsewhere in [
            "//evil.example",
            "https://evil.example",
            "/\\evil.example",
            "",
        ] {
            assert_eq!(inside(elsewhere), "/", "{elsewhere}");
        }
    }
}
