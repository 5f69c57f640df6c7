//! Composition: whether the shares make sense, and what the label says for a market in a language.
//!
//! The European Union and the United Kingdom follow Regulation (EU) No 1007/2011, the United States
//! 16 CFR 303; other markets are given the European form. Names and figures come from [`Tables`],
//! each with how far it was checked: the texts are a draft for whoever answers for the label.

mod claims;
mod tables;

use super::decimal::Decimal;
use super::document::{Component, Fibre, Market, Material, Share, Spec, Word};
use super::id::ItemId;
use super::table::Source;

pub use claims::{Claim, ClaimKind, says_only_one, unusual_claims};
pub use tables::{EuRules, Files, Limit, Phrase, Rule, Rules, Tables, UsRules, Wording};

/// All percentages of one component together; 100 where it is complete.
pub fn total(shares: &[Share]) -> Decimal {
    shares.iter().filter_map(|share| share.percent).sum()
}

/// What the composition label of a garment says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Composition {
    /// In the order of [`Component`].
    pub components: Vec<ComponentText>,
    /// Set phrases that have to be added; without a wording where the language has none.
    pub phrases: Vec<(Phrase, Option<Wording>)>,
    /// How far the analysed composition may be from the stated one.
    pub tolerance: Limit,
    pub faults: Vec<Fault>,
}

/// One component, which may be of several materials alike.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ComponentText {
    pub component: Component,
    pub materials: Vec<ItemId>,
    /// Nothing where the garment has one component only, which is not named.
    pub name: Option<Wording>,
    /// In the order of the label.
    pub entries: Vec<Entry>,
    /// `Lining: 80 % polyester, 20 % cotton`; nothing while a word of it is missing.
    pub text: Option<String>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    pub what: What,
    pub percent: Decimal,
    /// Nothing where the language has no word.
    pub text: Option<String>,
    /// Where the word is from; nothing for one that the brand typed.
    pub source: Option<Source>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub enum What {
    Fibre(Fibre),
    /// Without a listed name: as the brand calls it.
    Unlisted(String),
    /// Several together, or one that need not be named.
    Others,
}

/// What stands in the way of a text, or makes it doubtful.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// A component of which no share is given.
    Missing {
        material: ItemId,
    },
    /// A share without a fibre, or whose percentage is not above zero.
    ShareUnclear {
        material: ItemId,
    },
    TotalWrong {
        material: ItemId,
        total: Decimal,
    },
    /// More than may go unnamed.
    OthersTooMuch {
        material: ItemId,
        percent: Decimal,
        limit: Decimal,
    },
    /// The language has no word for it in the tables.
    FibreUnnamed {
        fibre: Fibre,
    },
    ComponentUnnamed {
        component: Component,
    },
    PhraseUnnamed {
        phrase: Phrase,
    },
}

/// A component with the shares of one or more materials alike.
struct Group<'a> {
    component: Component,
    shares: &'a [Share],
    materials: Vec<&'a ItemId>,
}

/// Shares of one name together.
struct Named {
    entry: Entry,
    /// Named however little there is of it.
    always: bool,
}

/// Who reads the label, and from which tables it is written.
#[derive(Clone, Copy)]
struct Label<'a> {
    market: Market,
    language: &'a str,
    tables: &'a Tables,
}

/// What the label says for a market in a language, given as a tag: `de`, `pt-BR`. Only materials
/// that are a component are on it.
pub fn text(spec: &Spec, market: Market, language: &str, tables: &Tables) -> Composition {
    let label = Label {
        market,
        language,
        tables,
    };
    let mut faults = Vec::new();
    let groups = groups(&spec.materials.materials, &mut faults);
    let several = groups.len() > 1;
    let components = groups.iter();
    let components = components.map(|group| label.component(group, several, &mut faults));
    let components: Vec<ComponentText> = components.collect();

    let mut phrases = Vec::new();
    let shares = groups.iter().flat_map(|group| group.shares);
    let has_down = shares
        .into_iter()
        .any(|share| share.fibre == Some(Fibre::Down));
    if has_down && market != Market::Us {
        let wording = label.phrase(Phrase::AnimalOrigin, &mut faults);
        phrases.push((Phrase::AnimalOrigin, wording));
    }
    let tolerance = match market {
        Market::Us => &tables.rules.us.tolerance,
        Market::Eu | Market::Uk | Market::Other => &tables.rules.eu.tolerance,
    };
    Composition {
        components,
        phrases,
        tolerance: tolerance.clone(),
        faults,
    }
}

/// The components in their order; materials with equal shares make one.
fn groups<'a>(materials: &'a [Material], faults: &mut Vec<Fault>) -> Vec<Group<'a>> {
    let mut groups: Vec<Group<'a>> = Vec::new();
    for component in Component::ALL.iter().copied() {
        let of_it = materials
            .iter()
            .filter(|it| it.component == Some(component));
        for material in of_it {
            let shares = material.composition.as_slice();
            let equal = groups.iter_mut();
            let equal = equal
                .filter(|group| group.component == component)
                .find(|group| group.shares == shares);
            match equal {
                Some(group) => group.materials.push(&material.id),
                None if shares.is_empty() => faults.push(Fault::Missing {
                    material: material.id.clone(),
                }),
                None => groups.push(Group {
                    component,
                    shares,
                    materials: vec![&material.id],
                }),
            }
        }
    }
    groups
}

impl Label<'_> {
    fn component(self, group: &Group, several: bool, faults: &mut Vec<Fault>) -> ComponentText {
        let material = || group.materials[0].clone();
        let total = total(group.shares);
        if total != Decimal::HUNDRED {
            faults.push(Fault::TotalWrong {
                material: material(),
                total,
            });
        }
        let is_unclear = |share: &Share| {
            share.fibre.is_none() || !share.percent.is_some_and(Decimal::is_positive)
        };
        if group.shares.iter().any(is_unclear) {
            faults.push(Fault::ShareUnclear {
                material: material(),
            });
        }
        let named = self.named(group.shares, faults);
        let (mut entries, others): (Vec<Named>, Vec<Named>) =
            named.into_iter().partition(|it| self.is_named(it));
        entries.sort_by_key(|it| std::cmp::Reverse(it.entry.percent));
        let mut entries: Vec<Entry> = entries.into_iter().map(|it| it.entry).collect();
        if let Some(limit) = self.too_much(group.shares) {
            faults.push(Fault::OthersTooMuch {
                material: material(),
                percent: unnamed(group.shares).0,
                limit,
            });
        }
        entries.extend(self.others(&others, faults));

        let name = several.then(|| {
            let name = self
                .tables
                .component(group.component, self.market, self.language);
            if name.is_none() {
                let component = group.component;
                push_once(faults, Fault::ComponentUnnamed { component });
            }
            name.cloned()
        });
        let text = match &name {
            Some(Some(name)) => self
                .line(&entries)
                .map(|line| format!("{}: {line}", name.text)),
            Some(None) => None,
            None => self.line(&entries),
        };
        ComponentText {
            component: group.component,
            materials: group.materials.iter().map(|id| (*id).clone()).collect(),
            name: name.flatten(),
            entries,
            text,
        }
    }

    /// The shares that are clear, those of one name together: for the United States viscose and
    /// cupro are both rayon.
    fn named(self, shares: &[Share], faults: &mut Vec<Fault>) -> Vec<Named> {
        let mut all: Vec<Named> = Vec::new();
        for share in shares {
            let (Some(fibre), Some(percent)) = (share.fibre, share.percent) else {
                continue;
            };
            let entry = self.entry(fibre, percent, share.name.trim(), faults);
            let always = self.is_always_named(fibre, share.functional);
            let same = all
                .iter_mut()
                .find(|it| match (&it.entry.text, &entry.text) {
                    (Some(one), Some(other)) => one == other,
                    _ => it.entry.what == entry.what,
                });
            match same {
                Some(same) => {
                    same.entry.percent = [same.entry.percent, percent].into_iter().sum();
                    same.always |= always;
                }
                None => all.push(Named { entry, always }),
            }
        }
        all
    }

    fn entry(self, fibre: Fibre, percent: Decimal, typed: &str, faults: &mut Vec<Fault>) -> Entry {
        if fibre == Fibre::Other {
            // The Regulation has no room for names that it does not list.
            let keeps_name = self.market == Market::Us && !typed.is_empty();
            let what = if keeps_name {
                What::Unlisted(typed.to_owned())
            } else {
                What::Others
            };
            return Entry {
                what,
                percent,
                text: keeps_name.then(|| typed.to_owned()),
                source: None,
            };
        }
        let wording = self.tables.fibre(fibre, self.market, self.language);
        if wording.is_none() {
            push_once(faults, Fault::FibreUnnamed { fibre });
        }
        Entry {
            what: What::Fibre(fibre),
            percent,
            text: wording.map(|it| it.text.clone()),
            source: wording.map(|it| it.source.clone()),
        }
    }

    fn is_always_named(self, fibre: Fibre, functional: bool) -> bool {
        let us = &self.tables.rules.us;
        functional
            || us.functional.fibres.contains(&fibre)
            || us.always_named.fibres.contains(&fibre)
    }

    fn is_named(self, it: &Named) -> bool {
        match (&it.entry.what, self.market) {
            (What::Others, _) => false,
            (_, Market::Us) => {
                it.always || it.entry.percent >= self.tables.rules.us.named_from.percent
            }
            (_, Market::Eu | Market::Uk | Market::Other) => true,
        }
    }

    /// The one entry for all that is not named, which comes last.
    fn others(self, others: &[Named], faults: &mut Vec<Fault>) -> Option<Entry> {
        let first = others.first()?;
        let percent = others.iter().map(|it| it.entry.percent).sum();
        let one =
            self.market == Market::Us && others.len() == 1 && first.entry.what != What::Others;
        let phrase = if one {
            Phrase::OtherFibre
        } else {
            Phrase::OtherFibres
        };
        let wording = self.phrase(phrase, faults);
        Some(Entry {
            what: What::Others,
            percent,
            text: wording.as_ref().map(|it| it.text.clone()),
            source: wording.map(|it| it.source),
        })
    }

    /// The limit that the fibres go over which the brand does not name at all. In one row they are
    /// taken for one fibre. Where the brand names a fibre that the Regulation does not list, it is
    /// called `other fibres` without a limit.
    fn too_much(self, shares: &[Share]) -> Option<Decimal> {
        let rules = &self.tables.rules;
        let (percent, count) = unnamed(shares);
        let is_over = match self.market {
            Market::Us => percent >= rules.us.named_from.percent,
            Market::Eu | Market::Uk | Market::Other if count == 1 => {
                percent > rules.eu.other_one.percent
            }
            Market::Eu | Market::Uk | Market::Other => percent > rules.eu.other_together.percent,
        };
        let limit = match self.market {
            Market::Us => &rules.us.named_from,
            Market::Eu | Market::Uk | Market::Other if count == 1 => &rules.eu.other_one,
            Market::Eu | Market::Uk | Market::Other => &rules.eu.other_together,
        };
        (count > 0 && is_over).then_some(limit.percent)
    }

    fn phrase(self, phrase: Phrase, faults: &mut Vec<Fault>) -> Option<Wording> {
        let wording = self.tables.phrase(phrase, self.market, self.language);
        if wording.is_none() {
            push_once(faults, Fault::PhraseUnnamed { phrase });
        }
        wording.cloned()
    }

    /// `80 % Baumwolle, 20 % Polyester`; in English `80% cotton`.
    fn line(self, entries: &[Entry]) -> Option<String> {
        let is_english = primary(self.language) == "en";
        let entries = entries.iter().map(|entry| {
            let percent = entry.percent.to_string();
            let text = entry.text.as_ref()?;
            Some(if is_english {
                format!("{percent}% {text}")
            } else {
                // The space is one that no line breaks at.
                format!("{}\u{a0}% {text}", percent.replace('.', ","))
            })
        });
        Some(entries.collect::<Option<Vec<_>>>()?.join(", "))
    }
}

impl Composition {
    /// The whole label, a line for each component and phrase; nothing while a word is missing.
    pub fn whole(&self) -> Option<String> {
        let components = self.components.iter().map(|it| it.text.clone());
        let phrases = self.phrases.iter();
        let phrases = phrases.map(|(_, wording)| Some(wording.as_ref()?.text.clone()));
        Some(
            components
                .chain(phrases)
                .collect::<Option<Vec<_>>>()?
                .join("\n"),
        )
    }

    /// Whether every word of it was checked against a published copy; a typed one was not.
    pub fn is_verified(&self) -> bool {
        let entries = self.components.iter().flat_map(|it| &it.entries);
        let entries = entries.map(|entry| entry.source.as_ref());
        let names = self.components.iter().filter_map(|it| it.name.as_ref());
        let phrases = self
            .phrases
            .iter()
            .filter_map(|(_, wording)| wording.as_ref());
        let wordings = names.chain(phrases).map(|it| Some(&it.source));
        entries
            .chain(wordings)
            .all(|source| source.is_some_and(Source::is_verified))
    }
}

/// What the brand itself calls only `other`, without a name: how much, and in how many rows.
fn unnamed(shares: &[Share]) -> (Decimal, usize) {
    let is_unnamed =
        |share: &&Share| share.fibre == Some(Fibre::Other) && share.name.trim().is_empty();
    let unnamed: Vec<Share> = shares.iter().filter(is_unnamed).cloned().collect();
    (total(&unnamed), unnamed.len())
}

fn push_once(faults: &mut Vec<Fault>, fault: Fault) {
    if !faults.contains(&fault) {
        faults.push(fault);
    }
}

/// The language of a tag, without script and country: `pt` of `pt-BR`.
fn primary(language: &str) -> &str {
    language.split(['-', '_']).next().unwrap_or(language)
}

#[cfg(test)]
mod tests;
