//! Several people at one draft: who is here, whose save came in between, what is checked while it is
//! typed, and the way back from a save.

use axum::http::{HeaderValue, StatusCode};
use fellseam::spec::Section;
use fellseam::store::{Db, Store};

use crate::pages::{Browser, Page, Site};
use crate::support::cast::{inches, item, set_base};
use crate::support::database::{on_both, on_postgres};
use crate::support::world::world;

/// The page of this name says that it has a section open.
async fn opens(browser: &mut Browser, site: &Site, section: &str, seat: &str) -> Page {
    let path = format!("{}/draft/{section}/here", site.style);
    browser.posts(&path, &[("seat", seat)]).await
}

async fn closes(browser: &mut Browser, site: &Site, section: &str, seat: &str) {
    let path = format!("{}/draft/{section}/here", site.style);
    let answer = browser.posts(&path, &[("seat", seat), ("gone", "1")]).await;
    answer.must_be(StatusCode::NO_CONTENT);
}

/// Whom a reader is told of in this section.
async fn here(browser: &mut Browser, site: &Site, section: &str) -> Vec<String> {
    let path = format!("{}/draft/{section}", site.style);
    browser.visits(&path).await.all(".here p")
}

on_both! {
    async fn whoever_has_a_section_open_is_shown_to_the_others_until_they_leave(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        opens(&mut nell, &site, "points", "window-of-nell").await;
        let told = opens(&mut iris, &site, "points", "window-1").await;
        assert_eq!(told.all(".here p"), ["Nell has this section open, since 2026-03-02 08:00 UTC"]);
        let points = here(&mut nell, &site, "points").await;
        assert_eq!(points, ["Iris has this section open, since 2026-03-02 08:00 UTC"]);
        assert!(here(&mut nell, &site, "sizes").await.is_empty());
        // The line of progress says where, on every page of the draft.
        let page = nell.visits(&format!("{}/draft/sizes", site.style)).await;
        let steps = page.all(".progress li");
        let with_iris: Vec<&String> = steps.iter().filter(|step| step.contains("Iris")).collect();
        assert!(with_iris.len() == 1 && with_iris[0].starts_with("Points of measure"), "{steps:?}");

        // Two windows of one person are one person, and one of them closed leaves the other.
        site.cast.clock.forward(60);
        opens(&mut iris, &site, "points", "window-2").await;
        closes(&mut iris, &site, "points", "window-1").await;
        let points = here(&mut nell, &site, "points").await;
        assert_eq!(points, ["Iris has this section open, since 2026-03-02 08:01 UTC"]);
        closes(&mut iris, &site, "points", "window-2").await;
        assert!(here(&mut nell, &site, "points").await.is_empty());
        // A page that went on to another section is in that one.
        opens(&mut iris, &site, "points", "window-3").await;
        opens(&mut iris, &site, "labels", "window-3").await;
        assert!(here(&mut nell, &site, "points").await.is_empty());
        assert_eq!(here(&mut nell, &site, "labels").await.len(), 1);
    }
}

on_both! {
    async fn a_page_that_fell_silent_is_closed_and_one_that_speaks_is_open(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        opens(&mut iris, &site, "points", "window-1").await;
        for _ in 0..3 {
            site.cast.clock.forward(60);
            opens(&mut iris, &site, "points", "window-1").await;
            let points = here(&mut nell, &site, "points").await;
            assert_eq!(points, ["Iris has this section open, since 2026-03-02 08:00 UTC"]);
        }
        site.cast.clock.forward(71);
        assert!(here(&mut nell, &site, "points").await.is_empty());
        // Its next sign is a new beginning.
        opens(&mut iris, &site, "points", "window-1").await;
        let points = here(&mut nell, &site, "points").await;
        assert!(points[0].ends_with("since 2026-03-02 08:04 UTC"), "{points:?}");
    }
}

on_both! {
    async fn a_factory_never_learns_who_is_at_a_draft(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        opens(&mut iris, &site, "points", "window-1").await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        opens(&mut linh, &site, "points", "window-1").await.must_be(StatusCode::NOT_FOUND);
        for path in ["", "/revisions/1", "/ledger"] {
            let page = linh.visits(&format!("{}{path}", site.style)).await;
            page.must_be(StatusCode::OK);
            assert!(!page.sees("open, since"), "{path}");
            assert!(page.all(".here").is_empty(), "{path}");
        }
        // A viewer of the brand is seen and sees.
        let mut vera = site.browser(&site.cast.brand.viewer).await;
        let told = opens(&mut vera, &site, "points", "window-1").await;
        assert_eq!(told.all(".here p").len(), 1);
        assert_eq!(here(&mut iris, &site, "points").await.len(), 1);
        let unnamed = opens(&mut iris, &site, "points", "no such; name").await;
        unnamed.must_be(StatusCode::BAD_REQUEST);
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn who_is_here_is_seen_from_another_instance() {
    on_postgres(async |db, address| {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        opens(&mut iris, &site, "points", "window-1").await;
        let other = Store::new(Db::open(&address).await.unwrap(), world().0);
        let nell = &site.cast.brand.owner;
        let permit = nell.on(&site.cast.brand.style).await;
        let present = other.others_here(&permit).await.unwrap();
        assert_eq!(present.len(), 1);
        assert_eq!(present[0].name.as_deref(), Some("Iris"));
        assert_eq!(present[0].section, Section::Points);
        other.close().await;
    })
    .await;
}

on_both! {
    async fn a_save_that_came_in_between_is_told_of_and_takes_nothing_away(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/points", site.style);
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let page = nell.visits(&path).await;
        assert_eq!(page.attributes("[data-live=draft-saved]", "data-version"), ["1"]);
        assert_eq!(page.attributes("[data-newer]", "hidden"), [""]);
        let form = page.form(&path);
        site.cast.brand.edits(|spec| set_base(spec, "point-c", "29")).await;
        // What an open page looks at again says by whom, to be shown by its script.
        let fresh = nell.visits(&path).await;
        assert_eq!(fresh.attributes("[data-live=draft-saved]", "data-version"), ["2"]);
        fresh.must_see("Iris saved this section at 2026-03-02 08:00 UTC, after you opened it.");
        // Without script it is told when the form comes back.
        let form = form.set("point-a.base", "21 x").set("point-a.note", "Over the rib");
        let page = nell.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.attributes("[data-newer]", "hidden").is_empty());
        let form = page.form(&path);
        assert_eq!(form.value("version"), "1");
        assert_eq!(form.value("point-a.note"), "Over the rib");
    }
}

on_both! {
    async fn a_form_is_checked_as_it_stands_and_nothing_is_saved(db) {
        let site = Site::with_revision(db).await;
        let path = format!("{}/draft/points", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        let form = iris.visits(&path).await.form(&path);
        let mut typing = iris.clone();
        typing.headers.insert("x-fellseam-check", HeaderValue::from_static("1"));
        let answer = typing.sends(form.clone().set("point-c.base", "").set("point-a.name", "Bust")).await;
        answer.must_be(StatusCode::OK);
        let findings = answer.attributes("#findings a", "href");
        assert!(findings.contains(&format!("{path}#point-c.base")), "{findings:?}");
        answer.must_see("As it is typed now. It is not saved yet.");
        let points = &answer.all(".progress li")[3];
        assert!(points.contains("1 error") && points.contains("2 changes"), "{points}");
        // What cannot be read is no news before it is.
        let answer = typing.sends(form.set("point-c.base", "28 1/x")).await;
        answer.must_be(StatusCode::NO_CONTENT);
        // An item's own page, too.
        let own = format!("{}/draft/points/point-c", site.style);
        let form = iris.visits(&own).await.form(&own);
        typing.sends(form).await.must_be(StatusCode::OK);
        assert_eq!(site.cast.brand.draft().await, before);
    }
}

on_both! {
    async fn a_save_is_taken_back_by_one_press_and_so_is_that(db) {
        let site = Site::new(db).await;
        let path = format!("{}/draft/points", site.style);
        let history = format!("{}/history/points", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await.0;
        let page = iris.visits(&path).await;
        assert!(!page.has_form(&history), "nothing was saved yet");
        let form = page.form(&path).tick("point-e.remove", "on");
        let page = iris.sends_and_opens(form).await;
        assert!(site.cast.brand.draft().await.0.point(&item("point-e")).is_none());
        page.must_see("Take this save back");
        let page = iris.sends_and_opens(page.form(&history)).await;
        assert_eq!(site.cast.brand.draft().await.0, before);
        iris.sends_and_opens(page.form(&history)).await;
        assert!(site.cast.brand.draft().await.0.point(&item("point-e")).is_none());
        // Somebody else's save is not taken back in passing.
        site.cast.brand.edits(|spec| spec.points.points[0].base = Some(inches("23"))).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let page = nell.visits(&format!("{path}?said=saved")).await;
        assert!(!page.has_form(&history));
        assert!(page.has_form(&path));
    }
}

on_both! {
    async fn a_draft_shows_what_it_changes_from_every_section(db) {
        let site = Site::with_revision(db).await;
        let mut vera = site.browser(&site.cast.brand.viewer).await;
        let changes = format!("{}/draft/changes", site.style);
        vera.visits(&changes).await.must_see("No change since revision 1");
        site.cast.brand.edits(|spec| {
            set_base(spec, "point-c", "29");
            spec.header.season = "Spring 2027".to_owned();
            spec.points.points[4].name = "Sleeve".to_owned();
        }).await;
        for section in ["header", "points", "packing"] {
            let page = vera.visits(&format!("{}/draft/{section}", site.style)).await;
            let link = page.link("4 changes since revision 1");
            assert_eq!(link, format!("{changes}#changes-{section}"));
        }
        let page = vera.visits(&changes).await;
        let steps = page.all(".progress li");
        assert!(steps[0].ends_with("1 change") && steps[3].ends_with("3 changes"), "{steps:?}");
        assert!(!steps[1].contains("change"));
        page.must_see("28 1/2 in (72.4 cm)");
        page.must_see("29 in (73.7 cm)");
        page.must_see("Spring 2027");
        assert_eq!(page.attributes("section[id^=changes-]", "id"), ["changes-header", "changes-points"]);
        let links = page.attributes("#changes-points .change-head a", "href");
        // The zip follows the length.
        let row = |point: &str| format!("{}/draft/points#row-{point}", site.style);
        assert_eq!(links, [row("point-c"), row("point-e"), row("point-j")]);
        // Published, it is compared with what was published, and with what was before on demand.
        site.cast.brand.publishes("Longer").await.unwrap();
        vera.visits(&changes).await.must_see("No change since revision 2");
        let page = vera.visits(&format!("{changes}?since=1")).await;
        page.must_see("Against revision 1");
        page.must_see("29 in (73.7 cm)");
        vera.visits(&format!("{changes}?since=9")).await.must_be(StatusCode::NOT_FOUND);
    }
}
