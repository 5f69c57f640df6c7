//! The brand's list of styles.

use axum::http::StatusCode;

use crate::pages::Site;
use crate::support::database::on_both;

on_both! {
    async fn a_style_is_started_by_number_and_name(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits("/styles").await;
        page.must_see("HT-204 Shoal half-zip Revision 1 0 0");
        let form = page.form("/styles").set("number", "HT-310").set("name", "Skerry shorts");
        let page = iris.sends(form).await;
        let draft = page.goes_to();
        assert!(draft.ends_with("/draft/header?said=made"), "{draft}");
        let page = iris.opens(&draft).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.form_value("number"), "HT-310");
        assert_eq!(page.form_value("name"), "Skerry shorts");
        page.must_see("Sizes empty");
        iris.visits("/styles").await.must_see("HT-310 Skerry shorts draft only 0 0");
        // Every section of an empty draft opens.
        for section in ["sizes", "drawings", "points", "colourways"] {
            let path = draft.replace("header?said=made", section);
            iris.visits(&path).await.must_be(StatusCode::OK);
        }
    }
}

on_both! {
    async fn a_number_that_is_taken_is_refused_beside_its_field(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits("/styles").await.form("/styles");
        let form = form.set("number", "HT-204").set("name", "Another one");
        let page = iris.sends(form.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let beside = page.all("#number-error");
        assert_eq!(beside, ["Another style has this number. Choose another one."]);
        assert_eq!(page.form_value("number"), "HT-204");
        assert_eq!(page.form_value("name"), "Another one");
        let page = iris.sends(form.set("number", " ")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("#number-error"), ["Write something here."]);
    }
}

on_both! {
    async fn a_viewer_reads_the_list_and_starts_nothing(db) {
        let site = Site::new(db).await;
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits("/styles").await;
        page.must_see("HT-204 Shoal half-zip");
        assert!(!page.has_form("/styles"));
        let fields = [("number", "HT-1"), ("name", "Mine")];
        oscar.posts("/styles", &fields).await.must_be(StatusCode::FORBIDDEN);
    }
}
