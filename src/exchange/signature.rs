//! Signatures: what blocks one, what it says, and what a revision is with a factory once some are
//! there.

use crate::spec::{Digest, OrgId, PersonId};

use super::revision::Standing;
use super::thread::Thread;
use super::{Actor, Refused, Side, round};

super::named! {
    /// What is signed.
    SubjectKind {
        Revision = "revision",
        Round = "round",
    }
}

super::named! {
    /// The statement that a signature is put to: the id of its text.
    Statement {
        RevisionByFactory = "statement-revision-factory",
        RevisionByBrand = "statement-revision-brand",
        RoundByFactory = "statement-round-factory",
        RoundByBrand = "statement-round-brand",
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
}

/// A signature that was given in this style.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Signed {
    pub person: PersonId,
    pub side: Side,
    /// The factory that it is with or by.
    pub factory: OrgId,
    pub kind: SubjectKind,
    /// The id of the revision or round.
    pub subject: String,
}

/// Everything that decides whether a signature may be given.
#[derive(Debug, Clone)]
pub struct Signing<'a> {
    pub by: &'a Actor,
    /// The factory that it is with or by.
    pub factory: &'a OrgId,
    pub subject: Subject<'a>,
    /// The id of the revision or round.
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

/// May this person sign now?
///
/// A revision: it is the current one, the factory has acknowledged it before it signs, no question
/// with this factory is open, and every must-fix is changed in it or was let pass. A round: it is
/// decided (its must-fixes are the next revision's business), and no question about its revision
/// or an earlier one is open. Either: once for each side, and no person for both.
pub fn may_sign(facts: &Signing<'_>) -> Result<ToSign, Refused> {
    let side = facts.by.side();
    if !facts.by.role.signs() {
        return Err(Refused::RoleDoesNotSign);
    }
    if side == Side::Factory && facts.by.org != *facts.factory {
        return Err(Refused::NotShared);
    }
    let other_side = |signed: &&Signed| signed.person == facts.by.person && signed.side != side;
    if facts.signed.iter().any(|signed| other_side(&signed)) {
        return Err(Refused::SamePersonBothSides);
    }

    let (kind, revision, digest, statement) = match &facts.subject {
        Subject::Revision {
            number,
            digest,
            standing,
            shared,
            acknowledged,
        } => {
            if !shared {
                return Err(Refused::NotShared);
            }
            standing.must_be_current()?;
            if side == Side::Factory && !acknowledged {
                return Err(Refused::NotAcknowledged);
            }
            let statement = match side {
                Side::Brand => Statement::RevisionByBrand,
                Side::Factory => Statement::RevisionByFactory,
            };
            (SubjectKind::Revision, *number, *digest, statement)
        }
        Subject::Round {
            revision,
            digest,
            state,
        } => {
            match state {
                round::State::Decided(round::Outcome::Cancelled) => {
                    return Err(Refused::NothingDecided);
                }
                round::State::Decided(_) => {}
                _ => return Err(Refused::NothingDecided),
            }
            let statement = match side {
                Side::Brand => Statement::RoundByBrand,
                Side::Factory => Statement::RoundByFactory,
            };
            (SubjectKind::Round, *revision, *digest, statement)
        }
    };

    let again = facts.signed.iter().any(|signed| {
        signed.kind == kind
            && signed.subject == facts.subject_id
            && signed.factory == *facts.factory
            && signed.side == side
    });
    if again {
        return Err(Refused::AlreadySigned);
    }
    if facts.shown != digest {
        return Err(Refused::ScreenMoved);
    }

    let ours = || {
        facts
            .threads
            .iter()
            .filter(|thread| thread.factory == *facts.factory)
    };
    let questions: Vec<_> = ours()
        .filter(|thread| thread.is_open_question() && thread.raised_on <= revision)
        .map(|thread| thread.id.clone())
        .collect();
    if !questions.is_empty() {
        return Err(Refused::OpenQuestions { threads: questions });
    }
    if kind == SubjectKind::Revision {
        let must_fixes: Vec<_> = ours()
            .filter(|thread| thread.is_must_fix_open_in(revision))
            .map(|thread| thread.id.clone())
            .collect();
        if !must_fixes.is_empty() {
            return Err(Refused::MustFixOpen {
                threads: must_fixes,
            });
        }
    }
    Ok(ToSign {
        statement,
        digest: digest.clone(),
    })
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
