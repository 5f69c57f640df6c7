mod entering;

use super::*;
use crate::exchange::cast::*;
use crate::sample::deviation::columns;
use crate::spec::chart::grade;
use crate::spec::example::half_zip;
use crate::spec::{Digest, Entered as Typed, Unit};

fn item(id: &str) -> ItemId {
    ItemId::new(id)
}

fn sort(colourway: &str, size: &str) -> Sort {
    Sort {
        colourway: item(&format!("colourway-{colourway}")),
        size: item(&format!("size-{size}")),
    }
}

fn group(colourway: &str, size: &str, pieces: u32) -> Group {
    Group {
        sort: sort(colourway, size),
        pieces,
    }
}

/// 1200 pieces: level II leads to letter J, 80 pieces of each plan.
fn lot() -> Lot {
    Lot {
        groups: vec![
            group("ink", "s", 300),
            group("ink", "m", 500),
            group("chalk", "m", 395),
            group("chalk", "l", 5),
        ],
        level: Level::II,
        major: Aql::A2_5,
        minor: Aql::A4_0,
    }
}

struct Case {
    unsigned: Vec<Side>,
    shared: bool,
    current: Option<u32>,
    before: Option<(Lot, State, bool)>,
    spec: Spec,
    chart: Chart,
}

impl Case {
    fn new() -> Case {
        let spec = half_zip(Digest::of(b"front"));
        Case {
            unsigned: Vec::new(),
            shared: true,
            current: Some(2),
            before: None,
            chart: grade(&spec).chart(&spec).expect("it grades"),
            spec,
        }
    }

    fn with<T>(&self, ask: impl FnOnce(&Beginning<'_>) -> T) -> T {
        let again = self.before.as_ref().map(|(lot, state, followed)| Again {
            lot,
            state: *state,
            followed: *followed,
        });
        ask(&Beginning {
            unsigned: &self.unsigned,
            shared: self.shared,
            revision: 2,
            current: self.current,
            spec: &self.spec,
            chart: &self.chart,
            again,
        })
    }

    fn begins(&self, lot: &Lot) -> Result<Plans, Refused> {
        self.with(|facts| begin(facts, lot))
    }
}

#[test]
fn a_lot_is_inspected_by_the_plans_of_the_table() {
    let plans = Case::new().begins(&lot()).unwrap();
    assert_eq!((plans.major.code, plans.major.sample), ('J', 80));
    assert_eq!((plans.major.accept, plans.major.reject), (5, 6));
    assert_eq!((plans.minor.accept, plans.minor.reject), (7, 8));
    assert_eq!(plans.sample(), 80);
    // At 1.0 an arrow leads letter F up to E: the larger of the two samples is drawn.
    let small = Lot {
        groups: vec![group("ink", "m", 150)],
        major: Aql::A1_0,
        minor: Aql::A2_5,
        ..lot()
    };
    let plans = Case::new().begins(&small).unwrap();
    assert_eq!((plans.major.letter, plans.major.sample), ('E', 13));
    assert_eq!((plans.minor.letter, plans.minor.sample), ('F', 20));
    assert_eq!(plans.sample(), 20);
}

#[test]
fn each_thing_keeps_bulk_from_being_inspected_by_itself() {
    let refused = |edit: &dyn Fn(&mut Case)| {
        let mut case = Case::new();
        edit(&mut case);
        let blocks = case.with(blocks);
        assert_eq!(case.begins(&lot()).unwrap_err(), blocks[0]);
        blocks
    };
    assert_eq!(Case::new().with(blocks), []);
    assert_eq!(refused(&|case| case.shared = false), [Refused::NotShared]);
    let sides = vec![Side::Brand];
    assert_eq!(
        refused(&|case| case.unsigned = vec![Side::Brand]),
        [Refused::SealUnsigned { sides }]
    );
    for current in [None, Some(3)] {
        assert_eq!(
            refused(&|case| case.current = current),
            [Refused::NotCurrent { current }]
        );
    }
    for state in [
        State::Open,
        State::Concluded(Outcome::Rejected),
        State::Decided(Decision::Refused),
        State::Decided(Decision::Released),
        State::Decided(Decision::Concession),
    ] {
        assert_eq!(
            refused(&|case| case.before = Some((lot(), state, false))),
            [Refused::NotForRework]
        );
    }
    let rework = State::Decided(Decision::Rework);
    assert_eq!(
        refused(&|case| case.before = Some((lot(), rework, true))),
        [Refused::InspectedAgain]
    );
    // All at once, the most fundamental first.
    let all = refused(&|case| {
        case.shared = false;
        case.unsigned = vec![Side::Factory, Side::Brand];
        case.current = None;
    });
    assert_eq!(all.len(), 3);
    assert_eq!(all[0], Refused::NotShared);
}

#[test]
fn a_lot_says_what_is_in_it() {
    let case = Case::new();
    let refused = |groups: Vec<Group>| case.begins(&Lot { groups, ..lot() }).unwrap_err();
    assert_eq!(refused(vec![]), Refused::LotUnsaid);
    assert_eq!(refused(vec![group("ink", "m", 0)]), Refused::LotUnsaid);
    assert_eq!(refused(vec![group("rust", "m", 9)]), Refused::LotUnsaid);
    assert_eq!(refused(vec![group("ink", "4xl", 9)]), Refused::LotUnsaid);
    let twice = vec![group("ink", "m", 9), group("ink", "m", 9)];
    assert_eq!(refused(twice), Refused::LotUnsaid);
    let too_many = vec![group("ink", "m", LARGEST), group("ink", "l", 1)];
    assert_eq!(refused(too_many), Refused::LotUnsaid);
    let past_counting = vec![group("ink", "m", u32::MAX), group("ink", "l", u32::MAX)];
    assert_eq!(refused(past_counting), Refused::LotUnsaid);
    let most = Lot {
        groups: vec![group("ink", "m", LARGEST)],
        ..lot()
    };
    assert!(case.begins(&most).is_ok());
}

#[test]
fn a_mended_lot_has_no_more_pieces_than_before() {
    let mut case = Case::new();
    case.before = Some((lot(), State::Decided(Decision::Rework), false));
    assert!(case.begins(&lot()).is_ok());
    let mut fewer = lot();
    fewer.groups.truncate(3);
    fewer.groups[0].pieces -= 7;
    assert!(
        case.begins(&fewer).is_ok(),
        "what cannot be mended is left out"
    );
    let mut more = lot();
    more.groups[3].pieces += 1;
    assert_eq!(case.begins(&more), Err(Refused::LotGrown));
    let mut other = lot();
    other.groups[3].sort = sort("ink", "l");
    assert_eq!(case.begins(&other), Err(Refused::LotGrown));
}

#[test]
fn a_piece_counts_in_the_class_of_its_worst_defect() {
    assert_eq!(worst([]), None);
    assert_eq!(worst([Class::Minor]), Some(Class::Minor));
    assert_eq!(worst([Class::Minor, Class::Major]), Some(Class::Major));
    let all = [Class::Major, Class::Critical, Class::Minor];
    assert_eq!(worst(all), Some(Class::Critical));
}

#[test]
fn a_point_out_of_tolerance_is_a_defect() {
    let case = Case::new();
    let columns = columns(&case.spec, &case.chart);
    let column = &columns[&item("size-m")];
    let inches = |typed| Typed::read(typed, Unit::Inch).unwrap().nm;
    // A is critical, 21 1/2 with 3/8; C is not, 28 1/2 with 1/4.
    let out = |a, c| {
        let values = [("point-a", inches(a)), ("point-c", inches(c))];
        let values = values.map(|(point, value)| (item(point), value));
        out_of_tolerance(column, &values.into())
    };
    assert_eq!(out("21 7/8", "28 1/4"), BTreeMap::new(), "on it is within");
    assert_eq!(
        out("21", "28 13/16"),
        BTreeMap::from([
            (item("point-a"), Class::Major),
            (item("point-c"), Class::Minor)
        ])
    );
}

fn plans(major: Aql, minor: Aql) -> Plans {
    let lot = Lot {
        major,
        minor,
        ..lot()
    };
    lot.plans().unwrap()
}

/// Pieces 1 to `count`, of which these have a defect.
fn looked(count: u32, defects: &[(u32, Class)]) -> BTreeMap<u32, Option<Class>> {
    let mut pieces: BTreeMap<u32, Option<Class>> = (1..=count).map(|it| (it, None)).collect();
    pieces.extend(defects.iter().map(|(piece, class)| (*piece, Some(*class))));
    pieces
}

#[test]
fn each_plan_counts_within_its_own_sample() {
    // Level III looks at more pieces than level II.
    let plans = plans(Aql::A2_5, Aql::A4_0);
    let plans = Plans {
        major: inspection::plan(1200, Level::III, Aql::A2_5).unwrap(),
        ..plans
    };
    assert_eq!((plans.major.sample, plans.minor.sample), (125, 80));
    let pieces = looked(
        100,
        &[
            (80, Class::Minor),
            (81, Class::Minor),
            (100, Class::Major),
            (126, Class::Critical),
        ],
    );
    let tally = tally(&plans, &pieces);
    assert_eq!(
        tally,
        Tally {
            found: Found {
                critical: 1,
                major: 1,
                minor: 1
            },
            of_major: 100,
            of_minor: 80,
            missing: 25,
        }
    );
}

#[test]
fn a_lot_is_accepted_only_when_the_whole_sample_was_looked_at() {
    let plans = plans(Aql::A2_5, Aql::A4_0);
    let concludes = |count, defects: &[(u32, Class)]| {
        conclude(State::Open, &plans, &tally(&plans, &looked(count, defects)))
    };
    assert_eq!(concludes(80, &[]), Ok(Outcome::Accepted));
    assert_eq!(
        concludes(79, &[]),
        Err(Refused::PiecesUninspected { missing: 1 })
    );
    let majors: Vec<_> = (1..=6).map(|piece| (piece, Class::Major)).collect();
    assert_eq!(concludes(80, &majors[..5]), Ok(Outcome::Accepted));
    // The sixth rejects, at once.
    assert_eq!(concludes(6, &majors), Ok(Outcome::Rejected));
    let minors: Vec<_> = (1..=8).map(|piece| (piece, Class::Minor)).collect();
    assert_eq!(concludes(80, &minors[..7]), Ok(Outcome::Accepted));
    assert_eq!(concludes(8, &minors), Ok(Outcome::Rejected));
    assert_eq!(concludes(1, &[(1, Class::Critical)]), Ok(Outcome::Rejected));
    assert_eq!(
        concludes(0, &[(900, Class::Critical)]),
        Ok(Outcome::Rejected),
        "wherever in the lot"
    );
    for state in [
        State::Concluded(Outcome::Rejected),
        State::Decided(Decision::Released),
    ] {
        let tally = tally(&plans, &looked(80, &[]));
        assert_eq!(
            conclude(state, &plans, &tally),
            Err(Refused::InspectionNotIn { state })
        );
    }
}

#[test]
fn the_brand_decides_once_by_what_was_found() {
    let accepted = State::Concluded(Outcome::Accepted);
    let rejected = State::Concluded(Outcome::Rejected);
    let none = Found::default();
    let hurts = Found {
        critical: 2,
        ..none
    };
    let says = |state, found: &Found, decision, reason| {
        decide(state, &designer(), found, decision, reason)
    };
    assert_eq!(says(accepted, &none, Decision::Released, ""), Ok(()));
    assert_eq!(
        says(rejected, &none, Decision::Released, "In a hurry"),
        Err(Refused::LotRejected)
    );
    assert_eq!(
        says(rejected, &none, Decision::Concession, "Loose threads"),
        Ok(())
    );
    assert_eq!(
        says(rejected, &hurts, Decision::Concession, "Loose threads"),
        Err(Refused::CriticalInBulk { pieces: 2 })
    );
    assert_eq!(
        says(accepted, &none, Decision::Concession, "Why not"),
        Err(Refused::NothingToConcede)
    );
    for state in [accepted, rejected] {
        for decision in [Decision::Rework, Decision::Refused] {
            assert_eq!(says(state, &hurts, decision, "Needles"), Ok(()));
            assert_eq!(
                says(state, &none, decision, " "),
                Err(Refused::ReasonMissing)
            );
        }
    }
    assert_eq!(
        says(rejected, &none, Decision::Concession, ""),
        Err(Refused::ReasonMissing)
    );
    for state in [State::Open, State::Decided(Decision::Released)] {
        assert_eq!(
            says(state, &none, Decision::Refused, "Late"),
            Err(Refused::InspectionNotIn { state })
        );
    }
    for by in [merchandiser(), inspector()] {
        assert_eq!(
            decide(accepted, &by, &none, Decision::Released, ""),
            Err(Refused::OnlyBrand)
        );
    }
}

#[test]
fn a_state_waits_for_whoever_moves_next() {
    let rework = State::Decided(Decision::Rework);
    assert_eq!(State::Open.waits_for(false), Some(Side::Factory));
    let concluded = State::Concluded(Outcome::Accepted);
    assert_eq!(concluded.waits_for(false), Some(Side::Brand));
    assert_eq!(rework.waits_for(false), Some(Side::Factory));
    assert_eq!(rework.waits_for(true), None);
    let released = State::Decided(Decision::Released);
    assert_eq!(released.waits_for(false), None);
    assert_eq!(State::of(None, None), State::Open);
    let decided = State::of(Some(Outcome::Rejected), Some(Decision::Rework));
    assert_eq!(decided, rework);
}
