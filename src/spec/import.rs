//! From the rows of a sheet to points of measure and materials.
//!
//! Which column holds which field is guessed from the heads and can be chosen; every cell is then
//! read as if it had been typed into the draft. A row with a cell that cannot be read is left out
//! whole, and the cell is named. Rows are told by their letter, else by their name; an empty cell
//! leaves what was there, and nothing that the sheet does not name is touched.

mod heads;
mod materials;
mod points;
mod words;

use super::Spec;
use super::document::{Section, Size};
use super::id::ItemId;
use super::rule::NotAGrade;
use super::sheet::{Cell, Place, Sheet};
use super::units::{Entered, NotALength, Unit};

pub use heads::{below, guess, guess_unit};

/// What a column holds.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Field {
    Letter,
    Name,
    Start,
    End,
    /// How to measure in one text.
    How,
    Basis,
    Key,
    Critical,
    Step,
    Minus,
    Plus,
    /// Both tolerances in one cell.
    Tolerance,
    Grade,
    Base,
    Kind,
    Composition,
    Supplier,
    Reference,
    Placement,
    Mass,
    Width,
    /// What a garment takes.
    Amount,
    /// What the amount counts.
    Measured,
    /// In percent; on which basis, a sheet does not tell.
    Wastage,
    /// The value, or the consumption, of a size.
    Size(ItemId),
}

impl Field {
    const PLAIN: [(Field, &'static str); 24] = [
        (Field::Letter, "letter"),
        (Field::Name, "name"),
        (Field::Start, "start"),
        (Field::End, "end"),
        (Field::How, "how"),
        (Field::Basis, "basis"),
        (Field::Key, "key"),
        (Field::Critical, "critical"),
        (Field::Step, "step"),
        (Field::Minus, "minus"),
        (Field::Plus, "plus"),
        (Field::Tolerance, "tolerance"),
        (Field::Grade, "grade"),
        (Field::Base, "base"),
        (Field::Kind, "kind"),
        (Field::Composition, "composition"),
        (Field::Supplier, "supplier"),
        (Field::Reference, "reference"),
        (Field::Placement, "placement"),
        (Field::Mass, "mass"),
        (Field::Width, "width"),
        (Field::Amount, "amount"),
        (Field::Measured, "measured"),
        (Field::Wastage, "wastage"),
    ];

    /// The name in forms: a size's is its id with `size.` before it.
    pub fn code(&self) -> String {
        match self {
            Field::Size(id) => format!("size.{id}"),
            plain => {
                let found = Field::PLAIN.iter().find(|(field, _)| field == plain);
                found.map_or_else(String::new, |(_, code)| (*code).to_owned())
            }
        }
    }

    /// The fields that a sheet may hold for this section of the spec; none where nothing is
    /// imported.
    pub fn all(section: Section, spec: &Spec) -> Vec<Field> {
        let range = match section {
            Section::Points => 0..14,
            Section::Materials => 14..24,
            _ => return Vec::new(),
        };
        let both = (section == Section::Materials).then(|| Field::PLAIN[..2].iter());
        let plain = both.into_iter().flatten().chain(&Field::PLAIN[range]);
        let sizes = spec.sizes.sizes.iter();
        plain
            .map(|(field, _)| field.clone())
            .chain(sizes.map(|size| Field::Size(size.id.clone())))
            .collect()
    }
}

/// Which column holds which field.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Columns {
    /// The row of the heads, counted from 0; the rows below it are read. Without one all are.
    pub head: Option<u32>,
    /// In the order of the sheet's columns; nothing for one that is left out.
    pub fields: Vec<Option<Field>>,
}

impl Columns {
    fn of(&self, field: &Field) -> Option<u32> {
        let found = self.fields.iter().position(|it| it.as_ref() == Some(field));
        found.and_then(|column| u32::try_from(column).ok())
    }

    /// A field that two columns are said to hold.
    pub fn twice(&self) -> Option<&Field> {
        let mut held: Vec<&Field> = self.fields.iter().flatten().collect();
        held.sort();
        held.windows(2)
            .find(|pair| pair[0] == pair[1])
            .map(|pair| pair[0])
    }

    /// The sizes that no column holds, where some hold the values of others: no point could be
    /// read. The base size may stand alone.
    pub fn sizes_missing<'s>(&self, spec: &'s Spec) -> Vec<&'s Size> {
        let held = |size: &&Size| self.of(&Field::Size(size.id.clone())).is_some();
        let sizes = || spec.sizes.sizes.iter();
        let base = |size: &Size| Some(&size.id) == spec.header.base_size.as_ref();
        match sizes().filter(held).all(base) {
            true => Vec::new(),
            false => sizes().filter(|size| !held(size)).collect(),
        }
    }

    /// Whether rows can be told from each other at all.
    pub fn tells_rows(&self) -> bool {
        self.of(&Field::Letter).is_some() || self.of(&Field::Name).is_some()
    }
}

/// What came of a sheet.
#[derive(Debug, Clone)]
pub struct Outcome {
    /// The draft with what was read.
    pub spec: Spec,
    /// How many rows were read.
    pub rows: usize,
    /// What was not: the row of each is left out.
    pub left: Vec<Trouble>,
    /// What was read and should be looked at.
    pub told: Vec<Trouble>,
}

/// What is wrong with a cell.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Trouble {
    pub place: Place,
    /// What stands there.
    pub shown: String,
    pub why: Why,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Why {
    Length(NotALength),
    Grade(NotAGrade),
    NotANumber,
    /// None of the words that the field takes.
    UnknownWord(Field),
    /// Not `80% cotton 20% polyester`.
    Composition,
    Fibre(String),
    Date,
    Fault,
    Uncomputed,
    /// Part of a merged area that begins there.
    Merged(Place),
    Negative,
    LongText,
    /// The row that had it first.
    LetterTwice(Place),
    /// Neither letter nor name.
    Nameless,
    /// A name and nothing else: a heading within the chart.
    OnlyAName,
    /// Some sizes have values, these have none.
    SizesMissing(Vec<String>),
    /// The chart would round it.
    NotAMultiple(Entered),
    /// The base value is not the value of the base size.
    BaseDiffers,
    /// Told: the last value of a formula was taken.
    Formula,
    /// Told: the values were taken, which this rule does not give.
    RuleDiffers,
}

/// The longest text of a field, in characters: that of the draft's own forms.
const LONGEST: usize = 500;

/// Reads a sheet into a section of the draft.
///
/// `unit` is that of numbers without one, in columns whose head names none; `new_id` makes the ids of what is added. Of a section
/// that nothing is imported into, nothing is read.
pub fn read(
    sheet: &Sheet,
    section: Section,
    spec: &Spec,
    columns: &Columns,
    unit: Option<Unit>,
    new_id: &mut dyn FnMut() -> ItemId,
) -> Outcome {
    let mut reader = Reader {
        sheet,
        columns,
        unit,
        row: 0,
        left: Vec::new(),
        told: Vec::new(),
    };
    let (spec, rows) = match section {
        Section::Points => points::read(&mut reader, spec, new_id),
        Section::Materials => materials::read(&mut reader, spec, new_id),
        _ => (spec.clone(), 0),
    };
    let (mut left, mut told) = (reader.left, reader.told);
    left.sort_by_key(|trouble| trouble.place);
    told.sort_by_key(|trouble| trouble.place);
    Outcome {
        spec,
        rows,
        left,
        told,
    }
}

/// Reads the cells of one row after the other.
struct Reader<'a> {
    sheet: &'a Sheet,
    columns: &'a Columns,
    unit: Option<Unit>,
    row: u32,
    left: Vec<Trouble>,
    told: Vec<Trouble>,
}

/// A row that says which item it is of.
struct Known {
    row: u32,
    letter: String,
    name: String,
}

impl<'a> Reader<'a> {
    fn place(&self, field: &Field) -> Option<Place> {
        let column = self.columns.of(field)?;
        Some(Place {
            row: self.row,
            column,
        })
    }

    fn wrong(&mut self, place: Place, why: Why) {
        let shown = self.sheet.at(place).shown().to_owned();
        self.left.push(Trouble { place, shown, why });
    }

    fn tell(&mut self, place: Place, why: Why) {
        let shown = self.sheet.at(place).shown().to_owned();
        self.told.push(Trouble { place, shown, why });
    }

    /// What stands in the field's column; nothing where it is empty, or where it cannot be read.
    fn text(&mut self, field: &Field) -> Option<(Place, &'a str)> {
        let place = self.place(field)?;
        let sheet = self.sheet;
        match sheet.at(place) {
            Cell::Empty => None,
            Cell::Text(text) => Some((place, text)),
            Cell::Formula(text) => {
                self.tell(place, Why::Formula);
                Some((place, text))
            }
            Cell::Uncomputed => self.none(place, Why::Uncomputed),
            Cell::Date => self.none(place, Why::Date),
            Cell::Fault(_) => self.none(place, Why::Fault),
            Cell::Merged(first) => self.none(place, Why::Merged(*first)),
        }
    }

    fn none<T>(&mut self, place: Place, why: Why) -> Option<T> {
        self.wrong(place, why);
        None
    }

    /// A text of the document.
    fn line(&mut self, field: &Field, to: &mut String) {
        if let Some((place, text)) = self.text(field) {
            if text.chars().count() > LONGEST {
                self.wrong(place, Why::LongText);
            } else {
                *to = super::nfc(text);
            }
        }
    }

    /// The unit of numbers without one: that of the column's head, else that of the sheet.
    fn unit_at(&self, column: u32) -> Option<Unit> {
        let head = self.columns.head.map(|row| Place { row, column });
        let head = head.and_then(|place| self.sheet.at(place).text());
        head.and_then(heads::spoken_unit).or(self.unit)
    }

    fn length(&mut self, field: &Field) -> Option<(Place, Entered)> {
        let (place, text) = self.text(field)?;
        match Entered::read_in(text, self.unit_at(place.column)) {
            Ok(entered) => Some((place, entered)),
            Err(why) => self.none(place, Why::Length(why)),
        }
    }

    /// A length that is not negative, over what was there: the same length stays as it was typed.
    fn positive(&mut self, field: &Field, to: &mut Option<Entered>) {
        if let Some((place, length)) = self.length(field) {
            if length.nm.is_negative() {
                self.wrong(place, Why::Negative);
            } else {
                put(to, length);
            }
        }
    }

    /// A word of a set that the field takes.
    fn word<T>(&mut self, field: &Field, read: impl Fn(&str) -> Option<T>) -> Option<T> {
        let (place, text) = self.text(field)?;
        let word = read(&words::plain(text));
        word.or_else(|| self.none(place, Why::UnknownWord(field.clone())))
    }

    /// Whether anything was wrong in the row that is being read.
    fn failed(&self) -> bool {
        self.left
            .last()
            .is_some_and(|last| last.place.row == self.row)
    }

    /// The rows that say which item they are of, each once.
    fn rows(&mut self) -> Vec<Known> {
        let first = self.columns.head.map_or(0, |head| head + 1);
        let end = u32::try_from(self.sheet.rows.len()).unwrap_or_default();
        let mut known: Vec<Known> = Vec::new();
        for row in first..end {
            self.row = row;
            let places = self.columns.fields.iter().zip(0_u32..);
            let places = places.filter(|(field, _)| field.is_some());
            let mut filled = places
                .map(|(_, column)| Place { row, column })
                .filter(|place| *self.sheet.at(*place) != Cell::Empty);
            let Some(begin) = filled.next() else {
                continue;
            };
            let alone = filled.next().is_none();
            let (mut letter, mut name) = (String::new(), String::new());
            self.line(&Field::Letter, &mut letter);
            self.line(&Field::Name, &mut name);
            if self.failed() {
                continue;
            }
            if letter.is_empty() && name.is_empty() {
                self.wrong(begin, Why::Nameless);
            } else if letter.is_empty() && alone {
                self.wrong(begin, Why::OnlyAName);
            } else if let Some(before) = known.iter().find(|it| it.is_of(&letter, &name)) {
                let first = Place {
                    row: before.row,
                    ..begin
                };
                self.wrong(begin, Why::LetterTwice(first));
            } else {
                known.push(Known { row, letter, name });
            }
        }
        known
    }
}

/// Writes a length over another, unless it is the same one in another unit.
fn put(to: &mut Option<Entered>, length: Entered) {
    if to.is_none_or(|old| old.nm != length.nm) {
        *to = Some(length);
    }
}

impl Known {
    /// Whether the item of this letter and name is the row's: letters decide where there are any.
    fn is_of(&self, letter: &str, name: &str) -> bool {
        let same = |a: &str, b: &str| words::plain(a) == words::plain(b);
        if self.letter.is_empty() || letter.is_empty() {
            same(&self.name, name)
        } else {
            same(&self.letter, letter)
        }
    }

    /// The place of the row's item among those that are there.
    fn among<'i>(&self, items: impl Iterator<Item = (&'i str, &'i str)>) -> Option<usize> {
        let mut items = items.enumerate();
        items
            .find(|(_, (letter, name))| self.is_of(letter, name))
            .map(|(at, _)| at)
    }
}

#[cfg(test)]
mod tests;
