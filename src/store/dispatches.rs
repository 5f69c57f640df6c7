//! What a factory says of the pieces of a round as it sends them.

use super::rounds::{moved, round_in, set_state};
use super::{Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::round::{self, Materials, Move, Sending};
use crate::spec::{RoundId, Time};

/// How the pieces of a round were sent.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Dispatch {
    pub at: Time,
    pub materials: Materials,
    /// Which materials stand in the place of which. `None`: erased.
    pub substitutes: Option<String>,
    /// Courier and number. `None`: erased.
    pub parcel: Option<String>,
}

impl Store {
    /// The factory sends the pieces, and says what they are made of.
    pub async fn dispatch_round(
        &self,
        permit: &StylePermit<act::Dispatch>,
        id: &RoundId,
        with: Sending<'_>,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, permit.tenant(), id).await?;
        let measured = round.measurements.len();
        let state = round::dispatch(round.state, permit.actor(), measured, &with)
            .map_err(StoreError::refused(permit.style()))?;
        set_state(&act, id, state).await?;
        // With the materials of the spec there are no substitutes, whatever was typed before.
        let substitutes = match with.materials {
            Materials::Actual => "",
            Materials::Substitute => with.substitutes.trim(),
        };
        let (substitutes, substitutes_hash) = act.keep_text("message", substitutes).await?;
        let (parcel, parcel_hash) = act.keep_text("message", with.parcel.trim()).await?;
        act.tx
            .run(
                "INSERT INTO dispatch (round, at, person, materials, substitutes, \
                 substitutes_hash, parcel, parcel_hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                values![
                    id,
                    act.at,
                    permit.person(),
                    with.materials,
                    substitutes,
                    substitutes_hash,
                    parcel,
                    parcel_hash
                ],
            )
            .await?;
        let said = moved(&round, Move::Dispatch, state)
            .id("materials", with.materials.name())
            .hash("substitutes", &substitutes_hash)
            .hash("parcel", &parcel_hash);
        act.record(Act::RoundMove, said).await?;
        act.commit().await
    }
}
