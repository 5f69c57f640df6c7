//! The binary as a child of the test.

use std::path::Path;
use std::process::Stdio;
use std::time::Duration;

use rustix::process::{Pid, Signal, kill_process};
use scraper::{Html, Selector};
use tokio::io::{AsyncBufReadExt, BufReader};
use tokio::process::{Child, ChildStdout, Command};
use tokio::time::timeout;

/// The last words of the guide.
const LAST: &str = "Ctrl-C stops it.";
/// How long a start may take on a busy machine, with a first filling.
const START: Duration = Duration::from_secs(60);
/// How long an end may take.
const END: Duration = Duration::from_secs(5);

/// A demo that runs.
pub struct Demo {
    child: Child,
    _out: BufReader<ChildStdout>,
    words: String,
}

fn command(arguments: &[&str], data: &Path) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_fellseam"));
    command
        .args(arguments)
        .arg("--data")
        .arg(data)
        .stdin(Stdio::null())
        .kill_on_drop(true);
    command
}

fn demo(data: &Path, arguments: &[&str]) -> Command {
    let listen = ["demo", "--listen", "127.0.0.1:0"];
    command(&[&listen, arguments].concat(), data)
}

/// What a start that must be refused says.
pub async fn start_refused(data: &Path, arguments: &[&str]) -> String {
    let ended = timeout(START, demo(data, arguments).output()).await;
    let ended = ended.expect("it ends by itself").unwrap();
    assert!(!ended.status.success());
    String::from_utf8(ended.stderr).unwrap()
}

impl Demo {
    /// Starts it on a free port and reads what it says until it is ready.
    pub async fn start(data: &Path, arguments: &[&str]) -> Demo {
        let mut command = demo(data, arguments);
        let command = command.stdout(Stdio::piped()).stderr(Stdio::null());
        let mut child = command.spawn().unwrap();
        let mut out = BufReader::new(child.stdout.take().unwrap());
        let mut words = String::new();
        let reading = async {
            while !words.contains(LAST) {
                let read = out.read_line(&mut words).await.unwrap();
                assert_ne!(read, 0, "it ended after: {words}");
            }
        };
        timeout(START, reading).await.expect("it starts");
        Demo {
            child,
            _out: out,
            words,
        }
    }

    pub fn words(&self) -> &str {
        &self.words
    }

    /// The address that it printed.
    pub fn url(&self) -> &str {
        let mut lines = self.words.lines().map(str::trim);
        let url = lines.find(|line| line.starts_with("http://127.0.0.1:"));
        url.unwrap_or_else(|| panic!("no address: {}", self.words))
    }

    /// The link below the line that begins so.
    pub fn link(&self, who: &str) -> String {
        let mut lines = self.words.lines().skip_while(|line| !line.starts_with(who));
        let link = lines.nth(1).unwrap_or_default().trim();
        let ours = format!("{}/join/", self.url());
        assert!(link.starts_with(&ours), "no link for {who}: {}", self.words);
        link.to_owned()
    }

    /// Presses the button of a link's page, and gives the browser that is then signed in.
    pub async fn comes_in(&self, link: &str, name: &str) -> reqwest::Client {
        let browser = reqwest::Client::builder()
            .cookie_store(true)
            .build()
            .unwrap();
        let form = [("name", name), ("language", "en")];
        let request = browser.post(link).header("origin", self.url()).form(&form);
        let page = request.send().await.unwrap();
        assert_eq!(page.status(), 200, "{}", page.url());
        let page = page.text().await.unwrap();
        assert!(page.contains(name), "{page}");
        browser
    }

    /// The brand's styles as the designer's list shows them: address and words of each.
    pub async fn styles(&self) -> Vec<String> {
        let iris = self.comes_in(&self.link("Designer"), "Iris Tide").await;
        let page = iris.get(format!("{}/styles", self.url())).send().await;
        let page = page.unwrap().text().await.unwrap();
        let links = Selector::parse("main a[href^='/styles/']").unwrap();
        let page = Html::parse_document(&page);
        let styles = page.select(&links).map(|link| {
            let words: Vec<&str> = link.text().map(str::trim).collect();
            format!("{} {}", link.attr("href").unwrap(), words.join(" "))
        });
        let mut styles: Vec<String> = styles.collect();
        styles.sort();
        styles
    }

    /// Ctrl-C: it must end well, and soon.
    pub async fn stop(mut self) {
        let id = self.child.id().expect("it runs");
        let id = Pid::from_raw(i32::try_from(id).unwrap()).unwrap();
        kill_process(id, Signal::INT).unwrap();
        let ended = timeout(END, self.child.wait()).await;
        let ended = ended.expect("it ends within seconds").unwrap();
        assert!(ended.success(), "{ended}");
    }
}

/// What `fellseam audit` says of a folder.
pub struct Audited {
    pub words: String,
    success: bool,
}

pub async fn audit(data: &Path) -> Audited {
    let ended = command(&["audit"], data).output().await.unwrap();
    Audited {
        words: String::from_utf8(ended.stdout).unwrap(),
        success: ended.status.success(),
    }
}

impl Audited {
    /// It ended with 0 and says that everything holds.
    pub fn holds(&self) -> bool {
        self.success && self.words.ends_with("Everything holds.\n")
    }

    /// It failed, and a line begins with these words.
    pub fn names(&self, fault: &str) -> bool {
        !self.success && self.words.lines().any(|line| line.starts_with(fault))
    }
}
