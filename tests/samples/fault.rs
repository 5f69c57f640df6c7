//! Faults that are put into garments, and which finding names them.

use std::collections::BTreeMap;

use fellseam::sample::contract::{Contract, Place};
use fellseam::sample::finding::{Cause, Finding};
use fellseam::spec::document::{Basis, Direction};
use fellseam::spec::{ItemId, PieceId};

use crate::chance::Chance;
use crate::garment::{groups, spec, tolerance};

/// What a row of the table is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    Shrinkage,
    Constant,
    Single,
    /// A single point by two to three and a half tolerances, however little that is.
    Faint,
    Grade,
    Label,
    HalfFull,
    InchCm,
    Swapped,
    Two,
    Nothing,
    /// All fabrics along one direction.
    Together,
}

impl Kind {
    pub const ALL: [Kind; 12] = [
        Kind::Shrinkage,
        Kind::Together,
        Kind::Constant,
        Kind::Single,
        Kind::Faint,
        Kind::Grade,
        Kind::Label,
        Kind::HalfFull,
        Kind::InchCm,
        Kind::Swapped,
        Kind::Two,
        Kind::Nothing,
    ];

    pub fn name(self) -> &'static str {
        match self {
            Kind::Shrinkage => "shrinkage 2.5-6 %",
            Kind::Together => "of all fabrics",
            Kind::Constant => "constant 0.8-1.3 cm",
            Kind::Single => "single point",
            Kind::Faint => "single, 2-3.5 tol.",
            Kind::Grade => "grade drift",
            Kind::Label => "wrong label",
            Kind::HalfFull => "half/full",
            Kind::InchCm => "inch/cm",
            Kind::Swapped => "swapped points",
            Kind::Two => "two at once",
            Kind::Nothing => "nothing",
        }
    }
}

#[derive(Debug, Clone)]
pub enum Fault {
    /// A fabric along a direction, or all of them, by this share of itself.
    Shift(Option<ItemId>, Direction, f64),
    /// Everything, or a fabric along a direction, by so many centimetres.
    Constant(Option<(ItemId, Direction)>, f64),
    Single(ItemId, f64),
    /// Every step along a direction, by this share of itself.
    Grade(Direction, f64),
    Label(usize, ItemId),
    /// One entry of a piece, times this.
    Times(Cause, usize, ItemId, f64),
    /// Every entry of a piece, times this.
    AllTimes(usize, f64),
    Swapped(usize, ItemId, ItemId),
}

impl Fault {
    /// A fault of the kind; two at once are made by the caller.
    pub fn of(kind: Kind, contract: &Contract, sizes: &[ItemId], chance: &mut Chance) -> Fault {
        let group = |chance: &mut Chance| chance.one(&groups(contract)).clone();
        let piece = chance.below(sizes.len());
        let size = &sizes[piece];
        let points = |keep: &dyn Fn(&Place) -> bool| -> Vec<ItemId> {
            let places = contract.points.iter().filter(|place| keep(place));
            places.map(|place| place.point.clone()).collect()
        };
        let value = |point: &ItemId| spec(contract, size, point);
        match kind {
            Kind::Shrinkage => {
                let (fabric, along) = group(chance);
                Fault::Shift(Some(fabric), along, -chance.between(0.025, 0.06))
            }
            Kind::Together => {
                let (_, along) = group(chance);
                Fault::Shift(None, along, -chance.between(0.025, 0.06))
            }
            Kind::Constant => {
                let by = chance.between(0.8, 1.3);
                match chance.below(2) {
                    // A tape that has lost its first centimetre reads too much, everywhere.
                    0 => Fault::Constant(None, by),
                    _ => Fault::Constant(Some(group(chance)), chance.sign() * by),
                }
            }
            Kind::Single => {
                // At least twice its tolerance, and at least a centimetre.
                let point = chance
                    .one(&points(&|place| value(&place.point) >= 3.0))
                    .clone();
                let least = (2.0 * tolerance(contract, size, &point)).max(1.0);
                Fault::Single(point, chance.sign() * least * chance.between(1.0, 1.6))
            }
            Kind::Faint => {
                let point = chance
                    .one(&points(&|place| value(&place.point) >= 3.0))
                    .clone();
                let least = 2.0 * tolerance(contract, size, &point);
                Fault::Single(point, chance.sign() * least * chance.between(1.0, 1.75))
            }
            Kind::Grade => {
                let along = *chance.one(&[Direction::Length, Direction::Width]);
                Fault::Grade(along, chance.sign() * chance.between(0.3, 0.6))
            }
            Kind::Label => {
                let at = contract.sizes.iter().position(|it| it == size).unwrap();
                let mut near = vec![at + 1];
                near.extend(at.checked_sub(1));
                near.retain(|size| *size < contract.sizes.len());
                Fault::Label(piece, contract.sizes[*chance.one(&near)].clone())
            }
            Kind::HalfFull => {
                let round = points(&|place| matches!(place.basis, Some(Basis::Half | Basis::Full)));
                let times = *chance.one(&[2.0, 0.5]);
                Fault::Times(Cause::HalfFull, piece, chance.one(&round).clone(), times)
            }
            Kind::InchCm => {
                let times = *chance.one(&[2.54, 1.0 / 2.54]);
                if chance.below(3) == 0 {
                    return Fault::AllTimes(piece, times);
                }
                let point = chance
                    .one(&points(&|place| value(&place.point) >= 4.0))
                    .clone();
                Fault::Times(Cause::InchCm, piece, point, times)
            }
            Kind::Swapped => loop {
                let all = points(&|_| true);
                let (one, other) = (chance.one(&all), chance.one(&all));
                let wide = tolerance(contract, size, one).max(tolerance(contract, size, other));
                if (value(one) - value(other)).abs() >= (2.0 * wide).max(1.5) {
                    break Fault::Swapped(piece, one.clone(), other.clone());
                }
            },
            Kind::Two | Kind::Nothing => unreachable!("made by the caller"),
        }
    }

    /// Whether two faults can be told apart at all: they are not the same thing at one place.
    pub fn goes_with(&self, other: &Fault) -> bool {
        let points = |fault: &Fault| match fault {
            Fault::Single(point, _) | Fault::Times(_, _, point, _) => vec![point.clone()],
            Fault::Swapped(_, one, other) => vec![one.clone(), other.clone()],
            _ => Vec::new(),
        };
        let (own, its) = (points(self), points(other));
        let same_slip = match (self, other) {
            // Told as one.
            (Fault::Times(cause, piece, ..), Fault::Times(other, of, ..)) => {
                cause == other && piece == of
            }
            (Fault::Times(_, piece, ..), Fault::AllTimes(of, _))
            | (Fault::AllTimes(of, _), Fault::Times(_, piece, ..)) => piece == of,
            _ => false,
        };
        let same_points = own.iter().any(|point| its.contains(point));
        let same_kind = std::mem::discriminant(self) == std::mem::discriminant(other);
        let same_group = match (self, other) {
            (Fault::Shift(fabric, along, _), Fault::Shift(other, runs, _)) => {
                fabric == other && along == runs
            }
            (Fault::Shift(fabric, along, _), Fault::Constant(Some((other, runs)), _))
            | (Fault::Constant(Some((other, runs)), _), Fault::Shift(fabric, along, _)) => {
                fabric.as_ref() == Some(other) && along == runs
            }
            _ => same_kind && points(self).is_empty(),
        };
        !same_points && !same_group && !same_slip
    }

    /// The size that a piece really is.
    pub fn really(&self, number: usize) -> Option<&ItemId> {
        match self {
            Fault::Label(piece, size) if *piece == number => Some(size),
            _ => None,
        }
    }

    /// By how much the garment is off at a point, in centimetres.
    pub fn moves(&self, contract: &Contract, place: &Place, value: f64) -> f64 {
        let of_group = |fabric: &ItemId, along: &Direction| {
            place.fabric.as_ref() == Some(fabric) && place.along == Some(*along)
        };
        match self {
            Fault::Shift(Some(fabric), along, share) if of_group(fabric, along) => value * share,
            Fault::Shift(None, along, share) if place.along == Some(*along) => value * share,
            Fault::Constant(None, by) => *by,
            // Seam allowance or cutting: topstitching and tapes stay as wide as they are.
            Fault::Constant(Some((fabric, along)), by)
                if of_group(fabric, along) && value >= 3.0 =>
            {
                *by
            }
            Fault::Single(point, by) if *point == place.point => *by,
            Fault::Grade(along, share) if place.along == Some(*along) => {
                (value - spec(contract, &contract.base, &place.point)) * share
            }
            _ => 0.0,
        }
    }

    /// Writes the entries of a piece wrong.
    pub fn write(&self, number: usize, values: &mut BTreeMap<ItemId, f64>) {
        match self {
            Fault::Times(_, piece, point, times) if *piece == number => {
                values.entry(point.clone()).and_modify(|it| *it *= times);
            }
            Fault::AllTimes(piece, times) if *piece == number => {
                values.values_mut().for_each(|it| *it *= times);
            }
            Fault::Swapped(piece, one, other) if *piece == number => {
                let (a, b) = (values[one], values[other]);
                values.insert(one.clone(), b);
                values.insert(other.clone(), a);
            }
            _ => {}
        }
    }

    /// Whether the finding names this fault, and its place.
    pub fn is_named_by(&self, finding: &Finding, several_sizes: bool) -> bool {
        let piece = |number: usize| PieceId::new(format!("{}", number + 1));
        let is = |cause: Cause| finding.cause == cause;
        let at = |fabric: Option<&ItemId>, along: Option<Direction>| {
            finding.fabric.as_ref() == fabric && finding.along == along
        };
        let only = |points: &[&ItemId]| {
            finding.points.len() == points.len()
                && points.iter().all(|point| finding.points.contains(point))
        };
        match self {
            Fault::Shift(fabric, along, _) => {
                is(Cause::ProportionalShift) && at(fabric.as_ref(), Some(*along))
            }
            Fault::Constant(None, _) => is(Cause::ConstantError) && at(None, None),
            Fault::Constant(Some((fabric, along)), _) => {
                is(Cause::ConstantError) && at(Some(fabric), Some(*along))
            }
            Fault::Single(point, _) => {
                let cause = match several_sizes {
                    true => Cause::BasePattern,
                    false => Cause::SinglePoint,
                };
                is(cause) && only(&[point])
            }
            // Its points of other fabrics may hardly be graded at all.
            Fault::Grade(along, _) => is(Cause::Grading) && finding.along == Some(*along),
            Fault::Label(number, size) => {
                is(Cause::WrongLabel)
                    && finding.really.as_ref() == Some(size)
                    && finding.pieces == [piece(*number)]
            }
            Fault::Times(cause, number, point, _) => {
                is(*cause) && only(&[point]) && finding.pieces == [piece(*number)]
            }
            Fault::AllTimes(number, _) => {
                is(Cause::InchCm) && finding.pieces == [piece(*number)] && finding.points.len() > 20
            }
            Fault::Swapped(number, one, other) => {
                is(Cause::SwappedPoints)
                    && only(&[one, other])
                    && finding.pieces == [piece(*number)]
            }
        }
    }
}
