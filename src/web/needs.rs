//! What needs me: the first page of both sides, longest waiting first.

use askama::Template;
use axum::extract::State;

use super::App;
use super::frame::Frame;
use super::may::May;
use super::page::{Answer, page};
use crate::access::{Act, Role, Side, act};
use crate::exchange::inspection;
use crate::exchange::round;
use crate::language::Text;
use crate::spec::StyleId;
use crate::store::{Need, Turn, What};

#[derive(Template)]
#[template(path = "needs.html")]
struct NeedsPage {
    t: Text,
    frame: Frame,
    side: Side,
    needs: Vec<Line>,
    /// The styles that a factory can read; empty for the brand, which has a page of its own.
    shared: Vec<crate::store::SharedStyle>,
}

/// One thing that waits.
pub struct Line {
    pub href: String,
    pub what: String,
    /// The style's number and name.
    pub style: String,
    pub of: StyleId,
    /// For the brand: with whom.
    org: String,
    since: String,
}

pub async fn show(may: May<act::Enter>, State(app): State<App>) -> Answer {
    let t = may.who.t;
    let role = may.permit.role();
    let needs = app.store.needs(&may.permit).await?;
    page(&NeedsPage {
        t,
        frame: may.who.frame().told_by(Some("/live".to_owned())),
        side: may.permit.side(),
        needs: lines(t, role, needs),
        shared: app.store.shared_styles(&may.permit).await?,
    })
}

/// What waits for somebody of this role, in their words.
pub fn lines(t: Text, role: Role, needs: Vec<Need>) -> Vec<Line> {
    let needs = needs.into_iter();
    let needs = needs.filter(|need| concerns(role, &need.what));
    needs.map(|need| line(t, role.side(), need)).collect()
}

/// A sample room neither acknowledges nor signs, an inspector inspects, a viewer does nothing.
fn concerns(role: Role, what: &What) -> bool {
    match what {
        What::Acknowledge { .. } => role == Role::Merchandiser,
        What::SignRevision { .. } => role.signs(),
        What::Thread {
            turn: Turn::Change, ..
        } => act::Write::ROLES.contains(&role),
        What::Thread { .. } => act::Answer::ROLES.contains(&role),
        What::Approvals { .. } | What::Seal { .. } => role.signs(),
        What::Round { state, .. } if state.is_decided() => role.signs(),
        What::Round { state, .. } => match state {
            round::State::Requested => role == Role::Merchandiser,
            _ => act::Measure::ROLES.contains(&role),
        },
        What::Inspection { state, .. } => match state {
            inspection::State::Concluded(_) => act::Decide::ROLES.contains(&role),
            _ => act::Inspect::ROLES.contains(&role),
        },
    }
}

fn line(t: Text, side: Side, need: Need) -> Line {
    let base = format!("/styles/{}", need.style);
    let (href, what) = match need.what {
        What::Acknowledge { revision } => (
            format!("{base}/revisions/{revision}"),
            t.say("need-acknowledge").with("revision", revision),
        ),
        What::SignRevision { revision, blocks } => {
            let said = t
                .say(match blocks.is_empty() {
                    true => "need-sign-revision",
                    false => "need-sign-revision-blocked",
                })
                .with("revision", revision);
            (format!("{base}/revisions/{revision}#sign"), said)
        }
        What::Thread { id, kind, turn, .. } => {
            let said = t
                .say(match turn {
                    Turn::Answer => "need-answer",
                    Turn::Read => "need-read-answer",
                    Turn::Change => "need-change",
                })
                .with("kind", t.name(&kind));
            (format!("{base}/threads/{id}"), said)
        }
        What::Round {
            id,
            number,
            kind,
            state,
            blocks,
        } => {
            let said = t
                .say(match state {
                    round::State::Requested => "need-round-start",
                    round::State::InWork => "need-round-measure",
                    round::State::Dispatched => "need-round-receive",
                    round::State::Received => "need-round-check",
                    round::State::Measured => "need-round-decide",
                    round::State::Decided(_) if !blocks.is_empty() => "need-round-sign-blocked",
                    round::State::Decided(_) => "need-round-sign",
                })
                .with("kind", t.name(&kind))
                .with("number", number);
            (format!("{base}/rounds/{id}"), said)
        }
        What::Seal {
            id,
            round,
            kind,
            blocks,
        } => {
            let said = t
                .say(match blocks.is_empty() {
                    true => "need-sign-seal",
                    false => "need-sign-seal-blocked",
                })
                .with("number", round)
                .with("kind", t.name(&kind));
            (format!("{base}/seals/{id}"), said)
        }
        What::Inspection { id, number, state } => {
            let said = t
                .say(match state {
                    inspection::State::Open => "need-inspection",
                    inspection::State::Concluded(_) => "need-inspection-decide",
                    inspection::State::Decided(_) => "need-inspection-again",
                })
                .with("number", number);
            (format!("{base}/inspections/{id}"), said)
        }
        What::Approvals { org, count } => {
            let said = t
                .say(match side {
                    Side::Brand => "need-approvals-decide",
                    Side::Factory => "need-approvals-submit",
                })
                .with("count", count);
            (format!("{base}/approvals?with={org}"), said)
        }
    };
    Line {
        href,
        of: need.style,
        what: what.to_string(),
        style: format!("{} {}", need.number, need.name),
        org: need.org_name,
        since: need.since.date().to_owned(),
    }
}
