//! What the brand has set up for all of its styles.

use serde::Serialize;
use serde::de::DeserializeOwned;

use super::people::still_here;
use super::{Read, Store, StoreError, Tx, values};
use crate::access::{Permit, StylePermit, act};
use crate::spec::NumberScheme;
use crate::spec::colour::Limit;

const NUMBER_SCHEME: &str = "number_scheme";
const COLOUR_LIMIT: &str = "colour_limit";

/// `None`: nobody has set it.
async fn setting_in<T: DeserializeOwned>(
    db: &impl Read,
    name: &str,
) -> Result<Option<T>, StoreError> {
    let row: Option<(String,)> = db
        .maybe("SELECT content FROM setting WHERE name = $1", values![name])
        .await?;
    let read = |(content,): (String,)| {
        serde_json::from_str(&content)
            .map_err(|cause| StoreError::corrupt("setting", "content", name, cause))
    };
    row.map(read).transpose()
}

pub(super) async fn colour_limit_in(db: &impl Read) -> Result<Option<Limit>, StoreError> {
    setting_in(db, COLOUR_LIMIT).await
}

impl Store {
    /// How styles are numbered; `None` while that is nobody's business but the designer's.
    pub async fn number_scheme(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Option<NumberScheme>, StoreError> {
        setting_in(&self.db, NUMBER_SCHEME).await
    }

    /// Sets how styles are numbered from now on, or that they are not.
    pub async fn set_number_scheme(
        &self,
        permit: &Permit<act::Govern>,
        scheme: Option<&NumberScheme>,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        match scheme {
            None => {
                tx.run(
                    "DELETE FROM setting WHERE name = $1",
                    values![NUMBER_SCHEME],
                )
                .await?;
            }
            Some(scheme) => {
                self.put_setting(&tx, permit, NUMBER_SCHEME, scheme).await?;
            }
        }
        tx.commit().await
    }

    /// The brand's limit of colour differences; `None` where it has set none.
    pub async fn colour_limit(
        &self,
        _permit: &StylePermit<act::Read>,
    ) -> Result<Option<Limit>, StoreError> {
        colour_limit_in(&self.db).await
    }

    /// Sets the limit of colour differences for all styles.
    pub async fn set_colour_limit(
        &self,
        permit: &Permit<act::Govern>,
        limit: &Limit,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        self.put_setting(&tx, permit, COLOUR_LIMIT, limit).await?;
        tx.commit().await
    }

    async fn put_setting(
        &self,
        tx: &Tx,
        permit: &Permit<act::Govern>,
        name: &str,
        setting: &impl Serialize,
    ) -> Result<(), StoreError> {
        let content = serde_json::to_string(setting).expect("settings are JSON");
        tx.run(
            "INSERT INTO setting (name, content, set_by, set_at) VALUES ($1, $2, $3, $4) \
             ON CONFLICT (name) DO UPDATE SET content = $2, set_by = $3, set_at = $4",
            values![name, content, permit.person(), self.world.now()],
        )
        .await?;
        Ok(())
    }

    /// The numbers of all styles.
    pub async fn taken_numbers(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Vec<String>, StoreError> {
        let rows: Vec<(String,)> = self.db.all("SELECT number FROM style", values![]).await?;
        Ok(rows.into_iter().map(|(number,)| number).collect())
    }
}
