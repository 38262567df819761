//! What was asked for on the command line.

use crate::outcome::{Failure, Outcome};

/// The help text.
pub const USAGE: &str = "\
cargo xtask serve [--port 8080]     set up what is missing, build for release, serve on this machine
cargo xtask test [--only STEP]…     every check there is, or the named steps: see --only list
cargo xtask build                   set up what is missing, build dist/
cargo xtask package [--base /path/] write package/, the folder to put on a web host
cargo xtask bench                   timings and sizes, each beside its budget
cargo xtask setup                   set up what is missing and nothing else";

/// The task to run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Command {
    /// Print [`USAGE`].
    Help,
    /// Fetch every tool.
    Setup,
    /// Build `dist/`.
    Build,
    /// Build and serve `dist/`.
    Serve,
    /// Run every check.
    Test,
    /// Measure speed and size.
    Bench,
    /// Write `package/`.
    Package,
    /// Fill in the worker and seal the page; called by trunk.
    Precache,
}

/// The command with its options.
#[derive(Debug, PartialEq, Eq)]
pub struct Options {
    /// The task to run.
    pub command: Command,
    /// The port of `serve`.
    pub port: u16,
    /// The path under which `package` will be hosted; begins and ends with a slash.
    pub base: String,
    /// The steps of `test` to run; none means all.
    pub only: Vec<String>,
}

impl Options {
    /// Reads the arguments after the program's name.
    pub fn read(arguments: impl Iterator<Item = String>) -> Outcome<Self> {
        let mut arguments = arguments;
        let command = command(arguments.next().as_deref())?;
        let mut options = Self { command, port: 8080, base: "/".to_owned(), only: Vec::new() };
        while let Some(flag) = arguments.next() {
            let value = arguments.next().ok_or_else(|| Failure::new(format!("{flag} needs a value after it")))?;
            match (command, flag.as_str()) {
                (Command::Serve, "--port") => options.port = port(&value)?,
                (Command::Package, "--base") => options.base = base(value)?,
                (Command::Test, "--only") => options.only.push(value),
                _ => return Err(Failure::new(format!("{flag} is not an option of this command"))),
            }
        }
        Ok(options)
    }
}

fn command(word: Option<&str>) -> Outcome<Command> {
    Ok(match word {
        None | Some("help" | "--help" | "-h") => Command::Help,
        Some("setup") => Command::Setup,
        Some("build") => Command::Build,
        Some("serve") => Command::Serve,
        Some("test") => Command::Test,
        Some("bench") => Command::Bench,
        Some("package") => Command::Package,
        Some("precache") => Command::Precache,
        Some(other) => return Err(Failure::new(format!("there is no command called {other}"))),
    })
}

fn port(text: &str) -> Outcome<u16> {
    text.parse().map_err(|_| Failure::new(format!("--port is a number from 0 to 65535, not {text}")))
}

fn base(text: String) -> Outcome<String> {
    let plain = text.bytes().all(|b| b.is_ascii_alphanumeric() || b"/-_.~".contains(&b));
    if plain && text.starts_with('/') && text.ends_with('/') {
        Ok(text)
    } else {
        Err(Failure::new(format!("--base begins and ends with a slash, like /field/, not {text}")))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(line: &str) -> Outcome<Options> {
        Options::read(line.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn options_belong_to_their_command() {
        assert_eq!(read("serve --port 9000").unwrap().port, 9000);
        assert_eq!(read("package --base /field/").unwrap().base, "/field/");
        assert_eq!(read("test --only fmt --only core").unwrap().only, ["fmt", "core"]);
        assert_eq!(read("").unwrap().command, Command::Help);
        assert!(read("test --port 9000").is_err());
        assert!(read("build --fast yes").is_err());
    }

    #[test]
    fn a_wrong_value_is_answered_with_what_is_taken() {
        assert!(read("serve --port high").unwrap_err().to_string().contains("0 to 65535"));
        assert!(read("serve --port").unwrap_err().to_string().contains("needs a value"));
        assert!(read("package --base field").unwrap_err().to_string().contains("/field/"));
        assert!(read("launch").unwrap_err().to_string().contains("launch"));
    }
}
