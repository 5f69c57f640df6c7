//! What the brand has set up for all of its styles.

use super::people::still_here;
use super::{Read, Store, StoreError, values};
use crate::access::{Permit, act};
use crate::spec::NumberScheme;

const NUMBER_SCHEME: &str = "number_scheme";

impl Store {
    /// How styles are numbered; `None` while that is nobody's business but the designer's.
    pub async fn number_scheme(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Option<NumberScheme>, StoreError> {
        let row: Option<(String,)> = self
            .db
            .maybe(
                "SELECT content FROM setting WHERE name = $1",
                values![NUMBER_SCHEME],
            )
            .await?;
        let read = |(content,): (String,)| {
            serde_json::from_str(&content)
                .map_err(|cause| StoreError::corrupt("setting", "content", NUMBER_SCHEME, cause))
        };
        row.map(read).transpose()
    }

    /// Sets how styles are numbered from now on, or that they are not.
    pub async fn set_number_scheme(
        &self,
        permit: &Permit<act::Govern>,
        scheme: Option<&NumberScheme>,
    ) -> Result<(), StoreError> {
        let now = self.world.now();
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
                let content = serde_json::to_string(scheme).expect("a scheme is JSON");
                tx.run(
                    "INSERT INTO setting (name, content, set_by, set_at) VALUES ($1, $2, $3, $4) \
                     ON CONFLICT (name) DO UPDATE SET content = $2, set_by = $3, set_at = $4",
                    values![NUMBER_SCHEME, content, permit.person(), now],
                )
                .await?;
            }
        }
        tx.commit().await
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
