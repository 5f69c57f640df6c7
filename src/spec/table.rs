//! Data that ships with the program: each row says how far it was checked and when, so that a page
//! can say so too, and an installation can put a better table in its place.

use serde::Deserialize;

use super::document::{Word, words};

words! {
    /// How far a row was checked.
    Status "status" {
        /// Against a published copy or a published list.
        Verified "verified",
        /// Met in use or second hand: on labels, in shops, in a note. Not in the official text.
        Seen "seen",
        /// Written down from memory.
        FromMemory "from_memory",
    }
}

/// How far a row was checked, and when it was written.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(try_from = "Written")]
pub struct Source {
    pub status: Status,
    /// As `YYYY-MM-DD`.
    pub on: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    status: Status,
    on: String,
}

/// What is wrong with a table that somebody has edited.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{table}, line {line}: {what}")]
pub struct TableError {
    pub table: &'static str,
    /// From 1; of JSON, where it stopped making sense.
    pub line: usize,
    pub what: String,
}

impl Source {
    pub fn is_verified(&self) -> bool {
        self.status == Status::Verified
    }

    pub(crate) fn read(status: &str, on: &str) -> Result<Self, String> {
        let (status, on) = (word(status)?, on.to_owned());
        Written { status, on }.try_into()
    }
}

impl TryFrom<Written> for Source {
    type Error = String;

    fn try_from(Written { status, on }: Written) -> Result<Self, String> {
        let parts: Vec<&str> = on.split('-').collect();
        let all_digits = parts
            .iter()
            .all(|it| it.bytes().all(|digit| digit.is_ascii_digit()));
        let is_date = all_digits && parts.iter().map(|it| it.len()).eq([4, 2, 2]);
        if !is_date {
            return Err(format!("no date `{on}`"));
        }
        Ok(Self { status, on })
    }
}

/// Reads each row of `N` columns separated by commas, none of which can hold one. Lines of `#` are
/// remarks; the first other line names the columns.
pub(crate) fn rows<T, const N: usize>(
    table: &'static str,
    text: &str,
    mut read: impl FnMut([&str; N]) -> Result<T, String>,
) -> Result<Vec<T>, TableError> {
    let lines = (1..).zip(text.lines());
    let rows = lines.filter(|(_, line)| !line.starts_with('#') && !line.trim().is_empty());
    rows.skip(1)
        .map(|(line, row)| {
            let columns: Vec<&str> = row.split(',').map(str::trim).collect();
            let count = columns.len();
            let columns = columns
                .try_into()
                .map_err(|_| format!("{count} columns, not {N}"));
            columns
                .and_then(&mut read)
                .map_err(|what| TableError { table, line, what })
        })
        .collect()
}

/// One of a fixed set by its name in a table.
pub(super) fn word<W: Word>(text: &str) -> Result<W, String> {
    W::from_word(text).ok_or_else(|| format!("no {} `{text}`", W::KIND))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_edited_table_is_refused_with_its_line() {
        let read = |text: &str| {
            rows("fibres", text, |[name, status, on]| {
                Ok((name.to_owned(), Source::read(status, on)?))
            })
        };
        let fine = read("# A remark.\nname,status,on\nlã,seen,2026-11-25\n\n").unwrap();
        assert_eq!(fine[0].0, "lã");
        assert_eq!(fine[0].1.status, Status::Seen);
        assert!(!fine[0].1.is_verified());
        for (row, what) in [
            ("wool,verified", "2 columns, not 3"),
            ("wool,true,2026-11-25", "no status `true`"),
            ("wool,verified,25.11.2026", "no date `25.11.2026`"),
            ("wool,verified,2026-11", "no date `2026-11`"),
        ] {
            let wrong = read(&format!("name,status,on\n# A remark.\n{row}\n")).unwrap_err();
            assert_eq!(wrong.to_string(), format!("fibres, line 3: {what}"));
        }
    }
}
