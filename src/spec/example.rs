//! A small complete spec, for tests, benches and the demo: a half-zip of the invented brand Harrow
//! & Tide, in inches.

mod materials;
mod points;
mod sewing;

use std::collections::BTreeMap;

use super::document::*;
use super::id::{Digest, ItemId};
use super::units::{Entered, Length, Unit};

/// Five sizes, ten points, four parts, two colourways, their materials, seams, artwork, labels and
/// packing, and one drawing. `drawing` is the original of the drawing, and of the artwork on it.
///
/// It passes every readiness check without a warning. Ids are speaking: `size-m`, `point-c`,
/// `part-1`, `colourway-ink`, `drawing-front`, `marker-c`, `material-zip`, `line-neck`, `callout-1`,
/// `artwork-wave`, `label-care`.
pub fn half_zip(drawing: Digest) -> Spec {
    Spec {
        header: header(),
        sizes: Sizes {
            system: Some(SizeSystem::Alpha),
            sizes: ["XS", "S", "M", "L", "XL"].map(size).into(),
            ..Sizes::default()
        },
        drawings: Drawings {
            drawings: vec![front(drawing.clone())],
        },
        points: points::points(),
        colourways: colourways(),
        materials: materials::materials(),
        construction: sewing::construction(),
        artwork: sewing::artwork(drawing),
        labels: sewing::labels(),
        packing: sewing::packing(),
    }
}

fn header() -> Header {
    Header {
        number: "HT-204".to_owned(),
        name: "Shoal half-zip".to_owned(),
        garment: "half-zip".to_owned(),
        wearer: Some(Wearer::Women),
        worn: Some(Worn::UpperOuterwear),
        season: "Autumn 2026".to_owned(),
        year: Some(2026),
        markets: vec![Market::Eu, Market::Uk],
        languages: ["en", "de", "fr"].map(str::to_owned).into(),
        origin: "Vietnam".to_owned(),
        base_size: Some(ItemId::new("size-m")),
        unit: Some(Unit::Inch),
        measured: Some(MeasuringState::AfterFinish),
        edges: Some(Edges::SeamToSeam),
        main_fabric: "Brushed loopback jersey, cotton, 320 g/m²".to_owned(),
        contrast_fabric: "2 × 2 rib, cotton and elastane, 380 g/m²".to_owned(),
        ..Header::default()
    }
}

fn size(code: &str) -> Size {
    Size {
        id: size_id(code),
        code: code.to_owned(),
        ..Size::default()
    }
}

fn size_id(code: &str) -> ItemId {
    ItemId::new(format!("size-{}", code.to_lowercase()))
}

/// So many sixteenths of an inch.
const fn sixteenths(count: i64) -> Entered {
    Entered {
        nm: Length::nm(count * 1_587_500),
        unit: Unit::Inch,
    }
}

/// So many inches.
const fn inches(count: i64) -> Entered {
    sixteenths(count * 16)
}

fn front(file: Digest) -> Drawing {
    // Where each letter sits, in hundredths of the drawing.
    const PLACES: [(&str, u16, u16); 18] = [
        ("point-a", 50, 38),
        ("point-b", 50, 92),
        ("point-c", 62, 55),
        ("point-d", 50, 14),
        ("point-e", 14, 50),
        ("point-f", 20, 38),
        ("point-g", 10, 86),
        ("point-h", 6, 82),
        ("point-i", 58, 6),
        ("point-j", 46, 22),
        ("part-1", 66, 70),
        ("part-2", 90, 84),
        ("callout-1", 40, 4),
        ("callout-2", 34, 96),
        ("callout-3", 52, 30),
        ("artwork-wave", 60, 28),
        ("label-brand", 50, 8),
        ("label-care", 30, 76),
    ];
    let own = |item: &str| match item.split_once('-') {
        Some(("point", letter)) => format!("marker-{letter}"),
        Some(("part", number)) => format!("marker-p{number}"),
        _ => format!("marker-{item}"),
    };
    let marker = |(item, x, y): (&str, u16, u16)| Marker {
        id: ItemId::new(own(item)),
        item: ItemId::new(item),
        x: x * 100,
        y: y * 100,
    };
    Drawing {
        id: ItemId::new("drawing-front"),
        view: View::Front,
        title: "Front".to_owned(),
        file,
        width: 800,
        height: 900,
        markers: PLACES.map(marker).into(),
        lines: Vec::new(),
        blow_ups: Vec::new(),
    }
}

fn colourways() -> Colourways {
    let part = |number: u8, name: &str| Part {
        id: ItemId::new(format!("part-{number}")),
        letter: format!("P{number}"),
        name: name.to_owned(),
    };
    let colourway = |name: &str| Colourway {
        id: ItemId::new(format!("colourway-{}", name.to_lowercase())),
        code: name.to_uppercase(),
        name: name.to_owned(),
        ..Colourway::default()
    };
    let colour = |name: &str, screen: &str| {
        Cell::Colour(Colour {
            name: name.to_owned(),
            reference: format!("H&T {name}"),
            screen: Some(screen.to_owned()),
            ..Colour::default()
        })
    };
    let matches_main = || Cell::DyedToMatch {
        part: ItemId::new("part-1"),
    };
    let row = |cells: [Cell; 4]| -> BTreeMap<ItemId, Cell> {
        let ids = (1..).map(|number| ItemId::new(format!("part-{number}")));
        ids.zip(cells).collect()
    };
    Colourways {
        parts: vec![
            part(1, "Main fabric"),
            part(2, "Rib of cuff and hem"),
            part(3, "Zip tape"),
            part(4, "Neck tape"),
        ],
        colourways: vec![colourway("Ink"), colourway("Chalk")],
        cells: BTreeMap::from([
            (
                ItemId::new("colourway-ink"),
                row([
                    colour("Ink", "#1f2a3c"),
                    matches_main(),
                    matches_main(),
                    colour("Rust", "#b4532a"),
                ]),
            ),
            (
                ItemId::new("colourway-chalk"),
                row([
                    Cell::Natural {},
                    colour("Sand", "#d9cbb0"),
                    colour("Sand", "#d9cbb0"),
                    Cell::None {},
                ]),
            ),
        ]),
    }
}

#[cfg(test)]
mod tests {
    use super::super::canon::{from_canonical, to_canonical};
    use super::*;
    use crate::spec::chart::grade;
    use crate::spec::units::DecimalSign;

    #[test]
    fn the_example_reads_back_from_its_canonical_bytes() {
        let spec = half_zip(Digest::of(b"front"));
        let bytes = to_canonical(&spec).unwrap();
        assert_eq!(from_canonical::<Spec>(&bytes).unwrap(), spec);
        let chart = grade(&spec).chart(&spec).unwrap();
        let bytes = to_canonical(&chart).unwrap();
        assert_eq!(
            from_canonical::<super::super::Chart>(&bytes).unwrap(),
            chart
        );
    }

    #[test]
    fn the_example_grades_to_these_values() {
        let spec = half_zip(Digest::of(b"front"));
        let chart = grade(&spec).chart(&spec).unwrap();
        let shown = |point: &str| -> Vec<String> {
            let row = chart.row(&ItemId::new(point)).unwrap();
            let show = |value: &Length| value.show(chart.unit, row.step, DecimalSign::Point);
            row.values.iter().map(show).collect()
        };
        assert_eq!(chart.rows.len(), 10);
        assert_eq!(
            shown("point-a"),
            ["19 1/2", "20 1/2", "21 1/2", "22 1/2", "23 3/4"]
        );
        assert_eq!(
            shown("point-c"),
            ["27 1/4", "27 7/8", "28 1/2", "29 1/8", "29 3/4"]
        );
        assert_eq!(
            shown("point-g"),
            ["3 1/4", "3 3/8", "3 1/2", "3 5/8", "3 3/4"]
        );
        assert_eq!(shown("point-h"), ["2 1/2"; 5]);
        assert_eq!(
            shown("point-j"),
            ["8 1/4", "8 7/8", "9 1/2", "10 1/8", "10 3/4"]
        );
    }
}
