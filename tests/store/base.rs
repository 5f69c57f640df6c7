//! The drivers: types, acts, readers, errors.

use std::time::Duration;

use fellseam::spec::id::{Digest, OrgId, PersonId, Time};
use fellseam::store::{Db, Read, StoreError, values};

use sqlx::Connection;
use sqlx_postgres::PgConnection;

use crate::support::database::{on_both, on_postgres, on_sqlite};

const NOW: &str = "2026-03-01T08:00:00.000Z";

/// Writes one organisation in the act.
async fn organisation(tx: &fellseam::store::Tx, id: &str) -> Result<(), StoreError> {
    tx.run(
        "INSERT INTO organisation (id, kind, name, made_at) VALUES ($1, 'factory', $2, $3)",
        values![id, format!("Factory {id}"), NOW],
    )
    .await
    .map(|_| ())
}

async fn organisations(db: &impl Read) -> i64 {
    let (count,): (i64,) = db
        .one("SELECT COUNT(*) FROM organisation", values![])
        .await
        .unwrap();
    count
}

on_both! {
    async fn every_kind_of_value_and_its_null_come_back(db) {
        type Found = (Option<String>, Option<i64>, Option<bool>, Option<Vec<u8>>);
        let tx = db.begin().await.unwrap();
        tx.run(
            "CREATE TABLE kinds (t TEXT, i BIGINT, b BOOLEAN, y BYTEA)",
            values![],
        ).await.unwrap();
        let text = "a\u{301} 袖口 $1 'quoted' \\".to_owned();
        let full: Found = (Some(text), Some(-(1 << 53)), Some(true), Some(vec![0, 39, 255]));
        let none: Found = (None, None, None, None);
        for (t, i, b, y) in [&full, &none] {
            tx.run("INSERT INTO kinds VALUES ($1, $2, $3, $4)", values![t, i, b, y]).await.unwrap();
        }
        let found: Vec<Found> = tx
            .all("SELECT t, i, b, y FROM kinds ORDER BY i", values![])
            .await
            .unwrap();
        // The two put NULL at different ends.
        assert_eq!(found.len(), 2);
        assert!(found.contains(&full) && found.contains(&none));
        // A NULL that nothing but its own type explains.
        let found: Found = tx
            .one(
                "SELECT COALESCE($1, $1), COALESCE($2, $2), COALESCE($3, $3), COALESCE($4, $4)",
                values![none.0, none.1, none.2, none.3],
            )
            .await
            .unwrap();
        assert_eq!(found, none);
    }
}

on_both! {
    async fn ids_digests_and_times_are_arguments_and_fields(db) {
        #[derive(sqlx::FromRow, Debug, PartialEq)]
        struct Found {
            id: OrgId,
            org: Option<PersonId>,
            digest: Digest,
            at: Time,
            #[sqlx(try_from = "i64")]
            number: u32,
        }
        let sent = Found {
            id: OrgId::new("o1"),
            org: None,
            digest: Digest::of(b"abc"),
            at: Time::try_from(NOW.to_owned()).unwrap(),
            number: u32::MAX,
        };
        let found: Found = db
            .one(
                "SELECT $1 AS id, $2 AS org, $3 AS digest, $4 AS at, $5 AS number",
                values![sent.id, sent.org, sent.digest, sent.at, sent.number],
            )
            .await
            .unwrap();
        assert_eq!(found, sent);
    }
}

on_both! {
    async fn an_act_is_seen_when_it_is_committed_and_not_before(db) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        assert_eq!(organisations(&tx).await, 1, "it sees its own writes");
        assert_eq!(organisations(&db).await, 0, "readers neither wait nor see them");
        tx.commit().await.unwrap();
        assert_eq!(organisations(&db).await, 1);
    }
}

on_both! {
    async fn an_act_that_is_dropped_never_happened(db) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        drop(tx);

        let tx = db.begin().await.unwrap();
        assert_eq!(organisations(&tx).await, 0);
        organisation(&tx, "o1").await.unwrap();
        tx.commit().await.unwrap();
        assert_eq!(organisations(&db).await, 1);
    }
}

on_both! {
    async fn an_act_of_which_a_part_failed_cannot_be_committed(db) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        tx.run("INSERT INTO no_such_table VALUES (1)", values![]).await.unwrap_err();
        assert!(matches!(tx.commit().await, Err(StoreError::Failed)));

        let tx = db.begin().await.unwrap();
        organisation(&tx, "o2").await.unwrap();
        tx.all::<(String,)>("SELECT no_such_column FROM style", values![]).await.unwrap_err();
        assert!(matches!(tx.commit().await, Err(StoreError::Failed)));

        assert_eq!(organisations(&db).await, 0);
    }
}

on_both! {
    async fn what_an_act_touched_is_counted(db) {
        let tx = db.begin().await.unwrap();
        for id in ["o1", "o2", "o3"] {
            organisation(&tx, id).await.unwrap();
        }
        const RENAME: &str = "UPDATE organisation SET name = $2 WHERE id >= $1";
        assert_eq!(tx.run(RENAME, values!["o2", "Sao Mai"]).await.unwrap(), 2);
        assert_eq!(tx.run(RENAME, values!["o9", "Sao Mai"]).await.unwrap(), 0);
    }
}

on_both! {
    async fn a_second_one_of_its_kind_is_told_from_other_refusals(db) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        let twice = organisation(&tx, "o1").await;
        assert!(matches!(twice, Err(StoreError::Unique(_))), "{twice:?}");
        drop(tx);

        let tx = db.begin().await.unwrap();
        let homeless = tx
            .run(
                "INSERT INTO person (id, org, role, language, made_at)
                 VALUES ('p1', 'nowhere', 'owner', 'en', $1)",
                values![NOW],
            )
            .await;
        assert!(matches!(homeless, Err(StoreError::Sql(_))), "{homeless:?}");
    }
}

on_both! {
    async fn a_row_that_is_not_there_is_missing(db) {
        const SQL: &str = "SELECT id FROM style WHERE id = $1";
        assert!(db.maybe::<(String,)>(SQL, values!["s1"]).await.unwrap().is_none());
        assert!(db.all::<(String,)>(SQL, values!["s1"]).await.unwrap().is_empty());
        let one = db.one::<(String,)>(SQL, values!["s1"]).await;
        assert!(matches!(one, Err(StoreError::Missing)), "{one:?}");
    }
}

on_both! {
    async fn a_row_that_makes_no_sense_names_its_place(db) {
        #[derive(sqlx::FromRow, Debug)]
        #[allow(dead_code)]
        struct Organisation {
            id: OrgId,
            since: Time,
        }
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        tx.run(
            "INSERT INTO organisation (id, kind, name, made_at) VALUES ($1, $2, $3, $4)",
            values!["o2", "factory", "Meghna", "yesterday"],
        ).await.unwrap();
        tx.commit().await.unwrap();

        let by_name = db
            .all::<Organisation>("SELECT made_at AS since, id FROM organisation", values![])
            .await
            .unwrap_err();
        let by_position = db
            .all::<(String, Time)>("SELECT id, made_at FROM organisation", values![])
            .await
            .unwrap_err();
        for error in [by_name, by_position] {
            assert_eq!(
                error.to_string(),
                "table organisation, column made_at, row o2: \
                 a time is written YYYY-MM-DDTHH:MM:SS.sssZ"
            );
            assert!(matches!(error, StoreError::Corrupt { .. }));
        }

        let computed = db
            .all::<(String, Time)>("SELECT id, lower(made_at) FROM organisation", values![])
            .await
            .unwrap_err();
        assert!(computed.to_string().starts_with("table (an expression), column lower"));

        let unasked = db.all::<Organisation>("SELECT id FROM organisation", values![]).await;
        assert!(matches!(unasked, Err(StoreError::Sql(_))), "{unasked:?}");
    }
}

/// Fifty at once, each reading and then writing what it read plus one: the case that a deferred
/// BEGIN loses to "database is locked" and an unlocked read to a lost update.
async fn count_up(writers: &[Db]) {
    let tx = writers[0].begin().await.unwrap();
    tx.run("CREATE TABLE tally (n BIGINT NOT NULL)", values![])
        .await
        .unwrap();
    tx.run("INSERT INTO tally VALUES (0)", values![])
        .await
        .unwrap();
    tx.commit().await.unwrap();

    let mut tasks = tokio::task::JoinSet::new();
    for writer in 0..50 {
        let db = writers[writer % writers.len()].clone();
        tasks.spawn(async move {
            let tx = db.begin().await?;
            let (n,): (i64,) = tx
                .one("UPDATE tally SET n = n + 1 RETURNING n", values![])
                .await?;
            organisation(&tx, &format!("o{n}")).await?;
            tx.commit().await
        });
    }
    for outcome in tasks.join_all().await {
        outcome.unwrap();
    }
    let (n,): (i64,) = writers[0]
        .one("SELECT n FROM tally", values![])
        .await
        .unwrap();
    assert_eq!((n, organisations(&writers[0]).await), (50, 50));
}

on_both! {
    async fn fifty_writers_at_once_all_succeed(db) {
        count_up(&[db]).await;
    }
}

on_both! {
    async fn fifty_writers_of_two_programs_all_succeed(db, address) {
        let other = Db::open(&address).await.unwrap();
        count_up(&[db, other.clone()]).await;
        other.close().await;
    }
}

on_both! {
    async fn a_second_start_finds_everything_again(db, address) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        tx.commit().await.unwrap();
        db.close().await;
        assert!(matches!(db.begin().await, Err(StoreError::Unavailable(_))));

        let again = Db::open(&address).await.unwrap();
        assert_eq!(organisations(&again).await, 1);
        again.close().await;
    }
}

on_both! {
    async fn several_programs_may_start_at_once(db, address) {
        let mut starts = tokio::task::JoinSet::new();
        for _ in 0..6 {
            let address = address.clone();
            starts.spawn(async move { Db::open(&address).await });
        }
        for start in starts.join_all().await {
            start.unwrap().close().await;
        }
        assert_eq!(organisations(&db).await, 0);
    }
}

on_both! {
    async fn readers_go_on_while_an_act_is_open(db) {
        let tx = db.begin().await.unwrap();
        organisation(&tx, "o1").await.unwrap();
        let reads = async {
            for _ in 0..100 {
                assert_eq!(organisations(&db).await, 0);
            }
        };
        tokio::time::timeout(Duration::from_secs(5), reads).await.unwrap();
        tx.commit().await.unwrap();
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn reading_and_acting_go_on_when_postgres_hung_up() {
    on_postgres(async |db, address| {
        for _ in 0..2 {
            // Several connections are open, and idle.
            futures::future::join_all((0..20).map(|_| organisations(&db))).await;
            let mut other = PgConnection::connect(&address).await.unwrap();
            let hung_up = sqlx::query(
                "SELECT pg_terminate_backend(pid, 5000) FROM pg_stat_activity \
                 WHERE datname = current_database() AND pid <> pg_backend_pid()",
            );
            let hung_up = hung_up.fetch_all(&mut other).await.unwrap().len();
            assert!(hung_up > 1, "{hung_up}");
            for _ in 0..20 {
                assert_eq!(organisations(&db).await, 0);
            }
            let tx = db.begin().await.unwrap();
            assert_eq!(organisations(&tx).await, 0);
        }
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_reader_who_goes_away_leaves_the_others_their_turn() {
    on_sqlite(async |db, _| {
        for _ in 0..200 {
            tokio::select! {
                biased;
                () = tokio::task::yield_now() => {}
                _ = organisations(&db) => {}
            }
            let given_up = tokio::time::timeout(Duration::from_micros(20), organisations(&db));
            drop(given_up.await);
        }
        assert_eq!(organisations(&db).await, 0);
    })
    .await;
}

#[tokio::test]
async fn an_address_of_neither_kind_is_refused() {
    for address in [
        "",
        "fellseam.db",
        "sqlite:",
        "sqlite::memory:",
        "mysql://x/y",
    ] {
        let refused = Db::open(address).await.unwrap_err();
        assert!(matches!(refused, StoreError::Address), "{address}");
        assert!(refused.to_string().contains("write sqlite:PATH"));
    }
}

#[tokio::test]
async fn a_postgres_that_is_not_there_is_unavailable() {
    let nobody = Db::open("postgres://nobody@localhost/none?host=/nonexistent").await;
    assert!(
        matches!(nobody, Err(StoreError::Unavailable(_))),
        "{nobody:?}"
    );
}
