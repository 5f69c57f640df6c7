//! The sentences of a sample's evaluation.

use crate::sample::ask::Slip;
use crate::sample::diagnose::Again;
use crate::sample::evaluation::{Dispute, Watched};
use crate::sample::finding::{Cause, Finding, Lack, Repeatability, RepeatedBy};
use crate::sample::ratio::{Factor, Percent};
use crate::sample::wash::GroupChange;
use crate::spec::document::Direction;
use crate::spec::{DecimalSign, ItemId, Length, PieceId, Unit};

use super::changes::shown;
use super::message::{Message, Text};

/// More points than this are counted instead of named.
const NAMED: usize = 6;

/// Tells an evaluation in a reader's words: how things are called, and how numbers are written.
pub struct Evaluated<'a> {
    pub t: Text,
    /// A point by letter and name, a size by its code, a fabric by its name.
    pub item: &'a dyn Fn(&ItemId) -> String,
    /// What stands on a piece.
    pub piece: &'a dyn Fn(&PieceId) -> String,
    pub unit: Unit,
    pub sign: DecimalSign,
}

impl Evaluated<'_> {
    /// What was found, and what to do.
    pub fn finding(&self, finding: &Finding) -> Message {
        let t = self.t;
        let figures = &finding.figures;
        let place = || self.place(finding);
        let by = || self.signed(figures.by.unwrap_or(Length::ZERO));
        let share = || self.percent(figures.share.unwrap_or(Percent::hundredths(0)));
        let size = || self.optional(finding.size.as_ref());
        let points = || self.points(&finding.points);
        let pieces = || self.pieces(&finding.pieces);
        match finding.cause {
            Cause::ProportionalShift => t
                .say("evaluation-proportional-shift")
                .with("place", place())
                .with("share", share())
                .with("factor", self.factor(figures.correction)),
            Cause::ConstantError => t
                .say("evaluation-constant-error")
                .with("place", place())
                .with("by", by()),
            Cause::SinglePoint => t
                .say("evaluation-single-point")
                .with("points", points())
                .with("by", by())
                .with("size", size()),
            Cause::BasePattern => t
                .say("evaluation-base-pattern")
                .with("points", points())
                .with("by", by()),
            Cause::Grading => t
                .say("evaluation-grading")
                .with("place", place())
                .with("share", share()),
            Cause::SizePattern => t
                .say("evaluation-size-pattern")
                .with("place", place())
                .with("by", by())
                .with("size", size()),
            Cause::OnePiece => t
                .say("evaluation-one-piece")
                .with("points", points())
                .with("by", by())
                .with("pieces", pieces()),
            Cause::Unsteady => t
                .say("evaluation-unsteady")
                .with("points", points())
                .with("size", size()),
            Cause::WrongLabel | Cause::SwappedSizes => t
                .say(match finding.cause {
                    Cause::WrongLabel => "evaluation-wrong-label",
                    _ => "evaluation-swapped-sizes",
                })
                .with("pieces", pieces())
                .with("size", size())
                .with("really", self.optional(finding.really.as_ref())),
            Cause::HalfFull | Cause::InchCm | Cause::TenTimes => self.slip(finding),
            Cause::SwappedPoints => t
                .say("evaluation-swapped-points")
                .with("pieces", pieces())
                .with("points", points()),
        }
    }

    fn slip(&self, finding: &Finding) -> Message {
        self.t
            .say(match finding.slip.unwrap_or(Slip::Doubled) {
                Slip::Doubled => "evaluation-doubled",
                Slip::Halved => "evaluation-halved",
                Slip::CmAsInch => "evaluation-cm-as-inch",
                Slip::InchAsCm => "evaluation-inch-as-cm",
                Slip::TenTimes => "evaluation-ten-times",
                Slip::Tenth => "evaluation-tenth",
            })
            .with("pieces", self.pieces(&finding.pieces))
            .with("points", self.points(&finding.points))
    }

    /// The figures that carry a finding.
    pub fn figures(&self, finding: &Finding) -> Message {
        let figures = &finding.figures;
        if figures.readings == 1 {
            return self.t.say("evaluation-rests-on-one");
        }
        self.t
            .say("evaluation-rests-on")
            .with("readings", figures.readings)
            .with("same", figures.same_side)
            .with("before", self.length(figures.before))
            .with("left", self.length(figures.left))
    }

    pub fn again(&self, again: &Again) -> Message {
        self.t
            .say("evaluation-again")
            .with("piece", (self.piece)(&again.piece))
            .with("point", (self.item)(&again.point))
    }

    pub fn dispute(&self, dispute: &Dispute) -> Message {
        self.t
            .say("evaluation-dispute")
            .with("piece", (self.piece)(&dispute.piece))
            .with("point", (self.item)(&dispute.point))
            .with("one", &dispute.least.0)
            .with("least", self.length(dispute.least.1))
            .with("other", &dispute.most.0)
            .with("most", self.length(dispute.most.1))
            .with("allowed", self.length(dispute.allowed))
    }

    pub fn lack(&self, lack: &Lack) -> Message {
        match lack {
            Lack::FewPoints {
                fabric,
                along,
                have,
                need,
            } => self
                .t
                .say("evaluation-few-points")
                .with("place", self.lying(fabric.as_ref(), *along))
                .with("have", have)
                .with("need", need),
            Lack::OneSize { size } => self
                .t
                .say("evaluation-one-size")
                .with("size", (self.item)(size)),
            Lack::OnePiece { size } => self
                .t
                .say("evaluation-one-piece-only")
                .with("size", (self.item)(size)),
        }
    }

    pub fn watched(&self, watched: &Watched) -> Message {
        self.t
            .say("evaluation-watch")
            .with("point", (self.item)(&watched.point))
            .with("rounds", watched.rounds.join(", "))
            .with("out", watched.out)
            .with("measured", watched.measured)
    }

    pub fn repeatability(&self, repeatability: Repeatability) -> Message {
        let deviation = self.length(repeatability.deviation);
        match repeatability.source {
            RepeatedBy::Assumed => self
                .t
                .say("evaluation-repeat-assumed")
                .with("deviation", deviation),
            RepeatedBy::Measurers(count) => self
                .t
                .say("evaluation-repeat-measurers")
                .with("count", count)
                .with("deviation", deviation),
            RepeatedBy::Pieces(count) => self
                .t
                .say("evaluation-repeat-pieces")
                .with("count", count)
                .with("deviation", deviation),
        }
    }

    /// What washing did, and the pattern that answers it where the figures carry one.
    pub fn wash(&self, group: &GroupChange) -> Message {
        let place = self.lying(group.fabric.as_ref(), group.along);
        let percent = self.percent(group.together.percent);
        if !group.is_carried() {
            return self
                .t
                .say("evaluation-wash-little")
                .with("place", place)
                .with("percent", percent);
        }
        self.t
            .say("evaluation-wash")
            .with("place", place)
            .with("percent", percent)
            .with("factor", self.factor(Some(group.together.correction)))
    }

    /// A length in the unit of the chart: of what was measured exactly, since inches are kept in
    /// fractions of their own to the nearest sixteenth.
    pub fn length(&self, length: Length) -> String {
        let number = match self.unit.is_metric() {
            true => length.exact(self.unit, self.sign),
            false => length.show(self.unit, self.unit.fine_step(), self.sign),
        };
        format!("{} {}", shown(number), self.unit.symbol())
    }

    /// With its sign, also a plus.
    pub fn signed(&self, length: Length) -> String {
        let plus = if length.is_positive() { "+" } else { "" };
        format!("{plus}{}", self.length(length))
    }

    fn percent(&self, percent: Percent) -> String {
        let plus = if percent.as_hundredths() > 0 { "+" } else { "" };
        format!("{plus}{}", shown(percent.show(self.sign)))
    }

    fn factor(&self, factor: Option<Factor>) -> String {
        factor.map_or_else(String::new, |factor| factor.show(self.sign))
    }

    fn optional(&self, id: Option<&ItemId>) -> String {
        id.map_or_else(String::new, self.item)
    }

    fn pieces(&self, pieces: &[PieceId]) -> String {
        let names: Vec<String> = pieces.iter().map(self.piece).collect();
        names.join(", ")
    }

    fn points(&self, points: &[ItemId]) -> String {
        if points.len() > NAMED {
            return self
                .t
                .say("evaluation-some-points")
                .with("count", points.len())
                .to_string();
        }
        let names: Vec<String> = points.iter().map(self.item).collect();
        names.join(", ")
    }

    /// Where a finding is: by fabric and direction, or the one point that it is about.
    fn place(&self, finding: &Finding) -> String {
        match (&finding.fabric, finding.along, &finding.points[..]) {
            (None, None, [point]) => (self.item)(point),
            (fabric, along, _) => self.lying(fabric.as_ref(), along),
        }
    }

    fn lying(&self, fabric: Option<&ItemId>, along: Option<Direction>) -> String {
        let t = self.t;
        match (fabric, along) {
            (Some(fabric), Some(along)) => t
                .say("evaluation-fabric-along")
                .with("fabric", (self.item)(fabric))
                .with("direction", t.within(&t.name(&along).to_string()))
                .to_string(),
            (Some(fabric), None) => (self.item)(fabric),
            (None, Some(along)) => t.name(&along).to_string(),
            (None, None) => t.say("evaluation-whole-garment").to_string(),
        }
    }
}

#[cfg(test)]
mod tests;
