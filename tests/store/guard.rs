//! Tables that only grow refuse everything else, in both databases.
//!
//! The statements here are assembled from the schema, as no statement of the program is, so that a
//! table is tested whatever its columns are.

use std::collections::BTreeSet;

use fellseam::store::{Db, GUARDED};
use sqlx::{AssertSqlSafe, ConnectOptions, Connection};
use sqlx_postgres::PgConnection;
use sqlx_sqlite::{SqliteConnectOptions, SqliteConnection};

use crate::support::database::{on_postgres, on_sqlite};

/// As the store's own writer, but with foreign keys and CHECKs off: one row fits any table.
async fn sqlite(address: &str) -> SqliteConnection {
    SqliteConnectOptions::new()
        .filename(address.strip_prefix("sqlite:").unwrap())
        .foreign_keys(false)
        .pragma("ignore_check_constraints", "ON")
        .pragma("recursive_triggers", "ON")
        .connect()
        .await
        .unwrap()
}

async fn columns(connection: &mut SqliteConnection, table: &str) -> Vec<(String, String)> {
    sqlx::query_as("SELECT name, type FROM pragma_table_info($1)")
        .bind(table)
        .fetch_all(connection)
        .await
        .unwrap()
}

/// `INSERT` of one row with something in every column.
fn insert(verb: &str, table: &str, columns: &[(String, String)]) -> String {
    let something = |kind: &str| match kind {
        "TEXT" => "'x'",
        "BIGINT" => "1",
        "BOOLEAN" => "TRUE",
        "BYTEA" => "X'00'",
        other => panic!("no value for a column of type {other}"),
    };
    let names: Vec<&str> = columns.iter().map(|(name, _)| name.as_str()).collect();
    let values: Vec<&str> = columns.iter().map(|(_, kind)| something(kind)).collect();
    format!(
        "{verb} INTO {table} ({}) VALUES ({})",
        names.join(", "),
        values.join(", ")
    )
}

fn changes(table: &str, column: &str) -> Vec<String> {
    vec![
        format!("UPDATE {table} SET {column} = {column}"),
        format!("DELETE FROM {table}"),
    ]
}

#[tokio::test]
async fn sqlite_refuses_to_change_or_delete() {
    on_sqlite(async |_, address| {
        let mut connection = sqlite(&address).await;
        for table in GUARDED {
            let columns = columns(&mut connection, table).await;
            assert!(!columns.is_empty(), "there is no table {table}");
            let row = insert("INSERT", table, &columns);
            run(&mut connection, row).await.unwrap();

            let mut statements = changes(table, &columns[0].0);
            statements.push(insert("REPLACE", table, &columns));
            for sql in statements {
                let refused = run(&mut connection, sql.clone()).await;
                let error = refused.expect_err(&sql).to_string();
                assert!(
                    error.contains(&format!("the table {table} only grows")),
                    "{error}"
                );
            }
            let count: i64 =
                sqlx::query_scalar(AssertSqlSafe(format!("SELECT COUNT(*) FROM {table}")))
                    .fetch_one(&mut connection)
                    .await
                    .unwrap();
            assert_eq!(count, 1, "the row of {table} stays");
        }
        connection.close().await.unwrap();
    })
    .await;
}

#[tokio::test]
async fn postgres_refuses_to_change_or_delete() {
    on_postgres(async |_, address| {
        let mut connection = PgConnection::connect(&address).await.unwrap();
        for table in GUARDED {
            let column: String = sqlx::query_scalar(
                "SELECT CAST(column_name AS TEXT) FROM information_schema.columns
                 WHERE table_name = $1 AND ordinal_position = 1",
            )
            .bind(table)
            .fetch_one(&mut connection)
            .await
            .unwrap();
            let mut statements = changes(table, &column);
            statements.push(format!("TRUNCATE {table} CASCADE"));
            for sql in statements {
                let refused = sqlx::query(AssertSqlSafe(sql.clone()))
                    .execute(&mut connection)
                    .await;
                let error = refused.expect_err(&sql).to_string();
                assert!(error.contains("only grows"), "{error}");
            }
        }
        connection.close().await.unwrap();
    })
    .await;
}

/// The guards stand in the database: whoever took one away finds it back after the next start, and
/// the list that the program publishes is the list that the databases have.
#[tokio::test]
async fn the_guards_come_back_and_are_exactly_the_list() {
    let expected: BTreeSet<String> = GUARDED.iter().map(|name| name.to_string()).collect();

    on_sqlite(async |_, address| {
        let mut connection = sqlite(&address).await;
        run(&mut connection, "DROP TRIGGER ledger_no_delete".to_owned())
            .await
            .unwrap();
        Db::open(&address).await.unwrap().close().await;
        for act in ["update", "delete"] {
            let found: Vec<String> =
                sqlx::query_scalar("SELECT tbl_name FROM sqlite_master WHERE type = 'trigger' AND name = tbl_name || '_no_' || $1")
                    .bind(act)
                    .fetch_all(&mut connection)
                    .await
                    .unwrap();
            assert_eq!(found.into_iter().collect::<BTreeSet<_>>(), expected, "{act}");
        }
        connection.close().await.unwrap();
    })
    .await;

    on_postgres(async |_, address| {
        let mut connection = PgConnection::connect(&address).await.unwrap();
        sqlx::query("DROP TRIGGER only_grows ON ledger")
            .execute(&mut connection)
            .await
            .unwrap();
        Db::open(&address).await.unwrap().close().await;
        let found: Vec<String> = sqlx::query_scalar(
            "SELECT CAST(c.relname AS TEXT) FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
             WHERE t.tgname = 'only_grows'",
        )
        .fetch_all(&mut connection)
        .await
        .unwrap();
        assert_eq!(found.into_iter().collect::<BTreeSet<_>>(), expected);
        connection.close().await.unwrap();
    })
    .await;
}

async fn run(connection: &mut SqliteConnection, sql: String) -> sqlx::Result<()> {
    sqlx::query(AssertSqlSafe(sql))
        .execute(connection)
        .await
        .map(|_| ())
}
