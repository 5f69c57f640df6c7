use proptest::prelude::*;

use super::*;
use crate::exchange::cast::*;

fn style() -> StyleId {
    StyleId::new("joggers")
}

fn draft(act: Act, minute: u32, thread: &str) -> Draft {
    Draft {
        at: time(minute),
        act,
        person: Some(designer().person),
        org: Some(designer().org),
        visible_to: Some(sao_mai()),
        internal: false,
        ids: BTreeMap::from([("thread".to_owned(), thread.to_owned())]),
        hashes: BTreeMap::from([("text".to_owned(), Digest::of(thread.as_bytes()))]),
    }
}

/// What the store keeps: the text and the hash of every entry, and the head.
#[derive(Debug, Clone)]
struct Chain {
    rows: Vec<(String, Digest)>,
    head: Head,
}

impl Chain {
    fn of(drafts: Vec<Draft>) -> Chain {
        let mut head = Head::start(&style());
        let mut rows = Vec::new();
        for draft in drafts {
            let appended = append(&head, draft).expect("canonical");
            head = appended.head;
            rows.push((appended.body, head.hash.clone()));
        }
        Chain { rows, head }
    }

    fn audit(&self) -> Result<(), FirstFault> {
        let rows = self.rows.iter().map(|(body, hash)| (body.as_str(), hash));
        verify(&style(), rows, &self.head)
    }

    fn fault(&self) -> (u64, Fault) {
        let first = self.audit().expect_err("the chain was meddled with");
        (first.seq, first.fault)
    }
}

/// Create, publish, ask, answer, sign.
fn five() -> Chain {
    let acts = [Act::Create, Act::Publish, Act::Ask, Act::Message, Act::Sign];
    Chain::of(
        acts.into_iter()
            .zip(0..)
            .map(|(act, minute)| draft(act, minute, &format!("thread {minute}")))
            .collect(),
    )
}

#[test]
fn an_entry_is_bound_to_the_one_before() {
    let start = Head::start(&style());
    let first = append(&start, draft(Act::Create, 0, "")).unwrap();
    assert_eq!(first.entry.seq, 1);
    assert_eq!(first.entry.before, start.hash);
    assert_eq!(first.head.seq, 1);
    assert_eq!(first.head.hash, Digest::of(first.body.as_bytes()));
    let second = append(&first.head, draft(Act::Publish, 1, "")).unwrap();
    assert_eq!(second.entry.seq, 2);
    assert_eq!(second.entry.before, first.head.hash);
}

#[test]
fn the_text_that_is_kept_has_one_form() {
    // Worked by hand: keys in order, what is absent left out.
    let entry = append(
        &Head {
            seq: 6,
            hash: Digest::of(b"abc"),
        },
        Draft {
            at: time(5),
            act: Act::ThreadMove,
            person: None,
            org: None,
            visible_to: None,
            internal: true,
            ids: BTreeMap::from([("thread".to_owned(), "t-1".to_owned())]),
            hashes: BTreeMap::new(),
        },
    )
    .unwrap();
    assert_eq!(
        entry.body,
        concat!(
            r#"{"act":"thread_move","at":"2026-03-02T08:05:00.000Z","#,
            r#""before":"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad","#,
            r#""ids":{"thread":"t-1"},"internal":true,"seq":7}"#
        )
    );
}

#[test]
fn a_whole_chain_holds_and_gives_its_entries_back() {
    let chain = five();
    assert_eq!(chain.audit(), Ok(()));
    let mut verifier = Verifier::new(&style());
    for (place, (body, hash)) in chain.rows.iter().enumerate() {
        let entry = verifier.next(body, hash).unwrap();
        assert_eq!(entry.seq, place as u64 + 1);
    }
    assert_eq!(verifier.finish(), Ok(chain.head));
}

#[test]
fn a_style_that_nothing_happened_to_has_an_empty_chain() {
    assert_eq!(Chain::of(Vec::new()).audit(), Ok(()));
}

#[test]
fn the_first_entry_that_does_not_hold_is_named() {
    let mut changed = five();
    changed.rows[2].0 = changed.rows[2].0.replace("thread 2", "thread 9");
    assert_eq!(changed.fault(), (3, Fault::Changed));

    // With its own hash put right, the next one no longer follows it.
    changed.rows[2].1 = Digest::of(changed.rows[2].0.as_bytes());
    assert_eq!(changed.fault(), (4, Fault::WrongLink));

    let mut missing = five();
    missing.rows.remove(1);
    assert_eq!(missing.fault(), (2, Fault::Gap { found: 3 }));

    let mut cut = five();
    cut.rows.pop();
    assert_eq!(cut.fault(), (5, Fault::Cut));

    let mut longer = five();
    let more = append(&longer.head, draft(Act::Sign, 9, "")).unwrap();
    longer.rows.push((more.body, more.head.hash));
    assert_eq!(longer.fault(), (6, Fault::NotAsKnown));

    let mut nonsense = five();
    nonsense.rows[0].0 = "{}".to_owned();
    nonsense.rows[0].1 = Digest::of(b"{}");
    assert_eq!(nonsense.fault(), (1, Fault::Unreadable));
}

#[test]
fn the_chain_of_one_style_cannot_stand_for_that_of_another() {
    let chain = five();
    let rows = chain.rows.iter().map(|(body, hash)| (body.as_str(), hash));
    assert_eq!(
        verify(&StyleId::new("anorak"), rows, &chain.head),
        Err(FirstFault {
            seq: 1,
            fault: Fault::WrongLink
        })
    );
}

#[test]
fn a_head_kept_elsewhere_finds_a_chain_that_was_written_anew() {
    let true_chain = five();
    // What a signature kept when the chain had three entries.
    let kept = Head {
        seq: 3,
        hash: true_chain.rows[2].1.clone(),
    };
    let against = |chain: &Chain| {
        let mut verifier = Verifier::new(&style());
        verifier.expect(&kept)?;
        for (body, hash) in &chain.rows {
            verifier.next(body, hash)?;
        }
        verifier.finish()
    };
    assert_eq!(against(&true_chain), Ok(true_chain.head.clone()));

    // Everything about this chain is in order by itself, but it tells another story.
    let mut drafts: Vec<Draft> = (0..5).map(|i| draft(Act::Message, i, "x")).collect();
    let rewritten = Chain::of(drafts.clone());
    assert_eq!(rewritten.audit(), Ok(()));
    assert_eq!(
        against(&rewritten).map_err(|first| (first.seq, first.fault)),
        Err((3, Fault::NotAsKnown))
    );
    drafts.truncate(2);
    let short = Chain::of(drafts);
    assert_eq!(
        against(&short).map_err(|first| (first.seq, first.fault)),
        Err((3, Fault::Cut))
    );
}

#[test]
fn two_kept_heads_that_contradict_each_other_cannot_both_be_passed() {
    let kept = |seq, text: &[u8]| Head {
        seq,
        hash: Digest::of(text),
    };
    let mut verifier = Verifier::new(&style());
    assert_eq!(verifier.expect(&kept(3, b"this")), Ok(()));
    assert_eq!(verifier.expect(&kept(3, b"this")), Ok(()));
    let fault = |seq| {
        Err(FirstFault {
            seq,
            fault: Fault::NotAsKnown,
        })
    };
    assert_eq!(verifier.expect(&kept(3, b"that")), fault(3));
    // Nor one of an empty chain that is not this style's.
    assert_eq!(verifier.expect(&Head::start(&style())), Ok(()));
    assert_eq!(
        verifier.expect(&Head::start(&StyleId::new("anorak"))),
        fault(0)
    );
}

#[test]
fn a_salted_hash_is_that_of_the_salts_digits_and_the_text() {
    // Reproduce: printf %s%s 00...00 'sleeve too long' | sha256sum
    let salt = Salt::new([0; 32]);
    assert_eq!(salt.as_str(), "0".repeat(64));
    assert_eq!(Salt::from_hex(salt.as_str()), Some(salt.clone()));
    assert_eq!(Salt::from_hex("00"), None);
    assert_eq!(
        salted(&salt, "sleeve too long").as_str(),
        "9195d9e3c45f5c29c1e877fb14b79b702bf855478b3b57de18976a41b7416798"
    );
    assert_ne!(
        salted(&Salt::new([1; 32]), "sleeve too long"),
        salted(&salt, "sleeve too long")
    );
}

fn drafts() -> impl Strategy<Value = Vec<Draft>> {
    let act = proptest::sample::select(Act::ALL.to_vec());
    let one = (act, 0u32..60, "[a-zé\"\\\\ ]{0,12}", any::<bool>());
    let one = one.prop_map(|(act, minute, thread, internal)| Draft {
        internal,
        ..draft(act, minute, &thread)
    });
    proptest::collection::vec(one, 2..9)
}

proptest! {
    /// Any byte of any entry's text that becomes another: found, at that entry.
    #[test]
    fn a_changed_byte_is_found(drafts in drafts(), at in any::<proptest::sample::Index>(),
                               byte in any::<proptest::sample::Index>(), flip in 1u8..128) {
        let mut chain = Chain::of(drafts);
        let place = at.index(chain.rows.len());
        let mut bytes = chain.rows[place].0.clone().into_bytes();
        let byte = byte.index(bytes.len());
        bytes[byte] ^= flip;
        // What is no text at all cannot be read from the database as one.
        if let Ok(text) = String::from_utf8(bytes) {
            chain.rows[place].0 = text;
            prop_assert_eq!(chain.fault(), (place as u64 + 1, Fault::Changed));
        }
    }

    /// Any entry that is taken out: found, where it is missing.
    #[test]
    fn a_removed_entry_is_found(drafts in drafts(), at in any::<proptest::sample::Index>()) {
        let mut chain = Chain::of(drafts);
        let place = at.index(chain.rows.len());
        chain.rows.remove(place);
        prop_assert_eq!(chain.audit().expect_err("one is gone").seq, place as u64 + 1);
    }

    /// Any two entries that change places: found, at the first of them.
    #[test]
    fn swapped_entries_are_found(drafts in drafts(), one in any::<proptest::sample::Index>(),
                                 other in any::<proptest::sample::Index>()) {
        let mut chain = Chain::of(drafts);
        let (one, other) = (one.index(chain.rows.len()), other.index(chain.rows.len()));
        prop_assume!(one != other);
        chain.rows.swap(one, other);
        prop_assert_eq!(
            chain.audit().expect_err("two are swapped").seq,
            one.min(other) as u64 + 1
        );
    }

    /// A text changed and its own hash put right: found at the entry after it or, when it was the
    /// last, by the head that is kept beside the chain.
    #[test]
    fn a_rehashed_entry_is_found(drafts in drafts(), at in any::<proptest::sample::Index>()) {
        let mut chain = Chain::of(drafts);
        let place = at.index(chain.rows.len());
        let (body, hash) = &mut chain.rows[place];
        *body = body.replace("2026-03-02", "2026-03-01");
        *hash = Digest::of(body.as_bytes());
        let last = place + 1 == chain.rows.len();
        let seq = if last { place as u64 + 1 } else { place as u64 + 2 };
        let fault = if last { Fault::NotAsKnown } else { Fault::WrongLink };
        prop_assert_eq!(chain.fault(), (seq, fault));
    }
}
