//! Materials from rows.

use std::collections::BTreeMap;

use super::words::{self, NotAComposition, composition};
use super::{Field, Reader, Why};
use crate::spec::Spec;
use crate::spec::decimal::Decimal;
use crate::spec::document::{Consumption, Fibre, Material, Measured};
use crate::spec::id::ItemId;
use crate::spec::sheet::Place;

pub(super) fn read(
    reader: &mut Reader<'_>,
    spec: &Spec,
    new_id: &mut dyn FnMut() -> ItemId,
) -> (Spec, usize) {
    let mut after = spec.clone();
    let old = &spec.materials.materials;
    let mut count = 0;
    for row in reader.rows() {
        reader.row = row.row;
        let items = old.iter().map(|it| (it.letter.as_str(), it.name.as_str()));
        let at = row.among(items);
        let mut material = match at {
            Some(at) => old[at].clone(),
            None => Material {
                id: new_id(),
                ..Material::default()
            },
        };
        if at.is_none() {
            material.letter = row.letter;
        }
        if !row.name.is_empty() {
            material.name = row.name;
        }
        one(reader, spec, &mut material);
        if reader.failed() {
            continue;
        }
        count += 1;
        match at {
            Some(at) => after.materials.materials[at] = material,
            None => after.materials.materials.push(material),
        }
    }
    (after, count)
}

fn one(reader: &mut Reader<'_>, spec: &Spec, material: &mut Material) {
    if let Some(kind) = reader.word(&Field::Kind, words::kind) {
        material.kind = Some(kind);
    }
    reader.line(&Field::Supplier, &mut material.supplier);
    reader.line(&Field::Reference, &mut material.reference);
    reader.line(&Field::Placement, &mut material.placement);
    if let Some((place, text)) = reader.text(&Field::Composition) {
        match composition(text) {
            Ok(shares) => {
                let told = |shares: &[_]| shares.iter().map(fibre_and_percent).collect::<Vec<_>>();
                // What a sheet does not tell of a share stays, where the shares do.
                if told(&shares) != told(&material.composition) {
                    material.composition = shares;
                }
            }
            Err(NotAComposition::Unreadable) => reader.wrong(place, Why::Composition),
            Err(NotAComposition::Fibre(name)) => reader.wrong(place, Why::Fibre(name)),
        }
    }
    if let Some((_, mass, _)) = number(reader, &Field::Mass, |unit| {
        matches!(unit, "g/m²" | "g/m2" | "gsm" | "g" | "g/sqm").then_some(())
    }) {
        material.fabric.mass = Some(mass);
    }
    reader.positive(&Field::Width, &mut material.fabric.width);
    consumption(reader, spec, &mut material.consumption);
    if let Some((_, percent, _)) = number(reader, &Field::Wastage, |unit| {
        matches!(unit, "%").then_some(())
    }) {
        material.wastage.get_or_insert_default().percent = Some(percent);
    }
}

fn fibre_and_percent(share: &crate::spec::document::Share) -> (Option<Fibre>, Option<Decimal>) {
    (share.fibre, share.percent)
}

fn consumption(reader: &mut Reader<'_>, spec: &Spec, consumption: &mut Consumption) {
    let before = consumption.clone();
    let mut unit = reader.word(&Field::Measured, words::measured);
    if let Some((place, amount, named)) = number(reader, &Field::Amount, words::measured) {
        agree(reader, place, &mut unit, named);
        consumption.amount = Some(amount);
    }
    let mut by_size = BTreeMap::new();
    for size in &spec.sizes.sizes {
        let field = Field::Size(size.id.clone());
        if let Some((place, amount, named)) = number(reader, &field, words::measured) {
            agree(reader, place, &mut unit, named);
            by_size.insert(size.id.clone(), amount);
        }
    }
    if unit.is_some() {
        consumption.unit = unit;
    }
    if by_size.is_empty() {
        return;
    }
    let sizes = || spec.sizes.sizes.iter().map(|size| &size.id);
    // As it is written already: one amount, and what differs from it.
    let given = |consumption: &Consumption| {
        sizes().all(|id| {
            by_size
                .get(id)
                .is_none_or(|it| consumption.of(id) == Some(*it))
        })
    };
    if given(consumption) {
        return;
    }
    let all = by_size.len() == spec.sizes.sizes.len();
    let base = spec
        .header
        .base_size
        .as_ref()
        .and_then(|id| by_size.get(id));
    if all && consumption.amount == before.amount {
        consumption.amount = base.or(by_size.values().next()).copied();
    }
    let mut each = match all {
        true => BTreeMap::new(),
        false => before.by_size,
    };
    each.extend(by_size);
    each.retain(|_, amount| Some(*amount) != consumption.amount);
    consumption.by_size = each;
}

/// A unit beside an amount is that of the row, or contradicts it.
fn agree(
    reader: &mut Reader<'_>,
    place: Place,
    unit: &mut Option<Measured>,
    named: Option<Measured>,
) {
    match (named, *unit) {
        (Some(named), Some(unit)) if named != unit => {
            reader.wrong(place, Why::UnknownWord(Field::Measured));
        }
        (Some(named), None) => *unit = Some(named),
        _ => {}
    }
}

/// A number that is not negative, and the unit that may stand behind it.
fn number<T>(
    reader: &mut Reader<'_>,
    field: &Field,
    unit: impl Fn(&str) -> Option<T>,
) -> Option<(Place, Decimal, Option<T>)> {
    let (place, text) = reader.text(field)?;
    let behind = |c: char| c.is_alphabetic() || c == '%';
    let end = text.find(behind).unwrap_or(text.len());
    let (digits, behind) = text.split_at(end);
    let behind = words::plain(behind);
    let named = match behind.as_str() {
        "" => None,
        behind => match unit(behind) {
            Some(unit) => Some(unit),
            None => return reader.none(place, Why::NotANumber),
        },
    };
    match Decimal::read(digits) {
        Ok(number) if number.is_negative() => reader.none(place, Why::Negative),
        Ok(number) => Some((place, number, named)),
        Err(_) => reader.none(place, Why::NotANumber),
    }
}
