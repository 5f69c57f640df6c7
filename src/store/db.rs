//! Two drivers behind one `Db`.

use std::path::{Path, PathBuf};
use std::pin::Pin;
use std::str::FromStr;
use std::sync::Arc;
use std::time::Duration;

use sqlx_postgres::{PgConnectOptions, PgConnection, PgPoolOptions};
use sqlx_postgres::{PgPool, Postgres};
use sqlx_sqlite::{Sqlite, SqlitePool};
use sqlx_sqlite::{
    SqliteConnectOptions, SqliteConnection, SqliteJournalMode, SqlitePoolOptions, SqliteSynchronous,
};
use tokio::sync::Mutex;

use super::readers::{Readers, gone};
use super::rows::{self, Take};
use super::{Row, StoreError, Value, migrate};

/// Connections that read, of one instance of the program. They never wait for an act: an SQLite
/// file has its write-ahead log.
const READERS: usize = 4;
/// Connections to PostgreSQL for acts.
const WRITERS: u32 = 6;
/// How long a writer waits for another program that holds an SQLite file.
const BUSY: Duration = Duration::from_secs(10);

/// The database. Clones share it.
#[derive(Debug, Clone)]
pub struct Db(Pools);

#[derive(Debug, Clone)]
enum Pools {
    Sqlite {
        /// One connection: SQLite has one writer, and waiting for it here is fair and never fails.
        writer: SqlitePool,
        readers: Arc<Readers<SqliteConnection>>,
    },
    Postgres {
        writers: PgPool,
        readers: Arc<Readers<PgConnection>>,
    },
}

/// One act. It is seen by others when it is committed; dropped, it never happened (the rollback
/// runs before the connection's next use).
///
/// The calls take `&self`, so that one function reads through a [`Db`] or a `Tx`; statements of
/// one transaction still run one after another.
#[derive(Debug)]
pub struct Tx(Mutex<Act>);

#[derive(Debug)]
struct Act {
    open: Open,
    /// A statement failed. PostgreSQL then answers COMMIT with a silent rollback, SQLite would
    /// keep the rest: here neither is called done.
    failed: bool,
}

#[derive(Debug)]
enum Open {
    Sqlite(sqlx::Transaction<'static, Sqlite>),
    Postgres(sqlx::Transaction<'static, Postgres>),
}

/// A statement under way. The drivers' own futures stay behind it: in sight of every page's future,
/// they made the compiler prove their `Send` anew for each, which was most of a build.
type Underway<'a, T> = Pin<Box<dyn Future<Output = Result<T, StoreError>> + Send + 'a>>;

/// Reading: through the database, outside any transaction, or through a transaction, which sees
/// its own writes.
pub trait Read: Sync {
    /// Hands every row of the answer to `to`.
    fn rows<'a>(
        &'a self,
        sql: &'static str,
        values: Vec<Value>,
        to: &'a mut dyn Take,
    ) -> Underway<'a, ()>;

    /// Every row of the answer.
    fn all<T: Row>(
        &self,
        sql: &'static str,
        values: Vec<Value>,
    ) -> impl Future<Output = Result<Vec<T>, StoreError>> + Send {
        async move {
            let mut taken = Vec::new();
            self.rows(sql, values, &mut taken).await?;
            Ok(taken)
        }
    }

    /// The first row of the answer, if it has any.
    fn maybe<T: Row>(
        &self,
        sql: &'static str,
        values: Vec<Value>,
    ) -> impl Future<Output = Result<Option<T>, StoreError>> + Send {
        async move { Ok(self.all(sql, values).await?.into_iter().next()) }
    }

    /// The first row of the answer. Errors: `Missing` when there is none.
    fn one<T: Row>(
        &self,
        sql: &'static str,
        values: Vec<Value>,
    ) -> impl Future<Output = Result<T, StoreError>> + Send {
        async move { self.maybe(sql, values).await?.ok_or(StoreError::Missing) }
    }
}

impl Db {
    /// Opens `sqlite:PATH` (made when it is not there; its folder must be) or `postgres://...`,
    /// brings the schema up to date and puts the guards on the tables that only grow.
    pub async fn open(address: &str) -> Result<Self, StoreError> {
        match Address::parse(address)? {
            Address::Sqlite(path) => {
                migrate::sqlite(&path, sqlite(&path)).await?;
                // A file does not hang up: the connection stays, and is not asked whether it lives.
                let writer = SqlitePoolOptions::new()
                    .max_connections(1)
                    .idle_timeout(None)
                    .max_lifetime(None)
                    .test_before_acquire(false)
                    .connect_with(sqlite(&path))
                    .await?;
                let readers = Readers::new(sqlite(&path).read_only(true), READERS);
                let readers = Arc::new(readers);
                Ok(Self(Pools::Sqlite { writer, readers }))
            }
            Address::Postgres(options) => {
                migrate::postgres(&options).await?;
                let readers = Arc::new(Readers::new((*options).clone(), READERS));
                let writers = PgPoolOptions::new()
                    .max_connections(WRITERS)
                    .connect_with(*options)
                    .await?;
                Ok(Self(Pools::Postgres { writers, readers }))
            }
        }
    }

    /// Begins an act. On SQLite the act is the only one until it ends, so it waits for nothing
    /// but the database, and begins no other.
    pub fn begin(&self) -> Underway<'_, Tx> {
        Box::pin(async move {
            let open = match &self.0 {
                // A deferred BEGIN would take the lock at its first write and fail there,
                // unretried, when another program wrote in between.
                Pools::Sqlite { writer, .. } => {
                    Open::Sqlite(writer.begin_with("BEGIN IMMEDIATE").await?)
                }
                Pools::Postgres { writers, .. } => Open::Postgres(writers.begin().await?),
            };
            Ok(Tx(Mutex::new(Act {
                open,
                failed: false,
            })))
        })
    }

    /// How further connections are made; `None` on SQLite.
    pub(super) fn postgres_options(&self) -> Option<PgConnectOptions> {
        match &self.0 {
            Pools::Sqlite { .. } => None,
            Pools::Postgres { writers, .. } => Some((*writers.connect_options()).clone()),
        }
    }

    /// Waits for running statements and closes every connection.
    pub async fn close(&self) {
        match &self.0 {
            Pools::Sqlite { writer, readers } => {
                readers.close().await;
                writer.close().await;
            }
            Pools::Postgres { writers, readers } => {
                readers.close().await;
                writers.close().await;
            }
        }
    }
}

impl Read for Db {
    fn rows<'a>(
        &'a self,
        sql: &'static str,
        values: Vec<Value>,
        to: &'a mut dyn Take,
    ) -> Underway<'a, ()> {
        Box::pin(async move {
            match &self.0 {
                Pools::Sqlite { readers, .. } => {
                    let mut lent = readers.lend().await?;
                    let read = rows::sqlite(&mut lent.connection, sql, values, to).await;
                    lent.done(read)
                }
                Pools::Postgres { readers, .. } => {
                    let mut lent = readers.lend().await?;
                    let again = values.clone();
                    let mut read = rows::postgres(&mut lent.connection, sql, values, to).await;
                    if gone(&read) {
                        lent = lent.renew().await?;
                        read = rows::postgres(&mut lent.connection, sql, again, to).await;
                    }
                    lent.done(read)
                }
            }
        })
    }
}

impl Read for Tx {
    fn rows<'a>(
        &'a self,
        sql: &'static str,
        values: Vec<Value>,
        to: &'a mut dyn Take,
    ) -> Underway<'a, ()> {
        Box::pin(async move {
            let mut act = self.0.lock().await;
            let read = match &mut act.open {
                Open::Sqlite(tx) => rows::sqlite(tx, sql, values, to).await,
                Open::Postgres(tx) => rows::postgres(tx, sql, values, to).await,
            };
            act.failed |= read.is_err();
            read
        })
    }
}

impl Tx {
    /// Runs a statement that writes. Returns how many rows it touched.
    ///
    /// Errors: `Unique` when something is there already. Any error ends the act: PostgreSQL
    /// refuses what follows, and neither database commits it. So look before writing, or write
    /// `ON CONFLICT DO NOTHING` and count.
    pub fn run(&self, sql: &'static str, values: Vec<Value>) -> Underway<'_, u64> {
        Box::pin(async move {
            let mut act = self.0.lock().await;
            let touched = match &mut act.open {
                Open::Sqlite(tx) => rows::query::<Sqlite>(sql, values)
                    .execute(&mut **tx)
                    .await
                    .map(|done| done.rows_affected()),
                Open::Postgres(tx) => rows::query::<Postgres>(sql, values)
                    .execute(&mut **tx)
                    .await
                    .map(|done| done.rows_affected()),
            };
            act.failed |= touched.is_err();
            Ok(touched?)
        })
    }

    /// Ends the act: from here on it is on the disk and seen by all.
    ///
    /// Errors: `Failed` when one of its statements did; nothing is kept then.
    pub fn commit(self) -> Underway<'static, ()> {
        Box::pin(async move {
            let act = self.0.into_inner();
            if act.failed {
                return Err(StoreError::Failed);
            }
            match act.open {
                Open::Sqlite(tx) => tx.commit().await?,
                Open::Postgres(tx) => tx.commit().await?,
            }
            Ok(())
        })
    }
}

/// Where the database is.
enum Address {
    Sqlite(PathBuf),
    Postgres(Box<PgConnectOptions>),
}

impl Address {
    fn parse(text: &str) -> Result<Self, StoreError> {
        let unknown = || StoreError::Address;
        if let Some(path) = text.strip_prefix("sqlite:") {
            // A database in memory would be another one on every connection.
            let usable = !path.is_empty() && path != ":memory:";
            return usable
                .then(|| Self::Sqlite(PathBuf::from(path)))
                .ok_or_else(unknown);
        }
        if text.starts_with("postgres://") || text.starts_with("postgresql://") {
            let options = PgConnectOptions::from_str(text).map_err(|_| unknown())?;
            return Ok(Self::Postgres(Box::new(
                options.application_name("fellseam"),
            )));
        }
        Err(unknown())
    }
}

fn sqlite(path: &Path) -> SqliteConnectOptions {
    SqliteConnectOptions::new()
        .filename(path)
        .create_if_missing(true)
        .journal_mode(SqliteJournalMode::Wal)
        // NORMAL can lose acknowledged commits when the power fails.
        .synchronous(SqliteSynchronous::Full)
        .foreign_keys(true)
        // Else REPLACE would delete past the guards.
        .pragma("recursive_triggers", "ON")
        .busy_timeout(BUSY)
}
