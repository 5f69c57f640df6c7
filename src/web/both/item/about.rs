//! What an item of a revision is: everything that the frozen document says about it.

use crate::exchange::revision::Frozen;
use crate::language::{Beside, Text, Worded};
use crate::spec::document::{Basis, Colourways, Direction, HowToMeasure, Part, Point};
use crate::spec::drawn::{Dimension, dimension};
use crate::spec::{Item, ItemId, Length, Section, Unit};
use crate::web::both::patch::{Patch, patch};
use crate::web::both::sheet::Fact;

pub struct About {
    pub id: ItemId,
    /// Empty where there is none.
    pub letter: String,
    /// Around its letter.
    pub shape: &'static str,
    pub name: String,
    pub beside: Option<Beside>,
    pub section: Section,
    /// The drawings that carry its letter or its dimension line; a drawing itself.
    pub drawings: Vec<Marked>,
    pub what: What,
}

pub enum What {
    Point(Box<PointFacts>),
    Part(Vec<PartColour>),
    Facts(Vec<Fact>),
    /// A drawing: its name says it all.
    Named,
}

pub struct PointFacts {
    pub key: bool,
    pub critical: bool,
    pub basis: Option<Basis>,
    pub direction: Option<Direction>,
    pub how: HowToMeasure,
    pub start: Worded,
    pub end: Worded,
    pub note: Worded,
    pub unit: Unit,
    /// The unit of the references.
    pub other: Unit,
    pub values: Vec<SizeValue>,
    /// Written positive, as the values.
    pub minus: InBoth,
    pub plus: InBoth,
}

/// The value of one size.
pub struct SizeValue {
    pub code: String,
    pub base: bool,
    pub value: InBoth,
    /// Minus and plus, where they are not the point's.
    pub tolerance: Option<(InBoth, InBoth)>,
}

/// A length in the master unit, and in the other one as a reference.
pub struct InBoth {
    pub master: String,
    pub reference: String,
}

/// What a part is in one colourway; nothing where that is not said.
pub struct PartColour {
    pub code: String,
    pub name: String,
    pub patch: Option<Patch>,
}

/// A drawing with the places of one item's letter.
pub struct Marked {
    pub file: String,
    pub title: String,
    pub width: u32,
    pub height: u32,
    /// The height of the picture when it is 10 000 wide.
    pub tall: u64,
    /// In the units of `tall`.
    pub places: Vec<(u64, u64)>,
    pub lines: Vec<Dimension>,
}

/// What a published revision says about an item; nothing when it has none of that id. A letter on
/// a drawing is no item to speak of: the point or part that it stands for is.
pub fn about(t: Text, frozen: &Frozen, id: &ItemId) -> Option<About> {
    let item = frozen.spec.item(id)?;
    let what = match item {
        Item::Marker(_) | Item::DimensionLine(_) | Item::BlowUp(_) => return None,
        Item::Point(point) => What::Point(Box::new(point_facts(t, frozen, point)?)),
        Item::Part(part) => What::Part(part_colours(t, &frozen.spec.colourways, part)),
        Item::Drawing(_) => What::Named,
        item => {
            let words = t.words(&frozen.spec, frozen.decimal);
            let mut fields = item.fields();
            // Both stand in the head already.
            fields.retain(|(name, _)| !matches!(name.as_ref(), "letter" | "name" | "code"));
            let said = words.fields(&fields).into_iter();
            let said = said.map(|it| Fact::of(t, frozen, it));
            What::Facts(said.collect())
        }
    };
    let drawings = frozen.spec.drawings.drawings.iter();
    let drawings = drawings.filter_map(|drawing| {
        let tall = |part: u64| part * u64::from(drawing.height) / u64::from(drawing.width.max(1));
        let markers = drawing.markers.iter().filter(|marker| marker.item == *id);
        let places: Vec<(u64, u64)> = markers
            .map(|marker| (marker.x.into(), tall(marker.y.into())))
            .collect();
        let view = t.name(&drawing.view).to_string();
        let title = match drawing.title.as_str() {
            "" => view,
            title if title == view => view,
            title => format!("{view} · {title}"),
        };
        let lines = drawing.lines.iter().filter(|line| line.item == *id);
        let lines: Vec<Dimension> = lines
            .map(|line| dimension((drawing.width, drawing.height), line))
            .collect();
        let shows_it = drawing.id == *id || !places.is_empty() || !lines.is_empty();
        shows_it.then(|| Marked {
            file: drawing.file.to_string(),
            title,
            width: drawing.width,
            height: drawing.height,
            tall: tall(10_000),
            places,
            lines,
        })
    });
    let name = match (item.name(), item) {
        ("", Item::Drawing(drawing)) => t.name(&drawing.view).to_string(),
        (name, _) => name.to_owned(),
    };
    Some(About {
        id: id.clone(),
        letter: item.letter().to_owned(),
        shape: item.shape(),
        beside: t.beside(frozen, &name),
        name,
        section: item.section(),
        drawings: drawings.collect(),
        what,
    })
}

/// Nothing for a point without a line in the chart, which no published revision has.
fn point_facts(t: Text, frozen: &Frozen, point: &Point) -> Option<PointFacts> {
    let chart = &frozen.chart;
    let row = chart.row(&point.id)?;
    let unit = chart.unit;
    let other = if unit.is_metric() {
        Unit::Inch
    } else {
        Unit::Cm
    };
    let sign = frozen.decimal;
    let value = |length: Length| InBoth {
        master: length.show(unit, row.step, sign),
        reference: length.show(other, other.fine_step(), sign),
    };
    let tolerance = |length: Length| InBoth {
        // Finer than the values as well: rounding would change what passes.
        master: if length.is_multiple_of(row.step) {
            length.show(unit, row.step, sign)
        } else {
            length.exact(unit, sign)
        },
        reference: length
            .tolerance_in(other)
            .show(other, other.fine_step(), sign),
    };
    let values = chart.sizes.iter().zip(&row.values);
    let values = values.map(|(size, length)| SizeValue {
        code: frozen
            .spec
            .size(size)
            .map_or_else(|| size.to_string(), |size| size.code.clone()),
        base: *size == chart.base_size,
        value: value(*length),
        tolerance: row
            .tolerances
            .get(size)
            .map(|allowed| (tolerance(allowed.minus), tolerance(allowed.plus))),
    });
    Some(PointFacts {
        key: point.key,
        critical: point.critical,
        basis: point.basis,
        direction: point.direction,
        start: t.worded(frozen, &point.how.start),
        end: t.worded(frozen, &point.how.end),
        note: t.worded(frozen, &point.how.note),
        how: point.how.clone(),
        unit,
        other,
        values: values.collect(),
        minus: tolerance(row.minus),
        plus: tolerance(row.plus),
    })
}

fn part_colours(t: Text, colourways: &Colourways, part: &Part) -> Vec<PartColour> {
    let all = colourways.colourways.iter();
    all.map(|colourway| PartColour {
        code: colourway.code.clone(),
        name: colourway.name.clone(),
        patch: patch(t, colourways, &colourway.id, &part.id),
    })
    .collect()
}
