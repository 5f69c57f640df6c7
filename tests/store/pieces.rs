//! Pieces beside their values: in another state, left out with a reason, photographed.

use fellseam::exchange::Refused;
use fellseam::exchange::Side;
use fellseam::exchange::measuring::{Reason, Wash};
use fellseam::exchange::round::{Outcome, State};
use fellseam::spec::RoundId;
use fellseam::spec::document::MeasuringState;
use fellseam::store::{MOST_PIECE_PHOTOS, NewMeasurement, NewSkip, StoreError};

use crate::support::cast::*;
use crate::support::database::on_both;

/// A round of one piece in M that is being worked on.
async fn in_work(cast: &Cast) -> RoundId {
    let round = cast
        .brand
        .requests(&cast.sao_mai, &["size-m"])
        .await
        .unwrap();
    cast.sao_mai.starts(&round).await.unwrap();
    round
}

async fn washed(
    cast: &Cast,
    round: &RoundId,
    wash: Wash,
    typed: &str,
) -> Result<usize, StoreError> {
    let value = cast.sao_mai.value(round, 1, "point-c", typed).await;
    let value = NewMeasurement {
        wash: Some(wash),
        ..value
    };
    let permit = cast.sao_mai.hands.on(&cast.brand.style).await;
    Ok(cast.store.measure(&permit, round, &[value]).await?.new)
}

on_both! {
    async fn a_washed_value_stands_beside_the_one_that_is_judged(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        sao_mai.measures(&round, &[(1, "point-c", "28 1/2")]).await.unwrap();
        assert_eq!(washed(&cast, &round, Wash::After, "27 3/8").await.unwrap(), 1);
        let seen = brand.round(&round).await;
        assert_eq!(seen.other_state(), Wash::After);
        let piece = &seen.pieces[0].id;
        let of = |wash| seen.values_in(wash, piece, Some(Side::Factory)).get(&item("point-c")).copied();
        assert_eq!(of(None), Some(inches("28 1/2").nm));
        assert_eq!(of(Some(Wash::After)), Some(inches("27 3/8").nm));
        assert_eq!(seen.summary().out, 0, "tolerances hold for the spec's own state");
        assert!(is_missing(&washed(&cast, &round, Wash::Before, "29").await), "that is the spec's state");

        // What both sides sign has it, named.
        sao_mai.dispatches(&round).await.unwrap();
        brand.receives(&round).await.unwrap();
        brand.finishes_measuring(&round).await.unwrap();
        brand.decides(&round, Outcome::Remake, "Shrinks", &[]).await.unwrap();
        let record = brand.round(&round).await.record(Vec::new()).expect("it is decided");
        let washes: Vec<_> = record.measurements.iter().map(|it| it.wash).collect();
        assert_eq!(washes, [None, Some(Wash::After)]);
    }
}

on_both! {
    async fn of_a_spec_in_washed_measurements_the_other_state_is_before(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, .. } = &cast;
        brand.edits(|spec| spec.header.measured = Some(MeasuringState::AfterWashes(1))).await;
        brand.publishes("Measured washed").await.unwrap();
        let round = in_work(&cast).await;
        assert_eq!(brand.round(&round).await.other_state(), Wash::Before);
        assert_eq!(washed(&cast, &round, Wash::Before, "29 1/2").await.unwrap(), 1);
        assert!(is_missing(&washed(&cast, &round, Wash::After, "28").await));
    }
}

on_both! {
    async fn a_point_that_is_left_out_says_why_until_it_is_measured(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let due = |round: &fellseam::store::Round| round.due(&round.pieces[0].id).count();
        let before = due(&brand.round(&round).await);
        assert!(sao_mai.skips(&round, 1, "point-a", Reason::Unclear).await.unwrap());
        assert!(sao_mai.skips(&round, 1, "point-a", Reason::Unfinished).await.unwrap());
        let seen = brand.round(&round).await;
        assert_eq!(due(&seen), before - 1);
        let reasons = seen.skipped(&seen.pieces[0].id, None);
        assert_eq!(reasons.into_iter().collect::<Vec<_>>(), [(item("point-a"), Reason::Unfinished)]);
        assert_eq!(seen.skips[0].person.as_deref(), Some("Hoa"));
        sao_mai.measures(&round, &[(1, "point-a", "21 1/2")]).await.unwrap();
        let seen = brand.round(&round).await;
        assert!(seen.skipped(&seen.pieces[0].id, None).is_empty());
        assert_eq!(seen.skips.len(), 2, "what was said stays");

        // The same key twice is one reason; with another it is refused.
        let new = NewSkip {
            piece: seen.pieces[0].id.clone(),
            point: item("point-b"),
            reason: Reason::Absent,
            key: "one".to_owned(),
        };
        let permit = sao_mai.hands.on(&brand.style).await;
        assert!(store.skip(&permit, &round, &new).await.unwrap());
        assert!(store.skip(&permit, &round, &new).await.unwrap());
        let other = NewSkip { reason: Reason::Damaged, ..new.clone() };
        assert!(!store.skip(&permit, &round, &other).await.unwrap());
        assert_eq!(brand.round(&round).await.skips.len(), 3);
        let nowhere = NewSkip { point: item("part-1"), key: "two".to_owned(), ..new };
        assert!(is_missing(&store.skip(&permit, &round, &nowhere).await));

        brand.decides(&round, Outcome::Remake, "Again", &[]).await.unwrap();
        let late = sao_mai.skips(&round, 1, "point-d", Reason::Absent).await;
        assert_eq!(refusal(late), Refused::OnlyCorrections);
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn photographs_of_a_piece_are_its_factorys_and_the_brands(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let asked = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        let early = sao_mai.photographs_piece(&asked, 1, "cloth").await;
        assert_eq!(refusal(early), Refused::RoundNotIn { state: State::Requested });
        let round = in_work(&cast).await;
        assert_eq!(sao_mai.photographs_piece(&round, 1, "front").await.unwrap(), Some(1));
        assert_eq!(sao_mai.photographs_piece(&round, 1, "front").await.unwrap(), Some(1), "once");
        assert_eq!(sao_mai.photographs_piece(&round, 1, "back").await.unwrap(), Some(2));
        let seen = store.piece_photos(&brand.reads().await, &round).await.unwrap();
        assert_eq!(seen.len(), 2);
        assert_eq!((seen[0].side, seen[0].person.as_deref()), (Side::Factory, Some("Linh")));
        let photo = &seen[0].photo.clone().expect("it is there").digest;
        let fetch = |permit| async move { store.picture(&permit, photo, 480).await };
        assert!(fetch(brand.reads().await).await.is_ok());
        assert!(fetch(sao_mai.reads().await).await.is_ok());
        assert!(is_missing(&fetch(meghna.reads().await).await), "another factory's");
        assert!(store.piece_photos(&meghna.reads().await, &round).await.unwrap().is_empty());

        for n in 2..MOST_PIECE_PHOTOS {
            sao_mai.photographs_piece(&round, 1, &n.to_string()).await.unwrap();
        }
        assert_eq!(sao_mai.photographs_piece(&round, 1, "one more").await.unwrap(), None);
        let seen = store.piece_photos(&brand.reads().await, &round).await.unwrap();
        assert_eq!(seen.len(), MOST_PIECE_PHOTOS);
    }
}
