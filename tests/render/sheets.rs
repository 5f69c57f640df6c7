//! Sheets that are uploaded: what is read of them, and files that were made to harm.

use std::io::Write;
use std::time::Duration;

use fellseam::files::sheet::MAX_BYTES;
use fellseam::spec::sheet::{Cell, NotASheet, Place, Sheet};
use flate2::{Compress, Compression, FlushCompress};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook};
use tokio::time::Instant;

use super::inputs::*;

fn at(row: u32, column: u32) -> Place {
    Place { row, column }
}

/// A file in an archive: its content is `block`, so often. The archive says that it unpacks to
/// `claim` bytes, or to what it truly does.
struct Part<'a> {
    name: &'a str,
    begin: &'a str,
    block: &'a str,
    times: usize,
    end: &'a str,
    claim: Option<u32>,
}

fn whole<'a>(name: &'a str, text: &'a str) -> Part<'a> {
    Part {
        name,
        begin: text,
        block: "",
        times: 0,
        end: "",
        claim: None,
    }
}

impl Part<'_> {
    /// Deflated. A block that begins after a full flush refers to nothing before it, so its bytes
    /// can be repeated without being made again.
    fn deflated(&self) -> Vec<u8> {
        let piece = |text: &str, flush| {
            let mut deflate = Compress::new(Compression::fast(), false);
            let mut out = Vec::with_capacity(text.len() + 1024);
            deflate
                .compress_vec(text.as_bytes(), &mut out, flush)
                .unwrap();
            out
        };
        let mut out = piece(self.begin, FlushCompress::Full);
        let block = piece(self.block, FlushCompress::Full);
        (0..self.times).for_each(|_| out.extend(&block));
        out.extend(piece(self.end, FlushCompress::Finish));
        out
    }

    fn size(&self) -> u32 {
        let size = self.begin.len() + self.block.len() * self.times + self.end.len();
        self.claim.unwrap_or(u32::try_from(size).unwrap())
    }
}

/// An archive by hand (APPNOTE.TXT 4.3): what writes honest ones would work for minutes on these.
fn archive(parts: &[Part<'_>]) -> Vec<u8> {
    let (mut out, mut central) = (Vec::new(), Vec::new());
    for part in parts {
        let data = part.deflated();
        let mut crc = flate2::Crc::new();
        if part.times == 0 {
            crc.update(part.begin.as_bytes());
        }
        let mut about = Vec::new();
        about.extend([20, 0, 0, 0, 8, 0, 0, 0, 0x21, 0]);
        about.extend(crc.sum().to_le_bytes());
        about.extend(u32::try_from(data.len()).unwrap().to_le_bytes());
        about.extend(part.size().to_le_bytes());
        about.extend(u16::try_from(part.name.len()).unwrap().to_le_bytes());
        about.extend([0, 0]);
        let offset = u32::try_from(out.len()).unwrap();
        out.extend(b"PK\x03\x04");
        out.extend(&about);
        out.extend(part.name.as_bytes());
        out.extend(data);
        central.extend(b"PK\x01\x02\x14\x00");
        central.extend(&about);
        central.extend([0; 10]);
        central.extend(offset.to_le_bytes());
        central.extend(part.name.as_bytes());
    }
    let count = u16::try_from(parts.len()).unwrap().to_le_bytes();
    let begin = u32::try_from(out.len()).unwrap().to_le_bytes();
    let length = u32::try_from(central.len()).unwrap().to_le_bytes();
    out.extend(central);
    out.extend(b"PK\x05\x06\0\0\0\0");
    out.extend(count);
    out.extend(count);
    out.extend(length);
    out.extend(begin);
    out.extend([0, 0]);
    out
}

const BOOK: &str = r#"<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Chart" sheetId="1" r:id="rId1"/></sheets></workbook>"#;
const ROOT: &str = r#"<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"#;
const LINKS: &str = r#"<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings" Target="sharedStrings.xml"/></Relationships>"#;
const SHEET: &str =
    "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";
const SHEET_END: &str = "</sheetData></worksheet>";
const STRINGS: &str = "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">";

/// An XLSX of one sheet with these parts of its own.
fn xlsx(mut own: Vec<Part<'_>>) -> Vec<u8> {
    own.push(whole("_rels/.rels", ROOT));
    own.push(whole("xl/workbook.xml", BOOK));
    own.push(whole("xl/_rels/workbook.xml.rels", LINKS));
    archive(&own)
}

async fn read(bytes: &[u8]) -> (Result<Vec<Sheet>, NotASheet>, Duration) {
    let renderer = renderer();
    let start = Instant::now();
    let answer = renderer.sheets(bytes).await;
    (answer, start.elapsed())
}

#[tokio::test]
async fn an_archive_made_by_hand_is_read_like_any_other() {
    let sheet = format!(
        "{SHEET}<row r=\"2\"><c r=\"C2\"><v>28.1</v></c><c r=\"D2\"><f>1+1</f></c></row>{SHEET_END}"
    );
    let (answer, _) = read(&xlsx(vec![whole("xl/worksheets/sheet1.xml", &sheet)])).await;
    let sheets = answer.unwrap();
    assert_eq!(sheets[0].name, "Chart");
    assert_eq!(sheets[0].at(at(1, 2)), &Cell::Text("28.1".to_owned()));
    assert_eq!(sheets[0].at(at(1, 3)), &Cell::Uncomputed);
}

#[tokio::test]
async fn a_hostile_file_ends_within_two_seconds() {
    let zeros = "0".repeat(1 << 20);
    let cells = "<row><c><v>1</v></c></row>".repeat(1000);
    let strings = "<si/>".repeat(1000);
    let letters = format!("<si><t>{}</t></si>", "x".repeat(100_000));
    let sheet = || {
        whole(
            "xl/worksheets/sheet1.xml",
            "<worksheet><sheetData/></worksheet>",
        )
    };
    let far = format!("{SHEET}<row><c r=\"XFD1048576\"><v>1</v></c></row>{SHEET_END}");
    let laughs = "<!DOCTYPE w [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><worksheet><sheetData><row><c t=\"str\"><v>&b;</v></c></row></sheetData></worksheet>";
    let repeated = |name, begin, block, times, end, claim| Part {
        name,
        begin,
        block,
        times,
        end,
        claim,
    };
    let in_sheet = "xl/worksheets/sheet1.xml";
    let in_strings = "xl/sharedStrings.xml";
    let cases: Vec<(&str, Vec<u8>, Option<NotASheet>)> = vec![
        (
            "700 megabytes, and it says so",
            xlsx(vec![repeated(
                in_sheet, SHEET, &zeros, 700, SHEET_END, None,
            )]),
            Some(NotASheet::TooLarge),
        ),
        (
            "700 megabytes of one text that claims to be little",
            xlsx(vec![
                sheet(),
                repeated(
                    in_strings,
                    "<sst><si><t>",
                    &zeros,
                    700,
                    "</t></si></sst>",
                    Some(9),
                ),
            ]),
            None,
        ),
        (
            "texts without end that claim to be few",
            xlsx(vec![
                sheet(),
                repeated(in_strings, STRINGS, &letters, 7000, "</sst>", Some(9)),
            ]),
            None,
        ),
        (
            "eight million empty texts",
            xlsx(vec![
                sheet(),
                repeated(in_strings, STRINGS, &strings, 8000, "</sst>", None),
            ]),
            None,
        ),
        (
            "a million rows",
            xlsx(vec![repeated(
                in_sheet, SHEET, &cells, 1000, SHEET_END, None,
            )]),
            Some(NotASheet::TooFar {
                sheet: "Chart".to_owned(),
                place: at(2000, 0),
            }),
        ),
        (
            "one cell at the end of the sheet",
            xlsx(vec![whole(in_sheet, &far)]),
            Some(NotASheet::TooFar {
                sheet: "Chart".to_owned(),
                place: at(1_048_575, 16_383),
            }),
        ),
        ("entities", xlsx(vec![whole(in_sheet, laughs)]), None),
        (
            "an archive that is cut off",
            xlsx(vec![sheet()])[..200].to_vec(),
            Some(NotASheet::Broken),
        ),
        (
            "a million rows of text",
            "1,2\n".repeat(1_000_000).into_bytes(),
            Some(NotASheet::TooFar {
                sheet: String::new(),
                place: at(2000, 0),
            }),
        ),
        (
            "more than is taken",
            vec![b'1'; MAX_BYTES + 1],
            Some(NotASheet::TooLarge),
        ),
    ];
    for (what, bytes, expected) in cases {
        let (answer, took) = read(&bytes).await;
        println!(
            "{what}: {} bytes, {took:?}, {:?}",
            bytes.len(),
            answer.as_ref().map(|_| "read")
        );
        let why = answer.expect_err(what);
        assert!(took < Duration::from_secs(2), "{what}: {took:?}");
        assert!(!matches!(why, NotASheet::Failed { .. }), "{what}: {why}");
        if let Some(expected) = expected {
            assert_eq!(why, expected, "{what}");
        }
    }
}

#[tokio::test]
async fn formulas_dates_and_merged_cells_are_told_apart() {
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.set_name("Size chart").unwrap();
    let date = Format::new().set_num_format("d-mmm");
    sheet
        .merge_range(0, 0, 0, 3, "Shoal half-zip", &Format::new())
        .unwrap();
    sheet.write(1, 0, "A").unwrap();
    sheet
        .write_formula(1, 1, Formula::new("=27.1+1").set_result("28.1"))
        .unwrap();
    let july = ExcelDateTime::from_ymd(2026, 7, 1).unwrap();
    sheet.write_datetime_with_format(2, 1, july, &date).unwrap();
    sheet.write(3, 1, 28.1).unwrap();
    sheet.write(3, 2, "28 ½").unwrap();
    sheet.merge_range(4, 0, 5, 0, "B", &Format::new()).unwrap();
    sheet.write(5, 1, true).unwrap();
    book.add_worksheet().set_name("Empty").unwrap();
    let (answer, took) = read(&book.save_to_buffer().unwrap()).await;
    println!("an ordinary file: {took:?}");
    let sheets = answer.unwrap();
    assert_eq!(sheets.len(), 1);
    let cell = |row, column| sheets[0].at(at(row, column));
    let text = |text: &str| Cell::Text(text.to_owned());
    assert_eq!(cell(0, 0), &text("Shoal half-zip"));
    assert_eq!(cell(0, 2), &Cell::Merged(at(0, 0)));
    assert_eq!(cell(1, 1), &Cell::Formula("28.1".to_owned()));
    assert_eq!(cell(2, 1), &Cell::Date);
    assert_eq!(cell(3, 1), &text("28.1"));
    assert_eq!(cell(3, 2), &text("28 ½"));
    assert_eq!(cell(5, 0), &Cell::Merged(at(4, 0)));
    assert_eq!(cell(5, 1), &text("yes"));
}

#[tokio::test]
async fn what_is_no_sheet_is_said_to_be_none() {
    let unsupported = |what: &str| NotASheet::Unsupported {
        what: what.to_owned(),
    };
    let mut open = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    open.start_file("content.xml", zip::write::SimpleFileOptions::default())
        .unwrap();
    open.write_all(b"<office/>").unwrap();
    let open = open.finish().unwrap().into_inner();
    for (bytes, why) in [
        (
            b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1 and so on".to_vec(),
            unsupported("XLS"),
        ),
        (b"%PDF-1.7".to_vec(), unsupported("PDF")),
        (open, unsupported("ODS")),
        (png(&halves(8, 8)), NotASheet::Unknown),
        (b"L\xE4nge,1\n".to_vec(), NotASheet::Encoding),
        (b" \r\n ,, \n".to_vec(), NotASheet::Nothing),
    ] {
        assert_eq!(read(&bytes).await.0, Err(why));
    }
    let text = "Länge;1,5\n";
    let wide: Vec<u8> = std::iter::once(0xFEFF)
        .chain(text.encode_utf16())
        .flat_map(u16::to_le_bytes)
        .collect();
    for bytes in [text.as_bytes(), &wide] {
        let sheets = read(bytes).await.0.unwrap();
        assert_eq!(sheets[0].at(at(0, 0)).shown(), "Länge");
        assert_eq!(sheets[0].at(at(0, 1)).shown(), "1,5");
    }
}
