//! Names of things: newtypes, so that a style's id never stands where a person's is wanted.

use std::fmt;

use serde::{Deserialize, Serialize};

macro_rules! ids {
    ($($(#[$doc:meta])* $name:ident)*) => {$(
        $(#[$doc])*
        #[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(String);

        impl $name {
            /// Takes an id that was made elsewhere: by the store, or by the reader of a document.
            pub fn new(id: impl Into<String>) -> Self {
                Self(id.into())
            }

            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    )*};
}

ids! {
    /// Anything addressable inside a spec: a size, point of measure, part, colourway, drawing,
    /// marker. Never reused, so that threads and measurements survive re-ordering and re-lettering.
    ItemId
    StyleId
    RevisionId
    /// The brand, or one factory.
    OrgId
    PersonId
    ThreadId
    MessageId
    RoundId
    /// One garment of a sample round.
    PieceId
    MeasurementId
    SignatureId
    /// An option that was submitted to be approved.
    SubmissionId
    SealId
    /// An inspection of a finished lot.
    InspectionId
    /// A piece of a lot, as somebody entered it once.
    EntryId
}

/// No id yet: for building an item before it has one.
impl Default for ItemId {
    fn default() -> Self {
        Self::new("")
    }
}

/// A SHA-256 as 64 lower-case hexadecimal digits.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Digest(String);

impl Digest {
    /// The digest of these bytes.
    pub fn of(bytes: &[u8]) -> Self {
        use sha2::Digest as _;
        let hash = sha2::Sha256::digest(bytes);
        Self(hash.iter().map(|byte| format!("{byte:02x}")).collect())
    }

    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The first ten digits in two groups of five: a label for eyes. No decision uses it.
    pub fn fingerprint(&self) -> String {
        format!("{} {}", &self.0[..5], &self.0[5..10])
    }
}

impl TryFrom<String> for Digest {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let hex = text.len() == 64
            && text
                .bytes()
                .all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'));
        if hex {
            Ok(Self(text))
        } else {
            Err("a SHA-256 is 64 lower-case hexadecimal digits")
        }
    }
}

impl From<Digest> for String {
    fn from(digest: Digest) -> Self {
        digest.0
    }
}

impl fmt::Display for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// A moment in UTC as fixed-width text, `YYYY-MM-DDTHH:MM:SS.sssZ`: sorts as text in both
/// databases and stands in canonical documents as it is.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Time(String);

impl Time {
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// `YYYY-MM-DD`.
    pub fn date(&self) -> &str {
        &self.0[..10]
    }

    /// `YYYY-MM-DD HH:MM`, for people; the page says that it is UTC.
    pub fn minute(&self) -> String {
        format!("{} {}", &self.0[..10], &self.0[11..16])
    }
}

impl TryFrom<String> for Time {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        const SHAPE: &[u8] = b"0000-00-00T00:00:00.000Z";
        let fits = text.len() == SHAPE.len()
            && text.bytes().zip(SHAPE).all(|(byte, shape)| match shape {
                b'0' => byte.is_ascii_digit(),
                other => byte == *other,
            });
        if fits {
            Ok(Self(text))
        } else {
            Err("a time is written YYYY-MM-DDTHH:MM:SS.sssZ")
        }
    }
}

impl From<Time> for String {
    fn from(time: Time) -> Self {
        time.0
    }
}

impl fmt::Display for Time {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_digest_is_the_published_one() {
        // FIPS 180-4 example: SHA-256 of "abc".
        let digest = Digest::of(b"abc");
        assert_eq!(
            digest.as_str(),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
        assert_eq!(digest.fingerprint(), "ba781 6bf8f");
    }

    #[test]
    fn only_whole_hexadecimal_is_a_digest() {
        assert!(Digest::try_from("ba78".to_owned()).is_err());
        assert!(Digest::try_from("G".repeat(64)).is_err());
        assert!(Digest::try_from("A".repeat(64)).is_err());
    }

    #[test]
    fn a_time_has_one_shape() {
        assert!(Time::try_from("2026-03-01T08:00:00.000Z".to_owned()).is_ok());
        for wrong in [
            "2026-03-01T08:00:00Z",
            "2026-03-01 08:00:00.000Z",
            "",
            "2026-03-01T08:00:00.000+",
        ] {
            assert!(Time::try_from(wrong.to_owned()).is_err(), "{wrong}");
        }
    }
}
