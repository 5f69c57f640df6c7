//! Inspections of lots, their entries, conclusions and decisions.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use sqlx::FromRow;

use super::super::StoreError;
use super::OfStyle;
use super::told::{at, factory, hash, id, next, number, person};
use crate::exchange::ledger::Act;

#[derive(FromRow, Serialize, PartialEq)]
struct InspectionRow {
    seal: String,
    org: String,
    number: i64,
    at: String,
    person: String,
    lot: String,
    level: String,
    aql_major: String,
    aql_minor: String,
    follows: Option<String>,
}

#[derive(FromRow, Serialize, PartialEq)]
struct EntryRow {
    inspection: String,
    seq: i64,
    piece: i64,
    colourway: String,
    size: String,
    measured: String,
    at: String,
    person: String,
    language: String,
    key: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct DefectRow {
    class: String,
    item: Option<String>,
    times: i64,
    words_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct ConclusionRow {
    outcome: String,
    at: String,
    person: String,
    entries: String,
    critical: i64,
    major: i64,
    minor: i64,
}

#[derive(FromRow, Serialize, PartialEq)]
struct DecisionRow {
    decision: String,
    at: String,
    person: String,
    reason_hash: String,
}

/// A defect as the ledger tells it.
#[derive(Deserialize)]
struct Told {
    class: String,
    item: Option<String>,
    times: i64,
}

impl OfStyle<'_> {
    pub(super) async fn inspections(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'inspection ' || id AS what, seal, org, number, at, person, lot, level, \
                 aql_major, aql_minor, follows FROM inspection WHERE style = $1 ORDER BY at, id",
            )
            .await?;
        let told = self.told(Act::BeginInspection).map(|entry| {
            let row = InspectionRow {
                seal: id(entry, "seal"),
                org: factory(entry),
                number: number(entry, "number").unwrap_or_default(),
                at: at(entry),
                person: person(entry),
                lot: id(entry, "lot"),
                level: id(entry, "level"),
                aql_major: id(entry, "aql_major"),
                aql_minor: id(entry, "aql_minor"),
                follows: entry.ids.get("follows").cloned(),
            };
            (format!("inspection {}", id(entry, "inspection")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        self.inspection_entries().await?;
        self.inspection_ends().await
    }

    async fn inspection_entries(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'entry ' || e.id AS what, e.inspection, e.seq, e.piece, e.colourway, \
                 e.size, e.measured, e.at, e.person, e.language, e.key FROM inspection_entry e \
                 JOIN inspection i ON i.id = e.inspection WHERE i.style = $1 \
                 ORDER BY e.inspection, e.seq",
            )
            .await?;
        let defects = self
            .kept(
                "SELECT 'defect ' || CAST(d.seq AS TEXT) || ' of entry ' || d.entry AS what, \
                 d.class, d.item, d.times, d.words_hash FROM inspection_defect d \
                 JOIN inspection_entry e ON e.id = d.entry \
                 JOIN inspection i ON i.id = e.inspection WHERE i.style = $1 \
                 ORDER BY d.entry, d.seq",
            )
            .await?;
        let mut counts = BTreeMap::new();
        let mut told = BTreeMap::new();
        let mut told_defects = BTreeMap::new();
        for entry in self.told(Act::Inspect) {
            let inspection = id(entry, "inspection");
            let row = EntryRow {
                seq: next(&mut counts, &inspection),
                inspection,
                piece: number(entry, "piece").unwrap_or_default(),
                colourway: id(entry, "colourway"),
                size: id(entry, "size"),
                measured: id(entry, "measured"),
                at: at(entry),
                person: person(entry),
                language: id(entry, "language"),
                key: id(entry, "key"),
            };
            let what = format!("entry {}", id(entry, "entry"));
            let of: Vec<Told> = serde_json::from_str(&id(entry, "defects")).unwrap_or_default();
            for (seq, defect) in (1..).zip(of) {
                let row = DefectRow {
                    class: defect.class,
                    item: defect.item,
                    times: defect.times,
                    words_hash: hash(entry, &format!("words_{seq}")),
                };
                told_defects.insert(format!("defect {seq} of {what}"), row);
            }
            told.insert(what, row);
        }
        self.hold(kept, told);
        self.hold(defects, told_defects);
        Ok(())
    }

    async fn inspection_ends(&mut self) -> Result<(), StoreError> {
        let conclusions = self
            .kept(
                "SELECT 'conclusion of inspection ' || c.inspection AS what, c.outcome, c.at, \
                 c.person, c.entries, c.critical, c.major, c.minor FROM inspection_conclusion c \
                 JOIN inspection i ON i.id = c.inspection WHERE i.style = $1 \
                 ORDER BY c.inspection",
            )
            .await?;
        let decisions = self
            .kept(
                "SELECT 'decision of inspection ' || d.inspection AS what, d.decision, d.at, \
                 d.person, d.reason_hash FROM inspection_decision d \
                 JOIN inspection i ON i.id = d.inspection WHERE i.style = $1 \
                 ORDER BY d.inspection",
            )
            .await?;
        let told = self.told(Act::ConcludeInspection).map(|entry| {
            let count = |name| number(entry, name).unwrap_or_default();
            let row = ConclusionRow {
                outcome: id(entry, "outcome"),
                at: at(entry),
                person: person(entry),
                entries: hash(entry, "entries"),
                critical: count("critical"),
                major: count("major"),
                minor: count("minor"),
            };
            let what = format!("conclusion of inspection {}", id(entry, "inspection"));
            (what, row)
        });
        let told = told.collect();
        let told_decisions = self.told(Act::DecideInspection).map(|entry| {
            let row = DecisionRow {
                decision: id(entry, "decision"),
                at: at(entry),
                person: person(entry),
                reason_hash: hash(entry, "reason"),
            };
            let what = format!("decision of inspection {}", id(entry, "inspection"));
            (what, row)
        });
        let told_decisions = told_decisions.collect();
        self.hold(conclusions, told);
        self.hold(decisions, told_decisions);
        Ok(())
    }
}
