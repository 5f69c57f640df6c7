//! A way past the program into its database, for tests of what an audit finds.

use fellseam::store::GUARDED;
use sqlx::{AssertSqlSafe, ConnectOptions, Connection};
use sqlx_postgres::PgConnection;
use sqlx_sqlite::{SqliteConnectOptions, SqliteConnection};

/// A connection with the guards taken off and foreign keys not looked at.
pub enum Past {
    Sqlite(SqliteConnection),
    Postgres(PgConnection),
}

impl Past {
    pub async fn the_guards(address: &str) -> Past {
        let mut past = match address.strip_prefix("sqlite:") {
            Some(path) => {
                let options = SqliteConnectOptions::new().filename(path);
                let connection = options.foreign_keys(false).connect().await;
                Past::Sqlite(connection.expect("the file opens"))
            }
            None => {
                let connection = PgConnection::connect(address).await;
                Past::Postgres(connection.expect("the server answers"))
            }
        };
        for table in GUARDED {
            if let Past::Sqlite(_) = past {
                past.run(&format!("DROP TRIGGER {table}_no_update")).await;
                past.run(&format!("DROP TRIGGER {table}_no_delete")).await;
            } else {
                past.run(&format!("DROP TRIGGER only_grows ON {table}"))
                    .await;
            }
        }
        if let Past::Postgres(_) = past {
            past.run("SET session_replication_role = replica").await;
        }
        past
    }

    /// Runs a statement. Returns how many rows it touched.
    pub async fn run(&mut self, sql: &str) -> u64 {
        let query = AssertSqlSafe(sql.to_owned());
        let touched = match self {
            Past::Sqlite(connection) => {
                let done = sqlx::query(query).execute(connection).await;
                done.map(|done| done.rows_affected())
            }
            Past::Postgres(connection) => {
                let done = sqlx::query(query).execute(connection).await;
                done.map(|done| done.rows_affected())
            }
        };
        touched.unwrap_or_else(|error| panic!("{sql}: {error}"))
    }

    /// The one value of an answer, as text.
    pub async fn text(&mut self, sql: &str) -> Option<String> {
        let query = AssertSqlSafe(sql.to_owned());
        let found = match self {
            Past::Sqlite(connection) => sqlx::query_scalar(query).fetch_one(connection).await,
            Past::Postgres(connection) => sqlx::query_scalar(query).fetch_one(connection).await,
        };
        found.unwrap_or_else(|error| panic!("{sql}: {error}"))
    }

    /// The columns of a table with their types in capitals, in the order of the table.
    pub async fn columns(&mut self, table: &str) -> Vec<(String, String)> {
        let found = match self {
            Past::Sqlite(connection) => {
                sqlx::query_as("SELECT name, type FROM pragma_table_info($1)")
                    .bind(table)
                    .fetch_all(connection)
                    .await
            }
            Past::Postgres(connection) => {
                sqlx::query_as(
                    "SELECT CAST(column_name AS TEXT), upper(CAST(data_type AS TEXT)) \
                     FROM information_schema.columns WHERE table_name = $1 \
                     ORDER BY ordinal_position",
                )
                .bind(table)
                .fetch_all(connection)
                .await
            }
        };
        found.expect("the table")
    }
}
