//! The sealed sample: pieces of an approved round, made of what was asked for, that both sides keep
//! and judge the bulk by.

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::approval::Anchor;
use super::round::{Kind, Materials, Outcome, State as Stage};
use super::thread::{self, State, Thread};
use super::{Actor, Refused, Role, Side};
use crate::spec::canon::{CanonError, to_canonical};
use crate::spec::chart::Chart;
use crate::spec::{Digest, ItemId, OrgId, PieceId, RoundId, SealId, SubmissionId, ThreadId};

/// Everything that decides whether a round's pieces may be sealed.
#[derive(Debug, Clone)]
pub struct Sealing<'a> {
    pub by: &'a Actor,
    /// The factory that made the pieces.
    pub factory: &'a OrgId,
    /// The style is shared with it now.
    pub shared: bool,
    pub kind: Kind,
    pub state: Stage,
    /// Pieces of this round were sealed before.
    pub sealed: bool,
    /// The number of the revision that the round is bound to, and its chart.
    pub revision: u32,
    pub chart: &'a Chart,
    /// The current revision of the style.
    pub current: Option<u32>,
    /// The style's threads; those with other factories are passed over.
    pub threads: &'a [Thread],
    /// The charts of the approved size-set rounds with this factory.
    pub size_sets: &'a [&'a Chart],
    /// What the revision needs approved with this factory, and is not.
    pub unapproved: &'a [Anchor],
    /// What the factory said the pieces are made of; nothing where it was not asked.
    pub materials: Option<Materials>,
    /// Each piece with its critical points out of tolerance, or not measured, conceded or not.
    pub pieces: &'a BTreeMap<PieceId, BTreeSet<ItemId>>,
}

/// A piece to be sealed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Keep<'a> {
    pub piece: &'a PieceId,
    /// The number on its seal.
    pub tag: &'a str,
    /// Which side keeps it, and where, by whom.
    pub keeper: Side,
    pub place: &'a str,
}

/// Everything that keeps the round's pieces from being sealed, all at once, the most fundamental
/// first; empty when nothing does.
pub fn blocks(facts: &Sealing<'_>) -> Vec<Refused> {
    let mut blocks = Vec::new();
    if facts.by.role != Role::Owner {
        blocks.push(Refused::OnlyOwner);
    }
    if !facts.shared {
        blocks.push(Refused::NotShared);
    }
    if facts.sealed {
        blocks.push(Refused::AlreadySealed);
    }
    if !matches!(facts.kind, Kind::PreProduction | Kind::TopOfProduction) {
        blocks.push(Refused::TooEarlyToSeal { kind: facts.kind });
    }
    if facts.state != Stage::Decided(Outcome::Approved) {
        blocks.push(Refused::RoundNotApproved { state: facts.state });
    }
    if facts.current != Some(facts.revision) {
        blocks.push(Refused::NotCurrent {
            current: facts.current,
        });
    }
    let threads = with(facts, Thread::is_open_question);
    if !threads.is_empty() {
        blocks.push(Refused::QuestionsBeforeSealing { threads });
    }
    let threads = with(facts, is_unverified);
    if !threads.is_empty() {
        blocks.push(Refused::MustFixUnverified { threads });
    }
    if !facts.size_sets.contains(&facts.chart) {
        blocks.push(Refused::SizeSetMissing);
    }
    if !facts.unapproved.is_empty() {
        let things = facts.unapproved.to_vec();
        blocks.push(Refused::NotApprovedYet { things });
    }
    if facts.materials == Some(Materials::Substitute) {
        blocks.push(Refused::SubstitutesSent);
    }
    // One piece that is within is enough to begin: each that is chosen is looked at again.
    let out: Vec<BTreeSet<ItemId>> = facts.pieces.keys().map(|it| out(facts, it)).collect();
    if !out.is_empty() && out.iter().all(|points| !points.is_empty()) {
        let points = out.into_iter().flatten().collect::<BTreeSet<_>>();
        blocks.push(Refused::PieceCriticalOut {
            points: points.into_iter().collect(),
        });
    }
    blocks
}

/// May these pieces be sealed now? Refused with the first thing that [blocks] it; then each piece is
/// one of the round's, has a number of its own on its seal, and a place, and no critical point out of
/// tolerance that was not conceded.
pub fn seal(facts: &Sealing<'_>, keep: &[Keep<'_>]) -> Result<(), Refused> {
    if let Some(refused) = blocks(facts).into_iter().next() {
        return Err(refused);
    }
    let pieces: BTreeSet<&PieceId> = keep.iter().map(|it| it.piece).collect();
    let tags: BTreeSet<&str> = keep.iter().map(|it| it.tag.trim()).collect();
    let said = keep.iter().all(|it| {
        let named = !it.tag.trim().is_empty() && !it.place.trim().is_empty();
        named && facts.pieces.contains_key(it.piece)
    });
    let once = pieces.len() == keep.len() && tags.len() == keep.len();
    if keep.is_empty() || !said || !once {
        return Err(Refused::SealUnsaid);
    }
    let points: BTreeSet<ItemId> = pieces.into_iter().flat_map(|it| out(facts, it)).collect();
    if !points.is_empty() {
        return Err(Refused::PieceCriticalOut {
            points: points.into_iter().collect(),
        });
    }
    Ok(())
}

/// The granted concessions and must-fixes let pass that count for the round's revision.
pub fn concessions(threads: &[Thread], factory: &OrgId, revision: u32) -> Vec<ThreadId> {
    let ours = threads.iter().filter(|it| it.factory == *factory);
    let granted = ours.filter(|it| it.state == State::Granted && it.raised_on == revision);
    granted.map(|it| it.id.clone()).collect()
}

/// The critical points of a piece that are out of tolerance, or not measured, and were not conceded.
pub fn out(facts: &Sealing<'_>, piece: &PieceId) -> BTreeSet<ItemId> {
    let conceded = |point: &ItemId| {
        let ours = facts
            .threads
            .iter()
            .filter(|it| it.factory == *facts.factory);
        ours.clone().any(|it| it.concedes(point, facts.revision))
    };
    let points = facts.pieces.get(piece).into_iter().flatten();
    points.filter(|it| !conceded(it)).cloned().collect()
}

fn with(facts: &Sealing<'_>, is: impl Fn(&Thread) -> bool) -> Vec<ThreadId> {
    let ours = facts
        .threads
        .iter()
        .filter(|it| it.factory == *facts.factory);
    ours.filter(|it| is(it)).map(|it| it.id.clone()).collect()
}

/// A must-fix that nobody has seen mended on a sample, let pass or closed.
fn is_unverified(thread: &Thread) -> bool {
    let settled = matches!(
        thread.state,
        State::Verified { .. } | State::Closed | State::Granted
    );
    thread.kind == thread::Kind::MustFix && !settled
}

/// What both sides sign of a seal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Record {
    pub seal: SealId,
    pub round: RoundId,
    /// The digest of the round's record when it was sealed.
    pub round_record: Digest,
    /// The whole digest of the revision that the pieces were made to.
    pub revision: Digest,
    /// In the order of the round.
    pub pieces: Vec<Kept>,
    /// The options that were approved, one for each thing that needs it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub approvals: Vec<SubmissionId>,
    /// What was let pass on this revision.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub concessions: Vec<ThreadId>,
}

/// A sealed piece.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Kept {
    pub piece: PieceId,
    /// The number on its seal.
    pub tag: String,
    pub keeper: Side,
    /// Salted hash of where and by whom it is kept.
    pub place: Digest,
}

impl Record {
    /// The digest of the record's canonical form.
    pub fn digest(&self) -> Result<Digest, CanonError> {
        Ok(Digest::of(&to_canonical(self)?))
    }
}

#[cfg(test)]
mod tests;
