//! A fresh database for each test, on both kinds.
//!
//! ```ignore
//! use crate::support::database::on_both;
//!
//! on_both! {
//!     async fn a_style_is_found_again(db) {
//!         // `db` is a `Db` with the schema and nothing in it.
//!     }
//! }
//! on_both! {
//!     async fn it_opens_twice(db, address) {
//!         let again = Db::open(&address).await.unwrap();
//!     }
//! }
//! ```
//!
//! makes the tests `a_style_is_found_again::sqlite` and `a_style_is_found_again::postgres`.

use std::path::Path;
use std::sync::atomic::{AtomicU32, Ordering};

use fellseam::spec::id::Digest;
use fellseam::store::Db;
use sqlx::{AssertSqlSafe, Connection};
use sqlx_postgres::PgConnection;

/// Makes two tests of one body.
macro_rules! on_both {
    ($(#[$mark:meta])* async fn $name:ident($db:ident) $body:block) => {
        $crate::support::database::on_both! { $(#[$mark])* async fn $name($db, _address) $body }
    };
    ($(#[$mark:meta])* async fn $name:ident($db:ident, $address:ident) $body:block) => {
        mod $name {
            use super::*;

            async fn body($db: fellseam::store::Db, $address: String) $body

            $(#[$mark])*
            #[tokio::test(flavor = "multi_thread", worker_threads = 2)]
            async fn sqlite() {
                $crate::support::database::on_sqlite(body).await;
            }

            $(#[$mark])*
            #[tokio::test(flavor = "multi_thread", worker_threads = 2)]
            async fn postgres() {
                $crate::support::database::on_postgres(body).await;
            }
        }
    };
}
pub(crate) use on_both;

/// Runs the test on a fresh SQLite file, which goes with the test.
pub async fn on_sqlite(test: impl AsyncFnOnce(Db, String)) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let address = format!("sqlite:{}", folder.path().join("test.db").display());
    let db = Db::open(&address).await.expect("a fresh database opens");
    test(db.clone(), address).await;
    db.close().await;
}

/// Runs the test on a fresh PostgreSQL database, which goes with the test (and stays for a look
/// when the test fails).
pub async fn on_postgres(test: impl AsyncFnOnce(Db, String)) {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    let count = COUNT.fetch_add(1, Ordering::Relaxed);
    let name = format!("test_{}_{count}", std::process::id());

    let mut admin = admin().await;
    let template = template(&mut admin).await;
    run(&mut admin, format!("DROP DATABASE IF EXISTS {name}")).await;
    run(
        &mut admin,
        format!("CREATE DATABASE {name} TEMPLATE {template}"),
    )
    .await;

    let address = address(&name);
    let db = Db::open(&address).await.expect("a fresh database opens");
    test(db.clone(), address).await;
    db.close().await;
    run(&mut admin, format!("DROP DATABASE {name} WITH (FORCE)")).await;
}

/// The database with the schema that fresh ones are copied from; made by whoever needs it first.
/// Its name tells the schema, so a cluster that runs for days never serves an old one.
async fn template(admin: &mut PgConnection) -> String {
    let mut schema = std::fs::read("src/store/guard_postgres.sql").expect("the guards");
    let mut migrations: Vec<_> = std::fs::read_dir(Path::new("migrations"))
        .expect("the migrations")
        .map(|entry| entry.expect("a migration").path())
        .collect();
    migrations.sort();
    for path in migrations {
        schema.extend(std::fs::read(path).expect("a migration"));
    }
    let name = format!("template_{}", &Digest::of(&schema).as_str()[..16]);

    run(admin, "SELECT pg_advisory_lock(1)".to_owned()).await;
    let there: bool = sqlx::query_scalar("SELECT COUNT(*) > 0 FROM pg_database WHERE datname = $1")
        .bind(&name)
        .fetch_one(&mut *admin)
        .await
        .expect("the list of databases");
    if !there {
        // Under another name until it is whole.
        let making = format!("making_{name}");
        run(
            admin,
            format!("DROP DATABASE IF EXISTS {making} WITH (FORCE)"),
        )
        .await;
        run(admin, format!("CREATE DATABASE {making}")).await;
        let db = Db::open(&address(&making)).await.expect("the schema");
        db.close().await;
        run(admin, format!("ALTER DATABASE {making} RENAME TO {name}")).await;
    }
    run(admin, "SELECT pg_advisory_unlock(1)".to_owned()).await;
    name
}

async fn admin() -> PgConnection {
    PgConnection::connect(&server())
        .await
        .expect("the PostgreSQL of FELLSEAM_TEST_POSTGRES answers")
}

/// Never skipped in silence: a test that did not run proves nothing.
#[allow(
    clippy::disallowed_methods,
    reason = "a test binary has no arguments of ours"
)]
fn server() -> String {
    std::env::var("FELLSEAM_TEST_POSTGRES").expect(
        "FELLSEAM_TEST_POSTGRES is not set: run `sh tests/run.sh`, which starts a PostgreSQL for \
         the tests, or `eval \"$(sh tests/run.sh --postgres)\"` once and then `cargo nextest run`",
    )
}

/// The server's address with another database.
fn address(database: &str) -> String {
    let server = server();
    let (server, options) = server.split_once('?').unwrap_or((&server, ""));
    let (server, _) = server.rsplit_once('/').expect("an address with a database");
    format!("{server}/{database}?{options}")
}

async fn run(admin: &mut PgConnection, sql: String) {
    sqlx::query(AssertSqlSafe(sql.clone()))
        .execute(admin)
        .await
        .unwrap_or_else(|error| panic!("{sql}: {error}"));
}
