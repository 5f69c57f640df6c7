//! What waits for somebody: the first page of every day.

mod approvals;
mod inspections;
mod seals;

use std::collections::BTreeMap;

use super::act::number;
use super::revisions::newest_in;
use super::threads::FactsRow;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, Side, act};
use crate::exchange::signature::{SubjectKind, unsettled};
use crate::exchange::thread::Thread;
use crate::exchange::{Refused, inspection, round, thread};
use crate::spec::{InspectionId, ItemId, OrgId, RoundId, SealId, StyleId, ThreadId, Time};

/// One thing that waits for the holder's side.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Need {
    pub style: StyleId,
    pub number: String,
    pub name: String,
    /// The other side, or for the brand the factory.
    pub org_name: String,
    /// Since when it waits.
    pub since: Time,
    pub what: What,
}

/// What it is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum What {
    /// A current revision that this factory has not acknowledged.
    Acknowledge { revision: u32 },
    /// A current revision, acknowledged, that this side has not signed; when something has to be
    /// settled first, the side is told.
    SignRevision { revision: u32, blocks: Vec<Refused> },
    /// A thread in which the other side waits.
    Thread {
        id: ThreadId,
        item: ItemId,
        kind: thread::Kind,
        turn: Turn,
    },
    Round {
        id: RoundId,
        number: u32,
        kind: round::Kind,
        state: round::State,
        /// What has to be settled before the decision is signed.
        blocks: Vec<Refused>,
    },
    /// So many options to decide, or things to submit.
    Approvals { org: OrgId, count: usize },
    /// A seal that this side has not signed.
    Seal {
        id: SealId,
        round: u32,
        kind: round::Kind,
        /// What has to be settled first.
        blocks: Vec<Refused>,
    },
    /// A lot to inspect, to decide on, or to inspect again.
    Inspection {
        id: InspectionId,
        number: u32,
        state: inspection::State,
    },
}

/// What a thread waits for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// The other side asked.
    Answer,
    /// The holder's side asked, and was answered.
    Read,
    /// Both sides agreed: the brand carries it into the next revision.
    Change,
}

#[derive(sqlx::FromRow)]
struct RevisionRow {
    style: StyleId,
    org: OrgId,
    revision: i64,
    number: String,
    name: String,
    org_name: String,
    published_at: Time,
    shared_at: Time,
    acknowledged_at: Option<Time>,
}

#[derive(sqlx::FromRow)]
struct ThreadRow {
    style: StyleId,
    number: String,
    name: String,
    org_name: String,
    moved_at: Time,
    #[sqlx(flatten)]
    facts: FactsRow,
}

/// The threads that are not settled, by their style.
type Open = BTreeMap<StyleId, Vec<Thread>>;

#[derive(sqlx::FromRow)]
struct RoundRow {
    style: StyleId,
    number: String,
    name: String,
    org_name: String,
    id: RoundId,
    org: OrgId,
    round: i64,
    revision: i64,
    kind: round::Kind,
    state: round::State,
    moved_at: Time,
}

impl Store {
    /// What waits for the holder's side, longest waiting first.
    pub async fn needs(&self, permit: &Permit<act::Enter>) -> Result<Vec<Need>, StoreError> {
        let (mut needs, open) = self.thread_needs(permit).await?;
        needs.extend(self.revision_needs(permit, &open).await?);
        needs.extend(self.round_needs(permit, &open).await?);
        needs.extend(self.approval_needs(permit).await?);
        needs.extend(self.seal_needs(permit, &open).await?);
        needs.extend(self.inspection_needs(permit).await?);
        if permit.side() == Side::Factory {
            self.name_as_published(&mut needs).await?;
        }
        needs.sort_by(|a, b| a.since.cmp(&b.since));
        Ok(needs)
    }

    /// Gives each its style's number and name as the newest revision has them: those of a draft
    /// are not for a factory.
    async fn name_as_published(&self, needs: &mut [Need]) -> Result<(), StoreError> {
        let mut names = BTreeMap::new();
        for need in needs {
            if !names.contains_key(&need.style) {
                let newest = newest_in(self, &self.db, &need.style).await?;
                names.insert(need.style.clone(), newest);
            }
            let header = &names[&need.style].frozen.spec.header;
            need.number.clone_from(&header.number);
            need.name.clone_from(&header.name);
        }
        Ok(())
    }

    /// Current revisions to acknowledge and to sign. The newest revision is the current one unless
    /// it was withdrawn; a brand signs what a factory has acknowledged.
    async fn revision_needs(
        &self,
        permit: &Permit<act::Enter>,
        open: &Open,
    ) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<RevisionRow> = self
            .db
            .all(
                "SELECT r.style, s.org, r.number AS revision, t.number, t.name, o.name AS org_name, \
                 r.published_at, s.shared_at, a.at AS acknowledged_at \
                 FROM revision r JOIN style t ON t.id = r.style \
                 JOIN share s ON s.style = r.style AND s.ended_at IS NULL \
                 JOIN organisation o ON o.id = s.org \
                 LEFT JOIN acknowledgement a ON a.revision = r.id AND a.org = s.org \
                 WHERE (CAST($1 AS TEXT) IS NULL OR s.org = $1) \
                 AND r.number = (SELECT MAX(x.number) FROM revision x WHERE x.style = r.style) \
                 AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.revision = r.id) \
                 AND NOT EXISTS (SELECT 1 FROM signature g WHERE g.subject = 'revision' \
                     AND g.subject_id = r.id AND g.org = s.org AND g.side = $2)",
                values![permit.tenant(), permit.side()],
            )
            .await?;
        let factory = permit.side() == Side::Factory;
        let mut needs = Vec::new();
        for row in rows {
            let place = row.style.as_str();
            let revision = number("revision", "number", place, row.revision)?;
            let (what, since) = match row.acknowledged_at {
                None if factory => (
                    What::Acknowledge { revision },
                    row.published_at.max(row.shared_at),
                ),
                None => continue,
                Some(at) => {
                    let threads = open.get(&row.style).map_or(&[][..], Vec::as_slice);
                    let blocks = unsettled(threads, &row.org, SubjectKind::Revision, revision);
                    (What::SignRevision { revision, blocks }, at)
                }
            };
            needs.push(Need {
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since,
                what,
            });
        }
        Ok(needs)
    }

    /// Threads in which it is the side's turn, and all that are not settled: they keep from
    /// signing.
    async fn thread_needs(
        &self,
        permit: &Permit<act::Enter>,
    ) -> Result<(Vec<Need>, Open), StoreError> {
        let rows: Vec<ThreadRow> = self
            .db
            .all(
                "SELECT h.style, t.number, t.name, o.name AS org_name, h.moved_at, h.id, h.org, \
                 h.item, h.revision, h.kind, h.asked_by, p.org AS asked_org, h.asked_side, \
                 h.state, h.changed_in FROM thread h JOIN style t ON t.id = h.style \
                 JOIN organisation o ON o.id = h.org JOIN person p ON p.id = h.asked_by \
                 JOIN share s ON s.style = h.style AND s.org = h.org AND s.ended_at IS NULL \
                 WHERE (CAST($1 AS TEXT) IS NULL OR h.org = $1) \
                 AND h.state NOT IN ('closed', 'granted')",
                values![permit.tenant()],
            )
            .await?;
        let (mut needs, mut open) = (Vec::new(), Open::new());
        for row in rows {
            let thread = row.facts.facts()?;
            if let Some(turn) = turn(&thread, permit.side()) {
                needs.push(Need {
                    style: row.style.clone(),
                    number: row.number,
                    name: row.name,
                    org_name: row.org_name,
                    since: row.moved_at,
                    what: What::Thread {
                        id: thread.id.clone(),
                        item: thread.item.clone(),
                        kind: thread.kind,
                        turn,
                    },
                });
            }
            open.entry(row.style).or_default().push(thread);
        }
        Ok((needs, open))
    }

    /// A factory starts, measures and dispatches; the brand receives, measures and decides; both
    /// sign what was decided.
    async fn round_needs(
        &self,
        permit: &Permit<act::Enter>,
        open: &Open,
    ) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<RoundRow> = self
            .db
            .all(
                "SELECT r.style, t.number, t.name, o.name AS org_name, r.id, r.org, \
                 r.number AS round, v.number AS revision, r.kind, r.state, r.moved_at \
                 FROM round r JOIN style t ON t.id = r.style \
                 JOIN revision v ON v.id = r.revision JOIN organisation o ON o.id = r.org \
                 JOIN share s ON s.style = r.style AND s.org = r.org AND s.ended_at IS NULL \
                 WHERE (CAST($1 AS TEXT) IS NULL OR r.org = $1) \
                 AND ((r.state IN ('requested', 'in_work') AND $2 = 'factory') \
                     OR (r.state IN ('dispatched', 'received', 'measured') AND $2 = 'brand') \
                     OR (r.state IN ('approved', 'approved_with_changes', 'remake') \
                         AND NOT EXISTS (SELECT 1 FROM signature g WHERE g.subject = 'round' \
                             AND g.subject_id = r.id AND g.side = $2)))",
                values![permit.tenant(), permit.side()],
            )
            .await?;
        let need = |row: RoundRow| {
            let place = row.id.as_str();
            let revision = number("revision", "number", place, row.revision)?;
            let threads = open.get(&row.style).map_or(&[][..], Vec::as_slice);
            let blocks = match row.state.is_decided() {
                true => unsettled(threads, &row.org, SubjectKind::Round, revision),
                false => Vec::new(),
            };
            Ok(Need {
                what: What::Round {
                    number: number("round", "number", place, row.round)?,
                    id: row.id,
                    kind: row.kind,
                    state: row.state,
                    blocks,
                },
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since: row.moved_at,
            })
        };
        rows.into_iter().map(need).collect()
    }
}

/// What a thread waits for, when it waits for this side. A question or concession that was agreed
/// upon asks for no change.
fn turn(thread: &Thread, side: Side) -> Option<Turn> {
    if thread.waits_for() != Some(side) {
        return None;
    }
    let changes = matches!(
        thread.kind,
        thread::Kind::MustFix | thread::Kind::Suggestion
    );
    match thread.state {
        thread::State::Open => Some(Turn::Answer),
        thread::State::Answered => Some(Turn::Read),
        thread::State::Agreed if changes => Some(Turn::Change),
        _ => None,
    }
}
