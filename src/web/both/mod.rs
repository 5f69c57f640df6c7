//! Pages that both sides look at: each side sees its own part of the same page.

pub mod approvals;
pub mod archive;
pub mod change_lines;
pub mod changes;
pub mod export;
pub mod files;
pub mod inspection;
pub mod measure;
pub mod round;
pub mod seal;
pub mod sealing;
pub mod sign_box;
pub mod item;
mod later;
pub mod ledger;
pub mod live;
pub mod now;
pub mod patch;
pub mod print;
pub mod ready;
pub mod reading;
pub mod readings;
pub mod record;
pub mod revision;
pub mod sheet;
pub mod sign;
pub mod style;
pub mod threads;

use super::problem::Problem;

/// A number of an address: a revision's or a round's.
fn number(text: &str) -> Result<u32, Problem> {
    text.parse().map_err(|_| Problem::NotFound)
}

/// A style number as a part of a file's name that every machine takes.
fn plain(number: &str) -> String {
    let plain = number.chars().map(|c| match c {
        'a'..='z' | 'A'..='Z' | '0'..='9' | '-' | '_' => c,
        _ => '_',
    });
    plain.collect()
}
