//! Artwork at its true size, and where it goes.

use super::declare::{records, words};
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::Entered;

words! {
    ArtworkMethod "method" {
        ScreenPrint "screen_print",
        HeatTransfer "heat_transfer",
        DigitalPrint "digital_print",
        Sublimation "sublimation",
        Embroidery "embroidery",
        WovenPatch "woven_patch",
        Applique "applique",
        Deboss "deboss",
        Other "other",
    }

    ArtworkForm "artwork-form" {
        /// Lines and areas without a resolution.
        Vector "vector",
        Raster "raster",
        /// Stitches for an embroidery machine.
        Stitches "stitches",
    }

    /// A named point of the artwork's outline.
    Anchor "anchor" {
        Top "top",
        Bottom "bottom",
        Left "left",
        Right "right",
        Centre "centre",
    }
}

records! {
    record Artworks {
        artworks: Vec<Artwork>,
    }

    item Artwork {
        letter: String,
        name: String,
        method: Option<ArtworkMethod>,
        form: Option<ArtworkForm>,
        /// The original, kept byte for byte.
        file: Option<Digest>,
        /// What is shown of an original that cannot be.
        preview: Option<Digest>,
        /// Of a raster.
        pixels_across: Option<u32>,
        pixels_down: Option<u32>,
        /// Lines and text only, without tones.
        line_art: bool,
        /// Live text or linked pictures in the original.
        unsafe_text: bool,
        /// The height of the smallest letters, at true size.
        smallest_text: Option<Entered>,
        /// Inks or threads: rows of the colourway matrix.
        colours: Vec<ItemId>,
        /// The drawing that it is placed on.
        drawing: Option<ItemId>,
        /// Size and place; one band where all sizes are alike.
        bands: Vec<Band>,
        note: String,
    }

    /// Neighbouring sizes that have the artwork alike.
    group Band {
        from: Option<ItemId>,
        to: Option<ItemId>,
        width: Option<Entered>,
        height: Option<Entered>,
        /// Two, each from a line of the garment to a point of the artwork.
        distances: Vec<Distance>,
    }

    group Distance {
        /// A line of the construction.
        line: Option<ItemId>,
        anchor: Option<Anchor>,
        distance: Option<Entered>,
    }
}
