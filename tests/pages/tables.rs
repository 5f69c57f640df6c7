//! The tables that ship with the program, and corrections of them.

use axum::http::StatusCode;
use fellseam::spec::Decimal;
use fellseam::spec::book::Table;
use fellseam::spec::document::{Fibre, Market, Word};

use crate::pages::{Browser, Page, Site};
use crate::support::database::on_both;

async fn corrects(nell: &mut Browser, row: &str, fields: &[(&str, &str)]) -> Page {
    let path = format!("/tables/{row}");
    let form = nell.visits(&path).await.form(&path);
    let form = fields
        .iter()
        .fold(form, |form, (name, value)| form.set(name, value));
    nell.sends(form).await
}

fn card(page: &Page, table: &str) -> Vec<String> {
    let rows = page.all("table.list tbody tr").into_iter();
    rows.filter(|row| row.contains(table)).collect()
}

on_both! {
    async fn every_row_says_how_far_it_was_checked_and_when(db) {
        let site = Site::new(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let page = nell.visits("/tables").await;
        assert_eq!(page.all("table.list tbody tr").len(), Table::ALL.len());
        for table in Table::ALL {
            let page = nell.visits(&format!("/tables/{}", table.word())).await;
            page.must_be(StatusCode::OK);
            assert_eq!(page.all("tbody tr").len(), table.rows().len());
            // Every row, column and table has a name: none shows the id of a text.
            assert!(!page.text().contains("word-"), "{}", page.reads());
            for row in table.rows() {
                let page = nell.visits(&format!("/tables/{}/{}", table.word(), row.key())).await;
                page.must_be(StatusCode::OK);
                assert!(!page.text().contains("word-"), "{}", page.reads());
                if row.key.len() == 2 {
                    break;
                }
            }
        }
        let page = nell.visits("/tables/component_names?only=unchecked").await;
        page.must_see("Main fabric, de Oberstoff Not checked against the official text, 2026-11-25");
        for gone in ["/tables/prices", "/tables/seams/99"] {
            nell.visits(gone).await.must_be(StatusCode::NOT_FOUND);
        }
    }
}

on_both! {
    async fn a_corrected_name_stands_on_the_label_of_what_is_published_after_it(db) {
        let site = Site::with_revision(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let fields = [("value.name", "Außenstoff"), ("source", "Our printer's list, 2026")];
        let page = corrects(&mut nell, "component_names/main.de", &fields).await;
        let page = nell.opens(&page.goes_to()).await;
        page.must_see("Ships as: Oberstoff");
        page.must_see("Außenstoff Checked against a published copy. Our printer's list, 2026");
        assert!(page.all("ol.plain li")[0].contains(site.cast.brand.owner.name));
        page.must_see("Take what ships again");
        let page = nell.visits("/tables").await;
        assert!(card(&page, "Names of components")[0].ends_with('1'), "{:?}", card(&page, "Names"));
        let page = nell.visits("/tables/component_names?only=corrected").await;
        assert_eq!(page.all("tbody tr").len(), 1);
        page.must_see("corrected here");

        site.cast.brand.edits(|spec| spec.header.season = "Autumn".to_owned()).await;
        site.cast.brand.publishes("With the right word").await.unwrap();
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let revision = |n: u32| format!("{}/revisions/{n}", site.style);
        iris.visits(&revision(2)).await.must_see("Außenstoff: ");
        // What was published before stays as it was.
        let before = iris.visits(&revision(1)).await;
        before.must_see("Oberstoff: ");
        assert!(!before.sees("Außenstoff"));
        let document = iris.visits(&format!("{}/document", revision(2))).await.text();
        assert!(document.contains("\"corrections\":[{"), "{document}");
        assert!(!iris.visits(&format!("{}/document", revision(1))).await.text().contains("corrections"));

        let page = corrects(&mut nell, "component_names/main.de", &[("do", "shipped")]).await;
        let page = nell.opens(&page.goes_to()).await;
        page.must_see("What ships was taken again.");
        assert_eq!(page.all("ol.plain li").len(), 2);
        site.cast.brand.edits(|spec| spec.header.season = "Winter".to_owned()).await;
        site.cast.brand.publishes("As it ships").await.unwrap();
        iris.visits(&revision(3)).await.must_see("Oberstoff: ");
    }
}

on_both! {
    async fn a_corrected_rule_is_checked_by(db) {
        let site = Site::new(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        site.cast.brand.edits(|spec| {
            spec.header.markets = vec![Market::Us];
            let fabric = &mut spec.materials.materials[0];
            fabric.composition.truncate(1);
            fabric.composition[0].fibre = Some(Fibre::Cotton);
            fabric.composition[0].percent = Some(Decimal::HUNDRED);
            fabric.fabric.mass = Some(Decimal::new(80, 0));
            fabric.fabric.raised = false;
        }).await;
        let findings = |page: Page| page.all("#findings code");
        let path = format!("{}/draft/materials", site.style);
        let before = findings(iris.visits(&path).await);
        assert!(before.contains(&"evidence-flammability".to_owned()), "{before:?}");
        let fields = [("value.value", "20"), ("source", "16 CFR 1610.1(d)")];
        corrects(&mut nell, "safety_figures/us_plain_exempt_g_m2", &fields).await.must_be(StatusCode::SEE_OTHER);
        let after = findings(iris.visits(&path).await);
        let left = |codes: &[String]| codes.iter().filter(|it| *it == "evidence-flammability").count();
        assert_eq!(left(&after) + 1, left(&before), "{before:?} {after:?}");
    }
}

on_both! {
    async fn what_makes_no_sense_is_refused_at_its_field(db) {
        let site = Site::new(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let wrong = |page: &Page, field: &str| page.all(&format!("[id=\"{field}.error\"]"));
        let fields = [("value.name", "Stoff, außen"), ("source", "")];
        let page = corrects(&mut nell, "component_names/main.de", &fields).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(wrong(&page, "value.name")[0].starts_with("A table cannot hold a comma"));
        assert_eq!(wrong(&page, "source"), ["Write something here."]);
        assert_eq!(page.attributes("[name=\"value.name\"]", "value"), ["Stoff, außen"]);
        for (row, field, value) in [
            ("safety_figures/en_cord_legs_mm", "value.value", "none"),
            ("fibre_rules/eu.tolerance", "value.percent", "three"),
            ("safety_bands/en_young", "value.months_from", "99"),
        ] {
            let page = corrects(&mut nell, row, &[(field, value), ("source", "a text")]).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see("the table makes no sense any more");
        }
        let page = corrects(&mut nell, "component_names/main.de", &[("status", "from_memory"), ("source", "a text")]).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(wrong(&page, "status"), ["Choose one."]);
        let page = nell.visits("/tables/component_names?only=corrected").await;
        page.must_see("There are none.");
    }
}

on_both! {
    async fn only_an_owner_corrects(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let fields = [("value.name", "Stoff"), ("status", "verified"), ("source", "a text")];
        let page = iris.posts("/tables/component_names/main.de", &fields).await;
        page.must_be(StatusCode::FORBIDDEN);
        let mut nell = site.browser(&site.cast.brand.owner).await;
        nell.visits("/tables/component_names/main.de").await.must_see("Ships as: Oberstoff");
        assert!(nell.visits("/styles").await.all(".frame-nav a").contains(&"Tables".to_owned()));
        assert!(!iris.visits("/styles").await.all(".frame-nav a").contains(&"Tables".to_owned()));
    }
}
