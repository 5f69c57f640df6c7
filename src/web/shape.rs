//! The shape that stands beside the word of a state (`data-shape`): read in black and white, too.

use crate::exchange::revision::Standing;
use crate::exchange::signature::Agreement;
use crate::exchange::{approval, inspection, round, thread};

/// The shapes of letters that stand on drawings.
pub const LETTERS: [&str; 5] = ["point", "part", "callout", "artwork", "label"];

pub fn kind(kind: thread::Kind) -> &'static str {
    match kind {
        thread::Kind::MustFix => "fix",
        _ => "ask",
    }
}

pub fn thread(state: thread::State) -> &'static str {
    match state {
        thread::State::Open => "open",
        thread::State::Answered => "half",
        thread::State::Agreed => "full",
        thread::State::Changed { .. } => "changed",
        thread::State::Verified { .. } | thread::State::Closed | thread::State::Granted => "done",
    }
}

pub fn round(state: round::State) -> &'static str {
    match state {
        round::State::Requested => "open",
        round::State::InWork | round::State::Dispatched | round::State::Received => "half",
        round::State::Measured => "full",
        round::State::Decided(round::Outcome::Approved) => "done",
        round::State::Decided(round::Outcome::ApprovedWithChanges) => "fix",
        round::State::Decided(_) => "stop",
    }
}

pub fn inspection(state: inspection::State) -> &'static str {
    match state {
        inspection::State::Open => "half",
        inspection::State::Concluded(inspection::Outcome::Accepted) => "full",
        inspection::State::Decided(inspection::Decision::Released) => "done",
        inspection::State::Decided(inspection::Decision::Concession) => "changed",
        inspection::State::Decided(inspection::Decision::Rework) => "fix",
        inspection::State::Concluded(inspection::Outcome::Rejected)
        | inspection::State::Decided(inspection::Decision::Refused) => "stop",
    }
}

pub fn standing(standing: &Standing) -> &'static str {
    match standing {
        Standing::Current => "full",
        Standing::Superseded { .. } => "half",
        Standing::Withdrawn { .. } => "stop",
    }
}

pub fn agreement(agreement: Agreement) -> &'static str {
    match agreement {
        Agreement::Shared => "open",
        Agreement::Acknowledged => "half",
        Agreement::SignedByFactory | Agreement::SignedByBrand => "full",
        Agreement::SignedByBoth => "done",
    }
}

pub fn approval(standing: approval::Standing) -> &'static str {
    match standing {
        approval::Standing::NotSubmitted => "open",
        approval::Standing::Waiting => "half",
        approval::Standing::Approved => "done",
        approval::Standing::Rejected => "stop",
        approval::Standing::Lapsed => "changed",
    }
}

pub fn verdict(verdict: approval::Verdict) -> &'static str {
    match verdict {
        approval::Verdict::Approved => "done",
        approval::Verdict::Rejected => "stop",
    }
}
