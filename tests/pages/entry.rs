//! Ways in and out: the first link, invitations, codes, passwords, sessions.

use std::io;
use std::net::SocketAddr;
use std::sync::{Mutex, OnceLock};

use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, StatusCode};
use fellseam::store::Store;
use fellseam::web::router;
use tracing_subscriber::EnvFilter;

use crate::pages::{Browser, Page, Site, serves};
use crate::support::cast::Person;
use crate::support::database::on_both;
use crate::support::world::{MINUTE, world};

const PASSWORD: &str = " four seams and a hem";

on_both! {
    async fn the_first_link_founds_the_brand_once(db) {
        let (world, _) = world();
        let store = Store::new(db, world);
        let (app, _folder) = serves(store.clone(), "http://127.0.0.1:8640", false).await;
        let mut nell = Browser::on(router(app));
        let earlier = store.new_set_up_link().await.unwrap();
        let path = format!("/set-up/{}", store.new_set_up_link().await.unwrap());
        for other in [format!("/set-up/{earlier}"), "/set-up/guessed".to_owned()] {
            nell.visits(&other).await.must_be(StatusCode::NOT_FOUND);
        }
        // A preview of the link, in a chat program, spends nothing; neither does a form with errors.
        nell.visits(&path).await.must_be(StatusCode::OK);
        let form = nell.visits(&path).await.form(&path);
        let page = nell.sends(form.set("password", "short")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        for field in ["brand", "name", "login", "password"] {
            assert_eq!(page.all(&format!("#{field}-error")).len(), 1, "{field}");
        }
        assert!(!store.is_founded().await.unwrap());

        let form = page.form(&path).set("brand", "Harrow & Tide").set("name", "Nell");
        let form = form.set("login", "Nell@harrow.example").set("password", PASSWORD);
        let page = nell.sends_and_opens(form.clone()).await;
        page.must_see("What needs me");
        page.must_see("Harrow & Tide");

        let mut thief = nell.clone();
        thief.cookies.clear();
        thief.sends(form).await.must_be(StatusCode::NOT_FOUND);
        thief.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        let later = store.new_set_up_link().await.unwrap();
        thief.visits(&format!("/set-up/{later}")).await.must_be(StatusCode::NOT_FOUND);
        let page = signs_in(&mut thief, 1, "nell@harrow.example", PASSWORD).await;
        assert_eq!(page.goes_to(), "/");
    }
}

on_both! {
    async fn a_new_link_stops_the_one_before_it(db) {
        let site = Site::new(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let hoa = &site.cast.sao_mai.hands.actor.person;
        let earlier = link(&linh.posts(&format!("/people/{hoa}/link"), &[]).await);
        let newer = link(&linh.posts(&format!("/people/{hoa}/link"), &[]).await);
        assert_ne!(earlier, newer);
        let mut phone = site.stranger();
        phone.visits(&earlier).await.must_be(StatusCode::GONE);
        let join = phone.visits(&newer).await.form(&newer);
        let page = phone.sends_and_opens(join).await;
        page.must_see("Hoa");

        // Seven days, and no longer.
        let late = link(&linh.posts(&format!("/people/{hoa}/link"), &[]).await);
        site.cast.clock.forward(7 * 24 * 60 * MINUTE + 1);
        site.stranger().visits(&late).await.must_be(StatusCode::GONE);
    }
}

on_both! {
    async fn a_code_lets_a_second_device_in_once(db) {
        let site = Site::new(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let earlier = code(&mut linh).await;
        let newer = code(&mut linh).await;
        let mut phone = site.stranger();
        let form = phone.visits("/code").await.form("/code");
        let typed = |code: &str| form.clone().set("code", code);
        phone.sends(typed(&earlier)).await.must_see("This code is not right");
        let page = phone.sends_and_opens(typed(&newer.to_lowercase().replace('-', " "))).await;
        page.must_see("What needs me");
        page.must_see("Linh");
        let again = site.stranger().sends(typed(&newer)).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);

        let late = code(&mut linh).await;
        site.cast.clock.forward(10 * MINUTE + 1);
        site.stranger().sends(typed(&late)).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);

        // A link is for its own page, where the person sees whom it is for.
        let hoa = &site.cast.sao_mai.hands.actor.person;
        let link = link(&linh.posts(&format!("/people/{hoa}/link"), &[]).await);
        let token = link.trim_start_matches("/join/");
        site.stranger().sends(typed(token)).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);
    }
}

on_both! {
    async fn guessing_codes_is_braked(db) {
        let site = Site::new(db).await;
        let right = code(&mut site.browser(&site.cast.sao_mai.lead).await).await;
        let mut stranger = site.stranger();
        let form = stranger.visits("/code").await.form("/code");
        for _ in 0..8 {
            let page = stranger.sends(form.clone().set("code", "AAAA-AAAA")).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        }
        let page = stranger.sends(form.set("code", &right)).await;
        page.must_be(StatusCode::TOO_MANY_REQUESTS);
    }
}

on_both! {
    async fn after_eight_wrong_passwords_even_the_right_one_is_not_heard(db) {
        let site = Site::new(db).await;
        sets_password(&site, &site.cast.sao_mai.lead, "linh").await;
        sets_password(&site, &site.cast.meghna.lead, "rafiq").await;
        let mut browser = site.stranger();
        // The same words for a name that nobody has: nobody learns who is here.
        let unknown = signs_in(&mut browser, 100, "nobody", PASSWORD).await;
        unknown.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let mut wrong = String::new();
        // From eight places: the brake is on the name, too.
        for peer in 1..=8 {
            let page = signs_in(&mut browser, peer, "Linh", "four seams and a hem").await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            wrong = page.all("[role=alert]").join(" ");
        }
        assert_eq!(unknown.all("[role=alert]").join(" "), wrong);
        let page = signs_in(&mut browser, 9, "linh", PASSWORD).await;
        page.must_be(StatusCode::TOO_MANY_REQUESTS);
        page.must_see("Too many wrong tries. Wait a quarter of an hour.");
        let page = signs_in(&mut browser, 9, "rafiq", PASSWORD).await;
        page.must_be(StatusCode::SEE_OTHER);

        // And from one place with eight names.
        let mut browser = site.stranger();
        for n in 1..=8 {
            signs_in(&mut browser, 50, &format!("name {n}"), "guessed it is").await;
        }
        let page = signs_in(&mut browser, 50, "rafiq", PASSWORD).await;
        page.must_be(StatusCode::TOO_MANY_REQUESTS);
    }
}

on_both! {
    async fn signing_out_everywhere_ends_every_session_of_that_person(db) {
        let site = Site::new(db).await;
        let linh = &site.cast.sao_mai.lead;
        let (mut laptop, mut phone) = (site.browser(linh).await, site.browser(linh).await);
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let kept = laptop.clone();
        let page = laptop.posts("/sign-out-everywhere", &[]).await;
        assert_eq!(page.goes_to(), "/sign-in");
        assert!(laptop.cookies.is_empty(), "the cookie is taken away");
        for mut browser in [kept, phone.clone()] {
            let page = browser.visits("/me").await;
            assert_eq!(page.goes_to(), "/sign-in?then=%2Fme");
        }
        hoa.visits("/me").await.must_be(StatusCode::OK);

        // Signing out here ends this session, also for whoever kept its cookie.
        phone = site.browser(linh).await;
        let mut other = site.browser(linh).await;
        let mut kept = phone.clone();
        phone.posts("/sign-out", &[]).await.must_be(StatusCode::SEE_OTHER);
        kept.visits("/me").await.must_be(StatusCode::SEE_OTHER);
        other.visits("/me").await.must_be(StatusCode::OK);
    }
}

on_both! {
    async fn a_new_password_signs_out_every_other_device(db) {
        let site = Site::new(db).await;
        let linh = &site.cast.sao_mai.lead;
        let mut left_open = site.browser(linh).await;
        let mut laptop = sets_password(&site, linh, "linh").await;
        laptop.visits("/me").await.must_be(StatusCode::OK);
        left_open.visits("/me").await.must_be(StatusCode::SEE_OTHER);
        // Whoever found an open browser cannot take the account over.
        let form = laptop.visits("/me").await.form("/me/password");
        let form = form.set("old_password", "a guess").set("password", "another long one");
        let page = laptop.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This is not your password.");
    }
}

on_both! {
    async fn after_signing_in_nobody_is_led_elsewhere(db) {
        let site = Site::new(db).await;
        sets_password(&site, &site.cast.brand.lead, "iris").await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let elsewhere = ["//evil.example", "https://evil.example", "/\\evil.example", "/%09/evil.example"];
        for to in elsewhere {
            let query: String = form_urlencoded::byte_serialize(to.as_bytes()).collect();
            let page = iris.visits(&format!("/sign-in?then={query}")).await;
            inside(&page.goes_to());
            let mut stranger = site.stranger();
            let page = stranger.visits(&format!("/sign-in?then={query}")).await;
            let form = page.form("/sign-in");
            inside(form.value("then"));
            let form = form.set("then", to).set("login", "iris").set("password", PASSWORD);
            inside(&stranger.sends(form).await.goes_to());
        }
        // To where they wanted to go, they are.
        let mut stranger = site.stranger();
        let to = stranger.visits(&site.style).await.goes_to();
        let form = stranger.visits(&to).await.form("/sign-in");
        let page = stranger.sends(form.set("login", "iris").set("password", PASSWORD)).await;
        assert_eq!(page.goes_to(), site.style);
    }
}

on_both! {
    async fn no_line_of_the_log_and_no_referrer_holds_a_token(db) {
        let log = Log::listens();
        let site = Site::new(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let hoa = &site.cast.sao_mai.hands.actor.person;
        let path = link(&linh.posts(&format!("/people/{hoa}/link"), &[]).await);
        let mut phone = site.stranger();
        let page = phone.visits(&path).await;
        assert_eq!(page.header("referrer-policy"), "no-referrer");
        let away = page.attributes("a[href], link[href], script[src], img[src]", "href");
        assert!(away.iter().all(|href| href.starts_with('/') || href.starts_with('#')), "{away:?}");
        let join = page.form(&path);
        let page = phone.sends(join.clone().set("name", "")).await;
        assert_eq!(page.header("referrer-policy"), "no-referrer");
        let page = phone.sends(join.clone()).await;
        assert_eq!(page.header("referrer-policy"), "no-referrer");
        assert_eq!(page.goes_to(), "/");
        phone.sends(join).await.must_be(StatusCode::GONE);
        phone.visits("/set-up/GUESSEDSETUPKEY").await.must_be(StatusCode::NOT_FOUND);
        let code = code(&mut phone).await;
        let form = site.stranger().visits("/code").await.form("/code");
        site.stranger().sends(form.set("code", &code)).await.must_be(StatusCode::SEE_OTHER);
        sets_password(&site, &site.cast.brand.lead, "iris").await;
        signs_in(&mut site.stranger(), 1, "iris", PASSWORD).await.must_be(StatusCode::SEE_OTHER);
        signs_in(&mut site.stranger(), 1, "iris", "aWrongPassword").await;

        let said = log.said();
        for route in ["/join/{key}", "/set-up/{key}", "/sign-in", "/code"] {
            assert!(said.contains(route), "the log does not speak of {route}:\n{said}");
        }
        let session = phone.cookies.values().next().expect("a session").clone();
        let form_token = phone.token().await;
        let secrets = [
            path.trim_start_matches("/join/").to_owned(),
            code.replace('-', ""),
            code,
            session,
            form_token,
            "GUESSEDSETUPKEY".to_owned(),
            PASSWORD.to_owned(),
            "aWrongPassword".to_owned(),
        ];
        for secret in secrets {
            assert!(secret.len() >= 8, "{secret:?} proves nothing");
            let line = said.lines().find(|line| line.contains(&secret));
            assert_eq!(line, None, "the log holds {secret}");
        }
    }
}

/// Signs in by name and password from a place of its own.
async fn signs_in(browser: &mut Browser, peer: u8, login: &str, password: &str) -> Page {
    let body = form_urlencoded::Serializer::new(String::new())
        .append_pair("login", login)
        .append_pair("password", password)
        .finish();
    let peer = SocketAddr::from(([192, 0, 2, peer], 50_000));
    let request = Request::post("/sign-in")
        .header("content-type", "application/x-www-form-urlencoded")
        .header("sec-fetch-site", "same-origin")
        .extension(ConnectInfo(peer))
        .body(Body::from(body));
    browser.asks(request.expect("a request")).await
}

/// Gives somebody a password. Returns the browser that they did it in.
async fn sets_password(site: &Site, person: &Person, login: &str) -> Browser {
    let mut browser = site.browser(person).await;
    let form = browser.visits("/me").await.form("/me/password");
    let form = form.set("login", login).set("password", PASSWORD);
    let page = browser.sends(form).await;
    assert_eq!(page.goes_to(), "/me?said=saved");
    browser
}

/// The path of a link that a page shows.
fn link(page: &Page) -> String {
    page.must_be(StatusCode::OK);
    let link = page.form_value("new-link");
    let path = link.strip_prefix("http://127.0.0.1:8640");
    path.expect("an address of ours").to_owned()
}

/// A code for a second device, as it is shown.
async fn code(browser: &mut Browser) -> String {
    let page = browser.posts("/me/code", &[]).await;
    page.must_be(StatusCode::OK);
    page.all("output.code").remove(0)
}

fn inside(to: &str) {
    let local = to.starts_with('/') && !to.starts_with("//") && !to.contains('\\');
    assert!(local && !to.contains('\t'), "leads elsewhere: {to}");
}

/// Everything that the program logs in this process, to the last detail.
struct Log(&'static Mutex<Vec<u8>>);

static LOG: Mutex<Vec<u8>> = Mutex::new(Vec::new());

impl Log {
    fn listens() -> Log {
        static ONCE: OnceLock<()> = OnceLock::new();
        ONCE.get_or_init(|| {
            tracing_subscriber::fmt()
                // All but the reader of pages, which is the test's own.
                .with_env_filter(EnvFilter::new("trace,html5ever=off,selectors=off"))
                .with_ansi(false)
                .with_writer(|| Log(&LOG))
                .init();
        });
        Log(&LOG)
    }

    fn said(&self) -> String {
        let bytes = self.0.lock().expect("nobody panicked while writing");
        String::from_utf8_lossy(&bytes).into_owned()
    }
}

impl io::Write for Log {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let mut all = self.0.lock().expect("nobody panicked while writing");
        all.extend_from_slice(bytes);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        Ok(())
    }
}
