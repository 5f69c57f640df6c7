//! A sheet as rows of text cells with addresses: what an import is read from, whatever file it came
//! in.

mod csv;

use std::fmt;

use serde::{Deserialize, Serialize};

pub use csv::{Separator, field, parted_by, read as read_csv};

/// The most that is taken of one file.
pub const MAX_SHEETS: usize = 20;
pub const MAX_ROWS: u32 = 2000;
pub const MAX_COLUMNS: u32 = 100;
/// Cells with something in them, of all sheets together.
pub const MAX_CELLS: usize = 20_000;
/// Characters in one cell.
pub const MAX_TEXT: usize = 1000;

/// One sheet of a file.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sheet {
    /// Empty for a file that is one sheet without a name.
    pub name: String,
    /// From the first row of the sheet on; empty cells at the end of a row and empty rows at the
    /// end are left out.
    pub rows: Vec<Vec<Cell>>,
}

/// What stands in a cell.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Cell {
    #[default]
    #[serde(rename = "e")]
    Empty,
    #[serde(rename = "t")]
    Text(String),
    /// A formula with the value that the sheet's program last worked out.
    #[serde(rename = "f")]
    Formula(String),
    /// A formula that was never worked out.
    Uncomputed,
    /// A date or a time: no value of a spec. Spreadsheets make them of `1/2` and `7-1`.
    Date,
    /// `#REF!` and its like.
    Fault(String),
    /// Part of a merged area, whose text is in the first cell of it, at this place.
    #[serde(rename = "m")]
    Merged(Place),
}

/// Where a cell is: row and column from 0. Shown as spreadsheets do: `C7`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Place {
    pub row: u32,
    pub column: u32,
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", column_name(self.column), u64::from(self.row) + 1)
    }
}

/// `A`, `B` ... `Z`, `AA`: the letters of a column counted from 0.
pub fn column_name(column: u32) -> String {
    super::letters::nth(column as usize)
}

/// Why a file cannot be read as sheets, in terms that a page can explain. Only `Failed` is the
/// program's own fault.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NotASheet {
    #[error("the file is too large, or unpacks to too much")]
    TooLarge,
    #[error("neither XLSX nor text")]
    Unknown,
    /// A sheet in a form that is not read; `what` is its usual ending.
    #[error("{what} is not supported")]
    Unsupported { what: String },
    /// Text in an encoding that cannot be told.
    #[error("the text is neither UTF-8 nor UTF-16")]
    Encoding,
    #[error("more than {MAX_ROWS} rows, more than {MAX_COLUMNS} columns: {place} in {sheet:?}")]
    TooFar { sheet: String, place: Place },
    #[error("more than {MAX_CELLS} cells")]
    TooManyCells,
    #[error("more than {MAX_SHEETS} sheets")]
    TooManySheets,
    #[error("{place} in {sheet:?} holds more than {MAX_TEXT} characters")]
    TooLong { sheet: String, place: Place },
    #[error("there is nothing in it")]
    Nothing,
    #[error("it takes too much time or memory to read")]
    TooHeavy,
    #[error("the file is damaged")]
    Broken,
    #[error("the child failed: {why}")]
    Failed { why: String },
}

impl Sheet {
    pub fn new(name: impl Into<String>) -> Sheet {
        Sheet {
            name: name.into(),
            rows: Vec::new(),
        }
    }

    /// The cell at a place; empty beyond the end.
    pub fn at(&self, place: Place) -> &Cell {
        let row = self.rows.get(place.row as usize);
        row.and_then(|row| row.get(place.column as usize))
            .unwrap_or(&Cell::Empty)
    }

    /// Puts a cell in its place. Errors: `TooFar` and `TooLong` by the limits of this module.
    pub fn put(&mut self, place: Place, cell: Cell) -> Result<(), NotASheet> {
        let far = place.row >= MAX_ROWS || place.column >= MAX_COLUMNS;
        if far {
            let sheet = self.name.clone();
            return Err(NotASheet::TooFar { sheet, place });
        }
        if cell
            .text()
            .is_some_and(|text| text.chars().count() > MAX_TEXT)
        {
            let sheet = self.name.clone();
            return Err(NotASheet::TooLong { sheet, place });
        }
        let (row, column) = (place.row as usize, place.column as usize);
        if self.rows.len() <= row {
            self.rows.resize(row + 1, Vec::new());
        }
        let row = &mut self.rows[row];
        if row.len() <= column {
            row.resize(column + 1, Cell::Empty);
        }
        row[column] = cell;
        Ok(())
    }

    /// Whether it keeps to the limits: one that comes back from a form may not.
    pub fn fits(&self) -> bool {
        let widest = self.rows.iter().map(Vec::len).max().unwrap_or_default();
        self.rows.len() <= MAX_ROWS as usize
            && widest <= MAX_COLUMNS as usize
            && self.cells().count() <= MAX_CELLS
            && self.cells().all(|(_, cell)| {
                let text = cell.text().unwrap_or_default();
                text.chars().count() <= MAX_TEXT && !text.contains('\0')
            })
    }

    /// The cells with something in them, row by row.
    pub fn cells(&self) -> impl Iterator<Item = (Place, &Cell)> {
        let rows = (0_u32..).zip(&self.rows);
        let cells = rows.flat_map(|(row, cells)| {
            let cells = (0_u32..).zip(cells);
            cells.map(move |(column, cell)| (Place { row, column }, cell))
        });
        cells.filter(|(_, cell)| **cell != Cell::Empty)
    }

    pub fn is_empty(&self) -> bool {
        self.cells().next().is_none()
    }

    /// How many columns have something in them.
    pub fn width(&self) -> u32 {
        let widest = self.cells().map(|(place, _)| place.column + 1).max();
        widest.unwrap_or_default()
    }
}

impl Cell {
    /// Text without the space around it; an empty one is no cell.
    pub fn of_text(text: &str) -> Cell {
        match text.trim() {
            "" => Cell::Empty,
            text => Cell::Text(text.to_owned()),
        }
    }

    /// What can be read of it.
    pub fn text(&self) -> Option<&str> {
        match self {
            Cell::Text(text) | Cell::Formula(text) => Some(text),
            _ => None,
        }
    }

    /// What a person sees in it.
    pub fn shown(&self) -> &str {
        match self {
            Cell::Text(text) | Cell::Formula(text) | Cell::Fault(text) => text,
            Cell::Empty | Cell::Uncomputed | Cell::Date | Cell::Merged(_) => "",
        }
    }
}

/// A number of a sheet in the digits that a spreadsheet shows of it: fifteen, for the sixteenth is
/// noise of binary arithmetic. Three decimals get a fourth, since 1.250 may be read as thousands.
///
/// Nothing for what is no number of a garment: infinite, or beyond fifteen digits.
pub fn number(value: f64) -> Option<String> {
    if !value.is_finite() || value.abs() >= 1e15 {
        return None;
    }
    if value.abs() < 1e-9 {
        return Some("0".to_owned());
    }
    let whole = value.abs().log10().floor() as i32 + 1;
    let decimals = usize::try_from((15 - whole).clamp(0, 15)).unwrap_or_default();
    let text = format!("{value:.decimals$}");
    if !text.contains('.') {
        return Some(text);
    }
    let text = text.trim_end_matches('0').trim_end_matches('.');
    let behind = text.split_once('.').map_or(0, |(_, rest)| rest.len());
    Some(match behind {
        3 => format!("{text}0"),
        _ => text.to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_are_named_as_in_spreadsheets() {
        let name = |row, column| Place { row, column }.to_string();
        assert_eq!(name(6, 2), "C7");
        assert_eq!(name(0, 26), "AA1");
        assert_eq!(name(1_048_575, 16_383), "XFD1048576");
    }

    #[test]
    fn numbers_lose_the_noise_of_binary_arithmetic() {
        for (value, text) in [
            (28.1, "28.1"),
            (0.1 + 0.2, "0.3"),
            (28.125, "28.1250"),
            (1250.0, "1250"),
            (-0.5, "-0.5"),
            (0.0, "0"),
            (1.0 / 3.0, "0.333333333333333"),
            (0.0625, "0.0625"),
        ] {
            assert_eq!(number(value).as_deref(), Some(text));
        }
        assert_eq!(number(f64::NAN), None);
        assert_eq!(number(1e300), None);
    }

    #[test]
    fn a_sheet_has_an_end() {
        let mut sheet = Sheet::new("chart");
        let far = Place {
            row: MAX_ROWS,
            column: 2,
        };
        let text = || Cell::of_text("x");
        assert!(
            matches!(sheet.put(far, text()), Err(NotASheet::TooFar { place, .. }) if place == far)
        );
        let long = Cell::Text("x".repeat(MAX_TEXT + 1));
        let place = Place { row: 6, column: 2 };
        assert!(matches!(
            sheet.put(place, long),
            Err(NotASheet::TooLong { .. })
        ));
        assert!(sheet.is_empty());
        sheet.put(place, text()).unwrap();
        assert_eq!((sheet.at(place), sheet.width()), (&text(), 3));
        assert_eq!(sheet.at(far), &Cell::Empty);
        assert!(sheet.fits());
    }
}
