//! The points of measure of the example.

use super::{inches, sixteenths, size_id};
use crate::spec::document::*;
use crate::spec::id::ItemId;
use crate::spec::units::Entered;

fn point(
    (letter, measure): (&str, Measure),
    name: &str,
    (start, end): (&str, &str),
    (basis, direction): (Basis, Direction),
    grade: Grade,
) -> Point {
    Point {
        id: ItemId::new(format!("point-{}", letter.to_lowercase())),
        letter: letter.to_owned(),
        name: name.to_owned(),
        measure: Some(measure),
        how: HowToMeasure {
            start: start.to_owned(),
            end: end.to_owned(),
            path: Some(Path::Straight),
            ..HowToMeasure::default()
        },
        basis: Some(basis),
        direction: Some(direction),
        minus: Some(sixteenths(4)),
        plus: Some(sixteenths(4)),
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

pub fn points() -> Points {
    const HALF: (Basis, Direction) = (Basis::Half, Direction::Width);
    const LENGTH: (Basis, Direction) = (Basis::Linear, Direction::Length);
    const ACROSS: (Basis, Direction) = (Basis::Linear, Direction::Width);
    let points = vec![
        Point {
            base: Some(sixteenths(21 * 16 + 8)),
            minus: Some(sixteenths(6)),
            plus: Some(sixteenths(6)),
            key: true,
            critical: true,
            ..point(
                ("A", Measure::Chest),
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
                ("B", Measure::Hem),
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
                ("C", Measure::BodyLength),
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
                ("D", Measure::ShoulderWidth),
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
                ("E", Measure::SleeveLength),
                "Sleeve length",
                ("shoulder point", "cuff edge"),
                LENGTH,
                steps(sixteenths(6), sixteenths(4)),
            )
        },
        Point {
            base: Some(sixteenths(8 * 16 + 2)),
            ..point(
                ("F", Measure::UpperArm),
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
                ("G", Measure::Cuff),
                "Cuff opening",
                ("cuff seam", "cuff fold"),
                HALF,
                steps(sixteenths(2), sixteenths(2)),
            )
        },
        Point {
            base: Some(sixteenths(2 * 16 + 8)),
            ..point(
                ("H", Measure::CuffHeight),
                "Cuff height",
                ("cuff seam", "cuff edge"),
                LENGTH,
                Grade::Same {},
            )
        },
        Point {
            base: Some(sixteenths(3 * 16)),
            ..point(
                ("I", Measure::CollarHeight),
                "Collar height",
                ("neck seam, centre back", "collar edge"),
                LENGTH,
                Grade::Same {},
            )
        },
        point(
            ("J", Measure::ZipLength),
            "Zip length",
            ("lower end of the teeth", "upper end of the teeth"),
            LENGTH,
            Grade::Derived {
                from: ItemId::new("point-c"),
                offset: inches(-19),
            },
        ),
    ];
    Points { points }
}
