//! Wordings of how a point is measured: those that come with the program, to begin with. A brand
//! keeps its own beside them. A point takes a copy, so a wording that changes later changes no spec.

use super::document::HowToMeasure;
use super::table::{Source, TableError, rows, word};

/// How something is measured, under a name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wording {
    pub name: String,
    pub how: HowToMeasure,
}

/// The wordings of the program. Common practice, no source: whoever shows them says so.
///
/// Panics on a table that a test would not have let through.
pub fn shipped() -> Vec<Wording> {
    read(include_str!("data/wordings.csv")).expect("a test reads the table")
}

fn read(text: &str) -> Result<Vec<Wording>, TableError> {
    rows("wordings", text, |row: [&str; 10]| {
        let [
            name,
            start,
            end,
            path,
            stretched,
            closure,
            side,
            note,
            status,
            on,
        ] = row;
        Source::read(status, on)?;
        let how = HowToMeasure {
            start: start.to_owned(),
            end: end.to_owned(),
            path: filled(path).map(word).transpose()?,
            stretched: !stretched.is_empty(),
            closure: filled(closure).map(word).transpose()?,
            side: filled(side).map(word).transpose()?,
            note: note.to_owned(),
        };
        let name = name.to_owned();
        Ok(Wording { name, how })
    })
}

fn filled(text: &str) -> Option<&str> {
    (!text.is_empty()).then_some(text)
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use super::*;
    use crate::spec::document::Path;

    #[test]
    fn every_wording_says_where_it_begins_and_ends_under_a_name_of_its_own() {
        let all = shipped();
        assert!(all.len() > 30, "{}", all.len());
        let names: HashSet<String> = all.iter().map(|it| it.name.to_lowercase()).collect();
        assert_eq!(names.len(), all.len());
        for Wording { name, how } in &all {
            assert!(
                !name.is_empty() && !how.start.is_empty() && !how.end.is_empty(),
                "{name}"
            );
            assert_ne!(how.start, how.end, "{name}");
            assert!(how.path.is_some(), "{name}");
            // What is pulled says how far.
            assert!(!how.stretched || !how.note.is_empty(), "{name}");
        }
    }

    #[test]
    fn the_columns_are_where_they_belong() {
        let all = shipped();
        let found = |name: &str| all.iter().find(|it| it.name == name).unwrap().how.clone();
        assert_eq!(found("Front rise").path, Some(Path::Curved));
        assert!(found("Waist stretched").stretched && !found("Waist relaxed").stretched);
        let wrong = read("head\na,b,c,bent,,,,,from_memory,2026-11-29\n").unwrap_err();
        assert!(wrong.to_string().contains("no path `bent`"), "{wrong}");
    }
}
