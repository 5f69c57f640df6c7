//! Materials: what each is, where it goes, how much of it there is.

use serde::Serialize;

use super::{Fact, Head, OfSize, Writer};
use crate::language::shown;
use crate::spec::decimal::Decimal;
use crate::spec::document::{Fields, Material, Record};
use crate::spec::{Item, ItemId, fabric};

#[derive(Serialize)]
pub struct MaterialRow {
    pub head: Head,
    pub kind: String,
    pub placement: String,
    /// The parts whose colour it takes.
    pub parts: Vec<PartName>,
    /// Fibre by fibre, in words.
    pub composition: String,
    /// How it is made: a fabric's structure, a zip's teeth.
    pub made: Vec<Fact>,
    /// What care it bears at most.
    pub care: Vec<String>,
    /// Its own lengths.
    pub length: Vec<Fact>,
    pub length_by_size: Vec<OfSize>,
    pub supply: Vec<Fact>,
    /// So much for one garment, and where the figure comes from.
    pub consumption: Vec<Fact>,
    pub consumption_by_size: Vec<OfSize>,
    pub order: Vec<Fact>,
    pub evidence: Vec<String>,
}

#[derive(Serialize)]
pub struct PartName {
    pub letter: String,
    pub name: String,
}

impl Writer<'_> {
    pub(super) fn materials(&self) -> Vec<MaterialRow> {
        let materials = self.frozen.spec.materials.materials.iter();
        materials.map(|material| self.material(material)).collect()
    }

    fn material(&self, material: &Material) -> MaterialRow {
        let t = self.t;
        let mut fields = material.fields();
        let mut take = |names: &[&str]| self.take(&mut fields, names);
        // These have words of their own.
        take(&[
            "letter",
            "name",
            "kind",
            "parts",
            "placement",
            "composition",
            "length_by_size",
            "consumption.unit",
            "consumption.amount",
            "consumption.by_size",
            "evidence",
            "care.",
        ]);
        let supply = take(&["supplier", "reference", "nominated", "substitute"]);
        let length = take(&["length"]);
        let use_of = take(&["consumption.basis", "wastage"]);
        let order = take(&["minimum", "pack", "lead_days"]);
        let consumption = &material.consumption;
        let amount = consumption.amount.map(|amount| Fact {
            label: t.field("consumption.amount").to_string(),
            value: self.amount(material, amount),
            beside: None,
        });
        let shares = material.composition.iter();
        let shares = shares.filter_map(|share| self.phrase(share, "composition"));
        let evidence = material.evidence.iter();
        let care = material.care.fields();
        let parts = material.parts.iter().filter_map(|id| self.part_name(id));
        let sizes = || self.frozen.chart.sizes.iter();
        let lengths = sizes().filter_map(|size| {
            let length = material.length_by_size.get(size)?;
            Some(OfSize {
                code: self.size_code(size),
                value: self.phrase(length, "length")?,
            })
        });
        let amounts = sizes().filter_map(|size| {
            let amount = consumption.by_size.get(size)?;
            Some(OfSize {
                code: self.size_code(size),
                value: self.amount(material, *amount),
            })
        });
        MaterialRow {
            head: self.head(Item::Material(material)),
            kind: material
                .kind
                .map(|it| t.name(&it).to_string())
                .unwrap_or_default(),
            placement: material.placement.clone(),
            parts: parts.collect(),
            composition: shares.collect::<Vec<_>>().join(", "),
            length,
            length_by_size: lengths.collect(),
            supply,
            consumption: amount.into_iter().chain(use_of).collect(),
            consumption_by_size: amounts.collect(),
            order,
            evidence: evidence
                .filter_map(|it| self.phrase(it, "evidence"))
                .collect(),
            care: (care.iter())
                .map(|(name, value)| self.words.value(value, Some(name)))
                .collect(),
            // Last: all that nothing else has taken.
            made: self.made(material, &fields),
        }
    }

    /// The mass goes with its reference.
    fn made(&self, material: &Material, fields: &Fields) -> Vec<Fact> {
        let t = self.t;
        let mut facts = self.facts(fields);
        let mass = material.fabric.mass;
        let ounces = mass.and_then(fabric::ounces);
        let label = t.field("fabric.mass").to_string();
        let fact = facts.iter_mut().find(|fact| fact.label == label);
        if let (Some(fact), Some(ounces)) = (fact, ounces) {
            let ounces = ounces.rounded(1).show(self.frozen.decimal);
            fact.value = t
                .say("materials-mass")
                .with("mass", &fact.value)
                .with("ounces", ounces)
                .to_string();
        }
        facts
    }

    fn amount(&self, material: &Material, amount: Decimal) -> String {
        let amount = shown(amount.show(self.frozen.decimal));
        match material.consumption.unit {
            Some(unit) => format!("{amount} {}", self.t.name(&unit)),
            None => amount,
        }
    }

    pub(super) fn part_name(&self, id: &ItemId) -> Option<PartName> {
        let mut parts = self.frozen.spec.colourways.parts.iter();
        let part = parts.find(|part| part.id == *id)?;
        Some(PartName {
            letter: part.letter.clone(),
            name: part.name.clone(),
        })
    }
}
