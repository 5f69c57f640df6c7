//! Drawings of a draft and the letters on them.

use axum::http::StatusCode;
use fellseam::spec::document::{Drawing, View};
use fellseam::spec::{Digest, Section};

use crate::pages::Site;
use crate::support::cast::drawing;
use crate::support::database::on_both;

const FLAT: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 800"><path d="M100 100h800v600h-800z" fill="none" stroke="#000"/></svg>"##;
const TALL: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 500 1000"><path d="M50 50h400v900h-400z" fill="none" stroke="#000"/></svg>"##;

async fn drawings(site: &Site) -> Vec<Drawing> {
    site.cast.brand.draft().await.0.drawings.drawings
}

on_both! {
    async fn drawings_are_added_and_their_originals_kept_byte_for_byte(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        let script = FLAT.replace("<path", "<script>alert(1)</script><path");
        let form = form
            .attach("new", "Back v2.html", FLAT.as_bytes())
            .attach("new", "pocket.svg", script.as_bytes());
        let page = iris.sends(form).await;
        page.must_be(StatusCode::SEE_OTHER);
        let [first, back, pocket] = <[_; 3]>::try_from(drawings(&site).await).unwrap();
        assert_eq!(first.file, drawing());
        assert_eq!((back.view, back.width, back.height), (View::Back, 1000, 800));
        assert_eq!(back.file, Digest::of(FLAT.as_bytes()));
        assert_eq!(pocket.view, View::Detail);
        assert!(page.goes_to().ends_with(&format!("?said=saved#row-{}", pocket.id)));

        let original = iris.visits(&format!("{}/files/{}", site.style, back.file)).await;
        assert_eq!(original.bytes, FLAT.as_bytes());
        assert_eq!(original.header("content-type"), "image/svg+xml");
        assert!(original.header("content-disposition").contains("Back v2.svg"));
        // What is shown is drawn anew, at every width the SVG itself.
        let shown = iris.visits(&format!("{}/files/{}/480", site.style, pocket.file)).await;
        assert_eq!(shown.header("content-type"), "image/svg+xml");
        assert!(!shown.text().contains("alert") && shown.text().contains("<path"));
        let original = iris.visits(&format!("{}/files/{}", site.style, pocket.file)).await;
        assert_eq!(original.bytes, script.as_bytes());
    }
}

on_both! {
    async fn a_file_that_is_there_already_is_not_added_again(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        let form = form.attach("new", "back.svg", FLAT.as_bytes());
        let twice = form.clone().attach("new", "copy.svg", FLAT.as_bytes());
        let page = iris.sends(twice).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“copy.svg” is here already: Back. It was not added again.");
        assert_eq!(drawings(&site).await.len(), 2, "the first of the two was added");
        let again = iris.visits(&path).await.form(&path);
        let row = drawings(&site).await[1].id.clone();
        let again = again.set(&format!("{row}.title"), "Shown flat");
        let page = iris.sends(again.attach("new", "back.svg", FLAT.as_bytes())).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“back.svg” is here already: Shown flat.");
        assert_eq!(drawings(&site).await.len(), 2);
        assert_eq!(drawings(&site).await[1].title, "Shown flat", "the rest is saved");
    }
}

on_both! {
    async fn a_hostile_file_is_refused_with_the_sentence_and_the_rest_is_saved(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        let mut entities = "<!ENTITY a0 \"aaaaaaaaaa\">".to_owned();
        for n in 1..10 {
            let ten = format!("&a{};", n - 1).repeat(10);
            entities += &format!("<!ENTITY a{n} \"{ten}\">");
        }
        let bomb = format!("<!DOCTYPE svg [{entities}]><svg xmlns=\"http://www.w3.org/2000/svg\"><text>&a9;</text></svg>");
        let form = form
            .set("drawing-front.title", "With the long zip")
            .attach("new", "page.svg", b"<html><script>alert(1)</script></html>")
            .attach("new", "cut.png", &[0x89, b'P', b'N', b'G', 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3])
            .attach("new", "entities.svg", bomb.as_bytes())
            .attach("new", "good.svg", FLAT.as_bytes());
        let page = iris.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“page.svg” was not taken. This file is not a picture.");
        page.must_see("“cut.png” was not taken. The picture is damaged.");
        page.must_see("“entities.svg” was not taken.");
        assert!(!page.sees("good.svg"));
        let now = drawings(&site).await;
        assert_eq!(now[0].title, "With the long zip");
        assert_eq!(now[1].file, Digest::of(FLAT.as_bytes()));
        assert_eq!(now.len(), 2);
        // The form that comes back saves on over what was saved.
        let form = page.form(&path).set("drawing-front.title", "Long zip");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(drawings(&site).await[0].title, "Long zip");
    }
}

on_both! {
    async fn letters_are_put_on_moved_and_taken_off(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let before = drawings(&site).await;
        let marker = before[0].markers[0].clone();
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&path).await;
        // Every marker is drawn, and stands in the table under its own id.
        assert_eq!(page.all("svg.marks .mark").len(), before[0].markers.len());
        let form = page.form(&path);
        let x = format!("{}.x", marker.id);
        let y = format!("{}.y", marker.id);
        let wrong = form.clone().set(&x, "120").attach("new", "good.svg", FLAT.as_bytes());
        let page = iris.sends(wrong).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Write a number from 0 to 100 in both fields");
        page.must_see("Choose your files again");
        assert_eq!(page.form(&path).value(&x), "120");
        assert_eq!(drawings(&site).await, before);

        iris.sends(form.clone().set(&x, "12,34").set(&y, "0.5")).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        let moved = now[0].markers.iter().find(|it| it.id == marker.id).unwrap();
        assert_eq!((moved.x, moved.y), (1_234, 50));
        assert_eq!(now[0].markers.len(), before[0].markers.len());

        let form = iris.visits(&path).await.form(&path);
        iris.sends(form.set(&x, "").set(&y, "")).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        assert!(now[0].markers.iter().all(|it| it.id != marker.id));
        let page = iris.visits(&path).await;
        page.must_see("the letter is on no drawing");
        let link = page.link("Go there");
        assert!(link.ends_with(&format!("#row-{}", marker.item)), "{link}");
        assert_eq!(page.all(&format!("#row-{}", marker.item)).len(), 1);

        // Put on again, it is another marker of the same item.
        let form = page.form(&path);
        let mut keys = form.fields.iter().filter(|(name, value)| name.ends_with(".item") && *value == marker.item.as_str());
        let key = keys.next().unwrap().0.trim_end_matches(".item").to_owned();
        assert!(key.starts_with("new-"), "{key}");
        iris.sends(form.set(&format!("{key}.x"), "50").set(&format!("{key}.y"), "48")).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        let again = now[0].markers.iter().find(|it| it.item == marker.item).unwrap();
        assert_eq!((again.x, again.y), (5_000, 4_800));
        assert_ne!(again.id, marker.id);
    }
}

on_both! {
    async fn another_picture_in_the_place_of_one_keeps_its_letters(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let before = drawings(&site).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        let form = form.attach("drawing-front.picture", "new front.svg", TALL.as_bytes());
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        assert_eq!(now.len(), 1);
        assert_eq!(now[0].file, Digest::of(TALL.as_bytes()));
        assert_eq!(now[0].markers, before[0].markers);
        assert_eq!(now[0].height, 2 * now[0].width);
    }
}

on_both! {
    async fn drawings_are_ordered_and_removed_and_nobody_overwrites(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        iris.sends(form.attach("new", "back.svg", FLAT.as_bytes())).await.must_be(StatusCode::SEE_OTHER);
        let back = drawings(&site).await[1].id.clone();
        let page = iris.visits(&path).await;
        let form = page.form(&path);
        iris.sends(form.clone().set("do", &format!("up {back}"))).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(drawings(&site).await[0].id, back);

        // The form from before the move: kept beside, not over it.
        let page = iris.sends(form.set(&format!("{back}.title"), "Yoke")).await;
        assert!(page.goes_to().contains("/draft/conflict/"), "{}", page.goes_to());
        assert_eq!(drawings(&site).await[0].title, "");

        let form = iris.visits(&path).await.form(&path);
        iris.sends(form.tick("drawing-front.remove", "on")).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        assert_eq!(now.iter().map(|it| &it.id).collect::<Vec<_>>(), [&back]);
    }
}

on_both! {
    async fn a_draft_shows_no_file_that_was_not_added_to_it(db) {
        let site = Site::with_revision(db).await;
        let path = format!("{}/draft/drawings", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let form = iris.visits(&path).await.form(&path);
        let photo = site.cast.sao_mai.photographs("the cuff").await;
        for other in [photo, Digest::of(b"of another style")] {
            let form = form.clone().set("drawing-front.file", other.as_str());
            iris.sends(form).await.must_be(StatusCode::NOT_FOUND);
        }
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits(&path).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.attributes("form#section fieldset", "disabled").len(), 1);
        assert!(page.all("input[type=file]").is_empty());
        oscar.sends(form.set("token", &oscar.clone().token().await)).await.must_be(StatusCode::FORBIDDEN);
        let (_, versions) = site.cast.brand.draft().await;
        assert_eq!(versions[&Section::Drawings], 1);
    }
}
