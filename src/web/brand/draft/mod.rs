//! The draft: a page a section, each saved by itself over the version that it was filled from.
//!
//! What somebody typed is kept as text in the page until it can be read: a form with an error comes
//! back as it was sent, with the sentence beside the field.

mod beside;
mod drawings;
pub mod colour;
mod colour_cell;
mod colourway_number;
mod colourways;
pub mod changes;
mod checked;
pub mod conflict;
pub mod copy_points;
mod described;
mod header;
pub mod here;
pub mod import;
pub mod lettering;
pub mod listed;
pub mod one;
mod point_row;
mod points;
pub mod progress;
pub mod regrade;
mod rows;
mod sizes;
mod strip;
mod told;
mod typed;
mod written;

use axum::extract::{Path, Query, State};
use axum::http::HeaderMap;
use serde::Deserialize;

use self::checked::Trial;
use self::colourway_number::ColourwayNumbers;
use self::here::Here;
use self::progress::{Line, Looked, Progress};
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::document::Section;
use crate::spec::{ItemId, Spec, StyleId, stitch};
use crate::store::{Draft, LostSave, Saved, StoreError};
use crate::web::App;
use crate::web::both::export::{Download, downloads};
use crate::web::form::Form;
use crate::web::frame::name_or_erased;
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
    pub progress: Progress,
    /// What is to be mended in this section.
    pub findings: Vec<Line>,
    /// Saves of the reader's own that somebody else's came before.
    pub lost: Vec<LostSave>,
    /// Who saved it last; nothing when nobody has yet.
    pub last: Option<Last>,
    /// The others who have it open now.
    pub here: Vec<Here>,
    /// What this page calls itself when it says that it is open.
    pub seat: String,
}

/// The save that the section's content is from.
pub struct Last {
    pub version: i64,
    pub by: String,
    pub at: String,
    /// It is the reader's own.
    pub mine: bool,
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
        let newest = app.store.newest(&permit.also()?).await?;
        let book = app.store.book(permit).await?;
        let looked = Looked::through(&book, spec, newest.as_ref());
        let writes = permit.also::<act::Write>().ok();
        let last = app.store.last_save(permit, section).await?;
        let last = last.map(|save| Last {
            version: save.version,
            by: name_or_erased(t, save.name.as_deref()),
            at: save.at.minute(),
            mine: save.person == *permit.person(),
        });
        let present = app.store.others_here(permit).await?;
        let mut progress = looked.progress;
        progress.place(t, &present);
        Ok(SectionPage {
            style: permit.style().clone(),
            number: spec.header.number.clone(),
            name: spec.header.name.clone(),
            section,
            version: draft.versions.get(&section).copied().unwrap_or_default(),
            findings: Line::all(t, permit.style(), spec, section, &looked.findings),
            lost: match &writes {
                Some(writes) => app.store.lost_saves(writes).await?,
                None => Vec::new(),
            },
            writes: writes.is_some(),
            progress,
            last,
            here: here::of(t, section, present),
            seat: app.store.world().id(),
        })
    }
}

impl SectionPage {
    /// Somebody saved the section since the form was filled.
    fn is_behind(&self) -> bool {
        self.last
            .as_ref()
            .is_some_and(|last| last.version != self.version)
    }

    /// The version before the last save, when that was the reader's own and can be taken back.
    fn before_mine(&self) -> Option<i64> {
        let last = self.last.as_ref().filter(|last| last.mine && self.writes)?;
        (last.version > 1 && last.version == self.version).then(|| last.version - 1)
    }

    /// The sheets that the section is written out in.
    fn downloads(&self) -> Vec<Download> {
        downloads(self.section)
    }

    /// Where the section is worked out while somebody types.
    fn preview(&self) -> String {
        format!(
            "/styles/{}/draft/{}/preview",
            self.style,
            self.section.name()
        )
    }

    /// Where an item is drawn while somebody types.
    fn preview_of(&self, item: &ItemId) -> String {
        let (style, section) = (&self.style, self.section.name());
        format!("/styles/{style}/draft/{section}/{item}/preview")
    }

    /// Numbers of stitches with what they are, where they are typed.
    fn stitches(&self) -> Vec<(&'static str, &'static str)> {
        if self.section != Section::Construction {
            return Vec::new();
        }
        let known = stitch::Tables::shipped().stitches.iter();
        let known = known.filter(|it| !it.meaning.is_empty());
        known
            .map(|it| (it.number.as_str(), it.meaning.as_str()))
            .collect()
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
        Section::Points => points::show(&app, &may.who, around, &draft, more).await,
        Section::Colourways => {
            let style = &draft.spec.header.number;
            let numbers = ColourwayNumbers::read(&app, &may.who, style).await?;
            colourways::show(&may.who, around, &numbers, &draft.spec, more)
        }
        Section::Materials
        | Section::Construction
        | Section::Artwork
        | Section::Labels
        | Section::Packing => {
            let beside = beside::Beside::of(&app, may.who.t, &may.permit).await?;
            listed::show(&may.who, around, &beside, &draft.spec, more, &told)
        }
    }
}

/// The section's form.
pub async fn save(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    headers: HeaderMap,
    form: Form,
) -> Answer {
    let section = Section::from_name(&section).ok_or(Problem::NotFound)?;
    let review = may.permit.also()?;
    let (t, trial) = (may.who.t, Trial::of(&headers));
    let draft = app.store.draft(&review).await?;
    let sent = Sent {
        trial: trial.clone(),
        base: form.fields.number("version").ok_or(Problem::BadForm)?,
        app: app.clone(),
        who: may.who,
        permit: may.permit,
        section,
        draft,
        form,
    };
    let answer = match section {
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
    };
    checked::answer(answer, &app, t, &review, section, trial).await
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
    /// Nothing is saved: it is only looked through as it stands.
    pub trial: Option<Trial>,
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
        self.keep_and_open(spec, None, then).await
    }

    /// The same, and on with an item of the section.
    pub async fn keep_and_open(
        &self,
        spec: &Spec,
        item: Option<&ItemId>,
        then: &str,
    ) -> Result<String, StoreError> {
        let Sent {
            permit, section, ..
        } = self;
        let draft = format!("/styles/{}/draft", permit.style());
        let item = item.map_or(String::new(), |item| format!("/{item}"));
        let on = format!("{draft}/{}{item}?said=saved{then}", section.name());
        if let Some(trial) = &self.trial {
            trial.found(spec);
            return Ok(on);
        }
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
