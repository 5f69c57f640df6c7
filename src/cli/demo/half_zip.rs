//! A women's half-zip in centimetres: published twice, and on its way through a proto.

use super::garment::{Dye, Garment, Line, Rule, across, half, length};
use crate::spec::document::View::{Back, Front};
use crate::spec::document::{Header, Market, MeasuringState, Wearer};
use crate::spec::{ItemId, Unit};

/// What the chest was graded by before the factory asked.
pub const CHEST_AT_FIRST: Rule = Rule::Steps(&[("XS", "2XL", "2.0")]);
/// What it is graded by since.
pub const CHEST: Rule = Rule::Steps(&[("XS", "L", "2.0"), ("L", "2XL", "2.5")]);

/// The half-zip with its chest graded so.
pub fn half_zip(chest: Rule) -> Garment {
    Garment {
        header: Header {
            number: "HT-204".to_owned(),
            name: "Shoal half-zip".to_owned(),
            garment: "half-zip".to_owned(),
            wearer: Some(Wearer::Women),
            season: "Autumn 2027".to_owned(),
            markets: vec![Market::Eu, Market::Uk],
            origin: "Vietnam".to_owned(),
            base_size: Some(ItemId::new("size-m")),
            unit: Some(Unit::Cm),
            measured: Some(MeasuringState::AfterFinish),
            main_fabric: "Fleece, polyester, brushed inside, 240 g/m²".to_owned(),
            contrast_fabric: "2 × 2 rib, cotton and elastane, 380 g/m²".to_owned(),
            ..Header::default()
        },
        sizes: &[
            ("XS", ""),
            ("S", ""),
            ("M", ""),
            ("L", ""),
            ("XL", ""),
            ("2XL", ""),
        ],
        lines: lines(chest),
        parts: &[
            ("P1", "Main fabric", Some((Back, 6400, 4688))),
            ("P2", "Contrast rib", Some((Back, 4200, 8625))),
            ("P3", "Zip tape", Some((Front, 5600, 2604))),
            ("P4", "Zip slider and puller", None),
            ("P5", "Thread", None),
        ],
        colourways: &[
            (
                "SLT",
                "Slate",
                &[
                    Dye::Colour("Slate", "#4a5a66"),
                    Dye::Colour("Rust", "#b4532a"),
                    Dye::Match("P2"),
                    Dye::Colour("Gunmetal", "#53565a"),
                    Dye::Match("P1"),
                ],
            ),
            (
                "CHK",
                "Chalk",
                &[
                    Dye::Colour("Chalk", "#ece7db"),
                    Dye::Colour("Moss", "#5f6b45"),
                    Dye::Match("P1"),
                    Dye::Colour("Silver", "#b9bcc0"),
                    Dye::Match("P1"),
                ],
            ),
            (
                "OAT",
                "Oat",
                &[
                    Dye::Natural,
                    Dye::Colour("Oat", "#d8c9a8"),
                    Dye::Match("P2"),
                    Dye::Colour("Silver", "#b9bcc0"),
                    Dye::Match("P2"),
                ],
            ),
        ],
        flats: [
            (
                Front,
                "half-zip-front.svg",
                include_str!("half-zip-front.svg"),
            ),
            (Back, "half-zip-back.svg", include_str!("half-zip-back.svg")),
        ],
    }
}

fn lines(chest: Rule) -> Vec<Line> {
    vec![
        length("A", "Body length, centre back")
            .between("neck seam at centre back", "hem edge")
            .base("64")
            .within("1.0")
            .rule(Rule::Steps(&[("XS", "2XL", "1.5")]))
            .nearest("0.5")
            .key()
            .at(Back, 5000, 6250),
        across("B", "Shoulder width")
            .between("shoulder seam end", "other shoulder seam end")
            .base("42")
            .within("0.5")
            .rule(Rule::Steps(&[("XS", "2XL", "1.2")]))
            .key()
            .critical()
            .at(Back, 5000, 2625),
        half("C", "Chest width")
            .between("side, 2 cm below armhole", "other side")
            .base("53")
            .within("0.8")
            .rule(chest)
            .key()
            .critical()
            .at(Front, 5000, 5000),
        half("D", "Hem width")
            .between("bottom edge of rib, side", "other side")
            .note("Let the rib lie by itself; do not pull it.")
            .base("46")
            .within("1.0")
            .rule(Rule::Steps(&[("XS", "L", "2.0"), ("L", "2XL", "2.5")]))
            .nearest("0.5")
            .key()
            .at(Front, 4400, 8625),
        length("E", "Sleeve length")
            .between("shoulder seam end", "cuff edge")
            .curved()
            .note("Along the outer edge.")
            .base("62")
            .within("1.0")
            .rule(Rule::Steps(&[("XS", "2XL", "1.0")]))
            .nearest("0.5")
            .key()
            .at(Front, 8720, 5417),
        half("F", "Upper arm width")
            .between("underarm seam, 2 cm below armhole", "outer edge")
            .note("Square to the outer edge.")
            .base("20")
            .within("0.5")
            .rule(Rule::Steps(&[("XS", "2XL", "0.8")]))
            .at(Front, 1900, 4583),
        half("G", "Cuff opening")
            .between("edge of cuff", "other edge")
            .base("8.5")
            .within_each("0.3", "0.5")
            .rule(Rule::Steps(&[("XS", "2XL", "0.3")]))
            .at(Front, 720, 8979),
        length("H", "Cuff height")
            .between("cuff seam", "cuff edge")
            .base("6")
            .within("0.3")
            .at(Front, 9320, 8458),
        across("J", "Neck opening")
            .between("neck seam at shoulder", "neck seam at other shoulder")
            .note("With the zip closed.")
            .base("19")
            .within("0.5")
            .rule(Rule::Steps(&[("XS", "2XL", "0.5")]))
            .at(Front, 4250, 2042),
        length("K", "Collar height, centre back")
            .between("neck seam", "top edge")
            .base("6.5")
            .within("0.3")
            .at(Back, 5000, 1438),
        length("L", "Zip length")
            .between("bottom stop", "top stop")
            .base("24")
            .within("0.3")
            .rule(Rule::Steps(&[("XS", "2XL", "0.5")]))
            .at(Front, 5000, 3333),
        length("M", "Hem rib height")
            .between("rib seam", "rib edge")
            .base("6")
            .within("0.3")
            .at(Front, 6600, 8625),
    ]
}
