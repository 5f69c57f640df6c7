//! An act on a style: one transaction that locks the style, does something, and appends what was
//! done to the style's ledger.

use std::collections::BTreeMap;

use super::events::{Audience, Event};
use super::people::still_here;
use super::shares::shared_with;
use super::{Read, Store, StoreError, Tx, values};
use crate::access::{Act, StylePermit};
use crate::exchange::ledger::{self, Head, Salt};
use crate::spec::{Digest, OrgId, PersonId, StyleId, Time};

/// An act under way. Dropped, it never happened.
pub(super) struct StyleAct<'a> {
    pub tx: Tx,
    pub at: Time,
    pub style: StyleId,
    store: &'a Store,
    head: Head,
    person: Option<PersonId>,
    org: Option<OrgId>,
    events: Vec<Event>,
}

/// What an entry of the ledger says beside who and when.
#[derive(Default)]
pub(super) struct Said {
    /// The factory that may read it; `None`: all that the style is shared with.
    pub visible_to: Option<OrgId>,
    /// For the brand alone.
    pub internal: bool,
    pub ids: BTreeMap<String, String>,
    pub hashes: BTreeMap<String, Digest>,
}

impl Said {
    pub fn to(mut self, org: &OrgId) -> Self {
        self.visible_to = Some(org.clone());
        self
    }

    pub fn id(mut self, name: &str, value: impl ToString) -> Self {
        self.ids.insert(name.to_owned(), value.to_string());
        self
    }

    pub fn hash(mut self, name: &str, value: &Digest) -> Self {
        self.hashes.insert(name.to_owned(), value.clone());
        self
    }
}

impl Store {
    /// Begins an act: locks the style, and looks once more whether the permit still holds.
    ///
    /// Errors: `Missing` when it does not (the share or the person's access has ended).
    pub(super) async fn act<A: Act>(
        &self,
        permit: &StylePermit<A>,
    ) -> Result<StyleAct<'_>, StoreError> {
        let tx = self.db.begin().await?;
        let head = lock(&tx, permit.style()).await?;
        // Statements of their own: on PostgreSQL the one that waited for the lock still sees the
        // people and shares from before it waited.
        still_here(&tx, permit.person(), permit.role()).await?;
        if let Some(org) = permit.tenant() {
            shared_with(&tx, permit.style(), org).await?;
        }
        Ok(StyleAct {
            tx,
            at: self.world.now(),
            style: permit.style().clone(),
            store: self,
            head,
            person: Some(permit.person().clone()),
            org: Some(permit.org().clone()),
            events: Vec::new(),
        })
    }

    /// The first act on a style: the caller has inserted its row and no head yet.
    pub(super) async fn first_act(
        &self,
        tx: Tx,
        style: &StyleId,
        person: &PersonId,
        org: &OrgId,
    ) -> Result<StyleAct<'_>, StoreError> {
        let head = Head::start(style);
        tx.run(
            "INSERT INTO ledger_head (style, seq, hash) VALUES ($1, 0, $2)",
            values![style, head.hash],
        )
        .await?;
        Ok(StyleAct {
            tx,
            at: self.world.now(),
            style: style.clone(),
            store: self,
            head,
            person: Some(person.clone()),
            org: Some(org.clone()),
            events: Vec::new(),
        })
    }

    /// An act of the program itself, by the person who runs it.
    pub(super) async fn program_act(
        &self,
        tx: Tx,
        style: &StyleId,
    ) -> Result<StyleAct<'_>, StoreError> {
        let head = lock(&tx, style).await?;
        Ok(StyleAct {
            tx,
            at: self.world.now(),
            style: style.clone(),
            store: self,
            head,
            person: None,
            org: None,
            events: Vec::new(),
        })
    }
}

impl<'a> StyleAct<'a> {
    /// The chain's end so far: signatures carry it.
    pub fn head(&self) -> &Head {
        &self.head
    }

    /// Takes the transaction back, for an act that goes through several styles, with what to tell
    /// once it is committed.
    pub async fn close(mut self) -> Result<(Tx, Vec<Event>), StoreError> {
        self.keep_head().await?;
        Ok((self.tx, self.events))
    }

    /// Appends what was done to the ledger.
    pub async fn record(&mut self, act: ledger::Act, said: Said) -> Result<(), StoreError> {
        let internal = said.internal;
        let visible_to = said.visible_to.clone();
        let draft = ledger::Draft {
            at: self.at.clone(),
            act,
            person: self.person.clone(),
            org: self.org.clone(),
            visible_to: said.visible_to,
            internal: said.internal,
            ids: said.ids,
            hashes: said.hashes,
        };
        let appended = ledger::append(&self.head, draft)
            .map_err(|cause| StoreError::corrupt("ledger", "body", self.style.as_str(), cause))?;
        self.tx
            .run(
                "INSERT INTO ledger (style, seq, at, act, person, visible_to, internal, body, \
                 hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
                values![
                    self.style,
                    signed(appended.head.seq),
                    self.at,
                    act,
                    self.person,
                    visible_to,
                    internal,
                    appended.body,
                    appended.head.hash
                ],
            )
            .await?;
        self.head = appended.head;
        self.events.push(Event {
            style: self.style.clone(),
            audience: Audience::of(visible_to, internal),
        });
        Ok(())
    }

    /// Keeps a personal text apart, and gives its id and its salted hash.
    pub async fn keep_text(
        &self,
        kind: &str,
        content: &str,
    ) -> Result<(String, Digest), StoreError> {
        self.keep_text_of(self.person.as_ref(), kind, content).await
    }

    /// The same for a text that somebody else's erasing takes along.
    pub async fn keep_text_of(
        &self,
        person: Option<&PersonId>,
        kind: &str,
        content: &str,
    ) -> Result<(String, Digest), StoreError> {
        let id = self.store.world.id();
        let salt: Salt = self.store.world.salt();
        self.tx
            .run(
                "INSERT INTO private_text (id, person, kind, salt, content) \
                 VALUES ($1, $2, $3, $4, $5)",
                values![id, person, kind, salt.as_str(), content],
            )
            .await?;
        Ok((id, ledger::salted(&salt, content)))
    }

    /// Ends the act: it is on the disk and seen by all, and those who listen are told.
    pub async fn commit(mut self) -> Result<(), StoreError> {
        self.keep_head().await?;
        self.tx.commit().await?;
        for event in self.events {
            self.store.tell(event);
        }
        Ok(())
    }

    async fn keep_head(&mut self) -> Result<(), StoreError> {
        self.tx
            .run(
                "UPDATE ledger_head SET seq = $2, hash = $3 WHERE style = $1",
                values![self.style, signed(self.head.seq), self.head.hash],
            )
            .await?;
        Ok(())
    }
}

/// Locks a style until the transaction ends: its head as it is now. One text for both databases,
/// row-locked on PostgreSQL; whoever closes the act writes the head that the chain then has.
async fn lock(tx: &Tx, style: &StyleId) -> Result<Head, StoreError> {
    let (seq, hash): (i64, Digest) = tx
        .one(
            "UPDATE ledger_head SET seq = seq + 1 WHERE style = $1 RETURNING seq, hash",
            values![style],
        )
        .await?;
    let seq = number("ledger_head", "seq", style.as_str(), seq - 1)?;
    Ok(Head { seq, hash })
}

/// A count from a BIGINT column.
pub(super) fn number<T: TryFrom<i64>>(
    table: &str,
    column: &str,
    row: &str,
    value: i64,
) -> Result<T, StoreError> {
    T::try_from(value).map_err(|_| StoreError::corrupt(table, column, row, value))
}

/// A count for a BIGINT column: no chain grows past its half.
fn signed(seq: u64) -> i64 {
    i64::try_from(seq).unwrap_or(i64::MAX)
}
