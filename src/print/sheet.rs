//! The size chart and the list of materials as XLSX with live formulas, and as CSV.
//!
//! Every formula carries the value that the program itself has: what is shown before anything is
//! worked out again is the chart. Where the formula would not give that value, the value stands
//! there alone.
//!
//! CSV begins with a byte order mark: without one, spreadsheets take UTF-8 for the machine's old
//! code page and spoil ½ and ä. Values are parted by a comma, or by a semicolon where the decimal
//! sign is a comma, as spreadsheets of such places expect. A text that a spreadsheet would take for
//! a formula gets an apostrophe before it (see [`crate::spec::sheet::field`]).

mod book;
mod chart;
mod materials;

use crate::language::Text;
use crate::spec::chart::Chart;
use crate::spec::document::Size;
use crate::spec::sheet::{Separator, field};
use crate::spec::{DecimalSign, Length, Spec, Time, Unit};

pub use chart::{csv as chart_csv, xlsx as chart_xlsx};
pub use materials::{csv as materials_csv, xlsx as materials_xlsx};
pub use rust_xlsxwriter::XlsxError;

/// What is printed: a revision as it was frozen, or a draft.
#[derive(Debug, Clone, Copy)]
pub struct Source<'a> {
    pub t: Text,
    pub spec: &'a Spec,
    /// The frozen chart, or the draft's as far as there is one.
    pub chart: Option<&'a Chart>,
    pub sign: DecimalSign,
    /// The revision's number; nothing for a draft.
    pub revision: Option<u32>,
    /// When the revision was published, or the draft was read.
    pub made: &'a Time,
}

impl<'a> Source<'a> {
    fn sizes(&self) -> &'a [Size] {
        &self.spec.sizes.sizes
    }

    fn unit(&self) -> Unit {
        self.spec.header.unit.unwrap_or(Unit::Cm)
    }

    fn base_at(&self) -> Option<usize> {
        let base = self.spec.header.base_size.as_ref();
        self.sizes().iter().position(|size| Some(&size.id) == base)
    }

    /// `HT-204 Shoal half-zip`.
    fn title(&self) -> String {
        let header = &self.spec.header;
        format!("{} {}", header.number, header.name)
            .trim()
            .to_owned()
    }

    /// Which edition it is, in which unit and state it is measured, and its base size.
    fn edition(&self) -> String {
        let t = self.t;
        let edition = match self.revision {
            Some(number) => t.say("revision-number").with("revision", number),
            None => t.say("sheet-draft"),
        };
        let mut parts = vec![
            edition.to_string(),
            self.made.date().to_owned(),
            t.name(&self.unit()).to_string(),
        ];
        if let Some(state) = &self.spec.header.measured {
            parts.push(t.name(state).to_string());
        }
        if let Some(at) = self.base_at() {
            let base = t.say("sheet-base").with("size", &self.sizes()[at].code);
            parts.push(base.to_string());
        }
        parts.join(" · ")
    }

    fn separator(&self) -> Separator {
        match self.sign {
            DecimalSign::Point => Separator::Comma,
            DecimalSign::Comma => Separator::Semicolon,
        }
    }

    /// Rows of text as a CSV file.
    fn csv(&self, rows: &[Vec<String>]) -> Vec<u8> {
        let separator = self.separator();
        let mut text = "\u{feff}".to_owned();
        for row in rows {
            let fields: Vec<String> = row.iter().map(|value| field(value, separator)).collect();
            text += &fields.join(&separator.sign().to_string());
            text += "\r\n";
        }
        text.into_bytes()
    }

    /// A number in the digits of a spreadsheet, with the decimal sign of this edition.
    fn number(&self, value: f64) -> String {
        let text = crate::spec::sheet::number(value).unwrap_or_default();
        text.replace('.', &self.sign.sign().to_string())
    }
}

/// A length as the number that a spreadsheet holds of it.
fn number_in(length: Length, unit: Unit) -> f64 {
    // Both are whole numbers below 2^53: the quotient is the nearest number there is.
    length.as_nm() as f64 / unit.nanometres() as f64
}

/// A head with its unit: `Tolerance − (cm)`.
fn with_unit(head: impl ToString, unit: Unit) -> String {
    format!("{} ({})", head.to_string(), unit.symbol())
}

#[cfg(test)]
mod tests;
