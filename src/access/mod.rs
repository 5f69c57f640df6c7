//! Who may do what. Pure: from facts that the store has read it says yes, by a permit that storage
//! demands, or no, with the reason.
//!
//! A permit has private fields and one constructor each, [`grant`] and [`grant_on`]. It carries the
//! ids that it was granted for, so store functions take no second id of that kind, and a query
//! without tenancy does not compile.

pub mod act;
mod permit;

pub use act::Act;
pub use permit::{Actor, Denied, Permit, Share, StyleFacts, StylePermit, grant, grant_on};

use serde::{Deserialize, Serialize};

/// On which side of the exchange an organisation stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    Brand,
    Factory,
}

impl Side {
    pub fn name(self) -> &'static str {
        match self {
            Side::Brand => "brand",
            Side::Factory => "factory",
        }
    }

    pub fn from_name(name: &str) -> Option<Side> {
        [Side::Brand, Side::Factory]
            .into_iter()
            .find(|side| side.name() == name)
    }
}

/// What a person is to their organisation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    Owner,
    Designer,
    Viewer,
    Merchandiser,
    SampleRoom,
}

impl Role {
    pub const ALL: [Role; 5] = [
        Role::Owner,
        Role::Designer,
        Role::Viewer,
        Role::Merchandiser,
        Role::SampleRoom,
    ];

    pub fn side(self) -> Side {
        match self {
            Role::Owner | Role::Designer | Role::Viewer => Side::Brand,
            Role::Merchandiser | Role::SampleRoom => Side::Factory,
        }
    }

    pub fn name(self) -> &'static str {
        match self {
            Role::Owner => "owner",
            Role::Designer => "designer",
            Role::Viewer => "viewer",
            Role::Merchandiser => "merchandiser",
            Role::SampleRoom => "sample_room",
        }
    }

    pub fn from_name(name: &str) -> Option<Role> {
        Role::ALL.into_iter().find(|role| role.name() == name)
    }
}
