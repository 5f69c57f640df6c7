//! What is drawn to scale: on a draft's pages, while somebody types, and on a revision.

use axum::http::StatusCode;
use fellseam::spec::document::RatioPack;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::item;
use crate::support::database::on_both;

/// The page of an item, and what stands beside its form when these fields are typed.
async fn typed(site: &Site, browser: &mut Browser, place: &str, fields: &[(&str, &str)]) -> Page {
    let path = format!("{}/draft/{place}", site.style);
    let mut form = browser.visits(&path).await.form(&path);
    for (name, value) in fields {
        form = form.set(name, value);
    }
    form.action = format!("{path}/preview");
    browser.sends(form).await
}

on_both! {
    async fn artwork_stands_at_its_true_size_beside_its_form(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = format!("{}/draft/artwork/artwork-wave", site.style);
        let page = iris.visits(&path).await;
        // 1 1/4 × 5/8 in between its rulers.
        let boxes = page.attributes(".true-paper", "width");
        assert_eq!(boxes, ["31.75"]);
        assert_eq!(page.attributes("svg.true", "width")[0], "62.8mm");
        page.must_see("True size · 31.75 × 15.8750 mm");
        page.must_see("As it was saved last.");
        let pictures = page.attributes(".true image", "href");
        assert_eq!(pictures.len(), 1);
        iris.visits(&pictures[0]).await.must_be(StatusCode::OK);
        assert_eq!(page.attributes("[data-preview]", "data-preview"), [format!("{path}/preview")]);
    }
}

on_both! {
    async fn what_is_typed_is_drawn_and_not_saved(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        let place = "artwork/artwork-wave";
        let width = "artwork-wave.bands.0.width";
        let page = typed(&site, &mut iris, place, &[(width, "3")]).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.attributes(".true-paper", "width"), ["76.2"]);
        // What cannot be read yet is left out, without a fault.
        let page = typed(&site, &mut iris, place, &[(width, "3 1/")]).await;
        page.must_be(StatusCode::OK);
        page.must_see("Give its width and height");
        assert_eq!(site.cast.brand.draft().await, before);
    }
}

on_both! {
    async fn a_viewer_sees_it_and_asks_for_nothing(db) {
        let site = Site::new(db).await;
        let mut viewer = site.browser(&site.cast.brand.viewer).await;
        let path = format!("{}/draft/artwork/artwork-wave", site.style);
        let page = viewer.visits(&path).await;
        assert_eq!(page.attributes(".true-paper", "width"), ["31.75"]);
        assert!(page.attributes("[data-preview]", "data-preview").is_empty());
        viewer.posts(&format!("{path}/preview"), &[]).await.must_be(StatusCode::FORBIDDEN);
    }
}

on_both! {
    async fn a_label_is_drawn_with_what_it_says(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = format!("{}/draft/labels/label-care", site.style);
        let page = iris.visits(&path).await;
        let said = page.all(".label-text").join(" ");
        assert!(said.contains("Wash at 30") && said.contains("%"), "{said}");
        page.must_see("Open · 31.75 × 76.2 mm");
        page.must_see("Folded · 31.75 × 38.1 mm");
        let small = [("label-care.height", "3/4"), ("label-care.folded_height", "")];
        let page = typed(&site, &mut iris, "labels/label-care", &small).await;
        page.must_see("The text seems not to fit");
        assert!(!page.all(".label-text.over").is_empty());
    }
}

on_both! {
    async fn a_stitch_is_called_by_its_name_while_it_is_typed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = format!("{}/draft/construction/callout-1", site.style);
        let page = iris.visits(&path).await;
        let known = page.attributes("#known-stitches option", "value");
        assert!(known.contains(&"301".to_owned()), "{known:?}");
        assert_eq!(page.attributes("[name=\"callout-1.stitch\"]", "list"), ["known-stitches"]);
        let fields = [("callout-1.stitch", "514+999"), ("callout-1.seam", "2")];
        let page = typed(&site, &mut iris, "construction/callout-1", &fields).await;
        page.must_see("514 four-thread overedge · Overedge stitch");
        page.must_see("999 not in the table of numbers");
        page.must_see("2 lapped · LS");
    }
}

on_both! {
    async fn a_material_shows_the_colours_of_its_parts_and_who_uses_it(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let spec = site.cast.brand.draft().await.0;
        let fabric = &spec.materials.materials[0];
        let page = iris.visits(&format!("{}/draft/materials/{}", site.style, fabric.id)).await;
        let colours = page.all(".beside-colours tbody tr");
        assert_eq!(colours.len(), fabric.parts.len());
        assert!(colours[0].contains("Ink") && colours[0].contains("natural"), "{colours:?}");
        let page = iris.visits(&format!("{}/draft/materials/material-thread", site.style)).await;
        page.must_see("Used in");
        let place = format!("materials/{}", fabric.id);
        let amount = format!("{}.consumption.amount", fabric.id);
        let page = typed(&site, &mut iris, &place, &[(&amount, "1.35")]).await;
        let sizes = page.all(".beside-sizes tbody tr");
        assert_eq!(sizes.len(), spec.sizes.sizes.len());
        assert!(sizes.iter().all(|row| row.contains("1.35") || row.contains("1.")), "{sizes:?}");
    }
}

on_both! {
    async fn packs_are_typed_by_size_and_summed(db) {
        let site = Site::new(db).await;
        site.cast.brand.edits(|spec| {
            spec.packing.ratio = vec![RatioPack {
                id: item("pack"),
                name: "Eight".to_owned(),
                ..RatioPack::default()
            }];
        })
        .await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sizes = site.cast.brand.draft().await.0.sizes.sizes;
        let at: Vec<String> = sizes.iter().map(|size| format!("pack.pieces.{}", size.id)).collect();
        let fields = [(at[0].as_str(), "1"), (at[1].as_str(), "3"), (at[2].as_str(), "4")];
        let page = typed(&site, &mut iris, "packing", &fields).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.all(".packs tbody tr"), ["Eight every colourway 1 3 4 0 0 8"]);
        page.must_see("Packs in a carton 20 (160 pieces)");
        // 24 × 16 × 12 in are 0.0755 cubic metres.
        page.must_see("A carton takes up 0.0755 m³");
        // The same fields are saved by the list's own form.
        let path = format!("{}/draft/packing", site.style);
        let form = iris.visits(&path).await.form(&path).set(&at[0], "2");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let pack = site.cast.brand.draft().await.0.packing.ratio[0].clone();
        assert_eq!(pack.pieces.get(&sizes[0].id), Some(&2));
    }
}

on_both! {
    async fn the_factory_sees_the_same_drawings_on_a_revision(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/1", site.style)).await;
        assert_eq!(page.attributes("#artwork .true-paper", "width"), ["31.75"]);
        assert!(page.all("#labels .label-text").join(" ").contains("Wash at 30"));
        assert!(page.attributes("[data-preview]", "data-preview").is_empty());
        assert!(!page.text().contains("style=\""));
    }
}
