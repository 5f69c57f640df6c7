//! Inspecting bulk, and what the databases keep of it.

use std::collections::BTreeMap;

use fellseam::access::{Denied, act};
use fellseam::exchange::inspection::{Class, Decision, Defect, Lot, Outcome, Sort, State};
use fellseam::exchange::ledger::Act;
use fellseam::exchange::{Refused, Side};
use fellseam::spec::{Entered, EntryId, InspectionId, ItemId, SealId, StyleId};
use fellseam::store::{NewPiece, PieceSent, StoreError, What};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::past::Past;

/// The small lot is being inspected by an inspector of the factory.
async fn begun(cast: &Cast) -> (Person, SealId, InspectionId) {
    let seal = cast.signed_seal().await;
    let minh = cast.inspector().await;
    let style = &cast.brand.style;
    let begun = minh.begins(style, &seal, &small_lot(), None).await;
    (minh, seal, begun.unwrap())
}

/// Enters pieces without a defect.
async fn sound(who: &Person, style: &StyleId, id: &InspectionId, pieces: &[u32]) {
    for piece in pieces {
        let sent = who.enters(style, id, *piece, &[], &[]).await;
        assert_eq!(sent.unwrap(), PieceSent::Kept);
    }
}

/// What of inspections waits for somebody.
async fn waits(who: &Person) -> Vec<State> {
    let needs = who.needs().await.into_iter();
    let states = needs.filter_map(|need| match need.what {
        What::Inspection { state, .. } => Some(state),
        _ => None,
    });
    states.collect()
}

on_both! {
    async fn a_lot_is_rejected_mended_and_inspected_again(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let (minh, seal, first) = begun(&cast).await;
        let style = &brand.style;
        assert_eq!(waits(&minh).await, [State::Open]);
        assert_eq!(waits(&brand.lead).await, []);
        let inspection = brand.inspection(&first).await;
        assert_eq!((inspection.number, inspection.revision, &inspection.seal), (1, 1, &seal));
        assert_eq!(inspection.drawn(), [(3, 0), (2, 0)]);
        assert_eq!(inspection.waits_for(), Some(Side::Factory));

        sound(&minh, style, &first, &[1]).await;
        let seen = [(Class::Minor, "point-c", "Crooked"), (Class::Major, "", "Open seam")];
        minh.enters(style, &first, 2, &seen, &[("point-a", "21 1/2")]).await.unwrap();
        let inspection = sao_mai.inspection(&first).await;
        let entry = &inspection.entries[1];
        assert_eq!((entry.piece, &entry.sort, entry.person.as_deref()), (2, &sort("ink", "m"), Some("Minh")));
        assert_eq!(entry.defects[1].words.as_deref(), Some("Open seam"));
        assert_eq!(entry.values[&item("point-a")], inches("21 1/2"));
        assert_eq!(inspection.drawn(), [(3, 2), (2, 0)]);
        let found = inspection.tally().found;
        assert_eq!((found.critical, found.major, found.minor), (0, 1, 0), "by its worst");

        assert_eq!(minh.concludes(style, &first).await.unwrap(), Outcome::Rejected);
        assert_eq!(waits(&minh).await, []);
        assert_eq!(waits(&brand.lead).await, [State::Concluded(Outcome::Rejected)]);
        brand.decides_lot(&first, Decision::Rework, "Press and sort").await.unwrap();
        assert_eq!(waits(&brand.lead).await, []);
        assert_eq!(waits(&sao_mai.lead).await, [State::Decided(Decision::Rework)]);

        let fewer = lot(&[("ink", "m", 6), ("chalk", "l", 3)]);
        let second = minh.begins(style, &seal, &fewer, Some(&first)).await.unwrap();
        let more = lot(&[("ink", "m", 7)]);
        let again = minh.begins(style, &seal, &more, Some(&first)).await;
        assert_eq!(refusal(again), Refused::InspectedAgain);
        let now = brand.inspection(&first).await;
        assert_eq!((now.followed_by.as_ref(), now.waits_for()), (Some(&second), None));
        assert_eq!(waits(&sao_mai.lead).await, [State::Open]);
        let now = brand.inspection(&second).await;
        assert_eq!((now.number, now.follows.as_ref()), (2, Some(&first)));
        sound(&minh, style, &second, &[1, 2, 3, 4, 5]).await;
        assert_eq!(minh.concludes(style, &second).await.unwrap(), Outcome::Accepted);
        brand.decides_lot(&second, Decision::Released, "").await.unwrap();
        let now = sao_mai.inspection(&second).await;
        let decision = now.decision.unwrap();
        assert_eq!((decision.decision, decision.person.as_deref()), (Decision::Released, Some("Iris")));

        let acts: Vec<Act> = sao_mai.ledger().await.into_iter().map(|it| it.entry.act).collect();
        assert_eq!(acts[acts.len() - 2..], [Act::ConcludeInspection, Act::DecideInspection]);
        assert_eq!(acts.iter().filter(|it| **it == Act::Inspect).count(), 7);
        assert_eq!(acts.iter().filter(|it| **it == Act::BeginInspection).count(), 2);
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn bulk_is_inspected_against_a_seal_that_both_have_signed(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let minh = cast.inspector().await;
        let style = &brand.style;
        let round = cast.ready_to_seal().await;
        let seal = cast.seals(&round, &[("HT-17", "Shelf 3")]).await.unwrap();
        let begins = async || minh.begins(style, &seal, &small_lot(), None).await;
        let sides = vec![Side::Factory, Side::Brand];
        assert_eq!(refusal(begins().await), Refused::SealUnsigned { sides });
        cast.signs_seal(sao_mai, &seal).await;
        let sides = vec![Side::Brand];
        assert_eq!(refusal(begins().await), Refused::SealUnsigned { sides });
        cast.signs_seal(brand, &seal).await;
        let none = Lot { groups: vec![], ..small_lot() };
        assert_eq!(refusal(minh.begins(style, &seal, &none, None).await), Refused::LotUnsaid);
        assert!(is_missing(&minh.begins(style, &SealId::new("nowhere"), &small_lot(), None).await));
        let nowhere = InspectionId::new("nowhere");
        assert!(is_missing(&minh.begins(style, &seal, &small_lot(), Some(&nowhere)).await));
        let first = begins().await.unwrap();
        assert_eq!(refusal(minh.begins(style, &seal, &small_lot(), Some(&first)).await), Refused::NotForRework);

        // Who is not shared with any more: not the factory, and not against its seal.
        brand.ends_share_with(sao_mai).await.unwrap();
        let ended = brand.lead.begins(style, &seal, &small_lot(), None).await;
        assert_eq!(refusal(ended), Refused::NotShared);
        let hidden = minh.may_on::<act::Inspect>(style).await;
        assert!(matches!(hidden, Err(Denied::Hidden)));
        brand.shares_with(sao_mai).await.unwrap();
        brand.edits(|spec| spec.header.contrast_fabric = "2 × 2 rib".to_owned()).await;
        brand.publishes("Fabric in words").await.unwrap();
        assert_eq!(refusal(begins().await), Refused::NotCurrent { current: Some(2) });
        // What was begun goes on.
        sound(&minh, style, &first, &[1]).await;
        brand.withdraws(2, "Wrong").await.unwrap();
        assert_eq!(refusal(begins().await), Refused::NotCurrent { current: None });
    }
}

on_both! {
    async fn only_some_inspect_and_only_the_brand_decides(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        let (minh, seal, id) = begun(&cast).await;
        let style = &brand.style;
        for who in [&brand.viewer, &sao_mai.hands] {
            let permit = who.may_on::<act::Inspect>(style).await;
            assert!(matches!(permit, Err(Denied::NotYours { .. })), "{}", who.name);
        }
        for who in [&minh, &sao_mai.lead] {
            let permit = who.may_on::<act::Decide>(style).await;
            assert!(matches!(permit, Err(Denied::Hidden)), "{}", who.name);
        }
        for denied in [
            minh.may_on::<act::Ask>(style).await.err(),
            minh.may_on::<act::Measure>(style).await.err(),
            minh.may_on::<act::Sign>(style).await.err(),
            minh.may_on::<act::Submit>(style).await.err(),
        ] {
            assert!(matches!(denied, Some(Denied::NotYours { .. })), "{denied:?}");
        }
        // Whoever of the brand inspects does so on the same lot.
        sound(&brand.owner, style, &id, &[1]).await;
        sound(&sao_mai.lead, style, &id, &[2]).await;

        // Another factory knows of none of it.
        brand.shares_with(meghna).await.unwrap();
        let rafiq = &meghna.lead;
        assert!(meghna.inspections().await.is_empty());
        assert!(is_missing(&rafiq.enters(style, &id, 3, &[], &[]).await));
        assert!(is_missing(&rafiq.concludes(style, &id).await));
        assert!(is_missing(&rafiq.begins(style, &seal, &small_lot(), None).await));
        let theirs = cast.signed_seal_with(meghna).await;
        assert!(is_missing(&rafiq.begins(style, &theirs, &small_lot(), Some(&id)).await));
        let own = rafiq.begins(style, &theirs, &small_lot(), None).await.unwrap();
        assert_eq!(meghna.inspection(&own).await.number, 1, "counted by factory");
        // Not even the brand takes one factory's lot for another's.
        let across = brand.lead.begins(style, &theirs, &small_lot(), Some(&id)).await;
        assert!(is_missing(&across));
        let of_sao_mai = sao_mai.ledger().await.into_iter().map(|it| it.entry.act);
        assert_eq!(of_sao_mai.filter(|it| *it == Act::BeginInspection).count(), 1);
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

/// A piece to be sent, with everything that it says.
#[derive(Clone)]
struct Sent {
    piece: u32,
    sort: Sort,
    class: Class,
    item: Option<ItemId>,
    times: u32,
    words: &'static str,
    values: BTreeMap<ItemId, Entered>,
    corrects: Option<EntryId>,
    key: &'static str,
    language: &'static str,
}

async fn sends(
    who: &Person,
    style: &StyleId,
    id: &InspectionId,
    sent: &Sent,
) -> Result<PieceSent, StoreError> {
    let defects = [Defect {
        class: sent.class,
        item: sent.item.as_ref(),
        times: sent.times,
        words: sent.words,
    }];
    let new = NewPiece {
        piece: sent.piece,
        sort: &sent.sort,
        defects: &defects,
        values: &sent.values,
        corrects: sent.corrects.as_ref(),
        language: sent.language,
        key: sent.key,
    };
    who.store().inspect(&who.on(style).await, id, new).await
}

fn sent() -> Sent {
    Sent {
        piece: 1,
        sort: sort("ink", "m"),
        class: Class::Minor,
        item: Some(item("point-c")),
        times: 2,
        words: "Crooked",
        values: BTreeMap::from([(item("point-a"), inches("21 1/2"))]),
        corrects: None,
        key: "one",
        language: "en",
    }
}

on_both! {
    async fn a_key_is_one_entry_and_keeps_out_anything_else(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let (minh, seal, id) = begun(&cast).await;
        let style = &brand.style;
        assert_eq!(sends(&minh, style, &id, &sent()).await.unwrap(), PieceSent::Kept);
        let entries = brand.ledger().await.len();
        assert_eq!(sends(&minh, style, &id, &sent()).await.unwrap(), PieceSent::Before);
        let others = [
            Sent { piece: 2, ..sent() },
            Sent { sort: sort("chalk", "l"), ..sent() },
            Sent { class: Class::Major, ..sent() },
            Sent { item: None, ..sent() },
            Sent { times: 3, ..sent() },
            Sent { words: "Very crooked", ..sent() },
            Sent { values: BTreeMap::new(), ..sent() },
            Sent { language: "vi", ..sent() },
        ];
        for other in others {
            assert_eq!(sends(&minh, style, &id, &other).await.unwrap(), PieceSent::KeyUsed);
        }
        // By another person, or in another inspection.
        assert_eq!(sends(&sao_mai.lead, style, &id, &sent()).await.unwrap(), PieceSent::KeyUsed);
        let other = minh.begins(style, &seal, &small_lot(), None).await.unwrap();
        assert_eq!(sends(&minh, style, &other, &sent()).await.unwrap(), PieceSent::KeyUsed);
        assert_eq!(brand.inspection(&id).await.entries.len(), 1);
        assert_eq!(brand.ledger().await.len(), entries + 1, "the other inspection alone");
        // Sent again after the end, it is still the one that came.
        let majors = [(Class::Major, "point-c", "")];
        minh.enters(style, &id, 2, &majors, &[]).await.unwrap();
        minh.concludes(style, &id).await.unwrap();
        assert_eq!(sends(&minh, style, &id, &sent()).await.unwrap(), PieceSent::Before);
    }
}

on_both! {
    async fn a_correction_is_a_newer_entry_over_the_one_that_was_seen(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let (minh, _, id) = begun(&cast).await;
        let style = &brand.style;
        let hurts = [(Class::Critical, "", "Needle tip")];
        minh.enters(style, &id, 1, &hurts, &[]).await.unwrap();
        let blind = Sent { key: "two", ..sent() };
        assert_eq!(refusal(sends(&sao_mai.lead, style, &id, &blind).await), Refused::PieceMoved);
        assert_eq!(brand.inspection(&id).await.tally().found.critical, 1);
        minh.enters(style, &id, 1, &[], &[]).await.unwrap();
        let now = brand.inspection(&id).await;
        assert_eq!(now.entries.len(), 2, "the older one stays");
        assert_eq!(now.entries[0].defects[0].words.as_deref(), Some("Needle tip"));
        assert_eq!((now.tally().found.critical, now.tally().missing), (0, 4));
        let stale = Sent { key: "three", corrects: Some(now.entries[0].id.clone()), ..sent() };
        assert_eq!(refusal(sends(&minh, style, &id, &stale).await), Refused::PieceMoved);

        // 28 1/2 with 1/4 at C, and 21 1/2 with 3/8 at A, which is critical.
        for (piece, point, typed, class) in [
            (1, "point-c", "28 1/4", None),
            (2, "point-c", "28", Some(Class::Minor)),
            (3, "point-a", "22", Some(Class::Major)),
        ] {
            minh.enters(style, &id, piece, &[], &[(point, typed)]).await.unwrap();
            let now = brand.inspection(&id).await;
            assert_eq!(now.judged()[&piece].worst, class, "{point} {typed}");
        }
    }
}

on_both! {
    async fn the_rules_refuse_what_is_no_piece_of_the_lot_and_what_comes_late(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, .. } = &cast;
        let (minh, _, id) = begun(&cast).await;
        let style = &brand.style;
        assert!(is_missing(&minh.concludes(style, &InspectionId::new("nowhere")).await));
        let early = minh.concludes(style, &id).await;
        assert_eq!(refusal(early), Refused::PiecesUninspected { missing: 5 });
        let beyond = minh.enters(style, &id, 6, &[], &[]).await;
        assert_eq!(refusal(beyond), Refused::PieceBeyond { sample: 5 });
        let elsewhere = Sent { sort: sort("ink", "xl"), ..sent() };
        assert_eq!(refusal(sends(&minh, style, &id, &elsewhere).await), Refused::PieceUnsaid { most: 10 });
        let wordless = [(Class::Minor, "", " ")];
        assert_eq!(refusal(minh.enters(style, &id, 1, &wordless, &[]).await), Refused::DefectUnsaid);
        assert!(brand.inspection(&id).await.entries.is_empty(), "nothing of it was kept");
        let too_early = brand.decides_lot(&id, Decision::Refused, "Late").await;
        assert_eq!(refusal(too_early), Refused::InspectionNotIn { state: State::Open });

        // One critical defect, met beyond the sample, ends it.
        let hurts = [(Class::Critical, "", "Needle tip")];
        minh.enters(style, &id, 6, &hurts, &[]).await.unwrap();
        assert_eq!(minh.concludes(style, &id).await.unwrap(), Outcome::Rejected);
        let state = State::Concluded(Outcome::Rejected);
        let late = minh.enters(style, &id, 1, &[], &[]).await;
        assert_eq!(refusal(late), Refused::InspectionNotIn { state });
        assert_eq!(refusal(minh.concludes(style, &id).await), Refused::InspectionNotIn { state });
        let released = brand.decides_lot(&id, Decision::Released, "").await;
        assert_eq!(refusal(released), Refused::LotRejected);
        let conceded = brand.decides_lot(&id, Decision::Concession, "One needle").await;
        assert_eq!(refusal(conceded), Refused::CriticalInBulk { pieces: 1 });
        assert_eq!(refusal(brand.decides_lot(&id, Decision::Refused, " ").await), Refused::ReasonMissing);
        brand.decides_lot(&id, Decision::Refused, "Needles").await.unwrap();
        let state = State::Decided(Decision::Refused);
        let twice = brand.decides_lot(&id, Decision::Rework, "Or not").await;
        assert_eq!(refusal(twice), Refused::InspectionNotIn { state });
    }
}

on_both! {
    async fn who_is_erased_leaves_an_inspection_that_holds(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        let (minh, _, id) = begun(&cast).await;
        let seen = [(Class::Major, "", "Open seam")];
        minh.enters(&brand.style, &id, 1, &seen, &[]).await.unwrap();
        minh.concludes(&brand.style, &id).await.unwrap();
        store.erase(&minh.actor.person).await.unwrap();
        let now = brand.inspection(&id).await;
        assert_eq!((now.person.as_ref(), now.entries[0].person.as_ref()), (None, None));
        assert_eq!(now.entries[0].defects[0].words, None);
        assert_eq!(now.tally().found.major, 1, "what it came to holds");
        let audit = store.audit().await.unwrap();
        assert_eq!((audit.faults.len(), audit.erased), (0, 1), "{:#?}", audit.faults);
    }
}

on_both! {
    async fn whatever_of_an_inspection_was_changed_past_the_program_is_named(db, address) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        let (minh, _, id) = begun(&cast).await;
        let seen = [(Class::Major, "point-c", "Open seam")];
        minh.enters(&brand.style, &id, 1, &seen, &[("point-a", "21 1/2")]).await.unwrap();
        minh.concludes(&brand.style, &id).await.unwrap();
        brand.decides_lot(&id, Decision::Concession, "One seam").await.unwrap();
        assert_eq!(store.audit().await.unwrap().faults, []);
        let mut past = Past::the_guards(&address).await;
        for (change, back, noun) in [
            ("inspection SET aql_major = '6.5'", "aql_major = '2.5'", "inspection "),
            ("inspection SET lot = '[]'", "", "inspection "),
            ("inspection_entry SET measured = '{}'", "", "entry "),
            ("inspection_defect SET class = 'minor'", "class = 'major'", "defect 1 of entry "),
            ("inspection_conclusion SET outcome = 'accepted'", "outcome = 'rejected'", "conclusion of inspection "),
            ("inspection_decision SET decision = 'released'", "decision = 'concession'", "decision of inspection "),
            ("private_text SET content = 'Small gap' WHERE content = 'Open seam'", "", "words of defect 1 of entry "),
            ("private_text SET content = 'None' WHERE content = 'One seam'", "", "decision of inspection "),
        ] {
            let before = store.audit().await.unwrap().faults.len();
            assert!(past.run(&format!("UPDATE {change}")).await > 0, "{change}");
            let faults = store.audit().await.unwrap().faults;
            assert_eq!(faults.len(), before + 1, "{change}: {faults:#?}");
            assert!(faults.iter().any(|it| it.what.starts_with(noun)), "{change}: {faults:#?}");
            if !back.is_empty() {
                let table = change.split(' ').next().unwrap();
                past.run(&format!("UPDATE {table} SET {back}")).await;
            }
        }
        past.run("DELETE FROM inspection_defect").await;
        let faults = store.audit().await.unwrap().faults;
        let gone = |it: &fellseam::store::Fault| it.what.starts_with("defect 1") && it.why.contains("gone");
        assert!(faults.iter().any(gone), "{faults:#?}");
    }
}
