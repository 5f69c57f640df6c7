//! Trail shorts in inches: published, shared, and waiting to be acknowledged.

use super::garment::{Dye, Garment, Line, Rule, half, length};
use crate::spec::document::View::{Back, Front};
use crate::spec::document::{Header, Market, MeasuringState, Wearer};
use crate::spec::{ItemId, Unit};

/// What goes round the body grows by this.
const ROUND: Rule = Rule::Steps(&[("XS", "L", "1"), ("L", "XL", "1 1/4")]);
const LEG: Rule = Rule::Steps(&[("XS", "XL", "1/2")]);

pub fn trail_shorts() -> Garment {
    Garment {
        header: Header {
            number: "HT-117".to_owned(),
            name: "Ridge trail shorts".to_owned(),
            garment: "shorts".to_owned(),
            wearer: Some(Wearer::Unisex),
            season: "Spring 2027".to_owned(),
            markets: vec![Market::Us, Market::Eu],
            origin: "Bangladesh".to_owned(),
            base_size: Some(ItemId::new("size-m")),
            unit: Some(Unit::Inch),
            measured: Some(MeasuringState::AfterWashes(1)),
            main_fabric: "Interlock, polyester and elastane, 190 g/m²".to_owned(),
            contrast_fabric: "Pocket mesh, polyester, 95 g/m²".to_owned(),
            ..Header::default()
        },
        sizes: &[("XS", ""), ("S", ""), ("M", ""), ("L", ""), ("XL", "")],
        lines: lines(),
        parts: &[
            ("P1", "Main fabric", Some((Back, 3000, 6364))),
            ("P2", "Drawcord", Some((Front, 4200, 3068))),
            ("P3", "Zip", Some((Front, 1800, 3920))),
            ("P4", "Pocket mesh", None),
            ("P5", "Elastic", None),
            ("P6", "Thread", None),
            ("P7", "Reflective transfer, left leg", None),
        ],
        colourways: &[
            (
                "PNE",
                "Pine",
                &[
                    Dye::Colour("Pine", "#2f4a3c"),
                    Dye::Colour("Chalk", "#ece7db"),
                    Dye::Match("P1"),
                    Dye::Colour("Black", "#1d1d1d"),
                    Dye::Natural,
                    Dye::Match("P1"),
                    Dye::Colour("Silver", "#b9bcc0"),
                ],
            ),
            (
                "CLY",
                "Clay",
                &[
                    Dye::Colour("Clay", "#a8623f"),
                    Dye::Match("P1"),
                    Dye::Colour("Black", "#1d1d1d"),
                    Dye::Colour("Black", "#1d1d1d"),
                    Dye::Natural,
                    Dye::Match("P1"),
                    Dye::None,
                ],
            ),
        ],
        flats: [
            (
                Front,
                "trail-shorts-front.svg",
                include_str!("trail-shorts-front.svg"),
            ),
            (
                Back,
                "trail-shorts-back.svg",
                include_str!("trail-shorts-back.svg"),
            ),
        ],
    }
}

fn lines() -> Vec<Line> {
    vec![
        half("A", "Waist, relaxed")
            .between("top edge of waistband, side", "other side")
            .base("14 1/4")
            .within("3/8")
            .rule(ROUND)
            .nearest("1/8")
            .key()
            .at(Front, 6200, 1341),
        half("B", "Waist, stretched")
            .between("top edge of waistband, side", "other side")
            .stretched()
            .base("19 3/4")
            .within("3/8")
            .rule(ROUND)
            .nearest("1/8")
            .at(Back, 5000, 1273),
        length("C", "Waistband height")
            .between("top edge", "waistband seam")
            .base("1 1/2")
            .within("1/8")
            .nearest("1/16")
            .at(Back, 3300, 1386),
        half("D", "Hip width")
            .between("side, 8 in below waistband top", "other side")
            .curved()
            .note("Follow the curve of the waist.")
            .base("21 1/4")
            .within("3/8")
            .rule(ROUND)
            .nearest("1/8")
            .key()
            .critical()
            .at(Front, 3500, 4545),
        length("E", "Front rise")
            .between("top edge of waistband, centre front", "crotch seam")
            .curved()
            .base("11 3/8")
            .within("1/4")
            .rule(Rule::Steps(&[("XS", "XL", "1/4")]))
            .nearest("1/8")
            .key()
            .at(Front, 5000, 4773),
        length("F", "Back rise")
            .between("top edge of waistband, centre back", "crotch seam")
            .curved()
            .base("15")
            .within("1/4")
            .rule(Rule::Steps(&[("XS", "XL", "3/8")]))
            .nearest("1/8")
            .key()
            .at(Back, 5000, 5250),
        half("G", "Thigh width")
            .between("crotch seam", "side")
            .note("Square to the grain.")
            .base("12 3/4")
            .within("1/4")
            .rule(LEG)
            .nearest("1/8")
            .key()
            .at(Front, 6400, 6364),
        half("H", "Leg opening")
            .between("inseam at hem", "side at hem")
            .note("Along the edge.")
            .base("11 3/4")
            .within("1/4")
            .rule(LEG)
            .nearest("1/8")
            .at(Front, 2900, 8773),
        length("J", "Inseam")
            .between("crotch seam", "hem edge")
            .base("5 7/8")
            .within("1/4")
            .rule(Rule::Steps(&[("XS", "XL", "1/8")]))
            .nearest("1/8")
            .key()
            .at(Front, 5480, 7727),
        length("K", "Outseam")
            .between("top edge of waistband", "hem edge")
            .curved()
            .note("Along the side.")
            .base("17")
            .within("3/8")
            .rule(Rule::Steps(&[("XS", "XL", "3/8")]))
            .nearest("1/8")
            .key()
            .at(Front, 8620, 6023),
        length("L", "Front pocket opening")
            .between("top bartack", "bottom bartack")
            .base("6 1/8")
            .within("1/8")
            .nearest("1/16")
            .at(Front, 7550, 3409),
        length("M", "Back zip pocket opening")
            .between("bartack", "other bartack")
            .base("5 1/2")
            .within("1/8")
            .nearest("1/16")
            .at(Back, 5000, 2977),
        length("N", "Side vent height")
            .between("hem edge", "bartack")
            .base("1 9/16")
            .within("1/8")
            .nearest("1/16")
            .at(Front, 1100, 8011),
    ]
}
