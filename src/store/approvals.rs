//! What factories submit to be approved, and what the brand decides on it.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::act::{Said, StyleAct, number};
use super::messages::{Photo, PictureRow, keep_photo};
use super::revisions::{facts_in, frozen_in};
use super::settings::colour_limit_in;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::approval::{
    Anchor, Kind, Offered, Submitting, Verdict, decide, submit, usual_limit,
};
use crate::exchange::ledger::Act;
use crate::exchange::revision::{self, Frozen};
use crate::spec::colour::Limit;
use crate::spec::document::Lab;
use crate::spec::{Digest, ItemId, OrgId, StyleId, SubmissionId, Time};

/// An option that was submitted, with what became of it.
#[derive(Debug, Clone)]
pub struct Submission {
    pub id: SubmissionId,
    pub org: OrgId,
    /// The number of the revision that it was made to.
    pub revision: u32,
    pub frozen: Arc<Frozen>,
    pub anchor: Anchor,
    /// Through the options for its thing, from 1.
    pub number: u32,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    /// The language of the note, BCP 47.
    pub language: String,
    /// `None`: erased.
    pub note: Option<String>,
    pub reading: Option<Lab>,
    /// `None`: erased.
    pub instrument: Option<String>,
    /// In the order they were sent; `None`: erased.
    pub photos: Vec<Option<Photo>>,
    pub decision: Option<Judgement>,
}

/// What the brand decided on an option.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Judgement {
    pub verdict: Verdict,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    /// `None`: erased.
    pub reason: Option<String>,
    /// The limit of colour differences on that day.
    pub limit: Limit,
}

/// An option to be submitted.
#[derive(Debug, Clone)]
pub struct NewSubmission<'a> {
    /// The number of the revision that it was made to.
    pub revision: u32,
    pub anchor: &'a Anchor,
    pub note: &'a str,
    /// BCP 47.
    pub language: &'a str,
    pub reading: Option<&'a Lab>,
    pub instrument: &'a str,
    /// Photographs that were added for this style before.
    pub photos: &'a [Digest],
}

#[derive(sqlx::FromRow)]
struct SubmissionRow {
    id: SubmissionId,
    org: OrgId,
    revision: i64,
    kind: Kind,
    item: ItemId,
    colourway: Option<ItemId>,
    fabric: Option<ItemId>,
    number: i64,
    at: Time,
    person: Option<String>,
    language: String,
    note: Option<String>,
    reading: Option<String>,
    instrument: Option<String>,
    verdict: Option<Verdict>,
    decided_at: Option<Time>,
    decided_by: Option<String>,
    reason: Option<String>,
    colour_limit: Option<String>,
}

#[derive(sqlx::FromRow)]
struct PhotoRow {
    submission: SubmissionId,
    #[sqlx(flatten)]
    picture: PictureRow,
}

impl Submission {
    /// As the rules look at it.
    pub fn offered(&self) -> Offered<'_> {
        Offered {
            anchor: &self.anchor,
            spec: &self.frozen.spec,
            number: self.number,
            verdict: self.decision.as_ref().map(|it| (it.verdict, &it.at)),
        }
    }
}

/// The options of a style, oldest first; of one factory, when `org` is given.
pub(super) async fn submissions_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    org: Option<&OrgId>,
) -> Result<Vec<Submission>, StoreError> {
    let rows: Vec<SubmissionRow> = db
        .all(
            "SELECT s.id, s.org, s.revision, s.kind, s.item, s.colourway, s.fabric, s.number, \
             s.at, n.content AS person, s.language, x.content AS note, s.reading, \
             i.content AS instrument, d.verdict, d.at AS decided_at, m.content AS decided_by, \
             r.content AS reason, d.colour_limit FROM submission s \
             JOIN private_text x ON x.id = s.note JOIN private_text i ON i.id = s.instrument \
             LEFT JOIN private_text n ON n.person = s.person AND n.kind = 'name' \
             LEFT JOIN submission_decision d ON d.submission = s.id \
             LEFT JOIN private_text m ON m.person = d.person AND m.kind = 'name' \
             LEFT JOIN private_text r ON r.id = d.reason \
             WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2) ORDER BY s.at, s.id",
            values![style, org],
        )
        .await?;
    if rows.is_empty() {
        return Ok(Vec::new());
    }
    let photos: Vec<PhotoRow> = db
        .all(
            "SELECT h.submission, x.content, f.width, f.height, f.taken FROM submission_photo h \
             JOIN private_text x ON x.id = h.photo JOIN submission s ON s.id = h.submission \
             LEFT JOIN file f ON f.digest = x.content \
             WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2) \
             ORDER BY h.submission, h.seq",
            values![style, org],
        )
        .await?;
    let mut photos_of: BTreeMap<SubmissionId, Vec<Option<Photo>>> = BTreeMap::new();
    for row in photos {
        let photo = row.picture.photo(row.submission.as_str())?;
        photos_of.entry(row.submission).or_default().push(photo);
    }
    let mut made_to: BTreeMap<u32, Arc<Frozen>> = BTreeMap::new();
    let mut found = Vec::with_capacity(rows.len());
    for row in rows {
        let place = row.id.as_str();
        let revision = number("submission", "revision", place, row.revision)?;
        let frozen = match made_to.get(&revision) {
            Some(frozen) => Arc::clone(frozen),
            None => {
                let frozen = frozen_in(store, db, style, revision).await?.frozen;
                made_to.insert(revision, Arc::clone(&frozen));
                frozen
            }
        };
        let decision = match (row.verdict, row.decided_at, row.colour_limit) {
            (Some(verdict), Some(at), Some(limit)) => Some(Judgement {
                verdict,
                at,
                person: row.decided_by,
                reason: row.reason,
                limit: from_json("submission_decision", "colour_limit", place, &limit)?,
            }),
            _ => None,
        };
        let reading = row.reading.as_deref();
        found.push(Submission {
            frozen,
            number: number("submission", "number", place, row.number)?,
            reading: reading
                .map(|text| from_json("submission", "reading", place, text))
                .transpose()?,
            photos: photos_of.remove(&row.id).unwrap_or_default(),
            id: row.id,
            org: row.org,
            revision,
            anchor: Anchor {
                kind: row.kind,
                item: row.item,
                colourway: row.colourway,
                fabric: row.fabric,
            },
            at: row.at,
            person: row.person,
            language: row.language,
            note: row.note,
            instrument: row.instrument,
            decision,
        });
    }
    Ok(found)
}

impl Store {
    /// What was submitted on a style, oldest first: a factory's own options.
    pub async fn submissions(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Submission>, StoreError> {
        submissions_in(self, &self.db, permit.style(), permit.tenant()).await
    }

    /// Submits an option of something that the current revision needs approved.
    ///
    /// Errors: `Missing` when the revision or a photograph is not there; `Refused` by the rules.
    pub async fn submit(
        &self,
        permit: &StylePermit<act::Submit>,
        new: NewSubmission<'_>,
    ) -> Result<SubmissionId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let org = permit.org();
        let frozen = frozen_in(self, &act.tx, &style, new.revision).await?.frozen;
        let before = submissions_in(self, &act.tx, &style, Some(org)).await?;
        let before: Vec<Offered<'_>> = before.iter().map(Submission::offered).collect();
        let with = Submitting {
            revision: new.revision,
            current: revision::current(&facts_in(&act.tx, &style).await?),
            spec: &frozen.spec,
            anchor: new.anchor,
            photos: new.photos.len(),
            reading: new.reading,
            before: &before,
        };
        let number = submit(permit.actor(), &with).map_err(StoreError::refused(&style))?;
        let id = SubmissionId::new(self.world.id());
        let (note, note_hash) = act.keep_text("message", new.note.trim()).await?;
        let (instrument, instrument_hash) = act.keep_text("message", new.instrument.trim()).await?;
        let reading = new.reading.map(to_json);
        let anchor = new.anchor;
        act.tx
            .run(
                "INSERT INTO submission (id, style, org, revision, kind, item, colourway, fabric, \
                 number, at, person, language, note, note_hash, reading, instrument, \
                 instrument_hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, \
                 $14, $15, $16, $17)",
                values![
                    id,
                    style,
                    org,
                    new.revision,
                    anchor.kind,
                    anchor.item,
                    anchor.colourway,
                    anchor.fabric,
                    number,
                    act.at,
                    permit.person(),
                    new.language,
                    note,
                    note_hash,
                    reading,
                    instrument,
                    instrument_hash
                ],
            )
            .await?;
        let mut said = about(org, anchor, number)
            .id("submission", &id)
            .id("revision", new.revision)
            .id("language", new.language)
            .hash("note", &note_hash)
            .hash("instrument", &instrument_hash);
        if let Some(reading) = reading {
            said = said.id("reading", reading);
        }
        for (seq, photo) in (1_i64..).zip(new.photos) {
            let hash = keep_photo_of(&act, &id, seq, photo, org).await?;
            said = said.hash(&format!("photo_{seq}"), &hash);
        }
        act.record(Act::Submit, said).await?;
        act.commit().await?;
        Ok(id)
    }

    /// Approves an option, or rejects it.
    ///
    /// Errors: `Missing` when there is no such option; `Refused` by the rules.
    pub async fn judge_submission(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &SubmissionId,
        verdict: Verdict,
        reason: &str,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let all = submissions_in(self, &act.tx, &act.style, None).await?;
        let submission = all.into_iter().find(|it| it.id == *id);
        let submission = submission.ok_or(StoreError::Missing)?;
        let decided = submission.decision.as_ref().map(|it| it.verdict);
        decide(permit.actor(), decided, verdict, reason)
            .map_err(StoreError::refused(permit.style()))?;
        let limit = to_json(&colour_limit_in(&act.tx).await?.unwrap_or_else(usual_limit));
        let (text, reason_hash) = act.keep_text("message", reason.trim()).await?;
        act.tx
            .run(
                "INSERT INTO submission_decision (submission, verdict, at, person, reason, \
                 reason_hash, colour_limit) VALUES ($1, $2, $3, $4, $5, $6, $7)",
                values![
                    id,
                    verdict,
                    act.at,
                    permit.person(),
                    text,
                    reason_hash,
                    limit
                ],
            )
            .await?;
        let said = about(&submission.org, &submission.anchor, submission.number)
            .id("submission", id)
            .id("verdict", verdict.name())
            .id("limit", limit)
            .hash("reason", &reason_hash);
        act.record(Act::Approve, said).await?;
        act.commit().await
    }
}

/// Which option of what an entry of the ledger is about.
fn about(org: &OrgId, anchor: &Anchor, number: u32) -> Said {
    let mut said = Said::default()
        .to(org)
        .id("kind", anchor.kind.name())
        .id("item", &anchor.item)
        .id("number", number);
    for (name, id) in [("colourway", &anchor.colourway), ("fabric", &anchor.fabric)] {
        if let Some(id) = id {
            said = said.id(name, id);
        }
    }
    said
}

async fn keep_photo_of(
    act: &StyleAct<'_>,
    id: &SubmissionId,
    seq: i64,
    photo: &Digest,
    org: &OrgId,
) -> Result<Digest, StoreError> {
    let (text, hash) = keep_photo(act, photo, org).await?;
    act.tx
        .run(
            "INSERT INTO submission_photo (submission, seq, photo, photo_hash) \
             VALUES ($1, $2, $3, $4)",
            values![id, seq, text, hash],
        )
        .await?;
    Ok(hash)
}

fn to_json(value: &impl serde::Serialize) -> String {
    serde_json::to_string(value).expect("numbers and words are JSON")
}

fn from_json<T: serde::de::DeserializeOwned>(
    table: &str,
    column: &str,
    row: &str,
    text: &str,
) -> Result<T, StoreError> {
    serde_json::from_str(text).map_err(|cause| StoreError::corrupt(table, column, row, cause))
}
