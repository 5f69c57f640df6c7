//! Materials: fabrics and trims, a line each. Prices are no part of the spec.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::care::Care;
use super::declare::{records, words};
use super::field::{Leaf, Shape, Value};
use crate::spec::decimal::Decimal;
use crate::spec::id::ItemId;
use crate::spec::units::Entered;

words! {
    MaterialKind "material" {
        WovenFabric "woven_fabric",
        KnittedFabric "knitted_fabric",
        OtherFabric "other_fabric",
        Interlining "interlining",
        Padding "padding",
        Zip "zip",
        Drawcord "drawcord",
        CordTip "cord_tip",
        CordStop "cord_stop",
        Eyelet "eyelet",
        Elastic "elastic",
        Button "button",
        Snap "snap",
        HookAndLoop "hook_and_loop",
        Buckle "buckle",
        Webbing "webbing",
        Tape "tape",
        Reflective "reflective",
        Thread "thread",
        Transfer "transfer",
        Patch "patch",
        Label "label",
        Packing "packing",
        Other "other",
    }

    /// Which component of the garment a fabric is, as the composition label lists them.
    Component "component" {
        Main "main",
        Contrast "contrast",
        Rib "rib",
        Lining "lining",
        Pocketing "pocketing",
        Padding "padding",
        Coating "coating",
        Trimming "trimming",
    }

    /// Generic fibre names by Regulation (EU) No 1007/2011, Annex I; the document's names are our
    /// own.
    Fibre "fibre" {
        Cotton "cotton",
        Wool "wool",
        VirginWool "virgin_wool",
        RecycledWool "recycled_wool",
        Silk "silk",
        Linen "linen",
        Hemp "hemp",
        Jute "jute",
        Ramie "ramie",
        Cashmere "cashmere",
        Mohair "mohair",
        Alpaca "alpaca",
        Angora "angora",
        Camel "camel",
        Down "down",
        Viscose "viscose",
        Modal "modal",
        Lyocell "lyocell",
        Cupro "cupro",
        Acetate "acetate",
        Triacetate "triacetate",
        Polyester "polyester",
        Polyamide "polyamide",
        Acrylic "acrylic",
        Modacrylic "modacrylic",
        Polypropylene "polypropylene",
        Polyethylene "polyethylene",
        Polyurethane "polyurethane",
        Elastane "elastane",
        Elastodiene "elastodiene",
        Elastolefin "elastolefin",
        Elastomultiester "elastomultiester",
        Aramid "aramid",
        Polylactide "polylactide",
        Chlorofibre "chlorofibre",
        MetalFibre "metal_fibre",
        Paper "paper",
        Other "other",
    }

    /// How the fineness of a yarn is counted.
    YarnSystem "yarn" {
        Tex "tex",
        Dtex "dtex",
        Denier "denier",
        /// Metric count: kilometres per kilogram.
        Nm "nm",
        /// English cotton count: hanks of 840 yd per pound.
        Ne "ne",
    }

    ZipTeeth "zip-teeth" {
        Coil "coil",
        Moulded "moulded",
        Metal "metal",
        Invisible "invisible",
    }

    ZipEnd "zip-end" {
        Closed "closed",
        Open "open",
        TwoWay "two_way",
    }

    /// Where on the body a cord is: decides which rules hold for children.
    CordPlace "cord-place" {
        HoodNeck "hood_neck",
        Chest "chest",
        Waist "waist",
        Hem "hem",
        /// Lower edge below the crotch, leg ends.
        Legs "legs",
        Sleeve "sleeve",
        Back "back",
        Elsewhere "elsewhere",
    }

    CordEnds "cord-ends" {
        /// They hang free.
        Free "free",
        /// Free, with a toggle, tip or knot.
        Toggled "toggled",
        /// Sewn in at both ends: no free end.
        Fixed "fixed",
        /// A closed loop.
        Loop "loop",
    }

    /// What consumption counts.
    Measured "measured-in" {
        Metre "metre",
        SquareMetre "square_metre",
        Piece "piece",
        Gram "gram",
    }

    /// Where a figure of consumption comes from.
    ConsumptionBasis "consumption" {
        /// The length of a laid marker.
        Marker "marker",
        /// The pieces' own area.
        Area "area",
        Estimate "estimate",
    }

    WastageBasis "wastage" {
        /// So much on top of what is needed.
        Allowance "allowance",
        /// So much of what is bought is lost.
        LossOfInput "loss_of_input",
    }

    /// What a minimum order counts for.
    MinimumLevel "minimum" {
        Style "style",
        Colour "colour",
        Dimension "dimension",
    }

    EvidenceKind "evidence" {
        SmallParts "small_parts",
        Flammability "flammability",
        Nickel "nickel",
        AzoDyes "azo_dyes",
        Lead "lead",
        ColourFastness "colour_fastness",
        Shrinkage "shrinkage",
        Strength "strength",
        Other "other",
    }
}

records! {
    record Materials {
        materials: Vec<Material>,
    }

    item Material {
        /// `F1`, `T3`.
        letter: String,
        name: String,
        kind: Option<MaterialKind>,
        /// The parts whose colour it takes; a fabric may make several.
        parts: Vec<ItemId>,
        /// Where it goes, in words.
        placement: String,
        component: Option<Component>,
        /// Percent by mass, 100 together.
        composition: Vec<Share>,
        supplier: String,
        /// The supplier's name for it.
        reference: String,
        /// From this supplier and no other.
        nominated: bool,
        /// Another may be offered, and needs the brand's consent.
        substitute: bool,
        fabric: Fabric,
        zip: Zip,
        cord: Cord,
        /// Width, diameter or size of a trim.
        size: Option<Entered>,
        /// The same length in all sizes; see `length_by_size`.
        length: Option<Entered>,
        length_by_size: BTreeMap<ItemId, Entered>,
        branding: String,
        branding_method: String,
        /// Metal that touches the skin for long.
        metal_on_skin: bool,
        consumption: Consumption,
        wastage: Option<Wastage>,
        minimum: Option<Minimum>,
        /// How many come in a pack.
        pack: Option<u32>,
        lead_days: Option<u16>,
        /// The care that it bears at most.
        care: Care,
        evidence: Vec<Evidence>,
    }

    group Share {
        fibre: Option<Fibre>,
        percent: Option<Decimal>,
        /// For a fibre without a listed name: what it is called.
        name: String,
        /// It has a task though there is little of it, strength for instance: a label for the
        /// United States then names it even under 5 %.
        functional: bool,
    }

    record Fabric {
        /// Grams per square metre, finished.
        mass: Option<Decimal>,
        width: Option<Entered>,
        cuttable: Option<Entered>,
        structure: Option<Structure>,
        finish: String,
        /// Raised surface: fleece, brushed, pile.
        raised: bool,
    }

    group Yarn {
        /// Of the single yarn.
        count: Option<Decimal>,
        system: Option<YarnSystem>,
        /// How many singles are twisted together, where not one: 2 of Nm 60/2.
        ply: Option<u8>,
    }

    record Zip {
        teeth: Option<ZipTeeth>,
        end: Option<ZipEnd>,
        /// Width of the closed chain.
        chain: Option<Entered>,
        tape: String,
        slider: String,
        puller: String,
        /// The point of measure whose opening it closes.
        opening: Option<ItemId>,
    }

    record Cord {
        place: Option<CordPlace>,
        ends: Option<CordEnds>,
        braid: String,
        /// How far it hangs out of its channel when the garment lies open to its full width.
        free: Option<Entered>,
        /// The point of measure that is its channel.
        channel: Option<ItemId>,
        /// Held against being pulled out: bartacked at mid-channel.
        bartacked: bool,
    }

    record Consumption {
        unit: Option<Measured>,
        basis: Option<ConsumptionBasis>,
        /// A garment of the base size, or of every size where no other is given.
        amount: Option<Decimal>,
        by_size: BTreeMap<ItemId, Decimal>,
    }

    group Wastage {
        percent: Option<Decimal>,
        basis: Option<WastageBasis>,
    }

    group Minimum {
        quantity: Option<Decimal>,
        unit: Option<Measured>,
        level: Option<MinimumLevel>,
    }

    group Evidence {
        kind: Option<EvidenceKind>,
        /// Laboratory and number of the report.
        report: String,
        /// As `YYYY-MM-DD`.
        date: String,
    }
}

/// How a fabric is made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Structure {
    Woven(Woven),
    Knitted(Knitted),
}

records! {
    group Woven {
        weave: String,
        warp: Option<Yarn>,
        weft: Option<Yarn>,
        /// Threads per centimetre.
        ends: Option<Decimal>,
        picks: Option<Decimal>,
        /// Percent that the yarn is longer than the cloth.
        warp_crimp: Option<Decimal>,
        weft_crimp: Option<Decimal>,
    }

    group Knitted {
        knit: String,
        yarn: Option<Yarn>,
        /// Per centimetre.
        courses: Option<Decimal>,
        wales: Option<Decimal>,
        /// Millimetres of yarn in one loop.
        loop_mm: Option<Decimal>,
        /// Knitted as a tube: the width lies double.
        tubular: bool,
    }
}

impl Leaf for Structure {
    fn shape() -> Shape {
        Shape::OneOf(vec![
            ("woven", Woven::shape()),
            ("knitted", Knitted::shape()),
        ])
    }

    fn value(&self) -> Option<Value> {
        let (name, value) = match self {
            Structure::Woven(woven) => ("woven", woven.value()?),
            Structure::Knitted(knitted) => ("knitted", knitted.value()?),
        };
        Some(Value::Group(vec![(name, value)]))
    }
}

impl Material {
    pub fn is_fabric(&self) -> bool {
        use MaterialKind::{KnittedFabric, OtherFabric, WovenFabric};
        matches!(self.kind, Some(WovenFabric | KnittedFabric | OtherFabric))
    }

    /// How long it is in a size, where it has a length.
    pub fn length_in(&self, size: &ItemId) -> Option<Entered> {
        self.length_by_size.get(size).copied().or(self.length)
    }
}

impl Consumption {
    /// Of one garment of a size.
    pub fn of(&self, size: &ItemId) -> Option<Decimal> {
        self.by_size.get(size).copied().or(self.amount)
    }
}
