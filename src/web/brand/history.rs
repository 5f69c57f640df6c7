//! What a section said before: every save of it with who and when, and the way back to any of them
//! or to what a revision published.

use askama::Template;
use axum::extract::{Path, State};

use crate::access::act;
use crate::language::Text;
use crate::spec::change::Version;
use crate::spec::document::Section;
use crate::spec::units::DecimalSign;
use crate::spec::{Spec, StyleId};
use crate::store::{Draft, Saved, SectionVersion, put_section};
use crate::web::App;
use crate::web::both::change_lines::{ChangeGroup, change_groups};
use crate::web::form::Form;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page};
use crate::web::problem::Problem;

/// How many saves are told of with what they changed.
const TOLD: usize = 40;

#[derive(Template)]
#[template(path = "brand/history.html")]
struct HistoryPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    number: String,
    name: String,
    section: Section,
    /// The version that the draft has now: a restored one is saved over it.
    now: i64,
    writes: bool,
    saves: Vec<SaveLine>,
    /// The published revisions, newest first.
    revisions: Vec<u32>,
}

struct SaveLine {
    version: i64,
    by: String,
    at: String,
    /// What it changed against the save before.
    changes: Vec<ChangeGroup>,
}

fn named(section: &str) -> Result<Section, Problem> {
    Section::from_name(section).ok_or(Problem::NotFound)
}

fn content(draft: &Draft, section: Section, save: &SectionVersion) -> Result<Spec, Problem> {
    let mut spec = draft.spec.clone();
    put_section(&mut spec, section, &save.content)
        .map_err(|cause| Problem::fault(&format!("section {}: {cause}", section.name())))?;
    Ok(spec)
}

pub async fn show(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
) -> Answer {
    let section = named(&section)?;
    let t = may.who.t;
    let (store, permit) = (&app.store, &may.permit);
    let draft = store.draft(permit).await?;
    let history = store.section_history(permit, section).await?;
    let specs = history.iter().take(TOLD + 1);
    let specs: Vec<Spec> = specs
        .map(|save| content(&draft, section, save))
        .collect::<Result<_, _>>()?;
    let saves = history.iter().enumerate().map(|(at, save)| SaveLine {
        version: save.version,
        by: name_or_erased(t, save.saved_by.as_deref()),
        at: save.saved_at.minute(),
        changes: match (specs.get(at), specs.get(at + 1)) {
            (Some(new), Some(old)) => told(t, old, new),
            _ => Vec::new(),
        },
    });
    let saves = saves.collect();
    let cards = store.revision_cards(&permit.also()?).await?;
    let header = &draft.spec.header;
    page(&HistoryPage {
        t,
        frame: may.who.frame(),
        style: permit.style().clone(),
        number: header.number.clone(),
        name: header.name.clone(),
        section,
        now: draft.versions.get(&section).copied().unwrap_or_default(),
        writes: permit.also::<act::Write>().is_ok(),
        saves,
        revisions: cards.iter().map(|card| card.number).collect(),
    })
}

/// Only what is written: values that follow from it are the size chart's.
fn told(t: Text, old: &Spec, new: &Spec) -> Vec<ChangeGroup> {
    let version = |spec| Version { spec, chart: None };
    change_groups(t, version(old), version(new), DecimalSign::Point, |_| None)
}

pub async fn restore(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let section = named(&section)?;
    let review = may.permit.also()?;
    let draft = app.store.draft(&review).await?;
    let base: i64 = form.fields.number("base").ok_or(Problem::BadForm)?;
    let spec = match (
        form.fields.number::<i64>("version"),
        form.fields.number::<u32>("revision"),
    ) {
        (Some(version), None) => {
            let history = app.store.section_history(&review, section).await?;
            let save = history.iter().find(|save| save.version == version);
            content(&draft, section, save.ok_or(Problem::NotFound)?)?
        }
        (None, Some(number)) => {
            let revision = app.store.revision(&may.permit.also()?, number).await?;
            draft.spec.with_section_of(section, &revision.frozen.spec)
        }
        _ => return Err(Problem::BadForm),
    };
    let to = format!("/styles/{}/draft", may.permit.style());
    match app
        .store
        .save_section(&may.permit, section, base, &spec)
        .await?
    {
        Saved::Won(_) => go(&format!("{to}/{}?said=restored", section.name())),
        Saved::Lost(id) => go(&format!("{to}/conflict/{id}")),
    }
}
