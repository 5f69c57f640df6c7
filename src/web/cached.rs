//! Pages of a style that were made before are sent again instead of made again.
//!
//! Session and share are looked at before, by the extractor, at every request. What is kept is one
//! person's own page, compressed, under everything that it is made from.

use std::io::Write;
use std::time::Duration;

use askama::Template;
use axum::body::Bytes;
use axum::http::{HeaderMap, HeaderName, StatusCode, header};
use axum::response::{Html, IntoResponse};
use flate2::Compression;
use flate2::write::GzEncoder;
use moka::sync::Cache;

use super::App;
use super::may::MayOn;
use super::page::Answer;
use super::problem::Problem;
use crate::access::Act;
use crate::spec::Digest;

/// The memory that kept pages may take; one of 45 points in 8 sizes takes about 20 KiB.
const MEMORY: u64 = 64 * 1024 * 1024;
/// How long a page is kept at most.
const LONGEST: Duration = Duration::from_secs(60 * 60);

/// How hard pages are pressed. One of 45 points in 8 sizes: 181 µs and 15.2 KB, where level 6 takes
/// 459 µs for 13.8 KB.
const LEVEL: Compression = Compression::new(2);

/// The compressed pages that were made last, by what they are made from.
#[derive(Debug, Clone)]
pub struct Kept(Cache<Digest, Bytes>);

impl Default for Kept {
    fn default() -> Self {
        let weight = |_: &Digest, body: &Bytes| u32::try_from(body.len()).unwrap_or(u32::MAX);
        let kept = Cache::builder()
            .weigher(weight)
            .max_capacity(MEMORY)
            // What was erased is not kept for as long as the program runs.
            .time_to_live(LONGEST);
        Self(kept.build())
    }
}

/// Answers with the page that `make` makes of the style, or without making it: *not modified* when
/// the browser has it, the kept body when it was made before.
///
/// The page may be made from nothing but the style as its ledger tells it (never a draft, which
/// moves without an act), the person who asks, and the address.
pub async fn cached<A: Act, T: Template>(
    app: &App,
    may: &MayOn<A>,
    headers: &HeaderMap,
    make: impl Future<Output = Result<T, Problem>>,
) -> Answer {
    let key = key(may);
    // Weak: compressed or not, it is the same page.
    let etag = format!("W/\"{key}\"");
    let about: [(HeaderName, &str); 2] = [
        (header::ETAG, &etag),
        (header::VARY, "accept-encoding, cookie"),
    ];
    if lists(headers, &header::IF_NONE_MATCH, |known| known == etag) {
        return Ok((StatusCode::NOT_MODIFIED, about).into_response());
    }
    if !lists(headers, &header::ACCEPT_ENCODING, is_gzip) {
        return Ok((about, Html(make.await?.render()?)).into_response());
    }
    let body = match app.kept.0.get(&key) {
        Some(body) => body,
        None => {
            let body = gzip(make.await?.render()?.as_bytes())?;
            app.kept.0.insert(key, body.clone());
            body
        }
    };
    let gzipped = [(header::CONTENT_ENCODING, "gzip")];
    Ok((about, gzipped, Html(body)).into_response())
}

/// Everything that a page is made from: the program, the session (forms carry its token), who it
/// is, the style as it stands, and the address with what it asks.
fn key<A: Act>(may: &MayOn<A>) -> Digest {
    let who = &may.who;
    let session = &who.session;
    let parts = [
        env!("FELLSEAM_BUILD"),
        &who.form_token,
        session.actor.person.as_str(),
        session.actor.role.name(),
        session.name.as_deref().unwrap_or_default(),
        &session.org_name,
        who.t.lang(),
        &may.edition,
        &who.address,
    ];
    Digest::of(parts.join("\0").as_bytes())
}

/// Whether one of the comma-separated values of a header is it.
fn lists(headers: &HeaderMap, name: &HeaderName, is_it: impl Fn(&str) -> bool) -> bool {
    let lines = headers.get_all(name).iter();
    let lines = lines.filter_map(|value| value.to_str().ok());
    lines
        .flat_map(|line| line.split(','))
        .any(|value| is_it(value.trim()))
}

/// A coding that is taken, as `gzip` or `gzip;q=0.5`; `q=0` refuses it (RFC 9110, 12.4.2).
fn is_gzip(coding: &str) -> bool {
    let (name, weight) = coding.split_once(';').unwrap_or((coding, ""));
    let weight = weight.trim().strip_prefix("q=").unwrap_or("1");
    name.trim().eq_ignore_ascii_case("gzip") && weight.parse().is_ok_and(|q: f32| q > 0.0)
}

/// A page compressed as it is sent.
pub fn gzip(html: &[u8]) -> std::io::Result<Bytes> {
    let mut encoder = GzEncoder::new(Vec::with_capacity(html.len() / 4), LEVEL);
    encoder.write_all(html)?;
    Ok(Bytes::from(encoder.finish()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_browser_says_whether_it_takes_gzip() {
        for takes in ["gzip", "GZIP", "gzip;q=0.5", "gzip; q=1"] {
            assert!(is_gzip(takes), "{takes}");
        }
        for refuses in ["br", "gzip;q=0", "gzip;q=0.0", "x-gzip", ""] {
            assert!(!is_gzip(refuses), "{refuses}");
        }
        let mut headers = HeaderMap::new();
        headers.insert(header::ACCEPT_ENCODING, "br, gzip".parse().unwrap());
        assert!(lists(&headers, &header::ACCEPT_ENCODING, is_gzip));
        assert!(!lists(&headers, &header::IF_NONE_MATCH, is_gzip));
    }
}
