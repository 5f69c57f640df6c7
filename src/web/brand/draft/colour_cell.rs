//! The cells of the colour matrix as they stand in the form.

use std::collections::BTreeMap;

use super::rows::at;
use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::colour::{Screen, shown};
use crate::spec::document::{Cell, Colour, Colourways};
use crate::web::form::{Errors, Fields};

pub const COLOUR: &str = "colour";
pub const NONE: &str = "none";
pub const NATURAL: &str = "natural";
const MATCH: &str = "match ";

/// The choice of being dyed to match the part of this key.
pub fn match_value(part: &str) -> String {
    format!("{MATCH}{part}")
}

/// The key of the part that a choice says to match.
pub fn matched(kind: &str) -> Option<&str> {
    kind.strip_prefix(MATCH)
}

/// What one part is in one colourway, as text.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct CellText {
    /// One of the choices; empty: none is made.
    pub kind: String,
    pub name: String,
    pub reference: String,
    /// Nothing where no field stands for it, because it is computed from a reading.
    pub screen: Option<String>,
}

/// The cells by the keys of their colourway and part; a cell that is not there is blank.
#[derive(Debug, Clone, Default)]
pub struct Cells(BTreeMap<(String, String), CellText>);

impl Cells {
    pub fn of(section: &Colourways) -> Cells {
        let mut cells = BTreeMap::new();
        for (colourway, row) in &section.cells {
            for (part, cell) in row {
                cells.insert(
                    (colourway.to_string(), part.to_string()),
                    CellText::of(cell),
                );
            }
        }
        Cells(cells)
    }

    pub fn read(
        &mut self,
        t: Text,
        fields: &Fields,
        colourway: &str,
        part: &str,
        errors: &mut Errors,
    ) {
        let place = at(colourway, part);
        let mut line = |field| fields.line(t, &at(&place, field), errors);
        let cell = CellText {
            kind: line("kind"),
            name: line("name"),
            reference: line("reference"),
            screen: fields.has(&at(&place, "screen")).then(|| line("screen")),
        };
        if !cell.is_blank() {
            self.0.insert((colourway.to_owned(), part.to_owned()), cell);
        }
    }

    /// The text of a cell.
    pub fn text(&self, colourway: &str, part: &str) -> CellText {
        let cell = self.0.get(&(colourway.to_owned(), part.to_owned()));
        cell.cloned().unwrap_or_default()
    }

    pub fn has_part(&self, key: &str) -> bool {
        self.0.keys().any(|(_, part)| part == key)
    }

    pub fn has_colourway(&self, key: &str) -> bool {
        self.0.keys().any(|(colourway, _)| colourway == key)
    }

    /// What a cell says, with the ids of the parts by their keys. A cell without a choice in which
    /// something is written is a colour; what the form does not show of one stays as it is in `old`,
    /// as long as it is the same colour.
    pub fn cell(
        &self,
        t: Text,
        colourway: &str,
        part: &str,
        ids: &BTreeMap<&str, ItemId>,
        old: Option<&Cell>,
        errors: &mut Errors,
    ) -> Option<Cell> {
        let cell = self.text(colourway, part);
        match cell.kind.as_str() {
            NONE => return Some(Cell::None {}),
            NATURAL => return Some(Cell::Natural {}),
            kind => {
                if let Some(key) = matched(kind) {
                    // A part that was removed stays named: the checks tell of it.
                    let id = ids.get(key).cloned();
                    let part = id.unwrap_or_else(|| ItemId::new(key));
                    return Some(Cell::DyedToMatch { part });
                }
            }
        }
        if cell.is_blank() {
            return None;
        }
        let old = match old {
            Some(Cell::Colour(old)) => cell.begun_from(old),
            _ => Colour::default(),
        };
        let screen = match &cell.screen {
            None => old.screen.clone(),
            Some(typed) => screen(typed).unwrap_or_else(|()| {
                let place = at(&at(colourway, part), "screen");
                errors.add(place, t.say("error-screen").with("typed", typed));
                None
            }),
        };
        Some(Cell::Colour(Colour {
            name: cell.name,
            reference: cell.reference,
            screen,
            ..old
        }))
    }
}

impl CellText {
    fn is_blank(&self) -> bool {
        let texts = [&self.kind, &self.name, &self.reference];
        let screen = self.screen.as_deref().unwrap_or_default();
        texts.iter().all(|text| text.is_empty()) && screen.is_empty()
    }

    /// What is still true of a colour that was there before. Reading, photograph and lab dip are of
    /// one reference on one cloth: another reference, or without any another name, begins anew.
    fn begun_from(&self, old: &Colour) -> Colour {
        let differ = |one: &str, other: &str| {
            let both = !one.trim().is_empty() && !other.trim().is_empty();
            both && one.trim().to_lowercase() != other.trim().to_lowercase()
        };
        let another = match (old.reference.is_empty(), self.reference.is_empty()) {
            (true, true) => differ(&old.name, &self.name),
            _ => differ(&old.reference, &self.reference),
        };
        if another {
            Colour {
                substrate: old.substrate.clone(),
                ..Colour::default()
            }
        } else {
            old.clone()
        }
    }

    fn of(cell: &Cell) -> CellText {
        let kind = |kind: String| CellText {
            kind,
            ..CellText::default()
        };
        match cell {
            Cell::None {} => kind(NONE.to_owned()),
            Cell::Natural {} => kind(NATURAL.to_owned()),
            Cell::DyedToMatch { part } => kind(match_value(part.as_str())),
            Cell::Colour(colour) => CellText {
                kind: COLOUR.to_owned(),
                name: colour.name.clone(),
                reference: colour.reference.clone(),
                screen: match shown(colour) {
                    Some(shown) if shown.computed => None,
                    _ => Some(colour.screen.clone().unwrap_or_default()),
                },
            },
        }
    }
}

/// `#rrggbb`, from what people type of it.
pub fn screen(typed: &str) -> Result<Option<String>, ()> {
    if typed.is_empty() {
        return Ok(None);
    }
    let screen = Screen::read(typed).map_err(|_| ())?;
    Ok(Some(screen.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Language;
    use crate::spec::document::Approval;
    use crate::spec::example::half_zip;
    use crate::spec::{Digest, Spec};

    #[test]
    fn every_cell_reads_back_from_its_text() {
        let Spec { colourways, .. } = half_zip(Digest::of(b"front"));
        let cells = Cells::of(&colourways);
        let ids: BTreeMap<&str, ItemId> = BTreeMap::new();
        let t = Language::English.text();
        let mut errors = Errors::default();
        for (colourway, row) in &colourways.cells {
            for (part, cell) in row {
                let (colourway, part) = (colourway.as_str(), part.as_str());
                let read = cells.cell(t, colourway, part, &ids, None, &mut errors);
                assert_eq!(read.as_ref(), Some(cell));
            }
        }
        assert!(errors.is_empty());
        assert_eq!(
            cells.cell(t, "colourway-ink", "part-9", &ids, None, &mut errors),
            None
        );
    }

    #[test]
    fn another_reference_begins_without_what_was_known_of_the_first() {
        let old = Colour {
            name: "Ink".to_owned(),
            reference: "Book A 104".to_owned(),
            substrate: "fleece".to_owned(),
            approval: Some(Approval::Approved),
            photo: Some(Digest::of(b"dyed")),
            ..Colour::default()
        };
        let with = |name: &str, reference: &str| {
            let text = CellText {
                name: name.to_owned(),
                reference: reference.to_owned(),
                ..CellText::default()
            };
            text.begun_from(&old)
        };
        let kept = [("Night", "book a 104"), ("Ink", "")];
        for (name, reference) in kept {
            assert_eq!(with(name, reference), old, "{name} {reference}");
        }
        let anew = with("Ink", "Book A 105");
        assert_eq!((anew.approval, anew.photo), (None, None));
        assert_eq!(anew.substrate, "fleece");
        // Without references it is the name that tells one from another.
        let unreferenced = Colour {
            reference: String::new(),
            ..old.clone()
        };
        let named = |name: &str| {
            let text = CellText {
                name: name.to_owned(),
                ..CellText::default()
            };
            text.begun_from(&unreferenced).approval
        };
        assert_eq!((named("ink "), named("Moss")), (old.approval, None));
    }

    #[test]
    fn a_screen_value_is_six_digits() {
        assert_eq!(screen("#AbCdEf"), Ok(Some("#abcdef".to_owned())));
        assert_eq!(screen("012345"), Ok(Some("#012345".to_owned())));
        assert_eq!(screen(""), Ok(None));
        for wrong in ["#fff", "red", "#12345g", "#", "#1234567"] {
            assert_eq!(screen(wrong), Err(()), "{wrong}");
        }
    }
}
