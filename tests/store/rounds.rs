//! Sample rounds: asked for, made, measured, decided.

use fellseam::access::{Denied, act};
use fellseam::exchange::Refused;
use fellseam::exchange::round::{Kind, Materials, Move, Outcome, State};
use fellseam::exchange::thread;
use fellseam::store::{NewRound, StoreError};

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn a_round_goes_from_hand_to_hand(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let id = brand.requests(sao_mai, &["size-m", "size-m", "size-l"]).await.unwrap();
        let round = sao_mai.round(&id).await;
        assert_eq!((round.number, round.revision, round.kind), (1, 1, Kind::Proto));
        assert_eq!(round.state, State::Requested);
        assert_eq!(round.digest, brand.revision(1).await.digest);
        let pieces: Vec<_> = round.pieces.iter().map(|it| (it.number, it.size.as_str())).collect();
        assert_eq!(pieces, [(1, "size-m"), (2, "size-m"), (3, "size-l")]);

        // Out of turn, or by the other side.
        assert_eq!(
            refusal(brand.receives(&id).await),
            Refused::RoundNotIn { state: State::Requested }
        );
        let permit = brand.lead.on(&brand.style).await;
        let start = store.receive_round(&permit, &id, Move::Start).await;
        assert_eq!(refusal(start), Refused::OnlyFactory);
        let floor = sao_mai.hands.may_on::<act::Dispatch>(&brand.style).await;
        assert!(matches!(floor, Err(Denied::NotYours { .. })));

        sao_mai.starts(&id).await.unwrap();
        sao_mai.dispatches(&id).await.unwrap();
        let sent = brand.round(&id).await.dispatch.expect("it was sent");
        assert_eq!(sent.materials, Materials::Substitute);
        assert_eq!(sent.substitutes.as_deref(), Some("Zip from stock, matt"));
        assert_eq!(sent.parcel.as_deref(), Some("Kestrel Post 1182"));
        assert_eq!(
            refusal(sao_mai.dispatches(&id).await),
            Refused::RoundNotIn { state: State::Dispatched }
        );
        brand.receives(&id).await.unwrap();
        assert_eq!(refusal(brand.finishes_measuring(&id).await), Refused::NothingMeasured);
        brand.measures(&id, &[(3, "point-c", "29 1/8")]).await.unwrap();
        brand.finishes_measuring(&id).await.unwrap();
        assert_eq!(brand.round(&id).await.state, State::Measured);
    }
}

on_both! {
    async fn a_round_is_asked_of_the_current_revision_in_its_sizes(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        for sizes in [&[][..], &["size-xxl"], &["size-m"; 51]] {
            let refused = brand.requests(sao_mai, sizes).await;
            assert_eq!(refusal(refused), Refused::PiecesMissing, "{}", sizes.len());
        }
        assert!(is_missing(&brand.requests(meghna, &["size-m"]).await), "not shared");
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let pieces = [item("size-m")];
        let new = NewRound { org: &sao_mai.org, kind: Kind::Fit, revision: 1, pieces: &pieces };
        let permit = brand.lead.on(&brand.style).await;
        let old = store.request_round(&permit, new.clone()).await;
        assert_eq!(refusal(old), Refused::NotCurrent { current: Some(2) });
        let none = store.request_round(&permit, NewRound { revision: 9, ..new }).await;
        assert!(is_missing(&none));
        assert!(brand.rounds().await.is_empty());
    }
}

on_both! {
    async fn rounds_are_counted_with_each_factory(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        for factory in [sao_mai, meghna, sao_mai] {
            brand.requests(factory, &["size-m"]).await.unwrap();
        }
        let numbers = |rounds: &[fellseam::store::Round]| {
            rounds.iter().map(|it| it.number).collect::<Vec<_>>()
        };
        assert_eq!(numbers(&sao_mai.rounds().await), [1, 2]);
        assert_eq!(numbers(&meghna.rounds().await), [1]);
        assert_eq!(brand.rounds().await.len(), 3);
    }
}

on_both! {
    async fn a_new_revision_does_not_move_a_round(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        assert_eq!(refusal(brand.continues(&round).await), Refused::NoNewerRevision);
        brand.edits(|spec| set_base(spec, "point-c", "30")).await;
        brand.publishes("Longer").await.unwrap();

        sao_mai.starts(&round).await.unwrap();
        sao_mai.measures(&round, &[(1, "point-c", "28 1/2")]).await.unwrap();
        let seen = sao_mai.round(&round).await;
        assert_eq!((seen.revision, seen.continued_at), (1, None));
        assert_eq!(seen.summary().out, 0, "judged by the revision that it is bound to");
        brand.continues(&round).await.unwrap();
        assert_eq!(sao_mai.round(&round).await.continued_at, Some(2));
        assert_eq!(refusal(brand.continues(&round).await), Refused::NoNewerRevision);
    }
}

on_both! {
    async fn restarting_ends_a_round_and_asks_for_it_anew_or_does_neither(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let old = brand.requests(sao_mai, &["size-m", "size-l"]).await.unwrap();
        assert_eq!(refusal(brand.restarts(&old, 1).await), Refused::NoNewerRevision);
        brand.edits(|spec| set_base(spec, "point-c", "30")).await;
        brand.publishes("Longer").await.unwrap();
        sao_mai.starts(&old).await.unwrap();
        // The page showed revision 2, and 3 came in between.
        brand.edits(|spec| set_base(spec, "point-c", "31")).await;
        brand.publishes("Longer still").await.unwrap();
        assert_eq!(
            refusal(brand.restarts(&old, 2).await),
            Refused::NotCurrent { current: Some(3) }
        );
        assert_eq!(brand.round(&old).await.state, State::InWork, "nothing was done by halves");

        let new = brand.restarts(&old, 3).await.unwrap();
        let (old, new) = (brand.round(&old).await, sao_mai.round(&new).await);
        assert_eq!(old.state, State::Decided(Outcome::Cancelled));
        assert_eq!(old.decision.unwrap().reason.as_deref(), Some("Restarted"));
        assert_eq!((new.number, new.revision, new.kind, new.state),
            (2, 3, old.kind, State::Requested));
        let sizes = |pieces: &[fellseam::store::Piece]| -> Vec<_> {
            pieces.iter().map(|it| it.size.clone()).collect()
        };
        assert_eq!(sizes(&new.pieces), sizes(&old.pieces));
        assert_eq!(refusal(brand.restarts(&old.id, 3).await), Refused::NoNewerRevision);
        assert_eq!(cast.store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn approved_with_changes_raises_must_fixes(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let typed = &[(1, "point-c", "28"), (1, "point-a", "21 1/2")];
        let round = measured_round(brand, sao_mai, &["size-m"], typed).await;
        let outcome = Outcome::ApprovedWithChanges;
        for changes in [&[][..], &[("point-c", " ")], &[("point-zz", "Longer")]] {
            let refused = brand.decides(&round, outcome, "Good", changes).await;
            assert_eq!(refusal(refused), Refused::ChangesMissing, "{changes:?}");
        }
        let changes = [("point-c", " Longer "), ("part-2", "Softer rib")];
        brand.decides(&round, outcome, " Good otherwise ", &changes).await.unwrap();

        let decided = sao_mai.round(&round).await;
        assert_eq!(decided.state, State::Decided(outcome));
        let decision = decided.decision.as_ref().unwrap();
        assert_eq!(decision.outcome, outcome);
        assert_eq!(decision.person.as_deref(), Some("Iris"));
        assert_eq!(decision.reason.as_deref(), Some("Good otherwise"));
        let threads = sao_mai.threads().await;
        assert_eq!(threads.len(), 2);
        for thread in &threads {
            assert_eq!(thread.facts.kind, thread::Kind::MustFix);
            assert_eq!(thread.facts.state, thread::State::Open);
            assert_eq!(thread.round.as_ref(), Some(&round));
            assert_eq!(thread.facts.raised_on, 1);
        }
        let said = |id: &str| {
            let thread = threads.iter().find(|it| it.facts.item == item(id)).unwrap();
            thread.messages[0].text.clone().unwrap()
        };
        assert_eq!((&*said("point-c"), &*said("part-2")), ("Longer", "Softer rib"));
        let fixes = store.must_fixes_of(&sao_mai.reads().await, &round).await.unwrap();
        assert_eq!(fixes.len(), 2);
        assert_eq!(
            refusal(brand.decides(&round, Outcome::Remake, "No", &[]).await),
            Refused::RoundNotIn { state: State::Decided(outcome) }
        );

        // The next round takes a revision that carries them.
        let same = brand.requests(sao_mai, &["size-m"]).await;
        assert_eq!(refusal(same), Refused::NewerRevisionNeeded { than: 1 });
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let Refused::MustFixOpen { threads } = refusal(brand.requests(sao_mai, &["size-m"]).await)
        else { panic!("the rib is open") };
        assert_eq!(threads.len(), 2, "nobody said yet that revision 2 carries them");
        for thread in &fixes {
            let at = brand.thread(thread).await.facts.item;
            let step = match at == item("point-c") {
                true => fellseam::store::ThreadMove::MarkChanged,
                false => fellseam::store::ThreadMove::Grant,
            };
            brand.moves(thread, step).await.unwrap();
        }
        brand.requests(sao_mai, &["size-m"]).await.unwrap();
    }
}

on_both! {
    async fn a_critical_point_out_of_tolerance_is_not_passed_over(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        // Point A is critical: 21 1/2 in, 3/8 in less and more.
        let typed = &[(1, "point-a", "22"), (1, "point-c", "30")];
        let round = measured_round(brand, sao_mai, &["size-m"], typed).await;
        let critical = Refused::CriticalOut { points: vec![item("point-a")] };
        let approve = brand.decides(&round, Outcome::Approved, "", &[]).await;
        assert_eq!(refusal(approve), critical);
        let change = [("point-c", "Shorter")];
        let other = brand.decides(&round, Outcome::ApprovedWithChanges, "", &change).await;
        assert_eq!(refusal(other), critical);
        assert!(brand.threads().await.is_empty(), "nothing of it happened");

        let pass = sao_mai.asks_concession("point-a", "From stock").await.unwrap();
        let asked = brand.decides(&round, Outcome::Approved, "", &[]).await;
        assert_eq!(refusal(asked), critical, "asking is not having");
        brand.moves(&pass, fellseam::store::ThreadMove::Grant).await.unwrap();
        brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        assert_eq!(sao_mai.round(&round).await.state, State::Decided(Outcome::Approved));

        // It was granted on revision 1: the next revision may ask for something else.
        brand.edits(|spec| set_base(spec, "point-a", "21 1/4")).await;
        brand.publishes("Narrower").await.unwrap();
        let next = measured_round(brand, sao_mai, &["size-m"], typed).await;
        let approve = brand.decides(&next, Outcome::Approved, "", &[]).await;
        assert_eq!(refusal(approve), critical);
        let pass = sao_mai.asks_concession("point-a", "The last of it").await.unwrap();
        brand.moves(&pass, fellseam::store::ThreadMove::Grant).await.unwrap();
        brand.decides(&next, Outcome::Approved, "", &[]).await.unwrap();
    }
}

on_both! {
    async fn remaking_and_cancelling_say_why(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        let early = brand.decides(&round, Outcome::Approved, "", &[]).await;
        assert_eq!(refusal(early), Refused::RoundNotIn { state: State::Requested });
        sao_mai.starts(&round).await.unwrap();
        let blind = brand.decides(&round, Outcome::Remake, "Too short", &[]).await;
        assert_eq!(refusal(blind), Refused::NothingMeasured);
        sao_mai.measures(&round, &[(1, "point-c", "26")]).await.unwrap();
        for outcome in [Outcome::Remake, Outcome::Cancelled] {
            let silent = brand.decides(&round, outcome, " ", &[]).await;
            assert_eq!(refusal(silent), Refused::ReasonMissing);
        }
        brand.decides(&round, Outcome::Remake, "Too short", &[]).await.unwrap();
        // A remake is of the same revision.
        let again = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        brand.decides(&again, Outcome::Cancelled, "Season dropped", &[]).await.unwrap();
        assert_eq!(sao_mai.round(&again).await.state, State::Decided(Outcome::Cancelled));
        assert!(brand.threads().await.is_empty());
        let rounds = cast.store.styles(&brand.lead.may()).await.unwrap();
        assert_eq!(rounds[0].open_rounds, 0);
    }
}

on_both! {
    async fn two_who_decide_at_once_decide_once(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = measured_round(brand, sao_mai, &["size-m"], &[(1, "point-c", "28")]).await;
        let change = [("point-c", "Longer")];
        let (one, two) = tokio::join!(
            brand.decides(&round, Outcome::Remake, "Short", &[]),
            brand.decides(&round, Outcome::ApprovedWithChanges, "Short", &change),
        );
        assert!(one.is_ok() != two.is_ok(), "{one:?} {two:?}");
        let lost = one.and(two);
        assert!(matches!(lost, Err(StoreError::Refused(..))), "{lost:?}");
        let decided = brand.round(&round).await;
        let threads = brand.threads().await.len();
        match decided.state {
            State::Decided(Outcome::Remake) => assert_eq!(threads, 0),
            State::Decided(Outcome::ApprovedWithChanges) => assert_eq!(threads, 1),
            state => panic!("{state:?}"),
        }
    }
}
