//! The sizes, smallest first, and a second axis where there is one.

use super::declare::{records, words};
use crate::spec::units::Entered;

words! {
    SizeSystem "size-system" {
        Alpha "alpha",
        Numeric "numeric",
        /// Children's sizes, named by the height of the body in centimetres.
        Height "height",
    }

    /// Dimensions of the body, by the terms of EN 13402-1 and ISO 8559-1.
    BodyDimension "body" {
        Height "height",
        ChestGirth "chest_girth",
        BustGirth "bust_girth",
        UnderbustGirth "underbust_girth",
        WaistGirth "waist_girth",
        HipGirth "hip_girth",
        NeckGirth "neck_girth",
        HeadGirth "head_girth",
        ArmLength "arm_length",
        InsideLegLength "inside_leg_length",
        HandGirth "hand_girth",
        FootLength "foot_length",
    }
}

records! {
    record Sizes {
        system: Option<SizeSystem>,
        sizes: Vec<Size>,
        /// The second axis: inseam lengths, for instance. Empty where there is none.
        lengths: Vec<LengthOption>,
    }

    item Size {
        /// As on the label: `M`, `38`, `116`.
        code: String,
        /// Anything to add for the factory: `age 5-6`.
        label: String,
        /// The body that it is for.
        body: Vec<BodyRange>,
        ages: Option<Ages>,
    }

    /// One value of the second axis.
    item LengthOption {
        /// As on the label: `30`, `short`.
        code: String,
        label: String,
    }

    group BodyRange {
        dimension: Option<BodyDimension>,
        from: Option<Entered>,
        /// Nothing for a single value.
        to: Option<Entered>,
    }

    /// The ages of the children that a size is for, in months from birth.
    group Ages {
        from: u16,
        to: u16,
    }
}
