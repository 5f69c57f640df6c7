//! Sections that are lists, and items on pages of their own, without script.

use axum::http::StatusCode;
use fellseam::spec::document::{Fibre, MaterialKind, Measure, Structure, Wash, Word, ZipEnd};
use fellseam::spec::{Decimal, Item, Section, Spec};

use crate::pages::{Browser, FormOf, Site};
use crate::support::cast::inches;
use crate::support::database::on_both;

fn path(site: &Site, place: &str) -> String {
    format!("{}/draft/{place}", site.style)
}

async fn form(site: &Site, browser: &mut Browser, place: &str) -> FormOf {
    let path = path(site, place);
    browser.visits(&path).await.form(&path)
}

async fn spec(site: &Site) -> Spec {
    site.cast.brand.draft().await.0
}

on_both! {
    async fn every_form_that_is_sent_back_as_it_came_changes_nothing(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        let mut places: Vec<String> = Section::ALL.iter().map(|it| it.name().to_owned()).collect();
        let items = before.0.items().filter(|item| {
            !matches!(
                item,
                Item::Drawing(_)
                    | Item::Marker(_)
                    | Item::DimensionLine(_)
                    | Item::BlowUp(_)
                    | Item::Part(_)
            )
        });
        places.extend(items.map(|item| format!("{}/{}", item.section().name(), item.id())));
        assert!(places.len() > 30, "{places:?}");
        for place in places {
            let sent = form(&site, &mut iris, &place).await;
            iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
            assert_eq!(site.cast.brand.draft().await, before, "{place}");
        }
    }
}

on_both! {
    async fn one_item_after_the_other_is_filled(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let [first, second, .., last] = &spec(&site).await.points.points[..] else {
            panic!("points");
        };
        let place = format!("points/{}", first.id);
        let page = iris.visits(&path(&site, &place)).await;
        page.must_see(&format!("Save, and on to {} {}", second.letter, second.name));
        let sent = page.form(&path(&site, &place))
            .set(&format!("{}.measure", first.id), Measure::ALL[0].word())
            .set("do", "next");
        let page = iris.sends(sent).await;
        assert_eq!(page.goes_to(), format!("{}?said=saved", path(&site, &format!("points/{}", second.id))));
        let on = iris.opens(&page.goes_to()).await;
        on.must_see("Saved.");
        assert_eq!(spec(&site).await.points.points[0].measure, Some(Measure::ALL[0]));
        let end = iris.visits(&path(&site, &format!("points/{}", last.id))).await;
        assert!(!end.sees("Save, and on to"), "{}", end.reads());
    }
}

on_both! {
    async fn a_material_is_begun_in_its_list_and_filled_on_its_own_page(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris, "materials").await
            .set("new-1-materials.letter", "Z9")
            .set("new-1-materials.name", "Pocket zip")
            .set("new-1-materials.kind", "zip");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let zip = spec(&site).await.materials.materials.last().cloned().expect("the zip");
        assert_eq!((zip.letter.as_str(), zip.kind), ("Z9", Some(MaterialKind::Zip)));

        let place = format!("materials/{}", zip.id);
        let at = |field: &str| format!("{}.{field}", zip.id);
        let sent = form(&site, &mut iris, &place).await
            .set(&at("zip.end"), "open")
            .set(&at("zip.opening"), "point-c")
            .set(&at("length_by_size.size-m"), "5 1/2")
            .set(&at("consumption.unit"), "piece")
            .set(&at("consumption.amount"), "2")
            .set(&at("wastage.percent"), "2,5");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::SEE_OTHER);
        let zip = spec(&site).await.material(&zip.id).cloned().expect("the zip");
        assert_eq!(zip.zip.end, Some(ZipEnd::Open));
        assert_eq!(zip.zip.opening.as_ref().map(|id| id.as_str()), Some("point-c"));
        let medium = site.cast.brand.draft().await.0.sizes.sizes[2].id.clone();
        assert_eq!(zip.length_in(&medium), Some(inches("5 1/2")));
        assert_eq!(zip.consumption.of(&medium), Some(Decimal::new(2, 0)));
        let wastage = zip.wastage.expect("it was typed");
        assert_eq!(wastage.percent, Some(Decimal::new(25, 1)));
    }
}

on_both! {
    async fn a_fabric_is_written_with_its_fibres_and_its_structure(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris, "materials").await
            .set("new-1-materials.name", "Lining")
            .set("new-1-materials.kind", MaterialKind::WovenFabric.word());
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let id = spec(&site).await.materials.materials.last().expect("it").id.clone();
        let at = |field: &str| format!("{id}.{field}");
        let place = format!("materials/{id}");
        let sent = form(&site, &mut iris, &place).await
            .set(&at("composition.0.fibre"), "polyester")
            .set(&at("composition.0.percent"), "80")
            .set(&at("composition.1.fibre"), "cotton")
            .set(&at("composition.1.percent"), "20")
            .set(&at("fabric.structure.woven.weave"), "plain")
            .set(&at("fabric.structure.woven.warp.count"), "30")
            .set(&at("fabric.structure.woven.warp.system"), "ne")
            .set(&at("care.wash"), Wash::Mild30.word());
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let fabric = spec(&site).await.material(&id).cloned().expect("it");
        let fibres: Vec<_> = fabric.composition.iter().map(|it| (it.fibre, it.percent)).collect();
        assert_eq!(fibres, [
            (Some(Fibre::Polyester), Some(Decimal::new(80, 0))),
            (Some(Fibre::Cotton), Some(Decimal::new(20, 0))),
        ]);
        let Some(Structure::Woven(woven)) = fabric.fabric.structure else {
            panic!("a woven one");
        };
        assert_eq!(woven.weave, "plain");
        assert_eq!(woven.warp.and_then(|warp| warp.count), Some(Decimal::new(30, 0)));
        assert_eq!(fabric.care.wash, Some(Wash::Mild30));

        // Emptied, they go.
        let sent = form(&site, &mut iris, &place).await
            .set(&at("composition.0.fibre"), "")
            .set(&at("composition.0.percent"), "");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let fabric = spec(&site).await.material(&id).cloned().expect("it");
        assert_eq!(fabric.composition.len(), 1);
    }
}

on_both! {
    async fn what_cannot_be_read_comes_back_as_it_was_typed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = spec(&site).await;
        let id = before.materials.materials[0].id.clone();
        let at = |field: &str| format!("{id}.{field}");
        let place = format!("materials/{id}");
        let sent = form(&site, &mut iris, &place).await
            .set(&at("fabric.mass"), "heavy")
            .set(&at("fabric.width"), "wide")
            .set(&at("name"), "Renamed");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.text().contains("“heavy” is no number"), "{}", page.text());
        for (field, typed) in [("fabric.mass", "heavy"), ("fabric.width", "wide"), ("name", "Renamed")] {
            let values = page.attributes(&format!("[name=\"{}\"]", at(field)), "value");
            assert_eq!(values, [typed], "{field}");
        }
        assert_eq!(spec(&site).await, before);
    }
}

on_both! {
    async fn only_an_owner_sets_a_rule_aside(db) {
        let site = Site::new(db).await;
        let cast = &site.cast;
        for (person, sees) in [(&cast.brand.owner, true), (&cast.brand.lead, false)] {
            let mut browser = site.browser(person).await;
            let page = browser.visits(&path(&site, "header")).await;
            let inputs = page.attributes("[name=\"exemptions\"]", "value");
            assert_eq!(!inputs.is_empty(), sees);
        }
        let mut owner = site.browser(&cast.brand.owner).await;
        let sent = form(&site, &mut owner, "header").await
            .set("exemptions.0.code", "child-cord")
            .set("exemptions.0.reason", "Sold to adults only, sizes are labelled so.")
            .set("exemptions.0.by", "Nell Harrow");
        owner.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let exempt = spec(&site).await.header.exemptions;
        assert_eq!(exempt.len(), 1);
        // The designer's form neither shows nor takes it off, nor adds one by a forged field.
        let mut iris = site.browser(&cast.brand.lead).await;
        let sent = form(&site, &mut iris, "header").await
            .set("season", "Another")
            .set("exemptions", "0")
            .set("exemptions.0.reason", "forged");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(spec(&site).await.header.exemptions, exempt);
    }
}
