//! What the committed tables were made from, as one hash: when any of it changes they are stale.

use sha2::{Digest, Sha256};
use std::fs;
use std::path::{Path, PathBuf};

/// Files of core that no interval and no verdict passes through. Every other file of core counts,
/// so that a new one does until it is named here.
const NOT_MEASURING: [&str; 3] = ["advice.rs", "limit_error.rs", "report.rs"];

/// `tests/coverage`, where the tables lie.
#[must_use]
pub fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// SHA-256 over the names and the bytes of core's measuring path, the simulator and this study.
///
/// # Panics
/// Where a file can't be read.
#[must_use]
pub fn hash() -> String {
    let here = folder();
    let core = here.join("../../core/src");
    let mut files: Vec<PathBuf> = sources(&core)
        .into_iter()
        .filter(|f| !NOT_MEASURING.iter().any(|n| f.ends_with(n)))
        .collect();
    files.extend(sources(&here.join("simulator/src")));
    files.extend(sources(&here.join("src")));
    let mut hasher = Sha256::new();
    for file in files {
        let name = file.strip_prefix(&here).expect("a path from here");
        let bytes = fs::read(&file).unwrap_or_else(|e| panic!("{}: {e}", file.display()));
        hasher.update(format!("{}\n{}\n", name.display(), bytes.len()));
        hasher.update(&bytes);
    }
    let digest = hasher.finalize();
    digest.iter().map(|b| format!("{b:02x}")).collect()
}

/// Rust files of a folder, by name.
fn sources(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
    let mut files: Vec<PathBuf> = entries
        .map(|entry| entry.expect("a readable folder").path())
        .filter(|path| path.extension().is_some_and(|e| e == "rs"))
        .collect();
    files.sort();
    files
}
