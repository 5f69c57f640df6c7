//! Seals that wait for a signature.

use super::{Need, Open, What};
use crate::access::{Permit, act};
use crate::exchange::round;
use crate::exchange::signature::{SubjectKind, unsettled};
use crate::spec::{OrgId, SealId, StyleId, Time};
use crate::store::act::number;
use crate::store::{Read, Store, StoreError, values};

#[derive(sqlx::FromRow)]
struct Row {
    style: StyleId,
    number: String,
    name: String,
    org: OrgId,
    org_name: String,
    id: SealId,
    at: Time,
    round: i64,
    kind: round::Kind,
    revision: i64,
}

impl Store {
    /// Seals that the holder's side has not signed.
    pub(super) async fn seal_needs(
        &self,
        permit: &Permit<act::Enter>,
        open: &Open,
    ) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT b.style, t.number, t.name, b.org, o.name AS org_name, b.id, b.at, \
                 r.number AS round, r.kind, v.number AS revision FROM seal b \
                 JOIN round r ON r.id = b.round JOIN revision v ON v.id = r.revision \
                 JOIN style t ON t.id = b.style JOIN organisation o ON o.id = b.org \
                 JOIN share s ON s.style = b.style AND s.org = b.org AND s.ended_at IS NULL \
                 WHERE (CAST($1 AS TEXT) IS NULL OR b.org = $1) \
                 AND NOT EXISTS (SELECT 1 FROM signature g WHERE g.subject = 'seal' \
                     AND g.subject_id = b.id AND g.side = $2)",
                values![permit.tenant(), permit.side()],
            )
            .await?;
        let need = |row: Row| {
            let place = row.id.as_str();
            let revision = number("revision", "number", place, row.revision)?;
            let threads = open.get(&row.style).map_or(&[][..], Vec::as_slice);
            Ok(Need {
                what: What::Seal {
                    round: number("round", "number", place, row.round)?,
                    blocks: unsettled(threads, &row.org, SubjectKind::Seal, revision),
                    id: row.id,
                    kind: row.kind,
                },
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since: row.at,
            })
        };
        rows.into_iter().map(need).collect()
    }
}
