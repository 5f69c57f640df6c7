//! Sample rounds, their pieces and what was measured.

mod rows;

pub(super) use rows::{round_in, rounds_in};

use std::collections::BTreeMap;
use std::fmt::Display;
use std::sync::Arc;

use super::act::{Said, StyleAct};
use super::decisions::{Decide, decide_in};
use super::revisions::{facts_in, frozen_in};
use super::shares::shared_with;
use super::threads::threads_in;
use super::{Dispatch, Skipped, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::measuring::{Reason, Wash};
use crate::exchange::revision::{self, Frozen};
use crate::exchange::round::{self, Earlier, Kind, Outcome, Request, State};
use crate::sample::deviation::{Summary, columns, judge};
use crate::spec::document::Point;
use crate::spec::{Digest, ItemId, Length, MeasurementId, OrgId, PieceId, RoundId, Time, Unit};

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
    /// In the order they came in; the newest of a piece, its state, a point and a side counts.
    pub measurements: Vec<Measured>,
    /// In the order they came in; the newest of a piece, point and side counts.
    pub skips: Vec<Skipped>,
    /// `None`: not sent yet, or before this was asked.
    pub dispatch: Option<Dispatch>,
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
    /// `None`: in the state that the spec's numbers hold for.
    pub wash: Option<Wash>,
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
    /// where there are some, since it decides. In the state that the spec's numbers hold for.
    pub fn values(&self, piece: &PieceId, side: Option<Side>) -> BTreeMap<ItemId, Length> {
        self.values_in(None, piece, side)
    }

    /// The same in this state of the piece.
    pub fn values_in(
        &self,
        wash: Option<Wash>,
        piece: &PieceId,
        side: Option<Side>,
    ) -> BTreeMap<ItemId, Length> {
        let mut values = BTreeMap::new();
        for of in [Side::Factory, Side::Brand] {
            if side.is_some_and(|side| side != of) {
                continue;
            }
            for measured in &self.measurements {
                if measured.piece == *piece && measured.side == of && measured.wash == wash {
                    values.insert(measured.point.clone(), measured.value);
                }
            }
        }
        values
    }

    /// The other state that its pieces can be measured in.
    pub fn other_state(&self) -> Wash {
        Wash::beside(self.frozen.spec.header.measured)
    }

    /// Why points of a piece were not measured by this side, or by whoever: those without a value.
    pub fn skipped(&self, piece: &PieceId, side: Option<Side>) -> BTreeMap<ItemId, Reason> {
        let values = self.values(piece, side);
        let skips = self.skips.iter().filter(|it| {
            it.piece == *piece
                && side.is_none_or(|side| it.side == side)
                && !values.contains_key(&it.point)
        });
        skips.map(|it| (it.point.clone(), it.reason)).collect()
    }

    /// The points of a piece that nobody measured, nor said why not, in their order.
    pub fn due(&self, piece: &PieceId) -> impl Iterator<Item = &Point> {
        let (values, skipped) = (self.values(piece, None), self.skipped(piece, None));
        let points = self.frozen.spec.points.points.iter();
        points.filter(move |it| {
            self.frozen.chart.row(&it.id).is_some()
                && !values.contains_key(&it.id)
                && !skipped.contains_key(&it.id)
        })
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
                        wash: measured.wash,
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
        let id = request_in(self, &mut act, permit, new, None).await?;
        act.commit().await?;
        Ok(id)
    }

    /// Ends a round for a newer revision: cancelled with this reason, and asked for anew with that
    /// one, the same kind with pieces of the same sizes. The new round.
    ///
    /// Errors: `Missing` when there is no such round; `Refused` by the rules of either step, and
    /// then neither was made.
    pub async fn restart_round(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &RoundId,
        newer: u32,
        reason: &str,
    ) -> Result<RoundId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let round = round_in(self, &act, None, id).await?;
        let current = revision::current(&facts_in(&act.tx, &style).await?);
        round::continue_past(
            round.state,
            permit.actor(),
            round.revision,
            current,
            round.continued_at,
        )
        .map_err(StoreError::refused(&style))?;
        let cancel = Decide {
            outcome: Outcome::Cancelled,
            reason,
            changes: &[],
            language: "",
        };
        decide_in(self, &mut act, permit, &round, cancel).await?;
        let pieces: Vec<ItemId> = round.pieces.iter().map(|it| it.size.clone()).collect();
        let new = NewRound {
            org: &round.org,
            kind: round.kind,
            revision: newer,
            pieces: &pieces,
        };
        let id = request_in(self, &mut act, permit, new, Some(id)).await?;
        act.commit().await?;
        Ok(id)
    }

    /// The factory starts work on a round.
    pub async fn start_round(
        &self,
        permit: &StylePermit<act::Dispatch>,
        id: &RoundId,
    ) -> Result<(), StoreError> {
        self.move_round(permit, id, round::Move::Start).await
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
        act.record(Act::RoundMove, moved(&round, mv, state)).await?;
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

/// Asks for a round in an act: its id. `instead_of` is the round that it takes the place of.
async fn request_in(
    store: &Store,
    act: &mut StyleAct<'_>,
    permit: &StylePermit<act::Decide>,
    new: NewRound<'_>,
    instead_of: Option<&RoundId>,
) -> Result<RoundId, StoreError> {
    let style = act.style.clone();
    shared_with(&act.tx, &style, new.org).await?;
    let kept = frozen_in(store, &act.tx, &style, new.revision).await?;
    let before = rounds_in(store, &act.tx, &style, Some(new.org)).await?;
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
    let id = RoundId::new(store.world.id());
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
        let piece = store.world.id();
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
    let said = match instead_of {
        Some(before) => said.id("instead_of", before),
        None => said,
    };
    act.record(Act::RequestRound, said).await?;
    Ok(id)
}

/// What the ledger says of every move.
pub(super) fn moved(round: &Round, mv: round::Move, state: State) -> Said {
    Said::default()
        .to(&round.org)
        .id("round", &round.id)
        .id("number", round.number)
        .id("move", mv.name())
        .id("state", state.name())
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
