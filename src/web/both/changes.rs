//! What changed in a revision since an earlier one.

use askama::Template;
use axum::extract::{Path, Query, State};
use axum::http::HeaderMap;
use serde::Deserialize;

use super::change_lines::{ChangeGroup, change_groups};
use super::number;
use crate::access::act;
use crate::exchange::revision::Frozen;
use crate::language::Text;
use crate::spec::StyleId;
use crate::spec::change::Version;
use crate::store::{Acknowledged, RevisionCard};
use crate::web::App;
use crate::web::cached::cached;
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/changes.html")]
struct ChangesPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    style_number: String,
    style_name: String,
    number: u32,
    /// Why this revision was published.
    reason: String,
    /// Against which one; nothing when this is the first.
    since: Option<Since>,
    groups: Vec<ChangeGroup>,
    /// The others that it can be compared with, newest first.
    others: Vec<u32>,
}

struct Since {
    number: u32,
    /// It is the one that the reader's factory acknowledged last.
    acknowledged: bool,
}

#[derive(Deserialize)]
pub struct Against {
    since: Option<String>,
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    Query(against): Query<Against>,
    headers: HeaderMap,
) -> Answer {
    cached(&app, &may, &headers, changes(&app, &may, &n, &against)).await
}

async fn changes(
    app: &App,
    may: &MayOn<act::Read>,
    n: &str,
    against: &Against,
) -> Result<ChangesPage, Problem> {
    let n = number(n)?;
    let (cards, acknowledged) = tokio::try_join!(
        app.store.revision_cards(&may.permit),
        app.store.acknowledgements(&may.permit),
    )?;
    let acknowledged = last_acknowledged(may, &acknowledged, n);
    let since = match against.since.as_deref() {
        Some(typed) => Some(number(typed)?),
        None => acknowledged.or(n.checked_sub(1).filter(|previous| *previous > 0)),
    };
    let card = |n: u32| -> Result<&RevisionCard, Problem> {
        let card = cards.iter().find(|card| card.number == n);
        card.ok_or(Problem::NotFound)
    };
    let new = app.store.content(&may.permit, card(n)?).await?;
    let style = may.permit.style().clone();
    let groups = match since {
        None => Vec::new(),
        Some(since) => {
            let old = app.store.content(&may.permit, card(since)?).await?;
            let href = |item: &_| Some(format!("/styles/{style}/revisions/{n}/items/{item}"));
            change_groups(may.who.t, version(&old), version(&new), new.decimal, href)
        }
    };
    Ok(ChangesPage {
        t: may.who.t,
        frame: may.who.frame(),
        style_number: new.spec.header.number.clone(),
        style_name: new.spec.header.name.clone(),
        number: n,
        reason: new.reason.clone(),
        since: since.map(|number| Since {
            number,
            acknowledged: acknowledged == Some(number),
        }),
        groups,
        others: cards
            .iter()
            .map(|card| card.number)
            .filter(|other| *other != n && Some(*other) != since)
            .collect(),
        style,
    })
}

/// A revision with its frozen chart.
pub fn version(frozen: &Frozen) -> Version<'_> {
    Version {
        spec: &frozen.spec,
        chart: Some(&frozen.chart),
    }
}

/// The revision before `n` that the reader's factory acknowledged last.
pub fn last_acknowledged(
    may: &MayOn<act::Read>,
    acknowledged: &[Acknowledged],
    n: u32,
) -> Option<u32> {
    let org = may.permit.tenant()?;
    let own = acknowledged.iter().filter(|done| done.org == *org);
    let numbers = own.filter_map(|done| u32::try_from(done.number).ok());
    numbers.filter(|number| *number < n).max()
}
