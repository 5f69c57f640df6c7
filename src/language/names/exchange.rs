//! What is called what between a brand and its factories.

use crate::exchange::ledger::Act;
use crate::exchange::measuring::{Reason, Wash};
use crate::exchange::revision::Standing;
use crate::exchange::signature::Agreement;
use crate::exchange::{Role, Side, approval, inspection, round, thread};

use super::Named;
use crate::language::message::{Message, Text};

impl Named for Side {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Side::Brand => "side-brand",
            Side::Factory => "side-factory",
        })
    }
}

impl Named for Role {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Role::Owner => "role-owner",
            Role::Designer => "role-designer",
            Role::Viewer => "role-viewer",
            Role::Merchandiser => "role-merchandiser",
            Role::SampleRoom => "role-sample-room",
            Role::Inspector => "role-inspector",
        })
    }
}

impl Named for Standing {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Standing::Current => "standing-current",
            Standing::Superseded { .. } => "standing-superseded",
            Standing::Withdrawn { .. } => "standing-withdrawn",
        })
    }
}

impl Named for Agreement {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Agreement::Shared => "agreement-shared",
            Agreement::Acknowledged => "agreement-acknowledged",
            Agreement::SignedByFactory => "agreement-signed-by-factory",
            Agreement::SignedByBrand => "agreement-signed-by-brand",
            Agreement::SignedByBoth => "agreement-signed-by-both",
        })
    }
}

impl Named for thread::Kind {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            thread::Kind::Question => "thread-kind-question",
            thread::Kind::MustFix => "thread-kind-must-fix",
            thread::Kind::Suggestion => "thread-kind-suggestion",
            thread::Kind::Concession => "thread-kind-concession",
        })
    }
}

impl Named for thread::State {
    fn name(&self, t: Text) -> Message {
        match self {
            thread::State::Open => t.say("thread-state-open"),
            thread::State::Answered => t.say("thread-state-answered"),
            thread::State::Agreed => t.say("thread-state-agreed"),
            thread::State::Changed { revision } => {
                t.say("thread-state-changed").with("revision", revision)
            }
            thread::State::Verified { revision } => {
                t.say("thread-state-verified").with("revision", revision)
            }
            thread::State::Closed => t.say("thread-state-closed"),
            thread::State::Granted => t.say("thread-state-granted"),
        }
    }
}

impl Named for round::Kind {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            round::Kind::Proto => "round-kind-proto",
            round::Kind::Fit => "round-kind-fit",
            round::Kind::SizeSet => "round-kind-size-set",
            round::Kind::PreProduction => "round-kind-pre-production",
            round::Kind::TopOfProduction => "round-kind-top-of-production",
        })
    }
}

impl Named for round::State {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            round::State::Requested => "round-state-requested",
            round::State::InWork => "round-state-in-work",
            round::State::Dispatched => "round-state-dispatched",
            round::State::Received => "round-state-received",
            round::State::Measured => "round-state-measured",
            round::State::Decided(outcome) => return outcome.name(t),
        })
    }
}

impl Named for round::Materials {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            round::Materials::Actual => "round-materials-actual",
            round::Materials::Substitute => "round-materials-substitute",
        })
    }
}

impl Named for round::Outcome {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            round::Outcome::Approved => "round-outcome-approved",
            round::Outcome::ApprovedWithChanges => "round-outcome-approved-with-changes",
            round::Outcome::Remake => "round-outcome-remake",
            round::Outcome::Cancelled => "round-outcome-cancelled",
        })
    }
}

impl Named for Wash {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Wash::Before => "wash-before",
            Wash::After => "wash-after",
        })
    }
}

impl Named for Reason {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Reason::Absent => "skip-absent",
            Reason::Unfinished => "skip-unfinished",
            Reason::Damaged => "skip-damaged",
            Reason::Unclear => "skip-unclear",
        })
    }
}

impl Named for approval::Kind {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            approval::Kind::LabDip => "approval-lab-dip",
            approval::Kind::StrikeOff => "approval-strike-off",
            approval::Kind::Trim => "approval-trim",
        })
    }
}

impl Named for approval::Standing {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            approval::Standing::NotSubmitted => "approval-not-submitted",
            approval::Standing::Waiting => "approval-waiting",
            approval::Standing::Approved => "approval-approved",
            approval::Standing::Rejected => "approval-rejected",
            approval::Standing::Lapsed => "approval-lapsed",
        })
    }
}

impl Named for approval::Verdict {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            approval::Verdict::Approved => "approval-approved",
            approval::Verdict::Rejected => "approval-rejected",
        })
    }
}

impl Named for inspection::Class {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            inspection::Class::Critical => "inspection-critical",
            inspection::Class::Major => "inspection-major",
            inspection::Class::Minor => "inspection-minor",
        })
    }
}

impl Named for inspection::Outcome {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            inspection::Outcome::Accepted => "inspection-accepted",
            inspection::Outcome::Rejected => "inspection-rejected",
        })
    }
}

impl Named for inspection::Decision {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            inspection::Decision::Released => "inspection-released",
            inspection::Decision::Concession => "inspection-concession",
            inspection::Decision::Rework => "inspection-rework",
            inspection::Decision::Refused => "inspection-refused",
        })
    }
}

impl Named for inspection::State {
    fn name(&self, t: Text) -> Message {
        match self {
            inspection::State::Open => t.say("inspection-open"),
            inspection::State::Concluded(outcome) => outcome.name(t),
            inspection::State::Decided(decision) => decision.name(t),
        }
    }
}

impl Named for Act {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Act::Create => "act-create",
            Act::Publish => "act-publish",
            Act::Withdraw => "act-withdraw",
            Act::Share => "act-share",
            Act::Unshare => "act-unshare",
            Act::Acknowledge => "act-acknowledge",
            Act::Ask => "act-ask",
            Act::Message => "act-message",
            Act::ThreadMove => "act-thread-move",
            Act::RequestRound => "act-request-round",
            Act::RoundMove => "act-round-move",
            Act::Measure => "act-measure",
            Act::Skip => "act-skip",
            Act::Photograph => "act-photograph",
            Act::Decide => "act-decide",
            Act::Submit => "act-submit",
            Act::Approve => "act-approve",
            Act::Seal => "act-seal",
            Act::BeginInspection => "act-begin-inspection",
            Act::Inspect => "act-inspect",
            Act::ConcludeInspection => "act-conclude-inspection",
            Act::DecideInspection => "act-decide-inspection",
            Act::Sign => "act-sign",
            Act::Translate => "act-translate",
            Act::TranslateMessage => "act-translate-message",
            Act::Erase => "act-erase",
        })
    }
}
