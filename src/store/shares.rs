//! Which factory a style is shared with.

use super::act::Said;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::spec::{Digest, OrgId, RevisionId, StyleId, Time};

/// A factory that a style is or was shared with.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Shared {
    pub org: OrgId,
    pub name: String,
    pub shared_at: Time,
    pub ended_at: Option<Time>,
}

/// A style that a factory can read, as its newest revision calls it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SharedStyle {
    pub id: StyleId,
    pub number: String,
    pub name: String,
    /// The newest published revision's number.
    pub revision: i64,
}

impl Store {
    /// The published styles that are shared with the holder's factory, newest revision first;
    /// none for the brand.
    pub async fn shared_styles(
        &self,
        permit: &Permit<act::Enter>,
    ) -> Result<Vec<SharedStyle>, StoreError> {
        let rows: Vec<(StyleId, RevisionId, i64, Digest)> = self
            .db
            .all(
                "SELECT r.style, r.id, r.number, r.digest FROM revision r \
                 JOIN share s ON s.style = r.style AND s.org = $1 AND s.ended_at IS NULL \
                 WHERE r.number = (SELECT MAX(x.number) FROM revision x WHERE x.style = r.style) \
                 ORDER BY r.published_at DESC, r.style",
                values![permit.org()],
            )
            .await?;
        let mut styles = Vec::with_capacity(rows.len());
        for (id, revision_id, revision, digest) in rows {
            let frozen = self.thaw(&self.db, &revision_id, &digest).await?;
            styles.push(SharedStyle {
                id,
                number: frozen.spec.header.number.clone(),
                name: frozen.spec.header.name.clone(),
                revision,
            });
        }
        Ok(styles)
    }

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

/// The style must be shared with this factory now.
///
/// Errors: `Missing` when it is not.
pub(super) async fn shared_with(
    db: &impl Read,
    style: &StyleId,
    org: &OrgId,
) -> Result<(), StoreError> {
    let _: (String,) = db
        .one(
            "SELECT style FROM share WHERE style = $1 AND org = $2 AND ended_at IS NULL",
            values![style, org],
        )
        .await?;
    Ok(())
}
