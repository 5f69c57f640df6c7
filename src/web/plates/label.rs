//! A label as it will look: open and folded, in each market and its languages, with words for care
//! and never the registered signs.

use std::collections::BTreeSet;

use askama::Template;

use super::{Bench, Mm, Picture};
use crate::language::{Language, Text};
use crate::spec::care::treatments;
use crate::spec::document::{Label, LabelFold, Market, Record, Value};
use crate::spec::label::{Block, Edition, Layout, Paper, Says, editions, lay, width};
use crate::spec::placement::mm;
use crate::spec::ruler::{Rank, marks};
use crate::spec::units::Unit;

/// A label in every market.
#[derive(Template)]
#[template(path = "plates/label.html")]
pub struct LabelPlate {
    t: Text,
    /// Letter and name.
    name: String,
    editions: Vec<EditionPlate>,
    /// The label's own artwork, in the outline of the label.
    artwork: Option<Sheet>,
    /// What is not said, and what was taken instead.
    notes: Vec<String>,
    /// Width and height are said.
    sized: bool,
}

/// The label of some markets.
struct EditionPlate {
    markets: String,
    open: Sheet,
    folded: Option<Sheet>,
    /// Why the text does not fit, each in a sentence.
    tight: Vec<String>,
    /// It fits, and how much room is left: a sentence.
    room: Option<String>,
    /// What is missing on it.
    missing: Vec<String>,
}

/// One drawing of the label, in millimetres.
struct Sheet {
    /// How many times it is larger than the label.
    zoom: u32,
    /// On the screen.
    screen: (Mm, Mm),
    /// As a `viewBox`.
    view: String,
    width: Mm,
    height: Mm,
    /// A ruler at the left.
    ticks: String,
    fold: Option<Mm>,
    texts: Vec<Run>,
    size: Mm,
    picture: Option<Picture>,
    says: String,
}

/// A line of text.
struct Run {
    /// As a tag; empty for none.
    language: String,
    text: String,
    x: Mm,
    y: Mm,
    /// As wide as it is taken to be.
    wide: Mm,
    /// It has no room on the label any more.
    over: bool,
}

/// Where no text height is given, in millimetres.
const TEXT: f64 = 1.5;
/// A drawing is at most so wide and so high on the screen, in millimetres.
const SCREEN: (f64, f64) = (100.0, 300.0);
/// Room at the left for the ruler, in millimetres of the screen.
const RULER: f64 = 6.0;

impl LabelPlate {
    pub fn of(bench: Bench<'_>, label: &Label) -> LabelPlate {
        let t = bench.t;
        let name = format!("{} {}", label.letter, label.name).trim().to_owned();
        let mut plate = LabelPlate {
            t,
            editions: Vec::new(),
            artwork: None,
            notes: Vec::new(),
            sized: false,
            name,
        };
        let positive = |length: crate::spec::Entered| length.nm.is_positive();
        let (Some(width), Some(height)) = (
            label.width.filter(|it| positive(*it)),
            label.height.filter(|it| positive(*it)),
        ) else {
            return plate;
        };
        plate.sized = true;
        let text = label.text_height.filter(|it| positive(*it));
        let paper = Paper {
            width: mm(width.nm),
            height: mm(height.nm),
            folded: label.folded_height.map(|it| mm(it.nm)),
            fold: label.fold,
            text: text.map_or(TEXT, |it| mm(it.nm)),
        };
        let editions = editions(bench.spec, label, bench.compose);
        let speaks = editions.iter().any(|it| !it.blocks.is_empty());
        if text.is_none() && speaks {
            plate.notes.push(t.say("plates-text-height").to_string());
        }
        if !speaks && label.artwork.is_none() {
            plate.notes.push(t.say("plates-blank").to_string());
        }
        if matches!(label.fold, Some(LabelFold::Ends | LabelFold::Mitre)) {
            plate.notes.push(t.say("plates-ends").to_string());
        }
        plate.artwork = bench
            .picture([label.artwork.as_ref(), None])
            .map(|picture| {
                let empty = lay(paper, &[], false);
                Sheet {
                    picture: Some(picture),
                    ..sheet(paper, paper.height, &empty, &[])
                }
            });
        // A label that says nothing in words is drawn once, unless its artwork shows it.
        let drawn: &[Edition] = match (speaks, &plate.artwork) {
            (true, _) => &editions,
            (false, Some(_)) => &[],
            (false, None) => editions.get(..1).unwrap_or_default(),
        };
        plate.editions = drawn
            .iter()
            .map(|it| bench.edition(paper, it, speaks))
            .collect();
        plate
    }
}

impl Bench<'_> {
    fn edition(&self, paper: Paper, edition: &Edition, speaks: bool) -> EditionPlate {
        let t = self.t;
        let mut missing = Vec::new();
        let texts: Vec<(String, String)> = edition
            .blocks
            .iter()
            .map(|block| (block.language.clone(), self.words(block, &mut missing)))
            .filter(|(_, text)| !text.is_empty())
            .collect();
        let mut told = BTreeSet::new();
        missing.retain(|text: &String| told.insert(text.clone()));
        let lone = edition.blocks.iter().all(|it| it.says == [Says::Size]);
        let said: Vec<String> = texts.iter().map(|(_, text)| text.clone()).collect();
        let layout = lay(paper, &said, lone);
        let languages: Vec<&str> = texts
            .iter()
            .map(|(language, _)| language.as_str())
            .collect();
        let number = |length: f64| format!("{length:.0}");
        let mut tight = Vec::new();
        if layout.needs > paper.height {
            let (needs, height) = (number(layout.needs.ceil()), number(paper.height));
            let text = t
                .say("plates-too-long")
                .with("needs", needs)
                .with("height", height);
            tight.push(text.to_string());
        }
        if !layout.wide.is_empty() {
            let text = t
                .say("plates-too-wide")
                .with("words", layout.wide.join(", "));
            tight.push(text.to_string());
        }
        let room = (speaks && tight.is_empty()).then(|| {
            let (needs, height) = (number(layout.needs.ceil()), number(paper.height));
            t.say("plates-fits")
                .with("needs", needs)
                .with("height", height)
                .to_string()
        });
        EditionPlate {
            markets: self.markets(&edition.markets),
            folded: layout
                .fold
                .map(|fold| sheet(paper, fold, &layout, &languages)),
            open: sheet(paper, paper.height, &layout, &languages),
            tight,
            room,
            missing,
        }
    }

    fn markets(&self, markets: &[Market]) -> String {
        let names = markets.iter().map(|market| self.t.name(market).to_string());
        names.collect::<Vec<_>>().join(", ")
    }

    /// What a block says, a line for each thing; what cannot be said goes to `missing`.
    fn words(&self, block: &Block, missing: &mut Vec<String>) -> String {
        let t = self.t;
        let language = block.language.as_str();
        let spoken = spoken(language);
        let own = spoken.map(Language::text);
        let written = |it: &Says| matches!(it, Says::Care | Says::Origin);
        if spoken.is_some_and(|it| !it.is_checked()) && block.says.iter().any(written) {
            let text = t.say("plates-unchecked").with("language", language);
            missing.push(text.to_string());
        }
        let mut lines = Vec::new();
        for says in &block.says {
            match says {
                Says::Composition(Some(text)) => lines.push(text.clone()),
                Says::Composition(None) => {
                    let text = t.say("plates-no-composition").with("language", language);
                    missing.push(text.to_string());
                }
                Says::Typed(text) => lines.push(text.clone()),
                Says::Care if treatments(&self.spec.labels.care).is_empty() => {
                    missing.push(t.say("plates-no-care").to_string());
                }
                Says::Care => match own {
                    Some(own) => lines.push(self.care(own)),
                    None => {
                        let text = t.say("plates-no-care-words").with("language", language);
                        missing.push(text.to_string());
                    }
                },
                Says::Origin if self.spec.header.origin.trim().is_empty() => {
                    missing.push(t.say("plates-no-origin").to_string());
                }
                Says::Origin => match own {
                    Some(own) => {
                        let country = self.spec.header.origin.trim();
                        lines.push(
                            own.say("plates-made-in")
                                .with("country", country)
                                .to_string(),
                        );
                    }
                    None => {
                        let text = t.say("plates-no-origin-words").with("language", language);
                        missing.push(text.to_string());
                    }
                },
                Says::Size => {
                    let base = self.spec.header.base_size.as_ref();
                    match base.and_then(|id| self.spec.size(id)) {
                        Some(size) => lines.push(size.code.clone()),
                        None => missing.push(t.say("plates-no-base").to_string()),
                    }
                }
            }
        }
        lines.join("\n")
    }

    /// The treatments in their order, each a sentence.
    fn care(&self, t: Text) -> String {
        let fields = self.spec.labels.care.fields();
        let words = fields.into_iter().filter_map(|(_, value)| match value {
            Value::Word { kind, word } => Some(format!("{}.", t.word(kind, word))),
            _ => None,
        });
        words.collect::<Vec<_>>().join(" ")
    }
}

/// The program's language for a tag, with or without its country.
fn spoken(tag: &str) -> Option<Language> {
    let primary = tag.split(['-', '_']).next().unwrap_or(tag);
    Language::from_tag(tag).or_else(|| Language::from_tag(primary))
}

/// The part of a label above `height`, with the text that lies there; of the open label also what has
/// no room on it.
fn sheet(paper: Paper, height: f64, layout: &Layout, languages: &[&str]) -> Sheet {
    let open = height >= paper.height;
    let zoom = (1..=4)
        .rev()
        .map(f64::from)
        .find(|zoom| paper.width * zoom <= SCREEN.0 && paper.height * zoom <= SCREEN.1);
    let zoom = zoom.unwrap_or(1.0);
    let bottom = if open {
        f64::max(height, layout.needs)
    } else {
        height
    };
    let left = RULER / zoom;
    let whole = (left + paper.width + 1.0, bottom + 1.0);
    let mut ticks = String::new();
    for mark in marks(height, Unit::Mm)
        .iter()
        .filter(|mark| mark.at <= height)
    {
        let long = match mark.rank {
            Rank::Fine => 1.2,
            Rank::Half => 2.2,
            Rank::Whole => 3.6,
        };
        ticks += &format!("M-.4 {}h{}", Mm(mark.at), Mm(-long / zoom));
    }
    let texts = layout
        .lines
        .iter()
        .filter(|line| open || line.foot < height);
    let texts = texts.map(|line| {
        let wide = width(&line.text) * layout.em;
        Run {
            language: languages
                .get(line.of)
                .copied()
                .unwrap_or_default()
                .to_owned(),
            x: Mm(match line.centred {
                true => (paper.width - wide) / 2.0,
                false => layout.left,
            }),
            y: Mm(line.foot),
            wide: Mm(wide),
            over: line.foot > paper.height,
            text: line.text.clone(),
        }
    });
    Sheet {
        zoom: zoom as u32,
        screen: (Mm(whole.0 * zoom), Mm(whole.1 * zoom)),
        view: format!("{} -.5 {} {}", Mm(-left), Mm(whole.0), Mm(whole.1)),
        width: Mm(paper.width),
        height: Mm(height),
        ticks,
        fold: layout.fold.filter(|_| open).map(Mm),
        texts: texts.collect(),
        size: Mm(layout.em),
        picture: None,
        says: format!("{} × {} mm", Mm(paper.width), Mm(height)),
    }
}

#[cfg(test)]
mod tests;
