//! Forms. Content is yielded only after the check that this person's own page sent it.

use axum::extract::{FromRequest, Multipart, Request};
use axum::http::{HeaderMap, header};
use unicode_normalization::UnicodeNormalization;

use super::App;
use super::problem::Problem;
use super::visit::Visitor;
use crate::language::Text;

/// The field that carries the token against forged forms, and the header for scripts.
pub const TOKEN_FIELD: &str = "token";
const TOKEN_HEADER: &str = "x-fellseam-token";

/// The largest form without files; a grid of 200 points is about 60 KiB.
const TEXT_LIMIT: usize = 2 * 1024 * 1024;
/// The largest form with files.
pub const UPLOAD_LIMIT: usize = 256 * 1024 * 1024;
/// The longest text of one field, in characters.
const LONGEST_LINE: usize = 500;
/// How many files one form may bring.
const UPLOADS: usize = 12;

/// A signed-in person's form.
#[derive(Debug, Clone)]
pub struct Form {
    pub fields: Fields,
    pub uploads: Vec<Upload>,
}

/// The form of somebody who is not signed in: sent by a page of this site, as browsers tell.
#[derive(Debug)]
pub struct PublicForm(pub Fields);

/// A file that came with a form.
#[derive(Debug, Clone)]
pub struct Upload {
    pub field: String,
    /// As the sender's machine called it.
    pub name: String,
    pub bytes: Vec<u8>,
}

/// Names and values in the order they came; text is NFC, without NUL, lines end in LF.
#[derive(Debug, Default, Clone)]
pub struct Fields(Vec<(String, String)>);

impl Fields {
    fn push(&mut self, name: String, value: &str) -> Result<(), Problem> {
        if value.contains('\0') || name.contains('\0') {
            return Err(Problem::BadForm);
        }
        let value = value.replace("\r\n", "\n").nfc().collect();
        self.0.push((name, value));
        Ok(())
    }

    pub(super) fn parse(body: &[u8]) -> Result<Self, Problem> {
        let mut fields = Fields::default();
        for (name, value) in form_urlencoded::parse(body) {
            fields.push(name.into_owned(), &value)?;
        }
        Ok(fields)
    }

    /// The field's text without the space around it; empty when it is not there.
    pub fn text(&self, name: &str) -> &str {
        self.raw(name).trim()
    }

    /// The field's text as it was sent: a password may begin with a space.
    pub fn raw(&self, name: &str) -> &str {
        let field = self.0.iter().find(|(field, _)| field == name);
        field.map_or("", |(_, value)| value)
    }

    /// Every value of a field that may come more than once, in order, trimmed.
    pub fn all<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a str> {
        self.0
            .iter()
            .filter(move |(field, _)| field == name)
            .map(|(_, value)| value.trim())
    }

    pub fn has(&self, name: &str) -> bool {
        self.0.iter().any(|(field, _)| field == name)
    }

    /// A short text. One that is too long is given back whole, to stand in its field again, with
    /// an error beside it.
    pub fn line(&self, t: Text, name: &str, errors: &mut Errors) -> String {
        let text = self.text(name);
        if text.chars().count() > LONGEST_LINE {
            errors.add(name, t.say("error-text-long").with("most", LONGEST_LINE));
        }
        text.to_owned()
    }

    /// A whole number; `None` when it is missing or none.
    pub fn number<T: std::str::FromStr>(&self, name: &str) -> Option<T> {
        self.text(name).parse().ok()
    }
}

/// What is wrong with a form, by field.
#[derive(Debug, Default, Clone)]
pub struct Errors(Vec<(String, String)>);

impl Errors {
    pub fn add(&mut self, field: impl Into<String>, sentence: impl Into<String>) {
        self.0.push((field.into(), sentence.into()));
    }

    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The first thing that is wrong with this field.
    pub fn of(&self, field: &str) -> Option<&str> {
        let found = self.0.iter().find(|(name, _)| name == field);
        found.map(|(_, sentence)| sentence.as_str())
    }

    /// Every field that is wrong with its sentence, in the order they were met.
    pub fn all(&self) -> impl Iterator<Item = (&str, &str)> {
        self.0
            .iter()
            .map(|(field, sentence)| (field.as_str(), sentence.as_str()))
    }
}

impl FromRequest<App> for Form {
    type Rejection = Problem;

    async fn from_request(request: Request, app: &App) -> Result<Self, Problem> {
        let visitor = Visitor::of(request.extensions());
        let expected = visitor.form_token().ok_or(Problem::SignIn)?;
        let header = request
            .headers()
            .get(TOKEN_HEADER)
            .and_then(|value| value.to_str().ok())
            .map(ToOwned::to_owned);
        let by_header = header.is_some_and(|token| same(&token, &expected));
        if is_multipart(request.headers()) {
            return multipart(request, app, by_header, &expected).await;
        }
        let fields = read_text(request).await?;
        if !by_header && !same(fields.text(TOKEN_FIELD), &expected) {
            return Err(Problem::Forged);
        }
        Ok(Form {
            fields,
            uploads: Vec::new(),
        })
    }
}

impl FromRequest<App> for PublicForm {
    type Rejection = Problem;

    async fn from_request(request: Request, _app: &App) -> Result<Self, Problem> {
        if !from_this_site(request.headers()) {
            return Err(Problem::Forged);
        }
        Ok(PublicForm(read_text(request).await?))
    }
}

async fn read_text(request: Request) -> Result<Fields, Problem> {
    let body = axum::body::to_bytes(request.into_body(), TEXT_LIMIT)
        .await
        .map_err(|_| Problem::TooLarge)?;
    Fields::parse(&body)
}

/// Reads a form with files. The token comes first in it, so nothing is read for a forger.
async fn multipart(
    request: Request,
    app: &App,
    mut allowed: bool,
    expected: &str,
) -> Result<Form, Problem> {
    let mut parts = Multipart::from_request(request, app)
        .await
        .map_err(|_| Problem::BadForm)?;
    let mut form = Form {
        fields: Fields::default(),
        uploads: Vec::new(),
    };
    while let Some(part) = parts.next_field().await.map_err(|_| Problem::TooLarge)? {
        let name = part.name().unwrap_or_default().to_owned();
        let Some(file_name) = part.file_name().map(ToOwned::to_owned) else {
            let value = part.text().await.map_err(|_| Problem::BadForm)?;
            if name == TOKEN_FIELD {
                allowed |= same(&value, expected);
            }
            form.fields.push(name, &value)?;
            continue;
        };
        if !allowed {
            return Err(Problem::Forged);
        }
        let bytes = part.bytes().await.map_err(|_| Problem::TooLarge)?;
        // A file field that was left alone comes as an empty file without a name.
        if bytes.is_empty() {
            continue;
        }
        if form.uploads.len() == UPLOADS {
            return Err(Problem::TooLarge);
        }
        form.uploads.push(Upload {
            field: name,
            name: file_name.nfc().filter(|c| !c.is_control()).collect(),
            bytes: bytes.to_vec(),
        });
    }
    if allowed {
        Ok(form)
    } else {
        Err(Problem::Forged)
    }
}

fn is_multipart(headers: &HeaderMap) -> bool {
    headers
        .get(header::CONTENT_TYPE)
        .and_then(|value| value.to_str().ok())
        .is_some_and(|kind| kind.starts_with("multipart/form-data"))
}

/// Browsers say where a form was sent from: newer ones by `Sec-Fetch-Site`, older ones by `Origin`.
fn from_this_site(headers: &HeaderMap) -> bool {
    let text = |name: &str| headers.get(name).and_then(|value| value.to_str().ok());
    if let Some(site) = text("sec-fetch-site") {
        return matches!(site, "same-origin" | "none");
    }
    match (text("origin"), text("host")) {
        // A page without referrer sends "null"; such a browser also has no better way to tell.
        (None | Some("null"), _) => true,
        (Some(origin), Some(host)) => origin
            .split_once("://")
            .is_some_and(|(_, sender)| sender == host),
        (Some(_), None) => false,
    }
}

/// Compares without telling by time how much was right.
fn same(given: &str, expected: &str) -> bool {
    given.len() == expected.len()
        && given
            .bytes()
            .zip(expected.bytes())
            .fold(0, |difference, (a, b)| difference | (a ^ b))
            == 0
}

#[cfg(test)]
mod tests {
    use super::*;
    use axum::http::HeaderValue;

    fn headers(pairs: &[(&'static str, &'static str)]) -> HeaderMap {
        pairs
            .iter()
            .map(|(name, value)| (name.parse().unwrap(), HeaderValue::from_static(value)))
            .collect()
    }

    #[test]
    fn a_form_from_elsewhere_is_told_by_its_headers() {
        let host = ("host", "specs.example.org");
        assert!(from_this_site(&headers(&[
            host,
            ("sec-fetch-site", "same-origin")
        ])));
        assert!(!from_this_site(&headers(&[
            host,
            ("sec-fetch-site", "cross-site")
        ])));
        assert!(from_this_site(&headers(&[
            host,
            ("origin", "https://specs.example.org")
        ])));
        assert!(!from_this_site(&headers(&[
            host,
            ("origin", "https://evil.example")
        ])));
    }

    #[test]
    fn text_is_made_one_form_at_the_edge() {
        let fields = Fields::parse("name=Cafe%CC%81+&name=two&note=a%0D%0Ab".as_bytes()).unwrap();
        assert_eq!(fields.text("name"), "Caf\u{e9}");
        assert_eq!(fields.all("name").collect::<Vec<_>>(), ["Caf\u{e9}", "two"]);
        assert_eq!(fields.text("note"), "a\nb");
        assert_eq!(fields.text("missing"), "");
        assert!(Fields::parse(b"name=a%00b").is_err());
    }
}
