//! The demo as somebody starts it from a shell: the real binary, its words, its pages, its end.

mod program;

use fellseam::spec::Digest;
use reqwest::StatusCode;
use sqlx::Connection;

use program::{Demo, audit, start_refused};

const STYLES: [&str; 4] = [
    "Shoal half-zip",
    "Ridge trail shorts",
    "Puddle rain jacket",
    "Dune trail shorts",
];

#[tokio::test]
async fn it_prints_where_it_is_and_how_to_come_in() {
    let folder = tempfile::tempdir().unwrap();
    let demo = Demo::start(folder.path(), &[]).await;
    let words = demo.words();
    assert!(
        words.lines().all(|line| line.chars().count() < 80),
        "{words}"
    );
    for who in [
        "Designer, Harrow & Tide",
        "Merchandiser, Sao Mai Garment",
        "Sample room, Sao Mai Garment",
        "Merchandiser, Meghna Knit Works",
    ] {
        demo.link(who);
    }
    let answer = reqwest::get(format!("{}/healthz", demo.url()))
        .await
        .unwrap();
    assert_eq!(answer.status(), StatusCode::OK);
    assert_eq!(answer.text().await.unwrap(), "ok\n");
    demo.stop().await;
}

#[tokio::test]
async fn looking_at_a_link_does_not_spend_it_and_using_it_does() {
    let folder = tempfile::tempdir().unwrap();
    let demo = Demo::start(folder.path(), &[]).await;
    let link = demo.link("Merchandiser, Meghna Knit Works");
    for _ in 0..3 {
        let page = reqwest::get(&link).await.unwrap();
        assert_eq!(page.status(), StatusCode::OK);
        assert!(page.text().await.unwrap().contains("Rafiq Islam"));
    }
    let rafiq = demo.comes_in(&link, "Rafiq Islam").await;
    let page = rafiq.get(demo.url()).send().await.unwrap();
    let page = page.text().await.unwrap();
    // The shorts wait to be acknowledged; those of last year are sealed, and nothing else is
    // Meghna's business.
    assert!(page.contains("Ridge trail shorts"), "{page}");
    assert!(!page.contains("half-zip"), "{page}");
    let again = reqwest::get(&link).await.unwrap();
    assert_eq!(again.status(), StatusCode::GONE);
    demo.stop().await;
}

#[tokio::test]
async fn a_second_start_finds_everything_again_and_reset_begins_anew() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("demo");
    let demo = Demo::start(&path, &[]).await;
    let first = demo.link("Designer");
    let styles = demo.styles().await;
    assert_eq!(styles.len(), STYLES.len());
    for name in STYLES {
        assert!(styles.iter().any(|style| style.contains(name)), "{name}");
    }
    assert!(
        start_refused(&path, &[])
            .await
            .contains("another demo is running")
    );
    demo.stop().await;

    let demo = Demo::start(&path, &[]).await;
    assert_ne!(demo.link("Designer"), first);
    assert_eq!(demo.styles().await, styles);
    demo.stop().await;

    let mine = path.join("mine.txt");
    std::fs::write(&mine, "kept").unwrap();
    let demo = Demo::start(&path, &["--reset"]).await;
    let anew = demo.styles().await;
    assert_eq!(anew.len(), STYLES.len());
    assert!(anew.iter().all(|style| !styles.contains(style)), "{anew:?}");
    assert_eq!(std::fs::read_to_string(mine).unwrap(), "kept");
    demo.stop().await;
    assert!(audit(&path).await.holds());
}

#[tokio::test]
async fn a_start_that_was_killed_half_way_is_begun_anew() {
    let folder = tempfile::tempdir().unwrap();
    // As after a kill: the folder is the demo's, and what lies in it is not whole.
    std::fs::write(folder.path().join("fellseam-demo.txt"), "").unwrap();
    std::fs::write(folder.path().join("fellseam.db"), "half of something").unwrap();
    let demo = Demo::start(folder.path(), &[]).await;
    assert_eq!(demo.styles().await.len(), STYLES.len());
    demo.stop().await;
}

#[tokio::test]
async fn a_folder_that_the_demo_did_not_make_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let database = folder.path().join("fellseam.db");
    std::fs::write(&database, "somebody's").unwrap();
    for arguments in [&[][..], &["--reset"][..]] {
        let words = start_refused(folder.path(), arguments).await;
        assert!(words.contains("the demo did not make it"), "{words}");
    }
    assert_eq!(std::fs::read_to_string(database).unwrap(), "somebody's");
}

#[tokio::test]
async fn the_audit_holds_and_names_what_somebody_changed() {
    let folder = tempfile::tempdir().unwrap();
    let demo = Demo::start(folder.path(), &[]).await;
    demo.stop().await;
    let sound = audit(folder.path()).await;
    assert!(sound.holds(), "{}", sound.words);
    assert!(sound.words.starts_with("4 styles, "), "{}", sound.words);

    // One byte of a stored file.
    let file = some_file(&folder.path().join("files"));
    let bytes = std::fs::read(&file).unwrap();
    let digest = Digest::of(&bytes);
    let mut other = bytes.clone();
    let middle = other.len() / 2;
    other[middle] ^= 1;
    std::fs::write(&file, other).unwrap();
    let found = audit(folder.path()).await;
    assert!(
        found.names(&format!("file {digest}: its bytes")),
        "{}",
        found.words
    );
    std::fs::remove_file(&file).unwrap();
    let found = audit(folder.path()).await;
    assert!(
        found.names(&format!("file {digest}: it is missing")),
        "{}",
        found.words
    );
    std::fs::write(&file, bytes).unwrap();
    assert!(audit(folder.path()).await.holds());

    // One byte of a revision, by somebody who takes the guard away first.
    let database = folder.path().join("fellseam.db");
    let address = format!("sqlite:{}", database.display());
    let mut connection = sqlx_sqlite::SqliteConnection::connect(&address)
        .await
        .unwrap();
    let (trigger,): (String,) = sqlx::query_as(
        "SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'revision' \
         AND sql LIKE '%UPDATE%'",
    )
    .fetch_one(&mut connection)
    .await
    .unwrap();
    let drop = sqlx::AssertSqlSafe(format!("DROP TRIGGER \"{trigger}\""));
    sqlx::query(drop).execute(&mut connection).await.unwrap();
    let (style, number, mut bytes): (String, i64, Vec<u8>) =
        sqlx::query_as("SELECT style, number, bytes FROM revision ORDER BY number DESC LIMIT 1")
            .fetch_one(&mut connection)
            .await
            .unwrap();
    let middle = bytes.len() / 2;
    bytes[middle] ^= 1;
    sqlx::query("UPDATE revision SET bytes = $3 WHERE style = $1 AND number = $2")
        .bind(&style)
        .bind(number)
        .bind(bytes)
        .execute(&mut connection)
        .await
        .unwrap();
    connection.close().await.unwrap();
    let found = audit(folder.path()).await;
    let fault = format!("style {style}: revision {number}: its bytes");
    assert!(found.names(&fault), "{}", found.words);
}

/// Any one of the stored files.
fn some_file(files: &std::path::Path) -> std::path::PathBuf {
    let folders = std::fs::read_dir(files)
        .unwrap()
        .map(|entry| entry.unwrap());
    let folders = folders.filter(|entry| entry.file_name() != "incoming");
    let mut inside = folders.flat_map(|entry| std::fs::read_dir(entry.path()).unwrap());
    inside.next().expect("a stored file").unwrap().path()
}
