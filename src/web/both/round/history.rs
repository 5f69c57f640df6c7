//! What was done to a round, from the style's ledger.

use std::collections::BTreeSet;

use crate::exchange::ledger::{Act, Entry};
use crate::exchange::round::{Move, Outcome};
use crate::language::Text;
use crate::spec::{Digest, RoundId, Time};
use crate::store::{LedgerLine, Round};
use crate::web::frame::name_or_erased;

/// One line of the history. Values that one person measured one after the other share a line.
pub struct HistoryLine {
    pub at: Time,
    pub who: String,
    pub org: String,
    pub what: String,
    /// Of the entry; of the last, when several share the line.
    pub hash: Digest,
}

/// The history of a round, oldest first. `signatures` are the ids of those given on it.
pub fn history(
    t: Text,
    round: &Round,
    ledger: Vec<LedgerLine>,
    signatures: &BTreeSet<&str>,
) -> Vec<HistoryLine> {
    let mut lines: Vec<HistoryLine> = Vec::new();
    let mut measured = 0;
    let mut by = None;
    for line in ledger {
        let entry = line.entry;
        if !is_of(&entry, &round.id, signatures) {
            continue;
        }
        let together = entry.act == Act::Measure && measured > 0 && by == entry.person;
        measured = match entry.act {
            Act::Measure if together => measured + 1,
            Act::Measure => 1,
            _ => 0,
        };
        by.clone_from(&entry.person);
        let new = HistoryLine {
            what: what(t, round, &entry, measured),
            at: entry.at,
            who: name_or_erased(t, line.person.as_deref()),
            org: line.org_name.unwrap_or_default(),
            hash: line.hash,
        };
        match lines.last_mut() {
            Some(last) if together => *last = new,
            _ => lines.push(new),
        }
    }
    lines
}

fn is_of(entry: &Entry, round: &RoundId, signatures: &BTreeSet<&str>) -> bool {
    let id = |name: &str| entry.ids.get(name).map(String::as_str);
    match entry.act {
        Act::Sign => id("signature").is_some_and(|id| signatures.contains(id)),
        _ => id("round") == Some(round.as_str()),
    }
}

fn what(t: Text, round: &Round, entry: &Entry, measured: usize) -> String {
    let id = |name: &str| entry.ids.get(name).map_or("", String::as_str);
    let said = match entry.act {
        Act::RequestRound => t
            .say("rounds-did-request")
            .with("count", round.pieces.len())
            .with("revision", round.revision),
        Act::RoundMove => match Move::from_name(id("move")) {
            Some(Move::Start) => t.say("rounds-did-start"),
            Some(Move::Dispatch) => t.say("rounds-did-dispatch"),
            Some(Move::Receive) => t.say("rounds-did-receive"),
            Some(Move::FinishMeasuring) => t.say("rounds-did-finish-measuring"),
            None => t
                .say("rounds-did-continue")
                .with("revision", id("revision")),
        },
        Act::Measure => t.say("rounds-did-measure").with("count", measured),
        Act::Decide => match Outcome::from_name(id("outcome")) {
            Some(outcome) => t.say("rounds-did-decide").with("outcome", t.name(&outcome)),
            None => t.name(&entry.act),
        },
        Act::Ask => {
            let item = crate::spec::ItemId::new(id("item"));
            let item = round.frozen.spec.item(&item);
            let (letter, name) = item.map_or(("", ""), |item| (item.letter(), item.name()));
            t.say("rounds-did-must-fix")
                .with("letter", letter)
                .with("name", name)
        }
        Act::Sign => t.say("rounds-did-sign"),
        _ => t.name(&entry.act),
    };
    said.to_string()
}
