//! Seals: pieces of an approved round that both sides keep.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::act::Said;
use super::approvals::{Submission, submissions_in};
use super::revisions::facts_in;
use super::rounds::{Round, rounds_in};
use super::shares::shared_with;
use super::signatures::must_fixes_in;
use super::threads::threads_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::approval::{Anchor, Offered, needed, standing};
use crate::exchange::ledger::Act;
use crate::exchange::revision::{self, Frozen};
use crate::exchange::round::{Kind, Outcome, State};
use crate::exchange::seal::{self, Keep, Kept, Record, Sealing};
use crate::exchange::thread::Thread;
use crate::exchange::{Actor, Refused};
use crate::sample::deviation::{columns, judge};
use crate::spec::chart::Chart;
use crate::spec::{
    Digest, ItemId, OrgId, PieceId, RoundId, SealId, StyleId, SubmissionId, ThreadId, Time,
};

/// A seal with its pieces.
#[derive(Debug, Clone)]
pub struct Seal {
    pub id: SealId,
    pub round: RoundId,
    pub kind: Kind,
    /// The round's number.
    pub number: u32,
    pub org: OrgId,
    pub org_name: String,
    /// The number of the revision that the pieces were made to.
    pub revision: u32,
    pub digest: Digest,
    pub frozen: Arc<Frozen>,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    pub pieces: Vec<SealedPiece>,
    pub approvals: Vec<SubmissionId>,
    pub concessions: Vec<ThreadId>,
    round_record: Digest,
}

/// A piece that was sealed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SealedPiece {
    pub piece: PieceId,
    /// Its number in the round.
    pub number: u32,
    pub size: ItemId,
    /// The number on its seal.
    pub tag: String,
    pub keeper: Side,
    /// Where and by whom it is kept. `None`: erased.
    pub place: Option<String>,
    pub place_hash: Digest,
}

#[derive(sqlx::FromRow)]
struct SealRow {
    id: SealId,
    round: RoundId,
    at: Time,
    person: Option<String>,
    round_record: Digest,
    approvals: String,
    concessions: String,
}

#[derive(sqlx::FromRow)]
struct PieceRow {
    seal: SealId,
    piece: PieceId,
    tag: String,
    keeper: Side,
    place: Option<String>,
    place_hash: Digest,
}

impl Seal {
    /// What both sides sign.
    pub fn record(&self) -> Record {
        let pieces = self.pieces.iter().map(|it| Kept {
            piece: it.piece.clone(),
            tag: it.tag.clone(),
            keeper: it.keeper,
            place: it.place_hash.clone(),
        });
        Record {
            seal: self.id.clone(),
            round: self.round.clone(),
            round_record: self.round_record.clone(),
            revision: self.digest.clone(),
            pieces: pieces.collect(),
            approvals: self.approvals.clone(),
            concessions: self.concessions.clone(),
        }
    }
}

/// What is known of a round that somebody wants to seal pieces of, read at one time.
pub struct ToSeal {
    pub round: Round,
    pub concessions: Vec<ThreadId>,
    /// The options that count as approved, one for each thing that needs it.
    pub approvals: Vec<SubmissionId>,
    /// Critical points out of tolerance, or not measured, on each piece that were not conceded.
    pub out: BTreeMap<PieceId, BTreeSet<ItemId>>,
    /// Everything that keeps it from being sealed.
    pub blocks: Vec<Refused>,
    /// What the rules look at.
    facts: Known,
}

/// What the rules look at, with everything that it borrows from.
struct Known {
    shared: bool,
    current: Option<u32>,
    sealed: bool,
    threads: Vec<Thread>,
    size_sets: Vec<Arc<Frozen>>,
    unapproved: Vec<Anchor>,
    pieces: BTreeMap<PieceId, BTreeSet<ItemId>>,
}

impl Known {
    fn ask<T>(&self, by: &Actor, round: &Round, ask: impl FnOnce(&Sealing<'_>) -> T) -> T {
        let size_sets: Vec<&Chart> = self.size_sets.iter().map(|it| &it.chart).collect();
        ask(&Sealing {
            by,
            factory: &round.org,
            shared: self.shared,
            kind: round.kind,
            state: round.state,
            sealed: self.sealed,
            revision: round.revision,
            chart: &round.frozen.chart,
            current: self.current,
            threads: &self.threads,
            size_sets: &size_sets,
            unapproved: &self.unapproved,
            materials: round.dispatch.as_ref().map(|it| it.materials),
            pieces: &self.pieces,
        })
    }
}

/// The critical points of each piece that are out of tolerance, or that nobody measured: what is kept
/// as the measure of the bulk is known where it counts.
fn critical_out(round: &Round) -> BTreeMap<PieceId, BTreeSet<ItemId>> {
    let columns = columns(&round.frozen.spec, &round.frozen.chart);
    let of = |piece: &super::Piece| {
        let judged = columns.get(&piece.size);
        let judged = judged.map(|column| judge(column, &round.values(&piece.id, None)));
        let points = judged.into_iter().flat_map(|it| it.points);
        let out = points.filter(|(_, (limits, deviation))| {
            limits.critical && deviation.is_none_or(|it| it.verdict.is_out())
        });
        (piece.id.clone(), out.map(|(point, _)| point).collect())
    };
    round.pieces.iter().map(of).collect()
}

async fn to_seal_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
    by: &Actor,
    id: &RoundId,
) -> Result<ToSeal, StoreError> {
    let rounds = rounds_in(store, db, style, tenant).await?;
    let round = rounds.iter().find(|it| it.id == *id).cloned();
    let round = round.ok_or(StoreError::Missing)?;
    let size_sets = rounds.iter().filter(|it| {
        it.org == round.org
            && it.kind == Kind::SizeSet
            && it.state == State::Decided(Outcome::Approved)
    });
    let submitted = submissions_in(store, db, style, Some(&round.org)).await?;
    let offered: Vec<Offered<'_>> = submitted.iter().map(Submission::offered).collect();
    let spec = &round.frozen.spec;
    let (mut unapproved, mut approvals) = (Vec::new(), Vec::new());
    for thing in needed(spec) {
        match standing(&thing.anchor, spec, &offered).1 {
            Some(place) => approvals.push(submitted[place].id.clone()),
            None => unapproved.push(thing.anchor),
        }
    }
    let sealed: Option<(SealId,)> = db
        .maybe("SELECT id FROM seal WHERE round = $1", values![id])
        .await?;
    let facts = Known {
        shared: match shared_with(db, style, &round.org).await {
            Ok(()) => true,
            Err(StoreError::Missing) => false,
            Err(other) => return Err(other),
        },
        current: revision::current(&facts_in(db, style).await?),
        sealed: sealed.is_some(),
        threads: threads_in(db, style, Some(&round.org)).await?,
        size_sets: size_sets.map(|it| it.frozen.clone()).collect(),
        unapproved,
        pieces: critical_out(&round),
    };
    let of_pieces = |facts: &Sealing<'_>| {
        let pieces = facts.pieces.keys();
        let out = pieces.map(|it| (it.clone(), seal::out(facts, it)));
        out.collect()
    };
    Ok(ToSeal {
        concessions: seal::concessions(&facts.threads, &round.org, round.revision),
        approvals,
        out: facts.ask(by, &round, of_pieces),
        blocks: facts.ask(by, &round, seal::blocks),
        round,
        facts,
    })
}

/// The seals of a style, oldest first; with one factory, when `tenant` is given.
pub(super) async fn seals_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<Vec<Seal>, StoreError> {
    let rows: Vec<SealRow> = db
        .all(
            "SELECT s.id, s.round, s.at, n.content AS person, s.round_record, s.approvals, \
             s.concessions FROM seal s \
             LEFT JOIN private_text n ON n.person = s.person AND n.kind = 'name' \
             WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2) ORDER BY s.at, s.id",
            values![style, tenant],
        )
        .await?;
    if rows.is_empty() {
        return Ok(Vec::new());
    }
    let pieces: Vec<PieceRow> = db
        .all(
            "SELECT p.seal, p.piece, p.tag, p.keeper, x.content AS place, p.place_hash \
             FROM seal_piece p JOIN seal s ON s.id = p.seal \
             LEFT JOIN private_text x ON x.id = p.place \
             WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2)",
            values![style, tenant],
        )
        .await?;
    let rounds = rounds_in(store, db, style, tenant).await?;
    let seal = |row: SealRow| {
        let place = row.id.as_str();
        let gone = |column, cause| StoreError::corrupt("seal", column, place, cause);
        let round = rounds.iter().find(|it| it.id == row.round);
        let round = round.ok_or_else(|| gone("round", format!("no round {}", row.round)))?;
        let ours = pieces.iter().filter(|it| it.seal == row.id);
        let mut ours: Vec<SealedPiece> = ours
            .filter_map(|it| {
                let piece = round.pieces.iter().find(|piece| piece.id == it.piece)?;
                Some(SealedPiece {
                    piece: it.piece.clone(),
                    number: piece.number,
                    size: piece.size.clone(),
                    tag: it.tag.clone(),
                    keeper: it.keeper,
                    place: it.place.clone(),
                    place_hash: it.place_hash.clone(),
                })
            })
            .collect();
        ours.sort_by_key(|it| it.number);
        let bad = |column| move |cause: serde_json::Error| gone(column, cause.to_string());
        Ok(Seal {
            approvals: serde_json::from_str(&row.approvals).map_err(bad("approvals"))?,
            concessions: serde_json::from_str(&row.concessions).map_err(bad("concessions"))?,
            kind: round.kind,
            number: round.number,
            org: round.org.clone(),
            org_name: round.org_name.clone(),
            revision: round.revision,
            digest: round.digest.clone(),
            frozen: round.frozen.clone(),
            pieces: ours,
            at: row.at,
            person: row.person,
            round_record: row.round_record,
            round: row.round,
            id: row.id,
        })
    };
    rows.into_iter().map(seal).collect()
}

/// The digest of a line `PIECE KEEPER PLACE TAG` for each piece: what the ledger says was sealed.
pub(super) fn list_of<'a>(
    pieces: impl IntoIterator<Item = (&'a str, &'a str, &'a str, &'a str)>,
) -> Digest {
    let mut lines: Vec<String> = pieces
        .into_iter()
        .map(|(piece, keeper, place, tag)| format!("{piece} {keeper} {place} {tag}\n"))
        .collect();
    lines.sort();
    let lines: String = lines.into_iter().collect();
    Digest::of(lines.as_bytes())
}

impl Store {
    /// What keeps a round's pieces from being sealed, and what a seal would rest on.
    ///
    /// Errors: `Missing` when there is no such round for the holder.
    pub async fn to_seal(
        &self,
        permit: &StylePermit<act::Read>,
        round: &RoundId,
    ) -> Result<ToSeal, StoreError> {
        let (style, tenant) = (permit.style(), permit.tenant());
        to_seal_in(self, &self.db, style, tenant, permit.actor(), round).await
    }

    /// The seals of a style, oldest first: a factory's own.
    pub async fn seals(&self, permit: &StylePermit<act::Read>) -> Result<Vec<Seal>, StoreError> {
        seals_in(self, &self.db, permit.style(), permit.tenant()).await
    }

    /// Seals pieces of a round.
    ///
    /// Errors: `Missing` when there is no such round; `Refused` by the rules.
    pub async fn seal(
        &self,
        permit: &StylePermit<act::Seal>,
        id: &RoundId,
        keep: &[Keep<'_>],
    ) -> Result<SealId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let by = permit.actor();
        let known = to_seal_in(self, &act.tx, &style, None, by, id).await?;
        let round = &known.round;
        let ask = |facts: &Sealing<'_>| seal::seal(facts, keep);
        let asked = known.facts.ask(by, round, ask);
        asked.map_err(StoreError::refused(&style))?;
        let unwritable = |cause| StoreError::corrupt("round", "id", id.as_str(), cause);
        let must_fixes = must_fixes_in(&act.tx, &style, None, id).await?;
        let record = round.record(must_fixes).ok_or(StoreError::Missing)?;
        let round_record = record.digest().map_err(unwritable)?;
        let seal = SealId::new(self.world.id());
        let approvals = list(&known.approvals);
        let concessions = list(&known.concessions);
        act.tx
            .run(
                "INSERT INTO seal (id, style, round, org, at, person, round_record, approvals, \
                 concessions) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
                values![
                    seal,
                    style,
                    id,
                    round.org,
                    act.at,
                    permit.person(),
                    round_record,
                    approvals,
                    concessions
                ],
            )
            .await?;
        let mut lines = Vec::with_capacity(keep.len());
        for piece in keep {
            let (place, hash) = act.keep_text("message", piece.place.trim()).await?;
            let tag = piece.tag.trim();
            act.tx
                .run(
                    "INSERT INTO seal_piece (seal, piece, tag, keeper, place, place_hash) \
                     VALUES ($1, $2, $3, $4, $5, $6)",
                    values![seal, piece.piece, tag, piece.keeper, place, hash],
                )
                .await?;
            lines.push((piece.piece.as_str(), piece.keeper.name(), hash, tag));
        }
        let lines = lines.iter();
        let lines = lines.map(|(piece, keeper, hash, tag)| (*piece, *keeper, hash.as_str(), *tag));
        let said = Said::default()
            .to(&round.org)
            .id("seal", &seal)
            .id("round", id)
            .id("number", round.number)
            .id("revision", round.revision)
            .id("count", keep.len())
            .id("approvals", &approvals)
            .id("concessions", &concessions)
            .hash("round", &round_record)
            .hash("pieces", &list_of(lines));
        act.record(Act::Seal, said).await?;
        act.commit().await?;
        Ok(seal)
    }
}

fn list(ids: &impl serde::Serialize) -> String {
    serde_json::to_string(ids).expect("ids are JSON")
}
