//! Two people save one section.

use axum::http::StatusCode;
use fellseam::spec::Section;
use fellseam::spec::document::{Cell, Colour, Grade};

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
        let of_c = page.all("fieldset:has([name=\"of.point-c.base\"])");
        assert!(of_c[0].contains("28 3/4") && of_c[0].contains("29 in"), "{of_c:?}");
        let of_c = page.attributes("[name^=\"of.point-c.\"][value=mine]", "name");
        assert_eq!(of_c, ["of.point-c.base"], "only what differs");
        // What both changed stands before what is chosen already.
        let before = page.attributes("form.conflict > section [value=mine]", "name");
        assert_eq!(before, ["of.point-c.base"]);
        // What only Nell changed is hers already, and what only Iris changed is Iris's.
        let form = page.form(&conflict);
        assert_eq!(form.value("of.point-a.name"), "theirs");
        assert_eq!(form.value("of.point-c.base"), "mine");
        assert_eq!(form.value("of.point-e.how.note"), "mine");
        assert_eq!(form.value("order.points"), "mine");
        let page = iris.sends(form.set("of.point-c.base", "theirs")).await;
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
        // What was chosen before stands, and what is new is marked.
        assert_eq!(form.value("field.season"), "theirs");
        let marked = page.all("fieldset:has([name=\"field.origin\"]) legend");
        assert_eq!(marked, ["Made in saved again just now"]);
        assert_eq!(form.value("field.origin"), "theirs");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let (spec, versions) = site.cast.brand.draft().await;
        assert_eq!(spec.header.season, "Spring 2027");
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
                "drawings" => {
                    page.must_see("Letter on a drawing: D Across shoulders");
                    page.must_see("50 % from the left, 14 % from the top");
                }
                _ => {
                    page.must_see("P1 Main fabric CHALK Chalk");
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

on_both! {
    async fn a_field_is_written_anew_where_the_two_differ(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/points", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let open = iris.visits(&path).await.form(&path);
        site.cast.brand.edits(|spec| {
            spec.points.points[2].base = Some(inches("29"));
            spec.points.points[2].how.start = "Shoulder point".to_owned();
            spec.points.points[3].grade = Some(Grade::Same {});
        }).await;
        let sent = open
            .set("point-c.base", "28")
            .set("point-c.start", "Neck point")
            .set("point-d.grade", "1");
        let conflict = iris.sends(sent).await.goes_to();
        let page = iris.visits(&conflict).await;
        let form = page.form(&conflict);
        // What is written is not passed over in silence.
        let sent = form.clone().set("typed.point-c.base", "28 1/4");
        let again = iris.sends(sent).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see("Something is written here, and another choice is ticked.");
        // What cannot be read comes back as it was written, with everything else.
        let sent = again.form(&conflict)
            .set("of.point-c.base", "written")
            .set("typed.point-c.base", "28 1/x")
            .set("of.point-c.how.start", "written")
            .set("typed.point-c.how.start", "High shoulder point")
            .set("of.point-d.grade", "written")
            .set("typed.point-d.grade", "XS-L 1, L-XL 1 1/4");
        let again = iris.sends(sent).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(again.all("[id=\"typed.point-c.base.error\"]").len(), 1);
        let form = again.form(&conflict);
        assert_eq!(form.value("typed.point-c.how.start"), "High shoulder point");
        let page = iris.sends(form.set("typed.point-c.base", "28 1/4")).await;
        assert_eq!(page.goes_to(), format!("{path}?said=saved"));
        let points = site.cast.brand.draft().await.0.points.points;
        assert_eq!(points[2].base, Some(inches("28 1/4")));
        assert_eq!(points[2].how.start, "High shoulder point");
        assert!(matches!(&points[3].grade, Some(Grade::Segments { segments }) if segments.len() == 2));
    }
}

on_both! {
    async fn a_colour_is_written_anew_and_a_third_save_in_between_loses_nothing(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/colourways", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let open = iris.visits(&path).await.form(&path);
        let (ink, cloth) = (item("colourway-ink"), item("part-1"));
        let colour = |name: &str| Cell::Colour(Colour {
            name: name.to_owned(),
            ..Colour::default()
        });
        let paint = async |name: &str| {
            let cell = colour(name);
            site.cast.brand.edits(|spec| {
                let cells = spec.colourways.cells.get_mut(&ink).unwrap();
                cells.insert(cloth.clone(), cell);
            }).await;
        };
        paint("Moss").await;
        let sent = open.set("colourway-ink.part-1.name", "Fern").set("part-2.name", "Rib");
        let conflict = iris.sends(sent).await.goes_to();
        let form = iris.visits(&conflict).await.form(&conflict);
        let sent = form
            .set("cell.colourway-ink.part-1", "written")
            .set("typed.colourway-ink.part-1.kind", "colour")
            .set("typed.colourway-ink.part-1.name", "Lichen")
            .set("typed.colourway-ink.part-1.reference", "H&T Lichen");
        // Somebody saves a third time before it is sent.
        paint("Pine").await;
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Pine");
        page.must_see("Fern");
        let form = page.form(&conflict);
        assert_eq!(form.value("cell.colourway-ink.part-1"), "written");
        assert_eq!(form.value("typed.colourway-ink.part-1.name"), "Lichen");
        assert_eq!(form.value("of.part-2.name"), "mine");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let spec = site.cast.brand.draft().await.0;
        assert_eq!(spec.colourways.parts[1].name, "Rib");
        let Some(Cell::Colour(now)) = spec.colourways.cell(&ink, &cloth) else {
            panic!("a colour");
        };
        assert_eq!((&*now.name, &*now.reference), ("Lichen", "H&T Lichen"));
        // Every version is in the history.
        let page = iris.visits(&format!("{}/history/colourways", site.style)).await;
        for name in ["Moss", "Pine", "Lichen"] {
            page.must_see(name);
        }
    }
}

on_both! {
    async fn two_people_move_letters_on_one_drawing(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let open = iris.visits(&path).await.form(&path);
        let markers = site.cast.brand.draft().await.0.drawings.drawings[0].markers.clone();
        let (first, second) = (markers[0].id.clone(), markers[1].id.clone());
        site.cast.brand.edits(|spec| spec.drawings.drawings[0].markers[0].x = 1_000).await;
        let sent = open.set(&format!("{second}.x"), "12").set(&format!("{second}.y"), "34");
        let conflict = iris.sends(sent).await.goes_to();
        let page = iris.visits(&conflict).await;
        let names = page.attributes("[value=mine]", "name");
        assert_eq!(names, [format!("item.{first}"), format!("item.{second}")]);
        let form = page.form(&conflict);
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let now = site.cast.brand.draft().await.0.drawings.drawings[0].markers.clone();
        assert_eq!(now.len(), markers.len());
        assert_eq!(now[0].x, 1_000);
        assert_eq!((now[1].x, now[1].y), (1_200, 3_400));
    }
}
