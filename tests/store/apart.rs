//! Two styles of one brand with one factory do not mix.

use std::collections::BTreeSet;

use fellseam::exchange::round::Outcome;
use fellseam::spec::Section;
use fellseam::store::{Saved, ThreadMove, What};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::walk::whole_walk;

/// The same cast at work on a second style, where a little of everything happened.
async fn second_style(cast: &Cast) -> (Brand, Factory) {
    let mut spec = another_style();
    spec.header.name = "Reef half-zip".to_owned();
    let style = cast.brand.lead.starts(&spec).await;
    let (brand, sao_mai) = (cast.brand.on(&style), cast.sao_mai.on(&style));
    brand.publishes("First issue of the second").await.unwrap();
    brand.shares_with(&sao_mai).await.unwrap();
    sao_mai.acknowledges(1).await.unwrap();
    let thread = sao_mai.asks("point-b", "So wide?").await.unwrap();
    let photo = sao_mai.photographs("the bottom").await;
    sao_mai.sends(&thread, "See", &[photo]).await.unwrap();
    brand.says(&thread, "Yes").await.unwrap();
    sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
    let round = measured_round(&brand, &sao_mai, &["size-s"], &[(1, "point-b", "18")]).await;
    let change = [("point-b", "Wider")];
    let outcome = Outcome::ApprovedWithChanges;
    brand
        .decides(&round, outcome, "Nearly", &change)
        .await
        .unwrap();
    sao_mai.signs_round(&round).await.unwrap();
    (brand, sao_mai)
}

on_both! {
    async fn each_style_shows_its_own(db) {
        let cast = whole_walk(db).await;
        let first = &cast.brand;
        let before = (first.threads().await.len(), first.rounds().await.len());
        let (second, sao_mai) = second_style(&cast).await;
        let store = &cast.store;

        for reads in [second.reads().await, sao_mai.reads().await] {
            let name = store.style_name(&reads).await.unwrap();
            assert_eq!((&*name.number, &*name.name), ("HT-205", "Reef half-zip"));
            let threads = store.threads(&reads).await.unwrap();
            let items: Vec<_> = threads.iter().map(|it| it.facts.item.as_str()).collect();
            assert_eq!(items, ["point-b", "point-b"]);
            let said: Vec<_> = threads.iter().map(|it| it.messages.len()).collect();
            assert_eq!(said, [3, 1]);
            assert_eq!(threads[0].messages[1].photos.len(), 1);
            assert_eq!(store.thread_facts(&reads).await.unwrap().len(), 2);

            let rounds = store.rounds(&reads).await.unwrap();
            assert_eq!(rounds.len(), 1);
            let round = &rounds[0];
            assert_eq!((round.number, round.pieces.len(), round.measurements.len()), (1, 1, 1));
            assert_eq!(store.must_fixes_of(&reads, &round.id).await.unwrap().len(), 1);
            assert_eq!(store.signatures(&reads).await.unwrap().len(), 1);
            assert_eq!(store.signed(&reads).await.unwrap().len(), 1);
            assert_eq!(store.acknowledgements(&reads).await.unwrap().len(), 1);
            assert_eq!(store.shares(&reads).await.unwrap().len(), 1);
            assert_eq!(store.revisions(&reads).await.unwrap().len(), 1);
            assert_eq!(store.newest(&reads).await.unwrap().unwrap().number, 1);
            assert!(is_missing(&store.revision(&reads, 2).await));
            assert!(is_missing(&store.revision_bytes(&reads, 2).await));
            let of_first = store.revision_bytes(&first.reads().await, 1).await.unwrap();
            assert_ne!(store.revision_bytes(&reads, 1).await.unwrap(), of_first);

            // Nothing of the first is found from here, by whatever id.
            for round in first.rounds().await {
                assert!(is_missing(&store.round(&reads, &round.id).await));
                assert_eq!(store.must_fixes_of(&reads, &round.id).await.unwrap(), []);
            }
            for card in store.revision_cards(&first.reads().await).await.unwrap() {
                assert!(is_missing(&store.content(&reads, &card).await));
            }
            let seqs: Vec<_> = store.ledger(&reads).await.unwrap();
            assert!(seqs.iter().all(|line| line.entry.seq <= 20));
        }
        assert_eq!((first.threads().await.len(), first.rounds().await.len()), before);
        let audit = store.audit().await.unwrap();
        assert_eq!((audit.styles, audit.faults), (2, Vec::new()));
    }
}

on_both! {
    async fn drafts_of_two_styles_do_not_mix(db) {
        let cast = whole_walk(db).await;
        let first = &cast.brand;
        let (second, _) = second_style(&cast).await;
        let (spec, versions) = second.draft().await;
        assert_eq!(spec.header.name, "Reef half-zip");
        assert!(versions.values().all(|version| *version == 1));
        second.edits(|spec| {
            set_base(spec, "point-c", "30");
            spec.header.name = "Ledge half-zip".to_owned();
        }).await;
        let names = [first, &second].map(async |brand: &Brand| {
            cast.store.style_name(&brand.reads().await).await.unwrap().name
        });
        let [first_name, second_name] = names;
        assert_eq!(first_name.await, "Shoal half-zip");
        assert_eq!(second_name.await, "Ledge half-zip");
        assert_eq!(first.draft().await.0.header.name, "Shoal half-zip");
        assert_eq!(second.draft().await.0.header.name, "Ledge half-zip");
        let lost = second.saves(Section::Points, 1, &spec).await.unwrap();
        let Saved::Lost(id) = lost else { panic!("{lost:?}") };

        let here = first.lead.on(&first.style).await;
        assert!(cast.store.lost_saves(&here).await.unwrap().is_empty());
        assert!(is_missing(&cast.store.resolve_save(&here, &id).await));
        let permit = first.lead.on(&first.style).await;
        let history = cast.store.section_history(&permit, Section::Points).await.unwrap();
        assert_eq!(history.len(), 3, "of the first");
        let permit = second.lead.on(&second.style).await;
        let history = cast.store.section_history(&permit, Section::Points).await.unwrap();
        assert_eq!(history.len(), 2, "of the second");
        let sections = cast.store.revision_sections(&permit, 1).await.unwrap();
        assert!(sections.values().all(|version| *version == 1));
        assert_eq!(sections.len(), Section::ALL.len());
    }
}

on_both! {
    async fn lists_count_each_style_by_itself(db) {
        let cast = whole_walk(db).await;
        let (second, sao_mai) = second_style(&cast).await;
        let open = second.asks(&sao_mai, "point-c", "Can you?").await.unwrap();
        let cards = cast.store.styles(&second.viewer.may()).await.unwrap();
        let cards: Vec<_> = cards
            .iter()
            .map(|it| (&*it.number, it.newest, it.open_threads, it.open_rounds))
            .collect();
        // Of the first: two must-fixes of its round. Of the second: its must-fix and the question.
        assert_eq!(cards, [("HT-205", Some(1), 2, 0), ("HT-204", Some(3), 2, 0)]);

        let shared = cast.store.shared_styles(&sao_mai.lead.may()).await.unwrap();
        let shared: Vec<_> = shared.iter().map(|it| (&*it.number, it.revision)).collect();
        assert_eq!(shared, [("HT-205", 1), ("HT-204", 3)]);
        assert!(cast.store.shared_styles(&second.lead.may()).await.unwrap().is_empty());

        let needs = sao_mai.needs().await;
        let of_second: BTreeSet<String> = needs
            .iter()
            .filter(|need| need.style == second.style)
            .map(|need| match &need.what {
                What::Thread { id, item, .. } => format!("{item} {}", *id == open),
                What::SignRevision { revision, .. } => format!("sign {revision}"),
                other => panic!("{other:?}"),
            })
            .collect();
        let expected = ["point-b false", "point-c true", "sign 1"];
        assert_eq!(of_second, BTreeSet::from(expected.map(str::to_owned)));
        for need in &needs {
            let name = match need.style == second.style {
                true => "Reef half-zip",
                false => "Shoal half-zip",
            };
            assert_eq!(need.name, name);
        }
        let of_first: Vec<_> = needs.iter().filter(|need| need.style != second.style).collect();
        assert_eq!(of_first.len(), 3, "to acknowledge revision 3, and two must-fixes: {of_first:#?}");
    }
}

on_both! {
    async fn what_is_signed_or_shared_here_is_not_there(db) {
        let cast = whole_walk(db).await;
        let (second, sao_mai) = second_style(&cast).await;
        // Acknowledged and signed on the first, both say nothing of the second.
        let fixes = second.threads().await;
        for fix in fixes.iter().filter(|it| it.round.is_some()) {
            second.moves(&fix.facts.id, ThreadMove::Grant).await.unwrap();
        }
        sao_mai.signs_revision(1).await.unwrap();
        second.signs_revision(&sao_mai, 1).await.unwrap();
        second.ends_share_with(&sao_mai).await.unwrap();
        assert_eq!(cast.sao_mai.revision(3).await.number, 3, "the first is shared still");
        let shares = cast.store.shares(&cast.brand.reads().await).await.unwrap();
        let ended: Vec<_> = shares.iter().map(|it| it.ended_at.is_some()).collect();
        assert_eq!(ended, [true, false], "Meghna's ended before");
        assert_eq!(cast.store.audit().await.unwrap().faults, []);
    }
}
