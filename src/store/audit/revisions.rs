//! Revisions, what became of them, and with whom they are shared.

use std::collections::BTreeMap;

use serde::Serialize;
use sqlx::FromRow;

use super::super::{Read, StoreError, revisions::made_of, values};
use super::OfStyle;
use super::told::{Several, at, factory, hash, id, number, person};
use crate::exchange::ledger::Act;
use crate::spec::Digest;

#[derive(FromRow, Serialize, PartialEq)]
struct RevisionRow {
    id: String,
    number: i64,
    digest: String,
    published_at: String,
    published_by: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct WithdrawalRow {
    at: String,
    person: String,
    reason: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct ShareRow {
    shared_at: String,
    shared_by: String,
    ended_at: Option<String>,
}

#[derive(FromRow, Serialize, PartialEq)]
struct AcknowledgementRow {
    at: String,
    person: String,
}

#[derive(Serialize, PartialEq)]
struct TranslationRow {
    language: String,
    content: String,
    set_by: String,
    set_at: String,
}

impl OfStyle<'_> {
    pub(super) async fn revisions(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'revision ' || CAST(number AS TEXT) AS what, id, number, digest, \
                 published_at, published_by FROM revision WHERE style = $1 ORDER BY number",
            )
            .await?;
        self.audit.revisions += kept.len();
        let told = self.told(Act::Publish).map(|entry| {
            let row = RevisionRow {
                id: id(entry, "id"),
                number: number(entry, "revision").unwrap_or_default(),
                digest: hash(entry, "document"),
                published_at: at(entry),
                published_by: person(entry),
            };
            (format!("revision {}", row.number), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn sections(&mut self) -> Result<(), StoreError> {
        let rows: Vec<(i64, String, i64)> = self
            .tx
            .all(
                "SELECT r.number, s.section, s.version FROM revision_section s \
                 JOIN revision r ON r.id = s.revision WHERE r.style = $1",
                values![self.style],
            )
            .await?;
        let mut sections: BTreeMap<i64, Vec<(&str, i64)>> = BTreeMap::new();
        for (number, section, version) in &rows {
            sections
                .entry(*number)
                .or_default()
                .push((section, *version));
        }
        let kept = sections.into_iter().map(|(number, sections)| {
            let rows = made_of(sections);
            (format!("sections of revision {number}"), Several { rows })
        });
        let told = self.told(Act::Publish).filter_map(|entry| {
            let rows = entry.hashes.get("sections")?.clone();
            let what = format!("sections of revision {}", id(entry, "revision"));
            Some((what, Several { rows }))
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn withdrawals(&mut self) -> Result<(), StoreError> {
        let mut kept: Vec<(String, WithdrawalRow)> = self
            .kept(
                "SELECT 'withdrawal of revision ' || CAST(r.number AS TEXT) AS what, w.at, \
                 w.person, w.reason FROM withdrawal w JOIN revision r ON r.id = w.revision \
                 WHERE r.style = $1 ORDER BY r.number",
            )
            .await?;
        for (_, row) in &mut kept {
            row.reason = Digest::of(row.reason.as_bytes()).to_string();
        }
        let told = self.told(Act::Withdraw).map(|entry| {
            let row = WithdrawalRow {
                at: at(entry),
                person: person(entry),
                reason: hash(entry, "reason"),
            };
            (
                format!("withdrawal of revision {}", id(entry, "revision")),
                row,
            )
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn shares(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'share with ' || org AS what, shared_at, shared_by, ended_at FROM share \
                 WHERE style = $1 ORDER BY org",
            )
            .await?;
        let mut told: BTreeMap<String, ShareRow> = BTreeMap::new();
        for entry in &self.entries {
            let what = format!("share with {}", id(entry, "org"));
            match entry.act {
                Act::Share => {
                    let row = ShareRow {
                        shared_at: at(entry),
                        shared_by: person(entry),
                        ended_at: None,
                    };
                    told.insert(what, row);
                }
                Act::Unshare => {
                    if let Some(row) = told.get_mut(&what) {
                        row.ended_at = Some(at(entry));
                    }
                }
                _ => {}
            }
        }
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn acknowledgements(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'acknowledgement of revision ' || CAST(r.number AS TEXT) || ' by ' \
                 || a.org AS what, a.at, a.person FROM acknowledgement a \
                 JOIN revision r ON r.id = a.revision WHERE r.style = $1 \
                 ORDER BY r.number, a.org",
            )
            .await?;
        let told = self.told(Act::Acknowledge).map(|entry| {
            let (revision, org) = (id(entry, "revision"), factory(entry));
            let row = AcknowledgementRow {
                at: at(entry),
                person: person(entry),
            };
            (
                format!("acknowledgement of revision {revision} by {org}"),
                row,
            )
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }
    pub(super) async fn translations(&mut self) -> Result<(), StoreError> {
        let rows: Vec<(String, String, String, String, String)> = self
            .tx
            .all(
                "SELECT id, language, content, set_by, set_at FROM translation \
                 WHERE style = $1 ORDER BY set_at, id",
                values![self.style],
            )
            .await?;
        let kept = rows
            .into_iter()
            .map(|(id, language, content, set_by, set_at)| {
                let row = TranslationRow {
                    language,
                    content: Digest::of(content.as_bytes()).to_string(),
                    set_by,
                    set_at,
                };
                (format!("translation {id}"), row)
            });
        let told = self.told(Act::Translate).map(|entry| {
            let row = TranslationRow {
                language: id(entry, "language"),
                content: hash(entry, "content"),
                set_by: person(entry),
                set_at: at(entry),
            };
            (format!("translation {}", id(entry, "translation")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }
}
