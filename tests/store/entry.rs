//! Coming in: links, codes, the first owner, passwords and sessions.

use fellseam::access::Role;
use fellseam::spec::{Digest, StyleId};
use fellseam::store::{Read, SetUp, Store, StoreError, WayIn, values};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::world::{DAY, MINUTE, world};

on_both! {
    async fn a_link_is_previewed_without_being_spent_and_then_works_once(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands;
        let link = cast.store.new_link(&cast.sao_mai.lead.may(), &hoa.actor.person).await.unwrap();

        // Chat programs fetch it, again and again.
        for _ in 0..3 {
            let shown = cast.store.way_in(&link).await.unwrap();
            let expected = WayIn::For {
                name: "Hoa".to_owned(),
                org_name: "Sao Mai Garment".to_owned(),
                role: Role::SampleRoom,
                language: "en".to_owned(),
            };
            assert_eq!(shown, Some(expected));
        }

        let token = cast.store.use_way_in(&link, Some(("Hoa Lê", "vi"))).await.unwrap();
        let session = cast.store.session(&token).await.unwrap().unwrap();
        assert_eq!(session.actor, hoa.actor);
        assert_eq!(session.name.as_deref(), Some("Hoa Lê"));
        assert_eq!(session.language, "vi");

        assert_eq!(cast.store.way_in(&link).await.unwrap(), None);
        let again = cast.store.use_way_in(&link, Some(("Thief", "en"))).await;
        assert!(is_missing(&again));
        let session = cast.store.session(&token).await.unwrap().unwrap();
        assert_eq!(session.name.as_deref(), Some("Hoa Lê"), "a spent link changes no name");
    }
}

on_both! {
    async fn of_twenty_who_use_a_link_at_once_one_comes_in(db) {
        let cast = Cast::new(db).await;
        let person = &cast.sao_mai.hands.actor.person;
        let link = cast.store.new_link(&cast.sao_mai.lead.may(), person).await.unwrap();
        let mut uses = tokio::task::JoinSet::new();
        for _ in 0..20 {
            let (store, link) = (cast.store.clone(), link.clone());
            uses.spawn(async move { store.use_way_in(&link, None).await });
        }
        let outcomes = uses.join_all().await;
        assert_eq!(outcomes.iter().filter(|outcome| outcome.is_ok()).count(), 1);
        assert_eq!(outcomes.iter().filter(|outcome| is_missing(outcome)).count(), 19);
    }
}

on_both! {
    async fn a_link_lives_seven_days_and_a_code_ten_minutes(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands;
        for (lives, is_code) in [(7 * DAY, false), (10 * MINUTE, true)] {
            let make = async || match is_code {
                true => cast.store.new_code(&hoa.may()).await.unwrap(),
                false => {
                    let linh = cast.sao_mai.lead.may();
                    cast.store.new_link(&linh, &hoa.actor.person).await.unwrap()
                }
            };
            let in_time = make().await;
            cast.clock.forward(lives - MINUTE);
            assert!(cast.store.use_way_in(&in_time, None).await.is_ok());

            let late = make().await;
            cast.clock.forward(lives);
            assert_eq!(cast.store.way_in(&late).await.unwrap(), None);
            assert!(is_missing(&cast.store.use_way_in(&late, None).await));
        }
    }
}

on_both! {
    async fn a_new_link_or_code_stops_the_one_before(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands;
        let linh = cast.sao_mai.lead.may();
        let lost = cast.store.new_link(&linh, &hoa.actor.person).await.unwrap();
        let code = cast.store.new_code(&hoa.may()).await.unwrap();
        let link = cast.store.new_link(&linh, &hoa.actor.person).await.unwrap();
        let own = cast.store.new_link(&linh, &cast.sao_mai.lead.actor.person).await.unwrap();
        let own_code = cast.store.new_code(&cast.sao_mai.lead.may()).await.unwrap();

        assert_eq!(cast.store.way_in(&lost).await.unwrap(), None);
        assert!(is_missing(&cast.store.use_way_in(&lost, None).await));
        assert!(cast.store.use_way_in(&link, None).await.is_ok());
        assert!(cast.store.use_way_in(&code, None).await.is_ok(), "a link stops no code");

        let lost = cast.store.new_code(&hoa.may()).await.unwrap();
        cast.store.new_code(&hoa.may()).await.unwrap();
        assert!(is_missing(&cast.store.use_way_in(&lost, None).await));
        for token in [&own, &own_code] {
            let session = cast.store.use_way_in(token, None).await;
            assert!(session.is_ok(), "somebody else's stays");
        }
    }
}

on_both! {
    async fn a_code_opens_the_same_person_on_a_second_device(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands;
        let phone = hoa.signs_in().await;
        let code = cast.store.new_code(&hoa.may()).await.unwrap();
        assert_eq!(code.len(), 8);
        let tablet = cast.store.use_way_in(&code, None).await.unwrap();
        for token in [&phone, &tablet] {
            let session = cast.store.session(token).await.unwrap().unwrap();
            assert_eq!(session.actor, hoa.actor);
        }
        assert!(is_missing(&cast.store.use_way_in(&code, None).await));
    }
}

on_both! {
    async fn the_way_in_of_somebody_who_left_leads_nowhere(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands;
        let link = cast.store.new_link(&cast.sao_mai.lead.may(), &hoa.actor.person).await.unwrap();
        let code = cast.store.new_code(&hoa.may()).await.unwrap();
        cast.store.end_access(&cast.brand.owner.may(), &hoa.actor.person).await.unwrap();

        for token in [&link, &code] {
            assert_eq!(cast.store.way_in(token).await.unwrap(), None);
            assert!(is_missing(&cast.store.use_way_in(token, None).await));
        }
        let anew = cast.store.new_link(&cast.sao_mai.lead.may(), &hoa.actor.person).await;
        assert!(is_missing(&anew));
        // A page that was open while they were sent away makes a code: it opens nothing.
        let late = cast.store.new_code(&hoa.may()).await.unwrap();
        assert_eq!(cast.store.way_in(&late).await.unwrap(), None);
        assert!(is_missing(&cast.store.use_way_in(&late, None).await));
    }
}

fn first_owner() -> SetUp<'static> {
    SetUp {
        brand: "Harrow & Tide",
        owner: "Nell",
        language: "en",
        login: "nell@harrow.example",
        password_hash: "$argon2id$...",
    }
}

on_both! {
    async fn the_set_up_link_makes_the_brand_once(db) {
        let store = Store::new(db, world().0);
        let lost = store.new_set_up_link().await.unwrap();
        let link = store.new_set_up_link().await.unwrap();
        assert_eq!(store.way_in(&lost).await.unwrap(), None);
        assert_eq!(store.way_in(&link).await.unwrap(), Some(WayIn::SetUp));
        assert!(is_missing(&store.set_up(&lost, first_owner()).await));
        assert!(is_missing(&store.use_way_in(&link, None).await), "it is nobody's");

        let token = store.set_up(&link, first_owner()).await.unwrap();
        let session = store.session(&token).await.unwrap().unwrap();
        assert_eq!(session.actor.role, Role::Owner);
        assert_eq!(session.org_name, "Harrow & Tide");
        let (person, hash) = store.password("nell@harrow.example").await.unwrap().unwrap();
        assert_eq!((person, &*hash), (session.actor.person, "$argon2id$..."));

        assert!(is_missing(&store.set_up(&link, first_owner()).await));
        let useless = store.new_set_up_link().await.unwrap();
        assert_eq!(store.way_in(&useless).await.unwrap(), None);
        let second = store.set_up(&useless, first_owner()).await;
        assert!(matches!(second, Err(StoreError::Unique(_))), "{second:?}");
    }
}

on_both! {
    async fn somebodys_link_sets_nothing_up(db) {
        let cast = Cast::new(db).await;
        let hoa = &cast.sao_mai.hands.actor.person;
        let link = cast.store.new_link(&cast.sao_mai.lead.may(), hoa).await.unwrap();
        assert!(is_missing(&cast.store.set_up(&link, first_owner()).await));
        cast.store.new_set_up_link().await.unwrap();
        assert!(cast.store.use_way_in(&link, None).await.is_ok(), "and is not spent by trying");
    }
}

on_both! {
    async fn a_session_ends_when_it_is_not_used(db) {
        let cast = Cast::new(db).await;
        for (person, idle) in [(&cast.brand.lead, 14 * DAY), (&cast.sao_mai.hands, 45 * DAY)] {
            let token = person.signs_in().await;
            let forgotten = person.signs_in().await;
            // Each sight keeps it alive, and no other.
            for _ in 0..3 {
                cast.clock.forward(idle - MINUTE);
                assert!(cast.store.session(&token).await.unwrap().is_some(), "{}", person.name);
            }
            assert!(cast.store.session(&forgotten).await.unwrap().is_none());
            cast.clock.forward(idle);
            assert!(cast.store.session(&token).await.unwrap().is_none(), "{}", person.name);
        }
    }
}

on_both! {
    async fn a_visit_brings_what_is_known_of_the_style(db) {
        let cast = Cast::with_revision(db).await;
        let style = &cast.brand.style;
        let known = async |person: &Person, style: &StyleId| {
            let token = person.signs_in().await;
            let visit = cast.store.visit(&token, Some(style), true).await.unwrap().unwrap();
            assert_eq!(visit.session.actor, person.actor);
            assert_eq!(visit.session.brand_name, "Harrow & Tide");
            let facts = cast.store.style_facts(&person.actor, style).await.unwrap();
            assert_eq!(visit.style, facts);
            facts
        };
        for (person, shared) in [
            (&cast.brand.viewer, false),
            (&cast.sao_mai.hands, true),
            (&cast.meghna.lead, false),
        ] {
            let facts = known(person, style).await.expect("the style is there");
            assert_eq!(facts.share.is_some(), shared, "{}", person.name);
            assert_eq!(known(person, &StyleId::new("another")).await, None);
        }
        let before = known(&cast.sao_mai.lead, style).await.unwrap();
        cast.sao_mai.acknowledges(1).await.unwrap();
        let after = known(&cast.sao_mai.lead, style).await.unwrap();
        assert_ne!(before.edition, after.edition, "pages are made again");
        cast.brand.ends_share_with(&cast.sao_mai).await.unwrap();
        assert_eq!(known(&cast.sao_mai.lead, style).await.unwrap().share, None);

        let token = cast.brand.lead.signs_in().await;
        let visit = cast.store.visit(&token, None, true).await.unwrap().unwrap();
        assert_eq!(visit.style, None);
        assert!(cast.store.visit("made up", Some(style), true).await.unwrap().is_none());
    }
}

on_both! {
    async fn a_page_that_looks_by_itself_keeps_nobody_signed_in(db) {
        let cast = Cast::new(db).await;
        let token = cast.sao_mai.hands.signs_in().await;
        for _ in 0..44 {
            cast.clock.forward(DAY);
            assert!(cast.store.session_unseen(&token).await.unwrap().is_some());
        }
        cast.clock.forward(DAY);
        assert!(cast.store.session_unseen(&token).await.unwrap().is_none());
        assert!(cast.store.session(&token).await.unwrap().is_none());
    }
}

on_both! {
    async fn a_session_ends_however_much_it_is_used(db) {
        let cast = Cast::new(db).await;
        for (person, days) in [(&cast.brand.lead, 60), (&cast.sao_mai.hands, 180)] {
            let token = person.signs_in().await;
            for day in 1..days {
                cast.clock.forward(DAY);
                let session = cast.store.session(&token).await.unwrap();
                assert!(session.is_some(), "{} on day {day}", person.name);
            }
            cast.clock.forward(DAY);
            assert!(cast.store.session(&token).await.unwrap().is_none(), "{}", person.name);
        }
    }
}

on_both! {
    async fn signing_out_ends_one_session_or_all(db) {
        let cast = Cast::new(db).await;
        let iris = &cast.brand.lead;
        let (office, home, phone) =
            (iris.signs_in().await, iris.signs_in().await, iris.signs_in().await);
        let other = cast.brand.owner.signs_in().await;
        cast.store.end_session(&office).await.unwrap();
        assert!(cast.store.session(&office).await.unwrap().is_none());
        assert!(cast.store.session(&home).await.unwrap().is_some());

        cast.store.end_sessions(&iris.may()).await.unwrap();
        for token in [&home, &phone] {
            assert!(cast.store.session(token).await.unwrap().is_none());
        }
        assert!(cast.store.session(&other).await.unwrap().is_some(), "others stay");
        assert!(cast.store.session("made up").await.unwrap().is_none());
    }
}

on_both! {
    async fn who_was_sent_away_comes_in_by_no_door(db) {
        let cast = Cast::new(db.clone()).await;
        let iris = &cast.brand.lead;
        let token = cast.store.set_password(&iris.may(), "iris", "hash").await.unwrap();
        assert!(cast.store.session(&token).await.unwrap().is_some());
        cast.store.end_access(&cast.brand.owner.may(), &iris.actor.person).await.unwrap();

        assert!(cast.store.session(&token).await.unwrap().is_none());
        // Even one that was left behind opens nothing.
        let tx = db.begin().await.unwrap();
        tx.run(
            "INSERT INTO session (token_hash, person, made_at, seen_at, ends_at) \
             VALUES ($1, $2, $3, $3, '2027-03-02T08:00:00.000Z')",
            values![Digest::of(b"left"), iris.actor.person, cast.store.world().now()],
        ).await.unwrap();
        tx.commit().await.unwrap();
        assert!(cast.store.session("left").await.unwrap().is_none());
        assert_eq!(cast.store.password("iris").await.unwrap(), None);
        assert!(is_missing(&cast.store.open_session(&iris.actor.person).await));
        assert!(is_missing(&cast.store.set_password(&iris.may(), "iris", "hash").await));
    }
}

on_both! {
    async fn a_password_is_ones_own_and_signs_out_every_other_device(db) {
        let cast = Cast::new(db).await;
        let (nell, iris) = (&cast.brand.owner, &cast.brand.lead);
        assert_eq!(cast.store.login(&iris.may()).await.unwrap(), None);
        let before = iris.signs_in().await;
        let token = cast.store.set_password(&iris.may(), "iris", "first").await.unwrap();
        assert!(cast.store.session(&before).await.unwrap().is_none());
        let session = cast.store.session(&token).await.unwrap().unwrap();
        assert_eq!(session.name.as_deref(), Some("Iris"), "and is called as before");
        assert_eq!(cast.store.login(&iris.may()).await.unwrap().as_deref(), Some("iris"));

        assert_eq!(cast.store.login(&nell.may()).await.unwrap(), None);
        assert_eq!(cast.store.password("Iris").await.unwrap(), None, "a name is no sign-in name");
        let taken = cast.store.set_password(&nell.may(), "iris", "other").await;
        assert!(matches!(taken, Err(StoreError::Unique(_))), "{taken:?}");

        cast.store.set_password(&iris.may(), "iris.vale", "second").await.unwrap();
        assert_eq!(cast.store.password("iris").await.unwrap(), None);
        let known = cast.store.password("iris.vale").await.unwrap();
        let expected = Some((iris.actor.person.clone(), "second".to_owned()));
        assert_eq!(known, expected);
        assert!(cast.store.set_password(&nell.may(), "iris", "other").await.is_ok());
        assert_eq!(cast.store.password("iris.vale").await.unwrap(), expected, "hers stays");
    }
}

on_both! {
    async fn no_token_lies_in_the_database_as_it_is(db) {
        let cast = Cast::new(db.clone()).await;
        let hoa = &cast.sao_mai.hands;
        let session = hoa.signs_in().await;
        let link = cast.store.new_link(&cast.sao_mai.lead.may(), &hoa.actor.person).await.unwrap();
        let kept: Vec<(String,)> = db
            .all(
                "SELECT token_hash FROM session UNION ALL SELECT token_hash FROM way_in",
                values![],
            )
            .await
            .unwrap();
        assert_eq!(kept.len(), 2);
        for token in [session, link] {
            assert!(kept.iter().all(|(hash,)| *hash != token));
        }
    }
}
