//! Erasing somebody's personal texts: they are gone, and everything still holds.

use std::collections::BTreeSet;

use fellseam::access::act;
use fellseam::exchange::ledger::Act;
use fellseam::spec::{Digest, PersonId};
use fellseam::store::{Db, FileKind, NewFile, Read, StoreError, values};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::walk::whole_walk;

/// Every personal text that is kept of somebody, by kind.
async fn texts(db: &Db, person: &PersonId) -> Vec<(String, Option<String>)> {
    db.all(
        "SELECT kind, content FROM private_text WHERE person = $1 ORDER BY kind, id",
        values![person],
    )
    .await
    .unwrap()
}

on_both! {
    async fn the_texts_are_gone_and_the_audit_counts_them(db) {
        let cast = whole_walk(db.clone()).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        // A style that they have nothing to do with.
        let other = brand.lead.starts(&another_style()).await;
        let linh = &sao_mai.lead.actor.person;
        store.set_password(&sao_mai.lead.may(), "linh", "hash").await.unwrap();
        let entries = brand.ledger().await;
        let before = texts(&db, linh).await;
        let of_kind = |kind: &str| before.iter().filter(|(it, _)| it == kind).count();
        assert_eq!((of_kind("name"), of_kind("login")), (1, 1));
        assert!(of_kind("message") > 2 && of_kind("photo") == 6 && of_kind("signed_name") > 1);

        let erased = store.erase(linh).await.unwrap();
        let kept = of_kind("signed_name");
        assert_eq!(erased.texts as usize, before.len() - kept);
        for (kind, content) in texts(&db, linh).await {
            assert_eq!(content.is_some(), kind == "signed_name", "{kind}");
        }
        let salts: Vec<(String,)> = db
            .all(
                "SELECT salt FROM private_text WHERE person = $1 AND content IS NULL",
                values![linh],
            )
            .await
            .unwrap();
        assert!(salts.iter().all(|(salt,)| salt.is_empty()), "no guess can be tried");

        // The chain goes on from where it was, and says so.
        let after = brand.ledger().await;
        assert_eq!(after.len(), entries.len() + 1);
        for (old, new) in entries.iter().zip(&after) {
            assert_eq!((&old.entry, &old.hash), (&new.entry, &new.hash));
        }
        let last = &after.last().unwrap().entry;
        assert_eq!((last.act, &*last.ids["person"]), (Act::Erase, linh.as_str()));
        assert_eq!(last.person, None, "the program itself");
        assert_eq!(brand.on(&other).ledger().await.len(), 1, "nothing of theirs was there");
        let audit = store.audit().await.unwrap();
        assert_eq!(audit.faults, []);
        assert_eq!(audit.erased, of_kind("message") + of_kind("photo"));
    }
}

on_both! {
    async fn pages_show_that_somebody_was_erased_and_who_signed(db) {
        let cast = whole_walk(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let linh = &sao_mai.lead.actor.person;
        store.erase(linh).await.unwrap();
        let threads = brand.threads().await;
        let question = threads.iter().find(|it| it.messages.len() == 3).unwrap();
        assert_eq!(question.asked_by, None);
        assert_eq!(question.messages[0].text, None);
        assert_eq!(question.messages[0].person, None);
        assert_eq!(question.messages[1].photos, [None, None]);
        assert_eq!(question.messages[2].text.as_deref(), Some("Without it."), "the brand's stays");
        let translated = threads.iter().flat_map(|it| &it.messages).find(|it| !it.translations.is_empty());
        let translated = &translated.expect("one was translated").translations[0];
        assert_eq!(translated.text, None, "what was made of somebody's words goes with them");
        assert_eq!(translated.person.as_deref(), Some("Iris"));
        let signatures = store.signatures(&brand.reads().await).await.unwrap();
        let names: BTreeSet<_> = signatures.iter().map(|it| it.name.as_deref()).collect();
        assert_eq!(names, BTreeSet::from([Some("Linh"), Some("Iris"), Some("Rafiq")]));
        let lines = brand.ledger().await;
        let line = lines.iter().find(|line| line.entry.person.as_ref() == Some(linh)).unwrap();
        assert_eq!((line.person.as_deref(), line.org_name.as_deref()),
            (None, Some("Sao Mai Garment")));
        let people = store.people(&brand.owner.may()).await.unwrap();
        let person = people.iter().find(|it| it.id == *linh).unwrap();
        assert!(person.name.is_none() && person.left_at.is_some());
    }
}

on_both! {
    async fn who_was_erased_comes_in_by_no_door(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, sao_mai, .. } = &cast;
        let linh = &sao_mai.lead;
        let link = store.new_link(&linh.may(), &linh.actor.person).await.unwrap();
        let token = store.set_password(&linh.may(), "linh", "hash").await.unwrap();
        let permit = linh.on(&sao_mai.style).await;
        store.erase(&linh.actor.person).await.unwrap();

        assert!(store.session(&token).await.unwrap().is_none());
        assert_eq!(store.way_in(&link).await.unwrap(), None);
        assert!(is_missing(&store.use_way_in(&link, None).await));
        assert_eq!(store.password("linh").await.unwrap(), None);
        assert_eq!(store.login(&linh.may()).await.unwrap(), None);
        assert!(is_missing(&store.acknowledge(&permit, 1).await));
        // A page that was still open names nobody again.
        store.rename(&linh.may(), "Linh", "vi").await.unwrap();
        let people = store.people(&cast.brand.owner.may()).await.unwrap();
        assert!(people.iter().all(|it| it.name.as_deref() != Some("Linh")));
        assert!(is_missing(&store.erase(&PersonId::new("nobody")).await));
    }
}

on_both! {
    async fn pictures_to_remove_are_those_that_nobody_else_sent(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "Like this?").await.unwrap();
        let own = sao_mai.photographs("her own").await;
        let shared = sao_mai.photographs("both sent it").await;
        sao_mai.sends(&thread, "See here", &[own.clone(), shared.clone()]).await.unwrap();
        brand.sends(&thread, "This one", std::slice::from_ref(&shared)).await.unwrap();

        let erased = store.erase(&sao_mai.lead.actor.person).await.unwrap();
        let removed: BTreeSet<Digest> = erased.files.into_iter().collect();
        let expected: BTreeSet<Digest> = pictures(&own).into_iter().map(|it| it.digest).collect();
        assert_eq!(removed, expected);
        let known = store.known_files().await.unwrap();
        assert!(removed.iter().all(|digest| !known.contains(digest)), "no longer asked for");
        assert!(pictures(&shared).iter().all(|picture| known.contains(&picture.digest)));

        let reads = brand.reads().await;
        assert!(is_missing(&store.picture(&reads, &own, 320).await));
        assert!(store.picture(&reads, &shared, 320).await.is_ok());
        let messages = brand.thread(&thread).await.messages;
        assert_eq!(messages[1].photos, [None, None]);
        assert_eq!(messages[2].photos[0].as_ref().unwrap().digest, shared);

        // The last who sent it takes it along.
        let erased = store.erase(&brand.lead.actor.person).await.unwrap();
        assert_eq!(erased.files.len(), 2);
        assert!(is_missing(&store.picture(&reads, &shared, 320).await));
        let audit = store.audit().await.unwrap();
        assert_eq!((audit.faults, audit.erased), (Vec::new(), 6));
    }
}

on_both! {
    async fn a_photograph_that_was_never_sent_goes_with_who_uploaded_it(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, sao_mai, .. } = &cast;
        let hem = sao_mai.photographs("the hem").await;
        let cuff = sao_mai.photographs("the cuff").await;
        let made = pictures(&cuff);
        let cuff_again = NewFile {
            digest: &cuff,
            kind: FileKind::Photo,
            media_type: "image/jpeg",
            name: "",
            size: 90_000,
            width: 2048,
            height: 1536,
            taken: None,
            pictures: &made,
        };
        let of = |photo: &Digest| -> BTreeSet<Digest> {
            pictures(photo).into_iter().map(|it| it.digest).collect()
        };
        let hands = sao_mai.hands.on::<act::Answer>(&sao_mai.style).await;
        store.add_photo(&hands, cuff_again.clone()).await.unwrap();

        let erased = store.erase(&sao_mai.lead.actor.person).await.unwrap();
        let erased = BTreeSet::from_iter(erased.files);
        assert_eq!(erased, of(&hem), "the other one was uploaded by somebody else, too");
        assert!(of(&cuff).is_subset(&store.known_files().await.unwrap().into_iter().collect()));
        let erased = store.erase(&sao_mai.hands.actor.person).await.unwrap();
        assert_eq!(BTreeSet::from_iter(erased.files), of(&cuff));
        // With a permit from before, nothing is uploaded any more.
        let late = store.add_photo(&hands, cuff_again).await;
        assert!(is_missing(&late), "{late:?}");
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn a_picture_that_another_file_is_made_of_too_stays(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "Like this?").await.unwrap();
        let photo = sao_mai.photographs("the hem").await;
        sao_mai.sends(&thread, "See here", std::slice::from_ref(&photo)).await.unwrap();
        // Another upload from which the same small picture came out, and a drawing that is itself
        // the large one.
        let [small, large] = &pictures(&photo)[..] else { panic!("two pictures") };
        let permit = sao_mai.hands.on::<act::Answer>(&brand.style).await;
        let other = Digest::of(b"cropped a little");
        let file = fellseam::store::NewFile {
            digest: &other,
            kind: fellseam::store::FileKind::Photo,
            media_type: "image/jpeg",
            name: "",
            size: 1,
            width: 320,
            height: 320,
            taken: None,
            pictures: std::slice::from_ref(small),
        };
        store.add_photo(&permit, file.clone()).await.unwrap();
        let permit = brand.lead.on(&brand.style).await;
        let drawing = fellseam::store::NewFile {
            digest: &large.digest,
            kind: fellseam::store::FileKind::Drawing,
            pictures: &[],
            ..file
        };
        store.add_drawing(&permit, drawing).await.unwrap();
        assert_eq!(store.erase(&sao_mai.lead.actor.person).await.unwrap().files, []);
        let known = store.known_files().await.unwrap();
        assert!(known.contains(&small.digest) && known.contains(&large.digest));
    }
}

on_both! {
    async fn a_factory_learns_of_an_erasing_among_its_own_people_and_the_brands(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        for factory in [sao_mai, meghna] {
            factory.asks("point-c", "With the rib?").await.unwrap();
        }
        let erasings = async |party: &Party, who: &Person| {
            let hoa_or_shirin = store.ledger(&who.on(&party.style).await).await.unwrap();
            let lines = hoa_or_shirin.into_iter();
            lines.filter(|line| line.entry.act == Act::Erase).count()
        };
        store.erase(&sao_mai.lead.actor.person).await.unwrap();
        assert_eq!(erasings(sao_mai, &sao_mai.hands).await, 1);
        assert_eq!(erasings(meghna, &meghna.hands).await, 0, "not of another factory's");
        assert_eq!(erasings(brand, &brand.owner).await, 1);
        store.erase(&brand.lead.actor.person).await.unwrap();
        assert_eq!(erasings(meghna, &meghna.hands).await, 1);
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn listeners_hear_of_an_erasing_when_it_is_done(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "Secret").await.unwrap();
        let mut events = store.listen();
        let erasing = store.clone();
        let linh = sao_mai.lead.actor.person.clone();
        let erasing = tokio::spawn(async move { erasing.erase(&linh).await });
        let event = events.recv().await.unwrap();
        assert_eq!(event.style, brand.style);
        assert_eq!(brand.thread(&thread).await.messages[0].text, None);
        erasing.await.unwrap().unwrap();
    }
}

// A message that is being written while its writer is erased is erased with the rest, or refused.
on_both! {
    async fn nobody_writes_while_they_are_erased(db) {
        let cast = Cast::with_revision(db.clone()).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let linh = sao_mai.lead.actor.person.clone();

        let mut says = tokio::task::JoinSet::new();
        let permit = sao_mai.lead.on(&brand.style).await;
        for n in 0..30 {
            let (store, permit, thread) = (store.clone(), permit.clone(), thread.clone());
            says.spawn(async move {
                let text = format!("Message {n}");
                let says = fellseam::store::Says { text: &text, language: "en", photos: &[] };
                store.say(&permit, &thread, says).await
            });
        }
        let erasing = store.clone();
        let person = linh.clone();
        let erased = tokio::spawn(async move { erasing.erase(&person).await });
        for outcome in says.join_all().await {
            assert!(matches!(outcome, Ok(()) | Err(StoreError::Missing)), "{outcome:?}");
        }
        erased.await.unwrap().unwrap();
        let left = texts(&db, &linh).await;
        assert!(left.iter().all(|(_, content)| content.is_none()), "{left:?}");
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}
