//! Rounds as they are read: one statement for all of a style, one for their pieces, one for values.

use std::collections::BTreeMap;

use super::{Decision, Measured, Piece, Round};
use crate::access::Side;
use crate::exchange::measuring::Wash;
use crate::exchange::round::{Kind, Materials, Outcome, State};
use crate::spec::{
    Digest, ItemId, Length, MeasurementId, OrgId, PieceId, RevisionId, RoundId, StyleId, Time, Unit,
};
use crate::store::act::{StyleAct, number};
use crate::store::pieces::skips_of;
use crate::store::{Dispatch, Read, Store, StoreError, values};

#[derive(sqlx::FromRow)]
struct RoundRow {
    id: RoundId,
    number: i64,
    kind: Kind,
    state: State,
    org: OrgId,
    org_name: String,
    revision_id: RevisionId,
    revision: i64,
    digest: Digest,
    made_at: Time,
    moved_at: Time,
    continued_at: Option<i64>,
    outcome: Option<Outcome>,
    decided_at: Option<Time>,
    decided_by: Option<String>,
    reason: Option<String>,
    reason_hash: Option<Digest>,
    sent_at: Option<Time>,
    materials: Option<Materials>,
    substitutes: Option<String>,
    parcel: Option<String>,
}

#[derive(sqlx::FromRow)]
struct MeasuredRow {
    id: MeasurementId,
    round: RoundId,
    piece: PieceId,
    point: ItemId,
    nm: i64,
    unit: Unit,
    side: Side,
    wash: Option<Wash>,
    person: Option<String>,
    at: Time,
}

/// The rounds of a style; with one factory, when `tenant` is given.
pub(in crate::store) async fn rounds_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<Vec<Round>, StoreError> {
    let rows: Vec<RoundRow> = db
        .all(
            "SELECT r.id, r.number, r.kind, r.state, r.org, o.name AS org_name, \
             r.revision AS revision_id, v.number AS revision, v.digest, r.made_at, r.moved_at, \
             r.continued_at, d.outcome, d.at AS decided_at, n.content AS decided_by, \
             x.content AS reason, d.reason_hash, s.at AS sent_at, s.materials, \
             u.content AS substitutes, p.content AS parcel \
             FROM round r JOIN organisation o ON o.id = r.org \
             JOIN revision v ON v.id = r.revision \
             LEFT JOIN decision d ON d.round = r.id \
             LEFT JOIN private_text n ON n.person = d.person AND n.kind = 'name' \
             LEFT JOIN private_text x ON x.id = d.reason \
             LEFT JOIN dispatch s ON s.round = r.id \
             LEFT JOIN private_text u ON u.id = s.substitutes \
             LEFT JOIN private_text p ON p.id = s.parcel \
             WHERE r.style = $1 AND (CAST($2 AS TEXT) IS NULL OR r.org = $2) ORDER BY r.number",
            values![style, tenant],
        )
        .await?;
    if rows.is_empty() {
        return Ok(Vec::new());
    }
    let pieces: Vec<(RoundId, PieceId, i64, ItemId)> = db
        .all(
            "SELECT p.round, p.id, p.number, p.size FROM piece p JOIN round r ON r.id = p.round \
             WHERE r.style = $1 AND (CAST($2 AS TEXT) IS NULL OR r.org = $2) \
             ORDER BY p.round, p.number",
            values![style, tenant],
        )
        .await?;
    let measured: Vec<MeasuredRow> = db
        .all(
            "SELECT m.id, m.round, m.piece, m.point, m.nm, m.unit, m.side, m.wash, \
             n.content AS person, m.at FROM measurement m JOIN round r ON r.id = m.round \
             LEFT JOIN private_text n ON n.person = m.person AND n.kind = 'name' \
             WHERE r.style = $1 AND (CAST($2 AS TEXT) IS NULL OR r.org = $2) \
             ORDER BY m.round, m.seq",
            values![style, tenant],
        )
        .await?;
    let mut pieces_of: BTreeMap<RoundId, Vec<Piece>> = BTreeMap::new();
    for (round, id, n, size) in pieces {
        let number = number("piece", "number", id.as_str(), n)?;
        let piece = Piece { id, number, size };
        pieces_of.entry(round).or_default().push(piece);
    }
    let mut measured_of: BTreeMap<RoundId, Vec<Measured>> = BTreeMap::new();
    for row in measured {
        measured_of.entry(row.round).or_default().push(Measured {
            id: row.id,
            piece: row.piece,
            point: row.point,
            value: Length::nm(row.nm),
            unit: row.unit,
            side: row.side,
            wash: row.wash,
            person: row.person,
            at: row.at,
        });
    }
    let mut skipped_of = skips_of(db, style, tenant).await?;
    let mut rounds = Vec::with_capacity(rows.len());
    for row in rows {
        let decision = match (row.outcome, row.decided_at, row.reason_hash) {
            (Some(outcome), Some(at), Some(reason_hash)) => Some(Decision {
                outcome,
                at,
                person: row.decided_by,
                reason: row.reason,
                reason_hash,
            }),
            _ => None,
        };
        let dispatch = match (row.sent_at, row.materials) {
            (Some(at), Some(materials)) => Some(Dispatch {
                at,
                materials,
                substitutes: row.substitutes,
                parcel: row.parcel,
            }),
            _ => None,
        };
        let place = row.id.as_str();
        rounds.push(Round {
            number: number("round", "number", place, row.number)?,
            revision: number("revision", "number", place, row.revision)?,
            continued_at: row
                .continued_at
                .map(|n| number("round", "continued_at", place, n))
                .transpose()?,
            frozen: store.thaw(db, &row.revision_id, &row.digest).await?,
            pieces: pieces_of.remove(&row.id).unwrap_or_default(),
            measurements: measured_of.remove(&row.id).unwrap_or_default(),
            skips: skipped_of.remove(&row.id).unwrap_or_default(),
            id: row.id,
            kind: row.kind,
            state: row.state,
            org: row.org,
            org_name: row.org_name,
            digest: row.digest,
            made_at: row.made_at,
            moved_at: row.moved_at,
            dispatch,
            decision,
        });
    }
    Ok(rounds)
}

pub(in crate::store) async fn round_in(
    store: &Store,
    act: &StyleAct<'_>,
    tenant: Option<&OrgId>,
    id: &RoundId,
) -> Result<Round, StoreError> {
    rounds_in(store, &act.tx, &act.style, tenant)
        .await?
        .into_iter()
        .find(|round| round.id == *id)
        .ok_or(StoreError::Missing)
}
