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
    let places = [Place::Field("season"), Place::Field("unit")];
    assert_eq!(differences(section, &theirs, &mine), places);
    let both = merged(section, &theirs, &mine, |place| match place {
        Place::Field("unit") => Side::Mine,
        _ => Side::Theirs,
    });
    assert_eq!(both.header.season, "Spring");
    assert_eq!(both.header.unit, Some(Unit::Cm));
}

#[test]
fn rows_are_changed_added_and_removed_each_by_itself() {
    let (mut theirs, mut mine) = (spec(), spec());
    theirs.points.points[0].base = Some(Entered::read("22", Unit::Inch).unwrap());
    theirs.points.points.remove(4);
    mine.points.points[2].name = "Length".to_owned();
    let mut new = mine.points.points[2].clone();
    new.id = id("point-new");
    mine.points.points.insert(3, new);
    let section = Section::Points;
    let places = ["point-a", "point-c", "point-new", "point-e"].map(|it| Place::Item(id(it)));
    assert_eq!(differences(section, &theirs, &mine), places);
    let both = merged(section, &theirs, &mine, |place| {
        if *place == Place::Item(id("point-a")) || *place == Place::Item(id("point-e")) {
            Side::Theirs
        } else {
            Side::Mine
        }
    });
    let ids: Vec<&str> = both.points.points.iter().map(|p| p.id.as_str()).collect();
    assert_eq!(
        ids,
        ["a", "b", "c", "new", "d", "f", "g", "h", "i", "j"].map(|it| format!("point-{it}"))
    );
    assert_eq!(both.points.points[0], theirs.points.points[0]);
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
