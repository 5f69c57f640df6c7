//! Published revisions: frozen bytes, and what has become of them.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::act::{Said, number};
use super::corrections::book_in;
use super::drafts::{Versions, read_draft};
use super::threads::{set_state, threads_in};
use super::translations::own_in;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::refused::FindingKey;
use crate::exchange::revision::{self, Frozen, Previous, Publishing, Standing};
use crate::exchange::thread;
use crate::exchange::translation::{ByLanguage, Translations};
use crate::spec::units::DecimalSign;
use crate::spec::{Book, Digest, RevisionId, Spec, StyleId, Time};

/// A published revision.
#[derive(Debug, Clone)]
pub struct Revision {
    pub id: RevisionId,
    pub number: u32,
    /// Of the exact bytes.
    pub digest: Digest,
    pub published_at: Time,
    /// `None`: erased.
    pub published_by: Option<String>,
    pub standing: Standing,
    pub frozen: Arc<Frozen>,
}

/// A published revision in a list: all but its content. Only the store makes one.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RevisionCard {
    style: StyleId,
    pub id: RevisionId,
    pub number: u32,
    pub digest: Digest,
    pub published_at: Time,
    /// `None`: erased.
    pub published_by: Option<String>,
    pub standing: Standing,
}

/// What the publishing form says.
#[derive(Debug, Clone)]
pub struct Publish<'a> {
    pub reason: &'a str,
    /// The version of every section that the form showed.
    pub shown: &'a Versions,
    /// The reasons typed for warnings.
    pub accepted: &'a BTreeMap<FindingKey, String>,
    pub decimal: DecimalSign,
    /// The program's words beside the names of a spec, by the tables in force.
    pub terms: fn(&Spec, &Book) -> ByLanguage,
}

#[derive(sqlx::FromRow)]
struct CardRow {
    id: RevisionId,
    number: i64,
    digest: Digest,
    published_at: Time,
    published_by: Option<String>,
    withdrawn: Option<String>,
}

#[derive(sqlx::FromRow)]
struct BytesRow {
    bytes: Vec<u8>,
    digest: Digest,
}

/// What the program read of the revision with its bytes.
pub(super) struct Kept {
    pub id: RevisionId,
    pub digest: Digest,
    pub frozen: Arc<Frozen>,
}

/// Every revision of a style with whether it was withdrawn: what its standing follows from.
pub(super) async fn facts_in(
    db: &impl Read,
    style: &StyleId,
) -> Result<Vec<revision::Fact>, StoreError> {
    let rows: Vec<(i64, Option<String>)> = db
        .all(
            "SELECT r.number, w.reason FROM revision r \
             LEFT JOIN withdrawal w ON w.revision = r.id WHERE r.style = $1 ORDER BY r.number",
            values![style],
        )
        .await?;
    rows.into_iter()
        .map(|(n, withdrawn)| {
            Ok(revision::Fact {
                number: number("revision", "number", style.as_str(), n)?,
                withdrawn,
            })
        })
        .collect()
}

/// One revision's content.
///
/// Errors: `Missing` when there is none of that number; `Corrupt` when its bytes are not those
/// that were hashed.
pub(super) async fn frozen_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    n: u32,
) -> Result<Kept, StoreError> {
    let (id, digest): (RevisionId, Digest) = db
        .one(
            "SELECT id, digest FROM revision WHERE style = $1 AND number = $2",
            values![style, n],
        )
        .await?;
    let frozen = store.thaw(db, &id, &digest).await?;
    Ok(Kept { id, digest, frozen })
}

/// The content of the revision with the highest number.
///
/// Errors: `Missing` when none was published.
pub(super) async fn newest_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
) -> Result<Kept, StoreError> {
    let (id, digest): (RevisionId, Digest) = db
        .one(
            "SELECT id, digest FROM revision WHERE style = $1 ORDER BY number DESC LIMIT 1",
            values![style],
        )
        .await?;
    let frozen = store.thaw(db, &id, &digest).await?;
    Ok(Kept { id, digest, frozen })
}

impl Store {
    /// Reads a revision's bytes, or remembers them: they never change.
    pub(super) async fn thaw(
        &self,
        db: &impl Read,
        id: &RevisionId,
        digest: &Digest,
    ) -> Result<Arc<Frozen>, StoreError> {
        if let Some(frozen) = self.frozen.get(digest) {
            return Ok(frozen);
        }
        let row: BytesRow = db
            .one(
                "SELECT bytes, digest FROM revision WHERE id = $1",
                values![id],
            )
            .await?;
        if Digest::of(&row.bytes) != row.digest {
            return Err(StoreError::corrupt(
                "revision",
                "bytes",
                id.as_str(),
                "they are not the bytes that were hashed",
            ));
        }
        let frozen = Frozen::read(&row.bytes)
            .map_err(|cause| StoreError::corrupt("revision", "bytes", id.as_str(), cause))?;
        let frozen = Arc::new(frozen);
        self.frozen.insert(digest.clone(), Arc::clone(&frozen));
        Ok(frozen)
    }

    /// Every revision of a style without its content, newest first.
    pub async fn revision_cards(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<RevisionCard>, StoreError> {
        let rows: Vec<CardRow> = self
            .db
            .all(
                "SELECT r.id, r.number, r.digest, r.published_at, n.content AS published_by, \
                 w.reason AS withdrawn FROM revision r \
                 LEFT JOIN private_text n ON n.person = r.published_by AND n.kind = 'name' \
                 LEFT JOIN withdrawal w ON w.revision = r.id \
                 WHERE r.style = $1 ORDER BY r.number DESC",
                values![permit.style()],
            )
            .await?;
        let facts = rows
            .iter()
            .map(|row| {
                Ok(revision::Fact {
                    number: number("revision", "number", row.id.as_str(), row.number)?,
                    withdrawn: row.withdrawn.clone(),
                })
            })
            .collect::<Result<Vec<_>, StoreError>>()?;
        let cards = rows
            .into_iter()
            .zip(&facts)
            .map(|(row, fact)| RevisionCard {
                style: permit.style().clone(),
                id: row.id,
                number: fact.number,
                digest: row.digest,
                published_at: row.published_at,
                published_by: row.published_by,
                standing: revision::standing(fact.number, &facts)
                    .expect("the number was taken from these facts"),
            });
        Ok(cards.collect())
    }

    /// Every revision of a style, newest first.
    pub async fn revisions(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Revision>, StoreError> {
        let cards = self.revision_cards(permit).await?;
        let mut revisions = Vec::with_capacity(cards.len());
        for card in cards {
            revisions.push(self.opened(permit, card).await?);
        }
        Ok(revisions)
    }

    /// The content of a revision that a card of the same style names.
    pub async fn content(
        &self,
        permit: &StylePermit<act::Read>,
        card: &RevisionCard,
    ) -> Result<Arc<Frozen>, StoreError> {
        if card.style != *permit.style() {
            return Err(StoreError::Missing);
        }
        self.thaw(&self.db, &card.id, &card.digest).await
    }

    async fn opened(
        &self,
        permit: &StylePermit<act::Read>,
        card: RevisionCard,
    ) -> Result<Revision, StoreError> {
        Ok(Revision {
            frozen: self.content(permit, &card).await?,
            id: card.id,
            number: card.number,
            digest: card.digest,
            published_at: card.published_at,
            published_by: card.published_by,
            standing: card.standing,
        })
    }

    /// One revision. Errors: `Missing` when there is none of that number.
    pub async fn revision(
        &self,
        permit: &StylePermit<act::Read>,
        n: u32,
    ) -> Result<Revision, StoreError> {
        let cards = self.revision_cards(permit).await?;
        let card = cards.into_iter().find(|card| card.number == n);
        self.opened(permit, card.ok_or(StoreError::Missing)?).await
    }

    /// The revision with the highest number, whatever has become of it.
    pub async fn newest(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Option<Revision>, StoreError> {
        match self.revision_cards(permit).await?.into_iter().next() {
            Some(card) => Ok(Some(self.opened(permit, card).await?)),
            None => Ok(None),
        }
    }

    /// The exact bytes of a revision, as they were hashed.
    pub async fn revision_bytes(
        &self,
        permit: &StylePermit<act::Read>,
        n: u32,
    ) -> Result<Vec<u8>, StoreError> {
        let (bytes,): (Vec<u8>,) = self
            .db
            .one(
                "SELECT bytes FROM revision WHERE style = $1 AND number = $2",
                values![permit.style(), n],
            )
            .await?;
        Ok(bytes)
    }

    /// The version of every section that revision `n` was made of.
    pub async fn revision_sections(
        &self,
        permit: &StylePermit<act::Review>,
        n: u32,
    ) -> Result<Versions, StoreError> {
        let rows: Vec<(crate::spec::Section, i64)> = self
            .db
            .all(
                "SELECT s.section, s.version FROM revision_section s \
                 JOIN revision r ON r.id = s.revision WHERE r.style = $1 AND r.number = $2",
                values![permit.style(), n],
            )
            .await?;
        Ok(rows.into_iter().collect())
    }

    /// Publishes the draft as the next revision. What is published is what the form showed: a
    /// section that was saved since is refused.
    pub async fn publish(
        &self,
        permit: &StylePermit<act::Publish>,
        form: Publish<'_>,
    ) -> Result<u32, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let draft = read_draft(&act.tx, &style).await?;
        let previous = match facts_in(&act.tx, &style).await?.last() {
            Some(fact) => Some((
                fact.number,
                frozen_in(self, &act.tx, &style, fact.number).await?,
            )),
            None => None,
        };
        let threads = threads_in(&act.tx, &style, None).await?;
        let book = book_in(&act.tx).await?;
        let own = own_in(&act.tx, &style).await?;
        let terms = (form.terms)(&draft.spec, &book);
        let published = revision::publish(&Publishing {
            style: &style,
            at: &act.at,
            reason: form.reason,
            draft: &draft.spec,
            decimal: form.decimal,
            shown: form.shown,
            read: &draft.versions,
            accepted: form.accepted,
            previous: previous.as_ref().map(|(n, old)| Previous {
                number: *n,
                digest: &old.digest,
                spec: &old.frozen.spec,
                chart: &old.frozen.chart,
                decimal: old.frozen.decimal,
            }),
            threads: &threads,
            book: &book,
            translations: Translations::new(&draft.spec, &own, terms),
        })
        .map_err(StoreError::refused(&style))?;
        let (bytes, digest) = published.frozen.seal().map_err(|cause| {
            StoreError::corrupt("draft_section", "content", style.as_str(), cause)
        })?;
        let id = RevisionId::new(self.world.id());
        let n = published.frozen.number;
        act.tx
            .run(
                "INSERT INTO revision (id, style, number, format, bytes, digest, published_at, \
                 published_by) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                values![
                    id,
                    style,
                    n,
                    published.frozen.format,
                    bytes,
                    digest,
                    act.at,
                    permit.person()
                ],
            )
            .await?;
        let sections = draft.versions.iter();
        let sections = sections.map(|(section, version)| (section.name(), *version));
        for (section, version) in &draft.versions {
            act.tx
                .run(
                    "INSERT INTO revision_section (revision, section, version) \
                     VALUES ($1, $2, $3)",
                    values![id, section, version],
                )
                .await?;
        }
        for file in &published.frozen.files {
            act.tx
                .run(
                    "INSERT INTO file_use (style, file, revision, org) VALUES ($1, $2, $3, '')",
                    values![style, file, n],
                )
                .await?;
        }
        for thread in &published.carries {
            set_state(&act, thread, thread::State::Changed { revision: n }).await?;
        }
        let said = Said::default()
            .id("revision", n)
            .id("id", &id)
            .hash("document", &digest)
            .hash("sections", &made_of(sections));
        act.record(Act::Publish, said).await?;
        for thread in &published.carries {
            let org = threads.iter().find(|facts| facts.id == *thread);
            let org = org.map(|facts| facts.factory.clone());
            let said = Said {
                visible_to: org,
                ..Said::default()
            };
            let said = said
                .id("thread", thread)
                .id("move", "mark_changed")
                .id("state", "changed")
                .id("revision", n);
            act.record(Act::ThreadMove, said).await?;
        }
        act.commit().await?;
        Ok(n)
    }

    /// Withdraws a revision, with a reason that every page of it then shows.
    pub async fn withdraw(
        &self,
        permit: &StylePermit<act::Withdraw>,
        n: u32,
        reason: &str,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let facts = facts_in(&act.tx, &style).await?;
        let standing: Standing = revision::standing(n, &facts).ok_or(StoreError::Missing)?;
        revision::withdraw(permit.actor(), &standing, reason)
            .map_err(StoreError::refused(&style))?;
        let kept = frozen_in(self, &act.tx, &style, n).await?;
        act.tx
            .run(
                "INSERT INTO withdrawal (revision, at, person, reason) VALUES ($1, $2, $3, $4)",
                values![kept.id, act.at, permit.person(), reason.trim()],
            )
            .await?;
        let said = Said::default()
            .id("revision", n)
            .hash("reason", &Digest::of(reason.trim().as_bytes()));
        act.record(Act::Withdraw, said).await?;
        act.commit().await
    }
}

/// The digest of a line `NAME VERSION` for each section, in the order of the names: what the ledger
/// says a revision was made of.
pub(super) fn made_of<'a>(sections: impl IntoIterator<Item = (&'a str, i64)>) -> Digest {
    let mut lines: Vec<String> = sections
        .into_iter()
        .map(|(section, version)| format!("{section} {version}\n"))
        .collect();
    lines.sort();
    Digest::of(lines.join("").as_bytes())
}
