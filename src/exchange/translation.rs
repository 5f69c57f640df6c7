//! What stands beside the brand's words in other languages. A revision freezes it: what a reader was
//! shown is hashed with what it explains, and the original rules.
//!
//! A translation is of words, not of the place where they stand: it holds wherever they stand, and
//! none is left beside words that were changed.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use crate::spec::document::{Fields, Value};
use crate::spec::{ItemId, Section, Spec};

/// By language, as a BCP 47 tag, and then by the words that are translated.
pub type ByLanguage = BTreeMap<String, BTreeMap<String, String>>;

/// The translations of one spec.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Translations {
    /// What the brand had translated.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    own: ByLanguage,
    /// The program's words of the trade.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    terms: ByLanguage,
}

/// What stands beside some words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Translated<'a> {
    /// The brand's own translation.
    Own(&'a str),
    /// The program's.
    Term(&'a str),
}

impl Translations {
    /// Of what the brand had translated, what is of no text of this spec is left out.
    pub fn new(spec: &Spec, own: &ByLanguage, terms: ByLanguage) -> Self {
        let texts: BTreeSet<String> = texts(spec).into_iter().map(|it| it.words).collect();
        let mut own = own.clone();
        for translated in own.values_mut() {
            translated.retain(|words, _| texts.contains(words));
        }
        let mut kept = Self { own, terms };
        for all in [&mut kept.own, &mut kept.terms] {
            all.retain(|_, translated| !translated.is_empty());
        }
        kept
    }

    pub fn is_empty(&self) -> bool {
        self.own.is_empty() && self.terms.is_empty()
    }

    /// What stands beside these words in a language: the brand's own before the program's.
    pub fn beside(&self, language: &str, words: &str) -> Option<Translated<'_>> {
        let own = self.own.get(language).and_then(|all| all.get(words));
        let term = self.terms.get(language).and_then(|all| all.get(words));
        match (own, term) {
            (Some(own), _) => Some(Translated::Own(own)),
            (None, term) => term.map(|term| Translated::Term(term)),
        }
    }
}

/// A text of the brand's that a reader of another language may need translated.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Place {
    pub section: Section,
    /// Nothing for a field of the section itself.
    pub item: Option<ItemId>,
    /// The field of the document: `name`, `how.start`.
    pub field: String,
    pub words: String,
}

/// Codes, names of companies and what is printed as it stands: nobody translates them.
const AS_THEY_ARE: [&str; 12] = [
    "letter",
    "code",
    "number",
    "season",
    "origin",
    "supplier",
    "reference",
    "stitch",
    "seam_code",
    "report",
    "date",
    "language",
];

/// Every text that may need a translation, each once, where it stands first.
pub fn texts(spec: &Spec) -> Vec<Place> {
    let mut seen = BTreeSet::new();
    let mut places = Vec::new();
    let mut take = |section, item: Option<&ItemId>, fields: Fields| {
        for (field, value) in fields {
            let Value::Text(words) = value else {
                continue;
            };
            if is_translated(section, item, &field, &words) && seen.insert(words.clone()) {
                places.push(Place {
                    section,
                    item: item.cloned(),
                    field: field.into_owned(),
                    words,
                });
            }
        }
    };
    for section in Section::ALL.iter().copied() {
        take(section, None, spec.fields(section));
        for item in spec.items().filter(|item| item.section() == section) {
            take(section, Some(item.id()), item.fields());
        }
    }
    places
}

fn is_translated(section: Section, item: Option<&ItemId>, field: &str, words: &str) -> bool {
    let last = field.rsplit('.').next().unwrap_or(field);
    // The style's own name is a name.
    let name_of_style = section == Section::Header && item.is_none() && field == "name";
    !name_of_style && !AS_THEY_ARE.contains(&last) && words.contains(char::is_alphabetic)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::Digest;
    use crate::spec::example::half_zip;

    fn by_language(all: &[(&str, &str, &str)]) -> ByLanguage {
        let mut found = ByLanguage::new();
        for (language, words, text) in all {
            let of = found.entry((*language).to_owned()).or_default();
            of.insert((*words).to_owned(), (*text).to_owned());
        }
        found
    }

    #[test]
    fn the_brands_own_stands_before_the_programs() {
        let spec = half_zip(Digest::of(b"front"));
        let name = spec.points.points[0].name.as_str();
        let own = by_language(&[("vi", name, "own"), ("vi", "of another style", "own")]);
        let terms = by_language(&[("vi", name, "term"), ("zh-Hans", name, "term")]);
        let kept = Translations::new(&spec, &own, terms);
        assert_eq!(kept.beside("vi", name), Some(Translated::Own("own")));
        assert_eq!(kept.beside("zh-Hans", name), Some(Translated::Term("term")));
        assert_eq!(kept.beside("vi", "of another style"), None);
        assert_eq!(kept.beside("bn", name), None);
        assert!(!kept.is_empty());
        assert!(Translations::new(&spec, &ByLanguage::new(), ByLanguage::new()).is_empty());
    }

    #[test]
    fn codes_and_companies_are_nobodys_to_translate() {
        let mut spec = half_zip(Digest::of(b"front"));
        spec.materials.materials[0].supplier = "Fog Bank Mill".to_owned();
        spec.points.points[0].how.start = "High point of shoulder".to_owned();
        spec.points.points[1].how.start = "High point of shoulder".to_owned();
        let texts = texts(&spec);
        let has = |words: &str| texts.iter().filter(|it| it.words == words).count();
        assert_eq!(has("Fog Bank Mill"), 0);
        assert_eq!(has(&spec.header.number), 0);
        assert_eq!(has(&spec.header.name), 0);
        assert_eq!(has(&spec.points.points[0].letter), 0);
        assert_eq!(has("High point of shoulder"), 1);
        let first = texts.iter().find(|it| it.words == "High point of shoulder");
        let first = first.expect("it is there");
        assert_eq!(first.item.as_ref(), Some(&spec.points.points[0].id));
        assert_eq!(
            (first.section, &first.field[..]),
            (Section::Points, "how.start")
        );
    }
}
