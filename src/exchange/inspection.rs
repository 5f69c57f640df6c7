//! Inspecting bulk: a sample of a finished lot is looked at against the sealed sample and its
//! revision, by the plans of [`sample::inspection`](crate::sample::inspection).
//!
//! Pieces are numbered in the order in which they are drawn. The plan for major defects counts
//! within its own first pieces, the one for minor defects within its own; a critical defect counts
//! wherever in the lot it is met, and one rejects the lot. A piece is entered again to correct it:
//! the newest entry counts, the older ones stay.

pub mod draw;

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use super::{Actor, Refused, Side};
use crate::sample::deviation::{Column, judge};
use crate::sample::inspection::{self, Aql, Found, Level, Plan, Rejection};
use crate::spec::chart::Chart;
use crate::spec::{EntryId, ItemId, Length, Spec};

/// The most pieces that a lot may have.
pub const LARGEST: u32 = 10_000_000;

/// The most defects of one sort that one piece is said to have.
pub const MOST_TIMES: u32 = 1000;

super::named! {
    /// How bad a defect is, the worst first: the classes of MIL-STD-105E in our own words.
    Class {
        /// It can hurt somebody.
        Critical = "critical",
        /// The garment is likely to fail, or to serve much less.
        Major = "major",
        /// It departs from what was asked, and the garment serves all the same.
        Minor = "minor",
    }
}

super::named! {
    /// What the inspected pieces say of the lot.
    Outcome {
        Accepted = "accepted",
        Rejected = "rejected",
    }
}

super::named! {
    /// What the brand decides on an inspected lot.
    Decision {
        /// It may be shipped.
        Released = "released",
        /// It was rejected, and may be shipped as it is, for a reason.
        Concession = "concession",
        /// The factory sorts and mends it; then it is inspected again.
        Rework = "rework",
        Refused = "refused",
    }
}

/// How far an inspection has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    Open,
    Concluded(Outcome),
    Decided(Decision),
}

impl State {
    /// The stable name: that of what it came to.
    pub fn name(self) -> &'static str {
        match self {
            State::Open => "open",
            State::Concluded(outcome) => outcome.name(),
            State::Decided(decision) => decision.name(),
        }
    }

    /// What was concluded and decided so far.
    pub fn of(outcome: Option<Outcome>, decision: Option<Decision>) -> State {
        match (outcome, decision) {
            (_, Some(decision)) => State::Decided(decision),
            (Some(outcome), None) => State::Concluded(outcome),
            (None, None) => State::Open,
        }
    }

    /// Whose move is next. A lot that was sent back waits until it is inspected again.
    pub fn waits_for(self, followed: bool) -> Option<Side> {
        match self {
            State::Open => Some(Side::Factory),
            State::Concluded(_) => Some(Side::Brand),
            State::Decided(Decision::Rework) if !followed => Some(Side::Factory),
            State::Decided(_) => None,
        }
    }
}

/// What a piece is: all pieces of one colourway and one size are of one sort.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sort {
    pub colourway: ItemId,
    pub size: ItemId,
}

/// How many pieces of a sort a lot has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Group {
    pub sort: Sort,
    pub pieces: u32,
}

/// A finished lot, and how strictly it is inspected.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lot {
    /// Each sort once, none of them empty.
    pub groups: Vec<Group>,
    pub level: Level,
    pub major: Aql,
    pub minor: Aql,
}

/// The plans that a lot is inspected by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Plans {
    pub major: Plan,
    pub minor: Plan,
}

impl Lot {
    /// All its pieces.
    pub fn size(&self) -> u64 {
        self.groups.iter().map(|it| u64::from(it.pieces)).sum()
    }

    /// `None` for a lot that is empty, or larger than a lot may be.
    pub fn plans(&self) -> Option<Plans> {
        let size = u32::try_from(self.size()).ok()?;
        let plan = |aql| inspection::plan(size, self.level, aql).filter(|_| size <= LARGEST);
        Some(Plans {
            major: plan(self.major)?,
            minor: plan(self.minor)?,
        })
    }

    pub fn pieces_of(&self, sort: &Sort) -> u32 {
        let group = self.groups.iter().find(|it| it.sort == *sort);
        group.map_or(0, |it| it.pieces)
    }
}

impl Plans {
    /// How many pieces are looked at: as many as the larger sample has.
    pub fn sample(&self) -> u32 {
        self.major.sample.max(self.minor.sample)
    }
}

/// The lot as it was inspected before, and what came of that.
#[derive(Debug, Clone, Copy)]
pub struct Again<'a> {
    pub lot: &'a Lot,
    pub state: State,
    /// Another inspection has followed it.
    pub followed: bool,
}

/// Everything that decides whether a lot may be inspected against a seal.
#[derive(Debug, Clone)]
pub struct Beginning<'a> {
    /// The sides that have not signed the seal.
    pub unsigned: &'a [Side],
    /// The style is shared with the seal's factory now.
    pub shared: bool,
    /// The revision that the sealed pieces were made to, and the current one.
    pub revision: u32,
    pub current: Option<u32>,
    pub spec: &'a Spec,
    pub chart: &'a Chart,
    /// For a lot that was mended.
    pub again: Option<Again<'a>>,
}

/// Everything that keeps bulk from being inspected against the seal, the most fundamental first.
pub fn blocks(facts: &Beginning<'_>) -> Vec<Refused> {
    let mut blocks = Vec::new();
    if !facts.shared {
        blocks.push(Refused::NotShared);
    }
    if !facts.unsigned.is_empty() {
        let sides = facts.unsigned.to_vec();
        blocks.push(Refused::SealUnsigned { sides });
    }
    if facts.current != Some(facts.revision) {
        blocks.push(Refused::NotCurrent {
            current: facts.current,
        });
    }
    if let Some(again) = &facts.again {
        if again.state != State::Decided(Decision::Rework) {
            blocks.push(Refused::NotForRework);
        } else if again.followed {
            blocks.push(Refused::InspectedAgain);
        }
    }
    blocks
}

/// Begins an inspection: the plans that it goes by.
pub fn begin(facts: &Beginning<'_>, lot: &Lot) -> Result<Plans, Refused> {
    if let Some(refused) = blocks(facts).into_iter().next() {
        return Err(refused);
    }
    let colourways = &facts.spec.colourways.colourways;
    let known = |sort: &Sort| {
        colourways.iter().any(|it| it.id == sort.colourway)
            && facts.chart.sizes.contains(&sort.size)
    };
    let sorts: BTreeSet<&Sort> = lot.groups.iter().map(|it| &it.sort).collect();
    let said = lot.groups.iter().all(|it| it.pieces > 0 && known(&it.sort));
    let plans = lot.plans();
    let Some(plans) = plans.filter(|_| said && sorts.len() == lot.groups.len()) else {
        return Err(Refused::LotUnsaid);
    };
    if let Some(again) = &facts.again {
        let grown = |it: &Group| it.pieces > again.lot.pieces_of(&it.sort);
        if lot.groups.iter().any(grown) {
            return Err(Refused::LotGrown);
        }
    }
    Ok(plans)
}

/// A defect that somebody saw on a piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Defect<'a> {
    pub class: Class,
    /// What of the spec it is on.
    pub item: Option<&'a ItemId>,
    /// How many of them the piece has.
    pub times: u32,
    /// May be empty where an item is named.
    pub words: &'a str,
}

/// What somebody enters of a piece.
#[derive(Debug, Clone)]
pub struct Entering<'a> {
    pub piece: u32,
    pub sort: &'a Sort,
    pub defects: &'a [Defect<'a>],
    pub values: &'a BTreeMap<ItemId, Length>,
    /// The newest entry of the piece that the page showed, which this one corrects.
    pub corrects: Option<&'a EntryId>,
}

/// The entry of a piece that counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Entered<'a> {
    pub id: &'a EntryId,
    pub piece: u32,
    pub sort: &'a Sort,
}

/// What decides whether a piece may be entered.
#[derive(Debug, Clone)]
pub struct Inspecting<'a> {
    pub state: State,
    pub lot: &'a Lot,
    pub plans: &'a Plans,
    pub spec: &'a Spec,
    /// What a piece of the sort that is entered may measure.
    pub column: &'a Column,
    /// The entries that count, one for each piece.
    pub entered: &'a [Entered<'a>],
}

/// May this piece be entered? Also beyond the sample, where it has a critical defect.
pub fn enter(facts: &Inspecting<'_>, new: &Entering<'_>) -> Result<(), Refused> {
    if facts.state != State::Open {
        return Err(Refused::InspectionNotIn { state: facts.state });
    }
    let before = facts.entered.iter().find(|it| it.piece == new.piece);
    if before.map(|it| it.id) != new.corrects {
        return Err(Refused::PieceMoved);
    }
    let most = facts.plans.major.lot;
    let others = facts.entered.iter();
    let others = others.filter(|it| it.piece != new.piece && it.sort == new.sort);
    let left = others.count() < facts.lot.pieces_of(new.sort) as usize;
    let measured = new.values.keys().all(|it| facts.column.contains_key(it));
    if !(1..=most).contains(&new.piece) || !left || !measured {
        return Err(Refused::PieceUnsaid { most });
    }
    let said = |it: &Defect<'_>| {
        let named = match it.item {
            Some(item) => facts.spec.item(item).is_some(),
            None => !it.words.trim().is_empty(),
        };
        named && (1..=MOST_TIMES).contains(&it.times)
    };
    if !new.defects.iter().all(said) {
        return Err(Refused::DefectUnsaid);
    }
    let sample = facts.plans.sample();
    let critical = new.defects.iter().any(|it| it.class == Class::Critical);
    if new.piece > sample && !critical && before.is_none() {
        return Err(Refused::PieceBeyond { sample });
    }
    Ok(())
}

/// The points out of tolerance, judged as those of samples are: a critical point is a major defect,
/// another one a minor defect. Common practice, no source.
pub fn out_of_tolerance(
    column: &Column,
    values: &BTreeMap<ItemId, Length>,
) -> BTreeMap<ItemId, Class> {
    let judged = judge(column, values).points.into_iter();
    let out = judged.filter_map(|(point, (limits, deviation))| {
        let class = match limits.critical {
            true => Class::Major,
            false => Class::Minor,
        };
        deviation?.verdict.is_out().then_some((point, class))
    });
    out.collect()
}

/// The class that a piece counts in: that of its worst defect (MIL-STD-105E counts a piece as a
/// critical, a major or a minor defective once).
pub fn worst(classes: impl IntoIterator<Item = Class>) -> Option<Class> {
    classes.into_iter().min()
}

/// What the entries that count come to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tally {
    pub found: Found,
    /// How many pieces of each plan's own sample were looked at.
    pub of_major: u32,
    pub of_minor: u32,
    /// How many pieces of the whole sample were not.
    pub missing: u32,
}

/// Counts pieces, each with the class of its worst defect. Each plan counts within its own sample; a
/// critical defect counts wherever it is.
pub fn tally(plans: &Plans, pieces: &BTreeMap<u32, Option<Class>>) -> Tally {
    let count = |is: &dyn Fn(u32, Option<Class>) -> bool| {
        let found = pieces.iter().filter(|(piece, class)| is(**piece, **class));
        u32::try_from(found.count()).unwrap_or(u32::MAX)
    };
    let (major, minor) = (plans.major.sample, plans.minor.sample);
    let sample = plans.sample();
    Tally {
        found: Found {
            critical: count(&|_, class| class == Some(Class::Critical)),
            major: count(&|piece, class| piece <= major && class == Some(Class::Major)),
            minor: count(&|piece, class| piece <= minor && class == Some(Class::Minor)),
        },
        of_major: count(&|piece, _| piece <= major),
        of_minor: count(&|piece, _| piece <= minor),
        missing: sample - count(&|piece, _| piece <= sample),
    }
}

/// Why the lot is rejected as it stands now; nothing, and it is not rejected yet.
pub fn rejections(plans: &Plans, tally: &Tally) -> Vec<Rejection> {
    inspection::rejections(&plans.major, &plans.minor, tally.found)
}

/// Concludes an inspection: what its entries say of the lot. As long as pieces are missing it can
/// only be rejected.
pub fn conclude(state: State, plans: &Plans, tally: &Tally) -> Result<Outcome, Refused> {
    if state != State::Open {
        return Err(Refused::InspectionNotIn { state });
    }
    if !rejections(plans, tally).is_empty() {
        return Ok(Outcome::Rejected);
    }
    match tally.missing {
        0 => Ok(Outcome::Accepted),
        missing => Err(Refused::PiecesUninspected { missing }),
    }
}

/// Decides on a lot, once. A lot in which something critical was found is mended or refused; all but
/// a release say why.
pub fn decide(
    state: State,
    by: &Actor,
    found: &Found,
    decision: Decision,
    reason: &str,
) -> Result<(), Refused> {
    if by.side() != Side::Brand {
        return Err(Refused::OnlyBrand);
    }
    let State::Concluded(outcome) = state else {
        return Err(Refused::InspectionNotIn { state });
    };
    match (decision, outcome) {
        (Decision::Released, Outcome::Rejected) => return Err(Refused::LotRejected),
        (Decision::Concession, Outcome::Accepted) => return Err(Refused::NothingToConcede),
        (Decision::Concession, _) if found.critical > 0 => {
            let pieces = found.critical;
            return Err(Refused::CriticalInBulk { pieces });
        }
        _ => {}
    }
    if decision != Decision::Released && reason.trim().is_empty() {
        return Err(Refused::ReasonMissing);
    }
    Ok(())
}

#[cfg(test)]
mod tests;
