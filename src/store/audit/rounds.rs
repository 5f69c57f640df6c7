//! Rounds with their pieces, values and decisions.

use std::collections::BTreeMap;

use serde::Serialize;
use sqlx::FromRow;

use super::super::{Read, StoreError, rounds::list_of, values};
use super::OfStyle;
use super::told::{Several, at, factory, hash, id, next, number, person, side};
use crate::exchange::ledger::Act;

#[derive(FromRow, Serialize, PartialEq)]
struct RoundRow {
    org: String,
    revision: i64,
    number: i64,
    kind: String,
    state: String,
    made_at: String,
    made_by: String,
    moved_at: String,
    continued_at: Option<i64>,
}

#[derive(FromRow, Serialize, PartialEq)]
struct MeasurementRow {
    round: String,
    seq: i64,
    piece: String,
    point: String,
    nm: i64,
    unit: String,
    person: String,
    side: String,
    at: String,
    key: String,
    wash: Option<String>,
}

#[derive(FromRow, Serialize, PartialEq)]
struct SkipRow {
    round: String,
    seq: i64,
    piece: String,
    point: String,
    reason: String,
    person: String,
    side: String,
    at: String,
    key: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct PhotoRow {
    person: String,
    side: String,
    at: String,
    photo_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct DecisionRow {
    id: String,
    outcome: String,
    at: String,
    person: String,
    reason_hash: String,
}

#[derive(FromRow, Serialize, PartialEq)]
struct DispatchRow {
    at: String,
    person: String,
    materials: String,
    substitutes_hash: String,
    parcel_hash: String,
}

impl OfStyle<'_> {
    pub(super) async fn rounds(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'round ' || r.id AS what, r.org, v.number AS revision, r.number, r.kind, \
                 r.state, r.made_at, r.made_by, r.moved_at, r.continued_at FROM round r \
                 JOIN revision v ON v.id = r.revision WHERE r.style = $1 ORDER BY r.number",
            )
            .await?;
        let told = self.told_rounds();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn pieces(&mut self) -> Result<(), StoreError> {
        let rows: Vec<(String, String, i64, String)> = self
            .tx
            .all(
                "SELECT p.round, p.id, p.number, p.size FROM piece p \
                 JOIN round r ON r.id = p.round WHERE r.style = $1 ORDER BY p.round, p.number",
                values![self.style],
            )
            .await?;
        let mut pieces: BTreeMap<String, Vec<_>> = BTreeMap::new();
        for (round, piece, number, size) in rows {
            pieces.entry(round).or_default().push((piece, number, size));
        }
        let kept = pieces.into_iter().map(|(round, pieces)| {
            let rows = list_of(pieces);
            (format!("pieces of round {round}"), Several { rows })
        });
        let told = self.told(Act::RequestRound).filter_map(|entry| {
            let rows = entry.hashes.get("pieces")?.clone();
            let what = format!("pieces of round {}", id(entry, "round"));
            Some((what, Several { rows }))
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn measurements(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'measurement ' || m.id AS what, m.round, m.seq, m.piece, m.point, m.nm, \
                 m.unit, m.person, m.side, m.at, m.key, m.wash FROM measurement m \
                 JOIN round r ON r.id = m.round WHERE r.style = $1 ORDER BY m.round, m.seq",
            )
            .await?;
        self.audit.measurements += kept.len();
        let mut counts = BTreeMap::new();
        let told = self.told(Act::Measure).map(|entry| {
            let round = id(entry, "round");
            let row = MeasurementRow {
                seq: next(&mut counts, &round),
                round,
                piece: id(entry, "piece"),
                point: id(entry, "point"),
                nm: number(entry, "nm").unwrap_or_default(),
                unit: id(entry, "unit"),
                person: person(entry),
                side: side(entry),
                at: at(entry),
                key: id(entry, "key"),
                wash: entry.ids.get("wash").cloned(),
            };
            (format!("measurement {}", id(entry, "measurement")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn skips(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'skip ' || k.id AS what, k.round, k.seq, k.piece, k.point, k.reason, \
                 k.person, k.side, k.at, k.key FROM skip k \
                 JOIN round r ON r.id = k.round WHERE r.style = $1 ORDER BY k.round, k.seq",
            )
            .await?;
        let mut counts = BTreeMap::new();
        let told = self.told(Act::Skip).map(|entry| {
            let round = id(entry, "round");
            let row = SkipRow {
                seq: next(&mut counts, &round),
                round,
                piece: id(entry, "piece"),
                point: id(entry, "point"),
                reason: id(entry, "reason"),
                person: person(entry),
                side: side(entry),
                at: at(entry),
                key: id(entry, "key"),
            };
            (format!("skip {}", id(entry, "skip")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn piece_photos(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of piece ' || h.piece AS what, \
                 h.person, h.side, h.at, h.photo_hash FROM piece_photo h \
                 JOIN piece p ON p.id = h.piece JOIN round r ON r.id = p.round \
                 WHERE r.style = $1 ORDER BY h.piece, h.seq",
            )
            .await?;
        let told = self.told(Act::Photograph).map(|entry| {
            let row = PhotoRow {
                person: person(entry),
                side: side(entry),
                at: at(entry),
                photo_hash: hash(entry, "photo"),
            };
            let (seq, piece) = (id(entry, "seq"), id(entry, "piece"));
            (format!("photograph {seq} of piece {piece}"), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn decisions(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'decision of round ' || d.round AS what, d.id, d.outcome, d.at, \
                 d.person, d.reason_hash FROM decision d JOIN round r ON r.id = d.round \
                 WHERE r.style = $1 ORDER BY r.number",
            )
            .await?;
        let told = self.told(Act::Decide).map(|entry| {
            let row = DecisionRow {
                id: id(entry, "decision"),
                outcome: id(entry, "outcome"),
                at: at(entry),
                person: person(entry),
                reason_hash: hash(entry, "reason"),
            };
            (format!("decision of round {}", id(entry, "round")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    pub(super) async fn dispatches(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'dispatch of round ' || s.round AS what, s.at, s.person, s.materials, \
                 s.substitutes_hash, s.parcel_hash FROM dispatch s JOIN round r ON r.id = s.round \
                 WHERE r.style = $1 ORDER BY r.number",
            )
            .await?;
        // Before the table was there, nothing was said of it.
        let told = self.told(Act::RoundMove);
        let told = told.filter(|entry| entry.ids.contains_key("materials"));
        let told = told.map(|entry| {
            let row = DispatchRow {
                at: at(entry),
                person: person(entry),
                materials: id(entry, "materials"),
                substitutes_hash: hash(entry, "substitutes"),
                parcel_hash: hash(entry, "parcel"),
            };
            (format!("dispatch of round {}", id(entry, "round")), row)
        });
        let told = told.collect();
        self.hold(kept, told);
        Ok(())
    }

    fn told_rounds(&self) -> BTreeMap<String, RoundRow> {
        let mut told: BTreeMap<String, RoundRow> = BTreeMap::new();
        for entry in &self.entries {
            let what = format!("round {}", id(entry, "round"));
            if entry.act == Act::RequestRound {
                let row = RoundRow {
                    org: factory(entry),
                    revision: number(entry, "revision").unwrap_or_default(),
                    number: number(entry, "number").unwrap_or_default(),
                    kind: id(entry, "kind"),
                    state: "requested".to_owned(),
                    made_at: at(entry),
                    made_by: person(entry),
                    moved_at: at(entry),
                    continued_at: None,
                };
                told.insert(what, row);
                continue;
            }
            let Some(row) = told.get_mut(&what) else {
                continue;
            };
            match entry.act {
                Act::RoundMove if entry.ids.contains_key("state") => {
                    row.state = id(entry, "state");
                    row.moved_at = at(entry);
                }
                // The brand went on past a newer revision.
                Act::RoundMove => row.continued_at = number(entry, "revision"),
                Act::Decide => {
                    row.state = id(entry, "outcome");
                    row.moved_at = at(entry);
                }
                _ => {}
            }
        }
        told
    }
}
