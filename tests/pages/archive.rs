//! A style as one archive: what is in it, and for whom.

use axum::http::StatusCode;
use fellseam::print::archive;
use fellseam::spec::Spec;
use fellseam::spec::canon::from_json;

use crate::pages::Site;
use crate::support::cast::drawing;
use crate::support::database::on_both;

on_both! {
    async fn a_revision_is_downloaded_whole_by_both_sides(db) {
        let site = Site::with_revision(db).await;
        let mut whole = Vec::new();
        for person in [&site.cast.brand.viewer, &site.cast.sao_mai.hands] {
            let mut browser = site.browser(person).await;
            let page = browser.visits(&format!("{}/revisions/1", site.style)).await;
            let exact = browser.visits(&page.link("Download the document")).await.bytes;
            let page = browser.visits(&page.link("Download the whole revision")).await;
            page.must_be(StatusCode::OK);
            assert_eq!(page.header("content-type"), "application/zip");
            assert_eq!(
                page.header("content-disposition"),
                "attachment; filename=\"HT-204-revision-1.zip\""
            );
            assert_eq!(page.header("content-length"), page.bytes.len().to_string());
            assert_eq!(page.header("cache-control"), "private, no-cache");
            assert_eq!(archive::document(&page.bytes).unwrap(), exact);
            // Its bytes were held to its digest just now.
            let entry = format!("originals/{}.", drawing());
            let mut places = page.bytes.windows(entry.len());
            assert!(places.any(|at| at == entry.as_bytes()));
            whole.push(page.bytes);
        }
        assert_eq!(whole[0], whole[1]);
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        let page = rafiq.visits(&format!("{}/revisions/1/archive", site.style)).await;
        page.must_be(StatusCode::NOT_FOUND);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for none in ["2", "first"] {
            let page = iris.visits(&format!("{}/revisions/{none}/archive", site.style)).await;
            page.must_be(StatusCode::NOT_FOUND);
        }
    }
}

on_both! {
    async fn the_draft_is_downloaded_by_the_brand_alone(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        brand.edits(|spec| spec.header.name = "Shoal, shorter".to_owned()).await;
        let mut oscar = site.browser(&brand.viewer).await;
        let page = oscar.visits(&site.style).await;
        let page = oscar.visits(&page.link("Download the draft")).await;
        page.must_be(StatusCode::OK);
        assert_eq!(
            page.header("content-disposition"),
            "attachment; filename=\"HT-204-draft.zip\""
        );
        let document = archive::document(&page.bytes).unwrap();
        let spec: Spec = from_json(&document).unwrap();
        assert_eq!(spec, brand.draft().await.0);
        assert_eq!(spec.header.name, "Shoal, shorter");
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/draft/archive", site.style)).await;
        page.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn an_original_that_was_damaged_on_the_disk_is_not_passed_on(db) {
        let site = Site::with_revision(db).await;
        std::fs::write(site.files.path(&drawing()), "something else").unwrap();
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&format!("{}/revisions/1/archive", site.style)).await;
        page.must_be(StatusCode::INTERNAL_SERVER_ERROR);
    }
}
