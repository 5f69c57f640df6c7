//! How instances of the program that share a PostgreSQL tell each other where to look. What is said
//! here may get lost; the ledger says the same for good.

use std::collections::BTreeMap;

use sqlx_postgres::PgPool;
use sqlx_postgres::Postgres;
use sqlx_postgres::{PgListener, PgPoolOptions};

use super::events::{Audience, Event};
use super::{Read, Store, StoreError, rows, values};
use crate::spec::{OrgId, StyleId};

const CHANNEL: &str = "fellseam";

/// A line between instances: two connections of its own, one to speak and one to listen. Speaking
/// inside the acts' transactions would make them wait for one another.
#[derive(Debug, Clone)]
pub struct Wire(PgPool);

/// The listening end.
#[derive(Debug)]
pub struct Ear(PgListener);

/// How far each style's ledger was read.
pub type Known = BTreeMap<StyleId, i64>;

impl Store {
    /// The line to the other instances; `None` on SQLite, which has one instance only.
    pub fn wire(&self) -> Option<Wire> {
        let options = self.db.postgres_options()?;
        let pool = PgPoolOptions::new().max_connections(2).idle_timeout(None);
        Some(Wire(pool.connect_lazy_with(options)))
    }

    /// How many entries every style's ledger has now.
    pub async fn heads(&self) -> Result<Known, StoreError> {
        let rows: Vec<(StyleId, i64)> = self
            .db
            .all("SELECT style, seq FROM ledger_head", values![])
            .await?;
        Ok(rows.into_iter().collect())
    }

    /// What a style's ledger says happened after entry `seq`, each audience once, and the last
    /// entry that this tells of.
    pub async fn events_after(
        &self,
        style: &StyleId,
        seq: i64,
    ) -> Result<(Vec<Event>, i64), StoreError> {
        let rows: Vec<(Option<OrgId>, bool, i64)> = self
            .db
            .all(
                "SELECT visible_to, internal, MAX(seq) FROM ledger \
                 WHERE style = $1 AND seq > $2 GROUP BY visible_to, internal",
                values![style, seq],
            )
            .await?;
        let last = rows.iter().map(|(_, _, seq)| *seq).max().unwrap_or(seq);
        let events = rows.into_iter().map(|(org, internal, _)| Event {
            style: style.clone(),
            audience: Audience::of(org, internal),
        });
        Ok((events.collect(), last))
    }
}

impl Wire {
    /// Says something to every instance, this one too: at most 7 900 bytes.
    pub async fn speak(&self, words: &str) -> Result<(), StoreError> {
        rows::query::<Postgres>("SELECT pg_notify($1, $2)", values![CHANNEL, words])
            .execute(&self.0)
            .await?;
        Ok(())
    }

    /// Listens from now on.
    pub async fn listen(&self) -> Result<Ear, StoreError> {
        let mut ear = PgListener::connect_with(&self.0).await?;
        ear.listen(CHANNEL).await?;
        Ok(Ear(ear))
    }
}

impl Ear {
    /// What was said next; `None` when the connection was lost and is there again, and whatever
    /// was said in between is lost.
    pub async fn hear(&mut self) -> Result<Option<String>, StoreError> {
        let heard = self.0.try_recv().await?;
        Ok(heard.map(|heard| heard.payload().to_owned()))
    }
}
