//! Brings the schema up to date, one program at a time, on a connection of its own: a migration
//! that fails keeps its lock until its connection is gone.

use std::fs::File;
use std::path::Path;

use sqlx::migrate::Migrator;
use sqlx::{ConnectOptions, Connection};
use sqlx_postgres::PgConnectOptions;
use sqlx_sqlite::SqliteConnectOptions;

use super::{StoreError, guard};

// `run_direct` and not `run`: the future of the latter cannot be sent between threads
// ("implementation of `Acquire` is not general enough").
static MIGRATIONS: Migrator = sqlx::migrate!("./migrations");

/// Migrates an SQLite file. Two programs that start at once take turns by a lock on `PATH.lock`,
/// since sqlx has a lock of its own for PostgreSQL only.
pub(super) async fn sqlite(path: &Path, options: SqliteConnectOptions) -> Result<(), StoreError> {
    let _turn = lock(path).await?;
    // With foreign keys on, a migration that rebuilds a table would delete what points to it.
    let mut connection = options.foreign_keys(false).connect().await?;
    MIGRATIONS.run_direct(None, &mut connection, false).await?;
    let lost: Option<(String, Option<i64>, String)> =
        sqlx::query_as("SELECT \"table\", rowid, parent FROM pragma_foreign_key_check")
            .fetch_optional(&mut connection)
            .await?;
    if let Some((table, row, parent)) = lost {
        let row = row.map_or_else(|| "without a number".to_owned(), |row| row.to_string());
        let cause = format!("points to a row of {parent} that is not there");
        return Err(StoreError::corrupt(&table, "(foreign key)", &row, cause));
    }
    guard::sqlite(&mut connection).await?;
    connection.close().await?;
    Ok(())
}

/// Migrates a PostgreSQL database; sqlx takes an advisory lock for the time.
pub(super) async fn postgres(options: &PgConnectOptions) -> Result<(), StoreError> {
    let mut connection = options.connect().await?;
    MIGRATIONS.run_direct(None, &mut connection, false).await?;
    guard::postgres(&mut connection).await?;
    connection.close().await?;
    Ok(())
}

/// Held while the returned file is open.
async fn lock(path: &Path) -> Result<File, StoreError> {
    let mut name = path.as_os_str().to_owned();
    name.push(".lock");
    let path = Path::new(&name).to_owned();
    let wait = {
        let path = path.clone();
        move || {
            let file = File::create(path)?;
            file.lock()?;
            Ok(file)
        }
    };
    let waited = tokio::task::spawn_blocking(wait).await;
    waited
        .unwrap_or_else(|gone| Err(std::io::Error::other(gone)))
        .map_err(|cause| StoreError::Lock { path, cause })
}
