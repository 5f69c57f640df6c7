//! Organisations and people, and the names that can be erased.

use super::{Read, Store, StoreError, Tx, values};
use crate::access::{Permit, Role, Side, act};
use crate::spec::{OrgId, PersonId, Time};

/// An organisation as lists show it.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Organisation {
    pub id: OrgId,
    pub kind: Side,
    pub name: String,
}

/// A person as lists show them.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Person {
    pub id: PersonId,
    pub org: OrgId,
    pub org_name: String,
    pub role: Role,
    pub language: String,
    /// `None`: erased.
    pub name: Option<String>,
    pub made_at: Time,
    pub left_at: Option<Time>,
}

/// A new person to be named by somebody.
#[derive(Debug, Clone)]
pub struct NewPerson<'a> {
    pub org: &'a OrgId,
    pub role: Role,
    pub name: &'a str,
    /// BCP 47.
    pub language: &'a str,
}

const PEOPLE: &str = "SELECT p.id, p.org, o.name AS org_name, p.role, p.language, \
    n.content AS name, p.made_at, p.left_at \
    FROM person p JOIN organisation o ON o.id = p.org \
    LEFT JOIN private_text n ON n.person = p.id AND n.kind = 'name' \
    WHERE CAST($1 AS TEXT) IS NULL OR p.org = $1 \
    ORDER BY o.kind, o.name, p.made_at, p.id";

impl Store {
    /// Whether this installation has its brand yet.
    pub async fn is_founded(&self) -> Result<bool, StoreError> {
        let brand: Option<(String,)> = self
            .db
            .maybe(
                "SELECT id FROM organisation WHERE kind = 'brand'",
                values![],
            )
            .await?;
        Ok(brand.is_some())
    }

    /// The brand with its first owner. Called once: by the set-up link, or by the demo.
    ///
    /// Errors: `Unique` when there is a brand already.
    pub async fn found(
        &self,
        brand: &str,
        owner: &str,
        language: &str,
    ) -> Result<PersonId, StoreError> {
        let tx = self.db.begin().await?;
        let person = found_in(self, &tx, brand, owner, language).await?;
        tx.commit().await?;
        Ok(person)
    }

    /// Adds a factory.
    pub async fn add_factory(
        &self,
        permit: &Permit<act::Govern>,
        name: &str,
    ) -> Result<OrgId, StoreError> {
        let id = OrgId::new(self.world.id());
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        tx.run(
            "INSERT INTO organisation (id, kind, name, made_at) VALUES ($1, 'factory', $2, $3)",
            values![id, name, self.world.now()],
        )
        .await?;
        tx.commit().await?;
        Ok(id)
    }

    /// The factories, for those who share styles with them.
    pub async fn factories(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Vec<Organisation>, StoreError> {
        self.db
            .all(
                "SELECT id, kind, name FROM organisation WHERE kind = 'factory' ORDER BY name, id",
                values![],
            )
            .await
    }

    /// Everybody whom the holder may send a link to: an owner all, a merchandiser their own people.
    pub async fn people(&self, permit: &Permit<act::Invite>) -> Result<Vec<Person>, StoreError> {
        self.db.all(PEOPLE, values![permit.tenant()]).await
    }

    /// Names a new person. A merchandiser only for their own factory and its roles, whatever `new`
    /// says of the organisation.
    ///
    /// Errors: `Missing` when the organisation is not there or not of the role's side.
    pub async fn add_person(
        &self,
        permit: &Permit<act::Invite>,
        new: NewPerson<'_>,
    ) -> Result<PersonId, StoreError> {
        let org = permit.tenant().unwrap_or(new.org);
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        let _: (String,) = tx
            .one(
                "SELECT id FROM organisation WHERE id = $1 AND kind = $2",
                values![org, new.role.side().name()],
            )
            .await?;
        let person = insert_person(self, &tx, org, &new).await?;
        tx.commit().await?;
        Ok(person)
    }

    /// Somebody may no longer come in; what they did stays.
    ///
    /// Errors: `Missing` when there is no such person, or it is the holder: an owner cannot lock
    /// themselves out.
    pub async fn end_access(
        &self,
        permit: &Permit<act::Govern>,
        person: &PersonId,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        let ended = tx
            .run(
                "UPDATE person SET left_at = $2 WHERE id = $1 AND id <> $3 AND left_at IS NULL",
                values![person, self.world.now(), permit.person()],
            )
            .await?;
        if ended == 0 {
            return Err(StoreError::Missing);
        }
        tx.run("DELETE FROM session WHERE person = $1", values![person])
            .await?;
        tx.run(
            "DELETE FROM way_in WHERE person = $1 AND used_at IS NULL",
            values![person],
        )
        .await?;
        tx.commit().await
    }

    /// Changes one's own name and language.
    pub async fn rename(
        &self,
        permit: &Permit<act::Enter>,
        name: &str,
        language: &str,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        set_name(&tx, permit.person(), name, language).await?;
        tx.commit().await
    }
}

pub(super) async fn found_in(
    store: &Store,
    tx: &Tx,
    brand: &str,
    owner: &str,
    language: &str,
) -> Result<PersonId, StoreError> {
    // One id for the one brand makes a second founding a unique violation on both databases.
    let org = OrgId::new("brand");
    tx.run(
        "INSERT INTO organisation (id, kind, name, made_at) VALUES ($1, 'brand', $2, $3)",
        values![org, brand, store.world.now()],
    )
    .await?;
    insert_person(
        store,
        tx,
        &org,
        &NewPerson {
            org: &org,
            role: Role::Owner,
            name: owner,
            language,
        },
    )
    .await
}

async fn insert_person(
    store: &Store,
    tx: &Tx,
    org: &OrgId,
    new: &NewPerson<'_>,
) -> Result<PersonId, StoreError> {
    let person = PersonId::new(store.world.id());
    tx.run(
        "INSERT INTO person (id, org, role, language, made_at) VALUES ($1, $2, $3, $4, $5)",
        values![
            person,
            org,
            new.role.name(),
            new.language,
            store.world.now()
        ],
    )
    .await?;
    tx.run(
        "INSERT INTO private_text (id, person, kind, salt, content) \
         VALUES ($1, $2, 'name', $3, $4)",
        values![
            store.world.id(),
            person,
            store.world.salt().as_str(),
            new.name
        ],
    )
    .await?;
    Ok(person)
}

pub(super) async fn set_name(
    tx: &Tx,
    person: &PersonId,
    name: &str,
    language: &str,
) -> Result<(), StoreError> {
    tx.run(
        "UPDATE person SET language = $2 WHERE id = $1",
        values![person, language],
    )
    .await?;
    tx.run(
        "UPDATE private_text SET content = $2 WHERE person = $1 AND kind = 'name' \
         AND erased_at IS NULL",
        values![person, name],
    )
    .await?;
    tx.run(
        "UPDATE organisation SET renamings = renamings + 1 \
         WHERE id = (SELECT org FROM person WHERE id = $1)",
        values![person],
    )
    .await?;
    Ok(())
}

/// Somebody must still be let in, in the role that their permit says.
///
/// Errors: `Missing` when they are not.
pub(super) async fn still_here(
    db: &impl Read,
    person: &PersonId,
    role: Role,
) -> Result<(), StoreError> {
    let _: (String,) = db
        .one(
            "SELECT id FROM person WHERE id = $1 AND role = $2 AND left_at IS NULL",
            values![person, role],
        )
        .await?;
    Ok(())
}

/// What somebody is called now; `None`: erased.
pub(super) async fn name_of(
    db: &impl Read,
    person: &PersonId,
) -> Result<Option<String>, StoreError> {
    let name: Option<(Option<String>,)> = db
        .maybe(
            "SELECT content FROM private_text WHERE person = $1 AND kind = 'name'",
            values![person],
        )
        .await?;
    Ok(name.and_then(|(name,)| name))
}
