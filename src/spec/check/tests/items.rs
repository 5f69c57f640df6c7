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

#[test]
fn every_reference_to_what_is_gone_is_found_with_its_field() {
    let edits: [(&str, &str, Edit); 17] = [
        ("point-a", "part", |s| point(s, "A").part = Some(id("gone"))),
        ("point-a", "lengths", |s| {
            let more = inches("1").unwrap();
            point(s, "A").lengths.insert(id("gone"), more);
        }),
        ("material-zip", "parts", |s| {
            material(s, "zip").parts.push(id("gone"));
        }),
        ("material-zip", "zip.opening", |s| {
            material(s, "zip").zip.opening = Some(id("gone"));
        }),
        ("material-zip", "cord.channel", |s| {
            material(s, "zip").cord.channel = Some(id("gone"));
        }),
        ("material-zip", "length_by_size", |s| {
            let length = inches("1").unwrap();
            material(s, "zip").length_by_size.insert(id("gone"), length);
        }),
        ("material-zip", "consumption.by_size", |s| {
            let amounts = &mut material(s, "zip").consumption.by_size;
            amounts.insert(id("gone"), decimal("1"));
        }),
        ("callout-1", "part", |s| {
            callout(s, "1").part = Some(id("gone"))
        }),
        ("callout-1", "detail", |s| {
            callout(s, "1").detail = Some(id("gone"))
        }),
        ("callout-1", "thread", |s| {
            callout(s, "1").thread = Some(id("gone"))
        }),
        ("callout-1", "tape", |s| {
            callout(s, "1").tape = Some(id("gone"))
        }),
        ("artwork-wave", "colours", |s| {
            artwork(s).colours.push(id("gone"))
        }),
        ("artwork-wave", "drawing", |s| {
            artwork(s).drawing = Some(id("gone"))
        }),
        ("artwork-wave", "bands", |s| {
            artwork(s).bands[0].to = Some(id("gone"))
        }),
        ("label-care", "part", |s| {
            label(s, "care").part = Some(id("gone"))
        }),
        ("pack-1", "colourway", |s| {
            super::packing::pack(s, &[1], 1);
            s.packing.ratio[0].colourway = Some(id("gone"));
        }),
        ("pack-1", "pieces", |s| {
            super::packing::pack(s, &[1], 1);
            s.packing.ratio[0].pieces.insert(id("gone"), 1);
        }),
    ];
    for (item, field, edit) in edits {
        let findings = after(edit);
        let found = findings.iter().any(|it| {
            let named = it.item == Some(id(item)) && it.field == Some(field);
            it.code == Code::ReferenceGone && named
        });
        assert!(found, "{item} {field}: {findings:?}");
    }
    for (item, edit) in [
        (
            "artwork-wave",
            (|s| artwork(s).bands[0].distances[0].line = Some(id("gone"))) as Edit,
        ),
        ("label-care", |s| {
            label(s, "care").distances[0].line = Some(id("gone"))
        }),
    ] {
        let findings = after(edit);
        let found = findings.iter().find(|it| it.code == Code::LineGone);
        assert_eq!(
            found.and_then(|it| it.item.clone()),
            Some(id(item)),
            "{findings:?}"
        );
    }
}
