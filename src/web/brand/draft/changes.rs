//! What the draft changes against a published revision, at any time: the same list that publishing
//! it would show.

use askama::Template;
use axum::extract::{Query, State};
use serde::Deserialize;

use super::progress::{Looked, Progress};
use crate::access::act;
use crate::language::Text;
use crate::spec::change::Version;
use crate::spec::{Item, ItemId, Spec, StyleId};
use crate::web::App;
use crate::web::both::change_lines::{ChangeGroup, change_groups};
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, page};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/draft_changes.html")]
struct DraftChangesPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    number: String,
    name: String,
    progress: Progress,
    /// Against which revision; nothing before the first.
    since: Option<Since>,
    groups: Vec<ChangeGroup>,
    /// The other revisions that it can be compared with, newest first.
    others: Vec<u32>,
    publishes: bool,
}

struct Since {
    number: u32,
    date: String,
    newest: bool,
}

#[derive(Deserialize)]
pub struct Against {
    since: Option<u32>,
}

pub async fn show(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Query(against): Query<Against>,
) -> Answer {
    let (t, style) = (may.who.t, may.permit.style().clone());
    let read = may.permit.also::<act::Read>()?;
    let draft = app.store.draft(&may.permit).await?;
    let cards = app.store.revision_cards(&read).await?;
    let newest = app.store.newest(&read).await?;
    let spec = &draft.spec;
    let book = app.store.book(&may.permit).await?;
    let looked = Looked::through(&book, spec, newest.as_ref());
    let wanted = against.since.or(newest.as_ref().map(|it| it.number));
    let (since, groups) = match wanted {
        None => (None, Vec::new()),
        Some(wanted) => {
            let card = cards.iter().find(|card| card.number == wanted);
            let card = card.ok_or(Problem::NotFound)?;
            let old = app.store.content(&read, card).await?;
            let now = Version {
                spec,
                chart: looked.chart.as_ref(),
            };
            let href = |id: &ItemId| place(&style, spec, id);
            let since = Since {
                number: card.number,
                date: card.published_at.date().to_owned(),
                newest: newest.as_ref().is_some_and(|it| it.number == card.number),
            };
            let groups = change_groups(t, old.version(), now, old.decimal, href);
            (Some(since), groups)
        }
    };
    page(&DraftChangesPage {
        t,
        frame: may.who.frame(),
        number: spec.header.number.clone(),
        name: spec.header.name.clone(),
        progress: looked.progress,
        others: cards
            .iter()
            .map(|card| card.number)
            .filter(|other| Some(*other) != wanted)
            .collect(),
        publishes: may.permit.also::<act::Publish>().is_ok(),
        style,
        since,
        groups,
    })
}

/// Where an item stands in the pages of a draft.
pub fn place(style: &StyleId, spec: &Spec, id: &ItemId) -> Option<String> {
    let section = spec.item(id).map(Item::section)?.name();
    Some(format!("/styles/{style}/draft/{section}#row-{id}"))
}
