//! Checks of everything but the points of measure.

use std::collections::{HashMap, HashSet};

use super::{Code, Finding, blank};
use crate::spec::document::{Cell, Colourway, Part, Section, Spec};
use crate::spec::id::ItemId;
use crate::spec::item::Item;

pub fn header(spec: &Spec, findings: &mut Vec<Finding>) {
    let header = &spec.header;
    let base_size = header.base_size.as_ref();
    let unknown = |id: &ItemId| spec.size(id).is_none();
    let checks = [
        (blank(&header.number), Code::NumberMissing, "number"),
        (blank(&header.name), Code::NameMissing, "name"),
        (base_size.is_none(), Code::BaseSizeMissing, "base_size"),
        (
            base_size.is_some_and(unknown),
            Code::BaseSizeUnknown,
            "base_size",
        ),
        (header.unit.is_none(), Code::UnitMissing, "unit"),
        (
            header.measured.is_none(),
            Code::MeasuringStateMissing,
            "measured",
        ),
    ];
    let found = checks.into_iter().filter(|(found, _, _)| *found);
    findings.extend(found.map(|(_, code, field)| Finding::new(code, Section::Header).field(field)));
}

pub fn sizes(spec: &Spec, findings: &mut Vec<Finding>) {
    let sizes = &spec.sizes.sizes;
    if sizes.is_empty() {
        findings.push(Finding::new(Code::SizesNone, Section::Sizes));
    }
    let mut seen = HashSet::new();
    for size in sizes {
        let finding = |code| {
            let finding = Finding::new(code, Section::Sizes).item(&size.id);
            finding.field("code")
        };
        if blank(&size.code) {
            findings.push(finding(Code::SizeCodeMissing));
        } else if !seen.insert(same_label(&size.code)) {
            findings.push(finding(Code::SizeCodeTwice).fact("code", size.code.as_str()));
        }
    }
}

pub fn drawings(spec: &Spec, findings: &mut Vec<Finding>) {
    let drawings = &spec.drawings.drawings;
    if drawings.is_empty() {
        findings.push(Finding::new(Code::DrawingsNone, Section::Drawings));
        return;
    }
    let lettered: HashSet<&ItemId> = {
        let lettered = spec.items().filter(|item| item.is_lettered());
        lettered.map(Item::id).collect()
    };
    let mut marked = HashSet::new();
    for marker in drawings.iter().flat_map(|drawing| &drawing.markers) {
        marked.insert(&marker.item);
        let finding = |code| Finding::new(code, Section::Drawings).item(&marker.id);
        if !lettered.contains(&marker.item) {
            findings.push(finding(Code::MarkerAdrift));
        }
        if marker.x > 10_000 || marker.y > 10_000 {
            findings.push(finding(Code::MarkerOutside));
        }
    }
    for point in spec
        .points
        .points
        .iter()
        .filter(|point| !marked.contains(&point.id))
    {
        let finding = Finding::new(Code::PointUnmarked, Section::Drawings).item(&point.id);
        let finding = finding.fact("letter", point.letter.as_str());
        findings.push(finding.fact("name", point.name.as_str()));
    }
}

pub fn colourways(spec: &Spec, findings: &mut Vec<Finding>) {
    let colourways = &spec.colourways;
    if colourways.parts.is_empty() {
        findings.push(Finding::new(Code::PartsNone, Section::Colourways));
    }
    if colourways.colourways.is_empty() {
        findings.push(Finding::new(Code::ColourwaysNone, Section::Colourways));
    }
    parts(spec, findings);
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
            cell(spec, colourway, part, findings);
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

fn cell(spec: &Spec, colourway: &Colourway, part: &Part, findings: &mut Vec<Finding>) {
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
            let Some(target) = spec.colourways.parts.iter().find(|part| part.id == *target) else {
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

pub fn ids(spec: &Spec, findings: &mut Vec<Finding>) {
    let mut seen = HashSet::new();
    for item in spec.items() {
        if !seen.insert(item.id()) {
            findings.push(Finding::new(Code::IdTwice, item.section()).item(item.id()));
        }
    }
}

/// Labels are one to a reader when they differ in case or in the spaces around them.
pub fn same_label(label: &str) -> String {
    label.trim().to_lowercase()
}
