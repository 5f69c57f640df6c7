//! One style: what is published, who agreed to what, what is open, and whose move is next. The
//! brand sees its draft as well.

use askama::Template;
use axum::extract::{Path, State};

use super::inspection;
use super::seal::standing;
use super::threads::said::words;
use crate::access::{Side, StylePermit, act, grant};
use crate::exchange::Refused;
use crate::exchange::revision::Standing;
use crate::exchange::round;
use crate::exchange::signature::{Agreement, SubjectKind, agreement};
use crate::language::Text;
use crate::spec::{Item, OrgId, StyleId};
use crate::store::{
    Acknowledged, Organisation, Revision, Round, Shared, Signature, StyleCopy, StyleName,
    ThreadView,
};
use crate::web::brand::draft::progress::{Looked, Progress};
use crate::web::form::{Errors, Form};
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::{App, shape};

#[derive(Template)]
#[template(path = "both/style.html")]
struct StylePage {
    t: Text,
    frame: Frame,
    style: StyleId,
    name: StyleName,
    side: Side,
    copied_from: Option<StyleCopy>,
    /// Others may begin with it.
    is_start: bool,
    /// How far the draft is; nothing for a factory.
    draft: Option<Progress>,
    /// The draft says something else than the newest revision.
    draft_differs: bool,
    /// Newest first.
    revisions: Vec<RevisionLine>,
    rounds: Vec<RoundLine>,
    seals: Vec<RoundLine>,
    inspections: Vec<RoundLine>,
    /// Threads that are not settled.
    threads: Vec<ThreadLine>,
    /// The factories that it is or was shared with; empty for a factory.
    shares: Vec<Shared>,
    /// The factories that it may be shared with; empty for whoever may not share.
    others: Vec<Organisation>,
    may: MayDo,
    errors: Errors,
}

/// The acts that the reader may start from here.
struct MayDo {
    write: bool,
    publish: bool,
    withdraw: bool,
    share: bool,
    decide: bool,
}

struct RevisionLine {
    number: u32,
    date: String,
    by: String,
    reason: String,
    standing: Standing,
    shape: &'static str,
    fingerprint: String,
    /// With each factory that it concerns.
    agreements: Vec<AgreementLine>,
}

struct AgreementLine {
    factory: String,
    agreement: Agreement,
    shape: &'static str,
    /// Who did what, when, oldest first.
    acts: Vec<String>,
}

/// A round, the seal of one, or an inspection against that.
struct RoundLine {
    href: String,
    title: String,
    factory: String,
    revision: u32,
    state: String,
    shape: &'static str,
    next: String,
}

struct ThreadLine {
    href: String,
    letter: String,
    letter_shape: &'static str,
    item: String,
    kind: String,
    kind_shape: &'static str,
    words: String,
    factory: String,
    state: String,
    shape: &'static str,
    next: String,
}

pub async fn show(may: MayOn<act::Read>, State(app): State<App>) -> Answer {
    page(&style(&may.permit, &may.who, &app, Errors::default()).await?)
}

/// Shares the style with a factory.
pub async fn share(may: MayOn<act::ShareWith>, State(app): State<App>, form: Form) -> Answer {
    let factory = OrgId::new(form.fields.text("factory"));
    app.store.share(&may.permit, &factory).await?;
    go(&format!("/styles/{}?said=shared", may.permit.style()))
}

/// Ends a share.
pub async fn unshare(may: MayOn<act::ShareWith>, State(app): State<App>, form: Form) -> Answer {
    let factory = OrgId::new(form.fields.text("factory"));
    app.store.end_share(&may.permit, &factory).await?;
    go(&format!("/styles/{}?said=unshared", may.permit.style()))
}

/// Withdraws a revision: every page of it says stop from then on.
pub async fn withdraw(
    may: MayOn<act::Withdraw>,
    State(app): State<App>,
    Path((_, number)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let number = number.parse().map_err(|_| Problem::NotFound)?;
    let reason = form.fields.text("reason");
    if reason.is_empty() {
        let mut errors = Errors::default();
        let sentence = may.who.t.why(&Refused::ReasonMissing);
        errors.add("withdraw-reason", sentence.to_string());
        let read = may.permit.also::<act::Read>()?;
        return page_again(&style(&read, &may.who, &app, errors).await?);
    }
    app.store.withdraw(&may.permit, number, reason).await?;
    go(&format!("/styles/{}?said=withdrawn", may.permit.style()))
}

/// The page, also for acts that are made on it and were not taken: `errors` stand beside their
/// fields.
async fn style(
    permit: &StylePermit<act::Read>,
    who: &Who,
    app: &App,
    errors: Errors,
) -> Result<StylePage, Problem> {
    let t = who.t;
    let store = &app.store;
    let revisions = store.revisions(permit).await?;
    let (draft, draft_differs, copied_from, is_start) = match permit.also::<act::Review>() {
        Ok(review) => {
            let draft = store.draft(&review).await?;
            let newest = revisions.first();
            let differs = newest.is_none_or(|newest| newest.frozen.spec != draft.spec);
            let from = store.copied_from(&review).await?;
            let start = store.is_start(&review).await?;
            let book = store.book(&review).await?;
            let looked = Looked::through(&book, &draft.spec, newest);
            (Some(looked.progress), differs, from, start)
        }
        Err(_) => (None, false, None, false),
    };
    let shares = store.shares(permit).await?;
    let others = match permit.also::<act::ShareWith>() {
        Ok(_) => {
            let browse = grant::<act::Browse>(permit.actor())?;
            let mut factories = store.factories(&browse).await?;
            factories.retain(|factory| !is_shared(&shares, &factory.id));
            factories
        }
        Err(_) => Vec::new(),
    };
    let agreed = Agreed {
        shares: &shares,
        acknowledged: store.acknowledgements(permit).await?,
        signatures: store.signatures(permit).await?,
    };
    let next = |side: Option<Side>, factory: &str| match side {
        None => String::new(),
        Some(side) if side == permit.side() => t.say("style-next-you").to_string(),
        Some(Side::Brand) => t.say("style-next-brand").to_string(),
        Some(Side::Factory) => factory.to_owned(),
    };
    let threads = store.threads(permit).await?;
    let rounds = store.rounds(permit).await?;
    let seals = store.seals(permit).await?.into_iter().rev();
    let seals = seals.map(|seal| {
        let id = seal.id.as_str();
        let given = |side: Side| {
            agreed
                .signatures
                .iter()
                .any(|it| it.subject_id == id && it.side == side)
        };
        // Whoever reads it is told of their own part first.
        let sides = [permit.side(), permit.side().other()];
        let waits = sides.into_iter().find(|side| !given(*side));
        let next = next(waits, &seal.org_name);
        let (state, shape) = standing(t, given);
        RoundLine {
            href: format!("/styles/{}/seals/{}", permit.style(), seal.id),
            title: titled(t, seal.kind, seal.number),
            factory: seal.org_name.clone(),
            revision: seal.revision,
            state,
            shape,
            next,
        }
    });
    let seals = seals.collect();
    let inspections = store.inspections(permit).await?;
    let inspections = inspections.iter().rev().map(|it| RoundLine {
        href: inspection::address(permit.style(), &it.id),
        title: t
            .say("inspection-title")
            .with("number", it.number)
            .to_string(),
        factory: it.org_name.clone(),
        revision: it.revision,
        state: t.name(&it.state()).to_string(),
        shape: shape::inspection(it.state()),
        next: next(it.waits_for(), &it.org_name),
    });
    let inspections = inspections.collect();
    Ok(StylePage {
        t,
        frame: who.frame(),
        style: permit.style().clone(),
        name: store.style_name(permit).await?,
        side: permit.side(),
        draft,
        draft_differs,
        copied_from,
        is_start,
        threads: threads
            .into_iter()
            .filter(|thread| thread.facts.waits_for().is_some())
            .map(|thread| {
                let next = next(thread.facts.waits_for(), &thread.org_name);
                thread_line(t, permit.style(), &revisions, thread, next)
            })
            .collect(),
        seals,
        inspections,
        rounds: rounds
            .into_iter()
            .rev()
            .map(|round| {
                let next = next(round.state.waits_for(), &round.org_name);
                round_line(t, permit.style(), round, next)
            })
            .collect(),
        revisions: revisions
            .iter()
            .map(|revision| revision_line(t, revision, &agreed))
            .collect(),
        shares: match permit.side() {
            Side::Brand => shares,
            Side::Factory => Vec::new(),
        },
        others,
        may: MayDo {
            write: permit.also::<act::Write>().is_ok(),
            publish: permit.also::<act::Publish>().is_ok(),
            withdraw: permit.also::<act::Withdraw>().is_ok(),
            share: permit.also::<act::ShareWith>().is_ok(),
            decide: permit.also::<act::Decide>().is_ok(),
        },
        errors,
    })
}

/// What both sides have said to the revisions.
struct Agreed<'a> {
    shares: &'a [Shared],
    acknowledged: Vec<Acknowledged>,
    signatures: Vec<Signature>,
}

fn is_shared(shares: &[Shared], org: &OrgId) -> bool {
    shares
        .iter()
        .any(|share| share.org == *org && share.ended_at.is_none())
}

fn revision_line(t: Text, revision: &Revision, agreed: &Agreed<'_>) -> RevisionLine {
    let current = revision.standing == Standing::Current;
    let agreements = agreed.shares.iter().filter_map(|share| {
        let acknowledged = agreed
            .acknowledged
            .iter()
            .find(|ack| ack.org == share.org && ack.number == i64::from(revision.number));
        let signed = |side: Side| {
            agreed.signatures.iter().find(|signature| {
                signature.subject == SubjectKind::Revision
                    && signature.subject_id == revision.id.as_str()
                    && signature.org == share.org
                    && signature.side == side
            })
        };
        let (factory, brand) = (signed(Side::Factory), signed(Side::Brand));
        let agreement = agreement(acknowledged.is_some(), factory.is_some(), brand.is_some());
        // To a factory that said nothing to it, only the current one matters.
        let matters = current && share.ended_at.is_none();
        if agreement == Agreement::Shared && !matters {
            return None;
        }
        let mut acts = Vec::new();
        if let Some(ack) = acknowledged {
            let said = t
                .say("style-acknowledged-by")
                .with("name", name_or_erased(t, ack.name.as_deref()))
                .with("date", ack.at.date());
            acts.push((&ack.at, said.to_string()));
        }
        for signature in [factory, brand].into_iter().flatten() {
            let said = t
                .say(match signature.side {
                    Side::Factory => "style-signed-factory",
                    Side::Brand => "style-signed-brand",
                })
                .with("name", name_or_erased(t, signature.name.as_deref()))
                .with("date", signature.at.date());
            acts.push((&signature.at, said.to_string()));
        }
        acts.sort_by_key(|(at, _)| *at);
        Some(AgreementLine {
            factory: share.name.clone(),
            agreement,
            shape: shape::agreement(agreement),
            acts: acts.into_iter().map(|(_, said)| said).collect(),
        })
    });
    RevisionLine {
        number: revision.number,
        date: revision.published_at.date().to_owned(),
        by: name_or_erased(t, revision.published_by.as_deref()),
        reason: revision.frozen.reason.clone(),
        shape: shape::standing(&revision.standing),
        standing: revision.standing.clone(),
        fingerprint: revision.digest.fingerprint(),
        agreements: agreements.collect(),
    }
}

fn round_line(t: Text, style: &StyleId, round: Round, next: String) -> RoundLine {
    RoundLine {
        href: format!("/styles/{style}/rounds/{}", round.id),
        title: titled(t, round.kind, round.number),
        factory: round.org_name,
        revision: round.revision,
        state: t.name(&round.state).to_string(),
        shape: shape::round(round.state),
        next,
    }
}

fn titled(t: Text, kind: round::Kind, number: u32) -> String {
    t.say("style-round")
        .with("kind", t.name(&kind))
        .with("number", number)
        .to_string()
}

/// How much of a message stands in the list.
const WORDS: usize = 90;

fn thread_line(
    t: Text,
    style: &StyleId,
    revisions: &[Revision],
    thread: ThreadView,
    next: String,
) -> ThreadLine {
    let facts = &thread.facts;
    let raised_on = revisions
        .iter()
        .find(|revision| revision.number == facts.raised_on);
    let item = raised_on.and_then(|revision| revision.frozen.spec.item(&facts.item));
    let first = thread.messages.first();
    let words = first.and_then(|message| words(t, revisions, message).0);
    let words = words.unwrap_or_default();
    let short: String = words.chars().take(WORDS).collect();
    ThreadLine {
        href: format!("/styles/{style}/threads/{}", facts.id),
        letter: item.map_or("", |item| item.letter()).to_owned(),
        letter_shape: item.map_or("point", Item::shape),
        item: item.map_or("", |item| item.name()).to_owned(),
        kind: t.name(&facts.kind).to_string(),
        kind_shape: shape::kind(facts.kind),
        words: if short.len() < words.len() {
            format!("{short}…")
        } else {
            short
        },
        state: t.name(&facts.state).to_string(),
        shape: shape::thread(facts.state),
        factory: thread.org_name,
        next,
    }
}
