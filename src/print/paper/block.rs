//! What a sheet is made of. `paper.typ` sets each kind of block; nothing else goes there.

use serde::Serialize;

/// All that is set.
#[derive(Debug, Serialize)]
pub struct Document {
    pub title: String,
    /// Year, month, day, hour, minute of the print, in UTC.
    pub date: [u16; 5],
    /// The tags of the languages, as `lang` and `region`.
    pub languages: Vec<Tag>,
    /// In millimetres.
    pub paper: (f64, f64),
    /// Across the top of every page.
    pub style: String,
    pub name: String,
    /// The title block: what every page says of itself.
    pub block: Vec<Fact>,
    /// At the foot of every page.
    pub foot: Vec<Fact>,
    pub page: Words,
    pub band: Option<Words>,
    /// What is marked on these sheets, and against what.
    pub marks: Option<Words>,
    /// An SVG.
    pub code: String,
    pub code_label: Words,
    pub sheets: Vec<Sheet>,
    pub attached: Vec<Attached>,
}

#[derive(Debug, Serialize)]
pub struct Tag {
    pub lang: String,
    pub region: Option<String>,
}

#[derive(Debug, Serialize)]
pub struct Attached {
    pub path: String,
    pub media_type: String,
    pub about: String,
}

/// Sheets for one reader; each begins a page.
#[derive(Debug, Serialize)]
pub struct Sheet {
    pub title: Words,
    pub pages: Vec<Page>,
}

/// What begins a page within them.
#[derive(Debug, Default, Serialize)]
pub struct Page {
    /// Larger than the paper, in millimetres, for what has to be at its true size.
    pub size: Option<(f64, f64)>,
    pub blocks: Vec<Block>,
}

/// The same in each language; once where both say the same.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
pub struct Words {
    pub a: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub b: Option<String>,
    /// `b` explains a brand's own words: it is the program's.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub term: bool,
}

impl Words {
    /// What is the same in every language.
    pub fn plain(text: impl Into<String>) -> Words {
        Words {
            a: text.into(),
            ..Words::default()
        }
    }

    pub fn is_empty(&self) -> bool {
        self.a.is_empty() && self.b.is_none()
    }
}

#[derive(Debug, Serialize)]
pub struct Fact {
    pub label: Words,
    pub value: Words,
}

#[derive(Debug, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Block {
    Heading {
        text: Words,
        /// What the heading is known by.
        letter: Option<Letter>,
        mark: bool,
    },
    Facts {
        facts: Vec<Fact>,
        columns: usize,
    },
    Table(Table),
    Figure(Figure),
    /// Several side by side.
    Figures {
        figures: Vec<Figure>,
    },
    True(TrueSize),
    Ruler {
        text: Words,
    },
    Note {
        text: Words,
        strong: bool,
    },
    List {
        items: Vec<Words>,
    },
}

#[derive(Debug, Default, Serialize)]
pub struct Table {
    pub columns: Vec<Column>,
    pub rows: Vec<Vec<Cell>>,
}

#[derive(Debug, Serialize)]
pub struct Column {
    pub head: Words,
    /// In millimetres; of what is left where it is zero.
    pub width: f64,
    pub right: bool,
    pub strong: bool,
}

#[derive(Debug, Default, Serialize)]
pub struct Cell {
    pub letter: Option<Letter>,
    pub text: Words,
    /// What it was before, struck through.
    pub old: Option<String>,
    /// It changed: bold and underlined.
    pub changed: bool,
    /// Beneath, small.
    pub small: Vec<Words>,
    pub mark: bool,
    pub strong: bool,
    pub patch: Option<Patch>,
}

/// A colour's square.
#[derive(Debug, Serialize)]
pub struct Patch {
    /// `#rrggbb`; a square with a diagonal where there is none.
    pub fill: Option<String>,
    /// Crossed out: this colourway does without the part.
    pub none: bool,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Letter {
    pub text: String,
    /// `point`, `part`, `material`, `callout`, `artwork`, `label`.
    pub shape: &'static str,
}

/// A drawing with what is marked on it.
#[derive(Debug, Serialize)]
pub struct Figure {
    pub title: Words,
    pub alt: String,
    pub picture: String,
    /// Width over height.
    pub aspect: f64,
    /// At most so high, in millimetres.
    pub height: f64,
    /// An SVG over the drawing: lines, arrow heads, circles.
    pub overlay: String,
    pub letters: Vec<Spot>,
}

/// A letter on a drawing, its middle in parts of the width and of the height.
#[derive(Debug, Serialize)]
pub struct Spot {
    pub letter: Letter,
    pub x: f64,
    pub y: f64,
    pub mark: bool,
}

/// A picture in its true size, in millimetres.
#[derive(Debug, Serialize)]
pub struct TrueSize {
    pub picture: Option<String>,
    pub alt: String,
    pub width: f64,
    pub height: f64,
    pub caption: Words,
}
