//! Checks of the artwork: its size and place in every size, and whether it can be made so.

use std::collections::HashMap;

use super::known::Known;
use super::{Code, Fact, Finding, on};
use crate::spec::decimal::Decimal;
use crate::spec::document::{Artwork, ArtworkForm, ArtworkMethod, Band, Distance};
use crate::spec::units::{Entered, Length, Unit};

/// What a raster needs at its real size, in dots per inch. Common practice, no source.
const DPI: i64 = 300;
/// The same, for lines and text only.
const DPI_OF_LINES: i64 = 600;

pub fn artwork(known: &Known, findings: &mut Vec<Finding>) {
    let sizes = known.spec.sizes.sizes.iter();
    let place: HashMap<_, usize> = sizes.map(|size| &size.id).zip(0..).collect();
    for artwork in &known.spec.artwork.artworks {
        let measured = |band: &Band| is_length(band.width) && is_length(band.height);
        if artwork.bands.is_empty() || !artwork.bands.iter().all(measured) {
            findings.push(on(artwork, Code::ArtworkSizeMissing).field("bands"));
        }
        let placed = |band: &Band| complete(&band.distances) >= 2;
        if artwork.bands.is_empty() || !artwork.bands.iter().all(placed) {
            findings.push(on(artwork, Code::ArtworkDistancesMissing).field("bands"));
        }
        // How often each size is covered; a band of a size that is gone is told of elsewhere.
        let mut covered = vec![0_usize; place.len()];
        for band in &artwork.bands {
            let at = |end: &Option<_>, open| match end {
                Some(id) => place.get(id).copied(),
                None => Some(open),
            };
            if let (Some(first), Some(last)) = (at(&band.from, 0), at(&band.to, place.len())) {
                let covering = covered.iter_mut().take(last.saturating_add(1)).skip(first);
                covering.for_each(|times| *times += 1);
            }
        }
        let size = |index: usize| known.spec.sizes.sizes[index].code.as_str();
        let uncovered = covered.iter().position(|times| *times == 0);
        if let Some(index) = uncovered.filter(|_| !artwork.bands.is_empty()) {
            let finding = on(artwork, Code::ArtworkSizeUncovered).field("bands");
            findings.push(finding.fact("size", size(index)));
        }
        if let Some(index) = covered.iter().position(|times| *times > 1) {
            let finding = on(artwork, Code::ArtworkSizeTwice).field("bands");
            findings.push(finding.fact("size", size(index)));
        }
        original(artwork, findings);
    }
}

fn is_length(entered: Option<Entered>) -> bool {
    entered.is_some_and(|entered| entered.nm.is_positive())
}

/// How many of the distances say from where, to where and how far.
pub fn complete(distances: &[Distance]) -> usize {
    let whole = |it: &&Distance| it.line.is_some() && it.anchor.is_some() && it.distance.is_some();
    distances.iter().filter(whole).count()
}

/// Whether the original can be made at its real size.
fn original(artwork: &Artwork, findings: &mut Vec<Finding>) {
    if artwork.file.is_none() {
        findings.push(on(artwork, Code::ArtworkFileMissing).field("file"));
    }
    if artwork.unsafe_text {
        findings.push(on(artwork, Code::ArtworkLiveText).field("file"));
    }
    let wanted = if artwork.line_art { DPI_OF_LINES } else { DPI };
    let coarsest = artwork
        .bands
        .iter()
        .filter_map(|band| dpi(artwork, band))
        .min();
    if let Some(dpi) = coarsest.filter(|dpi| *dpi < wanted) {
        let finding = on(artwork, Code::ArtworkCoarse).field("file");
        let finding = finding.fact("dpi", Decimal::new(dpi, 0));
        findings.push(finding.fact("wanted", Decimal::new(wanted, 0)));
    }
    if let (Some(text), Some(method)) = (artwork.smallest_text, artwork.method)
        && let Some(least) = smallest_text(method)
        && text.nm < least
    {
        let finding = on(artwork, Code::TextTooSmall).field("smallest_text");
        let finding = finding.fact("height", Fact::LengthIn(text.nm, Unit::Mm));
        let finding = finding.fact("least", Fact::LengthIn(least, Unit::Mm));
        findings.push(finding.fact("method", Fact::word(method)));
    }
}

/// Dots per inch of a raster, in the direction that has fewer; nothing for other forms.
fn dpi(artwork: &Artwork, band: &Band) -> Option<i64> {
    if artwork.form != Some(ArtworkForm::Raster) {
        return None;
    }
    let along = |pixels: Option<u32>, length: Option<Entered>| {
        let (pixels, nm) = (i64::from(pixels?), length?.nm.as_nm());
        (nm > 0).then(|| pixels * Unit::Inch.nanometres() / nm)
    };
    let across = along(artwork.pixels_across, band.width);
    let down = along(artwork.pixels_down, band.height);
    across.into_iter().chain(down).min()
}

/// The height of letters below which a method does not hold them. Common practice, no source.
fn smallest_text(method: ArtworkMethod) -> Option<Length> {
    let tenths = match method {
        ArtworkMethod::Embroidery | ArtworkMethod::Applique => 50,
        ArtworkMethod::Deboss => 30,
        ArtworkMethod::ScreenPrint | ArtworkMethod::DigitalPrint | ArtworkMethod::Sublimation => 20,
        ArtworkMethod::WovenPatch | ArtworkMethod::HeatTransfer => 15,
        ArtworkMethod::Other => return None,
    };
    Some(Length::nm(tenths * 100_000))
}
