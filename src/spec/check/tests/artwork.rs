//! Cases of the artwork.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::ArtworkSizeMissing, Some("artwork-wave"), Some("bands"),
        |s| band(s).width = inches("0"),
        |s| band(s).width = inches("1/16")),
    (Code::ArtworkDistancesMissing, Some("artwork-wave"), Some("bands"),
        |s| band(s).distances[1].anchor = None,
        |s| band(s).distances[1].distance = inches("0")),
    (Code::ArtworkSizeUncovered, Some("artwork-wave"), Some("bands"),
        |s| band(s).to = Some(id("size-l")),
        |s| band(s).to = Some(id("size-xl"))),
    (Code::ArtworkSizeTwice, Some("artwork-wave"), Some("bands"),
        |s| { band(s).to = Some(id("size-m")); also(s, "size-m"); },
        |s| { band(s).to = Some(id("size-m")); also(s, "size-l"); }),
    (Code::ArtworkFileMissing, Some("artwork-wave"), Some("file"),
        |s| artwork(s).file = None,
        |s| artwork(s).preview = None),
    (Code::ArtworkCoarse, Some("artwork-wave"), Some("file"),
        |s| raster(s, 374, 188),
        |s| raster(s, 375, 188)),
    (Code::ArtworkLiveText, Some("artwork-wave"), Some("file"),
        |s| artwork(s).unsafe_text = true,
        |s| artwork(s).line_art = true),
    (Code::TextTooSmall, Some("artwork-wave"), Some("smallest_text"),
        |s| artwork(s).smallest_text = mm("4.9"),
        |s| artwork(s).smallest_text = mm("5")),
];

fn band(spec: &mut Spec) -> &mut Band {
    &mut artwork(spec).bands[0]
}

/// A second line of size and place, from this size on.
fn also(spec: &mut Spec, from: &str) {
    let band = Band {
        from: Some(id(from)),
        to: None,
        ..band(spec).clone()
    };
    artwork(spec).bands.push(band);
}

/// The artwork is 1 1/4 in wide and 5/8 in high.
fn raster(spec: &mut Spec, across: u32, down: u32) {
    let artwork = artwork(spec);
    artwork.form = Some(ArtworkForm::Raster);
    artwork.pixels_across = Some(across);
    artwork.pixels_down = Some(down);
}
