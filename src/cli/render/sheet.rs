//! Sheets of a file as rows of text cells.

use std::io::Cursor;

use calamine::{DataRef, Reader, Xlsx, XlsxError};

use crate::files::sheet::MAX_UNPACKED;
use crate::spec::sheet::{Cell, MAX_CELLS, MAX_SHEETS, NotASheet, Place, Sheet, number, read_csv};

/// How many files an XLSX has at most: a sheet of honest making has about ten, and a picture each
/// one more.
const MAX_PARTS: usize = 2000;

/// How many merged areas a sheet has at most.
const MAX_MERGED: usize = 2000;

/// Reads XLSX by what it holds, else text.
pub fn read(bytes: Vec<u8>) -> Result<Vec<Sheet>, NotASheet> {
    let unsupported = |what: &str| {
        let what = what.to_owned();
        Err(NotASheet::Unsupported { what })
    };
    if bytes.starts_with(b"PK\x03\x04") {
        return xlsx(bytes);
    }
    // The old binary form, and the wrapping of a file that is kept by a password.
    if bytes.starts_with(b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1") {
        return unsupported("XLS");
    }
    if bytes.starts_with(b"%PDF") {
        return unsupported("PDF");
    }
    Ok(vec![read_csv(&text(&bytes)?)?])
}

/// UTF-8, or UTF-16 that says so by its first mark. Nothing else is guessed: a wrong guess would
/// turn ½ and ä into other letters without a word.
fn text(bytes: &[u8]) -> Result<String, NotASheet> {
    let wide = |rest: &[u8], unit: fn([u8; 2]) -> u16| {
        let (pairs, odd) = rest.as_chunks::<2>();
        let units: Vec<u16> = pairs.iter().map(|pair| unit(*pair)).collect();
        let text = String::from_utf16(&units).ok().filter(|_| odd.is_empty());
        text.ok_or(NotASheet::Encoding)
    };
    match bytes {
        [0xFF, 0xFE, rest @ ..] => wide(rest, u16::from_le_bytes),
        [0xFE, 0xFF, rest @ ..] => wide(rest, u16::from_be_bytes),
        _ if bytes.contains(&0) => Err(NotASheet::Unknown),
        _ => String::from_utf8(bytes.to_vec()).map_err(|_| NotASheet::Encoding),
    }
}

fn xlsx(bytes: Vec<u8>) -> Result<Vec<Sheet>, NotASheet> {
    measure(&bytes)?;
    let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).map_err(why)?;
    let names = book.sheet_names();
    if names.len() > MAX_SHEETS {
        return Err(NotASheet::TooManySheets);
    }
    let mut sheets = Vec::new();
    let mut count = 0;
    for name in names {
        // A page that is only a diagram has no cells.
        let sheet = match sheet(&mut book, &name, &mut count) {
            Err(Trouble::Book(XlsxError::NotAWorksheet(_))) => continue,
            Err(Trouble::Book(error)) => return Err(why(error)),
            Err(Trouble::Sheet(error)) => return Err(error),
            Ok(sheet) => sheet,
        };
        if !sheet.is_empty() {
            sheets.push(sheet);
        }
    }
    match sheets.is_empty() {
        true => Err(NotASheet::Nothing),
        false => Ok(sheets),
    }
}

/// What the archive says it unpacks to, before anything is unpacked. One that lies about it is
/// stopped by the limits of this process.
fn measure(bytes: &[u8]) -> Result<(), NotASheet> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).map_err(|_| NotASheet::Broken)?;
    if archive.len() > MAX_PARTS {
        return Err(NotASheet::TooLarge);
    }
    if archive.index_for_name("content.xml").is_some() {
        let what = "ODS".to_owned();
        return Err(NotASheet::Unsupported { what });
    }
    let mut unpacked = 0_u64;
    for part in 0..archive.len() {
        let part = archive.by_index_raw(part).map_err(|_| NotASheet::Broken)?;
        unpacked = unpacked.saturating_add(part.size());
    }
    match unpacked > MAX_UNPACKED {
        true => Err(NotASheet::TooLarge),
        false => Ok(()),
    }
}

enum Trouble {
    Book(XlsxError),
    Sheet(NotASheet),
}

impl From<XlsxError> for Trouble {
    fn from(error: XlsxError) -> Self {
        Trouble::Book(error)
    }
}

impl From<NotASheet> for Trouble {
    fn from(error: NotASheet) -> Self {
        Trouble::Sheet(error)
    }
}

fn why(error: XlsxError) -> NotASheet {
    match error {
        XlsxError::Password => NotASheet::Unsupported {
            what: "XLS".to_owned(),
        },
        _ => NotASheet::Broken,
    }
}

fn sheet(
    book: &mut Xlsx<Cursor<Vec<u8>>>,
    name: &str,
    count: &mut usize,
) -> Result<Sheet, Trouble> {
    let plain: String = name.chars().filter(|c| !c.is_control()).collect();
    let mut sheet = Sheet::new(plain);
    let mut cells = book.worksheet_cells_reader(name)?;
    // Cells come one by one: a sheet of a million rows ends at the first one that is too many.
    while let Some(cell) = cells.next_cell_with_formula_metadata()? {
        let computed = cell.formula.is_some();
        let found = match cell.value {
            DataRef::Empty if computed => Cell::Uncomputed,
            DataRef::Empty => continue,
            DataRef::Int(value) => text_cell(&value.to_string(), computed),
            DataRef::Float(value) => match number(value) {
                Some(text) => text_cell(&text, computed),
                None => Cell::Fault(value.to_string()),
            },
            DataRef::String(text) => text_cell(&text, computed),
            DataRef::SharedString(text) => text_cell(text, computed),
            DataRef::Bool(value) => text_cell(if value { "yes" } else { "no" }, computed),
            DataRef::DateTime(_) | DataRef::DateTimeIso(_) | DataRef::DurationIso(_) => Cell::Date,
            DataRef::Error(error) => Cell::Fault(error.to_string()),
        };
        if found == Cell::Empty {
            continue;
        }
        *count += 1;
        if *count > MAX_CELLS {
            return Err(NotASheet::TooManyCells.into());
        }
        let (row, column) = cell.pos;
        sheet.put(Place { row, column }, found)?;
    }
    drop(cells);
    merge(book, name, &mut sheet)?;
    Ok(sheet)
}

fn text_cell(text: &str, computed: bool) -> Cell {
    let plain: String = text
        .chars()
        .map(|c| if c == '\0' { ' ' } else { c })
        .collect();
    match (Cell::of_text(&plain), computed) {
        (Cell::Text(text), true) => Cell::Formula(text),
        (cell, _) => cell,
    }
}

/// Marks the empty cells of merged areas, as far as the sheet has rows: whatever stands there
/// stands in the first cell.
fn merge(book: &mut Xlsx<Cursor<Vec<u8>>>, name: &str, sheet: &mut Sheet) -> Result<(), Trouble> {
    let areas = book.merge_cells_by_sheet_name(name)?;
    if areas.len() > MAX_MERGED {
        return Err(NotASheet::TooManyCells.into());
    }
    let last_row = u32::try_from(sheet.rows.len()).unwrap_or_default();
    let last_column = sheet.width();
    for area in areas {
        let (row, column) = area.start;
        let first = Place { row, column };
        let rows = row..=area.end.0.min(last_row.saturating_sub(1));
        for row in rows {
            for column in column..=area.end.1.min(last_column.saturating_sub(1)) {
                let place = Place { row, column };
                if place != first && *sheet.at(place) == Cell::Empty {
                    sheet.put(place, Cell::Merged(first))?;
                }
            }
        }
    }
    Ok(())
}
