//! Styles that the brand keeps as what others may begin with.

use super::drafts::put_section;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, StylePermit, act};
use crate::spec::{Digest, Section, Spec, StyleId};

/// A style that others may begin with.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnStart {
    pub id: StyleId,
    pub number: String,
    pub name: String,
    /// The first drawing of its draft.
    pub drawing: Option<Digest>,
}

#[derive(sqlx::FromRow)]
struct Row {
    id: StyleId,
    number: String,
    name: String,
    drawings: Option<String>,
}

impl Store {
    /// The brand's own starts, by their numbers.
    pub async fn own_starts(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Vec<OwnStart>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT s.id, s.number, s.name, d.content AS drawings FROM style s \
                 LEFT JOIN draft_section d ON d.style = s.id AND d.section = $1 \
                 WHERE s.start_since IS NOT NULL ORDER BY s.number, s.id",
                values![Section::Drawings.name()],
            )
            .await?;
        let starts = rows.into_iter().map(|row| {
            let mut spec = Spec::default();
            if let Some(content) = &row.drawings {
                put_section(&mut spec, Section::Drawings, content).map_err(|cause| {
                    StoreError::corrupt("draft_section", "content", row.id.as_str(), cause)
                })?;
            }
            let mut drawings = spec.drawings.drawings.into_iter();
            Ok(OwnStart {
                id: row.id,
                number: row.number,
                name: row.name,
                drawing: drawings.next().map(|drawing| drawing.file),
            })
        });
        starts.collect()
    }

    /// Whether others may begin with this style.
    pub async fn is_start(&self, permit: &StylePermit<act::Review>) -> Result<bool, StoreError> {
        let row: Option<(String,)> = self
            .db
            .maybe(
                "SELECT id FROM style WHERE id = $1 AND start_since IS NOT NULL",
                values![permit.style()],
            )
            .await?;
        Ok(row.is_some())
    }

    /// Keeps the style as a start from now on, or does not any more. Its draft is what others
    /// begin with, as it is by then.
    ///
    /// Errors: `Missing` when the permit does not hold any more.
    pub async fn keep_as_start(
        &self,
        permit: &StylePermit<act::Write>,
        keep: bool,
    ) -> Result<(), StoreError> {
        let act = self.act(permit).await?;
        let since = keep.then_some(&act.at);
        act.tx
            .run(
                "UPDATE style SET start_since = $2 WHERE id = $1",
                values![act.style, since],
            )
            .await?;
        act.commit().await
    }
}
