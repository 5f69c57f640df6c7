use super::*;
use crate::spec::document::{Cell, Colour};
use crate::spec::example::half_zip;
use crate::spec::{Digest, Entered, Unit};

fn spec() -> Spec {
    half_zip(Digest::of(b"front"))
}

fn id(text: &str) -> ItemId {
    ItemId::new(text)
}

fn all(section: Section, theirs: &Spec, mine: &Spec, side: Side) -> Spec {
    merged(section, theirs, mine, |_| side)
}

#[test]
fn equal_versions_ask_nothing() {
    for section in Section::ALL.iter().copied() {
        assert_eq!(differences(section, &spec(), &spec()), []);
        assert_eq!(all(section, &spec(), &spec(), Side::Mine), spec());
    }
}

#[test]
fn a_field_of_the_header_is_chosen_by_itself() {
    let (mut theirs, mut mine) = (spec(), spec());
    theirs.header.season = "Spring".to_owned();
    mine.header.unit = Some(Unit::Cm);
    let section = Section::Header;
    let places = ["season", "unit"].map(|it| Place::Field(it.to_owned()));
    assert_eq!(differences(section, &theirs, &mine), places);
    let both = merged(section, &theirs, &mine, |place| match *place == places[1] {
        true => Side::Mine,
        false => Side::Theirs,
    });
    assert_eq!(both.header.season, "Spring");
    assert_eq!(both.header.unit, Some(Unit::Cm));
}

#[test]
fn rows_are_added_and_removed_and_their_fields_changed_each_by_itself() {
    let (mut theirs, mut mine) = (spec(), spec());
    theirs.points.points[0].base = Some(Entered::read("22", Unit::Inch).unwrap());
    theirs.points.points.remove(4);
    theirs.points.points[0].how.start = "Side seam".to_owned();
    mine.points.points[0].how.note = "Over the pocket".to_owned();
    mine.points.points[2].name = "Length".to_owned();
    let mut new = mine.points.points[2].clone();
    new.id = id("point-new");
    mine.points.points.insert(3, new);
    let section = Section::Points;
    let field = |item: &str, field: &str| of(&id(item), field);
    let places = [
        field("point-a", "how.start"),
        field("point-a", "how.note"),
        field("point-a", "base"),
        field("point-c", "name"),
        Place::Item(id("point-new")),
        Place::Item(id("point-e")),
    ];
    assert_eq!(differences(section, &theirs, &mine), places);
    let of_theirs = [&places[0], &places[2], &places[5]];
    let both = merged(section, &theirs, &mine, |place| {
        match of_theirs.contains(&place) {
            true => Side::Theirs,
            false => Side::Mine,
        }
    });
    let ids: Vec<&str> = both.points.points.iter().map(|p| p.id.as_str()).collect();
    assert_eq!(
        ids,
        ["a", "b", "c", "new", "d", "f", "g", "h", "i", "j"].map(|it| format!("point-{it}"))
    );
    let how = &both.points.points[0].how;
    assert_eq!((&*how.start, &*how.note), ("Side seam", "Over the pocket"));
    assert_eq!(both.points.points[0].base, theirs.points.points[0].base);
    assert_eq!(both.points.points[2].name, "Length");
}

#[test]
fn an_order_is_one_place() {
    let (mut theirs, mut mine) = (spec(), spec());
    mine.sizes.sizes.swap(0, 1);
    theirs.sizes.sizes.remove(4);
    let section = Section::Sizes;
    let places = [Place::Order("sizes"), Place::Item(id("size-xl"))];
    assert_eq!(differences(section, &theirs, &mine), places);
    let codes = |side| -> Vec<String> {
        let both = merged(section, &theirs, &mine, |place| match place {
            Place::Order(_) => side,
            _ => Side::Mine,
        });
        both.sizes.sizes.into_iter().map(|size| size.code).collect()
    };
    assert_eq!(codes(Side::Mine), ["S", "XS", "M", "L", "XL"]);
    assert_eq!(codes(Side::Theirs), ["XS", "S", "M", "L", "XL"]);
}

#[test]
fn a_cell_is_chosen_by_itself_and_goes_with_its_part() {
    let (mut theirs, mut mine) = (spec(), spec());
    let colour = Cell::Colour(Colour {
        name: "Moss".to_owned(),
        reference: String::new(),
        screen: None,
        ..Colour::default()
    });
    let ink = id("colourway-ink");
    mine.colourways
        .cells
        .get_mut(&ink)
        .unwrap()
        .insert(id("part-1"), colour.clone());
    theirs
        .colourways
        .parts
        .retain(|part| part.id != id("part-4"));
    let section = Section::Colourways;
    let cell = Place::Cell {
        colourway: ink.clone(),
        part: id("part-1"),
    };
    assert_eq!(
        differences(section, &theirs, &mine),
        [Place::Item(id("part-4")), cell]
    );
    let both = all(section, &theirs, &mine, Side::Mine);
    assert_eq!(both.colourways.cell(&ink, &id("part-1")), Some(&colour));
    let tape = both.colourways.cell(&ink, &id("part-4"));
    assert_eq!(tape, mine.colourways.cell(&ink, &id("part-4")));
    let without = all(section, &theirs, &mine, Side::Theirs);
    assert_eq!(without.colourways.parts.len(), 3);
    assert_eq!(without.colourways.cell(&ink, &id("part-4")), None);
}

#[test]
fn marks_of_one_drawing_are_chosen_each_by_itself() {
    let (mut theirs, mut mine) = (spec(), spec());
    let drawing = |spec: &mut Spec| spec.drawings.drawings.remove(0);
    let (mut front, mut front_too) = (drawing(&mut theirs), drawing(&mut mine));
    front.markers[0].x += 100;
    front.title = "The front".to_owned();
    front_too.markers[1].y += 100;
    front_too.markers.remove(2);
    front_too.file = Digest::of(b"redrawn");
    front_too.width = 1600;
    let marks = [0, 1, 2].map(|at| Place::Item(front.markers[at].id.clone()));
    theirs.drawings.drawings.insert(0, front);
    mine.drawings.drawings.insert(0, front_too);
    let section = Section::Drawings;
    let on = theirs.drawings.drawings[0].id.clone();
    let [moved, lower, gone] = marks;
    let places = [
        of(&on, "file"),
        of(&on, "title"),
        moved.clone(),
        lower,
        gone,
    ];
    assert_eq!(differences(section, &theirs, &mine), places);
    let both = merged(section, &theirs, &mine, |place| {
        match [&places[1], &moved].contains(&place) {
            true => Side::Theirs,
            false => Side::Mine,
        }
    });
    let (both, theirs) = (&both.drawings.drawings[0], &theirs.drawings.drawings[0]);
    assert_eq!((&*both.title, both.width), ("The front", 1600));
    assert_eq!(both.file, Digest::of(b"redrawn"));
    assert_eq!(both.markers[0].x, theirs.markers[0].x);
    assert_eq!(both.markers.len(), theirs.markers.len() - 1);
}

#[test]
fn a_place_meets_what_it_holds() {
    let whole = Place::Item(id("point-a"));
    let field = of(&id("point-a"), "base");
    assert!(whole.meets(&field) && field.meets(&whole) && field.meets(&field));
    assert!(!field.meets(&of(&id("point-a"), "name")));
    assert!(!whole.meets(&of(&id("point-b"), "base")));
}

#[test]
fn choosing_one_side_throughout_gives_that_side() {
    let (mut theirs, mut mine) = (spec(), spec());
    theirs.points.points.reverse();
    theirs.sizes.sizes.remove(0);
    mine.drawings.drawings[0].markers.clear();
    mine.colourways.parts.swap(0, 3);
    mine.points.points.remove(5);
    for section in Section::ALL.iter().copied() {
        assert_eq!(all(section, &theirs, &mine, Side::Theirs), theirs);
    }
    let mut result = theirs.clone();
    for section in Section::ALL.iter().copied() {
        result = all(section, &result, &mine, Side::Mine);
    }
    assert_eq!(result, mine);
}
