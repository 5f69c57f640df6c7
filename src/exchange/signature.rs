//! Signatures: what blocks one, what it says, and what a revision is with a factory once some are
//! there.

use crate::spec::{Digest, OrgId, PersonId, ThreadId};

use super::revision::Standing;
use super::thread::Thread;
use super::{Actor, Refused, Side, round};

super::named! {
    /// What is signed.
    SubjectKind {
        Revision = "revision",
        Round = "round",
        Seal = "seal",
    }
}

super::named! {
    /// The statement that a signature is put to: the id of its text.
    Statement {
        RevisionByFactory = "statement-revision-factory",
        RevisionByBrand = "statement-revision-brand",
        RoundByFactory = "statement-round-factory",
        RoundByBrand = "statement-round-brand",
        SealByFactory = "statement-seal-factory",
        SealByBrand = "statement-seal-brand",
    }
}

/// What somebody wants to sign, as it stands now.
#[derive(Debug, Clone)]
pub enum Subject<'a> {
    Revision {
        number: u32,
        digest: &'a Digest,
        standing: &'a Standing,
        /// The style is shared with the factory now.
        shared: bool,
        /// The factory has acknowledged this revision.
        acknowledged: bool,
    },
    Round {
        /// The number of the revision it is bound to.
        revision: u32,
        /// The digest of its [record](round::Record).
        digest: &'a Digest,
        state: round::State,
    },
    Seal {
        /// The number of the revision that the pieces were made to.
        revision: u32,
        /// The digest of its [record](super::seal::Record).
        digest: &'a Digest,
    },
}

/// A signature that was given in this style.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Signed {
    pub person: PersonId,
    pub side: Side,
    /// The factory that it is with or by.
    pub factory: OrgId,
    pub kind: SubjectKind,
    /// The id of the revision, round or seal.
    pub subject: String,
}

/// Everything that decides whether a signature may be given.
#[derive(Debug, Clone)]
pub struct Signing<'a> {
    pub by: &'a Actor,
    /// The factory that it is with or by.
    pub factory: &'a OrgId,
    pub subject: Subject<'a>,
    /// The id of the revision, round or seal.
    pub subject_id: &'a str,
    /// The digest of what was on the signer's screen.
    pub shown: &'a Digest,
    /// The style's threads; those with other factories are passed over.
    pub threads: &'a [Thread],
    /// Every signature given in this style.
    pub signed: &'a [Signed],
}

/// What is to be signed: the statement and the whole digest that it is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ToSign {
    pub statement: Statement,
    pub digest: Digest,
}

/// May this person sign now? Refused with the first thing that [blocks] it.
pub fn may_sign(facts: &Signing<'_>) -> Result<ToSign, Refused> {
    if let Some(refused) = blocks(facts).into_iter().next() {
        return Err(refused);
    }
    Ok(ToSign {
        statement: facts.subject.statement(facts.by.side()),
        digest: facts.subject.digest().clone(),
    })
}

/// Everything that blocks a signature now, the most fundamental first; empty when nothing does.
///
/// A revision: it is the current one, the factory has acknowledged it before it signs, no question
/// with this factory is open, and every must-fix is changed in it or was let pass. A round: it is
/// decided (its must-fixes are the next revision's business), and no question about its revision
/// or an earlier one is open, as with a seal. Each: once for each side, and no person for both.
pub fn blocks(facts: &Signing<'_>) -> Vec<Refused> {
    let side = facts.by.side();
    if !facts.by.role.signs() {
        return vec![Refused::RoleDoesNotSign];
    }
    if side == Side::Factory && facts.by.org != *facts.factory {
        return vec![Refused::NotShared];
    }
    let mut blocks = Vec::new();
    let other_side = |signed: &Signed| signed.person == facts.by.person && signed.side != side;
    if facts.signed.iter().any(other_side) {
        blocks.push(Refused::SamePersonBothSides);
    }
    let (kind, revision) = match &facts.subject {
        Subject::Revision {
            number,
            standing,
            shared,
            acknowledged,
            ..
        } => {
            if !shared {
                blocks.push(Refused::NotShared);
            }
            blocks.extend(standing.must_be_current().err());
            if side == Side::Factory && !acknowledged {
                blocks.push(Refused::NotAcknowledged);
            }
            (SubjectKind::Revision, *number)
        }
        Subject::Round {
            revision, state, ..
        } => {
            let stands = match state {
                round::State::Decided(outcome) => *outcome != round::Outcome::Cancelled,
                _ => false,
            };
            if !stands {
                blocks.push(Refused::NothingDecided);
            }
            (SubjectKind::Round, *revision)
        }
        // It was sealed, which no state takes back.
        Subject::Seal { revision, .. } => (SubjectKind::Seal, *revision),
    };
    let again = |signed: &Signed| {
        signed.kind == kind
            && signed.subject == facts.subject_id
            && signed.factory == *facts.factory
            && signed.side == side
    };
    if facts.signed.iter().any(again) {
        blocks.push(Refused::AlreadySigned);
    }
    if facts.shown != facts.subject.digest() {
        blocks.push(Refused::ScreenMoved);
    }

    blocks.extend(unsettled(facts.threads, facts.factory, kind, revision));
    blocks
}

/// What has to be settled with this factory before either side signs the revision of this number,
/// a round that is bound to it, or a seal of such a round.
pub fn unsettled(
    threads: &[Thread],
    factory: &OrgId,
    kind: SubjectKind,
    revision: u32,
) -> Vec<Refused> {
    let open = |is_open: &dyn Fn(&Thread) -> bool| -> Vec<ThreadId> {
        let ours = threads.iter();
        let ours = ours.filter(|thread| thread.factory == *factory && is_open(thread));
        ours.map(|thread| thread.id.clone()).collect()
    };
    let mut blocks = Vec::new();
    let threads = open(&|thread| thread.is_open_question() && thread.raised_on <= revision);
    if !threads.is_empty() {
        blocks.push(Refused::OpenQuestions { threads });
    }
    if kind == SubjectKind::Revision {
        let threads = open(&|thread| thread.is_must_fix_open_in(revision));
        if !threads.is_empty() {
            blocks.push(Refused::MustFixOpen { threads });
        }
    }
    blocks
}

impl Subject<'_> {
    fn digest(&self) -> &Digest {
        match self {
            Subject::Revision { digest, .. }
            | Subject::Round { digest, .. }
            | Subject::Seal { digest, .. } => digest,
        }
    }

    /// What this side signs.
    pub fn statement(&self, side: Side) -> Statement {
        match (self, side) {
            (Subject::Revision { .. }, Side::Brand) => Statement::RevisionByBrand,
            (Subject::Revision { .. }, Side::Factory) => Statement::RevisionByFactory,
            (Subject::Round { .. }, Side::Brand) => Statement::RoundByBrand,
            (Subject::Round { .. }, Side::Factory) => Statement::RoundByFactory,
            (Subject::Seal { .. }, Side::Brand) => Statement::SealByBrand,
            (Subject::Seal { .. }, Side::Factory) => Statement::SealByFactory,
        }
    }
}

super::named! {
    /// What a revision is with one factory.
    Agreement {
        Shared = "shared",
        Acknowledged = "acknowledged",
        SignedByFactory = "signed_by_factory",
        SignedByBrand = "signed_by_brand",
        SignedByBoth = "signed_by_both",
    }
}

/// What a revision that is shared with a factory has come to, from who has signed it.
pub fn agreement(acknowledged: bool, by_factory: bool, by_brand: bool) -> Agreement {
    match (by_factory, by_brand) {
        (true, true) => Agreement::SignedByBoth,
        (true, false) => Agreement::SignedByFactory,
        (false, true) => Agreement::SignedByBrand,
        (false, false) if acknowledged => Agreement::Acknowledged,
        (false, false) => Agreement::Shared,
    }
}

#[cfg(test)]
mod tests;
