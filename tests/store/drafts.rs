//! Drafts: saved section by section, and nobody overwrites what they have not seen.

use std::collections::BTreeSet;

use fellseam::access::{Denied, act};
use fellseam::spec::example::half_zip;
use fellseam::spec::{Section, Spec};
use fellseam::store::{Saved, StoreError};

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn a_new_style_is_a_whole_draft(db) {
        let cast = Cast::new(db).await;
        let (spec, versions) = cast.brand.draft().await;
        assert_eq!(spec, half_zip(drawing()));
        assert!(Section::ALL.iter().all(|section| versions[section] == 1));
        let styles = cast.store.styles(&cast.brand.viewer.may()).await.unwrap();
        assert_eq!(styles.len(), 1);
        assert_eq!((&*styles[0].number, styles[0].newest), ("HT-204", None));
        let write = cast.brand.viewer.may_on::<act::Write>(&cast.brand.style).await;
        assert!(matches!(write, Err(Denied::NotYours { .. })), "a viewer reads");
    }
}

on_both! {
    async fn a_number_belongs_to_one_style(db) {
        let cast = Cast::new(db).await;
        let iris = &cast.brand.lead;
        let twice = cast.store.create_style(&iris.may(), &half_zip(drawing())).await;
        assert!(matches!(twice, Err(StoreError::Unique(_))), "{twice:?}");

        let mut second = another_style();
        let style = iris.starts(&second).await;
        let other = cast.brand.on(&style);
        second.header.number = "HT-204".to_owned();
        let taken = other.saves(Section::Header, 1, &second).await;
        assert!(matches!(taken, Err(StoreError::Unique(_))), "{taken:?}");
        let (spec, versions) = other.draft().await;
        assert_eq!((&*spec.header.number, versions[&Section::Header]), ("HT-205", 1));
    }
}

on_both! {
    async fn each_section_has_versions_of_its_own_and_a_history(db) {
        let cast = Cast::new(db).await;
        let brand = &cast.brand;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.edits(|spec| set_base(spec, "point-c", "29")).await;
        brand.edits(|spec| spec.header.season = "Spring 2027".to_owned()).await;
        let (spec, versions) = brand.draft().await;
        assert_eq!(versions[&Section::Points], 3);
        assert_eq!(versions[&Section::Header], 2);
        assert_eq!(versions[&Section::Sizes], 1);
        assert_eq!(spec.point(&item("point-c")).unwrap().base, Some(inches("29")));

        let permit = brand.viewer.on(&brand.style).await;
        let history = cast.store.section_history(&permit, Section::Points).await.unwrap();
        assert_eq!(history.iter().map(|it| it.version).collect::<Vec<_>>(), [3, 2, 1]);
        assert!(history.iter().all(|it| it.saved_by.as_deref() == Some("Iris")));
        let mut then = Spec::default();
        fellseam::store::put_section(&mut then, Section::Points, &history[1].content).unwrap();
        assert_eq!(then.point(&item("point-c")).unwrap().base, Some(inches("28 3/4")));
    }
}

on_both! {
    async fn a_save_over_something_unseen_loses_and_is_kept_for_its_writer(db) {
        let cast = Cast::new(db).await;
        let Cast { store, brand, .. } = &cast;
        let (old, versions) = brand.draft().await;
        let base = versions[&Section::Points];
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;

        let mut late = old;
        set_base(&mut late, "point-a", "22");
        let nell = brand.owner.on(&brand.style).await;
        let saved = store.save_section(&nell, Section::Points, base, &late).await.unwrap();
        let Saved::Lost(id) = saved else { panic!("{saved:?}") };
        let (spec, versions) = brand.draft().await;
        assert_eq!(spec.point(&item("point-c")).unwrap().base, Some(inches("28 3/4")));
        assert_eq!(versions[&Section::Points], base + 1);

        // It waits for who wrote it, and for nobody else.
        let iris = brand.lead.on(&brand.style).await;
        assert!(store.lost_saves(&iris).await.unwrap().is_empty());
        assert!(is_missing(&store.resolve_save(&iris, &id).await));
        let lost = store.lost_saves(&nell).await.unwrap();
        assert_eq!(lost.len(), 1);
        assert_eq!((lost[0].section, lost[0].base), (Section::Points, base));
        let mut kept = Spec::default();
        fellseam::store::put_section(&mut kept, Section::Points, &lost[0].content).unwrap();
        assert_eq!(kept.points, late.points);

        let again = store.save_section(&nell, Section::Points, base, &late).await.unwrap();
        let Saved::Lost(other) = again else { panic!("{again:?}") };
        store.resolve_save(&nell, &id).await.unwrap();
        let lost = store.lost_saves(&nell).await.unwrap();
        assert_eq!(lost.iter().map(|it| &it.id).collect::<Vec<_>>(), [&other]);
        assert!(is_missing(&store.resolve_save(&nell, &id).await), "dealt with already");
    }
}

on_both! {
    async fn a_save_from_the_future_or_of_nothing_loses(db) {
        let cast = Cast::new(db).await;
        let (spec, _) = cast.brand.draft().await;
        for base in [0, 2, -1, i64::MAX - 1] {
            let saved = cast.brand.saves(Section::Sizes, base, &spec).await.unwrap();
            assert!(matches!(saved, Saved::Lost(_)), "over {base}: {saved:?}");
        }
        assert_eq!(cast.brand.draft().await.1[&Section::Sizes], 1);
    }
}

on_both! {
    async fn of_fifty_saves_at_once_one_wins_and_none_is_lost(db) {
        let cast = Cast::new(db).await;
        let brand = &cast.brand;
        let (spec, versions) = brand.draft().await;
        let base = versions[&Section::Points];
        let typed = |n: u32| format!("{}.{n:02}", 28);

        let mut saves = tokio::task::JoinSet::new();
        for n in 0..50 {
            let (brand, mut spec) = (brand.clone(), spec.clone());
            set_base(&mut spec, "point-c", &typed(n));
            saves.spawn(async move {
                (n, brand.saves(Section::Points, base, &spec).await.unwrap())
            });
        }
        let outcomes = saves.join_all().await;
        let won: Vec<u32> = outcomes
            .iter()
            .filter(|(_, saved)| *saved == Saved::Won(base + 1))
            .map(|(n, _)| *n)
            .collect();
        assert_eq!(won.len(), 1, "winners: {won:?}");
        let lost = outcomes.iter().filter(|(_, saved)| matches!(saved, Saved::Lost(_)));
        assert_eq!(lost.count(), 49);

        // The section is the winner's, and every other text is kept as it was sent.
        let value = |spec: &Spec| spec.point(&item("point-c")).unwrap().base.unwrap();
        let (now, versions) = brand.draft().await;
        assert_eq!(value(&now), inches(&typed(won[0])));
        assert_eq!(versions[&Section::Points], base + 1);
        let permit = brand.lead.on(&brand.style).await;
        let kept = cast.store.lost_saves(&permit).await.unwrap();
        let kept: BTreeSet<_> = kept
            .into_iter()
            .map(|save| {
                let mut spec = Spec::default();
                fellseam::store::put_section(&mut spec, save.section, &save.content).unwrap();
                value(&spec).nm
            })
            .collect();
        let sent = (0..50).filter(|n| *n != won[0]).map(|n| inches(&typed(n)).nm);
        assert_eq!(kept, sent.collect());
    }
}

on_both! {
    async fn saves_of_different_sections_do_not_meet(db) {
        let cast = Cast::new(db).await;
        let brand = &cast.brand;
        let (mut spec, versions) = brand.draft().await;
        set_base(&mut spec, "point-c", "29");
        spec.header.season = "Spring 2027".to_owned();
        spec.sizes.sizes[0].label = "small".to_owned();
        let mut saves = tokio::task::JoinSet::new();
        for section in [Section::Points, Section::Header, Section::Sizes] {
            let (brand, spec, base) = (brand.clone(), spec.clone(), versions[&section]);
            saves.spawn(async move { brand.saves(section, base, &spec).await.unwrap() });
        }
        for saved in saves.join_all().await {
            assert_eq!(saved, Saved::Won(2));
        }
        assert_eq!(brand.draft().await.0, spec);
    }
}
