//! All SQL, and nothing else's SQL anywhere. One text for SQLite and PostgreSQL.
//!
//! ```no_run
//! use fellseam::spec::id::{PersonId, StyleId, Time};
//! use fellseam::store::{Db, Read, StoreError, values};
//!
//! #[derive(sqlx::FromRow)]
//! struct Style {
//!     id: StyleId,
//!     name: String,
//!     made_at: Time,
//! }
//!
//! // Reads through the database or through a transaction: `style(&db, ..)`, `style(&tx, ..)`.
//! async fn style(db: &impl Read, id: &StyleId) -> Result<Style, StoreError> {
//!     db.one("SELECT id, name, made_at FROM style WHERE id = $1", values![id]).await
//! }
//!
//! # async fn act(id: StyleId) -> Result<(), StoreError> {
//! let db = Db::open("sqlite:fellseam.db").await?; // migrated and guarded
//! let tx = db.begin().await?; // one at a time on SQLite: never begin inside a begin
//! let rows = tx.run("UPDATE style SET name = $2 WHERE id = $1", values![id, "Parka"]).await?;
//! assert_eq!(rows, 1);
//! let (seq, hash): (i64, String) = tx
//!     .one(
//!         "UPDATE ledger_head SET seq = seq + 1 WHERE style = $1 RETURNING seq, hash",
//!         values![id],
//!     )
//!     .await?;
//! style(&tx, &id).await?;
//! tx.commit().await?; // a dropped transaction is rolled back
//! # Ok(()) }
//! ```

mod db;
mod error;
mod guard;
mod migrate;
mod rows;
mod value;

pub use crate::store_values as values;
pub use db::{Db, Read, Tx};
pub use error::StoreError;
pub use guard::GUARDED;
pub use value::{Bind, Row, Value};
