//! What is next on an inspection, and for whom.

use super::begin::here;
use crate::access::{Side, StylePermit, act};
use crate::exchange::inspection::{Decision, State, Tally};
use crate::language::Text;
use crate::store::Inspection;
use crate::web::refusal::WayOn;

/// The next step as this reader is told it.
pub struct Next {
    /// It is this reader's to take.
    pub mine: bool,
    pub sentence: String,
    /// The first is the one to take.
    pub ways: Vec<WayOn>,
}

/// The next step; `fails` when the lot is rejected as it stands.
pub fn next(
    t: Text,
    inspection: &Inspection,
    reader: &StylePermit<act::Read>,
    base: &str,
    tally: &Tally,
    fails: bool,
) -> Next {
    let inspects = reader.also::<act::Inspect>().is_ok();
    let decides = reader.also::<act::Decide>().is_ok();
    let org = &inspection.org_name;
    let way = |href: String, label: String| WayOn { href, label };
    let enter = || {
        way(
            format!("{base}/piece"),
            t.say("inspection-enter").to_string(),
        )
    };
    let conclude = || {
        way(
            "#conclude".to_owned(),
            t.say("inspection-conclude").to_string(),
        )
    };
    let (mine, sentence, ways) = match inspection.state() {
        State::Open if inspects && fails => {
            let mut ways = vec![conclude()];
            if tally.missing > 0 {
                ways.push(enter());
            }
            (true, t.say("inspection-next-fails"), ways)
        }
        State::Open if inspects && tally.missing > 0 => {
            let said = t
                .say("inspection-next-enter")
                .with("done", inspection.plans.sample() - tally.missing)
                .with("sample", inspection.plans.sample());
            (reader.side() == Side::Factory, said, vec![enter()])
        }
        State::Open if inspects => (true, t.say("inspection-next-conclude"), vec![conclude()]),
        State::Open => {
            let said = t.say("inspection-next-enter-other").with("org", org);
            (false, said, Vec::new())
        }
        State::Concluded(_) if decides => {
            let to = way("#decide".to_owned(), t.say("inspection-decide").to_string());
            (true, t.say("inspection-next-decide"), vec![to])
        }
        State::Concluded(_) => (false, t.say("inspection-next-decide-other"), Vec::new()),
        State::Decided(Decision::Rework) if inspection.followed_by.is_none() => {
            let to = here(reader.style(), &inspection.seal);
            let to = format!("{to}?again={}", inspection.id);
            let again = way(to, t.say("inspection-again").to_string());
            let ways = if inspects { vec![again] } else { Vec::new() };
            let mine = inspects && reader.side() == Side::Factory;
            let said = t.say("inspection-next-again").with("org", org);
            (mine, said, ways)
        }
        State::Decided(_) => (false, t.say("inspection-next-done"), Vec::new()),
    };
    Next {
        mine,
        sentence: sentence.to_string(),
        ways,
    }
}
