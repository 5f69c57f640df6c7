//! Checks of parts, colourways and the colours of one in the other.

use std::collections::{HashMap, HashSet};

use super::known::Known;
use super::{Code, Finding, blank, same_label};
use crate::spec::document::{Cell, Colourway, Part, Section, Spec};
use crate::spec::id::ItemId;
use crate::spec::item::Item;

pub fn colourways(known: &Known, findings: &mut Vec<Finding>) {
    let spec = known.spec;
    let colourways = &spec.colourways;
    if colourways.parts.is_empty() {
        findings.push(Finding::new(Code::PartsNone, Section::Colourways));
    }
    if colourways.colourways.is_empty() {
        findings.push(Finding::new(Code::ColourwaysNone, Section::Colourways));
    }
    parts(spec, findings);
    unmade(spec, findings);
    let mut seen = HashSet::new();
    for colourway in &colourways.colourways {
        let finding = |code| Finding::new(code, Section::Colourways).item(&colourway.id);
        if blank(&colourway.code) && blank(&colourway.name) {
            findings.push(finding(Code::ColourwayNameMissing).field("name"));
        }
        if !blank(&colourway.code) && !seen.insert(same_label(&colourway.code)) {
            let finding = finding(Code::ColourwayCodeTwice).field("code");
            findings.push(finding.fact("code", colourway.code.as_str()));
        }
    }
    for part in &colourways.parts {
        for colourway in &colourways.colourways {
            cell(known, colourway, part, findings);
        }
    }
}

fn parts(spec: &Spec, findings: &mut Vec<Finding>) {
    // A letter names one thing on a drawing, be it a point or a part.
    let mut letters: HashMap<String, &str> = HashMap::new();
    for point in &spec.points.points {
        letters
            .entry(same_label(&point.letter))
            .or_insert(&point.name);
    }
    for part in &spec.colourways.parts {
        let finding = |code, field| {
            let finding = Finding::new(code, Section::Colourways).item(&part.id);
            finding.field(field).fact("letter", part.letter.as_str())
        };
        if blank(&part.name) {
            findings.push(finding(Code::PartNameMissing, "name"));
        }
        if blank(&part.letter) {
            findings
                .push(finding(Code::PartLetterMissing, "letter").fact("name", part.name.as_str()));
        } else if let Some(other) = letters.insert(same_label(&part.letter), &part.name) {
            findings.push(finding(Code::PartLetterTwice, "letter").fact("other", other));
        }
    }
}

/// Parts that nothing is made of: no material, no ink or thread of an artwork, no label.
fn unmade(spec: &Spec, findings: &mut Vec<Finding>) {
    let materials = spec.materials.materials.iter();
    let artworks = spec.artwork.artworks.iter();
    let labels = spec.labels.labels.iter();
    let made: HashSet<&ItemId> = materials
        .flat_map(|material| &material.parts)
        .chain(artworks.flat_map(|artwork| &artwork.colours))
        .chain(labels.filter_map(|label| label.part.as_ref()))
        .collect();
    let parts = spec.colourways.parts.iter();
    for part in parts.filter(|part| !made.contains(&part.id)) {
        let finding = Finding::new(Code::PartWithoutMaterial, Section::Colourways);
        let finding = finding.item(&part.id).fact("letter", part.letter.as_str());
        findings.push(finding.fact("name", part.name.as_str()));
    }
}

fn cell(known: &Known, colourway: &Colourway, part: &Part, findings: &mut Vec<Finding>) {
    let finding = |code| {
        let label = match colourway.code.as_str() {
            code if blank(code) => colourway.name.as_str(),
            code => code,
        };
        let mut finding = Finding::new(code, Section::Colourways)
            .item(&part.id)
            .fact("letter", part.letter.as_str())
            .fact("name", part.name.as_str())
            .fact("colourway", label);
        finding.colourway = Some(colourway.id.clone());
        finding
    };
    let spec = known.spec;
    match spec.colourways.cell(&colourway.id, &part.id) {
        None => findings.push(finding(Code::CellEmpty)),
        Some(Cell::None {} | Cell::Natural {}) => {}
        Some(Cell::Colour(colour)) => {
            if blank(&colour.name) && blank(&colour.reference) {
                findings.push(finding(Code::CellColourUnnamed));
            }
            if colour
                .screen
                .as_deref()
                .is_some_and(|screen| !is_screen_value(screen))
            {
                findings.push(finding(Code::CellScreenMalformed));
            }
        }
        Some(Cell::DyedToMatch { part: target }) => {
            let Some(Item::Part(target)) = known.item(target) else {
                findings.push(finding(Code::CellMatchMissing));
                return;
            };
            let code = match matched(spec, colourway, &target.id) {
                Matched::Dyed => return,
                Matched::None => Code::CellMatchNone,
                Matched::Cycle => Code::CellMatchCycle,
            };
            findings.push(finding(code).fact("match", target.letter.as_str()));
        }
    }
}

enum Matched {
    /// At last by something that has a colour, or that has a finding of its own.
    Dyed,
    None,
    Cycle,
}

/// Follows *dyed to match* from part to part of one colourway.
fn matched(spec: &Spec, colourway: &Colourway, first: &ItemId) -> Matched {
    let mut at = first;
    // One step more than there are parts can only be a circle.
    for _ in 0..=spec.colourways.parts.len() {
        match spec.colourways.cell(&colourway.id, at) {
            Some(Cell::DyedToMatch { part }) => at = part,
            Some(Cell::None {}) => return Matched::None,
            Some(Cell::Natural {} | Cell::Colour(_)) | None => return Matched::Dyed,
        }
    }
    Matched::Cycle
}

fn is_screen_value(screen: &str) -> bool {
    let digits = screen.strip_prefix('#').unwrap_or_default();
    digits.len() == 6 && digits.bytes().all(|byte| byte.is_ascii_hexdigit())
}
