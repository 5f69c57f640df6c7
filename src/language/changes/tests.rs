mod points;
mod sections;

use super::super::Language;
use super::*;
use crate::spec::change::changes;
use crate::spec::document::{Cell, Grade, Marker};
use crate::spec::example::half_zip;
use crate::spec::{Digest, Entered, grade};

fn lines(change: impl Fn(&mut Spec)) -> Vec<ChangeLine> {
    let old = half_zip(Digest::of(b"front"));
    let mut new = old.clone();
    change(&mut new);
    lines_between(&old, &new)
}

fn lines_between(old: &Spec, new: &Spec) -> Vec<ChangeLine> {
    let (old_chart, new_chart) = (grade(old).chart(old), grade(new).chart(new));
    let version = |spec, chart| Version { spec, chart };
    let old = version(old, old_chart.as_ref());
    let new = version(new, new_chart.as_ref());
    let t = Language::English.text();
    t.change_lines(&changes(old, new), old, new, DecimalSign::Point)
}

/// The sentences of what an edit changes.
fn says(edit: impl Fn(&mut Spec)) -> Vec<String> {
    let old = half_zip(Digest::of(b"front"));
    let mut new = old.clone();
    edit(&mut new);
    sentences(&old, &new)
}

fn sentences(old: &Spec, new: &Spec) -> Vec<String> {
    let t = Language::English.text();
    let lines = lines_between(old, new);
    lines.iter().map(|line| t.change_sentence(line)).collect()
}

/// Whole millimetres, typed in centimetres.
fn mm(count: i64) -> Option<Entered> {
    Some(Entered {
        nm: Length::nm(count * 1_000_000),
        unit: Unit::Cm,
    })
}

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn entered(sixteenths: i64) -> Entered {
    Entered {
        nm: Length::nm(sixteenths * 1_587_500),
        unit: Unit::Inch,
    }
}

#[test]
fn a_grade_is_one_line_with_every_size_that_it_moves() {
    let lines = lines(|spec| {
        let Some(Grade::Segments { segments }) = &mut spec.points.points[0].grade else {
            panic!("the chest is graded in segments");
        };
        segments[1].step = entered(24);
    });
    let [line] = &lines[..] else {
        panic!("{lines:?}")
    };
    assert_eq!(
        (line.letter.as_str(), line.name.as_str(), line.kind.as_str()),
        ("A", "Chest width", "changed")
    );
    assert_eq!(line.field, "Grade rule L–XL");
    assert_eq!(line.old.as_deref(), Some("1 1/4 in (3.2 cm)"));
    assert_eq!(line.new.as_deref(), Some("1 1/2 in (3.8 cm)"));
    assert_eq!(line.effect, "1 size changes, base M does not");
    let [size] = &line.sizes[..] else {
        panic!("only XL moves: {:?}", line.sizes)
    };
    assert_eq!(
        (size.code.as_str(), size.old.as_deref(), size.new.as_deref()),
        ("XL", Some("23 3/4"), Some("24"))
    );
    assert_eq!(size.reference.as_deref(), Some("61.0 cm"));
    assert!(!size.base);
}

#[test]
fn a_tolerance_is_never_widened_by_its_reference() {
    // 3/16 in is 0.47625 cm: the nearest step would be 0.5.
    let lines = lines(|spec| spec.points.points[0].plus = Some(entered(3)));
    assert_eq!(lines[0].old.as_deref(), Some("3/8 in (0.9 cm)"));
    assert_eq!(lines[0].new.as_deref(), Some("3/16 in (0.4 cm)"));
}

#[test]
fn what_comes_and_goes_is_named() {
    let lines = lines(|spec| {
        spec.colourways.parts.remove(3);
        spec.drawings.drawings[0].markers.push(Marker {
            id: ItemId::new("new-marker"),
            item: ItemId::new("part-3"),
            x: 5050,
            y: 1000,
        });
        spec.header.origin = String::new();
    });
    let said: Vec<_> = lines
        .iter()
        .map(|line| {
            let old = line.old.as_deref().unwrap_or("-");
            let new = line.new.as_deref().unwrap_or("-");
            let [letter, name, field, kind] = [&line.letter, &line.name, &line.field, &line.kind];
            format!("{letter}|{name}|{field}|{kind}|{old}|{new}")
        })
        .collect();
    assert_eq!(
        said,
        [
            "|Made in||changed|Vietnam|empty",
            "|P3 Zip tape|on the drawing Front|letter added|-|-",
            "P4|Neck tape||part removed|-|-",
        ]
    );
    assert!(lines[2].removed && !lines[1].removed);
}

#[test]
fn a_cell_names_its_colourway_and_both_colours() {
    let lines = lines(|spec| {
        let cells = spec.colourways.cells.get_mut(&ItemId::new("colourway-ink"));
        let cells = cells.expect("the example has it");
        cells.insert(ItemId::new("part-4"), Cell::Natural {});
    });
    assert_eq!(lines[0].field, "Colour, in colourway INK Ink");
    assert_eq!(lines[0].old.as_deref(), Some("Rust · H&T Rust · #b4532a"));
    assert_eq!(lines[0].new.as_deref(), Some("natural"));
}

/// The field names of the change list come from the pure room as text; each must have its words.
#[test]
fn every_field_has_its_words() {
    use crate::spec::document::*;
    let lines = lines(|spec| {
        spec.header = Header {
            number: "n".into(),
            name: "n".into(),
            garment: "g".into(),
            wearer: Some(Wearer::Men),
            season: "s".into(),
            markets: vec![Market::Us],
            origin: "o".into(),
            base_size: Some(ItemId::new("size-s")),
            unit: Some(Unit::Cm),
            measured: Some(MeasuringState::AsSewn),
            main_fabric: "m".into(),
            contrast_fabric: "c".into(),
            ..Header::default()
        };
        spec.sizes.sizes[0].code = "2XS".into();
        spec.sizes.sizes[0].label = "tiny".into();
        let drawing = &mut spec.drawings.drawings[0];
        drawing.view = View::Back;
        drawing.title = "t".into();
        drawing.file = Digest::of(b"back");
        drawing.width = 1;
        let point = &mut spec.points.points[0];
        *point = Point {
            id: point.id.clone(),
            letter: "Z".into(),
            name: "n".into(),
            how: HowToMeasure {
                start: "s".into(),
                end: "e".into(),
                path: Some(Path::Curved),
                stretched: true,
                note: "n".into(),
                ..HowToMeasure::default()
            },
            basis: Some(Basis::Full),
            direction: Some(Direction::Length),
            key: false,
            critical: false,
            minus: Some(entered(1)),
            plus: Some(entered(1)),
            base: Some(entered(320)),
            grade: Some(Grade::Same {}),
            step: Some(entered(1)),
            ..Point::default()
        };
        spec.colourways.colourways[0].code = "C".into();
    });
    let fields: Vec<_> = lines
        .iter()
        .map(|line| {
            if line.item.is_some() {
                &line.field
            } else {
                &line.name
            }
        })
        .filter(|field| !field.is_empty())
        .collect();
    assert!(fields.len() > 30, "{fields:?}");
    // A message that is nowhere shows its id.
    let without = fields.iter().filter(|field| field.contains("field-"));
    assert_eq!(without.count(), 0, "{fields:?}");
}
