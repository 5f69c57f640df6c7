//! Words of the trade beside the brand's own: what stands in a spec stays as it was written, and next
//! to it a reader of another language finds the program's word for what is known of it.
//!
//! Three sources: ready instructions, which are whole sentences; the table of terms (`spec/terms`); and the
//! words of the document's fixed sets (points of measure, materials, fibres ...), which every language has
//! in its files.

use std::sync::OnceLock;

use serde::Serialize;

use crate::exchange::revision::Frozen;
use crate::exchange::translation::{ByLanguage, Translated, Translations, texts};
use crate::spec::Spec;
use crate::spec::book::{Book, Table};
use crate::spec::document::*;
use crate::spec::terms::{Term, shipped};

use super::message::Text;
use super::texts::Language;

/// How many words of one name are explained: a long text would drown in them.
const MOST: usize = 4;

/// Of longer texts a few words explain nothing.
const SHORT: usize = 8;

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
        self.instructed(name)
            .or_else(|| look_up(entries(self.language()), name))
    }

    /// What stands beside words of a revision for this reader: what was frozen with it; of a
    /// revision that kept none, the program's word of today.
    pub fn beside(self, frozen: &Frozen, words: &str) -> Option<Beside> {
        if !frozen.keeps_translations() {
            let text = self.term(words)?;
            return Some(Beside { text, own: false });
        }
        self.beside_in(&frozen.translations, words)
    }

    /// What these translations have beside words for this reader.
    pub fn beside_in(self, translations: &Translations, words: &str) -> Option<Beside> {
        Some(match translations.beside(self.lang(), words)? {
            Translated::Own(text) => Beside {
                text: text.to_owned(),
                own: true,
            },
            Translated::Term(text) => Beside {
                text: text.to_owned(),
                own: false,
            },
        })
    }

    /// A text of a revision, with what stands beside it.
    pub fn worded(self, frozen: &Frozen, words: &str) -> Worded {
        Worded {
            words: words.to_owned(),
            beside: self.beside(frozen, words),
        }
    }
}

/// What stands beside a brand's words in the reader's language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Beside {
    pub text: String,
    /// The brand's own translation; else the program's word.
    pub own: bool,
}

/// A text of the brand's, and what stands beside it in the reader's language.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Worded {
    pub words: String,
    pub beside: Option<Beside>,
}

/// The program's words beside the names and short texts of a spec, by the tables in force, in every
/// language that has such words.
pub fn terms_of(spec: &Spec, book: &Book) -> ByLanguage {
    let corrected = book.corrections.iter().any(|it| it.table == Table::Terms);
    let mut all = ByLanguage::new();
    for language in Language::ALL.iter().filter(|it| it.text().explains()) {
        let made = corrected.then(|| made(*language, &book.terms));
        let entries = made.as_deref().unwrap_or_else(|| entries(*language));
        let of = all.entry(language.tag().to_owned()).or_default();
        for place in texts(spec) {
            let short = place.words.split_whitespace().count() <= SHORT;
            let term = || look_up(entries, &place.words).filter(|_| short);
            let ready = language.text().instructed(&place.words);
            if let Some(text) = ready.or_else(term) {
                of.insert(place.words, text);
            }
        }
    }
    all
}

fn look_up(entries: &[Entry], name: &str) -> Option<String> {
    let words = split(name);
    let mut free = vec![true; words.len()];
    let mut found: Vec<(usize, &Entry)> = Vec::new();
    // The longest are first, so that `hem height` is not taken for `hem`.
    for entry in entries {
        let long = entry.0.len();
        let at = words
            .windows(long)
            .enumerate()
            .find(|(at, window)| *window == entry.0 && free[*at..at + long].iter().all(|it| *it));
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

/// All that a language has a word for by the table that ships.
fn entries(language: Language) -> &'static [Entry] {
    const COUNT: usize = Language::Pseudo as usize + 1;
    static ENTRIES: [OnceLock<Vec<Entry>>; COUNT] = [const { OnceLock::new() }; COUNT];
    ENTRIES[language as usize].get_or_init(|| made(language, shipped()))
}

/// All that a language has a word for, the longest first.
fn made(language: Language, terms: &[Term]) -> Vec<Entry> {
    let rows = terms.iter().filter(|term| term.language == language.tag());
    let (shipped, corrected): (Vec<_>, Vec<_>) = rows.partition(|term| shipped().contains(term));
    let spelled = |terms: Vec<&Term>| -> Vec<Entry> {
        let each = terms.into_iter();
        let each = each.flat_map(|term| {
            let words = term.words.iter();
            words.map(|word| (split(word), term.text.clone()))
        });
        each.collect()
    };
    let (t, original) = (language.text(), Language::ORIGINAL.text());
    let of_sets = words_of_sets().into_iter().map(|(kind, word)| {
        let name = original.word(kind, word).to_string();
        (split(&name), t.word(kind, word).to_string())
    });
    let mut entries: Vec<Entry> = Vec::new();
    // What an owner corrected stands before all; then what the document's sets say, which is the
    // more exact of two that say the same.
    let all = spelled(corrected).into_iter().chain(of_sets);
    for entry in all.chain(spelled(shipped)) {
        if !entries.iter().any(|(words, _)| *words == entry.0) {
            entries.push(entry);
        }
    }
    // Stable: of the same length the first stays first.
    entries.sort_by_key(|(words, _)| std::cmp::Reverse(words.len()));
    entries
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
    // `straight down` is said far more often than the fibre.
    all.retain(|it| *it != (Fibre::KIND, Fibre::Down.word()));
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::Digest;
    use crate::spec::book::Correction;
    use crate::spec::example::half_zip;
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
    fn a_ready_instruction_is_read_whole_and_kept_with_a_revision() {
        let text = "Topstitch 6 mm from the edge. No puckers.";
        let read = "Diễu cách mép 6 mm. Không nhăn.";
        assert_eq!(vi(text).as_deref(), Some(read));
        let mut spec = half_zip(Digest::of(b"front"));
        spec.construction.callouts[0].text = text.to_owned();
        spec.points.points[0].how.note = "Measure with the zip closed.".to_owned();
        let kept = &terms_of(&spec, Book::shipped())["vi"];
        assert_eq!(kept.get(text).map(String::as_str), Some(read));
        assert_eq!(
            kept["Measure with the zip closed."],
            "Đo khi kéo khóa đóng."
        );
    }

    #[test]
    fn what_is_not_known_is_left_alone() {
        assert_eq!(vi("Moonbag 77"), None);
        assert_eq!(vi("Straight down"), None);
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
            let of = terms.iter().filter(|term| term.language == language.tag());
            assert_eq!(of.count(), 49, "{}", language.tag());
        }
        let seen = terms.iter().filter(|it| it.source.status == Status::Seen);
        assert_eq!(seen.count(), 68);
        // Nobody may call a row checked before a native speaker has read it.
        assert!(terms.iter().all(|it| !it.source.is_verified()));
    }
    #[test]
    fn what_an_owner_corrected_is_what_a_revision_keeps() {
        let mut spec = half_zip(Digest::of(b"front"));
        spec.points.points[0].name = "Chest".to_owned();
        spec.points.points[0].how.note =
            "Lay it flat, smooth it out and do not stretch the rib at all".to_owned();
        let kept = |book: &Book| {
            let all = terms_of(&spec, book);
            assert!(!all.contains_key("en"), "the original explains itself");
            all["vi"].clone()
        };
        let shipped = kept(Book::shipped());
        assert_eq!(shipped.get("Chest"), vi("Chest").as_ref());
        // Beside a long text nothing is explained.
        assert_eq!(shipped.get(&spec.points.points[0].how.note), None);
        let correction = Correction {
            table: Table::Terms,
            row: "chest.vi".to_owned(),
            values: vec!["vòng ngực đúng".to_owned()],
            status: Status::Verified,
            on: "2026-11-29".to_owned(),
            source: "A native speaker".to_owned(),
        };
        let book = Book::corrected(vec![correction]).unwrap();
        assert_eq!(kept(&book).get("Chest").unwrap(), "vòng ngực đúng");
    }
}
