//! What the form of a piece says.

use std::collections::BTreeMap;

use crate::exchange::inspection::{Class, Defect, MOST_TIMES, Sort};
use crate::language::Text;
use crate::spec::{Entered, ItemId};
use crate::store::{FoundDefect, InspectedPiece, Inspection};
use crate::web::figures::Figures;
use crate::web::form::{Errors, Fields};

/// So many defects can be written down at once, before more are asked for.
const ROWS: usize = 3;
/// And so many at most.
const MOST_ROWS: usize = 40;

/// The form as it stands.
pub struct Typed {
    pub rows: Vec<DefectForm>,
    /// As typed, by point.
    pub measured: BTreeMap<ItemId, String>,
    pub values: BTreeMap<ItemId, Entered>,
}

/// One defect as it stands in the form; all empty for none.
#[derive(Default)]
pub struct DefectForm {
    /// From 1.
    pub place: usize,
    pub class: Option<Class>,
    pub item: String,
    pub times: String,
    pub words: String,
    pub error: Option<String>,
    /// The item that the words are about, once it is known.
    id: Option<ItemId>,
    count: u32,
}

/// The field of a point's value.
pub fn field(point: &ItemId) -> String {
    format!("value-{point}")
}

impl Typed {
    /// As the page shows it before anybody typed: what was entered of the piece, if it was.
    pub fn of(inspection: &Inspection, entry: Option<&InspectedPiece>) -> Typed {
        let figures = Figures::of(&inspection.frozen);
        let defects = entry.map_or(&[][..], |it| &it.defects);
        let row = |defect: &FoundDefect| DefectForm {
            class: Some(defect.class),
            item: defect.item.as_ref().map_or("", ItemId::as_str).to_owned(),
            times: defect.times.to_string(),
            words: defect.words.clone().unwrap_or_default(),
            ..DefectForm::default()
        };
        let values = entry.map(|it| it.values.clone()).unwrap_or_default();
        let shown = values.iter().map(|(point, value)| {
            let step = inspection.frozen.chart.row(point).map(|it| it.step);
            // What was typed in another unit is shown in that one: it may fit no step of this one.
            let text = match value.unit == figures.unit {
                true => figures.value(value.nm, step.unwrap_or_default()),
                false => {
                    let exact = value.nm.exact(value.unit, figures.sign);
                    format!("{exact} {}", value.unit.symbol())
                }
            };
            (point.clone(), text)
        });
        let mut typed = Typed {
            rows: defects.iter().map(row).collect(),
            measured: shown.collect(),
            values,
        };
        typed.fill(ROWS);
        typed
    }

    pub fn read(
        t: Text,
        inspection: &Inspection,
        sort: &Sort,
        fields: &Fields,
        errors: &mut Errors,
    ) -> Typed {
        let mut typed = Typed {
            rows: Vec::new(),
            measured: BTreeMap::new(),
            values: BTreeMap::new(),
        };
        let sent = (1..=MOST_ROWS).take_while(|place| fields.has(&format!("class-{place}")));
        for place in sent {
            let row = DefectForm::read(t, inspection, place, fields, errors);
            if let Some(error) = &row.error {
                errors.add(format!("defect-{place}"), error.clone());
            }
            typed.rows.push(row);
        }
        typed.fill(ROWS);
        let chart = &inspection.frozen.chart;
        for row in &chart.rows {
            let name = field(&row.point);
            let text = fields.text(&name);
            if text.is_empty() || chart.value(&row.point, &sort.size).is_none() {
                continue;
            }
            typed.measured.insert(row.point.clone(), text.to_owned());
            match Entered::read(text, chart.unit) {
                Ok(value) if value.nm.is_positive() => {
                    typed.values.insert(row.point.clone(), value);
                }
                Ok(_) => errors.add(name, t.say("rounds-not-positive")),
                Err(why) => errors.add(name, t.not_a_length(why, text)),
            }
        }
        typed
    }

    /// Rows for two more defects.
    pub fn more(&mut self) {
        self.fill((self.rows.len() + 2).min(MOST_ROWS));
    }

    fn fill(&mut self, rows: usize) {
        while self.rows.len() < rows {
            self.rows.push(DefectForm::default());
        }
        for (place, row) in (1..).zip(&mut self.rows) {
            row.place = place;
        }
    }

    pub fn defects(&self) -> Vec<Defect<'_>> {
        self.rows.iter().filter_map(DefectForm::defect).collect()
    }

    /// Sent back, it says that just these values were looked at once more.
    pub fn anyway(&self) -> String {
        let values = self.measured.iter();
        let values: Vec<String> = values
            .map(|(point, typed)| format!("{point} {typed}"))
            .collect();
        values.join("|")
    }
}

impl DefectForm {
    fn read(
        t: Text,
        inspection: &Inspection,
        place: usize,
        fields: &Fields,
        errors: &mut Errors,
    ) -> DefectForm {
        let text = |name: &str| fields.text(&format!("{name}-{place}")).to_owned();
        let mut row = DefectForm {
            place,
            class: Class::from_name(&text("class")),
            item: text("item"),
            times: text("times"),
            words: fields.line(t, &format!("words-{place}"), errors),
            error: None,
            id: None,
            count: 1,
        };
        if row.is_empty() {
            return row;
        }
        let item = ItemId::new(row.item.clone());
        row.id = Some(item).filter(|it| inspection.frozen.spec.item(it).is_some());
        if !row.times.is_empty() {
            row.count = row.times.parse().unwrap_or(0);
        }
        let said = row.id.is_some() || !row.words.is_empty();
        row.error = if row.class.is_none() {
            Some(t.say("inspection-class-missing").to_string())
        } else if !said {
            Some(t.say("refused-defect-unsaid").to_string())
        } else if !(1..=MOST_TIMES).contains(&row.count) {
            let said = t.say("inspection-times-wrong").with("most", MOST_TIMES);
            Some(said.to_string())
        } else {
            None
        };
        row
    }

    /// Nothing was said in it; a number alone says nothing.
    fn is_empty(&self) -> bool {
        self.class.is_none() && self.item.is_empty() && self.words.is_empty()
    }

    fn defect(&self) -> Option<Defect<'_>> {
        Some(Defect {
            class: self.class?,
            item: self.id.as_ref(),
            times: self.count,
            words: &self.words,
        })
    }

    pub fn is_class(&self, class: &Class) -> bool {
        self.class == Some(*class)
    }

    pub fn is_on(&self, item: &ItemId) -> bool {
        self.item == item.as_str()
    }

    /// Shown open: the first, and what says something.
    pub fn is_open(&self) -> bool {
        self.place == 1 || !self.is_empty()
    }
}
