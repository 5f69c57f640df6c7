use std::sync::Arc;

use super::*;
use crate::exchange::Side;
use crate::exchange::translation::Translations;
use crate::language::{Language, terms_of};
use crate::spec::document::*;
use crate::spec::example::half_zip;
use crate::spec::{
    Book, DecimalSign, Digest, Entered, OrgId, PersonId, Spec, StyleId, ThreadId, Time, Unit, grade,
};

fn frozen(spec: Spec) -> Frozen {
    Frozen {
        format: FORMAT,
        style: StyleId::new("style"),
        number: 1,
        previous: None,
        published: Time::try_from("2026-03-02T08:00:00.000Z".to_owned()).unwrap(),
        reason: "First issue".to_owned(),
        chart: grade(&spec).chart(&spec).unwrap(),
        accepted: Vec::new(),
        compositions: Vec::new(),
        decimal: DecimalSign::Point,
        files: BTreeSet::new(),
        rules: 1,
        corrections: Vec::new(),
        translations: Translations::new(&spec, &BTreeMap::new(), terms_of(&spec, Book::shipped())),
        spec,
    }
}

fn figures(edit: impl FnOnce(&mut Spec)) -> String {
    let mut spec = half_zip(Digest::of(b"front"));
    edit(&mut spec);
    let frozen = frozen(spec);
    Sheet::of(Language::English.text(), &frozen, Around::default()).figures()
}

#[test]
fn another_word_in_any_section_is_another_screen() {
    let edits: [fn(&mut Spec); 16] = [
        |spec| spec.header.season = "Spring 2027".to_owned(),
        |spec| spec.header.exemptions.push(Exemption::default()),
        |spec| spec.sizes.sizes[0].label = "small".to_owned(),
        |spec| spec.sizes.sizes[0].ages = Some(Ages { from: 24, to: 36 }),
        |spec| spec.drawings.drawings[0].title = "From the front".to_owned(),
        |spec| spec.drawings.drawings[0].markers[0].x += 10,
        |spec| spec.points.points[0].how.note = "Smooth it.".to_owned(),
        |spec| spec.points.points[0].pair_limit = spec.points.points[0].minus,
        |spec| spec.colourways.colourways[0].pieces = Some(10),
        |spec| spec.materials.materials[0].placement = "body".to_owned(),
        |spec| spec.construction.callouts[0].text = "Close it.".to_owned(),
        |spec| spec.construction.lines[0].name = "Yoke seam".to_owned(),
        |spec| spec.artwork.artworks[0].bands[0].distances.truncate(1),
        |spec| spec.labels.care.iron = Some(Iron::No),
        |spec| spec.labels.labels[0].ground = "satin".to_owned(),
        |spec| spec.packing.fold = "in three".to_owned(),
    ];
    let plain = figures(|_| ());
    assert_eq!(figures(|_| ()), plain);
    let mut screens = BTreeSet::from([plain]);
    for (number, edit) in edits.iter().enumerate() {
        assert!(screens.insert(figures(edit)), "edit {number} is not seen");
    }
}

#[test]
fn what_stands_beside_it_does_not_change_what_was_read() {
    let frozen = frozen(half_zip(Digest::of(b"front")));
    let t = Language::English.text();
    let files = [StyleFile {
        digest: Digest::of(b"front"),
        name: "front.svg".to_owned(),
        width: 800,
        height: 900,
        pictured: true,
    }];
    let around = Around {
        acknowledged: Some(&frozen),
        threads: &[],
        files: &files,
    };
    let sheet = Sheet::of(t, &frozen, around);
    assert!(sheet.artworks[0].picture.is_some());
    let alone = Sheet::of(t, &frozen, Around::default());
    assert_eq!(sheet.figures(), alone.figures());
}

#[test]
fn a_sheet_is_made_again_only_for_what_it_shows() {
    let spec = half_zip(Digest::of(b"front"));
    let item = spec.points.points[0].id.clone();
    let (first, mut second) = (frozen(spec.clone()), frozen(spec));
    second.number = 2;
    let (t, sheets) = (Language::English.text(), Sheets::default());
    let digest = Digest::of(b"second");
    let of = |around| sheets.of(t, &digest, &second, around);
    let alone = of(Around::default());
    assert!(Arc::ptr_eq(&alone, &of(Around::default())));
    let around = Around {
        acknowledged: Some(&first),
        ..Around::default()
    };
    assert!(!Arc::ptr_eq(&alone, &of(around)));
    let threads = [Thread {
        id: ThreadId::new("thread"),
        kind: Kind::Question,
        state: State::Open,
        factory: OrgId::new("factory"),
        item,
        raised_on: 2,
        asker: PersonId::new("asker"),
        asker_org: OrgId::new("factory"),
        asker_side: Side::Factory,
    }];
    let asked = of(Around {
        threads: &threads,
        ..Around::default()
    });
    assert_eq!(asked.sheet.rows[0].head.about.questions, 1);
    assert_eq!(alone.sheet.rows[0].head.about.questions, 0);
    assert_eq!(alone.figures, asked.figures);
}

/// Common practice, no source, but by the definition of the inch: two inches are 50.8 mm on paper.
#[test]
fn an_artwork_of_two_inches_is_50_8_mm_on_paper() {
    let mut spec = half_zip(Digest::of(b"front"));
    let band = &mut spec.artwork.artworks[0].bands[0];
    band.width = Some(Entered::read("2", Unit::Inch).unwrap());
    band.height = Some(Entered::read("1/2\"", Unit::Cm).unwrap());
    let frozen = frozen(spec);
    let sheet = Sheet::of(Language::English.text(), &frozen, Around::default());
    let band = &sheet.artworks[0].bands[0];
    assert_eq!((&band.width[..], &band.height[..]), ("50.8", "12.7"));
}
