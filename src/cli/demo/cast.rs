//! The people of the demo: the brand Harrow & Tide and its two factories.

use super::Failed;
use crate::access::{Act, Permit, Role, StylePermit, grant, grant_on};
use crate::spec::{OrgId, PersonId, StyleId};
use crate::store::{NewPerson, Session, Store, StoreError};

pub const BRAND: &str = "Harrow & Tide";
/// Whoever looks at the demo can read it; whoever follows a link may choose another language.
const LANGUAGE: &str = "en";

/// Somebody of the demo, with the permits that the rules give them.
pub struct Person {
    store: Store,
    session: Session,
}

pub struct Factory {
    pub org: OrgId,
    pub merchandiser: Person,
    pub sample_room: Person,
}

pub struct Cast {
    pub owner: Person,
    pub designer: Person,
    pub sao_mai: Factory,
    pub meghna: Factory,
    /// Of Meghna.
    pub inspector: Person,
}

impl Person {
    /// Comes in and goes out again, as somebody does who was let in: what the rules know of a
    /// person is what a live session says.
    pub async fn of(store: &Store, person: &PersonId) -> Result<Person, StoreError> {
        let token = store.open_session(person).await?;
        let session = store.session(&token).await?.ok_or(StoreError::Missing)?;
        store.end_session(&token).await?;
        Ok(Person {
            store: store.clone(),
            session,
        })
    }

    pub fn id(&self) -> &PersonId {
        &self.session.actor.person
    }

    pub fn may<A: Act>(&self) -> Result<Permit<A>, Failed> {
        Ok(grant(&self.session.actor)?)
    }

    pub async fn on<A: Act>(&self, style: &StyleId) -> Result<StylePermit<A>, Failed> {
        let actor = &self.session.actor;
        let facts = self.store.style_facts(actor, style).await?;
        Ok(grant_on(actor, &facts.ok_or(StoreError::Missing)?)?)
    }

    async fn names(&self, name: &str, org: &OrgId, role: Role) -> Result<Person, Failed> {
        let new = NewPerson {
            org,
            role,
            name,
            language: LANGUAGE,
        };
        let person = self.store.add_person(&self.may()?, new).await?;
        Ok(Person::of(&self.store, &person).await?)
    }

    async fn adds_factory(
        &self,
        name: &str,
        merchandiser: &str,
        sample_room: &str,
    ) -> Result<Factory, Failed> {
        let org = self.store.add_factory(&self.may()?, name).await?;
        Ok(Factory {
            merchandiser: self.names(merchandiser, &org, Role::Merchandiser).await?,
            sample_room: self.names(sample_room, &org, Role::SampleRoom).await?,
            org,
        })
    }
}

impl Cast {
    /// Founds the brand and names everybody.
    pub async fn new(store: &Store) -> Result<Cast, Failed> {
        let owner = store.found(BRAND, "Nell Harrow", LANGUAGE).await?;
        let owner = Person::of(store, &owner).await?;
        let brand = owner.session.actor.org.clone();
        let designer = owner.names("Iris Tide", &brand, Role::Designer).await?;
        owner.names("Oscar Penn", &brand, Role::Viewer).await?;
        let sao_mai = owner.adds_factory("Sao Mai Garment", "Linh Tran", "Hoa Pham");
        let sao_mai = sao_mai.await?;
        let meghna = owner.adds_factory("Meghna Knit Works", "Rafiq Islam", "Shirin Akter");
        let meghna = meghna.await?;
        let inspector = owner.names("Farida Begum", &meghna.org, Role::Inspector);
        let inspector = inspector.await?;
        Ok(Cast {
            inspector,
            owner,
            designer,
            sao_mai,
            meghna,
        })
    }
}
