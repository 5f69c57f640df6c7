//! The folder of files: what is put there is there.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::PathBuf;
use std::time::Duration;

use fellseam::files::{Files, Verdict};
use fellseam::spec::id::Digest;
use tokio::io::AsyncReadExt;

async fn empty() -> (tempfile::TempDir, Files) {
    let folder = tempfile::tempdir().unwrap();
    let files = Files::open(folder.path().join("files")).await.unwrap();
    (folder, files)
}

#[tokio::test]
async fn what_is_put_is_found_again() {
    let (folder, files) = empty().await;
    let digest = files.put(b"abc".to_vec()).await.unwrap();
    // FIPS 180-4's example.
    assert_eq!(
        digest.as_str(),
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    );
    let path = folder
        .path()
        .join("files/ba/7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assert_eq!(files.path(&digest), path);
    assert_eq!(fs::read(&path).unwrap(), b"abc");

    // Also after a new start.
    let files = Files::open(folder.path().join("files")).await.unwrap();
    assert_eq!(files.get(&digest).await.unwrap(), b"abc");
    let (mut stream, length) = files.stream(&digest).await.unwrap();
    let mut bytes = Vec::new();
    stream.read_to_end(&mut bytes).await.unwrap();
    assert_eq!((bytes.as_slice(), length), (&b"abc"[..], 3));
    assert_eq!(files.verify(&digest).await.unwrap(), Verdict::Sound);

    let nothing = files.put(Vec::new()).await.unwrap();
    assert_eq!(files.get(&nothing).await.unwrap(), b"");
    let contents = files.all().await.unwrap();
    assert_eq!(contents.files, [digest, nothing]);
    assert_eq!(contents.strays, Vec::<PathBuf>::new());
}

#[tokio::test]
async fn what_is_not_there_is_said_so() {
    let (_folder, files) = empty().await;
    let absent = Digest::of(b"absent");
    let missing = std::io::ErrorKind::NotFound;
    assert_eq!(files.get(&absent).await.unwrap_err().kind(), missing);
    assert_eq!(files.stream(&absent).await.unwrap_err().kind(), missing);
    assert_eq!(files.verify(&absent).await.unwrap(), Verdict::Missing);
    assert!(!files.remove(&absent).await.unwrap());

    let digest = files.put("here").await.unwrap();
    assert!(files.remove(&digest).await.unwrap());
    assert_eq!(files.verify(&digest).await.unwrap(), Verdict::Missing);
    assert_eq!(files.all().await.unwrap(), Default::default());
}

#[tokio::test(flavor = "multi_thread", worker_threads = 4)]
async fn many_put_the_same_at_once() {
    let (_folder, files) = empty().await;
    let content = vec![7_u8; 300_000];
    let jobs: Vec<_> = (0..50)
        .map(|_| {
            let (files, content) = (files.clone(), content.clone());
            tokio::spawn(async move { files.put(content).await.unwrap() })
        })
        .collect();
    for job in jobs {
        assert_eq!(job.await.unwrap(), Digest::of(&content));
    }
    let contents = files.all().await.unwrap();
    assert_eq!(contents.files, [Digest::of(&content)]);
    assert_eq!(contents.strays, Vec::<PathBuf>::new());
    let verdict = files.verify(&Digest::of(&content)).await.unwrap();
    assert_eq!(verdict, Verdict::Sound);
}

#[tokio::test]
async fn the_same_content_is_written_once_and_damage_is_found_and_healed() {
    use std::os::unix::fs::MetadataExt;
    let (_folder, files) = empty().await;
    let digest = files.put("original").await.unwrap();
    let inode = fs::metadata(files.path(&digest)).unwrap().ino();
    files.put("original").await.unwrap();
    assert_eq!(fs::metadata(files.path(&digest)).unwrap().ino(), inode);

    fs::write(files.path(&digest), "0riginal").unwrap();
    let found = Digest::of(b"0riginal");
    let verdict = files.verify(&digest).await.unwrap();
    assert_eq!(verdict, Verdict::Altered { found });
    files.put("original").await.unwrap();
    assert_eq!(files.verify(&digest).await.unwrap(), Verdict::Sound);
}

#[tokio::test]
async fn strangers_and_left_overs_are_seen() {
    let (folder, files) = empty().await;
    let root = folder.path().join("files");
    let digest = files.put("ours").await.unwrap();
    let strangers = [
        root.join("ab/not-a-digest"),
        root.join("incoming/fresh"),
        root.join("note.txt"),
    ];
    for stranger in &strangers {
        fs::write(stranger, "x").unwrap();
    }
    // Begun long ago: its writer is gone.
    let old = root.join("incoming/old");
    fs::write(&old, "half of a photogr").unwrap();
    let file = fs::File::options().write(true).open(&old).unwrap();
    let now = file.metadata().unwrap().modified().unwrap();
    file.set_modified(now - Duration::from_secs(2 * 60 * 60))
        .unwrap();

    let files = Files::open(&root).await.unwrap();
    let contents = files.all().await.unwrap();
    assert_eq!(contents.files, [digest]);
    assert_eq!(contents.strays, strangers);
}

#[tokio::test]
async fn the_folder_is_private_and_must_be_one() {
    let (folder, _files) = empty().await;
    let root = folder.path().join("files");
    let mode = fs::metadata(&root).unwrap().permissions().mode();
    assert_eq!(mode & 0o777, 0o700);

    let taken = folder.path().join("taken");
    fs::write(&taken, "a file").unwrap();
    assert!(Files::open(taken).await.is_err());
}
