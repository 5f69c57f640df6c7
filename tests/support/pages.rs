//! The pages as a browser meets them: the real router, without a network.
//!
//! ```ignore
//! let site = Site::with_revision(db).await;
//! let mut linh = site.browser(&site.cast.sao_mai.lead).await;
//! let page = linh.visits("/").await;
//! assert!(page.sees("Acknowledge revision 1"));
//! let page = linh.sends(page.form("/styles/1/threads/2/move").set("move", "close")).await;
//! assert_eq!(page.goes_to(), "/styles/1?said=moved");
//! ```

#[path = "pages/form.rs"]
mod form;

use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::sync::Arc;

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::extract::ConnectInfo;
use axum::http::{HeaderMap, Method, Request, StatusCode, header};
use fellseam::files::{Files, Limits, Renderer};
use fellseam::store::{Db, Store};
use fellseam::web::{App, Settings, router};
use scraper::{Html, Selector};
use tempfile::TempDir;
use tower::ServiceExt;

use crate::support::cast::{Cast, Person, pictures};

pub use form::FormOf;
use form::fields;

/// Everybody of the cast, and the pages that they meet.
pub struct Site {
    pub cast: Cast,
    pub app: App,
    pub files: Files,
    /// Of the half-zip: `/styles/ID`.
    pub style: String,
    router: Router,
    _folder: Arc<TempDir>,
}

impl Site {
    /// The half-zip is a draft, shared with nobody.
    pub async fn new(db: Db) -> Site {
        Site::of(Cast::new(db).await, "http://127.0.0.1:8640", true).await
    }

    /// Revision 1 of the half-zip is published and shared with Sao Mai Garment.
    pub async fn with_revision(db: Db) -> Site {
        Site::of(Cast::with_revision(db).await, "http://127.0.0.1:8640", true).await
    }

    pub async fn of(cast: Cast, public_url: &str, demo: bool) -> Site {
        let (app, folder) = serves(cast.store.clone(), public_url, demo).await;
        let files = app.files.clone();
        // The cast knows its drawing by its digest: here are the bytes.
        let drawing = files.put("the front of the half-zip").await.expect("kept");
        for picture in pictures(&drawing) {
            let bytes = format!("{drawing} {} pixels wide", picture.width);
            files.put(bytes).await.expect("kept");
        }
        Site {
            style: format!("/styles/{}", cast.brand.style),
            router: router(app.clone()),
            app,
            files,
            cast,
            _folder: Arc::new(folder),
        }
    }

    /// A browser that nobody is signed in with.
    pub fn stranger(&self) -> Browser {
        Browser::on(self.router.clone())
    }

    /// A browser with this person's session.
    pub async fn browser(&self, person: &Person) -> Browser {
        let mut browser = self.stranger();
        let name = if self.app.settings.secure() {
            "__Host-fellseam"
        } else {
            "fellseam"
        };
        browser
            .cookies
            .insert(name.to_owned(), person.signs_in().await);
        browser
    }
}

/// The service on a store, and the folder of its files.
pub async fn serves(store: Store, public_url: &str, demo: bool) -> (App, TempDir) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let files = Files::open(folder.path()).await.expect("a folder of files");
    let program = env!("CARGO_BIN_EXE_fellseam");
    let renderer = Renderer::new(program, Limits::default(), None);
    let settings = Settings {
        public_url: public_url.to_owned(),
        demo,
        behind_proxy: false,
        mails: true,
    };
    (App::new(store, files, renderer, settings), folder)
}

/// Keeps cookies, and sends forms as they stand on the page.
#[derive(Clone)]
pub struct Browser {
    router: Router,
    pub cookies: BTreeMap<String, String>,
    /// Sent with every request.
    pub headers: HeaderMap,
    /// Where requests come from; nowhere that is known, else.
    pub peer: Option<[u8; 4]>,
}

/// One answer.
pub struct Page {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub bytes: Vec<u8>,
    path: String,
}

impl Browser {
    pub fn on(router: Router) -> Browser {
        Browser {
            router,
            cookies: BTreeMap::new(),
            headers: HeaderMap::new(),
            peer: None,
        }
    }

    /// One GET; redirects are not followed.
    pub async fn visits(&mut self, path: &str) -> Page {
        let request = Request::builder().method(Method::GET).uri(path);
        let request = request.body(Body::empty()).expect("a request");
        self.asks(request).await
    }

    /// Follows redirects to a page.
    pub async fn opens(&mut self, path: &str) -> Page {
        let mut page = self.visits(path).await;
        for _ in 0..5 {
            if !page.status.is_redirection() || page.status == StatusCode::NOT_MODIFIED {
                break;
            }
            let to = page.goes_to();
            page = self.visits(&to).await;
        }
        page
    }

    /// Sends a form; redirects are not followed.
    pub async fn sends(&mut self, form: FormOf) -> Page {
        let request = Request::builder()
            .method(Method::POST)
            .uri(&form.action)
            .header("sec-fetch-site", "same-origin");
        let request = if form.files.is_empty() {
            let body = form_urlencoded::Serializer::new(String::new())
                .extend_pairs(&form.fields)
                .finish();
            request
                .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
                .body(Body::from(body))
        } else {
            request
                .header(
                    header::CONTENT_TYPE,
                    "multipart/form-data; boundary=seam-of-the-test",
                )
                .body(Body::from(form.multipart("seam-of-the-test")))
        };
        self.asks(request.expect("a request")).await
    }

    /// Sends a form and follows to the page after it.
    pub async fn sends_and_opens(&mut self, form: FormOf) -> Page {
        let page = self.sends(form).await;
        if page.status == StatusCode::SEE_OTHER {
            let to = page.goes_to();
            return self.opens(&to).await;
        }
        page
    }

    /// Sends fields to a path with this person's form token, as a form of any page would.
    pub async fn posts(&mut self, path: &str, fields: &[(&str, &str)]) -> Page {
        let mut form = FormOf {
            action: path.to_owned(),
            fields: vec![("token".to_owned(), self.token().await)],
            files: Vec::new(),
        };
        for (name, value) in fields {
            form.fields.push(((*name).to_owned(), (*value).to_owned()));
        }
        self.sends(form).await
    }

    /// The form token of this browser's session; empty when nobody is signed in.
    pub async fn token(&mut self) -> String {
        let page = self.visits("/me").await;
        if page.status != StatusCode::OK {
            return String::new();
        }
        let form = page.form("/me");
        let token = form.fields.iter().find(|(name, _)| name == "token");
        token.map(|(_, value)| value.clone()).unwrap_or_default()
    }

    /// Sends any request with this browser's cookies, and keeps those that come back.
    pub async fn asks(&mut self, request: Request<Body>) -> Page {
        self.exchange(request, true).await
    }

    /// The same without waiting for the body, which may have no end.
    pub async fn asks_for_head(&mut self, request: Request<Body>) -> Page {
        self.exchange(request, false).await
    }

    async fn exchange(&mut self, mut request: Request<Body>, whole: bool) -> Page {
        let path = request.uri().to_string();
        if !self.cookies.is_empty() {
            let line: Vec<String> = self
                .cookies
                .iter()
                .map(|(name, value)| format!("{name}={value}"))
                .collect();
            let line = line.join("; ").parse().expect("a header");
            request.headers_mut().insert(header::COOKIE, line);
        }
        for (name, value) in &self.headers {
            request.headers_mut().insert(name.clone(), value.clone());
        }
        request
            .headers_mut()
            .entry(header::HOST)
            .or_insert("127.0.0.1:8640".parse().expect("a header"));
        if let Some(peer) = self.peer {
            let peer = SocketAddr::from((peer, 4000));
            request.extensions_mut().insert(ConnectInfo(peer));
        }
        let answer = self.router.clone().oneshot(request).await;
        let answer = answer.expect("the router answers");
        let (parts, body) = answer.into_parts();
        for cookie in parts.headers.get_all(header::SET_COOKIE) {
            let cookie = cookie.to_str().expect("text");
            let pair = cookie.split(';').next().unwrap_or_default();
            let (name, value) = pair.split_once('=').expect("a cookie");
            if value.is_empty() {
                self.cookies.remove(name);
            } else {
                self.cookies.insert(name.to_owned(), value.to_owned());
            }
        }
        Page {
            status: parts.status,
            headers: parts.headers,
            bytes: match whole {
                true => to_bytes(body, usize::MAX).await.expect("a body").to_vec(),
                false => Vec::new(),
            },
            path,
        }
    }
}

impl Page {
    pub fn text(&self) -> String {
        String::from_utf8_lossy(&self.bytes).into_owned()
    }

    fn html(&self) -> Html {
        Html::parse_document(&self.text())
    }

    /// What a reader sees: the text without tags, runs of white space as one space.
    pub fn reads(&self) -> String {
        let html = self.html();
        let text: String = html.root_element().text().collect::<Vec<_>>().join(" ");
        text.split_whitespace().collect::<Vec<_>>().join(" ")
    }

    /// Whether the reader sees these words.
    pub fn sees(&self, words: &str) -> bool {
        self.reads().contains(words)
    }

    /// Fails, showing the page, unless the reader sees these words.
    #[track_caller]
    pub fn must_see(&self, words: &str) {
        assert!(
            self.sees(words),
            "{} ({}) does not show {words:?}:\n{}",
            self.path,
            self.status,
            self.reads()
        );
    }

    #[track_caller]
    pub fn must_be(&self, status: StatusCode) {
        assert_eq!(self.status, status, "{}:\n{}", self.path, self.reads());
    }

    /// Where a redirect leads.
    #[track_caller]
    pub fn goes_to(&self) -> String {
        let to = self.headers.get(header::LOCATION);
        let to = to.unwrap_or_else(|| panic!("{} leads nowhere:\n{}", self.path, self.reads()));
        to.to_str().expect("text").to_owned()
    }

    /// What the header says; empty when it is not there.
    pub fn header(&self, name: &str) -> &str {
        let value = self.headers.get(name);
        value.map_or("", |value| value.to_str().expect("text"))
    }

    /// The text of every element that the selector finds.
    pub fn all(&self, selector: &str) -> Vec<String> {
        let selector = Selector::parse(selector).expect("a selector");
        let html = self.html();
        html.select(&selector)
            .map(|element| {
                let text = element.text().collect::<Vec<_>>().join(" ");
                text.split_whitespace().collect::<Vec<_>>().join(" ")
            })
            .collect()
    }

    /// This attribute of every element that the selector finds.
    pub fn attributes(&self, selector: &str, name: &str) -> Vec<String> {
        let selector = Selector::parse(selector).expect("a selector");
        let html = self.html();
        html.select(&selector)
            .filter_map(|element| element.attr(name))
            .map(ToOwned::to_owned)
            .collect()
    }

    /// The address of the first link whose text holds these words.
    #[track_caller]
    pub fn link(&self, words: &str) -> String {
        let html = self.html();
        let links = Selector::parse("a[href]").expect("a selector");
        let found = html.select(&links).find(|link| {
            let text = link.text().collect::<Vec<_>>().join(" ");
            let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
            text.contains(words)
        });
        let found = found.unwrap_or_else(|| panic!("no link {words:?}:\n{}", self.reads()));
        found.attr("href").expect("selected by it").to_owned()
    }

    /// What stands in the field with this id, in a form or outside of one.
    #[track_caller]
    pub fn form_value(&self, id: &str) -> String {
        let found = self
            .attributes(&format!("#{id}"), "value")
            .into_iter()
            .next();
        found.unwrap_or_else(|| panic!("{} has no field {id}", self.path))
    }

    pub fn has_form(&self, action: &str) -> bool {
        self.forms().iter().any(|form| form.action == action)
    }

    /// The form that sends to this address, filled as it stands on the page.
    #[track_caller]
    pub fn form(&self, action: &str) -> FormOf {
        let found = self.forms().into_iter().find(|form| form.action == action);
        found.unwrap_or_else(|| {
            let all: Vec<String> = self.forms().into_iter().map(|form| form.action).collect();
            panic!(
                "{} has no form {action}: {all:?}\n{}",
                self.path,
                self.reads()
            )
        })
    }

    /// The forms that are sent by POST.
    pub fn forms(&self) -> Vec<FormOf> {
        let html = self.html();
        let forms = Selector::parse("form").expect("a selector");
        let path = self.path.split('?').next().unwrap_or_default();
        html.select(&forms)
            .filter(|form| {
                form.attr("method")
                    .is_some_and(|m| m.eq_ignore_ascii_case("post"))
            })
            .map(|form| FormOf {
                action: without_fragment(form.attr("action").unwrap_or(path)),
                fields: fields(form),
                files: Vec::new(),
            })
            .collect()
    }
}

/// A browser keeps what stands behind `#` to itself.
fn without_fragment(address: &str) -> String {
    address.split('#').next().unwrap_or_default().to_owned()
}
