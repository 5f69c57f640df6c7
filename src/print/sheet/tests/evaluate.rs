//! Works out the formulas that our sheets use: numbers, cells, + - * /, ROUND, ROUNDDOWN and
//! SUMPRODUCT. Knows nothing of how they were written.

use std::collections::BTreeMap;
use std::io::Cursor;

use calamine::{Data, DataType, Reader, Xlsx};

use crate::spec::sheet::Place;

type Key = (String, Place);

pub struct Workbook {
    values: BTreeMap<Key, Data>,
    formulas: BTreeMap<Key, String>,
    typed: BTreeMap<Key, f64>,
}

impl Workbook {
    pub fn read(bytes: Vec<u8>) -> Workbook {
        let mut book: Xlsx<_> = Xlsx::new(Cursor::new(bytes)).unwrap();
        let (mut values, mut formulas) = (BTreeMap::new(), BTreeMap::new());
        for name in book.sheet_names() {
            let mut cells = book.worksheet_cells_reader(&name).unwrap();
            while let Some(cell) = cells.next_cell_with_formula().unwrap() {
                let (row, column) = cell.pos;
                let key = (name.clone(), Place { row, column });
                values.insert(key.clone(), cell.value.into());
                formulas.extend(cell.formula.map(|formula| (key, formula)));
            }
        }
        Workbook {
            values,
            formulas,
            typed: BTreeMap::new(),
        }
    }

    pub fn data(&self, sheet: &str, row: u32, column: u32) -> Option<&Data> {
        self.values.get(&(sheet.to_owned(), Place { row, column }))
    }

    /// The number that stands in the file.
    pub fn cached(&self, sheet: &str, row: u32, column: u32) -> f64 {
        let data = self.data(sheet, row, column);
        let number = data.and_then(DataType::as_f64);
        number.unwrap_or_else(|| panic!("{sheet} {}: {data:?}", Place { row, column }))
    }

    pub fn formula(&self, sheet: &str, row: u32, column: u32) -> Option<&str> {
        let found = self
            .formulas
            .get(&(sheet.to_owned(), Place { row, column }));
        found.map(String::as_str)
    }

    pub fn formulas(&self) -> Vec<Key> {
        self.formulas.keys().cloned().collect()
    }

    /// The row with this text in the column.
    pub fn row(&self, sheet: &str, column: u32, text: &str) -> Option<u32> {
        let mut cells = self.values.iter();
        let found = cells.find(|((name, place), data)| {
            name == sheet && place.column == column && data.get_string() == Some(text)
        });
        found.map(|((_, place), _)| place.row)
    }

    /// Writes a number over whatever stood there.
    pub fn type_over(&mut self, sheet: &str, place: Place, value: f64) {
        self.typed.insert((sheet.to_owned(), place), value);
    }

    /// What the cell comes to, whatever stands cached in it.
    pub fn value(&self, sheet: &str, place: Place) -> f64 {
        let key = (sheet.to_owned(), place);
        if let Some(typed) = self.typed.get(&key) {
            return *typed;
        }
        if let Some(formula) = self.formulas.get(&key) {
            let mut parser = Parser {
                book: self,
                sheet,
                rest: formula,
            };
            let value = parser.sum();
            assert_eq!(parser.rest, "", "{sheet} {place}: {formula}");
            return value;
        }
        let data = self.values.get(&key);
        data.and_then(DataType::as_f64).unwrap_or_default()
    }
}

struct Parser<'a> {
    book: &'a Workbook,
    sheet: &'a str,
    rest: &'a str,
}

impl<'a> Parser<'a> {
    fn takes(&mut self, sign: &str) -> bool {
        let rest = self.rest.strip_prefix(sign);
        self.rest = rest.unwrap_or(self.rest);
        rest.is_some()
    }

    fn sum(&mut self) -> f64 {
        let mut value = self.product();
        loop {
            if self.takes("+") {
                value += self.product();
            } else if self.takes("-") {
                value -= self.product();
            } else {
                return value;
            }
        }
    }

    fn product(&mut self) -> f64 {
        let mut value = self.factor();
        loop {
            if self.takes("*") {
                value *= self.factor();
            } else if self.takes("/") {
                value /= self.factor();
            } else {
                return value;
            }
        }
    }

    fn factor(&mut self) -> f64 {
        if self.takes("ROUND(") {
            let (value, scale) = self.rounding();
            return (value * scale).round() / scale;
        }
        if self.takes("ROUNDDOWN(") {
            let (value, scale) = self.rounding();
            return (value * scale).trunc() / scale;
        }
        if self.takes("SUMPRODUCT(") {
            let one = self.range();
            assert!(self.takes(","));
            let other = self.range();
            assert!(self.takes(")"));
            return one.into_iter().zip(other).map(|(a, b)| a * b).sum();
        }
        if self.takes("(") {
            let value = self.sum();
            assert!(self.takes(")"));
            return value;
        }
        if self.rest.starts_with(|c: char| c.is_ascii_digit()) {
            let end = self.rest.find(|c: char| !c.is_ascii_digit() && c != '.');
            let (number, rest) = self.rest.split_at(end.unwrap_or(self.rest.len()));
            self.rest = rest;
            return number.parse().unwrap();
        }
        let (sheet, place) = self.cell();
        self.book.value(sheet, place)
    }

    fn rounding(&mut self) -> (f64, f64) {
        let value = self.sum();
        assert!(self.takes(","));
        let digits = self.sum();
        assert!(self.takes(")"));
        (value, 10_f64.powf(digits))
    }

    fn range(&mut self) -> Vec<f64> {
        let (sheet, first) = self.cell();
        assert!(self.takes(":"));
        let (_, last) = self.cell();
        assert_eq!(first.row, last.row);
        let columns = first.column..=last.column;
        columns
            .map(|column| self.book.value(sheet, Place { column, ..first }))
            .collect()
    }

    fn cell(&mut self) -> (&'a str, Place) {
        let mut sheet = self.sheet;
        if self.takes("'") {
            let (name, rest) = self.rest.split_once("'!").expect("a sheet's name");
            (sheet, self.rest) = (name, rest);
        }
        self.takes("$");
        let end = self
            .rest
            .find(|c: char| !c.is_ascii_uppercase())
            .expect("a row");
        let (letters, rest) = self.rest.split_at(end);
        self.rest = rest;
        self.takes("$");
        let end = self.rest.find(|c: char| !c.is_ascii_digit());
        let (digits, rest) = self.rest.split_at(end.unwrap_or(self.rest.len()));
        self.rest = rest;
        let column = letters
            .bytes()
            .fold(0, |sum, c| sum * 26 + u32::from(c - b'A') + 1)
            - 1;
        let row: u32 = digits.parse().expect("a row");
        (
            sheet,
            Place {
                row: row - 1,
                column,
            },
        )
    }
}
