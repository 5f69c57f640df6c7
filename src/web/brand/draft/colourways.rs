//! Parts and colourways: the matrix of what every part is in every colourway.

use std::collections::BTreeMap;

use askama::Template;

use super::colour_cell::{COLOUR, CellText, Cells, NATURAL, NONE, match_value};
use super::colourway_number::ColourwayNumbers;
use super::rows::{self, Press};
use super::strip::{Strip, strips};
use super::{SectionPage, Sent};
use crate::language::Text;
use crate::spec::colour::shown;
use crate::spec::document::{Cell, Colourway, Colourways, Part};
use crate::spec::units::DecimalSign;
use crate::spec::{ItemId, Spec};
use crate::web::both::patch::{Patch, Shape, patch};
use crate::web::form::{Errors, Fields};
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

/// Empty columns after those that are there, and in an empty matrix.
const SPARE_COLUMNS: usize = 1;
const FIRST_COLUMNS: usize = 2;

#[derive(Template)]
#[template(path = "brand/colourways.html")]
struct ColourwaysPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    typed: Typed,
    strips: Vec<Strip>,
    /// What can be read of it, for the patches; a new row's key stands for its id.
    shown: Colourways,
    errors: Errors,
}

/// The section as it stands in the form.
struct Typed {
    parts: Vec<Head>,
    colourways: Vec<Head>,
    cells: Cells,
}

/// A part with its letter, or a colourway with its code.
#[derive(Clone, Default)]
struct Head {
    key: String,
    label: String,
    name: String,
    /// Of a colourway; parts have none.
    number: String,
    /// The number that a new colourway gets when none is typed.
    proposed: String,
}

impl Head {
    fn spare(n: usize, label: String) -> Head {
        Head {
            key: rows::new_key(n),
            label,
            ..Head::default()
        }
    }

    fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    /// Code and name.
    fn called(&self) -> String {
        format!("{} {}", self.label, self.name).trim().to_owned()
    }

    /// The choice of being dyed to match this part.
    fn to_match(&self) -> String {
        match_value(&self.key)
    }
}

impl Typed {
    fn of(colourways: &Colourways) -> Typed {
        let part = |part: &Part| Head {
            key: part.id.to_string(),
            label: part.letter.clone(),
            name: part.name.clone(),
            ..Head::default()
        };
        let colourway = |colourway: &Colourway| Head {
            key: colourway.id.to_string(),
            label: colourway.code.clone(),
            name: colourway.name.clone(),
            number: colourway.number.clone(),
            ..Head::default()
        };
        Typed {
            parts: colourways.parts.iter().map(part).collect(),
            colourways: colourways.colourways.iter().map(colourway).collect(),
            cells: Cells::of(colourways),
        }
    }

    fn read(
        t: Text,
        fields: &Fields,
        press: &Press,
        errors: &mut Errors,
    ) -> Result<Typed, Problem> {
        let mut heads = |list, label| -> Result<Vec<Head>, Problem> {
            let keys = rows::keys(fields, list, press)?;
            let head = |key: String| Head {
                label: fields.line(t, &rows::at(&key, label), errors),
                name: fields.line(t, &rows::at(&key, "name"), errors),
                number: fields.line(t, &rows::at(&key, "number"), errors),
                proposed: String::new(),
                key,
            };
            Ok(keys.into_iter().map(head).collect())
        };
        let parts = heads("part", "letter")?;
        let colourways = heads("colourway", "code")?;
        let mut cells = Cells::default();
        for colourway in &colourways {
            for part in &parts {
                cells.read(t, fields, &colourway.key, &part.key, errors);
            }
        }
        Ok(Typed {
            parts,
            colourways,
            cells,
        })
    }

    /// Leaves out new rows and columns that nobody wrote into, and gives new parts their letters.
    fn without_blank(&self) -> Typed {
        let named = |head: &Head| !head.is_new() || !head.name.is_empty();
        let (parts, colourways) = (self.parts.iter(), self.colourways.iter());
        let mut kept = Typed {
            parts: parts
                .filter(|part| named(part) || self.cells.has_part(&part.key))
                .cloned()
                .collect(),
            colourways: colourways
                .filter(|head| {
                    named(head) || !head.label.is_empty() || self.cells.has_colourway(&head.key)
                })
                .cloned()
                .collect(),
            cells: self.cells.clone(),
        };
        let mut letters = letters_after(&kept.parts);
        for part in &mut kept.parts {
            if part.is_new() && part.label.is_empty() {
                part.label = letters.next().unwrap_or_default();
            }
        }
        kept
    }

    /// Gives new colourways the numbers that the scheme proposes for them, where none is typed, and
    /// says what is wrong with those that are.
    fn number(
        &mut self,
        t: Text,
        numbers: &ColourwayNumbers,
        old: &Colourways,
        errors: &mut Errors,
    ) {
        for at in 0..self.colourways.len() {
            let others = || {
                let others = self.colourways.iter().enumerate();
                let others = others.filter(|(other, _)| *other != at);
                others.map(|(_, head)| head.number.as_str())
            };
            let head = &self.colourways[at];
            if head.is_new() && head.number.is_empty() {
                let next = numbers.next(others());
                self.colourways[at].number = next.unwrap_or_default();
                continue;
            }
            let before = old.colourways.iter().find(|it| it.id.as_str() == head.key);
            let before = before.map_or("", |it| it.number.as_str());
            if let Some(wrong) = numbers.wrong(t, &head.number, before, others()) {
                errors.add(head.at("number"), wrong);
            }
        }
    }

    /// Shows in the empty columns which numbers are next.
    fn propose(&mut self, numbers: &ColourwayNumbers) {
        let mut taken: Vec<String> = self.colourways.iter().map(|it| it.number.clone()).collect();
        for head in self.colourways.iter_mut().filter(|head| head.is_new()) {
            if let Some(next) = numbers.next(taken.iter().map(String::as_str)) {
                head.proposed = next.clone();
                taken.push(next);
            }
        }
    }

    /// The section, with the id of each key. What the form does not show stays as it is in `old`.
    fn document(
        &self,
        t: Text,
        old: &Colourways,
        mut id: impl FnMut(&str) -> ItemId,
        errors: &mut Errors,
    ) -> Colourways {
        let heads = self.parts.iter().chain(&self.colourways);
        let ids: BTreeMap<&str, ItemId> = heads
            .map(|head| (head.key.as_str(), id(&head.key)))
            .collect();
        let mut section = Colourways::default();
        for Head {
            key, label, name, ..
        } in &self.parts
        {
            let id = &ids[key.as_str()];
            section.parts.push(Part {
                id: id.clone(),
                letter: label.clone(),
                name: name.clone(),
            });
        }
        for Head {
            key,
            label,
            name,
            number,
            ..
        } in &self.colourways
        {
            let id = &ids[key.as_str()];
            let known = old.colourways.iter().find(|it| it.id == *id).cloned();
            section.colourways.push(Colourway {
                id: id.clone(),
                code: label.clone(),
                name: name.clone(),
                number: number.clone(),
                ..known.unwrap_or_default()
            });
            let cells = self.parts.iter().filter_map(|part| {
                let old = old.cell(id, &ids[part.key.as_str()]);
                let cell = self.cells.cell(t, key, &part.key, &ids, old, errors)?;
                Some((ids[part.key.as_str()].clone(), cell))
            });
            let cells: BTreeMap<_, _> = cells.collect();
            if !cells.is_empty() {
                section.cells.insert(id.clone(), cells);
            }
        }
        section
    }
}

/// `P1`, `P2` ... after the last one of that kind.
fn letters_after(parts: &[Head]) -> impl Iterator<Item = String> + use<> {
    let numbers = parts.iter().filter_map(|part| {
        let number = part.label.trim().strip_prefix(['P', 'p'])?;
        number.parse::<u32>().ok()
    });
    let last = numbers.max().unwrap_or_default();
    (last.saturating_add(1)..).map(|number| format!("P{number}"))
}

/// Puts another colourway after this one: all of its cells, with a number of its own. Gives its id.
fn copy(
    t: Text,
    numbers: &ColourwayNumbers,
    section: &mut Colourways,
    of: &ItemId,
    id: ItemId,
) -> Option<ItemId> {
    let all = &section.colourways;
    let at = all.iter().position(|it| it.id == *of)?;
    let name = match all[at].name.as_str() {
        "" => all[at].code.as_str(),
        name => name,
    };
    let copy = Colourway {
        id: id.clone(),
        code: String::new(),
        name: t
            .say("colourway-copied-name")
            .with("name", name)
            .to_string(),
        number: numbers
            .next(all.iter().map(|it| it.number.as_str()))
            .unwrap_or_default(),
        pieces: None,
    };
    section.colourways.insert(at + 1, copy);
    if let Some(cells) = section.cells.get(of).cloned() {
        section.cells.insert(id.clone(), cells);
    }
    Some(id)
}

impl ColourwaysPage {
    fn new(
        who: &Who,
        around: SectionPage,
        typed: Typed,
        old: &Colourways,
        errors: Errors,
    ) -> ColourwaysPage {
        let shown = typed.document(who.t, old, |key| ItemId::new(key), &mut Errors::default());
        ColourwaysPage {
            t: who.t,
            frame: who.frame(),
            page: around,
            strips: strips(who.t, &shown),
            typed,
            shown,
            errors,
        }
    }

    /// Whether the cell has a page of its own: what is not saved has none.
    fn opens(&self, colourway: &Head, part: &Head) -> bool {
        !colourway.is_new() && !part.is_new()
    }

    /// What stands in the field of the screen value; nothing where it is computed from a reading. A
    /// cell that is not a colour has the field for when it becomes one.
    fn screen(&self, colourway: &Head, part: &Head, cell: &CellText) -> Option<String> {
        let ids = (ItemId::new(&*colourway.key), ItemId::new(&*part.key));
        let computed = match self.shown.cell(&ids.0, &ids.1) {
            Some(Cell::Colour(colour)) => shown(colour).is_some_and(|it| it.computed),
            _ => false,
        };
        (!computed).then(|| cell.screen.clone().unwrap_or_default())
    }

    /// What the cell holds beside what its fields show.
    fn more(&self, colourway: &Head, part: &Head) -> Vec<String> {
        let ids = (ItemId::new(&*colourway.key), ItemId::new(&*part.key));
        let Some(Cell::Colour(colour)) = self.shown.cell(&ids.0, &ids.1) else {
            return Vec::new();
        };
        let none = Spec::default();
        let mut more = self.t.words(&none, DecimalSign::Point).colour(colour);
        if colour.photo.is_some() {
            more.push(self.t.say("colour-photo").to_string());
        }
        more
    }

    fn patch(&self, colourway: &Head, part: &Head) -> Patch {
        let ids = (ItemId::new(&*colourway.key), ItemId::new(&*part.key));
        patch(self.t, &self.shown, &ids.0, &ids.1).unwrap_or(Patch {
            shape: Shape::Unknown,
            fill: None,
            name: String::new(),
            reference: String::new(),
        })
    }

    /// Whether the part that this one is dyed to match is not there any more.
    fn is_adrift(&self, part: &Head, kind: &str) -> bool {
        let known = || self.others(part).any(|other| other.to_match() == kind);
        !["", COLOUR, NONE, NATURAL].contains(&kind) && !known()
    }

    /// What is wrong with the colour of the cell whose fields begin so.
    fn wrong(&self, at: &str) -> Option<&str> {
        let fields = ["screen", "name", "reference", "kind"];
        let mut found = fields
            .iter()
            .filter_map(|it| self.errors.of(&rows::at(at, it)));
        found.next()
    }

    /// The parts that one part may be dyed to match.
    fn others<'a>(&'a self, part: &'a Head) -> impl Iterator<Item = &'a Head> {
        let saved = self.typed.parts.iter().filter(|other| !other.is_new());
        saved.filter(|other| other.key != part.key)
    }
}

pub fn show(
    who: &Who,
    around: SectionPage,
    numbers: &ColourwayNumbers,
    spec: &Spec,
    more: usize,
) -> Answer {
    let mut typed = Typed::of(&spec.colourways);
    let spare = match typed.parts.len() {
        0 => rows::FIRST,
        _ => rows::SPARE,
    };
    let letters = letters_after(&typed.parts);
    let parts = letters.zip(1..=spare + more);
    typed
        .parts
        .extend(parts.map(|(letter, n)| Head::spare(n, letter)));
    let columns = match typed.colourways.len() {
        0 => FIRST_COLUMNS,
        _ => SPARE_COLUMNS,
    };
    // Keys are one row of numbers for both lists.
    let first = spare + more + 1;
    let keys = first..first + columns;
    typed
        .colourways
        .extend(keys.map(|n| Head::spare(n, String::new())));
    typed.propose(numbers);
    let old = &spec.colourways;
    page(&ColourwaysPage::new(
        who,
        around,
        typed,
        old,
        Errors::default(),
    ))
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let fields = &sent.form.fields;
    let press = Press::of(fields);
    let mut errors = Errors::default();
    let mut typed = Typed::read(t, fields, &press, &mut errors)?;
    let old = &sent.draft.spec.colourways;
    let style = &sent.draft.spec.header.number;
    let numbers = ColourwayNumbers::read(&sent.app, &sent.who, style).await?;
    let world = sent.app.store.world();
    let mut spec = sent.draft.spec.clone();
    let mut kept = typed.without_blank();
    kept.number(t, &numbers, old, &mut errors);
    spec.colourways = kept.document(t, old, |key| rows::id(key, world), &mut errors);
    if errors.is_empty() {
        let copied = match &press {
            Press::Copy(of) => {
                let (of, id) = (ItemId::new(&**of), ItemId::new(world.id()));
                copy(t, &numbers, &mut spec.colourways, &of, id)
            }
            _ => None,
        };
        let then = match copied {
            Some(id) => format!("#row-{id}"),
            None => press.then(),
        };
        return go(&sent.keep(&spec, &then).await?);
    }
    typed.propose(&numbers);
    let around = sent.around().await?;
    page_again(&ColourwaysPage::new(&sent.who, around, typed, old, errors))
}
