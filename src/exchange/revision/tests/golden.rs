//! Revisions as they were kept, one for each format: they are read for ever, and the arithmetic of
//! later days gives the values that they froze.

use super::*;
use crate::exchange::translation::Translated;
use crate::spec::change::Kind;
use crate::spec::document::Callout;

/// As it was first kept: of ten points, when a document had fewer sections.
const FORMAT_1: &[u8] = include_bytes!("../../../../tests/golden/revision-format-1.json");
/// A whole one: the half-zip of the demo, with every section.
const FORMAT_2: &[u8] = include_bytes!("../../../../tests/golden/revision-format-2.json");
/// The same, with the translations that were shown with it.
const FORMAT_3: &[u8] = include_bytes!("../../../../tests/golden/revision-format-3.json");

#[test]
fn a_revision_of_the_first_format_is_read_for_ever() {
    assert_eq!(
        Digest::of(FORMAT_1).as_str(),
        "82d6b4fa88298c501fd3a29c068a00bd427eaeef26ac8d24f6fafdcba4596905"
    );
    let frozen = Frozen::read(FORMAT_1).unwrap();
    assert_eq!((frozen.format, frozen.number), (1, 2));
    assert_eq!(frozen.spec.points.points.len(), 10);
    assert_eq!(frozen.chart.rows.len(), 10);
}

#[test]
fn a_revision_of_the_second_format_is_read_for_ever() {
    assert_eq!(
        Digest::of(FORMAT_2).as_str(),
        "8c1029863b6833be15d66766fa618fe149b2a45b8c31399f5350c9521cb8147b"
    );
    let frozen = Frozen::read(FORMAT_2).unwrap();
    assert_eq!((frozen.format, frozen.number), (2, 1));
    let spec = &frozen.spec;
    let counts = [
        spec.sizes.sizes.len(),
        spec.drawings.drawings.len(),
        spec.points.points.len(),
        spec.colourways.parts.len(),
        spec.materials.materials.len(),
        spec.construction.callouts.len(),
        spec.artwork.artworks.len(),
        spec.labels.labels.len(),
        spec.packing.steps.len(),
        frozen.chart.rows.len(),
        frozen.compositions.len(),
        frozen.files.len(),
    ];
    assert_eq!(counts, [6, 6, 45, 15, 21, 14, 1, 3, 5, 45, 6, 7]);
    assert_eq!(frozen.files, spec.files());
    // Byte for byte and digest for digest, whatever fields a document has got since.
    let (bytes, digest) = frozen.seal().unwrap();
    assert_eq!(digest, Digest::of(FORMAT_2));
    assert!(bytes == FORMAT_2, "the same content is other bytes");
}

#[test]
fn a_revision_of_the_third_format_keeps_its_translations() {
    assert_eq!(
        Digest::of(FORMAT_3).as_str(),
        "2e1c653a07fc2b2ecd921ad3d7d19f2e691cd6ed9cad82b9e7097ec32ff9a991"
    );
    let frozen = Frozen::read(FORMAT_3).unwrap();
    assert_eq!((frozen.format, frozen.number), (3, 1));
    let name = &frozen.spec.points.points[0].name;
    let beside = |language: &str| frozen.translations.beside(language, name);
    assert_eq!(
        beside("vi"),
        Some(Translated::Own("Bản dịch của nhãn hàng"))
    );
    assert_eq!(beside("zh-Hans"), Some(Translated::Term("胸宽")));
    assert_eq!(beside("tr"), None);
    let (bytes, _) = frozen.seal().unwrap();
    assert!(bytes == FORMAT_3, "the same content is other bytes");
    // Nothing of a document changed with the format.
    let before = Frozen::read(FORMAT_2).unwrap();
    assert!(!before.keeps_translations() && frozen.keeps_translations());
    assert_eq!(changes(before.version(), frozen.version()), []);
}

#[test]
fn the_values_that_were_frozen_are_those_of_today() {
    for bytes in [FORMAT_1, FORMAT_2, FORMAT_3] {
        let frozen = Frozen::read(bytes).unwrap();
        let chart = grade(&frozen.spec).chart(&frozen.spec);
        assert_eq!(chart, Some(frozen.chart), "format {}", frozen.format);
    }
}

#[test]
fn across_formats_nothing_is_listed_that_the_upgrade_added() {
    let old = Frozen::read(FORMAT_1).unwrap();
    // Published again as it is: of today's format, and written as such.
    let again = Frozen {
        format: FORMAT,
        number: old.number + 1,
        ..old.clone()
    };
    let (bytes, _) = again.seal().unwrap();
    let mut new = Frozen::read(&bytes).unwrap();
    assert_eq!(changes(old.version(), new.version()), []);
    assert_eq!(changes(new.version(), old.version()), []);

    // One thing that the first format knew, and one that it did not.
    new.spec.points.points[0].name.push_str(" (flat)");
    new.spec.construction.callouts.push(Callout {
        id: ItemId::new("callout-1"),
        letter: "1".to_owned(),
        text: "As the sealed one".to_owned(),
        ..Callout::default()
    });
    let changes = changes(old.version(), new.version());
    let told: Vec<_> = changes
        .iter()
        .map(|change| {
            (
                change.section,
                change.item.as_ref().map(ItemId::as_str),
                change.kind,
            )
        })
        .collect();
    let point = old.spec.points.points[0].id.as_str();
    assert_eq!(
        told,
        [
            (Section::Points, Some(point), Kind::Changed),
            (
                Section::Construction,
                Some("callout-1"),
                Kind::Added { at: 0 }
            ),
        ]
    );
}

#[test]
fn a_revision_of_a_newer_format_says_so() {
    let text = std::str::from_utf8(FORMAT_1).unwrap();
    for (format, more) in [(0, ""), (4, ""), (4, r#""gadget":{},"#)] {
        let newer = text.replace("\"format\":1,", &format!("\"format\":{format},{more}"));
        let why = Frozen::read(newer.as_bytes()).unwrap_err().to_string();
        assert!(why.contains(&format!("format {format}")), "{why}");
    }
}
