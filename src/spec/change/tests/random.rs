//! Random edits: whatever was done, the list tells all of it and nothing else.

use std::collections::{BTreeMap, BTreeSet};

use proptest::prelude::*;

use super::apply::apply;
use super::{Kind, SizeValue, between, even, example, id};
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
    if kind >= 128 {
        return edit_rest(spec, kind, (n, m), fresh, length);
    }
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

/// The edits of what the first half leaves untouched.
fn edit_rest(spec: &mut Spec, kind: u8, (n, m): (usize, usize), fresh: ItemId, length: Entered) {
    let some = Some(length).filter(|_| m > 2);
    let decimal = Some(Decimal::new(n as i64, 1)).filter(|_| m > 2);
    let size = spec.sizes.sizes.get(m).map(|size| size.id.clone());
    match kind % 24 {
        0 => match m % 3 {
            0 => spec.header.exemptions.clear(),
            _ => spec.header.exemptions.push(Exemption {
                code: format!("code-{n}"),
                ..Exemption::default()
            }),
        },
        1 => {
            if let Some(size) = pick(&mut spec.sizes.sizes, n) {
                size.ages = Some(Ages { from: 1, to: 2 }).filter(|_| m > 4);
                size.body.resize(m % 3, BodyRange::default());
            }
        }
        2 => spec.sizes.lengths.push(LengthOption {
            id: fresh,
            code: format!("{n}"),
            label: String::new(),
        }),
        3 => reorder(&mut spec.sizes.lengths, n, m),
        4 => {
            let option = spec.sizes.lengths.first().map(|option| option.id.clone());
            let point = pick(&mut spec.points.points, n);
            if let (Some(point), Some(option)) = (point, option) {
                point.lengths.insert(option, length);
            }
        }
        5 => {
            let point = pick(&mut spec.points.points, n);
            if let (Some(point), Some(size)) = (point, size) {
                let tolerance = Tolerance {
                    minus: some,
                    plus: Some(length),
                };
                point.tolerances.insert(size, tolerance);
            }
        }
        6 => {
            if let Some(point) = pick(&mut spec.points.points, n) {
                point.pair_limit = some;
                point.stretched_min = Some(length);
                point.how.closure = Closure::ALL.get(m).copied();
            }
        }
        7 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                drawing.file = Digest::of(&[m as u8]);
                drawing.width = n as u32;
            }
        }
        8 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                drawing.blow_ups.push(BlowUp {
                    id: fresh,
                    drawing: drawing.id.clone(),
                    at: Spot::default(),
                    radius: n as u16,
                });
            }
        }
        9 => {
            if let Some(drawing) = pick(&mut spec.drawings.drawings, n) {
                reorder(&mut drawing.blow_ups, n, m);
                drawing.lines.truncate(m);
            }
        }
        10 => spec.construction.lines.push(Line {
            id: fresh,
            name: format!("line {n}"),
            kind: None,
        }),
        11 => reorder(&mut spec.construction.lines, n, m),
        12 => reorder(&mut spec.construction.callouts, n, m),
        13 => {
            if let Some(callout) = pick(&mut spec.construction.callouts, n) {
                callout.topstitch = some;
                callout.density = decimal;
                callout.bartacks = Some(m as u8);
            }
        }
        14 => {
            if let Some(artwork) = pick(&mut spec.artwork.artworks, n) {
                match m % 4 {
                    0 => artwork.file = None,
                    1 => artwork.file = Some(Digest::of(&[n as u8])),
                    2 => artwork.pixels_across = Some(n as u32),
                    _ => artwork.preview = Some(Digest::of(&[n as u8])),
                }
            }
        }
        15 => {
            let artwork = pick(&mut spec.artwork.artworks, n);
            if let Some(band) = artwork.and_then(|it| it.bands.first_mut()) {
                band.height = some;
                band.distances.push(Distance {
                    anchor: Anchor::ALL.get(m).copied(),
                    ..Distance::default()
                });
            }
        }
        16 => spec.labels.labels.push(Label {
            id: fresh,
            letter: format!("L{n}"),
            ..Label::default()
        }),
        17 => {
            if let Some(label) = pick(&mut spec.labels.labels, n) {
                label.texts.push(LabelText {
                    language: format!("{m}"),
                    ..LabelText::default()
                });
                label.contents.truncate(m);
                label.artwork = Some(Digest::of(&[m as u8]));
            }
        }
        18 => reorder(&mut spec.labels.labels, n, m),
        19 => spec.packing.ratio.push(RatioPack {
            id: fresh,
            name: format!("pack {n}"),
            pieces: size.into_iter().map(|size| (size, n as u32)).collect(),
            colourway: None,
        }),
        20 => {
            if let Some(pack) = pick(&mut spec.packing.ratio, n) {
                pack.pieces.extend(size.map(|size| (size, m as u32)));
            }
        }
        21 => {
            if let Some(material) = pick(&mut spec.materials.materials, n) {
                material.consumption.amount = decimal;
                let by_size = &mut material.consumption.by_size;
                by_size.extend(size.zip(Some(Decimal::new(m as i64, 1))));
                material.cord.free = some;
                material.wastage = Some(Wastage::default());
            }
        }
        22 => {
            if let Some(material) = pick(&mut spec.materials.materials, n) {
                material.fabric = Fabric::default();
                material.care = Care::default();
                material.evidence.truncate(m);
            }
        }
        _ => {
            spec.packing.steps.truncate(n);
            spec.construction.callouts.truncate(m);
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
        for change in &changes {
            match change.kind {
                Kind::Changed | Kind::Relettered => prop_assert_ne!(&change.old, &change.new),
                Kind::Regraded => prop_assert!(change.sizes.iter().any(SizeValue::moved)),
                Kind::Added { .. } | Kind::Removed | Kind::Moved { .. } => {}
            }
        }
        // Section after section, each once.
        prop_assert!(changes.is_sorted_by_key(|change| change.section));
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
