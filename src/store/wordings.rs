//! The brand's own wordings of how a point is measured.

use super::people::still_here;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, StylePermit, act};
use crate::spec::wording::Wording;

impl Store {
    /// The brand's own wordings, by their names.
    pub async fn own_wordings(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Vec<Wording>, StoreError> {
        let rows: Vec<(String, String)> = self
            .db
            .all(
                "SELECT name, content FROM wording ORDER BY lower(name), name",
                values![],
            )
            .await?;
        let read = |(name, content): (String, String)| match serde_json::from_str(&content) {
            Ok(how) => Ok(Wording { name, how }),
            Err(cause) => Err(StoreError::corrupt("wording", "content", &name, cause)),
        };
        rows.into_iter().map(read).collect()
    }

    /// Keeps a wording under its name, in place of the one that had it.
    ///
    /// Errors: `Missing` when the permit no longer holds.
    pub async fn keep_wording(
        &self,
        permit: &StylePermit<act::Write>,
        wording: &Wording,
    ) -> Result<(), StoreError> {
        let content = serde_json::to_string(&wording.how).expect("a wording is JSON");
        let now = self.world.now();
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        tx.run(
            "INSERT INTO wording (name, content, kept_by, kept_at) VALUES ($1, $2, $3, $4) \
             ON CONFLICT (name) DO UPDATE SET content = $2, kept_by = $3, kept_at = $4",
            values![wording.name, content, permit.person(), now],
        )
        .await?;
        tx.commit().await
    }

    /// Takes a wording out of the library; points that took it keep their words.
    ///
    /// Errors: `Missing` when there is none of that name.
    pub async fn forget_wording(
        &self,
        permit: &Permit<act::Create>,
        name: &str,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        let gone = tx
            .run("DELETE FROM wording WHERE name = $1", values![name])
            .await?;
        if gone == 0 {
            return Err(StoreError::Missing);
        }
        tx.commit().await
    }
}
