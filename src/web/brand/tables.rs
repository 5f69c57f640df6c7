//! The tables that ship with the program: what each row says, how far it was checked, and a better
//! value in its place.

use askama::Template;
use axum::extract::{Path, Query, State};
use serde::Deserialize;

use crate::access::act;
use crate::language::{Message, Text};
use crate::spec::book::{Book, Correction, NotCorrected, Row, Table};
use crate::spec::document::Word;
use crate::spec::table::Status;
use crate::store::{Corrected, NewCorrection};
use crate::web::App;
use crate::web::form::{Errors, Form};
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{May, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/tables_all.html")]
struct TablesPage {
    t: Text,
    frame: Frame,
    tables: Vec<Card>,
}

struct Card {
    table: Table,
    rows: usize,
    /// How many are not checked against the official text, and not corrected either.
    unchecked: usize,
    corrected: usize,
}

#[derive(Template)]
#[template(path = "brand/table.html")]
struct TablePage {
    t: Text,
    frame: Frame,
    table: Table,
    lines: Vec<Line>,
    only: Only,
}

/// A row as it counts now.
struct Line {
    key: String,
    name: String,
    /// The language of the values, where the row is of one.
    lang: String,
    says: String,
    /// The columns that hold something, with their names.
    values: Vec<(Message, String)>,
    status: Status,
    on: String,
    corrected: bool,
}

#[derive(Template)]
#[template(path = "brand/table_row.html")]
struct RowPage {
    t: Text,
    frame: Frame,
    table: Table,
    /// As it counts now.
    line: Line,
    /// As it ships.
    shipped: Line,
    /// Column, what it is called, and what stands in its field.
    fields: Vec<(&'static str, Message, String)>,
    status: Status,
    source: String,
    past: Vec<PastLine>,
    errors: Errors,
}

impl RowPage {
    /// The name of a column's field.
    fn at(&self, column: &str) -> String {
        at(column)
    }
}

struct PastLine {
    /// Nothing: the shipped row was taken again.
    values: Option<String>,
    status: Option<Status>,
    source: String,
    by: String,
    at: String,
}

/// Which rows are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Only {
    All,
    Unchecked,
    Corrected,
}

#[derive(Debug, Deserialize)]
pub struct Wish {
    only: Option<String>,
}

impl Only {
    const ALL: [Only; 3] = [Only::All, Only::Unchecked, Only::Corrected];

    fn word(self) -> &'static str {
        match self {
            Only::All => "all",
            Only::Unchecked => "unchecked",
            Only::Corrected => "corrected",
        }
    }

    /// `t` as templates hand it over.
    fn name(self, t: &Text) -> Message {
        t.say(match self {
            Only::All => "tables-only-all",
            Only::Unchecked => "tables-only-unchecked",
            Only::Corrected => "tables-only-corrected",
        })
    }

    fn takes(self, line: &Line) -> bool {
        match self {
            Only::All => true,
            Only::Unchecked => line.status != Status::Verified,
            Only::Corrected => line.corrected,
        }
    }
}

impl Line {
    fn new(t: Text, table: Table, row: &Row, correction: Option<&Correction>) -> Line {
        let values = correction.map_or(&row.values, |it| &it.values);
        let columns = table.columns().into_iter().zip(values);
        let columns = columns.filter(|(_, value)| !value.is_empty());
        let second = row.key.get(1).filter(|_| is_by_language(table));
        Line {
            key: row.key(),
            name: name(t, table, row),
            lang: second.cloned().unwrap_or_default(),
            says: row.says.clone(),
            values: columns
                .map(|(column, value)| (column_name(t, column), value.clone()))
                .collect(),
            status: correction.map_or(row.source.status, |it| it.status),
            on: correction.map_or(&row.source.on, |it| &it.on).clone(),
            corrected: correction.is_some(),
        }
    }
}

/// Whether the second half of a row's key is a language.
fn is_by_language(table: Table) -> bool {
    use Table::{ComponentNames, FibreNames, LabelPhrases, Terms};
    matches!(table, FibreNames | ComponentNames | LabelPhrases | Terms)
}

/// What a row is called: a word of the document, or the key itself.
fn name(t: Text, table: Table, row: &Row) -> String {
    let key = |at: usize| row.key.get(at).map_or("", String::as_str);
    let first = match table {
        Table::FibreNames => t.word("fibre", key(0)).to_string(),
        Table::ComponentNames => t.word("component", key(0)).to_string(),
        Table::LabelPhrases => t.word("phrase", key(0)).to_string(),
        Table::Seams => t.word("seam", key(0)).to_string(),
        Table::SafetyFigures | Table::SafetyBands => t.word("safety", key(0)).to_string(),
        Table::FibreRules => return t.word("market", key(0)).to_string(),
        Table::Stitches | Table::LetterCodes | Table::Terms => key(0).to_owned(),
    };
    match key(1) {
        "" => first,
        language => format!("{first}, {language}"),
    }
}

fn column_name(t: Text, column: &str) -> Message {
    t.word("column", column)
}

/// The page of all tables.
pub async fn show_all(may: May<act::Govern>, State(app): State<App>) -> Answer {
    let book = app.store.whole_book(&may.permit).await?;
    let t = may.who.t;
    let tables = Table::ALL.iter().map(|table| {
        let lines = lines(t, &book, *table);
        Card {
            table: *table,
            rows: lines.len(),
            unchecked: lines.iter().filter(|it| Only::Unchecked.takes(it)).count(),
            corrected: lines.iter().filter(|it| it.corrected).count(),
        }
    });
    page(&TablesPage {
        t,
        frame: may.who.frame(),
        tables: tables.collect(),
    })
}

fn lines(t: Text, book: &Book, table: Table) -> Vec<Line> {
    let rows = table.rows();
    rows.iter()
        .map(|row| Line::new(t, table, row, book.correction(table, row)))
        .collect()
}

/// One table.
pub async fn show(
    may: May<act::Govern>,
    State(app): State<App>,
    Path(table): Path<String>,
    Query(wish): Query<Wish>,
) -> Answer {
    let table = Table::from_word(&table).ok_or(Problem::NotFound)?;
    let only = wish.only.unwrap_or_default();
    let only = Only::ALL.into_iter().find(|it| it.word() == only);
    let only = only.unwrap_or(Only::All);
    let book = app.store.whole_book(&may.permit).await?;
    let mut lines = lines(may.who.t, &book, table);
    lines.retain(|line| only.takes(line));
    page(&TablePage {
        t: may.who.t,
        frame: may.who.frame(),
        table,
        lines,
        only,
    })
}

/// A row with the correction of it that counts, and all that became of it.
struct Case {
    table: Table,
    row: Row,
    correction: Option<Correction>,
    past: Vec<Corrected>,
    /// The corrections of all other rows.
    others: Vec<Correction>,
}

impl Case {
    async fn find(
        app: &App,
        may: &May<act::Govern>,
        table: &str,
        key: &str,
    ) -> Result<Case, Problem> {
        let table = Table::from_word(table).ok_or(Problem::NotFound)?;
        let row = table.row(key).ok_or(Problem::NotFound)?;
        let book = app.store.whole_book(&may.permit).await?;
        let correction = book.correction(table, &row).cloned();
        let others = book.corrections.iter();
        let others = others.filter(|it| !(it.table == table && it.row == key));
        Ok(Case {
            past: app.store.corrections(&may.permit, table, key).await?,
            others: others.cloned().collect(),
            table,
            row,
            correction,
        })
    }

    /// The page with what stands in its fields.
    fn page(&self, who: &Who, typed: &NewCorrection, errors: Errors) -> RowPage {
        let t = who.t;
        let columns = self.table.columns().into_iter();
        let past = self.past.iter().map(|past| PastLine {
            values: past.to.as_ref().map(|to| written(&to.values)),
            status: past.to.as_ref().map(|to| to.status),
            source: past
                .to
                .as_ref()
                .map_or(String::new(), |to| to.source.clone()),
            by: name_or_erased(t, past.by.as_deref()),
            at: past.at.minute(),
        });
        RowPage {
            t,
            frame: who.frame(),
            table: self.table,
            line: Line::new(t, self.table, &self.row, self.correction.as_ref()),
            shipped: Line::new(t, self.table, &self.row, None),
            fields: columns
                .zip(&typed.values)
                .map(|(column, value)| (column, column_name(t, column), value.clone()))
                .collect(),
            status: typed.status,
            source: typed.source.clone(),
            past: past.collect(),
            errors,
        }
    }

    /// What the fields begin with: what counts now.
    fn begun(&self) -> NewCorrection {
        match &self.correction {
            Some(correction) => NewCorrection {
                values: correction.values.clone(),
                status: correction.status,
                source: correction.source.clone(),
            },
            None => NewCorrection {
                values: self.row.values.clone(),
                status: Status::Verified,
                source: String::new(),
            },
        }
    }
}

/// Values that hold something, beside each other.
fn written(values: &[String]) -> String {
    let values = values.iter().filter(|value| !value.is_empty());
    let values: Vec<&str> = values.map(String::as_str).collect();
    values.join(" · ")
}

/// One row.
pub async fn show_row(
    may: May<act::Govern>,
    State(app): State<App>,
    Path((table, row)): Path<(String, String)>,
) -> Answer {
    let case = Case::find(&app, &may, &table, &row).await?;
    page(&case.page(&may.who, &case.begun(), Errors::default()))
}

pub async fn save_row(
    may: May<act::Govern>,
    State(app): State<App>,
    Path((table, row)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let case = Case::find(&app, &may, &table, &row).await?;
    let table = case.table;
    let back = format!("/tables/{}/{row}?said=saved", table.word());
    if form.fields.text("do") == "shipped" {
        if case.correction.is_some() {
            app.store.correct(&may.permit, table, &row, None).await?;
        }
        return go(&back);
    }
    let mut errors = Errors::default();
    let columns = table.columns().into_iter();
    let typed = NewCorrection {
        values: columns
            .map(|column| form.fields.line(t, &at(column), &mut errors))
            .collect(),
        status: Status::from_word(form.fields.text("status")).unwrap_or(Status::FromMemory),
        source: form.fields.line(t, "source", &mut errors),
    };
    if typed.source.is_empty() {
        errors.add("source", t.say("error-missing"));
    }
    if typed.status == Status::FromMemory {
        errors.add("status", t.say("error-choice-missing"));
    }
    if let Err(why) = case.tried(&typed) {
        let first = table.columns().into_iter().map(at);
        let field = match &why {
            NotCorrected::Sign { value } => {
                let mut wrong = first.zip(&typed.values).filter(|(_, it)| *it == value);
                wrong.next().map(|(field, _)| field)
            }
            _ => first.into_iter().next(),
        };
        let sentence = match why {
            NotCorrected::Sign { .. } => t.say("tables-sign"),
            _ => t.say("tables-unreadable"),
        };
        errors.add(field.unwrap_or_default(), sentence);
    }
    if !errors.is_empty() {
        return page_again(&case.page(&may.who, &typed, errors));
    }
    let permit = &may.permit;
    app.store.correct(permit, table, &row, Some(&typed)).await?;
    go(&back)
}

/// The name of a column's field.
fn at(column: &str) -> String {
    format!("value.{column}")
}

impl Case {
    /// Whether the tables make sense with it.
    fn tried(&self, typed: &NewCorrection) -> Result<Book, NotCorrected> {
        let correction = Correction {
            table: self.table,
            row: self.row.key(),
            values: typed.values.clone(),
            status: typed.status,
            on: self.row.source.on.clone(),
            source: typed.source.clone(),
        };
        let mut all = self.others.clone();
        all.push(correction);
        Book::corrected(all)
    }
}
