//! Inspections as they are read: one statement for all of a style, one for their entries, one for
//! the defects of those.

use std::collections::BTreeMap;

use serde::Serialize;

use super::{Conclusion, FoundDefect, InspectedPiece, Inspection, LotDecision};
use crate::exchange::inspection::{Class, Decision, Defect, Group, Lot, Outcome, Sort};
use crate::sample::inspection::{Aql, Level};
use crate::spec::{
    Digest, EntryId, InspectionId, ItemId, OrgId, PersonId, RevisionId, SealId, StyleId, Time,
};
use crate::store::act::{Said, StyleAct, number};
use crate::store::{Read, Store, StoreError, values};

#[derive(sqlx::FromRow)]
struct InspectionRow {
    id: InspectionId,
    number: i64,
    seal: SealId,
    org: OrgId,
    org_name: String,
    revision_id: RevisionId,
    revision: i64,
    digest: Digest,
    at: Time,
    person: Option<String>,
    lot: String,
    level: Level,
    aql_major: Aql,
    aql_minor: Aql,
    follows: Option<InspectionId>,
    outcome: Option<Outcome>,
    concluded_at: Option<Time>,
    concluded_by: Option<String>,
    decision: Option<Decision>,
    decided_at: Option<Time>,
    decided_by: Option<String>,
    reason: Option<String>,
}

#[derive(sqlx::FromRow)]
struct EntryRow {
    id: EntryId,
    inspection: InspectionId,
    piece: i64,
    colourway: ItemId,
    size: ItemId,
    measured: String,
    at: Time,
    person: Option<String>,
    language: String,
}

#[derive(sqlx::FromRow)]
struct DefectRow {
    entry: EntryId,
    class: Class,
    item: Option<ItemId>,
    times: i64,
    words: Option<String>,
}

impl DefectRow {
    fn found(self) -> Result<FoundDefect, StoreError> {
        Ok(FoundDefect {
            times: number(
                "inspection_defect",
                "times",
                self.entry.as_str(),
                self.times,
            )?,
            class: self.class,
            item: self.item,
            words: self.words,
        })
    }
}

/// The inspections of a style, oldest first; with one factory, when `tenant` is given.
pub(in crate::store) async fn inspections_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<Vec<Inspection>, StoreError> {
    let rows: Vec<InspectionRow> = db
        .all(
            "SELECT i.id, i.number, i.seal, i.org, o.name AS org_name, v.id AS revision_id, \
             v.number AS revision, v.digest, i.at, n.content AS person, i.lot, i.level, \
             i.aql_major, i.aql_minor, i.follows, c.outcome, c.at AS concluded_at, \
             m.content AS concluded_by, d.decision, d.at AS decided_at, \
             k.content AS decided_by, x.content AS reason FROM inspection i \
             JOIN organisation o ON o.id = i.org JOIN seal s ON s.id = i.seal \
             JOIN round r ON r.id = s.round JOIN revision v ON v.id = r.revision \
             LEFT JOIN private_text n ON n.person = i.person AND n.kind = 'name' \
             LEFT JOIN inspection_conclusion c ON c.inspection = i.id \
             LEFT JOIN private_text m ON m.person = c.person AND m.kind = 'name' \
             LEFT JOIN inspection_decision d ON d.inspection = i.id \
             LEFT JOIN private_text k ON k.person = d.person AND k.kind = 'name' \
             LEFT JOIN private_text x ON x.id = d.reason \
             WHERE i.style = $1 AND (CAST($2 AS TEXT) IS NULL OR i.org = $2) ORDER BY i.at, i.id",
            values![style, tenant],
        )
        .await?;
    if rows.is_empty() {
        return Ok(Vec::new());
    }
    let mut entries = entries_of(db, style, tenant).await?;
    let followed: BTreeMap<InspectionId, InspectionId> = rows
        .iter()
        .filter_map(|row| Some((row.follows.clone()?, row.id.clone())))
        .collect();
    let mut found = Vec::with_capacity(rows.len());
    for row in rows {
        let place = row.id.as_str();
        let groups = from_json::<Vec<Group>>("inspection", "lot", place, &row.lot)?;
        let lot = Lot {
            groups,
            level: row.level,
            major: row.aql_major,
            minor: row.aql_minor,
        };
        let bad = || StoreError::corrupt("inspection", "lot", place, "no lot to inspect");
        let conclusion = row.outcome.zip(row.concluded_at);
        let conclusion = conclusion.map(|(outcome, at)| Conclusion {
            outcome,
            at,
            person: row.concluded_by,
        });
        let decision = row.decision.zip(row.decided_at);
        let decision = decision.map(|(decision, at)| LotDecision {
            decision,
            at,
            person: row.decided_by,
            reason: row.reason,
        });
        found.push(Inspection {
            number: number("inspection", "number", place, row.number)?,
            revision: number("revision", "number", place, row.revision)?,
            frozen: store.thaw(db, &row.revision_id, &row.digest).await?,
            plans: lot.plans().ok_or_else(bad)?,
            lot,
            entries: entries.remove(&row.id).unwrap_or_default(),
            followed_by: followed.get(&row.id).cloned(),
            id: row.id,
            seal: row.seal,
            org: row.org,
            org_name: row.org_name,
            digest: row.digest,
            at: row.at,
            person: row.person,
            follows: row.follows,
            conclusion,
            decision,
        });
    }
    Ok(found)
}

async fn entries_of(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<BTreeMap<InspectionId, Vec<InspectedPiece>>, StoreError> {
    let rows: Vec<EntryRow> = db
        .all(
            "SELECT e.id, e.inspection, e.piece, e.colourway, e.size, e.measured, e.at, \
             n.content AS person, e.language FROM inspection_entry e \
             JOIN inspection i ON i.id = e.inspection \
             LEFT JOIN private_text n ON n.person = e.person AND n.kind = 'name' \
             WHERE i.style = $1 AND (CAST($2 AS TEXT) IS NULL OR i.org = $2) \
             ORDER BY e.inspection, e.seq",
            values![style, tenant],
        )
        .await?;
    let defects: Vec<DefectRow> = db
        .all(
            "SELECT d.entry, d.class, d.item, d.times, x.content AS words \
             FROM inspection_defect d JOIN inspection_entry e ON e.id = d.entry \
             JOIN inspection i ON i.id = e.inspection \
             LEFT JOIN private_text x ON x.id = d.words \
             WHERE i.style = $1 AND (CAST($2 AS TEXT) IS NULL OR i.org = $2) \
             ORDER BY d.entry, d.seq",
            values![style, tenant],
        )
        .await?;
    let mut defects_of: BTreeMap<EntryId, Vec<FoundDefect>> = BTreeMap::new();
    for row in defects {
        let of = defects_of.entry(row.entry.clone()).or_default();
        of.push(row.found()?);
    }
    let mut entries: BTreeMap<InspectionId, Vec<InspectedPiece>> = BTreeMap::new();
    for row in rows {
        let place = row.id.as_str();
        let entry = InspectedPiece {
            piece: number("inspection_entry", "piece", place, row.piece)?,
            values: from_json("inspection_entry", "measured", place, &row.measured)?,
            defects: defects_of.remove(&row.id).unwrap_or_default(),
            id: row.id,
            sort: Sort {
                colourway: row.colourway,
                size: row.size,
            },
            language: row.language,
            at: row.at,
            person: row.person,
        };
        entries.entry(row.inspection).or_default().push(entry);
    }
    Ok(entries)
}

fn from_json<T: serde::de::DeserializeOwned>(
    table: &str,
    column: &str,
    row: &str,
    text: &str,
) -> Result<T, StoreError> {
    serde_json::from_str(text).map_err(|cause| StoreError::corrupt(table, column, row, cause))
}

/// An entry as it was kept under a key.
#[derive(sqlx::FromRow)]
pub(super) struct Kept {
    pub id: EntryId,
    pub inspection: InspectionId,
    pub piece: i64,
    pub colourway: ItemId,
    pub size: ItemId,
    pub measured: String,
    pub person: PersonId,
    pub language: String,
}

pub(super) async fn kept_under(act: &StyleAct<'_>, key: &str) -> Result<Option<Kept>, StoreError> {
    act.tx
        .maybe(
            "SELECT id, inspection, piece, colourway, size, measured, person, language \
             FROM inspection_entry WHERE key = $1",
            values![key],
        )
        .await
}

pub(super) async fn defects_of(
    act: &StyleAct<'_>,
    entry: &EntryId,
) -> Result<Vec<FoundDefect>, StoreError> {
    let rows: Vec<DefectRow> = act
        .tx
        .all(
            "SELECT d.entry, d.class, d.item, d.times, x.content AS words \
             FROM inspection_defect d LEFT JOIN private_text x ON x.id = d.words \
             WHERE d.entry = $1 ORDER BY d.seq",
            values![entry],
        )
        .await?;
    rows.into_iter().map(DefectRow::found).collect()
}

/// A defect without its words, as the ledger tells it.
#[derive(Serialize)]
struct Told<'a> {
    class: Class,
    item: Option<&'a ItemId>,
    times: u32,
}

/// Keeps the defects of an entry, and adds to what the ledger says of it.
pub(super) async fn keep_defects(
    act: &StyleAct<'_>,
    entry: &EntryId,
    defects: &[Defect<'_>],
    mut said: Said,
) -> Result<Said, StoreError> {
    let told = defects.iter().map(|it| Told {
        class: it.class,
        item: it.item,
        times: it.times,
    });
    said = said.id("defects", super::to_json(&told.collect::<Vec<_>>()));
    for (seq, defect) in (1_i64..).zip(defects) {
        let (words, hash) = act.keep_text("message", defect.words.trim()).await?;
        act.tx
            .run(
                "INSERT INTO inspection_defect (entry, seq, class, item, times, words, \
                 words_hash) VALUES ($1, $2, $3, $4, $5, $6, $7)",
                values![
                    entry,
                    seq,
                    defect.class,
                    defect.item,
                    defect.times,
                    words,
                    hash
                ],
            )
            .await?;
        said = said.hash(&format!("words_{seq}"), &hash);
    }
    Ok(said)
}
