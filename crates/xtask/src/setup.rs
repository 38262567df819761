//! Fetches what is missing: the browser's compile target, npm packages, the two build tools, a test browser.

use crate::outcome::{Failure, Outcome};
use crate::pins::Pins;
use crate::place::{self, Place};
use crate::step::step;
use crate::tool::{self, Tool};
use std::fs;
use std::path::PathBuf;

const TARGET: &str = "wasm32-unknown-unknown";
const OLDEST_NODE: u32 = 20;
/// Written beside the npm packages: the lock file they came from.
const NPM_STAMP: &str = "node_modules/.installed-from.json";

/// Everything that any command needs.
pub fn everything(place: &Place) -> Outcome {
    builders(place)?;
    formatter(place)?;
    browser(place)
}

/// What a release build needs.
pub fn builders(place: &Place) -> Outcome {
    let pins = Pins::read(place)?;
    let tools = [
        BuildTool {
            package: "wasm-bindgen-cli",
            program: "wasm-bindgen",
            version: &pins.wasm_bindgen,
            // Its published lock file does not resolve.
            locked: false,
            // Unoptimised it would slow every later build.
            opt_level: "1",
            expected: "3 minutes",
        },
        BuildTool {
            package: "trunk",
            program: "trunk",
            version: &pins.trunk,
            locked: true,
            opt_level: "0",
            expected: "5 minutes",
        },
    ];
    let missing: Vec<&BuildTool> = tools.iter().filter(|tool| !tool.present(place)).collect();
    if !missing.is_empty() {
        println!("Setting up for the first time. With the first build this takes about 10 minutes on two cores;");
        println!("most of it is compiling build tools. It is not done again.");
    }
    wasm_target(place)?;
    node(place)?;
    npm_packages(place)?;
    for tool in missing {
        step(&format!("install {} {}", tool.package, tool.version), tool.expected, || tool.install(place))?;
    }
    discard_tool_builds(place)
}

fn wasm_target(place: &Place) -> Outcome {
    let folder = Tool::new(place, "rustc").args(["--print", "target-libdir", "--target", TARGET]).output()?;
    if PathBuf::from(&folder).is_dir() {
        return Ok(());
    }
    step("add the browser's compile target", "10 s", || {
        Tool::new(place, "rustup").args(["target", "add", TARGET]).run()
    })
}

fn formatter(place: &Place) -> Outcome {
    let has = |name: &str| Tool::new(place, "cargo").args([name, "--version"]).probe().is_some();
    if has("fmt") && has("clippy") {
        return Ok(());
    }
    step("add rustfmt and clippy", "10 s", || {
        Tool::new(place, "rustup").args(["component", "add", "rustfmt", "clippy"]).run()
    })
}

fn node(place: &Place) -> Outcome {
    if node_version(place).is_none() {
        step("install Node.js", "30 s", || apt(place, "Node.js", &["nodejs", "npm"]))?;
    }
    match node_version(place) {
        Some(version) if version >= OLDEST_NODE => Ok(()),
        found => Err(Failure::new(format!(
            "Node.js {OLDEST_NODE} or newer is needed to optimise and test the app; {}. Install a newer one.",
            found.map_or_else(|| "none was found".to_owned(), |version| format!("version {version} was found")),
        ))),
    }
}

fn node_version(place: &Place) -> Option<u32> {
    let printed = Tool::new(place, "node").args(["--version"]).probe()?;
    printed.strip_prefix('v')?.split('.').next()?.parse().ok()
}

fn npm_packages(place: &Place) -> Outcome {
    let lock = place.text("package-lock.json")?;
    if place.text(NPM_STAMP).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    step("install npm packages", "10 s", || {
        Tool::new(place, "npm").args(["ci", "--ignore-scripts", "--no-audit", "--no-fund"]).run()
    })?;
    place::write(&place.path(NPM_STAMP), lock)
}

/// A program that is compiled from its published source.
struct BuildTool<'p> {
    package: &'p str,
    program: &'p str,
    version: &'p str,
    locked: bool,
    opt_level: &'p str,
    expected: &'p str,
}

impl BuildTool<'_> {
    fn present(&self, place: &Place) -> bool {
        let printed = Tool::new(place, self.program).args(["--version"]).without_env("NO_COLOR").probe();
        printed.is_some_and(|line| line.split_whitespace().any(|word| word == self.version))
    }

    /// The packages' own release settings would take three times as long. They are overridden for this run only: as
    /// exported variables they would reach the app's build too.
    fn install(&self, place: &Place) -> Outcome {
        place::write(&place.tools().join(".gitignore"), "*\n")?;
        let mut arguments = vec!["install", self.package, "--version", self.version, "--no-default-features"];
        if self.locked {
            arguments.push("--locked");
        }
        Tool::new(place, "cargo")
            .args(arguments)
            .args(["--root"])
            .args([place.tools()])
            .env("CARGO_TARGET_DIR", tool_builds(place))
            .env("CARGO_PROFILE_RELEASE_LTO", "off")
            .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "256")
            .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", self.opt_level)
            .run()
    }
}

/// A folder of its own, so that an install that was cut off goes on where it stopped.
fn tool_builds(place: &Place) -> PathBuf {
    place.path("target/tools")
}

fn discard_tool_builds(place: &Place) -> Outcome {
    let folder = tool_builds(place);
    if !folder.exists() {
        return Ok(());
    }
    fs::remove_dir_all(&folder).map_err(|e| Failure::file("remove", &folder, &e))
}

/// What the browser journeys need.
pub fn browser(place: &Place) -> Outcome {
    if chromium(place).is_some() && tool::find(place, "chromedriver").is_some() {
        return Ok(());
    }
    step("install Chromium and its driver", "1 minute", || apt(place, "Chromium", &["chromium", "chromium-driver"]))?;
    chromium(place).map(|_| ()).ok_or_else(|| {
        Failure::new("Chromium was installed but is not on the path; set CHROMIUM to the path of its program")
    })
}

/// The browser to test with: the variable `CHROMIUM`, or what is on the path.
pub fn chromium(place: &Place) -> Option<PathBuf> {
    let named = std::env::var_os("CHROMIUM").map(PathBuf::from).filter(|path| path.is_file());
    named.or_else(|| ["chromium", "chromium-browser"].iter().find_map(|name| tool::find(place, name)))
}

fn apt(place: &Place, what: &str, packages: &[&str]) -> Outcome {
    if tool::find(place, "apt-get").is_none() {
        return Err(Failure::new(format!(
            "{what} is missing, and this machine has no apt-get to fetch it with. Install {what} ({}), then run this again",
            packages.join(", ")
        )));
    }
    apt_get(place, &["update", "-qq"])?;
    apt_get(place, &[&["install", "-y", "-qq", "--no-install-recommends"], packages].concat())
}

fn apt_get(place: &Place, arguments: &[&str]) -> Outcome {
    let is_root = Tool::new(place, "id").args(["-u"]).output()? == "0";
    let (program, first) = if is_root { ("apt-get", None) } else { ("sudo", Some("apt-get")) };
    Tool::new(place, program).args(first).args(arguments).env("DEBIAN_FRONTEND", "noninteractive").run()
}
