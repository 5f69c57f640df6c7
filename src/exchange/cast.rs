//! The people and threads that the tests of this room tell of.

use crate::spec::{ItemId, OrgId, PersonId, ThreadId, Time};

use super::thread::{Kind, State, Thread};
use super::{Actor, Role};

fn actor(person: &str, org: &str, role: Role) -> Actor {
    Actor {
        person: PersonId::new(person),
        org: OrgId::new(org),
        role,
    }
}

pub fn owner() -> Actor {
    actor("nell", "harrow-and-tide", Role::Owner)
}

pub fn designer() -> Actor {
    actor("iris", "harrow-and-tide", Role::Designer)
}

pub fn viewer() -> Actor {
    actor("oscar", "harrow-and-tide", Role::Viewer)
}

pub fn merchandiser() -> Actor {
    actor("linh", "sao-mai", Role::Merchandiser)
}

pub fn sample_room() -> Actor {
    actor("hoa", "sao-mai", Role::SampleRoom)
}

pub fn inspector() -> Actor {
    actor("minh", "sao-mai", Role::Inspector)
}

pub fn sao_mai() -> OrgId {
    OrgId::new("sao-mai")
}

pub fn meghna() -> OrgId {
    OrgId::new("meghna")
}

pub fn point_c() -> ItemId {
    ItemId::new("point-c")
}

/// A thread on point C, raised on revision 1, with Sao Mai Garment.
pub fn thread(id: &str, kind: Kind, asker: &Actor, state: State) -> Thread {
    Thread {
        id: ThreadId::new(id),
        kind,
        state,
        factory: sao_mai(),
        item: point_c(),
        raised_on: 1,
        asker: asker.person.clone(),
        asker_org: asker.org.clone(),
        asker_side: asker.side(),
    }
}

/// A must-fix of the designer's.
pub fn must_fix(id: &str, state: State) -> Thread {
    thread(id, Kind::MustFix, &designer(), state)
}

/// A question of the factory's merchandiser.
pub fn question(id: &str, state: State) -> Thread {
    thread(id, Kind::Question, &merchandiser(), state)
}

pub fn time(minute: u32) -> Time {
    Time::try_from(format!("2026-03-02T08:{minute:02}:00.000Z")).expect("a time")
}
