//! Filling the fields from a sheet: what a spreadsheet put on the clipboard, or a file.

use super::cells::{Typed, field};
use crate::language::Text;
use crate::sample::pasted::{self, Known, Pasted, Unread};
use crate::spec::sheet::{NotASheet, Sheet};
use crate::store::Round;
use crate::web::App;
use crate::web::both::measure::points;
use crate::web::form::Form;
use crate::web::problem::Problem;

/// What came of it.
pub struct Filled {
    /// The number of the piece that columns without a head begin with.
    pub first: u32,
    /// How many values are there now, and what was left out.
    pub told: Vec<String>,
    /// Why nothing was read.
    pub errors: Vec<String>,
}

/// Puts what the sheet holds into the fields. Of a file with several sheets the first that has any
/// value counts.
pub async fn fill(
    t: Text,
    app: &App,
    round: &Round,
    typed: &mut Typed,
    form: &Form,
) -> Result<Filled, Problem> {
    let numbers: Vec<u32> = round.pieces.iter().map(|it| it.number).collect();
    let first = form.fields.number("first").unwrap_or(1);
    let mut filled = Filled {
        first,
        told: Vec::new(),
        errors: Vec::new(),
    };
    let Some(place) = numbers.iter().position(|it| *it == first) else {
        return Err(Problem::BadForm);
    };
    let known: Vec<Known<'_>> = points(round)
        .map(|point| Known {
            id: &point.id,
            letter: &point.letter,
            name: &point.name,
        })
        .collect();
    // Its first cell may be empty.
    let text = form.fields.raw("pasted");
    let sheets: Result<Vec<Sheet>, NotASheet> = match form.uploads.first() {
        Some(upload) => app.renderer.sheets(&upload.bytes).await,
        None if text.trim().is_empty() => {
            filled
                .errors
                .push(t.say("readings-nothing-pasted").to_string());
            return Ok(filled);
        }
        None => pasted::sheet(text, &known).map(|sheet| vec![sheet]),
    };
    let sheets = match sheets {
        Ok(sheets) => sheets,
        Err(why) => {
            filled.errors.push(t.not_a_sheet(&why).to_string());
            return Ok(filled);
        }
    };
    let mut first_wrong = None;
    for sheet in &sheets {
        match pasted::read(sheet, &known, &numbers, place) {
            Ok(pasted) if pasted.values.is_empty() && pasted.unreadable.is_empty() => {}
            Ok(pasted) => {
                put(t, round, typed, &pasted, &mut filled);
                return Ok(filled);
            }
            Err(why) => {
                first_wrong.get_or_insert(why);
            }
        }
    }
    filled.errors.push(match first_wrong {
        Some(why) => unread(t, why),
        None => t.say("sheet-nothing").to_string(),
    });
    Ok(filled)
}

fn put(t: Text, round: &Round, typed: &mut Typed, pasted: &Pasted, filled: &mut Filled) {
    for value in &pasted.values {
        let point = points(round).find(|it| it.id == value.point);
        if let (Some(piece), Some(point)) = (round.pieces.get(value.piece), point) {
            typed.put(field(piece, point), value.text.clone());
        }
    }
    filled.told.push(
        t.say("readings-filled")
            .with("count", pasted.values.len())
            .to_string(),
    );
    let unknown = pasted.unknown.iter().map(|(place, words)| {
        t.say("readings-unknown")
            .with("cell", place.to_string())
            .with("words", words)
    });
    let unreadable = pasted.unreadable.iter();
    let unreadable =
        unreadable.map(|place| t.say("readings-unreadable").with("cell", place.to_string()));
    filled
        .told
        .extend(unknown.chain(unreadable).map(|it| it.to_string()));
}

fn unread(t: Text, why: Unread) -> String {
    match why {
        Unread::NoPoints { rows, points } => t
            .say("readings-no-points")
            .with("rows", rows)
            .with("points", points),
        Unread::Columns { columns, pieces } => t
            .say("readings-columns")
            .with("columns", columns)
            .with("pieces", pieces),
        Unread::Twice { piece } => t.say("readings-twice").with("piece", piece),
    }
    .to_string()
}
