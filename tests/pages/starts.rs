//! Styles that are begun with something: a start for a kind of garment, or one of the brand's own.

use axum::http::StatusCode;
use fellseam::spec::Digest;
use fellseam::spec::document::GarmentKind;
use fellseam::spec::start::{STARTS, Start};

use crate::pages::Site;
use crate::support::database::on_both;

on_both! {
    async fn every_kind_is_offered_with_its_flat(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits("/styles").await;
        let values = page.attributes(".start input", "value");
        assert_eq!(values.len(), 1 + STARTS.len());
        assert_eq!(values[..2], ["", "t_shirt"]);
        let pictures = page.attributes(".start img", "src");
        assert_eq!(pictures.len(), STARTS.len());
        for (picture, start) in pictures.iter().zip(&STARTS) {
            let shown = iris.visits(picture).await;
            assert_eq!(shown.header("content-type"), "image/svg+xml");
            assert_eq!(shown.text(), start.flats[0].svg);
        }
    }
}

on_both! {
    async fn a_style_begins_with_all_that_the_start_of_its_kind_says(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits("/styles").await.form("/styles");
        let form = form.set("number", "HT-400").set("name", "Foreshore joggers");
        let begun = iris.sends(form.set("start", "joggers")).await.goes_to();
        let style = begun.split("/draft/").next().expect("a draft").to_owned();
        let start = Start::of(GarmentKind::Joggers).expect("joggers");
        let page = iris.visits(&format!("{style}/draft/points")).await;
        let typed = page.attributes("[name=\"point-front-rise.name\"]", "value");
        assert_eq!(typed, ["Front rise"]);
        for flat in &start.flats {
            let file = Digest::of(flat.svg.as_bytes());
            let original = iris.visits(&format!("{style}/files/{file}")).await;
            original.must_be(StatusCode::OK);
            assert_eq!(original.text(), flat.svg);
            let shown = iris.visits(&format!("{style}/files/{file}/480")).await;
            shown.must_be(StatusCode::OK);
        }
        // Nothing keeps it from being published but what a start cannot know.
        let page = iris.visits(&format!("{style}/publish")).await;
        page.must_see("It is not said where the garment will be sold");
        assert!(!page.sees("The style number is missing"));
    }
}

on_both! {
    async fn a_style_is_kept_as_a_start_and_left_again(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let value = format!("style-{}", site.cast.brand.style);
        let keep = format!("{}/start", site.style);
        let offered = |page: &crate::pages::Page| {
            page.attributes(".start input", "value").contains(&value)
        };
        assert!(!offered(&iris.visits("/styles").await));
        let page = iris.visits(&site.style).await;
        let page = iris.sends_and_opens(page.form(&keep)).await;
        page.must_see("New styles can begin with the draft of this one.");

        let list = iris.visits("/styles").await;
        assert!(offered(&list));
        list.must_see("HT-204 Shoal half-zip");
        let form = list.form("/styles").set("number", "HT-401").set("name", "Shoal again");
        let begun = iris.sends(form.set("start", &value)).await.goes_to();
        let copy = begun.split("/draft/").next().expect("a draft").to_owned();
        let page = iris.visits(&copy).await;
        page.must_see("Copied from");
        let page = iris.visits(&format!("{copy}/draft/header")).await;
        assert_eq!(page.form_value("number"), "HT-401");
        let original = site.cast.brand.draft().await.0;
        let file = &original.drawings.drawings[0].file;
        iris.visits(&format!("{copy}/files/{file}")).await.must_be(StatusCode::OK);

        let page = iris.visits(&site.style).await;
        let page = iris.sends_and_opens(page.form(&keep)).await;
        assert!(!page.sees("New styles can begin with"));
        assert!(!offered(&iris.visits("/styles").await));
    }
}

on_both! {
    async fn what_is_no_start_begins_nothing(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut sends = async |start: &str| {
            let fields = [("number", "HT-402"), ("name", "None"), ("start", start)];
            iris.posts("/styles", &fields).await.status
        };
        assert_eq!(sends("cape").await, StatusCode::BAD_REQUEST);
        assert_eq!(sends("style-nowhere").await, StatusCode::NOT_FOUND);
        // A mistake elsewhere leaves the choice as it was.
        let form = iris.visits("/styles").await.form("/styles").set("start", "dress");
        let page = iris.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.attributes(".start input[checked]", "value"), ["dress"]);
    }
}
