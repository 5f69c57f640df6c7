//! Checks of the labels and of what they must say in a market.

use super::artwork::complete;
use super::known::Known;
use super::{Code, Fact, Finding, blank, on, same_label};
use crate::spec::care;
use crate::spec::document::{Header, Label, LabelContent, LabelMade, Market, Section};
use crate::spec::item::Item;
use crate::spec::units::{Length, Unit};

pub fn labels(known: &Known, findings: &mut Vec<Finding>) {
    let (header, labels) = (&known.spec.header, &known.spec.labels);
    let says = |content| labels.labels.iter().any(|label| label.says(content));
    let us = header.sold_in(Market::Us);
    let customary = header.sold_in(Market::Eu) || header.sold_in(Market::Uk);
    let care_label = says(LabelContent::Care);
    let care_missing = care::missing_for_us(&labels.care);
    if let (true, Some(first)) = (us, care_missing.first()) {
        let finding = Finding::new(Code::CareMissing, Section::Labels).field(first);
        findings.push(finding.fact("missing", Fact::Fields(care_missing)));
    }
    let checks = [
        (
            header.labelled() && !says(LabelContent::Composition),
            Code::CompositionLabelMissing,
        ),
        (us && !care_label, Code::CareLabelMissing),
        (us && !says(LabelContent::Origin), Code::OriginLabelMissing),
    ];
    let found = checks.into_iter().filter(|(found, _)| *found);
    findings.extend(found.map(|(_, code)| Finding::new(code, Section::Labels)));
    let said = !care::treatments(&labels.care).is_empty();
    if !us && customary && !(care_label && said) {
        let finding = Finding::new(Code::CareCustomary, Section::Labels);
        findings.push(finding.field("care.wash"));
    }
    harsh(known, findings);
    for label in &labels.labels {
        one(header, label, findings);
    }
}

/// The care is no harsher than the most delicate component bears.
fn harsh(known: &Known, findings: &mut Vec<Finding>) {
    let harsher = care::harsher(known.spec);
    let Some((first, _)) = harsher.first() else {
        return;
    };
    let mut treatments: Vec<&'static str> = Vec::new();
    let mut materials: Vec<String> = Vec::new();
    for (treatment, material) in &harsher {
        let name = known
            .item(material)
            .map_or_else(String::new, Item::known_by);
        if !treatments.contains(treatment) {
            treatments.push(treatment);
        }
        if !materials.contains(&name) {
            materials.push(name);
        }
    }
    let finding = Finding::new(Code::CareHarsh, Section::Labels).field(first);
    let finding = finding.fact("treatments", Fact::Fields(treatments));
    findings.push(finding.fact("materials", materials.join(", ")));
}

fn one(header: &Header, label: &Label, findings: &mut Vec<Finding>) {
    let sides = [("width", label.width), ("height", label.height)];
    for (field, side) in sides {
        if !side.is_some_and(|side| side.nm.is_positive()) {
            let finding = on(label, Code::LabelSizeMissing).field(field);
            findings.push(finding.fact("missing", Fact::field(field)));
        }
    }
    if complete(&label.distances) == 0 {
        findings.push(on(label, Code::LabelPlaceMissing).field("distances"));
    }
    if let (Some(text), Some(made)) = (label.text_height, label.made) {
        let least = smallest_text(made);
        if text.nm < least {
            let finding = on(label, Code::TextTooSmall).field("text_height");
            let finding = finding.fact("height", Fact::LengthIn(text.nm, Unit::Mm));
            let finding = finding.fact("least", Fact::LengthIn(least, Unit::Mm));
            findings.push(finding.fact("method", Fact::word(made)));
        }
    }
    let texts = label.texts.iter().filter(|text| !blank(&text.text));
    let said: Vec<String> = texts.map(|text| same_label(&text.language)).collect();
    let mut languages = header.languages.iter();
    if !said.is_empty()
        && let Some(language) = languages.find(|it| !said.contains(&same_label(it)))
    {
        let finding = on(label, Code::LabelLanguageMissing).field("texts");
        findings.push(finding.fact("language", language.as_str()));
    }
}

/// The height of letters below which a label is hard to read. Common practice, no source.
fn smallest_text(made: LabelMade) -> Length {
    let tenths = match made {
        LabelMade::Woven => 15,
        LabelMade::Printed | LabelMade::Transfer => 12,
    };
    Length::nm(tenths * 100_000)
}
