//! A form looked through while it is being typed: what the checks say to it as it stands. Nothing is
//! saved.

use std::sync::{Arc, OnceLock};

use askama::Template;
use axum::http::{HeaderMap, StatusCode};
use axum::response::IntoResponse;

use super::progress::{Line, Looked, Progress};
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::{Section, Spec, StyleId};
use crate::web::App;
use crate::web::page::{Answer, page};

/// The header by which a page's script asks for this.
const ASKS: &str = "x-fellseam-check";

/// Takes the draft that a form would have made.
#[derive(Clone, Default)]
pub struct Trial(Arc<OnceLock<Spec>>);

impl Trial {
    pub fn of(headers: &HeaderMap) -> Option<Trial> {
        headers.contains_key(ASKS).then(Trial::default)
    }

    pub fn found(&self, spec: &Spec) {
        // A form makes one draft.
        let _ = self.0.set(spec.clone());
    }
}

/// The parts of a section's page that the checks fill.
#[derive(Template)]
#[template(path = "brand/checked.html")]
struct CheckedPage {
    t: Text,
    style: StyleId,
    section: Section,
    progress: Progress,
    findings: Vec<Line>,
}

/// Of a trial what the checks say, nothing when the form cannot be read yet; else the answer
/// itself.
pub async fn answer(
    answer: Answer,
    app: &App,
    t: Text,
    permit: &StylePermit<act::Review>,
    section: Section,
    trial: Option<Trial>,
) -> Answer {
    let Some(trial) = trial else {
        return answer;
    };
    let answer = answer?;
    let Some(spec) = trial.0.get() else {
        // What is wrong with a field is said when it is saved, and by its own script.
        let unread = answer.status() == StatusCode::UNPROCESSABLE_ENTITY;
        return Ok(if unread {
            StatusCode::NO_CONTENT.into_response()
        } else {
            answer
        });
    };
    let newest = app.store.newest(&permit.also()?).await?;
    let book = app.store.book(permit).await?;
    let looked = Looked::through(&book, spec, newest.as_ref());
    let mut progress = looked.progress;
    progress.place(t, &app.store.others_here(permit).await?);
    page(&CheckedPage {
        t,
        style: permit.style().clone(),
        section,
        findings: Line::all(t, permit.style(), spec, section, &looked.findings),
        progress,
    })
}
