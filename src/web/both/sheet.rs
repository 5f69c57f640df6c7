//! What a revision says, ready to be read: drawings with their letters, the size chart, how to
//! measure, parts and colourways. Every number is written here, once, as it stands on the page.

use std::collections::{BTreeMap, BTreeSet};

use super::patch::{Patch, patch};
use crate::exchange::revision::Frozen;
use crate::exchange::thread::{Kind, State, Thread};
use crate::language::{Text, other_unit, shown};
use crate::spec::change::{self, changes, touched};
use crate::spec::chart::Row;
use crate::spec::document::{Drawing, Point};
use crate::spec::{DecimalSign, Item, ItemId, Length, Unit};

pub struct Sheet {
    pub drawings: Vec<Figure>,
    pub sizes: Vec<SizeHead>,
    pub rows: Vec<PointRow>,
    pub colourways: Vec<String>,
    pub parts: Vec<PartRow>,
    pub unit: Unit,
    /// The unit of the reference values.
    pub other: Unit,
    /// How many changes there are since the revision that the reader's factory acknowledged.
    pub changed: usize,
}

pub struct Figure {
    pub title: String,
    pub file: String,
    pub width: u32,
    pub height: u32,
    /// Of the letters' coordinates, 10 000 being the width.
    pub box_height: u32,
    pub marks: Vec<Mark>,
}

/// A letter on a drawing.
pub struct Mark {
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    pub is_part: bool,
    pub x: u32,
    pub y: u32,
    /// `!` for an open must-fix, else `?` for an open question.
    pub flag: Option<char>,
    /// The first of its item on the page: what the row's letter leads to.
    pub first: bool,
}

pub struct SizeHead {
    pub code: String,
    pub label: String,
    pub base: bool,
}

/// One line of the size chart, with how to measure it.
pub struct PointRow {
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    pub basis: String,
    pub key: bool,
    pub critical: bool,
    pub cells: Vec<Value>,
    pub minus: Value,
    pub plus: Value,
    pub start: String,
    pub end: String,
    /// Path, stretched or relaxed, along which direction; and the brand's own words.
    pub how: String,
    pub note: String,
    pub about: About,
}

/// A length in the master unit, and in the other one as a reference.
pub struct Value {
    pub value: String,
    pub other: String,
    /// What it was in the revision that was acknowledged, if that was something else.
    pub old: Option<String>,
    pub base: bool,
    /// `−3/8 +1/2`: the tolerance of this size, where it is not the point's.
    pub tolerance: Option<String>,
}

pub struct PartRow {
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    pub cells: Vec<PartCell>,
    pub about: About,
}

/// A part in one colourway.
pub struct PartCell {
    /// `None`: empty, which is not *none*.
    pub patch: Option<Patch>,
    /// What it was in the revision that was acknowledged, if that was something else.
    pub old: Option<String>,
}

/// What else is known of an item.
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
pub struct Beside<'a> {
    /// The revision that the reader's factory acknowledged last, when it is another one.
    pub acknowledged: Option<&'a Frozen>,
    pub threads: &'a [Thread],
}

impl Sheet {
    pub fn of(t: Text, frozen: &Frozen, beside: Beside<'_>) -> Sheet {
        Writer::new(t, frozen, beside).sheet()
    }

    /// A chart of so few sizes never scrolls sideways on a wide screen.
    pub fn fits(&self) -> bool {
        self.sizes.len() <= 8
    }

    /// The figures as one text, for the digest of what was on the screen: every line of the chart
    /// and every part as they are read, without what changes around them.
    pub fn figures(&self) -> String {
        let mut lines = Vec::new();
        let heads = self.sizes.iter().map(|size| size.code.as_str());
        lines.push(format!("{}\t{}", self.unit.symbol(), tabs(heads)));
        for row in &self.rows {
            let values = row.cells.iter().flat_map(|cell| {
                let tolerance = cell.tolerance.as_deref();
                [Some(cell.value.as_str()), tolerance].into_iter().flatten()
            });
            let about = [&row.letter, &row.name, &row.basis, &row.start, &row.end];
            let how = [&row.how, &row.note, &row.minus.value, &row.plus.value];
            let text = about.into_iter().chain(how).map(String::as_str);
            let marks = [("key", row.key), ("critical", row.critical)];
            let marks = marks.into_iter().filter(|(_, set)| *set);
            lines.push(tabs(text.chain(marks.map(|(name, _)| name)).chain(values)));
        }
        lines.push(tabs(self.colourways.iter().map(String::as_str)));
        for part in &self.parts {
            let cells = part.cells.iter();
            let cells = cells.filter_map(|cell| cell.patch.as_ref());
            let cells = cells.flat_map(|patch| [&patch.name, &patch.reference]);
            let text = [&part.letter, &part.name].into_iter().chain(cells);
            lines.push(tabs(text.map(String::as_str)));
        }
        lines.join("\n")
    }
}

fn tabs<'a>(texts: impl Iterator<Item = &'a str>) -> String {
    texts.collect::<Vec<_>>().join("\t")
}

struct Writer<'a> {
    t: Text,
    frozen: &'a Frozen,
    /// The acknowledged revision, while values can be compared in place: in the same unit.
    old: Option<&'a Frozen>,
    /// Open threads by their item: how many wait for a word, and how many are must-fixes.
    open: BTreeMap<&'a ItemId, (usize, usize)>,
    unit: Unit,
    other: Unit,
    sign: DecimalSign,
    changed: usize,
    touched: BTreeSet<ItemId>,
    marked: BTreeSet<&'a ItemId>,
}

impl<'a> Writer<'a> {
    fn new(t: Text, frozen: &'a Frozen, beside: Beside<'a>) -> Self {
        let unit = frozen.chart.unit;
        let version = |frozen: &'a Frozen| change::Version {
            spec: &frozen.spec,
            chart: Some(&frozen.chart),
        };
        let acknowledged = beside.acknowledged;
        let list = acknowledged.map(|old| changes(version(old), version(frozen)));
        let list = list.unwrap_or_default();
        let drawings = frozen.spec.drawings.drawings.iter();
        let markers = drawings.flat_map(|drawing| &drawing.markers);
        Self {
            t,
            frozen,
            old: acknowledged.filter(|old| old.chart.unit == unit),
            open: open(beside.threads, frozen.number),
            unit,
            other: other_unit(unit),
            sign: frozen.decimal,
            changed: list.len(),
            touched: touched(&list),
            marked: markers.map(|marker| &marker.item).collect(),
        }
    }

    fn sheet(&self) -> Sheet {
        let spec = &self.frozen.spec;
        let chart = &self.frozen.chart;
        let sizes = chart.sizes.iter().filter_map(|id| spec.size(id));
        let mut seen = BTreeSet::new();
        let drawings = spec.drawings.drawings.iter();
        let points = spec.points.points.iter();
        Sheet {
            drawings: drawings.map(|it| self.figure(it, &mut seen)).collect(),
            sizes: sizes
                .map(|size| SizeHead {
                    code: size.code.clone(),
                    label: size.label.clone(),
                    base: size.id == chart.base_size,
                })
                .collect(),
            rows: points
                .filter_map(|point| Some(self.point(point, chart.row(&point.id)?)))
                .collect(),
            colourways: spec
                .colourways
                .colourways
                .iter()
                .map(|colourway| format!("{} {}", colourway.code, colourway.name))
                .collect(),
            parts: self.parts(),
            unit: self.unit,
            other: self.other,
            changed: self.changed,
        }
    }

    fn figure(&self, drawing: &'a Drawing, seen: &mut BTreeSet<&'a ItemId>) -> Figure {
        let scale = |part: u16, whole: u32| -> u32 {
            let width = u64::from(drawing.width.max(1));
            let scaled = u64::from(part) * u64::from(whole) / width;
            u32::try_from(scaled).unwrap_or(u32::MAX)
        };
        let marks = drawing.markers.iter().filter_map(|marker| {
            let item = self.frozen.spec.item(&marker.item)?;
            let about = self.about(&marker.item);
            Some(Mark {
                first: seen.insert(&marker.item),
                item: marker.item.clone(),
                letter: item.letter().to_owned(),
                name: item.name().to_owned(),
                is_part: matches!(item, Item::Part(_)),
                x: u32::from(marker.x),
                y: scale(marker.y, drawing.height),
                flag: match (about.must_fixes, about.questions) {
                    (0, 0) => None,
                    (0, _) => Some('?'),
                    _ => Some('!'),
                },
            })
        });
        let view = self.t.name(&drawing.view).to_string();
        Figure {
            title: match drawing.title.as_str() {
                "" => view,
                title => title.to_owned(),
            },
            file: drawing.file.to_string(),
            width: drawing.width,
            height: drawing.height,
            box_height: scale(10_000, drawing.height),
            marks: marks.collect(),
        }
    }

    fn point(&self, point: &Point, row: &Row) -> PointRow {
        let t = self.t;
        let old = self.old.map(|old| (old, old.chart.row(&point.id)));
        let old_row = old.and_then(|(_, row)| row);
        let columns = self.frozen.chart.sizes.iter().zip(&row.values);
        let cells = columns.map(|(size, value)| {
            let before = old.and_then(|(old, _)| old.chart.value(&point.id, size));
            let before = before.zip(old_row.map(|row| row.step));
            let before = before.filter(|(before, _)| before != value);
            Value {
                value: self.written(*value, row.step),
                other: self.reference(*value),
                old: before.map(|(before, step)| self.written(before, step)),
                base: *size == self.frozen.chart.base_size,
                tolerance: row.tolerances.get(size).map(|allowed| {
                    let (minus, plus) = (self.exact(allowed.minus), self.exact(allowed.plus));
                    format!("−{minus} +{plus}")
                }),
            }
        });
        let how = &point.how;
        let mut words: Vec<String> = Vec::new();
        words.extend(how.path.map(|path| t.name(&path).to_string()));
        words.push(
            t.say(if how.stretched {
                "how-stretched"
            } else {
                "how-relaxed"
            })
            .to_string(),
        );
        words.extend(point.direction.map(|it| t.name(&it).to_string()));
        PointRow {
            item: point.id.clone(),
            letter: point.letter.clone(),
            name: point.name.clone(),
            basis: point
                .basis
                .map(|basis| t.name(&basis).to_string())
                .unwrap_or_default(),
            key: point.key,
            critical: point.critical,
            cells: cells.collect(),
            minus: self.tolerance('−', row.minus, old_row.map(|row| row.minus)),
            plus: self.tolerance('+', row.plus, old_row.map(|row| row.plus)),
            start: how.start.clone(),
            end: how.end.clone(),
            how: words.join(" · "),
            note: how.note.clone(),
            about: self.about(&point.id),
        }
    }

    fn tolerance(&self, side: char, now: Length, before: Option<Length>) -> Value {
        let exact = |length: Length| format!("{side}{}", self.exact(length));
        let other = now.tolerance_in(self.other);
        let other = other.show(self.other, self.other.fine_step(), self.sign);
        Value {
            value: exact(now),
            other: format!("{side}{other}"),
            old: before.filter(|before| *before != now).map(exact),
            base: false,
            tolerance: None,
        }
    }

    /// With as many decimals as the finest step, so that a column lines up; more where it needs.
    fn exact(&self, length: Length) -> String {
        let fine = self.unit.fine_step();
        match length.is_multiple_of(fine) {
            true => length.show(self.unit, fine, self.sign),
            false => length.exact(self.unit, self.sign),
        }
    }

    fn written(&self, value: Length, step: Length) -> String {
        shown(value.show(self.unit, step, self.sign))
    }

    fn reference(&self, value: Length) -> String {
        shown(value.show(self.other, self.other.fine_step(), self.sign))
    }

    fn parts(&self) -> Vec<PartRow> {
        let spec = &self.frozen.spec;
        let matrix = &spec.colourways;
        let rows = matrix.parts.iter().map(|part| PartRow {
            item: part.id.clone(),
            letter: part.letter.clone(),
            name: part.name.clone(),
            cells: matrix
                .colourways
                .iter()
                .map(|colourway| self.cell(&colourway.id, &part.id))
                .collect(),
            about: self.about(&part.id),
        });
        rows.collect()
    }

    fn cell(&self, colourway: &ItemId, part: &ItemId) -> PartCell {
        let matrix = &self.frozen.spec.colourways;
        let old = self.old.and_then(|old| {
            let was_there = old.spec.item(part).is_some() && old.spec.item(colourway).is_some();
            let before = old.spec.colourways.cell(colourway, part);
            let differs = before != matrix.cell(colourway, part);
            (was_there && differs).then(|| self.t.cell(before, &old.spec))
        });
        PartCell {
            patch: patch(self.t, matrix, colourway, part),
            old,
        }
    }

    fn about(&self, item: &ItemId) -> About {
        let (questions, must_fixes) = self.open.get(item).copied().unwrap_or_default();
        About {
            marked: self.marked.contains(item),
            questions,
            must_fixes,
            new: self.old.is_some_and(|old| old.spec.item(item).is_none()),
            changed: self.touched.contains(item),
        }
    }
}

fn open(threads: &[Thread], number: u32) -> BTreeMap<&ItemId, (usize, usize)> {
    let mut open = BTreeMap::<_, (usize, usize)>::new();
    for thread in threads {
        let waits = matches!(thread.state, State::Open | State::Answered);
        let question = thread.kind != Kind::MustFix && waits;
        let of_item = open.entry(&thread.item).or_default();
        of_item.0 += usize::from(question);
        of_item.1 += usize::from(thread.is_must_fix_open_in(number));
    }
    open
}
