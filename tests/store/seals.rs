//! Sealing pieces of an approved round, and what the databases keep of it.

use std::collections::BTreeSet;
use std::path::Path;

use fellseam::access::{Denied, act};
use fellseam::exchange::Refused;
use fellseam::exchange::ledger::Act;
use fellseam::exchange::round::{Kind, Materials, Outcome};
use fellseam::exchange::{Side, signature::SubjectKind};
use fellseam::spec::{RoundId, SealId};
use fellseam::store::{Db, Read, Seal, Sign, StoreError, ThreadMove, What, values};
use sqlx::migrate::Migrator;
use sqlx::{ConnectOptions, Connection};
use sqlx_postgres::PgConnection;
use sqlx_sqlite::SqliteConnectOptions;

use crate::support::cast::*;
use crate::support::database::{on_both, on_postgres, on_sqlite};
use crate::support::past::Past;

async fn sealed(cast: &Cast) -> (RoundId, Seal) {
    let round = cast.ready_to_seal().await;
    cast.seals(&round, &[("HT-17", "Shelf 3")]).await.unwrap();
    let seal = cast
        .brand
        .store
        .seals(&cast.brand.reads().await)
        .await
        .unwrap();
    (round, seal.into_iter().next().unwrap())
}

async fn signs(who: &Party, seal: &Seal) -> Result<(), StoreError> {
    let shown = seal.record().digest().unwrap();
    who.signs(Sign::Seal(&seal.id), None, &shown)
        .await
        .map(|_| ())
}

on_both! {
    async fn an_owner_seals_and_both_sides_sign(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        let pass = sao_mai.asks_concession("point-a", "From stock").await.unwrap();
        brand.moves(&pass, ThreadMove::Grant).await.unwrap();
        let (round, seal) = sealed(&cast).await;
        assert_eq!((&seal.round, seal.kind, seal.revision), (&round, Kind::PreProduction, 1));
        let piece = &seal.pieces[0];
        assert_eq!((&*piece.tag, piece.keeper, piece.place.as_deref()), ("HT-17", Side::Factory, Some("Shelf 3")));
        assert_eq!(seal.concessions, [pass]);
        let approved: BTreeSet<_> = brand.submissions().await.into_iter().map(|it| it.id).collect();
        assert_eq!(seal.approvals.iter().cloned().collect::<BTreeSet<_>>(), approved);
        assert_eq!(refusal(cast.seals(&round, &[("HT-18", "Shelf 3")]).await), Refused::AlreadySealed);
        assert!(store.seals(&meghna.reads().await).await.unwrap().is_empty(), "not theirs");

        signs(sao_mai, &seal).await.unwrap();
        assert_eq!(refusal(signs(sao_mai, &seal).await), Refused::AlreadySigned);
        signs(brand, &seal).await.unwrap();
        let given = store.signatures(&brand.reads().await).await.unwrap();
        assert!(given.iter().all(|it| it.subject == SubjectKind::Seal && it.subject_id == seal.id.as_str()));
        let digest = seal.record().digest().unwrap();
        assert_eq!(given.iter().map(|it| (it.side, &it.digest)).collect::<Vec<_>>(),
            [(Side::Factory, &digest), (Side::Brand, &digest)]);
        let acts: Vec<Act> = sao_mai.ledger().await.into_iter().map(|it| it.entry.act).collect();
        assert_eq!(acts[acts.len() - 3..], [Act::Seal, Act::Sign, Act::Sign]);
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn nobody_but_an_owner_seals(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let permit = brand.lead.may_on::<act::Seal>(&brand.style).await;
        assert!(matches!(permit, Err(Denied::NotYours { .. })));
        let permit = sao_mai.lead.may_on::<act::Seal>(&brand.style).await;
        assert!(matches!(permit, Err(Denied::Hidden)));
        let round = cast.ready_to_seal().await;
        let nothing = cast.seals(&round, &[]).await;
        assert_eq!(refusal(nothing), Refused::SealUnsaid);
        assert!(is_missing(&cast.seals(&RoundId::new("nowhere"), &[]).await));
        // Nobody would be there to sign it for the factory.
        brand.ends_share_with(sao_mai).await.unwrap();
        let ended = cast.seals(&round, &[("HT-17", "Shelf 3")]).await;
        assert_eq!(refusal(ended), Refused::NotShared);
    }
}

on_both! {
    async fn an_unsigned_seal_waits_for_each_side(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        let (_, seal) = sealed(&cast).await;
        let waits = async |who: &Party| -> Vec<SealId> {
            let needs = who.needs().await.into_iter();
            let seals = needs.filter_map(|need| match need.what {
                What::Seal { id, .. } => Some(id),
                _ => None,
            });
            seals.collect()
        };
        let own = std::slice::from_ref(&seal.id);
        assert_eq!(waits(sao_mai).await, own);
        assert_eq!(waits(brand).await, own);
        signs(sao_mai, &seal).await.unwrap();
        assert!(waits(sao_mai).await.is_empty());
        signs(brand, &seal).await.unwrap();
        assert!(waits(brand).await.is_empty());
    }
}

on_both! {
    async fn who_is_erased_leaves_a_seal_that_holds(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        let (_, seal) = sealed(&cast).await;
        let digest = seal.record().digest().unwrap();
        store.erase(&brand.owner.actor.person).await.unwrap();
        let after = store.seals(&brand.reads().await).await.unwrap().remove(0);
        assert_eq!((after.person.as_ref(), after.pieces[0].place.as_ref()), (None, None));
        assert_eq!(after.record().digest().unwrap(), digest, "what is signed holds");
        assert_eq!(store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn whatever_of_a_seal_was_changed_past_the_program_is_named(db, address) {
        let cast = Cast::with_revision(db).await;
        let (_, seal) = sealed(&cast).await;
        let mut past = Past::the_guards(&address).await;
        for (change, noun) in [
            ("UPDATE seal SET approvals = '[]'", "seal "),
            ("UPDATE seal SET round_record = round_record || '0'", "seal "),
            ("UPDATE seal_piece SET tag = 'HT-71'", "pieces of seal "),
            ("UPDATE seal_piece SET keeper = 'brand'", "pieces of seal "),
            ("UPDATE private_text SET content = 'Shelf 4' WHERE content = 'Shelf 3'", "pieces of seal "),
        ] {
            let before = cast.store.audit().await.unwrap().faults.len();
            assert!(past.run(change).await > 0, "{change}");
            let faults = cast.store.audit().await.unwrap().faults;
            assert!(faults.iter().any(|it| it.what.starts_with(noun)), "{change}: {faults:#?}");
            assert!(faults.len() >= before, "{change}");
        }
        past.run("DELETE FROM seal_piece").await;
        past.run("DELETE FROM seal").await;
        let faults = cast.store.audit().await.unwrap().faults;
        let gone = format!("seal {}", seal.id);
        assert!(faults.iter().any(|it| it.what == gone && it.why.contains("gone")), "{faults:#?}");
    }
}

/// The migrations before seals, as a database of that time has them.
async fn before_seals(folder: &Path) -> Migrator {
    for file in std::fs::read_dir("migrations").unwrap() {
        let file = file.unwrap();
        let name = file.file_name().into_string().unwrap();
        if *name < *"0014" {
            std::fs::copy(file.path(), folder.join(&name)).unwrap();
        }
    }
    Migrator::new(folder).await.unwrap()
}

/// A signature of that time, and what it hangs on.
const SIGNED: &str = "
    INSERT INTO organisation (id, kind, name, made_at) VALUES ('o', 'factory', 'Sao Mai', 't');
    INSERT INTO person (id, org, role, language, made_at) VALUES ('p', 'o', 'merchandiser', 'vi', 't');
    INSERT INTO private_text (id, person, kind, salt, content) VALUES ('n', 'p', 'signed_name', 's', 'Linh');
    INSERT INTO style (id, number, name, made_at, made_by) VALUES ('s', 'HT-204', 'Shoal', 't', 'p');
    INSERT INTO signature (id, style, subject, subject_id, org, side, person, role, at, local_time,
        digest, language, screen, statement, name, name_hash, chain)
    VALUES ('g', 's', 'round', 'r', 'o', 'factory', 'p', 'merchandiser', 'at', 'local', 'digest',
        'vi', 'screen', 'statement', 'n', 'hash', 'chain');
";

/// After the program was started on it: the signature as it was, guarded, and a seal beside it.
async fn looks_again(address: &str) {
    let db = Db::open(address).await.unwrap();
    let rows: Vec<(String, String, String, String, String)> = db
        .all(
            "SELECT id, subject || ' ' || subject_id, org || ' ' || side || ' ' || person || ' ' \
             || role || ' ' || at || ' ' || local_time, digest || ' ' || language || ' ' || screen \
             || ' ' || statement, name || ' ' || name_hash || ' ' || chain FROM signature",
            values![],
        )
        .await
        .unwrap();
    let texts = [
        "g",
        "round r",
        "o factory p merchandiser at local",
        "digest vi screen statement",
        "n hash chain",
    ];
    let [a, b, c, d, e] = texts.map(str::to_owned);
    assert_eq!(rows, [(a, b, c, d, e)]);
    let copy = "INSERT INTO signature SELECT 'h', style, 'seal', subject_id, org, side, person, \
                role, at, local_time, digest, language, screen, statement, name, name_hash, chain \
                FROM signature";
    let tx = db.begin().await.unwrap();
    assert_eq!(
        tx.run(copy, values![]).await.unwrap(),
        1,
        "a seal is signed too"
    );
    tx.commit().await.unwrap();
    for change in ["UPDATE signature SET side = side", "DELETE FROM signature"] {
        let tx = db.begin().await.unwrap();
        let refused = tx.run(change, values![]).await.unwrap_err();
        assert!(refused.to_string().contains("only grows"), "{refused}");
    }
    let tx = db.begin().await.unwrap();
    let twice = tx.run(copy.replace("'h'", "'i'").leak(), values![]).await;
    assert!(matches!(twice, Err(StoreError::Unique(_))), "{twice:?}");
    // The writer comes back before the database is closed.
    drop(tx);
    db.close().await;
}

#[tokio::test]
async fn sqlite_keeps_the_signatures_from_before() {
    on_sqlite(async |_, address| {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("before.db");
        let old = before_seals(folder.path()).await;
        let options = SqliteConnectOptions::new().filename(&path);
        let options = options.create_if_missing(true).foreign_keys(false);
        let mut connection = options.connect().await.unwrap();
        old.run_direct(None, &mut connection, false).await.unwrap();
        sqlx::raw_sql(SIGNED)
            .execute(&mut connection)
            .await
            .unwrap();
        connection.close().await.unwrap();
        assert_ne!(address, format!("sqlite:{}", path.display()));
        looks_again(&format!("sqlite:{}", path.display())).await;
    })
    .await;
}

#[tokio::test]
async fn postgres_keeps_the_signatures_from_before() {
    on_postgres(async |_, address| {
        let folder = tempfile::tempdir().unwrap();
        let old = before_seals(folder.path()).await;
        let mut connection = PgConnection::connect(&address).await.unwrap();
        let empty = "DROP SCHEMA public CASCADE; CREATE SCHEMA public";
        sqlx::raw_sql(empty).execute(&mut connection).await.unwrap();
        old.run_direct(None, &mut connection, false).await.unwrap();
        sqlx::raw_sql(SIGNED)
            .execute(&mut connection)
            .await
            .unwrap();
        connection.close().await.unwrap();
        looks_again(&address).await;
    })
    .await;
}

on_both! {
    async fn a_piece_whose_critical_points_nobody_measured_is_not_sealed(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        cast.ready_to_seal().await;
        let round = brand.requests_a(Kind::PreProduction, sao_mai, &["size-m"]).await.unwrap();
        sao_mai.starts(&round).await.unwrap();
        sao_mai.measures(&round, &[(1, "point-c", "28 1/2")]).await.unwrap();
        sao_mai.dispatches_as(&round, Materials::Actual).await.unwrap();
        brand.receives(&round).await.unwrap();
        brand.finishes_measuring(&round).await.unwrap();
        brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        let owner = brand.owner.on(&brand.style).await;
        let blocks = store.to_seal(&owner, &round).await.unwrap().blocks;
        let points = vec![item("point-a")];
        assert_eq!(blocks, [Refused::PieceCriticalOut { points }]);
    }
}
