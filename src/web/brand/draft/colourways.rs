//! Parts and colourways: the matrix of what every part is in every colourway.

use std::collections::BTreeMap;

use askama::Template;

use super::colour_cell::{COLOUR, Cells, NATURAL, NONE, match_value};
use super::rows::{self, Press};
use super::{SectionPage, Sent};
use crate::language::Text;
use crate::spec::document::{Colourway, Colourways, Part};
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
#[derive(Clone)]
struct Head {
    key: String,
    label: String,
    name: String,
}

impl Head {
    fn spare(n: usize, label: String) -> Head {
        Head {
            key: rows::new_key(n),
            label,
            name: String::new(),
        }
    }

    fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
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
        };
        let colourway = |colourway: &Colourway| Head {
            key: colourway.id.to_string(),
            label: colourway.code.clone(),
            name: colourway.name.clone(),
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
        for Head { key, label, name } in &self.parts {
            let id = &ids[key.as_str()];
            section.parts.push(Part {
                id: id.clone(),
                letter: label.clone(),
                name: name.clone(),
            });
        }
        for Head { key, label, name } in &self.colourways {
            let id = &ids[key.as_str()];
            let known = old.colourways.iter().find(|it| it.id == *id).cloned();
            section.colourways.push(Colourway {
                id: id.clone(),
                code: label.clone(),
                name: name.clone(),
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

impl ColourwaysPage {
    fn new(who: &Who, around: SectionPage, typed: Typed, errors: Errors) -> ColourwaysPage {
        let shown = typed.document(
            who.t,
            &Colourways::default(),
            |key| ItemId::new(key),
            &mut Errors::default(),
        );
        ColourwaysPage {
            t: who.t,
            frame: who.frame(),
            page: around,
            typed,
            shown,
            errors,
        }
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

pub fn show(who: &Who, around: SectionPage, spec: &Spec, more: usize) -> Answer {
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
    page(&ColourwaysPage::new(who, around, typed, Errors::default()))
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let fields = &sent.form.fields;
    let press = Press::of(fields);
    let mut errors = Errors::default();
    let typed = Typed::read(t, fields, &press, &mut errors)?;
    let world = sent.app.store.world();
    let mut spec = sent.draft.spec.clone();
    let kept = typed.without_blank();
    spec.colourways = kept.document(
        t,
        &sent.draft.spec.colourways,
        |key| rows::id(key, world),
        &mut errors,
    );
    if errors.is_empty() {
        return go(&sent.keep(&spec, &press.then()).await?);
    }
    let around = sent.around().await?;
    page_again(&ColourwaysPage::new(&sent.who, around, typed, errors))
}
