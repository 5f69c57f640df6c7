//! A sample round: what it is, what is next and for whom, what was measured, what was decided.

mod deciding;
mod history;
mod judgement;
mod next;
mod photographs;
mod picture;
mod send;
mod table;
mod unfinished;
mod washes;

use std::collections::BTreeSet;

use askama::Template;
use axum::extract::{Path, State};

use crate::access::{Side, StylePermit, act};
use crate::exchange::measuring::Wash;
use crate::exchange::revision::Standing;
use crate::exchange::round::{Kind, Materials, Move, Outcome, State as Stage, asks_about};
use crate::exchange::signature::{Subject, SubjectKind, unsettled};
use crate::exchange::thread::{self, Thread};
use crate::language::{Message, Text};
use crate::sample::deviation::Summary;
use crate::spec::{RoundId, StyleId, ThreadId};
use crate::store::{Round, Sign, ThreadView};
use crate::web::form::Form;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page};
use crate::web::problem::Problem;
use crate::web::{App, shape};

pub use deciding::Sent;
use deciding::{DecideForm, critical};
use history::{HistoryLine, history};
pub use judgement::Judged;
use judgement::{Judgement, judge};
use next::{Next, Way, can_measure, next};
use photographs::Photographs;
pub use photographs::photograph;
pub use send::SendForm;
use table::Table;
use unfinished::Unfinished;
use washes::Washes;

use super::sign_box::{Facts, SignBox, sign};

#[derive(Template)]
#[template(path = "both/round.html")]
pub struct RoundPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    /// The round's own address.
    base: String,
    round: Round,
    /// Of the word of its state.
    shape: &'static str,
    next: Next,
    /// What is asked before the move that was sent.
    unfinished: Option<Unfinished>,
    /// A newer revision, about which somebody has to say whether the round goes on.
    newer: Option<u32>,
    /// The reader is who says it, and who asks for other rounds.
    decides: bool,
    measures: bool,
    /// The state of the pieces beside the one that the spec's numbers hold for.
    other_state: Wash,
    table: Table,
    /// `None` while nothing was measured.
    judgement: Option<Judgement>,
    /// `None` while no piece was measured in both states.
    washes: Option<Washes>,
    photographs: Option<Photographs>,
    summary: Summary,
    critical: Vec<(String, String, usize)>,
    /// For who may send the pieces now.
    send: Option<SendForm>,
    form: Option<DecideForm>,
    must_fixes: Vec<MustFix>,
    signing: Option<SignBox>,
    /// To the seal that there is, or where one is made.
    seal: Option<(String, String)>,
    history: Vec<HistoryLine>,
}

/// A must-fix that the decision made.
struct MustFix {
    id: ThreadId,
    letter: String,
    name: String,
    text: String,
    state: thread::State,
    shape: &'static str,
}

impl RoundPage {
    /// The page that asks before this move, when there is something to ask and the form has not
    /// answered it.
    pub fn asking(mut self, mv: Move, form: &Form) -> Option<Self> {
        let answered = form.fields.text("anyway") == "yes";
        let unfinished = Unfinished::before(mv, &self.round, &self.next, &form.fields);
        self.unfinished = unfinished.filter(|_| !answered);
        self.unfinished.is_some().then_some(self)
    }

    /// The page with the form as it was sent, when something is wrong with it and the pieces could
    /// be sent.
    pub fn sending(mut self, sent: SendForm) -> Option<Self> {
        let wrong = self.send.is_some() && !sent.errors.is_empty();
        self.send = Some(sent);
        wrong.then_some(self)
    }

    fn header(&self) -> &crate::spec::document::Header {
        &self.round.frozen.spec.header
    }

    fn decided_by(&self) -> String {
        let decision = self.round.decision.as_ref();
        name_or_erased(self.t, decision.and_then(|it| it.person.as_deref()))
    }

    fn decided_because(&self) -> String {
        let decision = self.round.decision.as_ref();
        decision
            .and_then(|it| it.reason.clone())
            .unwrap_or_else(|| self.t.say("rounds-reason-erased").to_string())
    }

    fn outcome_help(&self, outcome: &Outcome) -> Message {
        self.t.say(match outcome {
            Outcome::Approved => "rounds-approved-help",
            Outcome::ApprovedWithChanges => "rounds-approved-with-changes-help",
            Outcome::Remake => "rounds-remake-help",
            Outcome::Cancelled => "rounds-cancelled-help",
        })
    }
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
) -> Answer {
    page(&load(&may.who, &may.permit, &app, &RoundId::new(round), None).await?)
}

/// Signs the decision for the reader's side.
pub async fn submit_signature(
    may: MayOn<act::Sign>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = RoundId::new(round);
    sign(&may, &app, Sign::Round(&id), "", &form).await?;
    go(&format!(
        "{}?said=signed#sign",
        address(may.permit.style(), &id)
    ))
}

/// The address of a round's page.
pub fn address(style: &StyleId, round: &RoundId) -> String {
    format!("/styles/{style}/rounds/{round}")
}

/// The page for this reader; with the decision's form as it was sent, when it was refused.
pub async fn load(
    who: &Who,
    reader: &StylePermit<act::Read>,
    app: &App,
    id: &RoundId,
    sent: Option<Sent>,
) -> Result<RoundPage, Problem> {
    let t = who.t;
    let store = &app.store;
    let mut before = store.rounds(reader).await?;
    let here = before.iter().position(|round| round.id == *id);
    let round = before.remove(here.ok_or(Problem::NotFound)?);
    let judgement = judge(app, t, &round, &before).await?;
    let newest = store.newest(reader).await?;
    let current = newest.filter(|newest| newest.standing == Standing::Current);
    let current = current.map(|current| current.number);
    let mut signatures = store.signatures(reader).await?;
    signatures.retain(|it| it.subject == SubjectKind::Round && it.subject_id == id.as_str());
    let ids: BTreeSet<&str> = signatures.iter().map(|it| it.id.as_str()).collect();
    let made = store.must_fixes_of(reader, id).await?;
    let base = address(reader.style(), id);
    let summary = round.summary();
    let signed = |side: Side| signatures.iter().any(|it| it.side == side);
    let threads = store.threads(reader).await?;
    let facts: Vec<Thread> = threads.iter().map(|it| it.facts.clone()).collect();
    let blocked = !unsettled(&facts, &round.org, SubjectKind::Round, round.revision).is_empty();
    let signing = match round.record(made.clone()) {
        Some(record) if round.state != Stage::Decided(Outcome::Cancelled) => {
            let digest = record.digest().map_err(|cause| Problem::fault(&cause))?;
            Some(SignBox::of(
                who,
                reader,
                Facts {
                    subject: Subject::Round {
                        revision: round.revision,
                        digest: &digest,
                        state: round.state,
                    },
                    subject_id: id.as_str(),
                    digest: &digest,
                    // The record has every value as it was typed.
                    figures: "",
                    spec: &round.frozen.spec,
                    org: &round.org,
                    org_name: &round.org_name,
                    brand_name: &who.session.brand_name,
                    action: format!("{base}/sign"),
                    signatures: &signatures,
                    threads: &facts,
                    signed: &store.signed(reader).await?,
                },
            ))
        }
        _ => None,
    };
    let due = round
        .pieces
        .iter()
        .map(|it| round.due(&it.id).count())
        .sum();
    let photos = store.piece_photos(reader, id).await?;
    let next = next(t, &round, reader, &base, due, signed, blocked);
    let seals = store.seals(reader).await?;
    let sealed = seals.iter().find(|seal| seal.round == *id);
    let before_bulk = matches!(round.kind, Kind::PreProduction | Kind::TopOfProduction);
    let approved = round.state == Stage::Decided(Outcome::Approved);
    let seal = match sealed {
        Some(seal) => Some((
            format!("/styles/{}/seals/{}", reader.style(), seal.id),
            t.say("seal-open").to_string(),
        )),
        None if before_bulk && approved => {
            Some((format!("{base}/seal"), t.say("seal-do").to_string()))
        }
        None => None,
    };
    Ok(RoundPage {
        t,
        frame: who.frame(),
        style: reader.style().clone(),
        send: SendForm::of(&next),
        next,
        unfinished: None,
        newer: asks_about(round.state, round.revision, current, round.continued_at),
        decides: reader.also::<act::Decide>().is_ok(),
        measures: can_measure(&round, reader),
        other_state: round.other_state(),
        table: Table::of(&round, judgement.as_ref().map(|it| &it.watched)),
        judgement,
        washes: Washes::of(t, &round),
        photographs: Photographs::of(who, reader, &round, &base, photos),
        critical: critical(&round, &summary),
        form: DecideForm::of(t, &round, reader, sent),
        must_fixes: must_fixes(&round, threads, &made),
        history: history(t, &round, store.ledger(reader).await?, &ids),
        signing,
        seal,
        summary,
        base,
        shape: shape::round(round.state),
        round,
    })
}

fn must_fixes(round: &Round, threads: Vec<ThreadView>, made: &[ThreadId]) -> Vec<MustFix> {
    let made = threads.into_iter().filter(|it| made.contains(&it.facts.id));
    made.map(|thread| {
        let item = round.frozen.spec.item(&thread.facts.item);
        let first = thread.messages.into_iter().next();
        MustFix {
            letter: item.map_or("", |it| it.letter()).to_owned(),
            name: item.map_or("", |it| it.name()).to_owned(),
            text: first.and_then(|it| it.text).unwrap_or_default(),
            state: thread.facts.state,
            shape: shape::thread(thread.facts.state),
            id: thread.facts.id,
        }
    })
    .collect()
}
