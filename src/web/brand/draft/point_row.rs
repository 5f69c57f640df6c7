//! A point of measure as it stands in the grid: as text, until it can be read.

use super::rows::at;
use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::document::{Basis, Direction, HowToMeasure, Path, Point};
use crate::spec::rule::{self, Names};
use crate::spec::units::Entered;
use crate::web::form::{Errors, Fields};

pub const BASES: [(&str, Basis); 3] = [
    ("half", Basis::Half),
    ("full", Basis::Full),
    ("linear", Basis::Linear),
];
pub const DIRECTIONS: [(&str, Direction); 2] =
    [("length", Direction::Length), ("width", Direction::Width)];
pub const PATHS: [(&str, Path); 2] = [("straight", Path::Straight), ("curved", Path::Curved)];

#[derive(Debug, Clone, Default)]
pub struct Row {
    pub key: String,
    pub letter: String,
    pub name: String,
    pub start: String,
    pub end: String,
    pub note: String,
    pub path: Option<Path>,
    pub stretched: bool,
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
            name: point.name.clone(),
            start: point.how.start.clone(),
            end: point.how.end.clone(),
            note: point.how.note.clone(),
            path: point.how.path,
            stretched: point.how.stretched,
            basis: point.basis,
            direction: point.direction,
            key_point: point.key,
            critical: point.critical,
            base: length(point.base),
            minus: length(point.minus),
            plus: length(point.plus),
            grade: grade.map_or(String::new(), |grade| rule::write(grade, names)),
            step: length(point.step),
        }
    }

    pub fn read(t: Text, fields: &Fields, key: String, errors: &mut Errors) -> Row {
        let mut line = |field| fields.line(t, &at(&key, field), errors);
        let (letter, name, start) = (line("letter"), line("name"), line("start"));
        let (end, note) = (line("end"), line("note"));
        let (base, minus, plus) = (line("base"), line("minus"), line("plus"));
        let (grade, step) = (line("grade"), line("step"));
        let text = |field| fields.text(&at(&key, field));
        let ticked = |field| fields.has(&at(&key, field));
        Row {
            letter,
            name,
            start,
            end,
            note,
            path: chosen(&PATHS, text("path")),
            stretched: ticked("stretched"),
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
    /// it names what is gone, and so does what the grid does not show.
    pub fn point(
        &self,
        t: Text,
        id: &ItemId,
        names: &Names,
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
        let untouched = saved.filter(|saved| rule::write(saved, names) == self.grade);
        let grade = match (untouched, self.grade.as_str()) {
            (_, "") => None,
            (Some(old), _) => Some(old.clone()),
            (None, typed) => match rule::read(typed, names) {
                Ok(grade) => Some(grade),
                Err(why) => {
                    errors.add(self.at("grade"), t.not_a_grade(&why));
                    None
                }
            },
        };
        Point {
            id: id.clone(),
            letter: self.letter.clone(),
            name: self.name.clone(),
            how: HowToMeasure {
                start: self.start.clone(),
                end: self.end.clone(),
                path: self.path,
                stretched: self.stretched,
                note: self.note.clone(),
                ..old.map(|old| old.how.clone()).unwrap_or_default()
            },
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
