//! Measuring the pieces of a round: in which state of a piece, and why not.

use crate::spec::document::MeasuringState;

use super::round::{Outcome, State};
use super::{Refused, Side};

super::named! {
    /// A state of a piece beside the one that the numbers of its spec hold for: washing shows what the
    /// fabric does, and tolerances say nothing about it.
    Wash {
        Before = "before",
        After = "after",
    }
}

impl Wash {
    /// The other state of a piece whose spec holds for this one.
    pub fn beside(measured: Option<MeasuringState>) -> Wash {
        match measured {
            Some(MeasuringState::AfterWashes(_)) => Wash::Before,
            _ => Wash::After,
        }
    }
}

super::named! {
    /// Why a point of a piece was not measured.
    Reason {
        /// The piece has no such part.
        Absent = "absent",
        /// It is not sewn yet.
        Unfinished = "unfinished",
        /// The piece is spoilt there.
        Damaged = "damaged",
        /// Whoever measures does not understand how it is meant.
        Unclear = "unclear",
    }
}

/// May this side add a value now? `corrects`: a value of this side for the same piece and point
/// is there already.
pub fn may_measure(state: State, side: Side, corrects: bool) -> Result<(), Refused> {
    match (state, side) {
        (State::InWork | State::Dispatched, Side::Factory)
        | (State::Received | State::Measured, _) => Ok(()),
        (State::Decided(Outcome::Cancelled), _) => Err(Refused::RoundNotIn { state }),
        (State::Decided(_), _) if corrects => Ok(()),
        (State::Decided(_), _) => Err(Refused::OnlyCorrections),
        _ => Err(Refused::RoundNotIn { state }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_other_state_of_a_garment_that_is_measured_washed_is_the_unwashed_one() {
        let washed = MeasuringState::AfterWashes(1);
        assert_eq!(Wash::beside(Some(washed)), Wash::Before);
        for state in [
            None,
            Some(MeasuringState::AsSewn),
            Some(MeasuringState::AfterFinish),
        ] {
            assert_eq!(Wash::beside(state), Wash::After);
        }
    }
}
