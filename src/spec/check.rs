//! Readiness: what keeps a draft from being published, and what needs a reason.
//!
//! An error blocks publishing. A warning needs a typed reason, which the revision prints. A
//! finding holds codes, ids and values; what it says to a reader is said in the reader's language.

mod document;
mod grading;
mod points;

use super::chart::Graded;
use super::document::{Section, Spec};
use super::id::ItemId;
use super::units::Length;

/// The version of these rules, which a revision keeps: it changes when a check is added or judges
/// otherwise.
pub const RULES: u32 = 1;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Severity {
    Error,
    Warning,
}

macro_rules! codes {
    ($($(#[$doc:meta])* $code:ident $name:literal $severity:ident)*) => {
        /// What was found. The names are our own, short and stable.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Code {$(
            $(#[$doc])*
            $code,
        )*}

        impl Code {
            pub const ALL: &[Code] = &[$(Code::$code),*];

            /// As it is kept, and as messages are named after it: `check-grade-gap-uncovered`.
            pub const fn name(self) -> &'static str {
                match self {
                    $(Code::$code => $name,)*
                }
            }

            pub const fn severity(self) -> Severity {
                match self {
                    $(Code::$code => Severity::$severity,)*
                }
            }
        }
    };
}

codes! {
    /// Two items of one id, which nothing could tell apart.
    IdTwice "id-twice" Error

    NumberMissing "number-missing" Error
    NameMissing "name-missing" Error
    BaseSizeMissing "base-size-missing" Error
    /// The base size is not one of the sizes.
    BaseSizeUnknown "base-size-unknown" Error
    UnitMissing "unit-missing" Error
    MeasuringStateMissing "measuring-state-missing" Error

    SizesNone "sizes-none" Error
    SizeCodeMissing "size-code-missing" Error
    /// Facts: `code`.
    SizeCodeTwice "size-code-twice" Error

    DrawingsNone "drawings-none" Error
    /// A letter on a drawing whose item is gone.
    MarkerAdrift "marker-adrift" Error
    /// A letter beyond the edge of its drawing.
    MarkerOutside "marker-outside" Error
    /// A point whose letter is on no drawing. Facts: `letter`, `name`, as with every point.
    PointUnmarked "point-unmarked" Error

    PointsNone "points-none" Error
    PointLetterMissing "point-letter-missing" Error
    /// Facts: `other`, the name of the item that had the letter first.
    PointLetterTwice "point-letter-twice" Error
    PointNameMissing "point-name-missing" Error
    PointBasisMissing "point-basis-missing" Error
    PointBaseMissing "point-base-missing" Error
    PointGradeMissing "point-grade-missing" Error
    PointMinusMissing "point-minus-missing" Error
    PointPlusMissing "point-plus-missing" Error
    ToleranceNegative "tolerance-negative" Error
    /// A tolerance in inches in a metric spec, or the other way round: print and verdict would
    /// differ, since conversion rounds.
    ToleranceUnit "tolerance-unit" Error
    /// No rounding step, or none above zero.
    PointStepMissing "point-step-missing" Error
    /// A step whose multiples are no values of the master unit.
    StepUnit "step-unit" Error
    HowStartMissing "how-start-missing" Error
    HowEndMissing "how-end-missing" Error

    /// Facts: `from`, `to`.
    GradeGapUncovered "grade-gap-uncovered" Error
    /// Facts: `from`, `to`.
    GradeGapTwice "grade-gap-twice" Error
    /// A segment that does not lead to a later size. Facts: `from`, `to`.
    GradeBackwards "grade-backwards" Error
    /// The grade names a size that is not in the spec.
    GradeSizeUnknown "grade-size-unknown" Error
    /// Values were typed for each size, but not for this one. Facts: `size`.
    GradeSizeMissing "grade-size-missing" Error
    /// Derived from a point that is not in the spec.
    GradeSourceMissing "grade-source-missing" Error
    /// Derived from itself. Facts: `letters`, from this one round to it.
    GradeCycle "grade-cycle" Error
    /// Facts: `typed`, `graded`.
    GradeBaseDisagrees "grade-base-disagrees" Error
    /// Longer than a kilometre.
    GradeTooLong "grade-too-long" Error

    /// Grows between some sizes and shrinks between others. Facts: `size`, where it turns.
    GradeReverses "grade-reverses" Warning
    /// A critical point of one size passes as the next. Facts: `from`, `to`, `step`, `minus`,
    /// `plus`.
    ToleranceOverlaps "tolerance-overlaps" Warning
    /// Rounding alone may take up half of the tolerance. Facts: `step`, `minus`, `plus`.
    StepCoarse "step-coarse" Warning
    /// Even steps that rounding made uneven. Facts: `size`, where it differs first, `exact`,
    /// `before`, `after`.
    StepsUneven "steps-uneven" Warning
    /// Grows about twice or half as much as the comparable points. Facts: `growth`, `usual`, both
    /// from the first size to the last, the full way round.
    GradeHalfOrFull "grade-half-or-full" Warning
    /// Facts: `size`, `value`.
    ValueNotPositive "value-not-positive" Warning

    PartsNone "parts-none" Warning
    ColourwaysNone "colourways-none" Warning
    PartLetterMissing "part-letter-missing" Error
    /// Facts: `letter`, and `other`, the name of the item that had it first.
    PartLetterTwice "part-letter-twice" Error
    /// Facts: `letter`.
    PartNameMissing "part-name-missing" Error
    /// Neither code nor name.
    ColourwayNameMissing "colourway-name-missing" Error
    /// Facts: `code`.
    ColourwayCodeTwice "colourway-code-twice" Error
    /// Empty is not `none`. Facts: `letter`, `name` and `colourway`, as with every cell.
    CellEmpty "cell-empty" Error
    /// A colour with neither name nor reference.
    CellColourUnnamed "cell-colour-unnamed" Error
    /// A screen value that is not `#rrggbb`.
    CellScreenMalformed "cell-screen-malformed" Error
    /// Dyed to match a part that is not in the spec.
    CellMatchMissing "cell-match-missing" Error
    /// Dyed to match a part that this colourway does without. Facts: `match`, its letter.
    CellMatchNone "cell-match-none" Error
    /// Dyed to match itself, maybe through others. Facts: `match`.
    CellMatchCycle "cell-match-cycle" Error
}

/// One thing that was found, and where to mend it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    pub code: Code,
    pub section: Section,
    pub item: Option<ItemId>,
    /// The colourway of a cell, whose part is `item`.
    pub colourway: Option<ItemId>,
    /// The field of the document: `base`, `how.start`.
    pub field: Option<&'static str>,
    /// What the sentence names: texts as the brand wrote them, lengths to be shown in the master
    /// unit.
    pub facts: Vec<(&'static str, Fact)>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fact {
    Text(String),
    Length(Length),
}

/// Everything there is to say about a draft, in the order of its sections. A warning comes at most
/// once for each item.
pub fn check(spec: &Spec, graded: &Graded) -> Vec<Finding> {
    let mut findings = Vec::new();
    document::header(spec, &mut findings);
    document::sizes(spec, &mut findings);
    document::drawings(spec, &mut findings);
    points::points(spec, graded, &mut findings);
    document::colourways(spec, &mut findings);
    document::ids(spec, &mut findings);
    findings
}

impl Finding {
    fn new(code: Code, section: Section) -> Self {
        Self {
            code,
            section,
            item: None,
            colourway: None,
            field: None,
            facts: Vec::new(),
        }
    }

    fn item(mut self, item: &ItemId) -> Self {
        self.item = Some(item.clone());
        self
    }

    fn field(mut self, field: &'static str) -> Self {
        self.field = Some(field);
        self
    }

    fn fact(mut self, name: &'static str, fact: impl Into<Fact>) -> Self {
        self.facts.push((name, fact.into()));
        self
    }

    pub fn severity(&self) -> Severity {
        self.code.severity()
    }

    pub fn is_error(&self) -> bool {
        self.severity() == Severity::Error
    }
}

impl From<&str> for Fact {
    fn from(text: &str) -> Self {
        Fact::Text(text.to_owned())
    }
}

impl From<Length> for Fact {
    fn from(length: Length) -> Self {
        Fact::Length(length)
    }
}

/// Empty, or nothing but spaces.
fn blank(text: &str) -> bool {
    text.trim().is_empty()
}

#[cfg(test)]
pub(crate) mod tests;
