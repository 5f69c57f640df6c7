//! The program itself, on a folder and a port of its own.

use std::path::Path;
use std::process::Stdio;
use std::time::Duration;

use rustix::process::{Pid, Signal, kill_process};
use tempfile::TempDir;
use tokio::io::{AsyncBufReadExt, BufReader};
use tokio::process::{Child, Command};

/// `fellseam serve`, with nobody in it yet.
pub struct Service {
    /// `http://127.0.0.1:PORT`.
    pub address: String,
    /// Founds the brand.
    pub set_up: String,
    child: Child,
    data: TempDir,
}

impl Service {
    pub async fn starts() -> Service {
        let data = tempfile::tempdir().expect("a temporary folder");
        let mut child = program(data.path())
            .arg("serve")
            .args(["--listen", "127.0.0.1:0"])
            .stdout(Stdio::piped())
            .kill_on_drop(true)
            .spawn()
            .expect("the program starts");
        let said = child.stdout.take().expect("piped");
        let mut said = BufReader::new(said).lines();
        let mut set_up = String::new();
        let listening = async {
            while let Some(line) = said.next_line().await.expect("text") {
                if line.contains("/set-up/") {
                    set_up = line.trim().to_owned();
                }
                if let Some(address) = line.strip_prefix("Fellseam listens on ") {
                    return address.to_owned();
                }
            }
            panic!("the program ended before it listened");
        };
        let address = tokio::time::timeout(Duration::from_secs(30), listening).await;
        Service {
            address: address.expect("the program listens within 30 seconds"),
            set_up,
            child,
            data,
        }
    }

    /// Asks the program to stop, as a system does, and checks everything that it has kept.
    /// Returns what `fellseam audit` said.
    pub async fn stops_and_audits(mut self) -> String {
        let id = self.child.id().expect("it still runs");
        let id = Pid::from_raw(i32::try_from(id).expect("an id")).expect("an id");
        kill_process(id, Signal::TERM).expect("it still runs");
        let ended = tokio::time::timeout(Duration::from_secs(30), self.child.wait()).await;
        let ended = ended.expect("it stops within 30 seconds").expect("its end");
        assert!(ended.success(), "it stopped badly: {ended}");
        let audit = program(self.data.path()).arg("audit").output().await;
        let audit = audit.expect("the program starts");
        let said = String::from_utf8(audit.stdout).expect("text");
        assert!(audit.status.success(), "the audit found:\n{said}");
        said
    }
}

fn program(data: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_fellseam"));
    command.env("FELLSEAM_DATA", data).env("RUST_LOG", "warn");
    command
}
