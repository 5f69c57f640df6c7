//! What the editor does at every save and publishing does once: grade, check and compare a spec of
//! 200 points in 20 sizes. The goal for all three together is below a millisecond.

use std::collections::BTreeMap;
use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use fellseam::spec::change::{Change, Version, changes};
use fellseam::spec::document::*;
use fellseam::spec::example::half_zip;
use fellseam::spec::{
    Chart, Digest, Entered, Finding, ItemId, Length, Spec, Unit, check, grade, grade_point,
};

const POINTS: usize = 200;
const SIZES: usize = 20;
const PARTS: usize = 20;
const COLOURWAYS: usize = 10;

/// As long and as alike as the ids that the store makes.
fn id(kind: u8, number: usize) -> ItemId {
    ItemId::new(format!("019a2f00-0000-7000-80{kind:02}-{number:012}"))
}

const fn mm(count: i64) -> Entered {
    Entered {
        nm: Length::nm(count * 1_000_000),
        unit: Unit::Cm,
    }
}

fn segment(from: usize, to: usize, step: Entered) -> Segment {
    Segment {
        from: id(1, from),
        to: id(1, to),
        step,
    }
}

/// Three segments, or derived from the point before, every tenth.
fn rule(number: usize) -> Grade {
    if number % 10 == 9 {
        return Grade::Derived {
            from: id(2, number - 1),
            offset: mm(-15),
        };
    }
    let segments = vec![
        segment(0, 8, mm(10)),
        segment(8, 14, mm(12)),
        segment(14, SIZES - 1, mm(15)),
    ];
    Grade::Segments { segments }
}

fn large() -> Spec {
    let mut spec = half_zip(Digest::of(b"front"));
    spec.header.unit = Some(Unit::Cm);
    spec.header.base_size = Some(id(1, 9));
    let sizes = (0..SIZES).map(|number| Size {
        id: id(1, number),
        code: (30 + 2 * number).to_string(),
        label: String::new(),
        ..Size::default()
    });
    spec.sizes.sizes = sizes.collect();
    let pattern = spec.points.points[1].clone();
    let points = (0..POINTS).map(|number| Point {
        id: id(2, number),
        letter: format!("W{number}"),
        name: format!("Width {number}"),
        minus: Some(mm(4)),
        plus: Some(mm(4)),
        base: (number % 10 != 9).then(|| mm(500 + number as i64)),
        grade: Some(rule(number)),
        step: Some(mm(1)),
        critical: number % 5 == 0,
        ..pattern.clone()
    });
    spec.points.points = points.collect();
    let markers = (0..POINTS).map(|number| Marker {
        id: id(3, number),
        item: id(2, number),
        x: 5_000,
        y: 5_000,
    });
    let drawn = &mut spec.drawings.drawings[0].markers;
    drawn.retain(|marker| !marker.item.as_str().starts_with("p"));
    drawn.extend(markers);
    let parts = (0..PARTS).map(|number| Part {
        id: id(4, number),
        letter: format!("P{number}"),
        name: format!("Part {number}"),
    });
    let colourways = (0..COLOURWAYS).map(|number| Colourway {
        id: id(5, number),
        code: format!("C{number}"),
        name: format!("Colourway {number}"),
        ..Colourway::default()
    });
    let row = |_| -> BTreeMap<ItemId, Cell> {
        let cell = |number| match number {
            0 => Cell::Natural {},
            _ => Cell::DyedToMatch { part: id(4, 0) },
        };
        (0..PARTS)
            .map(|number| (id(4, number), cell(number)))
            .collect()
    };
    spec.colourways = Colourways {
        parts: parts.collect(),
        colourways: colourways.collect(),
        cells: (0..COLOURWAYS)
            .map(|number| (id(5, number), row(number)))
            .collect(),
    };
    for material in &mut spec.materials.materials {
        material.parts = (0..PARTS).map(|number| id(4, number)).collect();
        material.zip.opening = material.zip.opening.take().map(|_| id(2, 0));
    }
    spec.artwork.artworks[0].colours = vec![id(4, 0)];
    spec
}

/// The same spec with another rule for this point.
fn with_rule(mut spec: Spec, point: usize) -> Spec {
    let segments = vec![segment(0, SIZES - 1, mm(11))];
    spec.points.points[point].grade = Some(Grade::Segments { segments });
    spec
}

fn chart(spec: &Spec) -> Chart {
    grade(spec).chart(spec).expect("it has unit and base size")
}

fn all_three(old: Version<'_>, new: &Spec) -> (Vec<Finding>, Vec<Change>) {
    let graded = grade(new);
    let findings = check(new, &graded);
    let chart = graded.chart(new);
    let new = Version {
        spec: new,
        chart: chart.as_ref(),
    };
    (findings, changes(old, new))
}

fn measure(criterion: &mut Criterion) {
    let published = large();
    let frozen = chart(&published);
    let old = Version {
        spec: &published,
        chart: Some(&frozen),
    };
    let one = with_rule(published.clone(), 8);
    let every = (0..POINTS).fold(published.clone(), with_rule);

    // A bench of the wrong thing would be worse than none.
    assert_eq!(frozen.rows.len(), POINTS);
    assert!(frozen.rows.iter().all(|row| row.values.len() == SIZES));
    let (findings, changes_of_one) = all_three(old, &one);
    assert!(findings.is_empty(), "{findings:?}");
    assert_eq!(
        changes_of_one.len(),
        2,
        "the rule, and the point derived from it"
    );
    assert_eq!(changes_of_one[0].sizes.len(), SIZES);
    assert!(all_three(old, &every).1.len() >= POINTS);

    criterion.bench_function("grade + check + change list, one rule changed", |bench| {
        bench.iter(|| all_three(black_box(old), black_box(&one)));
    });
    criterion.bench_function("grade + check + change list, every rule changed", |bench| {
        bench.iter(|| all_three(black_box(old), black_box(&every)));
    });
    criterion.bench_function("grade", |bench| bench.iter(|| grade(black_box(&one))));
    let graded = grade(&one);
    criterion.bench_function("check", |bench| {
        bench.iter(|| check(black_box(&one), black_box(&graded)));
    });
    let point = &one.points.points[9];
    criterion.bench_function("grade one point as it is typed", |bench| {
        bench.iter(|| grade_point(black_box(&one), black_box(point)));
    });
}

criterion_group!(benches, measure);
criterion_main!(benches);
