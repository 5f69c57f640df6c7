//! What was entered of the pieces, as it is told.

use std::collections::BTreeMap;

use crate::exchange::inspection::Class;
use crate::language::{Beside, Text};
use crate::sample::deviation::columns;
use crate::spec::{ItemId, Time};
use crate::store::{InspectedPiece, Inspection, JudgedPiece};
use crate::web::both::sealing::named;
use crate::web::figures::Figures;
use crate::web::frame::name_or_erased;

/// A piece with something wrong.
pub struct PieceLine {
    pub number: u32,
    pub sort: String,
    /// What the piece counts as.
    pub class: Class,
    pub shape: &'static str,
    pub who: String,
    pub at: Time,
    pub language: String,
    pub defects: Vec<DefectLine>,
    /// Where it is corrected, while it may be.
    pub correct: Option<String>,
}

pub struct DefectLine {
    pub class: Class,
    /// What of the spec it is on; empty where that was not said.
    pub item: String,
    pub beside: Option<Beside>,
    pub times: u32,
    /// Of a measured point: `▼ −1/2`.
    pub off: Option<String>,
    /// `None`: erased; empty where there are none.
    pub words: Option<String>,
}

/// An entry that a newer one has taken the place of.
pub struct Corrected {
    pub number: u32,
    pub who: String,
    pub at: Time,
    pub said: String,
}

/// The shape beside the word of a class.
pub fn shape(class: Class) -> &'static str {
    match class {
        Class::Critical => "stop",
        Class::Major => "fix",
        Class::Minor => "half",
    }
}

/// The pieces with something wrong, and of the others the number with what they are.
pub fn told(
    t: Text,
    inspection: &Inspection,
    base: &str,
    open: bool,
) -> (Vec<PieceLine>, Vec<(u32, String)>) {
    let (mut found, mut sound) = (Vec::new(), Vec::new());
    for (number, judged) in inspection.judged() {
        let entry = judged.entry;
        let Some(class) = judged.worst else {
            sound.push((number, sort(inspection, entry)));
            continue;
        };
        found.push(PieceLine {
            number,
            sort: sort(inspection, entry),
            class,
            shape: shape(class),
            who: name_or_erased(t, entry.person.as_deref()),
            at: entry.at.clone(),
            language: entry.language.clone(),
            defects: defects(t, inspection, &judged),
            correct: open.then(|| format!("{base}/piece?number={number}")),
        });
    }
    (found, sound)
}

/// Colourway and size.
fn sort(inspection: &Inspection, entry: &InspectedPiece) -> String {
    let spec = &inspection.frozen.spec;
    let colourway = spec.item(&entry.sort.colourway);
    let size = spec.size(&entry.sort.size);
    let (colourway, size) = (
        colourway.map_or("", |it| it.name()),
        size.map_or("", |it| it.code.as_str()),
    );
    format!("{colourway} · {size}")
}

fn defects(t: Text, inspection: &Inspection, judged: &JudgedPiece<'_>) -> Vec<DefectLine> {
    let frozen = &inspection.frozen;
    let spec = &frozen.spec;
    let item = |id: &ItemId| {
        let beside = spec.item(id).and_then(|it| t.beside(frozen, it.name()));
        (named(spec, id), beside)
    };
    let seen = judged.entry.defects.iter().map(|defect| {
        let (item, beside) = defect.item.as_ref().map(item).unwrap_or_default();
        DefectLine {
            class: defect.class,
            item,
            beside,
            times: defect.times,
            off: None,
            words: defect.words.clone(),
        }
    });
    let figures = Figures::of(frozen);
    let columns = columns(spec, &frozen.chart);
    let column = columns.get(&judged.entry.sort.size);
    let measured = judged.out.iter().filter_map(|(point, class)| {
        let limits = column?.get(point)?;
        let deviation = limits.judge(judged.entry.values.get(point)?.nm);
        let step = frozen.chart.row(point)?.step;
        let (item, beside) = item(point);
        Some(DefectLine {
            class: *class,
            item,
            beside,
            times: 1,
            off: Some(format!(
                "{} {}",
                deviation.verdict.mark(),
                figures.difference(deviation.d, step)
            )),
            words: Some(String::new()),
        })
    });
    seen.chain(measured).collect()
}

/// The entries that do not count any more, oldest first.
pub fn corrected(t: Text, inspection: &Inspection) -> Vec<Corrected> {
    let newest: BTreeMap<u32, _> = inspection.newest();
    let older = inspection.entries.iter();
    let older = older.filter(|it| newest.get(&it.piece).is_some_and(|now| now.id != it.id));
    let spec = &inspection.frozen.spec;
    let line = |entry: &InspectedPiece| {
        let defects = entry.defects.iter().map(|defect| {
            let item = defect.item.as_ref().map(|it| named(spec, it));
            let class = t.name(&defect.class).to_string();
            match item {
                Some(item) => format!("{class}: {item}"),
                None => class,
            }
        });
        let defects: Vec<String> = defects.collect();
        let measured = entry.values.len();
        let mut said = match defects.is_empty() {
            true => t.say("inspection-no-defect").to_string(),
            false => defects.join(", "),
        };
        if measured > 0 {
            let values = t.say("inspection-measured").with("count", measured);
            said = format!("{said} · {values}");
        }
        Corrected {
            number: entry.piece,
            who: name_or_erased(t, entry.person.as_deref()),
            at: entry.at.clone(),
            said: format!("{} · {said}", sort(inspection, entry)),
        }
    };
    older.map(line).collect()
}
