//! What is asked once before a round goes on: values that are due and that nobody measured.

use super::next::{Next, Way};
use super::send;
use crate::exchange::round::Move;
use crate::store::Round;
use crate::web::form::Fields;

/// A move that was not made yet.
pub struct Unfinished {
    pub mv: Move,
    /// Where the move is sent, below the round's address.
    pub action: &'static str,
    pub count: usize,
    /// What was typed beside, to be sent again.
    pub typed: Vec<(&'static str, String)>,
    pub pieces: Vec<Lacking>,
}

/// A piece with points that nobody measured.
pub struct Lacking {
    pub number: u32,
    pub size: String,
    /// Below the round's address.
    pub measure: String,
    /// Letter and name of each.
    pub points: String,
}

impl Unfinished {
    /// What to ask before this move; `None` when it ends no measuring, is not the reader's to make,
    /// or nothing is missing.
    pub fn before(mv: Move, round: &Round, next: &Next, typed: &Fields) -> Option<Unfinished> {
        let ends = matches!(mv, Move::Dispatch | Move::FinishMeasuring);
        let action = next.ways.iter().find_map(|way| match way {
            Way::Move { action, name, .. } if *name == mv.name() => Some(*action),
            Way::Send { .. } if mv == Move::Dispatch => Some("move"),
            _ => None,
        });
        let action = action.filter(|_| ends)?;
        let mut count = 0;
        let lacking = round.pieces.iter().filter_map(|piece| {
            let points = round.due(&piece.id);
            let points: Vec<String> = points
                .map(|it| format!("{} {}", it.letter, it.name))
                .collect();
            count += points.len();
            let size = round.frozen.spec.size(&piece.size);
            (!points.is_empty()).then(|| Lacking {
                number: piece.number,
                size: size.map_or_else(String::new, |size| size.code.clone()),
                measure: format!("measure?piece={}", piece.id),
                points: points.join(", "),
            })
        });
        let pieces: Vec<Lacking> = lacking.collect();
        (!pieces.is_empty()).then_some(Unfinished {
            mv,
            action,
            count,
            typed: send::typed(typed),
            pieces,
        })
    }
}
