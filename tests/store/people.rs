//! Organisations, people, and who may name and send away whom.

use std::collections::BTreeSet;

use fellseam::access::{Denied, Role, Side, act, grant};
use fellseam::spec::{OrgId, PersonId};
use fellseam::store::{NewPerson, Store, StoreError};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::world::world;

on_both! {
    async fn a_brand_is_founded_once(db) {
        let store = Store::new(db, world().0);
        assert!(!store.is_founded().await.unwrap());

        store.found("Harrow & Tide", "Nell", "en").await.unwrap();
        assert!(store.is_founded().await.unwrap());
        let second = store.found("Another", "Somebody", "en").await;
        assert!(matches!(second, Err(StoreError::Unique(_))), "{second:?}");
    }
}

on_both! {
    async fn of_two_who_found_at_once_one_does(db) {
        let store = Store::new(db, world().0);
        let (one, two) = tokio::join!(
            store.found("Harrow & Tide", "Nell", "en"),
            store.found("Another", "Somebody", "en"),
        );
        assert!(one.is_ok() != two.is_ok(), "{one:?}, {two:?}");
    }
}

fn names(people: &[fellseam::store::Person]) -> BTreeSet<&str> {
    people
        .iter()
        .filter_map(|person| person.name.as_deref())
        .collect()
}

on_both! {
    async fn an_owner_sees_everybody_and_a_merchandiser_their_own_people(db) {
        let cast = Cast::new(db).await;
        let all = cast.store.people(&cast.brand.owner.may()).await.unwrap();
        let everybody = ["Nell", "Iris", "Oscar", "Linh", "Hoa", "Rafiq", "Shirin"];
        assert_eq!(names(&all), BTreeSet::from(everybody));

        let own = cast.store.people(&cast.sao_mai.lead.may()).await.unwrap();
        assert_eq!(names(&own), BTreeSet::from(["Linh", "Hoa"]));
        assert!(own.iter().all(|person| person.org_name == "Sao Mai Garment"));

        let factories = cast.store.factories(&cast.brand.lead.may()).await.unwrap();
        let factories: Vec<_> = factories.into_iter().map(|it| (it.name, it.kind)).collect();
        assert_eq!(
            factories,
            [
                ("Meghna Knit Works".to_owned(), Side::Factory),
                ("Sao Mai Garment".to_owned(), Side::Factory),
            ]
        );
    }
}

on_both! {
    async fn a_merchandiser_names_and_invites_only_their_own_people(db) {
        let cast = Cast::new(db).await;
        let linh = &cast.sao_mai.lead;

        // Whatever the form says of the organisation, it becomes their own.
        let mai = linh.names("Mai", &cast.meghna.org, Role::SampleRoom, "vi").await;
        let own = cast.store.people(&linh.may()).await.unwrap();
        assert!(names(&own).contains("Mai"));
        let others = cast.store.people(&cast.meghna.lead.may()).await.unwrap();
        assert!(!names(&others).contains("Mai"));

        // Nobody for the brand.
        for role in [Role::Owner, Role::Designer, Role::Viewer] {
            let new = NewPerson { org: &OrgId::new("brand"), role, name: "Mole", language: "en" };
            assert!(is_missing(&cast.store.add_person(&linh.may(), new).await), "{role:?}");
        }

        let own = cast.store.new_link(&linh.may(), &mai.actor.person).await;
        assert!(own.is_ok());
        for stranger in [&cast.meghna.hands, &cast.brand.lead] {
            let link = cast.store.new_link(&linh.may(), &stranger.actor.person).await;
            assert!(is_missing(&link), "{}", stranger.name);
        }
        let by_the_floor = grant::<act::Invite>(&cast.sao_mai.hands.actor);
        assert!(matches!(by_the_floor, Err(Denied::NotYours { .. })));
    }
}

on_both! {
    async fn a_role_belongs_to_one_side(db) {
        let cast = Cast::new(db).await;
        for (org, role) in [
            (OrgId::new("brand"), Role::Merchandiser),
            (cast.sao_mai.org.clone(), Role::Designer),
            (OrgId::new("nowhere"), Role::Designer),
        ] {
            let new = NewPerson { org: &org, role, name: "Nobody", language: "en" };
            let added = cast.store.add_person(&cast.brand.owner.may(), new).await;
            assert!(is_missing(&added), "{org} {role:?}");
        }
    }
}

on_both! {
    async fn an_owner_cannot_lock_themselves_out(db) {
        let cast = Cast::new(db).await;
        let owner = &cast.brand.owner;
        let own = cast.store.end_access(&owner.may(), &owner.actor.person).await;
        assert!(is_missing(&own));
        let nobody = cast.store.end_access(&owner.may(), &PersonId::new("nobody")).await;
        assert!(is_missing(&nobody));

        let token = cast.brand.lead.signs_in().await;
        cast.store.end_access(&owner.may(), &cast.brand.lead.actor.person).await.unwrap();
        assert!(cast.store.session(&token).await.unwrap().is_none());
        let again = cast.store.end_access(&owner.may(), &cast.brand.lead.actor.person).await;
        assert!(is_missing(&again), "it ended already");
    }
}

on_both! {
    async fn who_was_sent_away_does_nothing_with_a_permit_from_before(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let second = brand.owner.names("Ada", &brand.org, Role::Owner, "en").await;
        let (govern, invite, create) = (second.may(), second.may(), second.may());
        let write = second.on(&brand.style).await;
        let share = second.on(&brand.style).await;
        store.end_access(&brand.owner.may(), &second.actor.person).await.unwrap();

        let (mut spec, versions) = brand.draft().await;
        let factory = store.add_factory(&govern, "Third").await;
        assert!(is_missing(&factory));
        let ended = store.end_access(&govern, &sao_mai.lead.actor.person).await;
        assert!(is_missing(&ended));
        assert!(is_missing(&store.new_link(&invite, &sao_mai.lead.actor.person).await));
        let new = NewPerson { org: &brand.org, role: Role::Owner, name: "Eve", language: "en" };
        assert!(is_missing(&store.add_person(&invite, new).await));
        spec.header.number = "HT-999".to_owned();
        assert!(is_missing(&store.create_style(&create, &spec).await));
        let section = fellseam::spec::Section::Header;
        let saved = store.save_section(&write, section, versions[&section], &spec).await;
        assert!(is_missing(&saved), "neither won nor kept beside: {saved:?}");
        assert!(is_missing(&store.share(&share, &cast.meghna.org).await));

        assert_eq!(store.factories(&brand.lead.may()).await.unwrap().len(), 2);
        assert_eq!(brand.draft().await.0.header.number, "HT-204");
        assert_eq!(store.shares(&brand.reads().await).await.unwrap().len(), 1);
    }
}

on_both! {
    async fn one_renames_oneself(db) {
        let cast = Cast::with_revision(db).await;
        let hoa = &cast.sao_mai.hands;
        let token = hoa.signs_in().await;
        cast.store.rename(&hoa.may(), "Hoa Lê", "en").await.unwrap();
        let session = cast.store.session(&token).await.unwrap().unwrap();
        assert_eq!(session.name.as_deref(), Some("Hoa Lê"));
        assert_eq!(session.language, "en");
        assert_eq!(session.org_name, "Sao Mai Garment");
        assert_eq!(session.actor, hoa.actor);
    }
}

on_both! {
    async fn a_page_that_was_made_is_made_again_after_every_act_and_renaming(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let edition = async |of: &Person| {
            let facts = store.style_facts(&of.actor, &brand.style).await.unwrap();
            facts.unwrap().edition
        };
        let first = edition(&brand.lead).await;
        assert_eq!(edition(&sao_mai.hands).await, first);
        sao_mai.acknowledges(1).await.unwrap();
        let second = edition(&brand.lead).await;
        assert_ne!(second, first);
        store.rename(&sao_mai.lead.may(), "Linh Trần", "vi").await.unwrap();
        let third = edition(&brand.lead).await;
        assert_ne!(third, second);
        let link = store.new_link(&sao_mai.lead.may(), &sao_mai.hands.actor.person).await.unwrap();
        assert_eq!(edition(&brand.lead).await, third);
        store.use_way_in(&link, Some(("Hoa Lê", "vi"))).await.unwrap();
        let fourth = edition(&brand.lead).await;
        assert_ne!(fourth, third);
        store.erase(&sao_mai.lead.actor.person).await.unwrap();
        assert_ne!(edition(&brand.lead).await, fourth);
    }
}
