//! A small complete spec, for tests, benches and the demo: a half-zip of the invented brand Harrow
//! & Tide, in inches.

use std::collections::BTreeMap;

use super::document::*;
use super::id::{Digest, ItemId};
use super::units::{Entered, Length, Unit};

/// Five sizes, ten points, four parts, two colourways and one drawing, whose original is `drawing`.
/// It passes every readiness check without a warning. Ids are speaking: `size-m`, `point-c`,
/// `part-1`, `colourway-ink`, `drawing-front`, `marker-c`.
pub fn half_zip(drawing: Digest) -> Spec {
    Spec {
        header: Header {
            number: "HT-204".to_owned(),
            name: "Shoal half-zip".to_owned(),
            garment: "half-zip".to_owned(),
            wearer: Some(Wearer::Women),
            season: "Autumn 2026".to_owned(),
            markets: vec![Market::Eu, Market::Uk],
            origin: "Vietnam".to_owned(),
            base_size: Some(ItemId::new("size-m")),
            unit: Some(Unit::Inch),
            measured: Some(MeasuringState::AfterFinish),
            main_fabric: "Brushed loopback jersey, cotton, 320 g/m²".to_owned(),
            contrast_fabric: "2 × 2 rib, cotton and elastane, 380 g/m²".to_owned(),
            ..Header::default()
        },
        sizes: Sizes {
            sizes: ["XS", "S", "M", "L", "XL"].map(size).into(),
            ..Sizes::default()
        },
        drawings: Drawings {
            drawings: vec![front(drawing)],
        },
        points: Points { points: points() },
        colourways: colourways(),
        ..Spec::default()
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

fn point(
    letter: &str,
    name: &str,
    (start, end): (&str, &str),
    (basis, direction): (Basis, Direction),
    grade: Grade,
) -> Point {
    Point {
        id: ItemId::new(format!("point-{}", letter.to_lowercase())),
        letter: letter.to_owned(),
        name: name.to_owned(),
        how: HowToMeasure {
            start: start.to_owned(),
            end: end.to_owned(),
            path: Some(Path::Straight),
            ..HowToMeasure::default()
        },
        basis: Some(basis),
        direction: Some(direction),
        key: false,
        critical: false,
        minus: Some(sixteenths(4)),
        plus: Some(sixteenths(4)),
        base: None,
        grade: Some(grade),
        step: Some(sixteenths(2)),
        ..Point::default()
    }
}

/// From XS to L one step, from L to XL another.
fn steps(up_to_l: Entered, to_xl: Entered) -> Grade {
    let segment = |from, to, step| Segment {
        from: size_id(from),
        to: size_id(to),
        step,
    };
    Grade::Segments {
        segments: vec![segment("XS", "L", up_to_l), segment("L", "XL", to_xl)],
    }
}

fn points() -> Vec<Point> {
    const HALF: (Basis, Direction) = (Basis::Half, Direction::Width);
    const LENGTH: (Basis, Direction) = (Basis::Linear, Direction::Length);
    const ACROSS: (Basis, Direction) = (Basis::Linear, Direction::Width);
    vec![
        Point {
            base: Some(sixteenths(21 * 16 + 8)),
            minus: Some(sixteenths(6)),
            plus: Some(sixteenths(6)),
            key: true,
            critical: true,
            ..point(
                "A",
                "Chest width",
                ("armhole seam, 1 in down", "the other armhole seam"),
                HALF,
                steps(inches(1), sixteenths(20)),
            )
        },
        Point {
            base: Some(inches(20)),
            key: true,
            ..point(
                "B",
                "Bottom width",
                ("left side seam", "right side seam"),
                HALF,
                steps(inches(1), sixteenths(20)),
            )
        },
        Point {
            base: Some(sixteenths(28 * 16 + 8)),
            key: true,
            ..point(
                "C",
                "Body length",
                ("high point of shoulder", "bottom edge"),
                LENGTH,
                steps(sixteenths(10), sixteenths(10)),
            )
        },
        Point {
            base: Some(sixteenths(17 * 16 + 4)),
            key: true,
            ..point(
                "D",
                "Across shoulders",
                ("left shoulder point", "right shoulder point"),
                ACROSS,
                steps(sixteenths(8), sixteenths(8)),
            )
        },
        Point {
            base: Some(inches(25)),
            key: true,
            ..point(
                "E",
                "Sleeve length",
                ("shoulder point", "cuff edge"),
                LENGTH,
                steps(sixteenths(6), sixteenths(4)),
            )
        },
        Point {
            base: Some(sixteenths(8 * 16 + 2)),
            ..point(
                "F",
                "Upper arm width",
                ("underarm seam, 1 in down", "sleeve fold"),
                HALF,
                steps(sixteenths(6), sixteenths(8)),
            )
        },
        Point {
            base: Some(sixteenths(3 * 16 + 8)),
            minus: Some(sixteenths(2)),
            plus: Some(sixteenths(3)),
            step: Some(sixteenths(1)),
            ..point(
                "G",
                "Cuff opening",
                ("cuff seam", "cuff fold"),
                HALF,
                steps(sixteenths(2), sixteenths(2)),
            )
        },
        Point {
            base: Some(sixteenths(2 * 16 + 8)),
            ..point(
                "H",
                "Cuff height",
                ("cuff seam", "cuff edge"),
                LENGTH,
                Grade::Same {},
            )
        },
        Point {
            base: Some(sixteenths(3 * 16)),
            ..point(
                "I",
                "Collar height",
                ("neck seam, centre back", "collar edge"),
                LENGTH,
                Grade::Same {},
            )
        },
        point(
            "J",
            "Zip length",
            ("lower end of the teeth", "upper end of the teeth"),
            LENGTH,
            Grade::Derived {
                from: ItemId::new("point-c"),
                offset: inches(-19),
            },
        ),
    ]
}

fn front(file: Digest) -> Drawing {
    // Where each letter sits, in hundredths of the drawing.
    const PLACES: [(&str, u16, u16); 12] = [
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
    ];
    let marker = |(item, x, y): (&str, u16, u16)| Marker {
        id: ItemId::new(
            item.replace("point-", "marker-")
                .replace("part-", "marker-p"),
        ),
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
