//! `cargo xtask …`: sets up, builds, serves, tests, measures and packages Galeframe.
//!
//! *Invariant*: nothing here computes anything about a house, and nothing here is needed by the app at run time.
//! Every command can be run again at any time; what is already in place is not done twice.

mod bench;
mod command_line;
mod compress;
mod gate;
mod http;
mod journeys;
mod layers;
mod outcome;
mod package;
mod pages;
mod pins;
mod place;
mod policy;
mod precache;
mod server;
mod setup;
mod site;
mod sizes;
mod step;
mod tool;
mod wording;

use command_line::{Command, Options};
use outcome::Outcome;
use place::Place;
use std::process::ExitCode;

fn main() -> ExitCode {
    let options = match Options::read(std::env::args().skip(1)) {
        Ok(options) => options,
        Err(failure) => {
            eprintln!("{failure}\n\n{}", command_line::USAGE);
            return ExitCode::from(2);
        }
    };
    match run(&options) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("\nstopped: {failure}");
            ExitCode::FAILURE
        }
    }
}

fn run(options: &Options) -> Outcome {
    if options.command == Command::Help {
        println!("{}", command_line::USAGE);
        return Ok(());
    }
    let place = Place::find()?;
    match options.command {
        Command::Help => Ok(()),
        Command::Setup => setup::everything(&place),
        Command::Build => site::ensure(&place),
        Command::Serve => site::ensure(&place).and_then(|()| server::serve(&place.dist(), options.port)),
        Command::Test => gate::run(&place, &options.only),
        Command::Bench => bench::run(&place),
        Command::Package => package::write(&place, &options.base),
        Command::Precache => precache::run(&place),
    }
}
