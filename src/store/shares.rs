//! Which factory a style is shared with.

use super::act::Said;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::spec::{OrgId, Time};

/// A factory that a style is or was shared with.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Shared {
    pub org: OrgId,
    pub name: String,
    pub shared_at: Time,
    pub ended_at: Option<Time>,
}

impl Store {
    /// The factories that the style is shared with, ended shares included. A factory sees only
    /// itself.
    pub async fn shares(&self, permit: &StylePermit<act::Read>) -> Result<Vec<Shared>, StoreError> {
        self.db
            .all(
                "SELECT s.org, o.name, s.shared_at, s.ended_at FROM share s \
                 JOIN organisation o ON o.id = s.org \
                 WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2) \
                 ORDER BY o.name, s.org",
                values![permit.style(), permit.tenant()],
            )
            .await
    }

    /// Shares the style with a factory, again if it was before: it then sees every published
    /// revision.
    ///
    /// Errors: `Missing` when there is no such factory.
    pub async fn share(
        &self,
        permit: &StylePermit<act::ShareWith>,
        org: &OrgId,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let _: (String,) = act
            .tx
            .one(
                "SELECT id FROM organisation WHERE id = $1 AND kind = 'factory'",
                values![org],
            )
            .await?;
        let changed = act
            .tx
            .run(
                "INSERT INTO share (style, org, shared_at, shared_by) VALUES ($1, $2, $3, $4) \
                 ON CONFLICT (style, org) DO UPDATE SET shared_at = $3, shared_by = $4, \
                 ended_at = NULL WHERE share.ended_at IS NOT NULL",
                values![act.style, org, act.at, permit.person()],
            )
            .await?;
        if changed == 0 {
            return Ok(());
        }
        act.record(Act::Share, Said::default().to(org).id("org", org))
            .await?;
        act.commit().await
    }

    /// Ends a share: the factory sees nothing of the style any more.
    ///
    /// Errors: `Missing` when it is not shared with that factory.
    pub async fn end_share(
        &self,
        permit: &StylePermit<act::ShareWith>,
        org: &OrgId,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let ended = act
            .tx
            .run(
                "UPDATE share SET ended_at = $3 WHERE style = $1 AND org = $2 \
                 AND ended_at IS NULL",
                values![act.style, org, act.at],
            )
            .await?;
        if ended == 0 {
            return Err(StoreError::Missing);
        }
        act.record(Act::Unshare, Said::default().to(org).id("org", org))
            .await?;
        act.commit().await
    }
}
