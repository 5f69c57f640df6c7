//! Checks of the materials: what each is of and for, and whether enough is ordered.

use std::collections::HashSet;

use super::known::Known;
use super::{Code, Fact, Finding, blank, on};
use crate::spec::composition::{self, ClaimKind, Tables, unusual_claims};
use crate::spec::decimal::Decimal;
use crate::spec::document::{
    Cell, Colourway, Consumption, Fibre, Material, MaterialKind, Minimum, MinimumLevel, Section,
    Share, Spec,
};
use crate::spec::fabric::{computed_mass, mass_disagrees};
use crate::spec::id::ItemId;
use crate::spec::item::Item;

pub fn materials(known: &Known, tables: &Tables, findings: &mut Vec<Finding>) {
    let spec = known.spec;
    let materials = &spec.materials.materials;
    if materials.is_empty() {
        findings.push(Finding::new(Code::MaterialsNone, Section::Materials));
        return;
    }
    let labelled = spec.header.labelled();
    if labelled && !materials.iter().any(Material::is_fabric) {
        findings.push(Finding::new(Code::FabricsNone, Section::Materials));
    }
    let composed = materials.iter().filter(|it| is_composed(it)).count();
    let callouts = spec.construction.callouts.iter();
    let named: HashSet<&ItemId> = callouts
        .flat_map(|callout| callout.thread.iter().chain(&callout.tape))
        .collect();
    for material in materials {
        if material.kind.is_none() {
            findings.push(on(material, Code::MaterialKindMissing).field("kind"));
        }
        if !is_used(known, material, &named) {
            findings.push(on(material, Code::MaterialUnused).field("parts"));
        }
        if labelled && is_composed(material) {
            if material.composition.is_empty() {
                findings.push(on(material, Code::CompositionMissing).field("composition"));
            }
            if composed > 1 && material.component.is_none() {
                findings.push(on(material, Code::ComponentMissing).field("component"));
            }
        }
        shares(material, findings);
        if material.kind == Some(MaterialKind::Zip)
            && material.zip.opening.is_none()
            && material.length.is_none()
            && material.length_by_size.is_empty()
        {
            findings.push(on(material, Code::ZipSizeMissing).field("length"));
        }
        mass(material, findings);
        minimum(spec, material, findings);
    }
    claims(known, tables, findings);
}

/// Whether the composition label has a line for it: fabrics, fillings, and what is said to be one
/// of the garment's components.
fn is_composed(material: &Material) -> bool {
    material.is_fabric()
        || material.kind == Some(MaterialKind::Padding)
        || material.component.is_some()
}

/// Labels and packing need no part, and what lies hidden may have its place in words instead. That
/// there are no parts at all is told once, elsewhere.
fn is_used(known: &Known, material: &Material, named: &HashSet<&ItemId>) -> bool {
    let in_words = match material.kind {
        Some(MaterialKind::Label | MaterialKind::Packing) => return true,
        _ if known.spec.colourways.parts.is_empty() => return true,
        Some(
            MaterialKind::Interlining
            | MaterialKind::Padding
            | MaterialKind::Elastic
            | MaterialKind::Other,
        ) => !blank(&material.placement),
        _ => false,
    };
    in_words || named.contains(&material.id) || material.parts.iter().any(|id| known.is_part(id))
}

fn shares(material: &Material, findings: &mut Vec<Finding>) {
    let shares = &material.composition;
    if shares.is_empty() {
        return;
    }
    if !shares.iter().all(is_whole) {
        findings.push(on(material, Code::ShareIncomplete).field("composition"));
        return;
    }
    let total = composition::total(shares);
    if total != Decimal::HUNDRED {
        let finding = on(material, Code::CompositionTotal).field("composition");
        findings.push(finding.fact("total", total));
    }
}

fn is_whole(share: &Share) -> bool {
    let called = match share.fibre {
        Some(Fibre::Other) => !blank(&share.name),
        Some(_) => true,
        None => false,
    };
    called && share.percent.is_some_and(Decimal::is_positive)
}

/// What compositions, names and texts claim that the Regulation and 16 CFR 303 have rules for.
fn claims(known: &Known, tables: &Tables, findings: &mut Vec<Finding>) {
    for claim in unusual_claims(known.spec, tables) {
        let code = match claim.kind {
            ClaimKind::HundredWithSecond | ClaimKind::SaysOnlyOne => Code::ClaimHundred,
            ClaimKind::FibreTwice => Code::FibreTwice,
            ClaimKind::VirginWool => Code::VirginWool,
        };
        let called = |id: &ItemId| known.item(id).map_or_else(String::new, Item::known_by);
        let item = match &claim.item {
            Some(item) => called(item),
            None => known.spec.header.name.clone(),
        };
        let finding = Finding::new(code, claim.section).field(claim.field);
        let finding = finding.fact("item", item);
        findings.push(Finding {
            item: claim.item,
            ..finding.fact("material", called(&claim.material))
        });
    }
}

/// The declared mass against the one that the yarns come to.
fn mass(material: &Material, findings: &mut Vec<Finding>) {
    let structure = material.fabric.structure.as_ref();
    if let (Some(declared), Some(computed)) =
        (material.fabric.mass, structure.and_then(computed_mass))
        && mass_disagrees(declared, computed)
    {
        let finding = on(material, Code::MassDisagrees).field("fabric.mass");
        let finding = finding.fact("declared", declared);
        findings.push(finding.fact("computed", computed.rounded(0)));
    }
}

/// Minimum orders against the pieces that are typed for the colourways. Nothing is said where
/// pieces, consumption or units do not let it be worked out, nor of dimensions, whose share of the
/// order is not known.
fn minimum(spec: &Spec, material: &Material, findings: &mut Vec<Finding>) {
    let Some(Minimum {
        quantity: Some(least),
        unit: Some(unit),
        level: Some(level),
    }) = material.minimum
    else {
        return;
    };
    let consumption = &material.consumption;
    let (true, Some(each)) = (consumption.unit == Some(unit), of_one(consumption)) else {
        return;
    };
    let colourways: Vec<&Colourway> = {
        let all = spec.colourways.colourways.iter();
        all.filter(|it| takes(spec, it, material)).collect()
    };
    let needed = |pieces: u32| Decimal::new(i64::from(pieces), 0).times(each);
    let finding = |needed: Decimal, colourway: String| {
        let finding = on(material, Code::MinimumUnmet).field("minimum");
        let finding = finding
            .fact("needed", needed.rounded(1))
            .fact("minimum", least);
        let finding = finding.fact("unit", Fact::word(unit));
        finding.fact("colourway", colourway)
    };
    match level {
        MinimumLevel::Dimension => {}
        MinimumLevel::Style => {
            let pieces: Option<u32> = colourways.iter().map(|it| it.pieces).sum();
            let needed = pieces.filter(|pieces| *pieces > 0).and_then(needed);
            if let Some(needed) = needed.filter(|needed| *needed < least) {
                let names: Vec<String> = colourways.iter().map(|it| called(it)).collect();
                findings.push(finding(needed, names.join(", ")));
            }
        }
        MinimumLevel::Colour => {
            for colourway in colourways {
                let pieces = colourway.pieces.filter(|pieces| *pieces > 0);
                if let Some(needed) = pieces.and_then(needed)
                    && needed < least
                {
                    findings.push(finding(needed, called(colourway)));
                }
            }
        }
    }
}

fn called(colourway: &Colourway) -> String {
    Item::Colourway(colourway).known_by()
}

/// What one garment takes: as said, or the mean of its sizes.
fn of_one(consumption: &Consumption) -> Option<Decimal> {
    if consumption.amount.is_some() {
        return consumption.amount;
    }
    let mut sizes = consumption.by_size.values();
    let sum = sizes.try_fold(Decimal::ZERO, |sum, amount| sum.plus(*amount))?;
    let count = i64::try_from(consumption.by_size.len()).ok()?;
    sum.over(Decimal::new(count, 0))
}

/// Whether a colourway has the material: not where it does without all of its parts.
fn takes(spec: &Spec, colourway: &Colourway, material: &Material) -> bool {
    let mut parts = material.parts.iter();
    let without = |part| {
        let cell = spec.colourways.cell(&colourway.id, part);
        matches!(cell, Some(Cell::None {}))
    };
    material.parts.is_empty() || !parts.all(without)
}
