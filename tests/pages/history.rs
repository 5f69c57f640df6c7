//! Sections as they were, and styles begun from others.

use axum::http::StatusCode;
use fellseam::spec::document::{Approval, Cell};
use fellseam::spec::{ItemId, Section};

use crate::pages::Site;
use crate::support::cast::inches;
use crate::support::database::on_both;

on_both! {
    async fn a_section_comes_back_from_any_save_and_any_revision(db) {
        let site = Site::with_revision(db).await;
        let (brand, history) = (&site.cast.brand, format!("{}/history/points", site.style));
        brand.edits(|spec| spec.points.points[2].base = Some(inches("30"))).await;
        brand.edits(|spec| spec.points.points[2].base = Some(inches("31"))).await;
        let published = site.cast.brand.draft().await.1[&Section::Points] - 2;
        let mut iris = site.browser(&brand.lead).await;

        let page = iris.visits(&history).await;
        page.must_see("Iris");
        page.must_see("30 in (76.2 cm)");
        let forms = page.attributes(&format!("form[action=\"{history}\"] [name=version]"), "value");
        assert_eq!(forms.first().map(String::as_str), Some((published + 1).to_string().as_str()));
        // The first form takes the section from revision 1.
        let sent = page.form(&history);
        assert_eq!(sent.value("revision"), "1");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(brand.draft().await.0.points.points[2].base, Some(inches("28 1/2")));

        // Over a version that is not the newest any more it is a conflict, and nothing is lost.
        let stale = iris.visits(&history).await.form(&history);
        brand.edits(|spec| spec.points.points[2].base = Some(inches("33"))).await;
        assert!(iris.sends(stale).await.goes_to().contains("/draft/conflict/"));
        assert_eq!(brand.draft().await.0.points.points[2].base, Some(inches("33")));
    }
}

on_both! {
    async fn a_copy_has_everything_but_what_was_decided(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        brand.edits(|spec| {
            spec.colourways.colourways[0].pieces = Some(200);
            for cell in spec.colourways.cells.values_mut().flat_map(|row| row.values_mut()) {
                if let Cell::Colour(colour) = cell {
                    colour.approval = Some(Approval::Approved);
                }
            }
        }).await;
        let original = brand.draft().await.0;
        let mut iris = site.browser(&brand.lead).await;
        let copy = format!("{}/copy", site.style);
        let sent = iris.visits(&copy).await.form(&copy);
        assert_eq!(sent.value("name"), original.header.name);
        let again = iris.sends(sent.set("number", &original.header.number)).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see("Another style has this number");
        let sent = again.form(&copy).set("number", "HT-900").set("season", "Spring 2028");
        let begun = iris.sends(sent).await.goes_to();
        let style = begun.split("/draft/").next().expect("a draft").to_owned();

        let page = iris.visits(&style).await;
        page.must_see("Copied from");
        page.must_see("HT-204");
        assert!(!page.sees("Revision 1"));
        let page = iris.visits(&format!("{style}/draft/points")).await;
        let names = page.attributes("[name=\"point-c.name\"]", "value");
        assert_eq!(names, [original.point(&ItemId::new("point-c")).expect("C").name.clone()]);
        let page = iris.visits(&format!("{style}/draft/colourways/colourway-ink")).await;
        assert_eq!(page.attributes("[name=\"colourway-ink.pieces\"]", "value"), [""]);
        // Its drawings can be fetched through the copy.
        let file = &original.drawings.drawings[0].file;
        iris.visits(&format!("{style}/files/{file}")).await.must_be(StatusCode::OK);
    }
}
