//! The versions of the build's tools, and the check that every place names the same one.

use crate::outcome::{Failure, Outcome};
use crate::place::Place;

/// The pinned versions.
#[derive(Debug, PartialEq, Eq)]
pub struct Pins {
    /// The bundler, as in `trunk-version`.
    pub trunk: String,
    /// The glue writer; must equal the crate of the same name.
    pub wasm_bindgen: String,
    /// The optimiser's number, as in `version_132`.
    pub wasm_opt: String,
}

impl Pins {
    /// Reads them from `Trunk.toml`, the place that decides.
    pub fn read(place: &Place) -> Outcome<Self> {
        let trunk_toml = place.text("Trunk.toml")?;
        Ok(Self {
            trunk: value(&trunk_toml, "trunk-version", "Trunk.toml")?.trim_start_matches(['^', '=']).to_owned(),
            wasm_bindgen: value(&trunk_toml, "wasm_bindgen", "Trunk.toml")?.to_owned(),
            wasm_opt: value(&trunk_toml, "wasm_opt", "Trunk.toml")?.trim_start_matches("version_").to_owned(),
        })
    }
}

/// Fails when two places name different versions of one tool.
pub fn check(place: &Place) -> Outcome {
    let pins = Pins::read(place)?;
    let web = place.text("web/Cargo.toml")?;
    let lock = place.text("Cargo.lock")?;
    let binaryen = dev_dependency(&place.text("package.json")?, "binaryen")?;
    let channel = value(&place.text("rust-toolchain.toml")?, "channel", "rust-toolchain.toml")?.to_owned();
    let rust_version = value(&place.text("Cargo.toml")?, "rust-version", "Cargo.toml")?.to_owned();
    let pairs = [
        ("Trunk.toml wasm_bindgen", pins.wasm_bindgen.clone(), "Cargo.lock", locked(&lock, "wasm-bindgen")?),
        ("Trunk.toml wasm_bindgen", format!("={}", pins.wasm_bindgen), "web/Cargo.toml", {
            value(&web, "wasm-bindgen", "web/Cargo.toml")?.to_owned()
        }),
        ("Trunk.toml wasm_opt", format!("{}.0.0", pins.wasm_opt), "package.json binaryen", binaryen),
        ("Cargo.toml rust-version", format!("{rust_version}.0"), "rust-toolchain.toml channel", channel),
    ];
    let problems: Vec<String> = pairs
        .iter()
        .filter(|(_, one, _, other)| one != other)
        .map(|(here, one, there, other)| format!("{here} asks for {one}, {there} has {other}"))
        .collect();
    Failure::unless_empty("versions differ; change them together", &problems)
}

/// The quoted value of the first line that sets `key`.
fn value<'t>(text: &'t str, key: &str, file: &str) -> Outcome<&'t str> {
    text.lines()
        .filter_map(|line| line.strip_prefix(key)?.trim_start().strip_prefix('='))
        .find_map(|rest| rest.split('"').nth(1))
        .ok_or_else(|| Failure::new(format!("{file} sets no {key} = \"…\"")))
}

/// The version of a package in `Cargo.lock`.
fn locked(lock: &str, package: &str) -> Outcome<String> {
    let heading = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != heading);
    lines
        .nth(1)
        .and_then(|line| line.strip_prefix("version = \"")?.strip_suffix('"'))
        .map(str::to_owned)
        .ok_or_else(|| Failure::new(format!("Cargo.lock holds no {package}")))
}

fn dev_dependency(package_json: &str, name: &str) -> Outcome<String> {
    let parsed: serde_json::Value =
        serde_json::from_str(package_json).map_err(|e| Failure::new(format!("package.json: {e}")))?;
    let version = parsed["devDependencies"][name].as_str();
    version.map(str::to_owned).ok_or_else(|| Failure::new(format!("package.json names no {name}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_read_from_the_line_that_sets_it() {
        let text = "# wasm_bindgen = \"0\"\nwasm_bindgen_extra = \"1\"\nwasm_bindgen = \"0.2.130\" # why\n";
        assert_eq!(value(text, "wasm_bindgen", "x"), Ok("0.2.130"));
        assert!(value(text, "wasm_opt", "x").is_err());
    }

    #[test]
    fn a_locked_version_belongs_to_the_named_package() {
        let lock =
            "[[package]]\nname = \"a-b\"\nversion = \"2.0.0\"\n\n[[package]]\nname = \"a\"\nversion = \"1.0.0\"\n";
        assert_eq!(locked(lock, "a"), Ok("1.0.0".to_owned()));
        assert!(locked(lock, "b").is_err());
    }

    #[test]
    fn every_place_names_the_same_versions() {
        assert_eq!(check(&Place::find().unwrap()), Ok(()));
    }
}
