//! The three specs of the demo, each a document with its drawings and the originals of its artwork
//! beside it.

use crate::spec::Spec;

/// One whole spec as it is written down.
pub struct Pack {
    document: &'static str,
    /// Name and bytes of every file that the document names.
    pub originals: &'static [(&'static str, &'static [u8])],
}

macro_rules! pack {
    ($(#[$doc:meta])* $name:ident $folder:literal: $($file:literal)*) => {
        $(#[$doc])*
        pub const $name: Pack = Pack {
            document: include_str!(concat!("packs/", $folder, "/spec.json")),
            originals: &[$((
                $file,
                include_bytes!(concat!("packs/", $folder, "/", $file)),
            )),*],
        };
    };
}

pack! {
    /// A women's half-zip of knit fleece with contrast rib.
    HALF_ZIP "half-zip":
    "front.svg" "back.svg" "detail-collar.svg" "detail-neck.svg" "detail-cuff.svg"
    "detail-pocket.svg" "artwork-emblem.svg"
}

pack! {
    /// A child's rain jacket, with nothing to tie in hood or neck.
    RAIN_JACKET "rain-jacket":
    "front.svg" "back.svg" "detail-hood.svg" "detail-closure.svg" "detail-cuff.svg"
    "detail-neck.svg" "artwork-heron.svg"
}

pack! {
    /// Trail shorts with zip pockets, drawcord and a heat-transfer mark.
    TRAIL_SHORTS "trail-shorts":
    "front.svg" "back.svg" "detail-waistband.svg" "detail-pocket.svg" "detail-rise.svg"
    "detail-gusset.svg" "detail-vent.svg" "artwork-mark.svg"
}

impl Pack {
    pub fn spec(&self) -> Spec {
        serde_json::from_str(self.document).expect("a test reads every pack")
    }
}
