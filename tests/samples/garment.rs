//! Garments that are sewn, with or without faults, and measured.

use std::collections::BTreeMap;

use fellseam::sample::contract::{Contract, Piece, Place, Reading};
use fellseam::spec::document::Direction;
use fellseam::spec::{ItemId, Length, PieceId, grade};

use crate::chance::Chance;
use crate::fault::Fault;
use crate::packs;

/// The frozen chart of a pack.
pub fn contract(pack: &str) -> Contract {
    let spec = packs::spec(pack);
    let chart = grade(&spec).chart(&spec).expect("the pack is whole");
    Contract::of(&spec, &chart)
}

/// In centimetres, as all the packs are written.
pub fn cm(length: Length) -> f64 {
    length.as_nm() as f64 / 1e7
}

/// What the chart asks for, in centimetres.
pub fn spec(contract: &Contract, size: &ItemId, point: &ItemId) -> f64 {
    cm(contract.columns[size][point].spec)
}

/// The larger tolerance of a point, in centimetres.
pub fn tolerance(contract: &Contract, size: &ItemId, point: &ItemId) -> f64 {
    let limits = &contract.columns[size][point];
    cm(limits.minus.max(limits.plus))
}

/// Fabrics and directions with at least four points.
pub fn groups(contract: &Contract) -> Vec<(ItemId, Direction)> {
    let mut counts: BTreeMap<(ItemId, Direction), usize> = BTreeMap::new();
    for place in &contract.points {
        if let (Some(fabric), Some(along)) = (&place.fabric, place.along) {
            *counts.entry((fabric.clone(), along)).or_default() += 1;
        }
    }
    let enough = counts.into_iter().filter(|(_, count)| *count >= 4);
    enough.map(|(group, _)| group).collect()
}

/// The sizes that the pieces of a sample are made in. A size set has the base size and others, the
/// furthest first; else all are of one size, or half of them of another.
pub fn sizes(
    contract: &Contract,
    pieces: usize,
    size_set: bool,
    chance: &mut Chance,
) -> Vec<ItemId> {
    let base = contract
        .sizes
        .iter()
        .position(|size| *size == contract.base);
    let base = base.expect("the base size is one of them") as i64;
    let mut others: Vec<usize> = (0..contract.sizes.len()).collect();
    others.retain(|size| *size as i64 != base);
    others.sort_by_key(|size| -(*size as i64 - base).abs());
    let set = |others: &[usize]| {
        let numbers = [base as usize].into_iter().chain(others.iter().copied());
        numbers
            .map(|size| contract.sizes[size].clone())
            .collect::<Vec<_>>()
    };
    let mut sizes = if size_set {
        set(&others)
    } else {
        match chance.below(3) {
            0 => vec![contract.base.clone()],
            1 => vec![chance.one(&contract.sizes).clone()],
            _ => set(&others),
        }
    };
    sizes.truncate(pieces);
    if pieces == 4 && sizes.len() == 4 && chance.below(2) == 0 {
        sizes.truncate(2);
    }
    let different = sizes.len();
    (0..pieces)
        .map(|piece| sizes[piece % different].clone())
        .collect()
}

/// Sews and measures the pieces: each value is the chart's, moved by the faults and by noise, and
/// read to a millimetre.
pub fn made(
    contract: &Contract,
    sizes: &[ItemId],
    faults: &[Fault],
    deviation: f64,
    chance: &mut Chance,
) -> Vec<Piece> {
    let pieces = sizes.iter().enumerate().map(|(number, size)| {
        let sewn = |place: &Place, chance: &mut Chance| {
            let size = faults
                .iter()
                .find_map(|fault| fault.really(number))
                .unwrap_or(size);
            let spec = spec(contract, size, &place.point);
            let moved = faults
                .iter()
                .map(|fault| fault.moves(contract, place, spec));
            spec + moved.sum::<f64>() + chance.normal(deviation)
        };
        let values = contract.points.iter().map(|place| {
            let value = sewn(place, chance);
            (place.point.clone(), value)
        });
        let mut values: BTreeMap<ItemId, f64> = values.collect();
        for fault in faults {
            fault.write(number, &mut values);
        }
        let read = |value: f64| Length::nm((value * 10.0).round() as i64 * 1_000_000);
        let values = values
            .into_iter()
            .map(|(point, value)| (point, read(value)));
        Piece {
            id: PieceId::new(format!("{}", number + 1)),
            size: size.clone(),
            readings: vec![Reading {
                by: "factory".to_owned(),
                values: values.collect(),
            }],
        }
    });
    pieces.collect()
}
