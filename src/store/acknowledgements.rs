//! Which revisions a factory has read and works to.

use super::act::Said;
use super::revisions::{facts_in, frozen_in};
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::revision;
use crate::spec::{OrgId, PersonId, Time};

/// A factory has acknowledged a revision.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Acknowledged {
    pub number: i64,
    pub org: OrgId,
    pub at: Time,
    pub person: PersonId,
    /// `None`: erased.
    pub name: Option<String>,
}

impl Store {
    /// The factory has seen this revision and works to no other.
    pub async fn acknowledge(
        &self,
        permit: &StylePermit<act::Acknowledge>,
        n: u32,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let facts = facts_in(&act.tx, &style).await?;
        let standing = revision::standing(n, &facts).ok_or(StoreError::Missing)?;
        let kept = frozen_in(self, &act.tx, &style, n).await?;
        let before: Option<(String,)> = act
            .tx
            .maybe(
                "SELECT at FROM acknowledgement WHERE revision = $1 AND org = $2",
                values![kept.id, permit.org()],
            )
            .await?;
        // That the share lasts is the permit's, looked at again by the act.
        revision::acknowledge(permit.actor(), &standing, true, before.is_some())
            .map_err(StoreError::refused(&style))?;
        act.tx
            .run(
                "INSERT INTO acknowledgement (revision, org, at, person) VALUES ($1, $2, $3, $4)",
                values![kept.id, permit.org(), act.at, permit.person()],
            )
            .await?;
        let said = Said::default()
            .to(permit.org())
            .id("revision", n)
            .hash("document", &kept.digest);
        act.record(Act::Acknowledge, said).await?;
        act.commit().await
    }

    /// Which revisions each factory has acknowledged, and when: a factory sees its own.
    pub async fn acknowledgements(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Acknowledged>, StoreError> {
        self.db
            .all(
                "SELECT r.number, a.org, a.at, a.person, n.content AS name \
                 FROM acknowledgement a JOIN revision r ON r.id = a.revision \
                 LEFT JOIN private_text n ON n.person = a.person AND n.kind = 'name' \
                 WHERE r.style = $1 AND (CAST($2 AS TEXT) IS NULL OR a.org = $2) \
                 ORDER BY r.number",
                values![permit.style(), permit.tenant()],
            )
            .await
    }
}
