//! What holds for all items: identities, letters and names, and what they refer to.

use std::collections::HashMap;

use super::known::Known;
use super::{Code, Fact, Finding, blank, on, same_label};
use crate::spec::document::{Artwork, Callout, Label, Material, Point, RatioPack};
use crate::spec::id::ItemId;
use crate::spec::item::Item;

pub fn items(known: &Known, findings: &mut Vec<Finding>) {
    let mut letters: HashMap<String, &str> = HashMap::new();
    for item in known.spec.items() {
        match item {
            // Their letters and names have checks of their own.
            Item::Point(point) => {
                letters
                    .entry(same_label(&point.letter))
                    .or_insert(&point.name);
                of_point(known, point, findings);
            }
            Item::Part(part) => {
                letters.insert(same_label(&part.letter), &part.name);
            }
            Item::Material(material) => {
                named(item, &mut letters, findings);
                of_material(known, material, findings);
            }
            Item::Callout(callout) => {
                named(item, &mut letters, findings);
                of_callout(known, callout, findings);
            }
            Item::Artwork(artwork) => {
                named(item, &mut letters, findings);
                of_artwork(known, artwork, findings);
            }
            Item::Label(label) => {
                named(item, &mut letters, findings);
                of_label(known, label, findings);
            }
            Item::RatioPack(pack) => of_pack(known, pack, findings),
            Item::Size(_)
            | Item::LengthOption(_)
            | Item::Drawing(_)
            | Item::Marker(_)
            | Item::DimensionLine(_)
            | Item::BlowUp(_)
            | Item::Colourway(_)
            | Item::Line(_)
            | Item::Step(_) => {}
        }
    }
    let twice = known.twice.iter();
    findings.extend(twice.map(|item| Finding::new(Code::IdTwice, item.section()).item(item.id())));
}

/// A letter names one thing on paper, whatever it is.
fn named<'a>(item: Item<'a>, letters: &mut HashMap<String, &'a str>, findings: &mut Vec<Finding>) {
    if blank(item.letter()) {
        findings.push(on(item, Code::LetterMissing).field("letter"));
    } else if let Some(other) = letters.insert(same_label(item.letter()), item.name()) {
        let finding = on(item, Code::LetterTwice).field("letter");
        findings.push(finding.fact("letter", item.letter()).fact("other", other));
    }
    // A callout is known by its text, which is checked with it.
    if blank(item.name()) && !matches!(item, Item::Callout(_)) {
        findings.push(on(item, Code::ItemNameMissing).field("name"));
    }
}

fn gone(item: Item, field: &'static str) -> Finding {
    let finding = on(item, Code::ReferenceGone).field(field);
    finding.fact("field", Fact::field(field))
}

/// Whatever of `ids` is not what it should be, once for the field.
fn must_be<'a>(
    item: impl Into<Item<'a>>,
    field: &'static str,
    ids: impl IntoIterator<Item = &'a ItemId>,
    is: impl Fn(&ItemId) -> bool,
    findings: &mut Vec<Finding>,
) {
    if !ids.into_iter().all(is) {
        findings.push(gone(item.into(), field));
    }
}

fn of_point(known: &Known, point: &Point, findings: &mut Vec<Finding>) {
    let is_length = |id: &ItemId| matches!(known.item(id), Some(Item::LengthOption(_)));
    must_be(point, "part", &point.part, |id| known.is_part(id), findings);
    must_be(point, "lengths", point.lengths.keys(), is_length, findings);
}

fn of_material(known: &Known, material: &Material, findings: &mut Vec<Finding>) {
    let is_point = |id: &ItemId| matches!(known.item(id), Some(Item::Point(_)));
    let is_size = |id: &ItemId| known.is_size(id);
    let (zip, cord) = (&material.zip, &material.cord);
    must_be(
        material,
        "parts",
        &material.parts,
        |id| known.is_part(id),
        findings,
    );
    must_be(material, "zip.opening", &zip.opening, is_point, findings);
    must_be(material, "cord.channel", &cord.channel, is_point, findings);
    let lengths = material.length_by_size.keys();
    must_be(material, "length_by_size", lengths, is_size, findings);
    let amounts = material.consumption.by_size.keys();
    must_be(material, "consumption.by_size", amounts, is_size, findings);
}

fn of_callout(known: &Known, callout: &Callout, findings: &mut Vec<Finding>) {
    let is_drawing = |id: &ItemId| matches!(known.item(id), Some(Item::Drawing(_)));
    let is_material = |id: &ItemId| matches!(known.item(id), Some(Item::Material(_)));
    must_be(
        callout,
        "part",
        &callout.part,
        |id| known.is_part(id),
        findings,
    );
    if callout.line.as_ref().is_some_and(|id| !known.is_line(id)) {
        findings.push(on(callout, Code::LineGone).field("line"));
    }
    must_be(callout, "detail", &callout.detail, is_drawing, findings);
    must_be(callout, "thread", &callout.thread, is_material, findings);
    must_be(callout, "tape", &callout.tape, is_material, findings);
}

fn of_artwork(known: &Known, artwork: &Artwork, findings: &mut Vec<Finding>) {
    let is_drawing = |id: &ItemId| matches!(known.item(id), Some(Item::Drawing(_)));
    must_be(
        artwork,
        "colours",
        &artwork.colours,
        |id| known.is_part(id),
        findings,
    );
    must_be(artwork, "drawing", &artwork.drawing, is_drawing, findings);
    let ends = artwork
        .bands
        .iter()
        .flat_map(|band| band.from.iter().chain(&band.to));
    must_be(artwork, "bands", ends, |id| known.is_size(id), findings);
    let mut distances = artwork.bands.iter().flat_map(|band| &band.distances);
    if distances.any(|distance| distance.line.as_ref().is_some_and(|id| !known.is_line(id))) {
        findings.push(on(artwork, Code::LineGone).field("bands"));
    }
}

fn of_label(known: &Known, label: &Label, findings: &mut Vec<Finding>) {
    must_be(label, "part", &label.part, |id| known.is_part(id), findings);
    let mut distances = label.distances.iter();
    if distances.any(|distance| distance.line.as_ref().is_some_and(|id| !known.is_line(id))) {
        findings.push(on(label, Code::LineGone).field("distances"));
    }
}

fn of_pack(known: &Known, pack: &RatioPack, findings: &mut Vec<Finding>) {
    let is_colourway = |id: &ItemId| matches!(known.item(id), Some(Item::Colourway(_)));
    must_be(pack, "colourway", &pack.colourway, is_colourway, findings);
    let sizes = pack.pieces.keys();
    must_be(pack, "pieces", sizes, |id| known.is_size(id), findings);
}
