//! Sets the blocks by `paper.typ`, in a world that holds nothing but them, the pictures and the
//! fonts: no file of the machine, no package, no clock.

use std::collections::{BTreeSet, HashMap};

use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::layout::{Frame, FrameItem};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

use super::NoPrint;
use super::block::Document;
use super::fonts::{Fonts, packages};
use super::parcel::Parcel;
use super::writer::Pictures;
use crate::language::Language;

const TEMPLATE: &str = include_str!("paper.typ");

/// So many letters that no font has are named.
const NAMED: usize = 12;

struct Desk<'a> {
    library: LazyHash<Library>,
    fonts: &'a Fonts,
    source: Source,
    files: HashMap<FileId, Bytes>,
}

impl World for Desk<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        self.fonts.book()
    }

    fn main(&self) -> FileId {
        self.source.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        match id == self.source.id() {
            true => Ok(self.source.clone()),
            false => Err(FileError::AccessDenied),
        }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let file = self.files.get(&id);
        file.cloned().ok_or(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.fonts.font(index)
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

pub fn typeset(
    parcel: &Parcel,
    document: &Document,
    pictures: Pictures,
    languages: &[Language],
    fonts: &Fonts,
) -> Result<Vec<u8>, NoPrint> {
    let failed = |why: String| NoPrint::Failed { why };
    let mut files = HashMap::new();
    let mut put = |path: &str, bytes: Vec<u8>| {
        if let Some(id) = id(path) {
            files.insert(id, Bytes::new(bytes));
        }
    };
    let data = serde_json::to_vec(document).map_err(|error| failed(error.to_string()))?;
    put("/data.json", data);
    let families = fonts.families(languages);
    if families.is_empty() {
        let letters = BTreeSet::from(['A']);
        return Err(NoPrint::NoFont {
            packages: packages(&letters),
            letters: letters.into_iter().collect(),
        });
    }
    let named = serde_json::to_vec(&families).map_err(|error| failed(error.to_string()))?;
    put("/fonts.json", named);
    for (path, bytes) in pictures {
        put(&path, bytes);
    }
    let originals = parcel.originals();
    let contents = std::iter::once(&parcel.document).chain(originals.map(|it| &it.bytes));
    for (at, bytes) in contents.enumerate() {
        put(&format!("/attached/{at}"), bytes.clone());
    }
    let main = id("/paper.typ").ok_or_else(|| failed("the template has no path".to_owned()))?;
    let desk = Desk {
        library: LazyHash::new(Library::builder().build()),
        fonts,
        source: Source::new(main, TEMPLATE.to_owned()),
        files,
    };
    let set = typst::compile::<PagedDocument>(&desk);
    let set = set.output.map_err(|errors| failed(told(&errors)))?;
    let missing = missing(&set);
    if !missing.is_empty() {
        return Err(NoPrint::NoFont {
            packages: packages(&missing),
            letters: missing.into_iter().take(NAMED).collect(),
        });
    }
    // The kind of PDF/A that takes attachments of any type, with tags.
    let standards = PdfStandards::new(&[PdfStandard::A_3a]);
    let standards = standards.map_err(|error| failed(error.message().to_string()))?;
    let [year, month, day, hour, minute] = document.date;
    let byte = |part: u16| u8::try_from(part).unwrap_or(1);
    let printed = Datetime::from_ymd_hms(
        i32::from(year),
        byte(month),
        byte(day),
        byte(hour),
        byte(minute),
        0,
    );
    let options = PdfOptions {
        ident: Smart::Custom(format!("{} {}", document.title, parcel.order.printed)),
        creator: Smart::Custom(Some("Fellseam".to_owned())),
        timestamp: printed.map(Timestamp::new_utc),
        standards,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(&set, &options).map_err(|errors| failed(told(&errors)))
}

fn id(path: &str) -> Option<FileId> {
    let path = VirtualPath::new(path).ok()?;
    Some(FileId::new(RootedPath::new(VirtualRoot::Project, path)))
}

fn told(errors: &[SourceDiagnostic]) -> String {
    let messages = errors.iter().map(|error| {
        let hints = error.hints.iter().map(|hint| hint.v.as_str());
        let hints: Vec<&str> = hints.collect();
        format!("{} {}", error.message, hints.join(" "))
    });
    messages.collect::<Vec<_>>().join("; ")
}

/// The letters that were set with no glyph.
fn missing(document: &PagedDocument) -> BTreeSet<char> {
    let mut missing = BTreeSet::new();
    for page in document.pages() {
        look(&page.frame, &mut missing);
    }
    missing
}

fn look(frame: &Frame, missing: &mut BTreeSet<char>) {
    for (_, item) in frame.items() {
        match item {
            FrameItem::Group(group) => look(&group.frame, missing),
            FrameItem::Text(text) => {
                for glyph in text.glyphs.iter().filter(|glyph| glyph.id == 0) {
                    let letters = text.text.get(glyph.range()).unwrap_or_default();
                    missing.extend(letters.chars());
                }
            }
            _ => {}
        }
    }
}
