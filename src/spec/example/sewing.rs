//! How the example is sewn, decorated, labelled and packed.

use super::{inches, sixteenths};
use crate::spec::decimal::Decimal;
use crate::spec::document::*;
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::Entered;

pub fn construction() -> Construction {
    let line = |id: &str, name: &str, kind| Line {
        id: ItemId::new(format!("line-{id}")),
        name: name.to_owned(),
        kind: Some(kind),
    };
    Construction {
        lines: vec![
            line("centre-front", "Centre front", LineKind::CentreLine),
            line("neck", "Neck seam", LineKind::Seam),
            line("side", "Left side seam", LineKind::Seam),
            line("hem", "Hem seam", LineKind::Seam),
        ],
        callouts: vec![
            Callout {
                line: Some(ItemId::new("line-neck")),
                text: "Close the neck seam, then cover it inside with tape.".to_owned(),
                tape: Some(ItemId::new("material-tape")),
                ..callout("1", "neck seam", "401")
            },
            Callout {
                line: Some(ItemId::new("line-hem")),
                text: "Join the rib stretched evenly to the body.".to_owned(),
                ..callout("2", "hem seam", "514")
            },
            Callout {
                line: Some(ItemId::new("line-centre-front")),
                text: "Set the zip in and topstitch along both sides of it.".to_owned(),
                topstitch: Some(sixteenths(4)),
                bartacks: Some(1),
                ..callout("3", "zip", "301")
            },
        ],
    }
}

fn callout(letter: &str, place: &str, stitch: &str) -> Callout {
    Callout {
        id: ItemId::new(format!("callout-{letter}")),
        letter: letter.to_owned(),
        place: place.to_owned(),
        stitch: stitch.to_owned(),
        seam: Some(SeamClass::Superimposed),
        density: Some(Decimal::new(4, 0)),
        allowance: Some(sixteenths(6)),
        thread: Some(ItemId::new("material-thread")),
        ..Callout::default()
    }
}

fn from(line: &str, anchor: Anchor, distance: Entered) -> Distance {
    Distance {
        line: Some(ItemId::new(format!("line-{line}"))),
        anchor: Some(anchor),
        distance: Some(distance),
    }
}

pub fn artwork(file: Digest) -> Artworks {
    let band = Band {
        width: Some(sixteenths(20)),
        height: Some(sixteenths(10)),
        distances: vec![
            from("centre-front", Anchor::Left, inches(3)),
            from("neck", Anchor::Top, inches(5)),
        ],
        ..Band::default()
    };
    Artworks {
        artworks: vec![Artwork {
            id: ItemId::new("artwork-wave"),
            letter: "AW1".to_owned(),
            name: "Wave".to_owned(),
            method: Some(ArtworkMethod::Embroidery),
            form: Some(ArtworkForm::Vector),
            file: Some(file),
            colours: vec![ItemId::new("part-2")],
            drawing: Some(ItemId::new("drawing-front")),
            bands: vec![band],
            ..Artwork::default()
        }],
    }
}

pub fn labels() -> Labels {
    let label = |letter: &str, id: &str, name: &str| Label {
        id: ItemId::new(format!("label-{id}")),
        letter: letter.to_owned(),
        name: name.to_owned(),
        width: Some(sixteenths(20)),
        ..Label::default()
    };
    Labels {
        care: Care {
            wash: Some(Wash::Mild30),
            bleach: Some(Bleach::No),
            tumble: Some(Tumble::No),
            air_dry: Some(AirDry::Line),
            iron: Some(Iron::Low),
            dry_clean: Some(DryClean::No),
            note: "Wash inside out with like colours.".to_owned(),
            ..Care::default()
        },
        labels: vec![
            Label {
                kind: Some(LabelKind::Brand),
                height: Some(sixteenths(12)),
                ground: "damask".to_owned(),
                made: Some(LabelMade::Woven),
                fold: Some(LabelFold::Ends),
                attached: "both ends, tone in tone".to_owned(),
                distances: vec![from("neck", Anchor::Top, sixteenths(8))],
                driver: Some(Driver::Style),
                ..label("L1", "brand", "Brand label")
            },
            Label {
                kind: Some(LabelKind::CareComposition),
                height: Some(sixteenths(48)),
                folded_height: Some(sixteenths(24)),
                ground: "satin".to_owned(),
                made: Some(LabelMade::Printed),
                text_height: Some(sixteenths(2)),
                contents: LabelContent::ALL.to_vec(),
                fold: Some(LabelFold::Loop),
                attached: "in the side seam, left".to_owned(),
                distances: vec![from("hem", Anchor::Bottom, inches(3))],
                driver: Some(Driver::Size),
                ..label("L2", "care", "Care and composition label")
            },
        ],
    }
}

pub fn packing() -> Packing {
    let step = |number: u8, text: &str| Step {
        id: ItemId::new(format!("step-{number}")),
        text: text.to_owned(),
    };
    Packing {
        fold: "Sleeves back, folded once, 12 × 14 in".to_owned(),
        bag: "Paper, 13 × 15 in".to_owned(),
        tags: "One hang tag through the brand label".to_owned(),
        steps: vec![
            step(1, "Close the zip and fold the sleeves back."),
            step(2, "Put the size sticker on the front of the bag."),
        ],
        assortment: Some(Assortment::Solid),
        packs_per_carton: Some(20),
        carton: Carton {
            length: Some(inches(24)),
            width: Some(inches(16)),
            height: Some(inches(12)),
            mass_limit: Some(Decimal::new(18, 0)),
        },
        ..Packing::default()
    }
}
