//! A child's rain jacket in centimetres: a draft with some things still to mend. It has no cord in
//! hood or neck.

use super::garment::{Dye, Garment, Line, Rule, full, half, length};
use crate::spec::document::View::{Back, Front};
use crate::spec::document::{Header, Market, MeasuringState, Wearer};
use crate::spec::{ItemId, Unit};

pub fn rain_jacket() -> Garment {
    Garment {
        header: Header {
            number: "HT-309".to_owned(),
            name: "Puddle rain jacket".to_owned(),
            garment: "rain jacket".to_owned(),
            wearer: Some(Wearer::Children),
            season: "Spring 2027".to_owned(),
            markets: vec![Market::Eu, Market::Uk],
            origin: "Vietnam".to_owned(),
            base_size: Some(ItemId::new("size-116")),
            unit: Some(Unit::Cm),
            measured: Some(MeasuringState::AsSewn),
            main_fabric: "Plain weave, polyester, coated, 150 g/m²".to_owned(),
            contrast_fabric: String::new(),
            ..Header::default()
        },
        sizes: &[
            ("98", "age 2-3"),
            ("104", "age 3-4"),
            ("110", "age 4-5"),
            ("116", "age 5-6"),
            ("122", "age 6-7"),
            ("128", "age 7-8"),
        ],
        lines: lines(),
        parts: &[
            ("P1", "Main fabric", Some((Back, 6200, 6981))),
            ("P2", "Reflective tape", Some((Back, 3800, 8170))),
            ("P3", "Zip", Some((Front, 5000, 6500))),
            ("P4", "Snap", Some((Front, 3400, 7755))),
            ("P5", "Elastic of hood and cuff", None),
        ],
        colourways: &[
            (
                "SUN",
                "Sunflower",
                &[
                    Dye::Colour("Sunflower", "#e3a72f"),
                    Dye::Colour("Silver", "#b9bcc0"),
                    Dye::Colour("Slate", "#4a5a66"),
                    Dye::Match("P3"),
                    Dye::Natural,
                ],
            ),
            (
                "FRN",
                "Fern",
                &[
                    Dye::Colour("Fern", "#4c7a4f"),
                    Dye::Colour("Silver", "#b9bcc0"),
                    Dye::Match("P1"),
                    // To mend: nobody has said what colour this is.
                    Dye::Open,
                    Dye::Natural,
                ],
            ),
        ],
        flats: [
            (
                Front,
                "rain-jacket-front.svg",
                include_str!("rain-jacket-front.svg"),
            ),
            (
                Back,
                "rain-jacket-back.svg",
                include_str!("rain-jacket-back.svg"),
            ),
        ],
    }
}

fn lines() -> Vec<Line> {
    vec![
        length("A", "Body length, centre back")
            .between("neck seam at centre back", "hem edge")
            .base("52")
            .within("1.0")
            .rule(Rule::Steps(&[("98", "128", "2.5")]))
            .nearest("0.5")
            .key()
            .at(Back, 5000, 6226),
        half("B", "Chest width")
            .between("side, 2 cm below armhole", "other side")
            .note("With the zip closed.")
            .base("43")
            .within("1.0")
            .rule(Rule::Steps(&[("98", "128", "1.5")]))
            .nearest("0.5")
            .key()
            .at(Front, 4200, 5802),
        half("C", "Hem width")
            .between("side at hem", "other side")
            .note("Along the edge.")
            .curved()
            .base("51")
            .within("1.0")
            .rule(Rule::Steps(&[("98", "128", "1.8")]))
            // To mend: rounding to half a centimetre leaves the steps uneven.
            .nearest("0.5")
            .key()
            .at(Front, 4000, 9104),
        length("D", "Sleeve length from neck")
            // To mend: it does not say where the sleeve ends.
            .between("neck seam at shoulder", "")
            .curved()
            .note("Along the outer edge.")
            .base("53")
            .within("1.0")
            .rule(Rule::Steps(&[("98", "128", "2.5")]))
            .nearest("0.5")
            .key()
            .at(Front, 7900, 4151),
        half("E", "Upper arm width")
            .between("underarm seam, 2 cm below armhole", "outer edge")
            .note("Square to the outer edge.")
            .base("18.5")
            .within("0.5")
            // To mend: no step from 122 to 128.
            .rule(Rule::Steps(&[("98", "122", "0.6")]))
            .at(Front, 2100, 5000),
        half("F", "Cuff opening, relaxed")
            .between("edge of cuff", "other edge")
            .base("8")
            .within("0.5")
            .rule(Rule::Steps(&[("98", "128", "0.2")]))
            .at(Front, 1000, 7868),
        half("G", "Cuff opening, stretched")
            .between("edge of cuff", "other edge")
            .stretched()
            .base("11")
            .within("0.5")
            .rule(Rule::Steps(&[("98", "128", "0.2")]))
            .at(Back, 9000, 7868),
        length("H", "Hood height")
            .between("neck seam at the zip", "top of the hood")
            .note("With the hood laid flat.")
            .base("31")
            .within("0.5")
            .rule(Rule::Values(&[
                ("98", "30"),
                ("104", "30.4"),
                ("110", "30.7"),
                ("116", "31"),
                ("122", "31.3"),
                ("128", "31.5"),
            ]))
            .at(Front, 6450, 1415),
        length("J", "Hood width")
            .between("front edge of the hood", "back seam, at the widest")
            .base("23.5")
            .within("0.5")
            .rule(Rule::Steps(&[("98", "128", "0.3")]))
            .at(Back, 5900, 2028),
        full("K", "Neck opening")
            .between("neck seam at the zip", "other side of the zip")
            .curved()
            .note("Along the seam.")
            .base("42")
            .within("0.5")
            .rule(Rule::Steps(&[("98", "128", "0.8")]))
            .at(Front, 4200, 3208),
        length("L", "Front zip length")
            .between("bottom stop", "top stop")
            .within("0.5")
            .rule(Rule::From("A", "4"))
            .at(Front, 5000, 7642),
        length("M", "Pocket flap width")
            .between("side of flap", "other side of flap")
            .base("14.5")
            .within("0.3")
            .at(Front, 6560, 6962),
        // To mend: its letter stands on no drawing.
        length("N", "Back yoke length")
            .between("neck seam at centre back", "yoke seam")
            .base("19.5")
            .within("0.5")
            .rule(Rule::Steps(&[("98", "128", "0.6")])),
    ]
}
