//! The program itself, on a folder and a port of its own.

use std::path::Path;
use std::process::Stdio;
use std::time::Duration;

use rustix::process::{Pid, Signal, kill_process};
use tempfile::TempDir;
use tokio::io::{AsyncBufReadExt, BufReader};
use tokio::process::{Child, Command};

/// `fellseam serve` with nobody in it yet, or `fellseam demo`.
pub struct Service {
    /// `http://127.0.0.1:PORT`.
    pub address: String,
    /// What it printed before it listened.
    said: String,
    child: Child,
    data: TempDir,
    /// `serve` or `demo`, and the line by which it says that it listens.
    how: (&'static str, &'static str),
}

impl Service {
    pub async fn starts() -> Service {
        Service::runs("serve", "Fellseam listens on ").await
    }

    /// With an invented brand, two factories and four styles.
    pub async fn demo() -> Service {
        Service::runs("demo", "Ctrl-C stops it.").await
    }

    /// Runs a command until it has printed a line that begins with `last`.
    async fn runs(command: &'static str, last: &'static str) -> Service {
        let data = tempfile::tempdir().expect("a temporary folder");
        Service::runs_in(data, (command, last), "127.0.0.1:0").await
    }

    /// Is gone from one moment to the next, as when the machine is.
    pub async fn dies(&mut self) {
        self.child.kill().await.expect("it still ran");
    }

    /// Runs again on the same folder and the same port.
    pub async fn comes_back(&mut self) {
        let data = std::mem::replace(&mut self.data, tempfile::tempdir().expect("a folder"));
        let listen = self.address.trim_start_matches("http://").to_owned();
        *self = Service::runs_in(data, self.how, &listen).await;
    }

    async fn runs_in(data: TempDir, how: (&'static str, &'static str), listen: &str) -> Service {
        let (command, last) = how;
        let mut child = program(data.path())
            .arg(command)
            .args(["--listen", listen, "--data"])
            .arg(data.path())
            .stdout(Stdio::piped())
            .kill_on_drop(true)
            .spawn()
            .expect("the program starts");
        let mut lines = BufReader::new(child.stdout.take().expect("piped")).lines();
        let mut said = String::new();
        let listening = async {
            while let Some(line) = lines.next_line().await.expect("text") {
                said.push_str(&line);
                said.push('\n');
                if line.starts_with(last) {
                    return;
                }
            }
            panic!("the program ended before it listened");
        };
        let in_time = tokio::time::timeout(Duration::from_secs(60), listening).await;
        in_time.expect("the program listens within a minute");
        // It must not meet a closed pipe when it has something more to say.
        tokio::spawn(async move { while let Ok(Some(_)) = lines.next_line().await {} });
        let address = said
            .split_whitespace()
            .find(|word| word.starts_with("http://"));
        let address = address.expect("it says where it listens");
        let port = address
            .match_indices('/')
            .nth(2)
            .map_or(address.len(), |(end, _)| end);
        Service {
            address: address[..port].to_owned(),
            said,
            child,
            data,
            how,
        }
    }

    /// The link that founds the brand.
    pub fn set_up(&self) -> &str {
        let link = self.said.lines().find(|line| line.contains("/set-up/"));
        link.expect("nobody is here yet").trim()
    }

    /// The demo's link for somebody, and their name: `Merchandiser, Sao Mai Garment`.
    pub fn link(&self, who: &str) -> (&str, &str) {
        let mut lines = self.said.lines();
        let named = lines
            .find(|line| line.starts_with(who))
            .expect("somebody of the demo");
        let (_, name) = named.split_once(": ").expect("a name");
        (lines.next().expect("a link").trim(), name)
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
