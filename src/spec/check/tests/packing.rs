//! Cases of the packing.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::RatioEmpty, Some("pack-1"), Some("pieces"),
        |s| pack(s, &[0, 0], 12),
        |s| pack(s, &[0, 1], 12)),
    (Code::RatioRemainder, Some("pack-1"), Some("pieces"),
        |s| pack(s, &[2, 3], 12),
        |s| pack(s, &[1, 3], 12)),
];

/// A pack of the Ink colourway, of which so many pieces are thought of.
pub fn pack(spec: &mut Spec, of_sizes: &[u32], pieces: u32) {
    spec.colourways.colourways[0].pieces = Some(pieces);
    let sizes = spec.sizes.sizes.iter().map(|size| size.id.clone());
    let pack = RatioPack {
        id: id("pack-1"),
        name: "Pack".to_owned(),
        colourway: Some(id("colourway-ink")),
        pieces: sizes.zip(of_sizes.iter().copied()).collect(),
    };
    spec.packing.ratio.push(pack);
}
