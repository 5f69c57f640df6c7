//! What faults are planted with.

use fellseam::spec::document::*;
use fellseam::spec::{Decimal, Entered, ItemId, Length, Spec, Unit};

pub fn id(id: &str) -> ItemId {
    ItemId::new(id)
}

/// So many tenths of a centimetre.
pub const fn mm(count: i64) -> Entered {
    Entered {
        nm: Length::nm(count * 1_000_000),
        unit: Unit::Cm,
    }
}

/// So many sixteenths of an inch.
pub const fn sixteenths(count: i64) -> Entered {
    Entered {
        nm: Length::nm(count * 1_587_500),
        unit: Unit::Inch,
    }
}

pub fn whole(number: i64) -> Option<Decimal> {
    Some(Decimal::new(number, 0))
}

/// From one size to a later one, each gap so many tenths of a centimetre.
pub fn segment(from: &str, to: &str, tenths: i64) -> Segment {
    Segment {
        from: id(from),
        to: id(to),
        step: mm(tenths),
    }
}

pub fn segments(of: &[(&str, &str, i64)]) -> Option<Grade> {
    let segments = of.iter().map(|(from, to, step)| segment(from, to, *step));
    Some(Grade::Segments {
        segments: segments.collect(),
    })
}

/// The segments that a point is graded by.
pub fn steps<'a>(spec: &'a mut Spec, letter: &str) -> &'a mut Vec<Segment> {
    match &mut point(spec, letter).grade {
        Some(Grade::Segments { segments }) => segments,
        other => panic!("{letter} is graded by {other:?}"),
    }
}

macro_rules! of {
    ($($name:ident $section:ident $list:ident $type:ident $prefix:literal;)*) => {$(
        pub fn $name<'a>(spec: &'a mut Spec, name: &str) -> &'a mut $type {
            let id = ItemId::new(format!(concat!($prefix, "-{}"), name));
            let mut all = spec.$section.$list.iter_mut();
            all.find(|it| it.id == id).unwrap_or_else(|| panic!("no {id}"))
        }
    )*};
}

of! {
    size sizes sizes Size "size";
    drawing drawings drawings Drawing "drawing";
    point points points Point "point";
    part colourways parts Part "part";
    colourway colourways colourways Colourway "colourway";
    material materials materials Material "material";
    callout construction callouts Callout "callout";
    label labels labels Label "label";
}

/// The one artwork of a pack.
pub fn artwork(spec: &mut Spec) -> &mut Artwork {
    &mut spec.artwork.artworks[0]
}

/// A marker, by what it is of.
pub fn marker<'a>(spec: &'a mut Spec, item: &str) -> &'a mut Marker {
    let drawings = spec.drawings.drawings.iter_mut();
    let mut all = drawings.flat_map(|it| it.markers.iter_mut());
    all.find(|it| it.item.as_str() == item).expect("a marker")
}

/// A dimension line, by its point.
pub fn dimension<'a>(spec: &'a mut Spec, item: &str) -> &'a mut DimensionLine {
    let drawings = spec.drawings.drawings.iter_mut();
    let mut all = drawings.flat_map(|it| it.lines.iter_mut());
    all.find(|it| it.item.as_str() == item).expect("a line")
}

/// Takes the markers of an item away.
pub fn unmark(spec: &mut Spec, item: &str) {
    for drawing in &mut spec.drawings.drawings {
        drawing.markers.retain(|it| it.item.as_str() != item);
    }
}

/// Puts a cell into a colourway.
pub fn cell(spec: &mut Spec, colourway: &str, part: &str, cell: Cell) {
    let cells = spec.colourways.cells.get_mut(&id(colourway));
    cells.expect("a colourway").insert(id(part), cell);
}

pub fn colour<'a>(spec: &'a mut Spec, colourway: &str, part: &str) -> &'a mut Colour {
    let cells = spec.colourways.cells.get_mut(&id(colourway));
    match cells.expect("a colourway").get_mut(&id(part)) {
        Some(Cell::Colour(colour)) => colour,
        other => panic!("{part} is {other:?}"),
    }
}

pub fn matching(part: &str) -> Cell {
    Cell::DyedToMatch { part: id(part) }
}

/// Takes the reports of one kind away.
pub fn without(spec: &mut Spec, name: &str, kind: EvidenceKind) {
    let evidence = &mut material(spec, name).evidence;
    evidence.retain(|it| it.kind != Some(kind));
}

/// Makes the elastic in the hood of the jacket a cord.
pub fn hood_cord(spec: &mut Spec, place: Option<CordPlace>, ends: Option<CordEnds>) -> &mut Cord {
    let elastic = material(spec, "hood-elastic");
    elastic.kind = Some(MaterialKind::Drawcord);
    elastic.parts = vec![id("part-2")];
    elastic.cord = Cord {
        place,
        ends,
        free: Some(mm(20)),
        bartacked: true,
        ..Cord::default()
    };
    &mut elastic.cord
}
