//! Messages and their photographs: only ever added.

use std::collections::BTreeMap;

use super::act::{Said, StyleAct};
use super::message_translations::{MessageTranslation, translations_of};
use super::threads::{set_state, thread_in};
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::thread;
use crate::spec::{Digest, MessageId, OrgId, PersonId, StyleId, ThreadId, Time};

/// One message.
#[derive(Debug, Clone)]
pub struct Message {
    pub id: MessageId,
    /// `None`: erased.
    pub person: Option<String>,
    pub side: Side,
    pub at: Time,
    /// The language that it was written in, BCP 47.
    pub language: String,
    /// `None`: erased.
    pub text: Option<String>,
    /// In the order they were sent; `None`: erased.
    pub photos: Vec<Option<Photo>>,
    /// The newest of each language, in the order they came in.
    pub translations: Vec<MessageTranslation>,
}

/// A photograph of a message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Photo {
    pub digest: Digest,
    /// In pixels, upright.
    pub width: i64,
    pub height: i64,
    /// When it was taken by the camera's own clock, `YYYY-MM-DDTHH:MM:SS`.
    pub taken: Option<String>,
}

/// What somebody says.
#[derive(Debug, Clone, Copy)]
pub struct Says<'a> {
    pub text: &'a str,
    /// BCP 47.
    pub language: &'a str,
    /// Photographs that were added for this style before.
    pub photos: &'a [Digest],
}

#[derive(sqlx::FromRow)]
struct MessageRow {
    id: MessageId,
    thread: ThreadId,
    person: Option<String>,
    side: Side,
    at: Time,
    language: String,
    text: Option<String>,
}

#[derive(sqlx::FromRow)]
struct PhotoRow {
    message: MessageId,
    #[sqlx(flatten)]
    picture: PictureRow,
}

/// What is kept of a photograph that something brought.
#[derive(sqlx::FromRow)]
pub(super) struct PictureRow {
    content: Option<String>,
    width: Option<i64>,
    height: Option<i64>,
    taken: Option<String>,
}

impl PictureRow {
    /// The photograph; `None`: erased. `of` is the id of what brought it.
    pub fn photo(self, of: &str) -> Result<Option<Photo>, StoreError> {
        let Some(content) = self.content else {
            return Ok(None);
        };
        let bad = |cause| StoreError::corrupt("private_text", "content", of, cause);
        let digest = Digest::try_from(content).map_err(|cause| bad(cause.to_string()))?;
        let (Some(width), Some(height)) = (self.width, self.height) else {
            return Err(bad(format!("no file {digest}")));
        };
        Ok(Some(Photo {
            digest,
            width,
            height,
            taken: self.taken,
        }))
    }
}

/// The messages of a style's threads, by thread; with one factory, when `tenant` is given.
pub(super) async fn messages_of(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<BTreeMap<ThreadId, Vec<Message>>, StoreError> {
    let messages: Vec<MessageRow> = db
        .all(
            "SELECT m.id, m.thread, n.content AS person, m.side, m.at, m.language, \
         x.content AS text FROM message m JOIN thread t ON t.id = m.thread \
         JOIN private_text x ON x.id = m.text \
         LEFT JOIN private_text n ON n.person = m.person AND n.kind = 'name' \
         WHERE t.style = $1 AND (CAST($2 AS TEXT) IS NULL OR t.org = $2) \
         ORDER BY m.thread, m.seq",
            values![style, tenant],
        )
        .await?;
    let photos: Vec<PhotoRow> = db
        .all(
            "SELECT h.message, x.content, f.width, f.height, f.taken FROM message_photo h \
         JOIN private_text x ON x.id = h.photo JOIN message m ON m.id = h.message \
         JOIN thread t ON t.id = m.thread LEFT JOIN file f ON f.digest = x.content \
         WHERE t.style = $1 AND (CAST($2 AS TEXT) IS NULL OR t.org = $2) \
         ORDER BY h.message, h.seq",
            values![style, tenant],
        )
        .await?;
    let mut photos_of: BTreeMap<MessageId, Vec<Option<Photo>>> = BTreeMap::new();
    for row in photos {
        let photo = row.picture.photo(row.message.as_str())?;
        photos_of.entry(row.message).or_default().push(photo);
    }
    let mut translated = translations_of(db, style, tenant).await?;
    let mut found: BTreeMap<ThreadId, Vec<Message>> = BTreeMap::new();
    for row in messages {
        found.entry(row.thread).or_default().push(Message {
            photos: photos_of.remove(&row.id).unwrap_or_default(),
            translations: translated.remove(&row.id).unwrap_or_default(),
            id: row.id,
            person: row.person,
            side: row.side,
            at: row.at,
            language: row.language,
            text: row.text,
        });
    }
    Ok(found)
}

impl Store {
    /// Writes into a thread.
    pub async fn say(
        &self,
        permit: &StylePermit<act::Answer>,
        id: &ThreadId,
        says: Says<'_>,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let thread = thread_in(&act, permit.tenant(), id).await?;
        let state = thread
            .step(permit.actor(), thread::Move::Message)
            .map_err(StoreError::refused(permit.style()))?;
        let org = thread.factory.clone();
        let said = say_in(
            self,
            &mut act,
            permit.side(),
            permit.person(),
            id,
            &org,
            says,
        )
        .await?;
        set_state(&act, id, state).await?;
        let said = said.to(&org).id("thread", id).id("state", state.name());
        act.record(Act::Message, said).await?;
        act.commit().await
    }
}

/// Keeps a message; what the ledger has to say of it comes back.
pub(super) async fn say_in(
    store: &Store,
    act: &mut StyleAct<'_>,
    side: Side,
    person: &PersonId,
    thread: &ThreadId,
    org: &OrgId,
    says: Says<'_>,
) -> Result<Said, StoreError> {
    let message = MessageId::new(store.world.id());
    let (text, text_hash) = act.keep_text("message", says.text).await?;
    act.tx
        .run(
            "INSERT INTO message (id, thread, seq, person, side, at, language, text, text_hash) \
             SELECT $1, $2, COALESCE(MAX(m.seq), 0) + 1, $3, $4, $5, $6, $7, $8 \
             FROM message m WHERE m.thread = $2",
            values![
                message,
                thread,
                person,
                side,
                act.at,
                says.language,
                text,
                text_hash
            ],
        )
        .await?;
    let mut said = Said::default()
        .id("message", &message)
        .id("language", says.language)
        .hash("text", &text_hash);
    for (seq, photo) in (1_i64..).zip(says.photos) {
        let (id, hash) = keep_photo(act, photo, org).await?;
        act.tx
            .run(
                "INSERT INTO message_photo (message, seq, photo, photo_hash) \
                 VALUES ($1, $2, $3, $4)",
                values![message, seq, id, hash],
            )
            .await?;
        said = said.hash(&format!("photo_{seq}"), &hash);
    }
    Ok(said)
}

/// Makes a photograph that was uploaded before one of the exchange with this factory: the id of the
/// text that names it, and its salted hash.
///
/// Errors: `Missing` when nobody uploaded it.
pub(super) async fn keep_photo(
    act: &StyleAct<'_>,
    photo: &Digest,
    org: &OrgId,
) -> Result<(String, Digest), StoreError> {
    let kept = act.keep_text("photo", photo.as_str()).await?;
    let used = act
        .tx
        .run(
            "INSERT INTO file_use (style, file, revision, org) \
             SELECT $1, f.digest, 0, $3 FROM file f WHERE f.digest = $2 AND f.kind = 'photo' \
             ON CONFLICT (style, file, revision, org) DO UPDATE SET org = $3",
            values![act.style, photo, org],
        )
        .await?;
    if used == 0 {
        return Err(StoreError::Missing);
    }
    Ok(kept)
}
