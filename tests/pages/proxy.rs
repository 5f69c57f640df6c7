//! The brake on guessing, with and without a reverse proxy.

use std::net::SocketAddr;

use axum::Router;
use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, StatusCode, header};
use fellseam::files::{Limits, Renderer};
use fellseam::web::{App, Settings, router};
use tower::ServiceExt;

use crate::pages::Site;
use crate::support::database::on_both;

/// One more than the brake lets through.
const MANY: u8 = 9;
const BRAKED: StatusCode = StatusCode::TOO_MANY_REQUESTS;

/// The pages of a site, started with `--behind-proxy` or without.
fn pages(site: &Site, behind_proxy: bool) -> Router {
    let settings = Settings {
        behind_proxy,
        mails: false,
        ..site.app.settings.clone()
    };
    let renderer = Renderer::new(env!("CARGO_BIN_EXE_fellseam"), Limits::default(), None);
    let store = site.cast.store.clone();
    router(App::new(store, site.files.clone(), renderer, settings))
}

/// Tries a wrong password under a name, from this address, with this `X-Forwarded-For`.
async fn tries(pages: &Router, name: &str, peer: [u8; 4], forwarded: &str) -> StatusCode {
    let request = Request::post("/sign-in")
        .header("sec-fetch-site", "same-origin")
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
        .header("x-forwarded-for", forwarded)
        .extension(ConnectInfo(SocketAddr::from((peer, 4000))))
        .body(Body::from(format!("login={name}&password=a+wrong+one")))
        .expect("a request");
    let answer = pages.clone().oneshot(request).await;
    let status = answer.expect("the router answers").status();
    assert!(
        [BRAKED, StatusCode::UNPROCESSABLE_ENTITY].contains(&status),
        "{status}"
    );
    status
}

on_both! {
    async fn behind_a_proxy_one_callers_wrong_tries_lock_out_only_them(db) {
        let site = Site::new(db).await;
        let pages = pages(&site, true);
        let proxy = [127, 0, 0, 1];
        let mut last = StatusCode::OK;
        for n in 0..MANY {
            // What the caller wrote before the proxy added to it changes nothing.
            let forwarded = format!("10.0.0.{n}, 198.51.100.1");
            last = tries(&pages, &format!("guess-{n}"), proxy, &forwarded).await;
        }
        assert_eq!(last, BRAKED);
        assert_ne!(tries(&pages, "mai", proxy, "198.51.100.2").await, BRAKED);
        assert_eq!(tries(&pages, "mai", proxy, "198.51.100.2, 198.51.100.1").await, BRAKED);
    }
}

on_both! {
    async fn without_a_proxy_nobody_chooses_their_own_address(db) {
        let site = Site::new(db).await;
        let pages = pages(&site, false);
        let mut last = StatusCode::OK;
        for n in 0..MANY {
            let forwarded = format!("198.51.100.{n}");
            last = tries(&pages, &format!("guess-{n}"), [192, 0, 2, 7], &forwarded).await;
        }
        assert_eq!(last, BRAKED);
        assert_ne!(tries(&pages, "mai", [192, 0, 2, 8], "198.51.100.0").await, BRAKED);
    }
}
