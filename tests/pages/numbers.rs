//! How styles get their numbers.

use axum::http::StatusCode;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::Person;
use crate::support::database::on_both;

async fn sets(site: &Site, mask: &str, list: &str, entries: &str) -> Page {
    let mut nell = site.browser(&site.cast.brand.owner).await;
    let form = nell.visits("/numbers").await.form("/numbers");
    let form = form
        .set("mask", mask)
        .set("list", list)
        .set("entries", entries);
    nell.sends(form).await
}

/// Starts a style; gives where that leads, or the page that came back.
async fn starts(browser: &mut Browser, number: &str, season: Option<&str>) -> Page {
    let form = browser.visits("/styles").await.form("/styles");
    let mut form = form.set("number", number).set("name", "A new one");
    if let Some(season) = season {
        form = form.set("list.season", season);
    }
    browser.sends(form).await
}

async fn number_of(browser: &mut Browser, started: &Page) -> String {
    let header = started.goes_to();
    let page = browser
        .visits(header.split('?').next().expect("a path"))
        .await;
    page.attributes("[name=number]", "value").concat()
}

fn designer(site: &Site) -> &Person {
    &site.cast.brand.lead
}

on_both! {
    async fn the_next_free_number_is_taken_where_none_is_typed(db) {
        let site = Site::new(db).await;
        sets(&site, "{season}-{seq:3}", "season", "27S = Spring 2027\n27A = Autumn 2027").await
            .must_be(StatusCode::SEE_OTHER);
        let mut iris = site.browser(designer(&site)).await;
        for (season, expected) in [("27S", "27S-001"), ("27S", "27S-002"), ("27A", "27A-001")] {
            let started = starts(&mut iris, "", Some(season)).await;
            assert_eq!(number_of(&mut iris, &started).await, expected);
        }
        // A gap that was jumped over stays one.
        let started = starts(&mut iris, "27s-010", Some("27A")).await;
        assert_eq!(number_of(&mut iris, &started).await, "27s-010");
        let started = starts(&mut iris, "", Some("27S")).await;
        assert_eq!(number_of(&mut iris, &started).await, "27S-011");
    }
}

on_both! {
    async fn a_number_that_is_none_of_the_brands_is_sent_back(db) {
        let site = Site::new(db).await;
        sets(&site, "HT-{seq:3}", "", "").await.must_be(StatusCode::SEE_OTHER);
        let mut iris = site.browser(designer(&site)).await;
        iris.visits("/styles").await.must_see("The next free one is HT-");
        starts(&mut iris, "ZZ-1", None).await.must_see("does not look like your style numbers");
        starts(&mut iris, "HT-700", None).await.must_be(StatusCode::SEE_OTHER);
        let page = starts(&mut iris, "ht - 700", None).await;
        page.must_see("“HT-700” is there already");
        assert_eq!(page.attributes("[name=number]", "value"), ["ht - 700"]);
    }
}

on_both! {
    async fn a_mask_that_does_not_hold_together_says_where(db) {
        let site = Site::new(db).await;
        for (mask, why) in [
            ("HT-{seq:3", "The brace at character 4 is never closed"),
            ("HT", "needs a counter"),
            ("{kind}-{seq:2}", "“kind” at character 1 is no counter and no list"),
            ("{seq:2}{check}", "Choose how the check character is worked out"),
        ] {
            let page = sets(&site, mask, "", "").await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(why);
            assert_eq!(page.attributes("[name=mask]", "value"), [mask]);
        }
        // Nothing was set: numbers are typed by hand.
        let mut iris = site.browser(designer(&site)).await;
        starts(&mut iris, "", None).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        starts(&mut iris, "Any 1", None).await.must_be(StatusCode::SEE_OTHER);
    }
}

on_both! {
    async fn an_emptied_mask_leaves_numbers_to_the_designer(db) {
        let site = Site::new(db).await;
        sets(&site, "HT-{seq:3}", "", "").await.must_be(StatusCode::SEE_OTHER);
        sets(&site, "", "", "").await.must_be(StatusCode::SEE_OTHER);
        let mut iris = site.browser(designer(&site)).await;
        assert!(!iris.visits("/styles").await.sees("next free"));
        starts(&mut iris, "Whatever", None).await.must_be(StatusCode::SEE_OTHER);
    }
}
