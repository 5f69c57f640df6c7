//! Dimension lines and blow-ups of a draft's drawings, typed into the form.

use axum::http::StatusCode;
use fellseam::spec::document::{BlowUp, DimensionLine, Drawing, Spot};
use fellseam::spec::{Digest, Section};

use crate::pages::{FormOf, Page, Site};
use crate::support::cast::item;
use crate::support::database::on_both;

const DETAIL: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 500 500"><circle cx="250" cy="250" r="200" fill="none" stroke="#000"/></svg>"##;
const TALL: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 500 1000"><path d="M50 50h400v900h-400z" fill="none" stroke="#000"/></svg>"##;

async fn drawings(site: &Site) -> Vec<Drawing> {
    site.cast.brand.draft().await.0.drawings.drawings
}

fn spot(x: u16, y: u16) -> Spot {
    Spot { x, y }
}

/// The key of the last row of a drawing's list, which is the spare one.
fn spare(form: &FormOf, list: &str) -> String {
    let mut rows = form.fields.iter().filter(|(name, _)| name == list);
    let key = rows.next_back().expect("a spare row").1.clone();
    assert!(key.starts_with("new-"), "{key}");
    key
}

/// Fills the fields of a row.
fn typed(form: FormOf, key: &str, fields: &[(&str, &str)]) -> FormOf {
    let fields = fields.iter();
    fields.fold(form, |form, (field, text)| {
        form.set(&format!("{key}.{field}"), text)
    })
}

/// The half-zip with a second drawing, a straight line, a curved one, and a circle that leads to
/// the second drawing. Returns the page of its drawings.
async fn drawn(site: &Site) -> (crate::pages::Browser, String, Page) {
    let path = format!("{}/draft/drawings", site.style);
    let mut iris = site.browser(&site.cast.brand.lead).await;
    let form = iris.visits(&path).await.form(&path);
    let form = form.attach("new", "detail of the collar.svg", DETAIL.as_bytes());
    iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
    let detail = drawings(site).await[1].id.clone();
    let form = iris.visits(&path).await.form(&path);
    let line = spare(&form, "drawing-front.line");
    let circle = spare(&form, "drawing-front.circle");
    let form = typed(
        form,
        &line,
        &[
            ("item", "point-a"),
            ("from", "20 47,5"),
            ("to", "80.25, 47.5"),
        ],
    );
    let form = typed(
        form,
        &circle,
        &[
            ("drawing", detail.as_str()),
            ("at", "50 8"),
            ("radius", "12.5"),
        ],
    );
    iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
    let form = iris.visits(&path).await.form(&path);
    let line = spare(&form, "drawing-front.line");
    let form = typed(
        form,
        &line,
        &[
            ("item", "point-b"),
            ("from", "20 90"),
            ("to", "80 90"),
            ("via", "50 99"),
        ],
    );
    iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
    let page = iris.visits(&path).await;
    (iris, path, page)
}

on_both! {
    async fn lines_and_blow_ups_are_typed_changed_and_taken_off(db) {
        let site = Site::new(db).await;
        let (mut iris, path, page) = drawn(&site).await;
        let [front, detail] = <[_; 2]>::try_from(drawings(&site).await).unwrap();
        let [straight, curved] = <[_; 2]>::try_from(front.lines).unwrap();
        let expected = DimensionLine {
            id: straight.id.clone(),
            item: item("point-a"),
            from: spot(2_000, 4_750),
            to: spot(8_025, 4_750),
            via: None,
        };
        assert_eq!(straight, expected);
        assert_eq!((curved.item.as_str(), curved.via), ("point-b", Some(spot(5_000, 9_900))));
        let [circle] = <[_; 1]>::try_from(front.blow_ups).unwrap();
        let expected = BlowUp {
            id: circle.id.clone(),
            drawing: detail.id.clone(),
            at: spot(5_000, 800),
            radius: 1_250,
        };
        assert_eq!(circle, expected);

        // As it stands on the page it says the same.
        let form = page.form(&path);
        assert_eq!(form.value(&format!("{}.to", straight.id)), "80.25 47.5");
        assert_eq!(form.value(&format!("{}.via", straight.id)), "");
        assert_eq!(form.value(&format!("{}.drawing", circle.id)), detail.id.as_str());
        assert_eq!(form.value(&format!("{}.radius", circle.id)), "12.5");
        let version = site.cast.brand.draft().await.1[&Section::Drawings];
        iris.sends(form.clone()).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(site.cast.brand.draft().await.1[&Section::Drawings], version);

        let form = typed(form, curved.id.as_str(), &[("via", "")]);
        let form = typed(form, straight.id.as_str(), &[("from", ""), ("to", "")]);
        let form = typed(form, circle.id.as_str(), &[("at", "50 9"), ("radius", "20 %")]);
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let now = &drawings(&site).await[0];
        assert_eq!(now.lines, [DimensionLine { via: None, ..curved }]);
        assert_eq!(now.blow_ups, [BlowUp { at: spot(5_000, 900), radius: 2_000, ..circle }]);
    }
}

on_both! {
    async fn what_is_drawn_is_published_and_shown(db) {
        let site = Site::new(db).await;
        let (mut iris, _, page) = drawn(&site).await;
        // Without script the draft shows the lines and the circle as well.
        assert_eq!(page.all("svg.marks .dimension").len(), 2);
        assert_eq!(page.all("svg.marks .blow-up-ring").len(), 1);
        site.cast.brand.publishes("First issue").await.unwrap();
        let revision = format!("{}/revisions/1", site.style);
        let page = iris.visits(&revision).await;
        assert_eq!(page.all(".dimension[data-item='point-b'] .dimension-head").len(), 2);
        let detail = drawings(&site).await[1].id.clone();
        assert_eq!(page.all(&format!("a.blow-up[href='#row-{detail}']")).len(), 1);
        // A stands on its line; B's letter stands off, and is led to it.
        assert_eq!(page.all("svg.marks path.leader").len(), 1);
        let document = iris.visits(&format!("{revision}/document")).await;
        let document = document.text();
        assert!(document.contains(r#""via":{"x":5000,"y":9900}"#), "{document}");
        assert!(document.contains(r#""radius":1250"#), "{document}");
    }
}

on_both! {
    async fn what_cannot_be_drawn_is_said_beside_its_field(db) {
        let site = Site::new(db).await;
        let (mut iris, path, page) = drawn(&site).await;
        let before = drawings(&site).await;
        let line = before[0].lines[0].id.as_str();
        let circle = before[0].blow_ups[0].id.as_str();
        let spot = "Write two numbers from 0 to 100, as in 42.5 30.";
        let point = "Choose the point that this line measures.";
        let other = "Choose the drawing that shows it larger.";
        let radius = "Write a number above 0, at most 100.";
        for (key, field, text, sentence) in [
            (line, "from", "42.5", spot),
            (line, "to", "", spot),
            (line, "via", "50 101", spot),
            (line, "to", "20 47.5", "The line ends where it starts."),
            (line, "item", "", point),
            (line, "item", "part-1", point),
            (circle, "at", "middle", spot),
            (circle, "radius", "0", radius),
            (circle, "radius", "", radius),
            (circle, "drawing", "", other),
            (circle, "drawing", "drawing-front", other),
            (circle, "drawing", "drawing-of-another-style", other),
        ] {
            let name = format!("{key}.{field}");
            let form = page.form(&path).set(&name, text);
            let again = iris.sends(form).await;
            again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            again.must_see(sentence);
            let described = format!("[name=\"{name}\"][aria-describedby=\"{name}.error\"]");
            assert_eq!(again.all(&described).len(), 1, "{name}={text}");
        }
        // A point without places is a row that is not filled yet; places without a point are not.
        let empty = spare(&page.form(&path), "drawing-front.line");
        let form = page.form(&path).set(&format!("{empty}.item"), "point-c");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let form = iris.visits(&path).await.form(&path);
        let empty = spare(&form, "drawing-front.line");
        let again = iris.sends(form.set(&format!("{empty}.from"), "1 1")).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see(point);
        assert_eq!(again.form(&path).value(&format!("{empty}.from")), "1 1");
        assert_eq!(drawings(&site).await, before);
    }
}

on_both! {
    async fn another_picture_keeps_everything_that_is_marked(db) {
        let site = Site::new(db).await;
        let (mut iris, path, page) = drawn(&site).await;
        let before = drawings(&site).await;
        let form = page.form(&path).attach("drawing-front.picture", "new front.svg", TALL.as_bytes());
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        assert_eq!(now[0].file, Digest::of(TALL.as_bytes()));
        assert_eq!((now[0].width, now[0].height), (500, 1_000));
        assert_eq!(now[0].markers, before[0].markers);
        assert_eq!((&now[0].lines, &now[0].blow_ups), (&before[0].lines, &before[0].blow_ups));
    }
}

on_both! {
    async fn with_a_drawing_go_the_circles_that_led_to_it(db) {
        let site = Site::new(db).await;
        let (mut iris, path, page) = drawn(&site).await;
        let before = drawings(&site).await;
        let form = page.form(&path).tick(&format!("{}.remove", before[1].id), "on");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let now = drawings(&site).await;
        assert_eq!(now.len(), 1);
        assert!(now[0].blow_ups.is_empty());
        assert_eq!(now[0].lines, before[0].lines);
    }
}

on_both! {
    async fn a_line_of_a_point_that_is_gone_stays_until_it_is_taken_off(db) {
        let site = Site::new(db).await;
        let (mut iris, path, _) = drawn(&site).await;
        site.cast.brand.edits(|spec| spec.points.points.retain(|it| it.id.as_str() != "point-b")).await;
        let before = drawings(&site).await;
        let form = iris.visits(&path).await.form(&path);
        let line = before[0].lines[1].id.clone();
        assert_eq!(form.value(&format!("{line}.item")), "point-b");
        let moved = form.clone().set(&format!("{line}.via"), "50 98");
        iris.sends(moved).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(drawings(&site).await[0].lines[1].via, Some(spot(5_000, 9_800)));
        // No other line may be given to it.
        let form = iris.visits(&path).await.form(&path);
        let other = before[0].lines[0].id.clone();
        let wrong = form.clone().set(&format!("{other}.item"), "point-b");
        iris.sends(wrong).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let form = typed(form, line.as_str(), &[("from", ""), ("to", ""), ("via", "")]);
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(drawings(&site).await[0].lines.len(), 1);
    }
}
