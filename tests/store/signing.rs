//! Signing revisions and rounds: what stands in the way, and what a signature holds.

use fellseam::access::{Denied, act};
use fellseam::exchange::Refused;
use fellseam::exchange::round::Outcome;
use fellseam::exchange::signature::SubjectKind;
use fellseam::exchange::{Role, Side};
use fellseam::spec::Digest;
use fellseam::store::{Sign, ThreadMove};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::past::Past;

on_both! {
    async fn both_sides_sign_a_revision(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        assert_eq!(refusal(sao_mai.signs_revision(1).await), Refused::NotAcknowledged);
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        let chain = store.head(&brand.reads().await).await.unwrap();
        brand.signs_revision(sao_mai, 1).await.unwrap();

        let signatures = store.signatures(&sao_mai.reads().await).await.unwrap();
        assert_eq!(signatures.len(), 2);
        let revision = sao_mai.revision(1).await;
        for (signature, side, name, role) in [
            (&signatures[0], Side::Factory, "Linh", Role::Merchandiser),
            (&signatures[1], Side::Brand, "Iris", Role::Designer),
        ] {
            assert_eq!(signature.subject, SubjectKind::Revision);
            assert_eq!(signature.subject_id, revision.id.as_str());
            assert_eq!(signature.org, sao_mai.org);
            assert_eq!((signature.side, signature.role), (side, role));
            assert_eq!(signature.name.as_deref(), Some(name));
            assert_eq!(signature.digest, revision.digest, "the whole one");
            assert_eq!(signature.language, "en");
            assert_eq!(signature.local_time, "2026-03-02T15:00:00+07:00");
        }
        let line = brand.ledger().await.pop().unwrap();
        assert_eq!(line.entry.before, chain.hash);
        assert_eq!(line.entry.hashes["document"], revision.digest);

        assert_eq!(refusal(sao_mai.signs_revision(1).await), Refused::AlreadySigned);
        assert_eq!(refusal(brand.signs_revision(sao_mai, 1).await), Refused::AlreadySigned);
    }
}

on_both! {
    async fn who_may_not_sign_does_not(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        for person in [&sao_mai.hands, &brand.viewer] {
            let permit = person.may_on::<act::Sign>(&brand.style).await;
            assert!(matches!(permit, Err(Denied::NotYours { .. })), "{}", person.name);
        }
        assert_eq!(
            refusal(brand.signs_revision(meghna, 1).await),
            Refused::NotShared,
            "there is nobody to sign with"
        );
        let shown = brand.revision(1).await.digest;
        assert!(is_missing(&brand.signs(Sign::Revision(1), None, &shown).await), "with whom?");
        let org = Some(&sao_mai.org);
        assert!(is_missing(&brand.signs(Sign::Revision(2), org, &shown).await));
    }
}

on_both! {
    async fn an_open_question_stands_in_the_way(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        sao_mai.acknowledges(1).await.unwrap();
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let open = Refused::OpenQuestions { threads: vec![thread.clone()] };
        assert_eq!(refusal(sao_mai.signs_revision(1).await), open);
        brand.says(&thread, "Without it.").await.unwrap();
        assert_eq!(refusal(brand.signs_revision(sao_mai, 1).await), open, "answered, not closed");
        brand.signs_revision(meghna, 1).await.expect("no question of theirs is open");

        sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        brand.signs_revision(sao_mai, 1).await.unwrap();
    }
}

on_both! {
    async fn an_open_must_fix_stands_in_the_way(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        let longer = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        let wider = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();
        sao_mai.moves(&longer, ThreadMove::Agree).await.unwrap();
        let threads = vec![longer.clone(), wider.clone()];
        assert_eq!(refusal(sao_mai.signs_revision(1).await), Refused::MustFixOpen { threads });
        brand.moves(&wider, ThreadMove::Grant).await.unwrap();
        let open = Refused::MustFixOpen { threads: vec![longer.clone()] };
        assert_eq!(refusal(brand.signs_revision(sao_mai, 1).await), open);

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        sao_mai.acknowledges(2).await.unwrap();
        sao_mai.signs_revision(2).await.unwrap();
        brand.signs_revision(sao_mai, 2).await.unwrap();
    }
}

on_both! {
    async fn only_the_current_revision_is_signed_and_only_as_shown(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        let first = sao_mai.revision(1).await.digest;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let old = Refused::NotCurrent { current: Some(2) };
        assert_eq!(refusal(sao_mai.signs_revision(1).await), old);
        assert_eq!(refusal(brand.signs_revision(sao_mai, 1).await), old);

        sao_mai.acknowledges(2).await.unwrap();
        let moved = sao_mai.signs(Sign::Revision(2), None, &first).await;
        assert_eq!(refusal(moved), Refused::ScreenMoved);
        brand.withdraws(2, "Wrong").await.unwrap();
        assert_eq!(
            refusal(sao_mai.signs_revision(2).await),
            Refused::NotCurrent { current: None }
        );
        assert!(cast.store.signatures(&brand.reads().await).await.unwrap().is_empty());
    }
}

on_both! {
    async fn no_person_signs_for_both_sides(db, address) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        // Linh goes over to the brand. No page does that; whoever does it past the program gains
        // nothing.
        let mut past = Past::the_guards(&address).await;
        let linh = &sao_mai.lead.actor.person;
        past.run(&format!(
            "UPDATE person SET org = 'brand', role = 'designer' WHERE id = '{linh}'"
        )).await;
        let token = sao_mai.lead.signs_in().await;
        let actor = store.session(&token).await.unwrap().unwrap().actor;
        assert_eq!((actor.side(), &actor.person), (Side::Brand, linh));
        let facts = store.style_facts(&actor, &brand.style).await.unwrap().unwrap();
        let permit = fellseam::access::grant_on(&actor, &facts).unwrap();
        let shown = brand.revision(1).await.digest;
        let form = fellseam::store::SignForm {
            what: Sign::Revision(1),
            org: Some(&sao_mai.org),
            shown: &shown,
            screen: &shown,
            language: "en",
            local_time: "2026-03-02T15:00:00+07:00",
        };
        assert_eq!(refusal(store.sign(&permit, form).await), Refused::SamePersonBothSides);
        brand.signs_revision(sao_mai, 1).await.expect("somebody else does");
    }
}

on_both! {
    async fn two_of_one_side_who_sign_at_once_sign_once(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        let mut signs = tokio::task::JoinSet::new();
        for _ in 0..10 {
            let (brand, sao_mai) = (brand.clone(), sao_mai.clone());
            signs.spawn(async move { brand.signs_revision(&sao_mai, 1).await });
        }
        let mut outcomes = signs.join_all().await;
        let signed = outcomes.iter().position(Result::is_ok).expect("one signs");
        outcomes.remove(signed).unwrap();
        for other in outcomes {
            assert_eq!(refusal(other), Refused::AlreadySigned);
        }
    }
}

on_both! {
    async fn both_sides_sign_a_decided_round_with_what_was_decided(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let typed = &[(1, "point-c", "28 1/4")];
        let round = measured_round(brand, sao_mai, &["size-m"], typed).await;
        assert_eq!(refusal(sao_mai.signs_round(&round).await), Refused::NothingDecided);
        let change = [("point-c", "Longer")];
        let outcome = Outcome::ApprovedWithChanges;
        brand.decides(&round, outcome, "Nearly", &change).await.unwrap();

        // Its must-fix is open, and the next revision's business.
        sao_mai.signs_round(&round).await.unwrap();
        let fixes = store.must_fixes_of(&brand.reads().await, &round).await.unwrap();
        let record = brand.round(&round).await.record(fixes).unwrap().digest().unwrap();
        let signatures = store.signatures(&brand.reads().await).await.unwrap();
        assert_eq!(signatures[0].digest, record);
        assert_eq!(signatures[0].subject, SubjectKind::Round);
        assert_eq!(signatures[0].subject_id, round.as_str());

        // A value that is corrected meanwhile makes another record.
        sao_mai.measures(&round, &[(1, "point-c", "28 3/8")]).await.unwrap();
        let stale = brand.signs(Sign::Round(&round), None, &record).await;
        assert_eq!(refusal(stale), Refused::ScreenMoved);
        brand.signs_round(&round).await.unwrap();
        let signatures = store.signatures(&brand.reads().await).await.unwrap();
        assert_ne!(signatures[1].digest, record, "and the two signatures show it");
        assert_eq!(refusal(sao_mai.signs_round(&round).await), Refused::AlreadySigned);
    }
}

on_both! {
    async fn a_cancelled_round_or_one_with_an_open_question_is_not_signed(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let typed = &[(1, "point-c", "28 1/2")];
        let round = measured_round(brand, sao_mai, &["size-m"], typed).await;
        brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        let thread = sao_mai.asks("point-c", "Now as well?").await.unwrap();
        assert_eq!(
            refusal(brand.signs_round(&round).await),
            Refused::OpenQuestions { threads: vec![thread] }
        );
        let dropped = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        brand.decides(&dropped, Outcome::Cancelled, "Dropped", &[]).await.unwrap();
        assert_eq!(refusal(brand.signs_round(&dropped).await), Refused::NothingDecided);
        let shown = Digest::of(b"anything");
        let nowhere = fellseam::spec::RoundId::new("nowhere");
        assert!(is_missing(&brand.signs(Sign::Round(&nowhere), None, &shown).await));
    }
}
