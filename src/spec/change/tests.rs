mod apply;
mod random;

use super::*;
use crate::spec::chart::grade;
use crate::spec::document::*;
use crate::spec::example::half_zip;
use crate::spec::id::Digest;
use crate::spec::units::{Entered, Unit};

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn inches(text: &str) -> Entered {
    Entered::read(text, Unit::Inch).unwrap()
}

fn example() -> Spec {
    half_zip(Digest::of(b"front"))
}

fn between(old: &Spec, new: &Spec) -> Vec<Change> {
    let (before, after) = (grade(old).chart(old), grade(new).chart(new));
    let old = Version {
        spec: old,
        chart: before.as_ref(),
    };
    let new = Version {
        spec: new,
        chart: after.as_ref(),
    };
    changes(old, new)
}

fn after(edit: impl FnOnce(&mut Spec)) -> Vec<Change> {
    let mut new = example();
    edit(&mut new);
    between(&example(), &new)
}

fn point<'a>(spec: &'a mut Spec, letter: &str) -> &'a mut Point {
    let points = &mut spec.points.points;
    points
        .iter_mut()
        .find(|point| point.letter == letter)
        .unwrap()
}

fn cell<'a>(spec: &'a mut Spec, colourway: &str, part: &str) -> &'a mut Cell {
    let row = spec.colourways.cells.get_mut(&id(colourway)).unwrap();
    row.get_mut(&id(part)).unwrap()
}

fn even(step: &str) -> Option<Grade> {
    let segment = Segment {
        from: id("size-xs"),
        to: id("size-xl"),
        step: inches(step),
    };
    Some(Grade::Segments {
        segments: vec![segment],
    })
}

fn text(text: &str) -> Option<Value> {
    Some(Value::Text(text.to_owned()))
}

/// The old and the new value of each size, as a chart shows them.
fn shown(change: &Change) -> Vec<(String, String)> {
    let show = |value: Option<Length>| {
        let value = value.map(|value| value.exact(Unit::Inch, Default::default()));
        value.unwrap_or_default()
    };
    let sizes = change.sizes.iter();
    sizes.map(|size| (show(size.old), show(size.new))).collect()
}

fn pairs(pairs: &[(&str, &str)]) -> Vec<(String, String)> {
    let pairs = pairs.iter();
    pairs
        .map(|(old, new)| ((*old).to_owned(), (*new).to_owned()))
        .collect()
}

fn whole(item: &impl serde::Serialize) -> Value {
    Value::Whole(Box::new(serde_json::to_value(item).unwrap()))
}

#[test]
fn nothing_changed_is_an_empty_list() {
    assert_eq!(after(|_| {}), []);
}

#[test]
fn one_grade_rule_is_one_change_with_the_value_of_every_size() {
    let changes = after(|spec| point(spec, "B").grade = even("3/4"));
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(
        (change.section, change.kind),
        (Section::Points, Kind::Changed)
    );
    assert_eq!(change.item, Some(id("point-b")));
    assert_eq!(change.field.as_deref(), Some("grade"));
    assert_eq!(
        change.old,
        example().points.points[1].grade.clone().map(Value::Grade)
    );
    assert_eq!(change.new, even("3/4").map(Value::Grade));
    assert_eq!(
        shown(change),
        pairs(&[
            ("18", "18 1/2"),
            ("19", "19 1/4"),
            ("20", "20"),
            ("21", "20 3/4"),
            ("22 1/4", "21 1/2"),
        ])
    );
    let moved: Vec<_> = change.sizes.iter().map(SizeValue::moved).collect();
    assert_eq!(moved, [true, true, false, true, true]);
}

#[test]
fn a_base_value_is_one_change_with_the_value_of_every_size() {
    let changes = after(|spec| point(spec, "D").base = Some(inches("17 1/2")));
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.field.as_deref(), Some("base"));
    assert_eq!(change.old, Some(Value::Length(inches("17 1/4"))));
    assert_eq!(change.new, Some(Value::Length(inches("17 1/2"))));
    assert_eq!(shown(change)[0], ("16 1/4".to_owned(), "16 1/2".to_owned()));
    assert!(change.sizes.iter().all(SizeValue::moved));
    assert_eq!(change.sizes.len(), 5);
}

#[test]
fn values_moved_by_two_fields_are_carried_once() {
    let changes = after(|spec| {
        point(spec, "B").base = Some(inches("21"));
        point(spec, "B").grade = even("1/2");
    });
    let fields: Vec<_> = changes
        .iter()
        .map(|c| (c.field.as_deref(), c.sizes.len()))
        .collect();
    assert_eq!(fields, [(Some("base"), 0), (Some("grade"), 5)]);
}

#[test]
fn the_same_rule_written_otherwise_moves_no_value() {
    let changes = after(|spec| {
        let half = |from, to| Segment {
            from: id(from),
            to: id(to),
            step: inches("1/2"),
        };
        let segments = vec![half("size-xs", "size-m"), half("size-m", "size-xl")];
        point(spec, "D").grade = Some(Grade::Segments { segments });
    });
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(
        (change.field.as_deref(), &change.sizes[..]),
        (Some("grade"), &[][..])
    );
}

#[test]
fn a_unit_that_was_typed_otherwise_is_told_with_both_units() {
    let changes = after(|spec| point(spec, "B").base = Some(inches("50.8cm")));
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.old, Some(Value::Length(inches("20"))));
    assert_eq!(change.new, Some(Value::Length(inches("50.8cm"))));
    assert_eq!(change.sizes, []);
}

#[test]
fn what_follows_another_point_is_told_as_re_graded() {
    let changes = after(|spec| point(spec, "C").base = Some(inches("29")));
    let kinds: Vec<_> = changes.iter().map(|c| (c.item.clone(), c.kind)).collect();
    assert_eq!(
        kinds,
        [
            (Some(id("point-c")), Kind::Changed),
            (Some(id("point-j")), Kind::Regraded),
        ]
    );
    assert_eq!(shown(&changes[1])[2], ("9 1/2".to_owned(), "10".to_owned()));
}

#[test]
fn another_base_size_re_grades_what_it_moves() {
    let changes = after(|spec| spec.header.base_size = Some(id("size-l")));
    assert_eq!(changes[0].section, Section::Header);
    assert_eq!(changes[0].old, Some(Value::Item(id("size-m"))));
    let points: Vec<_> = changes[1..]
        .iter()
        .map(|c| (c.kind, c.item.clone()))
        .collect();
    let graded = ["a", "b", "c", "d", "e", "f", "g", "j"];
    let regraded = graded.map(|name| (Kind::Regraded, Some(id(&format!("point-{name}")))));
    assert_eq!(points, regraded);
}

#[test]
fn a_new_size_brings_its_values_with_the_rules_that_reach_it() {
    let new_size = Size {
        id: id("size-2xl"),
        code: "2XL".to_owned(),
        ..Size::default()
    };
    let changes = after(|spec| {
        spec.sizes.sizes.push(new_size.clone());
        for point in &mut spec.points.points {
            if let Some(Grade::Segments { segments }) = &mut point.grade {
                segments[1].to = id("size-2xl");
            }
        }
    });
    assert_eq!(changes[0].kind, Kind::Added { at: 5 });
    assert_eq!(changes[0].new, Some(whole(&new_size)));
    // Seven rules were typed; H and I are the same in all sizes and J follows C.
    let fields: Vec<_> = changes[1..]
        .iter()
        .map(|change| change.field.as_deref())
        .collect();
    assert_eq!(fields, [Some("grade"); 7]);
    assert_eq!(shown(&changes[1])[5], (String::new(), "25".to_owned()));
    assert!(changes[1..].iter().all(|change| change.sizes.len() == 6));
    assert!(!changes[1].sizes[4].moved());
}

#[test]
fn sizes_in_another_order_change_no_value_that_is_the_same_in_all() {
    let mut old = example();
    for point in &mut old.points.points {
        point.grade = Some(Grade::Same {});
    }
    let mut new = old.clone();
    new.sizes.sizes.swap(0, 1);
    let changes = between(&old, &new);
    assert!(!changes.is_empty());
    for change in changes {
        assert_eq!(change.section, Section::Sizes, "{change:?}");
    }
}

#[test]
fn letters_places_comings_and_goings_are_told_apart() {
    let changes = after(|spec| point(spec, "B").letter = "BB".to_owned());
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.kind, Kind::Relettered);
    assert_eq!((&change.old, &change.new), (&text("B"), &text("BB")));

    let changes = after(|spec| {
        let last = spec.points.points.pop().unwrap();
        spec.points.points.insert(0, last);
    });
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.kind, Kind::Moved { from: 9, to: 0 });
    assert_eq!(change.item, Some(id("point-j")));

    let changes = after(|spec| {
        spec.points.points.remove(7);
    });
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.kind, Kind::Removed);
    assert_eq!(change.item, Some(id("point-h")));
    assert_eq!(shown(change), pairs(&[("2 1/2", ""); 5]));

    let changes = after(|spec| {
        let mut new = spec.points.points[7].clone();
        new.id = id("point-new");
        spec.points.points.insert(1, new);
    });
    let [change] = &changes[..] else {
        panic!("{changes:?}");
    };
    assert_eq!(change.kind, Kind::Added { at: 1 });
    assert_eq!(shown(change), pairs(&[("", "2 1/2"); 5]));
}

/// The section, item, enclosing item and field of the one change that an edit makes.
type Edit = (
    fn(&mut Spec),
    Section,
    Option<&'static str>,
    Option<&'static str>,
    Option<&'static str>,
);

#[rustfmt::skip]
const EDITS: &[Edit] = {
    use Section::*;
    &[
        (|s| s.header.number = "1".to_owned(), Header, None, None, Some("number")),
        (|s| s.header.name.clear(), Header, None, None, Some("name")),
        (|s| s.header.garment = "fleece".to_owned(), Header, None, None, Some("garment")),
        (|s| s.header.wearer = Some(Wearer::Men), Header, None, None, Some("wearer")),
        (|s| s.header.season.clear(), Header, None, None, Some("season")),
        (|s| s.header.markets.clear(), Header, None, None, Some("markets")),
        (|s| s.header.origin = "Bangladesh".to_owned(), Header, None, None, Some("origin")),
        (|s| s.header.unit = Some(Unit::Mm), Header, None, None, Some("unit")),
        (|s| s.header.measured = None, Header, None, None, Some("measured")),
        (|s| s.header.main_fabric.clear(), Header, None, None, Some("main_fabric")),
        (|s| s.header.contrast_fabric.clear(), Header, None, None, Some("contrast_fabric")),
        (|s| s.sizes.sizes[0].code = "0".to_owned(), Sizes, Some("size-xs"), None, Some("code")),
        (|s| s.sizes.sizes[0].label = "x".to_owned(), Sizes, Some("size-xs"), None, Some("label")),
        (|s| s.drawings.drawings[0].view = View::Back, Drawings, Some("drawing-front"), None, Some("view")),
        (|s| s.drawings.drawings[0].title.clear(), Drawings, Some("drawing-front"), None, Some("title")),
        (|s| s.drawings.drawings[0].file = Digest::of(b"2"), Drawings, Some("drawing-front"), None, Some("file")),
        (|s| s.drawings.drawings[0].width = 1, Drawings, Some("drawing-front"), None, Some("file")),
        (|s| s.drawings.drawings[0].markers[0].x = 1, Drawings, Some("marker-a"), Some("drawing-front"), None),
        (|s| { s.drawings.drawings[0].markers.remove(0); }, Drawings, Some("marker-a"), Some("drawing-front"), None),
        (|s| { s.drawings.drawings.clear(); }, Drawings, Some("drawing-front"), None, None),
        (|s| point(s, "A").name = "Chest".to_owned(), Points, Some("point-a"), None, Some("name")),
        (|s| point(s, "A").how.start.clear(), Points, Some("point-a"), None, Some("how.start")),
        (|s| point(s, "A").how.end.clear(), Points, Some("point-a"), None, Some("how.end")),
        (|s| point(s, "A").how.path = None, Points, Some("point-a"), None, Some("how.path")),
        (|s| point(s, "A").how.stretched = true, Points, Some("point-a"), None, Some("how.stretched")),
        (|s| point(s, "A").how.note = "x".to_owned(), Points, Some("point-a"), None, Some("how.note")),
        (|s| point(s, "A").basis = Some(Basis::Full), Points, Some("point-a"), None, Some("basis")),
        (|s| point(s, "A").direction = None, Points, Some("point-a"), None, Some("direction")),
        (|s| point(s, "A").key = false, Points, Some("point-a"), None, Some("key")),
        (|s| point(s, "A").critical = false, Points, Some("point-a"), None, Some("critical")),
        (|s| point(s, "A").minus = Some(inches("0")), Points, Some("point-a"), None, Some("minus")),
        (|s| point(s, "A").plus = Some(inches("0")), Points, Some("point-a"), None, Some("plus")),
        (|s| point(s, "A").step = Some(inches("1/2")), Points, Some("point-a"), None, Some("step")),
        (|s| point(s, "J").grade = Some(Grade::Same {}), Points, Some("point-j"), None, Some("grade")),
        (|s| s.colourways.parts[0].name = "x".to_owned(), Colourways, Some("part-1"), None, Some("name")),
        (|s| s.colourways.parts[0].letter = "x".to_owned(), Colourways, Some("part-1"), None, Some("letter")),
        (|s| { s.colourways.parts.remove(2); }, Colourways, Some("part-3"), None, None),
        (|s| s.colourways.colourways[0].code = "x".to_owned(), Colourways, Some("colourway-ink"), None, Some("code")),
        (|s| s.colourways.colourways[0].name = "x".to_owned(), Colourways, Some("colourway-ink"), None, Some("name")),
        (|s| { s.colourways.colourways.remove(0); }, Colourways, Some("colourway-ink"), None, None),
        (|s| *cell(s, "colourway-ink", "part-2") = Cell::None {}, Colourways, Some("part-2"), Some("colourway-ink"), Some("cell")),
    ]
};

#[test]
fn each_edit_is_found_exactly() {
    for (number, (edit, section, item, within, field)) in EDITS.iter().enumerate() {
        let changes = after(edit);
        let [change] = &changes[..] else {
            panic!("edit {number}: {changes:?}");
        };
        assert_eq!(change.section, *section, "edit {number}");
        assert_eq!(change.item, item.map(id), "edit {number}");
        assert_eq!(change.within, within.map(id), "edit {number}");
        assert_eq!(change.field.as_deref(), *field, "edit {number}");
        assert_ne!(change.old, change.new, "edit {number}");
    }
}

#[test]
fn a_picture_that_was_replaced_is_one_change() {
    let changes = after(|spec| {
        let drawing = &mut spec.drawings.drawings[0];
        drawing.file = Digest::of(b"drawn again");
        (drawing.width, drawing.height) = (1200, 900);
        drawing.title = "Front view".to_owned();
    });
    let fields: Vec<_> = changes.iter().map(|it| it.field.as_deref()).collect();
    assert_eq!(fields, [Some("title"), Some("file")]);
    let picture = |file: &[u8], width, height| {
        Some(Value::Group(vec![
            ("file", Value::File(Digest::of(file))),
            ("width", Value::Number(width)),
            ("height", Value::Number(height)),
        ]))
    };
    assert_eq!(changes[1].old, picture(b"front", 800, 900));
    assert_eq!(changes[1].new, picture(b"drawn again", 1200, 900));

    // Of an artwork, what its file has; other fields stay changes of their own.
    let changes = after(|spec| {
        let artwork = &mut spec.artwork.artworks[0];
        artwork.file = None;
        artwork.pixels_across = Some(640);
        artwork.note = "Mind the edge.".to_owned();
    });
    let fields: Vec<_> = changes.iter().map(|it| it.field.as_deref()).collect();
    assert_eq!(fields, [Some("file"), Some("note")]);
    let pixels = Value::Group(vec![("pixels_across", Value::Number(640))]);
    assert_eq!(changes[0].new, Some(pixels));
}

#[test]
fn cells_go_unsaid_with_their_colourway_and_come_one_by_one() {
    let mut fewer = example();
    let chalk = fewer.colourways.colourways.remove(1);
    fewer.colourways.cells.remove(&chalk.id);
    let gone = between(&example(), &fewer);
    assert_eq!(gone.len(), 1, "{gone:?}");
    assert_eq!(gone[0].kind, Kind::Removed);
    let come = between(&fewer, &example());
    assert_eq!(come[0].kind, Kind::Added { at: 1 });
    assert_eq!(come[0].new, Some(whole(&chalk)));
    let cells: Vec<_> = come[1..]
        .iter()
        .map(|c| (c.field.as_deref(), &c.old, c.item.clone()))
        .collect();
    let cell = |part: u8| (Some("cell"), &None, Some(id(&format!("part-{part}"))));
    assert_eq!(cells, [1, 2, 3, 4].map(cell));
}

#[test]
fn a_change_touches_what_it_shows() {
    let touched_by = |edit: fn(&mut Spec)| -> Vec<String> {
        let touched = touched(&after(edit));
        touched.iter().map(ItemId::to_string).collect()
    };
    assert_eq!(
        touched_by(|s| point(s, "C").base = Some(inches("29"))),
        ["point-c", "point-j"]
    );
    assert_eq!(
        touched_by(|s| s.drawings.drawings[0].markers[2].x = 1),
        ["drawing-front", "marker-c", "point-c"]
    );
    // The letter that now stands for another point changes both.
    assert_eq!(
        touched_by(|s| s.drawings.drawings[0].markers[2].item = id("point-a")),
        ["drawing-front", "marker-c", "point-a", "point-c"]
    );
    assert_eq!(
        touched_by(|s| *cell(s, "colourway-ink", "part-2") = Cell::None {}),
        ["colourway-ink", "part-2"]
    );
    assert_eq!(touched_by(|s| s.header.name.clear()), [""; 0]);
    assert_eq!(
        touched_by(|s| s.points.points.swap(0, 1)),
        [""; 0],
        "which of the two moved cannot be told"
    );
    let changes = after(|s| point(s, "C").base = Some(inches("29")));
    assert!(changes[0].touches(&id("point-c")) && !changes[0].touches(&id("point-j")));
}

#[test]
fn a_draft_without_a_chart_is_compared_as_far_as_it_goes() {
    let changes = after(|spec| {
        spec.header.unit = None;
        point(spec, "B").grade = None;
    });
    let fields: Vec<_> = changes
        .iter()
        .map(|c| (c.field.as_deref(), c.sizes.len()))
        .collect();
    assert_eq!(fields, [(Some("unit"), 0), (Some("grade"), 0)]);
    // A point that lost its row has lost no value: what it lost is told by the field.
    let changes = after(|spec| point(spec, "B").minus = None);
    assert_eq!(changes.len(), 1);
    assert_eq!(changes[0].sizes, []);
}
