//! Everything that a print is made of, as one run of bytes: to the child, and for tests.

use std::io::{self, Read};

use serde::{Deserialize, Serialize};

use super::Order;
use crate::exchange::translation::Translations;
use crate::spec::Digest;

/// What a print is made of.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Parcel {
    pub order: Order,
    /// The exact bytes of a revision, or the spec of a draft as JSON.
    pub document: Vec<u8>,
    /// The revision before this one, to tell what changed; empty where there is none.
    pub before: Vec<u8>,
    pub files: Vec<Enclosed>,
    /// The names of originals that are too large to be attached beside the others.
    pub left_out: Vec<String>,
    /// What stands beside the words of a draft; a revision has its own frozen in it.
    pub beside: Translations,
}

/// A file that is shown or attached.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Enclosed {
    /// Of the original: what the document calls it.
    pub file: Digest,
    pub as_what: Use,
    /// As the sender's machine called it, with the ending that its content has.
    pub name: String,
    pub media_type: String,
    pub bytes: Vec<u8>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Use {
    /// What is shown of it: cleaned SVG, or WebP.
    Picture,
    /// The file as it was uploaded, attached to the print.
    Original,
}

/// The first line.
#[derive(Serialize, Deserialize)]
struct Head {
    order: Order,
    document: usize,
    before: usize,
    files: Vec<FileHead>,
    left_out: Vec<String>,
    beside: Translations,
}

#[derive(Serialize, Deserialize)]
struct FileHead {
    file: Digest,
    as_what: Use,
    name: String,
    media_type: String,
    length: usize,
}

impl Parcel {
    /// One line of JSON, and all bytes in the order that it names.
    pub fn pack(&self) -> Vec<u8> {
        let files = self.files.iter().map(|it| FileHead {
            file: it.file.clone(),
            as_what: it.as_what,
            name: it.name.clone(),
            media_type: it.media_type.clone(),
            length: it.bytes.len(),
        });
        let head = Head {
            order: self.order.clone(),
            document: self.document.len(),
            before: self.before.len(),
            files: files.collect(),
            left_out: self.left_out.clone(),
            beside: self.beside.clone(),
        };
        let mut packed = serde_json::to_vec(&head).expect("texts and numbers");
        packed.push(b'\n');
        packed.extend_from_slice(&self.document);
        packed.extend_from_slice(&self.before);
        for file in &self.files {
            packed.extend_from_slice(&file.bytes);
        }
        packed
    }

    /// Errors: bytes that were not packed here.
    pub fn unpack(bytes: &[u8]) -> io::Result<Parcel> {
        let end = bytes.iter().position(|byte| *byte == b'\n');
        let (line, mut rest) = bytes.split_at(end.ok_or(io::ErrorKind::InvalidData)? + 1);
        let head: Head = serde_json::from_slice(line)?;
        let mut take = |length: usize| {
            if length > rest.len() {
                return Err(io::Error::from(io::ErrorKind::UnexpectedEof));
            }
            let mut taken = vec![0; length];
            rest.read_exact(&mut taken)?;
            Ok(taken)
        };
        let document = take(head.document)?;
        let before = take(head.before)?;
        let mut files = Vec::with_capacity(head.files.len());
        for it in head.files {
            files.push(Enclosed {
                file: it.file,
                as_what: it.as_what,
                name: it.name,
                media_type: it.media_type,
                bytes: take(it.length)?,
            });
        }
        Ok(Parcel {
            order: head.order,
            document,
            before,
            files,
            left_out: head.left_out,
            beside: head.beside,
        })
    }

    /// What is shown of a file.
    pub(super) fn picture(&self, file: &Digest) -> Option<&Enclosed> {
        let mut shown = self.files.iter();
        shown.find(|it| it.as_what == Use::Picture && it.file == *file)
    }

    pub(super) fn originals(&self) -> impl Iterator<Item = &Enclosed> {
        let files = self.files.iter();
        files.filter(|it| it.as_what == Use::Original)
    }
}
