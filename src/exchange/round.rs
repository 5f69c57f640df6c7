//! A sample round: pieces that a factory makes to one revision, measures and sends, and the brand
//! receives, measures and decides.
//!
//! The sample room measures from the start of work on, its own values arriving late from a phone
//! without a signal included; the brand from receipt on. After a decision a value can only be
//! corrected, by a newer one beside it.

use std::collections::BTreeSet;

use serde::Serialize;

use crate::spec::canon::{CanonError, to_canonical};
use crate::spec::{Digest, ItemId, Length, MeasurementId, PieceId, RoundId, ThreadId};

use super::measuring::Wash;
use super::thread::Thread;
use super::{Actor, Refused, Side};

/// The most pieces that one round may ask for.
pub const MOST_PIECES: usize = 50;

super::named! {
    /// What a round is made to show.
    Kind {
        Proto = "proto",
        Fit = "fit",
        SizeSet = "size_set",
        PreProduction = "pre_production",
        TopOfProduction = "top_of_production",
    }
}

super::named! {
    /// What the pieces of a round are made of.
    Materials {
        /// Those of the spec.
        Actual = "actual",
        /// Others in their place.
        Substitute = "substitute",
    }
}

super::named! {
    /// How a round ends.
    Outcome {
        Approved = "approved",
        ApprovedWithChanges = "approved_with_changes",
        Remake = "remake",
        Cancelled = "cancelled",
    }
}

/// How far a round has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    Requested,
    InWork,
    Dispatched,
    Received,
    Measured,
    Decided(Outcome),
}

impl State {
    /// The stable name; a decided round carries its outcome's.
    pub fn name(self) -> &'static str {
        match self {
            State::Requested => "requested",
            State::InWork => "in_work",
            State::Dispatched => "dispatched",
            State::Received => "received",
            State::Measured => "measured",
            State::Decided(outcome) => outcome.name(),
        }
    }

    pub fn from_name(name: &str) -> Option<State> {
        match name {
            "requested" => Some(State::Requested),
            "in_work" => Some(State::InWork),
            "dispatched" => Some(State::Dispatched),
            "received" => Some(State::Received),
            "measured" => Some(State::Measured),
            other => Outcome::from_name(other).map(State::Decided),
        }
    }

    pub fn is_decided(self) -> bool {
        matches!(self, State::Decided(_))
    }

    /// Whose move is next; signatures left out.
    pub fn waits_for(self) -> Option<Side> {
        match self {
            State::Requested | State::InWork => Some(Side::Factory),
            State::Dispatched | State::Received | State::Measured => Some(Side::Brand),
            State::Decided(_) => None,
        }
    }
}

super::named! {
    /// What somebody wants to do to a round; a decision is [`decide`].
    Move {
        Start = "start",
        Dispatch = "dispatch",
        Receive = "receive",
        /// Say that measuring is done.
        FinishMeasuring = "finish_measuring",
    }
}

/// An earlier round with the same factory.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Earlier {
    pub state: State,
    /// The number of the revision it was bound to.
    pub revision: u32,
}

/// What a new round is asked for with.
#[derive(Debug, Clone)]
pub struct Request<'a> {
    pub revision: u32,
    /// The current revision of the style.
    pub current: Option<u32>,
    /// The style is shared with the factory now.
    pub shared: bool,
    /// The size of each piece.
    pub pieces: &'a [ItemId],
    /// The sizes of the revision.
    pub sizes: &'a BTreeSet<ItemId>,
    /// The rounds with this factory so far.
    pub earlier: &'a [Earlier],
    /// The style's threads with this factory.
    pub threads: &'a [Thread],
}

/// Asks a factory for a round, which is bound to the current revision. After *approved with
/// changes* it takes a newer revision that carries the changes.
pub fn request(by: &Actor, wanted: &Request<'_>) -> Result<State, Refused> {
    only(by, Side::Brand)?;
    if !wanted.shared {
        return Err(Refused::NotShared);
    }
    if wanted.current != Some(wanted.revision) {
        return Err(Refused::NotCurrent {
            current: wanted.current,
        });
    }
    let fits = (1..=MOST_PIECES).contains(&wanted.pieces.len())
        && wanted.pieces.iter().all(|size| wanted.sizes.contains(size));
    if !fits {
        return Err(Refused::PiecesMissing);
    }
    let changes_due = wanted
        .earlier
        .iter()
        .filter(|round| round.state == State::Decided(Outcome::ApprovedWithChanges))
        .map(|round| round.revision)
        .max();
    if let Some(than) = changes_due {
        if wanted.revision <= than {
            return Err(Refused::NewerRevisionNeeded { than });
        }
        let threads: Vec<ThreadId> = wanted
            .threads
            .iter()
            .filter(|thread| thread.is_must_fix_open_in(wanted.revision))
            .map(|thread| thread.id.clone())
            .collect();
        if !threads.is_empty() {
            return Err(Refused::MustFixOpen { threads });
        }
    }
    Ok(State::Requested)
}

/// The state that the move leads to. `measured` counts the values so far, of either side.
pub fn step(state: State, by: &Actor, mv: Move, measured: usize) -> Result<State, Refused> {
    let (side, next) = match (mv, state) {
        (Move::Start, State::Requested) => (Side::Factory, State::InWork),
        (Move::Dispatch, State::InWork) => (Side::Factory, State::Dispatched),
        (Move::Receive, State::Dispatched) => (Side::Brand, State::Received),
        (Move::FinishMeasuring, State::Received) => (Side::Brand, State::Measured),
        _ => return Err(Refused::RoundNotIn { state }),
    };
    only(by, side)?;
    if mv == Move::FinishMeasuring && measured == 0 {
        return Err(Refused::NothingMeasured);
    }
    Ok(next)
}

/// What a factory says of the pieces as it sends them.
#[derive(Debug, Clone, Copy)]
pub struct Sending<'a> {
    pub materials: Materials,
    /// Which materials stand in the place of which.
    pub substitutes: &'a str,
    /// Courier and number. May be empty.
    pub parcel: &'a str,
}

/// Dispatches the pieces: the state that follows. Substitutes are named.
pub fn dispatch(
    state: State,
    by: &Actor,
    measured: usize,
    with: &Sending<'_>,
) -> Result<State, Refused> {
    let next = step(state, by, Move::Dispatch, measured)?;
    if with.materials == Materials::Substitute && with.substitutes.trim().is_empty() {
        return Err(Refused::SubstitutesMissing);
    }
    Ok(next)
}

/// A change that *approved with changes* asks for: becomes a must-fix on the item.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    pub item: ItemId,
    pub text: String,
}

/// What the brand decides with.
#[derive(Debug, Clone)]
pub struct Deciding<'a> {
    pub outcome: Outcome,
    /// In words. May be empty for an approval.
    pub reason: &'a str,
    /// With *approved with changes*: what must change.
    pub changes: &'a [Change],
    /// Every item that the revision has.
    pub items: &'a BTreeSet<ItemId>,
    /// How many values were measured, by either side.
    pub measured: usize,
    /// Critical points out of tolerance on any piece, those with a granted concession left out.
    pub critical_out: &'a BTreeSet<ItemId>,
}

/// Decides a round: its last state, and the must-fixes to raise.
///
/// Approving takes a measured round. A remake can be asked for as soon as the figures say so, and
/// cancelling goes from any state before the end; both take a reason.
pub fn decide(state: State, by: &Actor, with: &Deciding<'_>) -> Result<Decided, Refused> {
    only(by, Side::Brand)?;
    let early = match with.outcome {
        Outcome::Approved | Outcome::ApprovedWithChanges => state != State::Measured,
        Outcome::Remake => state == State::Requested,
        Outcome::Cancelled => false,
    };
    if early || state.is_decided() {
        return Err(Refused::RoundNotIn { state });
    }
    let reason_due = matches!(with.outcome, Outcome::Remake | Outcome::Cancelled);
    if reason_due && with.reason.trim().is_empty() {
        return Err(Refused::ReasonMissing);
    }
    if with.outcome != Outcome::Cancelled && with.measured == 0 {
        return Err(Refused::NothingMeasured);
    }
    let must_fixes = match with.outcome {
        Outcome::ApprovedWithChanges => {
            let named = !with.changes.is_empty()
                && with.changes.iter().all(|change| {
                    !change.text.trim().is_empty() && with.items.contains(&change.item)
                });
            if !named {
                return Err(Refused::ChangesMissing);
            }
            with.changes.to_vec()
        }
        _ => Vec::new(),
    };
    if matches!(
        with.outcome,
        Outcome::Approved | Outcome::ApprovedWithChanges
    ) {
        let points: Vec<ItemId> = with
            .critical_out
            .iter()
            .filter(|point| must_fixes.iter().all(|change| change.item != **point))
            .cloned()
            .collect();
        if !points.is_empty() {
            return Err(Refused::CriticalOut { points });
        }
    }
    Ok(Decided {
        state: State::Decided(with.outcome),
        must_fixes,
    })
}

/// What a decision comes to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Decided {
    pub state: State,
    /// One must-fix thread each, raised by the brand on the round's revision.
    pub must_fixes: Vec<Change>,
}

/// The newer revision about which the round's page asks "continue or restart?": a published one
/// does not move the round. `continued_at` is the newest for which the brand chose to go on.
pub fn asks_about(
    state: State,
    bound_to: u32,
    current: Option<u32>,
    continued_at: Option<u32>,
) -> Option<u32> {
    let seen = continued_at.unwrap_or(bound_to).max(bound_to);
    current.filter(|current| !state.is_decided() && *current > seen)
}

/// The brand goes on with the round past the newer revision: what to keep as `continued_at`. To
/// restart is to cancel the round and to ask for another in one act.
pub fn continue_past(
    state: State,
    by: &Actor,
    bound_to: u32,
    current: Option<u32>,
    continued_at: Option<u32>,
) -> Result<u32, Refused> {
    only(by, Side::Brand)?;
    asks_about(state, bound_to, current, continued_at).ok_or(Refused::NoNewerRevision)
}

/// What both sides sign of a decided round. Its digest stands in their signatures, so a value
/// corrected afterwards shows.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Record {
    pub round: RoundId,
    pub kind: Kind,
    /// The whole digest of the revision it was made to.
    pub revision: Digest,
    pub outcome: Outcome,
    /// Salted hash of the reason.
    pub reason: Digest,
    /// In the order they came in.
    pub measurements: Vec<Measurement>,
    /// The must-fixes that the decision made.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub must_fixes: Vec<ThreadId>,
}

/// One value in a round's record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Measurement {
    pub id: MeasurementId,
    pub piece: PieceId,
    pub size: ItemId,
    pub point: ItemId,
    pub nm: Length,
    pub side: Side,
    /// `None`: taken in the state that the spec's numbers hold for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wash: Option<Wash>,
}

impl Record {
    /// The digest of the record's canonical form.
    pub fn digest(&self) -> Result<Digest, CanonError> {
        Ok(Digest::of(&to_canonical(self)?))
    }
}

fn only(by: &Actor, side: Side) -> Result<(), Refused> {
    match side {
        side if by.side() == side => Ok(()),
        Side::Brand => Err(Refused::OnlyBrand),
        Side::Factory => Err(Refused::OnlyFactory),
    }
}

#[cfg(test)]
mod tests;
