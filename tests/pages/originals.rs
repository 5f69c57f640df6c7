//! Originals of artwork: kept byte for byte, those that cannot be shown among them.

use axum::http::StatusCode;
use fellseam::spec::Digest;
use fellseam::spec::document::{Artwork, ArtworkForm};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::database::on_both;

const FLAT: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 800"><path d="M100 100h800v600h-800z" fill="none" stroke="#000"/></svg>"##;
const PDF: &[u8] = b"%PDF-1.7\n<script>alert(1)</script>";
const EPS: &[u8] = b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 10 10\n";
const STITCHES: &[u8] = &[0x00, 0x80, 0x3C, b'h', b't', b'm', b'l', 0x3E, 0xFF, 0x02];

fn path(site: &Site) -> String {
    format!("{}/draft/artwork/artwork-wave", site.style)
}

async fn artwork(site: &Site) -> Artwork {
    site.cast.brand.draft().await.0.artwork.artworks[0].clone()
}

async fn form(site: &Site, browser: &mut Browser) -> FormOf {
    browser.visits(&path(site)).await.form(&path(site))
}

async fn brings(site: &Site, browser: &mut Browser, field: &str, name: &str, bytes: &[u8]) -> Page {
    let form = form(site, browser).await;
    let field = format!("artwork-wave.{field}");
    browser.sends(form.attach(&field, name, bytes)).await
}

fn must_be_a_download(page: &Page, bytes: &[u8], media: &str, name: &str) {
    page.must_be(StatusCode::OK);
    assert_eq!(page.bytes, bytes);
    assert_eq!(page.header("content-type"), media);
    assert_eq!(page.header("x-content-type-options"), "nosniff");
    let disposition = page.header("content-disposition");
    assert!(disposition.starts_with("attachment; "), "{disposition}");
    assert!(
        disposition.contains(&format!("filename=\"{name}\"")),
        "{disposition}"
    );
}

on_both! {
    async fn what_cannot_be_shown_is_kept_byte_for_byte_with_a_preview(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for (bytes, name, media, kept) in [
            (PDF, "wave.html", "application/pdf", "wave.pdf"),
            (EPS, "wave v3.eps", "application/postscript", "wave v3.eps"),
        ] {
            let page = brings(&site, &mut iris, "file", name, bytes).await;
            let told = page.goes_to();
            assert!(told.ends_with("?said=saved&told=not-shown"), "{told}");
            iris.visits(&told).await.must_see("It cannot be shown here: upload a picture of it as its preview.");
            let file = artwork(&site).await.file.expect("the original");
            assert_eq!(file, Digest::of(bytes));
            assert_eq!(artwork(&site).await.pixels_across, None);
            let original = iris.visits(&format!("{}/files/{file}", site.style)).await;
            must_be_a_download(&original, bytes, media, kept);
            iris.visits(&format!("{}/files/{file}/480", site.style)).await.must_be(StatusCode::NOT_FOUND);
            // The way to it stands on the item's page.
            let page = iris.visits(&path(&site)).await;
            assert_eq!(page.link("What is kept"), format!("../../files/{file}"));
        }
        // A preview is a picture.
        let page = brings(&site, &mut iris, "preview", "wave.pdf", PDF).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("PDF is not a kind of picture that can be shown.");
        let page = brings(&site, &mut iris, "preview", "wave.svg", FLAT.as_bytes()).await;
        assert!(page.goes_to().ends_with("?said=saved#row-artwork-wave"), "{}", page.goes_to());
        assert_eq!(artwork(&site).await.file, Some(Digest::of(EPS)));

        // The factory sees the preview and downloads the original.
        site.cast.brand.publishes("With the emblem").await.unwrap();
        site.cast.brand.shares_with(&site.cast.sao_mai).await.unwrap();
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/1", site.style)).await;
        let preview = Digest::of(FLAT.as_bytes());
        let shown = format!("{}/files/{preview}/1080", site.style);
        assert_eq!(page.attributes("#row-artwork-wave img", "src")[0], shown);
        let original = page.attributes("#row-artwork-wave figcaption a", "href");
        let original = linh.visits(&original[0]).await;
        must_be_a_download(&original, EPS, "application/postscript", "wave v3.eps");
    }
}

on_both! {
    async fn stitches_are_taken_where_they_are_meant_and_nowhere_else(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = brings(&site, &mut iris, "file", "emblem.dst", STITCHES).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This file is not a picture.");
        let sent = form(&site, &mut iris).await.set("artwork-wave.form", "stitches");
        let page = iris.sends(sent.clone().attach("artwork-wave.file", "emblem.gif", b"GIF89a")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("GIF is not a kind of picture that can be shown.");
        let page = iris.sends(sent.attach("artwork-wave.file", "emblem.DST", STITCHES)).await;
        page.must_be(StatusCode::SEE_OTHER);
        let now = artwork(&site).await;
        assert_eq!((now.form, now.file), (Some(ArtworkForm::Stitches), Some(Digest::of(STITCHES))));
        let original = iris.visits(&format!("{}/files/{}", site.style, Digest::of(STITCHES))).await;
        must_be_a_download(&original, STITCHES, "application/octet-stream", "emblem.dst");
        // A drawing is always a picture: neither sent as one nor named by a forged form.
        let drawings = format!("{}/draft/drawings", site.style);
        let sent = iris.visits(&drawings).await.form(&drawings);
        let page = iris.sends(sent.clone().attach("new", "front.dst", STITCHES)).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let forged = sent.set("drawing-front.file", Digest::of(STITCHES).as_str());
        iris.sends(forged).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn live_text_and_linked_pictures_are_warned_of(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let linked = FLAT.replace("<path", "<image href=\"photo.jpg\" width=\"9\" height=\"9\"/><path");
        let page = brings(&site, &mut iris, "file", "wave.svg", linked.as_bytes()).await;
        let told = page.goes_to();
        assert!(told.ends_with("told=linked"), "{told}");
        let page = iris.visits(&told).await;
        page.must_see("The SVG names pictures in other files.");
        let now = artwork(&site).await;
        assert!(now.unsafe_text);
        assert_eq!(now.form, Some(ArtworkForm::Vector));
        let codes = page.all("#findings code");
        assert!(codes.contains(&"artwork-live-text".to_owned()), "{codes:?}");
        let text = FLAT.replace("<path", "<text x=\"10\" y=\"90\">Tidewrack</text><path");
        let page = brings(&site, &mut iris, "file", "wave.svg", text.as_bytes()).await;
        assert!(page.goes_to().contains("told="), "{}", page.goes_to());
        assert!(artwork(&site).await.unsafe_text);
        // Outlines in their place, and it is gone.
        let page = brings(&site, &mut iris, "file", "wave.svg", FLAT.as_bytes()).await;
        assert!(!page.goes_to().contains("told"), "{}", page.goes_to());
        assert!(!artwork(&site).await.unsafe_text);
    }
}

on_both! {
    async fn where_labels_are_written_the_licence_of_the_symbols_is_named(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for place in ["labels", "labels/label-care"] {
            let page = iris.visits(&format!("{}/draft/{place}", site.style)).await;
            page.must_see("Care symbols on a label need a licence.");
            page.must_see("go on no label");
        }
        let page = iris.visits(&format!("{}/draft/artwork", site.style)).await;
        assert!(page.all("#symbols").is_empty());
    }
}
