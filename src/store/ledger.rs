//! Reading ledgers.

use super::act::number;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::{Entry, Head};
use crate::spec::Digest;

/// One entry with the name of who did it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LedgerLine {
    pub entry: Entry,
    pub hash: Digest,
    /// `None`: erased, or the program itself.
    pub person: Option<String>,
    pub org_name: Option<String>,
}

#[derive(sqlx::FromRow)]
struct LineRow {
    seq: i64,
    body: String,
    hash: Digest,
    person: Option<String>,
    org_name: Option<String>,
}

impl Store {
    /// The end of the style's chain. Everything a style's pages show moves it, drafts left out.
    pub async fn head(&self, permit: &StylePermit<act::Read>) -> Result<Head, StoreError> {
        let style = permit.style();
        let (seq, hash): (i64, Digest) = self
            .db
            .one(
                "SELECT seq, hash FROM ledger_head WHERE style = $1",
                values![style],
            )
            .await?;
        let seq = number("ledger_head", "seq", style.as_str(), seq)?;
        Ok(Head { seq, hash })
    }

    /// The ledger of a style, oldest first: a factory's part of it.
    pub async fn ledger(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<LedgerLine>, StoreError> {
        let rows: Vec<LineRow> = self
            .db
            .all(
                "SELECT l.seq, l.body, l.hash, n.content AS person, o.name AS org_name \
                 FROM ledger l \
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
            .map(|row| {
                let entry = serde_json::from_str(&row.body).map_err(|cause| {
                    let place = format!("{}/{}", permit.style(), row.seq);
                    StoreError::corrupt("ledger", "body", &place, cause)
                })?;
                Ok(LedgerLine {
                    entry,
                    hash: row.hash,
                    person: row.person,
                    org_name: row.org_name,
                })
            })
            .collect()
    }
}
