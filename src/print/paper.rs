//! A revision, or a draft, on paper: one PDF in one or two languages, in sheets by who reads them.
//!
//! What a sheet says is worked out here in Rust, as blocks ([`block`]); `paper/paper.typ` only sets
//! them. The blocks go to it as data, so that no word of a brand is ever read as markup.
//!
//! Nothing is looked up: the document, the one before it, and every file that is shown or attached
//! come with the order ([`Parcel`]). Fonts are those of the machine ([`fonts`]).

mod artwork;
mod block;
mod chart;
mod cutting;
mod drawing;
pub mod fonts;
mod identity;
mod inspection;
mod labels;
mod parcel;
mod sewing;
mod typeset;
mod writer;

use serde::{Deserialize, Serialize};

use crate::exchange::revision::Frozen;
use crate::language::Language;
use crate::spec::{Chart, DecimalSign, Digest, Spec, grade};

pub use parcel::{Enclosed, Parcel, Use};

/// The paper that a print is set for, always lying.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    A4,
    Letter,
}

impl Paper {
    pub const ALL: [Paper; 2] = [Paper::A4, Paper::Letter];

    /// In addresses.
    pub fn name(self) -> &'static str {
        match self {
            Paper::A4 => "a4",
            Paper::Letter => "letter",
        }
    }

    /// The standard's own name, which is the same in every language.
    pub fn title(self) -> &'static str {
        match self {
            Paper::A4 => "A4",
            Paper::Letter => "Letter",
        }
    }

    pub fn from_name(name: &str) -> Option<Paper> {
        Paper::ALL.into_iter().find(|paper| paper.name() == name)
    }

    /// Width and height in millimetres: ISO 216, and 11 × 8½ in.
    pub fn size(self) -> (f64, f64) {
        match self {
            Paper::A4 => (297.0, 210.0),
            Paper::Letter => (279.4, 215.9),
        }
    }
}

/// The sheets, by who reads them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    Identity,
    Pattern,
    Cutting,
    Sewing,
    Artwork,
    Labels,
    Inspection,
}

impl Part {
    pub const ALL: [Part; 7] = [
        Part::Identity,
        Part::Pattern,
        Part::Cutting,
        Part::Sewing,
        Part::Artwork,
        Part::Labels,
        Part::Inspection,
    ];

    /// In addresses.
    pub fn name(self) -> &'static str {
        match self {
            Part::Identity => "identity",
            Part::Pattern => "pattern",
            Part::Cutting => "cutting",
            Part::Sewing => "sewing",
            Part::Artwork => "artwork",
            Part::Labels => "labels",
            Part::Inspection => "inspection",
        }
    }

    pub fn from_name(name: &str) -> Option<Part> {
        Part::ALL.into_iter().find(|part| part.name() == name)
    }

    pub fn title(self, t: crate::language::Text) -> crate::language::Message {
        match self {
            Part::Identity => t.say("paper-identity"),
            Part::Pattern => t.say("paper-pattern"),
            Part::Cutting => t.say("paper-cutting"),
            Part::Sewing => t.say("paper-sewing"),
            Part::Artwork => t.say("paper-artwork"),
            Part::Labels => t.say("paper-labels"),
            Part::Inspection => t.say("paper-inspection"),
        }
    }
}

/// What every page says across its top, where it is not for production.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Band {
    Draft,
    /// By the revision of this number, the newest.
    Superseded(u32),
    Withdrawn,
}

/// So many bytes of originals are attached to one print. Whatever is larger is downloaded from the page
/// of the revision, or lies in its archive; the print says so.
pub const MOST_ATTACHED: usize = 48 * 1024 * 1024;

/// How a print is asked for.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Order {
    /// Tags of one language, or of two: what is said by the program stands in both.
    pub languages: Vec<String>,
    pub paper: Paper,
    /// In the order of [`Part::ALL`].
    pub parts: Vec<Part>,
    pub band: Option<Band>,
    /// Whom it is printed for.
    pub factory: String,
    /// `2026-05-04T09:30:00.000Z`.
    pub printed: String,
    /// What the code on every page leads to.
    pub address: String,
    /// Of a revision.
    pub digest: Option<Digest>,
}

/// Why there is no print.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, thiserror::Error)]
#[serde(rename_all = "snake_case")]
pub enum NoPrint {
    /// No font of those named for its script has a letter.
    #[error("no font here has {letters:?}: install {packages}")]
    NoFont {
        /// A few of them.
        letters: String,
        /// What Debian calls the packages with such fonts, parted by spaces; empty where none is
        /// known.
        packages: String,
    },
    /// The order, the document or a file cannot be read: a fault of the program.
    #[error("the print failed: {why}")]
    Failed { why: String },
}

/// What is printed, whichever it is.
pub(crate) struct Edition {
    spec: Spec,
    /// Not of every draft.
    chart: Option<Chart>,
    decimal: DecimalSign,
    /// Of a revision.
    frozen: Option<Frozen>,
}

impl Edition {
    fn of_revision(frozen: Frozen) -> Edition {
        Edition {
            spec: frozen.spec.clone(),
            chart: Some(frozen.chart.clone()),
            decimal: frozen.decimal,
            frozen: Some(frozen),
        }
    }

    fn of_draft(spec: Spec) -> Edition {
        Edition {
            chart: grade(&spec).chart(&spec),
            spec,
            decimal: DecimalSign::Point,
            frozen: None,
        }
    }
}

/// The PDF that a parcel asks for.
pub fn pdf(parcel: &Parcel, fonts: &fonts::Fonts) -> Result<Vec<u8>, NoPrint> {
    let failed = |why: String| NoPrint::Failed { why };
    let languages: Vec<Language> = (parcel.order.languages.iter())
        .filter_map(|tag| Language::from_tag(tag))
        .collect();
    if languages.is_empty() || languages.len() > 2 {
        return Err(failed("one language, or two".to_owned()));
    }
    let revision = |bytes: &[u8]| Frozen::read(bytes).map_err(|error| failed(error.to_string()));
    let edition = match parcel.order.digest {
        Some(_) => Edition::of_revision(revision(&parcel.document)?),
        None => {
            let spec = serde_json::from_slice(&parcel.document);
            Edition::of_draft(spec.map_err(|error| failed(error.to_string()))?)
        }
    };
    let before = match parcel.before.is_empty() {
        true => None,
        false => Some(revision(&parcel.before)?),
    };
    let (document, pictures) =
        writer::Writer::new(parcel, &edition, before.as_ref(), &languages).document()?;
    typeset::typeset(parcel, &document, pictures, &languages, fonts)
}
