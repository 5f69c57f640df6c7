//! The revision page under load: 45 points in 8 sizes and 40 open threads, read by a signed-in
//! merchandiser over loopback, session and share looked at every time, on both databases; beside
//! it, in the same run, two bare handlers: one sends the same bytes compressed once, the other
//! compresses the same page at each request, as a page must be that is made at each request.
//!
//! `cargo bench --bench load`, with PostgreSQL as the tests want it. Takes about a minute.
//!
//! Goals: made at each request at least 0.05 of the bare handler's requests per second with 99 in
//! 100 answered within 25 ms; from the kept body at least 0.2.

#![allow(
    clippy::disallowed_methods,
    reason = "a measurement takes the time as it is"
)]

#[path = "../tests/support/mod.rs"]
mod support;

use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

use axum::Router;
use axum::body::{Body, Bytes, to_bytes};
use axum::http::{Request, Response, header};
use axum::routing::get;
use fellseam::access::{StylePermit, act, grant_on};
use fellseam::files::{Files, Limits, Renderer};
use fellseam::spec::StyleId;
use fellseam::store::Db;
use fellseam::web::{App, Settings, gzip, router};
use support::cast::Cast;
use support::database::{on_postgres, on_sqlite};
use support::large::{POINTS, SIZES, large};
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};
use tower::ServiceExt;

const THREADS: usize = 40;
/// People who load the page at the same time, each again as soon as they have it: two for each of
/// two cores. With more the times are those of the queue (with eight twice these), at the same
/// requests per second.
const READERS: usize = 4;
const WARMING: Duration = Duration::from_millis(500);
const MEASURING: Duration = Duration::from_secs(4);
/// How often each step of an answer is taken to say where the time goes.
const STEPS: u32 = 300;

fn main() {
    let runtime = tokio::runtime::Runtime::new().expect("a runtime");
    println!("{POINTS} points in {SIZES} sizes, {THREADS} threads, {READERS} readers at once");
    runtime.block_on(on_sqlite(async |db, _| measure("SQLite", db).await));
    runtime.block_on(on_postgres(async |db, _| measure("PostgreSQL", db).await));
}

async fn measure(name: &str, db: Db) {
    let cast = Cast::new(db).await;
    let spec = large();
    let style = cast.brand.lead.starts(&spec).await;
    let (brand, sao_mai) = (cast.brand.on(&style), cast.sao_mai.on(&style));
    brand.publishes("First issue").await.expect("published");
    brand.shares_with(&sao_mai).await.expect("shared");
    for number in 0..THREADS {
        let item = spec.points.points[number].id.as_str();
        let asked = sao_mai.asks(item, "Is this measured with the rib?").await;
        asked.expect("asked");
    }
    let token = sao_mai.lead.signs_in().await;

    let folder = tempfile::tempdir().expect("a temporary folder");
    let files = Files::open(folder.path()).await.expect("a folder of files");
    let settings = Settings {
        public_url: "http://127.0.0.1:8640".to_owned(),
        demo: false,
        behind_proxy: false,
        mails: false,
    };
    // No picture is drawn here.
    let renderer = Renderer::new("no-program", Limits::default(), None);
    let app = App::new(cast.store.clone(), files, renderer, settings);
    let service = router(app);
    let page = format!("/styles/{style}/revisions/1");
    let head = format!("host: bench\r\ncookie: fellseam={token}\r\naccept-encoding: gzip\r\n");

    let answer = ask(&service, &page, &token).await;
    let etag = answer.headers()[header::ETAG].clone();
    let etag = etag.to_str().expect("text");
    let known = format!("{head}if-none-match: {etag}\r\n");
    let plain = Request::builder()
        .uri(&page)
        .header(header::COOKIE, format!("fellseam={token}"));
    let plain = plain.body(Body::empty()).expect("a request");
    let plain = whole(service.clone().oneshot(plain).await.expect("an answer")).await;
    let body = whole(answer).await;
    assert_eq!(body, gzip(&plain).expect("compressed"), "the same page");
    println!("\n{name}: {} bytes, {} compressed", plain.len(), body.len());

    let ready = serve(bare(move || body.clone())).await;
    let to_press = plain.clone();
    let pressing = serve(bare(move || gzip(&to_press).expect("compressed"))).await;
    let ours = serve(service.clone()).await;
    let count = AtomicU64::new(0);
    // Another address each time is another page: it is made, compressed and kept.
    let new = |page: &str| format!("{page}?n={}", count.fetch_add(1, Ordering::Relaxed));
    let same = |page: &str| page.to_owned();

    let ready = load(&ready, &page, &head, &same).await;
    println!("  {:32} {ready}", "bare, compressed once");
    let pressing = load(&pressing, &page, &head, &same).await;
    println!("  {:32} {pressing}", "bare, compressing each time");
    for (what, head, path) in [
        (
            "made at each request",
            &head,
            &new as &(dyn Fn(&str) -> String + Sync),
        ),
        ("from the kept body", &head, &same),
        ("304, nothing changed", &known, &same),
    ] {
        let figures = load(&ours, &page, head, path).await;
        println!(
            "  {what:32} {figures}, {:.3} of bare compressed once, {:.2} of bare compressing",
            figures.per_second / ready.per_second,
            figures.per_second / pressing.per_second
        );
    }
    where_it_goes(&cast, &service, &page, &token, etag, &plain, &style).await;
}

/// One connection after the other is served like this, without a layer.
fn bare(body: impl Fn() -> Bytes + Clone + Send + Sync + 'static) -> Router {
    let answer = move || {
        let body = body();
        async move {
            Response::builder()
                .header(header::CONTENT_TYPE, "text/html; charset=utf-8")
                .header(header::CONTENT_ENCODING, "gzip")
                .body(Body::from(body))
                .expect("a response")
        }
    };
    Router::new().fallback(get(answer))
}

async fn serve(service: Router) -> String {
    let listener = TcpListener::bind("127.0.0.1:0").await.expect("a port");
    let address = listener.local_addr().expect("an address").to_string();
    tokio::spawn(async move { axum::serve(listener, service).await });
    address
}

struct Figures {
    per_second: f64,
    median: Duration,
    slow: Duration,
}

impl std::fmt::Display for Figures {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let ms = |time: Duration| time.as_secs_f64() * 1000.0;
        write!(
            f,
            "{:8.0} requests/s, p50 {:6.2} ms, p99 {:6.2} ms",
            self.per_second,
            ms(self.median),
            ms(self.slow)
        )
    }
}

/// Every reader keeps one connection, from a thread that is not the server's.
async fn load(
    address: &str,
    page: &str,
    head: &str,
    path: &(dyn Fn(&str) -> String + Sync),
) -> Figures {
    let clients = async {
        let start = Instant::now();
        let readers = (0..READERS).map(|_| reader(address, page, head, path, start));
        futures::future::join_all(readers).await.concat()
    };
    let mut times = std::thread::scope(|scope| {
        let client = scope.spawn(|| {
            let runtime = tokio::runtime::Builder::new_current_thread()
                .enable_all()
                .build();
            runtime.expect("a runtime").block_on(clients)
        });
        // The server's other threads go on meanwhile.
        tokio::task::block_in_place(|| client.join().expect("the readers end well"))
    });
    times.sort_unstable();
    Figures {
        per_second: times.len() as f64 / MEASURING.as_secs_f64(),
        median: times[times.len() / 2],
        slow: times[times.len() * 99 / 100],
    }
}

async fn reader(
    address: &str,
    page: &str,
    head: &str,
    path: &(dyn Fn(&str) -> String + Sync),
    start: Instant,
) -> Vec<Duration> {
    let mut stream = TcpStream::connect(address).await.expect("a connection");
    stream.set_nodelay(true).expect("an option of the socket");
    let mut times = Vec::new();
    let mut bytes = Vec::new();
    while start.elapsed() < WARMING + MEASURING {
        let request = format!("GET {} HTTP/1.1\r\n{head}\r\n", path(page));
        let sent = Instant::now();
        stream.write_all(request.as_bytes()).await.expect("sent");
        answered(&mut stream, &mut bytes).await;
        if start.elapsed() > WARMING {
            times.push(sent.elapsed());
        }
    }
    times
}

/// Reads one whole answer: 200 with the body that its head announces, or 304 without one.
async fn answered(stream: &mut TcpStream, bytes: &mut Vec<u8>) {
    bytes.clear();
    let end = loop {
        let read = stream.read_buf(bytes).await.expect("an answer");
        assert!(read > 0, "the server hung up");
        if let Some(end) = bytes.windows(4).position(|four| four == b"\r\n\r\n") {
            break end + 4;
        }
    };
    let head = std::str::from_utf8(&bytes[..end])
        .expect("text")
        .to_ascii_lowercase();
    let status = &head[9..12];
    assert!(matches!(status, "200" | "304"), "{head}");
    let length = head.split("content-length: ").nth(1);
    let length = length.and_then(|rest| rest.split("\r\n").next());
    let length: usize = length.map_or(0, |length| length.parse().expect("a number"));
    assert!(length > 0 || status == "304", "{head}");
    while bytes.len() < end + length {
        let read = stream.read_buf(bytes).await.expect("an answer");
        assert!(read > 0, "the server hung up");
    }
}

async fn whole(answer: Response<Body>) -> Bytes {
    let body = to_bytes(answer.into_body(), usize::MAX).await;
    body.expect("a body")
}

async fn ask(service: &Router, path: &str, token: &str) -> Response<Body> {
    let request = Request::builder()
        .uri(path)
        .header(header::COOKIE, format!("fellseam={token}"))
        .header(header::ACCEPT_ENCODING, "gzip")
        .body(Body::empty())
        .expect("a request");
    let answer = service.clone().oneshot(request).await;
    answer.expect("the router answers")
}

/// The steps of one answer, one after the other and without a network.
async fn where_it_goes(
    cast: &Cast,
    service: &Router,
    page: &str,
    token: &str,
    etag: &str,
    plain: &[u8],
    style: &StyleId,
) {
    let store = &cast.store;
    let visit = async || store.visit(token, Some(style), true).await.expect("read");
    let facts = visit().await.expect("a session").style.expect("a style");
    let actor = &cast.sao_mai.lead.actor;
    let permit: StylePermit<act::Read> = grant_on(actor, &facts).expect("shared");
    let count = AtomicU64::new(0);

    let session = each(async || drop(visit().await)).await;
    let known = each(async || {
        let request = Request::builder()
            .uri(page)
            .header(header::COOKIE, format!("fellseam={token}"))
            .header(header::IF_NONE_MATCH, etag)
            .body(Body::empty())
            .expect("a request");
        drop(service.clone().oneshot(request).await);
    })
    .await;
    let reads = each(async || {
        let all = tokio::try_join!(
            store.revision_cards(&permit),
            store.shares(&permit),
            store.acknowledgements(&permit),
            store.thread_facts(&permit),
            store.signatures(&permit),
            store.signed(&permit),
        );
        drop(all.expect("read"));
    })
    .await;
    let made = each(async || {
        let path = format!("{page}?step={}", count.fetch_add(1, Ordering::Relaxed));
        drop(whole(ask(service, &path, token).await).await);
    })
    .await;
    let pressed = each(async || drop(std::hint::black_box(gzip(plain)))).await;
    let us = |time: Duration| time.as_secs_f64() * 1e6;
    println!(
        "  one answer made by itself: {:.0} µs = session, share and ledger head {:.0} + router, \
         layers and key {:.0} + six reads {:.0} + figures and template {:.0} + compressing {:.0}",
        us(made),
        us(session),
        us(known.saturating_sub(session)),
        us(reads),
        us(made.saturating_sub(known + reads + pressed)),
        us(pressed),
    );
}

async fn each(step: impl AsyncFn()) -> Duration {
    let start = Instant::now();
    for _ in 0..STEPS {
        step().await;
    }
    start.elapsed() / STEPS
}
