//! The ledger of a style: who did what when, the newest first. A factory sees its own part.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::State;
use axum::http::HeaderMap;

use crate::access::{Side, act};
use crate::exchange::ledger::{Act, Entry, Head};
use crate::exchange::revision::Standing;
use crate::language::{Text, Things};
use crate::spec::{Item, ItemId, StyleId};
use crate::store::{Inspection, LedgerLine, Revision, Round, StyleName};
use crate::web::App;
use crate::web::cached::cached;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/ledger.html")]
struct LedgerPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    name: StyleName,
    side: Side,
    head: Head,
    /// Newest first.
    deeds: Vec<Deed>,
}

/// One line; of several values that somebody measured, or pieces that they inspected, one after the
/// other, one for them all.
struct Deed {
    /// The first and the last entry that it tells of.
    from: u64,
    to: u64,
    at: String,
    minute: String,
    what: String,
    /// The reason that was given, in its writer's words.
    quote: Option<String>,
    /// Whose act it was, and whom else it concerns.
    about: String,
    /// Of the last entry.
    hash: String,
    /// Each value, oldest first.
    each: Vec<String>,
}

pub async fn show(may: MayOn<act::Read>, State(app): State<App>, headers: HeaderMap) -> Answer {
    cached(&app, &may, &headers, ledger(&app, &may)).await
}

async fn ledger(app: &App, may: &MayOn<act::Read>) -> Result<LedgerPage, Problem> {
    let (permit, store) = (&may.permit, &app.store);
    let revisions = store.revisions(permit).await?;
    let rounds = store.rounds(permit).await?;
    let threads = store.thread_facts(permit).await?;
    let shares = store.shares(permit).await?;
    let things = Things {
        factories: shares
            .into_iter()
            .map(|share| (share.org, share.name))
            .collect(),
        items: items(&revisions),
        threads: threads
            .into_iter()
            .map(|thread| (thread.id, (thread.kind, thread.item)))
            .collect(),
        rounds: rounds
            .iter()
            .map(|round| {
                let about = (round.kind, round.number, round.frozen.decimal);
                (round.id.clone(), about)
            })
            .collect(),
        pieces: rounds
            .iter()
            .flat_map(|round| &round.pieces)
            .map(|piece| (piece.id.clone(), piece.number))
            .collect(),
    };
    let teller = Teller {
        t: may.who.t,
        side: permit.side(),
        things,
        revisions,
        rounds,
        inspections: store.inspections(permit).await?,
    };
    Ok(LedgerPage {
        t: may.who.t,
        frame: may.who.frame(),
        style: permit.style().clone(),
        name: store.style_name(permit).await?,
        side: permit.side(),
        head: store.head(permit).await?,
        deeds: teller.deeds(store.ledger(permit).await?),
    })
}

/// Every item that a revision has or had, as the newest of them calls it.
fn items(revisions: &[Revision]) -> BTreeMap<ItemId, String> {
    let mut items = BTreeMap::new();
    for revision in revisions {
        for item in revision.frozen.spec.items() {
            let called = || {
                format!("{} {}", item.letter(), item.name())
                    .trim()
                    .to_owned()
            };
            if !matches!(item, Item::Marker(_)) {
                items.entry(item.id().clone()).or_insert_with(called);
            }
        }
    }
    items
}

struct Teller {
    t: Text,
    side: Side,
    things: Things,
    revisions: Vec<Revision>,
    rounds: Vec<Round>,
    inspections: Vec<Inspection>,
}

impl Teller {
    fn deeds(&self, lines: Vec<LedgerLine>) -> Vec<Deed> {
        let mut deeds: Vec<Deed> = Vec::new();
        let mut before: Option<Entry> = None;
        for line in lines {
            let together = before.as_ref().is_some_and(|before| {
                let same = |name| before.ids.get(name) == line.entry.ids.get(name);
                let acts = [before.act, line.entry.act];
                let alike = acts == [Act::Measure; 2] || acts == [Act::Inspect; 2];
                let of_one = same("round") && same("inspection");
                alike && of_one && before.person == line.entry.person
            });
            let deed = self.deed(&line);
            match deeds.last_mut() {
                Some(last) if together => {
                    if last.each.is_empty() {
                        last.each.push(std::mem::take(&mut last.what));
                    }
                    last.each.push(deed.what);
                    let count = last.each.len();
                    let who = self.who(&line);
                    let many = match line.entry.act {
                        Act::Inspect => self.t.inspected_many(&who, count, &line.entry),
                        _ => (self.t).measured_many(&who, count, &line.entry, &self.things),
                    };
                    last.what = many.to_string();
                    (last.to, last.at, last.minute) = (deed.to, deed.at, deed.minute);
                    last.hash = deed.hash;
                }
                _ => deeds.push(deed),
            }
            before = Some(line.entry);
        }
        deeds.reverse();
        deeds
    }

    fn deed(&self, line: &LedgerLine) -> Deed {
        let entry = &line.entry;
        Deed {
            from: entry.seq,
            to: entry.seq,
            at: entry.at.to_string(),
            minute: entry.at.minute(),
            what: self
                .t
                .deed(&self.who(line), entry, &self.things)
                .to_string(),
            quote: self.quote(entry),
            about: self.about(line),
            hash: line.hash.fingerprint(),
            each: Vec::new(),
        }
    }

    fn who(&self, line: &LedgerLine) -> String {
        match line.entry.person {
            Some(_) => name_or_erased(self.t, line.person.as_deref()),
            None => self.t.say("ledger-program").to_string(),
        }
    }

    fn about(&self, line: &LedgerLine) -> String {
        let org = line.org_name.clone().into_iter();
        let entry = &line.entry;
        let with = match (&entry.visible_to, self.side) {
            _ if entry.internal => Some(self.t.say("ledger-brand-only").to_string()),
            (Some(factory), Side::Brand) if entry.org.as_ref() != Some(factory) => {
                let name = self.things.factories.get(factory);
                name.map(|name| self.t.say("ledger-with").with("factory", name).to_string())
            }
            _ => None,
        };
        org.chain(with).collect::<Vec<_>>().join(" · ")
    }

    /// Why a revision was published or withdrawn, or a round or an inspected lot decided so.
    fn quote(&self, entry: &Entry) -> Option<String> {
        let id = |name: &str| entry.ids.get(name).map(String::as_str);
        let revision = || {
            let number: u32 = id("revision")?.parse().ok()?;
            self.revisions.iter().find(|it| it.number == number)
        };
        match entry.act {
            Act::Publish => Some(revision()?.frozen.reason.clone()),
            Act::Withdraw => match &revision()?.standing {
                Standing::Withdrawn { reason, .. } => Some(reason.clone()),
                _ => None,
            },
            Act::Decide => {
                let round = self
                    .rounds
                    .iter()
                    .find(|it| Some(it.id.as_str()) == id("round"))?;
                round.decision.as_ref()?.reason.clone()
            }
            Act::DecideInspection => {
                let mut all = self.inspections.iter();
                let inspection = all.find(|it| Some(it.id.as_str()) == id("inspection"))?;
                inspection.decision.as_ref()?.reason.clone()
            }
            _ => None,
        }
        .filter(|quote| !quote.is_empty())
    }
}
