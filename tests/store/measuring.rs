//! Measuring: nothing that was acknowledged is lost, and nothing is counted twice.

use fellseam::access::{Denied, act};
use fellseam::exchange::Refused;
use fellseam::exchange::Side;
use fellseam::exchange::round::{Outcome, State};
use fellseam::spec::{Length, PieceId, Unit};
use fellseam::store::{Kept, NewMeasurement, values};

use crate::support::cast::*;
use crate::support::database::on_both;

/// A round of two pieces in M that is being worked on.
async fn in_work(cast: &Cast) -> fellseam::spec::RoundId {
    let round = cast
        .brand
        .requests(&cast.sao_mai, &["size-m", "size-m"])
        .await;
    let round = round.unwrap();
    cast.sao_mai.starts(&round).await.unwrap();
    round
}

fn kept(new: usize, refused: &[&NewMeasurement]) -> Kept {
    Kept {
        new,
        refused: refused.iter().map(|value| value.key.clone()).collect(),
    }
}

on_both! {
    async fn values_are_kept_as_typed_and_the_newest_of_a_side_counts(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let typed = [(1, "point-c", "28 1/2"), (2, "point-c", "28"), (1, "point-a", "21 1/2")];
        assert_eq!(sao_mai.measures(&round, &typed).await.unwrap(), 3);
        assert_eq!(sao_mai.measures(&round, &[(1, "point-c", "28 5/8")]).await.unwrap(), 1);
        sao_mai.dispatches(&round).await.unwrap();
        brand.receives(&round).await.unwrap();
        brand.measures(&round, &[(1, "point-c", "28 3/4")]).await.unwrap();

        let seen = brand.round(&round).await;
        assert_eq!(seen.measurements.len(), 5, "the older ones stay");
        let typed: Vec<_> = seen.measurements.iter().map(|it| it.value).collect();
        let sent = ["28 1/2", "28", "21 1/2", "28 5/8", "28 3/4"].map(|it| inches(it).nm);
        assert_eq!(typed, sent, "in the order that they came in");
        assert!(seen.measurements.iter().all(|it| it.unit == Unit::Inch));
        assert_eq!(seen.measurements[0].person.as_deref(), Some("Hoa"));
        let piece = &seen.pieces[0].id;
        let of = |side| seen.values(piece, side).get(&item("point-c")).copied();
        assert_eq!(of(Some(Side::Factory)), Some(inches("28 5/8").nm));
        assert_eq!(of(Some(Side::Brand)), Some(inches("28 3/4").nm));
        assert_eq!(of(None), Some(inches("28 3/4").nm), "the brand decides");
        // 28 against 28 1/2, 1/4 in less and more; not critical.
        let summary = seen.summary();
        assert_eq!((summary.measured, summary.out), (3, 1));
        assert!(summary.critical_out.is_empty());
    }
}

on_both! {
    async fn a_key_is_one_value_however_often_it_is_sent(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let value = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        let other = sao_mai.value(&round, 1, "point-a", "21 1/2").await;
        let permit = sao_mai.hands.on(&brand.style).await;
        let sent = [value.clone(), other];
        assert_eq!(store.measure(&permit, &round, &sent).await.unwrap(), kept(2, &[]));
        let entries = brand.ledger().await.len();
        assert_eq!(store.measure(&permit, &round, &sent).await.unwrap(), kept(0, &[]));
        // Even twice in one sending.
        let mut twice = vec![value.clone(), value.clone()];
        assert_eq!(store.measure(&permit, &round, &twice).await.unwrap(), kept(0, &[]));
        twice[0].key = "new".to_owned();
        twice[1].key = "new".to_owned();
        assert_eq!(store.measure(&permit, &round, &twice).await.unwrap(), kept(1, &[]));
        assert_eq!(brand.round(&round).await.measurements.len(), 3);
        assert_eq!(brand.ledger().await.len(), entries + 1);

        // Resent after the round has gone on, it is still the one that came.
        sao_mai.dispatches(&round).await.unwrap();
        brand.decides(&round, Outcome::Cancelled, "Dropped", &[]).await.unwrap();
        assert_eq!(store.measure(&permit, &round, &sent).await.unwrap(), kept(0, &[]));
    }
}

on_both! {
    async fn a_key_with_another_body_keeps_out_that_value_alone(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let value = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        let permit = sao_mai.hands.on(&brand.style).await;
        store.measure(&permit, &round, std::slice::from_ref(&value)).await.unwrap();

        let second = brand.round(&round).await.pieces[1].id.clone();
        let bodies = [
            NewMeasurement { value: inches("28").nm, ..value.clone() },
            NewMeasurement { unit: Unit::Cm, ..value.clone() },
            NewMeasurement { point: item("point-a"), ..value.clone() },
            NewMeasurement { piece: second, ..value.clone() },
        ];
        let count = bodies.len();
        for body in bodies {
            let before = sao_mai.value(&round, 2, "point-a", "21").await;
            let after = sao_mai.value(&round, 2, "point-b", "20").await;
            let sent = [before, body, after];
            let said = store.measure(&permit, &round, &sent).await.unwrap();
            assert_eq!(said, kept(2, &[&sent[1]]), "{:?}", sent[1]);
        }
        // By another person, or in another round.
        let refused = kept(0, &[&value]);
        let linh = sao_mai.lead.on(&brand.style).await;
        let sent = store.measure(&linh, &round, std::slice::from_ref(&value)).await.unwrap();
        assert_eq!(sent, refused);
        let other = in_work(&cast).await;
        let mut elsewhere = sao_mai.value(&other, 1, "point-c", "28 1/2").await;
        elsewhere.key.clone_from(&value.key);
        assert_eq!(store.measure(&permit, &other, &[elsewhere]).await.unwrap(), refused);
        let seen = brand.round(&round).await.measurements;
        assert_eq!(seen.len(), 1 + 2 * count, "the others were kept");
        let of_c: Vec<_> = seen.iter().filter(|it| it.point == item("point-c")).collect();
        assert_eq!((of_c.len(), of_c[0].value), (1, value.value));
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn one_key_sent_fifty_times_at_once_is_one_value(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let value = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        let permit = sao_mai.hands.on(&brand.style).await;
        let mut sends = tokio::task::JoinSet::new();
        for n in 0..50 {
            let (store, permit, round) = (store.clone(), permit.clone(), round.clone());
            let mut value = value.clone();
            // Every fifth says something else under the key.
            if n % 5 == 0 {
                value.value = inches("28").nm;
            }
            sends.spawn(async move { store.measure(&permit, &round, &[value]).await });
        }
        let outcomes = sends.join_all().await;
        let count = |said: Kept| {
            outcomes.iter().filter(|it| it.as_ref().is_ok_and(|it| *it == said)).count()
        };
        assert_eq!(count(kept(1, &[])), 1, "{outcomes:?}");
        let repeated = count(kept(0, &[]));
        let reused = count(kept(0, &[&value]));
        // Either body may have come first.
        assert!([(39, 10), (9, 40)].contains(&(repeated, reused)), "{repeated} {reused}");
        assert_eq!(brand.round(&round).await.measurements.len(), 1);
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn a_key_that_is_being_kept_for_another_style_is_refused(db) {
        let cast = Cast::with_revision(db.clone()).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let style = brand.lead.starts(&another_style()).await;
        let (other_brand, other_factory) = (brand.on(&style), sao_mai.on(&style));
        other_brand.publishes("First issue").await.unwrap();
        other_brand.shares_with(sao_mai).await.unwrap();
        let first = in_work(&cast).await;
        let second = other_brand.requests(&other_factory, &["size-m"]).await.unwrap();
        other_factory.starts(&second).await.unwrap();
        let value = other_factory.value(&second, 1, "point-c", "28 1/2").await;

        // Half way through keeping it for the first style.
        let tx = db.begin().await.unwrap();
        tx.run(
            "INSERT INTO measurement (id, round, seq, piece, point, nm, unit, person, side, at, \
             key) VALUES ('first', $1, 1, $2, 'point-c', 1, 'cm', $3, 'factory', \
             '2026-03-02T08:00:00.000Z', $4)",
            values![first, brand.round(&first).await.pieces[0].id, sao_mai.hands.actor.person,
                value.key],
        )
        .await
        .unwrap();
        let permit = sao_mai.hands.on(&style).await;
        let (waiting, of) = (store.clone(), value.clone());
        let waiting = tokio::spawn(async move { waiting.measure(&permit, &second, &[of]).await });
        tokio::time::sleep(std::time::Duration::from_millis(300)).await;
        assert!(!waiting.is_finished());
        tx.commit().await.unwrap();
        assert_eq!(waiting.await.unwrap().unwrap(), kept(0, &[&value]));
    }
}

on_both! {
    async fn each_side_measures_in_its_time(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        let c = &[(1, "point-c", "28 1/2")];
        let early = sao_mai.measures(&round, c).await;
        assert_eq!(refusal(early), Refused::RoundNotIn { state: State::Requested });
        sao_mai.starts(&round).await.unwrap();
        let not_here = brand.measures(&round, c).await;
        assert_eq!(refusal(not_here), Refused::RoundNotIn { state: State::InWork });
        sao_mai.dispatches(&round).await.unwrap();
        sao_mai.measures(&round, c).await.expect("late, from a phone without a signal");
        let on_the_way = brand.measures(&round, c).await;
        assert_eq!(refusal(on_the_way), Refused::RoundNotIn { state: State::Dispatched });
        brand.receives(&round).await.unwrap();
        brand.measures(&round, c).await.unwrap();
        let viewer = brand.viewer.may_on::<act::Measure>(&brand.style).await;
        assert!(matches!(viewer, Err(Denied::NotYours { .. })));
    }
}

on_both! {
    async fn after_the_decision_values_are_only_corrected(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let c = &[(1, "point-c", "28 1/4")];
        let round = measured_round(brand, sao_mai, &["size-m", "size-m"], c).await;
        brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        let record = async || {
            let round = brand.round(&round).await;
            round.record(Vec::new()).unwrap().digest().unwrap()
        };
        let before = record().await;

        for missing in [(1, "point-a", "21 1/2"), (2, "point-c", "28 1/4")] {
            let added = sao_mai.measures(&round, &[missing]).await;
            assert_eq!(refusal(added), Refused::OnlyCorrections, "{missing:?}");
        }
        let theirs = brand.measures(&round, c).await;
        assert_eq!(refusal(theirs), Refused::OnlyCorrections, "the factory's value is not theirs");
        // One of two is no correction: neither is kept.
        let mixed = [(1, "point-c", "28 3/8"), (1, "point-a", "21 1/2")];
        assert_eq!(refusal(sao_mai.measures(&round, &mixed).await), Refused::OnlyCorrections);

        sao_mai.measures(&round, &[(1, "point-c", "28 3/8")]).await.unwrap();
        let seen = brand.round(&round).await;
        assert_eq!(seen.measurements.len(), 2, "the first stays beside it");
        let value = seen.values(&seen.pieces[0].id, None)[&item("point-c")];
        assert_eq!(value, inches("28 3/8").nm);
        assert_ne!(record().await, before, "what is signed shows it");
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}

on_both! {
    async fn nothing_is_measured_that_is_not_there(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let other = in_work(&cast).await;
        let good = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        let permit = sao_mai.hands.on(&brand.style).await;
        let other_piece = brand.round(&other).await.pieces[0].id.clone();
        for wrong in [
            NewMeasurement { point: item("point-zz"), ..good.clone() },
            NewMeasurement { point: item("part-1"), ..good.clone() },
            NewMeasurement { piece: PieceId::new("none"), ..good.clone() },
            NewMeasurement { piece: other_piece, ..good.clone() },
        ] {
            let first = NewMeasurement { key: "first".to_owned(), ..good.clone() };
            let sent = store.measure(&permit, &round, &[first, wrong.clone()]).await;
            assert!(is_missing(&sent), "{wrong:?}");
        }
        let nowhere = fellseam::spec::RoundId::new("nowhere");
        assert!(is_missing(&store.measure(&permit, &nowhere, &[good]).await));
        assert!(brand.round(&round).await.measurements.is_empty());
        assert_eq!(store.measure(&permit, &round, &[]).await.unwrap(), kept(0, &[]));
    }
}

on_both! {
    async fn the_longest_value_is_kept_exactly(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let round = in_work(&cast).await;
        let mut value = sao_mai.value(&round, 1, "point-c", "28 1/2").await;
        value.value = Length::MAX;
        let permit = sao_mai.hands.on(&brand.style).await;
        store.measure(&permit, &round, &[value]).await.unwrap();
        assert_eq!(brand.round(&round).await.measurements[0].value, Length::MAX);
        assert!(store.audit().await.unwrap().faults.is_empty());
    }
}
