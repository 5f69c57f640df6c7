//! Check and publish: what stands in the way, what changes for the factories, and why.

use std::collections::{BTreeMap, BTreeSet};

use askama::Template;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::IntoResponse;

use super::draft::changes::place;
use super::draft::progress::{Line, Looked, Progress};
use crate::access::{StylePermit, act};
use crate::exchange::refused::FindingKey;
use crate::exchange::{Refused, thread};
use crate::language::{Text, terms_of};
use crate::spec::change::{Version, changes, touched};
use crate::spec::check::Finding;
use crate::spec::{DecimalSign, Item, ItemId, Section, StyleId};
use crate::store::{Draft, Publish, Revision, StoreError, Versions};
use crate::web::App;
use crate::web::both::change_lines::{ChangeGroup, change_groups};
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};

#[derive(Template)]
#[template(path = "brand/publish.html")]
struct PublishPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    number: String,
    name: String,
    /// The number that the next revision gets.
    next: u32,
    progress: Progress,
    /// What keeps the draft from being published.
    mend: Vec<Line>,
    /// What is published only with a reason.
    warnings: Vec<Warning>,
    /// The newest revision's number; `None` before the first.
    since: Option<u32>,
    changes: Vec<ChangeGroup>,
    /// The must-fixes that both sides agreed on.
    must_fixes: Vec<MustFix>,
    /// The factories that will see it at once.
    factories: Vec<String>,
    /// The version of every section that this page was made from.
    versions: Versions,
    reason: String,
    decimal: DecimalSign,
    errors: Errors,
    /// Why what was sent was not published.
    refused: Option<NotYet>,
}

/// Warnings of one code on one item, which one reason answers.
struct Warning {
    lines: Vec<Line>,
    /// The name of the field of its reason.
    field: String,
    reason: String,
}

struct MustFix {
    href: String,
    letter: String,
    shape: &'static str,
    name: String,
    /// The draft changes what it is about.
    carried: bool,
}

struct NotYet {
    why: String,
    /// The sections that somebody saved in between.
    sections: Vec<Section>,
    ways_on: Vec<WayOn>,
}

pub async fn show(may: MayOn<act::Publish>, State(app): State<App>) -> Answer {
    let read = Everything::read(&app, &may.permit).await?;
    page(&read.page(&may.who, &may.permit, &Fields::default()))
}

pub async fn submit(may: MayOn<act::Publish>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let fields = &form.fields;
    let mut shown = Versions::new();
    for section in Section::ALL.iter().copied() {
        let version = fields.number(&version_field(section));
        shown.insert(section, version.ok_or(Problem::BadForm)?);
    }
    let read = Everything::read(&app, &may.permit).await?;
    let mut errors = Errors::default();
    let accepted: BTreeMap<FindingKey, String> = read
        .looked
        .findings
        .iter()
        .filter(|finding| !finding.is_error())
        .map(FindingKey::of)
        .map(|key| {
            let reason = fields.text(&reason_field(&key)).to_owned();
            (key, reason)
        })
        .collect();
    // Of a page that is out of date nothing is asked for: the reader must see the new one first.
    if shown == read.draft.versions {
        let missing = t.why(&Refused::ReasonMissing).to_string();
        for (key, reason) in &accepted {
            if reason.is_empty() {
                errors.add(reason_field(key), missing.clone());
            }
        }
        if fields.text("reason").is_empty() {
            errors.add("reason", missing);
        }
        if !errors.is_empty() {
            let page = read.page(&may.who, &may.permit, fields);
            return page_again(&PublishPage { errors, ..page });
        }
    }
    let publish = Publish {
        reason: fields.text("reason"),
        shown: &shown,
        accepted: &accepted,
        decimal: decimal(fields).unwrap_or_default(),
        terms: terms_of,
    };
    match app.store.publish(&may.permit, publish).await {
        Ok(_) => go(&format!("/styles/{}?said=published", may.permit.style())),
        Err(StoreError::Refused(why, style)) => {
            let refused = NotYet {
                why: t.why(&why).to_string(),
                ways_on: match *why {
                    // The way on is this page.
                    Refused::SectionMoved { .. } | Refused::ErrorsRemain { .. } => Vec::new(),
                    _ => ways_on(t, &why, &style),
                },
                sections: match *why {
                    Refused::SectionMoved { sections } => sections,
                    _ => Vec::new(),
                },
            };
            // Read again: it moved.
            let read = Everything::read(&app, &may.permit).await?;
            let again = PublishPage {
                refused: Some(refused),
                ..read.page(&may.who, &may.permit, fields)
            };
            Ok((StatusCode::CONFLICT, page(&again)?).into_response())
        }
        Err(other) => Err(other.into()),
    }
}

/// What the page is made from.
struct Everything {
    draft: Draft,
    looked: Looked,
    newest: Option<Revision>,
    agreed: Vec<thread::Thread>,
    factories: Vec<String>,
}

impl Everything {
    async fn read(app: &App, permit: &StylePermit<act::Publish>) -> Result<Self, Problem> {
        let read = permit.also::<act::Read>()?;
        let draft = app.store.draft(&permit.also()?).await?;
        let threads = app.store.threads(&read).await?;
        let shares = app.store.shares(&read).await?;
        let newest = app.store.newest(&read).await?;
        let book = app.store.book(permit).await?;
        Ok(Self {
            looked: Looked::through(&book, &draft.spec, newest.as_ref()),
            draft,
            newest,
            agreed: threads
                .into_iter()
                .map(|thread| thread.facts)
                .filter(thread::Thread::is_agreed_must_fix)
                .collect(),
            factories: shares
                .into_iter()
                .filter(|share| share.ended_at.is_none())
                .map(|share| share.name)
                .collect(),
        })
    }

    /// The page with what the form says, if one was sent.
    fn page(self, who: &Who, permit: &StylePermit<act::Publish>, sent: &Fields) -> PublishPage {
        let t = who.t;
        let style = permit.style();
        let spec = &self.draft.spec;
        let line = |finding: &Finding| Line::new(t, style, spec, finding);
        let (mend, warned): (Vec<_>, Vec<_>) = self
            .looked
            .findings
            .iter()
            .partition(|found| found.is_error());
        let newest = self.newest.as_ref();
        let mut warnings: Vec<Warning> = Vec::new();
        for finding in warned {
            let key = FindingKey::of(finding);
            let field = reason_field(&key);
            match warnings.iter_mut().find(|other| other.field == field) {
                Some(same) => same.lines.push(line(finding)),
                None => warnings.push(Warning {
                    lines: vec![line(finding)],
                    reason: reason_for(&key, sent, newest),
                    field,
                }),
            }
        }
        let decimal = decimal(sent)
            .or(newest.map(|newest| newest.frozen.decimal))
            .unwrap_or_default();
        let now = Version {
            spec,
            chart: self.looked.chart.as_ref(),
        };
        let href = |id: &ItemId| place(style, spec, id);
        let before = newest.map(|newest| newest.frozen.version());
        let touched = before.map_or_else(BTreeSet::new, |before| touched(&changes(before, now)));
        let must_fix = |thread: &thread::Thread| {
            let item = spec.item(&thread.item);
            MustFix {
                href: format!("/styles/{style}/threads/{}", thread.id),
                letter: item.map_or("", Item::letter).to_owned(),
                shape: item.map_or("point", Item::shape),
                name: item.map_or("", Item::name).to_owned(),
                carried: touched.contains(&thread.item),
            }
        };
        PublishPage {
            t,
            frame: who.frame(),
            style: style.clone(),
            number: spec.header.number.clone(),
            name: spec.header.name.clone(),
            next: newest.map_or(1, |newest| newest.number + 1),
            progress: self.looked.progress,
            mend: mend.into_iter().map(line).collect(),
            warnings,
            since: newest.map(|newest| newest.number),
            changes: before.map_or_else(Vec::new, |before| {
                change_groups(t, before, now, decimal, href)
            }),
            must_fixes: self.agreed.iter().map(must_fix).collect(),
            factories: self.factories,
            versions: self.draft.versions.clone(),
            reason: sent.text("reason").to_owned(),
            decimal,
            errors: Errors::default(),
            refused: None,
        }
    }
}

/// The reason that was typed for a warning, or the one that the newest revision gave for the same.
fn reason_for(key: &FindingKey, sent: &Fields, newest: Option<&Revision>) -> String {
    let field = reason_field(key);
    if sent.has(&field) {
        return sent.text(&field).to_owned();
    }
    let before = newest.and_then(|newest| {
        let mut accepted = newest.frozen.accepted.iter();
        accepted.find(|accepted| accepted.code == key.code && accepted.item == key.item)
    });
    before.map_or_else(String::new, |before| before.reason.clone())
}

fn reason_field(key: &FindingKey) -> String {
    let item = key.item.as_ref().map_or("", |item| item.as_str());
    format!("{}.{item}.reason", key.code)
}

fn version_field(section: Section) -> String {
    format!("{}.version", section.name())
}

fn decimal(fields: &Fields) -> Option<DecimalSign> {
    match fields.text("decimal") {
        "point" => Some(DecimalSign::Point),
        "comma" => Some(DecimalSign::Comma),
        _ => None,
    }
}
