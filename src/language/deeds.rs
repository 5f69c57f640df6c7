//! The entries of a ledger as sentences: who did what.

use std::collections::BTreeMap;

use crate::exchange::ledger::{Act, Entry};
use crate::exchange::measuring::{Reason, Wash};
use crate::exchange::signature::SubjectKind;
use crate::exchange::{approval, inspection, round, thread};
use crate::spec::letters::nth;
use crate::spec::{DecimalSign, ItemId, Length, OrgId, PieceId, RoundId, ThreadId, Unit};

use super::message::{Message, Text};
use super::texts::Language;

/// What the things are called that entries name by their ids, as far as the reader may know them.
#[derive(Debug, Clone, Default)]
pub struct Things {
    pub factories: BTreeMap<OrgId, String>,
    /// Letter and name.
    pub items: BTreeMap<ItemId, String>,
    pub threads: BTreeMap<ThreadId, (thread::Kind, ItemId)>,
    /// Kind, number, and how the revision that it is bound to writes numbers.
    pub rounds: BTreeMap<RoundId, (round::Kind, u32, DecimalSign)>,
    /// The number of each piece in its round.
    pub pieces: BTreeMap<PieceId, u32>,
}

impl Text {
    /// What the entry tells; `who` did it.
    pub fn deed(self, who: &str, entry: &Entry, things: &Things) -> Message {
        let t = self;
        let id = |name: &str| entry.ids.get(name).map_or("", String::as_str);
        match entry.act {
            Act::Create => t.say("deed-create").with("who", who),
            Act::Publish => t
                .say("deed-publish")
                .with("who", who)
                .with("revision", id("revision")),
            Act::Withdraw => t
                .say("deed-withdraw")
                .with("who", who)
                .with("revision", id("revision")),
            Act::Share => t
                .say("deed-share")
                .with("who", who)
                .with("factory", things.factory(entry)),
            Act::Unshare => t
                .say("deed-unshare")
                .with("who", who)
                .with("factory", things.factory(entry)),
            Act::Acknowledge => t
                .say("deed-acknowledge")
                .with("who", who)
                .with("revision", id("revision")),
            Act::Ask => t
                .say("deed-ask")
                .with("who", who)
                .with("kind", t.kind(things, entry))
                .with("item", things.item(entry, "item"))
                .with("revision", id("revision")),
            Act::Message => t
                .say("deed-message")
                .with("who", who)
                .with("kind", t.kind(things, entry))
                .with("item", things.thread_item(entry))
                .with("photos", photos(entry)),
            Act::ThreadMove => t.thread_move(who, entry, things),
            Act::RequestRound => t
                .say("deed-round-request")
                .with("who", who)
                .with("round", t.round(things, entry))
                .with("count", id("pieces").parse().unwrap_or(0_usize))
                .with("revision", id("revision")),
            Act::RoundMove => t.round_move(who, entry, things),
            Act::Measure => t
                .say("deed-measure")
                .with("who", who)
                .with("value", t.measured(things, entry))
                .with("item", things.item(entry, "point"))
                .with("piece", things.piece(entry))
                .with("round", t.round(things, entry)),
            Act::Skip => t
                .say("deed-skip")
                .with("who", who)
                .with("item", things.item(entry, "point"))
                .with("piece", things.piece(entry))
                .with("round", t.round(things, entry))
                .with("reason", t.reason(entry)),
            Act::Photograph => t
                .say("deed-photograph")
                .with("who", who)
                .with("piece", things.piece(entry))
                .with("round", t.round(things, entry)),
            Act::Decide => {
                let outcome = round::Outcome::from_name(id("outcome"));
                let outcome = outcome.map(|outcome| t.name(&outcome).to_string());
                t.say("deed-decide")
                    .with("who", who)
                    .with("round", t.round(things, entry))
                    .with("outcome", outcome.unwrap_or_default())
            }
            Act::Submit => t
                .say("deed-submit")
                .with("who", who)
                .with("option", option(entry))
                .with("kind", t.submitted(entry))
                .with("item", things.item(entry, "item")),
            Act::Approve => t
                .say("deed-approve")
                .with("verdict", id("verdict"))
                .with("who", who)
                .with("option", option(entry))
                .with("kind", t.submitted(entry))
                .with("item", things.item(entry, "item")),
            Act::Seal => t
                .say("deed-seal")
                .with("who", who)
                .with("count", id("count").parse().unwrap_or(0_usize))
                .with("round", t.round(things, entry)),
            Act::BeginInspection => t
                .say("deed-inspection-begin")
                .with("who", who)
                .with("number", id("number"))
                .with("count", id("pieces").parse().unwrap_or(0_u32)),
            Act::Inspect => t
                .say("deed-inspect")
                .with("who", who)
                .with("piece", id("piece"))
                .with("number", id("number")),
            Act::ConcludeInspection => {
                let outcome = inspection::Outcome::from_name(id("outcome"));
                let outcome = outcome.map(|it| t.name(&it).to_string());
                t.say("deed-inspection-conclude")
                    .with("who", who)
                    .with("number", id("number"))
                    .with("outcome", outcome.unwrap_or_default())
            }
            Act::DecideInspection => {
                let decision = inspection::Decision::from_name(id("decision"));
                let decision = decision.map(|it| t.name(&it).to_string());
                t.say("deed-inspection-decide")
                    .with("who", who)
                    .with("number", id("number"))
                    .with("decision", decision.unwrap_or_default())
            }
            Act::Sign if entry.ids.contains_key(SubjectKind::Seal.name()) => t
                .say("deed-sign-seal")
                .with("who", who)
                .with("round", t.round(things, entry)),
            Act::Sign => match entry.ids.get(SubjectKind::Revision.name()) {
                Some(revision) => t
                    .say("deed-sign-revision")
                    .with("who", who)
                    .with("revision", revision),
                None => t
                    .say("deed-sign-round")
                    .with("who", who)
                    .with("round", t.round(things, entry)),
            },
            Act::Translate => t
                .say("deed-translate")
                .with("who", who)
                .with("count", id("count").parse().unwrap_or(0_usize))
                .with("language", language(entry)),
            Act::TranslateMessage => t
                .say("deed-translate-message")
                .with("who", who)
                .with("kind", t.kind(things, entry))
                .with("item", things.thread_item(entry))
                .with("language", language(entry)),
            Act::Erase => t.say("deed-erase"),
        }
    }

    /// Several values that one person typed in one after the other.
    pub fn measured_many(self, who: &str, count: usize, of: &Entry, things: &Things) -> Message {
        self.say("deed-measure-many")
            .with("who", who)
            .with("count", count)
            .with("round", self.round(things, of))
    }

    /// Several pieces of one inspection that one person entered one after the other.
    pub fn inspected_many(self, who: &str, count: usize, of: &Entry) -> Message {
        let number = of.ids.get("number").map_or("", String::as_str);
        self.say("deed-inspect-many")
            .with("who", who)
            .with("count", count)
            .with("number", number)
    }

    fn thread_move(self, who: &str, entry: &Entry, things: &Things) -> Message {
        let id = |name: &str| entry.ids.get(name).map_or("", String::as_str);
        let (kind, item) = (self.kind(things, entry), things.thread_item(entry));
        if id("move") == "mark_changed" {
            return self
                .say("deed-thread-changed")
                .with("who", who)
                .with("kind", kind)
                .with("item", item)
                .with("revision", id("revision"));
        }
        self.say("deed-thread")
            .with("who", who)
            .with("move", id("move"))
            .with("kind", kind)
            .with("item", item)
    }

    fn round_move(self, who: &str, entry: &Entry, things: &Things) -> Message {
        let id = |name: &str| entry.ids.get(name).map_or("", String::as_str);
        let round = self.round(things, entry);
        let Some(step) = round::Move::from_name(id("move")) else {
            return self
                .say("deed-round-continue")
                .with("who", who)
                .with("round", round)
                .with("revision", id("revision"));
        };
        self.say(match step {
            round::Move::Start => "deed-round-start",
            round::Move::Dispatch => "deed-round-dispatch",
            round::Move::Receive => "deed-round-receive",
            round::Move::FinishMeasuring => "deed-round-measured",
        })
        .with("who", who)
        .with("round", round)
    }

    /// The kind of the thread that the entry is about.
    fn kind(self, things: &Things, entry: &Entry) -> String {
        let known = things.thread(entry).map(|(kind, _)| *kind);
        let told = || thread::Kind::from_name(entry.ids.get("kind")?);
        let kind = known.or_else(told);
        kind.map_or_else(String::new, |kind| self.name(&kind).to_string())
    }

    /// What the entry's option is of.
    fn submitted(self, entry: &Entry) -> String {
        let kind = entry.ids.get("kind");
        let kind = kind.and_then(|name| approval::Kind::from_name(name));
        kind.map_or_else(String::new, |kind| self.name(&kind).to_string())
    }

    /// What was measured; in a state beside the spec's, in which.
    fn measured(self, things: &Things, entry: &Entry) -> String {
        let value = things.measured(entry);
        let wash = entry.ids.get("wash").and_then(|name| Wash::from_name(name));
        match wash {
            Some(wash) => format!("{value} ({})", self.name(&wash)),
            None => value,
        }
    }

    /// Why the entry's point was not measured.
    fn reason(self, entry: &Entry) -> String {
        let reason = entry.ids.get("reason");
        let reason = reason.and_then(|name| Reason::from_name(name));
        reason.map_or_else(String::new, |reason| self.name(&reason).to_string())
    }

    fn round(self, things: &Things, entry: &Entry) -> Message {
        let round = things.round(entry);
        let kind = round.map_or_else(String::new, |(kind, ..)| self.name(kind).to_string());
        self.say("deed-round")
            .with("kind", kind)
            .with("number", round.map_or(0, |(_, number, _)| *number))
    }
}

/// What the entry's language calls itself.
fn language(entry: &Entry) -> &'static str {
    let tag = entry.ids.get("language").map_or("", String::as_str);
    Language::from_tag(tag).map_or("", Language::own_name)
}

/// The letter of an option.
fn option(entry: &Entry) -> String {
    let number: Option<usize> = entry.ids.get("number").and_then(|it| it.parse().ok());
    number
        .and_then(|it| it.checked_sub(1))
        .map_or_else(String::new, nth)
}

/// How many photographs came with a message.
fn photos(entry: &Entry) -> usize {
    let names = entry.hashes.keys();
    names.filter(|name| name.starts_with("photo_")).count()
}

impl Things {
    fn factory(&self, entry: &Entry) -> &str {
        let org = entry.ids.get("org").map(OrgId::new);
        let name = org.and_then(|org| self.factories.get(&org));
        name.map_or("", String::as_str)
    }

    /// The item under this name of the entry's; its id where the reader knows no such item.
    fn item<'a>(&'a self, entry: &'a Entry, name: &str) -> &'a str {
        let id = entry.ids.get(name).map_or("", String::as_str);
        self.items.get(&ItemId::new(id)).map_or(id, String::as_str)
    }

    fn thread(&self, entry: &Entry) -> Option<&(thread::Kind, ItemId)> {
        let id = entry.ids.get("thread").map(ThreadId::new)?;
        self.threads.get(&id)
    }

    fn thread_item(&self, entry: &Entry) -> &str {
        self.thread(entry).map_or("", |(_, id)| {
            self.items.get(id).map_or(id.as_str(), String::as_str)
        })
    }

    fn round(&self, entry: &Entry) -> Option<&(round::Kind, u32, DecimalSign)> {
        // A signature carries the round's number, and its id as that of what was signed.
        let name = match entry.act {
            Act::Sign if !entry.ids.contains_key("round_id") => "subject",
            Act::Sign => "round_id",
            _ => "round",
        };
        let id = entry.ids.get(name).map(RoundId::new)?;
        self.rounds.get(&id)
    }

    fn piece(&self, entry: &Entry) -> u32 {
        let id = entry.ids.get("piece").map(PieceId::new);
        let number = id.and_then(|id| self.pieces.get(&id));
        number.copied().unwrap_or_default()
    }

    fn measured(&self, entry: &Entry) -> String {
        let id = |name: &str| entry.ids.get(name).map_or("", String::as_str);
        let sign = self
            .round(entry)
            .map_or(DecimalSign::Point, |round| round.2);
        match (id("nm").parse(), Unit::from_name(id("unit"))) {
            (Ok(nm), Some(unit)) => {
                format!("{} {}", Length::nm(nm).exact(unit, sign), unit.symbol())
            }
            _ => String::new(),
        }
    }
}
