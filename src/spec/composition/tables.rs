//! What fibres, components and set phrases are called, and the rules of composition labels: data
//! that ships in `src/spec/data` and may be replaced.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::spec::decimal::Decimal;
use crate::spec::document::{Component, Fibre, Market, Word, words};
use crate::spec::table::{self, Source, TableError};

words! {
    /// Set phrases of composition labels.
    Phrase "phrase" {
        /// `other fibres`; for the United States where it stands for several.
        OtherFibres "other_fibres",
        OtherFibre "other_fibre",
        /// Contains non-textile parts of animal origin.
        AnimalOrigin "animal_origin",
    }
}

/// How something is called in a language.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wording {
    pub text: String,
    pub source: Source,
}

/// One rule, as far as the program follows it or shows it.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// In our own words, in English.
    pub says: String,
    /// Of the regulation that [`EuRules::cited`] or [`UsRules::cited`] names.
    pub article: String,
    /// Which fibres it is about, where it names some.
    #[serde(default)]
    pub fibres: Vec<Fibre>,
    pub source: Source,
}

/// A rule with a figure in it, which its words call `so many percent`.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Limit {
    pub says: String,
    pub article: String,
    pub percent: Decimal,
    pub source: Source,
}

/// Which the United Kingdom has kept.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EuRules {
    /// The regulation.
    pub cited: String,
    pub descending: Rule,
    pub only_one: Rule,
    pub other_one: Limit,
    pub other_together: Limit,
    pub other_unlisted: Rule,
    pub virgin_wool: Limit,
    pub extraneous: Limit,
    pub decorative: Limit,
    pub antistatic: Limit,
    pub animal_parts: Rule,
    pub tolerance: Limit,
}

#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct UsRules {
    /// The regulation.
    pub cited: String,
    pub predominance: Rule,
    pub named_from: Limit,
    pub functional: Rule,
    pub always_named: Rule,
    pub ornamentation: Limit,
    pub only_one: Rule,
    pub tolerance: Limit,
}

#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rules {
    pub eu: EuRules,
    pub us: UsRules,
}

/// Everything that composition texts are made from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tables {
    pub rules: Rules,
    fibres: BTreeMap<(Fibre, String), Wording>,
    components: BTreeMap<(Component, String), Wording>,
    phrases: BTreeMap<(Phrase, String), Wording>,
}

static SHIPPED: LazyLock<Tables> = LazyLock::new(|| {
    Tables::read(Files {
        fibres: include_str!("../data/fibre_names.csv"),
        components: include_str!("../data/component_names.csv"),
        phrases: include_str!("../data/label_phrases.csv"),
        rules: include_str!("../data/fibre_rules.json"),
    })
    .expect("a test reads the shipped tables")
});

/// The texts of the tables, in the form of the shipped ones.
#[derive(Debug, Clone, Copy)]
pub struct Files<'a> {
    pub fibres: &'a str,
    pub components: &'a str,
    pub phrases: &'a str,
    pub rules: &'a str,
}

impl Tables {
    pub fn shipped() -> &'static Tables {
        &SHIPPED
    }

    pub fn read(files: Files) -> Result<Tables, TableError> {
        let rules = serde_json::from_str(files.rules).map_err(|why| TableError {
            table: "rules",
            line: why.line(),
            what: why.to_string(),
        })?;
        Ok(Tables {
            rules,
            fibres: names("fibres", files.fibres)?,
            components: names("components", files.components)?,
            phrases: names("phrases", files.phrases)?,
        })
    }

    /// A fibre's name on a label for this market in this language, a tag such as `de`. The United
    /// States have names of their own.
    pub fn fibre(&self, fibre: Fibre, market: Market, language: &str) -> Option<&Wording> {
        wording(&self.fibres, fibre, market, language)
    }

    pub fn component(&self, of: Component, market: Market, language: &str) -> Option<&Wording> {
        wording(&self.components, of, market, language)
    }

    pub fn phrase(&self, phrase: Phrase, market: Market, language: &str) -> Option<&Wording> {
        wording(&self.phrases, phrase, market, language)
    }

    /// Whether a fibre is called so, in small letters, in the language of this tag.
    pub(super) fn is_fibre_name(&self, word: &str, language: &str) -> bool {
        let mut names = self.fibres.iter();
        names.any(|((_, tag), name)| tag == language && name.text == word)
    }

    /// The languages that any fibre has a name in, `en-US` among them.
    pub fn languages(&self) -> Vec<&str> {
        let mut languages: Vec<&str> = self.fibres.keys().map(|(_, tag)| tag.as_str()).collect();
        languages.sort_unstable();
        languages.dedup();
        languages
    }
}

fn names<W: Word + Ord>(
    table: &'static str,
    text: &str,
) -> Result<BTreeMap<(W, String), Wording>, TableError> {
    let rows = table::rows(table, text, |[what, language, text, status, on]| {
        let key = (table::word(what)?, language.to_owned());
        let text = text.to_owned();
        let source = Source::read(status, on)?;
        Ok((key, Wording { text, source }))
    })?;
    Ok(rows.into_iter().collect())
}

/// The nearest there is: `pt-BR` finds `pt`, and on a label for the United States `en` finds
/// `en-US`, which no other market takes.
fn wording<'a, W: Copy + Ord>(
    names: &'a BTreeMap<(W, String), Wording>,
    what: W,
    market: Market,
    language: &str,
) -> Option<&'a Wording> {
    let language = super::primary(language);
    let own = (market == Market::Us).then(|| format!("{language}-US"));
    let tags = own.into_iter().chain([language.to_owned()]);
    tags.into_iter().find_map(|tag| names.get(&(what, tag)))
}

#[cfg(test)]
mod tests;
