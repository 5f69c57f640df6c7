//! Drafts, saved section by section with a version each. Nobody overwrites what they have not seen.

use std::collections::BTreeMap;

use serde::de::DeserializeOwned;

use super::events::{Audience, Event};
use super::people::still_here;
use super::{Read, Store, StoreError, Tx, values};
use crate::access::{StylePermit, act};
use crate::spec::{PersonId, Section, Spec, StyleId, Time};

/// A whole draft: what is written so far, and the version of every section.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Draft {
    pub spec: Spec,
    pub versions: Versions,
}

/// The version of each section; 0 for one that was never saved.
pub type Versions = BTreeMap<Section, i64>;

/// What became of a save.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Saved {
    /// It is the section now, with this version.
    Won(i64),
    /// Somebody saved in between. The save is kept under this id until it is resolved.
    Lost(String),
}

/// A save that lost and waits for its writer.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct LostSave {
    pub id: String,
    pub section: Section,
    /// The version that its writer had before them.
    pub base: i64,
    /// The section's content as JSON.
    pub content: String,
    pub saved_at: Time,
}

/// One version of a section: who saved it, when.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct SectionVersion {
    pub version: i64,
    pub content: String,
    pub saved_by: Option<String>,
    pub saved_at: Time,
}

/// The save that a section's content is from.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct LastSave {
    pub version: i64,
    pub person: PersonId,
    /// `None`: erased.
    pub name: Option<String>,
    pub at: Time,
}

#[derive(sqlx::FromRow)]
struct SectionRow {
    section: Section,
    version: i64,
    content: String,
}

impl Store {
    /// The draft of a style.
    pub async fn draft(&self, permit: &StylePermit<act::Review>) -> Result<Draft, StoreError> {
        read_draft(&self.db, permit.style()).await
    }

    /// Saves one section over version `base`. If somebody saved in between, the section stays as
    /// it is and this save is kept beside it.
    ///
    /// `content` is the section's JSON; the header's number and name also go to the style's row.
    /// Errors: `Unique` when another style has the header's number; `Missing` when the permit no
    /// longer holds.
    pub async fn save_section(
        &self,
        permit: &StylePermit<act::Write>,
        section: Section,
        base: i64,
        content: &Spec,
    ) -> Result<Saved, StoreError> {
        let json = section_json(content, section);
        let style = permit.style();
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        let now = self.world.now();
        let won = if base == 0 {
            tx.run(
                "INSERT INTO draft_section (style, section, version, content, saved_by, saved_at) \
                 VALUES ($1, $2, 1, $3, $4, $5) ON CONFLICT (style, section) DO NOTHING",
                values![style, section.name(), json, permit.person(), now],
            )
            .await?
        } else {
            tx.run(
                "UPDATE draft_section SET version = version + 1, content = $3, saved_by = $4, \
                 saved_at = $5 WHERE style = $1 AND section = $2 AND version = $6",
                values![style, section.name(), json, permit.person(), now, base],
            )
            .await?
        };
        let version = (won == 1).then_some(base + 1);
        let id = self.world.id();
        tx.run(
            "INSERT INTO draft_save (id, style, section, base, version, content, saved_by, \
             saved_at) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
            values![
                id,
                style,
                section.name(),
                base,
                version,
                json,
                permit.person(),
                now
            ],
        )
        .await?;
        if won == 1 && section == Section::Header {
            tx.run(
                "UPDATE style SET number = $2, name = $3 WHERE id = $1",
                values![style, content.header.number, content.header.name],
            )
            .await?;
        }
        tx.commit().await?;
        Ok(match version {
            Some(version) => {
                self.tell(Event {
                    style: style.clone(),
                    audience: Audience::Brand,
                });
                Saved::Won(version)
            }
            None => Saved::Lost(id),
        })
    }

    /// The holder's own saves of this style that lost and are not resolved, oldest first.
    pub async fn lost_saves(
        &self,
        permit: &StylePermit<act::Write>,
    ) -> Result<Vec<LostSave>, StoreError> {
        self.db
            .all(
                "SELECT id, section, base, content, saved_at FROM draft_save \
                 WHERE style = $1 AND saved_by = $2 AND version IS NULL AND resolved_at IS NULL \
                 ORDER BY saved_at, id",
                values![permit.style(), permit.person()],
            )
            .await
    }

    /// The holder has dealt with a save of theirs that lost.
    ///
    /// Errors: `Missing` when there is no such save of theirs.
    pub async fn resolve_save(
        &self,
        permit: &StylePermit<act::Write>,
        id: &str,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        let resolved = tx
            .run(
                "UPDATE draft_save SET resolved_at = $4 WHERE id = $1 AND style = $2 \
                 AND saved_by = $3 AND version IS NULL AND resolved_at IS NULL",
                values![id, permit.style(), permit.person(), self.world.now()],
            )
            .await?;
        if resolved == 0 {
            return Err(StoreError::Missing);
        }
        tx.commit().await
    }

    /// Who saved a section last, and when; nothing when nobody has yet.
    pub async fn last_save(
        &self,
        permit: &StylePermit<act::Review>,
        section: Section,
    ) -> Result<Option<LastSave>, StoreError> {
        self.db
            .maybe(
                "SELECT s.version, s.saved_by AS person, n.content AS name, s.saved_at AS at \
                 FROM draft_section s \
                 LEFT JOIN private_text n ON n.person = s.saved_by AND n.kind = 'name' \
                 WHERE s.style = $1 AND s.section = $2",
                values![permit.style(), section.name()],
            )
            .await
    }

    /// Every version of one section, newest first.
    pub async fn section_history(
        &self,
        permit: &StylePermit<act::Review>,
        section: Section,
    ) -> Result<Vec<SectionVersion>, StoreError> {
        self.db
            .all(
                "SELECT s.version, s.content, n.content AS saved_by, s.saved_at FROM draft_save s \
                 LEFT JOIN private_text n ON n.person = s.saved_by AND n.kind = 'name' \
                 WHERE s.style = $1 AND s.section = $2 AND s.version IS NOT NULL \
                 ORDER BY s.version DESC",
                values![permit.style(), section.name()],
            )
            .await
    }
}

/// All sections in one statement: what is read together was true together.
pub(super) async fn read_draft(db: &impl Read, style: &StyleId) -> Result<Draft, StoreError> {
    let rows: Vec<SectionRow> = db
        .all(
            "SELECT section, version, content FROM draft_section WHERE style = $1",
            values![style],
        )
        .await?;
    let mut spec = Spec::default();
    let versions = Section::ALL.iter().map(|section| (*section, 0));
    let mut versions: Versions = versions.collect();
    for row in rows {
        let place = format!("{style}/{}", row.section.name());
        put_section(&mut spec, row.section, &row.content)
            .map_err(|cause| StoreError::corrupt("draft_section", "content", &place, cause))?;
        versions.insert(row.section, row.version);
    }
    Ok(Draft { spec, versions })
}

pub(super) async fn insert_section(
    tx: &Tx,
    style: &StyleId,
    section: Section,
    content: &Spec,
    person: &PersonId,
    at: &Time,
    id: String,
) -> Result<(), StoreError> {
    let json = section_json(content, section);
    tx.run(
        "INSERT INTO draft_section (style, section, version, content, saved_by, saved_at) \
         VALUES ($1, $2, 1, $3, $4, $5)",
        values![style, section.name(), json, person, at],
    )
    .await?;
    tx.run(
        "INSERT INTO draft_save (id, style, section, base, version, content, saved_by, saved_at) \
         VALUES ($1, $2, $3, 0, 1, $4, $5, $6)",
        values![id, style, section.name(), json, person, at],
    )
    .await?;
    Ok(())
}

/// One section of a spec as it is kept in a draft.
fn section_json(spec: &Spec, section: Section) -> String {
    match section {
        Section::Header => serde_json::to_string(&spec.header),
        Section::Sizes => serde_json::to_string(&spec.sizes),
        Section::Drawings => serde_json::to_string(&spec.drawings),
        Section::Points => serde_json::to_string(&spec.points),
        Section::Colourways => serde_json::to_string(&spec.colourways),
        Section::Materials => serde_json::to_string(&spec.materials),
        Section::Construction => serde_json::to_string(&spec.construction),
        Section::Artwork => serde_json::to_string(&spec.artwork),
        Section::Labels => serde_json::to_string(&spec.labels),
        Section::Packing => serde_json::to_string(&spec.packing),
    }
    .expect("a section is maps with text keys")
}

/// Reads a section's JSON into its place in a spec.
pub fn put_section(spec: &mut Spec, section: Section, json: &str) -> Result<(), serde_json::Error> {
    fn read<T: DeserializeOwned>(place: &mut T, json: &str) -> Result<(), serde_json::Error> {
        *place = serde_json::from_str(json)?;
        Ok(())
    }
    match section {
        Section::Header => read(&mut spec.header, json),
        Section::Sizes => read(&mut spec.sizes, json),
        Section::Drawings => read(&mut spec.drawings, json),
        Section::Points => read(&mut spec.points, json),
        Section::Colourways => read(&mut spec.colourways, json),
        Section::Materials => read(&mut spec.materials, json),
        Section::Construction => read(&mut spec.construction, json),
        Section::Artwork => read(&mut spec.artwork, json),
        Section::Labels => read(&mut spec.labels, json),
        Section::Packing => read(&mut spec.packing, json),
    }
}
