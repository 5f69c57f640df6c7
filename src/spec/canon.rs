//! The canonical form of a document: the bytes that are hashed, signed and kept.
//!
//! RFC 8785 (JSON Canonicalization Scheme), narrowed: objects, arrays, text, booleans, and integers
//! up to 2^53 - 1 on either side of zero. No floating point and no null, so there is exactly one
//! way to write a thing; text is in Unicode normalization form C and without NUL, which databases
//! refuse. The writer is our own, because an integer that a reader elsewhere would silently round
//! must be refused.

mod decode;
mod parse;

use std::fmt;

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;
use unicode_normalization::{UnicodeNormalization, is_nfc};

/// The largest integer that every reader of JSON keeps exactly: 2^53 - 1.
pub const MAX_INTEGER: i64 = (1 << 53) - 1;

/// What cannot be in a canonical document, and where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CanonError {
    pub fault: CanonFault,
    /// From the inside out, as the error came up.
    steps: Vec<Step>,
}

#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CanonFault {
    #[error("a number that is not whole: write it as text")]
    Float,
    #[error("null: what is absent is left out")]
    Null,
    #[error("an integer beyond 2^53 - 1")]
    IntegerTooLarge,
    #[error("text with a NUL")]
    Nul,
    #[error("text that is not in normalization form C")]
    NotNfc,
    #[error("the same key twice")]
    DuplicateKey,
    #[error("an unknown field")]
    UnknownField,
    #[error("nested deeper than {} levels", parse::MAX_DEPTH)]
    TooDeep,
    #[error("not JSON at byte {at}")]
    Syntax { at: usize },
    #[error("valid, but not the canonical writing, from byte {at} on")]
    NotCanonical { at: usize },
    /// What the type of the document says: a missing field, a wrong kind, a value out of bounds.
    #[error("{0}")]
    Refused(String),
}

#[derive(Debug, Clone, PartialEq, Eq)]
enum Step {
    Key(String),
    Index(usize),
}

/// The canonical bytes of a value.
pub fn to_canonical<T: Serialize>(value: &T) -> Result<Vec<u8>, CanonError> {
    let value = serde_json::to_value(value).map_err(|error| refused(&error))?;
    let mut out = Vec::new();
    write(&value, &mut out)?;
    Ok(out)
}

/// Reads a value from its canonical bytes, and from no others: what comes in is written again and
/// must be the same to the byte.
pub fn from_canonical<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, CanonError> {
    let value = parse::parse(bytes)?;
    let mut again = Vec::with_capacity(bytes.len());
    write(&value, &mut again)?;
    if again != bytes {
        let same = again.iter().zip(bytes).take_while(|(a, b)| a == b);
        return Err(CanonFault::NotCanonical { at: same.count() }.into());
    }
    decode::decode(value)
}

/// Reads a value from JSON that a person or another program wrote: spaces, the order of keys and
/// escapes are free. What no canonical document can hold is refused all the same, with its path.
pub fn from_json<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, CanonError> {
    decode::decode(parse::parse(bytes)?)
}

/// Text in normalization form C, as a form makes it before anything is kept.
pub fn nfc(text: &str) -> String {
    text.nfc().collect()
}

fn write(value: &Value, out: &mut Vec<u8>) -> Result<(), CanonError> {
    match value {
        Value::Null => return Err(CanonFault::Null.into()),
        Value::Bool(true) => out.extend_from_slice(b"true"),
        Value::Bool(false) => out.extend_from_slice(b"false"),
        Value::Number(number) => {
            if number.is_f64() {
                return Err(CanonFault::Float.into());
            }
            let integer = number.as_i64().filter(|n| in_range(*n));
            let integer = integer.ok_or(CanonFault::IntegerTooLarge)?;
            out.extend_from_slice(integer.to_string().as_bytes());
        }
        Value::String(text) => write_text(text, out)?,
        Value::Array(items) => {
            out.push(b'[');
            for (index, item) in items.iter().enumerate() {
                if index > 0 {
                    out.push(b',');
                }
                write(item, out).map_err(|error| error.within(Step::Index(index)))?;
            }
            out.push(b']');
        }
        Value::Object(fields) => {
            out.push(b'{');
            let mut fields: Vec<_> = fields.iter().collect();
            fields.sort_by(|(a, _), (b, _)| utf16_order(a, b));
            for (index, (key, item)) in fields.into_iter().enumerate() {
                if index > 0 {
                    out.push(b',');
                }
                let within = |error: CanonError| error.within(Step::Key(key.clone()));
                write_text(key, out).map_err(within)?;
                out.push(b':');
                write(item, out).map_err(within)?;
            }
            out.push(b'}');
        }
    }
    Ok(())
}

/// RFC 8785 section 3.2.2.2.
fn write_text(text: &str, out: &mut Vec<u8>) -> Result<(), CanonError> {
    allowed(text)?;
    out.push(b'"');
    for byte in text.bytes() {
        match byte {
            b'"' => out.extend_from_slice(b"\\\""),
            b'\\' => out.extend_from_slice(b"\\\\"),
            0x08 => out.extend_from_slice(b"\\b"),
            b'\t' => out.extend_from_slice(b"\\t"),
            b'\n' => out.extend_from_slice(b"\\n"),
            0x0c => out.extend_from_slice(b"\\f"),
            b'\r' => out.extend_from_slice(b"\\r"),
            0x00..=0x1f => out.extend_from_slice(format!("\\u{byte:04x}").as_bytes()),
            _ => out.push(byte),
        }
    }
    out.push(b'"');
    Ok(())
}

fn allowed(text: &str) -> Result<(), CanonError> {
    if text.contains('\0') {
        Err(CanonFault::Nul.into())
    } else if !is_nfc(text) {
        Err(CanonFault::NotNfc.into())
    } else {
        Ok(())
    }
}

/// RFC 8785 section 3.2.3: keys in the order of their UTF-16 code units.
fn utf16_order(a: &str, b: &str) -> std::cmp::Ordering {
    a.encode_utf16().cmp(b.encode_utf16())
}

fn in_range(integer: i64) -> bool {
    integer.unsigned_abs() <= MAX_INTEGER.unsigned_abs()
}

fn refused(message: &impl fmt::Display) -> CanonError {
    CanonFault::Refused(message.to_string()).into()
}

impl CanonError {
    fn within(mut self, step: Step) -> Self {
        self.steps.push(step);
        self
    }

    /// Where it is: `$.points.points[3].name`.
    pub fn path(&self) -> String {
        let mut path = "$".to_owned();
        let plain = |c: char| c.is_ascii_alphanumeric() || c == '_' || c == '-';
        for step in self.steps.iter().rev() {
            match step {
                Step::Index(index) => path.push_str(&format!("[{index}]")),
                Step::Key(key) if !key.is_empty() && key.chars().all(plain) => {
                    path.push('.');
                    path.push_str(key);
                }
                Step::Key(key) => path.push_str(&format!("[{key:?}]")),
            }
        }
        path
    }
}

impl From<CanonFault> for CanonError {
    fn from(fault: CanonFault) -> Self {
        Self {
            fault,
            steps: Vec::new(),
        }
    }
}

impl fmt::Display for CanonError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.path(), self.fault)
    }
}

impl std::error::Error for CanonError {}

#[cfg(test)]
mod tests;
