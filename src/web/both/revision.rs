//! A published revision: the page that a factory makes a style from.

use std::sync::Arc;

use askama::Template;
use axum::extract::{Path, State};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::IntoResponse;

use super::changes::last_acknowledged;
use super::export::{Download, downloads};
use super::later::{Later, later};
use super::patch::Shape;
use super::sheet::{Around, Sheet};
use super::sign_box::{Facts, SignBox};
use super::{number, plain};
use crate::access::{Act, Side, act};
use crate::exchange::revision::Standing;
use crate::exchange::signature::{Agreement, Subject, SubjectKind, agreement};
use crate::language::{AcceptedWarning, Text};
use crate::spec::{Section, StyleId, Unit};
use crate::store::{RevisionCard, Shared};
use crate::web::cached::cached;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;
use crate::web::{App, shape};

#[derive(Template)]
#[template(path = "both/revision.html")]
struct RevisionPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    card: RevisionCard,
    number: String,
    name: String,
    by: String,
    reason: String,
    sheet: Arc<Sheet>,
    accepted: Vec<AcceptedWarning>,
    /// Every other revision, newest first.
    others: Vec<OtherRevision>,
    /// Translations that came after it.
    later: Vec<Later>,
    /// The reader's factory has the revision to acknowledge; whether the reader may do it.
    acknowledging: Option<bool>,
    /// The revision that the reader's factory acknowledged last, before this one.
    acknowledged: Option<u32>,
    deals: Vec<Deal>,
}

/// What the revision is with one factory, and where both sides sign it.
struct Deal {
    factory: String,
    agreement: Agreement,
    shape: &'static str,
    /// In UTC.
    acknowledged: Option<String>,
    signing: SignBox,
}

struct OtherRevision {
    number: u32,
    date: String,
    standing: Standing,
    /// What changed between the two, the later against the earlier.
    href: String,
}

impl RevisionPage {
    fn here(&self) -> String {
        format!("/styles/{}/revisions/{}", self.style, self.card.number)
    }

    fn coloured(&self) -> bool {
        !self.sheet.parts.is_empty() && !self.sheet.colourways.is_empty()
    }

    fn sewn(&self) -> bool {
        !self.sheet.callouts.is_empty() || !self.sheet.lines.is_empty()
    }

    fn labelled(&self) -> bool {
        let sheet = &self.sheet;
        !sheet.care.is_empty() || !sheet.care_note.is_empty() || !sheet.labels.is_empty()
    }

    /// The current revision, when this is not it and there is one.
    fn current(&self) -> Option<u32> {
        match &self.card.standing {
            Standing::Current => None,
            Standing::Superseded { current, .. } | Standing::Withdrawn { current, .. } => *current,
        }
    }

    /// The sheets that it is written out in, by section.
    fn downloads(&self) -> Vec<(Section, Vec<Download>)> {
        let sections = [Section::Points, Section::Materials].into_iter();
        sections
            .map(|section| (section, downloads(section)))
            .collect()
    }

    fn withdrawn(&self) -> Option<&str> {
        match &self.card.standing {
            Standing::Withdrawn { reason, .. } => Some(reason),
            _ => None,
        }
    }
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    headers: HeaderMap,
) -> Answer {
    cached(&app, &may, &headers, revision(&app, &may, &n)).await
}

/// The exact bytes that were hashed, and signed.
pub async fn document(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
) -> Answer {
    let n = number(&n)?;
    let revision = app.store.revision(&may.permit, n).await?;
    let bytes = app.store.revision_bytes(&may.permit, n).await?;
    let plain = plain(&revision.frozen.spec.header.number);
    let about = [
        (header::CONTENT_TYPE, "application/json".to_owned()),
        (
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{plain}-revision-{n}.json\""),
        ),
    ];
    Ok((StatusCode::OK, about, bytes).into_response())
}

async fn revision(app: &App, may: &MayOn<act::Read>, n: &str) -> Result<RevisionPage, Problem> {
    let n = number(n)?;
    let permit = &may.permit;
    let (cards, shares, acknowledged, threads, signatures, signed, files, translated) = tokio::try_join!(
        app.store.revision_cards(permit),
        app.store.shares(permit),
        app.store.acknowledgements(permit),
        app.store.thread_facts(permit),
        app.store.signatures(permit),
        app.store.signed(permit),
        app.store.published_files(permit),
        app.store.translations(permit),
    )?;
    let card_of = |n: u32| cards.iter().find(|card| card.number == n);
    let card = card_of(n).ok_or(Problem::NotFound)?;
    let frozen = app.store.content(permit, card).await?;
    let last = last_acknowledged(may, &acknowledged, n);
    let own = acknowledged
        .iter()
        .any(|done| permit.tenant() == Some(&done.org) && u32::try_from(done.number) == Ok(n));
    let before = match last.filter(|_| !own).and_then(card_of) {
        Some(card) => Some(app.store.content(permit, card).await?),
        None => None,
    };
    let t = may.who.t;
    let around = Around {
        acknowledged: before.as_deref(),
        threads: &threads,
        files: &files,
    };
    let made = app.sheets.of(t, &card.digest, &frozen, around);
    let deal = |share: &Shared| -> Option<Deal> {
        let given = |side: Side| {
            signatures.iter().any(|it| {
                it.subject == SubjectKind::Revision
                    && it.subject_id == card.id.as_str()
                    && it.org == share.org
                    && it.side == side
            })
        };
        let (by_factory, by_brand) = (given(Side::Factory), given(Side::Brand));
        // What was agreed under a share that ended stays to be seen.
        if share.ended_at.is_some() && !by_factory && !by_brand {
            return None;
        }
        let done = acknowledged
            .iter()
            .find(|done| done.org == share.org && u32::try_from(done.number) == Ok(n));
        let agreement = agreement(done.is_some(), by_factory, by_brand);
        let facts = Facts {
            subject: Subject::Revision {
                number: n,
                digest: &card.digest,
                standing: &card.standing,
                shared: share.ended_at.is_none(),
                acknowledged: done.is_some(),
            },
            subject_id: card.id.as_str(),
            digest: &card.digest,
            figures: &made.figures,
            spec: &frozen.spec,
            org: &share.org,
            org_name: &share.name,
            brand_name: &may.who.session.brand_name,
            action: format!("/styles/{}/revisions/{n}/sign", permit.style()),
            signatures: &signatures,
            threads: &threads,
            signed: &signed,
        };
        Some(Deal {
            factory: share.name.clone(),
            shape: shape::agreement(agreement),
            agreement,
            acknowledged: done.map(|done| done.at.minute()),
            signing: SignBox::of(&may.who, permit, facts),
        })
    };
    let deals = shares.iter().filter_map(deal).collect();
    let header = &frozen.spec.header;
    Ok(RevisionPage {
        t,
        frame: may.who.frame(),
        style: permit.style().clone(),
        number: header.number.clone(),
        name: header.name.clone(),
        by: name_or_erased(t, card.published_by.as_deref()),
        reason: frozen.reason.clone(),
        accepted: t.accepted(&frozen),
        later: later(t, &frozen, translated, None),
        others: others(permit.style(), &cards, n),
        acknowledging: (card.standing == Standing::Current
            && permit.side() == Side::Factory
            && !own)
            .then(|| act::Acknowledge::ROLES.contains(&permit.role())),
        acknowledged: last.filter(|_| !own),
        card: card.clone(),
        sheet: made.sheet.clone(),
        deals,
    })
}

fn others(style: &StyleId, cards: &[RevisionCard], n: u32) -> Vec<OtherRevision> {
    let others = cards.iter().filter(|card| card.number != n);
    let others = others.map(|card| OtherRevision {
        number: card.number,
        date: card.published_at.date().to_owned(),
        standing: card.standing.clone(),
        href: format!(
            "/styles/{style}/revisions/{}/changes?since={}",
            card.number.max(n),
            card.number.min(n)
        ),
    });
    others.collect()
}
