//! What is next on a round, and for whom: one clear step for each reader.

use crate::access::{Side, StylePermit, act};
use crate::exchange::measuring::may_measure;
use crate::exchange::round::{self, Move, Outcome, State};
use crate::language::Text;
use crate::store::Round;

/// The next step as this reader is told it.
pub struct Next {
    /// It is this reader's to take.
    pub mine: bool,
    pub sentence: String,
    /// The first is the one to take.
    pub ways: Vec<Way>,
}

/// A button or a link of the page.
pub enum Way {
    /// A form that makes this move, sent to `…/action`.
    Move {
        action: &'static str,
        name: &'static str,
        label: String,
    },
    Go {
        href: String,
        label: String,
    },
    /// To the form that sends the pieces.
    Send {
        label: String,
    },
}

/// Who reads the page.
pub type Reader = StylePermit<act::Read>;

/// Whether the reader may add or correct values now.
pub fn can_measure(round: &Round, reader: &Reader) -> bool {
    reader.also::<act::Measure>().is_ok() && may_measure(round.state, reader.side(), true).is_ok()
}

/// The moves that the reader may make now.
fn moves(t: Text, round: &Round, reader: &Reader) -> Vec<Way> {
    let allowed = |mv: &Move| {
        let role = match mv {
            Move::Start | Move::Dispatch => reader.also::<act::Dispatch>().is_ok(),
            Move::Receive | Move::FinishMeasuring => reader.also::<act::Decide>().is_ok(),
        };
        role && round::step(round.state, reader.actor(), *mv, round.measurements.len()).is_ok()
    };
    let way = |mv: Move| {
        let label = t.say(match mv {
            Move::Start => "rounds-move-start",
            Move::Dispatch => "rounds-send-title",
            Move::Receive => "rounds-move-receive",
            Move::FinishMeasuring => "rounds-move-finish-measuring",
        });
        let label = label.to_string();
        match mv {
            Move::Dispatch => Way::Send { label },
            Move::Start => Way::Move {
                action: "move",
                name: mv.name(),
                label,
            },
            Move::Receive | Move::FinishMeasuring => Way::Move {
                action: "receive",
                name: mv.name(),
                label,
            },
        }
    };
    Move::ALL.into_iter().filter(allowed).map(way).collect()
}

/// The next step. `base` is the round's address; `missing` counts the values that nobody measured;
/// `signed` says which sides have signed the decision; `blocked` that something has to be settled
/// before one does.
pub fn next(
    t: Text,
    round: &Round,
    reader: &Reader,
    base: &str,
    missing: usize,
    signed: impl Fn(Side) -> bool,
    blocked: bool,
) -> Next {
    let org = &round.org_name;
    let side = reader.side();
    let mut ways = moves(t, round, reader);
    let moves = !ways.is_empty();
    let measure = can_measure(round, reader);
    let mut go = |first: bool, to: &str, label: String| {
        let href = format!("{base}{to}");
        let at = if first { 0 } else { ways.len() };
        ways.insert(at, Way::Go { href, label });
    };
    let to_measure = || {
        t.say(match missing {
            0 => "rounds-correct",
            _ => "rounds-measure",
        })
        .to_string()
    };
    let (mine, sentence) = match round.state {
        State::Requested if moves => (true, t.say("rounds-next-start")),
        State::Requested if side == Side::Factory => (false, t.say("rounds-next-start-other")),
        State::Requested => (false, t.say("rounds-next-start-factory").with("org", org)),

        State::InWork if measure && missing > 0 => {
            go(true, "/measure", to_measure());
            (true, t.say("rounds-next-measure").with("count", missing))
        }
        State::InWork if measure => {
            go(false, "/measure", to_measure());
            let said = if moves {
                t.say("rounds-next-dispatch")
            } else {
                t.say("rounds-next-dispatch-other")
            };
            (moves, said)
        }
        State::InWork => (false, t.say("rounds-next-in-work").with("org", org)),

        State::Dispatched if moves => (true, t.say("rounds-next-receive")),
        State::Dispatched => {
            if measure && missing > 0 {
                go(false, "/measure", to_measure());
            }
            (false, t.say("rounds-next-on-the-way"))
        }

        State::Received if measure && side == Side::Brand => {
            go(true, "/measure", t.say("rounds-measure").to_string());
            (true, t.say("rounds-next-check"))
        }
        State::Received => (false, t.say("rounds-next-check-other")),

        State::Measured if reader.also::<act::Decide>().is_ok() => {
            go(true, "#decide", t.say("rounds-decide").to_string());
            (true, t.say("rounds-next-decide"))
        }
        State::Measured => (false, t.say("rounds-next-decide-other")),

        State::Decided(Outcome::Cancelled) => (false, t.say("rounds-next-cancelled")),
        State::Decided(_) if reader.role().signs() && !signed(side) && blocked => {
            go(true, "#sign", t.say("rounds-see-open").to_string());
            (true, t.say("rounds-next-sign-blocked"))
        }
        State::Decided(_) if reader.role().signs() && !signed(side) => {
            go(true, "#sign", t.say("rounds-sign").to_string());
            (true, t.say("rounds-next-sign"))
        }
        State::Decided(_) => {
            let unsigned = Side::ALL.into_iter().find(|side| !signed(*side));
            let said = match unsigned {
                None => t.say("rounds-next-done"),
                Some(side) => t.say("rounds-next-sign-other").with("side", t.name(&side)),
            };
            (false, said)
        }
    };
    Next {
        mine,
        sentence: sentence.to_string(),
        ways,
    }
}
