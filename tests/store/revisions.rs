//! Publishing a draft, and what becomes of a revision.

use std::collections::BTreeMap;

use fellseam::access::{Denied, act};
use fellseam::exchange::Refused;
use fellseam::exchange::refused::FindingKey;
use fellseam::exchange::revision::Standing;
use fellseam::exchange::thread::State;
use fellseam::language::terms_of;
use fellseam::spec::units::DecimalSign;
use fellseam::spec::{Digest, Length, Section, Spec, Unit};
use fellseam::store::{Publish, Read, StoreError, ThreadMove, values};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::past::Past;

on_both! {
    async fn a_revision_is_the_bytes_that_were_hashed(db) {
        let cast = Cast::new(db).await;
        let Cast { store, brand, .. } = &cast;
        assert_eq!(brand.publishes("  First issue ").await.unwrap(), 1);
        let revision = brand.revision(1).await;
        assert_eq!(revision.standing, Standing::Current);
        assert_eq!(revision.published_by.as_deref(), Some("Iris"));
        assert_eq!(revision.frozen.reason, "First issue");
        assert_eq!(revision.frozen.spec, brand.draft().await.0);
        assert_eq!(revision.frozen.previous, None);
        let bytes = store.revision_bytes(&brand.reads().await, 1).await.unwrap();
        assert_eq!(Digest::of(&bytes), revision.digest);

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        assert_eq!(brand.publishes("Longer").await.unwrap(), 2);
        let newest = brand.revision(2).await;
        assert_eq!(newest.frozen.previous.as_ref(), Some(&revision.digest));
        assert_eq!(
            brand.revision(1).await.standing,
            Standing::Superseded { by: 2, current: Some(2) }
        );
        let again = store.revision_bytes(&brand.reads().await, 1).await.unwrap();
        assert_eq!(again, bytes, "the first is what it was");
        assert!(is_missing(&store.revision_bytes(&brand.reads().await, 3).await));
    }
}

on_both! {
    async fn only_what_was_shown_is_published(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let (_, shown) = brand.draft().await;
        // Nell saves two sections while Iris reads.
        brand.edits(|spec| {
            set_base(spec, "point-c", "29");
            spec.header.season = "Spring 2027".to_owned();
        }).await;

        let accepted = BTreeMap::new();
        let form = Publish {
            reason: "Longer",
            shown: &shown,
            accepted: &accepted,
            decimal: DecimalSign::Point,
            terms: terms_of,
        };
        let permit = brand.lead.on(&brand.style).await;
        assert_eq!(
            refusal(store.publish(&permit, form.clone()).await),
            Refused::SectionMoved { sections: vec![Section::Header, Section::Points] }
        );
        let shown = BTreeMap::new();
        let blind = store.publish(&permit, Publish { shown: &shown, ..form }).await;
        assert_eq!(refusal(blind), Refused::SectionMoved { sections: Section::ALL.to_vec() });
        assert_eq!(brand.publishes("Longer").await.unwrap(), 2);

        // What it was made of is known.
        let permit = brand.lead.on(&brand.style).await;
        let sections = store.revision_sections(&permit, 2).await.unwrap();
        assert_eq!(sections, brand.draft().await.1);
        let first = store.revision_sections(&permit, 1).await.unwrap();
        assert!(first.values().all(|version| *version == 1));
    }
}

on_both! {
    async fn an_unready_or_unchanged_draft_is_not_published(db) {
        let cast = Cast::with_revision(db).await;
        let brand = &cast.brand;
        assert_eq!(
            refusal(brand.publishes("Again").await),
            Refused::DraftUnchanged { newest: 1 }
        );

        brand.edits(|spec| {
            for point in &mut spec.points.points[..2] {
                point.minus = None;
            }
        }).await;
        assert_eq!(
            refusal(brand.publishes("Unready").await),
            Refused::ErrorsRemain { count: 2 }
        );
        brand.edits(|spec| {
            for point in &mut spec.points.points[..2] {
                point.minus = Some(inches("1/4"));
            }
        }).await;
        assert_eq!(refusal(brand.publishes(" ").await), Refused::ReasonMissing);
        assert_eq!(brand.publishes("Other tolerances").await.unwrap(), 2);
        let viewer = brand.viewer.may_on::<act::Publish>(&brand.style).await;
        assert!(matches!(viewer, Err(Denied::NotYours { .. })));
    }
}

on_both! {
    async fn a_warning_is_published_with_its_reason(db) {
        let cast = Cast::new(db).await;
        let brand = &cast.brand;
        // Rounding to 1/4 in alone would take up the whole tolerance.
        brand.edits(|spec| spec.points.points[7].step = Some(inches("1/4"))).await;
        let refused = refusal(brand.publishes("Coarse").await);
        let key = FindingKey {
            code: "step-coarse".to_owned(),
            item: Some(item("point-h")),
        };
        assert_eq!(refused, Refused::WarningReasonMissing { warnings: vec![key.clone()] });
        let blank = BTreeMap::from([(key.clone(), " ".to_owned())]);
        refusal(brand.publishes_accepting("Coarse", &blank).await);

        let typed = BTreeMap::from([(key, " The rib gives. ".to_owned())]);
        assert_eq!(brand.publishes_accepting("Coarse", &typed).await.unwrap(), 1);
        let accepted = &brand.revision(1).await.frozen.accepted;
        assert_eq!(accepted.len(), 1);
        assert_eq!((&*accepted[0].code, &*accepted[0].reason), ("step-coarse", "The rib gives."));
    }
}

on_both! {
    async fn an_agreed_must_fix_must_be_carried(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let longer = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
        let wider = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();
        let asked = brand.insists(sao_mai, "point-b", "Wider here?").await.unwrap();
        for thread in [&longer, &wider] {
            sao_mai.says(thread, "Clear").await.unwrap();
            brand.moves(thread, ThreadMove::Agree).await.unwrap();
        }

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        assert_eq!(
            refusal(brand.publishes("Longer").await),
            Refused::MustFixUnchanged { threads: vec![wider.clone()] }
        );
        assert_eq!(brand.state_of(&longer).await, State::Agreed, "nothing of it happened");

        brand.edits(|spec| set_base(spec, "point-a", "22")).await;
        assert_eq!(brand.publishes("Longer and wider").await.unwrap(), 2);
        for thread in [&longer, &wider] {
            assert_eq!(sao_mai.state_of(thread).await, State::Changed { revision: 2 });
        }
        assert_eq!(brand.state_of(&asked).await, State::Open, "not agreed upon yet");
    }
}

on_both! {
    async fn twenty_eight_and_a_half_inches_stay_that(db) {
        const EXACT: i64 = 723_900_000;
        let cast = Cast::with_revision(db.clone()).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        for typed in ["28 1/2", "28.5", "28,5", "28½", "28-1/2\""] {
            assert_eq!(inches(typed).nm.as_nm(), EXACT, "{typed}");
        }
        // Entry and storage of the draft.
        brand.edits(|spec| {
            set_base(spec, "point-c", "27");
            set_base(spec, "point-e", "28 1/2");
        }).await;
        let point = |spec: &Spec| spec.point(&item("point-e")).unwrap().base.unwrap();
        assert_eq!(point(&brand.draft().await.0).nm.as_nm(), EXACT);
        let (json,): (String,) = db
            .one(
                "SELECT content FROM draft_section WHERE style = $1 AND section = 'points'",
                values![brand.style],
            )
            .await
            .unwrap();
        assert!(json.contains("723900000") && !json.contains("7239000000"), "{json}");

        // Grading, publishing, and the bytes of the revision.
        brand.publishes("Sleeves").await.unwrap();
        let bytes = store.revision_bytes(&sao_mai.reads().await, 2).await.unwrap();
        assert!(String::from_utf8(bytes).unwrap().contains("723900000"));
        let frozen = sao_mai.revision(2).await.frozen;
        let row = frozen.chart.row(&item("point-e")).unwrap();
        let shown: Vec<String> = row
            .values
            .iter()
            .map(|value| value.show(Unit::Inch, row.step, frozen.decimal))
            .collect();
        assert_eq!(shown, ["27 3/4", "28 1/8", "28 1/2", "28 7/8", "29 1/8"]);
        assert_eq!(frozen.chart.value(&item("point-e"), &item("size-m")), Some(Length::nm(EXACT)));

        // A measured value: entry, storage, deviation.
        let typed = &[(1, "point-e", "28½")];
        let round = measured_round(brand, sao_mai, &["size-m"], typed).await;
        let (kept,): (i64,) = db
            .one("SELECT nm FROM measurement WHERE round = $1", values![round])
            .await
            .unwrap();
        assert_eq!(kept, EXACT);
        let round = brand.round(&round).await;
        assert_eq!(round.measurements[0].value, Length::nm(EXACT));
        assert_eq!(round.summary().out, 0);
        let value = round.measurements[0].value;
        assert_eq!(value.show(Unit::Inch, row.step, frozen.decimal), "28 1/2");
    }
}

on_both! {
    async fn a_withdrawn_revision_says_why_and_leaves_none_current(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let designer = brand.lead.may_on::<act::Withdraw>(&brand.style).await;
        assert!(matches!(designer, Err(Denied::NotYours { .. })), "only an owner");
        assert_eq!(refusal(brand.withdraws(1, " ").await), Refused::ReasonMissing);
        assert!(is_missing(&brand.withdraws(2, "Wrong").await));
        brand.withdraws(1, " The rib is wrong. ").await.unwrap();
        let reason = "The rib is wrong.".to_owned();
        assert_eq!(
            sao_mai.revision(1).await.standing,
            Standing::Withdrawn { reason: reason.clone(), current: None }
        );
        assert_eq!(refusal(brand.withdraws(1, "Again").await), Refused::AlreadyWithdrawn);
        assert_eq!(refusal(sao_mai.acknowledges(1).await), Refused::NotCurrent { current: None });

        // It is not made current again, and the draft may not pass for it.
        assert_eq!(refusal(brand.publishes("As before").await), Refused::DraftUnchanged { newest: 1 });
        brand.edits(|spec| spec.header.contrast_fabric = "1 × 1 rib".to_owned()).await;
        assert_eq!(brand.publishes("The right rib").await.unwrap(), 2);
        assert_eq!(
            sao_mai.revision(1).await.standing,
            Standing::Withdrawn { reason, current: Some(2) }
        );
    }
}

on_both! {
    async fn a_factory_acknowledges_the_current_revision_once(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let floor = sao_mai.hands.may_on::<act::Acknowledge>(&brand.style).await;
        assert!(matches!(floor, Err(Denied::NotYours { .. })));

        sao_mai.acknowledges(1).await.unwrap();
        assert_eq!(refusal(sao_mai.acknowledges(1).await), Refused::AlreadyAcknowledged);
        assert!(is_missing(&sao_mai.acknowledges(2).await));
        meghna.acknowledges(1).await.unwrap();

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        assert_eq!(
            refusal(meghna.acknowledges(1).await),
            Refused::NotCurrent { current: Some(2) }
        );
        sao_mai.acknowledges(2).await.unwrap();
        let known = store.acknowledgements(&brand.reads().await).await.unwrap();
        let known: Vec<_> = known.into_iter().map(|it| (it.number, it.org, it.person)).collect();
        let of = |factory: &Factory| (factory.org.clone(), factory.lead.actor.person.clone());
        assert_eq!(known.len(), 3);
        for (number, factory) in [(1, sao_mai), (2, sao_mai), (1, meghna)] {
            let (org, person) = of(factory);
            assert!(known.contains(&(number, org, person)), "{number}: {known:?}");
        }
    }
}

on_both! {
    async fn a_revision_whose_bytes_were_changed_is_not_read(db, address) {
        let cast = Cast::with_revision(db).await;
        let bytes = match address.starts_with("sqlite:") {
            true => "X'7b7d'",
            false => "'\\x7b7d'",
        };
        let mut past = Past::the_guards(&address).await;
        past.run(&format!("UPDATE revision SET bytes = {bytes}")).await;
        let read = cast.store.revision(&cast.brand.reads().await, 1).await;
        let Err(StoreError::Corrupt { table, column, .. }) = read else { panic!("{read:?}") };
        assert_eq!((&*table, &*column), ("revision", "bytes"));
    }
}
