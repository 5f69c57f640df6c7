//! What guards every page: headers, forged forms, cookies, faults, escaping, codes to scan.

use axum::body::Body;
use axum::http::{HeaderValue, Request, StatusCode};

use crate::pages::{Browser, Page, Site};
use crate::support::cast::Cast;
use crate::support::database::on_both;
use crate::support::past::Past;

const HTTPS: &str = "https://specs.example.org";

on_both! {
    async fn every_answer_says_the_same_of_its_safety(db, address) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut stranger = site.stranger();
        let style = &site.style;
        let mut answers = vec![
            (stranger.visits("/sign-in").await, StatusCode::OK),
            (stranger.visits("/healthz").await, StatusCode::OK),
            (stranger.visits("/join/guessed").await, StatusCode::GONE),
            (stranger.visits("/static/nothing.css").await, StatusCode::NOT_FOUND),
            (stranger.visits("/nowhere").await, StatusCode::SEE_OTHER),
            (iris.visits("/nowhere").await, StatusCode::NOT_FOUND),
            (iris.visits(style).await, StatusCode::OK),
            (iris.visits("/people").await, StatusCode::FORBIDDEN),
            (iris.posts("/styles", &[]).await, StatusCode::UNPROCESSABLE_ENTITY),
            (iris.visits(&format!("{style}/draft/points")).await, StatusCode::OK),
            (forged(&mut iris, "/me").await, StatusCode::FORBIDDEN),
        ];
        let asset = stranger.visits("/sign-in").await.attributes("link[rel=stylesheet]", "href").remove(0);
        answers.push((stranger.visits(&asset).await, StatusCode::OK));
        let request = Request::delete("/me").body(Body::empty()).unwrap();
        answers.push((iris.asks(request).await, StatusCode::NOT_FOUND));
        breaks_points(&address).await;
        answers.push((iris.visits(&format!("{style}/draft/points")).await, StatusCode::INTERNAL_SERVER_ERROR));
        for (page, status) in answers {
            page.must_be(status);
            let policy = page.header("content-security-policy");
            assert!(policy.contains("default-src 'none'") && policy.contains("frame-ancestors 'none'"), "{status}");
            assert!(policy.contains("form-action 'self'") && policy.contains("base-uri 'none'"), "{policy}");
            assert!(!policy.contains("unsafe") && !policy.contains('*'), "{policy}");
            assert_eq!(page.header("x-content-type-options"), "nosniff", "{status}");
            assert_eq!(page.header("x-frame-options"), "DENY", "{status}");
            assert_eq!(page.header("referrer-policy"), "no-referrer", "{status}");
            assert!(!page.header("cache-control").is_empty(), "{status}");
            let html = page.text();
            for inline in ["<script>", " style=\"", " onclick=", "javascript:"] {
                assert!(!html.contains(inline), "{status} holds {inline}");
            }
        }
    }
}

on_both! {
    async fn a_form_without_this_sessions_token_changes_nothing(db) {
        let site = Site::with_revision(db).await;
        let linh = &site.cast.sao_mai.lead;
        let mut browser = site.browser(linh).await;
        let other = site.browser(&site.cast.brand.lead).await.token().await;
        let earlier = site.browser(linh).await.token().await;
        let form = browser.visits("/me").await.form("/me").set("name", "Mallory");
        for token in ["", "guessed", &other, &earlier] {
            browser.sends(form.clone().set("token", token)).await.must_be(StatusCode::FORBIDDEN);
        }
        browser.sends(form.clone().untick("token")).await.must_be(StatusCode::FORBIDDEN);
        let with_file = form.clone().set("token", "guessed").attach("photos", "a.png", b"not one");
        browser.sends(with_file).await.must_be(StatusCode::FORBIDDEN);
        let in_the_address = format!("/me?token={}", form.value("token"));
        forged(&mut browser, &in_the_address).await.must_be(StatusCode::FORBIDDEN);
        browser.visits("/me").await.must_see("Linh");

        let page = browser.sends_and_opens(form.set("name", "Linh Trần")).await;
        page.must_see("Saved.");
        page.must_see("Linh Trần");
    }
}

on_both! {
    async fn public_forms_are_taken_from_this_site_only(db) {
        let site = Site::new(db).await;
        let mut owner = site.browser(&site.cast.brand.owner).await;
        let linh = &site.cast.sao_mai.lead.actor.person;
        let page = owner.posts(&format!("/people/{linh}/link"), &[]).await;
        let link = page.form_value("new-link");
        let join = link.strip_prefix("http://127.0.0.1:8640").unwrap();
        for path in ["/sign-in", "/code", "/set-up/guessed", join] {
            let mut stranger = site.stranger();
            for (name, value) in [
                ("sec-fetch-site", "cross-site"),
                ("sec-fetch-site", "same-site"),
                ("origin", "https://evil.example"),
            ] {
                stranger.headers.clear();
                stranger.headers.insert(name, HeaderValue::from_static(value));
                let page = forged(&mut stranger, path).await;
                page.must_be(StatusCode::FORBIDDEN);
                assert!(stranger.cookies.is_empty(), "{path} {name}: {value}");
            }
        }
        // The link is still whole.
        let mut phone = site.stranger();
        let form = phone.visits(join).await.form(join);
        phone.sends(form).await.must_be(StatusCode::SEE_OTHER);
    }
}

on_both! {
    async fn the_cookie_is_bound_to_the_host_under_https(db) {
        let cast = Cast::new(db).await;
        for (url, name, secure) in [(HTTPS, "__Host-fellseam", true), ("http://specs.lan", "fellseam", false)] {
            let (page, _) = joins(&Site::of(cast_again(&cast), url, false).await).await;
            let cookies: Vec<&str> = page.headers.get_all("set-cookie").iter().map(|it| it.to_str().unwrap()).collect();
            let [cookie] = cookies[..] else { panic!("one cookie: {cookies:?}") };
            let mut parts = cookie.split("; ");
            let (named, token) = parts.next().unwrap().split_once('=').unwrap();
            assert_eq!(named, name);
            assert!(token.len() >= 40, "{token}");
            let parts: Vec<&str> = parts.collect();
            for part in ["Path=/", "HttpOnly", "SameSite=Lax"] {
                assert!(parts.contains(&part), "{cookie}");
            }
            assert_eq!(parts.contains(&"Secure"), secure, "{cookie}");
            assert!(!cookie.contains("Domain"), "{cookie}");
        }
        // A cookie of the other name is nobody's.
        let (_, mut browser) = joins(&Site::of(cast, HTTPS, false).await).await;
        let token = browser.cookies.remove("__Host-fellseam").unwrap();
        browser.cookies.insert("fellseam".to_owned(), token);
        browser.visits("/me").await.must_be(StatusCode::SEE_OTHER);
    }
}

on_both! {
    async fn a_fault_shows_a_number_and_nothing_else(db, address) {
        let site = Site::new(db).await;
        let draft = format!("{}/draft/points", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        iris.visits(&draft).await.must_be(StatusCode::OK);
        let mut past = breaks_points(&address).await;
        let page = iris.visits(&draft).await;
        is_a_bare_fault(&page);
        page.must_see("Back to what needs me");
        let mut script = iris.clone();
        script.headers.insert("accept", HeaderValue::from_static("application/json"));
        let page = script.visits(&draft).await;
        is_a_bare_fault(&page);
        let json: serde_json::Value = serde_json::from_slice(&page.bytes).expect("JSON");
        assert_eq!(json["problem"], "fault");

        // Also when the fault is in who asks.
        let iris_id = &site.cast.brand.lead.actor.person;
        past.run(&format!("UPDATE person SET role = 'secret king' WHERE id = '{iris_id}'")).await;
        is_a_bare_fault(&iris.visits("/me").await);
    }
}

on_both! {
    async fn names_are_text_wherever_they_stand(db) {
        let site = Site::new(db).await;
        let name = "<b onmouseover=x>Mai & \"Cœ'</b>";
        let mut owner = site.browser(&site.cast.brand.owner).await;
        owner.posts("/me", &[("name", name)]).await.must_be(StatusCode::SEE_OTHER);
        owner.posts("/factories", &[("factory", name)]).await.must_be(StatusCode::SEE_OTHER);
        let form = owner.visits("/people").await.form("/people").set("name", name);
        let invited = owner.sends(form).await;
        let link = invited.form_value("new-link");
        let join = link.strip_prefix("http://127.0.0.1:8640").unwrap();
        let made = owner.posts("/styles", &[("number", "HT-<i>9</i>"), ("name", name)]).await;
        made.must_be(StatusCode::SEE_OTHER);
        let header = made.goes_to();
        for page in [
            invited,
            owner.visits("/me").await,
            owner.visits("/people").await,
            owner.visits("/styles").await,
            owner.opens(&header).await,
            site.stranger().visits(join).await,
        ] {
            page.must_be(StatusCode::OK);
            let html = page.text();
            assert!(!html.contains("<b onmouseover") && !html.contains("<i>9"), "{html}");
            let shown = page.reads();
            let fields = page.attributes("input", "value");
            assert!(shown.contains(name) || fields.iter().any(|field| field == name), "{shown}");
        }
    }
}

on_both! {
    async fn no_code_to_scan_leads_to_this_machine_outside_the_demo(db) {
        let cast = Cast::new(db).await;
        for (url, demo, printed) in [
            ("http://127.0.0.1:8640", false, false),
            ("http://localhost:8640", false, false),
            ("http://[::1]:8640", false, false),
            ("http://127.0.0.1:8640", true, true),
            (HTTPS, false, true),
        ] {
            let site = Site::of(cast_again(&cast), url, demo).await;
            let mut owner = site.browser(&site.cast.brand.owner).await;
            let linh = &site.cast.sao_mai.lead.actor.person;
            let link = owner.posts(&format!("/people/{linh}/link"), &[]).await;
            let code = owner.posts("/me/code", &[]).await;
            for page in [&link, &code] {
                page.must_be(StatusCode::OK);
                assert_eq!(page.all("figure.qr svg").len(), usize::from(printed), "{url}");
            }
            assert!(link.form_value("new-link").starts_with(url));
            let warned = link.sees("This address opens on this machine only.");
            assert_eq!(warned, url != HTTPS, "{url}");
        }
    }
}

/// Linh comes in by a link. Returns the answer to her form, and her browser.
async fn joins(site: &Site) -> (Page, Browser) {
    let linh = &site.cast.sao_mai.lead.actor.person;
    let owner = site.cast.brand.owner.may();
    let key = site.cast.store.new_link(&owner, linh).await.unwrap();
    let path = format!("/join/{key}");
    let mut phone = site.stranger();
    let form = phone.visits(&path).await.form(&path);
    let page = phone.sends(form).await;
    page.must_be(StatusCode::SEE_OTHER);
    (page, phone)
}

/// Sends a form's worth of nothing, without a token.
async fn forged(browser: &mut Browser, path: &str) -> Page {
    let request = Request::post(path)
        .header("content-type", "application/x-www-form-urlencoded")
        .body(Body::from(
            "name=Mallory&login=iris&password=guessed&code=AAAAAAAA",
        ));
    browser.asks(request.expect("a request")).await
}

/// The database holds what no version of the program wrote.
async fn breaks_points(address: &str) -> Past {
    let mut past = Past::the_guards(address).await;
    let broken = "UPDATE draft_section SET content = '{\"secret\": 7' WHERE section = 'points'";
    assert!(past.run(broken).await > 0);
    past
}

fn is_a_bare_fault(page: &Page) {
    page.must_be(StatusCode::INTERNAL_SERVER_ERROR);
    let text = page.text();
    let (_, number) = text.split_once("F-").expect("a reference");
    assert!(number.starts_with(|c: char| c.is_ascii_digit()), "{text}");
    let lower = text.to_lowercase();
    for internal in [
        "secret",
        "draft_section",
        "sql",
        "column",
        "panicked",
        "src/",
        "king",
    ] {
        assert!(!lower.contains(internal), "shows {internal}: {text}");
    }
}

/// The cast's people on another face of the same installation.
fn cast_again(cast: &Cast) -> Cast {
    Cast {
        store: cast.store.clone(),
        clock: cast.clock.clone(),
        brand: cast.brand.clone(),
        sao_mai: cast.sao_mai.clone(),
        meghna: cast.meghna.clone(),
    }
}
