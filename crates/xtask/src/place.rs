//! Where things are in the project's folder.

use crate::outcome::{Failure, Outcome};
use std::fs;
use std::path::{Path, PathBuf};

/// The project's folder.
#[derive(Clone, Debug)]
pub struct Place(PathBuf);

impl Place {
    /// The nearest folder upwards that holds `Trunk.toml`.
    pub fn find() -> Outcome<Self> {
        let here = std::env::current_dir().map_err(|e| Failure::new(format!("this folder cannot be read: {e}")))?;
        here.ancestors()
            .find(|folder| folder.join("Trunk.toml").is_file())
            .map(|folder| Self(folder.to_owned()))
            .ok_or_else(|| Failure::new("run this inside the project's folder: no Trunk.toml was found upwards"))
    }

    /// The folder itself.
    pub fn root(&self) -> &Path {
        &self.0
    }

    /// A path inside the folder.
    pub fn path(&self, inside: &str) -> PathBuf {
        self.0.join(inside)
    }

    /// The text of a file inside the folder.
    pub fn text(&self, inside: &str) -> Outcome<String> {
        text(&self.path(inside))
    }

    /// What `trunk build` writes.
    pub fn dist(&self) -> PathBuf {
        self.path("dist")
    }

    /// Tools this project brings for itself, so that none of the machine's own are replaced.
    pub fn tools(&self) -> PathBuf {
        self.path(".tools")
    }
}

/// The text of a file.
pub fn text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(|e| Failure::file("read", path, &e))
}

/// The bytes of a file.
pub fn bytes(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|e| Failure::file("read", path, &e))
}

/// Writes a file, with the folders above it.
pub fn write(path: &Path, content: impl AsRef<[u8]>) -> Outcome {
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|e| Failure::file("make", folder, &e))?;
    }
    fs::write(path, content).map_err(|e| Failure::file("write", path, &e))
}

/// Every file under `folder`, sorted, skipping the folder names for which `skip` says yes.
pub fn files_under(folder: &Path, skip: fn(&str) -> bool) -> Outcome<Vec<PathBuf>> {
    let mut found = Vec::new();
    let mut waiting = vec![folder.to_owned()];
    while let Some(next) = waiting.pop() {
        let entries = fs::read_dir(&next).map_err(|e| Failure::file("list", &next, &e))?;
        for entry in entries {
            let path = entry.map_err(|e| Failure::file("list", &next, &e))?.path();
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            if !path.is_dir() {
                found.push(path);
            } else if !skip(&name) {
                waiting.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

/// `path` as it is written in an address: relative to `folder`, with forward slashes.
pub fn address_of(path: &Path, folder: &Path) -> String {
    let inside = path.strip_prefix(folder).unwrap_or(path);
    inside.components().map(|c| c.as_os_str().to_string_lossy()).collect::<Vec<_>>().join("/")
}
