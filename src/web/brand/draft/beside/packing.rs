//! Packing: the pieces of each pack with their sums, and the cartons that the planned pieces fill.

use askama::Template;

use crate::language::Text;
use crate::spec::packing::{cartons, cubic_metres, in_pack};
use crate::spec::units::DecimalSign;
use crate::spec::{Item, ItemId, Spec};

#[derive(Template)]
#[template(path = "brand/beside_packing.html")]
pub struct PackingPlate {
    t: Text,
    sizes: Vec<String>,
    packs: Vec<PackRow>,
    cartons: Vec<CartonRow>,
    /// Packs in one carton, and the pieces in it where there is one kind of pack.
    per_carton: Option<u32>,
    per_carton_pieces: Option<u64>,
    /// Cubic metres of a carton.
    volume: Option<String>,
    /// Of the heaviest that a carton may be.
    mass: Option<String>,
}

struct PackRow {
    name: String,
    /// Empty: every one.
    colourway: String,
    pieces: Vec<u32>,
    total: u64,
}

struct CartonRow {
    colourway: String,
    pieces: u64,
    packs: u64,
    left: u64,
    cartons: Option<u64>,
    /// Cubic metres of them.
    volume: Option<String>,
}

impl PackingPlate {
    pub fn of(t: Text, spec: &Spec) -> PackingPlate {
        let packing = &spec.packing;
        let known = |id: &ItemId| spec.item(id).map(Item::known_by).unwrap_or_default();
        let packs = packing.ratio.iter().map(|pack| {
            let sizes = spec.sizes.sizes.iter();
            PackRow {
                name: pack.name.clone(),
                colourway: pack.colourway.as_ref().map(known).unwrap_or_default(),
                pieces: sizes
                    .map(|size| pack.pieces.get(&size.id).copied().unwrap_or(0))
                    .collect(),
                total: in_pack(pack),
            }
        });
        let volume = cubic_metres(&packing.carton);
        let write = |number: crate::spec::Decimal| number.show(DecimalSign::Point);
        let rows = cartons(spec).into_iter().map(|row| CartonRow {
            colourway: known(&row.colourway),
            volume: row.cartons.zip(volume).and_then(|(count, volume)| {
                let all = volume.times(crate::spec::Decimal::of(count.into()))?;
                Some(write(all.rounded(2)))
            }),
            pieces: row.pieces,
            packs: row.packs,
            left: row.left,
            cartons: row.cartons,
        });
        let one = match packing.ratio.as_slice() {
            [pack] => Some(in_pack(pack)),
            _ => None,
        };
        PackingPlate {
            t,
            sizes: spec
                .sizes
                .sizes
                .iter()
                .map(|size| size.code.clone())
                .collect(),
            packs: packs.collect(),
            cartons: rows.collect(),
            per_carton: packing.packs_per_carton,
            per_carton_pieces: one
                .zip(packing.packs_per_carton)
                .map(|(pieces, packs)| pieces.saturating_mul(u64::from(packs))),
            volume: volume.map(write),
            mass: packing.carton.mass_limit.map(write),
        }
    }
}
