use super::*;
use crate::exchange::cast::*;
use crate::exchange::measuring::may_measure;
use crate::exchange::thread;

const OPEN: [State; 5] = [
    State::Requested,
    State::InWork,
    State::Dispatched,
    State::Received,
    State::Measured,
];

fn states() -> impl Iterator<Item = State> {
    OPEN.into_iter().chain(Outcome::ALL.map(State::Decided))
}

fn set(items: &[&str]) -> BTreeSet<ItemId> {
    items.iter().map(|item| ItemId::new(*item)).collect()
}

fn change(item: &str, text: &str) -> Change {
    Change {
        item: ItemId::new(item),
        text: text.to_owned(),
    }
}

/// Two pieces of size M of revision 2.
struct Wish {
    revision: u32,
    current: Option<u32>,
    shared: bool,
    pieces: Vec<ItemId>,
    earlier: Vec<Earlier>,
    threads: Vec<Thread>,
}

impl Wish {
    fn new() -> Wish {
        Wish {
            revision: 2,
            current: Some(2),
            shared: true,
            pieces: vec![ItemId::new("m"), ItemId::new("m")],
            earlier: Vec::new(),
            threads: Vec::new(),
        }
    }

    fn asked_by(&self, by: &Actor) -> Result<State, Refused> {
        request(
            by,
            &Request {
                revision: self.revision,
                current: self.current,
                shared: self.shared,
                pieces: &self.pieces,
                sizes: &set(&["s", "m", "l"]),
                earlier: &self.earlier,
                threads: &self.threads,
            },
        )
    }
}

#[test]
fn a_round_goes_from_request_to_measured_each_side_making_its_moves() {
    let mut state = Wish::new().asked_by(&designer()).unwrap();
    for (mv, by, next) in [
        (Move::Start, merchandiser(), State::InWork),
        (Move::Dispatch, merchandiser(), State::Dispatched),
        (Move::Receive, designer(), State::Received),
        (Move::FinishMeasuring, designer(), State::Measured),
    ] {
        let wrong_side = match by.side() {
            Side::Brand => (merchandiser(), Refused::OnlyBrand),
            Side::Factory => (designer(), Refused::OnlyFactory),
        };
        assert_eq!(step(state, &wrong_side.0, mv, 9), Err(wrong_side.1));
        state = step(state, &by, mv, 9).unwrap();
        assert_eq!(state, next);
    }
}

#[test]
fn substitute_materials_are_named() {
    let sends = |materials, substitutes| {
        let with = Sending {
            materials,
            substitutes,
            parcel: "",
        };
        dispatch(State::InWork, &merchandiser(), 0, &with)
    };
    assert_eq!(sends(Materials::Actual, ""), Ok(State::Dispatched));
    let blank = sends(Materials::Substitute, " \n");
    assert_eq!(blank, Err(Refused::SubstitutesMissing));
    let named = sends(Materials::Substitute, "Zip from stock");
    assert_eq!(named, Ok(State::Dispatched));
}

#[test]
fn no_move_is_made_from_another_state() {
    for mv in Move::ALL {
        let by = match mv {
            Move::Start | Move::Dispatch => merchandiser(),
            Move::Receive | Move::FinishMeasuring => designer(),
        };
        let from: Vec<State> = states().filter(|s| step(*s, &by, mv, 1).is_ok()).collect();
        assert_eq!(from.len(), 1, "{mv:?} is made from {from:?}");
        for state in states().filter(|state| *state != from[0]) {
            assert_eq!(step(state, &by, mv, 1), Err(Refused::RoundNotIn { state }));
        }
    }
}

#[test]
fn measuring_is_not_done_before_something_was_measured() {
    assert_eq!(
        step(State::Received, &designer(), Move::FinishMeasuring, 0),
        Err(Refused::NothingMeasured)
    );
}

#[test]
fn a_round_is_asked_for_by_the_brand_of_the_current_revision_with_pieces_of_its_sizes() {
    assert_eq!(
        Wish::new().asked_by(&merchandiser()),
        Err(Refused::OnlyBrand)
    );
    let refused = |wish: Wish| wish.asked_by(&designer()).unwrap_err();
    let wish = Wish::new;
    assert_eq!(
        refused(Wish {
            shared: false,
            ..wish()
        }),
        Refused::NotShared
    );
    for current in [None, Some(3)] {
        assert_eq!(
            refused(Wish { current, ..wish() }),
            Refused::NotCurrent { current }
        );
    }
    for pieces in [
        Vec::new(),
        vec![ItemId::new("m"), ItemId::new("xxl")],
        vec![ItemId::new("m"); MOST_PIECES + 1],
    ] {
        assert_eq!(refused(Wish { pieces, ..wish() }), Refused::PiecesMissing);
    }
}

#[test]
fn after_approved_with_changes_the_next_round_needs_a_newer_revision_that_carries_them() {
    let decided = |outcome, revision| Earlier {
        state: State::Decided(outcome),
        revision,
    };
    let mut wish = Wish::new();
    // A remake is made to the same revision.
    wish.earlier = vec![decided(Outcome::Remake, 2)];
    assert!(wish.asked_by(&designer()).is_ok());

    wish.earlier.push(decided(Outcome::ApprovedWithChanges, 2));
    assert_eq!(
        wish.asked_by(&designer()),
        Err(Refused::NewerRevisionNeeded { than: 2 })
    );

    (wish.revision, wish.current) = (3, Some(3));
    wish.threads = vec![must_fix("sleeve", thread::State::Agreed)];
    assert_eq!(
        wish.asked_by(&designer()),
        Err(Refused::MustFixOpen {
            threads: vec![ThreadId::new("sleeve")]
        })
    );
    wish.threads = vec![must_fix("sleeve", thread::State::Changed { revision: 3 })];
    assert!(wish.asked_by(&designer()).is_ok());
}

#[test]
fn the_sample_room_measures_before_dispatch_the_brand_after_receipt() {
    for state in OPEN {
        let factory = may_measure(state, Side::Factory, false).is_ok();
        let brand = may_measure(state, Side::Brand, false).is_ok();
        assert_eq!(factory, state != State::Requested, "{state:?}");
        assert_eq!(
            brand,
            matches!(state, State::Received | State::Measured),
            "{state:?}"
        );
    }
}

#[test]
fn after_a_decision_a_value_is_only_corrected() {
    for outcome in Outcome::ALL {
        let state = State::Decided(outcome);
        for side in Side::ALL {
            let (added, corrected) = match outcome {
                Outcome::Cancelled => (
                    Err(Refused::RoundNotIn { state }),
                    Err(Refused::RoundNotIn { state }),
                ),
                _ => (Err(Refused::OnlyCorrections), Ok(())),
            };
            assert_eq!(may_measure(state, side, false), added);
            assert_eq!(may_measure(state, side, true), corrected);
        }
    }
}

/// A decision on a round with ten values, all within tolerance unless said otherwise.
struct Verdict {
    outcome: Outcome,
    reason: &'static str,
    changes: Vec<Change>,
    measured: usize,
    critical_out: BTreeSet<ItemId>,
}

impl Verdict {
    fn new(outcome: Outcome) -> Verdict {
        Verdict {
            outcome,
            reason: "",
            changes: Vec::new(),
            measured: 10,
            critical_out: BTreeSet::new(),
        }
    }

    fn on(&self, state: State, by: &Actor) -> Result<Decided, Refused> {
        decide(
            state,
            by,
            &Deciding {
                outcome: self.outcome,
                reason: self.reason,
                changes: &self.changes,
                items: &set(&["point-c", "point-d"]),
                measured: self.measured,
                critical_out: &self.critical_out,
            },
        )
    }
}

#[test]
fn approved_with_changes_raises_a_must_fix_for_each_point_that_is_named() {
    let mut verdict = Verdict::new(Outcome::ApprovedWithChanges);
    for unnamed in [
        vec![],
        vec![change("point-c", "  ")],
        vec![change("point-c", "shorten by 1 cm"), change("zip", "black")],
    ] {
        verdict.changes = unnamed;
        assert_eq!(
            verdict.on(State::Measured, &designer()),
            Err(Refused::ChangesMissing)
        );
    }
    verdict.changes = vec![
        change("point-c", "shorten by 1 cm"),
        change("point-d", "same left and right"),
    ];
    let decided = verdict.on(State::Measured, &designer()).unwrap();
    assert_eq!(decided.state, State::Decided(Outcome::ApprovedWithChanges));
    assert_eq!(decided.must_fixes, verdict.changes);
}

#[test]
fn other_decisions_raise_nothing() {
    let mut verdict = Verdict::new(Outcome::Approved);
    verdict.changes = vec![change("point-c", "left in the form by mistake")];
    let decided = verdict.on(State::Measured, &designer()).unwrap();
    assert_eq!(decided.must_fixes, []);
}

#[test]
fn approving_takes_a_measured_round_a_remake_may_come_early_cancelling_always() {
    for state in OPEN {
        let after = |outcome| {
            let mut verdict = Verdict::new(outcome);
            verdict.reason = "the fabric is late";
            verdict.changes = vec![change("point-c", "shorten")];
            verdict.on(state, &designer()).is_ok()
        };
        let measured = state == State::Measured;
        assert_eq!(after(Outcome::Approved), measured, "{state:?}");
        assert_eq!(after(Outcome::ApprovedWithChanges), measured, "{state:?}");
        assert_eq!(after(Outcome::Remake), state != State::Requested);
        assert!(after(Outcome::Cancelled));
    }
}

#[test]
fn a_round_is_decided_once_by_the_brand_from_figures() {
    for outcome in Outcome::ALL {
        let state = State::Decided(outcome);
        let mut again = Verdict::new(Outcome::Cancelled);
        again.reason = "changed our mind";
        assert_eq!(
            again.on(state, &designer()),
            Err(Refused::RoundNotIn { state })
        );
    }
    assert_eq!(
        Verdict::new(Outcome::Approved).on(State::Measured, &merchandiser()),
        Err(Refused::OnlyBrand)
    );
    let mut blind = Verdict::new(Outcome::Remake);
    blind.measured = 0;
    blind.reason = "wrong fabric";
    assert_eq!(
        blind.on(State::InWork, &designer()),
        Err(Refused::NothingMeasured)
    );
}

#[test]
fn a_remake_or_a_cancelled_round_says_why() {
    for outcome in [Outcome::Remake, Outcome::Cancelled] {
        assert_eq!(
            Verdict::new(outcome).on(State::Measured, &designer()),
            Err(Refused::ReasonMissing)
        );
    }
}

#[test]
fn a_critical_point_out_of_tolerance_is_not_passed_over() {
    let mut verdict = Verdict::new(Outcome::Approved);
    verdict.critical_out = set(&["point-c", "point-d"]);
    assert_eq!(
        verdict.on(State::Measured, &designer()),
        Err(Refused::CriticalOut {
            points: vec![point_c(), ItemId::new("point-d")]
        })
    );
    // Named as a change, it is not passed over.
    verdict.outcome = Outcome::ApprovedWithChanges;
    verdict.changes = vec![change("point-c", "shorten by 1 cm")];
    assert_eq!(
        verdict.on(State::Measured, &designer()),
        Err(Refused::CriticalOut {
            points: vec![ItemId::new("point-d")]
        })
    );
    verdict.changes.push(change("point-d", "wider"));
    assert!(verdict.on(State::Measured, &designer()).is_ok());
    // A remake passes over nothing either.
    verdict.outcome = Outcome::Remake;
    verdict.reason = "too short";
    assert!(verdict.on(State::Measured, &designer()).is_ok());
}

#[test]
fn a_revision_published_in_mid_round_asks_and_does_not_move_it() {
    let state = State::InWork;
    assert_eq!(asks_about(state, 2, Some(2), None), None);
    assert_eq!(asks_about(state, 2, Some(3), None), Some(3));
    // The newest was withdrawn: there is nothing to go over to.
    assert_eq!(asks_about(state, 2, None, None), None);

    let kept = continue_past(state, &designer(), 2, Some(3), None).unwrap();
    assert_eq!(asks_about(state, 2, Some(3), Some(kept)), None);
    assert_eq!(asks_about(state, 2, Some(4), Some(kept)), Some(4));
    assert_eq!(
        continue_past(state, &designer(), 2, Some(3), Some(kept)),
        Err(Refused::NoNewerRevision)
    );
    assert_eq!(
        continue_past(state, &merchandiser(), 2, Some(3), None),
        Err(Refused::OnlyBrand)
    );
    let decided = State::Decided(Outcome::Approved);
    assert_eq!(asks_about(decided, 2, Some(3), None), None);
}

#[test]
fn names_are_read_back() {
    for state in states() {
        assert_eq!(State::from_name(state.name()), Some(state));
    }
    assert_eq!(State::from_name("decided"), None);
}

#[test]
fn a_corrected_value_changes_what_is_signed() {
    let record = |nm| Record {
        round: RoundId::new("round"),
        kind: Kind::Proto,
        revision: Digest::of(b"revision 2"),
        outcome: Outcome::Approved,
        reason: Digest::of(b"salt and reason"),
        measurements: vec![Measurement {
            id: MeasurementId::new("1"),
            piece: PieceId::new("piece"),
            size: ItemId::new("m"),
            point: point_c(),
            nm: Length::nm(nm),
            side: Side::Factory,
            wash: None,
        }],
        must_fixes: Vec::new(),
    };
    let first = record(720_000_000).digest().unwrap();
    assert_eq!(record(720_000_000).digest().unwrap(), first);
    assert_ne!(record(720_000_001).digest().unwrap(), first);
}
