//! How many kilograms of a fabric a colourway needs.

use super::Lack;
use crate::spec::decimal::Decimal;
use crate::spec::document::{
    Colourway, Consumption, Material, Measured, Spec, Structure, Wastage, WastageBasis,
};
use crate::spec::id::ItemId;

/// Of so many garments of the colourway, with wastage, unrounded. Divided last, so that nothing is
/// rounded on the way.
pub(super) fn kilograms(
    spec: &Spec,
    colourway: &Colourway,
    pieces: u32,
    material: &Material,
) -> Result<Decimal, Lack> {
    let weights = weights(spec, &colourway.id);
    let (sum, count) = consumption(&material.consumption, &weights)?;
    let grams = grams(material)?;
    let (gross, net) = wastage(material.wastage.as_ref())?;
    let product = || {
        let garments = Decimal::new(i64::from(pieces), 0);
        let grams = garments.times(sum)?.times(grams)?.times(gross)?;
        grams.over(count.times(net)?.times(Decimal::new(1000, 0))?)
    };
    product().ok_or(Lack::TooLarge)
}

/// How much each size counts: by the ratio packs of the colourway, else by those of every
/// colourway, else all alike. A spec without sizes has one.
fn weights<'a>(spec: &'a Spec, colourway: &ItemId) -> Vec<(Option<&'a ItemId>, Decimal)> {
    let sizes = || spec.sizes.sizes.iter().map(|size| &size.id);
    let by_packs = |of: Option<&ItemId>| -> Vec<(Option<&'a ItemId>, Decimal)> {
        let counted = sizes().map(|size| {
            let packs = spec.packing.ratio.iter();
            let packs = packs.filter(|pack| pack.colourway.as_ref() == of);
            let pieces = packs.filter_map(|pack| pack.pieces.get(size));
            let pieces: i64 = pieces.map(|it| i64::from(*it)).sum();
            (Some(size), Decimal::new(pieces, 0))
        });
        counted.filter(|(_, pieces)| pieces.is_positive()).collect()
    };
    let packs = [by_packs(Some(colourway)), by_packs(None)];
    if let Some(packs) = packs.into_iter().find(|it| !it.is_empty()) {
        return packs;
    }
    let alike: Vec<_> = sizes().map(|size| (Some(size), Decimal::ONE)).collect();
    if alike.is_empty() {
        vec![(None, Decimal::ONE)]
    } else {
        alike
    }
}

/// The weighted sum and the sum of the weights: their quotient is the mean of one garment.
fn consumption(
    consumption: &Consumption,
    weights: &[(Option<&ItemId>, Decimal)],
) -> Result<(Decimal, Decimal), Lack> {
    let zero = (Decimal::ZERO, Decimal::ZERO);
    weights
        .iter()
        .try_fold(zero, |(sum, count), (size, weight)| {
            let figure = match size {
                Some(size) => consumption.of(size),
                None => consumption.amount,
            };
            let figure = figure
                .filter(|it| it.is_positive())
                .ok_or(Lack::Consumption)?;
            let sum = figure.times(*weight).and_then(|it| it.plus(sum));
            let count = count.plus(*weight);
            sum.zip(count).ok_or(Lack::TooLarge)
        })
}

/// What one unit of consumption weighs.
fn grams(material: &Material) -> Result<Decimal, Lack> {
    let fabric = &material.fabric;
    let mass = || fabric.mass.filter(|it| it.is_positive()).ok_or(Lack::Mass);
    match material.consumption.unit {
        Some(Measured::Gram) => Ok(Decimal::ONE),
        Some(Measured::SquareMetre) => mass(),
        Some(Measured::Metre) => {
            let mass = mass()?;
            let width = fabric.width.map(|it| it.nm).filter(|it| it.is_positive());
            let width = Decimal::new(width.ok_or(Lack::Width)?.as_nm(), 9);
            // A tube's width lies double.
            let layers = match &fabric.structure {
                Some(Structure::Knitted(knit)) if knit.tubular => 2,
                _ => 1,
            };
            let metre = width.times(Decimal::new(layers, 0));
            metre.and_then(|it| it.times(mass)).ok_or(Lack::TooLarge)
        }
        Some(Measured::Piece) | None => Err(Lack::ConsumptionUnit),
    }
}

/// What is bought for what is used, as gross ÷ net. An allowance of 5 % is 105 ÷ 100; of a loss of
/// 5 % of the input, 95 ÷ 100 is left.
fn wastage(wastage: Option<&Wastage>) -> Result<(Decimal, Decimal), Lack> {
    let none = Ok((Decimal::HUNDRED, Decimal::HUNDRED));
    let Some(wastage) = wastage else {
        return none;
    };
    let percent = wastage
        .percent
        .filter(|it| !it.is_negative())
        .ok_or(Lack::Wastage)?;
    match wastage.basis {
        _ if percent == Decimal::ZERO => none,
        Some(WastageBasis::Allowance) => {
            let gross = Decimal::HUNDRED.plus(percent).ok_or(Lack::TooLarge)?;
            Ok((gross, Decimal::HUNDRED))
        }
        Some(WastageBasis::LossOfInput) => {
            let net = Decimal::HUNDRED
                .minus(percent)
                .filter(|it| it.is_positive());
            Ok((Decimal::HUNDRED, net.ok_or(Lack::Wastage)?))
        }
        None => Err(Lack::Wastage),
    }
}
