//! Care: the treatments in the order of ISO 3758, which of two is the milder one, what the garment
//! bears at most, and what a label for the United States has to say.

use super::document::{
    AirDry, Bleach, Care, DryClean, Iron, Material, Spec, Tumble, Wash, WetClean,
};
use super::id::ItemId;

/// One treatment that a care says something of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Treatment {
    Wash(Wash),
    Bleach(Bleach),
    Tumble(Tumble),
    AirDry(AirDry),
    Iron(Iron),
    DryClean(DryClean),
    WetClean(WetClean),
}

/// A treatment's strength in each way that it can harm, 0 the mildest: heat, motion, solvent. It is
/// milder than another when it is stronger in none of them, so that of two treatments neither need
/// be milder: 60 °C mild against 50 °C normal.
type Strength = [u8; 3];

/// Kinds of treatment, each with mildness of its own.
trait Graded: super::document::Word {
    fn strength(self) -> Strength;
}

/// What is said, in the order that it stands on a label: washing, bleaching, drying (in a tumbler,
/// then in the air), ironing, professional care (dry, then wet).
pub fn treatments(care: &Care) -> Vec<Treatment> {
    let all = [
        care.wash.map(Treatment::Wash),
        care.bleach.map(Treatment::Bleach),
        care.tumble.map(Treatment::Tumble),
        care.air_dry.map(Treatment::AirDry),
        care.iron.map(Treatment::Iron),
        care.dry_clean.map(Treatment::DryClean),
        care.wet_clean.map(Treatment::WetClean),
    ];
    all.into_iter().flatten().collect()
}

impl Treatment {
    /// The document's name of the field, within `labels`.
    pub fn field(self) -> &'static str {
        match self {
            Treatment::Wash(_) => "care.wash",
            Treatment::Bleach(_) => "care.bleach",
            Treatment::Tumble(_) => "care.tumble",
            Treatment::AirDry(_) => "care.air_dry",
            Treatment::Iron(_) => "care.iron",
            Treatment::DryClean(_) => "care.dry_clean",
            Treatment::WetClean(_) => "care.wet_clean",
        }
    }

    /// The highest temperature in °C, where the treatment has one (ISO 3758:2012).
    pub fn temperature(self) -> Option<u8> {
        match self {
            Treatment::Wash(wash) => wash_temperature(wash),
            Treatment::Tumble(Tumble::Normal) => Some(80),
            Treatment::Tumble(Tumble::Low) => Some(60),
            Treatment::Iron(Iron::High) => Some(200),
            Treatment::Iron(Iron::Medium) => Some(150),
            Treatment::Iron(Iron::Low) => Some(110),
            _ => None,
        }
    }
}

fn wash_temperature(wash: Wash) -> Option<u8> {
    use Wash::*;
    match wash {
        Normal95 => Some(95),
        Normal70 => Some(70),
        Normal60 | Mild60 => Some(60),
        Normal50 | Mild50 => Some(50),
        Normal40 | Mild40 | VeryMild40 | Hand => Some(40),
        Normal30 | Mild30 | VeryMild30 => Some(30),
        No => None,
    }
}

impl Graded for Wash {
    fn strength(self) -> Strength {
        use Wash::*;
        let motion = match self {
            No => return [0, 0, 0],
            // By hand is milder than any machine, though up to 40 °C warm: common practice, no
            // source.
            Hand => return [1, 1, 0],
            VeryMild40 | VeryMild30 => 2,
            Mild60 | Mild50 | Mild40 | Mild30 => 3,
            Normal95 | Normal70 | Normal60 | Normal50 | Normal40 | Normal30 => 4,
        };
        [wash_temperature(self).unwrap_or_default(), motion, 0]
    }
}

impl Graded for Bleach {
    fn strength(self) -> Strength {
        let bleach = match self {
            Bleach::No => 0,
            Bleach::Oxygen => 1,
            Bleach::Any => 2,
        };
        [0, 0, bleach]
    }
}

impl Graded for Tumble {
    fn strength(self) -> Strength {
        [
            Treatment::Tumble(self).temperature().unwrap_or_default(),
            0,
            0,
        ]
    }
}

/// Light, the pull of its own weight, spinning. That hanging and spinning are the harsher ways is
/// common practice, no source.
impl Graded for AirDry {
    fn strength(self) -> Strength {
        use AirDry::*;
        let sun = matches!(self, Line | LineDrip | Flat | FlatDrip);
        let hung = matches!(self, Line | LineShade | LineDrip | LineDripShade);
        let spun = matches!(self, Line | LineShade | Flat | FlatShade);
        [sun, hung, spun].map(u8::from)
    }
}

impl Graded for Iron {
    fn strength(self) -> Strength {
        [
            Treatment::Iron(self).temperature().unwrap_or_default(),
            0,
            0,
        ]
    }
}

impl Graded for DryClean {
    fn strength(self) -> Strength {
        match self {
            DryClean::No => [0, 0, 0],
            DryClean::FMild => [0, 1, 1],
            DryClean::F => [0, 2, 1],
            DryClean::PMild => [0, 1, 2],
            DryClean::P => [0, 2, 2],
        }
    }
}

impl Graded for WetClean {
    fn strength(self) -> Strength {
        let motion = match self {
            WetClean::No => 0,
            WetClean::VeryMild => 1,
            WetClean::Mild => 2,
            WetClean::Normal => 3,
        };
        [0, motion, 0]
    }
}

/// Whether `it` may do harm where at most `borne` is borne.
fn exceeds<T: Graded>(it: T, borne: T) -> bool {
    it.strength()
        .iter()
        .zip(borne.strength())
        .any(|(it, borne)| *it > borne)
}

/// The strongest treatment that exceeds neither. Every kind has one for any two of its words.
fn milder<T: Graded>(a: T, b: T) -> T {
    let both = T::ALL
        .iter()
        .copied()
        .filter(|it| !exceeds(*it, a) && !exceeds(*it, b));
    both.max_by_key(|it| it.strength().map(u16::from).iter().sum::<u16>())
        .unwrap_or(a)
}

/// The most delicate of two treatments, of which one may not be said.
fn most_delicate_of<T: Graded>(a: Option<T>, b: Option<T>) -> Option<T> {
    match (a, b) {
        (Some(a), Some(b)) => Some(milder(a, b)),
        (one, other) => one.or(other),
    }
}

/// What the garment bears: of each treatment the strongest that no material's own care forbids.
/// A treatment that no material speaks of is not said.
pub fn most_delicate(spec: &Spec) -> Care {
    let cares = sewn_in(spec).map(|material| &material.care);
    cares.fold(Care::default(), |so_far, care| Care {
        wash: most_delicate_of(so_far.wash, care.wash),
        bleach: most_delicate_of(so_far.bleach, care.bleach),
        tumble: most_delicate_of(so_far.tumble, care.tumble),
        air_dry: most_delicate_of(so_far.air_dry, care.air_dry),
        iron: most_delicate_of(so_far.iron, care.iron),
        dry_clean: most_delicate_of(so_far.dry_clean, care.dry_clean),
        wet_clean: most_delicate_of(so_far.wet_clean, care.wet_clean),
        note: String::new(),
    })
}

/// Where the garment's care asks more of a material than the material bears: the field of `labels`
/// (`care.wash`) and the material. In the order of ISO 3758, then of the materials.
pub fn harsher(spec: &Spec) -> Vec<(&'static str, ItemId)> {
    let said = treatments(&spec.labels.care);
    let said = said.into_iter().flat_map(|treatment| {
        let harmed = sewn_in(spec).filter(move |material| harms(treatment, &material.care));
        harmed.map(move |material| (treatment.field(), material.id.clone()))
    });
    said.collect()
}

fn harms(treatment: Treatment, borne: &Care) -> bool {
    fn over<T: Graded>(it: T, borne: Option<T>) -> bool {
        borne.is_some_and(|borne| exceeds(it, borne))
    }
    match treatment {
        Treatment::Wash(it) => over(it, borne.wash),
        Treatment::Bleach(it) => over(it, borne.bleach),
        Treatment::Tumble(it) => over(it, borne.tumble),
        Treatment::AirDry(it) => over(it, borne.air_dry),
        Treatment::Iron(it) => over(it, borne.iron),
        Treatment::DryClean(it) => over(it, borne.dry_clean),
        Treatment::WetClean(it) => over(it, borne.wet_clean),
    }
}

/// What is washed with the garment: all but its packing.
fn sewn_in(spec: &Spec) -> impl Iterator<Item = &Material> {
    use super::document::MaterialKind::Packing;
    let materials = spec.materials.materials.iter();
    materials.filter(|material| material.kind != Some(Packing))
}

/// What a care label for the United States still has to say, as fields of `labels` (16 CFR
/// 423.6(b): how to wash or how to dry-clean, or that neither may be done; when it is washed, also
/// bleaching, since silence means any bleach, and drying). Ironing is only named where it is needed
/// regularly, so it is never missing. The rule's own text decides; this follows a copy of 2006.
pub fn missing_for_us(care: &Care) -> Vec<&'static str> {
    let cleaned = care.dry_clean.is_some_and(|it| it != DryClean::No);
    match care.wash {
        None if cleaned => Vec::new(),
        None => vec!["care.wash"],
        Some(Wash::No) if care.dry_clean.is_none() => vec!["care.dry_clean"],
        Some(Wash::No) => Vec::new(),
        Some(_) => {
            let mut missing = Vec::new();
            if care.bleach.is_none() {
                missing.push("care.bleach");
            }
            match (care.tumble, care.air_dry) {
                (None, None) => missing.push("care.tumble"),
                // How else is it dried?
                (Some(Tumble::No), None) => missing.push("care.air_dry"),
                _ => {}
            }
            missing
        }
    }
}

#[cfg(test)]
mod tests;
