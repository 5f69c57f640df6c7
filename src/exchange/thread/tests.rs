use super::*;
use crate::exchange::cast::*;

/// Every state, for sweeping over.
const STATES: [State; 7] = [
    State::Open,
    State::Answered,
    State::Agreed,
    State::Changed { revision: 2 },
    State::Verified { revision: 2 },
    State::Closed,
    State::Granted,
];

fn touching(item: &str) -> BTreeSet<ItemId> {
    BTreeSet::from([ItemId::new(item)])
}

#[test]
fn a_question_is_answered_and_closed_by_its_asker() {
    let asked = question("q", raise(Side::Factory, Kind::Question).unwrap());
    assert_eq!(asked.state, State::Open);
    let answered = asked.step(&designer(), Move::Message).unwrap();
    assert_eq!(answered, State::Answered);
    let answered = question("q", answered);
    assert_eq!(
        answered.step(&merchandiser(), Move::Close),
        Ok(State::Closed)
    );
}

#[test]
fn an_asker_who_asks_on_opens_the_question_again() {
    let answered = question("q", State::Answered);
    assert_eq!(
        answered.step(&merchandiser(), Move::Message),
        Ok(State::Open)
    );
    // A colleague speaks for the asker's side too.
    assert_eq!(
        answered.step(&sample_room(), Move::Message),
        Ok(State::Open)
    );
    // More from the one who answered leaves it answered.
    assert_eq!(
        answered.step(&designer(), Move::Message),
        Ok(State::Answered)
    );
    // Talking to oneself answers nothing.
    assert_eq!(
        question("q", State::Open).step(&sample_room(), Move::Message),
        Ok(State::Open)
    );
}

#[test]
fn talk_does_not_move_what_was_agreed_and_nothing_is_said_after_the_end() {
    for state in STATES {
        let thread = must_fix("m", state);
        let expected = match state {
            State::Open => Ok(State::Answered),
            State::Closed | State::Granted => Err(Refused::ThreadClosed),
            other => Ok(other),
        };
        assert_eq!(
            thread.step(&merchandiser(), Move::Message),
            expected,
            "{state:?}"
        );
    }
}

#[test]
fn only_the_asker_or_who_leads_the_askers_organisation_closes_a_question() {
    // The sample room asked: the merchandiser leads the factory.
    let asked = thread("q", Kind::Question, &sample_room(), State::Answered);
    assert_eq!(asked.step(&sample_room(), Move::Close), Ok(State::Closed));
    assert_eq!(asked.step(&merchandiser(), Move::Close), Ok(State::Closed));
    for outsider in [designer(), owner()] {
        assert_eq!(
            asked.step(&outsider, Move::Close),
            Err(Refused::NotTheAsker)
        );
    }
    // A merchandiser of another factory leads nothing here.
    let mut stranger = merchandiser();
    stranger.person = crate::spec::PersonId::new("rafiq");
    stranger.org = meghna();
    assert_eq!(
        asked.step(&stranger, Move::Close),
        Err(Refused::NotTheAsker)
    );

    // The designer asked: the owner leads the brand; the asker's colleague in the factory does not
    // matter.
    let asked = thread("q", Kind::Question, &designer(), State::Answered);
    assert_eq!(asked.step(&owner(), Move::Close), Ok(State::Closed));
    assert_eq!(
        asked.step(&merchandiser(), Move::Close),
        Err(Refused::NotTheAsker)
    );
    // The merchandiser asked: the sample room neither asked nor leads.
    assert_eq!(
        question("q", State::Answered).step(&sample_room(), Move::Close),
        Err(Refused::NotTheAsker)
    );
}

#[test]
fn only_the_brand_raises_closes_or_lets_pass_a_must_fix() {
    assert_eq!(raise(Side::Factory, Kind::MustFix), Err(Refused::OnlyBrand));
    let kind = Kind::MustFix;
    let thread = must_fix("m", State::Answered);
    for mv in [Move::Close, Move::Grant] {
        assert_eq!(
            thread.step(&merchandiser(), mv),
            Err(Refused::OnlyBrandCloses { kind })
        );
    }
    assert_eq!(thread.step(&designer(), Move::Close), Ok(State::Closed));
    assert_eq!(thread.step(&designer(), Move::Grant), Ok(State::Granted));
}

#[test]
fn a_concession_is_asked_for_by_the_factory_and_granted_by_the_brand() {
    assert_eq!(
        raise(Side::Brand, Kind::Concession),
        Err(Refused::OnlyFactory)
    );
    let kind = Kind::Concession;
    let asked = thread("c", kind, &merchandiser(), State::Open);
    assert_eq!(
        asked.step(&merchandiser(), Move::Grant),
        Err(Refused::OnlyBrandCloses { kind })
    );
    assert_eq!(asked.step(&designer(), Move::Grant), Ok(State::Granted));
    // Declined by the brand, taken back by the asker; not by the asker's colleague.
    assert_eq!(asked.step(&designer(), Move::Close), Ok(State::Closed));
    assert_eq!(asked.step(&merchandiser(), Move::Close), Ok(State::Closed));
    assert_eq!(
        asked.step(&sample_room(), Move::Close),
        Err(Refused::NotTheAsker)
    );
    // It is granted or not: there is nothing to agree on or to change.
    assert_eq!(
        asked.step(&designer(), Move::Agree),
        Err(Refused::NoSuchMove { kind })
    );
    let touched = touching("point-c");
    let change = Move::MarkChanged {
        revision: 2,
        touched: &touched,
    };
    assert_eq!(
        asked.step(&designer(), change),
        Err(Refused::NoSuchMove { kind })
    );
    // Once granted it stays so, and covers its item on the revision that it was asked on.
    let granted = thread("c", kind, &merchandiser(), State::Granted);
    assert_eq!(
        granted.step(&designer(), Move::Close),
        Err(Refused::ThreadClosed)
    );
    assert_eq!(
        granted.step(&designer(), Move::Reopen),
        Err(Refused::ThreadNotIn {
            state: State::Granted
        })
    );
    let (item, on) = (&granted.item, granted.raised_on);
    assert!(granted.concedes(item, on));
    assert!(!granted.concedes(item, on + 1) && !granted.concedes(&ItemId::new("another"), on));
    assert!(!asked.concedes(item, on), "asking is not having");
}

#[test]
fn agreeing_takes_the_other_side_or_its_answer() {
    let must_fix = |state| must_fix("m", state);
    assert_eq!(
        must_fix(State::Open).step(&designer(), Move::Agree),
        Err(Refused::OtherSideFirst)
    );
    assert_eq!(
        must_fix(State::Open).step(&merchandiser(), Move::Agree),
        Ok(State::Agreed)
    );
    for either in [designer(), merchandiser()] {
        assert_eq!(
            must_fix(State::Answered).step(&either, Move::Agree),
            Ok(State::Agreed)
        );
    }
    let state = State::Changed { revision: 2 };
    assert_eq!(
        must_fix(state).step(&merchandiser(), Move::Agree),
        Err(Refused::ThreadNotIn { state })
    );
}

#[test]
fn changed_is_accepted_only_when_the_change_list_names_the_item() {
    let agreed = must_fix("m", State::Agreed);
    let mark = |revision, touched: &BTreeSet<ItemId>, by: &Actor| {
        agreed.step(by, Move::MarkChanged { revision, touched })
    };
    let (point_c, point_d) = (touching("point-c"), touching("point-d"));
    assert_eq!(
        mark(2, &point_c, &designer()),
        Ok(State::Changed { revision: 2 })
    );
    assert_eq!(
        mark(2, &point_d, &designer()),
        Err(Refused::ItemUnchanged { revision: 2 })
    );
    // It was raised on revision 1: what that changed is not an answer to it.
    assert_eq!(
        mark(1, &point_c, &designer()),
        Err(Refused::ItemUnchanged { revision: 1 })
    );
    // Revisions are the brand's.
    assert_eq!(mark(2, &point_c, &merchandiser()), Err(Refused::OnlyBrand));
}

#[test]
fn a_must_fix_needs_no_agreement_to_be_changed_but_a_question_does() {
    let touched = touching("point-c");
    let change = Move::MarkChanged {
        revision: 2,
        touched: &touched,
    };
    for state in [State::Open, State::Answered] {
        assert_eq!(
            must_fix("m", state).step(&designer(), change),
            Ok(State::Changed { revision: 2 })
        );
        assert_eq!(
            question("q", state).step(&designer(), change),
            Err(Refused::ThreadNotIn { state })
        );
    }
    assert_eq!(
        question("q", State::Agreed).step(&designer(), change),
        Ok(State::Changed { revision: 2 })
    );
}

#[test]
fn verified_takes_a_measured_sample_of_that_revision_or_a_later_one() {
    let changed = must_fix("m", State::Changed { revision: 3 });
    let verify =
        |revision, measured, by: &Actor| changed.step(by, Move::Verify { revision, measured });
    assert_eq!(
        verify(3, true, &designer()),
        Ok(State::Verified { revision: 3 })
    );
    assert_eq!(
        verify(4, true, &designer()),
        Ok(State::Verified { revision: 3 })
    );
    assert_eq!(
        verify(2, true, &designer()),
        Err(Refused::SampleTooOld { changed_in: 3 })
    );
    assert_eq!(verify(3, false, &designer()), Err(Refused::NothingMeasured));
    assert_eq!(verify(3, true, &merchandiser()), Err(Refused::OnlyBrand));
    let unchanged = must_fix("m", State::Agreed);
    let by_sample = Move::Verify {
        revision: 3,
        measured: true,
    };
    assert!(unchanged.step(&designer(), by_sample).is_err());
}

#[test]
fn what_was_closed_can_be_opened_again_a_must_fix_by_the_brand_alone() {
    assert_eq!(
        question("q", State::Closed).step(&designer(), Move::Reopen),
        Ok(State::Open)
    );
    let closed = must_fix("m", State::Closed);
    assert_eq!(closed.step(&designer(), Move::Reopen), Ok(State::Open));
    assert_eq!(
        closed.step(&merchandiser(), Move::Reopen),
        Err(Refused::OnlyBrand)
    );
    for state in STATES.into_iter().filter(|state| *state != State::Closed) {
        assert_eq!(
            must_fix("m", state).step(&designer(), Move::Reopen),
            Err(Refused::ThreadNotIn { state })
        );
    }
}

#[test]
fn a_question_blocks_until_its_answer_is_accepted() {
    for state in STATES {
        let blocks = matches!(state, State::Open | State::Answered);
        assert_eq!(question("q", state).is_open_question(), blocks, "{state:?}");
        assert!(!must_fix("m", state).is_open_question());
    }
}

#[test]
fn a_must_fix_blocks_until_a_revision_carries_it_or_it_is_let_pass() {
    for state in STATES {
        let in_1 = must_fix("m", state).is_must_fix_open_in(1);
        let in_2 = must_fix("m", state).is_must_fix_open_in(2);
        let settled = state.is_settled();
        // All of STATES that carry a change carry it in revision 2.
        assert_eq!(in_1, !settled, "{state:?}");
        assert_eq!(in_2, !settled && state.changed_in().is_none(), "{state:?}");
        assert!(!question("q", state).is_must_fix_open_in(1));
    }
}

#[test]
fn a_state_is_read_back_as_it_was_kept() {
    for state in STATES {
        assert_eq!(State::read(state.name(), state.changed_in()), Some(state));
    }
    // The column may keep what a closed thread was changed in.
    assert_eq!(State::read("closed", Some(2)), Some(State::Closed));
    assert_eq!(State::read("changed", None), None);
    assert_eq!(State::read("resolved", None), None);
}

#[test]
fn a_thread_waits_for_one_side_until_it_is_settled() {
    let waits = |asker: &Actor, state| thread("t", Kind::Question, asker, state).waits_for();
    for asker in [&designer(), &merchandiser()] {
        assert_eq!(waits(asker, State::Open), Some(asker.side().other()));
        assert_eq!(waits(asker, State::Answered), Some(asker.side()));
        assert_eq!(waits(asker, State::Agreed), Some(Side::Brand));
        assert_eq!(
            waits(asker, State::Changed { revision: 2 }),
            Some(Side::Brand)
        );
        assert_eq!(waits(asker, State::Verified { revision: 2 }), None);
        assert_eq!(waits(asker, State::Closed), None);
    }
}
