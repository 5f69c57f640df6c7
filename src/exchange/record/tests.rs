use proptest::prelude::*;
use serde_json::{Map, json};

use super::super::cast::{designer, merchandiser, sao_mai, time};
use super::super::ledger::{self, Draft, Salt, salted};
use super::super::{Actor, Side};
use super::*;
use crate::spec::canon::from_json;

const OURS: [u8; 32] = [7; 32];

fn key() -> Key {
    Key::new(OURS)
}

fn document() -> Digest {
    Digest::of(b"the document of revision 2")
}

/// A chain in which entries of others stand between those that matter.
struct Book {
    head: Head,
    all: Vec<Kept>,
}

impl Book {
    fn writes(&mut self, act: Act, by: &Actor, ids: &[(&str, &str)], hashes: &[(&str, Digest)]) {
        let draft = Draft {
            at: time(self.all.len() as u32),
            act,
            person: Some(by.person.clone()),
            org: Some(by.org.clone()),
            visible_to: (act != Act::Publish).then(sao_mai),
            internal: act == Act::Create,
            ids: ids
                .iter()
                .map(|(a, b)| (a.to_string(), b.to_string()))
                .collect(),
            hashes: hashes
                .iter()
                .map(|(a, b)| (a.to_string(), b.clone()))
                .collect(),
        };
        let appended = ledger::append(&self.head, draft).unwrap();
        let hash = appended.head.hash.clone();
        self.all.push(Kept {
            entry: appended.entry,
            hash,
        });
        self.head = appended.head;
    }

    fn signs(&mut self, by: &Actor, name: &str) {
        let statement = match by.side() {
            Side::Factory => Statement::RevisionByFactory,
            Side::Brand => Statement::RevisionByBrand,
        };
        let ids = [
            ("subject", "revision-2"),
            ("revision", "2"),
            ("side", by.side().name()),
            ("role", by.role.name()),
            ("statement", statement.name()),
            ("language", "vi"),
            ("local_time", "2026-03-02T15:00:00+07:00"),
        ];
        let name = salted(&salt(), name);
        self.writes(
            Act::Sign,
            by,
            &ids,
            &[("document", document()), ("name", name)],
        );
    }
}

fn salt() -> Salt {
    Salt::new([9; 32])
}

fn record() -> Record {
    let style = StyleId::new("half-zip");
    let mut book = Book {
        head: Head::start(&style),
        all: Vec::new(),
    };
    book.writes(Act::Create, &designer(), &[], &[]);
    let ids = [("revision", "2"), ("id", "revision-2")];
    book.writes(Act::Publish, &designer(), &ids, &[("document", document())]);
    book.writes(Act::Message, &designer(), &[("thread", "t")], &[]);
    book.writes(Act::Acknowledge, &merchandiser(), &[("revision", "2")], &[]);
    book.signs(&merchandiser(), "Linh");
    book.signs(&designer(), "Iris");
    book.writes(Act::Message, &designer(), &[("thread", "t")], &[]);
    let subject = Subject {
        kind: SubjectKind::Revision,
        id: "revision-2".to_owned(),
        number: 2,
        revision: 2,
        digest: Some(document()),
        content: None,
    };
    let given = |entry, side, role, name: &str, statement| Given {
        entry,
        side,
        role,
        name: Some(name.to_owned()),
        salt: Some(salt().as_str().to_owned()),
        at: time(entry as u32 - 1),
        local_time: "2026-03-02T15:00:00+07:00".to_owned(),
        language: "vi".to_owned(),
        digest: document(),
        statement,
        words: "Tôi đã đọc".to_owned(),
    };
    let linh = given(
        5,
        Side::Factory,
        Role::Merchandiser,
        "Linh",
        Statement::RevisionByFactory,
    );
    let iris = given(
        6,
        Side::Brand,
        Role::Designer,
        "Iris",
        Statement::RevisionByBrand,
    );
    let mut entries = book.all;
    entries.retain(|kept| matters(&kept.entry, &subject, &sao_mai()));
    Record {
        format: FORMAT,
        made: time(30),
        key: key().public(),
        brand: "Harrow & Tide".to_owned(),
        factory: Factory {
            id: sao_mai(),
            name: "Sao Mai Garment".to_owned(),
        },
        style: Style {
            id: style,
            number: "SS27-014".to_owned(),
            name: "Half-zip".to_owned(),
        },
        subject,
        signatures: vec![linh, iris],
        chain: Chain {
            head: book.head,
            entries,
        },
    }
}

fn file() -> Vec<u8> {
    seal(&record(), &key()).unwrap()
}

/// Every place that does not hold, or the place at which the file cannot be read.
fn named(bytes: &[u8]) -> Vec<String> {
    match check(bytes, &key().public()) {
        Ok(checked) => checked
            .doubts
            .into_iter()
            .map(|doubt| doubt.place)
            .collect(),
        Err(error) => vec![error.path().trim_start_matches("$.").to_owned()],
    }
}

/// Every value of a tree by its place.
fn leaves(place: String, value: &Value, found: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                let dot = if place.is_empty() { "" } else { "." };
                leaves(format!("{place}{dot}{name}"), value, found);
            }
        }
        Value::Array(items) => {
            for (index, value) in items.iter().enumerate() {
                leaves(format!("{place}[{index}]"), value, found);
            }
        }
        _ => found.push(place),
    }
}

/// The value at a place of the record.
fn at<'a>(value: &'a mut Value, place: &str) -> &'a mut Value {
    let pointer: String = place.replace('[', ".").replace(']', "").replace('.', "/");
    value.pointer_mut(&format!("/{pointer}")).unwrap()
}

fn tree() -> Value {
    serde_json::from_slice(&file()).unwrap()
}

fn written(tree: &Value) -> Vec<u8> {
    to_canonical(tree).unwrap()
}

#[test]
fn a_record_holds_and_only_what_matters_is_in_it() {
    let checked = check(&file(), &key().public()).unwrap();
    assert_eq!(checked.doubts, []);
    assert_eq!(checked.record, record());
    let seqs: Vec<u64> = record()
        .chain
        .entries
        .iter()
        .map(|kept| kept.entry.seq)
        .collect();
    assert_eq!(seqs, [2, 4, 5, 6], "no draft, no message");
    assert!(file().len() < 20_000, "{}", file().len());
}

#[test]
fn the_key_and_the_signature_are_those_of_rfc_8032() {
    // RFC 8032, 7.1, TEST 2.
    let seed = "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb";
    let key = Key::from_hex(seed).unwrap();
    let public = "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c";
    assert_eq!(key.public().to_string(), public);
    assert_eq!(key.to_hex(), seed);
    assert_eq!(
        hex(&key.0.sign(&[0x72]).to_bytes()),
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da\
         085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"
    );
    assert!(!format!("{key:?}").contains(seed));
}

#[test]
fn each_value_that_was_changed_is_named() {
    let mut places = Vec::new();
    leaves(String::new(), &tree()["record"], &mut places);
    assert!(places.len() > 60, "{}", places.len());
    for place in places {
        let mut tree = tree();
        let value = at(&mut tree["record"], &place);
        *value = match &*value {
            Value::Number(number) => json!(number.as_i64().unwrap() + 1),
            Value::String(text) => {
                let last = text.chars().last().unwrap_or('x');
                let other = if last == '0' { '1' } else { '0' };
                json!(format!("{}{other}", &text[..text.len() - last.len_utf8()]))
            }
            other => panic!("{place}: {other}"),
        };
        let named = named(&written(&tree));
        let place = format!("record.{place}");
        assert!(named.contains(&place), "{place}: {named:?}");
    }
}

#[test]
fn what_was_taken_out_or_put_in_is_named() {
    let mut cut = tree();
    let fields = cut["record"]["signatures"][0].as_object_mut().unwrap();
    fields.remove("name");
    let said = named(&written(&cut));
    assert!(
        said.contains(&"record.signatures[0].name".to_owned()),
        "{said:?}"
    );

    let mut cut = tree();
    cut["record"]["signatures"].as_array_mut().unwrap().pop();
    let said = named(&written(&cut));
    assert!(
        said.contains(&"record.signatures[1].at".to_owned()),
        "{said:?}"
    );
    assert!(
        said.contains(&"record.signatures".to_owned()),
        "the chain tells of two: {said:?}"
    );

    let mut more = tree();
    let content = Map::from_iter([("content".to_owned(), json!("all we agreed on"))]);
    more["record"]["subject"]
        .as_object_mut()
        .unwrap()
        .extend(content);
    let said = named(&written(&more));
    assert!(
        said.contains(&"record.subject.content".to_owned()),
        "{said:?}"
    );
}

/// Somebody with a key of their own writes all digests and the signature anew: the reader's own
/// copy of the key tells it, and so does the chain.
#[test]
fn another_key_and_a_rewritten_entry_are_found() {
    let forger = Key::new([8; 32]);
    let mut forged = record();
    forged.chain.entries[0].entry.at = time(59);
    let bytes = seal(&forged, &forger).unwrap();
    assert_eq!(named(&bytes), ["signature", "record.chain.entries[0]"]);
    let mut owned = record();
    owned.key = forger.public();
    owned.signatures[0].name = Some("Tâm".to_owned());
    let bytes = seal(&owned, &forger).unwrap();
    assert_eq!(
        named(&bytes),
        ["record.key", "signature", "record.signatures[0].name"]
    );
}

/// Not even the installation itself can write a record that its chain does not carry.
#[test]
fn a_record_that_contradicts_itself_does_not_hold() {
    let wrong = |change: fn(&mut Record)| {
        let mut record = record();
        change(&mut record);
        named(&seal(&record, &key()).unwrap())
    };
    assert_eq!(
        wrong(|it| it.signatures[0].at = time(50)),
        ["record.signatures[0]"]
    );
    assert_eq!(
        wrong(|it| it.signatures[1].name = Some("Ivy".into())),
        ["record.signatures[1].name"]
    );
    assert_eq!(
        wrong(|it| it.signatures[1].salt = None),
        ["record.signatures[1].name"]
    );
    assert_eq!(wrong(|it| it.subject.number = 3), ["record.subject"]);
    assert_eq!(
        wrong(|it| it.chain.entries.swap(2, 3)),
        ["record.chain.entries[3]",]
    );
    assert_eq!(
        wrong(|it| it.chain.head.seq = 5),
        ["record.chain.entries[2]", "record.chain.entries[3]"]
    );
    let erased = wrong(|it| {
        it.signatures[0].name = None;
        it.signatures[0].salt = None;
    });
    assert!(erased.is_empty(), "an erased name is no fault: {erased:?}");
}

#[test]
fn a_later_format_is_not_judged_by_this_one() {
    let mut later = record();
    later.format = FORMAT + 1;
    assert_eq!(named(&seal(&later, &key()).unwrap()), ["record.format"]);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    /// Whatever byte becomes whatever other: it is found, and where the file can still be read, the
    /// value that it stands in is named.
    #[test]
    fn no_byte_is_changed_unnoticed(at in 0..file().len(), to in any::<u8>()) {
        let mut bytes = file();
        prop_assume!(bytes[at] != to);
        bytes[at] = to;
        let named = named(&bytes);
        prop_assert!(!named.is_empty());
        let Ok(changed) = from_json::<Value>(&bytes) else { return Ok(()) };
        let (mut before, mut after) = (Vec::new(), Vec::new());
        leaves(String::new(), &tree(), &mut before);
        leaves(String::new(), &changed, &mut after);
        if before != after {
            return Ok(());
        }
        let mut whole = tree();
        let mut changed = changed;
        // A changed digest is told at the value that it is of.
        let moved = before.iter().filter(|it| !it.starts_with("digests."));
        for place in moved {
            if *self::at(&mut whole, place) != *self::at(&mut changed, place) {
                let within = |named: &&String| place.starts_with(named.as_str());
                prop_assert!(named.iter().any(|it| within(&it)), "{place}: {named:?}");
            }
        }
    }
}
