//! The parts of a colourway beside each other, with how far each is from the one before.

use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::colour::{Beside, neighbours};
use crate::spec::document::{Colourway, Colourways};
use crate::web::both::patch::{Patch, patch};

pub struct Strip {
    /// Code and name of the colourway.
    pub name: String,
    pub pieces: Vec<Piece>,
}

pub struct Piece {
    pub letter: String,
    pub patch: Patch,
    /// Beside the piece before: what it comes to, in few words.
    pub beside: Vec<String>,
    /// Should be looked at.
    pub warned: bool,
    /// Why there is no difference.
    pub why: Option<String>,
}

/// Code and name.
pub fn called(colourway: &Colourway) -> String {
    let called = format!("{} {}", colourway.code, colourway.name);
    called.trim().to_owned()
}

/// The strip of each colourway that has neighbours to compare.
pub fn strips(t: Text, section: &Colourways) -> Vec<Strip> {
    let all = section.colourways.iter();
    let all = all.map(|colourway| strip(t, section, colourway));
    all.filter(|strip| strip.pieces.len() > 1).collect()
}

pub fn strip(t: Text, section: &Colourways, colourway: &Colourway) -> Strip {
    Strip {
        name: called(colourway),
        pieces: pieces(t, section, &colourway.id),
    }
}

fn pieces(t: Text, section: &Colourways, colourway: &ItemId) -> Vec<Piece> {
    let found = neighbours(section, colourway).into_iter();
    let pieces = found.filter_map(|neighbour| {
        let mut piece = Piece {
            letter: neighbour.part.letter.clone(),
            patch: patch(t, section, colourway, &neighbour.part.id)?,
            beside: Vec::new(),
            warned: false,
            why: None,
        };
        let mut say = |message: crate::language::Message| piece.beside.push(message.to_string());
        match neighbour.beside {
            None => {}
            Some(Beside::Same) => say(t.say("near-same")),
            Some(Beside::Unknown) => say(t.say("near-unknown")),
            Some(Beside::Incomparable(why)) => {
                say(t.say("near-unknown"));
                piece.why = Some(t.incomparable(why).to_string());
            }
            Some(Beside::Apart {
                difference,
                measured,
                hard,
                grey,
                same,
            }) => {
                let shown = difference.to_string();
                say(match measured {
                    true => t.say("near-read").with("difference", shown),
                    false => t.say("near-screen").with("difference", shown),
                });
                if same {
                    say(t.say("near-same"));
                } else if hard {
                    say(t.say("near-hard"));
                } else if grey {
                    say(t.say("near-grey"));
                }
                piece.warned = hard || grey;
            }
        }
        Some(piece)
    });
    pieces.collect()
}
