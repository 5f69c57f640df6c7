//! Submitting what must be approved, and deciding it.

use fellseam::access::{Denied, act, grant};
use fellseam::exchange::Refused;
use fellseam::exchange::approval::{Anchor, Kind, Standing, Verdict, cmc, standing, usual_limit};
use fellseam::exchange::ledger::Act;
use fellseam::exchange::round;
use fellseam::spec::Decimal;
use fellseam::spec::colour::{Formula, Limit};
use fellseam::spec::document::Illuminant;
use fellseam::store::{Submission, What};

use crate::support::cast::*;
use crate::support::database::on_both;

/// Where each thing of the newest revision stands with a factory, as its people see it.
async fn stands(who: &Party) -> Vec<(Anchor, Standing)> {
    let newest = who.store.newest(&who.reads().await).await.unwrap().unwrap();
    let submitted = who.submissions().await;
    let offered: Vec<_> = submitted.iter().map(Submission::offered).collect();
    let things = who.to_approve().await.into_iter();
    things
        .map(|it| {
            let stands = standing(&it, &newest.frozen.spec, &offered).0;
            (it, stands)
        })
        .collect()
}

async fn of_kind(who: &Party, kind: Kind) -> Anchor {
    let mut all = who.to_approve().await.into_iter();
    all.find(|it| it.kind == kind).expect("a thing of it")
}

on_both! {
    async fn options_are_lettered_for_each_thing_and_decided_once(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let ink = of_kind(sao_mai, Kind::LabDip).await;
        let zip = of_kind(sao_mai, Kind::Trim).await;
        let blind = sao_mai.submits_with(&ink, "", None, &[]).await;
        assert_eq!(refusal(blind), Refused::PhotoMissing);
        let first = sao_mai.submits(&ink, "First bath").await.unwrap();
        sao_mai.submits(&zip, "Matt").await.unwrap();
        let reading = lab("20.5", Illuminant::D65);
        let photo = sao_mai.photographs("second bath").await;
        let second = sao_mai.submits_with(&ink, "Second bath", Some(&reading), &[photo]).await.unwrap();
        let seen = brand.submissions().await;
        let numbers: Vec<_> = seen.iter().map(|it| (it.number, it.photos.len())).collect();
        assert_eq!(numbers, [(1, 1), (1, 1), (2, 1)]);
        assert_eq!(seen[2].note.as_deref(), Some("Second bath"));
        assert_eq!(seen[2].reading, Some(reading));
        assert_eq!(seen[2].instrument.as_deref(), Some("Bay 300, sphere"));
        assert_eq!(seen[2].person.as_deref(), Some("Linh"));

        let silent = brand.judges(&first, Verdict::Rejected, " ").await;
        assert_eq!(refusal(silent), Refused::ReasonMissing);
        brand.judges(&first, Verdict::Rejected, "Too green").await.unwrap();
        brand.judges(&second, Verdict::Approved, "").await.unwrap();
        let again = brand.judges(&second, Verdict::Rejected, "After all").await;
        let verdict = Verdict::Approved;
        assert_eq!(refusal(again), Refused::OptionDecided { verdict });
        assert_eq!(stands(sao_mai).await[0], (ink, Standing::Approved));
        let decided = sao_mai.submissions().await[0].decision.clone().unwrap();
        assert_eq!((decided.verdict, decided.reason.as_deref()), (Verdict::Rejected, Some("Too green")));
        assert_eq!(decided.limit, usual_limit());

        let deeds: Vec<Act> = sao_mai.ledger().await.into_iter().map(|it| it.entry.act).collect();
        assert_eq!(deeds[deeds.len() - 5..], [Act::Submit, Act::Submit, Act::Submit, Act::Approve, Act::Approve]);
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn only_what_the_current_revision_needs_is_submitted(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let mut thread = of_kind(sao_mai, Kind::Trim).await;
        thread.item = item("material-thread");
        assert_eq!(refusal(sao_mai.submits(&thread, "").await), Refused::NothingToApprove);
        let ink = of_kind(sao_mai, Kind::LabDip).await;
        brand.withdraws(1, "Wrong rib").await.unwrap();
        assert_eq!(refusal(sao_mai.submits(&ink, "").await), Refused::NotCurrent { current: None });
        for person in [&sao_mai.hands, &brand.lead, &brand.owner] {
            let permit = person.may_on::<act::Submit>(&brand.style).await;
            assert!(matches!(permit, Err(Denied::NotYours { .. })), "{}", person.name);
        }
    }
}

on_both! {
    async fn a_factory_sees_nothing_of_another_ones_options(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let ink = of_kind(sao_mai, Kind::LabDip).await;
        let theirs = sao_mai.submits(&ink, "First bath").await.unwrap();
        assert!(meghna.submissions().await.is_empty());
        assert_eq!(stands(meghna).await[0].1, Standing::NotSubmitted);
        let own = meghna.submits(&ink, "Another bath").await.unwrap();
        assert_eq!(meghna.submissions().await[0].number, 1, "counted for itself");
        brand.judges(&theirs, Verdict::Approved, "").await.unwrap();
        assert_eq!(stands(meghna).await[0].1, Standing::Waiting, "and decided for itself");
        let seen: Vec<_> = brand.submissions().await.into_iter().map(|it| it.id).collect();
        assert_eq!(seen, [theirs, own]);
        assert!(meghna.ledger().await.iter().all(|it| it.entry.act != Act::Approve));
    }
}

on_both! {
    async fn an_approval_holds_until_what_it_was_given_for_changes(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let things = sao_mai.to_approve().await;
        for thing in &things {
            let option = sao_mai.submits(thing, "As asked").await.unwrap();
            brand.judges(&option, Verdict::Approved, "").await.unwrap();
        }
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let all = stands(sao_mai).await;
        assert!(all.iter().all(|(_, it)| *it == Standing::Approved), "{all:?}");

        brand.edits(|spec| spec.materials.materials[2].zip.puller = "metal".to_owned()).await;
        brand.publishes("Another puller").await.unwrap();
        let lapsed: Vec<Anchor> = stands(sao_mai).await.into_iter()
            .filter(|(_, it)| *it == Standing::Lapsed)
            .map(|(it, _)| it)
            .collect();
        assert_eq!(lapsed.len(), 1);
        assert_eq!(lapsed[0].item, item("material-zip"));
        sao_mai.submits(&lapsed[0], "With the metal puller").await.unwrap();
        assert_eq!(sao_mai.submissions().await.pop().unwrap().number, 2, "the letters go on");
    }
}

/// How many options to decide, or things to submit, wait for them.
async fn waiting(who: &Party) -> Vec<usize> {
    let counts = who.needs().await.into_iter();
    let counts = counts.filter_map(|need| match need.what {
        What::Approvals { count, .. } => Some(count),
        _ => None,
    });
    counts.collect()
}

on_both! {
    async fn what_waits_is_told_to_the_side_that_it_waits_for(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let things = sao_mai.to_approve().await;
        assert!(waiting(sao_mai).await.is_empty(), "there is time");
        let option = sao_mai.submits(&things[0], "First bath").await.unwrap();
        meghna.submits(&things[0], "Another").await.unwrap();
        assert_eq!(waiting(brand).await, [1, 1], "one for each factory");
        brand.judges(&option, Verdict::Approved, "").await.unwrap();
        assert_eq!(waiting(brand).await, [1]);

        let kind = round::Kind::PreProduction;
        brand.requests_a(kind, sao_mai, &["size-m"]).await.unwrap();
        assert_eq!(waiting(sao_mai).await, [things.len() - 1]);
        assert!(waiting(meghna).await.is_empty(), "it was asked for no such round");
        let option = sao_mai.submits(&things[1], "First bath").await.unwrap();
        assert_eq!(waiting(sao_mai).await, [things.len() - 2], "what the brand has is not theirs");
        brand.judges(&option, Verdict::Rejected, "Too pale").await.unwrap();
        assert_eq!(waiting(sao_mai).await, [things.len() - 1]);
        brand.withdraws(1, "Wrong rib").await.unwrap();
        assert!(waiting(sao_mai).await.is_empty(), "nothing can be submitted");
    }
}

on_both! {
    async fn a_decision_keeps_the_limit_of_its_day(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let reads = brand.reads().await;
        assert_eq!(store.colour_limit(&reads).await.unwrap(), None);
        let ink = of_kind(sao_mai, Kind::LabDip).await;
        let before = sao_mai.submits(&ink, "First bath").await.unwrap();
        brand.judges(&before, Verdict::Rejected, "Too green").await.unwrap();
        let limit = Limit { formula: Formula::Ciede2000 {}, at_most: Decimal::new(8, 1) };
        store.set_colour_limit(&brand.owner.may(), &limit).await.unwrap();
        let stricter = Limit { formula: cmc(), at_most: Decimal::new(5, 1) };
        store.set_colour_limit(&brand.owner.may(), &stricter).await.unwrap();
        assert_eq!(store.colour_limit(&sao_mai.reads().await).await.unwrap(), Some(stricter));
        assert!(grant::<act::Govern>(&brand.lead.actor).is_err());
        let after = sao_mai.submits(&ink, "Second bath").await.unwrap();
        brand.judges(&after, Verdict::Approved, "").await.unwrap();
        let limits: Vec<Limit> = brand.submissions().await.into_iter()
            .filter_map(|it| Some(it.decision?.limit))
            .collect();
        assert_eq!(limits, [usual_limit(), stricter]);
    }
}

on_both! {
    async fn who_is_erased_leaves_options_that_hold(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let ink = of_kind(sao_mai, Kind::LabDip).await;
        let option = sao_mai.submits(&ink, "First bath").await.unwrap();
        brand.judges(&option, Verdict::Approved, "Good").await.unwrap();
        store.erase(&sao_mai.lead.actor.person).await.unwrap();
        store.erase(&brand.lead.actor.person).await.unwrap();
        let seen = store.submissions(&brand.owner.on(&brand.style).await).await.unwrap();
        assert_eq!((&seen[0].person, &seen[0].note, &seen[0].photos), (&None, &None, &vec![None]));
        let decided = seen[0].decision.clone().unwrap();
        assert_eq!((decided.person, decided.reason), (None, None));
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}
