//! What waits for somebody: the first page of every day.

use std::collections::BTreeMap;

use super::revisions::newest_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, Side, act};
use crate::exchange::{round, thread};
use crate::spec::{ItemId, RoundId, StyleId, ThreadId, Time};

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
    Acknowledge { revision: i64 },
    /// A current revision, acknowledged, that this side has not signed.
    SignRevision { revision: i64 },
    /// A thread in which the other side waits.
    Thread {
        id: ThreadId,
        item: ItemId,
        revision: i64,
        kind: thread::Kind,
        turn: Turn,
    },
    Round {
        id: RoundId,
        number: i64,
        kind: round::Kind,
        state: round::State,
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
    id: ThreadId,
    item: ItemId,
    revision: i64,
    kind: thread::Kind,
    state: String,
    moved_at: Time,
}

#[derive(sqlx::FromRow)]
struct RoundRow {
    style: StyleId,
    number: String,
    name: String,
    org_name: String,
    id: RoundId,
    round: i64,
    kind: round::Kind,
    state: round::State,
    moved_at: Time,
}

impl Store {
    /// What waits for the holder's side, longest waiting first.
    pub async fn needs(&self, permit: &Permit<act::Enter>) -> Result<Vec<Need>, StoreError> {
        let mut needs = self.revision_needs(permit).await?;
        needs.extend(self.thread_needs(permit).await?);
        needs.extend(self.round_needs(permit).await?);
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
    async fn revision_needs(&self, permit: &Permit<act::Enter>) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<RevisionRow> = self
            .db
            .all(
                "SELECT r.style, r.number AS revision, t.number, t.name, o.name AS org_name, \
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
        Ok(rows
            .into_iter()
            .filter_map(|row| {
                let (what, since) = match row.acknowledged_at {
                    None if factory => (
                        What::Acknowledge {
                            revision: row.revision,
                        },
                        row.published_at.max(row.shared_at),
                    ),
                    None => return None,
                    Some(at) => (
                        What::SignRevision {
                            revision: row.revision,
                        },
                        at,
                    ),
                };
                Some(Need {
                    style: row.style,
                    number: row.number,
                    name: row.name,
                    org_name: row.org_name,
                    since,
                    what,
                })
            })
            .collect())
    }

    async fn thread_needs(&self, permit: &Permit<act::Enter>) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<ThreadRow> = self
            .db
            .all(
                "SELECT h.style, t.number, t.name, o.name AS org_name, h.id, h.item, h.revision, \
                 h.kind, h.state, h.moved_at FROM thread h JOIN style t ON t.id = h.style \
                 JOIN organisation o ON o.id = h.org \
                 JOIN share s ON s.style = h.style AND s.org = h.org AND s.ended_at IS NULL \
                 WHERE (CAST($1 AS TEXT) IS NULL OR h.org = $1) \
                 AND ((h.state = 'open' AND h.asked_side <> $2) \
                     OR (h.state = 'answered' AND h.asked_side = $2) \
                     OR (h.state = 'agreed' AND h.kind IN ('must_fix', 'suggestion') \
                         AND $2 = 'brand'))",
                values![permit.tenant(), permit.side()],
            )
            .await?;
        Ok(rows
            .into_iter()
            .map(|row| Need {
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since: row.moved_at,
                what: What::Thread {
                    id: row.id,
                    item: row.item,
                    revision: row.revision,
                    kind: row.kind,
                    turn: match row.state.as_str() {
                        "open" => Turn::Answer,
                        "answered" => Turn::Read,
                        _ => Turn::Change,
                    },
                },
            })
            .collect())
    }

    /// A factory starts, measures and dispatches; the brand receives, measures and decides; both
    /// sign what was decided.
    async fn round_needs(&self, permit: &Permit<act::Enter>) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<RoundRow> = self
            .db
            .all(
                "SELECT r.style, t.number, t.name, o.name AS org_name, r.id, r.number AS round, \
                 r.kind, r.state, r.moved_at FROM round r JOIN style t ON t.id = r.style \
                 JOIN organisation o ON o.id = r.org \
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
        Ok(rows
            .into_iter()
            .map(|row| Need {
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since: row.moved_at,
                what: What::Round {
                    id: row.id,
                    number: row.round,
                    kind: row.kind,
                    state: row.state,
                },
            })
            .collect())
    }
}
