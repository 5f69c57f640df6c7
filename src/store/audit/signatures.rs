//! Signatures.

use serde::Serialize;
use sqlx::FromRow;

use super::super::StoreError;
use super::OfStyle;
use super::told::{at, factory, hash, id, person};
use crate::exchange::ledger::Act;
use crate::exchange::signature::SubjectKind;

#[derive(FromRow, Serialize, PartialEq)]
struct SignatureRow {
    subject: String,
    subject_id: String,
    org: String,
    side: String,
    person: String,
    role: String,
    at: String,
    local_time: String,
    digest: String,
    language: String,
    screen: String,
    statement: String,
    name_hash: String,
    chain: String,
}

impl OfStyle<'_> {
    pub(super) async fn signatures(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'signature ' || id AS what, subject, subject_id, org, side, person, role, \
                 at, local_time, digest, language, screen, statement, name_hash, chain \
                 FROM signature WHERE style = $1 ORDER BY at, id",
            )
            .await?;
        self.audit.signatures += kept.len();
        let told = self.told(Act::Sign).map(|entry| {
            let kinds = SubjectKind::ALL.map(SubjectKind::name).into_iter();
            let mut kinds = kinds.filter(|kind| entry.ids.contains_key(*kind));
            let subject = kinds.next().unwrap_or_default();
            let row = SignatureRow {
                subject: subject.to_owned(),
                subject_id: id(entry, "subject"),
                org: factory(entry),
                side: id(entry, "side"),
                person: person(entry),
                role: id(entry, "role"),
                at: at(entry),
                local_time: id(entry, "local_time"),
                digest: hash(entry, "document"),
                language: id(entry, "language"),
                screen: hash(entry, "screen"),
                statement: id(entry, "statement"),
                name_hash: hash(entry, "name"),
                chain: entry.before.to_string(),
            };
            (format!("signature {}", id(entry, "signature")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }
}
