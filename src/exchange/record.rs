//! The signed record of a revision, a round or a seal: one small file that says who put their name to what
//! and when, with the entries of the chain that tell of it, and can be [checked](check) on any
//! machine with the installation's public key.
//!
//! Every single value of the record has its SHA-256 in the list of digests, and the signature is
//! put to that list. So a byte that was changed is not only noticed: it is named.

mod check;

use std::collections::BTreeMap;
use std::fmt;

use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};
use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::ledger::{Act, Entry, Head};
use super::signature::{Statement, SubjectKind};
use super::{Role, Side};
use crate::spec::canon::{CanonError, to_canonical};
use crate::spec::{Digest, OrgId, StyleId, Time};

pub use check::{Checked, Doubt, Why, check};

/// The number of the format that is written.
pub const FORMAT: u32 = 1;

/// What stands before the list of digests when it is signed, so that the signature cannot stand
/// for anything else.
const PREFIX: &[u8] = b"fellseam record 1\n";

/// The installation's own key: 32 bytes of chance, for Ed25519 (RFC 8032).
#[derive(Clone)]
pub struct Key(SigningKey);

impl Key {
    pub fn new(chance: [u8; 32]) -> Key {
        Key(SigningKey::from_bytes(&chance))
    }

    /// The key as it was kept: 64 hexadecimal digits.
    pub fn from_hex(text: &str) -> Option<Key> {
        bytes(text).map(Key::new)
    }

    /// To be kept, and shown to nobody.
    pub fn to_hex(&self) -> String {
        hex(&self.0.to_bytes())
    }

    pub fn public(&self) -> PublicKey {
        PublicKey(hex(self.0.verifying_key().as_bytes()))
    }
}

/// Shows the public half alone.
impl fmt::Debug for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Key({})", self.public())
    }
}

/// An installation's public key, as 64 lower-case hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct PublicKey(String);

impl TryFrom<String> for PublicKey {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let key = bytes(&text).and_then(|bytes| VerifyingKey::from_bytes(&bytes).ok());
        match key {
            Some(_) => Ok(PublicKey(text)),
            None => Err("a public key is 64 lower-case hexadecimal digits of an Ed25519 key"),
        }
    }
}

impl From<PublicKey> for String {
    fn from(key: PublicKey) -> Self {
        key.0
    }
}

impl fmt::Display for PublicKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl PublicKey {
    /// Whether the signature, 128 hexadecimal digits, is this key's under the list of digests.
    fn has_signed(&self, digests: &BTreeMap<String, Digest>, signature: &str) -> bool {
        let Some(Ok(key)) = bytes(&self.0).map(|bytes| VerifyingKey::from_bytes(&bytes)) else {
            return false;
        };
        let (Some(signature), Ok(signed)) = (bytes::<64>(signature), signed(digests)) else {
            return false;
        };
        key.verify_strict(&signed, &Signature::from_bytes(&signature))
            .is_ok()
    }
}

/// What a record says.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    pub format: u32,
    /// When it was written.
    pub made: Time,
    /// The key of the installation that wrote it.
    pub key: PublicKey,
    /// The brand's name.
    pub brand: String,
    pub factory: Factory,
    pub style: Style,
    pub subject: Subject,
    /// In the order they were given.
    pub signatures: Vec<Given>,
    pub chain: Chain,
}

/// The factory that the brand signs with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Factory {
    pub id: OrgId,
    pub name: String,
}

/// The style, as the signed revision calls it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Style {
    pub id: StyleId,
    pub number: String,
    pub name: String,
}

/// What is signed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Subject {
    pub kind: SubjectKind,
    /// The revision's, the round's or the seal's id.
    pub id: String,
    /// The revision's or the round's number; a seal has its round's.
    pub number: u32,
    /// The number of the revision that it is bound to; a revision's own.
    pub revision: u32,
    /// What a signature is put to; absent while there is nothing to sign.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub digest: Option<Digest>,
    /// The text that the digest is of. A revision's is its document, a file of its own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub content: Option<String>,
}

/// A signature that a person gave.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Given {
    /// The number of the entry that tells of it.
    pub entry: u64,
    pub side: Side,
    pub role: Role,
    /// Absent: erased. The entry keeps SHA-256(salt ‖ name).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub salt: Option<String>,
    pub at: Time,
    /// By the signer's own clock, with its offset.
    pub local_time: String,
    /// BCP 47.
    pub language: String,
    /// What the name was put to. A round's is another than the subject's when a value was corrected
    /// after the signature.
    pub digest: Digest,
    pub statement: Statement,
    /// The statement in that language, in the words of the program that wrote the record.
    pub words: String,
}

/// The end of the style's chain when the record was written, and the entries that matter for it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Chain {
    pub head: Head,
    pub entries: Vec<Kept>,
}

/// An entry, and the SHA-256 of its canonical text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kept {
    pub entry: Entry,
    pub hash: Digest,
}

/// The file: the record, the digest of each of its values, and the signature to those.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Sealed {
    record: Record,
    digests: BTreeMap<String, Digest>,
    signature: String,
}

/// Does the entry tell of what is signed with this factory?
pub fn matters(entry: &Entry, subject: &Subject, factory: &OrgId) -> bool {
    let id = |name: &str| entry.ids.get(name).map(String::as_str);
    let hidden = entry.internal || entry.visible_to.as_ref().is_some_and(|org| org != factory);
    if hidden {
        return false;
    }
    let revision = subject.revision.to_string();
    let of_revision = id("revision") == Some(revision.as_str());
    let is_revision = subject.kind == SubjectKind::Revision;
    match entry.act {
        Act::Publish => of_revision,
        Act::Sign => id("subject") == Some(subject.id.as_str()),
        Act::Share | Act::Unshare => is_revision && id("org") == Some(factory.as_str()),
        Act::Withdraw => is_revision && of_revision,
        Act::Acknowledge => {
            is_revision && of_revision && entry.visible_to.as_ref() == Some(factory)
        }
        Act::RequestRound | Act::RoundMove | Act::Decide => {
            subject.kind == SubjectKind::Round && id("round") == Some(subject.id.as_str())
        }
        Act::Seal => subject.kind == SubjectKind::Seal && id("seal") == Some(subject.id.as_str()),
        _ => false,
    }
}

/// The bytes of the file. Errors: a text in it that no canonical document holds.
pub fn seal(record: &Record, key: &Key) -> Result<Vec<u8>, CanonError> {
    let digests = digests(record)?;
    let signature = key.0.sign(&signed(&digests)?);
    to_canonical(&Sealed {
        record: record.clone(),
        digests,
        signature: hex(&signature.to_bytes()),
    })
}

/// The bytes that are signed.
fn signed(digests: &BTreeMap<String, Digest>) -> Result<Vec<u8>, CanonError> {
    Ok([PREFIX, &to_canonical(digests)?].concat())
}

/// The digest of each value by its place, `signatures[0].name`: of its canonical text. A list or an
/// object with nothing in it is a value too.
fn digests(record: &Record) -> Result<BTreeMap<String, Digest>, CanonError> {
    // Canonical first: it refuses what must not be in it, with its path.
    to_canonical(record)?;
    let mut found = BTreeMap::new();
    let value = serde_json::to_value(record).expect("its canonical form was just made");
    walk(String::new(), &value, &mut found)?;
    Ok(found)
}

fn walk(
    place: String,
    value: &Value,
    found: &mut BTreeMap<String, Digest>,
) -> Result<(), CanonError> {
    match value {
        Value::Object(fields) if !fields.is_empty() => {
            for (name, value) in fields {
                let dot = if place.is_empty() { "" } else { "." };
                walk(format!("{place}{dot}{name}"), value, found)?;
            }
        }
        Value::Array(items) if !items.is_empty() => {
            for (index, value) in items.iter().enumerate() {
                walk(format!("{place}[{index}]"), value, found)?;
            }
        }
        value => {
            found.insert(place, Digest::of(&to_canonical(value)?));
        }
    }
    Ok(())
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Lower-case digits only: one number has one writing.
fn bytes<const N: usize>(hex: &str) -> Option<[u8; N]> {
    let digit = |byte: u8| match byte {
        b'0'..=b'9' => Some(byte - b'0'),
        b'a'..=b'f' => Some(byte - b'a' + 10),
        _ => None,
    };
    let hex = hex.as_bytes();
    if hex.len() != 2 * N {
        return None;
    }
    let mut bytes = [0; N];
    for (byte, pair) in bytes.iter_mut().zip(hex.chunks(2)) {
        *byte = digit(pair[0])? << 4 | digit(pair[1])?;
    }
    Some(bytes)
}

#[cfg(test)]
mod tests;
