//! What the measurements of a round say: causes with the figures that carry them, what to measure
//! again, what there is not enough data for, what to watch, and a picture of every point.
//!
//! All of it follows from `sample::evaluation`, which `fellseam evaluate` asks as well.

use std::collections::BTreeSet;
use std::sync::Arc;

use askama::Template;
use moka::sync::Cache;
use tokio::task::spawn_blocking;

use crate::access::Side;
use crate::language::{Evaluated, Language, Text, shown};
use crate::sample::contract::{Contract, Piece, Reading};
use crate::sample::evaluation::{Earlier, Evaluation, evaluate, failed};
use crate::sample::finding::{Cause, Finding};
use crate::spec::{ItemId, PieceId, RoundId};
use crate::store::Round;
use crate::web::App;
use crate::web::figures::Figures;
use crate::web::problem::Problem;

use super::picture::{Lines, Strip, lines, strips};

#[derive(Template)]
#[template(path = "both/judgement.html")]
pub struct Judgement {
    t: Text,
    findings: Vec<Found>,
    again: Vec<String>,
    disputes: Vec<String>,
    lacks: Vec<String>,
    watch: Vec<String>,
    /// How well a value can be repeated, and how that is known.
    repeats: String,
    /// The points that failed in an earlier round.
    pub watched: BTreeSet<ItemId>,
    /// Of the points that are out or watched, then of the others, in the order of the chart.
    strips: [Vec<Strip>; 2],
    /// Of points that were measured in two sizes or more, in the same two groups.
    lines: [Vec<Lines>; 2],
    /// Steps between the sizes that were measured.
    steps: Vec<StepsOf>,
    /// Whether both sides measured, so that marks have to say whose they are.
    both: bool,
}

/// A cause.
struct Found {
    sentence: String,
    rests_on: String,
    /// What to do to the pattern, where the figures say it.
    correction: Option<String>,
    /// Id, letter and name of the points that show it.
    points: Vec<(ItemId, String)>,
}

/// The steps of one point.
struct StepsOf {
    name: String,
    steps: Vec<StepLine>,
}

struct StepLine {
    sizes: String,
    asked: String,
    got: String,
    more: String,
}

/// How many evaluations are kept.
const KEPT: u64 = 200;

/// What rounds were evaluated to, by what that follows from: the language of its words, and of the
/// round and those before it how much was measured, which only grows. Whoever asks for one that is
/// being made waits for it.
pub struct Judged(Cache<Key, Arc<Evaluation>>);

type Key = (Language, Vec<(RoundId, usize)>);

impl Default for Judged {
    fn default() -> Self {
        Self(Cache::new(KEPT))
    }
}

/// Judges a round beside those before it; `None` while nothing was measured.
pub async fn judge(
    app: &App,
    t: Text,
    round: &Round,
    before: &[Round],
) -> Result<Option<Judgement>, Problem> {
    if round.measurements.is_empty() {
        return Ok(None);
    }
    let contract = Contract::of(&round.frozen.spec, &round.frozen.chart);
    let pieces = pieces(t, round);
    let before = before
        .iter()
        .filter(|it| it.org == round.org && it.number < round.number)
        .filter(|it| it.state.is_decided());
    let rounds = before.clone().chain([round]);
    let rounds = rounds.map(|it| (it.id.clone(), it.measurements.len()));
    let key = (t.language(), rounds.collect());
    let earlier: Vec<Earlier> = before
        .map(|it| Earlier {
            round: t
                .say("rounds-title")
                .with("kind", t.name(&it.kind))
                .with("number", it.number)
                .to_string(),
            failed: failed(
                &Contract::of(&it.frozen.spec, &it.frozen.chart),
                &self::pieces(t, it),
            ),
        })
        .collect();
    // Many pieces take a while: other pages are served meanwhile.
    let app = app.clone();
    let make = move || Arc::new(evaluate(&contract, &pieces, &earlier));
    let evaluation = spawn_blocking(move || app.judged.0.get_with(key, make)).await;
    let evaluation = evaluation.map_err(|cause| Problem::fault(&cause))?;
    Ok(Some(Judgement::of(t, round, &evaluation)))
}

/// The pieces with what each side measured; the brand's comes last, since it decides.
fn pieces(t: Text, round: &Round) -> Vec<Piece> {
    let reading = |piece: &PieceId, side: Side| Reading {
        by: t.name(&side).to_string(),
        values: round.values(piece, Some(side)),
    };
    let pieces = round.pieces.iter().map(|piece| Piece {
        id: piece.id.clone(),
        size: piece.size.clone(),
        readings: [Side::Factory, Side::Brand]
            .into_iter()
            .map(|side| reading(&piece.id, side))
            .filter(|it| !it.values.is_empty())
            .collect(),
    });
    pieces.collect()
}

impl Judgement {
    fn of(t: Text, round: &Round, evaluation: &Evaluation) -> Judgement {
        let item = |id: &ItemId| named(round, id);
        let piece = |id: &PieceId| {
            let found = round.pieces.iter().find(|piece| piece.id == *id);
            found.map_or_else(String::new, |piece| piece.number.to_string())
        };
        let figures = Figures::of(&round.frozen);
        let said = Evaluated {
            t,
            item: &item,
            piece: &piece,
            unit: figures.unit,
            sign: figures.sign,
        };
        let diagnosis = evaluation.diagnosis.as_ref();
        let findings = diagnosis.map_or(&[][..], |it| &it.findings);
        let again = diagnosis.map_or(&[][..], |it| &it.again);
        let lacks = diagnosis.map_or(&[][..], |it| &it.lacks);
        let watched = evaluation.watch.iter().map(|it| it.point.clone());
        let watched: BTreeSet<ItemId> = watched.collect();
        Judgement {
            t,
            findings: findings.iter().map(|it| found(&said, it)).collect(),
            again: again.iter().map(|it| said.again(it).to_string()).collect(),
            disputes: evaluation
                .disputes
                .iter()
                .map(|it| said.dispute(it).to_string())
                .collect(),
            lacks: lacks.iter().map(|it| said.lack(it).to_string()).collect(),
            watch: evaluation
                .watch
                .iter()
                .map(|it| said.watched(it).to_string())
                .collect(),
            repeats: diagnosis.map_or_else(String::new, |it| {
                said.repeatability(it.repeatability).to_string()
            }),
            strips: strips(round, &watched),
            lines: lines(round, evaluation),
            steps: steps(round, evaluation),
            both: Side::ALL
                .iter()
                .all(|side| round.measurements.iter().any(|it| it.side == *side)),
            watched,
        }
    }
}

/// Letter and name of an item, a size's code.
pub fn named(round: &Round, id: &ItemId) -> String {
    let spec = &round.frozen.spec;
    if let Some(size) = spec.size(id) {
        return size.code.clone();
    }
    spec.item(id).map_or_else(String::new, |item| {
        format!("{} {}", item.letter(), item.name())
            .trim()
            .to_owned()
    })
}

fn found(said: &Evaluated<'_>, finding: &Finding) -> Found {
    let figures = &finding.figures;
    let by_length = matches!(finding.cause, Cause::BasePattern | Cause::SizePattern);
    let by = figures.by.filter(|_| by_length);
    let factor = figures
        .correction
        .map(|it| format!("× {}", it.show(said.sign)));
    Found {
        sentence: said.finding(finding).to_string(),
        rests_on: said.figures(finding).to_string(),
        correction: factor.or_else(|| by.map(|by| said.signed(-by))),
        points: finding
            .points
            .iter()
            .map(|id| (id.clone(), (said.item)(id)))
            .collect(),
    }
}

fn steps(round: &Round, evaluation: &Evaluation) -> Vec<StepsOf> {
    let figures = Figures::of(&round.frozen);
    let of_point = evaluation.steps.iter().filter_map(|(point, steps)| {
        let step = round.frozen.chart.row(point)?.step;
        let written = |length| shown(figures.difference(length, step));
        Some(StepsOf {
            name: named(round, point),
            steps: steps
                .iter()
                .map(|it| StepLine {
                    sizes: format!("{} → {}", named(round, &it.from), named(round, &it.to)),
                    asked: written(it.frozen),
                    got: written(it.actual),
                    more: written(it.more()),
                })
                .collect(),
        })
    });
    of_point.collect()
}
