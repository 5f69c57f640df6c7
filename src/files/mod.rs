//! Originals and derived pictures, kept by content: a file's name is the SHA-256 of its bytes, so
//! it never changes under a name, the same bytes are kept once, and an audit needs no other list.
//! Sees nothing of ours but ids, and the cells of a sheet.
//!
//! Layout: `ab/cdef...` (62 further digits) under the folder, and `incoming/` for what is being
//! written. What is acknowledged survives a power cut: bytes, then name, are forced to the disk
//! before [`Files::put`] returns.

pub mod media;
mod paper;
pub mod render;
pub mod sheet;

use std::fs;
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

pub use media::Media;
pub use render::{Kind, Limits, Picture, RenderError, Rendered, Renderer, Warning};

use crate::spec::id::Digest;

const INCOMING: &str = "incoming";

/// What a crash left in `incoming/` is removed at the next start once it is this old; younger
/// files may be another instance's on a shared folder.
const LEFT_OVER: Duration = Duration::from_secs(60 * 60);

/// The folder of files. Cheap to clone.
#[derive(Debug, Clone)]
pub struct Files {
    root: Arc<Path>,
}

/// Whether a stored file still is what its name says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Verdict {
    Sound,
    Missing,
    /// The bytes have another digest: damaged, or replaced.
    Altered {
        found: Digest,
    },
}

/// All that lies in the folder, sorted: for the audit.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Contents {
    /// Files by name. Their bytes have not been looked at: see [`Files::verify`].
    pub files: Vec<Digest>,
    /// What this room did not put there, or an unfinished write.
    pub strays: Vec<PathBuf>,
}

impl Files {
    /// Opens the folder, making it if it is missing (readable by its owner alone, since
    /// photographs lie there). Fails now, rather than at the first upload, when it is not
    /// writable.
    pub async fn open(root: impl Into<PathBuf>) -> io::Result<Self> {
        let root: Arc<Path> = root.into().into();
        let files = Self { root };
        let root = files.root.clone();
        blocking(move || prepare(&root)).await?;
        Ok(files)
    }

    /// Keeps the bytes; when this returns they are on the disk. Bytes that are there already are
    /// not written again, unless the file was damaged: then this heals it.
    pub async fn put(&self, bytes: impl AsRef<[u8]> + Send + 'static) -> io::Result<Digest> {
        let root = self.root.clone();
        blocking(move || keep(&root, bytes.as_ref())).await
    }

    /// The whole file. `NotFound` when it is not there.
    pub async fn get(&self, digest: &Digest) -> io::Result<Vec<u8>> {
        tokio::fs::read(self.path(digest)).await
    }

    /// The file for streaming, and its length in bytes. `NotFound` when it is not there.
    pub async fn stream(&self, digest: &Digest) -> io::Result<(tokio::fs::File, u64)> {
        let file = tokio::fs::File::open(self.path(digest)).await?;
        let length = file.metadata().await?.len();
        Ok((file, length))
    }

    /// Where the file lies, or would lie.
    pub fn path(&self, digest: &Digest) -> PathBuf {
        place(&self.root, digest)
    }

    /// Removes the file for good: for erasing personal data. Says whether it was there. Whoever
    /// calls this knows that nothing names the file any more.
    pub async fn remove(&self, digest: &Digest) -> io::Result<bool> {
        let path = self.path(digest);
        blocking(move || match fs::remove_file(&path) {
            Ok(()) => sync_folder(parent(&path)).map(|()| true),
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
            Err(error) => Err(error),
        })
        .await
    }

    /// Reads the file and compares its bytes with its name.
    pub async fn verify(&self, digest: &Digest) -> io::Result<Verdict> {
        let path = self.path(digest);
        let digest = digest.clone();
        blocking(move || match digest_of_file(&path) {
            Ok(found) if found == digest => Ok(Verdict::Sound),
            Ok(found) => Ok(Verdict::Altered { found }),
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(Verdict::Missing),
            Err(error) => Err(error),
        })
        .await
    }

    /// Everything in the folder.
    pub async fn all(&self) -> io::Result<Contents> {
        let root = self.root.clone();
        blocking(move || list(&root)).await
    }
}

/// One hop to a thread that may wait for the disk, instead of one for every call of `tokio::fs`.
async fn blocking<T: Send + 'static>(
    work: impl FnOnce() -> io::Result<T> + Send + 'static,
) -> io::Result<T> {
    tokio::task::spawn_blocking(work)
        .await
        .map_err(io::Error::other)?
}

fn place(root: &Path, digest: &Digest) -> PathBuf {
    let (folder, name) = digest.as_str().split_at(2);
    root.join(folder).join(name)
}

fn parent(path: &Path) -> &Path {
    path.parent().expect("a stored file lies in a folder")
}

fn prepare(root: &Path) -> io::Result<()> {
    use std::os::unix::fs::DirBuilderExt;

    let mut builder = fs::DirBuilder::new();
    builder.recursive(true).mode(0o700);
    // All folders at once: a later `put` then has to force one folder to the disk, not two.
    for first in 0..=u8::MAX {
        builder.create(root.join(format!("{first:02x}")))?;
    }
    let incoming = root.join(INCOMING);
    builder.create(&incoming)?;
    sync_folder(root)?;

    // The probe shows that the folder is writable, and its time is that of the disk's own clock,
    // against which left-overs are judged.
    let (probe, file) = create_new(&incoming)?;
    let now = file.metadata()?.modified()?;
    for entry in fs::read_dir(&incoming)? {
        let entry = entry?;
        // Another instance may rename or remove its file between the two lines.
        let Ok(written) = entry.metadata().and_then(|meta| meta.modified()) else {
            continue;
        };
        if now.duration_since(written).is_ok_and(|age| age > LEFT_OVER) {
            fs::remove_file(entry.path())?;
        }
    }
    fs::remove_file(probe)
}

fn keep(root: &Path, bytes: &[u8]) -> io::Result<Digest> {
    let digest = Digest::of(bytes);
    let target = place(root, &digest);
    let kept = digest_of_file(&target).is_ok_and(|found| found == digest);
    if !kept {
        let (draft, mut file) = create_new(&root.join(INCOMING))?;
        let written = file
            .write_all(bytes)
            .and_then(|()| file.sync_all())
            .and_then(|()| fs::rename(&draft, &target));
        if let Err(error) = written {
            // The disk may be full: do not leave it fuller.
            let _ = fs::remove_file(&draft);
            return Err(error);
        }
    }
    // Also when it was there: whoever put it may not have come this far yet.
    sync_folder(parent(&target))?;
    Ok(digest)
}

/// A file that did not exist before, under a name without meaning. The process id is no promise
/// (in containers it is always the same), so a taken name only means the next one.
fn create_new(folder: &Path) -> io::Result<(PathBuf, fs::File)> {
    static NEXT: AtomicU64 = AtomicU64::new(0);
    loop {
        let number = NEXT.fetch_add(1, Ordering::Relaxed);
        let path = folder.join(format!("{}-{number}", std::process::id()));
        match fs::File::create_new(&path) {
            Ok(file) => return Ok((path, file)),
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => {}
            Err(error) => return Err(error),
        }
    }
}

fn sync_folder(folder: &Path) -> io::Result<()> {
    fs::File::open(folder)?.sync_all()
}

fn digest_of_file(path: &Path) -> io::Result<Digest> {
    use sha2::Digest as _;

    let mut file = fs::File::open(path)?;
    let mut hash = sha2::Sha256::new();
    let mut part = vec![0; 64 * 1024];
    loop {
        match file.read(&mut part)? {
            0 => break,
            length => hash.update(&part[..length]),
        }
    }
    let hex: String = hash
        .finalize()
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    Ok(Digest::try_from(hex).expect("32 bytes are 64 lower-case digits"))
}

fn list(root: &Path) -> io::Result<Contents> {
    let mut contents = Contents::default();
    for folder in fs::read_dir(root)? {
        let folder = folder?;
        if !folder.file_type()?.is_dir() {
            contents.strays.push(folder.path());
            continue;
        }
        for file in fs::read_dir(folder.path())? {
            let file = file?;
            let name = [folder.file_name(), file.file_name()].map(|part| part.into_string());
            let digest = match name {
                [Ok(first), Ok(rest)] if first.len() == 2 => Digest::try_from(first + &rest).ok(),
                _ => None,
            };
            match digest {
                Some(digest) if file.file_type()?.is_file() => contents.files.push(digest),
                _ => contents.strays.push(file.path()),
            }
        }
    }
    contents.files.sort();
    contents.strays.sort();
    Ok(contents)
}
