//! Cases of the drawings.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::DrawingsNone, None, None,
        |s| s.drawings.drawings.clear(),
        |s| s.drawings.drawings[0].markers.clear()),
    (Code::MarkerAdrift, Some("marker-p2"), None,
        |s| { s.colourways.parts.remove(1); },
        |s| { s.colourways.parts.remove(2); }),
    (Code::MarkerOutside, Some("marker-a"), None,
        |s| s.drawings.drawings[0].markers[0].x = 10_001,
        |s| s.drawings.drawings[0].markers[0].x = 10_000),
    (Code::PointUnmarked, Some("point-a"), None,
        |s| { s.drawings.drawings[0].markers.remove(0); },
        |s| { s.drawings.drawings[0].markers.pop(); }),
    (Code::ItemUnmarked, Some("callout-2"), None,
        |s| unmark(s, "callout-2"),
        |s| unmark(s, "part-2")),
    (Code::DimensionAdrift, Some("dimension-1"), None,
        |s| dimension(s, "part-1", 0),
        |s| dimension(s, "point-a", 0)),
    (Code::DimensionOutside, Some("dimension-1"), None,
        |s| dimension(s, "point-a", 10_001),
        |s| dimension(s, "point-a", 10_000)),
    (Code::BlowUpAdrift, Some("blow-up-1"), None,
        |s| blow_up(s, "drawing-front"),
        |s| { second(s, View::Detail); blow_up(s, "drawing-second"); }),
    (Code::SideViewMissing, None, None,
        |s| { s.header.asymmetric = true; second(s, View::Left); },
        |s| { s.header.asymmetric = true; second(s, View::Left); s.drawings.drawings[0].view = View::Right; }),
];

fn unmark(spec: &mut Spec, item: &str) {
    let markers = &mut spec.drawings.drawings[0].markers;
    markers.retain(|marker| marker.item != id(item));
}

fn dimension(spec: &mut Spec, item: &str, x: u16) {
    spec.drawings.drawings[0].lines.push(DimensionLine {
        id: id("dimension-1"),
        item: id(item),
        from: Spot { x: 5, y: 5 },
        to: Spot { x: 5, y: 5 },
        via: Some(Spot { x, y: 5 }),
    });
}

fn second(spec: &mut Spec, view: View) {
    let first = spec.drawings.drawings[0].clone();
    spec.drawings.drawings.push(Drawing {
        id: id("drawing-second"),
        view,
        markers: Vec::new(),
        ..first
    });
}

fn blow_up(spec: &mut Spec, to: &str) {
    spec.drawings.drawings[0].blow_ups.push(BlowUp {
        id: id("blow-up-1"),
        drawing: id(to),
        at: Spot { x: 5, y: 5 },
        radius: 100,
    });
}
