//! That each pack is a whole spec in which there is nothing to mend.

use std::collections::BTreeSet;

use fellseam::spec::check::check;
use fellseam::spec::document::*;
use fellseam::spec::fabric::{computed_mass, mass_disagrees};
use fellseam::spec::item::Item;
use fellseam::spec::{Digest, ItemId, Spec, from_canonical, grade, to_canonical};

use crate::packs::{PACKS, originals, spec, text};

#[test]
fn it_is_written_as_the_program_writes_it() {
    for pack in PACKS {
        let written = serde_json::to_string_pretty(&spec(pack)).unwrap();
        let text = text(pack);
        let lines = written.lines().zip(text.lines()).enumerate();
        for (number, (written, line)) in lines {
            assert_eq!(written, line, "{pack}, line {}", number + 1);
        }
        assert_eq!(text, written + "\n", "{pack}");
    }
}

#[test]
fn it_reads_back_from_its_canonical_bytes() {
    for pack in PACKS {
        let spec = spec(pack);
        let bytes = to_canonical(&spec).unwrap();
        assert_eq!(from_canonical::<Spec>(&bytes).unwrap(), spec, "{pack}");
    }
}

#[test]
fn every_file_that_it_names_lies_beside_it_and_no_other() {
    for pack in PACKS {
        let spec = spec(pack);
        let drawings = spec.drawings.drawings.iter().map(|it| &it.file);
        let artworks = spec.artwork.artworks.iter();
        let artworks = artworks.flat_map(|it| it.file.iter().chain(&it.preview));
        let labels = spec
            .labels
            .labels
            .iter()
            .filter_map(|it| it.artwork.as_ref());
        let named: BTreeSet<Digest> = drawings.chain(artworks).chain(labels).cloned().collect();
        let beside = originals(pack);
        let beside: BTreeSet<Digest> = beside.values().map(|bytes| Digest::of(bytes)).collect();
        assert_eq!(named, beside, "{pack}");
    }
}

#[test]
fn it_is_as_large_as_in_the_trade() {
    for pack in PACKS {
        let spec = spec(pack);
        let points = spec.points.points.len();
        assert!((25..=45).contains(&points), "{pack}: {points} points");
        let materials = spec.materials.materials.len();
        assert!((15..=30).contains(&materials), "{pack}: {materials} lines");
        let callouts = spec.construction.callouts.len();
        assert!((10..=14).contains(&callouts), "{pack}: {callouts} callouts");
        let parts = spec.colourways.parts.len();
        assert!(parts >= 12, "{pack}: {parts} parts");
        let colourways = &spec.colourways.colourways;
        assert_eq!(colourways.len(), 3, "{pack}");
        assert!(colourways.iter().all(|it| it.pieces.is_some()), "{pack}");
    }
}

/// A line for every point, a letter for all that has one, and no blow-up that nothing leads to.
#[test]
fn everything_lettered_stands_on_a_drawing() {
    for pack in PACKS {
        let spec = spec(pack);
        let drawings = &spec.drawings.drawings;
        let marked: BTreeSet<&ItemId> = drawings
            .iter()
            .flat_map(|it| it.markers.iter().map(|marker| &marker.item))
            .collect();
        let measured: BTreeSet<&ItemId> = drawings
            .iter()
            .flat_map(|it| it.lines.iter().map(|line| &line.item))
            .collect();
        let points: BTreeSet<&ItemId> = spec.points.points.iter().map(|it| &it.id).collect();
        assert_eq!(measured, points, "{pack}");
        for item in spec.items() {
            let lettered = item.is_lettered() && !matches!(item, Item::Part(_));
            assert!(
                !lettered || marked.contains(item.id()),
                "{pack}: {}",
                item.id()
            );
        }
        let blown_up: BTreeSet<&ItemId> = drawings
            .iter()
            .flat_map(|it| it.blow_ups.iter().map(|blow_up| &blow_up.drawing))
            .collect();
        let details = drawings.iter().filter(|it| it.view == View::Detail);
        let details: BTreeSet<&ItemId> = details.map(|it| &it.id).collect();
        assert_eq!(blown_up, details, "{pack}");
    }
}

#[test]
fn every_fabric_weighs_what_its_yarns_say() {
    for pack in PACKS {
        for material in spec(pack)
            .materials
            .materials
            .iter()
            .filter(|it| it.is_fabric())
        {
            let declared = material.fabric.mass.expect("a mass");
            let structure = material.fabric.structure.as_ref().expect("a structure");
            let computed = computed_mass(structure).expect("every number of it");
            let name = &material.name;
            assert!(
                !mass_disagrees(declared, computed),
                "{pack}, {name}: {computed}"
            );
        }
    }
}

#[test]
fn it_has_no_finding() {
    for pack in PACKS {
        let spec = spec(pack);
        assert_eq!(check(&spec, &grade(&spec)), [], "{pack}");
    }
}
