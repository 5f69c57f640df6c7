//! Who wants a mail about what waits for them.

use std::collections::BTreeSet;

use super::people::still_here;
use super::{Read, Store, StoreError, values};
use crate::access::{Actor, Permit, Role, act};
use crate::spec::{OrgId, PersonId};

/// Somebody who wants to be told by mail, and is still here.
#[derive(Debug, Clone)]
pub struct Recipient {
    pub actor: Actor,
    pub address: String,
    /// `None`: erased.
    pub name: Option<String>,
    /// BCP 47.
    pub language: String,
    /// A short hash of each thing that the last mail told.
    pub told: BTreeSet<String>,
}

#[derive(sqlx::FromRow)]
struct Row {
    person: PersonId,
    org: OrgId,
    role: Role,
    address: String,
    name: Option<String>,
    language: String,
    told: String,
}

impl Store {
    /// Where the holder wants to be told; `None`: not at all.
    pub async fn mail_address(
        &self,
        permit: &Permit<act::Enter>,
    ) -> Result<Option<String>, StoreError> {
        let row: Option<(String,)> = self
            .db
            .maybe(
                "SELECT address FROM mail WHERE person = $1",
                values![permit.person()],
            )
            .await?;
        Ok(row.map(|(address,)| address))
    }

    /// Sets where the holder wants to be told, or that they do not.
    pub async fn set_mail_address(
        &self,
        permit: &Permit<act::Enter>,
        address: Option<&str>,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        match address {
            None => {
                tx.run(
                    "DELETE FROM mail WHERE person = $1",
                    values![permit.person()],
                )
                .await?;
            }
            Some(address) => {
                tx.run(
                    "INSERT INTO mail (person, address, told) VALUES ($1, $2, '') \
                     ON CONFLICT (person) DO UPDATE SET address = $2",
                    values![permit.person(), address],
                )
                .await?;
            }
        }
        tx.commit().await
    }

    /// Everybody who wants to be told by mail.
    pub async fn recipients(&self) -> Result<Vec<Recipient>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT m.person, p.org, p.role, m.address, n.content AS name, p.language, m.told \
                 FROM mail m JOIN person p ON p.id = m.person \
                 LEFT JOIN private_text n ON n.person = p.id AND n.kind = 'name' \
                 WHERE p.left_at IS NULL ORDER BY m.person",
                values![],
            )
            .await?;
        let recipients = rows.into_iter().map(|row| Recipient {
            actor: Actor {
                person: row.person,
                org: row.org,
                role: row.role,
            },
            address: row.address,
            name: row.name,
            language: row.language,
            told: row.told.split_whitespace().map(str::to_owned).collect(),
        });
        Ok(recipients.collect())
    }

    /// Keeps what the last mail told.
    pub async fn keep_told(
        &self,
        to: &Recipient,
        told: &BTreeSet<String>,
    ) -> Result<(), StoreError> {
        let told: Vec<&str> = told.iter().map(String::as_str).collect();
        let tx = self.db.begin().await?;
        tx.run(
            "UPDATE mail SET told = $2, told_at = $3 WHERE person = $1",
            values![to.actor.person, told.join(" "), self.world.now()],
        )
        .await?;
        tx.commit().await
    }
}
