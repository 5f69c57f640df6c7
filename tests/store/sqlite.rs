//! What only SQLite needs.

use fellseam::store::{Db, Read, StoreError, values};
use sqlx::{ConnectOptions, Connection};
use sqlx_sqlite::{SqliteConnectOptions, SqliteConnection};

struct File {
    folder: tempfile::TempDir,
    db: Db,
}

impl File {
    async fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let address = format!("sqlite:{}", folder.path().join("a.db").display());
        let db = Db::open(&address).await.unwrap();
        Self { folder, db }
    }

    fn address(&self) -> String {
        format!("sqlite:{}", self.folder.path().join("a.db").display())
    }

    /// Past the store, with foreign keys off, as another program would.
    async fn other_program(&self) -> SqliteConnection {
        SqliteConnectOptions::new()
            .filename(self.folder.path().join("a.db"))
            .foreign_keys(false)
            .connect()
            .await
            .unwrap()
    }
}

#[tokio::test]
async fn the_writer_keeps_what_it_acknowledged() {
    let file = File::new().await;
    let tx = file.db.begin().await.unwrap();
    for (pragma, expected) in [
        ("SELECT synchronous FROM pragma_synchronous", 2),
        ("SELECT foreign_keys FROM pragma_foreign_keys", 1),
        (
            "SELECT recursive_triggers FROM pragma_recursive_triggers",
            1,
        ),
        ("SELECT timeout FROM pragma_busy_timeout", 10_000),
    ] {
        let (found,): (i64,) = tx.one(pragma, values![]).await.unwrap();
        assert_eq!(found, expected, "{pragma}");
    }
    let (mode,): (String,) = tx
        .one("SELECT journal_mode FROM pragma_journal_mode", values![])
        .await
        .unwrap();
    assert_eq!(mode, "wal");
}

#[tokio::test]
async fn readers_cannot_write() {
    let file = File::new().await;
    let written = file
        .db
        .all::<(String,)>(
            "INSERT INTO organisation (id, kind, name, made_at)
             VALUES ('o1', 'brand', 'Harrow & Tide', '') RETURNING id",
            values![],
        )
        .await;
    assert!(matches!(written, Err(StoreError::Sql(_))), "{written:?}");
}

#[tokio::test]
async fn a_row_that_points_nowhere_stops_the_start_and_is_named() {
    let file = File::new().await;
    let mut other = file.other_program().await;
    sqlx::query(
        "INSERT INTO person (id, org, role, language, made_at)
         VALUES ('p1', 'gone', 'owner', 'en', '')",
    )
    .execute(&mut other)
    .await
    .unwrap();
    other.close().await.unwrap();

    let error = Db::open(&file.address()).await.unwrap_err();
    assert_eq!(
        error.to_string(),
        "table person, column (foreign key), row 1: points to a row of organisation that is not there"
    );
}

#[tokio::test]
async fn a_second_program_waits_for_the_first_to_migrate() {
    let file = File::new().await;
    let mut name = file.folder.path().join("a.db").into_os_string();
    name.push(".lock");
    let held = std::fs::File::open(name).unwrap();
    held.lock().unwrap();

    let address = file.address();
    let mut start = tokio::spawn(async move { Db::open(&address).await });
    let early = tokio::time::timeout(std::time::Duration::from_millis(300), &mut start).await;
    assert!(early.is_err(), "it opened under the lock");
    held.unlock().unwrap();
    start.await.unwrap().unwrap().close().await;
}

#[tokio::test]
async fn a_folder_that_is_not_there_is_named() {
    let error = Db::open("sqlite:/nonexistent/a.db").await.unwrap_err();
    assert!(
        error.to_string().starts_with("/nonexistent/a.db.lock: "),
        "{error}"
    );
}

/// An act that reads before it writes, in two programs at once: a deferred BEGIN would read an
/// older state, and its first write would fail with "database is locked", whatever the timeout.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn acts_of_two_programs_that_read_first_lose_nothing() {
    let file = File::new().await;
    let other = Db::open(&file.address()).await.unwrap();
    let tx = other.begin().await.unwrap();
    tx.run("CREATE TABLE tally (n BIGINT NOT NULL)", values![])
        .await
        .unwrap();
    tx.run("INSERT INTO tally VALUES (0)", values![])
        .await
        .unwrap();
    tx.commit().await.unwrap();

    let mut acts = tokio::task::JoinSet::new();
    for act in 0..50 {
        let db = if act % 2 == 0 { &file.db } else { &other }.clone();
        acts.spawn(async move {
            let tx = db.begin().await?;
            let (n,): (i64,) = tx.one("SELECT n FROM tally", values![]).await?;
            tx.run("UPDATE tally SET n = $1", values![n + 1]).await?;
            tx.commit().await
        });
    }
    for outcome in acts.join_all().await {
        outcome.unwrap();
    }
    let (n,): (i64,) = other.one("SELECT n FROM tally", values![]).await.unwrap();
    assert_eq!(n, 50);
}

#[tokio::test]
async fn a_file_that_another_program_keeps_is_unavailable() {
    let file = File::new().await;
    let mut impatient = file.other_program().await;
    sqlx::query("PRAGMA busy_timeout = 0")
        .execute(&mut impatient)
        .await
        .unwrap();
    let tx = file.db.begin().await.unwrap();
    let refused = impatient.begin_with("BEGIN IMMEDIATE").await.unwrap_err();
    assert!(matches!(refused.into(), StoreError::Unavailable(_)));
    drop(tx);
}
