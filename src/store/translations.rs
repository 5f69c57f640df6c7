//! What the brand had translated beside the words of a style. It only grows: the newest of a language
//! and its words counts.

use std::collections::BTreeMap;

use super::act::Said;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::translation::ByLanguage;
use crate::spec::{Digest, StyleId, Time};

/// A translation as it stands now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Translation {
    /// BCP 47.
    pub language: String,
    /// What is translated.
    pub words: String,
    /// Never empty.
    pub text: String,
    /// `None`: erased.
    pub by: Option<String>,
    pub at: Time,
}

/// What one translation should be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Retranslated {
    /// As its writer found it; empty: there was none.
    pub read: String,
    pub text: String,
}

#[derive(sqlx::FromRow)]
struct Row {
    id: String,
    language: String,
    content: String,
    by: Option<String>,
    set_at: Time,
}

async fn all_in(db: &impl Read, style: &StyleId) -> Result<Vec<Translation>, StoreError> {
    let rows: Vec<Row> = db
        .all(
            "SELECT t.id, t.language, t.content, n.content AS by, t.set_at FROM translation t \
             LEFT JOIN private_text n ON n.person = t.set_by AND n.kind = 'name' \
             WHERE t.style = $1 ORDER BY t.set_at, t.id",
            values![style],
        )
        .await?;
    let mut newest: BTreeMap<(String, String), Translation> = BTreeMap::new();
    for row in rows {
        let content: BTreeMap<String, String> = serde_json::from_str(&row.content)
            .map_err(|cause| StoreError::corrupt("translation", "content", &row.id, cause))?;
        for (words, text) in content {
            let key = (row.language.clone(), words.clone());
            if text.is_empty() {
                newest.remove(&key);
                continue;
            }
            let translation = Translation {
                language: row.language.clone(),
                words,
                text,
                by: row.by.clone(),
                at: row.set_at.clone(),
            };
            newest.insert(key, translation);
        }
    }
    Ok(newest.into_values().collect())
}

/// As a revision freezes them.
pub(super) async fn own_in(db: &impl Read, style: &StyleId) -> Result<ByLanguage, StoreError> {
    let mut own = ByLanguage::new();
    for it in all_in(db, style).await? {
        let of = own.entry(it.language).or_default();
        of.insert(it.words, it.text);
    }
    Ok(own)
}

impl Store {
    /// What the brand had translated, as it stands now.
    pub async fn translations(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Translation>, StoreError> {
        all_in(&self.db, permit.style()).await
    }

    /// The same as the draft would be published with them.
    pub async fn own_translations(
        &self,
        permit: &StylePermit<act::Review>,
    ) -> Result<ByLanguage, StoreError> {
        own_in(&self.db, permit.style()).await
    }

    /// Keeps translations into one language, by the words, over what the writer read; an empty one
    /// takes it back. Where somebody else wrote another one in between nothing is kept, and all such
    /// are given back as they stand now.
    pub async fn translate(
        &self,
        permit: &StylePermit<act::Write>,
        language: &str,
        wanted: &BTreeMap<String, Retranslated>,
    ) -> Result<BTreeMap<String, String>, StoreError> {
        let mut act = self.act(permit).await?;
        let own = own_in(&act.tx, &act.style).await?;
        let now = |words: &str| {
            let text = own.get(language).and_then(|all| all.get(words));
            text.map_or("", String::as_str)
        };
        let moved = wanted.iter().filter(|(words, it)| {
            let now = now(words);
            now != it.read && now != it.text
        });
        let moved: BTreeMap<String, String> = moved
            .map(|(words, _)| (words.clone(), now(words).to_owned()))
            .collect();
        let texts = wanted.iter().filter(|(words, it)| now(words) != it.text);
        let texts: BTreeMap<&str, &str> = texts
            .map(|(words, it)| (words.as_str(), it.text.as_str()))
            .collect();
        if !moved.is_empty() || texts.is_empty() {
            return Ok(moved);
        }
        let id = self.world.id();
        let content = serde_json::to_string(&texts).expect("texts are JSON");
        act.tx
            .run(
                "INSERT INTO translation (id, style, language, content, set_by, set_at) \
                 VALUES ($1, $2, $3, $4, $5, $6)",
                values![id, act.style, language, content, permit.person(), act.at],
            )
            .await?;
        let said = Said::default()
            .id("translation", &id)
            .id("language", language)
            .id("count", texts.len())
            .hash("content", &Digest::of(content.as_bytes()));
        act.record(Act::Translate, said).await?;
        act.commit().await?;
        Ok(moved)
    }
}
