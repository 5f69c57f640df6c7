//! What every handler can reach.

use std::ops::Deref;
use std::sync::Arc;

use tokio::sync::watch;

use super::both::print::Prints;
use super::both::round::Judged;
use super::both::sheet::Sheets;
use super::cached::Kept;
use super::limit::Limiter;
use super::password::Passwords;
use crate::files::{Files, Renderer};
use crate::notify::Notify;
use crate::store::Store;

/// What the person who runs the program has set.
#[derive(Debug, Clone)]
pub struct Settings {
    /// The address that links, codes and mails name, without a slash at its end.
    pub public_url: String,
    /// Invented people and ready sign-in links.
    pub demo: bool,
    /// Requests come through a reverse proxy, whose word on the caller's address is taken.
    pub behind_proxy: bool,
    /// There is a server that mails go out by.
    pub mails: bool,
}

impl Settings {
    /// Served over HTTPS: cookies are bound to the host and to secure connections.
    pub fn secure(&self) -> bool {
        self.public_url.starts_with("https://")
    }

    /// Whether a link in a code or a mail can be opened on another machine. Outside the demo the
    /// program prints no code that points to the machine itself.
    pub fn reachable(&self) -> bool {
        let host = self
            .public_url
            .split_once("://")
            .map_or("", |(_, rest)| rest)
            .split('/')
            .next()
            .unwrap_or_default();
        let host = match host.strip_prefix('[') {
            Some(rest) => rest.split(']').next().unwrap_or_default(),
            None => host.split(':').next().unwrap_or_default(),
        };
        let loopback = host == "localhost"
            || host.ends_with(".localhost")
            || host
                .parse::<std::net::IpAddr>()
                .is_ok_and(|ip| ip.is_loopback() || ip.is_unspecified());
        !host.is_empty() && !loopback
    }
}

/// The program's state; clones share it.
#[derive(Clone)]
pub struct App(Arc<Parts>);

/// What the state is made of.
pub struct Parts {
    pub store: Store,
    pub files: Files,
    pub renderer: Renderer,
    pub settings: Settings,
    pub passwords: Passwords,
    pub attempts: Limiter,
    pub kept: Kept,
    pub sheets: Sheets,
    pub prints: Prints,
    pub judged: Judged,
    pub notify: Notify,
    /// Becomes true when the program stops: answers that have no end then end.
    pub stopping: watch::Sender<bool>,
}

impl App {
    /// Needs a runtime: the live updates start with it.
    pub fn new(store: Store, files: Files, renderer: Renderer, settings: Settings) -> Self {
        Self(Arc::new(Parts {
            notify: Notify::start(&store),
            stopping: watch::Sender::new(false),
            store,
            files,
            renderer,
            settings,
            passwords: Passwords::default(),
            attempts: Limiter::default(),
            kept: Kept::default(),
            sheets: Sheets::default(),
            prints: Prints::default(),
            judged: Judged::default(),
        }))
    }

    /// Ends what would go on for ever. Before the service waits for its answers to end, and before
    /// the store is closed.
    pub fn stop(&self) {
        self.stopping.send_replace(true);
        self.notify.stop();
    }
}

impl Deref for App {
    type Target = Parts;

    fn deref(&self) -> &Parts {
        &self.0
    }
}

#[cfg(test)]
mod tests {
    use super::Settings;

    fn reachable(public_url: &str) -> bool {
        Settings {
            public_url: public_url.to_owned(),
            demo: false,
            behind_proxy: false,
            mails: false,
        }
        .reachable()
    }

    #[test]
    fn a_code_must_lead_to_another_machine() {
        assert!(reachable("https://specs.example.org"));
        assert!(reachable("http://192.0.2.7:8080"));
        for here in [
            "http://127.0.0.1:8080",
            "http://localhost",
            "http://[::1]:80",
            "http://0.0.0.0:1",
            "",
        ] {
            assert!(!reachable(here), "{here}");
        }
    }
}
