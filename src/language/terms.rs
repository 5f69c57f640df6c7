//! Words of the trade beside the brand's own: what stands in a spec stays as it was written, and next
//! to it a reader of another language finds the program's word for what is known of it.
//!
//! Two sources: the table `data/terms.csv`, and the words of the document's fixed sets (points of
//! measure, materials, fibres ...), which every language has in its files.

use std::sync::OnceLock;

use crate::spec::document::*;
use crate::spec::table::{self, Source, TableError};

use super::message::Text;
use super::texts::Language;

/// How many words of one name are explained: a long text would drown in them.
const MOST: usize = 4;

/// One row of the table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Term {
    /// The English spellings.
    pub words: Vec<String>,
    pub language: Language,
    pub text: String,
    /// How far it was checked.
    pub source: Source,
}

/// Reads a table of terms: columns `term,language,text,status,on`.
pub fn terms(text: &str) -> Result<Vec<Term>, TableError> {
    table::rows("terms", text, |[words, language, text, status, on]| {
        Ok(Term {
            words: words.split('/').map(str::to_owned).collect(),
            language: Language::from_tag(language)
                .ok_or_else(|| format!("no language `{language}`"))?,
            text: text.to_owned(),
            source: Source::read(status, on)?,
        })
    })
}

/// The table that ships with the program.
pub fn shipped() -> &'static [Term] {
    static TERMS: OnceLock<Vec<Term>> = OnceLock::new();
    TERMS.get_or_init(|| terms(include_str!("data/terms.csv")).expect("tested"))
}

/// What is looked for in a name, as its words in small letters, and what to say of it.
type Entry = (Vec<String>, String);

impl Text {
    /// Whether names have the program's words beside them for this reader.
    pub fn explains(self) -> bool {
        !matches!(self.language(), Language::ORIGINAL | Language::Pseudo)
    }

    /// The program's words, in the reader's language, for what it knows of a name that the brand
    /// wrote: the translation alone where it stands for the whole name, else each with the words
    /// that it stands for. `None` for readers of the original and for names without a known word.
    pub fn term(self, name: &str) -> Option<String> {
        if !self.explains() {
            return None;
        }
        let words = split(name);
        let mut free = vec![true; words.len()];
        let mut found: Vec<(usize, &Entry)> = Vec::new();
        // The longest are first, so that `hem height` is not taken for `hem`.
        for entry in entries(self.language()) {
            let long = entry.0.len();
            let at = words.windows(long).enumerate().find(|(at, window)| {
                *window == entry.0 && free[*at..at + long].iter().all(|it| *it)
            });
            if let Some((at, _)) = at {
                free[at..at + long].fill(false);
                found.push((at, entry));
            }
        }
        found.sort_by_key(|(at, _)| *at);
        if let [(_, (of, text))] = &found[..]
            && of.len() == words.len()
        {
            return Some(text.clone());
        }
        let each = found.iter().take(MOST);
        let each = each.map(|(_, (of, text))| format!("{}: {text}", of.join(" ")));
        let each: Vec<String> = each.collect();
        (!each.is_empty()).then(|| each.join(" · "))
    }
}

/// The words of a name as they are compared: in small letters and without the s of a plural.
fn split(name: &str) -> Vec<String> {
    let words = name.split(|letter: char| !letter.is_alphanumeric());
    let words = words.filter(|word| !word.is_empty());
    words
        .map(|word| {
            let word = word.to_lowercase();
            match word.strip_suffix('s') {
                Some(one) if one.len() > 2 && !one.ends_with('s') => one.to_owned(),
                _ => word,
            }
        })
        .collect()
}

/// All that a language has a word for, the longest first.
fn entries(language: Language) -> &'static [Entry] {
    const COUNT: usize = Language::Pseudo as usize + 1;
    static ENTRIES: [OnceLock<Vec<Entry>>; COUNT] = [const { OnceLock::new() }; COUNT];
    ENTRIES[language as usize].get_or_init(|| {
        let rows = shipped().iter().filter(|term| term.language == language);
        let rows = rows.flat_map(|term| {
            let words = term.words.iter();
            words.map(|word| (split(word), term.text.clone()))
        });
        let (t, original) = (language.text(), Language::ORIGINAL.text());
        let of_sets = words_of_sets().into_iter().map(|(kind, word)| {
            let name = original.word(kind, word).to_string();
            (split(&name), t.word(kind, word).to_string())
        });
        let mut entries: Vec<Entry> = Vec::new();
        // What the document's sets say is the more exact; of two that say the same it stands.
        for entry in of_sets.chain(rows) {
            if !entries.iter().any(|(words, _)| *words == entry.0) {
                entries.push(entry);
            }
        }
        // Stable: of the same length the first stays first.
        entries.sort_by_key(|(words, _)| std::cmp::Reverse(words.len()));
        entries
    })
}

/// The sets whose words also stand in names that people type; *other* is no word for a thing.
fn words_of_sets() -> Vec<(&'static str, &'static str)> {
    let mut all = Vec::new();
    macro_rules! sets {
        ($($set:ident)*) => {
            $(all.extend($set::ALL.iter().map(|it| ($set::KIND, it.word())));)*
        };
    }
    sets! { Measure MaterialKind Component Fibre GarmentKind LineKind ArtworkMethod }
    all.retain(|(_, word)| !word.starts_with("other"));
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::table::Status;

    fn vi(name: &str) -> Option<String> {
        Language::Vietnamese.text().term(name)
    }

    #[test]
    fn a_whole_name_has_its_word_alone() {
        assert_eq!(vi("Inseam").as_deref(), Some("Giàng trong"));
        assert_eq!(vi("SLEEVE LENGTH").as_deref(), Some("Dài tay"));
        assert_eq!(vi("Pockets").as_deref(), Some("túi"));
    }

    #[test]
    fn a_part_of_a_name_is_named() {
        assert_eq!(
            vi("Sleeve length from centre back").as_deref(),
            Some("sleeve length: Dài tay · centre back: giữa sau")
        );
        assert_eq!(
            vi("Waist, half, at the hem").as_deref(),
            Some("waist: Eo · hem: lai (gấu)")
        );
    }

    #[test]
    fn the_longest_wins_and_nothing_is_said_twice() {
        assert_eq!(vi("Hem height").as_deref(), Some("Cao lai"));
        assert_eq!(
            vi("Zip tape").as_deref(),
            Some("zip: Dây kéo · tape: Dây viền")
        );
    }

    #[test]
    fn what_is_not_known_is_left_alone() {
        assert_eq!(vi("Moonbag 77"), None);
        assert_eq!(vi(""), None);
        assert_eq!(Language::English.text().term("Waist"), None);
    }

    #[test]
    fn a_long_text_is_not_drowned() {
        let text = vi("collar hood pocket lining label fabric size").expect("words are known");
        assert_eq!(text.matches(" · ").count(), MOST - 1);
    }

    #[test]
    fn every_term_is_there_in_every_language_and_none_is_verified() {
        let terms = shipped();
        for language in Language::ALL.iter().filter(|it| **it != Language::ORIGINAL) {
            let of = terms.iter().filter(|term| term.language == *language);
            assert_eq!(of.count(), 49, "{}", language.tag());
        }
        let seen = terms.iter().filter(|it| it.source.status == Status::Seen);
        assert_eq!(seen.count(), 68);
        // Nobody may call a row checked before a native speaker has read it.
        assert!(terms.iter().all(|it| !it.source.is_verified()));
    }

    #[test]
    fn an_edited_table_is_refused_with_its_line() {
        let head = "term,language,text,status,on\n";
        let wrong = |row: &str| terms(&format!("{head}{row}")).unwrap_err().what;
        assert_eq!(wrong("waist,xx,eo,seen,2026-11-25"), "no language `xx`");
        assert_eq!(wrong("waist,vi,eo,sure,2026-11-25"), "no status `sure`");
    }
}
