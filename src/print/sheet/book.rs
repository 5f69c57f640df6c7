//! A workbook and the handful of formats that ours have.

use rust_xlsxwriter::{
    Color, DocProperties, ExcelDateTime, Format, FormatAlign, FormatBorder, Formula, Workbook,
    Worksheet, XlsxError,
};

use super::Source;
use crate::spec::sheet::{Place, column_name};
use crate::spec::{Length, Unit};

/// What a cell is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Look {
    Plain,
    Head,
    /// A number to be typed over: formulas follow it.
    Input,
    /// A number that a formula gives.
    Result,
}

/// One sheet that is being written.
pub struct Page<'b> {
    sheet: &'b mut Worksheet,
}

/// A workbook of these sheets.
pub struct Book(Workbook);

impl Book {
    pub fn new(source: &Source<'_>) -> Result<Book, XlsxError> {
        let mut book = Workbook::new();
        // To the second: `YYYY-MM-DDTHH:MM:SS`.
        let made = ExcelDateTime::parse_from_str(&source.made.as_str()[..19])?;
        let about = DocProperties::new()
            .set_title(source.title())
            .set_creation_datetime(&made);
        book.set_properties(&about);
        Ok(Book(book))
    }

    /// A new sheet with the title and the edition on its first two rows.
    pub fn page(&mut self, name: &str, source: &Source<'_>) -> Result<Page<'_>, XlsxError> {
        let sheet = self.0.add_worksheet();
        sheet.set_name(name)?;
        sheet.set_landscape();
        let mut page = Page { sheet };
        page.text(at(0, 0), &source.title(), Look::Head)?;
        page.text(at(1, 0), &source.edition(), Look::Plain)?;
        Ok(page)
    }

    pub fn bytes(mut self) -> Result<Vec<u8>, XlsxError> {
        self.0.save_to_buffer()
    }
}

pub fn at(row: u32, column: u32) -> Place {
    Place { row, column }
}

/// A cell of another sheet: `'Size chart'!C7`.
pub fn on(sheet: &str, place: Place) -> String {
    format!("'{}'!{place}", sheet.replace('\'', "''"))
}

/// A cell whose column stays when the formula is copied: `$C7`.
pub fn pinned(place: Place) -> String {
    format!("${}{}", column_name(place.column), place.row + 1)
}

/// To the nearest multiple of `step`, half away from zero, as the chart is rounded. The inner
/// rounding takes away the noise of binary arithmetic, which would push an exact half down.
pub fn rounded(value: &str, step: &str) -> String {
    format!("ROUND(ROUND({value}/{step},6),0)*{step}")
}

/// To the multiple of `step` that is not further from zero.
pub fn truncated(value: &str, step: &str) -> String {
    format!("ROUNDDOWN(ROUND({value}/{step},6),0)*{step}")
}

/// How numbers of a unit are shown: fractions of an inch, or decimals.
pub fn shown_as(unit: Unit, step: Option<Length>) -> &'static str {
    match (unit, step) {
        (Unit::Inch, _) => "# ??/??",
        (Unit::Mm, Some(_)) => "0",
        (Unit::Cm, Some(_)) => "0.0",
        (Unit::Cm | Unit::Mm, None) => "General",
    }
}

impl Page<'_> {
    pub fn text(&mut self, place: Place, text: &str, look: Look) -> Result<(), XlsxError> {
        // Always as a text: what begins like a formula is none.
        let (row, column) = (place.row, column(place));
        self.sheet
            .write_string_with_format(row, column, text, &format(look, "@"))?;
        Ok(())
    }

    pub fn number(
        &mut self,
        place: Place,
        value: f64,
        shown: &str,
        look: Look,
    ) -> Result<(), XlsxError> {
        let (row, column) = (place.row, column(place));
        self.sheet
            .write_number_with_format(row, column, value, &format(look, shown))?;
        Ok(())
    }

    /// An input that nothing stands in yet.
    pub fn blank(&mut self, place: Place) -> Result<(), XlsxError> {
        let (row, column) = (place.row, column(place));
        self.sheet
            .write_blank(row, column, &format(Look::Input, "General"))?;
        Ok(())
    }

    /// A formula without its `=`, with the value that it has.
    pub fn formula(
        &mut self,
        place: Place,
        formula: &str,
        value: f64,
        shown: &str,
    ) -> Result<(), XlsxError> {
        let (row, column) = (place.row, column(place));
        let formula = Formula::new(format!("={formula}")).set_result(value.to_string());
        self.sheet
            .write_formula_with_format(row, column, formula, &format(Look::Result, shown))?;
        Ok(())
    }

    /// The heads of the columns, and all above them and the first two columns kept in view.
    pub fn heads(&mut self, row: u32, heads: &[String]) -> Result<(), XlsxError> {
        for (head, column) in heads.iter().zip(0..) {
            self.text(at(row, column), head, Look::Head)?;
        }
        self.sheet.set_freeze_panes(row + 1, 2)?;
        Ok(())
    }

    /// In characters.
    pub fn width(&mut self, column: u16, width: u16) -> Result<(), XlsxError> {
        self.sheet.set_column_width(column, width)?;
        Ok(())
    }
}

fn column(place: Place) -> u16 {
    // Sizes are few; beyond the last column the writer says so.
    u16::try_from(place.column).unwrap_or(u16::MAX)
}

fn format(look: Look, shown: &str) -> Format {
    let format = Format::new()
        .set_num_format(shown)
        .set_align(FormatAlign::Top);
    match look {
        Look::Plain => format,
        Look::Head => format.set_bold().set_text_wrap(),
        Look::Input => format
            .set_background_color(Color::RGB(0xFF_F6_DC))
            .set_border(FormatBorder::Hair),
        Look::Result => format,
    }
}
