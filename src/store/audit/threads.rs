//! Threads, their messages and the hashes of their photographs.

use std::collections::BTreeMap;

use serde::Serialize;
use sqlx::FromRow;

use super::super::StoreError;
use super::OfStyle;
use super::told::{at, factory, hash, id, next, number, person, side};
use crate::exchange::ledger::Act;

#[derive(FromRow, Serialize, PartialEq)]
struct ThreadRow {
    org: String,
    item: String,
    revision: i64,
    kind: String,
    asked_by: String,
    asked_side: String,
    round: Option<String>,
    made_at: String,
    state: String,
    changed_in: Option<i64>,
    moved_at: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct MessageRow {
    thread: String,
    seq: i64,
    person: String,
    side: String,
    at: String,
    language: String,
    text_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct PhotoRow {
    photo_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct TranslationRow {
    message: String,
    language: String,
    person: String,
    side: String,
    at: String,
    text_hash: String,
}

impl OfStyle<'_> {
    pub(super) async fn threads(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'thread ' || id AS what, org, item, revision, kind, asked_by, \
                 asked_side, round, made_at, state, changed_in, moved_at FROM thread \
                 WHERE style = $1 ORDER BY made_at, id",
            )
            .await?;
        let mut told: BTreeMap<String, ThreadRow> = BTreeMap::new();
        for entry in &self.entries {
            let what = format!("thread {}", id(entry, "thread"));
            match entry.act {
                Act::Ask => {
                    let row = ThreadRow {
                        org: factory(entry),
                        item: id(entry, "item"),
                        revision: number(entry, "revision").unwrap_or_default(),
                        kind: id(entry, "kind"),
                        asked_by: person(entry),
                        asked_side: side(entry),
                        round: entry.ids.get("round").cloned(),
                        made_at: at(entry),
                        state: "open".to_owned(),
                        changed_in: None,
                        moved_at: at(entry),
                    };
                    told.insert(what, row);
                }
                Act::Message | Act::ThreadMove => {
                    if let Some(row) = told.get_mut(&what) {
                        row.state = id(entry, "state");
                        row.changed_in = number(entry, "revision").or(row.changed_in);
                        row.moved_at = at(entry);
                    }
                }
                _ => {}
            }
        }
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn messages(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'message ' || m.id AS what, m.thread, m.seq, m.person, m.side, m.at, \
                 m.language, m.text_hash FROM message m JOIN thread t ON t.id = m.thread \
                 WHERE t.style = $1 ORDER BY m.thread, m.seq",
            )
            .await?;
        let photos = self
            .kept(
                "SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of message ' || m.id AS what, \
                 h.photo_hash FROM message_photo h JOIN message m ON m.id = h.message \
                 JOIN thread t ON t.id = m.thread WHERE t.style = $1 ORDER BY m.id, h.seq",
            )
            .await?;
        self.audit.messages += kept.len();
        let mut counts = BTreeMap::new();
        let mut told = BTreeMap::new();
        let mut told_photos = BTreeMap::new();
        for entry in &self.entries {
            let Some(message) = entry.ids.get("message") else {
                continue;
            };
            let thread = id(entry, "thread");
            let row = MessageRow {
                seq: next(&mut counts, &thread),
                thread,
                person: person(entry),
                side: side(entry),
                at: at(entry),
                language: id(entry, "language"),
                text_hash: hash(entry, "text"),
            };
            told.insert(format!("message {message}"), row);
            for (name, hash) in &entry.hashes {
                if let Some(seq) = name.strip_prefix("photo_") {
                    let what = format!("photograph {seq} of message {message}");
                    let photo_hash = hash.to_string();
                    told_photos.insert(what, PhotoRow { photo_hash });
                }
            }
        }
        self.hold(kept, told);
        self.hold(photos, told_photos);
        Ok(())
    }

    pub(super) async fn message_translations(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'translation ' || r.id || ' of a message' AS what, r.message, r.language, \
                 r.person, r.side, r.at, r.text_hash FROM message_translation r \
                 JOIN message m ON m.id = r.message JOIN thread t ON t.id = m.thread \
                 WHERE t.style = $1 ORDER BY r.at, r.id",
            )
            .await?;
        let told = self.told(Act::TranslateMessage).map(|entry| {
            let row = TranslationRow {
                message: id(entry, "translated"),
                language: id(entry, "language"),
                person: person(entry),
                side: side(entry),
                at: at(entry),
                text_hash: hash(entry, "text"),
            };
            let what = format!("translation {} of a message", id(entry, "translation"));
            (what, row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }
}
