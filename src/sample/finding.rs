//! What an evaluation finds: a cause with its place and the figures that carry it.

use crate::spec::document::Direction;
use crate::spec::{ItemId, Length, PieceId};

use super::ask::Slip;
use super::ratio::{Factor, Percent};

/// Why measurements are off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Cause {
    /// All of one fabric along one direction by the same share: shrinkage, or an allowance for it
    /// that is missing or too large.
    ProportionalShift,
    /// Many points by the same length: seam allowance, cutting, or the end of a tape.
    ConstantError,
    /// One point, in every piece of the one size that was measured.
    SinglePoint,
    /// One point, by the same length in every size: the base pattern.
    BasePattern,
    /// Off by more the further a size is from the base size: the grading.
    Grading,
    /// One size alone: its pattern.
    SizePattern,
    /// One point of one piece, where other pieces are right: how that piece was sewn, or measured.
    OnePiece,
    /// The pieces of a size are right on average and differ widely: sewing, or measuring.
    Unsteady,
    /// The piece is another size than its label says.
    WrongLabel,
    /// Two pieces carry each other's label.
    SwappedSizes,
    /// A way round was written as its half, or a half as the way round.
    HalfFull,
    /// Inches were written for centimetres, or centimetres for inches.
    InchCm,
    /// The decimal sign is a place off.
    TenTimes,
    /// Two points' values were written in each other's place.
    SwappedPoints,
}

impl Cause {
    pub const ALL: [Cause; 14] = [
        Cause::ProportionalShift,
        Cause::ConstantError,
        Cause::SinglePoint,
        Cause::BasePattern,
        Cause::Grading,
        Cause::SizePattern,
        Cause::OnePiece,
        Cause::Unsteady,
        Cause::WrongLabel,
        Cause::SwappedSizes,
        Cause::HalfFull,
        Cause::InchCm,
        Cause::TenTimes,
        Cause::SwappedPoints,
    ];

    /// The stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Cause::ProportionalShift => "proportional_shift",
            Cause::ConstantError => "constant_error",
            Cause::SinglePoint => "single_point",
            Cause::BasePattern => "base_pattern",
            Cause::Grading => "grading",
            Cause::SizePattern => "size_pattern",
            Cause::OnePiece => "one_piece",
            Cause::Unsteady => "unsteady",
            Cause::WrongLabel => "wrong_label",
            Cause::SwappedSizes => "swapped_sizes",
            Cause::HalfFull => "half_full",
            Cause::InchCm => "inch_cm",
            Cause::TenTimes => "ten_times",
            Cause::SwappedPoints => "swapped_points",
        }
    }

    /// Whether the garment may be right and only what was written is wrong.
    pub const fn is_entry(self) -> bool {
        matches!(
            self,
            Cause::HalfFull | Cause::InchCm | Cause::TenTimes | Cause::SwappedPoints
        )
    }

    pub const fn of_slip(slip: Slip) -> Cause {
        match slip {
            Slip::Doubled | Slip::Halved => Cause::HalfFull,
            Slip::CmAsInch | Slip::InchAsCm => Cause::InchCm,
            Slip::TenTimes | Slip::Tenth => Cause::TenTimes,
        }
    }
}

/// One cause, and where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    pub cause: Cause,
    /// The fabric's line among the materials, or the part; `None` where it is not one fabric alone.
    pub fabric: Option<ItemId>,
    /// `None` where it is not one direction alone.
    pub along: Option<Direction>,
    /// The points that show it, in the order of the chart.
    pub points: Vec<ItemId>,
    /// The size that it is about: where one size is, and the size that a piece is said to be.
    pub size: Option<ItemId>,
    /// The size that a piece really is.
    pub really: Option<ItemId>,
    /// The pieces that show it, in the order given.
    pub pieces: Vec<PieceId>,
    pub slip: Option<Slip>,
    pub figures: Figures,
}

/// What carries a finding.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Figures {
    /// How many values it rests on.
    pub readings: usize,
    /// How many of them are off to the same side.
    pub same_side: usize,
    /// By how much a value is off that it moves by a length: positive is larger.
    pub by: Option<Length>,
    /// By which share of itself, or of the grade's steps: positive is larger.
    pub share: Option<Percent>,
    /// What the pattern is multiplied with to make up for it.
    pub correction: Option<Factor>,
    /// The median of what it leaves of these values, as a magnitude.
    pub left: Length,
    /// The median of what the values were off before it was taken off, as a magnitude.
    pub before: Length,
}

/// What could not be judged, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Lack {
    /// These points are out, and their fabric has too few along this direction to show whether it
    /// shrank.
    FewPoints {
        fabric: Option<ItemId>,
        along: Option<Direction>,
        have: usize,
        need: usize,
    },
    /// One size was measured: pattern and grading look the same.
    OneSize { size: ItemId },
    /// One piece was measured: its sewing and the pattern look the same.
    OnePiece { size: ItemId },
}

impl Lack {
    /// The stable name.
    pub const fn name(&self) -> &'static str {
        match self {
            Lack::FewPoints { .. } => "few_points",
            Lack::OneSize { .. } => "one_size",
            Lack::OnePiece { .. } => "one_piece",
        }
    }
}

/// How far two readings of the same thing differ, as a standard deviation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Repeatability {
    pub deviation: Length,
    pub source: RepeatedBy,
}

/// Where a repeatability comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RepeatedBy {
    /// Nothing was measured twice: common practice, no source.
    Assumed,
    /// So many points of a piece were measured by several people.
    Measurers(usize),
    /// So many points were measured on several pieces of a size.
    Pieces(usize),
}

impl RepeatedBy {
    /// The stable name.
    pub const fn name(self) -> &'static str {
        match self {
            RepeatedBy::Assumed => "assumed",
            RepeatedBy::Measurers(_) => "measurers",
            RepeatedBy::Pieces(_) => "pieces",
        }
    }
}
