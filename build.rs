//! Names this build by the content that its pages are made of, so that no browser keeps a page of
//! another build.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};

fn main() {
    println!("cargo:rerun-if-changed=migrations");
    let mut files = Vec::new();
    for folder in ["src", "static", "templates"] {
        println!("cargo:rerun-if-changed={folder}");
        collect(Path::new(folder), &mut files);
    }
    files.sort();
    let mut hasher = DefaultHasher::new();
    for file in files {
        file.hash(&mut hasher);
        fs::read(&file)
            .expect("a file of the package")
            .hash(&mut hasher);
    }
    println!("cargo:rustc-env=FELLSEAM_BUILD={:016x}", hasher.finish());
}

fn collect(folder: &Path, files: &mut Vec<PathBuf>) {
    let entries = fs::read_dir(folder).expect("a folder of the package");
    for entry in entries {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            collect(&path, files);
        } else {
            files.push(path);
        }
    }
}
