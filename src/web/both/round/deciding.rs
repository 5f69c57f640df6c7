//! The form that decides a round, as the brand is shown it.

use std::collections::BTreeSet;

use crate::access::act;
use crate::exchange::round::{self, Change, Deciding, Outcome};
use crate::language::Text;
use crate::sample::deviation::{Summary, columns};
use crate::spec::ItemId;
use crate::spec::document::Point;
use crate::store::Round;
use crate::web::figures::Figures;
use crate::web::form::Fields;
use crate::web::refusal::WayOn;

use super::next::Reader;

/// How many changes can be named beside those that are suggested.
const FREE: usize = 2;

/// The form as it stands.
pub struct DecideForm {
    /// The outcomes that the rules allow now.
    pub outcomes: Vec<Outcome>,
    pub chosen: Option<Outcome>,
    /// One for each point that is out of tolerance, in the order of the points.
    pub suggestions: Vec<Suggestion>,
    /// Changes of other items.
    pub free: Vec<(String, String)>,
    /// What such a change can be about: id, letter, name.
    pub items: Vec<(ItemId, String)>,
    pub reason: String,
    /// Why the rules refused what was sent, and where to go from there.
    pub refused: Option<(String, Vec<WayOn>)>,
}

/// A change that the measurements ask for.
pub struct Suggestion {
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    pub critical: bool,
    pub ticked: bool,
    pub text: String,
}

/// What was sent.
pub struct Sent {
    pub outcome: Option<Outcome>,
    pub changes: Vec<Change>,
    pub free: Vec<(String, String)>,
    pub reason: String,
    pub refused: Option<(String, Vec<WayOn>)>,
}

impl Sent {
    /// Reads the form. Changes count only for the outcome that asks for some.
    pub fn read(fields: &Fields) -> Sent {
        let ticked = fields.all("change").map(|item| Change {
            item: ItemId::new(item),
            text: fields.text(&format!("text-{item}")).to_owned(),
        });
        let free = fields.all("other-item").zip(fields.all("other-text"));
        let free: Vec<(String, String)> = free
            .map(|(item, text)| (item.to_owned(), text.to_owned()))
            .collect();
        let named = free
            .iter()
            .filter(|(item, text)| !(item.is_empty() && text.is_empty()));
        let named = named.map(|(item, text)| Change {
            item: ItemId::new(item.clone()),
            text: text.clone(),
        });
        Sent {
            outcome: Outcome::from_name(fields.text("outcome")),
            changes: ticked.chain(named).collect(),
            free,
            reason: fields.text("reason").to_owned(),
            refused: None,
        }
    }
}

impl DecideForm {
    /// The form for this reader, as it was sent before if it was; `None` when there is nothing to
    /// decide, or not by them.
    pub fn of(t: Text, round: &Round, reader: &Reader, sent: Option<Sent>) -> Option<DecideForm> {
        let outcomes = outcomes(round, reader);
        if reader.also::<act::Decide>().is_err() || outcomes.is_empty() {
            return None;
        }
        let mut suggestions = if outcomes.contains(&Outcome::ApprovedWithChanges) {
            suggestions(t, round)
        } else {
            Vec::new()
        };
        let mut form = DecideForm {
            outcomes,
            chosen: None,
            free: vec![(String::new(), String::new()); FREE],
            items: items(round),
            reason: String::new(),
            refused: None,
            suggestions: Vec::new(),
        };
        if let Some(sent) = sent {
            for suggestion in &mut suggestions {
                let change = sent.changes.iter().find(|it| it.item == suggestion.item);
                suggestion.ticked = change.is_some();
                if let Some(change) = change {
                    suggestion.text.clone_from(&change.text);
                }
            }
            form.chosen = sent.outcome;
            if !sent.free.is_empty() {
                form.free = sent.free;
            }
            form.reason = sent.reason;
            form.refused = sent.refused;
        }
        form.suggestions = suggestions;
        Some(form)
    }

    pub fn is_chosen(&self, outcome: &Outcome) -> bool {
        self.chosen == Some(*outcome)
    }

    pub fn takes_changes(&self) -> bool {
        self.outcomes.contains(&Outcome::ApprovedWithChanges)
    }
}

/// Which outcomes the rules allow, with all that a form could bring.
fn outcomes(round: &Round, reader: &Reader) -> Vec<Outcome> {
    let items = round.frozen.spec.items().map(|item| item.id().clone());
    let items: BTreeSet<ItemId> = items.collect();
    let change = items.first().map(|item| Change {
        item: item.clone(),
        text: "-".to_owned(),
    });
    let allowed = |outcome: &Outcome| {
        let with = Deciding {
            outcome: *outcome,
            reason: "-",
            changes: change.as_slice(),
            items: &items,
            measured: round.measurements.len(),
            critical_out: &BTreeSet::new(),
        };
        round::decide(round.state, reader.actor(), &with).is_ok()
    };
    Outcome::ALL.into_iter().filter(allowed).collect()
}

fn items(round: &Round) -> Vec<(ItemId, String)> {
    let spec = &round.frozen.spec;
    let points = spec.points.points.iter();
    let points = points.map(|point| (&point.id, &point.letter, &point.name));
    let parts = spec.colourways.parts.iter();
    let parts = parts.map(|part| (&part.id, &part.letter, &part.name));
    points
        .chain(parts)
        .map(|(id, letter, name)| (id.clone(), format!("{letter} {name}")))
        .collect()
}

fn suggestions(t: Text, round: &Round) -> Vec<Suggestion> {
    let points = round.frozen.spec.points.points.iter();
    points
        .filter_map(|point| {
            Some(Suggestion {
                item: point.id.clone(),
                letter: point.letter.clone(),
                name: point.name.clone(),
                critical: point.critical,
                ticked: true,
                text: suggestion(t, round, point)?,
            })
        })
        .collect()
}

/// What to write of a point that is out of tolerance on some piece; `None`: on none.
fn suggestion(t: Text, round: &Round, point: &Point) -> Option<String> {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let row = round.frozen.chart.row(&point.id)?;
    let figures = Figures::of(&round.frozen);
    // Of each size that is out, as written; sizes may have tolerances of their own.
    let mut tolerances: Vec<(String, String)> = Vec::new();
    let found = round.pieces.iter().filter_map(|piece| {
        let limits = columns.get(&piece.size)?.get(&point.id)?;
        let value = *round.values(&piece.id, None).get(&point.id)?;
        let judged = limits.judge(value);
        let size = round.frozen.spec.size(&piece.size)?;
        judged.verdict.is_out().then(|| {
            let tolerance = figures.tolerance(limits.minus, limits.plus, row.step);
            if !tolerances.iter().any(|(code, _)| *code == size.code) {
                tolerances.push((size.code.clone(), tolerance));
            }
            t.say("rounds-suggestion-piece")
                .with("piece", piece.number)
                .with("size", &size.code)
                .with("measured", figures.value(value, row.step))
                .with("spec", figures.value(limits.spec, row.step))
                .with("off", figures.difference(judged.d, row.step))
                .to_string()
        })
    });
    let found: Vec<String> = found.collect();
    let (_, first) = tolerances.first()?;
    let tolerance = if tolerances.iter().all(|(_, tolerance)| tolerance == first) {
        first.clone()
    } else {
        let each = tolerances.iter();
        let each = each.map(|(code, tolerance)| format!("{code} {tolerance}"));
        each.collect::<Vec<_>>().join(", ")
    };
    Some(
        t.say("rounds-suggestion")
            .with("pieces", found.join(" "))
            .with("tolerance", tolerance)
            .with("unit", figures.unit.symbol())
            .to_string(),
    )
}

/// The critical points that are out of tolerance: letter, name, and on how many pieces.
pub fn critical(round: &Round, summary: &Summary) -> Vec<(String, String, usize)> {
    summary
        .critical_out
        .iter()
        .filter_map(|(id, pieces)| {
            let point = round.frozen.spec.point(id)?;
            Some((point.letter.clone(), point.name.clone(), *pieces))
        })
        .collect()
}
