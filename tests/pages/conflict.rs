//! Two people save one section.

use axum::http::StatusCode;
use fellseam::spec::Section;

use crate::pages::Site;
use crate::support::cast::{inches, item};
use crate::support::database::on_both;

on_both! {
    async fn the_second_save_is_kept_and_both_versions_are_shown(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/points", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let first = nell.visits(&path).await.form(&path);
        let second = iris.visits(&path).await.form(&path);
        let first = first.set("point-c.base", "29").set("point-a.name", "Chest");
        nell.sends(first).await.must_be(StatusCode::SEE_OTHER);
        let second = second
            .set("point-c.base", "28 3/4")
            .set("point-e.note", "Along the fold")
            .set("new-1.name", "Hood height")
            .set("do", &format!("up {}", "point-d"));
        let page = iris.sends(second).await;
        let conflict = page.goes_to();
        assert!(conflict.contains("/draft/conflict/"), "{conflict}");
        let saved = site.cast.brand.draft().await;
        assert_eq!(saved.0.points.points[2].base, Some(inches("29")));

        // It is told of on every page of the draft, to its writer alone.
        let header = format!("{}/draft/header", site.style);
        let told = "A save of yours is not in the draft yet";
        let page = iris.visits(&header).await;
        page.must_see(told);
        assert_eq!(page.link("see both versions"), conflict);
        assert!(!nell.visits(&header).await.sees(told));
        nell.visits(&conflict).await.must_be(StatusCode::NOT_FOUND);

        let page = iris.visits(&conflict).await;
        page.must_see("Somebody saved this section while you were writing.");
        page.must_see("Saved by Nell");
        let of_c = page.all("fieldset:has([name=\"item.point-c\"])");
        assert!(of_c[0].contains("28 3/4") && of_c[0].contains("Base value 29"), "{of_c:?}");
        assert!(!of_c[0].contains("Tol"), "only what differs: {of_c:?}");
        // What only Nell changed is hers already, and what only Iris changed is Iris's.
        let form = page.form(&conflict);
        assert_eq!(form.value("item.point-a"), "theirs");
        assert_eq!(form.value("item.point-c"), "mine");
        assert_eq!(form.value("item.point-e"), "mine");
        assert_eq!(form.value("order.points"), "mine");
        let page = iris.sends(form.set("item.point-c", "theirs")).await;
        assert_eq!(page.goes_to(), format!("{path}?said=saved"));
        let points = site.cast.brand.draft().await.0.points.points;
        let letters: Vec<&str> = points.iter().map(|point| point.letter.as_str()).collect();
        assert_eq!(letters.join(""), "ABDCEFGHIJK");
        assert_eq!(points[0].name, "Chest");
        assert_eq!(points[3].base, Some(inches("29")));
        assert_eq!(points[4].how.note, "Along the fold");
        assert!(!iris.visits(&header).await.sees(told));
        iris.visits(&conflict).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn a_choice_over_what_moved_again_is_asked_once_more(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/header", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let open = iris.visits(&path).await.form(&path);
        site.cast.brand.edits(|spec| spec.header.season = "Spring 2027".to_owned()).await;
        let sent = open.set("season", "Summer 2027").set("garment", "zip top");
        let conflict = iris.sends(sent).await.goes_to();
        let form = iris.visits(&conflict).await.form(&conflict);
        assert_eq!(form.value("field.garment"), "mine");
        site.cast.brand.edits(|spec| spec.header.origin = "Bangladesh".to_owned()).await;
        let page = iris.sends(form.set("field.season", "theirs")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("The section was saved again just now.");
        let form = page.form(&conflict);
        assert_eq!(form.value("field.origin"), "theirs");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let (spec, versions) = site.cast.brand.draft().await;
        assert_eq!(spec.header.season, "Summer 2027");
        assert_eq!(spec.header.garment, "zip top");
        assert_eq!(spec.header.origin, "Bangladesh");
        assert_eq!(versions[&Section::Header], 4);
    }
}

on_both! {
    async fn every_kind_of_place_has_words(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for section in ["sizes", "drawings", "colourways"] {
            let path = format!("{}/draft/{section}", site.style);
            let open = iris.visits(&path).await.form(&path);
            site.cast
                .brand
                .edits(|spec| match section {
                    "sizes" => spec.sizes.sizes[0].label = "small".to_owned(),
                    "drawings" => spec.drawings.drawings[0].markers.truncate(3),
                    _ => {
                        spec.colourways.parts.swap(0, 1);
                        spec.colourways.cells.remove(&item("colourway-ink"));
                    }
                })
                .await;
            let sent = match section {
                "sizes" => open.set("size-xs.label", "smallest").tick("size-xl.remove", "on"),
                "drawings" => open.set("drawing-front.title", "The front"),
                _ => open
                    .set("part-1.name", "Shell")
                    .set("colourway-chalk.part-1.kind", "none"),
            };
            let conflict = iris.sends(sent).await.goes_to();
            let page = iris.visits(&conflict).await;
            page.must_be(StatusCode::OK);
            match section {
                "sizes" => {
                    page.must_see("smallest");
                    page.must_see("not there");
                }
                "drawings" => page.must_see("A (50, 38), B (50, 92), C (62, 55)"),
                _ => {
                    page.must_see("P1 Main fabric · CHALK Chalk");
                    page.must_see("natural");
                    page.must_see("Order");
                    page.must_see("Ink · H&T Ink · #1f2a3c");
                    page.must_see("empty");
                }
            }
            let form = page.form(&conflict);
            let page = iris.sends(form).await;
            assert_eq!(page.goes_to(), format!("{path}?said=saved"));
        }
        let spec = site.cast.brand.draft().await.0;
        assert_eq!(spec.sizes.sizes.len(), 4);
        assert_eq!(spec.drawings.drawings[0].title, "The front");
        assert_eq!(spec.colourways.parts[1].name, "Shell");
        assert!(!spec.colourways.cells.contains_key(&item("colourway-ink")));
    }
}
