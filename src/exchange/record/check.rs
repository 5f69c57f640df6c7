//! Does a record still hold, and if not, what of it?

use std::fmt;

use super::super::ledger::{Act, Entry, Head, Salt, salted};
use super::super::signature::SubjectKind;
use super::{Given, PublicKey, Record, Sealed, digests};
use crate::spec::Digest;
use crate::spec::canon::{CanonError, from_canonical, to_canonical};

/// A record that could be read, and what of it does not hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Checked {
    pub record: Record,
    /// Empty: it holds.
    pub doubts: Vec<Doubt>,
}

/// Something in a record that does not hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Doubt {
    /// Its place in the file: `record.signatures[0].name`.
    pub place: String,
    pub why: Why,
}

impl fmt::Display for Doubt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.place, self.why)
    }
}

/// Why something does not hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Why {
    #[error("it is not what its digest is of")]
    Altered,
    #[error("it has no digest: it was put in later")]
    Added,
    #[error("its digest is there, and it is not: it was taken out")]
    TakenOut,
    #[error("it is not this key's signature under these digests")]
    Signature,
    #[error("it is another installation's record: this is not the key that you hold")]
    OtherKey,
    #[error("its format is a later program's")]
    Format,
    #[error("the entry is not the one that was hashed")]
    EntryChanged,
    #[error("the entry does not follow the one before it")]
    WrongLink,
    #[error("the entry does not stand in its order, or after the end of the chain")]
    OutOfOrder,
    #[error("the entry is not the one at the end of the chain")]
    WrongHead,
    #[error("the ledger's entry does not tell of this signature so")]
    NotInEntry,
    #[error("the name is not the one whose hash the ledger keeps")]
    NameChanged,
    #[error("the digest is not that of the content")]
    ContentChanged,
    #[error("the ledger's entries do not tell of it so")]
    NotTold,
}

/// Reads a record and checks all of it: each value against its digest, the signature against the
/// key that the reader holds, the entries against each other, and the signatures against them.
///
/// Errors: it is no record at all, or not written in the one canonical way; the place is named.
pub fn check(bytes: &[u8], key: &PublicKey) -> Result<Checked, CanonError> {
    let sealed: Sealed = from_canonical(bytes)?;
    let mut doubts = Vec::new();
    let mut doubt = |place: String, why: Why| doubts.push(Doubt { place, why });
    let record = &sealed.record;
    if record.format != super::FORMAT {
        doubt("record.format".to_owned(), Why::Format);
    }
    let now = digests(record)?;
    for (place, digest) in &now {
        match sealed.digests.get(place) {
            None => doubt(format!("record.{place}"), Why::Added),
            Some(signed) if signed != digest => doubt(format!("record.{place}"), Why::Altered),
            Some(_) => {}
        }
    }
    for place in sealed.digests.keys() {
        if !now.contains_key(place) {
            doubt(format!("record.{place}"), Why::TakenOut);
        }
    }
    if record.key != *key {
        doubt("record.key".to_owned(), Why::OtherKey);
    }
    if !key.has_signed(&sealed.digests, &sealed.signature) {
        doubt("signature".to_owned(), Why::Signature);
    }
    chain(record, &mut doubt)?;
    for (index, given) in record.signatures.iter().enumerate() {
        let place = format!("record.signatures[{index}]");
        signature(record, given, &place, &mut doubt);
    }
    subject(record, &mut doubt);
    Ok(Checked {
        record: sealed.record,
        doubts,
    })
}

/// The entries follow each other as far as they touch, up to the head.
fn chain(record: &Record, doubt: &mut impl FnMut(String, Why)) -> Result<(), CanonError> {
    let head = &record.chain.head;
    let mut last: Option<Head> = None;
    for (index, kept) in record.chain.entries.iter().enumerate() {
        let place = || format!("record.chain.entries[{index}]");
        let entry = &kept.entry;
        if Digest::of(&to_canonical(entry)?) != kept.hash {
            doubt(place(), Why::EntryChanged);
        }
        let after = last.as_ref().map_or(0, |last| last.seq);
        if entry.seq <= after || entry.seq > head.seq {
            doubt(place(), Why::OutOfOrder);
        }
        let start = (entry.seq == 1).then(|| Head::start(&record.style.id));
        let touching = last.filter(|last| entry.seq.checked_sub(1) == Some(last.seq));
        if touching
            .or(start)
            .is_some_and(|before| before.hash != entry.before)
        {
            doubt(place(), Why::WrongLink);
        }
        if entry.seq == head.seq && kept.hash != head.hash {
            doubt(place(), Why::WrongHead);
        }
        last = Some(Head {
            seq: entry.seq,
            hash: kept.hash.clone(),
        });
    }
    Ok(())
}

fn id<'a>(entry: &'a Entry, name: &str) -> &'a str {
    entry.ids.get(name).map_or("", String::as_str)
}

/// A signature is what its entry says.
fn signature(record: &Record, given: &Given, place: &str, doubt: &mut impl FnMut(String, Why)) {
    let entries = record.chain.entries.iter().map(|kept| &kept.entry);
    let told = entries
        .filter(|entry| entry.act == Act::Sign && entry.seq == given.entry)
        .find(|entry| {
            id(entry, "subject") == record.subject.id
                && id(entry, "side") == given.side.name()
                && id(entry, "role") == given.role.name()
                && id(entry, "statement") == given.statement.name()
                && id(entry, "language") == given.language
                && id(entry, "local_time") == given.local_time
                && entry.at == given.at
                && entry.hashes.get("document") == Some(&given.digest)
        });
    let Some(entry) = told else {
        return doubt(place.to_owned(), Why::NotInEntry);
    };
    let hash = match (&given.name, &given.salt) {
        // Erased.
        (None, None) => return,
        (Some(name), Some(salt)) => Salt::from_hex(salt).map(|salt| salted(&salt, name)),
        _ => None,
    };
    if hash.is_none() || hash.as_ref() != entry.hashes.get("name") {
        doubt(format!("{place}.name"), Why::NameChanged);
    }
}

/// What is signed is what its entry says, and every signature that the entries tell of is there.
fn subject(record: &Record, doubt: &mut impl FnMut(String, Why)) {
    let subject = &record.subject;
    let entries = || record.chain.entries.iter().map(|kept| &kept.entry);
    if let (Some(content), digest) = (&subject.content, &subject.digest)
        && Some(Digest::of(content.as_bytes())) != *digest
    {
        doubt("record.subject.content".to_owned(), Why::ContentChanged);
    }
    let (number, revision) = (subject.number.to_string(), subject.revision.to_string());
    let told = entries().any(|entry| match (subject.kind, entry.act) {
        (SubjectKind::Revision, Act::Publish) => {
            id(entry, "id") == subject.id
                && id(entry, "revision") == number
                && number == revision
                && entry.hashes.get("document") == subject.digest.as_ref()
        }
        (SubjectKind::Round, Act::RequestRound) => {
            id(entry, "round") == subject.id
                && id(entry, "number") == number
                && id(entry, "revision") == revision
        }
        (SubjectKind::Seal, Act::Seal) => {
            id(entry, "seal") == subject.id
                && id(entry, "number") == number
                && id(entry, "revision") == revision
        }
        _ => false,
    });
    if !told {
        doubt("record.subject".to_owned(), Why::NotTold);
    }
    let given = |entry: &Entry| record.signatures.iter().any(|it| it.entry == entry.seq);
    if entries().any(|entry| entry.act == Act::Sign && !given(entry)) {
        doubt("record.signatures".to_owned(), Why::NotTold);
    }
}
