//! The folder of the demo. A file in it says that the demo made it, and whether it was filled to
//! the end; whoever runs the demo holds a lock on that file, so that no second one works there.

use std::fs::{self, File, TryLockError};
use std::io::{self, Read, Seek, Write};
use std::path::{Path, PathBuf};

use crate::spec::PersonId;

/// What the demo makes beside its mark.
const MADE: [&str; 5] = [
    "fellseam.db",
    "fellseam.db-wal",
    "fellseam.db-shm",
    "fellseam.db.lock",
    "files",
];
const MARK: &str = "fellseam-demo.txt";
const WORDS: &str = "Made by `fellseam demo`, which may empty this folder (--reset).\n";
const OWNER: &str = "owner ";

/// A folder that is the demo's own, while this lives.
#[derive(Debug)]
pub struct Folder {
    path: PathBuf,
    mark: File,
    owner: Option<PersonId>,
}

#[derive(Debug, thiserror::Error)]
pub enum NotOurs {
    #[error("{0} is not empty, and the demo did not make it: name another folder with --data")]
    Foreign(String),
    #[error("another demo is running in {0}")]
    Busy(String),
    #[error("{0}: {1}")]
    Unusable(String, io::Error),
}

impl Folder {
    /// Takes a folder that is not there yet, is empty, or was made by the demo.
    pub fn take(path: &Path) -> Result<Folder, NotOurs> {
        let name = || path.display().to_string();
        let unusable = |cause| NotOurs::Unusable(name(), cause);
        fs::create_dir_all(path).map_err(unusable)?;
        let mark = path.join(MARK);
        let empty = fs::read_dir(path).map_err(unusable)?.next().is_none();
        if !empty && !mark.is_file() {
            return Err(NotOurs::Foreign(name()));
        }
        let mut options = File::options();
        let options = options.read(true).write(true).create(true).truncate(false);
        let mut mark = options.open(mark).map_err(unusable)?;
        match mark.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => return Err(NotOurs::Busy(name())),
            Err(TryLockError::Error(cause)) => return Err(unusable(cause)),
        }
        let mut text = String::new();
        mark.read_to_string(&mut text).map_err(unusable)?;
        let owner = text.lines().find_map(|line| line.strip_prefix(OWNER));
        Ok(Folder {
            owner: owner.map(PersonId::new),
            path: path.to_owned(),
            mark,
        })
    }

    /// Who owns the brand, if the folder was filled to the end.
    pub fn owner(&self) -> Option<&PersonId> {
        self.owner.as_ref()
    }

    /// Removes what the demo made, and nothing else.
    pub fn clear(&mut self) -> io::Result<()> {
        self.write(WORDS)?;
        self.owner = None;
        for name in MADE {
            let path = self.path.join(name);
            let removed = if path.is_dir() {
                fs::remove_dir_all(path)
            } else {
                fs::remove_file(path)
            };
            match removed {
                Err(cause) if cause.kind() != io::ErrorKind::NotFound => return Err(cause),
                _ => {}
            }
        }
        Ok(())
    }

    /// Remembers that it was filled to the end.
    pub fn is_filled(&mut self, owner: PersonId) -> io::Result<()> {
        self.write(&format!("{WORDS}{OWNER}{owner}\n"))?;
        self.owner = Some(owner);
        Ok(())
    }

    /// A line cut off by a power cut names no owner: the folder then counts as not filled.
    fn write(&mut self, text: &str) -> io::Result<()> {
        self.mark.set_len(0)?;
        self.mark.rewind()?;
        self.mark.write_all(text.as_bytes())?;
        self.mark.sync_all()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_a_folder_of_its_own_is_taken_and_only_what_it_made_is_removed() {
        let place = tempfile::tempdir().unwrap();
        let path = place.path().join("demo");
        let mut folder = Folder::take(&path).unwrap();
        assert_eq!(folder.owner(), None);
        assert!(matches!(Folder::take(&path), Err(NotOurs::Busy(_))));
        fs::create_dir(path.join("files")).unwrap();
        for name in ["fellseam.db", "files/one", "mine.txt"] {
            fs::write(path.join(name), "x").unwrap();
        }
        folder.is_filled(PersonId::new("nell")).unwrap();
        drop(folder);

        let mut folder = Folder::take(&path).unwrap();
        assert_eq!(folder.owner(), Some(&PersonId::new("nell")));
        folder.clear().unwrap();
        drop(folder);
        let left: Vec<_> = fs::read_dir(&path)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        assert!(
            left.len() == 2 && left.contains(&"mine.txt".to_owned()),
            "{left:?}"
        );
        assert_eq!(Folder::take(&path).unwrap().owner(), None);
    }

    #[test]
    fn a_folder_of_something_else_is_refused() {
        let place = tempfile::tempdir().unwrap();
        fs::write(place.path().join("fellseam.db"), "somebody's").unwrap();
        assert!(matches!(
            Folder::take(place.path()),
            Err(NotOurs::Foreign(_))
        ));
        assert!(!place.path().join(MARK).exists());
    }
}
