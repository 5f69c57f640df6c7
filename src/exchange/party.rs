//! Who acts in an exchange.

use crate::spec::{OrgId, PersonId};

super::named! {
    /// On which side of the exchange an organisation stands.
    Side {
        Brand = "brand",
        Factory = "factory",
    }
}

super::named! {
    /// What a person is to their organisation.
    Role {
        Owner = "owner",
        Designer = "designer",
        Viewer = "viewer",
        Merchandiser = "merchandiser",
        SampleRoom = "sample_room",
        /// Of the factory, or of a third party that inspects its lots.
        Inspector = "inspector",
    }
}

impl Side {
    pub fn other(self) -> Side {
        match self {
            Side::Brand => Side::Factory,
            Side::Factory => Side::Brand,
        }
    }
}

impl Role {
    pub fn side(self) -> Side {
        match self {
            Role::Owner | Role::Designer | Role::Viewer => Side::Brand,
            Role::Merchandiser | Role::SampleRoom | Role::Inspector => Side::Factory,
        }
    }

    /// Speaks for the whole organisation: a brand's owner, and in a factory, which names no
    /// owner to us, its merchandiser.
    pub fn leads(self) -> bool {
        matches!(self, Role::Owner | Role::Merchandiser)
    }

    /// May bind their side by a signature.
    pub fn signs(self) -> bool {
        matches!(self, Role::Owner | Role::Designer | Role::Merchandiser)
    }
}

/// Who is asking: read by the store from a live session.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Actor {
    pub person: PersonId,
    pub org: OrgId,
    pub role: Role,
}

impl Actor {
    pub fn side(&self) -> Side {
        self.role.side()
    }
}
