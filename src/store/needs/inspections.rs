//! Lots that wait to be inspected or decided on.

use super::{Need, What};
use crate::access::{Permit, act};
use crate::exchange::inspection::{Decision, Outcome, State};
use crate::spec::{InspectionId, StyleId, Time};
use crate::store::act::number;
use crate::store::{Read, Store, StoreError, values};

#[derive(sqlx::FromRow)]
struct Row {
    style: StyleId,
    number: String,
    name: String,
    org_name: String,
    id: InspectionId,
    inspection: i64,
    at: Time,
    outcome: Option<Outcome>,
    concluded_at: Option<Time>,
    decision: Option<Decision>,
    decided_at: Option<Time>,
}

impl Store {
    /// Inspections in which it is the side's turn: a factory inspects, and inspects again what was
    /// mended; the brand decides.
    pub(super) async fn inspection_needs(
        &self,
        permit: &Permit<act::Enter>,
    ) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT i.style, t.number, t.name, o.name AS org_name, i.id, \
                 i.number AS inspection, i.at, c.outcome, c.at AS concluded_at, d.decision, \
                 d.at AS decided_at FROM inspection i JOIN style t ON t.id = i.style \
                 JOIN organisation o ON o.id = i.org \
                 JOIN share s ON s.style = i.style AND s.org = i.org AND s.ended_at IS NULL \
                 LEFT JOIN inspection_conclusion c ON c.inspection = i.id \
                 LEFT JOIN inspection_decision d ON d.inspection = i.id \
                 WHERE (CAST($1 AS TEXT) IS NULL OR i.org = $1) \
                 AND NOT EXISTS (SELECT 1 FROM inspection f WHERE f.follows = i.id)",
                values![permit.tenant()],
            )
            .await?;
        let mut needs = Vec::new();
        for row in rows {
            let state = State::of(row.outcome, row.decision);
            if state.waits_for(false) != Some(permit.side()) {
                continue;
            }
            needs.push(Need {
                what: What::Inspection {
                    number: number("inspection", "number", row.id.as_str(), row.inspection)?,
                    id: row.id,
                    state,
                },
                style: row.style,
                number: row.number,
                name: row.name,
                org_name: row.org_name,
                since: row.decided_at.or(row.concluded_at).unwrap_or(row.at),
            });
        }
        Ok(needs)
    }
}
