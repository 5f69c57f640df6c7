//! Claims that the composition does not bear out.

use super::Tables;
use crate::spec::decimal::Decimal;
use crate::spec::document::{Component, Fibre, Market, Material, Section, Share, Spec};
use crate::spec::id::ItemId;

/// An unusual claim, and where it is made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Claim {
    pub kind: ClaimKind,
    /// Where it stands: of the header no item.
    pub section: Section,
    pub item: Option<ItemId>,
    pub field: &'static str,
    /// The material that it is about.
    pub material: ItemId,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ClaimKind {
    /// 100 % or more of one fibre, with a second one.
    HundredWithSecond,
    /// A text says `100 %`, `pure` or `all` of a material that has several fibres.
    SaysOnlyOne,
    /// One fibre in two rows.
    FibreTwice,
    /// Virgin wool in a mixture, with less of it or more other fibres than the Regulation allows.
    VirginWool,
}

/// What is claimed in the compositions, and by the header, the materials' names and the labels'
/// texts about them.
pub fn unusual_claims(spec: &Spec, tables: &Tables) -> Vec<Claim> {
    let materials = &spec.materials.materials;
    let mut claims = Vec::new();
    for material in materials {
        let mut claim = |kind, field| {
            claims.push(Claim {
                kind,
                section: Section::Materials,
                item: Some(material.id.clone()),
                field,
                material: material.id.clone(),
            });
        };
        let shares = &material.composition;
        let is_all = |share: &Share| share.percent.is_some_and(|it| it >= Decimal::HUNDRED);
        if shares.len() > 1 && shares.iter().any(is_all) {
            claim(ClaimKind::HundredWithSecond, "composition");
        }
        if has_twice(shares) {
            claim(ClaimKind::FibreTwice, "composition");
        }
        if spec.header.markets.iter().any(|it| *it != Market::Us) && is_virgin_wool(shares, tables)
        {
            claim(ClaimKind::VirginWool, "composition");
        }
        for (field, text) in [("name", &material.name), ("reference", &material.reference)] {
            if shares.len() > 1 && says_only_one(text, tables) {
                claim(ClaimKind::SaysOnlyOne, field);
            }
        }
    }
    let header = [
        ("main_fabric", &spec.header.main_fabric, Component::Main),
        (
            "contrast_fabric",
            &spec.header.contrast_fabric,
            Component::Contrast,
        ),
    ];
    for (field, text, component) in header {
        let materials = materials
            .iter()
            .filter(|it| it.component == Some(component));
        claims.extend(mixed(materials, text, tables).map(|material| Claim {
            kind: ClaimKind::SaysOnlyOne,
            section: Section::Header,
            item: None,
            field,
            material: material.clone(),
        }));
    }
    for label in &spec.labels.labels {
        let said = label.texts.iter().find_map(|text| {
            let materials = materials.iter().filter(|it| it.component.is_some());
            mixed(materials, &text.text, tables)
        });
        claims.extend(said.map(|material| Claim {
            kind: ClaimKind::SaysOnlyOne,
            section: Section::Labels,
            item: Some(label.id.clone()),
            field: "texts",
            material: material.clone(),
        }));
    }
    claims
}

/// The first of these materials, where a text says of them that they are of one fibre and none is.
fn mixed<'a>(
    materials: impl Iterator<Item = &'a Material>,
    text: &str,
    tables: &Tables,
) -> Option<&'a ItemId> {
    let known: Vec<&Material> = materials.filter(|it| !it.composition.is_empty()).collect();
    let all_mixed = known.iter().all(|it| it.composition.len() > 1);
    let first = known.first()?;
    (all_mixed && says_only_one(text, tables)).then_some(&first.id)
}

fn has_twice(shares: &[Share]) -> bool {
    let key = |share: &Share| (share.fibre, share.name.trim().to_lowercase());
    let named = |share: &&Share| share.fibre.is_some_and(|it| it != Fibre::Other);
    let mut seen = Vec::new();
    shares.iter().filter(named).any(|share| {
        let twice = seen.contains(&key(share));
        seen.push(key(share));
        twice
    })
}

fn is_virgin_wool(shares: &[Share], tables: &Tables) -> bool {
    let wool = shares
        .iter()
        .find(|share| share.fibre == Some(Fibre::VirginWool));
    let Some(percent) = wool.and_then(|share| share.percent) else {
        return false;
    };
    let others = shares.len() - 1;
    others > 1 || others == 1 && percent < tables.rules.eu.virgin_wool.percent
}

/// Whether a text says that something is of one fibre alone: `100 %`, `100% cotton`, or in English
/// `pure wool`, `all silk`.
pub fn says_only_one(text: &str, tables: &Tables) -> bool {
    let text = text.to_lowercase();
    let hundred = text.match_indices("100").any(|(at, it)| {
        let before = text[..at].chars().next_back();
        let part = before.is_some_and(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
        !part && text[at + it.len()..].trim_start().starts_with('%')
    });
    let words: Vec<&str> = text.split(|c: char| !c.is_alphanumeric()).collect();
    let words = words
        .into_iter()
        .filter(|it| !matches!(*it, "" | "new" | "virgin"));
    let words: Vec<&str> = words.collect();
    let alone = words
        .windows(2)
        .any(|pair| matches!(pair[0], "pure" | "all") && tables.is_fibre_name(pair[1], "en"));
    hundred || alone
}

#[cfg(test)]
mod tests;
