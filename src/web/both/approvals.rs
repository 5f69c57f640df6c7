//! Approvals: everything that a revision needs approved, the options that a factory submitted for
//! it, and what the brand decided.

mod card;
mod form;
mod limit;

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Path, Query, State};

use self::card::{Around, Card, card};
use self::form::{Decided, Submitted};
use self::limit::LimitForm;
use super::item::MOST_PHOTOS;
use super::patch::Shape;
use super::threads::photos;
use crate::access::{Side, StylePermit, act, grant};
use crate::exchange::approval::{Kind, Verdict, needed, usual_limit};
use crate::exchange::revision::Standing;
use crate::language::Text;
use crate::spec::document::{Illuminant, Observer, Word};
use crate::spec::{DecimalSign, OrgId, StyleId, SubmissionId};
use crate::store::{NewSubmission, StoreError, StyleName};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};

#[derive(Template)]
#[template(path = "both/approvals.html")]
struct ApprovalsPage {
    t: Text,
    frame: Frame,
    side: Side,
    style: StyleId,
    name: StyleName,
    /// The revision that all of it is for: the current one, else the newest.
    revision: Option<u32>,
    is_current: bool,
    /// The factories to choose from, each with its address: for the brand only.
    factories: Vec<(String, String, bool)>,
    /// The one that is shown; none while the style is shared with nobody.
    org: Option<OrgId>,
    cards: Vec<Card>,
    limit: String,
    limit_is_set: bool,
    /// For an owner.
    limit_form: Option<LimitForm>,
    most_photos: usize,
    /// Why what was sent was not taken.
    refused: Option<(String, Vec<WayOn>)>,
}

/// A form of the page that was not taken: it comes back as it was sent.
#[derive(Default)]
struct Returned {
    submitted: Option<Submitted>,
    decided: Option<(SubmissionId, Decided)>,
    limit: Option<LimitForm>,
    refused: Option<(String, Vec<WayOn>)>,
}

fn address(style: &StyleId, org: Option<&OrgId>) -> String {
    match org {
        Some(org) => format!("/styles/{style}/approvals?with={org}"),
        None => format!("/styles/{style}/approvals"),
    }
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Query(asked): Query<BTreeMap<String, String>>,
) -> Answer {
    let with = asked.get("with").map(OrgId::new);
    let page_ = load(&app, &may.permit, &may.who, with, Returned::default()).await?;
    page(&page_)
}

/// Submits an option. Photographs are drawn last: nobody waits for them in vain.
pub async fn submit(may: MayOn<act::Submit>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let Form { fields, uploads } = form;
    let mut sent = Submitted::read(t, &fields)?;
    if uploads.is_empty() {
        let why = crate::exchange::Refused::PhotoMissing;
        sent.errors.add("photos", t.why(&why));
    }
    let mut returned = Returned::default();
    if sent.errors.is_empty() {
        let photos = photos(&app, &may.permit, t, uploads, &mut sent.errors).await?;
        let new = NewSubmission {
            revision: sent.revision,
            anchor: &sent.anchor,
            note: &sent.note,
            language: &may.who.session.language,
            reading: sent.lab.as_ref(),
            instrument: &sent.instrument,
            photos: &photos,
        };
        if sent.errors.is_empty() {
            match app.store.submit(&may.permit, new).await {
                Ok(id) => {
                    let here = address(may.permit.style(), Some(may.permit.org()));
                    return go(&format!("{here}&said=sent#option-{id}"));
                }
                Err(StoreError::Refused(why, style)) => {
                    returned.refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style)));
                }
                Err(other) => return Err(other.into()),
            }
        }
    }
    returned.submitted = Some(sent);
    let read = may.permit.also()?;
    page_again(&load(&app, &read, &may.who, None, returned).await?)
}

/// Decides an option.
pub async fn decide(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((_, submission)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let id = SubmissionId::new(submission);
    let read = may.permit.also()?;
    let all = app.store.submissions(&read).await?;
    let submission = all.into_iter().find(|it| it.id == id);
    let org = submission.ok_or(Problem::NotFound)?.org;
    let sent = Decided::read(t, &form.fields);
    let mut returned = Returned::default();
    if let (Some(verdict), true) = (sent.verdict, sent.errors.is_empty()) {
        let judged = app
            .store
            .judge_submission(&may.permit, &id, verdict, &sent.reason);
        match judged.await {
            Ok(()) => {
                let here = address(may.permit.style(), Some(&org));
                return go(&format!("{here}&said=decided#option-{id}"));
            }
            Err(StoreError::Refused(why, style)) => {
                returned.refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style)));
            }
            Err(other) => return Err(other.into()),
        }
    }
    returned.decided = Some((id, sent));
    page_again(&load(&app, &read, &may.who, Some(org), returned).await?)
}

/// Sets the limit of colour differences, for all styles.
pub async fn set_limit(may: MayOn<act::Govern>, State(app): State<App>, form: Form) -> Answer {
    let sent = LimitForm::read(may.who.t, &form.fields);
    let with = Some(form.fields.text("with")).filter(|org| !org.is_empty());
    let with = with.map(OrgId::new);
    if let Some(limit) = sent.limit() {
        let govern = grant::<act::Govern>(may.permit.actor())?;
        app.store.set_colour_limit(&govern, &limit).await?;
        let style = may.permit.style();
        return go(&match with {
            Some(org) => format!("{}&said=saved", address(style, Some(&org))),
            None => format!("{}?said=saved", address(style, None)),
        });
    }
    let returned = Returned {
        limit: Some(sent),
        ..Returned::default()
    };
    page_again(&load(&app, &may.permit.also()?, &may.who, with, returned).await?)
}

/// The page of one factory: the brand chooses it, a factory sees itself.
async fn load(
    app: &App,
    reader: &StylePermit<act::Read>,
    who: &Who,
    with: Option<OrgId>,
    mut returned: Returned,
) -> Result<ApprovalsPage, Problem> {
    let (t, store, style) = (who.t, &app.store, reader.style());
    let revisions = store.revisions(reader).await?;
    let current = revisions.iter().find(|it| it.standing == Standing::Current);
    let shown = current.or(revisions.first());
    let shares = store.shares(reader).await?;
    let shared = shares.iter().filter(|it| it.ended_at.is_none());
    let shared: Vec<_> = shared.collect();
    let chosen = with.and_then(|org| shares.iter().find(|it| it.org == org));
    let chosen = match reader.side() {
        Side::Factory => shared.first().copied(),
        Side::Brand => chosen.or(shared.first().copied()),
    };
    let set = store.colour_limit(reader).await?;
    let limit = set.unwrap_or_else(usual_limit);
    let sign = shown.map_or(DecimalSign::Point, |it| it.frozen.decimal);
    let mut cards = Vec::new();
    if let (Some(shown), Some(chosen)) = (shown, chosen) {
        let mut submitted = store.submissions(reader).await?;
        submitted.retain(|it| it.org == chosen.org);
        let files = store.published_files(reader).await?;
        let around = Around {
            t,
            revision: shown,
            submitted: &submitted,
            files: &files,
            factory: &chosen.name,
            limit,
            submits: current.is_some() && reader.also::<act::Submit>().is_ok(),
            decides: reader.also::<act::Decide>().is_ok(),
        };
        let things = needed(&shown.frozen.spec).into_iter();
        cards = (1..)
            .zip(things)
            .map(|(place, thing)| card(&around, place, &thing, &mut returned))
            .collect();
    }
    let limit_form = match reader.also::<act::Govern>() {
        Ok(_) => Some(
            returned
                .limit
                .take()
                .unwrap_or_else(|| LimitForm::of(&limit)),
        ),
        Err(_) => None,
    };
    let factories = match reader.side() {
        Side::Factory => Vec::new(),
        Side::Brand => shared
            .iter()
            .map(|it| {
                let here = chosen.is_some_and(|chosen| chosen.org == it.org);
                (address(style, Some(&it.org)), it.name.clone(), here)
            })
            .collect(),
    };
    Ok(ApprovalsPage {
        t,
        frame: who.frame(),
        side: reader.side(),
        style: style.clone(),
        name: store.style_name(reader).await?,
        revision: shown.map(|it| it.number),
        is_current: current.is_some(),
        factories,
        org: chosen.map(|it| it.org.clone()),
        cards,
        limit: limit::said(t, &limit, sign),
        limit_is_set: set.is_some(),
        limit_form,
        most_photos: MOST_PHOTOS,
        refused: returned.refused,
    })
}
