//! What is marked on a drawing, as it stands in the form: letters, dimension lines, blow-ups.
//!
//! A row whose places are all empty stands for nothing: so a mark is taken off without script.

use super::super::rows;
use super::percent::{percent, spot, ten_thousandths, written};
use crate::language::Text;
use crate::spec::document::{BlowUp, DimensionLine, Marker};
use crate::spec::{Item, ItemId, Spec};
use crate::store::World;
use crate::web::form::{Errors, Fields};

/// A letter: on the drawing, or not.
pub struct Mark {
    /// The marker's id, or `new-1` ... for a letter that is not on the drawing yet.
    pub key: String,
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    /// By `Item::shape`.
    pub shape: &'static str,
    /// In percent from the left and from the top; both empty: not on the drawing.
    pub x: String,
    pub y: String,
}

impl Mark {
    pub fn new(spec: &Spec, key: String, item: &ItemId) -> Mark {
        let found = spec.item(item);
        Mark {
            key,
            item: item.clone(),
            letter: found.map_or("?", Item::letter).to_owned(),
            name: found.map_or("", Item::name).to_owned(),
            shape: found.map_or("point", Item::shape),
            x: String::new(),
            y: String::new(),
        }
    }

    pub fn of(spec: &Spec, marker: &Marker) -> Mark {
        Mark {
            x: percent(marker.x),
            y: percent(marker.y),
            ..Mark::new(spec, marker.id.to_string(), &marker.item)
        }
    }

    pub fn read(t: Text, spec: &Spec, fields: &Fields, key: &str, errors: &mut Errors) -> Mark {
        let item = ItemId::new(fields.text(&rows::at(key, "item")));
        let mut mark = Mark::new(spec, key.to_owned(), &item);
        mark.x = fields.line(t, &mark.at("x"), errors);
        mark.y = fields.line(t, &mark.at("y"), errors);
        for (field, typed, other) in [("x", &mark.x, &mark.y), ("y", &mark.y, &mark.x)] {
            let blank = typed.is_empty();
            if (blank && !other.is_empty()) || (!blank && ten_thousandths(typed).is_none()) {
                errors.add(mark.at(field), t.say("error-percent"));
            }
        }
        mark
    }

    pub fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    pub fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    /// From the left and from the top in ten-thousandths.
    pub fn place(&self) -> Option<(u16, u16)> {
        Some((ten_thousandths(&self.x)?, ten_thousandths(&self.y)?))
    }

    pub fn marker(&self, world: &World) -> Option<Marker> {
        let (x, y) = self.place()?;
        Some(Marker {
            id: rows::id(&self.key, world),
            item: self.item.clone(),
            x,
            y,
        })
    }
}

/// A dimension line, or a spare row for one. Places are two numbers in percent.
pub struct Line {
    pub key: String,
    /// The point that it measures; empty: not chosen yet.
    pub item: String,
    /// The point is not there any more: the line is shown until it is taken off.
    pub is_adrift: bool,
    pub from: String,
    pub to: String,
    /// Empty: straight.
    pub via: String,
}

impl Line {
    pub fn spare(key: String) -> Line {
        Line {
            key,
            item: String::new(),
            is_adrift: false,
            from: String::new(),
            to: String::new(),
            via: String::new(),
        }
    }

    pub fn of(spec: &Spec, line: &DimensionLine) -> Line {
        Line {
            key: line.id.to_string(),
            item: line.item.to_string(),
            is_adrift: spec.point(&line.item).is_none(),
            from: written(line.from),
            to: written(line.to),
            via: line.via.map(written).unwrap_or_default(),
        }
    }

    pub fn read(t: Text, spec: &Spec, fields: &Fields, key: &str, errors: &mut Errors) -> Line {
        let mut line = Line::spare(key.to_owned());
        line.item = fields.line(t, &line.at("item"), errors);
        line.from = fields.line(t, &line.at("from"), errors);
        line.to = fields.line(t, &line.at("to"), errors);
        line.via = fields.line(t, &line.at("via"), errors);
        let item = ItemId::new(line.item.as_str());
        line.is_adrift = !line.item.is_empty() && spec.point(&item).is_none();
        if line.is_blank() {
            return line;
        }
        // As it was saved, a line may still measure a point that is gone.
        let saved = |it: &Item<'_>| matches!(it, Item::DimensionLine(it) if it.id.as_str() == key && it.item == item);
        if line.item.is_empty() || (line.is_adrift && !spec.items().any(|it| saved(&it))) {
            errors.add(line.at("item"), t.say("error-line-point"));
        }
        for (field, typed) in [("from", &line.from), ("to", &line.to), ("via", &line.via)] {
            let may_be_blank = field == "via";
            if spot(typed).is_none() && !(may_be_blank && typed.is_empty()) {
                errors.add(line.at(field), t.say("error-spot"));
            }
        }
        if spot(&line.from).is_some_and(|from| spot(&line.to) == Some(from)) {
            errors.add(line.at("to"), t.say("error-line-ends"));
        }
        line
    }

    pub fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    fn is_blank(&self) -> bool {
        [&self.from, &self.to, &self.via]
            .iter()
            .all(|typed| typed.is_empty())
    }

    pub fn line(&self, id: ItemId) -> Option<DimensionLine> {
        Some(DimensionLine {
            id,
            item: ItemId::new(self.item.as_str()),
            from: spot(&self.from)?,
            to: spot(&self.to)?,
            via: spot(&self.via),
        })
    }
}

/// A circle that another drawing shows larger, or a spare row for one.
pub struct Circle {
    pub key: String,
    /// The other drawing; empty: not chosen yet.
    pub drawing: String,
    pub at: String,
    /// In percent of the width.
    pub radius: String,
}

impl Circle {
    pub fn spare(key: String) -> Circle {
        Circle {
            key,
            drawing: String::new(),
            at: String::new(),
            radius: String::new(),
        }
    }

    pub fn of(blow_up: &BlowUp) -> Circle {
        Circle {
            key: blow_up.id.to_string(),
            drawing: blow_up.drawing.to_string(),
            at: written(blow_up.at),
            radius: percent(blow_up.radius),
        }
    }

    /// `on` is the key of the drawing that it stands on.
    pub fn read(
        t: Text,
        spec: &Spec,
        fields: &Fields,
        (on, key): (&str, &str),
        errors: &mut Errors,
    ) -> Circle {
        let mut circle = Circle::spare(key.to_owned());
        circle.drawing = fields.line(t, &circle.field("drawing"), errors);
        circle.at = fields.line(t, &circle.field("at"), errors);
        circle.radius = fields.line(t, &circle.field("radius"), errors);
        if circle.at.is_empty() && circle.radius.is_empty() {
            return circle;
        }
        let mut others = spec.drawings.drawings.iter();
        if circle.drawing == on || !others.any(|it| it.id.as_str() == circle.drawing) {
            errors.add(circle.field("drawing"), t.say("error-blow-up-drawing"));
        }
        if spot(&circle.at).is_none() {
            errors.add(circle.field("at"), t.say("error-spot"));
        }
        if ten_thousandths(&circle.radius).is_none_or(|radius| radius == 0) {
            errors.add(circle.field("radius"), t.say("error-blow-up-radius"));
        }
        circle
    }

    pub fn field(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    pub fn blow_up(&self, id: ItemId) -> Option<BlowUp> {
        Some(BlowUp {
            id,
            drawing: ItemId::new(self.drawing.as_str()),
            at: spot(&self.at)?,
            radius: ten_thousandths(&self.radius)?,
        })
    }
}
