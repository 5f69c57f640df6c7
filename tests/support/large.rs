//! A spec as large as they come in the trade: 45 points of measure in 8 sizes, in centimetres.

use fellseam::spec::document::*;
use fellseam::spec::example::half_zip;
use fellseam::spec::{Digest, Entered, ItemId, Length, Spec, Unit};

pub const POINTS: usize = 45;
pub const SIZES: usize = 8;

const CODES: [&str; SIZES] = ["2XS", "XS", "S", "M", "L", "XL", "2XL", "3XL"];
const STARTS: [&str; 5] = [
    "side seam, 2 cm below the armhole",
    "high point of shoulder at the neck seam",
    "waistband seam at centre front",
    "shoulder seam end, along the outer edge",
    "lower end of the zip teeth",
];
const ENDS: [&str; 4] = [
    "the other side seam, square to the grain",
    "bottom edge of the hem rib",
    "cuff edge, sleeve laid flat",
    "crotch seam, following the curve",
];
const NAMES: [&str; 9] = [
    "Chest width",
    "Hem width",
    "Body length",
    "Sleeve length",
    "Upper arm width",
    "Cuff opening",
    "Neck opening",
    "Zip length",
    "Pocket opening",
];

/// As long and as different as the ids that the store makes.
fn id(kind: &str, number: usize) -> ItemId {
    let digest = Digest::of(format!("{kind} {number}").as_bytes());
    let hex = digest.as_str();
    ItemId::new(format!(
        "{}-{}-4{}-a{}-{}",
        &hex[..8],
        &hex[8..12],
        &hex[12..15],
        &hex[15..18],
        &hex[18..30]
    ))
}

const fn mm(count: i64) -> Entered {
    Entered {
        nm: Length::nm(count * 1_000_000),
        unit: Unit::Cm,
    }
}

/// `A` to `Z`, then `AA` on.
fn letter(number: usize) -> String {
    let of = |n: usize| char::from(b'A' + u8::try_from(n % 26).expect("below 26"));
    match number {
        0..26 => of(number).to_string(),
        _ => format!("{}{}", of(number / 26 - 1), of(number)),
    }
}

/// The example with so many points and sizes; every third point has a rule of its own.
pub fn large() -> Spec {
    let mut spec = half_zip(super::cast::drawing());
    spec.header.number = "HT-900".to_owned();
    spec.header.unit = Some(Unit::Cm);
    spec.header.base_size = Some(id("size", 3));
    let sizes = CODES.iter().enumerate().map(|(number, code)| Size {
        id: id("size", number),
        code: (*code).to_owned(),
        label: String::new(),
        ..Size::default()
    });
    spec.sizes.sizes = sizes.collect();
    let segment = |from, to, step| Segment {
        from: id("size", from),
        to: id("size", to),
        step,
    };
    let points = (0..POINTS).map(|number| {
        let n = i64::try_from(number).expect("small");
        Point {
            id: id("point", number),
            letter: letter(number),
            name: format!("{} {}", NAMES[number % NAMES.len()], number + 1),
            how: HowToMeasure {
                start: STARTS[number % STARTS.len()].to_owned(),
                end: ENDS[number % ENDS.len()].to_owned(),
                path: Some(Path::Straight),
                stretched: number % 7 == 0,
                note: match number % 5 {
                    0 => "Lay the garment flat and smooth it without stretching.".to_owned(),
                    _ => String::new(),
                },
                ..HowToMeasure::default()
            },
            basis: Some(Basis::Half),
            direction: Some(Direction::Width),
            key: number % 4 == 0,
            critical: number % 9 == 0,
            minus: Some(mm(4)),
            plus: Some(mm(4)),
            base: Some(mm(180 + 17 * n)),
            grade: Some(Grade::Segments {
                segments: vec![
                    segment(0, 4, mm(10 + n % 3)),
                    segment(4, SIZES - 1, mm(12 + n % 3)),
                ],
            }),
            step: Some(mm(1)),
            ..Point::default()
        }
    });
    spec.points.points = points.collect();
    let drawing = &mut spec.drawings.drawings[0];
    drawing
        .markers
        .retain(|marker| !marker.item.as_str().starts_with("point-"));
    drawing.markers.extend((0..POINTS).map(|number| {
        let place = u16::try_from(number).expect("small");
        Marker {
            id: id("marker", number),
            item: id("point", number),
            x: 500 + 200 * place,
            y: 9_500 - 200 * place,
        }
    }));
    for material in &mut spec.materials.materials {
        material.zip.opening = material.zip.opening.take().map(|_| id("point", 7));
    }
    spec
}
