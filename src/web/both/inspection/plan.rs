//! The plans of an inspection as pages show them.

use crate::exchange::inspection::{Class, Plans, Tally};
use crate::sample::inspection::{Aql, Plan};
use crate::spec::table::Status;

/// The plan of one class of defects.
pub struct PlanLine {
    pub class: Class,
    pub aql: &'static str,
    /// How far the column of the table was checked, where it was not compared with a published copy.
    pub status: Option<Status>,
    /// The letter that lot and level lead to.
    pub code: char,
    /// Where an arrow of the table led to from there.
    pub led_to: Option<char>,
    pub sample: u32,
    /// The sample is the lot.
    pub every_piece: bool,
    pub accept: u32,
    pub reject: u32,
    /// Pieces of its sample that were looked at, and the defective ones among them.
    pub done: u32,
    pub found: u32,
}

impl PlanLine {
    fn of(class: Class, aql: Aql, plan: &Plan, (done, found): (u32, u32)) -> PlanLine {
        PlanLine {
            class,
            aql: aql.name(),
            status: Some(plan.status).filter(|it| *it != Status::Verified),
            code: plan.code,
            led_to: Some(plan.letter).filter(|it| *it != plan.code),
            sample: plan.sample,
            every_piece: plan.whole_lot,
            accept: plan.accept,
            reject: plan.reject,
            done,
            found,
        }
    }

    /// So many defective pieces reject the lot.
    pub fn rejects(&self) -> bool {
        self.found >= self.reject
    }
}

/// Both plans, and what was found so far.
pub fn lines(plans: &Plans, aqls: (Aql, Aql), tally: Option<&Tally>) -> [PlanLine; 2] {
    let of_major = tally.map_or((0, 0), |it| (it.of_major, it.found.major));
    let of_minor = tally.map_or((0, 0), |it| (it.of_minor, it.found.minor));
    [
        PlanLine::of(Class::Major, aqls.0, &plans.major, of_major),
        PlanLine::of(Class::Minor, aqls.1, &plans.minor, of_minor),
    ]
}
