//! A whole style as one open archive, so that nobody is locked in: a zip of JSON and of the files
//! as they were uploaded.
//!
//! | entry | what it holds |
//! |---|---|
//! | `spec.json` | the document: of a revision the exact bytes that its SHA-256 is of; of a draft the bare spec |
//! | `files.json` | a list of the files that the document names: `file`, the SHA-256 that the document names it by; `entry`, where it lies here; `name`, as the sender's machine called it; `media_type` |
//! | `originals/SHA-256.ENDING` | each of those files, byte for byte |
//!
//! There are no other entries, and the same style always gives the same bytes. A photograph has no
//! original: it is not here, though the document may name it.
//!
//! What is read comes from strangers: entries, their sizes and their names are held to bounds
//! before anything is unpacked, and no entry may unpack to more than it says.

use std::collections::BTreeSet;
use std::io::{self, Cursor, Read, Seek, Write};

use serde::Serialize;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipArchive, ZipWriter};

use crate::spec::Digest;

const DOCUMENT: &str = "spec.json";
const LIST: &str = "files.json";
const FOLDER: &str = "originals/";

/// Entries of one archive.
pub const MAX_ENTRIES: usize = 2000;

/// Bytes of the document, and of the list. A spec of 45 points has about 100 KB.
pub const MAX_JSON: u64 = 32 * 1024 * 1024;

/// Bytes of one original.
pub const MAX_ORIGINAL: u64 = 256 * 1024 * 1024;

/// Bytes of everything, unpacked; an archive has no more itself.
pub const MAX_BYTES: u64 = 2 * 1024 * 1024 * 1024;

/// What begins each line of a zip's table of contents.
const HEAD: &[u8] = b"PK\x01\x02";

/// Those of this archive and, by chance or within an original, a few others.
const MAX_HEADS: usize = 10 * MAX_ENTRIES;

/// A file that the document names.
#[derive(Debug, Clone, Copy)]
pub struct Original<'a> {
    pub file: &'a Digest,
    /// As the sender's machine called it.
    pub name: &'a str,
    pub media_type: &'a str,
    /// What its name here ends with, without the dot: lower-case letters and digits.
    pub ending: &'a str,
}

#[derive(Serialize)]
struct Listed {
    file: Digest,
    entry: String,
    name: String,
    media_type: String,
}

/// An archive that is being written.
pub struct Archive<W: Write + Seek> {
    zip: ZipWriter<W>,
    listed: Vec<Listed>,
    left: u64,
}

impl<W: Write + Seek> Archive<W> {
    /// Begins with the document.
    pub fn begin(out: W, document: &[u8]) -> io::Result<Self> {
        let mut archive = Archive {
            zip: ZipWriter::new(out),
            listed: Vec::new(),
            left: MAX_BYTES,
        };
        archive.put(DOCUMENT, true, MAX_JSON, document)?;
        Ok(archive)
    }

    /// Errors: bytes that are not those that the digest is of; more than an archive holds.
    pub fn add(&mut self, original: Original<'_>, bytes: &[u8]) -> io::Result<()> {
        let Original { file, ending, .. } = original;
        if Digest::of(bytes) != *file {
            let why = format!("{file}: other bytes than were kept");
            return Err(io::Error::new(io::ErrorKind::InvalidData, why));
        }
        // Two more for the document and the list.
        if self.listed.len() + 2 >= MAX_ENTRIES {
            return Err(io::ErrorKind::FileTooLarge.into());
        }
        let entry = format!("{FOLDER}{file}.{ending}");
        // Photographs and the like are pressed already.
        let presses = !original.media_type.starts_with("image/") || ending == "svg";
        self.put(&entry, presses, MAX_ORIGINAL, bytes)?;
        self.listed.push(Listed {
            file: file.clone(),
            entry,
            name: original.name.to_owned(),
            media_type: original.media_type.to_owned(),
        });
        Ok(())
    }

    /// Ends with the list.
    pub fn end(mut self) -> io::Result<W> {
        let mut list = serde_json::to_vec_pretty(&self.listed)?;
        list.push(b'\n');
        self.put(LIST, true, MAX_JSON, &list)?;
        Ok(self.zip.finish()?)
    }

    fn put(&mut self, entry: &str, press: bool, most: u64, bytes: &[u8]) -> io::Result<()> {
        let size = bytes.len() as u64;
        if size > most.min(self.left) {
            return Err(io::ErrorKind::FileTooLarge.into());
        }
        self.left -= size;
        let method = match press {
            true => CompressionMethod::Deflated,
            false => CompressionMethod::Stored,
        };
        // No clock: the same content is the same archive.
        let options = SimpleFileOptions::default()
            .compression_method(method)
            .last_modified_time(DateTime::default());
        self.zip.start_file(entry, options)?;
        self.zip.write_all(bytes)
    }
}

/// Why bytes are not read as an archive.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotAnArchive {
    #[error("the zip is damaged, or written in a way that is not read here")]
    Damaged,
    #[error("the zip has more than {MAX_ENTRIES} entries")]
    TooMany,
    /// One entry, or all up to it.
    #[error("{0:?} unpacks to more than an archive holds")]
    TooLarge(String),
    #[error("{0:?} does not unpack to what the zip says of it")]
    Unsound(String),
    #[error(
        "{0:?} is no entry that an archive has: spec.json, files.json, originals/SHA-256.ENDING"
    )]
    Foreign(String),
    #[error("the same entry is there twice")]
    Twice,
    #[error("{0:?} holds other bytes than its name says")]
    Altered(String),
    #[error("there is no spec.json in it")]
    NoDocument,
}

/// Whether bytes begin as a zip does.
pub fn is_archive(bytes: &[u8]) -> bool {
    // An empty one begins with its end.
    bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06")
}

/// The document of an archive, after every entry was read and held to what it should be.
pub fn document(bytes: &[u8]) -> Result<Vec<u8>, NotAnArchive> {
    // The table of contents takes memory as soon as it is read.
    let heads = bytes.windows(HEAD.len()).filter(|at| *at == HEAD);
    if heads.count() > MAX_HEADS {
        return Err(NotAnArchive::TooMany);
    }
    let zip = ZipArchive::new(Cursor::new(bytes));
    let mut zip = zip.map_err(|_| NotAnArchive::Damaged)?;
    let mut document = None;
    for (index, (name, what, size)) in contents(&mut zip)?.into_iter().enumerate() {
        let Some(content) = unpack(&mut zip, index, size) else {
            return Err(NotAnArchive::Unsound(name));
        };
        match what {
            Entry::Document => document = Some(content),
            Entry::Original(file) if Digest::of(&content) != file => {
                return Err(NotAnArchive::Altered(name));
            }
            Entry::Original(_) | Entry::Folder | Entry::List => {}
        }
    }
    document.ok_or(NotAnArchive::NoDocument)
}

/// Name and size of every entry, as the zip says them, before anything is unpacked.
fn contents(
    zip: &mut ZipArchive<Cursor<&[u8]>>,
) -> Result<Vec<(String, Entry, u64)>, NotAnArchive> {
    if zip.len() > MAX_ENTRIES {
        return Err(NotAnArchive::TooMany);
    }
    if zip.has_duplicate_names() {
        return Err(NotAnArchive::Twice);
    }
    let mut contents = Vec::with_capacity(zip.len());
    let mut originals = BTreeSet::new();
    let mut left = MAX_BYTES;
    for index in 0..zip.len() {
        let entry = zip.by_index_raw(index);
        let entry = entry.map_err(|_| NotAnArchive::Damaged)?;
        let name = String::from_utf8_lossy(entry.name_raw()).into_owned();
        let what = match Entry::of(&name) {
            Some(what) if !entry.is_symlink() => what,
            _ => return Err(NotAnArchive::Foreign(name)),
        };
        if let Entry::Original(file) = &what
            && !originals.insert(file.clone())
        {
            return Err(NotAnArchive::Twice);
        }
        let size = entry.size();
        if size > what.most().min(left) {
            return Err(NotAnArchive::TooLarge(name));
        }
        left -= size;
        contents.push((name, what, size));
    }
    Ok(contents)
}

/// An entry's content, if it is as long as the zip says.
fn unpack(zip: &mut ZipArchive<Cursor<&[u8]>>, index: usize, size: u64) -> Option<Vec<u8>> {
    let entry = zip.by_index(index).ok()?;
    let mut content = Vec::new();
    entry.take(size + 1).read_to_end(&mut content).ok()?;
    (content.len() as u64 == size).then_some(content)
}

/// An entry by its name. Only these names are taken, so none leads out of a folder.
enum Entry {
    Document,
    List,
    /// Programs that pack folders write one for the folder.
    Folder,
    Original(Digest),
}

impl Entry {
    fn of(name: &str) -> Option<Entry> {
        match name {
            DOCUMENT => return Some(Entry::Document),
            LIST => return Some(Entry::List),
            FOLDER => return Some(Entry::Folder),
            _ => {}
        }
        let (file, ending) = name.strip_prefix(FOLDER)?.split_once('.')?;
        let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit();
        if ending.is_empty() || !ending.bytes().all(plain) {
            return None;
        }
        Digest::try_from(file.to_owned()).ok().map(Entry::Original)
    }

    fn most(&self) -> u64 {
        match self {
            Entry::Document | Entry::List => MAX_JSON,
            Entry::Folder => 0,
            Entry::Original(_) => MAX_ORIGINAL,
        }
    }
}

#[cfg(test)]
mod tests;
