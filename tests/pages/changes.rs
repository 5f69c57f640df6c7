//! What changed from one revision to another, as the factory reads it.

use axum::http::StatusCode;
use fellseam::spec::document::Grade;

use crate::pages::Site;
use crate::support::cast::{inches, item};
use crate::support::database::on_both;

/// The brand makes XL of the chest a quarter of an inch wider and publishes it.
async fn widens_the_chest(site: &Site, to: &str) -> u32 {
    let brand = &site.cast.brand;
    brand
        .edits(|spec| {
            let points = &mut spec.points.points;
            let chest = points.iter_mut().find(|it| it.id == item("point-a"));
            let Some(Grade::Segments { segments }) = &mut chest.expect("the chest").grade else {
                panic!("it is graded in segments");
            };
            segments[1].step = inches(to);
        })
        .await;
    brand.publishes("Wider in XL").await.unwrap()
}

on_both! {
    async fn a_factory_reads_what_changed_since_it_acknowledged(db) {
        let site = Site::with_revision(db).await;
        site.cast.sao_mai.acknowledges(1).await.unwrap();
        assert_eq!(widens_the_chest(&site, "1 1/2").await, 2);
        assert_eq!(widens_the_chest(&site, "1 3/4").await, 3);

        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/3/changes", site.style)).await;
        page.must_be(StatusCode::OK);
        page.must_see("Compared with revision 1. It is the one that your factory acknowledged last.");
        page.must_see("Wider in XL");
        assert_eq!(page.all(".changes > li").len(), 1);
        assert_eq!(page.all(".changes .letter"), ["A"]);
        // The rule, old and new, with the other unit; and the one size that it moves.
        page.must_see("Grade rule L–XL 1 1/4 in (3.2 cm) 1 3/4 in (4.4 cm)");
        page.must_see("1 size changes, base M does not");
        assert_eq!(page.all(".by-size li"), ["XL 23 3/4 24 1/4 (61.6 cm)"]);
        let item = format!("{}/revisions/3/items/point-a", site.style);
        assert_eq!(page.link("Chest width"), item);

        let page = linh.visits(&page.link("With revision 2")).await;
        page.must_see("Compared with revision 2.");
        assert!(!page.sees("acknowledged last"));
        assert_eq!(page.all(".by-size li"), ["XL 24 24 1/4 (61.6 cm)"]);
    }
}

on_both! {
    async fn the_brand_compares_with_the_revision_before(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let first = iris.visits(&format!("{}/revisions/1/changes", site.style)).await;
        first.must_see("This is the first revision.");
        widens_the_chest(&site, "1 1/2").await;
        let changes = format!("{}/revisions/2/changes", site.style);
        iris.visits(&changes).await.must_see("Compared with revision 1.");
        let same = iris.visits(&format!("{changes}?since=2")).await;
        same.must_see("Nothing changed since revision 2.");
        for nonsense in ["7", "0", "x", "-1"] {
            let page = iris.visits(&format!("{changes}?since={nonsense}")).await;
            page.must_be(StatusCode::NOT_FOUND);
        }
        let beyond = iris.visits(&format!("{}/revisions/9/changes", site.style)).await;
        beyond.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn a_page_that_the_browser_has_is_not_sent_again_until_something_happens(db) {
        let site = Site::with_revision(db).await;
        widens_the_chest(&site, "1 1/2").await;
        let changes = format!("{}/revisions/2/changes", site.style);
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        linh.headers.insert("accept-encoding", "gzip".parse().unwrap());
        let page = linh.visits(&changes).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.header("content-encoding"), "gzip");
        assert_eq!(page.header("cache-control"), "private, no-cache");
        let etag = page.header("etag").to_owned();
        // Kept: the very same bytes, for this session alone.
        let again = linh.visits(&changes).await;
        assert_eq!(again.bytes, page.bytes);
        let mut elsewhere = site.browser(&site.cast.sao_mai.lead).await;
        assert_ne!(elsewhere.visits(&changes).await.header("etag"), etag);

        linh.headers.insert("if-none-match", etag.parse().unwrap());
        let known = linh.visits(&changes).await;
        known.must_be(StatusCode::NOT_MODIFIED);
        assert!(known.bytes.is_empty());
        // Another address is another page.
        linh.visits(&format!("{changes}?since=2")).await.must_be(StatusCode::OK);

        // An act moves it on, and so does a new name.
        site.cast.sao_mai.acknowledges(2).await.unwrap();
        let moved = linh.visits(&changes).await;
        moved.must_be(StatusCode::OK);
        linh.headers.insert("if-none-match", moved.header("etag").parse().unwrap());
        linh.visits(&changes).await.must_be(StatusCode::NOT_MODIFIED);
        let iris = &site.cast.brand.lead;
        site.cast.store.rename(&iris.may(), "Iris Vale", "en").await.unwrap();
        linh.visits(&changes).await.must_be(StatusCode::OK);

        // Without a share nothing is kept back that was seen before.
        site.cast.brand.ends_share_with(&site.cast.sao_mai).await.unwrap();
        linh.visits(&changes).await.must_be(StatusCode::NOT_FOUND);
    }
}
