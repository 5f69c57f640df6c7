//! What a revision says, ready to be read: every section that it has, in the order of the sheets
//! that a factory works from. Every number is written here, once, as it stands on the page.

mod artwork;
mod colourways;
mod construction;
pub mod drawings;
mod dyeing;
mod labels;
mod made;
mod materials;
mod packing;
mod points;
mod sizes;

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use crate::exchange::revision::Frozen;
use crate::exchange::thread::{Kind, State, Thread};
use crate::language::{Beside, FieldWords, Text, Worded, Words, other_unit, shown};
use crate::spec::change::{changes, touched};
use crate::spec::document::{Edges, Exemption, Fields, Leaf, Record};
use crate::spec::{Item, ItemId, Length, Unit};
use crate::store::StyleFile;
use crate::web::plates::Bench;
use crate::web::shape;

use artwork::ArtworkCard;
use colourways::{ColourwayHead, PartRow};
use construction::{CalloutRow, LineRow};
use drawings::Figure;
use dyeing::Dyeing;
use labels::{CareLine, CompositionText, LabelCard};
pub use made::Sheets;
use materials::MaterialRow;
use packing::Packing;
use points::{LengthRow, PointRow};
use sizes::Bodies;

/// All that is said here is in the digest of what was on the screen; what changes around it is not.
#[derive(Serialize)]
pub struct Sheet {
    /// The title block, style number and name aside.
    pub header: Vec<Fact>,
    pub exemptions: Vec<Exemption>,
    pub drawings: Vec<Figure>,
    /// The columns of the chart.
    pub sizes: Vec<SizeHead>,
    pub rows: Vec<PointRow>,
    /// Of the second axis, where there is one.
    pub lengths: Vec<LengthRow>,
    pub bodies: Option<Bodies>,
    pub colourways: Vec<ColourwayHead>,
    pub parts: Vec<PartRow>,
    pub dyeing: Option<Dyeing>,
    pub materials: Vec<MaterialRow>,
    pub lines: Vec<LineRow>,
    pub callouts: Vec<CalloutRow>,
    pub artworks: Vec<ArtworkCard>,
    pub care: Vec<CareLine>,
    /// What else there is to say of the care.
    pub care_note: String,
    pub compositions: Vec<CompositionText>,
    pub labels: Vec<LabelCard>,
    pub packing: Packing,
    pub unit: Unit,
    /// The unit of the reference values.
    pub other: Unit,
    /// How many changes there are since the revision that the reader's factory acknowledged.
    #[serde(skip)]
    pub changed: usize,
}

#[derive(Serialize)]
pub struct SizeHead {
    pub code: String,
    pub label: String,
    pub base: bool,
}

/// A length in the master unit, and in the other one as a reference.
#[derive(Serialize)]
pub struct Value {
    pub value: String,
    pub other: String,
    /// What it was in the revision that was acknowledged, if that was something else.
    #[serde(skip)]
    pub old: Option<String>,
    pub base: bool,
    /// `−3/8 +1/2`: the tolerance of this size, where it is not the point's.
    pub tolerance: Option<String>,
}

/// What something is called, and what it is.
#[derive(Serialize)]
pub struct Fact {
    pub label: String,
    pub value: String,
    pub beside: Option<Beside>,
}

impl Fact {
    pub fn of(t: Text, frozen: &Frozen, said: FieldWords) -> Fact {
        let beside = said.typed.then(|| t.beside(frozen, &said.value));
        Fact {
            beside: beside.flatten(),
            label: said.label,
            value: said.value,
        }
    }
}

/// What one size has.
#[derive(Serialize)]
pub struct OfSize {
    pub code: String,
    pub value: String,
}

/// How an item is known, and what else is known of it.
#[derive(Serialize)]
pub struct Head {
    pub item: ItemId,
    /// May be empty.
    pub letter: String,
    pub name: String,
    pub beside: Option<Beside>,
    /// The shape that its letter has (`Item::shape`).
    #[serde(skip)]
    pub shape: &'static str,
    #[serde(skip)]
    pub about: About,
}

#[derive(Default)]
pub struct About {
    /// Its letter stands on a drawing.
    pub marked: bool,
    /// Threads that wait for a word: questions, suggestions, concession requests.
    pub questions: usize,
    pub must_fixes: usize,
    /// It was not in the revision that was acknowledged.
    pub new: bool,
    pub changed: bool,
}

/// What a sheet shows beside what the revision itself says.
#[derive(Default, Clone, Copy)]
pub struct Around<'a> {
    /// The revision that the reader's factory acknowledged last, when it is another one.
    pub acknowledged: Option<&'a Frozen>,
    pub threads: &'a [Thread],
    /// What is known of the style's files.
    pub files: &'a [StyleFile],
}

impl Sheet {
    pub fn of(t: Text, frozen: &Frozen, around: Around<'_>) -> Sheet {
        Writer::new(t, frozen, around).sheet()
    }

    /// A chart of so few sizes never scrolls sideways on a wide screen.
    pub fn fits(&self) -> bool {
        self.sizes.len() <= 8
    }

    /// What the drawings show that a reader may want explained: the shapes of letters, `line` for
    /// dimension lines, `ring` for circles that another drawing shows larger.
    pub fn legend(&self) -> Vec<&'static str> {
        let figures = || self.drawings.iter();
        let shown = |shape: &str| {
            let mut marks = figures().flat_map(|figure| &figure.marks);
            marks.any(|mark| mark.shape == shape)
        };
        let mut legend: Vec<&str> = shape::LETTERS.into_iter().filter(|it| shown(it)).collect();
        if figures().any(|figure| !figure.lines.is_empty()) {
            legend.push("line");
        }
        if figures().any(|figure| !figure.circles.is_empty()) {
            legend.push("ring");
        }
        legend
    }

    /// All that is said as one text, for the digest of what was on the screen.
    pub fn figures(&self) -> String {
        serde_json::to_string(self).expect("texts and numbers are written without a fault")
    }
}

struct Writer<'a> {
    t: Text,
    frozen: &'a Frozen,
    words: Words<'a>,
    /// The acknowledged revision, while values can be compared in place: in the same unit.
    old: Option<&'a Frozen>,
    /// Every item of it.
    known: BTreeSet<&'a ItemId>,
    open: Open,
    files: &'a [StyleFile],
    unit: Unit,
    other: Unit,
    changed: usize,
    touched: BTreeSet<ItemId>,
    marked: BTreeSet<&'a ItemId>,
}

impl<'a> Writer<'a> {
    fn new(t: Text, frozen: &'a Frozen, around: Around<'a>) -> Self {
        let unit = frozen.chart.unit;
        let acknowledged = around.acknowledged;
        let list = acknowledged.map(|old| changes(old.version(), frozen.version()));
        let list = list.unwrap_or_default();
        let drawings = frozen.spec.drawings.drawings.iter();
        let markers = drawings.flat_map(|drawing| &drawing.markers);
        let known = acknowledged.into_iter().flat_map(|old| old.spec.items());
        Self {
            t,
            frozen,
            words: t.words(&frozen.spec, frozen.decimal),
            old: acknowledged.filter(|old| old.chart.unit == unit),
            known: known.map(Item::id).collect(),
            open: open(around.threads, frozen.number),
            files: around.files,
            unit,
            other: other_unit(unit),
            changed: list.len(),
            touched: touched(&list),
            marked: markers.map(|marker| &marker.item).collect(),
        }
    }

    fn sheet(&self) -> Sheet {
        let spec = &self.frozen.spec;
        let chart = &self.frozen.chart;
        let sizes = chart.sizes.iter().filter_map(|id| spec.size(id));
        let sizes = sizes.map(|size| SizeHead {
            code: size.code.clone(),
            label: size.label.clone(),
            base: size.id == chart.base_size,
        });
        Sheet {
            header: self.header(),
            exemptions: spec.header.exemptions.clone(),
            drawings: self.drawings(),
            sizes: sizes.collect(),
            rows: self.points(),
            lengths: self.lengths(),
            bodies: self.bodies(),
            colourways: self.colourways(),
            parts: self.parts(),
            dyeing: self.dyeing(),
            materials: self.materials(),
            lines: self.lines(),
            callouts: self.callouts(),
            artworks: self.artworks(),
            care: self.care(),
            care_note: spec.labels.care.note.clone(),
            compositions: self.compositions(),
            labels: self.labels(),
            packing: self.packing(),
            unit: self.unit,
            other: self.other,
            changed: self.changed,
        }
    }

    fn header(&self) -> Vec<Fact> {
        let header = &self.frozen.spec.header;
        let mut fields = header.fields();
        self.take(&mut fields, &["number", "name", "exemptions", "edges"]);
        let mut facts = self.facts(&fields);
        let measured = self.t.field("measured").to_string();
        if let (Some(state), Some(fact)) = (
            header.measured,
            facts.iter_mut().find(|fact| fact.label == measured),
        ) {
            let edges = header.edges.unwrap_or(Edges::SeamToSeam);
            fact.value = self
                .t
                .say("revision-measured")
                .with("state", self.t.name(&state))
                .with("edges", self.t.name(&edges))
                .to_string();
        }
        facts
    }

    /// Takes fields out by their names, and says them.
    fn take(&self, fields: &mut Fields, names: &[&str]) -> Vec<Fact> {
        let wanted = |name: &str| {
            names.iter().any(|it| match it.strip_suffix('.') {
                // All of a nested record.
                Some(record) => name.split('.').next() == Some(record),
                None => *it == name,
            })
        };
        let taken = fields.extract_if(.., |(name, _)| wanted(name));
        let taken: Fields = taken.collect();
        self.facts(&taken)
    }

    fn facts(&self, fields: &Fields) -> Vec<Fact> {
        let words = self.words.fields(fields).into_iter();
        words.map(|it| Fact::of(self.t, self.frozen, it)).collect()
    }

    /// What a value of a field says; nothing for what is no value.
    fn phrase(&self, leaf: &impl Leaf, field: &str) -> Option<String> {
        Some(self.words.value(&leaf.value()?, Some(field)))
    }

    fn beside(&self, words: &str) -> Option<Beside> {
        self.t.beside(self.frozen, words)
    }

    fn worded(&self, words: &str) -> Worded {
        self.t.worded(self.frozen, words)
    }

    fn head(&self, item: Item<'_>) -> Head {
        Head {
            item: item.id().clone(),
            letter: item.letter().to_owned(),
            name: item.name().to_owned(),
            beside: self.beside(item.name()),
            shape: item.shape(),
            about: self.about(item.id()),
        }
    }

    fn about(&self, item: &ItemId) -> About {
        let (questions, must_fixes) = self.open.get(item).copied().unwrap_or_default();
        About {
            marked: self.marked.contains(item),
            questions,
            must_fixes,
            new: self.old.is_some() && !self.known.contains(item),
            changed: self.touched.contains(item),
        }
    }

    fn size_code(&self, size: &ItemId) -> String {
        let found = self.frozen.spec.size(size);
        found.map_or(size.as_str(), |it| &it.code).to_owned()
    }

    /// Draws to scale: by the frozen chart, with the frozen compositions.
    fn at_bench<T>(&self, draw: impl FnOnce(Bench<'_>) -> T) -> T {
        let frozen = self.frozen;
        draw(Bench {
            t: self.t,
            style: &frozen.style,
            spec: &frozen.spec,
            sign: frozen.decimal,
            values: &|point, size| frozen.chart.value(point, size),
            compose: &|market, language| {
                let mut texts = frozen.compositions.iter();
                let text = texts.find(|it| it.market == market && it.language == language)?;
                Some(text.text.clone())
            },
            files: self.files,
        })
    }

    fn written(&self, value: Length, step: Length) -> String {
        shown(value.show(self.unit, step, self.frozen.decimal))
    }

    fn reference(&self, value: Length) -> String {
        let text = value.show(self.other, self.other.fine_step(), self.frozen.decimal);
        shown(text)
    }
}

impl About {
    /// `!` for an open must-fix, else `?` for an open question.
    pub fn flag(&self) -> Option<char> {
        match (self.must_fixes, self.questions) {
            (0, 0) => None,
            (0, _) => Some('?'),
            _ => Some('!'),
        }
    }
}

/// Open threads by their item: how many wait for a word, and how many are must-fixes.
type Open = BTreeMap<ItemId, (usize, usize)>;

fn open(threads: &[Thread], number: u32) -> Open {
    let mut open = Open::new();
    for thread in threads {
        let waits = matches!(thread.state, State::Open | State::Answered);
        let question = thread.kind != Kind::MustFix && waits;
        let of_item = open.entry(thread.item.clone()).or_default();
        of_item.0 += usize::from(question);
        of_item.1 += usize::from(thread.is_must_fix_open_in(number));
    }
    open
}

#[cfg(test)]
mod tests;
