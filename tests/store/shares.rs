//! Sharing a style with a factory, and what a factory then sees: its own exchange and no other's.

use fellseam::access::{Denied, act};
use fellseam::exchange::ledger::Act;
use fellseam::exchange::round::Outcome;
use fellseam::exchange::thread::Kind;
use fellseam::spec::{OrgId, RoundId, StyleId};
use fellseam::store::{Audience, NewThread, Says, Sign, ThreadMove};

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn a_factory_learns_of_a_style_when_it_is_shared(db) {
        let cast = Cast::new(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.publishes("First issue").await.unwrap();
        let hidden = sao_mai.lead.may_on::<act::Read>(&brand.style).await;
        assert_eq!(hidden.err(), Some(Denied::Hidden));
        assert!(sao_mai.needs().await.is_empty());

        brand.shares_with(sao_mai).await.unwrap();
        assert_eq!(sao_mai.revision(1).await.number, 1);
        assert_eq!(sao_mai.needs().await.len(), 1);
        let styles = cast.store.shared_styles(&sao_mai.lead.may()).await.unwrap();
        assert_eq!(styles.len(), 1);
        assert_eq!((&*styles[0].number, styles[0].revision), ("HT-204", 1));

        // No other factory does.
        let hidden = meghna.lead.may_on::<act::Read>(&brand.style).await;
        assert_eq!(hidden.err(), Some(Denied::Hidden));
        assert!(cast.store.shared_styles(&meghna.lead.may()).await.unwrap().is_empty());
        let nowhere = meghna.lead.may_on::<act::Read>(&StyleId::new("nowhere")).await;
        assert_eq!(nowhere.err(), Some(Denied::Hidden), "told apart from none by nothing");
    }
}

on_both! {
    async fn sharing_twice_is_one_share_and_only_factories_are_shared_with(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let before = brand.ledger().await.len();
        brand.shares_with(sao_mai).await.unwrap();
        assert_eq!(brand.ledger().await.len(), before, "nothing was done");
        assert_eq!(store.shares(&brand.reads().await).await.unwrap().len(), 1);

        for nobody in ["brand", "nowhere"] {
            let permit = brand.lead.on(&brand.style).await;
            assert!(is_missing(&store.share(&permit, &OrgId::new(nobody)).await), "{nobody}");
        }
        assert!(is_missing(&brand.ends_share_with(&cast.meghna).await), "it has none");
    }
}

on_both! {
    async fn when_a_share_ends_the_factory_sees_and_does_nothing_more(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        let value = sao_mai.value(&round, 1, "point-c", "28").await;
        let shown = sao_mai.revision(1).await.digest;
        // Pages that were open when it ended.
        let (acknowledge, ask, answer, dispatch, sign) = (
            sao_mai.lead.on(&brand.style).await,
            sao_mai.lead.on(&brand.style).await,
            sao_mai.lead.on(&brand.style).await,
            sao_mai.lead.on(&brand.style).await,
            sao_mai.lead.on(&brand.style).await,
        );
        let measure = sao_mai.hands.on(&brand.style).await;
        let entries = brand.ledger().await.len();

        brand.ends_share_with(sao_mai).await.unwrap();
        let hidden = sao_mai.lead.may_on::<act::Read>(&brand.style).await;
        assert_eq!(hidden.err(), Some(Denied::Hidden));
        assert!(sao_mai.needs().await.is_empty());
        assert!(store.shared_styles(&sao_mai.lead.may()).await.unwrap().is_empty());

        let says = Says { text: "Still here?", language: "en", photos: &[] };
        let new = NewThread {
            item: &item("point-c"), revision: 1, kind: Kind::Question, org: None, says,
        };
        assert!(is_missing(&store.acknowledge(&acknowledge, 1).await));
        assert!(is_missing(&store.ask(&ask, new).await));
        assert!(is_missing(&store.say(&answer, &thread, says).await));
        assert!(is_missing(&store.move_thread(&answer, &thread, &ThreadMove::Close).await));
        assert!(is_missing(&store.start_round(&dispatch, &round).await));
        assert!(is_missing(&store.measure(&measure, &round, &[value]).await));
        let form = fellseam::store::SignForm {
            what: Sign::Revision(1), org: None, shown: &shown, screen: &shown,
            language: "en", local_time: "",
        };
        assert!(is_missing(&store.sign(&sign, form).await));
        // And the brand begins nothing with it.
        assert!(is_missing(&brand.asks(sao_mai, "point-c", "Longer?").await));
        assert!(is_missing(&brand.requests(sao_mai, &["size-m"]).await));

        assert_eq!(brand.ledger().await.len(), entries + 1, "the end of the share alone");
    }
}

on_both! {
    async fn sharing_again_brings_everything_back(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        brand.ends_share_with(sao_mai).await.unwrap();
        assert!(is_missing(&brand.ends_share_with(sao_mai).await), "it ended already");
        let ended = store.shares(&brand.reads().await).await.unwrap();
        assert!(ended[0].ended_at.is_some());
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();

        brand.shares_with(sao_mai).await.unwrap();
        let shares = store.shares(&sao_mai.reads().await).await.unwrap();
        assert_eq!(shares.len(), 1);
        assert_eq!(shares[0].ended_at, None);
        assert!(shares[0].shared_at > ended[0].shared_at);
        assert_eq!(sao_mai.revision(2).await.number, 2);
        assert_eq!(sao_mai.thread(&thread).await.messages.len(), 1);
        sao_mai.acknowledges(2).await.unwrap();
    }
}

/// An act that waits for the style's lock while the share ends must see that it ended.
async fn an_act_waits_while_the_share_ends(db: fellseam::store::Db) {
    use fellseam::store::values;
    let cast = Cast::with_revision(db.clone()).await;
    let permit = cast.sao_mai.lead.on(&cast.brand.style).await;

    let tx = db.begin().await.unwrap();
    let style = values![cast.brand.style];
    tx.run(
        "UPDATE ledger_head SET seq = seq WHERE style = $1",
        style.clone(),
    )
    .await
    .unwrap();
    let store = cast.store.clone();
    let waiting = tokio::spawn(async move { store.acknowledge(&permit, 1).await });
    tokio::time::sleep(std::time::Duration::from_millis(300)).await;
    assert!(!waiting.is_finished());
    tx.run(
        "UPDATE share SET ended_at = '2026-03-02T08:30:00.000Z' WHERE style = $1",
        style,
    )
    .await
    .unwrap();
    tx.commit().await.unwrap();

    let outcome = waiting.await.unwrap();
    assert!(
        is_missing(&outcome),
        "acknowledged after the share ended: {outcome:?}"
    );
}

on_both! {
    async fn an_act_that_waited_sees_what_happened_meanwhile(db) {
        an_act_waits_while_the_share_ends(db).await;
    }
}

/// Both factories have the style, and each has a thread, a photograph, a decided and signed round,
/// an acknowledgement and a signature.
struct Busy {
    cast: Cast,
    rounds: [RoundId; 2],
    photos: [fellseam::spec::Digest; 2],
}

async fn busy(db: fellseam::store::Db) -> Busy {
    let cast = Cast::with_revision(db).await;
    cast.brand.shares_with(&cast.meghna).await.unwrap();
    let mut rounds = Vec::new();
    let mut photos = Vec::new();
    for factory in [&cast.sao_mai, &cast.meghna] {
        let brand = &cast.brand;
        let thread = factory.asks("point-c", "Like this?").await.unwrap();
        let photo = factory.photographs(factory.lead.name).await;
        factory
            .sends(&thread, "See here", std::slice::from_ref(&photo))
            .await
            .unwrap();
        brand.says(&thread, "Yes").await.unwrap();
        factory.moves(&thread, ThreadMove::Close).await.unwrap();
        factory.acknowledges(1).await.unwrap();
        factory.signs_revision(1).await.unwrap();
        brand.signs_revision(factory, 1).await.unwrap();
        let round = measured_round(brand, factory, &["size-m"], &[(1, "point-c", "28 1/2")]).await;
        let change = [("point-c", "Mind the hem")];
        brand
            .decides(&round, Outcome::ApprovedWithChanges, "Good", &change)
            .await
            .unwrap();
        brand.signs_round(&round).await.unwrap();
        rounds.push(round);
        photos.push(photo);
    }
    Busy {
        rounds: rounds.try_into().unwrap(),
        photos: photos.try_into().unwrap(),
        cast,
    }
}

on_both! {
    async fn a_factory_sees_nothing_of_another(db) {
        let Busy { cast, rounds, photos } = busy(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        for (of, (own, other)) in [(sao_mai, (0, 1)), (meghna, (1, 0))] {
            let reads = of.reads().await;
            let threads = store.threads(&reads).await.unwrap();
            assert_eq!(threads.len(), 2);
            assert!(threads.iter().all(|it| it.facts.factory == of.org));
            assert!(threads.iter().all(|it| !it.messages.is_empty()));

            let seen = store.rounds(&reads).await.unwrap();
            assert_eq!(seen.iter().map(|it| &it.id).collect::<Vec<_>>(), [&rounds[own]]);
            assert_eq!((seen[0].number, seen[0].measurements.len()), (1, 1));
            assert!(is_missing(&store.round(&reads, &rounds[other]).await));
            let fixes = store.must_fixes_of(&reads, &rounds[own]).await.unwrap();
            assert_eq!(fixes.len(), 1);
            let fixes = store.must_fixes_of(&reads, &rounds[other]).await.unwrap();
            assert!(fixes.is_empty(), "the must-fixes of another's round");

            let signatures = store.signatures(&reads).await.unwrap();
            assert_eq!(signatures.len(), 3);
            assert!(signatures.iter().all(|it| it.org == of.org));

            let signed = store.signed(&reads).await.unwrap();
            assert_eq!(signed.len(), 3);
            assert!(signed.iter().all(|it| it.factory == of.org));
            let facts = store.thread_facts(&reads).await.unwrap();
            assert_eq!(facts.len(), 2);
            assert!(facts.iter().all(|it| it.factory == of.org));

            let acknowledged = store.acknowledgements(&reads).await.unwrap();
            assert_eq!(acknowledged.iter().map(|it| &it.org).collect::<Vec<_>>(), [&of.org]);
            let shares = store.shares(&reads).await.unwrap();
            assert_eq!(shares.iter().map(|it| &it.org).collect::<Vec<_>>(), [&of.org]);

            assert!(store.picture(&reads, &photos[own], 320).await.is_ok());
            assert!(is_missing(&store.picture(&reads, &photos[other], 320).await));

            // The chain knows both; each reads its own part, and what is for all.
            let lines = store.ledger(&reads).await.unwrap();
            let seen = |line: &fellseam::store::LedgerLine| {
                !line.entry.internal
                    && line.entry.visible_to.as_ref().is_none_or(|org| *org == of.org)
            };
            assert!(lines.iter().all(seen));
            let acts: Vec<Act> = lines.iter().map(|line| line.entry.act).collect();
            for act in [Act::Publish, Act::Share, Act::Ask, Act::Decide, Act::Sign] {
                assert!(acts.contains(&act), "{act:?}");
            }
            assert!(!acts.contains(&Act::Create), "internal to the brand");

            let needs = of.needs().await;
            assert!(!needs.is_empty());
            assert!(needs.iter().all(|need| need.org_name == if of.org == sao_mai.org {
                "Sao Mai Garment"
            } else {
                "Meghna Knit Works"
            }));

            // Neither moves what is the other's.
            let theirs = store.threads(&brand.reads().await).await.unwrap();
            let theirs = theirs.iter().find(|it| it.facts.factory != of.org).unwrap();
            let id = &theirs.facts.id;
            assert!(is_missing(&of.says(id, "Who is this?").await));
            assert!(is_missing(&of.moves(id, ThreadMove::Close).await));
            assert!(is_missing(&of.dispatches(&rounds[other]).await));
            let (piece, point) = (1, "point-c");
            let mut value = of.value(&rounds[own], piece, point, "28").await;
            value.piece = brand.round(&rounds[other]).await.pieces[0].id.clone();
            let permit = of.hands.on(&of.style).await;
            let values = [value];
            assert!(is_missing(&store.measure(&permit, &rounds[other], &values).await));
            assert!(is_missing(&store.measure(&permit, &rounds[own], &values).await));
            let shown = &seen_digest();
            let signed = of.signs(Sign::Round(&rounds[other]), None, shown).await;
            assert!(is_missing(&signed));
        }
        let reads = brand.reads().await;
        assert_eq!(store.threads(&reads).await.unwrap().len(), 4);
        assert_eq!(store.rounds(&reads).await.unwrap().len(), 2);
        assert_eq!(store.signatures(&reads).await.unwrap().len(), 6);
        assert_eq!(store.acknowledgements(&reads).await.unwrap().len(), 2);
        for photo in &photos {
            assert!(store.picture(&reads, photo, 320).await.is_ok());
        }
    }
}

fn seen_digest() -> fellseam::spec::Digest {
    fellseam::spec::Digest::of(b"never shown")
}

on_both! {
    async fn a_factory_reads_names_as_published_and_nothing_of_the_draft(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        sao_mai.asks("point-c", "With the rib?").await.unwrap();
        brand.requests(sao_mai, &["size-m"]).await.unwrap();
        let mut events = store.listen();
        brand.edits(|spec| {
            spec.header.name = "Secret new name".to_owned();
            spec.header.number = "HT-777".to_owned();
        }).await;

        let reads = sao_mai.reads().await;
        let name = store.style_name(&reads).await.unwrap();
        assert_eq!((&*name.number, &*name.name), ("HT-204", "Shoal half-zip"));
        let needs = sao_mai.needs().await;
        assert!(needs.len() >= 2, "{needs:?}");
        for need in needs {
            assert_eq!((&*need.number, &*need.name), ("HT-204", "Shoal half-zip"), "{need:?}");
        }
        let name = store.style_name(&brand.reads().await).await.unwrap();
        assert_eq!((&*name.number, &*name.name), ("HT-777", "Secret new name"));
        for need in brand.needs().await {
            assert_eq!((&*need.number, &*need.name), ("HT-777", "Secret new name"), "{need:?}");
        }
        let event = events.recv().await.unwrap();
        assert_eq!(event.audience, Audience::Brand);
        assert!(event.concerns(None) && !event.concerns(Some(&sao_mai.org)));
    }
}

on_both! {
    async fn events_reach_whom_they_concern(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let mut events = store.listen();
        sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let event = events.recv().await.unwrap();
        assert_eq!(event.style, brand.style);
        assert!(event.concerns(None) && event.concerns(Some(&sao_mai.org)));
        assert!(!event.concerns(Some(&meghna.org)));

        brand.withdraws(1, "Wrong sizes").await.unwrap();
        let event = events.recv().await.unwrap();
        assert!(event.concerns(Some(&sao_mai.org)) && event.concerns(Some(&meghna.org)));

        // What is refused tells nobody.
        refusal(brand.withdraws(1, "Wrong sizes").await);
        assert!(events.try_recv().is_err());
    }
}
