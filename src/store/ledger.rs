//! Reading ledgers.

use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::{Entry, Head};
use crate::spec::{Digest, StyleId};

/// One entry with the name of who did it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LedgerLine {
    pub entry: Entry,
    pub hash: Digest,
    /// `None`: erased, or the program itself.
    pub person: Option<String>,
    pub org_name: Option<String>,
}

impl Store {
    /// The end of the style's chain. Everything a style's pages show moves it, drafts left out.
    pub async fn head(&self, permit: &StylePermit<act::Read>) -> Result<Head, StoreError> {
        head_in(&self.db, permit.style()).await
    }

    /// The ledger of a style, oldest first: a factory's part of it.
    pub async fn ledger(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<LedgerLine>, StoreError> {
        type Row = (i64, String, Digest, Option<String>, Option<String>);
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT l.seq, l.body, l.hash, n.content, o.name FROM ledger l \
                 LEFT JOIN person p ON p.id = l.person \
                 LEFT JOIN organisation o ON o.id = p.org \
                 LEFT JOIN private_text n ON n.person = l.person AND n.kind = 'name' \
                 WHERE l.style = $1 AND (CAST($2 AS TEXT) IS NULL \
                     OR (NOT l.internal AND (l.visible_to IS NULL OR l.visible_to = $2))) \
                 ORDER BY l.seq",
                values![permit.style(), permit.tenant()],
            )
            .await?;
        rows.into_iter()
            .map(|(seq, body, hash, person, org_name)| {
                let entry = serde_json::from_str(&body).map_err(|cause| {
                    let row = format!("{}/{seq}", permit.style());
                    StoreError::corrupt("ledger", "body", &row, cause)
                })?;
                Ok(LedgerLine {
                    entry,
                    hash,
                    person,
                    org_name,
                })
            })
            .collect()
    }
}

pub(super) async fn head_in(db: &impl Read, style: &StyleId) -> Result<Head, StoreError> {
    let (seq, hash): (i64, Digest) = db
        .one(
            "SELECT seq, hash FROM ledger_head WHERE style = $1",
            values![style],
        )
        .await?;
    let seq = super::act::number("ledger_head", "seq", style.as_str(), seq)?;
    Ok(Head { seq, hash })
}
