//! Anything addressable inside a spec, found by its id.

use std::collections::BTreeSet;

use super::document::*;
use super::id::{Digest, ItemId};

macro_rules! items {
    ($($kind:ident $section:ident $list:ident;)*) => {
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Item<'a> {
            $($kind(&'a $kind),)*
        }

        $(impl<'a> From<&'a $kind> for Item<'a> {
            fn from(item: &'a $kind) -> Self {
                Item::$kind(item)
            }
        })*

        /// What the items of a list are, and their fields beside the id. Nothing where there is no
        /// such list.
        pub fn of_list(
            section: Section,
            list: &str,
        ) -> Option<(&'static str, Vec<(&'static str, Shape)>)> {
            $(if (section, list) == (Section::$section, stringify!($list)) {
                return Some((stringify!($kind), shapes_of::<$kind>()));
            })*
            None
        }

        impl<'a> Item<'a> {
    /// The shape around its letter: in a line, on a drawing and on paper alike.
    pub fn shape(self) -> &'static str {
        match self {
            Item::Part(_) => "part",
            Item::Material(_) => "material",
            Item::Callout(_) => "callout",
            Item::Artwork(_) => "artwork",
            Item::Label(_) => "label",
            _ => "point",
        }
    }

            pub fn id(self) -> &'a ItemId {
                match self {
                    $(Item::$kind(item) => &item.id,)*
                }
            }

            pub fn section(self) -> Section {
                match self {
                    $(Item::$kind(_) => Section::$section,)*
                }
            }

            /// The list that it stands in, by its name in the document.
            pub fn list(self) -> &'static str {
                match self {
                    $(Item::$kind(_) => stringify!($list),)*
                }
            }
        }
    };
}

items! {
    Size Sizes sizes;
    LengthOption Sizes lengths;
    Drawing Drawings drawings;
    Marker Drawings markers;
    DimensionLine Drawings lines;
    BlowUp Drawings blow_ups;
    Point Points points;
    Part Colourways parts;
    Colourway Colourways colourways;
    Material Materials materials;
    Line Construction lines;
    Callout Construction callouts;
    Artwork Artwork artworks;
    Label Labels labels;
    Step Packing steps;
    RatioPack Packing ratio;
}

impl Spec {
    /// Every item, in the order of the sections and of the document.
    pub fn items(&self) -> impl Iterator<Item = Item<'_>> {
        let drawings = self.drawings.drawings.iter();
        let drawings = drawings.flat_map(|drawing| {
            let markers = drawing.markers.iter().map(Item::Marker);
            let lines = drawing.lines.iter().map(Item::DimensionLine);
            let blow_ups = drawing.blow_ups.iter().map(Item::BlowUp);
            let own = std::iter::once(Item::Drawing(drawing));
            own.chain(markers).chain(lines).chain(blow_ups)
        });
        let sizes = self.sizes.sizes.iter().map(Item::Size);
        let lengths = self.sizes.lengths.iter().map(Item::LengthOption);
        let points = self.points.points.iter().map(Item::Point);
        let parts = self.colourways.parts.iter().map(Item::Part);
        let colourways = self.colourways.colourways.iter().map(Item::Colourway);
        let materials = self.materials.materials.iter().map(Item::Material);
        let lines = self.construction.lines.iter().map(Item::Line);
        let callouts = self.construction.callouts.iter().map(Item::Callout);
        let artworks = self.artwork.artworks.iter().map(Item::Artwork);
        let labels = self.labels.labels.iter().map(Item::Label);
        let steps = self.packing.steps.iter().map(Item::Step);
        let ratio = self.packing.ratio.iter().map(Item::RatioPack);
        sizes
            .chain(lengths)
            .chain(drawings)
            .chain(points)
            .chain(parts)
            .chain(colourways)
            .chain(materials)
            .chain(lines)
            .chain(callouts)
            .chain(artworks)
            .chain(labels)
            .chain(steps)
            .chain(ratio)
    }

    /// This spec, with one section as another has it.
    pub fn with_section_of(&self, section: Section, other: &Spec) -> Spec {
        let (mut spec, other) = (self.clone(), other.clone());
        match section {
            Section::Header => spec.header = other.header,
            Section::Sizes => spec.sizes = other.sizes,
            Section::Drawings => spec.drawings = other.drawings,
            Section::Points => spec.points = other.points,
            Section::Colourways => spec.colourways = other.colourways,
            Section::Materials => spec.materials = other.materials,
            Section::Construction => spec.construction = other.construction,
            Section::Artwork => spec.artwork = other.artwork,
            Section::Labels => spec.labels = other.labels,
            Section::Packing => spec.packing = other.packing,
        }
        spec
    }

    /// What another style may begin with: all but its number and name, and without what was
    /// decided for this one alone: approvals, numbers and pieces of colourways, exemptions.
    pub fn for_another_style(&self) -> Spec {
        let mut spec = self.clone();
        spec.header.number.clear();
        spec.header.name.clear();
        spec.header.exemptions.clear();
        for colourway in &mut spec.colourways.colourways {
            colourway.number.clear();
            colourway.pieces = None;
        }
        for cell in spec
            .colourways
            .cells
            .values_mut()
            .flat_map(|row| row.values_mut())
        {
            if let Cell::Colour(colour) = cell {
                colour.approval = None;
            }
        }
        spec
    }

    /// Every file that it names: originals of drawings and artwork, photographs of colours.
    pub fn files(&self) -> BTreeSet<Digest> {
        let fields = self.items().flat_map(Item::fields);
        let named = fields.filter_map(|(_, value)| match value {
            Value::File(file) => Some(file),
            _ => None,
        });
        let cells = self.colourways.cells.values().flat_map(|row| row.values());
        let photos = cells.filter_map(|cell| match cell {
            Cell::Colour(colour) => colour.photo.clone(),
            _ => None,
        });
        named.chain(photos).collect()
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

    /// The fields of a section itself, its lists aside.
    pub fn fields(&self, section: Section) -> Fields {
        match section {
            Section::Header => self.header.fields(),
            Section::Sizes => self.sizes.fields(),
            Section::Drawings => self.drawings.fields(),
            Section::Points => self.points.fields(),
            Section::Colourways => self.colourways.fields(),
            Section::Materials => self.materials.fields(),
            Section::Construction => self.construction.fields(),
            Section::Artwork => self.artwork.fields(),
            Section::Labels => self.labels.fields(),
            Section::Packing => self.packing.fields(),
        }
    }

    /// A seam, edge, fold or centre line.
    pub fn line(&self, id: &ItemId) -> Option<&Line> {
        self.construction.lines.iter().find(|line| line.id == *id)
    }

    pub fn material(&self, id: &ItemId) -> Option<&Material> {
        let mut materials = self.materials.materials.iter();
        materials.find(|material| material.id == *id)
    }
}

impl<'a> Item<'a> {
    /// What it is known by on paper: its letter, or the code of a size or colourway. Empty where
    /// there is none.
    pub fn letter(self) -> &'a str {
        match self {
            Item::Size(size) => &size.code,
            Item::LengthOption(length) => &length.code,
            Item::Point(point) => &point.letter,
            Item::Part(part) => &part.letter,
            Item::Colourway(colourway) => &colourway.code,
            Item::Material(material) => &material.letter,
            Item::Callout(callout) => &callout.letter,
            Item::Artwork(artwork) => &artwork.letter,
            Item::Label(label) => &label.letter,
            Item::Drawing(_)
            | Item::Marker(_)
            | Item::DimensionLine(_)
            | Item::BlowUp(_)
            | Item::Line(_)
            | Item::Step(_)
            | Item::RatioPack(_) => "",
        }
    }

    /// Its name in the brand's words. Empty where there is none.
    pub fn name(self) -> &'a str {
        match self {
            Item::Size(size) => &size.label,
            Item::LengthOption(length) => &length.label,
            Item::Drawing(drawing) => &drawing.title,
            Item::Point(point) => &point.name,
            Item::Part(part) => &part.name,
            Item::Colourway(colourway) => &colourway.name,
            Item::Material(material) => &material.name,
            Item::Line(line) => &line.name,
            Item::Callout(callout) => &callout.place,
            Item::Artwork(artwork) => &artwork.name,
            Item::Label(label) => &label.name,
            Item::Step(step) => &step.text,
            Item::RatioPack(pack) => &pack.name,
            Item::Marker(_) | Item::DimensionLine(_) | Item::BlowUp(_) => "",
        }
    }

    /// What it holds, field by field. Nothing for what is drawn on a drawing, which is one whole.
    pub fn fields(self) -> Fields {
        match self {
            Item::Size(size) => size.fields(),
            Item::LengthOption(length) => length.fields(),
            Item::Drawing(drawing) => drawing.fields(),
            Item::Point(point) => point.fields(),
            Item::Part(part) => part.fields(),
            Item::Colourway(colourway) => colourway.fields(),
            Item::Material(material) => material.fields(),
            Item::Line(line) => line.fields(),
            Item::Callout(callout) => callout.fields(),
            Item::Artwork(artwork) => artwork.fields(),
            Item::Label(label) => label.fields(),
            Item::Step(step) => step.fields(),
            Item::RatioPack(pack) => pack.fields(),
            Item::Marker(_) | Item::DimensionLine(_) | Item::BlowUp(_) => Fields::new(),
        }
    }

    /// Letter and name, as far as there are any.
    pub fn known_by(self) -> String {
        match (self.letter().trim(), self.name().trim()) {
            ("", "") => "…".to_owned(),
            (only, "") | ("", only) => only.to_owned(),
            (letter, name) => format!("{letter} {name}"),
        }
    }

    /// Whether it is known by a letter that stands on drawings.
    pub fn is_lettered(self) -> bool {
        matches!(
            self,
            Item::Point(_) | Item::Part(_) | Item::Callout(_) | Item::Artwork(_) | Item::Label(_)
        )
    }
}
