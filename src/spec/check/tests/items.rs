//! Cases of what holds for all items.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::IdTwice, Some("part-1"), None,
        |s| s.colourways.colourways[0].id = id("part-1"),
        |s| s.drawings.drawings[0].markers[0].id = id("marker-new")),
    (Code::LetterMissing, Some("material-zip"), Some("letter"),
        |s| material(s, "zip").letter.clear(),
        |s| material(s, "zip").letter = "T9".to_owned()),
    (Code::LetterTwice, Some("label-care"), Some("letter"),
        |s| label(s, "care").letter = " a".to_owned(),
        |s| label(s, "care").letter = "A2".to_owned()),
    (Code::ItemNameMissing, Some("artwork-wave"), Some("name"),
        |s| artwork(s).name.clear(),
        |s| callout(s, "1").place.clear()),
    (Code::ReferenceGone, Some("material-zip"), Some("zip.opening"),
        |s| material(s, "zip").zip.opening = Some(id("size-m")),
        |s| material(s, "zip").zip.opening = Some(id("point-i"))),
    (Code::LineGone, Some("callout-1"), Some("line"),
        |s| callout(s, "1").line = Some(id("point-a")),
        |s| callout(s, "1").line = None),
];
