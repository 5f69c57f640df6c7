//! Seals and their pieces.

use std::collections::BTreeMap;

use serde::Serialize;
use sqlx::FromRow;

use super::super::{Read, StoreError, seals::list_of, values};
use super::OfStyle;
use super::told::{Several, at, factory, hash, id, person};
use crate::exchange::ledger::Act;

#[derive(FromRow, Serialize, PartialEq)]
struct SealRow {
    round: String,
    org: String,
    at: String,
    person: String,
    round_record: String,
    approvals: String,
    concessions: String,
}

impl OfStyle<'_> {
    pub(super) async fn seals(&mut self) -> Result<(), StoreError> {
        let kept = self
            .kept(
                "SELECT 'seal ' || id AS what, round, org, at, person, round_record, approvals, \
                 concessions FROM seal WHERE style = $1 ORDER BY at, id",
            )
            .await?;
        let rows: Vec<(String, String, String, String, String)> = self
            .tx
            .all(
                "SELECT p.seal, p.piece, p.keeper, p.place_hash, p.tag FROM seal_piece p \
                 JOIN seal s ON s.id = p.seal WHERE s.style = $1 ORDER BY p.seal, p.piece",
                values![self.style],
            )
            .await?;
        let mut pieces: BTreeMap<&str, Vec<_>> = BTreeMap::new();
        for (seal, piece, keeper, place, tag) in &rows {
            let line = (&**piece, &**keeper, &**place, &**tag);
            pieces.entry(seal).or_default().push(line);
        }
        let pieces = pieces.into_iter().map(|(seal, pieces)| {
            let rows = list_of(pieces);
            (format!("pieces of seal {seal}"), Several { rows })
        });
        let told = self.told(Act::Seal).map(|entry| {
            let row = SealRow {
                round: id(entry, "round"),
                org: factory(entry),
                at: at(entry),
                person: person(entry),
                round_record: hash(entry, "round"),
                approvals: id(entry, "approvals"),
                concessions: id(entry, "concessions"),
            };
            (format!("seal {}", id(entry, "seal")), row)
        });
        let told = told.collect();
        let told_pieces = self.told(Act::Seal).filter_map(|entry| {
            let rows = entry.hashes.get("pieces")?.clone();
            Some((
                format!("pieces of seal {}", id(entry, "seal")),
                Several { rows },
            ))
        });
        let told_pieces = told_pieces.collect();
        self.hold(kept, told);
        self.hold(pieces, told_pieces);
        Ok(())
    }
}
