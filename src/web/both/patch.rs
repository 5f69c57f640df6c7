//! The colour of a part in a colourway, as a patch with words beside it.
//! `templates/both/patch.html` has the macro that shows it.

use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::colour::shown;
use crate::spec::document::{Cell, Colour, Colourways};

/// A patch and what is said beside it.
#[derive(serde::Serialize)]
pub struct Patch {
    pub shape: Shape,
    /// `#rrggbb`, where there is an approximation for screens.
    pub fill: Option<String>,
    pub name: String,
    /// The reference as the brand typed it; may be empty.
    pub reference: String,
}

/// How the square is drawn, so that it reads without colour too.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
pub enum Shape {
    Filled,
    /// A colour without an approximation for screens.
    Unknown,
    /// This colourway does without the part.
    None,
    Natural,
    DyedToMatch,
}

/// What a part is in a colourway; nothing where the cell is empty.
pub fn patch(t: Text, colourways: &Colourways, colourway: &ItemId, part: &ItemId) -> Option<Patch> {
    let patch = match colourways.cell(colourway, part)? {
        Cell::None {} => plain(Shape::None, t.say("cell-none").to_string()),
        Cell::Natural {} => plain(Shape::Natural, t.say("cell-natural").to_string()),
        Cell::Colour(colour) => Patch {
            shape: match screen_colour(colour) {
                Some(_) => Shape::Filled,
                None => Shape::Unknown,
            },
            fill: screen_colour(colour),
            name: colour.name.clone(),
            reference: colour.reference.clone(),
        },
        Cell::DyedToMatch { part: other } => {
            let letter = colourways.parts.iter().find(|part| part.id == *other);
            let letter = letter.map_or("", |part| part.letter.as_str());
            let fill = match colourways.settled(colourway, other) {
                Some((_, Cell::Colour(colour))) => screen_colour(colour),
                _ => None,
            };
            Patch {
                fill,
                ..plain(
                    Shape::DyedToMatch,
                    t.say("cell-dyed-to-match").with("part", letter).to_string(),
                )
            }
        }
    };
    Some(patch)
}

/// Computed from L*a*b* where there is a reading, else as it was typed.
fn screen_colour(colour: &Colour) -> Option<String> {
    Some(shown(colour)?.screen.to_string())
}

fn plain(shape: Shape, name: String) -> Patch {
    Patch {
        shape,
        fill: None,
        name,
        reference: String::new(),
    }
}
