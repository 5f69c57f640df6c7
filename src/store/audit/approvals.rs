//! What was submitted to be approved, and what was decided on it.

use std::collections::BTreeMap;

use serde::Serialize;
use sqlx::FromRow;

use super::super::StoreError;
use super::OfStyle;
use super::told::{at, factory, hash, id, number, person};
use crate::exchange::ledger::Act;

#[derive(FromRow, Serialize, PartialEq)]
struct SubmissionRow {
    org: String,
    revision: i64,
    kind: String,
    item: String,
    colourway: Option<String>,
    fabric: Option<String>,
    number: i64,
    at: String,
    person: String,
    language: String,
    note_hash: String,
    reading: Option<String>,
    instrument_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct PhotoRow {
    photo_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct DecisionRow {
    verdict: String,
    at: String,
    person: String,
    reason_hash: String,
    colour_limit: String,
}

impl OfStyle<'_> {
    pub(super) async fn submissions(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'submission ' || id AS what, org, revision, kind, item, colourway, \
                 fabric, number, at, person, language, note_hash, reading, instrument_hash \
                 FROM submission WHERE style = $1 ORDER BY at, id",
            )
            .await?;
        let photos = self
            .kept(
                "SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of submission ' \
                 || h.submission AS what, h.photo_hash FROM submission_photo h \
                 JOIN submission s ON s.id = h.submission WHERE s.style = $1 \
                 ORDER BY h.submission, h.seq",
            )
            .await?;
        let decisions = self
            .kept(
                "SELECT 'decision of submission ' || d.submission AS what, d.verdict, d.at, \
                 d.person, d.reason_hash, d.colour_limit FROM submission_decision d \
                 JOIN submission s ON s.id = d.submission WHERE s.style = $1 \
                 ORDER BY d.submission",
            )
            .await?;
        let mut told = BTreeMap::new();
        let mut told_photos = BTreeMap::new();
        for entry in self.told(Act::Submit) {
            let submission = id(entry, "submission");
            let may = |name: &str| entry.ids.get(name).cloned();
            let row = SubmissionRow {
                org: factory(entry),
                revision: number(entry, "revision").unwrap_or_default(),
                kind: id(entry, "kind"),
                item: id(entry, "item"),
                colourway: may("colourway"),
                fabric: may("fabric"),
                number: number(entry, "number").unwrap_or_default(),
                at: at(entry),
                person: person(entry),
                language: id(entry, "language"),
                note_hash: hash(entry, "note"),
                reading: may("reading"),
                instrument_hash: hash(entry, "instrument"),
            };
            told.insert(format!("submission {submission}"), row);
            for (name, hash) in &entry.hashes {
                if let Some(seq) = name.strip_prefix("photo_") {
                    let what = format!("photograph {seq} of submission {submission}");
                    let photo_hash = hash.to_string();
                    told_photos.insert(what, PhotoRow { photo_hash });
                }
            }
        }
        let told_decisions = self.told(Act::Approve).map(|entry| {
            let row = DecisionRow {
                verdict: id(entry, "verdict"),
                at: at(entry),
                person: person(entry),
                reason_hash: hash(entry, "reason"),
                colour_limit: id(entry, "limit"),
            };
            let what = format!("decision of submission {}", id(entry, "submission"));
            (what, row)
        });
        let told_decisions = told_decisions.collect();
        self.hold(kept, told);
        self.hold(photos, told_photos);
        self.hold(decisions, told_decisions);
        Ok(())
    }
}
