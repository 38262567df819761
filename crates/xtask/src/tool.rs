//! Running other programs.

use crate::outcome::{Failure, Outcome};
use crate::place::Place;
use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

/// A program to run in the project's folder, with the project's own tools first on the path.
pub struct Tool {
    command: Command,
    shown: String,
}

impl Tool {
    /// The program called `program`.
    pub fn new(place: &Place, program: &str) -> Self {
        let mut command = Command::new(program);
        command.current_dir(place.root()).env("PATH", search_path(place));
        Self { command, shown: program.to_owned() }
    }

    /// Adds arguments.
    pub fn args<S: AsRef<OsStr>>(mut self, arguments: impl IntoIterator<Item = S>) -> Self {
        for argument in arguments {
            self.shown.push(' ');
            self.shown.push_str(&argument.as_ref().to_string_lossy());
            self.command.arg(argument);
        }
        self
    }

    /// Sets a variable for this run only.
    pub fn env(mut self, name: &str, value: impl AsRef<OsStr>) -> Self {
        self.command.env(name, value);
        self
    }

    /// Removes a variable for this run only.
    pub fn without_env(mut self, name: &str) -> Self {
        self.command.env_remove(name);
        self
    }

    /// Runs it with its output on the screen; anything but success is a failure.
    pub fn run(mut self) -> Outcome {
        println!("   $ {}", self.shown);
        let status = self.command.stdin(Stdio::null()).status().map_err(|e| cannot_start(&self.shown, &e))?;
        if status.success() { Ok(()) } else { Err(Failure::new(format!("`{}` failed ({status})", self.shown))) }
    }

    /// Runs it and gives what it printed; anything but success is a failure.
    pub fn output(mut self) -> Outcome<String> {
        let output = self.command.stdin(Stdio::null()).output().map_err(|e| cannot_start(&self.shown, &e))?;
        if !output.status.success() {
            let said = String::from_utf8_lossy(&output.stderr);
            return Err(Failure::new(format!("`{}` failed ({}): {}", self.shown, output.status, said.trim())));
        }
        Ok(printed(&output))
    }

    /// What it printed, or `None` when it is missing or did not succeed.
    pub fn probe(mut self) -> Option<String> {
        let output = self.command.stdin(Stdio::null()).output().ok()?;
        output.status.success().then(|| printed(&output))
    }
}

fn printed(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).trim().to_owned()
}

fn cannot_start(shown: &str, error: &std::io::Error) -> Failure {
    Failure::new(format!("`{shown}` could not be started: {error}"))
}

/// The folders that are searched for programs, the project's own first.
fn search_folders(place: &Place) -> Vec<PathBuf> {
    let mut folders = vec![place.tools().join("bin"), place.path("node_modules/.bin")];
    folders.extend(std::env::split_paths(&std::env::var_os("PATH").unwrap_or_default()));
    folders
}

fn search_path(place: &Place) -> std::ffi::OsString {
    // Joining fails only when a folder's name holds the separator; the machine's own path is then the best there is.
    std::env::join_paths(search_folders(place)).unwrap_or_else(|_| std::env::var_os("PATH").unwrap_or_default())
}

/// Where a program is found, if it is.
pub fn find(place: &Place, program: &str) -> Option<PathBuf> {
    search_folders(place).iter().map(|folder| folder.join(program)).find(|path| is_program(path))
}

fn is_program(path: &Path) -> bool {
    path.is_file()
}
