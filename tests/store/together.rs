//! Many people at once on one style, and on two.

use std::time::Instant;

use fellseam::spec::{RoundId, Section};
use fellseam::store::{NewMeasurement, Store, StoreError};

use crate::support::cast::*;
use crate::support::database::on_both;

/// What each of the fifty does, by turns. Whatever the rules refuse was out of turn, which is no
/// fault; whatever else fails is one.
async fn act(cast: (Brand, Factory, Factory), n: usize, round: RoundId, value: NewMeasurement) {
    let (brand, sao_mai, meghna) = cast;
    let outcome = match n % 10 {
        0 => sao_mai.asks("point-c", "With the rib?").await.map(drop),
        1 => meghna.asks("part-1", "Which fabric?").await.map(drop),
        2 => brand.insists(&sao_mai, "point-a", "Wider").await.map(drop),
        3 => {
            let permit = sao_mai.hands.on(&brand.style).await;
            sao_mai
                .store
                .measure(&permit, &round, &[value])
                .await
                .map(drop)
        }
        4 => meghna.acknowledges(1).await,
        5 => brand.shares_with(&meghna).await,
        6 => brand.requests(&meghna, &["size-m"]).await.map(drop),
        7 => {
            let (mut spec, versions) = brand.draft().await;
            set_base(&mut spec, "point-c", "29");
            spec.points.points[2].name = format!("Body length {n}");
            brand
                .saves(Section::Points, versions[&Section::Points], &spec)
                .await
                .map(drop)
        }
        8 => brand.publishes("Together").await.map(drop),
        _ => sao_mai.signs_revision(1).await.map(drop),
    };
    assert!(
        matches!(outcome, Ok(()) | Err(StoreError::Refused(..))),
        "{n}: {outcome:?}"
    );
}

/// The chain has every number from 1 on, and each entry hangs on the one before.
async fn is_whole(store: &Store, brand: &Brand) -> usize {
    let ledger = brand.ledger().await;
    for (n, pair) in ledger.windows(2).enumerate() {
        assert_eq!(pair[0].entry.seq, n as u64 + 1);
        assert_eq!(pair[1].entry.seq, n as u64 + 2);
        assert_eq!(pair[1].entry.before, pair[0].hash);
        assert!(
            pair[0].entry.at < pair[1].entry.at,
            "in the order of the clock"
        );
    }
    let head = store.head(&brand.reads().await).await.unwrap();
    assert_eq!(head.seq, ledger.len() as u64);
    assert_eq!(head.hash, ledger.last().unwrap().hash);
    assert_eq!(store.audit().await.unwrap().faults, []);
    ledger.len()
}

on_both! {
    async fn fifty_mixed_acts_at_once_leave_a_chain_without_gaps(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        sao_mai.acknowledges(1).await.unwrap();
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        sao_mai.starts(&round).await.unwrap();
        let value = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        let before = is_whole(store, brand).await;

        let start = clock();
        let mut acts = tokio::task::JoinSet::new();
        for n in 0..50 {
            let cast = (brand.clone(), sao_mai.clone(), meghna.clone());
            let key = format!("key {n}");
            let value = NewMeasurement { key, ..value.clone() };
            acts.spawn(act(cast, n, round.clone(), value));
        }
        acts.join_all().await;
        let spent = start.elapsed();
        let after = is_whole(store, brand).await;
        // Asking, insisting and measuring are never out of turn: five of each.
        assert!(after >= before + 20, "{before} {after}");
        assert_eq!(brand.round(&round).await.measurements.len(), 5);
        assert_eq!(brand.threads().await.len(), 15);
        println!("{} entries of fifty acts in {} ms", after - before, spent.as_millis());
    }
}

#[allow(clippy::disallowed_methods, reason = "a figure is measured")]
fn clock() -> Instant {
    Instant::now()
}

on_both! {
    async fn acts_on_two_styles_go_side_by_side(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let style = brand.lead.starts(&another_style()).await;
        let second = brand.on(&style);
        second.publishes("First issue").await.unwrap();
        second.shares_with(sao_mai).await.unwrap();
        let mut asks = tokio::task::JoinSet::new();
        for n in 0..40 {
            let factory = match n % 2 {
                0 => sao_mai.clone(),
                _ => sao_mai.on(&style),
            };
            asks.spawn(async move { factory.asks("point-c", "With the rib?").await });
        }
        for asked in asks.join_all().await {
            asked.unwrap();
        }
        assert_eq!(is_whole(store, brand).await, 3 + 20);
        assert_eq!(is_whole(store, &second).await, 3 + 20);
    }
}

on_both! {
    async fn of_ten_who_publish_at_once_one_does(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let mut publishes = tokio::task::JoinSet::new();
        for _ in 0..10 {
            let brand = brand.clone();
            publishes.spawn(async move { brand.publishes("Longer").await });
        }
        let outcomes = publishes.join_all().await;
        let published: Vec<_> = outcomes.iter().filter_map(|it| it.as_ref().ok()).collect();
        assert_eq!(published, [&2]);
        for outcome in outcomes.into_iter().filter(Result::is_err) {
            let unchanged = fellseam::exchange::Refused::DraftUnchanged { newest: 2 };
            assert_eq!(refusal(outcome), unchanged);
        }
        is_whole(store, brand).await;
    }
}

on_both! {
    async fn an_act_that_fails_leaves_nothing(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let before = is_whole(store, brand).await;
        // It fails in its middle, after the message was written.
        let photo = fellseam::spec::Digest::of(b"never uploaded");
        assert!(is_missing(&sao_mai.sends(&thread, "See", &[photo]).await));
        assert_eq!(is_whole(store, brand).await, before);
        assert_eq!(brand.thread(&thread).await.messages.len(), 1);
    }
}

on_both! {
    async fn an_audit_among_acts_sees_each_style_at_rest(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, sao_mai, .. } = &cast;
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let mut says = tokio::task::JoinSet::new();
        for _ in 0..4 {
            let (sao_mai, thread) = (sao_mai.clone(), thread.clone());
            says.spawn(async move {
                for n in 0..15 {
                    sao_mai.says(&thread, &n.to_string()).await.unwrap();
                }
            });
        }
        let mut audits = 0;
        while !says.is_empty() {
            assert_eq!(store.audit().await.unwrap().faults, []);
            audits += 1;
            while says.try_join_next().is_some() {}
        }
        assert!(audits > 1, "none of them was among acts");
    }
}
