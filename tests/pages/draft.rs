//! Writing a draft, section by section, without script.

use axum::http::StatusCode;
use fellseam::spec::document::{Cell, Colour, Grade, MeasuringState};
use fellseam::spec::{ItemId, Section, Spec, Unit};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::{inches, item};
use crate::support::database::on_both;

fn path(site: &Site, section: &str) -> String {
    format!("{}/draft/{section}", site.style)
}

async fn form(site: &Site, browser: &mut Browser, section: &str) -> FormOf {
    let path = path(site, section);
    browser.visits(&path).await.form(&path)
}

async fn spec(site: &Site) -> Spec {
    site.cast.brand.draft().await.0
}

fn field(page: &Page, name: &str) -> String {
    let found = page.attributes(&format!("[name=\"{name}\"]"), "value");
    found
        .into_iter()
        .next()
        .unwrap_or_else(|| panic!("no field {name}"))
}

on_both! {
    async fn a_form_that_is_sent_back_changes_only_what_was_typed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut expected = spec(&site).await;
        for (section, name, typed) in [
            ("header", "season", "Spring 2027"),
            ("sizes", "size-xl.label", "up to 180 cm"),
            ("points", "point-h.note", "Without the rib"),
            ("colourways", "part-3.name", "Zip tape, woven"),
        ] {
            match section {
                "header" => expected.header.season = typed.to_owned(),
                "sizes" => expected.sizes.sizes[4].label = typed.to_owned(),
                "points" => expected.points.points[7].how.note = typed.to_owned(),
                _ => expected.colourways.parts[2].name = typed.to_owned(),
            }
            let sent = form(&site, &mut iris, section).await.set(name, typed);
            let page = iris.sends(sent).await;
            assert_eq!(page.goes_to(), format!("{}?said=saved", path(&site, section)));
            assert_eq!(spec(&site).await, expected, "{section}");
        }
    }
}

on_both! {
    async fn an_unchanged_form_makes_no_new_version(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        for section in ["header", "sizes", "points", "colourways"] {
            let sent = form(&site, &mut iris, section).await;
            iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        }
        assert_eq!(site.cast.brand.draft().await, before);
    }
}

on_both! {
    async fn twenty_eight_and_a_half_inches_are_shown_as_they_were_typed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for typed in ["28 1/2", "28½", "28-1/2\"", "28.5", "28,5"] {
            let sent = form(&site, &mut iris, "points").await;
            iris.sends(sent.set("point-c.base", "20")).await;
            let sent = form(&site, &mut iris, "points").await.set("point-c.base", typed);
            let page = iris.sends_and_opens(sent).await;
            assert_eq!(field(&page, "point-c.base"), "28 1/2", "{typed}");
            let row = page.all("#row-point-c .calc");
            assert_eq!(row, ["27 1/4 69.2", "27 7/8 70.8", "28 1/2 72.4", "29 1/8 74.0", "29 3/4 75.6"]);
            let base = spec(&site).await.points.points[2].base;
            assert_eq!(base, Some(inches("28 1/2")));
            assert_eq!(base.unwrap().nm.as_nm(), 723_900_000);
        }
        // Typed in the other unit it stays what it is, and says so.
        let sent = form(&site, &mut iris, "points").await.set("point-c.base", "72.4cm");
        let page = iris.sends_and_opens(sent).await;
        assert_eq!(field(&page, "point-c.base"), "72.4 cm");
        assert_eq!(spec(&site).await.points.points[2].base.unwrap().unit, Unit::Cm);
    }
}

on_both! {
    async fn what_cannot_be_read_stays_in_its_field_with_the_sentence(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        let sent = form(&site, &mut iris, "points").await;
        let sent = sent
            .set("point-c.base", "28 1/x")
            .set("point-d.grade", "XS-Q 2")
            .set("point-e.name", "Sleeve, changed")
            .set("new-1.name", "Hood height");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Nothing is saved yet: 2 fields cannot be read.");
        assert_eq!(field(&page, "point-c.base"), "28 1/x");
        let wrong = "“28 1/x” has a unit that is not known. Use cm, mm or inch.";
        assert_eq!(page.all("[id=\"point-c.base.error\"]"), [wrong]);
        assert_eq!(field(&page, "point-d.grade"), "XS-Q 2");
        assert!(page.all("[id=\"point-d.grade.error\"]")[0].contains("“XS-Q 2” is not a grade rule"));
        assert_eq!(field(&page, "point-e.name"), "Sleeve, changed");
        assert_eq!(field(&page, "new-1.name"), "Hood height");
        assert_eq!(site.cast.brand.draft().await, before);
        // Mended, the same form saves everything.
        let path = path(&site, "points");
        let sent = page.form(&path).set("point-c.base", "28 1/4").set("point-d.grade", "same");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let points = spec(&site).await.points.points;
        assert_eq!(points[2].base, Some(inches("28 1/4")));
        assert_eq!(points[3].grade, Some(Grade::Same {}));
        assert_eq!(points[4].name, "Sleeve, changed");
        assert_eq!((points[10].letter.as_str(), points[10].name.as_str()), ("K", "Hood height"));
    }
}

on_both! {
    async fn rows_are_added_moved_and_removed_and_keep_their_ids(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sizes = |spec: &Spec| -> Vec<String> {
            spec.sizes.sizes.iter().map(|size| size.code.clone()).collect()
        };
        let sent = form(&site, &mut iris, "sizes").await;
        let sent = sent.set("new-2.code", "2XL").set("do", "add");
        let page = iris.sends(sent).await;
        assert!(page.goes_to().ends_with("/draft/sizes?said=saved&more=10#row-new-1"));
        let now = spec(&site).await;
        assert_eq!(sizes(&now), ["XS", "S", "M", "L", "XL", "2XL"]);
        let new = now.sizes.sizes[5].id.clone();
        assert_eq!(new.as_str().len(), 36);

        let sent = form(&site, &mut iris, "sizes").await;
        let sent = sent.set("size-s.code", "S small").set("do", &format!("up {new}"));
        let page = iris.sends(sent).await;
        assert!(page.goes_to().ends_with(&format!("#row-{new}")));
        assert_eq!(sizes(&spec(&site).await), ["XS", "S small", "M", "L", "2XL", "XL"]);

        let sent = form(&site, &mut iris, "sizes").await.tick("size-xs.remove", "on");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let now = spec(&site).await;
        assert_eq!(sizes(&now), ["S small", "M", "L", "2XL", "XL"]);
        assert_eq!(now.sizes.sizes[0].id, item("size-s"));

        // The rules that named the size stay as they are, until somebody mends them.
        let page = iris.visits(&path(&site, "points")).await;
        assert_eq!(field(&page, "point-a.grade"), "?-L 1, L-XL 1 1/4");
        let sent = page.form(&path(&site, "points")).set("point-a.name", "Chest");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let after = spec(&site).await;
        assert_eq!(after.points.points[0].name, "Chest");
        assert_eq!(after.points.points[0].grade, now.points.points[0].grade);

        for (name, value) in [("row", "a/b"), ("row", "size-s")] {
            let sent = form(&site, &mut iris, "sizes").await.tick(name, value);
            iris.sends(sent).await.must_be(StatusCode::BAD_REQUEST);
        }
        let sent = form(&site, &mut iris, "sizes").await.set("size-m.code", "M=1");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(field(&page, "size-m.code"), "M=1");
    }
}

on_both! {
    async fn a_unit_or_a_size_that_changes_meanwhile_changes_no_meaning(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let open = form(&site, &mut iris, "points").await;
        site.cast
            .brand
            .edits(|spec| {
                spec.header.unit = Some(Unit::Cm);
                // The codes of two sizes change places.
                spec.sizes.sizes[0].code = "S".to_owned();
                spec.sizes.sizes[1].code = "XS".to_owned();
            })
            .await;
        let sent = open.set("point-c.base", "28 3/4").set("point-d.grade", "S-XL 1/2, XS-S 1/4");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let now = spec(&site).await;
        assert_eq!(now.points.points[2].base, Some(inches("28 3/4")));
        let Some(Grade::Segments { segments }) = &now.points.points[3].grade else {
            panic!("no steps: {:?}", now.points.points[3].grade);
        };
        assert_eq!((&segments[0].from, &segments[1].from), (&item("size-s"), &item("size-xs")));
        let page = iris.visits(&path(&site, "points")).await;
        assert_eq!(field(&page, "point-c.base"), "28 3/4 in");
        assert_eq!(field(&page, "point-d.grade"), "XS-XL 1/2 in, S-XS 1/4 in");
    }
}

on_both! {
    async fn the_header_says_what_is_missing_and_keeps_its_number_unique(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let other = [("number", "HT-310"), ("name", "Skerry shorts")];
        iris.posts("/styles", &other).await.must_be(StatusCode::SEE_OTHER);
        let sent = form(&site, &mut iris, "header").await.set("number", "HT-310");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let taken = "Another style has this number. Choose another one.";
        assert_eq!(page.all("#number-error"), [taken]);
        assert_eq!(page.form_value("number"), "HT-310");

        let sent = form(&site, &mut iris, "header").await;
        let sent = sent.set("measured", "after_washes").set("washes", "many");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.form_value("washes"), "many");
        let sent = page.form(&path(&site, "header")).set("washes", "3").set("unit", "");
        let page = iris.sends_and_opens(sent.untick("markets").tick("markets", "us")).await;
        page.must_see("Header 1 error");
        page.must_see("No unit is chosen.");
        assert_eq!(page.attributes(".findings a", "href"), [format!("{}#unit", path(&site, "header"))]);
        let header = spec(&site).await.header;
        assert_eq!(header.measured, Some(MeasuringState::AfterWashes(3)));
        assert_eq!(header.markets.len(), 1);
        // Without a unit a bare number has no meaning.
        let sent = form(&site, &mut iris, "points").await.set("point-c.base", "28");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“28” has no unit, and the spec has none yet.");
    }
}

on_both! {
    async fn the_matrix_holds_colours_none_natural_and_matches(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris, "colourways").await;
        let colourway = sent.fields.iter().rfind(|(name, _)| name == "colourway");
        let new = colourway.expect("a column for a new one").1.clone();
        let cell = |part: &str, field: &str| format!("{new}.{part}.{field}");
        let sent = sent
            .set(&format!("{new}.name"), "Kelp")
            .set(&cell("part-1", "name"), "Kelp")
            .set(&cell("part-1", "screen"), "green")
            .set(&cell("part-2", "kind"), "match part-1")
            .set(&cell("part-3", "kind"), "none")
            .set(&cell("part-4", "kind"), "natural");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“green” is not a screen colour.");
        assert_eq!(field(&page, &cell("part-1", "screen")), "green");
        let sent = page.form(&path(&site, "colourways")).set(&cell("part-1", "screen"), "5C6B3F");
        let page = iris.sends_and_opens(sent).await;
        page.must_see("Parts and colourways ready");
        let now = spec(&site).await.colourways;
        let kelp = now.colourways[2].id.clone();
        assert_eq!((now.parts.len(), now.colourways.len()), (4, 3));
        let at = |part: &str| now.cell(&kelp, &ItemId::new(part)).cloned();
        let colour = Colour {
            name: "Kelp".to_owned(),
            reference: String::new(),
            screen: Some("#5c6b3f".to_owned()), ..Colour::default() };
        assert_eq!(at("part-1"), Some(Cell::Colour(colour)));
        assert_eq!(at("part-2"), Some(Cell::DyedToMatch { part: item("part-1") }));
        assert_eq!((at("part-3"), at("part-4")), (Some(Cell::None {}), Some(Cell::Natural {})));
        assert_eq!(page.attributes("td .patch rect[fill=\"#5c6b3f\"]", "fill").len(), 2);

        // A part that goes takes its cells with it; who matched it says so.
        let sent = form(&site, &mut iris, "colourways").await.tick("part-1.remove", "on");
        let page = iris.sends_and_opens(sent).await;
        page.must_see("is dyed to match a part that is not in the spec");
        let now = spec(&site).await.colourways;
        assert!(now.cells.values().all(|row| !row.contains_key(&item("part-1"))));
        assert_eq!(now.cell(&kelp, &item("part-2")), Some(&Cell::DyedToMatch { part: item("part-1") }));
    }
}

on_both! {
    async fn the_values_are_worked_out_while_a_rule_is_typed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let grade = format!("{}/grade", path(&site, "points"));
        let sent = form(&site, &mut iris, "points").await;
        let row = |sent: &FormOf| FormOf {
            action: grade.clone(),
            fields: sent
                .fields
                .iter()
                .filter(|(name, value)| {
                    ["token", "version", "unit", "sizes_version"].contains(&name.as_str())
                        || name.starts_with("point-c.")
                        || (name == "row" && value == "point-c")
                })
                .cloned()
                .collect(),
            files: Vec::new(),
        };
        let page = iris.sends(row(&sent.clone().set("point-c.grade", "1"))).await;
        let shown: serde_json::Value = serde_json::from_slice(&page.bytes).unwrap();
        let c = &shown["rows"]["point-c"];
        assert_eq!(c["values"][0]["value"], "26 1/2");
        assert_eq!(c["values"][4]["value"], "30 1/2");
        assert_eq!(c["values"][4]["reference"], "77.5");
        // The zip follows the body.
        assert_eq!(shown["rows"]["point-j"]["values"][4]["value"], "11 1/2");
        assert_eq!(shown["rows"].as_object().unwrap().len(), 2);

        let page = iris.sends(row(&sent.clone().set("point-c.grade", "XS-M 1"))).await;
        let shown: serde_json::Value = serde_json::from_slice(&page.bytes).unwrap();
        let c = &shown["rows"]["point-c"];
        assert_eq!(c["values"].as_array().unwrap().len(), 0);
        assert!(c["notes"][0]["sentence"].as_str().unwrap().contains("the step from M to L"));
        let page = iris.sends(row(&sent.clone().set("point-c.base", "x"))).await;
        let shown: serde_json::Value = serde_json::from_slice(&page.bytes).unwrap();
        assert!(shown["rows"]["point-c"]["errors"]["base"].is_string());
        // Nothing of it is saved.
        assert_eq!(site.cast.brand.draft().await.1[&Section::Points], 1);
    }
}

on_both! {
    async fn who_may_not_write_is_refused(db) {
        let site = Site::with_revision(db).await;
        let path = path(&site, "points");
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris, "points").await;
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits(&path).await;
        page.must_be(StatusCode::OK);
        assert!(!page.attributes("fieldset", "disabled").is_empty());
        let token = oscar.token().await;
        let before = site.cast.brand.draft().await;
        let forged = sent.clone().set("point-c.base", "30");
        oscar.sends(forged.clone()).await.must_be(StatusCode::FORBIDDEN);
        oscar.sends(forged.clone().set("token", &token)).await.must_be(StatusCode::FORBIDDEN);
        // A factory sees no draft, shared or not; a style that is not shared is not there at all.
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        linh.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        rafiq.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        let token = rafiq.token().await;
        rafiq.sends(forged.set("token", &token)).await.must_be(StatusCode::NOT_FOUND);
        iris.visits(&format!("{}/draft/prices", site.style)).await.must_be(StatusCode::NOT_FOUND);
        assert_eq!(site.cast.brand.draft().await, before);
    }
}
