//! Letters anew, from A on in the order of the rows. A rule that follows another point follows the
//! same one afterwards, by its new letter.

use axum::Json;
use axum::extract::State;
use axum::response::IntoResponse;
use serde_json::{Map, Value, json};

use super::point_row::Row;
use super::regrade::{Basis, typed};
use crate::access::act;
use crate::spec::document::Grade;
use crate::spec::{ItemId, Spec, letters, rule};
use crate::web::App;
use crate::web::form::{Errors, Form};
use crate::web::may::MayOn;
use crate::web::page::Answer;

/// Letters the rows of a form, and writes the rules that name one anew. `old` is the draft as it
/// was saved. Empty rows get the letters after the last.
pub fn in_order(old: &Spec, basis: &Basis, rows: &mut [(ItemId, Row)]) {
    let names = basis.names(rows.iter().map(|(id, row)| (id, row.letter.as_str())));
    let written_by = basis.names(rows.iter().map(|(id, row)| (id, row.lettered.as_str())));
    let rules: Vec<Option<Grade>> = rows
        .iter()
        .map(|(id, row)| {
            let saved = old.point(id).and_then(|point| point.grade.as_ref());
            // What cannot be read stays as it was typed.
            let read = row.rule(&names, &written_by, saved).ok().flatten();
            read.filter(|rule| matches!(rule, Grade::Derived { .. }))
        })
        .collect();
    let others = old.items().filter(|item| item.is_lettered());
    let others = others.filter(|item| item.list() != "points");
    let mut next = letters::in_order(others.map(|item| item.letter()).collect());
    let (blank, whole): (Vec<_>, Vec<_>) = rows.iter_mut().partition(|row| row.1.is_blank());
    for (_, row) in whole.into_iter().chain(blank) {
        row.letter = next.next().unwrap_or_default();
        row.lettered = row.letter.clone();
    }
    let labels: Vec<(ItemId, String)> = rows
        .iter()
        .map(|(id, row)| (id.clone(), row.letter.clone()))
        .collect();
    let names = basis.names(labels.iter().map(|(id, letter)| (id, letter.as_str())));
    for ((_, row), rule) in rows.iter_mut().zip(rules) {
        if let Some(rule) = rule {
            row.grade = rule::write(&rule, &names);
        }
    }
}

/// The letters and rules of the rows that a script sends, all of them in their order. Nothing is
/// saved.
pub async fn live(may: MayOn<act::Write>, State(app): State<App>, form: Form) -> Answer {
    let review = may.permit.also()?;
    let draft = app.store.draft(&review).await?;
    let basis = Basis::read(&app, &review, &draft, &form.fields).await?;
    let mut rows = typed(may.who.t, &form.fields, &mut Errors::default())?;
    in_order(&draft.spec, &basis, &mut rows);
    let rows = rows.into_iter().map(|(_, row)| {
        let shown = json!({ "letter": row.letter, "grade": row.grade });
        (row.key, shown)
    });
    let rows: Map<String, Value> = rows.collect();
    Ok(Json(json!({ "rows": rows })).into_response())
}
