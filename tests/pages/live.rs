//! Streams of events, through a real connection to 127.0.0.1.

use std::net::SocketAddr;
use std::time::Duration;

use axum::http::{HeaderValue, StatusCode};
use fellseam::exchange::thread;
use fellseam::store::{Db, Store, StoreError, ThreadMove};
use fellseam::web::{App, router};
use sqlx::Connection;
use sqlx_postgres::PgConnection;
use tokio::net::TcpListener;
use tokio::task::JoinHandle;
use tokio::time::timeout;

use crate::pages::Site;
use crate::support::cast::{Cast, Person, set_base};
use crate::support::database::{on_both, on_postgres};
use crate::support::world::{DAY, world};

/// No event takes as long; what is waited for this long does not come.
const LONG: Duration = Duration::from_secs(10);

/// The service on a port of its own.
struct Served {
    address: SocketAddr,
    task: JoinHandle<()>,
}

impl Served {
    async fn new(app: &App) -> Served {
        let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
        let address = listener.local_addr().unwrap();
        let mut stopping = app.stopping.subscribe();
        let service = router(app.clone()).into_make_service_with_connect_info::<SocketAddr>();
        let task = tokio::spawn(async move {
            axum::serve(listener, service)
                .with_graceful_shutdown(async move {
                    let _ = stopping.wait_for(|stopping| *stopping).await;
                })
                .await
                .unwrap();
        });
        Served { address, task }
    }

    /// Opens a stream in this session; returns once it says that it is there.
    async fn listens(&self, token: &str, path: &str) -> Stream {
        let answer = self.asks(token, path).await;
        assert_eq!(answer.status(), StatusCode::OK);
        let mut stream = Stream {
            answer,
            unread: String::new(),
        };
        // On PostgreSQL the first look at the ledgers may come in between.
        while stream.block().await.expect("it is there") != "retry: 3000\n:" {}
        stream
    }

    /// Waits until what happens on this database is heard, which on PostgreSQL takes a first look
    /// at its ledgers.
    async fn wakes_up(&self, cast: &Cast) {
        let mut stream = self
            .listens(&cast.brand.lead.signs_in().await, &live(cast))
            .await;
        let heard = loop {
            cast.brand
                .asks(&cast.sao_mai, "point-b", "Are you there?")
                .await
                .unwrap();
            if let Ok(heard) = timeout(Duration::from_millis(300), stream.next()).await {
                break heard;
            }
        };
        assert_eq!(heard.as_deref(), Some(cast.brand.style.as_str()));
    }

    async fn asks(&self, token: &str, path: &str) -> reqwest::Response {
        reqwest::Client::builder()
            .redirect(reqwest::redirect::Policy::none())
            .build()
            .unwrap()
            .get(format!("http://{}{path}", self.address))
            .header("cookie", format!("fellseam={token}"))
            .header("accept-encoding", "gzip")
            .send()
            .await
            .unwrap()
    }
}

struct Stream {
    answer: reqwest::Response,
    unread: String,
}

impl Stream {
    /// The style of the next event; `None`: the stream has ended. That everything should be looked
    /// at may be said at any time, and is passed over.
    async fn next(&mut self) -> Option<String> {
        loop {
            match self.data().await? {
                everything if everything == "*" => {}
                style => return Some(style),
            }
        }
    }

    async fn data(&mut self) -> Option<String> {
        loop {
            let block = self.block().await?;
            if let Some(data) = block.strip_prefix("data: ") {
                return Some(data.to_owned());
            }
        }
    }

    async fn block(&mut self) -> Option<String> {
        loop {
            if let Some((block, rest)) = self.unread.split_once("\n\n") {
                let block = block.trim_end().to_owned();
                self.unread = rest.to_owned();
                return Some(block);
            }
            let chunk = timeout(LONG, self.answer.chunk()).await;
            let chunk = chunk.expect("an event or the end comes");
            // A connection that is cut ends the stream as well as a clean end.
            let chunk = chunk.ok().flatten()?;
            self.unread += std::str::from_utf8(&chunk).unwrap();
        }
    }
}

fn live(cast: &Cast) -> String {
    format!("/styles/{}/live", cast.brand.style)
}

async fn signs_out(site: &Site, token: &str) {
    let mut browser = site.stranger();
    browser
        .cookies
        .insert("fellseam".to_owned(), token.to_owned());
    browser
        .posts("/sign-out", &[])
        .await
        .must_be(StatusCode::SEE_OTHER);
}

on_both! {
    async fn each_side_hears_of_its_own_threads_and_a_factory_of_no_others(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let style = cast.brand.style.to_string();
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let served = Served::new(&site.app).await;
        served.wakes_up(cast).await;
        let mut iris = served.listens(&cast.brand.lead.signs_in().await, &live(cast)).await;
        let mut linh = served.listens(&cast.sao_mai.lead.signs_in().await, &live(cast)).await;
        let mut rafiq = served.listens(&cast.meghna.lead.signs_in().await, &live(cast)).await;
        let mut rafiqs_needs = served.listens(&cast.meghna.lead.signs_in().await, "/live").await;

        // A draft is the brand's own business.
        cast.brand.edits(|spec| set_base(spec, "point-c", "30")).await;
        assert_eq!(iris.next().await.as_ref(), Some(&style));
        let thread = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        assert_eq!(iris.next().await.as_ref(), Some(&style));
        assert_eq!(linh.next().await.as_ref(), Some(&style));
        // One after the other: what happens close together may be told once.
        cast.brand.says(&thread, "Without it.").await.unwrap();
        for stream in [&mut iris, &mut linh] {
            assert_eq!(stream.next().await.as_ref(), Some(&style));
        }
        cast.sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        for stream in [&mut iris, &mut linh] {
            assert_eq!(stream.next().await.as_ref(), Some(&style));
        }
        // The first that the other factory hears is what concerns it.
        cast.meghna.asks("point-a", "And this?").await.unwrap();
        assert_eq!(rafiq.next().await.as_ref(), Some(&style));
        assert_eq!(rafiqs_needs.next().await.as_ref(), Some(&style));
        cast.brand.publishes("For all").await.unwrap();
        for stream in [&mut rafiq, &mut rafiqs_needs, &mut linh] {
            assert_eq!(stream.next().await.as_ref(), Some(&style));
        }
        // Nothing is left over of what was the others'.
        site.app.stop();
        assert_eq!(rafiq.next().await, None);
        assert_eq!(rafiqs_needs.next().await, None);
    }
}

on_both! {
    async fn a_stream_ends_with_its_session(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let served = Served::new(&site.app).await;
        served.wakes_up(cast).await;
        let (one, other) = (cast.sao_mai.lead.signs_in().await, cast.sao_mai.hands.signs_in().await);
        let mut ended = served.listens(&one, &live(cast)).await;
        let mut goes_on = served.listens(&other, &live(cast)).await;
        signs_out(&site, &one).await;
        cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        assert_eq!(ended.next().await, None);
        assert!(goes_on.next().await.is_some());
        // Whoever comes again is told to sign in.
        let again = served.asks(&one, &live(cast)).await;
        assert_eq!(again.status(), StatusCode::SEE_OTHER);
    }
}

on_both! {
    async fn a_stream_ends_with_the_share(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let served = Served::new(&site.app).await;
        served.wakes_up(cast).await;
        let token = cast.sao_mai.lead.signs_in().await;
        let mut style = served.listens(&token, &live(cast)).await;
        let mut needs = served.listens(&token, "/live").await;
        cast.brand.ends_share_with(&cast.sao_mai).await.unwrap();
        assert_eq!(style.next().await, None);
        // What waited for them waits no more: they look, and are told of no style.
        assert_eq!(needs.data().await.as_deref(), Some("*"));
        let again = served.asks(&token, &live(cast)).await;
        assert_eq!(again.status(), StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn open_streams_do_not_keep_the_service_from_stopping(db) {
        let site = Site::with_revision(db).await;
        let served = Served::new(&site.app).await;
        let token = site.cast.brand.lead.signs_in().await;
        let mut stream = served.listens(&token, "/live").await;
        site.app.stop();
        assert_eq!(stream.next().await, None);
        timeout(Duration::from_secs(3), served.task).await.expect("it stops").unwrap();
    }
}

on_both! {
    async fn nothing_in_between_may_keep_or_change_a_stream(db) {
        let site = Site::with_revision(db).await;
        let served = Served::new(&site.app).await;
        let token = site.cast.brand.lead.signs_in().await;
        for path in ["/live".to_owned(), live(&site.cast)] {
            let stream = served.listens(&token, &path).await;
            let header = |name: &str| {
                let value = stream.answer.headers().get(name).map(HeaderValue::to_str);
                value.map(|value| value.unwrap().to_owned()).unwrap_or_default()
            };
            assert_eq!(header("content-type"), "text/event-stream");
            assert_eq!(header("cache-control"), "no-cache, no-transform");
            assert_eq!(header("x-accel-buffering"), "no");
            assert_eq!(header("content-encoding"), "");
        }
    }
}

on_both! {
    async fn a_page_that_looks_by_itself_keeps_nobody_signed_in(db) {
        let site = Site::with_revision(db).await;
        let mut page = site.browser(&site.cast.sao_mai.lead).await;
        page.headers.insert("x-fellseam-live", HeaderValue::from_static("1"));
        // A factory's session ends after 45 days unused.
        for _ in 0..4 {
            site.cast.clock.forward(11 * DAY);
            page.visits("/").await.must_be(StatusCode::OK);
        }
        site.cast.clock.forward(2 * DAY);
        page.visits("/").await.must_be(StatusCode::SEE_OTHER);

        let mut person = site.browser(&site.cast.sao_mai.lead).await;
        for _ in 0..5 {
            site.cast.clock.forward(11 * DAY);
            person.visits("/").await.must_be(StatusCode::OK);
        }
    }
}

on_both! {
    async fn live_pages_name_their_stream_and_their_parts(db) {
        let site = Site::with_revision(db).await;
        let thread = site.cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits("/").await;
        assert_eq!(page.attributes("[data-stream]", "data-stream"), ["/live"]);
        let page = linh.visits(&format!("{}/revisions/1/items/point-c", site.style)).await;
        assert_eq!(page.attributes("[data-stream]", "data-stream"), [live(&site.cast)]);
        let names = page.attributes("[data-live]", "data-live");
        for name in ["item-standing", "item-threads"] {
            assert!(names.contains(&name.to_owned()), "{name}: {names:?}");
        }
        assert!(names.contains(&format!("thread-{thread}-messages")), "{names:?}");
        // Nobody who is not signed in has anything to hear.
        let page = site.stranger().visits("/sign-in").await;
        assert!(page.attributes("[data-stream]", "data-stream").is_empty());
    }
}

/// A second instance of the program on the same database.
async fn second(site: &Site, address: &str) -> App {
    let db = Db::open(address).await.unwrap();
    let files = site.files.clone();
    let program = env!("CARGO_BIN_EXE_fellseam");
    let renderer = fellseam::files::Renderer::new(program, Default::default(), None);
    App::new(
        Store::new(db, world().0),
        files,
        renderer,
        site.app.settings.clone(),
    )
}

async fn stream_of(served: &Served, person: &Person, cast: &Cast) -> Stream {
    served.listens(&person.signs_in().await, &live(cast)).await
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_second_instance_hears_what_happens_on_the_first() {
    on_postgres(async |db, address| {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let style = cast.brand.style.to_string();
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let other = second(&site, &address).await;
        let served = Served::new(&other).await;
        served.wakes_up(cast).await;
        let mut iris = stream_of(&served, &cast.brand.lead, cast).await;
        let mut linh = stream_of(&served, &cast.sao_mai.lead, cast).await;
        let mut rafiq = stream_of(&served, &cast.meghna.lead, cast).await;
        let thread = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        assert_eq!(iris.next().await.as_ref(), Some(&style));
        assert_eq!(linh.next().await.as_ref(), Some(&style));
        cast.brand
            .edits(|spec| set_base(spec, "point-c", "30"))
            .await;
        assert_eq!(iris.next().await.as_ref(), Some(&style));
        cast.meghna.asks("point-a", "And this?").await.unwrap();
        assert_eq!(rafiq.next().await.as_ref(), Some(&style));
        assert_eq!(iris.next().await.as_ref(), Some(&style));

        // The line is cut while something happens: it comes late, and comes.
        let mut admin = PgConnection::connect(&address).await.unwrap();
        let cut = cut_lines(&mut admin).await;
        assert!(cut >= 2, "both instances listen: {cut}");
        cast.brand.says(&thread, "Without it.").await.unwrap();
        assert_eq!(linh.next().await.as_ref(), Some(&style));
        assert_eq!(iris.next().await.as_ref(), Some(&style));
        timeout(LONG, both_listen(&mut admin))
            .await
            .expect("both listen again");
        cut_lines(&mut admin).await;
        cast.sao_mai
            .moves(&thread, ThreadMove::Close)
            .await
            .unwrap();
        assert_eq!(linh.next().await.as_ref(), Some(&style));
        assert!(matches!(
            cast.brand.state_of(&thread).await,
            thread::State::Closed
        ));
        other.stop();
        other.store.close().await;
    })
    .await;
}

/// Ends every connection that waits for notices. Returns how many there were.
async fn cut_lines(admin: &mut PgConnection) -> usize {
    let cut: Vec<bool> = sqlx::query_scalar(
        "SELECT pg_terminate_backend(pid) FROM pg_stat_activity \
         WHERE datname = current_database() AND query LIKE 'LISTEN%'",
    )
    .fetch_all(admin)
    .await
    .unwrap();
    cut.len()
}

/// Waits until both instances hold a line again: an event may come before, by the look at the
/// ledger that is taken every two seconds.
async fn both_listen(admin: &mut PgConnection) {
    loop {
        let lines: i64 = sqlx::query_scalar(
            "SELECT COUNT(*) FROM pg_stat_activity \
             WHERE datname = current_database() AND query LIKE 'LISTEN%'",
        )
        .fetch_one(&mut *admin)
        .await
        .unwrap();
        if lines >= 2 {
            return;
        }
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_no_notice_told_of_is_found_within_seconds() {
    on_postgres(async |db, address| {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let served = Served::new(&site.app).await;
        served.wakes_up(cast).await;
        let mut iris = stream_of(&served, &cast.brand.lead, cast).await;
        // Another program writes, and tells nobody: as if its notice was lost.
        let silent = Store::new(
            Db::open(&address).await.unwrap(),
            cast.store.world().clone(),
        );
        let permit = cast.sao_mai.lead.on(&cast.brand.style).await;
        let acted: Result<(), StoreError> = silent.acknowledge(&permit, 1).await;
        acted.unwrap();
        let told = timeout(Duration::from_secs(4), iris.next()).await;
        let style = cast.brand.style.to_string();
        assert_eq!(told.expect("at the next look"), Some(style));
        silent.close().await;
    })
    .await;
}
