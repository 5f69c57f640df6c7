//! Files: originals byte for byte, pictures, and who may have which.

use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use fellseam::spec::Digest;

use crate::pages::{Page, Site};
use crate::support::cast::{drawing, pictures};
use crate::support::database::on_both;

/// What keeps a browser from doing anything with the bytes but showing them.
fn must_be_harmless(page: &Page) {
    page.must_be(StatusCode::OK);
    assert_eq!(
        page.header("content-security-policy"),
        "default-src 'none'; style-src 'unsafe-inline'; sandbox"
    );
    assert_eq!(page.header("x-content-type-options"), "nosniff");
    assert_eq!(
        page.header("cache-control"),
        "private, max-age=31536000, immutable"
    );
}

on_both! {
    async fn an_original_comes_byte_for_byte_as_a_download(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let path = format!("{}/files/{}", site.style, drawing());
        let page = linh.visits(&path).await;
        must_be_harmless(&page);
        assert_eq!(page.bytes, b"the front of the half-zip");
        assert!(page.header("content-disposition").starts_with("attachment; "));

        let request = Request::builder().uri(&path);
        let request = request.header(header::IF_NONE_MATCH, page.header("etag"));
        let page = linh.asks(request.body(Body::empty()).unwrap()).await;
        page.must_be(StatusCode::NOT_MODIFIED);
        assert!(page.bytes.is_empty());
    }
}

on_both! {
    async fn the_picture_that_suits_a_width_is_sent(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let [small, large] = <[_; 2]>::try_from(pictures(&drawing())).unwrap();
        for (asked, sent) in [(1, &small), (320, &small), (321, &large), (4000, &large)] {
            let page = linh.visits(&format!("{}/files/{}/{asked}", site.style, drawing())).await;
            must_be_harmless(&page);
            assert_eq!(page.header("content-type"), "image/webp");
            assert_eq!(Digest::of(&page.bytes), sent.digest, "{asked}");
        }
        for wrong in ["wide", "-1", "99999999999"] {
            let path = format!("{}/files/{}/{wrong}", site.style, drawing());
            linh.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        }
        linh.visits(&format!("{}/files/{}", site.style, "no-digest")).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn a_factory_gets_no_file_of_a_draft(db) {
        let site = Site::new(db).await;
        site.cast.brand.shares_with(&site.cast.sao_mai).await.unwrap();
        let original = format!("{}/files/{}", site.style, drawing());
        let picture = format!("{original}/480");
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        for path in [&original, &picture] {
            oscar.visits(path).await.must_be(StatusCode::OK);
            hoa.visits(path).await.must_be(StatusCode::NOT_FOUND);
        }
        site.cast.brand.publishes("First issue").await.unwrap();
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        for path in [&original, &picture] {
            hoa.visits(path).await.must_be(StatusCode::OK);
            rafiq.visits(path).await.must_be(StatusCode::NOT_FOUND);
        }
    }
}

on_both! {
    async fn a_photograph_is_for_the_brand_and_the_factory_that_it_is_with(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let photo = cast.sao_mai.photographs("the cuff").await;
        for picture in pictures(&photo) {
            let bytes = format!("{photo} {} pixels wide", picture.width);
            site.files.put(bytes).await.unwrap();
        }
        let original = format!("{}/files/{photo}", site.style);
        let picture = format!("{original}/320");
        let mut iris = site.browser(&cast.brand.lead).await;
        let mut hoa = site.browser(&cast.sao_mai.hands).await;
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        // Until a message brings it, nobody has it.
        for browser in [&mut iris, &mut hoa, &mut rafiq] {
            browser.visits(&picture).await.must_be(StatusCode::NOT_FOUND);
        }
        let thread = cast.sao_mai.asks("point-c", "Like this?").await.unwrap();
        cast.sao_mai.sends(&thread, "See the cuff", std::slice::from_ref(&photo)).await.unwrap();
        must_be_harmless(&iris.visits(&picture).await);
        must_be_harmless(&hoa.visits(&picture).await);
        rafiq.visits(&picture).await.must_be(StatusCode::NOT_FOUND);
        // What was sent is not kept.
        iris.visits(&original).await.must_be(StatusCode::NOT_FOUND);
    }
}
