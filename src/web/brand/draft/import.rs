//! A size chart or a list of materials from a sheet: the file, what its columns hold, what would
//! change, and only then the save.
//!
//! What was read of the file travels through the steps in the form itself, as text cells within the
//! limits of a sheet: nothing is kept here that would have to be cleared away, and each step reads
//! it as if it came for the first time.

mod pages;

use axum::extract::{Path, State};

use super::Sent;
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::import::{self, Columns, Field, Outcome};
use crate::spec::sheet::{MAX_SHEETS, NotASheet, Sheet};
use crate::spec::units::Unit;
use crate::spec::{ItemId, Section, Spec};
use crate::store::Draft;
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use pages::{ChoosePage, MatchPage, PreviewPage};

/// The cells of a file as a form carries them, in bytes of JSON.
const MOST: usize = 1024 * 1024;

/// The form of the file.
pub async fn show(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
) -> Answer {
    let section = imported(&section)?;
    let draft = app.store.draft(&may.permit.also()?).await?;
    let step = Step::new(app, may, section, draft);
    page(&ChoosePage::new(&step, Errors::default()))
}

/// Every step after it.
pub async fn submit(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    mut form: Form,
) -> Answer {
    let section = imported(&section)?;
    let draft = app.store.draft(&may.permit.also()?).await?;
    let step = Step::new(app, may, section, draft);
    let mut errors = Errors::default();
    if let Some(upload) = form.uploads.pop() {
        return match step
            .app
            .renderer
            .sheets(&upload.bytes)
            .await
            .and_then(Carried::new)
        {
            Ok(carried) => {
                let chosen = Chosen::guess(&step, &carried);
                page(&MatchPage::new(&step, &carried, chosen, errors))
            }
            Err(why) => {
                errors.add("file", step.who.t.not_a_sheet(&why));
                page_again(&ChoosePage::new(&step, errors))
            }
        };
    }
    if !form.fields.has("sheets") {
        errors.add("file", step.who.t.say("import-file-missing"));
        return page_again(&ChoosePage::new(&step, errors));
    }
    let carried = Carried::read(&form.fields)?;
    let chosen = Chosen::read(&step, &carried, &form.fields, &mut errors)?;
    let press = form.fields.text("do").to_owned();
    if press == "look" {
        let chosen = chosen.look_again(&step, &carried, &form.fields);
        return page(&MatchPage::new(&step, &carried, chosen, errors));
    }
    if press == "columns" {
        return page(&MatchPage::new(&step, &carried, chosen, Errors::default()));
    }
    chosen.check(&step, &mut errors);
    if !errors.is_empty() {
        return page_again(&MatchPage::new(&step, &carried, chosen, errors));
    }
    let outcome = step.read(&carried, &chosen);
    let seen = Seen::read(&form.fields);
    let saves = press == "save" && outcome.rows > 0;
    match seen.filter(|_| saves) {
        Some(seen) if seen.still(&step.draft) => save(step, form, seen, outcome).await,
        seen => page(&PreviewPage::new(
            &step,
            &carried,
            chosen,
            outcome,
            seen.is_some(),
        )),
    }
}

fn imported(section: &str) -> Result<Section, Problem> {
    let section = Section::from_name(section);
    let section = section.filter(|it| matches!(it, Section::Points | Section::Materials));
    section.ok_or(Problem::NotFound)
}

/// Saves over the version of the section that was looked at; whoever saved in between is met on
/// the page of the two versions.
async fn save(step: Step, form: Form, seen: Seen, outcome: Outcome) -> Answer {
    let sent = Sent {
        trial: None,
        app: step.app,
        who: step.who,
        permit: step.permit,
        section: step.section,
        draft: step.draft,
        form,
        base: seen.version,
    };
    go(&sent.keep(&outcome.spec, "").await?)
}

/// Who imports into what.
struct Step {
    app: App,
    who: Who,
    permit: StylePermit<act::Write>,
    section: Section,
    draft: Draft,
}

impl Step {
    fn new(app: App, may: MayOn<act::Write>, section: Section, draft: Draft) -> Step {
        Step {
            app,
            who: may.who,
            permit: may.permit,
            section,
            draft,
        }
    }

    fn read(&self, carried: &Carried, chosen: &Chosen) -> Outcome {
        let world = self.app.store.world();
        let mut new_id = || ItemId::new(world.id());
        import::read(
            &carried.sheets[chosen.sheet],
            self.section,
            &self.draft.spec,
            &chosen.columns,
            chosen.unit,
            &mut new_id,
        )
    }
}

/// The sheets of a file, as they go through the steps.
struct Carried {
    sheets: Vec<Sheet>,
    json: String,
}

impl Carried {
    fn new(sheets: Vec<Sheet>) -> Result<Carried, NotASheet> {
        let json = serde_json::to_string(&sheets).expect("text cells are JSON");
        match json.len() > MOST || sheets.is_empty() {
            true => Err(NotASheet::TooManyCells),
            false => Ok(Carried { sheets, json }),
        }
    }

    /// Errors: `BadForm` for what no page of ours sends.
    fn read(fields: &Fields) -> Result<Carried, Problem> {
        let text = fields.raw("sheets");
        if text.len() > MOST {
            return Err(Problem::TooLarge);
        }
        let sheets: Vec<Sheet> = serde_json::from_str(text).map_err(|_| Problem::BadForm)?;
        if sheets.len() > MAX_SHEETS || !sheets.iter().all(Sheet::fits) {
            return Err(Problem::BadForm);
        }
        Carried::new(sheets).map_err(|_| Problem::BadForm)
    }
}

/// Which sheet is read, and how.
struct Chosen {
    /// Among those of the file.
    sheet: usize,
    columns: Columns,
    unit: Option<Unit>,
}

impl Chosen {
    /// The sheet that has most columns with a name that is known.
    fn guess(step: &Step, carried: &Carried) -> Chosen {
        let known = |columns: &Columns| columns.fields.iter().flatten().count();
        let guesses = carried
            .sheets
            .iter()
            .map(|it| import::guess(it, step.section, &step.draft.spec));
        let guesses: Vec<Columns> = guesses.collect();
        let most = guesses.iter().map(known).max().unwrap_or_default();
        let sheet = guesses.iter().position(|it| known(it) == most);
        let sheet = sheet.unwrap_or_default();
        Chosen::of(step, carried, sheet, guesses[sheet].clone())
    }

    fn of(step: &Step, carried: &Carried, sheet: usize, columns: Columns) -> Chosen {
        let spoken = import::guess_unit(&carried.sheets[sheet], &columns);
        Chosen {
            sheet,
            columns,
            unit: spoken.or(step.draft.spec.header.unit),
        }
    }

    fn read(
        step: &Step,
        carried: &Carried,
        fields: &Fields,
        errors: &mut Errors,
    ) -> Result<Chosen, Problem> {
        let sheet: usize = fields.number("sheet").ok_or(Problem::BadForm)?;
        let content = carried.sheets.get(sheet).ok_or(Problem::BadForm)?;
        let choices = Field::all(step.section, &step.draft.spec);
        let field = |column| {
            let code = fields.text(&name_of(column)).to_owned();
            choices.iter().find(|field| field.code() == code).cloned()
        };
        let rows = u32::try_from(content.rows.len()).unwrap_or_default();
        let head = fields.number::<u32>("head").filter(|head| *head <= rows);
        if head.is_none() {
            errors.add("head", step.who.t.say("import-head-wrong"));
        }
        Ok(Chosen {
            sheet,
            columns: Columns {
                head: head.and_then(|head| head.checked_sub(1)),
                fields: (0..content.width()).map(field).collect(),
            },
            unit: Unit::from_name(fields.text("unit")),
        })
    }

    /// Another sheet is guessed anew; with another row of heads, what stands below each.
    fn look_again(self, step: &Step, carried: &Carried, fields: &Fields) -> Chosen {
        let sheet = &carried.sheets[self.sheet];
        let spec = &step.draft.spec;
        let columns = match (fields.number("was") == Some(self.sheet), self.columns.head) {
            (false, _) => import::guess(sheet, step.section, spec),
            (true, Some(head)) => import::below(sheet, head, step.section, spec),
            (true, None) => self.columns,
        };
        Chosen::of(step, carried, self.sheet, columns)
    }

    fn check(&self, step: &Step, errors: &mut Errors) {
        let t = step.who.t;
        if let Some(twice) = self.columns.twice() {
            let places = self.columns.fields.iter().zip(0..);
            let last = places
                .filter(|(field, _)| field.as_ref() == Some(twice))
                .last();
            let (_, column) = last.unwrap_or((&None, 0));
            let field = t.column(twice, &step.draft.spec);
            errors.add(
                name_of(column),
                t.say("import-field-twice").with("field", field),
            );
        }
        let missing = self.columns.sizes_missing(&step.draft.spec);
        if step.section == Section::Points && !missing.is_empty() {
            let codes: Vec<&str> = missing.iter().map(|size| size.code.as_str()).collect();
            let sizes = codes.join(", ");
            errors.add("columns", t.say("import-no-column").with("sizes", sizes));
        }
        if !self.columns.tells_rows() {
            errors.add("columns", t.say("import-no-names"));
        }
    }
}

/// The name of a column's field in the form.
fn name_of(column: u32) -> String {
    format!("column.{column}")
}

/// The versions that the preview was made over.
#[derive(Clone, Copy)]
struct Seen {
    /// Of the section itself.
    version: i64,
    /// Of what the rows are read by.
    header: i64,
    sizes: i64,
}

impl Seen {
    fn of(draft: &Draft, section: Section) -> Seen {
        let version = |section| draft.versions.get(&section).copied().unwrap_or_default();
        Seen {
            version: version(section),
            header: version(Section::Header),
            sizes: version(Section::Sizes),
        }
    }

    /// Nothing where the form comes from a step before the preview.
    fn read(fields: &Fields) -> Option<Seen> {
        Some(Seen {
            version: fields.number("version")?,
            header: fields.number("header_version")?,
            sizes: fields.number("sizes_version")?,
        })
    }

    /// Whether the rows would still be read as they were.
    fn still(&self, draft: &Draft) -> bool {
        let now = Seen::of(draft, Section::Header);
        (now.header, now.sizes) == (self.header, self.sizes)
    }
}

/// A line about a cell: its address, and what is said of what stands there.
pub struct CellLine {
    pub cell: String,
    pub sentence: String,
}

fn lines(t: Text, spec: &Spec, troubles: &[import::Trouble]) -> Vec<CellLine> {
    let line = |trouble: &import::Trouble| CellLine {
        cell: trouble.place.to_string(),
        sentence: t.trouble(trouble, spec).to_string(),
    };
    troubles.iter().map(line).collect()
}
