//! The answer of `fellseam evaluate`.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::paper::Paper;
use crate::language::{Evaluated, Text};
use crate::sample::deviation::Verdict;
use crate::sample::evaluation::{Evaluation, evaluate, failed};
use crate::sample::finding::{Finding, Lack, Repeatability, RepeatedBy};
use crate::sample::wash::washed;
use crate::spec::document::{Direction, Word};
use crate::spec::{ItemId, Length, PieceId};

#[derive(Serialize)]
pub struct Answer {
    measured: usize,
    missing: usize,
    out: usize,
    /// Critical points that are out, with the number of pieces.
    critical_out: BTreeMap<ItemId, usize>,
    /// How far a value can be repeated. Left out when nothing was measured.
    #[serde(skip_serializing_if = "Option::is_none")]
    repeatability: Option<Repeated>,
    findings: Vec<Found>,
    /// What to measure again, and what to agree on first.
    again: Vec<AtPoint>,
    disputes: Vec<AtPoint>,
    not_enough_data: Vec<Lacking>,
    watch: Vec<Watching>,
    /// For `earlier` of the next round.
    failed: BTreeSet<ItemId>,
    verdicts: Vec<Judgement>,
    steps: Vec<Steps>,
    wash: Vec<Washing>,
}

/// A length in nanometres and as the file would write it.
#[derive(Serialize)]
struct Written {
    nm: Length,
    value: String,
}

#[derive(Serialize)]
struct Repeated {
    source: &'static str,
    deviation: Written,
    /// About what the findings explain.
    scatter: Written,
    sentence: String,
}

#[derive(Serialize)]
struct Found {
    cause: &'static str,
    /// Only what was written is wrong, as far as can be told.
    entry: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    fabric: Option<ItemId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    direction: Option<&'static str>,
    points: Vec<ItemId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    size: Option<ItemId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    really: Option<ItemId>,
    pieces: Vec<PieceId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    slip: Option<&'static str>,
    figures: Figures,
    sentence: String,
    /// The figures in words.
    rests_on: String,
}

#[derive(Serialize)]
struct Figures {
    readings: usize,
    same_side: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    by: Option<Written>,
    /// In percent.
    #[serde(skip_serializing_if = "Option::is_none")]
    share: Option<String>,
    /// What the pattern is multiplied with.
    #[serde(skip_serializing_if = "Option::is_none")]
    correction: Option<String>,
    before: Written,
    left: Written,
}

#[derive(Serialize)]
struct AtPoint {
    piece: PieceId,
    point: ItemId,
    sentence: String,
}

#[derive(Serialize)]
struct Lacking {
    what: &'static str,
    sentence: String,
}

#[derive(Serialize)]
struct Watching {
    point: ItemId,
    out: usize,
    measured: usize,
    sentence: String,
}

#[derive(Serialize)]
struct Judgement {
    piece: PieceId,
    size: ItemId,
    point: ItemId,
    letter: String,
    critical: bool,
    spec: Written,
    minus: Written,
    plus: Written,
    measured: Written,
    /// measured − spec.
    deviation: Written,
    verdict: &'static str,
    /// How far beyond the tolerance.
    #[serde(skip_serializing_if = "Option::is_none")]
    by: Option<Written>,
    /// How much of the tolerance is used up, in thousandths; left out where there is none.
    #[serde(skip_serializing_if = "Option::is_none")]
    used_permille: Option<u64>,
}

#[derive(Serialize)]
struct Steps {
    point: ItemId,
    steps: Vec<Step>,
}

#[derive(Serialize)]
struct Step {
    from: ItemId,
    to: ItemId,
    frozen: Written,
    actual: Written,
    more: Written,
    reverses: bool,
}

#[derive(Serialize)]
struct Washing {
    piece: PieceId,
    #[serde(skip_serializing_if = "Option::is_none")]
    fabric: Option<ItemId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    direction: Option<&'static str>,
    points: Vec<ItemId>,
    percent: String,
    /// Where washing changed it by more than measuring explains.
    #[serde(skip_serializing_if = "Option::is_none")]
    correction: Option<String>,
    sentence: String,
}

impl Answer {
    pub fn of(t: Text, paper: &Paper) -> Answer {
        let evaluation = evaluate(&paper.contract, &paper.pieces, &paper.earlier);
        let item = |id: &ItemId| match paper.names.get(id) {
            Some((letter, name)) => match format!("{letter} {name}").trim() {
                "" => id.as_str().to_owned(),
                named => named.to_owned(),
            },
            None => id.as_str().to_owned(),
        };
        let teller = Teller {
            said: Evaluated {
                t,
                item: &item,
                piece: &|piece| piece.as_str().to_owned(),
                unit: paper.unit,
                sign: paper.sign,
            },
            paper,
        };
        teller.answer(evaluation)
    }

    pub fn is_out(&self) -> bool {
        self.out > 0
    }
}

struct Teller<'a> {
    said: Evaluated<'a>,
    paper: &'a Paper,
}

impl Teller<'_> {
    fn answer(&self, evaluation: Evaluation) -> Answer {
        let said = &self.said;
        let diagnosis = evaluation.diagnosis.as_ref();
        let findings = diagnosis.map_or(&[][..], |it| &it.findings);
        let again = diagnosis.map_or(&[][..], |it| &it.again).iter();
        let lacks = diagnosis.map_or(&[][..], |it| &it.lacks).iter();
        Answer {
            measured: evaluation.summary.measured,
            missing: evaluation.summary.missing,
            out: evaluation.summary.out,
            failed: failed(&self.paper.contract, &self.paper.pieces),
            repeatability: diagnosis.map(|it| self.repeated(it.repeatability, it.scatter)),
            findings: findings.iter().map(|it| self.found(it)).collect(),
            again: again
                .map(|it| AtPoint {
                    piece: it.piece.clone(),
                    point: it.point.clone(),
                    sentence: said.again(it).to_string(),
                })
                .collect(),
            disputes: evaluation
                .disputes
                .iter()
                .map(|it| AtPoint {
                    piece: it.piece.clone(),
                    point: it.point.clone(),
                    sentence: said.dispute(it).to_string(),
                })
                .collect(),
            not_enough_data: lacks.map(|it| self.lacking(it)).collect(),
            watch: evaluation
                .watch
                .iter()
                .map(|it| Watching {
                    point: it.point.clone(),
                    out: it.out,
                    measured: it.measured,
                    sentence: said.watched(it).to_string(),
                })
                .collect(),
            verdicts: self.verdicts(&evaluation),
            steps: self.steps(&evaluation),
            wash: self.wash(),
            critical_out: evaluation.summary.critical_out,
        }
    }

    fn written(&self, nm: Length) -> Written {
        Written {
            nm,
            value: nm.exact(self.paper.unit, self.paper.sign),
        }
    }

    fn repeated(&self, repeatability: Repeatability, scatter: Length) -> Repeated {
        Repeated {
            source: RepeatedBy::name(repeatability.source),
            deviation: self.written(repeatability.deviation),
            scatter: self.written(scatter),
            sentence: self.said.repeatability(repeatability).to_string(),
        }
    }

    fn found(&self, finding: &Finding) -> Found {
        let figures = &finding.figures;
        let sign = self.paper.sign;
        Found {
            cause: finding.cause.name(),
            entry: finding.cause.is_entry(),
            fabric: finding.fabric.clone(),
            direction: finding.along.map(Direction::word),
            points: finding.points.clone(),
            size: finding.size.clone(),
            really: finding.really.clone(),
            pieces: finding.pieces.clone(),
            slip: finding.slip.map(|slip| slip.name()),
            figures: Figures {
                readings: figures.readings,
                same_side: figures.same_side,
                by: figures.by.map(|it| self.written(it)),
                share: figures.share.map(|it| it.show(sign)),
                correction: figures.correction.map(|it| it.show(sign)),
                before: self.written(figures.before),
                left: self.written(figures.left),
            },
            sentence: self.said.finding(finding).to_string(),
            rests_on: self.said.figures(finding).to_string(),
        }
    }

    fn lacking(&self, lack: &Lack) -> Lacking {
        Lacking {
            what: lack.name(),
            sentence: self.said.lack(lack).to_string(),
        }
    }

    fn verdicts(&self, evaluation: &Evaluation) -> Vec<Judgement> {
        let mut verdicts = Vec::new();
        for piece in &evaluation.pieces {
            for place in &self.paper.contract.points {
                let Some((limits, Some(deviation))) = piece.judged.points.get(&place.point) else {
                    continue;
                };
                let (verdict, by) = match deviation.verdict {
                    Verdict::Within => ("within", None),
                    Verdict::Over { by } => ("over", Some(by)),
                    Verdict::Under { by } => ("under", Some(by)),
                };
                let letter = self.paper.names.get(&place.point);
                verdicts.push(Judgement {
                    piece: piece.piece.clone(),
                    size: piece.size.clone(),
                    point: place.point.clone(),
                    letter: letter.map_or(String::new(), |(letter, _)| letter.clone()),
                    critical: limits.critical,
                    spec: self.written(limits.spec),
                    minus: self.written(limits.minus),
                    plus: self.written(limits.plus),
                    measured: self.written(deviation.measured),
                    deviation: self.written(deviation.d),
                    verdict,
                    by: by.map(|it| self.written(it)),
                    used_permille: deviation.used.map(|used| used.permille()),
                });
            }
        }
        verdicts
    }

    fn steps(&self, evaluation: &Evaluation) -> Vec<Steps> {
        let points = evaluation.steps.iter().map(|(point, steps)| Steps {
            point: point.clone(),
            steps: steps
                .iter()
                .map(|step| Step {
                    from: step.from.clone(),
                    to: step.to.clone(),
                    frozen: self.written(step.frozen),
                    actual: self.written(step.actual),
                    more: self.written(step.more()),
                    reverses: step.reverses(),
                })
                .collect(),
        });
        points.collect()
    }

    fn wash(&self) -> Vec<Washing> {
        let mut changes = Vec::new();
        for piece in &self.paper.pieces {
            let Some(after) = self.paper.washed.get(&piece.id) else {
                continue;
            };
            let washed = washed(&self.paper.contract, &piece.values(), after);
            changes.extend(washed.groups.iter().map(|group| {
                Washing {
                    piece: piece.id.clone(),
                    fabric: group.fabric.clone(),
                    direction: group.along.map(Direction::word),
                    points: group.points.clone(),
                    percent: group.together.percent.show(self.paper.sign),
                    correction: group
                        .is_carried()
                        .then(|| group.together.correction.show(self.paper.sign)),
                    sentence: self.said.wash(group).to_string(),
                }
            }));
        }
        changes
    }
}
