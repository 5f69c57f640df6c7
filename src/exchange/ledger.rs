//! The ledger of a style: every act, each entry bound to the one before by its hash.
//!
//! An entry holds no personal text, only SHA-256(salt ‖ text) of it, so that erasing the text
//! leaves the chain whole.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::spec::canon::{CanonError, from_canonical, to_canonical};
use crate::spec::{Digest, OrgId, PersonId, StyleId, Time};

super::named! {
    /// What was done.
    Act {
        Create = "create",
        Publish = "publish",
        Withdraw = "withdraw",
        Share = "share",
        Unshare = "unshare",
        Acknowledge = "acknowledge",
        Ask = "ask",
        Message = "message",
        ThreadMove = "thread_move",
        RequestRound = "request_round",
        RoundMove = "round_move",
        Measure = "measure",
        /// Somebody said why a point of a piece was not measured.
        Skip = "skip",
        /// Photographs of a piece were added.
        Photograph = "photograph",
        Decide = "decide",
        /// A factory submitted an option of something to approve.
        Submit = "submit",
        /// The brand approved an option, or rejected it.
        Approve = "approve",
        /// Pieces of an approved round were sealed.
        Seal = "seal",
        /// An inspection of a finished lot was begun.
        BeginInspection = "begin_inspection",
        /// A piece of the lot was inspected.
        Inspect = "inspect",
        ConcludeInspection = "conclude_inspection",
        /// The brand decided on the lot.
        DecideInspection = "decide_inspection",
        Sign = "sign",
        Translate = "translate",
        /// Somebody put a translation beside a message.
        TranslateMessage = "translate_message",
        /// Personal texts were erased; their hashes stay.
        Erase = "erase",
    }
}

/// One act, before it has its place in the chain.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Draft {
    pub at: Time,
    pub act: Act,
    /// `None`: the program itself.
    pub person: Option<PersonId>,
    pub org: Option<OrgId>,
    /// The factory that may read it; `None`: the brand and every factory it is shared with.
    pub visible_to: Option<OrgId>,
    /// For the brand alone.
    pub internal: bool,
    /// What it was done to and how: ids, numbers and names of states, by the name of what they
    /// are. No personal text.
    pub ids: BTreeMap<String, String>,
    /// Digests of contents; of personal ones, [salted](salted).
    pub hashes: BTreeMap<String, Digest>,
}

/// One act in its place. Its canonical text is kept as it was hashed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// From 1, without gaps.
    pub seq: u64,
    pub at: Time,
    pub act: Act,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<PersonId>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub org: Option<OrgId>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub visible_to: Option<OrgId>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub internal: bool,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub ids: BTreeMap<String, String>,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub hashes: BTreeMap<String, Digest>,
    /// The hash of the entry before.
    pub before: Digest,
}

/// The end of a chain: how many entries it has, and the hash of the last.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Head {
    pub seq: u64,
    pub hash: Digest,
}

impl Head {
    /// The head of a style's empty chain. It hangs on the style, so that the chain of one cannot
    /// stand for that of another.
    pub fn start(style: &StyleId) -> Head {
        Head {
            seq: 0,
            hash: Digest::of(format!("fellseam ledger of {style}").as_bytes()),
        }
    }
}

/// An entry, its text to keep, and the head that the chain has with it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Appended {
    pub entry: Entry,
    /// Its canonical text, to keep as it is.
    pub body: String,
    pub head: Head,
}

/// Gives an act its place at the end of the chain.
pub fn append(head: &Head, draft: Draft) -> Result<Appended, CanonError> {
    let entry = Entry {
        seq: head.seq + 1,
        at: draft.at,
        act: draft.act,
        person: draft.person,
        org: draft.org,
        visible_to: draft.visible_to,
        internal: draft.internal,
        ids: draft.ids,
        hashes: draft.hashes,
        before: head.hash.clone(),
    };
    let body = String::from_utf8(to_canonical(&entry)?).expect("the canonical form is text");
    let head = Head {
        seq: entry.seq,
        hash: Digest::of(body.as_bytes()),
    };
    Ok(Appended { entry, body, head })
}

/// The first entry of a chain that does not hold.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("entry {seq}: {fault}")]
pub struct FirstFault {
    /// The place in the chain, from 1.
    pub seq: u64,
    pub fault: Fault,
}

/// What does not hold about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    #[error("its text is not the one that was hashed")]
    Changed,
    #[error("its text is no entry")]
    Unreadable,
    #[error("it stands where another is due: its own number is {found}")]
    Gap { found: u64 },
    #[error("it does not follow the entry before it")]
    WrongLink,
    /// A head that was kept elsewhere (beside the chain, in a signature, in a signed record)
    /// knows another entry here: the chain was rewritten.
    #[error("it is not the entry that was known here")]
    NotAsKnown,
    /// A head that was kept elsewhere knows this entry, and the chain ends before it.
    #[error("it is missing: the chain was cut")]
    Cut,
}

/// Walks along a stored chain and stops at the first entry that does not hold.
#[derive(Debug, Clone)]
pub struct Verifier {
    head: Head,
    known: BTreeMap<u64, Digest>,
}

impl Verifier {
    pub fn new(style: &StyleId) -> Verifier {
        Verifier {
            head: Head::start(style),
            known: BTreeMap::new(),
        }
    }

    /// The chain must pass through this head, which was kept elsewhere.
    pub fn expect(&mut self, known: &Head) -> Result<(), FirstFault> {
        let fault = FirstFault {
            seq: known.seq,
            fault: Fault::NotAsKnown,
        };
        if known.seq <= self.head.seq {
            // Only the head itself can still be compared: expect before walking.
            return if *known == self.head {
                Ok(())
            } else {
                Err(fault)
            };
        }
        match self.known.insert(known.seq, known.hash.clone()) {
            Some(other) if other != known.hash => Err(fault),
            _ => Ok(()),
        }
    }

    /// Takes the next stored entry: its text and the hash that is kept beside it.
    pub fn next(&mut self, body: &str, hash: &Digest) -> Result<Entry, FirstFault> {
        let seq = self.head.seq + 1;
        let fault = |fault| FirstFault { seq, fault };
        if Digest::of(body.as_bytes()) != *hash {
            return Err(fault(Fault::Changed));
        }
        let entry: Entry = from_canonical(body.as_bytes()).map_err(|_| fault(Fault::Unreadable))?;
        if entry.seq != seq {
            return Err(fault(Fault::Gap { found: entry.seq }));
        }
        if entry.before != self.head.hash {
            return Err(fault(Fault::WrongLink));
        }
        if self.known.remove(&seq).is_some_and(|known| known != *hash) {
            return Err(fault(Fault::NotAsKnown));
        }
        self.head = Head {
            seq,
            hash: hash.clone(),
        };
        Ok(entry)
    }

    /// The end of the chain, when every head that was expected has been passed.
    pub fn finish(self) -> Result<Head, FirstFault> {
        match self.known.is_empty() {
            true => Ok(self.head),
            false => Err(FirstFault {
                seq: self.head.seq + 1,
                fault: Fault::Cut,
            }),
        }
    }
}

/// Verifies a whole chain against the head that is kept beside it: from the style's start through
/// every entry to exactly that end.
pub fn verify<'a>(
    style: &StyleId,
    entries: impl IntoIterator<Item = (&'a str, &'a Digest)>,
    kept: &Head,
) -> Result<(), FirstFault> {
    let mut verifier = Verifier::new(style);
    verifier.expect(kept)?;
    for (body, hash) in entries {
        verifier.next(body, hash)?;
    }
    let end = verifier.finish()?;
    if end == *kept {
        Ok(())
    } else {
        Err(FirstFault {
            seq: kept.seq + 1,
            fault: Fault::NotAsKnown,
        })
    }
}

/// What is put before a personal text when it is hashed, so that nobody can find the text by
/// hashing guesses: 32 random bytes as 64 hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Salt(String);

impl Salt {
    pub fn new(random: [u8; 32]) -> Salt {
        Salt(random.iter().map(|byte| format!("{byte:02x}")).collect())
    }

    /// The salt as it was kept.
    pub fn from_hex(text: &str) -> Option<Salt> {
        // The same shape as a digest, which is checked there.
        Digest::try_from(text.to_owned())
            .ok()
            .map(|hex| Salt(hex.into()))
    }

    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// SHA-256(salt ‖ content), the salt as its 64 digits: `printf %s%s SALT CONTENT | sha256sum`.
pub fn salted(salt: &Salt, content: &str) -> Digest {
    Digest::of([salt.as_str(), content].concat().as_bytes())
}

#[cfg(test)]
mod tests;
