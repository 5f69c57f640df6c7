//! The codes on prints, and what somebody who holds a print may know of it.

use super::revisions::{facts_in, frozen_in};
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::revision::{Standing, standing};
use crate::spec::{Digest, OrgId, StyleId, changes};

/// What a print is a print of, and what has become of that.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Printed {
    pub style: StyleId,
    /// As that revision calls the style; of a draft, as it is called now.
    pub number: String,
    /// `None`: a draft.
    pub revision: Option<PrintedRevision>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PrintedRevision {
    pub number: u32,
    pub digest: Digest,
    pub standing: Standing,
    /// From it to the current one, if there is another.
    pub changes: Option<usize>,
}

impl Store {
    /// The word that the code on prints of this revision for this factory leads to; the same at
    /// every print. A factory's own prints are for itself, whatever is asked.
    ///
    /// Errors: `Missing` when there is no such revision, or the style is not shared with that
    /// factory.
    pub async fn print_code(
        &self,
        permit: &StylePermit<act::Read>,
        n: u32,
        factory: Option<&OrgId>,
    ) -> Result<String, StoreError> {
        let org = permit.tenant().or(factory);
        let _: (i64,) = self
            .db
            .one(
                "SELECT number FROM revision WHERE style = $1 AND number = $2 \
                 AND (CAST($3 AS TEXT) IS NULL OR EXISTS (SELECT 1 FROM share s \
                     WHERE s.style = $1 AND s.org = $3 AND s.ended_at IS NULL))",
                values![permit.style(), n, org],
            )
            .await?;
        self.code_of(permit.style(), n, org.map_or("", OrgId::as_str))
            .await
    }

    /// The word that the code on prints of the draft leads to.
    pub async fn draft_print_code(
        &self,
        permit: &StylePermit<act::Review>,
    ) -> Result<String, StoreError> {
        self.code_of(permit.style(), 0, "").await
    }

    async fn code_of(&self, style: &StyleId, n: u32, org: &str) -> Result<String, StoreError> {
        const KNOWN: &str =
            "SELECT code FROM print_code WHERE style = $1 AND revision = $2 AND org = $3";
        let known: Option<(String,)> = self.db.maybe(KNOWN, values![style, n, org]).await?;
        if let Some((code,)) = known {
            return Ok(code);
        }
        let tx = self.db.begin().await?;
        tx.run(
            "INSERT INTO print_code (code, style, revision, org, made_at) \
             VALUES ($1, $2, $3, $4, $5) ON CONFLICT (style, revision, org) DO NOTHING",
            values![self.world.token(), style, n, org, self.world.now()],
        )
        .await?;
        let (code,): (String,) = tx.one(KNOWN, values![style, n, org]).await?;
        tx.commit().await?;
        Ok(code)
    }

    /// What a print is, for whoever holds it: signed in or not.
    ///
    /// Errors: `Missing` when no print carries that word.
    pub async fn printed(&self, code: &str) -> Result<Printed, StoreError> {
        let (style, n): (StyleId, i64) = self
            .db
            .one(
                "SELECT style, revision FROM print_code WHERE code = $1",
                values![code],
            )
            .await?;
        let n = super::act::number("print_code", "revision", style.as_str(), n)?;
        if n == 0 {
            let (number,): (String,) = self
                .db
                .one("SELECT number FROM style WHERE id = $1", values![style])
                .await?;
            let revision = None;
            return Ok(Printed {
                style,
                number,
                revision,
            });
        }
        let facts = facts_in(&self.db, &style).await?;
        let standing = standing(n, &facts).ok_or(StoreError::Missing)?;
        let kept = frozen_in(self, &self.db, &style, n).await?;
        let current = match &standing {
            Standing::Current => None,
            Standing::Superseded { current, .. } | Standing::Withdrawn { current, .. } => *current,
        };
        let count = match current {
            None => None,
            Some(current) => {
                let newer = frozen_in(self, &self.db, &style, current).await?;
                Some(changes(kept.frozen.version(), newer.frozen.version()).len())
            }
        };
        Ok(Printed {
            number: kept.frozen.spec.header.number.clone(),
            revision: Some(PrintedRevision {
                number: n,
                digest: kept.digest,
                standing,
                changes: count,
            }),
            style,
        })
    }
}
