//! The grid of points without script: letters in order, wordings, points from another style.

use axum::http::StatusCode;
use fellseam::spec::document::{BodySide, Grade, Path};
use fellseam::spec::{Section, Spec};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::item;
use crate::support::database::on_both;

fn path(site: &Site) -> String {
    format!("{}/draft/points", site.style)
}

async fn form(site: &Site, browser: &mut Browser) -> FormOf {
    browser.visits(&path(site)).await.form(&path(site))
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

fn rule(spec: &Spec, id: &str) -> Option<Grade> {
    spec.point(&item(id)).and_then(|point| point.grade.clone())
}

on_both! {
    async fn letters_follow_the_rows_and_rules_follow_their_points(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = spec(&site).await;
        let old = rule(&before, "point-j");
        assert!(matches!(&old, Some(Grade::Derived { from, .. }) if *from == item("point-c")), "{old:?}");
        // C goes up before A.
        for _ in 0..2 {
            let sent = form(&site, &mut iris).await.set("do", "up point-c");
            iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        }
        let sent = form(&site, &mut iris).await.set("do", "letter");
        let page = iris.sends_and_opens(sent).await;
        assert_eq!(field(&page, "point-c.letter"), "A");
        assert_eq!(field(&page, "point-a.letter"), "B");
        assert!(field(&page, "point-j.grade").starts_with("=A "), "{}", field(&page, "point-j.grade"));
        let now = spec(&site).await;
        assert_eq!(rule(&now, "point-j"), old);
        let letters: Vec<String> = now.points.points.iter().map(|it| it.letter.clone()).collect();
        assert_eq!(letters, fellseam::spec::letters::in_order(Vec::new()).take(letters.len()).collect::<Vec<_>>());
        assert_eq!(now.points.points[0].id, item("point-c"));
    }
}

on_both! {
    async fn two_letters_that_change_places_turn_no_rule_to_another_point(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let old = rule(&spec(&site).await, "point-j");
        let sent = form(&site, &mut iris).await;
        let sent = sent.set("point-c.letter", "D").set("point-d.letter", "C");
        let page = iris.sends_and_opens(sent).await;
        assert_eq!(rule(&spec(&site).await, "point-j"), old);
        assert!(field(&page, "point-j.grade").starts_with("=D "));
        // Typed anew it names the point that has the letter now.
        let sent = form(&site, &mut iris).await.set("point-j.grade", "=C - 1");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let now = rule(&spec(&site).await, "point-j");
        assert!(matches!(&now, Some(Grade::Derived { from, .. }) if *from == item("point-d")), "{now:?}");
    }
}

on_both! {
    async fn a_script_is_told_the_letters_and_the_rules_and_saves_nothing(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut sent = form(&site, &mut iris).await;
        sent.action = format!("{}/letters", path(&site));
        let sent = sent
            .set("point-c.letter", "Q")
            .set("new-2.name", "Hood")
            .set("new-2.base", "12")
            .set("new-2.grade", "=Q - 1")
            .set("point-d.grade", "=nowhere");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::OK);
        let told: serde_json::Value = serde_json::from_slice(&page.bytes).unwrap();
        let rows = &told["rows"];
        assert_eq!(rows["point-c"]["letter"], "C");
        assert!(rows["point-j"]["grade"].as_str().unwrap().starts_with("=C "));
        // An empty row does not take a letter from one that is filled.
        assert_eq!((&rows["new-2"]["letter"], &rows["new-1"]["letter"]), (&"K".into(), &"L".into()));
        assert_eq!(rows["new-2"]["grade"], "=C - 1");
        assert_eq!(rows["point-d"]["grade"], "=nowhere");
        assert_eq!(site.cast.brand.draft().await.1[&Section::Points], 1);
    }
}

on_both! {
    async fn what_rounding_changes_stays_visible(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris).await;
        let sent = sent.set("point-c.base", "28 1/2").set("point-c.grade", "3/16").set("point-c.step", "1/8");
        let page = iris.sends_and_opens(sent).await;
        // 28 1/8, 28 5/16, 28 1/2, 28 11/16, 28 7/8: two of them lie between two eighths.
        let row = page.all("#row-point-c .calc");
        assert_eq!(row, ["28 1/8 71.4", "28 3/8 72.1 from 28 5/16 28 5/16", "28 1/2 72.4", "28 3/4 73.0 from 28 11/16 28 11/16", "28 7/8 73.3"]);
        let steps = page.all("[data-of=\"point-c\"] [data-steps] li");
        assert_eq!(steps, ["XS–S 1/4 from 3/16", "S–M 1/8 from 3/16", "M–L 1/4 from 3/16", "L–XL 1/8 from 3/16"]);
        // Towards zero: 1/2 in is 1.27 cm.
        let sent = form(&site, &mut iris).await.set("point-c.minus", "1/2").set("point-c.plus", "3/8");
        let page = iris.sends_and_opens(sent).await;
        assert_eq!(page.all("[data-of=\"point-c\"] [data-told]"), ["Tolerance in cm, never wider: −1.2 +0.9"]);
    }
}

on_both! {
    async fn a_wording_is_taken_kept_and_taken_out(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&site, &mut iris).await.set("point-a.wording", "Front Rise");
        let page = iris.sends_and_opens(sent).await;
        assert_eq!(field(&page, "point-a.start"), "crotch seam");
        let how = spec(&site).await.points.points[0].how.clone();
        assert_eq!((how.path, how.note.as_str()), (Some(Path::Curved), "along the seam"));

        let sent = form(&site, &mut iris).await.set("point-a.wording", "No such wording");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("There is no wording “No such wording”.");
        // The row that holds the field is open.
        assert_eq!(page.attributes("#open-point-a", "open").len(), 1);

        let sent = form(&site, &mut iris).await.set("new-1.keep", "Ours");
        iris.sends(sent).await.must_see("Write from where to where first");
        let sent = form(&site, &mut iris).await;
        let sent = sent
            .set("point-b.start", "the left notch")
            .set("point-b.end", "the right notch")
            .set("point-b.side", "both")
            .set("point-b.keep", "front rise");
        // What is only looked through while it is typed keeps nothing.
        let mut typing = iris.clone();
        typing.headers.insert("x-fellseam-check", "1".parse().unwrap());
        typing.sends(sent.clone()).await.must_be(StatusCode::OK);
        iris.visits("/wordings").await.must_see("None yet.");
        let page = iris.sends_and_opens(sent).await;
        // Its own comes before the program's of the same name.
        let named = page.attributes("#wordings option[value=\"front rise\"]", "data-start");
        assert_eq!(named, ["the left notch"]);
        assert!(page.attributes("#wordings option[value=\"Front rise\"]", "data-start").is_empty());
        let sent = form(&site, &mut iris).await.set("point-d.wording", "Front rise");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let how = spec(&site).await.points.points[3].how.clone();
        assert_eq!((how.start.as_str(), how.side), ("the left notch", Some(BodySide::Both)));

        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits("/wordings").await;
        page.must_see("the left notch");
        assert!(!page.has_form("/wordings"));
        let forget = iris.visits("/wordings").await.form("/wordings");
        let page = iris.sends_and_opens(forget.clone()).await;
        assert!(!page.sees("the left notch"));
        page.must_see("None yet.");
        iris.sends(forget).await.must_be(StatusCode::NOT_FOUND);
        // The point keeps its words.
        assert_eq!(spec(&site).await.points.points[3].how.start, "the left notch");
    }
}

/// Another style in centimetres, in sizes S, M and L; gives its path.
async fn another(site: &Site, browser: &mut Browser) -> String {
    let page = browser
        .posts("/styles", &[("number", "HT-310"), ("name", "Skerry")])
        .await;
    let header = page.goes_to();
    let style = header.split("/draft/").next().unwrap().to_owned();
    let sizes = format!("{style}/draft/sizes");
    let sent = browser.visits(&sizes).await.form(&sizes);
    let sent = sent
        .set("new-1.code", "S")
        .set("new-2.code", "M")
        .set("new-3.code", "L");
    browser.sends(sent).await.must_be(StatusCode::SEE_OTHER);
    let header = format!("{style}/draft/header");
    let page = browser.visits(&header).await;
    let sizes = page.attributes("#base_size option", "value");
    let sent = page
        .form(&header)
        .set("unit", "inch")
        .set("base_size", &sizes[1]);
    browser.sends(sent).await.must_be(StatusCode::SEE_OTHER);
    assert_ne!(style, site.style);
    style
}

on_both! {
    async fn points_are_copied_from_another_style_and_what_does_not_fit_is_asked(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let style = another(&site, &mut iris).await;
        let points = format!("{style}/draft/points");
        let copy = format!("{points}/copy");
        let page = iris.visits(&copy).await;
        page.must_see("Shoal half-zip");
        let from = site.style.trim_start_matches("/styles/").to_owned();
        let page = iris.visits(&format!("{copy}?from={from}")).await;
        let none = page.form(&copy).set("do", "look");
        iris.sends(none.clone()).await.must_see("No point is chosen.");
        // C, and J that follows it.
        let chosen = none.tick("take", "point-c").tick("take", "point-j");
        let page = iris.sends(chosen).await;
        page.must_be(StatusCode::OK);
        page.must_see("Nothing is copied yet.");
        let look = page.form(&copy);
        iris.sends(look.clone().set("do", "save")).await.must_be(StatusCode::SEE_OTHER);
        let path = iris.visits(&points).await;
        let names = path.attributes("tr[data-row] [name$=\".name\"]", "value");
        let from = spec(&site).await;
        assert_eq!(names[..2], [from.points.points[2].name.clone(), from.points.points[9].name.clone()]);
        let letters = path.attributes("tr[data-row] [name$=\".letter\"]", "value");
        assert_eq!(letters[..2], ["A", "B"]);
        let grades = path.attributes("tr[data-row] [name$=\".grade\"]", "value");
        assert!(grades[1].starts_with("=A "), "{grades:?}");

        // The preview was made over what was there then: it is shown again.
        let page = iris.sends(look.set("do", "save")).await;
        page.must_be(StatusCode::OK);
        page.must_see("One of the two styles was saved just now.");

        // J alone follows nothing here: its rule is asked for.
        let page = iris.visits(&format!("{copy}?from={}", site.style.trim_start_matches("/styles/"))).await;
        let sent = page.form(&copy).tick("take", "point-j").set("do", "look");
        let page = iris.sends(sent).await;
        page.must_see("Its rule: it followed a point that is not copied.");
        let sent = page.form(&copy).set("point-j.grade", "bent").set("do", "save");
        let page = iris.sends(sent).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let sent = page.form(&copy).set("point-j.grade", "=A - 2").set("do", "save");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let grades = iris.visits(&points).await.attributes("tr[data-row] [name$=\".grade\"]", "value");
        assert_eq!(grades[2], "=A - 2");

        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        linh.visits(&copy).await.must_be(StatusCode::NOT_FOUND);
        iris.visits(&format!("{copy}?from=nothing")).await.must_be(StatusCode::NOT_FOUND);
    }
}
