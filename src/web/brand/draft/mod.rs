//! The draft: a page a section, each saved by itself over the version that it was filled from.
//!
//! What somebody typed is kept as text in the page until it can be read: a form with an error comes
//! back as it was sent, with the sentence beside the field.

mod drawings;
pub mod colour;
mod colour_cell;
mod colourway_number;
mod colourways;
pub mod conflict;
mod described;
mod header;
pub mod import;
mod listed;
pub mod one;
mod point_row;
mod points;
pub mod regrade;
mod rows;
mod sizes;
mod strip;
mod told;
mod typed;

use axum::extract::{Path, Query, State};
use serde::Deserialize;

use self::colourway_number::ColourwayNumbers;
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::check::{Finding, Severity};
use crate::spec::document::{Held, Section};
use crate::spec::units::{DecimalSign, Unit};
use crate::spec::{Spec, StyleId, check_by, grade};
use crate::store::{Draft, LostSave, Saved, StoreError};
use crate::web::App;
use crate::web::both::export::{Download, downloads};
use crate::web::form::Form;
use crate::web::may::{MayOn, Who};
use crate::web::page::Answer;
use crate::web::problem::Problem;

/// What stands around the form of every section: the fields of `brand/draft.html` beside `t` and
/// `frame`.
pub struct SectionPage {
    pub style: StyleId,
    pub number: String,
    pub name: String,
    pub section: Section,
    /// The version that the form was filled from and saves over.
    pub version: i64,
    /// May save; a viewer only reads.
    pub writes: bool,
    pub steps: Vec<Step>,
    /// What is to be mended in this section.
    pub findings: Vec<Line>,
    /// Saves of the reader's own that somebody else's came before.
    pub lost: Vec<LostSave>,
}

/// One section in the line of progress.
pub struct Step {
    pub section: Section,
    pub begun: bool,
    pub errors: usize,
    pub warnings: usize,
}

/// A finding with the way to where it is mended.
pub struct Line {
    pub error: bool,
    pub code: &'static str,
    pub sentence: String,
    pub href: String,
}

impl SectionPage {
    pub async fn new(
        app: &App,
        t: Text,
        permit: &StylePermit<act::Review>,
        section: Section,
        draft: &Draft,
    ) -> Result<SectionPage, Problem> {
        let spec = &draft.spec;
        let book = app.store.book(permit).await?;
        let findings = check_by(&book, spec, &grade(spec));
        let writes = permit.also::<act::Write>().ok();
        Ok(SectionPage {
            style: permit.style().clone(),
            number: spec.header.number.clone(),
            name: spec.header.name.clone(),
            section,
            version: draft.versions.get(&section).copied().unwrap_or_default(),
            steps: steps(spec, &findings),
            findings: findings
                .iter()
                .filter(|finding| finding.section == section)
                .map(|finding| Line::new(t, permit.style(), spec, finding))
                .collect(),
            lost: match &writes {
                Some(writes) => app.store.lost_saves(writes).await?,
                None => Vec::new(),
            },
            writes: writes.is_some(),
        })
    }
}

impl SectionPage {
    /// The sheets that the section is written out in.
    fn downloads(&self) -> Vec<Download> {
        downloads(self.section)
    }
}

/// The line of progress of a draft with these findings.
pub fn steps(spec: &Spec, findings: &[Finding]) -> Vec<Step> {
    let count = |section, severity| {
        let same = |f: &&Finding| f.section == section && f.severity() == severity;
        findings.iter().filter(same).count()
    };
    let all = Section::ALL.iter().copied();
    all.map(|section| Step {
        section,
        begun: is_begun(spec, section),
        errors: count(section, Severity::Error),
        warnings: count(section, Severity::Warning),
    })
    .collect()
}

impl Line {
    pub fn new(t: Text, style: &StyleId, spec: &Spec, finding: &Finding) -> Line {
        let unit = spec.header.unit.unwrap_or(Unit::Cm);
        Line {
            error: finding.is_error(),
            code: finding.code.name(),
            sentence: t.finding(finding, unit, DecimalSign::Point).to_string(),
            href: place(style, finding),
        }
    }
}

/// The address of the field that a finding is about.
///
/// Fields of the header are named as in the document; those of a row `ITEM.FIELD`, the row itself
/// `row-ITEM`, a cell of the colour matrix `COLOURWAY.PART.kind`. What a grid has no room for is on
/// the item's own page.
pub fn place(style: &StyleId, finding: &Finding) -> String {
    let section = finding.section.name();
    let draft = format!("/styles/{style}/draft/{section}");
    if let (None, Some(item)) = (&finding.colourway, &finding.item)
        && one::has_page(finding.section, finding.field)
    {
        let field = finding.field.unwrap_or_default();
        return format!("{draft}/{item}#{item}.{field}");
    }
    let field = finding.field.map(|field| field.trim_start_matches("how."));
    let anchor = match (&finding.colourway, &finding.item, field) {
        (Some(colourway), Some(part), _) => format!("{colourway}.{part}.kind"),
        (None, Some(item), Some(field)) => format!("{item}.{field}"),
        (None, Some(item), None) => format!("row-{item}"),
        (_, None, Some(field)) => field.to_owned(),
        (_, None, None) => "section".to_owned(),
    };
    format!("{draft}#{anchor}")
}

fn is_begun(spec: &Spec, section: Section) -> bool {
    match section {
        Section::Header => true,
        Section::Sizes => !spec.sizes.sizes.is_empty(),
        Section::Drawings => !spec.drawings.drawings.is_empty(),
        Section::Points => !spec.points.points.is_empty(),
        Section::Colourways => {
            !spec.colourways.parts.is_empty() || !spec.colourways.colourways.is_empty()
        }
        Section::Materials => !spec.materials.is_absent(),
        Section::Construction => !spec.construction.is_absent(),
        Section::Artwork => !spec.artwork.is_absent(),
        Section::Labels => !spec.labels.is_absent(),
        Section::Packing => !spec.packing.is_absent(),
    }
}

/// What the end of a section's address asks for.
#[derive(Debug, Deserialize)]
pub struct Wish {
    /// So many empty rows more.
    more: Option<u8>,
    /// What is to be said of files that came with the form before.
    told: Option<String>,
}

/// The section's page.
pub async fn show(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    Query(wish): Query<Wish>,
) -> Answer {
    let section = Section::from_name(&section).ok_or(Problem::NotFound)?;
    let draft = app.store.draft(&may.permit).await?;
    let around = SectionPage::new(&app, may.who.t, &may.permit, section, &draft).await?;
    let more = wish.more.map_or(0, usize::from);
    let told = wish.told.unwrap_or_default();
    match section {
        Section::Header => header::show(&may.who, around, &draft),
        Section::Sizes => sizes::show(&may.who, around, &draft.spec, more),
        Section::Drawings => drawings::show(&may.who, around, &draft.spec, &told),
        Section::Points => points::show(&may.who, around, &draft, more),
        Section::Colourways => {
            let style = &draft.spec.header.number;
            let numbers = ColourwayNumbers::read(&app, &may.who, style).await?;
            colourways::show(&may.who, around, &numbers, &draft.spec, more)
        }
        Section::Materials
        | Section::Construction
        | Section::Artwork
        | Section::Labels
        | Section::Packing => listed::show(&may.who, around, &draft.spec, more, &told),
    }
}

/// The section's form.
pub async fn save(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let section = Section::from_name(&section).ok_or(Problem::NotFound)?;
    let draft = app.store.draft(&may.permit.also()?).await?;
    let sent = Sent {
        base: form.fields.number("version").ok_or(Problem::BadForm)?,
        app,
        who: may.who,
        permit: may.permit,
        section,
        draft,
        form,
    };
    match section {
        Section::Header => header::save(sent).await,
        Section::Sizes => sizes::save(sent).await,
        Section::Drawings => drawings::save(sent).await,
        Section::Points => points::save(sent).await,
        Section::Colourways => colourways::save(sent).await,
        Section::Materials
        | Section::Construction
        | Section::Artwork
        | Section::Labels
        | Section::Packing => listed::save(sent).await,
    }
}

/// A section's form as it was sent.
pub struct Sent {
    pub app: App,
    pub who: Who,
    pub permit: StylePermit<act::Write>,
    pub section: Section,
    /// The draft as it is now.
    pub draft: Draft,
    pub form: Form,
    /// The version that the form was filled from.
    pub base: i64,
}

impl Sent {
    /// What stands around the form when it comes back: it still saves over the version that it was
    /// filled from.
    pub async fn around(&self) -> Result<SectionPage, Problem> {
        let review = self.permit.also()?;
        let (app, t) = (&self.app, self.who.t);
        let around = SectionPage::new(app, t, &review, self.section, &self.draft).await?;
        Ok(SectionPage {
            version: self.base,
            ..around
        })
    }

    /// Saves the section of `spec`. Returns where to go: on with the section (`then` is the end
    /// of its address), or to the two versions when somebody else's save came before.
    pub async fn keep(&self, spec: &Spec, then: &str) -> Result<String, StoreError> {
        let Sent {
            permit, section, ..
        } = self;
        let draft = format!("/styles/{}/draft", permit.style());
        let on = format!("{draft}/{}?said=saved{then}", section.name());
        if *spec == self.draft.spec {
            return Ok(on);
        }
        let store = &self.app.store;
        Ok(
            match store
                .save_section(permit, *section, self.base, spec)
                .await?
            {
                Saved::Won(_) => on,
                Saved::Lost(id) => format!("{draft}/conflict/{id}"),
            },
        )
    }
}
