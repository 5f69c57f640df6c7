//! Yarn and cloth: linear density, and mass per area from the yarns.
//!
//! Decimal throughout. The conversions are exact by definition: the international yard is 0.9144 m,
//! the international pound 453.59237 g (agreement of 1959).

use super::decimal::Decimal;
use super::document::{Structure, Yarn, YarnSystem};

/// A declared mass may be so many percent off the computed one. Our own limit.
const MASS_LIMIT: i64 = 15;

/// Tex, grams per kilometre, of the twisted yarn: of Nm 60/2, 33.3. Nothing while count or system
/// is missing, or where count or ply is not above zero.
pub fn tex(yarn: &Yarn) -> Option<Decimal> {
    let single = to_tex(yarn.count?, yarn.system?)?;
    let ply = Decimal::new(i64::from(yarn.ply.unwrap_or(1)), 0);
    single.times(ply).filter(|it| it.is_positive())
}

/// A count of a single yarn in tex. Nothing unless it is above zero.
pub fn to_tex(count: Decimal, system: YarnSystem) -> Option<Decimal> {
    count.is_positive().then_some(())?;
    match system {
        YarnSystem::Tex => Some(count),
        YarnSystem::Dtex => count.over(Decimal::new(10, 0)),
        YarnSystem::Denier => count.over(Decimal::new(9, 0)),
        YarnSystem::Nm => Decimal::new(1000, 0).over(count),
        YarnSystem::Ne => cotton_count(count),
    }
}

/// The count that a single yarn of so many tex has in a system. Nothing unless it is above zero.
pub fn from_tex(tex: Decimal, system: YarnSystem) -> Option<Decimal> {
    tex.is_positive().then_some(())?;
    match system {
        YarnSystem::Tex => Some(tex),
        YarnSystem::Dtex => tex.times(Decimal::new(10, 0)),
        YarnSystem::Denier => tex.times(Decimal::new(9, 0)),
        YarnSystem::Nm => Decimal::new(1000, 0).over(tex),
        YarnSystem::Ne => cotton_count(tex),
    }
}

/// Tex from Ne, and Ne from tex alike: 590.54 divided by it. A hank is 840 yd = 768.096 m, so that
/// Ne 1 has 453 592.37 g on 768.096 km.
fn cotton_count(it: Decimal) -> Option<Decimal> {
    let hank = Decimal::new(768_096, 3);
    Decimal::new(45_359_237, 2).over(hank.times(it)?)
}

/// Grams per square metre, unrounded. Nothing while a number is missing that it needs; a yarn
/// without crimp has to say 0.
///
/// Woven: 0.1 × (ends × tex of the warp × (1 + its crimp) + picks × tex of the weft × (1 + its
/// crimp)), threads per centimetre; crimp as a share of the cloth's length (ISO 7211-3). Knitted:
/// courses × wales × millimetres in a loop × tex ÷ 100, both per centimetre.
pub fn computed_mass(structure: &Structure) -> Option<Decimal> {
    match structure {
        Structure::Woven(woven) => {
            let warp = threads(woven.ends?, woven.warp.as_ref()?, woven.warp_crimp?)?;
            let weft = threads(woven.picks?, woven.weft.as_ref()?, woven.weft_crimp?)?;
            warp.plus(weft)?.over(Decimal::new(10, 0))
        }
        Structure::Knitted(knit) => {
            let stitches = knit.courses?.times(knit.wales?)?;
            let yarn = stitches.times(knit.loop_mm?)?;
            yarn.times(tex(knit.yarn.as_ref()?)?)?
                .over(Decimal::HUNDRED)
        }
    }
}

fn threads(per_cm: Decimal, yarn: &Yarn, crimp: Decimal) -> Option<Decimal> {
    per_cm.times(tex(yarn)?)?.and_percent(crimp)
}

/// Whether a declared mass is more than 15 % off the computed one.
pub fn mass_disagrees(declared: Decimal, computed: Decimal) -> bool {
    let percent = |it: Decimal, percent: i64| it.times(Decimal::new(percent, 0));
    match (
        percent(declared, 100),
        percent(computed, 100 - MASS_LIMIT),
        percent(computed, 100 + MASS_LIMIT),
    ) {
        (Some(declared), Some(least), Some(most)) => declared < least || declared > most,
        // So large that it is nonsense.
        _ => true,
    }
}

/// Ounces per square yard from grams per square metre: what the United States write. An ounce is a
/// sixteenth of the pound. Nothing where it does not fit.
pub fn ounces(grams: Decimal) -> Option<Decimal> {
    grams.times(square_yard())?.over(ounce())
}

/// Grams per square metre from ounces per square yard.
pub fn grams(ounces: Decimal) -> Option<Decimal> {
    ounces.times(ounce())?.over(square_yard())
}

/// Threads or stitches per inch from those per centimetre.
pub fn per_inch(per_cm: Decimal) -> Option<Decimal> {
    per_cm.times(inch())
}

/// Threads or stitches per centimetre from those per inch.
pub fn per_cm(per_inch: Decimal) -> Option<Decimal> {
    per_inch.over(inch())
}

/// Grams.
fn ounce() -> Decimal {
    Decimal::new(28_349_523_125, 9)
}

/// Square metres.
fn square_yard() -> Decimal {
    Decimal::new(83_612_736, 8)
}

/// Centimetres.
fn inch() -> Decimal {
    Decimal::new(254, 2)
}

#[cfg(test)]
mod tests;
