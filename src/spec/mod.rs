//! The garment document and its arithmetic. Pure: no I/O, no clock, no async, no SQL.

pub mod body;
pub mod canon;
pub mod care;
pub mod change;
pub mod chart;
pub mod check;
pub mod colour;
pub mod composition;
pub mod decimal;
pub mod document;
pub mod dyeing;
pub mod example;
pub mod fabric;
pub mod id;
pub mod import;
pub mod item;
pub mod letters;
pub mod merge;
pub mod number_scheme;
pub mod rule;
pub mod safety;
pub mod schema;
pub mod sheet;
pub mod stitch;
pub mod table;
pub mod units;

pub use canon::{CanonError, from_canonical, nfc, to_canonical};
pub use change::{Change, changes};
pub use chart::{Chart, Graded, grade, grade_point};
pub use check::{Finding, check};
pub use decimal::Decimal;
pub use document::{Section, Spec};
pub use id::*;
pub use item::Item;
pub use number_scheme::NumberScheme;
pub use units::{DecimalSign, Entered, Length, NotALength, Unit};
