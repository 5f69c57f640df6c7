//! Anything addressable inside a spec, found by its id.

use super::document::{Colourway, Drawing, Marker, Part, Point, Section, Size, Spec};
use super::id::ItemId;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Item<'a> {
    Size(&'a Size),
    Drawing(&'a Drawing),
    Marker(&'a Marker),
    Point(&'a Point),
    Part(&'a Part),
    Colourway(&'a Colourway),
}

impl Spec {
    /// Every item, in the order of the sections and of the document.
    pub fn items(&self) -> impl Iterator<Item = Item<'_>> {
        let drawings = self.drawings.drawings.iter();
        let drawings = drawings.flat_map(|drawing| {
            let markers = drawing.markers.iter().map(Item::Marker);
            std::iter::once(Item::Drawing(drawing)).chain(markers)
        });
        let sizes = self.sizes.sizes.iter().map(Item::Size);
        let points = self.points.points.iter().map(Item::Point);
        let parts = self.colourways.parts.iter().map(Item::Part);
        let colourways = self.colourways.colourways.iter().map(Item::Colourway);
        sizes
            .chain(drawings)
            .chain(points)
            .chain(parts)
            .chain(colourways)
    }

    pub fn item(&self, id: &ItemId) -> Option<Item<'_>> {
        self.items().find(|item| item.id() == id)
    }

    pub fn point(&self, id: &ItemId) -> Option<&Point> {
        self.points.points.iter().find(|point| point.id == *id)
    }

    pub fn size(&self, id: &ItemId) -> Option<&Size> {
        self.sizes.sizes.iter().find(|size| size.id == *id)
    }
}

impl<'a> Item<'a> {
    pub fn id(self) -> &'a ItemId {
        match self {
            Item::Size(size) => &size.id,
            Item::Drawing(drawing) => &drawing.id,
            Item::Marker(marker) => &marker.id,
            Item::Point(point) => &point.id,
            Item::Part(part) => &part.id,
            Item::Colourway(colourway) => &colourway.id,
        }
    }

    pub fn section(self) -> Section {
        match self {
            Item::Size(_) => Section::Sizes,
            Item::Drawing(_) | Item::Marker(_) => Section::Drawings,
            Item::Point(_) => Section::Points,
            Item::Part(_) | Item::Colourway(_) => Section::Colourways,
        }
    }

    /// What it is known by on paper: the letter of a point or part, the code of a size or
    /// colourway. Empty where there is none.
    pub fn letter(self) -> &'a str {
        match self {
            Item::Size(size) => &size.code,
            Item::Point(point) => &point.letter,
            Item::Part(part) => &part.letter,
            Item::Colourway(colourway) => &colourway.code,
            Item::Drawing(_) | Item::Marker(_) => "",
        }
    }

    /// Its name in the brand's words. Empty where there is none.
    pub fn name(self) -> &'a str {
        match self {
            Item::Size(size) => &size.label,
            Item::Drawing(drawing) => &drawing.title,
            Item::Point(point) => &point.name,
            Item::Part(part) => &part.name,
            Item::Colourway(colourway) => &colourway.name,
            Item::Marker(_) => "",
        }
    }
}
