//! The garment document: what a draft holds section by section and a revision freezes whole.
//!
//! Fields that a draft may still lack may be absent; the readiness checks say which must be there
//! before it can be published. What is absent is omitted from the canonical form.

mod artwork;
mod care;
mod colourways;
mod construction;
mod declare;
mod drawings;
mod field;
mod header;
mod labels;
mod materials;
mod packing;
mod points;
mod sizes;

pub use artwork::*;
pub use care::*;
pub use colourways::*;
pub use construction::*;
pub(super) use declare::words;
pub use drawings::*;
pub use field::{Fields, Held, Identified, Leaf, Record, Shape, Value, Word, shape_of, shapes_of};
pub use header::*;
pub use labels::*;
pub use materials::*;
pub use packing::*;
pub use points::*;
pub use sizes::*;

/// The version of the document's shape. A reader upgrades older ones in memory only.
///
/// 1: header, sizes, drawings, points, colourways. 2: every section; what format 1 had is as it
/// was, so that its documents are read as they are. 3: the same sections; a revision keeps the
/// translations that were shown with it.
pub const FORMAT: u32 = 3;

macro_rules! sections {
    ($($(#[$doc:meta])* $section:ident $field:ident: $type:ty,)*) => {
        /// One whole spec.
        #[derive(
            Debug, Clone, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize,
        )]
        #[serde(deny_unknown_fields)]
        pub struct Spec {$(
            #[serde(default, skip_serializing_if = "Held::is_absent")]
            pub $field: $type,
        )*}

        /// The parts of a spec that are saved, versioned and shown each by itself.
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord,
            serde::Serialize, serde::Deserialize,
        )]
        #[serde(rename_all = "snake_case")]
        pub enum Section {$(
            $(#[$doc])*
            $section,
        )*}

        impl Section {
            pub const ALL: &'static [Section] = &[$(Section::$section),*];

            /// Its fields, its lists among them, by their names in the document.
            pub fn shapes(self) -> Vec<(&'static str, Shape)> {
                match self {
                    $(Section::$section => shapes_of::<$type>(),)*
                }
            }

            /// The name in addresses, in the database and in the canonical document.
            pub fn name(self) -> &'static str {
                match self {
                    $(Section::$section => stringify!($field),)*
                }
            }
        }
    };
}

sections! {
    Header header: Header,
    Sizes sizes: Sizes,
    Drawings drawings: Drawings,
    Points points: Points,
    Colourways colourways: Colourways,
    Materials materials: Materials,
    Construction construction: Construction,
    Artwork artwork: Artworks,
    Labels labels: Labels,
    Packing packing: Packing,
}

impl Section {
    pub fn from_name(name: &str) -> Option<Section> {
        let mut all = Section::ALL.iter().copied();
        all.find(|section| section.name() == name)
    }
}
