//! Threads: asked on an item of a revision, answered, moved on, and never edited.

use fellseam::access::{Denied, Role, act};
use fellseam::exchange::Refused;
use fellseam::exchange::thread::{Kind, State};
use fellseam::spec::{ItemId, RoundId};
use fellseam::store::{NewThread, Says, StoreError, ThreadMove};

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn a_question_is_answered_and_closed_by_its_asker(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let view = brand.thread(&thread).await;
        assert_eq!(view.facts.state, State::Open);
        assert_eq!((&view.facts.item, view.facts.raised_on), (&item("point-c"), 1));
        assert_eq!(view.org_name, "Sao Mai Garment");
        assert_eq!(view.asked_by.as_deref(), Some("Linh"));

        brand.says(&thread, "Without it.").await.unwrap();
        assert_eq!(sao_mai.state_of(&thread).await, State::Answered);
        sao_mai.says(&thread, "At the side seam too?").await.unwrap();
        assert_eq!(sao_mai.state_of(&thread).await, State::Open, "asked further");
        brand.says(&thread, "Yes.").await.unwrap();

        assert_eq!(refusal(brand.moves(&thread, ThreadMove::Close).await), Refused::NotTheAsker);
        sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        let view = brand.thread(&thread).await;
        assert_eq!(view.facts.state, State::Closed);
        let texts: Vec<_> = view.messages.iter().map(|it| it.text.as_deref().unwrap()).collect();
        assert_eq!(texts, ["With the rib?", "Without it.", "At the side seam too?", "Yes."]);
        let people: Vec<_> = view.messages.iter().map(|it| it.person.as_deref().unwrap()).collect();
        assert_eq!(people, ["Linh", "Iris", "Linh", "Iris"]);
        assert!(view.messages.iter().all(|it| it.language == "en" && it.photos.is_empty()));

        assert_eq!(refusal(brand.says(&thread, "One more").await), Refused::ThreadClosed);
        assert_eq!(brand.thread(&thread).await.messages.len(), 4);
        brand.moves(&thread, ThreadMove::Reopen).await.unwrap();
        brand.says(&thread, "One more").await.unwrap();
        assert_eq!(sao_mai.state_of(&thread).await, State::Answered);
    }
}

on_both! {
    async fn the_asker_or_who_leads_them_closes(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        // Hoa asks; Linh, who leads Sao Mai, may close for her, another of the floor may not.
        let permit = sao_mai.hands.on(&brand.style).await;
        let new = NewThread {
            item: &item("part-2"),
            revision: 1,
            kind: Kind::Question,
            org: None,
            says: Says { text: "Bo này?", language: "vi", photos: &[] },
        };
        let thread = store.ask(&permit, new).await.unwrap();
        let mai = sao_mai.lead.names("Mai", &sao_mai.org, Role::SampleRoom, "vi").await;
        let permit = mai.on(&brand.style).await;
        let close = store.move_thread(&permit, &thread, &ThreadMove::Close).await;
        assert_eq!(refusal(close), Refused::NotTheAsker);
        sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        let message = &brand.thread(&thread).await.messages[0];
        assert_eq!((message.text.as_deref(), &*message.language), (Some("Bo này?"), "vi"));

        // Iris asks; Nell, an owner, may close for her.
        let thread = brand.asks(sao_mai, "point-a", "Can you do this?").await.unwrap();
        assert_eq!(refusal(sao_mai.moves(&thread, ThreadMove::Close).await), Refused::NotTheAsker);
        let nell = brand.owner.on(&brand.style).await;
        store.move_thread(&nell, &thread, &ThreadMove::Close).await.unwrap();

        let viewer = brand.viewer.may_on::<act::Ask>(&brand.style).await;
        assert!(matches!(viewer, Err(Denied::NotYours { .. })));
    }
}

on_both! {
    async fn what_is_not_there_cannot_be_asked_about(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let says = Says { text: "What?", language: "en", photos: &[] };
        let point = item("point-c");
        let new = NewThread { item: &point, revision: 1, kind: Kind::Question, org: None, says };
        let missing = ItemId::new("point-zz");
        let permit = sao_mai.lead.on(&brand.style).await;
        for (new, what) in [
            (NewThread { item: &missing, ..new.clone() }, "the item"),
            (NewThread { revision: 2, ..new.clone() }, "the revision"),
        ] {
            assert!(is_missing(&store.ask(&permit, new).await), "{what}");
        }
        // A factory asks for itself, whatever the form says; the brand says with whom.
        let org = Some(&cast.meghna.org);
        let own = store.ask(&permit, NewThread { org, ..new.clone() }).await.unwrap();
        assert_eq!(brand.thread(&own).await.facts.factory, sao_mai.org);
        let permit = brand.lead.on(&brand.style).await;
        assert!(is_missing(&store.ask(&permit, new.clone()).await), "with whom?");
        let unshared = store.ask(&permit, NewThread { org, ..new }).await;
        assert!(is_missing(&unshared), "it has no share");
        let nothing = &fellseam::spec::ThreadId::new("nothing");
        assert!(is_missing(&brand.says(nothing, "Hello?").await));
        assert_eq!(brand.threads().await.len(), 1);
    }
}

on_both! {
    async fn must_fixes_are_the_brands_and_concessions_the_factorys(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let says = Says { text: "So it is", language: "en", photos: &[] };
        let point = item("point-c");
        let new = NewThread { item: &point, revision: 1, kind: Kind::MustFix, org: None, says };
        let permit = sao_mai.lead.on(&brand.style).await;
        assert_eq!(refusal(store.ask(&permit, new.clone()).await), Refused::OnlyBrand);
        let permit = brand.lead.on(&brand.style).await;
        let new = NewThread { kind: Kind::Concession, org: Some(&sao_mai.org), ..new };
        assert_eq!(refusal(store.ask(&permit, new).await), Refused::OnlyFactory);

        let fix = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        assert_eq!(
            refusal(sao_mai.moves(&fix, ThreadMove::Close).await),
            Refused::OnlyBrandCloses { kind: Kind::MustFix }
        );
        brand.moves(&fix, ThreadMove::Close).await.unwrap();

        let pass = sao_mai.asks_concession("point-a", "1/2 in wider").await.unwrap();
        assert_eq!(
            refusal(sao_mai.moves(&pass, ThreadMove::Grant).await),
            Refused::OnlyBrandCloses { kind: Kind::Concession }
        );
        let agree = sao_mai.moves(&pass, ThreadMove::Agree).await;
        assert_eq!(refusal(agree), Refused::NoSuchMove { kind: Kind::Concession });
        brand.moves(&pass, ThreadMove::Grant).await.unwrap();
        assert_eq!(sao_mai.state_of(&pass).await, State::Granted);
        let reopen = brand.moves(&pass, ThreadMove::Reopen).await;
        assert_eq!(refusal(reopen), Refused::ThreadNotIn { state: State::Granted });

        let idea = sao_mai.suggests("point-b", "A drawcord?").await.unwrap();
        let grant = brand.moves(&idea, ThreadMove::Grant).await;
        assert_eq!(refusal(grant), Refused::NoSuchMove { kind: Kind::Suggestion });
        assert_eq!(refusal(sao_mai.moves(&idea, ThreadMove::Agree).await), Refused::OtherSideFirst);
        brand.moves(&idea, ThreadMove::Agree).await.unwrap();
        assert_eq!(sao_mai.state_of(&idea).await, State::Agreed);
        sao_mai.moves(&idea, ThreadMove::Close).await.unwrap();
    }
}

on_both! {
    async fn changed_is_what_the_change_list_says(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let fix = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        let other = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();
        let early = brand.moves(&fix, ThreadMove::MarkChanged).await;
        assert_eq!(refusal(early), Refused::ItemUnchanged { revision: 1 });

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        assert_eq!(brand.state_of(&fix).await, State::Open, "nobody agreed, so nothing carried it");
        let unchanged = brand.moves(&other, ThreadMove::MarkChanged).await;
        assert_eq!(refusal(unchanged), Refused::ItemUnchanged { revision: 2 });
        assert_eq!(
            refusal(sao_mai.moves(&fix, ThreadMove::MarkChanged).await),
            Refused::OnlyBrand
        );
        brand.moves(&fix, ThreadMove::MarkChanged).await.unwrap();
        assert_eq!(sao_mai.state_of(&fix).await, State::Changed { revision: 2 });

        // While the newest is withdrawn there is none to be changed in.
        brand.withdraws(2, "Wrong").await.unwrap();
        let none = brand.moves(&other, ThreadMove::MarkChanged).await;
        assert_eq!(refusal(none), Refused::NotCurrent { current: None });
    }
}

on_both! {
    async fn verified_is_what_a_sample_made_after_the_change_shows(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let typed = &[(1, "point-c", "28 1/2"), (1, "point-e", "25")];
        let first = measured_round(brand, sao_mai, &["size-m"], typed).await;
        let fix = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        let soon = brand.moves(&fix, ThreadMove::Verify(first.clone())).await;
        assert_eq!(refusal(soon), Refused::ThreadNotIn { state: State::Open });
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        brand.moves(&fix, ThreadMove::MarkChanged).await.unwrap();
        assert_eq!(
            refusal(brand.moves(&fix, ThreadMove::Verify(first)).await),
            Refused::SampleTooOld { changed_in: 2 }
        );

        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        sao_mai.starts(&round).await.unwrap();
        sao_mai.measures(&round, &[(1, "point-e", "25")]).await.unwrap();
        let unmeasured = brand.moves(&fix, ThreadMove::Verify(round.clone())).await;
        assert_eq!(refusal(unmeasured), Refused::NothingMeasured, "another point was");
        let nowhere = ThreadMove::Verify(RoundId::new("nowhere"));
        assert!(is_missing(&brand.moves(&fix, nowhere).await));
        sao_mai.measures(&round, &[(1, "point-c", "28 3/4")]).await.unwrap();
        brand.moves(&fix, ThreadMove::Verify(round)).await.unwrap();
        assert_eq!(sao_mai.state_of(&fix).await, State::Verified { revision: 2 });
    }
}

on_both! {
    async fn a_sample_of_another_factory_verifies_nothing(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let fix = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        brand.moves(&fix, ThreadMove::MarkChanged).await.unwrap();
        let round = brand.requests(meghna, &["size-m"]).await.unwrap();
        meghna.starts(&round).await.unwrap();
        meghna.measures(&round, &[(1, "point-c", "28 3/4")]).await.unwrap();
        assert!(is_missing(&brand.moves(&fix, ThreadMove::Verify(round)).await));
    }
}

on_both! {
    async fn a_thread_outlives_its_item(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-i", "Is this a stand collar?").await.unwrap();
        brand.edits(|spec| {
            spec.points.points.retain(|point| point.id != item("point-i"));
            for drawing in &mut spec.drawings.drawings {
                drawing.markers.retain(|marker| marker.item != item("point-i"));
            }
        }).await;
        assert_eq!(brand.publishes("No collar").await.unwrap(), 2);
        let view = sao_mai.thread(&thread).await;
        assert_eq!((&view.facts.item, view.facts.raised_on), (&item("point-i"), 1));
        brand.says(&thread, "It is gone.").await.unwrap();
        let gone = sao_mai.asks("point-i", "And now?").await;
        assert!(is_missing(&gone));
    }
}

on_both! {
    async fn a_photograph_is_seen_once_a_message_brings_it(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let thread = sao_mai.asks("point-c", "Like this?").await.unwrap();
        let photo = sao_mai.photographs("the hem").await;
        for who in [brand.reads().await, sao_mai.reads().await] {
            assert!(is_missing(&store.picture(&who, &photo, 320).await), "nobody sent it");
        }

        let photos = [photo.clone()];
        sao_mai.sends(&thread, "See here", &photos).await.unwrap();
        for who in [brand.reads().await, sao_mai.reads().await] {
            let picture = store.picture(&who, &photo, 320).await.unwrap();
            assert_eq!(picture.digest, pictures(&photo)[0].digest);
            assert_eq!(picture.taken.as_deref(), Some("2026-03-02T14:31:00"));
            assert!(is_missing(&store.original(&who, &photo).await), "it has no original");
        }
        assert!(is_missing(&store.picture(&meghna.reads().await, &photo, 320).await));
        let message = &brand.thread(&thread).await.messages[1];
        let shown = message.photos[0].as_ref().unwrap();
        assert_eq!((&shown.digest, shown.width, shown.height), (&photo, 2048, 1536));
        assert_eq!(shown.taken.as_deref(), Some("2026-03-02T14:31:00"));

        // The same one again, by the other side and in another thread.
        brand.sends(&thread, "No, like that", &photos).await.unwrap();
        let theirs = meghna.asks("point-c", "And ours?").await.unwrap();
        brand.sends(&theirs, "Like Sao Mai's", &photos).await.unwrap();
        assert!(store.picture(&meghna.reads().await, &photo, 320).await.is_ok());
    }
}

on_both! {
    async fn a_message_brings_nothing_but_photographs(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "Like this?").await.unwrap();
        let unknown = fellseam::spec::Digest::of(b"unknown");
        for (file, what) in [(unknown, "an unknown file"), (drawing(), "a drawing")] {
            let sent = sao_mai.sends(&thread, "See here", &[file]).await;
            assert!(is_missing(&sent), "{what}");
        }
        assert_eq!(brand.thread(&thread).await.messages.len(), 1, "nothing of it was kept");
    }
}

on_both! {
    async fn messages_of_fifty_at_once_keep_an_order_without_gaps(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "0").await.unwrap();
        let mut says = tokio::task::JoinSet::new();
        for n in 1..=50 {
            let (party, thread) = match n % 2 {
                0 => ((**brand).clone(), thread.clone()),
                _ => ((**sao_mai).clone(), thread.clone()),
            };
            says.spawn(async move { party.says(&thread, &n.to_string()).await });
        }
        for said in says.join_all().await {
            said.unwrap();
        }
        let messages = brand.thread(&thread).await.messages;
        let mut said: Vec<u32> = messages
            .iter()
            .map(|it| it.text.as_deref().unwrap().parse().unwrap())
            .collect();
        assert!(messages.is_sorted_by(|a, b| a.at < b.at));
        said.sort_unstable();
        assert_eq!(said, (0..=50).collect::<Vec<_>>());
        assert!(cast.store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn a_thread_of_another_style_is_not_there(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let style = brand.lead.starts(&another_style()).await;
        let (brand, sao_mai) = (brand.on(&style), sao_mai.on(&style));
        brand.publishes("First issue").await.unwrap();
        brand.shares_with(&sao_mai).await.unwrap();
        for outcome in [
            sao_mai.says(&thread, "Hello?").await,
            brand.moves(&thread, ThreadMove::Close).await,
        ] {
            assert!(matches!(outcome, Err(StoreError::Missing)), "{outcome:?}");
        }
        assert!(brand.threads().await.is_empty());
    }
}

on_both! {
    async fn a_translation_stands_beside_its_message_and_replaces_none(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        assert!(is_missing(&sao_mai.translates_newest(&thread, "en", "Same").await));
        sao_mai.translates_newest(&thread, "vi", "Có gân?").await.unwrap();
        brand.translates_newest(&thread, "zh-Hans", "含罗纹吗？").await.unwrap();
        brand.translates_newest(&thread, "vi", "Tính cả bo gân?").await.unwrap();
        let message = brand.thread(&thread).await.messages.remove(0);
        assert_eq!(message.text.as_deref(), Some("With the rib?"), "the original is what counts");
        let shown: Vec<_> = message
            .translations
            .iter()
            .map(|it| (it.language.as_str(), it.text.as_deref().unwrap(), it.person.as_deref().unwrap()))
            .collect();
        let expected = [("zh-Hans", "含罗纹吗？", "Iris"), ("vi", "Tính cả bo gân?", "Iris")];
        assert_eq!(shown, expected, "the newest of each language");

        // Not in a thread with another factory.
        let theirs = meghna.lead.on(&brand.style).await;
        let foreign = store.translate_message(&theirs, &thread, &message.id, "bn", "?").await;
        assert!(is_missing(&foreign));
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}
