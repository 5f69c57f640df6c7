//! The codes of the readiness checks.

use super::Severity;

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
    /// A material, callout, artwork or label without a letter. Facts: `item`, what it is known by,
    /// as with every item below that is neither point nor part.
    LetterMissing "letter-missing" Error
    /// Facts: `letter`, and `other`, the name of the item that had it first.
    LetterTwice "letter-twice" Error
    /// A material, artwork or label without a name.
    ItemNameMissing "item-name-missing" Error
    /// It refers to something that is gone. Facts: `field`.
    ReferenceGone "reference-gone" Error
    /// A place is given from a seam, edge, fold or centre line that is gone.
    LineGone "line-gone" Error

    NumberMissing "number-missing" Error
    NameMissing "name-missing" Error
    BaseSizeMissing "base-size-missing" Error
    /// The base size is not one of the sizes.
    BaseSizeUnknown "base-size-unknown" Error
    UnitMissing "unit-missing" Error
    MeasuringStateMissing "measuring-state-missing" Error
    MarketsNone "markets-none" Warning
    WearerMissing "wearer-missing" Warning
    /// Sold where labels are due, and no language is named.
    LanguagesMissing "languages-missing" Warning
    /// Sold in the US. 15 USC 70b and 19 USC 1304, from memory.
    OriginMissing "origin-missing" Error
    /// An exemption that has no effect: no reason, no name, or of a check that none can lift.
    /// Facts: `code`.
    ExemptionVoid "exemption-void" Warning

    SizesNone "sizes-none" Error
    SizeCodeMissing "size-code-missing" Error
    /// Facts: `code`.
    SizeCodeTwice "size-code-twice" Error
    /// A child's garment whose sizes tell neither age nor height. Facts: `sizes`.
    SizeAgeMissing "size-age-missing" Warning

    DrawingsNone "drawings-none" Error
    /// A letter on a drawing whose item is gone.
    MarkerAdrift "marker-adrift" Error
    /// A letter beyond the edge of its drawing.
    MarkerOutside "marker-outside" Error
    /// A point whose letter is on no drawing. Facts: `letter`, `name`, as with every point.
    PointUnmarked "point-unmarked" Error
    /// A callout, artwork or label whose letter is on no drawing.
    ItemUnmarked "item-unmarked" Error
    /// A dimension line whose point is gone.
    DimensionAdrift "dimension-adrift" Error
    /// A dimension line or a circle beyond the edge of its drawing.
    DimensionOutside "dimension-outside" Error
    /// A circle that leads to a drawing that is gone, or to its own. Facts: `drawing`.
    BlowUpAdrift "blow-up-adrift" Error
    /// Left and right differ, and one of the side views is not there. Facts: `view`.
    SideViewMissing "side-view-missing" Error

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
    /// A tolerance of a size that is not in the spec.
    ToleranceSizeUnknown "tolerance-size-unknown" Error
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
    /// Changed by some values of the second axis, and nothing is said of this one. Facts: `length`.
    LengthsPartial "lengths-partial" Warning

    /// What it must reach when stretched is less than it is relaxed. Facts: `size`, `relaxed`,
    /// `stretched`.
    StretchedBelowRelaxed "stretched-below-relaxed" Warning
    /// Facts: `size`, `opening` and `girth`, both the full way round.
    NeckUnderHead "neck-under-head" Warning
    /// Facts: `size`, `opening` and `girth`, both the full way round.
    CuffUnderHand "cuff-under-hand" Warning
    /// A zip that does not fit its opening, tolerances included. Facts: `point`, `size`, `length`,
    /// `opening`.
    ZipNotOpening "zip-not-opening" Warning
    /// Facts: `point`, `size`, `length`, `channel`, the full way round.
    CordUnderChannel "cord-under-channel" Warning
    /// Rise and inseam do not make up the outseam. Facts: `size`, `rise`, `inseam`, `outseam`.
    RiseAndInseam "rise-and-inseam" Warning
    /// Points that a garment of this kind usually has. Facts: `kind`, `missing`.
    PointsUsual "points-usual" Warning
    /// A pocket, cuff or waistband that is not told whole. Facts: `missing`.
    DimensionMissing "dimension-missing" Warning

    PartsNone "parts-none" Warning
    ColourwaysNone "colourways-none" Warning
    PartLetterMissing "part-letter-missing" Error
    /// Facts: `letter`, and `other`, the name of the item that had it first.
    PartLetterTwice "part-letter-twice" Error
    /// Facts: `letter`.
    PartNameMissing "part-name-missing" Error
    /// No material, ink or label is of this part. Facts: `letter`, `name`.
    PartWithoutMaterial "part-without-material" Error
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

    MaterialsNone "materials-none" Error
    MaterialKindMissing "material-kind-missing" Error
    /// Of no part, and named in no callout.
    MaterialUnused "material-unused" Error
    /// Sold where the composition is due, and no material is a fabric.
    FabricsNone "fabrics-none" Error
    /// Regulation (EU) No 1007/2011; 16 CFR 303.
    CompositionMissing "composition-missing" Error
    /// Facts: `total`.
    CompositionTotal "composition-total" Error
    /// A share without fibre, without percent above zero, or an unlisted fibre without a name.
    ShareIncomplete "share-incomplete" Error
    /// One of several fabrics, and it is not said which part of the composition it is.
    ComponentMissing "component-missing" Error
    /// `100 %`, `pure` or `all` is said of what has a second fibre. Facts: `material`.
    ClaimHundred "claim-hundred" Warning
    FibreTwice "fibre-twice" Warning
    /// Virgin wool in a mixture that may not be called so. Regulation (EU) No 1007/2011, article 8.
    VirginWool "virgin-wool" Warning
    /// The declared mass is more than 15 % off what the yarns come to. Facts: `declared`,
    /// `computed`, in g/m².
    MassDisagrees "mass-disagrees" Warning
    /// Neither a length nor a point that it closes.
    ZipSizeMissing "zip-size-missing" Warning
    /// Facts: `needed`, `minimum`, `unit`, and `colourway`: all of them where it counts for the style.
    MinimumUnmet "minimum-unmet" Warning

    /// A letter without a text.
    CalloutTextMissing "callout-text-missing" Error
    /// No stitch type of ISO 4915, as far as the shipped table goes. Facts: `stitch`.
    StitchUnknown "stitch-unknown" Warning
    /// A designation that is none of ISO 4916, or of another class than the one chosen. Facts:
    /// `code`.
    SeamCodeUnlike "seam-code-unlike" Warning

    ArtworkSizeMissing "artwork-size-missing" Error
    /// Fewer than two distances that are given whole.
    ArtworkDistancesMissing "artwork-distances-missing" Error
    /// Facts: `size`.
    ArtworkSizeUncovered "artwork-size-uncovered" Error
    /// Facts: `size`.
    ArtworkSizeTwice "artwork-size-twice" Error
    ArtworkFileMissing "artwork-file-missing" Warning
    /// A raster that is too coarse at its real size. Facts: `dpi`, `wanted`.
    ArtworkCoarse "artwork-coarse" Warning
    /// The original has live text or linked pictures, which look otherwise elsewhere.
    ArtworkLiveText "artwork-live-text" Warning
    /// Facts: `height`, `least`, `method`.
    TextTooSmall "text-too-small" Warning

    /// Sold in the EU, the UK or the US, and no label says the composition.
    CompositionLabelMissing "composition-label-missing" Error
    /// Sold in the US, and the care is not told whole. 16 CFR 423. Facts: `missing`.
    CareMissing "care-missing" Error
    /// Sold in the US, and no label says the care. 16 CFR 423.
    CareLabelMissing "care-label-missing" Error
    /// Sold in the US, and no label says the origin.
    OriginLabelMissing "origin-label-missing" Error
    /// Care instructions are customary in the EU and the UK, and not required.
    CareCustomary "care-customary" Warning
    /// The care asks more of a material than it bears. Facts: `treatments`, `materials`.
    CareHarsh "care-harsh" Warning
    /// Facts: `missing`.
    LabelSizeMissing "label-size-missing" Warning
    LabelPlaceMissing "label-place-missing" Warning
    /// A label with texts of its own, but not in this language. Facts: `language`.
    LabelLanguageMissing "label-language-missing" Warning

    /// A pack without pieces.
    RatioEmpty "ratio-empty" Error
    /// Facts: `colourway`, `pieces`, `pack`, `left`.
    RatioRemainder "ratio-remainder" Warning

    /// A cord on a child's garment, and it is not said where.
    CordPlaceMissing "cord-place-missing" Error
    /// A cord in hood or neck of a child's upper outerwear. Facts: `rule`, `sizes`, as with every
    /// code of safety.
    CordHoodNeckUs "cord-hood-neck-us" Error
    /// A cord in hood or neck of a young child's garment.
    CordHoodNeckEu "cord-hood-neck-eu" Error
    /// An owner set a rule on cords aside. Facts: `reasons`: which rule, why and who says so.
    CordExempted "cord-exempted" Warning
    /// A cord with free ends in hood or neck of an older child's garment.
    CordFreeEndsEu "cord-free-ends-eu" Warning
    /// A cord of a child's garment, and it is not said how far it hangs out, or how it ends.
    CordFreeMissing "cord-free-missing" Warning
    /// A waist or hem cord that hangs out too far. Facts: `free`, `most`.
    CordLongUs "cord-long-us" Warning
    /// A waist or hem cord with toggle, tip or knot.
    CordToggledUs "cord-toggled-us" Warning
    /// A waist or hem cord that can be pulled out.
    CordLooseUs "cord-loose-us" Warning
    /// A cord that hangs out further than the table, which is from memory. Facts: `free`, `most`.
    CordLongEu "cord-long-eu" Warning
    /// A cord at the back of a child's garment.
    CordBackEu "cord-back-eu" Warning
    EvidenceSmallParts "evidence-small-parts" Warning
    EvidenceFlammability "evidence-flammability" Warning
    EvidenceSleepwear "evidence-sleepwear" Warning
    EvidenceNickel "evidence-nickel" Warning
    EvidenceAzoDyes "evidence-azo-dyes" Warning
    EvidenceLead "evidence-lead" Warning
}

impl Code {
    /// Whether an owner's documented reason lifts it. Only bans of cords on children's wear: their
    /// scope is a matter of the garment, which this program cannot judge for certain.
    pub fn can_be_lifted(self) -> bool {
        matches!(self, Code::CordHoodNeckUs | Code::CordHoodNeckEu)
    }
}
