//! Checks of the drawings and of what is marked on them.

use std::collections::HashSet;

use super::known::Known;
use super::{Code, Fact, Finding};
use crate::spec::document::{Drawing, Section, Spot, View};
use crate::spec::item::Item;

/// The edge of a drawing, in the parts that spots are given in.
const EDGE: u16 = 10_000;

pub fn drawings(known: &Known, findings: &mut Vec<Finding>) {
    let spec = known.spec;
    let drawings = &spec.drawings.drawings;
    if drawings.is_empty() {
        findings.push(Finding::new(Code::DrawingsNone, Section::Drawings));
        return;
    }
    let mut marked = HashSet::new();
    for drawing in drawings {
        marked.extend(drawing.markers.iter().map(|marker| &marker.item));
        marks(known, drawing, findings);
    }
    for item in spec.items().filter(|item| !marked.contains(item.id())) {
        let finding = Finding::new(Code::PointUnmarked, Section::Drawings).item(item.id());
        match item {
            Item::Point(point) => {
                let finding = finding.fact("letter", point.letter.as_str());
                findings.push(finding.fact("name", point.name.as_str()));
            }
            Item::Callout(_) | Item::Artwork(_) | Item::Label(_) => {
                let code = Code::ItemUnmarked;
                let known_by = item.known_by();
                findings.push(Finding { code, ..finding }.fact("item", known_by.as_str()));
            }
            // Parts may be marked; what is left has no letter on a drawing.
            _ => {}
        }
    }
    if spec.header.asymmetric {
        for view in [View::Left, View::Right] {
            if drawings.iter().all(|drawing| drawing.view != view) {
                let finding = Finding::new(Code::SideViewMissing, Section::Drawings);
                findings.push(finding.fact("view", Fact::word(view)));
            }
        }
    }
}

fn marks(known: &Known, drawing: &Drawing, findings: &mut Vec<Finding>) {
    let finding = |code, id| Finding::new(code, Section::Drawings).item(id);
    let outside = |spot: &Spot| spot.x > EDGE || spot.y > EDGE;
    for marker in &drawing.markers {
        if !known.item(&marker.item).is_some_and(Item::is_lettered) {
            findings.push(finding(Code::MarkerAdrift, &marker.id));
        }
        if marker.x > EDGE || marker.y > EDGE {
            findings.push(finding(Code::MarkerOutside, &marker.id));
        }
    }
    for line in &drawing.lines {
        if !matches!(known.item(&line.item), Some(Item::Point(_))) {
            findings.push(finding(Code::DimensionAdrift, &line.id));
        }
        if [&line.from, &line.to]
            .into_iter()
            .chain(&line.via)
            .any(outside)
        {
            findings.push(finding(Code::DimensionOutside, &line.id));
        }
    }
    for blow_up in &drawing.blow_ups {
        let leads_on = matches!(known.item(&blow_up.drawing), Some(Item::Drawing(_)));
        if !leads_on || blow_up.drawing == drawing.id {
            let finding = finding(Code::BlowUpAdrift, &blow_up.id);
            findings.push(finding.fact("drawing", drawing_name(drawing)));
        }
        if outside(&blow_up.at) {
            findings.push(finding(Code::DimensionOutside, &blow_up.id));
        }
    }
}

fn drawing_name(drawing: &Drawing) -> Fact {
    match drawing.title.trim() {
        "" => Fact::word(drawing.view),
        title => title.into(),
    }
}
