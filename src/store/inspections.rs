//! Inspections of finished lots against a sealed sample: begun, entered piece by piece, concluded,
//! decided by the brand.

mod begin;
mod rows;

pub use begin::ToInspect;
pub(super) use rows::inspections_in;

use std::collections::BTreeMap;
use std::sync::Arc;

use super::act::{Said, StyleAct};
use super::{Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::inspection::{
    self, Class, Decision, Defect, Entering, Inspecting, Lot, Outcome, Plans, Sort, State, Tally,
    draw, out_of_tolerance, tally, worst,
};
use crate::exchange::ledger::Act;
use crate::exchange::revision::Frozen;
use crate::sample::deviation::{Column, columns};
use crate::spec::{
    Digest, Entered, EntryId, InspectionId, ItemId, Length, OrgId, PersonId, SealId, Time,
};

/// An inspection with everything that came of it.
#[derive(Debug, Clone)]
pub struct Inspection {
    pub id: InspectionId,
    /// Counted through the style's inspections with this factory, from 1.
    pub number: u32,
    pub seal: SealId,
    pub org: OrgId,
    pub org_name: String,
    /// The number of the revision that the sealed pieces were made to.
    pub revision: u32,
    pub digest: Digest,
    pub frozen: Arc<Frozen>,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    pub lot: Lot,
    pub plans: Plans,
    /// The inspection of the same lot before it was mended, and the one after.
    pub follows: Option<InspectionId>,
    pub followed_by: Option<InspectionId>,
    /// In the order they came in; the newest of a piece counts.
    pub entries: Vec<InspectedPiece>,
    pub conclusion: Option<Conclusion>,
    pub decision: Option<LotDecision>,
}

/// A piece of the lot, as somebody entered it once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InspectedPiece {
    pub id: EntryId,
    /// In the order in which pieces are drawn, from 1.
    pub piece: u32,
    pub sort: Sort,
    pub defects: Vec<FoundDefect>,
    /// What was measured, as typed in.
    pub values: BTreeMap<ItemId, Entered>,
    /// The language of the words, BCP 47.
    pub language: String,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
}

/// A defect that was seen on a piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FoundDefect {
    pub class: Class,
    pub item: Option<ItemId>,
    pub times: u32,
    /// `None`: erased.
    pub words: Option<String>,
}

/// What the entries came to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Conclusion {
    pub outcome: Outcome,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
}

/// What the brand decided on a lot.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LotDecision {
    pub decision: Decision,
    pub at: Time,
    /// `None`: erased.
    pub person: Option<String>,
    /// `None`: erased.
    pub reason: Option<String>,
}

/// The entry of a piece that counts, judged.
#[derive(Debug, Clone)]
pub struct JudgedPiece<'a> {
    pub entry: &'a InspectedPiece,
    /// Its points out of tolerance, and what each counts as.
    pub out: BTreeMap<ItemId, Class>,
    /// What the piece counts as.
    pub worst: Option<Class>,
}

impl Inspection {
    pub fn state(&self) -> State {
        let outcome = self.conclusion.as_ref().map(|it| it.outcome);
        State::of(outcome, self.decision.as_ref().map(|it| it.decision))
    }

    /// Whose move is next.
    pub fn waits_for(&self) -> Option<Side> {
        self.state().waits_for(self.followed_by.is_some())
    }

    /// The entries that count, by the pieces' numbers.
    pub fn newest(&self) -> BTreeMap<u32, &InspectedPiece> {
        self.entries.iter().map(|it| (it.piece, it)).collect()
    }

    /// The number of the next piece beyond the sample.
    pub fn beyond(&self) -> u32 {
        let numbers = self.entries.iter().map(|it| it.piece);
        numbers.fold(self.plans.sample(), u32::max) + 1
    }

    /// The entries that count, judged, by the pieces' numbers.
    pub fn judged(&self) -> BTreeMap<u32, JudgedPiece<'_>> {
        let columns = columns(&self.frozen.spec, &self.frozen.chart);
        let judge = |(piece, entry): (u32, _)| (piece, judge(&columns, entry));
        self.newest().into_iter().map(judge).collect()
    }

    /// What the entries come to as they are now.
    pub fn tally(&self) -> Tally {
        let judged = self.judged().into_iter();
        tally(&self.plans, &judged.map(|(n, it)| (n, it.worst)).collect())
    }

    /// How many pieces of each of the lot's sorts are to be drawn, and how many of the whole sample
    /// were looked at.
    pub fn drawn(&self) -> Vec<(u32, u32)> {
        let sample = self.plans.sample();
        let mut done: BTreeMap<&Sort, u32> = BTreeMap::new();
        for (piece, entry) in self.newest() {
            if piece <= sample {
                *done.entry(&entry.sort).or_default() += 1;
            }
        }
        let groups = self.lot.groups.iter();
        let done = groups.map(|it| done.get(&it.sort).copied().unwrap_or_default());
        draw::draw(&self.lot.groups, sample)
            .into_iter()
            .zip(done)
            .collect()
    }
}

fn judge<'a>(columns: &BTreeMap<ItemId, Column>, entry: &'a InspectedPiece) -> JudgedPiece<'a> {
    let column = columns.get(&entry.sort.size);
    let out = column.map(|it| out_of_tolerance(it, &lengths(&entry.values)));
    let out = out.unwrap_or_default();
    let classes = entry.defects.iter().map(|it| it.class);
    JudgedPiece {
        entry,
        worst: worst(classes.chain(out.values().copied())),
        out,
    }
}

/// Values without the form in which they were typed.
pub fn lengths(values: &BTreeMap<ItemId, Entered>) -> BTreeMap<ItemId, Length> {
    let values = values.iter();
    values
        .map(|(point, value)| (point.clone(), value.nm))
        .collect()
}

/// A piece to be entered.
#[derive(Debug, Clone)]
pub struct NewPiece<'a> {
    pub piece: u32,
    pub sort: &'a Sort,
    pub defects: &'a [Defect<'a>],
    /// As typed in.
    pub values: &'a BTreeMap<ItemId, Entered>,
    /// The newest entry of the piece that the sender has seen.
    pub corrects: Option<&'a EntryId>,
    /// The language of the words, BCP 47.
    pub language: &'a str,
    /// The sender's own key: the same key twice is one entry.
    pub key: &'a str,
}

/// What became of a piece that was sent.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PieceSent {
    Kept,
    /// It came before, just as it is.
    Before,
    /// Its key came before with something else: it is not kept.
    KeyUsed,
}

async fn inspection_in(
    store: &Store,
    act: &StyleAct<'_>,
    tenant: Option<&OrgId>,
    id: &InspectionId,
) -> Result<Inspection, StoreError> {
    let all = inspections_in(store, &act.tx, &act.style, tenant).await?;
    let found = all.into_iter().find(|it| it.id == *id);
    found.ok_or(StoreError::Missing)
}

/// What the ledger says of every act on an inspection.
fn about(inspection: &Inspection) -> Said {
    Said::default()
        .to(&inspection.org)
        .id("inspection", &inspection.id)
        .id("number", inspection.number)
}

/// The digest of a line `ENTRY PIECE` for each entry, in order: what a conclusion rests on.
fn list_of(entries: &[InspectedPiece]) -> Digest {
    let lines = entries.iter().map(|it| format!("{} {}\n", it.id, it.piece));
    Digest::of(lines.collect::<String>().as_bytes())
}

fn to_json(value: &impl serde::Serialize) -> String {
    serde_json::to_string(value).expect("ids and numbers are JSON")
}

impl Store {
    /// The inspections of a style, oldest first: a factory's own ones.
    pub async fn inspections(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Inspection>, StoreError> {
        inspections_in(self, &self.db, permit.style(), permit.tenant()).await
    }

    /// One inspection. Errors: `Missing` when it is not there for the holder.
    pub async fn inspection(
        &self,
        permit: &StylePermit<act::Read>,
        id: &InspectionId,
    ) -> Result<Inspection, StoreError> {
        let all = self.inspections(permit).await?;
        let found = all.into_iter().find(|it| it.id == *id);
        found.ok_or(StoreError::Missing)
    }

    /// Keeps what somebody found on a piece of the lot. A key that came before is not kept twice, and
    /// keeps out anything else.
    ///
    /// Errors: `Missing` when there is no such inspection for the holder; `Refused` by the rules.
    pub async fn inspect(
        &self,
        permit: &StylePermit<act::Inspect>,
        id: &InspectionId,
        new: NewPiece<'_>,
    ) -> Result<PieceSent, StoreError> {
        let mut act = self.act(permit).await?;
        let inspection = inspection_in(self, &act, permit.tenant(), id).await?;
        let measured = to_json(new.values);
        let before = came_before(&act, id, permit.person(), &new, &measured).await?;
        if let Some(same) = before {
            return Ok(match same {
                true => PieceSent::Before,
                false => PieceSent::KeyUsed,
            });
        }
        let spec = &inspection.frozen.spec;
        let columns = columns(spec, &inspection.frozen.chart);
        let newest = inspection.newest();
        let entered = newest.values().map(|it| inspection::Entered {
            id: &it.id,
            piece: it.piece,
            sort: &it.sort,
        });
        inspection::enter(
            &Inspecting {
                state: inspection.state(),
                lot: &inspection.lot,
                plans: &inspection.plans,
                spec,
                // A size without one is not the lot's either, which the rules refuse.
                column: columns.get(&new.sort.size).unwrap_or(&Column::new()),
                entered: &entered.collect::<Vec<_>>(),
            },
            &Entering {
                piece: new.piece,
                sort: new.sort,
                defects: new.defects,
                values: &lengths(new.values),
                corrects: new.corrects,
            },
        )
        .map_err(StoreError::refused(permit.style()))?;
        let entry = EntryId::new(self.world.id());
        let seq = inspection.entries.len() as i64 + 1;
        let inserted = act
            .tx
            .run(
                "INSERT INTO inspection_entry (id, inspection, seq, piece, colourway, size, \
                 measured, at, person, language, key) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11) \
                 ON CONFLICT (key) DO NOTHING",
                values![
                    entry,
                    id,
                    seq,
                    new.piece,
                    new.sort.colourway,
                    new.sort.size,
                    measured,
                    act.at,
                    permit.person(),
                    new.language,
                    new.key
                ],
            )
            .await?;
        if inserted == 0 {
            // Kept meanwhile by another style: this one is locked.
            return Ok(PieceSent::KeyUsed);
        }
        let said = about(&inspection)
            .id("entry", &entry)
            .id("piece", new.piece)
            .id("colourway", &new.sort.colourway)
            .id("size", &new.sort.size)
            .id("measured", &measured)
            .id("language", new.language)
            .id("key", new.key);
        let said = rows::keep_defects(&act, &entry, new.defects, said).await?;
        act.record(Act::Inspect, said).await?;
        act.commit().await?;
        Ok(PieceSent::Kept)
    }

    /// Concludes an inspection: what its entries say of the lot.
    ///
    /// Errors: `Missing` when there is no such inspection for the holder; `Refused` by the rules.
    pub async fn conclude_inspection(
        &self,
        permit: &StylePermit<act::Inspect>,
        id: &InspectionId,
    ) -> Result<Outcome, StoreError> {
        let mut act = self.act(permit).await?;
        let inspection = inspection_in(self, &act, permit.tenant(), id).await?;
        let tally = inspection.tally();
        let outcome = inspection::conclude(inspection.state(), &inspection.plans, &tally)
            .map_err(StoreError::refused(permit.style()))?;
        let entries = list_of(&inspection.entries);
        let found = tally.found;
        act.tx
            .run(
                "INSERT INTO inspection_conclusion (inspection, outcome, at, person, entries, \
                 critical, major, minor) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                values![
                    id,
                    outcome,
                    act.at,
                    permit.person(),
                    entries,
                    found.critical,
                    found.major,
                    found.minor
                ],
            )
            .await?;
        let said = about(&inspection)
            .id("outcome", outcome.name())
            .id("critical", found.critical)
            .id("major", found.major)
            .id("minor", found.minor)
            .hash("entries", &entries);
        act.record(Act::ConcludeInspection, said).await?;
        act.commit().await?;
        Ok(outcome)
    }

    /// Decides on an inspected lot.
    ///
    /// Errors: `Missing` when there is no such inspection; `Refused` by the rules.
    pub async fn decide_inspection(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &InspectionId,
        decision: Decision,
        reason: &str,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let inspection = inspection_in(self, &act, None, id).await?;
        let found = inspection.tally().found;
        let (state, by) = (inspection.state(), permit.actor());
        inspection::decide(state, by, &found, decision, reason)
            .map_err(StoreError::refused(permit.style()))?;
        let (text, reason_hash) = act.keep_text("message", reason.trim()).await?;
        act.tx
            .run(
                "INSERT INTO inspection_decision (inspection, decision, at, person, reason, \
                 reason_hash) VALUES ($1, $2, $3, $4, $5, $6)",
                values![id, decision, act.at, permit.person(), text, reason_hash],
            )
            .await?;
        let said = about(&inspection)
            .id("decision", decision.name())
            .hash("reason", &reason_hash);
        act.record(Act::DecideInspection, said).await?;
        act.commit().await
    }
}

/// Whether this key was kept before, and then whether with just this.
async fn came_before(
    act: &StyleAct<'_>,
    id: &InspectionId,
    person: &PersonId,
    new: &NewPiece<'_>,
    measured: &str,
) -> Result<Option<bool>, StoreError> {
    let Some(kept) = rows::kept_under(act, new.key).await? else {
        return Ok(None);
    };
    let defects = new.defects.iter().map(|it| FoundDefect {
        class: it.class,
        item: it.item.cloned(),
        times: it.times,
        words: Some(it.words.trim().to_owned()),
    });
    let same = kept.inspection == *id
        && kept.person == *person
        && kept.piece == i64::from(new.piece)
        && (&kept.colourway, &kept.size) == (&new.sort.colourway, &new.sort.size)
        && kept.measured == measured
        && kept.language == new.language
        && rows::defects_of(act, &kept.id).await? == defects.collect::<Vec<_>>();
    Ok(Some(same))
}
