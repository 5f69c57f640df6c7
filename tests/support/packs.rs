//! The three complete specs of the demo, with the files that lie beside them.

use std::collections::BTreeMap;
use std::path::PathBuf;

use fellseam::spec::Spec;

/// Their folders.
pub const PACKS: [&str; 3] = ["half-zip", "rain-jacket", "trail-shorts"];

/// The spec of a pack.
pub fn spec(pack: &str) -> Spec {
    serde_json::from_str(&text(pack)).unwrap_or_else(|why| panic!("{pack}: {why}"))
}

/// The same, as it is written.
pub fn text(pack: &str) -> String {
    std::fs::read_to_string(folder(pack).join("spec.json")).unwrap()
}

/// Its drawings and the originals of its artwork, by their names.
pub fn originals(pack: &str) -> BTreeMap<String, Vec<u8>> {
    let files = std::fs::read_dir(folder(pack)).unwrap();
    let files = files.map(|file| file.unwrap().path());
    files
        .filter(|path| path.extension().is_some_and(|ending| ending == "svg"))
        .map(|path| {
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            (name, std::fs::read(&path).unwrap())
        })
        .collect()
}

fn folder(pack: &str) -> PathBuf {
    let packs = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src/cli/demo/packs");
    packs.join(pack)
}
