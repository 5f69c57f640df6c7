//! Safety: cords of children's wear, and evidence of tests. What is found cautions and cites; the
//! text of the rule, local law and a licensed laboratory decide.

use std::collections::HashSet;

use super::{Code, Fact, Finding, blank, listed, on};
use crate::spec::document::{
    Cell, CordEnds, CordPlace, EvidenceKind, Exemption, Fibre, Market, Material, MaterialKind,
    Spec, Worn,
};
use crate::spec::safety::{self, Band, Figures, Rule};
use crate::spec::units::{Length, Unit};

pub fn safety(spec: &Spec, figures: &Figures, findings: &mut Vec<Finding>) {
    if safety::is_for_children(spec) {
        let children = Children::of(spec, figures);
        for material in spec.materials.materials.iter().filter(|it| is_cord(it)) {
            children.cord(material, findings);
        }
    }
    evidence(spec, figures, findings);
}

/// Drawcords and toggles, and whatever is said to be where the rules on cords look.
fn is_cord(material: &Material) -> bool {
    use MaterialKind::{CordStop, Drawcord, Eyelet};
    let placed = material.cord.place.is_some() && material.kind != Some(Eyelet);
    matches!(material.kind, Some(Drawcord | CordStop)) || placed
}

/// What is cited, and the sizes that it is for.
fn cited(finding: Finding, rule: &Rule, sizes: &[&str]) -> Finding {
    let finding = finding.fact("rule", rule.name());
    finding.fact("sizes", listed(sizes.iter().copied()))
}

/// The sizes of a child's garment that the rules on cords are for.
struct Children<'a> {
    spec: &'a Spec,
    figures: &'a Figures,
    us_hood_neck: Option<Vec<&'a str>>,
    us_waist: Option<Vec<&'a str>>,
    en_young: Option<Vec<&'a str>>,
    en_older: Option<Vec<&'a str>>,
}

impl<'a> Children<'a> {
    fn of(spec: &'a Spec, figures: &'a Figures) -> Self {
        let header = &spec.header;
        let us = header.sold_in(Market::Us) && safety::is_upper_outerwear(spec);
        let en = header.sold_in(Market::Eu) || header.sold_in(Market::Uk);
        let sizes = |there: bool, band: &Band| there.then(|| band.sizes(spec)).flatten();
        Self {
            spec,
            figures,
            us_hood_neck: sizes(us, &figures.us_hood_neck),
            us_waist: sizes(us, &figures.us_waist),
            en_young: sizes(en, &figures.en_young),
            en_older: sizes(en, &figures.en_older),
        }
    }

    fn cord(&self, material: &Material, findings: &mut Vec<Finding>) {
        match material.cord.place {
            None => findings.push(on(material, Code::CordPlaceMissing).field("cord.place")),
            Some(CordPlace::HoodNeck) => self.hood_neck(material, findings),
            Some(place) => self.elsewhere(material, place, findings),
        }
    }

    fn hood_neck(&self, material: &Material, findings: &mut Vec<Finding>) {
        let mut lifted = Vec::new();
        for (code, rule, sizes) in [
            (
                Code::CordHoodNeckUs,
                &safety::US_CORDS,
                self.us_hood_neck.as_ref(),
            ),
            (
                Code::CordHoodNeckEu,
                &safety::EN_CORDS,
                self.en_young.as_ref(),
            ),
        ] {
            let Some(sizes) = sizes else {
                continue;
            };
            match self.exemption(code) {
                Some(Exemption { reason, by, .. }) => {
                    lifted.push(format!("{}: {} ({})", rule.cited, reason.trim(), by.trim()));
                }
                None => {
                    let finding = on(material, code).field("cord.place");
                    findings.push(cited(finding, rule, sizes));
                }
            }
        }
        if !lifted.is_empty() {
            let finding = on(material, Code::CordExempted).field("cord.place");
            findings.push(finding.fact("reasons", lifted.join("; ")));
        }
        let free = matches!(
            material.cord.ends,
            Some(CordEnds::Free | CordEnds::Toggled) | None
        );
        if let Some(sizes) = self.en_older.as_ref().filter(|_| free) {
            let finding = on(material, Code::CordFreeEndsEu).field("cord.ends");
            findings.push(cited(finding, &safety::EN_CORDS, sizes));
        }
    }

    /// An owner's documented reason why the rule of this code does not apply.
    fn exemption(&self, code: Code) -> Option<&'a Exemption> {
        let mut exemptions = self.spec.header.exemptions.iter();
        exemptions.find(|it| {
            let given = !blank(&it.reason) && !blank(&it.by);
            code.can_be_lifted() && it.code == code.name() && given
        })
    }

    fn elsewhere(&self, material: &Material, place: CordPlace, findings: &mut Vec<Finding>) {
        let cord = &material.cord;
        let is_toggle = material.kind == Some(MaterialKind::CordStop);
        let us = self.us_waist.as_ref();
        let us = us.filter(|_| matches!(place, CordPlace::Waist | CordPlace::Hem));
        let en = self.en_young.iter().chain(&self.en_older).flatten();
        let mut en: Vec<&str> = en.copied().collect();
        // A size may be for ages on both sides of the line.
        en.dedup();
        let in_en = self.en_young.is_some() || self.en_older.is_some();
        if let Some(field) = unsaid(material).filter(|_| !is_toggle)
            && (us.is_some() || in_en)
        {
            let finding = on(material, Code::CordFreeMissing).field(field);
            findings.push(finding.fact("missing", Fact::field(field)));
        }
        if let Some(sizes) = us {
            let (rule, most) = (&safety::US_CORDS, self.figures.us_cord);
            if let Some(free) = cord.free.filter(|free| free.nm > most) {
                let finding = on(material, Code::CordLongUs).field("cord.free");
                findings.push(cited(too_long(finding, free.nm, most), rule, sizes));
            }
            if is_toggle || cord.ends == Some(CordEnds::Toggled) {
                let finding = on(material, Code::CordToggledUs).field("cord.ends");
                findings.push(cited(finding, rule, sizes));
            }
            let held = cord.bartacked || cord.ends == Some(CordEnds::Fixed);
            if !held && !is_toggle {
                let finding = on(material, Code::CordLooseUs).field("cord.bartacked");
                findings.push(cited(finding, rule, sizes));
            }
        }
        if !in_en {
            return;
        }
        let rule = &safety::EN_CORD_LENGTHS;
        if place == CordPlace::Back {
            let finding = on(material, Code::CordBackEu).field("cord.place");
            findings.push(cited(finding, rule, &en));
        }
        if let Some(most) = self.figures.en_cord(place, self.en_young.is_some())
            && let Some(free) = cord.free.filter(|free| free.nm > most)
        {
            let finding = on(material, Code::CordLongEu).field("cord.free");
            findings.push(cited(too_long(finding, free.nm, most), rule, &en));
        }
    }
}

/// What the rules on cords ask for and the material does not tell.
fn unsaid(material: &Material) -> Option<&'static str> {
    match (material.cord.ends, material.cord.free) {
        (None, _) => Some("cord.ends"),
        // What is sewn in at both ends has nothing that hangs out.
        (Some(CordEnds::Fixed), _) => None,
        (Some(_), None) => Some("cord.free"),
        (Some(_), Some(_)) => None,
    }
}

fn too_long(finding: Finding, free: Length, most: Length) -> Finding {
    let finding = finding.fact("free", Fact::LengthIn(free, Unit::Mm));
    finding.fact("most", Fact::LengthIn(most, Unit::Mm))
}

/// Reports of tests that a market is likely to ask for, and that the material does not name.
fn evidence(spec: &Spec, figures: &Figures, findings: &mut Vec<Finding>) {
    let header = &spec.header;
    let us = header.sold_in(Market::Us);
    let reach = header.sold_in(Market::Eu) || header.sold_in(Market::Uk);
    let children = safety::is_for_children(spec);
    let sizes = |there: bool, band: &Band| there.then(|| band.sizes(spec)).flatten();
    let under_three = sizes(us && children, &figures.under_three);
    let up_to_twelve = sizes(us && children, &figures.up_to_twelve);
    let sleepwear = us && children && header.worn == Some(Worn::Sleepwear);
    let small = sizes(sleepwear, &figures.sleepwear_small);
    let large = sizes(sleepwear, &figures.sleepwear_large);
    let coloured = coloured(spec);
    for material in &spec.materials.materials {
        let mut lacks = |kind, code, rule: &Rule, sizes: &[&str]| {
            let mut given = material.evidence.iter();
            if !given.any(|it| it.kind == Some(kind) && !blank(&it.report)) {
                let finding = on(material, code).field("evidence");
                findings.push(cited(finding, rule, sizes));
            }
        };
        if let Some(sizes) = under_three.as_ref().filter(|_| comes_off(material)) {
            let rule = &safety::US_SMALL_PARTS;
            lacks(
                EvidenceKind::SmallParts,
                Code::EvidenceSmallParts,
                rule,
                sizes,
            );
        }
        if let Some(sizes) = up_to_twelve.as_ref().filter(|_| may_hold_lead(material)) {
            lacks(
                EvidenceKind::Lead,
                Code::EvidenceLead,
                &safety::US_LEAD,
                sizes,
            );
        }
        if material.is_fabric() {
            let kind = EvidenceKind::Flammability;
            if let Some(sizes) = &small {
                let rule = &safety::US_SLEEPWEAR_SMALL;
                lacks(kind, Code::EvidenceSleepwear, rule, sizes);
            } else if let Some(sizes) = &large {
                let rule = &safety::US_SLEEPWEAR_LARGE;
                lacks(kind, Code::EvidenceSleepwear, rule, sizes);
            } else if us && !is_exempt(material, figures) {
                lacks(
                    kind,
                    Code::EvidenceFlammability,
                    &safety::US_FLAMMABILITY,
                    &[],
                );
            }
            if reach && coloured.contains(&material.id) {
                lacks(
                    EvidenceKind::AzoDyes,
                    Code::EvidenceAzoDyes,
                    &safety::AZO_DYES,
                    &[],
                );
            }
        }
        if reach && material.metal_on_skin {
            lacks(
                EvidenceKind::Nickel,
                Code::EvidenceNickel,
                &safety::NICKEL,
                &[],
            );
        }
    }
}

/// Hard trims, which may come off.
fn comes_off(material: &Material) -> bool {
    use MaterialKind::{Buckle, Button, CordStop, CordTip, Eyelet, Snap, Zip};
    let kinds = [Buckle, Button, CordStop, CordTip, Eyelet, Snap, Zip];
    material.kind.is_some_and(|kind| kinds.contains(&kind))
}

/// Trims of metal, of plastic, or with paint or print on them. Undecorated textiles are let be,
/// which is from memory.
fn may_hold_lead(material: &Material) -> bool {
    use MaterialKind::{Patch, Reflective, Transfer};
    let kinds = [Patch, Reflective, Transfer];
    comes_off(material) || material.kind.is_some_and(|kind| kinds.contains(&kind))
}

/// Whether [`safety::US_FLAMMABILITY`] asks for no test of a fabric: from memory. A raised surface
/// is always asked about.
fn is_exempt(material: &Material, figures: &Figures) -> bool {
    const FIBRES: [Fibre; 8] = [
        Fibre::Acrylic,
        Fibre::Modacrylic,
        Fibre::Polyamide,
        Fibre::Polypropylene,
        Fibre::Polyethylene,
        Fibre::Polyester,
        Fibre::Wool,
        Fibre::VirginWool,
    ];
    let shares = &material.composition;
    let mut fibres = shares.iter().map(|share| share.fibre);
    let listed = !shares.is_empty() && fibres.all(|it| it.is_some_and(|it| FIBRES.contains(&it)));
    let heavy = material.fabric.mass;
    let heavy = heavy.is_some_and(|mass| mass >= figures.us_plain_exempt);
    !material.fabric.raised && (heavy || listed)
}

/// The materials that are dyed or printed in some colourway.
fn coloured(spec: &Spec) -> HashSet<&crate::spec::id::ItemId> {
    let dyed = |part| {
        let mut rows = spec.colourways.cells.values();
        rows.any(|row| {
            matches!(
                row.get(part),
                Some(Cell::Colour(_) | Cell::DyedToMatch { .. })
            )
        })
    };
    let materials = spec.materials.materials.iter();
    let coloured = materials.filter(|material| material.parts.iter().any(dyed));
    coloured.map(|material| &material.id).collect()
}
