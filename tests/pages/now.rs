//! Prints, and the page behind their code.

use axum::http::StatusCode;

use crate::pages::Site;
use crate::support::cast::Cast;
use crate::support::database::on_both;

on_both! {
    async fn the_code_of_a_print_says_in_one_word_what_it_is_now(db) {
        let site = Site::with_revision(db).await;
        let (brand, mill) = (&site.cast.brand, &site.cast.sao_mai);
        let store = &site.cast.store;
        let lead = mill.lead.on(&brand.style).await;
        let code = store.print_code(&lead, 1, None).await.unwrap();
        let hands = mill.hands.on(&brand.style).await;
        let again = store.print_code(&hands, 1, None).await.unwrap();
        assert_eq!(code, again, "one for each revision and factory");
        let iris = brand.lead.on(&brand.style).await;
        let own = store.print_code(&iris, 1, None).await.unwrap();
        assert_ne!(code, own);

        let address = format!("/p/{code}");
        let mut anybody = site.stranger();
        let page = anybody.visits(&address).await;
        page.must_be(StatusCode::OK);
        assert!(page.sees("Current") && page.sees("HT-204"));
        assert!(!page.sees("Shoal"), "nothing but the number of the style");
        assert_eq!(page.header("cache-control"), "no-store");
        assert!(page.header("x-robots-tag").contains("noindex"));

        brand.edits(|spec| spec.header.name = "Shoal, shorter".to_owned()).await;
        brand.publishes("Shorter").await.unwrap();
        let page = anybody.visits(&address).await;
        assert!(page.sees("Superseded") && page.sees("1 change since then"));
        assert!(page.sees("Revision 2 is newer"));

        let draft = store.draft_print_code(&brand.lead.on(&brand.style).await).await.unwrap();
        let page = anybody.visits(&format!("/p/{draft}")).await;
        assert!(page.sees("Draft"));
        anybody.visits("/p/something").await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn no_code_is_printed_that_leads_to_this_machine_alone(db) {
        let cast = Cast::with_revision(db).await;
        let site = Site::of(cast, "http://127.0.0.1:8640", false).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/1/paper?part=labels", site.style)).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.sees("Nothing is printed"));
    }
}

on_both! {
    async fn both_sides_print_a_revision_and_the_brand_its_draft(db) {
        let site = Site::with_revision(db).await;
        let sheets = "?part=labels&language=en&second=vi&paper=letter";
        for person in [&site.cast.brand.viewer, &site.cast.sao_mai.hands] {
            let mut browser = site.browser(person).await;
            let page = browser.visits(&format!("{}/revisions/1", site.style)).await;
            browser.visits(&page.link("Print")).await.must_be(StatusCode::OK);
            let page = browser.visits(&format!("{}/revisions/1/paper{sheets}", site.style)).await;
            page.must_be(StatusCode::OK);
            assert_eq!(page.header("content-type"), "application/pdf");
            assert!(page.bytes.starts_with(b"%PDF-"));
        }
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&format!("{}/draft/paper{sheets}", site.style)).await;
        page.must_be(StatusCode::OK);
        assert!(page.bytes.starts_with(b"%PDF-"));
    }
}
