//! Random edits: whatever was done, the list tells all of it and nothing else.

use std::collections::{BTreeMap, BTreeSet};

use proptest::prelude::*;

use super::apply::apply;
use super::{between, even, example, id};
use crate::spec::chart::grade;
use crate::spec::decimal::Decimal;
use crate::spec::document::*;
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::{Entered, Length, Unit};

/// Takes the item at `from`, if there is one, to `to`.
fn reorder<T>(list: &mut Vec<T>, from: usize, to: usize) {
    if !list.is_empty() {
        let item = list.remove(from % list.len());
        list.insert(to % (list.len() + 1), item);
    }
}

fn pick<T>(list: &mut [T], n: usize) -> Option<&mut T> {
    let len = list.len().max(1);
    list.get_mut(n % len)
}

/// One of many small edits, by number, and by two more numbers for where and what.
fn edit(spec: &mut Spec, kind: u8, n: usize, m: usize) {
    let length = Entered {
        nm: Length::nm((n % 40) as i64 * 1_587_500),
        unit: Unit::Inch,
    };
    let fresh = id(&format!("fresh-{}", spec.items().count()));
    if spec.item(&fresh).is_some() {
        return;
    }
    let colourways = &mut spec.colourways;
    match kind % 30 {
        0 => spec.header.name = format!("name {n}"),
        1 => reorder(&mut spec.sizes.sizes, n, m),
        2 => spec.sizes.sizes.truncate(n % 6),
        3 => reorder(&mut spec.points.points, n, m),
        4 if !spec.points.points.is_empty() => {
            spec.points.points.remove(n % spec.points.points.len());
        }
        5 => {
            if let Some(mut point) = spec.points.points.first().cloned() {
                point.id = fresh;
                let at = n % spec.points.points.len();
                spec.points.points.insert(at, point);
            }
        }
        6 => {
            if let Some(point) = pick(&mut spec.points.points, n) {
                match m % 6 {
                    0 => point.base = Some(length),
                    1 => point.grade = even(["1/2", "3/8", "5/16"][n % 3]),
                    2 => point.step = Some(length),
                    3 => point.plus = Some(length),
                    4 => point.letter = format!("L{n}"),
                    _ => point.how.note = format!("note {n}"),
                }
            }
        }
        7 => spec.header.base_size = spec.sizes.sizes.get(n).map(|size| size.id.clone()),
        8 => spec.drawings.drawings.push(Drawing {
            id: fresh,
            view: View::Back,
            title: String::new(),
            file: Digest::of(b"back"),
            width: 1,
            height: 1,
            markers: Vec::new(),
            lines: Vec::new(),
            blow_ups: Vec::new(),
        }),
        9 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                reorder(&mut drawing.markers, n, m);
                drawing.markers.truncate(m);
            }
        }
        10 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                drawing.markers.push(Marker {
                    id: fresh,
                    item: id("point-a"),
                    x: 1,
                    y: 2,
                });
            }
        }
        11 => reorder(&mut spec.drawings.drawings, n, m),
        12 => reorder(&mut colourways.parts, n, m),
        13 => {
            reorder(&mut colourways.colourways, n, m);
            colourways.colourways.truncate(m);
        }
        14 => colourways.parts.push(Part {
            id: fresh,
            letter: format!("P{n}"),
            name: String::new(),
        }),
        16 => reorder(&mut spec.materials.materials, n, m),
        17 | 18 => {
            let material = Material {
                id: fresh,
                letter: format!("F{n}"),
                parts: vec![id("part-1")],
                length: Some(length),
                nominated: n > 5,
                ..Material::default()
            };
            let materials = &mut spec.materials.materials;
            materials.insert(n % (materials.len() + 1), material);
        }
        19 | 20 => {
            if let Some(material) = pick(&mut spec.materials.materials, n) {
                match m {
                    0 => material.composition.push(Share {
                        fibre: Some(Fibre::ALL[n]),
                        percent: Some(Decimal::new(n as i64, 1)),
                        functional: n > 5,
                        ..Share::default()
                    }),
                    1 => material.fabric.mass = Some(Decimal::new(n as i64, 0)),
                    2 => material.fabric.structure = Some(Structure::Woven(Woven::default())),
                    3 => {
                        material.fabric.structure = Some(Structure::Knitted(Knitted {
                            tubular: true,
                            ..Knitted::default()
                        }))
                    }
                    4 => material.zip.end = Some(ZipEnd::Open),
                    5 => material.zip = Zip::default(),
                    6 => material.care.wash = Some(Wash::Hand),
                    7 => {
                        material.length_by_size.insert(id("size-m"), length);
                    }
                    8 => material.length_by_size.clear(),
                    9 => material.composition.clear(),
                    10 => material.nominated = !material.nominated,
                    _ => material.minimum = Some(Minimum::default()),
                }
            }
        }
        21 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                drawing.lines.push(DimensionLine {
                    id: fresh,
                    item: id("point-a"),
                    from: Spot { x: 1, y: 2 },
                    to: Spot { x: 3, y: 4 },
                    via: None,
                });
            }
        }
        22 => {
            let drawing = pick(&mut spec.drawings.drawings, n);
            if let Some(line) = drawing.and_then(|it| it.lines.first_mut()) {
                line.via = Some(Spot { x: n as u16, y: 0 });
            }
        }
        23 => spec.construction.callouts.push(Callout {
            id: fresh,
            text: format!("text {n}"),
            ..Callout::default()
        }),
        24 => {
            if let Some(callout) = pick(&mut spec.construction.callouts, n) {
                callout.seam = SeamClass::ALL.get(m).copied();
                callout.text = String::new();
            }
        }
        25 => spec.labels.care.iron = Iron::ALL.get(n).copied(),
        26 => spec.packing.carton.length = Some(length).filter(|_| m > 3),
        27 => spec.packing.steps.insert(
            0,
            Step {
                id: fresh,
                text: format!("step {n}"),
            },
        ),
        28 => spec.artwork.artworks.push(Artwork {
            id: fresh,
            bands: vec![Band {
                width: Some(length),
                distances: vec![Distance::default()],
                ..Band::default()
            }],
            ..Artwork::default()
        }),
        15 => {
            let part = pick(&mut colourways.parts, m).map(|part| part.id.clone());
            let colourway = pick(&mut colourways.colourways, n).map(|c| c.id.clone());
            if let (Some(part), Some(colourway)) = (part, colourway) {
                let row = colourways.cells.entry(colourway).or_default();
                row.insert(part, Cell::Natural {});
            }
        }
        _ => {
            colourways.parts.truncate(n % 6);
        }
    }
}

/// As a section is saved: without cells of what is gone.
pub fn prune(spec: &mut Spec) {
    let colourways = &mut spec.colourways;
    let parts: BTreeSet<_> = colourways.parts.iter().map(|part| &part.id).collect();
    let kept: BTreeSet<_> = colourways.colourways.iter().map(|c| &c.id).collect();
    colourways.cells.retain(|id, row| {
        row.retain(|part, _| parts.contains(part));
        kept.contains(id) && !row.is_empty()
    });
}

fn any_spec() -> impl Strategy<Value = Spec> {
    let edits = proptest::collection::vec((any::<u8>(), 0usize..12, 0usize..12), 0..12);
    edits.prop_map(|edits| {
        let mut spec = example();
        for (kind, n, m) in edits {
            edit(&mut spec, kind, n, m);
        }
        prune(&mut spec);
        spec
    })
}

proptest! {
    #[test]
    fn the_changes_make_the_new_from_the_old(old in any_spec(), new in any_spec()) {
        let changes = between(&old, &new);
        prop_assert_eq!(changes.is_empty(), old == new);
        prop_assert_eq!(apply(&old, &changes), new);
        prop_assert_eq!(between(&old, &old), []);
    }

    #[test]
    fn every_value_that_moved_is_told_once_and_no_other(old in any_spec(), new in any_spec()) {
        let (before, after) = (grade(&old).chart(&old), grade(&new).chart(&new));
        let (Some(before), Some(after)) = (before, after) else {
            return Ok(());
        };
        let mut told: BTreeMap<(ItemId, ItemId), (Option<Length>, Option<Length>)> = BTreeMap::new();
        for change in between(&old, &new) {
            let point = change.item.clone();
            for size in change.sizes {
                let key = (point.clone().unwrap(), size.size);
                let twice = told.insert(key, (size.old, size.new));
                prop_assert!(twice.is_none(), "{twice:?}");
            }
        }
        for ((point, size), (old, new)) in &told {
            prop_assert_eq!(before.value(point, size), *old);
            prop_assert_eq!(after.value(point, size), *new);
        }
        for row in &after.rows {
            for size in &after.sizes {
                let old = before.value(&row.point, size);
                let new = after.value(&row.point, size);
                if old.is_some() && old != new {
                    prop_assert_eq!(told.get(&(row.point.clone(), size.clone())), Some(&(old, new)));
                }
            }
        }
    }

    #[test]
    fn the_fewest_are_said_to_have_moved(count in 0usize..9, from in 0usize..9, to in 0usize..9) {
        let mut old = example();
        old.points.points.truncate(count);
        let mut new = old.clone();
        reorder(&mut new.points.points, from, to);
        let changes = between(&old, &new);
        prop_assert!(changes.len() <= 1, "{changes:?}");
    }
}
