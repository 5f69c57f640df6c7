//! Sample rounds, their pieces and what was measured.

use std::collections::BTreeMap;
use std::fmt::Display;
use std::sync::Arc;

use super::act::{Said, StyleAct, number};
use super::revisions::{facts_in, frozen_in};
use super::shares::shared_with;
use super::threads::threads_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::revision::{self, Frozen};
use crate::exchange::round::{self, Earlier, Kind, Outcome, Request, State};
use crate::sample::deviation::{Summary, columns, judge};
use crate::spec::{
    Digest, ItemId, Length, MeasurementId, OrgId, PieceId, RevisionId, RoundId, StyleId, Time, Unit,
};

/// A sample round with everything that came of it.
#[derive(Debug, Clone)]
pub struct Round {
    pub id: RoundId,
    /// Counted through the style's rounds with this factory, from 1: another's are not its business.
    pub number: u32,
    pub kind: Kind,
    pub state: State,
    pub org: OrgId,
    pub org_name: String,
    /// The number of the revision it is bound to.
    pub revision: u32,
    pub digest: Digest,
    pub frozen: Arc<Frozen>,
    pub made_at: Time,
    pub moved_at: Time,
    pub continued_at: Option<u32>,
    pub pieces: Vec<Piece>,
    /// In the order they came in; the newest of a piece, point and side counts.
    pub measurements: Vec<Measured>,
    pub decision: Option<Decision>,
}

/// One garment of a round.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Piece {
    pub id: PieceId,
    /// From 1.
    pub number: u32,
    pub size: ItemId,
}

/// One value, as it was typed in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Measured {
    pub id: MeasurementId,
    pub piece: PieceId,
    pub point: ItemId,
    pub value: Length,
    pub unit: Unit,
    pub side: Side,
    /// `None`: erased.
    pub person: Option<String>,
    pub at: Time,
}

/// What the brand decided.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Decision {
    pub outcome: Outcome,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    /// `None`: erased.
    pub reason: Option<String>,
    pub reason_hash: Digest,
}

impl Round {
    /// The values that count for a piece as this side measured it, or as whoever did: the brand's
    /// where there are some, since it decides.
    pub fn values(&self, piece: &PieceId, side: Option<Side>) -> BTreeMap<ItemId, Length> {
        let mut values = BTreeMap::new();
        for of in [Side::Factory, Side::Brand] {
            if side.is_some_and(|side| side != of) {
                continue;
            }
            for measured in &self.measurements {
                if measured.piece == *piece && measured.side == of {
                    values.insert(measured.point.clone(), measured.value);
                }
            }
        }
        values
    }

    /// How all its pieces came out.
    pub fn summary(&self) -> Summary {
        let columns = columns(&self.frozen.spec, &self.frozen.chart);
        let judged: Vec<_> = self
            .pieces
            .iter()
            .filter_map(|piece| {
                let column = columns.get(&piece.size)?;
                Some(judge(column, &self.values(&piece.id, None)))
            })
            .collect();
        Summary::of(&judged)
    }

    /// What both sides sign once it is decided; `None` before.
    pub fn record(&self, must_fixes: Vec<crate::spec::ThreadId>) -> Option<round::Record> {
        let decision = self.decision.as_ref()?;
        let size = |piece: &PieceId| {
            let piece = self.pieces.iter().find(|other| other.id == *piece);
            piece.map(|piece| piece.size.clone())
        };
        Some(round::Record {
            round: self.id.clone(),
            kind: self.kind,
            revision: self.digest.clone(),
            outcome: decision.outcome,
            reason: decision.reason_hash.clone(),
            measurements: self
                .measurements
                .iter()
                .filter_map(|measured| {
                    Some(round::Measurement {
                        id: measured.id.clone(),
                        size: size(&measured.piece)?,
                        piece: measured.piece.clone(),
                        point: measured.point.clone(),
                        nm: measured.value,
                        side: measured.side,
                    })
                })
                .collect(),
            must_fixes,
        })
    }
}

/// A round to be asked for.
#[derive(Debug, Clone)]
pub struct NewRound<'a> {
    pub org: &'a OrgId,
    pub kind: Kind,
    /// The number of the revision that it is bound to.
    pub revision: u32,
    /// The size of each piece.
    pub pieces: &'a [ItemId],
}

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
    person: Option<String>,
    at: Time,
}

/// The rounds of a style; with one factory, when `tenant` is given.
pub(super) async fn rounds_in(
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
             x.content AS reason, d.reason_hash \
             FROM round r JOIN organisation o ON o.id = r.org \
             JOIN revision v ON v.id = r.revision \
             LEFT JOIN decision d ON d.round = r.id \
             LEFT JOIN private_text n ON n.person = d.person AND n.kind = 'name' \
             LEFT JOIN private_text x ON x.id = d.reason \
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
            "SELECT m.id, m.round, m.piece, m.point, m.nm, m.unit, m.side, \
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
            person: row.person,
            at: row.at,
        });
    }
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
            id: row.id,
            kind: row.kind,
            state: row.state,
            org: row.org,
            org_name: row.org_name,
            digest: row.digest,
            made_at: row.made_at,
            moved_at: row.moved_at,
            decision,
        });
    }
    Ok(rounds)
}

pub(super) async fn round_in(
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

impl Store {
    /// The rounds of a style, oldest first: a factory's own ones.
    pub async fn rounds(&self, permit: &StylePermit<act::Read>) -> Result<Vec<Round>, StoreError> {
        rounds_in(self, &self.db, permit.style(), permit.tenant()).await
    }

    /// One round. Errors: `Missing` when it is not there for the holder.
    pub async fn round(
        &self,
        permit: &StylePermit<act::Read>,
        id: &RoundId,
    ) -> Result<Round, StoreError> {
        let rounds = self.rounds(permit).await?;
        rounds
            .into_iter()
            .find(|round| round.id == *id)
            .ok_or(StoreError::Missing)
    }

    /// Asks a factory for a round of samples.
    pub async fn request_round(
        &self,
        permit: &StylePermit<act::Decide>,
        new: NewRound<'_>,
    ) -> Result<RoundId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        shared_with(&act.tx, &style, new.org).await?;
        let kept = frozen_in(self, &act.tx, &style, new.revision).await?;
        let before = rounds_in(self, &act.tx, &style, Some(new.org)).await?;
        let earlier: Vec<Earlier> = before
            .iter()
            .map(|round| Earlier {
                state: round.state,
                revision: round.revision,
            })
            .collect();
        let state = round::request(
            permit.actor(),
            &Request {
                revision: new.revision,
                current: revision::current(&facts_in(&act.tx, &style).await?),
                shared: true,
                pieces: new.pieces,
                sizes: &kept.frozen.chart.sizes.iter().cloned().collect(),
                earlier: &earlier,
                threads: &threads_in(&act.tx, &style, Some(new.org)).await?,
            },
        )
        .map_err(StoreError::refused(&style))?;
        let id = RoundId::new(self.world.id());
        let n = earlier.len() as i64 + 1;
        act.tx
            .run(
                "INSERT INTO round (id, style, org, revision, number, kind, state, made_at, \
                 made_by, moved_at) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $8)",
                values![
                    id,
                    style,
                    new.org,
                    kept.id,
                    n,
                    new.kind,
                    state,
                    act.at,
                    permit.person()
                ],
            )
            .await?;
        let mut pieces = Vec::with_capacity(new.pieces.len());
        for (n, size) in (1_i64..).zip(new.pieces) {
            let piece = self.world.id();
            act.tx
                .run(
                    "INSERT INTO piece (id, round, number, size) VALUES ($1, $2, $3, $4)",
                    values![piece, id, n, size],
                )
                .await?;
            pieces.push((piece, n, size));
        }
        let said = Said::default()
            .to(new.org)
            .id("round", &id)
            .id("number", n)
            .id("kind", new.kind.name())
            .id("revision", new.revision)
            .id("pieces", pieces.len())
            .hash("pieces", &list_of(pieces));
        act.record(Act::RequestRound, said).await?;
        act.commit().await?;
        Ok(id)
    }

    /// The factory starts or dispatches a round.
    pub async fn dispatch_round(
        &self,
        permit: &StylePermit<act::Dispatch>,
        id: &RoundId,
        mv: round::Move,
    ) -> Result<(), StoreError> {
        self.move_round(permit, id, mv).await
    }

    /// The brand receives a round, or says that measuring is done.
    pub async fn receive_round(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &RoundId,
        mv: round::Move,
    ) -> Result<(), StoreError> {
        self.move_round(permit, id, mv).await
    }

    async fn move_round<A: crate::access::Act>(
        &self,
        permit: &StylePermit<A>,
        id: &RoundId,
        mv: round::Move,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, permit.tenant(), id).await?;
        let state = round::step(round.state, permit.actor(), mv, round.measurements.len())
            .map_err(StoreError::refused(permit.style()))?;
        set_state(&act, id, state).await?;
        let said = Said::default()
            .to(&round.org)
            .id("round", id)
            .id("number", round.number)
            .id("move", mv.name())
            .id("state", state.name());
        act.record(Act::RoundMove, said).await?;
        act.commit().await
    }

    /// The brand goes on with a round past a newer revision.
    pub async fn continue_round(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &RoundId,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let round = round_in(self, &act, None, id).await?;
        let current = revision::current(&facts_in(&act.tx, &style).await?);
        let seen = round::continue_past(
            round.state,
            permit.actor(),
            round.revision,
            current,
            round.continued_at,
        )
        .map_err(StoreError::refused(&style))?;
        act.tx
            .run(
                "UPDATE round SET continued_at = $2 WHERE id = $1",
                values![id, seen],
            )
            .await?;
        let said = Said::default()
            .to(&round.org)
            .id("round", id)
            .id("number", round.number)
            .id("move", "continue")
            .id("revision", seen);
        act.record(Act::RoundMove, said).await?;
        act.commit().await
    }
}

/// The digest of a line `NUMBER PIECE SIZE` for each piece: what the ledger says was asked for.
pub(super) fn list_of(pieces: impl IntoIterator<Item = (String, i64, impl Display)>) -> Digest {
    let lines: String = pieces
        .into_iter()
        .map(|(piece, number, size)| format!("{number} {piece} {size}\n"))
        .collect();
    Digest::of(lines.as_bytes())
}

pub(super) async fn set_state(
    act: &StyleAct<'_>,
    id: &RoundId,
    state: State,
) -> Result<(), StoreError> {
    act.tx
        .run(
            "UPDATE round SET state = $2, moved_at = $3 WHERE id = $1 AND style = $4",
            values![id, state, act.at, act.style],
        )
        .await?;
    Ok(())
}
