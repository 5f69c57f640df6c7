//! Colours of the matrix: the page of a cell, colours beside each other, numbers of colourways.

use axum::http::StatusCode;
use fellseam::spec::document::{Approval, Cell, Colour, Colourways, Illuminant, Lab, Observer};
use fellseam::spec::{Decimal, Digest};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::item;
use crate::support::database::on_both;
use crate::threads::inputs;

fn matrix(site: &Site) -> String {
    format!("{}/draft/colourways", site.style)
}

fn cell(site: &Site, colourway: &str, part: &str) -> String {
    format!("{}/colourway-{colourway}/part-{part}", matrix(site))
}

async fn form(browser: &mut Browser, path: &str) -> FormOf {
    browser.visits(path).await.form(path)
}

async fn section(site: &Site) -> Colourways {
    site.cast.brand.draft().await.0.colourways
}

async fn colour(site: &Site, colourway: &str, part: &str) -> Colour {
    let ids = (
        item(&format!("colourway-{colourway}")),
        item(&format!("part-{part}")),
    );
    match section(site).await.cell(&ids.0, &ids.1) {
        Some(Cell::Colour(colour)) => colour.clone(),
        other => panic!("no colour: {other:?}"),
    }
}

fn with_reading(form: FormOf, [l, a, b]: [&str; 3], light: &str, observer: &str) -> FormOf {
    let form = form.set("l", l).set("a", a).set("b", b);
    form.set("illuminant", light).set("observer", observer)
}

fn value(page: &Page, name: &str) -> String {
    page.attributes(&format!("[name=\"{name}\"]"), "value")
        .concat()
}

on_both! {
    async fn a_colour_is_written_whole_and_its_screen_value_computed_from_the_reading(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = cell(&site, "ink", "1");
        let page = iris.visits(&path).await;
        page.must_see("#1f2a3c, as typed. Approximate: no screen is set up for cloth.");
        let sent = page.form(&path)
            .set("reference", "Book A 19-4010")
            .set("substrate", "brushed jersey")
            .set("approval", "submitted");
        let sent = with_reading(sent, ["20,5", "-1.2", "-9.80"], "d65", "10");
        let page = iris.sends(sent).await;
        assert!(page.goes_to().ends_with("?said=saved#colourway-ink.part-1.kind"), "{}", page.goes_to());
        let number = |text| Decimal::read(text).unwrap();
        assert_eq!(colour(&site, "ink", "1").await, Colour {
            name: "Ink".to_owned(),
            reference: "Book A 19-4010".to_owned(),
            substrate: "brushed jersey".to_owned(),
            lab: Some(Lab {
                l: number("20.5"),
                a: number("-1.2"),
                b: number("-9.8"),
                illuminant: Illuminant::D65,
                observer: Observer::Ten,
            }),
            screen: Some("#1f2a3c".to_owned()),
            photo: None,
            approval: Some(Approval::Submitted),
        });
        let page = iris.visits(&path).await;
        page.must_see("computed from the reading. Approximate");
        assert_eq!((value(&page, "l"), value(&page, "b")), ("20.5".to_owned(), "-9.8".to_owned()));
        let computed = page.attributes(".large-patch rect", "fill").concat();
        assert_ne!(computed, "#1f2a3c");
        // The matrix shows the same patch, what is known, and no field for what is computed.
        let page = iris.visits(&matrix(&site)).await;
        assert!(page.attributes("[name=\"colourway-ink.part-1.screen\"]", "value").is_empty());
        assert_eq!(page.attributes(&format!("td .patch rect[fill=\"{computed}\"]"), "fill").len(), 3);
        page.must_see("on brushed jersey L* 20.5 a* −1.2 b* −9.8 (D65, 10° observer) Lab dip sent");
        // Sent back as it came, the matrix changes nothing of it.
        let before = section(&site).await;
        iris.sends(page.form(&matrix(&site)).set("part-2.name", "Rib")).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(section(&site).await.cells, before.cells);
    }
}

on_both! {
    async fn what_a_reading_lacks_or_cannot_be_is_said_at_its_field(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = cell(&site, "ink", "1");
        let before = section(&site).await;
        let sent = form(&mut iris, &path).await;
        let page = iris.sends(with_reading(sent.clone(), ["20", "", "x"], "", "")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("[id=\"a.error\"]"), ["Write something here."]);
        assert_eq!(page.all("[id=\"b.error\"]"), ["“x” is no number. Write 12.5, for instance."]);
        for choice in ["illuminant", "observer"] {
            assert_eq!(page.all(&format!("[id=\"{choice}.error\"]")), ["Choose one."]);
        }
        assert_eq!((value(&page, "l"), value(&page, "b")), ("20".to_owned(), "x".to_owned()));
        let page = iris.sends(with_reading(sent.clone(), ["20", "300", "0"], "d65", "10")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("No surface has this colour.");
        let page = iris.sends(sent.clone().set("screen", "blue").set("name", &"x".repeat(501))).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("“blue” is not a screen colour");
        page.must_see("This is too long.");
        assert_eq!(section(&site).await, before);
        for kind in ["match part-1", "match part-9", "mauve"] {
            iris.sends(sent.clone().set("kind", kind)).await.must_be(StatusCode::BAD_REQUEST);
        }
        for gone in ["ink/part-9", "moss/part-1"] {
            let path = format!("{}/colourway-{gone}", matrix(&site));
            iris.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        }
        // Somebody else's save in between is not written over.
        let other = form(&mut iris, &cell(&site, "ink", "4")).await;
        iris.sends(other.set("kind", "natural")).await.must_be(StatusCode::SEE_OTHER);
        let page = iris.sends(sent.set("name", "Night")).await;
        assert!(page.goes_to().contains("/draft/conflict/"), "{}", page.goes_to());
    }
}

on_both! {
    async fn a_cell_becomes_none_natural_a_match_or_empty(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = cell(&site, "ink", "1");
        let to_match = Cell::DyedToMatch { part: item("part-4") };
        for (kind, expected) in [
            ("none", Some(Cell::None {})),
            ("natural", Some(Cell::Natural {})),
            ("match part-4", Some(to_match)),
            ("", None),
        ] {
            let page = iris.visits(&path).await;
            let sent = page.form(&path).set("kind", kind);
            let sent = ["name", "reference", "substrate", "screen"].iter().fold(sent, |it, name| it.set(name, ""));
            iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
            let now = section(&site).await;
            assert_eq!(now.cell(&item("colourway-ink"), &item("part-1")).cloned(), expected, "{kind}");
            let form = iris.visits(&path).await.form(&path);
            assert_eq!(form.value("kind"), kind);
        }
        // A cell in which something is written, without a choice, is a colour.
        let sent = form(&mut iris, &path).await.set("reference", "Book A 1");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(colour(&site, "ink", "1").await.reference, "Book A 1");
    }
}

on_both! {
    async fn a_photograph_as_dyed_is_kept_without_what_the_phone_tells(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = cell(&site, "ink", "1");
        let photo = inputs::phone_jpeg(&inputs::halves(600, 400), 6);
        let sent = form(&mut iris, &path).await;
        let page = iris.sends(sent.clone().attach("photo", "notes.jpg", b"no picture")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This file is not a picture.");
        iris.sends(sent.clone().attach("swatch", "IMG_20261103.jpg", &photo)).await.must_be(StatusCode::BAD_REQUEST);
        iris.sends(sent.attach("photo", "IMG_20261103.jpg", &photo)).await.must_be(StatusCode::SEE_OTHER);
        let file = colour(&site, "ink", "1").await.photo.expect("a photograph");
        assert_ne!(file, Digest::of(&photo));
        let page = iris.visits(&path).await;
        assert_eq!(page.attributes("img.large-dyed", "src"), [format!("{}/files/{file}/480", site.style)]);
        iris.visits(&format!("{}/files/{file}/480", site.style)).await.must_be(StatusCode::OK);
        let kept = iris.visits(&format!("{}/files/{file}", site.style)).await;
        kept.must_be(StatusCode::OK);
        assert_eq!(Digest::of(&kept.bytes), file);
        assert_eq!(kept.header("content-type"), "image/webp");
        assert!(!kept.header("content-disposition").contains("IMG_2026"));
        // A revision freezes it, and the factory sees it.
        site.cast.brand.publishes("With the dip").await.unwrap();
        site.cast.brand.shares_with(&site.cast.sao_mai).await.unwrap();
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/1", site.style)).await;
        assert_eq!(page.attributes("img.dyed", "src"), [format!("{}/files/{file}/480", site.style)]);
        linh.visits(&format!("{}/files/{file}/480", site.style)).await.must_be(StatusCode::OK);
        // Taken away again.
        let sent = form(&mut iris, &path).await.set("photo-remove", "on");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(colour(&site, "ink", "1").await.photo, None);
    }
}

on_both! {
    async fn neighbours_are_told_apart_in_words(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let strip = |page: &Page, at: usize| page.all(&format!("#beside .strip:nth-of-type({at}) li"));
        let page = iris.visits(&matrix(&site)).await;
        // Rib and tape match the main fabric; rust is another colour, hardly lighter or darker.
        let words = strip(&page, 1);
        assert_eq!(words.len(), 4, "{words:?}");
        assert_eq!(words[1], "P2 dyed to match P1 same colour");
        assert!(words[3].starts_with("P4 Rust ΔE00 about "), "{words:?}");
        assert!(page.all("#beside li.warned").is_empty(), "{words:?}");

        let sent = form(&mut iris, &cell(&site, "ink", "4")).await.set("screen", "#202c40");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let page = iris.visits(&matrix(&site)).await;
        assert!(page.all("#beside li.warned")[0].ends_with("hard to tell apart"));

        // Readings under unlike light: why there is no difference, and no silence.
        for (part, light) in [("1", "d65"), ("4", "a")] {
            let sent = form(&mut iris, &cell(&site, "ink", part)).await;
            let sent = with_reading(sent, ["20", "-1", "-9"], light, "10");
            iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        }
        let page = iris.visits(&cell(&site, "ink", "4")).await;
        page.must_see("P4: One was measured under D65, the other under A: such readings cannot be compared.");
        page.must_see("A reading under A does not say what the colour looks like by daylight");
        let sent = page.form(&cell(&site, "ink", "4")).set("illuminant", "d65").set("observer", "2");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        iris.visits(&matrix(&site)).await.must_see("One was measured for the 10° observer, the other for the 2° observer");
        let sent = form(&mut iris, &cell(&site, "ink", "4")).await.set("observer", "10").set("l", "26");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let words = strip(&iris.visits(&matrix(&site)).await, 1);
        assert!(words[3].starts_with("P4 Rust ΔE00 4.2"), "{words:?}");
    }
}

on_both! {
    async fn a_colourway_is_copied_and_two_cells_are_changed(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        site.cast.brand.edits(|spec| {
            spec.colourways.colourways[0].pieces = Some(1200);
            let row = spec.colourways.cells.get_mut(&item("colourway-ink")).unwrap();
            let Some(Cell::Colour(colour)) = row.get_mut(&item("part-1")) else { panic!() };
            colour.reference = "Book A 1".to_owned();
            colour.approval = Some(Approval::Approved);
        }).await;
        let sent = form(&mut iris, &matrix(&site)).await;
        // What was typed before the button was pressed goes along.
        let sent = sent.set("colourway-ink.part-4.name", "Ember").set("do", "copy colourway-ink");
        let page = iris.sends(sent).await;
        let now = section(&site).await;
        let names: Vec<&str> = now.colourways.iter().map(|it| it.name.as_str()).collect();
        assert_eq!(names, ["Ink", "Ink (copy)", "Chalk"]);
        let copy = &now.colourways[1];
        assert!(page.goes_to().ends_with(&format!("#row-{}", copy.id)), "{}", page.goes_to());
        assert_eq!((copy.code.as_str(), copy.pieces), ("", None));
        assert_eq!(now.cells[&copy.id], now.cells[&item("colourway-ink")]);
        assert_eq!(colour(&site, "ink", "4").await.name, "Ember");
        // Another reference begins without the lab dip of the first; the others keep theirs.
        let at = |field: &str| format!("{}.part-1.{field}", copy.id);
        let sent = form(&mut iris, &matrix(&site)).await;
        let sent = sent.set(&at("name"), "Moss").set(&at("reference"), "Book A 2");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        let now = section(&site).await;
        let Some(Cell::Colour(moss)) = now.cell(&copy.id, &item("part-1")) else { panic!() };
        assert_eq!((moss.name.as_str(), moss.approval), ("Moss", None));
        assert_eq!(colour(&site, "ink", "1").await.approval, Some(Approval::Approved));
    }
}

on_both! {
    async fn a_cell_that_is_only_looked_through_is_not_saved(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = cell(&site, "ink", "1");
        let sent = form(&mut iris, &path).await;
        let before = section(&site).await;
        iris.headers.insert("x-fellseam-check", "1".parse().unwrap());
        let page = iris.sends(sent.set("name", "").set("reference", "")).await;
        page.must_be(StatusCode::OK);
        page.must_see("the colour has neither name nor reference");
        assert_eq!(section(&site).await, before);
    }
}

async fn numbers_styles(site: &Site, mask: &str) {
    let mut nell = site.browser(&site.cast.brand.owner).await;
    let form = nell
        .visits("/numbers")
        .await
        .form("/numbers")
        .set("mask", mask);
    nell.sends(form).await.must_be(StatusCode::SEE_OTHER);
}

fn numbers(section: &Colourways) -> Vec<&str> {
    section
        .colourways
        .iter()
        .map(|it| it.number.as_str())
        .collect()
}

on_both! {
    async fn a_new_colourway_gets_the_next_number_of_the_scheme(db) {
        let site = Site::new(db).await;
        site.cast.brand.edits(|spec| {
            spec.header.number = "HT-204".to_owned();
            spec.colourways.colourways[0].number = "HT-204/03".to_owned();
        }).await;
        numbers_styles(&site, "HT-{seq:3}/{colourway:2}").await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&matrix(&site)).await;
        let new = page.attributes("[name=colourway]", "value").pop().expect("a column for a new one");
        let proposed = page.attributes(&format!("[name=\"{new}.number\"]"), "placeholder");
        assert_eq!(proposed, ["HT-204/04"]);
        let sent = page.form(&matrix(&site)).set(&format!("{new}.name"), "Kelp");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(numbers(&section(&site).await), ["HT-204/03", "", "HT-204/04"]);
        // A copy gets one of its own.
        let sent = form(&mut iris, &matrix(&site)).await.set("do", "copy colourway-ink");
        iris.sends(sent).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(numbers(&section(&site).await), ["HT-204/03", "HT-204/05", "", "HT-204/04"]);
    }
}

on_both! {
    async fn a_number_twice_or_of_another_style_is_refused(db) {
        let site = Site::new(db).await;
        site.cast.brand.edits(|spec| {
            spec.header.number = "HT-204".to_owned();
            spec.colourways.colourways[0].number = "old one".to_owned();
        }).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&mut iris, &matrix(&site)).await;
        let page = iris.sends(sent.clone().set("colourway-chalk.number", "OLD ONE")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Another colourway of this style has this number.");
        assert_eq!(value(&page, "colourway-chalk.number"), "OLD ONE");
        numbers_styles(&site, "HT-{seq:3}/{colourway:2}").await;
        for (typed, why) in [
            ("HT-205/01", "This number is not one of the style HT-204. Its colourways are numbered like HT-204/01."),
            ("HT-204", "A style has this number."),
            ("Chalk 1", "does not look like your style numbers"),
        ] {
            let page = iris.sends(sent.clone().set("colourway-chalk.number", typed)).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(why);
        }
        // What was there before the scheme may stay.
        iris.sends(sent.set("colourway-chalk.number", "HT-204/01")).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(numbers(&section(&site).await), ["old one", "HT-204/01"]);
    }
}

on_both! {
    async fn a_viewer_reads_a_cell_and_writes_none(db) {
        let site = Site::new(db).await;
        let path = cell(&site, "ink", "1");
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let sent = form(&mut iris, &path).await;
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits(&path).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.attributes("form#section > fieldset", "disabled").len(), 1);
        assert!(page.all("input[type=file]").is_empty());
        let token = oscar.token().await;
        oscar.sends(sent.set("token", &token).set("name", "Forged")).await.must_be(StatusCode::FORBIDDEN);
        assert_eq!(colour(&site, "ink", "1").await.name, "Ink");
    }
}
