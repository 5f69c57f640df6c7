//! Why a move is refused, with what the page needs to show the reason and the way on.

use crate::spec::{Finding, ItemId, Section, ThreadId};

use super::Side;
use super::approval::{Anchor, Verdict};
use super::inspection;
use super::round;
use super::thread;

/// A move that the rules refuse. Each has a stable [`code`](Refused::code), the id of its text.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Refused {
    // Publishing and withdrawing.
    /// Somebody saved these sections after the form was shown. Way on: read them again.
    #[error("sections were saved since the page was shown")]
    SectionMoved { sections: Vec<Section> },
    /// Way on: the list of errors.
    #[error("{count} errors remain")]
    ErrorsRemain { count: usize },
    /// A warning is published only with a typed reason.
    #[error("warnings without a reason")]
    WarningReasonMissing { warnings: Vec<FindingKey> },
    /// The act needs a reason in words.
    #[error("a reason is missing")]
    ReasonMissing,
    /// The draft says what revision `newest` says already. Way on: change it first.
    #[error("nothing changed since revision {newest}")]
    DraftUnchanged { newest: u32 },
    /// Agreed must-fixes whose item the draft leaves as it was. Way on: change those items, or
    /// let the must-fix pass, or close it.
    #[error("agreed must-fixes are unchanged")]
    MustFixUnchanged { threads: Vec<ThreadId> },
    /// It was withdrawn before.
    #[error("already withdrawn")]
    AlreadyWithdrawn,
    /// The revision is not the current one. Way on: what changed, and the current one; none while
    /// the newest is withdrawn.
    #[error("not the current revision")]
    NotCurrent { current: Option<u32> },
    /// The style is not shared with this factory now. Way on: the brand shares it.
    #[error("not shared with this factory")]
    NotShared,
    #[error("already acknowledged")]
    AlreadyAcknowledged,

    // Whose move it is.
    #[error("only the brand may do this")]
    OnlyBrand,
    #[error("only the factory may do this")]
    OnlyFactory,
    /// Only the asker, or who leads the asker's organisation, may do this to a question.
    #[error("only the asker may do this")]
    NotTheAsker,
    /// Only the brand closes a must-fix or grants a concession.
    #[error("only the brand closes a {}", .kind.name())]
    OnlyBrandCloses { kind: thread::Kind },
    /// Agreeing takes the other side, or an answer from it.
    #[error("the other side has not answered yet")]
    OtherSideFirst,

    // Threads.
    /// The thread is not in a state from which this move is made.
    #[error("the thread is {}", .state.name())]
    ThreadNotIn { state: thread::State },
    /// It is settled. Way on: open it again, or ask anew.
    #[error("the thread is closed")]
    ThreadClosed,
    /// This kind of thread has no such move.
    #[error("a {} has no such move", .kind.name())]
    NoSuchMove { kind: thread::Kind },
    /// The change list of that revision does not name the thread's item.
    #[error("revision {revision} does not change the item")]
    ItemUnchanged { revision: u32 },
    /// The sample was made to a revision before the change.
    #[error("the sample was made before revision {changed_in}")]
    SampleTooOld { changed_in: u32 },

    // Rounds.
    /// The round is not in a state from which this move is made.
    #[error("the round is {}", .state.name())]
    RoundNotIn { state: round::State },
    #[error("nothing was measured")]
    NothingMeasured,
    /// After a decision a value can only be corrected, not added.
    #[error("decided: a value can only be corrected")]
    OnlyCorrections,
    /// A round needs at least one piece, of a size that the revision has.
    #[error("no pieces, too many, or a size that the revision has not")]
    PiecesMissing,
    /// Substitute materials are named.
    #[error("the substitutes are not named")]
    SubstitutesMissing,
    /// *Approved with changes* names at least one change, each with words.
    #[error("the changes are not named")]
    ChangesMissing,
    /// Critical points out of tolerance cannot be passed over. Way on: a concession, or name them
    /// as changes, or ask for a remake.
    #[error("critical points are out of tolerance")]
    CriticalOut { points: Vec<ItemId> },
    /// The last round was approved with changes: the next one needs a newer revision.
    #[error("a revision after {than} is needed")]
    NewerRevisionNeeded { than: u32 },
    /// There is no newer revision to go on past.
    #[error("there is no newer revision")]
    NoNewerRevision,

    // Approvals.
    /// The revision needs no approval of this. Way on: the list of what it needs.
    #[error("nothing to approve there")]
    NothingToApprove,
    /// An option is judged from a photograph at least.
    #[error("a photograph is missing")]
    PhotoMissing,
    /// One decision for each option. Way on: another option.
    #[error("the option is {}", .verdict.name())]
    OptionDecided { verdict: Verdict },

    // Sealing.
    #[error("only an owner of the brand seals")]
    OnlyOwner,
    /// Pieces of the round were sealed before. Way on: the seal.
    #[error("pieces of the round are sealed already")]
    AlreadySealed,
    /// Way on: a round before bulk, or of its beginning.
    #[error("no sample is sealed from a round of {}", .kind.name())]
    TooEarlyToSeal { kind: round::Kind },
    #[error("the round is {}, not approved", .state.name())]
    RoundNotApproved { state: round::State },
    /// Way on: answer and close them.
    #[error("questions are open")]
    QuestionsBeforeSealing { threads: Vec<ThreadId> },
    /// Must-fixes that were neither seen on a sample nor let pass. Way on: verify them.
    #[error("must-fixes are not verified")]
    MustFixUnverified { threads: Vec<ThreadId> },
    /// Way on: a size-set round of this chart that is approved.
    #[error("no approved size set has this chart")]
    SizeSetMissing,
    /// Way on: submit and approve them.
    #[error("not everything is approved")]
    NotApprovedYet { things: Vec<Anchor> },
    /// Way on: a round of the spec's own materials.
    #[error("the pieces are made of substitutes")]
    SubstitutesSent,
    /// Critical points out of tolerance on pieces that would be kept. Way on: other pieces, or a
    /// concession.
    #[error("critical points are out of tolerance, or not measured, on a piece to be kept")]
    PieceCriticalOut { points: Vec<ItemId> },
    /// Which pieces, their seal numbers, or where they are kept.
    #[error("what is sealed is not said")]
    SealUnsaid,

    // Inspecting bulk.
    /// Way on: the seal.
    #[error("the seal is not signed by both sides")]
    SealUnsigned { sides: Vec<Side> },
    /// No pieces, too many, or of a colourway or size that the revision has not.
    #[error("what is in the lot is not said")]
    LotUnsaid,
    /// Only a lot that the brand sent back is inspected again.
    #[error("that lot was not sent back to be mended")]
    NotForRework,
    /// Way on: the newer inspection.
    #[error("that lot is inspected again already")]
    InspectedAgain,
    /// Sorting and mending a lot adds no pieces to it.
    #[error("the lot has more pieces than before it was mended")]
    LotGrown,
    /// The inspection is not in a state from which this move is made.
    #[error("the inspection is {}", .state.name())]
    InspectionNotIn { state: inspection::State },
    /// Which piece of the lot: its number, its colourway and size.
    #[error("no such piece in the lot")]
    PieceUnsaid { most: u32 },
    /// Beyond the sample only a critical defect counts.
    #[error("the sample has {sample} pieces")]
    PieceBeyond { sample: u32 },
    /// The piece was entered after the page was shown. Way on: another number, or that entry.
    #[error("somebody has entered this piece meanwhile")]
    PieceMoved,
    /// A defect has a class, a count, and an item or words.
    #[error("a defect is not said")]
    DefectUnsaid,
    /// Way on: inspect them.
    #[error("{missing} pieces of the sample are not inspected yet")]
    PiecesUninspected { missing: u32 },
    /// A rejected lot is not released. Way on: a concession, rework, or refuse it.
    #[error("the lot is rejected")]
    LotRejected,
    /// An accepted lot needs no concession. Way on: release it.
    #[error("there is nothing to let pass")]
    NothingToConcede,
    /// One critical defect, and the lot is not let pass. Way on: rework, or refuse it.
    #[error("critical defects were found in the lot")]
    CriticalInBulk { pieces: u32 },

    // Signing.
    /// Way on: answer and close them.
    #[error("questions are open")]
    OpenQuestions { threads: Vec<ThreadId> },
    /// Must-fixes neither changed in this revision nor let pass.
    #[error("must-fixes are open")]
    MustFixOpen { threads: Vec<ThreadId> },
    #[error("one person never signs for both sides")]
    SamePersonBothSides,
    /// This side has signed it.
    #[error("this side has signed already")]
    AlreadySigned,
    /// The factory acknowledges a revision before it signs.
    #[error("not acknowledged yet")]
    NotAcknowledged,
    /// The round is not decided yet, or was cancelled.
    #[error("there is no decision to sign")]
    NothingDecided,
    #[error("this role does not sign")]
    RoleDoesNotSign,
    /// What is being signed is not what was on the screen.
    #[error("it changed since the page was shown")]
    ScreenMoved,
}

/// Which finding is meant: a check's code and the item that it found wanting.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FindingKey {
    pub code: String,
    pub item: Option<ItemId>,
}

impl FindingKey {
    pub fn of(finding: &Finding) -> FindingKey {
        FindingKey {
            code: finding.code.name().to_owned(),
            item: finding.item.clone(),
        }
    }
}

impl Refused {
    /// The id of the text that says why and what to do.
    pub fn code(&self) -> &'static str {
        match self {
            Refused::SectionMoved { .. } => "refused-section-moved",
            Refused::ErrorsRemain { .. } => "refused-errors-remain",
            Refused::WarningReasonMissing { .. } => "refused-warning-reason-missing",
            Refused::ReasonMissing => "refused-reason-missing",
            Refused::DraftUnchanged { .. } => "refused-draft-unchanged",
            Refused::MustFixUnchanged { .. } => "refused-must-fix-unchanged",
            Refused::AlreadyWithdrawn => "refused-already-withdrawn",
            Refused::NotCurrent { current: Some(_) } => "refused-not-current",
            Refused::NotCurrent { current: None } => "refused-none-current",
            Refused::NotShared => "refused-not-shared",
            Refused::AlreadyAcknowledged => "refused-already-acknowledged",
            Refused::OnlyBrand => "refused-only-brand",
            Refused::OnlyFactory => "refused-only-factory",
            Refused::NotTheAsker => "refused-not-the-asker",
            Refused::OnlyBrandCloses { .. } => "refused-only-brand-closes",
            Refused::OtherSideFirst => "refused-other-side-first",
            Refused::ThreadNotIn { .. } => "refused-thread-not-in",
            Refused::ThreadClosed => "refused-thread-closed",
            Refused::NoSuchMove { .. } => "refused-no-such-move",
            Refused::ItemUnchanged { .. } => "refused-item-unchanged",
            Refused::SampleTooOld { .. } => "refused-sample-too-old",
            Refused::RoundNotIn { .. } => "refused-round-not-in",
            Refused::NothingMeasured => "refused-nothing-measured",
            Refused::OnlyCorrections => "refused-only-corrections",
            Refused::PiecesMissing => "refused-pieces-missing",
            Refused::SubstitutesMissing => "refused-substitutes-missing",
            Refused::ChangesMissing => "refused-changes-missing",
            Refused::CriticalOut { .. } => "refused-critical-out",
            Refused::NewerRevisionNeeded { .. } => "refused-newer-revision-needed",
            Refused::NoNewerRevision => "refused-no-newer-revision",
            Refused::NothingToApprove => "refused-nothing-to-approve",
            Refused::PhotoMissing => "refused-photo-missing",
            Refused::OptionDecided { .. } => "refused-option-decided",
            Refused::OnlyOwner => "refused-only-owner",
            Refused::AlreadySealed => "refused-already-sealed",
            Refused::TooEarlyToSeal { .. } => "refused-too-early-to-seal",
            Refused::RoundNotApproved { .. } => "refused-round-not-approved",
            Refused::QuestionsBeforeSealing { .. } => "refused-questions-before-sealing",
            Refused::MustFixUnverified { .. } => "refused-must-fix-unverified",
            Refused::SizeSetMissing => "refused-size-set-missing",
            Refused::NotApprovedYet { .. } => "refused-not-approved-yet",
            Refused::SubstitutesSent => "refused-substitutes-sent",
            Refused::PieceCriticalOut { .. } => "refused-piece-critical-out",
            Refused::SealUnsaid => "refused-seal-unsaid",
            Refused::SealUnsigned { .. } => "refused-seal-unsigned",
            Refused::LotUnsaid => "refused-lot-unsaid",
            Refused::NotForRework => "refused-not-for-rework",
            Refused::InspectedAgain => "refused-inspected-again",
            Refused::LotGrown => "refused-lot-grown",
            Refused::InspectionNotIn { .. } => "refused-inspection-not-in",
            Refused::PieceUnsaid { .. } => "refused-piece-unsaid",
            Refused::PieceBeyond { .. } => "refused-piece-beyond",
            Refused::PieceMoved => "refused-piece-moved",
            Refused::DefectUnsaid => "refused-defect-unsaid",
            Refused::PiecesUninspected { .. } => "refused-pieces-uninspected",
            Refused::LotRejected => "refused-lot-rejected",
            Refused::NothingToConcede => "refused-nothing-to-concede",
            Refused::CriticalInBulk { .. } => "refused-critical-in-bulk",
            Refused::OpenQuestions { .. } => "refused-open-questions",
            Refused::MustFixOpen { .. } => "refused-must-fix-open",
            Refused::SamePersonBothSides => "refused-same-person-both-sides",
            Refused::AlreadySigned => "refused-already-signed",
            Refused::NotAcknowledged => "refused-not-acknowledged",
            Refused::NothingDecided => "refused-nothing-decided",
            Refused::RoleDoesNotSign => "refused-role-does-not-sign",
            Refused::ScreenMoved => "refused-screen-moved",
        }
    }
}
