//! The three pages of an import.

use askama::Template;

use super::{Carried, CellLine, Chosen, Seen, Step, lines, name_of};
use crate::language::{FieldWords, Text};
use crate::spec::change::Version;
use crate::spec::import::{Field, Outcome, Why};
use crate::spec::sheet::{Place, Sheet, column_name};
use crate::spec::units::Unit;
use crate::spec::{DecimalSign, Section, Spec, StyleId, grade};
use crate::web::both::change_lines::{ChangeGroup, change_groups};
use crate::web::form::Errors;
use crate::web::frame::Frame;

/// So many cells of a column are shown beside its head.
const SAMPLES: usize = 3;

/// So many addresses are written out.
const ADDRESSES: usize = 12;

/// What stands around each of them.
pub struct Around {
    pub style: StyleId,
    pub number: String,
    pub name: String,
    pub section: Section,
}

impl Around {
    fn new(step: &Step) -> Around {
        let header = &step.draft.spec.header;
        Around {
            style: step.permit.style().clone(),
            number: header.number.clone(),
            name: header.name.clone(),
            section: step.section,
        }
    }

    fn draft(&self) -> String {
        format!("/styles/{}/draft/{}", self.style, self.section.name())
    }

    fn action(&self) -> String {
        format!("{}/import", self.draft())
    }
}

#[derive(Template)]
#[template(path = "brand/import_choose.html")]
pub struct ChoosePage {
    t: Text,
    frame: Frame,
    around: Around,
    no_sizes: bool,
    errors: Errors,
}

impl ChoosePage {
    pub fn new(step: &Step, errors: Errors) -> ChoosePage {
        ChoosePage {
            t: step.who.t,
            frame: step.who.frame(),
            around: Around::new(step),
            no_sizes: step.section == Section::Points && step.draft.spec.sizes.sizes.is_empty(),
            errors,
        }
    }
}

#[derive(Template)]
#[template(path = "brand/import_match.html")]
pub struct MatchPage {
    t: Text,
    frame: Frame,
    around: Around,
    carried: String,
    /// The names of the sheets.
    sheets: Vec<String>,
    sheet: usize,
    /// The row of the heads, counted from 1; 0 for none.
    head: u32,
    unit: Option<Unit>,
    columns: Vec<Column>,
    errors: Errors,
}

/// A column of the sheet, and what it may hold.
struct Column {
    name: String,
    label: String,
    samples: Vec<String>,
    choices: Vec<Choice>,
}

struct Choice {
    code: String,
    name: String,
    chosen: bool,
}

impl MatchPage {
    pub fn new(step: &Step, carried: &Carried, chosen: Chosen, errors: Errors) -> MatchPage {
        let sheet = &carried.sheets[chosen.sheet];
        let fields = Field::all(step.section, &step.draft.spec);
        let head = chosen.columns.head;
        let columns = chosen.columns.fields.iter().zip(0..);
        let columns = columns.filter(|(_, column)| !is_empty(sheet, *column));
        MatchPage {
            t: step.who.t,
            frame: step.who.frame(),
            around: Around::new(step),
            carried: carried.json.clone(),
            sheets: carried.sheets.iter().map(|it| it.name.clone()).collect(),
            sheet: chosen.sheet,
            head: head.map_or(0, |head| head + 1),
            unit: chosen.unit,
            columns: columns
                .map(|(held, column)| {
                    Column::new(step, sheet, head, column, &fields, held.as_ref())
                })
                .collect(),
            errors,
        }
    }

    fn is_sheet(&self, at: &usize) -> bool {
        self.sheet == *at
    }
}

fn is_empty(sheet: &Sheet, column: u32) -> bool {
    sheet.cells().all(|(place, _)| place.column != column)
}

impl Column {
    fn new(
        step: &Step,
        sheet: &Sheet,
        head: Option<u32>,
        column: u32,
        fields: &[Field],
        held: Option<&Field>,
    ) -> Column {
        let t = step.who.t;
        let letters = column_name(column);
        let title = head.map(|row| sheet.at(Place { row, column }).shown());
        let label = match title.filter(|title| !title.is_empty()) {
            Some(title) => t
                .say("import-column-head")
                .with("column", letters)
                .with("head", title),
            None => t.say("import-column").with("column", letters),
        };
        let below = sheet.cells().filter(|(place, cell)| {
            place.column == column
                && head.is_none_or(|head| place.row > head)
                && !cell.shown().is_empty()
        });
        Column {
            name: name_of(column),
            label: label.to_string(),
            samples: below
                .take(SAMPLES)
                .map(|(_, cell)| cell.shown().to_owned())
                .collect(),
            choices: fields
                .iter()
                .map(|field| Choice {
                    code: field.code(),
                    name: t.column(field, &step.draft.spec),
                    chosen: held == Some(field),
                })
                .collect(),
        }
    }
}

#[derive(Template)]
#[template(path = "brand/import_preview.html")]
pub struct PreviewPage {
    t: Text,
    frame: Frame,
    around: Around,
    carried: String,
    /// What was chosen, to be sent again: names and values.
    chosen: Vec<(String, String)>,
    seen: Seen,
    rows: usize,
    groups: Vec<ChangeGroup>,
    /// What is added, with all that is read of it.
    added: Vec<Added>,
    left: Vec<CellLine>,
    told: Vec<CellLine>,
    formulas: Option<String>,
    /// What the rows are read by was saved anew since the last look.
    moved: bool,
}

struct Added {
    name: String,
    fields: Vec<FieldWords>,
}

/// The items of a section that only the newer spec has.
fn added(t: Text, section: Section, old: &Spec, new: &Spec) -> Vec<Added> {
    let words = t.words(new, DecimalSign::Point);
    let items = new.items().filter(|item| item.section() == section);
    let items = items.filter(|item| old.item(item.id()).is_none());
    items
        .map(|item| Added {
            name: format!("{} {}", item.letter(), item.name()),
            fields: words.fields(&item.fields()),
        })
        .collect()
}

impl PreviewPage {
    pub fn new(
        step: &Step,
        carried: &Carried,
        chosen: Chosen,
        outcome: Outcome,
        moved: bool,
    ) -> PreviewPage {
        let (t, old, new) = (step.who.t, &step.draft.spec, &outcome.spec);
        let charts = [old, new].map(|spec| grade(spec).chart(spec));
        let version = |spec, chart| Version { spec, chart };
        let groups = change_groups(
            t,
            version(old, charts[0].as_ref()),
            version(new, charts[1].as_ref()),
            DecimalSign::Point,
            |_| None,
        );
        let (formulas, told): (Vec<_>, Vec<_>) = outcome
            .told
            .iter()
            .cloned()
            .partition(|it| it.why == Why::Formula);
        let cells: Vec<String> = formulas.iter().map(|it| it.place.to_string()).collect();
        let head = chosen.columns.head.map_or(0, |head| head + 1);
        let mut sent = vec![
            ("sheet".to_owned(), chosen.sheet.to_string()),
            ("head".to_owned(), head.to_string()),
            (
                "unit".to_owned(),
                chosen.unit.map_or("", Unit::name).to_owned(),
            ),
        ];
        let columns = chosen.columns.fields.iter().zip(0..);
        sent.extend(columns.filter_map(|(field, at)| Some((name_of(at), field.as_ref()?.code()))));
        PreviewPage {
            t,
            frame: step.who.frame(),
            around: Around::new(step),
            carried: carried.json.clone(),
            chosen: sent,
            seen: Seen::of(&step.draft, step.section),
            rows: outcome.rows,
            groups,
            added: added(t, step.section, old, new),
            left: lines(t, old, &outcome.left),
            told: lines(t, old, &told),
            formulas: (!cells.is_empty()).then(|| {
                t.say("import-formulas")
                    .with("count", cells.len())
                    .with("cells", addresses(t, &cells))
                    .to_string()
            }),
            moved,
        }
    }
}

fn addresses(t: Text, cells: &[String]) -> String {
    match cells.split_at_checked(ADDRESSES) {
        Some((first, rest)) if !rest.is_empty() => t
            .say("import-and-more")
            .with("cells", first.join(", "))
            .with("count", rest.len())
            .to_string(),
        _ => cells.join(", "),
    }
}
