//! Translations that people put beside messages: only ever added, the newest of a language is shown.

use std::collections::BTreeMap;

use super::act::Said;
use super::threads::thread_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::phrase;
use crate::spec::{MessageId, OrgId, PersonId, StyleId, ThreadId, Time};

/// A message in another language.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MessageTranslation {
    /// BCP 47.
    pub language: String,
    /// Who translated. `None`: erased.
    pub person: Option<String>,
    pub side: Side,
    pub at: Time,
    /// `None`: erased, with the message.
    pub text: Option<String>,
}

#[derive(sqlx::FromRow)]
struct Row {
    message: MessageId,
    language: String,
    person: Option<String>,
    side: Side,
    at: Time,
    text: Option<String>,
}

/// By message; with one factory, when `tenant` is given.
pub(super) async fn translations_of(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<BTreeMap<MessageId, Vec<MessageTranslation>>, StoreError> {
    let rows: Vec<Row> = db
        .all(
            "SELECT r.message, r.language, n.content AS person, r.side, r.at, x.content AS text \
             FROM message_translation r JOIN message m ON m.id = r.message \
             JOIN thread t ON t.id = m.thread JOIN private_text x ON x.id = r.text \
             LEFT JOIN private_text n ON n.person = r.person AND n.kind = 'name' \
             WHERE t.style = $1 AND (CAST($2 AS TEXT) IS NULL OR t.org = $2) \
             ORDER BY r.at, r.id",
            values![style, tenant],
        )
        .await?;
    let mut found: BTreeMap<MessageId, Vec<MessageTranslation>> = BTreeMap::new();
    for row in rows {
        let of = found.entry(row.message).or_default();
        of.retain(|older| older.language != row.language);
        of.push(MessageTranslation {
            language: row.language,
            person: row.person,
            side: row.side,
            at: row.at,
            text: row.text,
        });
    }
    Ok(found)
}

impl Store {
    /// Puts a translation beside a message of a thread.
    ///
    /// Errors: `Missing` when there is no such message for the holder, its words were erased, or it
    /// needs no translation: a ready sentence, or a message in that language.
    pub async fn translate_message(
        &self,
        permit: &StylePermit<act::Answer>,
        thread: &ThreadId,
        message: &MessageId,
        language: &str,
        text: &str,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let org = thread_in(&act, permit.tenant(), thread).await?.factory;
        let of: Option<(PersonId, String)> = act
            .tx
            .maybe(
                "SELECT m.person, m.language FROM message m JOIN private_text x ON x.id = m.text \
                 WHERE m.id = $1 AND m.thread = $2 AND x.content IS NOT NULL",
                values![message, thread],
            )
            .await?;
        let (writer, written) = of.ok_or(StoreError::Missing)?;
        if written == phrase::LANGUAGE || written == language {
            return Err(StoreError::Missing);
        }
        let id = self.world.id();
        let (kept, hash) = act.keep_text_of(Some(&writer), "message", text).await?;
        act.tx
            .run(
                "INSERT INTO message_translation \
                 (id, message, language, person, side, at, text, text_hash) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                values![
                    id,
                    message,
                    language,
                    permit.person(),
                    permit.side(),
                    act.at,
                    kept,
                    hash
                ],
            )
            .await?;
        let said = Said::default()
            .to(&org)
            .id("thread", thread)
            .id("translation", &id)
            .id("translated", message)
            .id("language", language)
            .hash("text", &hash);
        act.record(Act::TranslateMessage, said).await?;
        act.commit().await
    }
}
