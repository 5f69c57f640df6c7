//! A point of measure as it stands in the grid: as text, until it can be read.

use super::rows::at;
use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::document::{
    Basis, BodySide, Closure, Direction, Grade, HowToMeasure, Path, Point,
};
use crate::spec::rule::{self, Names, NotAGrade};
use crate::spec::units::Entered;
use crate::spec::wording::Wording;
use crate::web::brand::wordings::Library;
use crate::web::form::{Errors, Fields};

pub const BASES: [(&str, Basis); 3] = [
    ("half", Basis::Half),
    ("full", Basis::Full),
    ("linear", Basis::Linear),
];
pub const DIRECTIONS: [(&str, Direction); 2] =
    [("length", Direction::Length), ("width", Direction::Width)];
pub const PATHS: [(&str, Path); 2] = [("straight", Path::Straight), ("curved", Path::Curved)];
pub const CLOSURES: [(&str, Closure); 2] = [("closed", Closure::Closed), ("open", Closure::Open)];
pub const SIDES: [(&str, BodySide); 3] = [
    ("left", BodySide::Left),
    ("right", BodySide::Right),
    ("both", BodySide::Both),
];

#[derive(Debug, Clone, Default)]
pub struct Row {
    pub key: String,
    pub letter: String,
    /// The letter that the rules in the form call it by: what was typed since into the field of the
    /// letter does not change which point an untouched rule follows.
    pub lettered: String,
    pub name: String,
    pub start: String,
    pub end: String,
    pub note: String,
    /// The name of a wording to take.
    pub wording: String,
    /// A name to keep this row's wording under.
    pub keep: String,
    pub path: Option<Path>,
    pub stretched: bool,
    pub closure: Option<Closure>,
    pub side: Option<BodySide>,
    pub basis: Option<Basis>,
    pub direction: Option<Direction>,
    pub key_point: bool,
    pub critical: bool,
    pub base: String,
    pub minus: String,
    pub plus: String,
    pub grade: String,
    pub step: String,
}

impl Row {
    pub fn of(point: &Point, names: &Names) -> Row {
        let length = |entered: Option<Entered>| {
            entered.map_or(String::new(), |it| rule::write_length(it, names.unit))
        };
        let grade = point.grade.as_ref();
        Row {
            key: point.id.to_string(),
            letter: point.letter.clone(),
            lettered: point.letter.clone(),
            name: point.name.clone(),
            start: point.how.start.clone(),
            end: point.how.end.clone(),
            note: point.how.note.clone(),
            path: point.how.path,
            stretched: point.how.stretched,
            closure: point.how.closure,
            side: point.how.side,
            basis: point.basis,
            direction: point.direction,
            key_point: point.key,
            critical: point.critical,
            base: length(point.base),
            minus: length(point.minus),
            plus: length(point.plus),
            grade: grade.map_or(String::new(), |grade| rule::write(grade, names)),
            step: length(point.step),
            ..Row::default()
        }
    }

    pub fn read(t: Text, fields: &Fields, key: String, errors: &mut Errors) -> Row {
        let mut line = |field| fields.line(t, &at(&key, field), errors);
        let (letter, name, start) = (line("letter"), line("name"), line("start"));
        let (end, note) = (line("end"), line("note"));
        let (base, minus, plus) = (line("base"), line("minus"), line("plus"));
        let (grade, step) = (line("grade"), line("step"));
        let (wording, keep) = (line("wording"), line("keep"));
        let text = |field| fields.text(&at(&key, field));
        let ticked = |field| fields.has(&at(&key, field));
        let lettered = match fields.has(&at(&key, "as")) {
            true => text("as").to_owned(),
            false => letter.clone(),
        };
        Row {
            letter,
            lettered,
            name,
            start,
            end,
            note,
            wording,
            keep,
            path: chosen(&PATHS, text("path")),
            stretched: ticked("stretched"),
            closure: chosen(&CLOSURES, text("closure")),
            side: chosen(&SIDES, text("side")),
            basis: chosen(&BASES, text("basis")),
            direction: chosen(&DIRECTIONS, text("direction")),
            key_point: ticked("key"),
            critical: ticked("critical"),
            base,
            minus,
            plus,
            grade,
            step,
            key,
        }
    }

    /// The point of this row; what cannot be read is left out, with an error at its field.
    /// `old` is the point as it was saved: a rule that was not touched stays what it was, even if
    /// it names what is gone, and so does what the grid does not show. `written_by` is what the form
    /// wrote the rules by, `names` what a rule that was typed since may name.
    pub fn point(
        &self,
        t: Text,
        id: &ItemId,
        names: &Names,
        written_by: &Names,
        old: Option<&Point>,
        errors: &mut Errors,
    ) -> Point {
        let mut length = |field, typed: &str| match typed {
            "" => None,
            typed => match Entered::read_in(typed, names.unit) {
                Ok(entered) => Some(entered),
                Err(why) => {
                    errors.add(self.at(field), t.not_a_length(why, typed));
                    None
                }
            },
        };
        let (base, step) = (length("base", &self.base), length("step", &self.step));
        let (minus, plus) = (length("minus", &self.minus), length("plus", &self.plus));
        let saved = old.and_then(|old| old.grade.as_ref());
        let grade = match self.rule(names, written_by, saved) {
            Ok(grade) => grade,
            Err(why) => {
                errors.add(self.at("grade"), t.not_a_grade(&why));
                None
            }
        };
        Point {
            id: id.clone(),
            letter: self.letter.clone(),
            name: self.name.clone(),
            how: self.how(),
            basis: self.basis,
            direction: self.direction,
            key: self.key_point,
            critical: self.critical,
            minus,
            plus,
            base,
            grade,
            step,
            ..old.cloned().unwrap_or_default()
        }
    }

    fn how(&self) -> HowToMeasure {
        HowToMeasure {
            start: self.start.clone(),
            end: self.end.clone(),
            path: self.path,
            stretched: self.stretched,
            closure: self.closure,
            side: self.side,
            note: self.note.clone(),
        }
    }

    /// Takes the wording that is named in the row, in place of what stood there.
    pub fn take(&mut self, t: Text, library: &Library, errors: &mut Errors) {
        if self.wording.is_empty() {
            return;
        }
        let Some(Wording { how, .. }) = library.find(&self.wording) else {
            let unknown = t.say("error-wording-unknown").with("name", &self.wording);
            return errors.add(self.at("wording"), unknown);
        };
        self.start.clone_from(&how.start);
        self.end.clone_from(&how.end);
        self.note.clone_from(&how.note);
        self.stretched = how.stretched;
        (self.path, self.closure, self.side) = (how.path, how.closure, how.side);
        self.wording.clear();
    }

    /// What the row's wording is to be kept as.
    pub fn kept(&self, t: Text, errors: &mut Errors) -> Option<Wording> {
        if self.keep.is_empty() {
            return None;
        }
        if self.way().is_none() {
            errors.add(self.at("keep"), t.say("error-wording-empty"));
            return None;
        }
        Some(Wording {
            name: self.keep.clone(),
            how: self.how(),
        })
    }

    /// The rule that the row's grade stands for; nothing for an empty one. `saved` is the point's
    /// rule as it was saved.
    pub fn rule(
        &self,
        names: &Names,
        written_by: &Names,
        saved: Option<&Grade>,
    ) -> Result<Option<Grade>, NotAGrade> {
        if self.grade.is_empty() {
            return Ok(None);
        }
        let untouched = saved.filter(|saved| rule::write(saved, written_by) == self.grade);
        match untouched {
            Some(saved) => Ok(Some(saved.clone())),
            None => rule::read(&self.grade, names).map(Some),
        }
    }

    /// A new row with nothing in it but what was proposed.
    pub fn is_blank(&self) -> bool {
        let texts = [
            &self.name,
            &self.start,
            &self.end,
            &self.note,
            &self.base,
            &self.minus,
            &self.plus,
            &self.grade,
        ];
        self.is_new() && texts.iter().all(|text| text.is_empty())
    }

    /// From where to where, for the line that opens the rest; nothing while one of them is missing.
    pub fn way(&self) -> Option<String> {
        let whole = !self.start.is_empty() && !self.end.is_empty();
        whole.then(|| format!("{} → {}", self.start, self.end))
    }

    /// Whether a field of how it is measured cannot be read.
    pub fn is_wrong_inside(&self, errors: &Errors) -> bool {
        let fields = ["start", "end", "note", "wording", "keep"];
        let mut fields = fields.into_iter();
        fields.any(|field| errors.of(&self.at(field)).is_some())
    }

    pub fn is_new(&self) -> bool {
        super::rows::is_new(&self.key)
    }

    pub fn at(&self, field: &str) -> String {
        at(&self.key, field)
    }

    /// What stands in a field, by its name in the document.
    pub fn typed(&self, field: &str) -> bool {
        !match field {
            "letter" => &self.letter,
            "name" => &self.name,
            "base" => &self.base,
            "minus" => &self.minus,
            "plus" => &self.plus,
            "grade" => &self.grade,
            "step" => &self.step,
            _ => return false,
        }
        .is_empty()
    }
}

fn chosen<T: Copy>(all: &[(&str, T)], name: &str) -> Option<T> {
    let found = all.iter().find(|(other, _)| *other == name);
    found.map(|(_, value)| *value)
}
