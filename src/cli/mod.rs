//! The commands of the program.

mod audit;
mod changes;
mod chart;
mod check_record;
mod demo;
mod doctor;
mod erase;
mod evaluate;
mod given;
mod key;
mod open;
mod ready;
pub mod render;
mod schema;
mod serve;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Args, Parser, Subcommand};

/// The exchange of a garment spec between a clothing brand and its factories.
#[derive(Debug, Parser)]
#[command(name = "fellseam", version)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Run the service.
    Serve(serve::Serve),
    /// Run the service with an invented brand, two factories and four styles.
    Demo(demo::Demo),
    /// Check every ledger, every digest and every stored file.
    Audit(audit::Audit),
    /// Check a spec file: what keeps it from being published, and what needs a reason. As JSON.
    Ready(ready::Ready),
    /// Work out the size chart of a spec file. As JSON.
    Chart(chart::ChartOf),
    /// Tell what changed from one spec file to another. As JSON.
    Changes(changes::Changes),
    /// Judge pieces that were measured elsewhere: verdicts, and why values are off. As JSON.
    Evaluate(evaluate::Evaluate),
    /// Print what a spec file holds, field by field, as JSON Schema.
    Schema,
    /// Check a signed record that was downloaded. Needs no service.
    CheckRecord(check_record::CheckRecord),
    /// Print the public key that signed records of this installation are checked with.
    Key(key::Key),
    /// Erase a person's name, messages and photographs. The audit still passes afterwards.
    Erase(erase::Erase),
    /// Say which languages this machine can print, and what to install for the others.
    Doctor(doctor::Doctor),
    /// Make pictures of one file: the program starts this for itself.
    #[command(hide = true)]
    Render,
}

/// Where everything is kept.
#[derive(Debug, Args)]
struct Place {
    /// The folder for files and, unless another database is named, for the database.
    #[arg(
        long,
        value_name = "FOLDER",
        default_value = "fellseam-data",
        env = "FELLSEAM_DATA"
    )]
    data: PathBuf,
    /// The database: sqlite:PATH or postgres://USER@HOST/NAME.
    #[arg(
        long,
        value_name = "ADDRESS",
        env = "FELLSEAM_DATABASE",
        hide_env_values = true
    )]
    database: Option<String>,
}

/// Runs the command line.
pub fn run() -> ExitCode {
    let result = match Cli::parse().command {
        Command::Render => return render::render(),
        Command::Serve(command) => command.run(),
        Command::Demo(command) => command.run(),
        Command::Audit(command) => command.run(),
        Command::Ready(command) => command.run(),
        Command::Chart(command) => command.run(),
        Command::Changes(command) => command.run(),
        Command::Evaluate(command) => command.run(),
        Command::Doctor(doctor) => Ok(doctor::run(&doctor)),
        Command::Schema => schema::run(),
        Command::CheckRecord(command) => command.run(),
        Command::Key(command) => command.run(),
        Command::Erase(command) => command.run(),
    };
    match result {
        Ok(code) => code,
        Err(cause) => {
            eprintln!("fellseam: {cause}");
            ExitCode::FAILURE
        }
    }
}

/// What a command may end with: a sentence for the one who typed it.
type Ended = Result<ExitCode, Box<dyn std::error::Error>>;
