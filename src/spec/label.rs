//! What a label says in a market, and how its text lies on it: an estimate, before anybody sets it.
//!
//! Widths of letters are those of an ordinary narrow-spaced sans, from memory; a mill's own letters
//! are wider or narrower. So whether a text fits is always called an estimate.

mod layout;

use super::composition::{Tables, text};
use super::document::{Label, LabelContent, LabelKind, Market, Spec};

pub use layout::{Layout, Line, Paper, lay, width};

/// What one kind of a label says: that of a market, or that of several alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Edition {
    /// Empty while the spec names no market.
    pub markets: Vec<Market>,
    /// In the order of the label.
    pub blocks: Vec<Block>,
}

/// What a label says in one language.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Block {
    /// As a tag; empty for what belongs to no language.
    pub language: String,
    pub says: Vec<Says>,
}

/// One thing that a label says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Says {
    /// Nothing where the tables lack a word for the language, or the shares are not whole.
    Composition(Option<String>),
    /// The care of the garment, in words of the block's language.
    Care,
    /// As the brand typed it.
    Typed(String),
    Origin,
    Size,
}

impl Label {
    /// Whether it says this, by its contents or by what it is.
    pub fn says(&self, content: LabelContent) -> bool {
        let by_kind = match self.kind {
            Some(LabelKind::CareComposition) => {
                matches!(content, LabelContent::Care | LabelContent::Composition)
            }
            Some(LabelKind::Origin) => content == LabelContent::Origin,
            Some(LabelKind::SizeLoop) => content == LabelContent::Size,
            Some(LabelKind::Brand | LabelKind::Warning | LabelKind::Other) | None => false,
        };
        by_kind || self.contents.contains(&content)
    }
}

/// The composition for a market in a language, where there is one.
pub type Compose<'a> = &'a dyn Fn(Market, &str) -> Option<String>;

/// The composition of a draft: by the tables as they are now. A revision has its own, frozen.
pub fn compose(spec: &Spec, market: Market, language: &str) -> Option<String> {
    // A label with half of its fibres would be worse than one that says what is missing.
    let whole = text(spec, market, language, Tables::shipped()).whole();
    whole.filter(|text| !text.is_empty())
}

/// What a label says in every market of the spec; markets whose labels are alike together. A block
/// for each language that the label has texts in for the market, else for each of the spec's.
pub fn editions(spec: &Spec, label: &Label, compose: Compose<'_>) -> Vec<Edition> {
    let mut editions: Vec<Edition> = Vec::new();
    let markets = spec.header.markets.iter().copied().map(Some);
    let markets: Vec<Option<Market>> = match spec.header.markets.is_empty() {
        true => vec![None],
        false => markets.collect(),
    };
    for market in markets {
        let blocks = blocks(spec, label, market, compose);
        match editions.iter_mut().find(|it| it.blocks == blocks) {
            Some(alike) => alike.markets.extend(market),
            None => editions.push(Edition {
                markets: market.into_iter().collect(),
                blocks,
            }),
        }
    }
    editions
}

fn blocks(spec: &Spec, label: &Label, market: Option<Market>, compose: Compose<'_>) -> Vec<Block> {
    let mine = label.texts.iter();
    let mine = mine.filter(|it| it.market.is_none() || it.market == market);
    let mut languages: Vec<&str> = Vec::new();
    for text in mine.clone() {
        let language = text.language.trim();
        if !languages.contains(&language) {
            languages.push(language);
        }
    }
    if languages.is_empty() {
        languages = spec.header.languages.iter().map(String::as_str).collect();
    }
    if languages.is_empty() {
        languages.push("");
    }
    let per_language = languages.into_iter().map(|language| {
        let mut says = Vec::new();
        if label.says(LabelContent::Composition) {
            let market = market.unwrap_or(Market::Other);
            says.push(Says::Composition(compose(market, language)));
        }
        if label.says(LabelContent::Care) {
            says.push(Says::Care);
        }
        let typed = mine.clone().filter(|it| it.language.trim() == language);
        let typed = typed.filter(|it| !it.text.trim().is_empty());
        says.extend(typed.map(|it| Says::Typed(it.text.trim().to_owned())));
        if label.says(LabelContent::Origin) {
            says.push(Says::Origin);
        }
        Block {
            language: language.to_owned(),
            says,
        }
    });
    let mut blocks: Vec<Block> = per_language.filter(|it| !it.says.is_empty()).collect();
    if label.says(LabelContent::Size) {
        blocks.insert(
            0,
            Block {
                language: String::new(),
                says: vec![Says::Size],
            },
        );
    }
    blocks
}

#[cfg(test)]
mod tests;
