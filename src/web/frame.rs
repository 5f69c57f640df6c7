//! What stands around every page.

use crate::access::{Role, Side};
use crate::language::Text;
use crate::store::Session;

/// The page's frame: language, navigation, who is signed in, and what just happened.
#[derive(Debug, Clone)]
pub struct Frame {
    pub lang: &'static str,
    /// The organisation whose pages these are; empty outside.
    pub org: String,
    pub nav: Vec<NavLink>,
    /// Who is signed in; `None` outside.
    pub person: Option<String>,
    /// The token that forms of this page carry.
    pub token: String,
    /// What the form before this page has done.
    pub notice: Option<String>,
    /// The address of the stream that tells when to look at the page's `data-live` parts again.
    pub live: Option<String>,
    t: Text,
}

/// One link of the navigation.
#[derive(Debug, Clone)]
pub struct NavLink {
    pub href: &'static str,
    pub label: String,
    pub current: bool,
}

impl Frame {
    /// For somebody who is not signed in.
    pub fn outside(t: Text) -> Self {
        Self {
            lang: t.lang(),
            org: String::new(),
            nav: Vec::new(),
            person: None,
            token: String::new(),
            notice: None,
            live: None,
            t,
        }
    }

    pub fn signed_in(t: Text, session: &Session, token: &str) -> Self {
        let role = session.actor.role;
        let link = |href, label: String| NavLink {
            href,
            label,
            current: false,
        };
        let mut nav = vec![link("/", t.say("nav-needs").to_string())];
        if role.side() == Side::Brand {
            nav.push(link("/styles", t.say("nav-styles").to_string()));
        }
        if matches!(role, Role::Owner | Role::Merchandiser) {
            nav.push(link("/people", t.say("nav-people").to_string()));
        }
        if role == Role::Owner {
            nav.push(link("/numbers", t.say("nav-numbers").to_string()));
            nav.push(link("/tables", t.say("nav-tables").to_string()));
        }
        nav.push(link("/me", t.say("nav-me").to_string()));
        Self {
            lang: t.lang(),
            org: session.org_name.clone(),
            nav,
            person: Some(name_or_erased(t, session.name.as_deref())),
            token: token.to_owned(),
            notice: None,
            live: None,
            t,
        }
    }

    /// The address of a style sheet, script or picture of the program.
    pub fn asset(&self, name: &str) -> String {
        super::assets::address(name)
    }

    /// Marks where in the navigation this page stands.
    pub fn at(mut self, path: &str) -> Self {
        for link in &mut self.nav {
            link.current = link.href == path
                || (link.href != "/" && path.starts_with(&format!("{}/", link.href)));
        }
        self
    }

    /// Says what the form before this page has done, by the code in its address.
    pub fn saying(mut self, code: Option<&str>) -> Self {
        self.notice = code.and_then(|code| notice(self.t, code));
        self
    }

    /// Keeps the page live by this stream.
    pub fn told_by(mut self, stream: Option<String>) -> Self {
        self.live = stream;
        self
    }
}

/// A name to show; one that was erased is said to be.
pub fn name_or_erased(t: Text, name: Option<&str>) -> String {
    name.map_or_else(|| t.say("name-erased").to_string(), ToOwned::to_owned)
}

fn notice(t: Text, code: &str) -> Option<String> {
    let message = match code {
        "saved" => t.say("said-saved"),
        "restored" => t.say("said-restored"),
        "made" => t.say("said-made"),
        "published" => t.say("said-published"),
        "shared" => t.say("said-shared"),
        "unshared" => t.say("said-unshared"),
        "withdrawn" => t.say("said-withdrawn"),
        "acknowledged" => t.say("said-acknowledged"),
        "signed" => t.say("said-signed"),
        "sent" => t.say("said-sent"),
        "photographed" => t.say("said-photographed"),
        "translated" => t.say("said-translated"),
        "moved" => t.say("said-moved"),
        "measured" => t.say("said-measured"),
        "decided" => t.say("said-decided"),
        "sealed" => t.say("said-sealed"),
        "begun" => t.say("said-begun"),
        "concluded" => t.say("said-concluded"),
        "ended" => t.say("said-ended"),
        _ => return None,
    };
    Some(message.to_string())
}
