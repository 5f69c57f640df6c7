//! Threads and their messages.

use std::collections::BTreeSet;

use super::act::{Said, StyleAct, number};
use super::messages::{Message, Says, messages_of, say_in};
use super::revisions::{facts_in, frozen_in};
use super::shares::shared_with;
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::thread::{self, Kind, State};
use crate::exchange::{Refused, revision};
use crate::spec::change::{changes, touched};
use crate::spec::{ItemId, OrgId, PersonId, RoundId, StyleId, ThreadId, Time};

/// A thread with everything that was said in it.
#[derive(Debug, Clone)]
pub struct ThreadView {
    pub facts: thread::Thread,
    pub org_name: String,
    /// `None`: erased.
    pub asked_by: Option<String>,
    /// The round whose decision made it.
    pub round: Option<RoundId>,
    pub made_at: Time,
    pub moved_at: Time,
    pub messages: Vec<Message>,
}

/// A thread to be raised.
#[derive(Debug, Clone)]
pub struct NewThread<'a> {
    pub item: &'a ItemId,
    /// The number of the revision that was read.
    pub revision: u32,
    pub kind: Kind,
    /// With which factory, when the brand asks; a factory asks for itself.
    pub org: Option<&'a OrgId>,
    pub says: Says<'a>,
}

/// What somebody does to a thread other than writing into it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ThreadMove {
    Agree,
    Close,
    Reopen,
    Grant,
    /// The current revision carries the change.
    MarkChanged,
    /// The change was seen on a sample of this round.
    Verify(RoundId),
}

/// What the rules ask about a thread, as it is kept.
#[derive(sqlx::FromRow)]
pub(super) struct FactsRow {
    id: ThreadId,
    org: OrgId,
    item: ItemId,
    revision: i64,
    kind: Kind,
    asked_by: PersonId,
    asked_org: OrgId,
    asked_side: Side,
    state: String,
    changed_in: Option<i64>,
}

#[derive(sqlx::FromRow)]
struct ThreadRow {
    #[sqlx(flatten)]
    facts: FactsRow,
    org_name: String,
    asked_name: Option<String>,
    round: Option<RoundId>,
    made_at: Time,
    moved_at: Time,
}

impl FactsRow {
    pub fn facts(self) -> Result<thread::Thread, StoreError> {
        let row = self.id.as_str();
        let changed_in = self
            .changed_in
            .map(|n| number("thread", "changed_in", row, n))
            .transpose()?;
        Ok(thread::Thread {
            kind: self.kind,
            state: State::read(&self.state, changed_in)
                .ok_or_else(|| StoreError::corrupt("thread", "state", row, &self.state))?,
            raised_on: number("thread", "revision", row, self.revision)?,
            id: self.id,
            factory: self.org,
            item: self.item,
            asker: self.asked_by,
            asker_org: self.asked_org,
            asker_side: self.asked_side,
        })
    }
}

/// The facts about a style's threads; with one factory, when `tenant` is given.
pub(super) async fn threads_in(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<Vec<thread::Thread>, StoreError> {
    let rows: Vec<FactsRow> = db
        .all(
            "SELECT t.id, t.org, t.item, t.revision, t.kind, t.asked_by, p.org AS asked_org, \
             t.asked_side, t.state, t.changed_in FROM thread t JOIN person p ON p.id = t.asked_by \
             WHERE t.style = $1 AND (CAST($2 AS TEXT) IS NULL OR t.org = $2) \
             ORDER BY t.made_at, t.id",
            values![style, tenant],
        )
        .await?;
    rows.into_iter().map(FactsRow::facts).collect()
}

impl Store {
    /// The facts about a style's threads, oldest first: a factory's own ones.
    pub async fn thread_facts(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<thread::Thread>, StoreError> {
        threads_in(&self.db, permit.style(), permit.tenant()).await
    }

    /// The threads of a style with their messages, oldest first: a factory's own ones.
    pub async fn threads(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<ThreadView>, StoreError> {
        let style = permit.style();
        let rows: Vec<ThreadRow> = self
            .db
            .all(
                "SELECT t.id, t.org, o.name AS org_name, t.item, t.revision, t.kind, t.asked_by, \
                 n.content AS asked_name, p.org AS asked_org, t.asked_side, t.round, t.made_at, \
                 t.state, t.changed_in, t.moved_at FROM thread t \
                 JOIN organisation o ON o.id = t.org JOIN person p ON p.id = t.asked_by \
                 LEFT JOIN private_text n ON n.person = p.id AND n.kind = 'name' \
                 WHERE t.style = $1 AND (CAST($2 AS TEXT) IS NULL OR t.org = $2) \
                 ORDER BY t.made_at, t.id",
                values![style, permit.tenant()],
            )
            .await?;
        if rows.is_empty() {
            return Ok(Vec::new());
        }
        let mut messages_of = messages_of(&self.db, style, permit.tenant()).await?;
        rows.into_iter()
            .map(|row| {
                Ok(ThreadView {
                    messages: messages_of.remove(&row.facts.id).unwrap_or_default(),
                    facts: row.facts.facts()?,
                    org_name: row.org_name,
                    asked_by: row.asked_name,
                    round: row.round,
                    made_at: row.made_at,
                    moved_at: row.moved_at,
                })
            })
            .collect()
    }

    /// Raises a thread on an item of a published revision.
    ///
    /// Errors: `Missing` when the revision, the item, a photograph or the share is not there;
    /// `Refused` by the rules.
    pub async fn ask(
        &self,
        permit: &StylePermit<act::Ask>,
        new: NewThread<'_>,
    ) -> Result<ThreadId, StoreError> {
        let style = permit.style();
        let org = permit.tenant().or(new.org).ok_or(StoreError::Missing)?;
        thread::raise(permit.side(), new.kind).map_err(StoreError::refused(style))?;
        let mut act = self.act(permit).await?;
        shared_with(&act.tx, style, org).await?;
        let frozen = frozen_in(self, &act.tx, style, new.revision).await?;
        if frozen.frozen.spec.item(new.item).is_none() {
            return Err(StoreError::Missing);
        }
        let thread = insert_thread(
            self,
            &act,
            InsertThread {
                org,
                item: new.item,
                revision: new.revision,
                kind: new.kind,
                side: permit.side(),
                person: permit.person(),
                round: None,
            },
        )
        .await?;
        let said = say_in(
            self,
            &mut act,
            permit.side(),
            permit.person(),
            &thread,
            org,
            new.says,
        )
        .await?
        .to(org)
        .id("thread", &thread)
        .id("item", new.item)
        .id("revision", new.revision)
        .id("kind", new.kind.name());
        act.record(Act::Ask, said).await?;
        act.commit().await?;
        Ok(thread)
    }

    /// Moves a thread on.
    pub async fn move_thread(
        &self,
        permit: &StylePermit<act::Answer>,
        id: &ThreadId,
        mv: &ThreadMove,
    ) -> Result<(), StoreError> {
        let style = permit.style();
        let mut act = self.act(permit).await?;
        let thread = thread_in(&act, permit.tenant(), id).await?;
        let touched;
        let step = match mv {
            ThreadMove::Agree => thread::Move::Agree,
            ThreadMove::Close => thread::Move::Close,
            ThreadMove::Reopen => thread::Move::Reopen,
            ThreadMove::Grant => thread::Move::Grant,
            ThreadMove::MarkChanged => {
                let revision = revision::current(&facts_in(&act.tx, style).await?)
                    .ok_or(Refused::NotCurrent { current: None })
                    .map_err(StoreError::refused(style))?;
                touched = touched_since(self, &act, thread.raised_on, revision).await?;
                thread::Move::MarkChanged {
                    revision,
                    touched: &touched,
                }
            }
            ThreadMove::Verify(round) => {
                let (revision, measured) = sample_of(&act, round, &thread).await?;
                thread::Move::Verify { revision, measured }
            }
        };
        let state = thread
            .step(permit.actor(), step)
            .map_err(StoreError::refused(style))?;
        set_state(&act, id, state).await?;
        let mut said = Said::default()
            .to(&thread.factory)
            .id("thread", id)
            .id("move", step.name())
            .id("state", state.name());
        if let Some(revision) = state.changed_in() {
            said = said.id("revision", revision);
        }
        act.record(Act::ThreadMove, said).await?;
        act.commit().await
    }
}

/// Every item that the change list from revision `from` to revision `to` names.
async fn touched_since(
    store: &Store,
    act: &StyleAct<'_>,
    from: u32,
    to: u32,
) -> Result<BTreeSet<ItemId>, StoreError> {
    let old = frozen_in(store, &act.tx, &act.style, from).await?;
    let new = frozen_in(store, &act.tx, &act.style, to).await?;
    let changes = changes(old.frozen.version(), new.frozen.version());
    Ok(touched(&changes))
}

/// The revision that a round's samples were made to, and whether the thread's item was measured.
async fn sample_of(
    act: &StyleAct<'_>,
    round: &RoundId,
    thread: &thread::Thread,
) -> Result<(u32, bool), StoreError> {
    let (revision, measured): (i64, i64) = act
        .tx
        .one(
            "SELECT v.number, (SELECT COUNT(*) FROM measurement m \
                 WHERE m.round = r.id AND m.point = $4) \
             FROM round r JOIN revision v ON v.id = r.revision \
             WHERE r.id = $1 AND r.style = $2 AND r.org = $3",
            values![round, act.style, thread.factory, thread.item],
        )
        .await?;
    let revision = number("revision", "number", round.as_str(), revision)?;
    Ok((revision, measured > 0))
}

pub(super) async fn thread_in(
    act: &StyleAct<'_>,
    tenant: Option<&OrgId>,
    id: &ThreadId,
) -> Result<thread::Thread, StoreError> {
    threads_in(&act.tx, &act.style, tenant)
        .await?
        .into_iter()
        .find(|thread| thread.id == *id)
        .ok_or(StoreError::Missing)
}

pub(super) struct InsertThread<'a> {
    pub org: &'a OrgId,
    pub item: &'a ItemId,
    pub revision: u32,
    pub kind: Kind,
    pub side: Side,
    pub person: &'a PersonId,
    pub round: Option<&'a RoundId>,
}

pub(super) async fn insert_thread(
    store: &Store,
    act: &StyleAct<'_>,
    new: InsertThread<'_>,
) -> Result<ThreadId, StoreError> {
    let id = ThreadId::new(store.world.id());
    act.tx
        .run(
            "INSERT INTO thread (id, style, org, item, revision, kind, asked_by, asked_side, \
             round, made_at, state, moved_at) \
             VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, 'open', $10)",
            values![
                id,
                act.style,
                new.org,
                new.item,
                new.revision,
                new.kind,
                new.person,
                new.side,
                new.round,
                act.at
            ],
        )
        .await?;
    Ok(id)
}

pub(super) async fn set_state(
    act: &StyleAct<'_>,
    id: &ThreadId,
    state: State,
) -> Result<(), StoreError> {
    act.tx
        .run(
            "UPDATE thread SET state = $2, changed_in = COALESCE($3, changed_in), moved_at = $4 \
             WHERE id = $1 AND style = $5",
            values![id, state.name(), state.changed_in(), act.at, act.style],
        )
        .await?;
    Ok(())
}
