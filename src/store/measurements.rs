//! Measured values: only ever added.

use std::collections::BTreeSet;

use super::act::{Said, StyleAct};
use super::rounds::round_in;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::measuring::{Wash, may_measure};
use crate::spec::{ItemId, Length, PersonId, PieceId, RoundId, Unit};

/// A value to be kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewMeasurement {
    pub piece: PieceId,
    pub point: ItemId,
    pub value: Length,
    pub unit: Unit,
    /// `None`: in the state that the spec's numbers hold for.
    pub wash: Option<Wash>,
    /// The sender's own key: the same key twice is one measurement.
    pub key: String,
}

/// What became of values that were sent.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Kept {
    /// How many were new.
    pub new: usize,
    /// The keys that came before with another value: the values under them are not kept.
    pub refused: Vec<String>,
}

impl Store {
    /// Keeps values of a round's pieces. A key that came before is not kept twice; one that came
    /// with another value keeps its own value out, and no other.
    ///
    /// Errors: `Missing` when a piece or point is not there; `Refused` by the rules.
    pub async fn measure(
        &self,
        permit: &StylePermit<act::Measure>,
        id: &RoundId,
        new: &[NewMeasurement],
    ) -> Result<Kept, StoreError> {
        let side = permit.side();
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, permit.tenant(), id).await?;
        let mut seq = round.measurements.len() as i64;
        let mut there: BTreeSet<(PieceId, ItemId, Option<Wash>)> = round
            .measurements
            .iter()
            .filter(|measured| measured.side == side)
            .map(|it| (it.piece.clone(), it.point.clone(), it.wash))
            .collect();
        let mut kept = Kept::default();
        for value in new {
            match came_before(&act, id, permit.person(), value).await? {
                None => {}
                Some(true) => continue,
                Some(false) => {
                    kept.refused.push(value.key.clone());
                    continue;
                }
            }
            let known = round.pieces.iter().any(|piece| piece.id == value.piece)
                && round.frozen.chart.row(&value.point).is_some()
                && value.wash.is_none_or(|wash| wash == round.other_state());
            if !known {
                return Err(StoreError::Missing);
            }
            let place = (value.piece.clone(), value.point.clone(), value.wash);
            may_measure(round.state, side, there.contains(&place))
                .map_err(StoreError::refused(permit.style()))?;
            let measurement = self.world.id();
            let inserted = act
                .tx
                .run(
                    "INSERT INTO measurement (id, round, seq, piece, point, nm, unit, person, \
                     side, at, key, wash) \
                     VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12) \
                     ON CONFLICT (key) DO NOTHING",
                    values![
                        measurement,
                        id,
                        seq + 1,
                        value.piece,
                        value.point,
                        value.value.as_nm(),
                        value.unit,
                        permit.person(),
                        side,
                        act.at,
                        value.key,
                        value.wash
                    ],
                )
                .await?;
            if inserted == 0 {
                // Kept meanwhile by another style: this one is locked.
                kept.refused.push(value.key.clone());
                continue;
            }
            there.insert(place);
            seq += 1;
            kept.new += 1;
            let said = Said::default()
                .to(&round.org)
                .id("round", id)
                .id("number", round.number)
                .id("measurement", &measurement)
                .id("piece", &value.piece)
                .id("point", &value.point)
                .id("nm", value.value.as_nm())
                .id("unit", value.unit.name())
                .id("key", &value.key);
            let said = match value.wash {
                Some(wash) => said.id("wash", wash.name()),
                None => said,
            };
            act.record(Act::Measure, said).await?;
        }
        act.commit().await?;
        Ok(kept)
    }
}

/// Whether this key was kept before, and then whether with just this value.
async fn came_before(
    act: &StyleAct<'_>,
    round: &RoundId,
    person: &PersonId,
    new: &NewMeasurement,
) -> Result<Option<bool>, StoreError> {
    type Before = (RoundId, PieceId, ItemId, i64, Unit, PersonId, Option<Wash>);
    let before: Option<Before> = act
        .tx
        .maybe(
            "SELECT round, piece, point, nm, unit, person, wash FROM measurement WHERE key = $1",
            values![new.key],
        )
        .await?;
    let same = (
        round.clone(),
        new.piece.clone(),
        new.point.clone(),
        new.value.as_nm(),
        new.unit,
        person.clone(),
        new.wash,
    );
    Ok(before.map(|before| before == same))
}
