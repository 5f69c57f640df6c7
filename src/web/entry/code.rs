//! A second device: the code that a signed-in page shows is typed here.

use askama::Template;
use axum::Extension;
use axum::extract::State;
use axum::response::IntoResponse;

use super::From;
use crate::language::Text;
use crate::store::StoreError;
use crate::web::App;
use crate::web::form::PublicForm;
use crate::web::frame::Frame;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::visit::{Visitor, set_session};

#[derive(Template)]
#[template(path = "entry/code.html")]
struct CodePage {
    t: Text,
    frame: Frame,
    wrong: bool,
}

pub async fn show(Extension(visitor): Extension<Visitor>) -> Answer {
    page(&CodePage {
        t: visitor.t,
        frame: Frame::outside(visitor.t),
        wrong: false,
    })
}

pub async fn submit(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    From(peer): From,
    PublicForm(fields): PublicForm,
) -> Answer {
    let brake = format!("code {peer}");
    if !app.attempts.open(&brake) {
        return Err(Problem::TooManyTries);
    }
    // Typed with a dash, spaces or small letters, it is the same code.
    let code: String = fields
        .text("code")
        .chars()
        .filter(char::is_ascii_alphanumeric)
        .map(|c| c.to_ascii_uppercase())
        .collect();
    // Links are longer; only codes are taken here.
    let used = match code.len() {
        8 => app.store.use_way_in(&code, None).await,
        _ => Err(StoreError::Missing),
    };
    match used {
        Ok(token) => Ok(([set_session(&app, &token)], go("/")?).into_response()),
        Err(StoreError::Missing) => {
            app.attempts.wrong(&brake);
            page_again(&CodePage {
                t: visitor.t,
                frame: Frame::outside(visitor.t),
                wrong: true,
            })
        }
        Err(other) => Err(other.into()),
    }
}
