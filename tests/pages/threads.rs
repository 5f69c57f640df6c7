//! Asking about an item, answering and moving on, each through the pages of either side.

use axum::http::StatusCode;
use fellseam::exchange::round::Outcome;
use fellseam::exchange::thread::State;
use fellseam::spec::ThreadId;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::{item, measured_round, set_base};
use crate::support::database::on_both;

// A phone's pictures, as the tests of the render child make them.
#[allow(dead_code)]
#[path = "../render/inputs.rs"]
pub mod inputs;

fn page_of(site: &Site, revision: u32, item: &str) -> String {
    format!("{}/revisions/{revision}/items/{item}", site.style)
}

fn of_thread(site: &Site, thread: &ThreadId, act: &str) -> String {
    format!("{}/threads/{thread}/{act}", site.style)
}

/// The words of the states and kinds that stand beside the headings.
fn words(page: &Page) -> Vec<String> {
    page.all(".thread-head .word")
}

/// The moves that the page offers for a thread.
fn moves(page: &Page, site: &Site, thread: &ThreadId) -> Vec<String> {
    let action = of_thread(site, thread, "move");
    page.attributes(&format!("form[action='{action}'] button"), "value")
}

/// Presses the button of a move, which must be on the item's page.
async fn presses(browser: &mut Browser, site: &Site, thread: &ThreadId, mv: &str) -> Page {
    let page = browser
        .opens(&format!("{}/threads/{thread}", site.style))
        .await;
    assert!(
        moves(&page, site, thread).contains(&mv.to_owned()),
        "no {mv}:\n{}",
        page.reads()
    );
    let form = page.form(&of_thread(site, thread, "move")).set("move", mv);
    browser.sends_and_opens(form).await
}

async fn only_thread(site: &Site) -> ThreadId {
    let threads = site.cast.brand.threads().await;
    assert_eq!(threads.len(), 1);
    threads[0].facts.id.clone()
}

on_both! {
    async fn a_question_is_asked_answered_and_closed(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = page_of(&site, 1, "point-c");

        let page = linh.visits(&path).await;
        page.must_be(StatusCode::OK);
        page.must_see("Nobody has asked about this yet.");
        let kinds = page.attributes("input[name='kind']", "value");
        assert_eq!(kinds, ["question", "suggestion", "concession"]);
        assert!(page.attributes("select[name='factory']", "name").is_empty());
        let form = page.form(&path).set("kind", "question").set("text", "Is this with the rib?");
        let page = linh.sends_and_opens(form).await;
        page.must_see("Sent.");
        page.must_see("Factory Linh, Sao Mai Garment");
        page.must_see("Is this with the rib?");
        page.must_see("Next: Brand answers.");
        assert_eq!(words(&page), ["question", "open"]);

        let thread = only_thread(&site).await;
        let needs = iris.visits("/").await;
        let page = iris.opens(&needs.link("Answer: question")).await;
        page.must_see("Asked by Linh, Sao Mai Garment");
        page.must_see("You answer next.");
        // A question is closed by its asker.
        assert_eq!(moves(&page, &site, &thread), ["agree"]);
        let form = page.form(&of_thread(&site, &thread, "messages"));
        let page = iris.sends_and_opens(form.set("text", "Without the rib.")).await;
        assert_eq!(words(&page), ["question", "answered"]);
        page.must_see("Brand Iris");

        let page = presses(&mut linh, &site, &thread, "close").await;
        page.must_see("Done.");
        assert_eq!(words(&page), ["question", "closed"]);
        // Nothing is said where nobody reads any more.
        assert!(!page.has_form(&of_thread(&site, &thread, "messages")));
        assert_eq!(moves(&page, &site, &thread), ["reopen"]);
    }
}

on_both! {
    async fn another_factory_finds_nothing(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let thread = cast.sao_mai.asks("point-c", "A secret of Sao Mai").await.unwrap();
        let photo = cast.sao_mai.photographs("the floor of Sao Mai").await;
        cast.sao_mai.sends(&thread, "with a picture", std::slice::from_ref(&photo)).await.unwrap();

        let mut rafiq = site.browser(&cast.meghna.lead).await;
        let page = rafiq.visits(&page_of(&site, 1, "point-c")).await;
        page.must_be(StatusCode::OK);
        page.must_see("Nobody has asked about this yet.");
        for hidden in ["secret", "Sao Mai", "Linh"] {
            assert!(!page.text().contains(hidden), "{hidden}");
        }
        let thread_page = format!("{}/threads/{thread}", site.style);
        rafiq.visits(&thread_page).await.must_be(StatusCode::NOT_FOUND);
        for (act, fields) in [("messages", ("text", "Hello")), ("move", ("move", "close"))] {
            let page = rafiq.posts(&of_thread(&site, &thread, act), &[fields]).await;
            page.must_be(StatusCode::NOT_FOUND);
        }
        let picture = format!("{}/files/{photo}/480", site.style);
        rafiq.visits(&picture).await.must_be(StatusCode::NOT_FOUND);
        assert_eq!(cast.sao_mai.thread(&thread).await.messages.len(), 2);
    }
}

on_both! {
    async fn a_photograph_tells_its_time_alone_and_only_the_two_sides_see_it(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let mut hoa = site.browser(&cast.sao_mai.hands).await;
        let path = page_of(&site, 1, "point-c");
        let sent = inputs::phone_jpeg(&inputs::halves(600, 400), 6);
        let form = hoa.visits(&path).await.form(&path);
        let form = form.set("kind", "question").set("text", "Like this?");
        let page = hoa.sends_and_opens(form.attach("photos", "IMG_1.jpg", &sent)).await;
        page.must_see("taken 2026-03-01 08:09:10");
        let pictures = page.attributes(".photo img", "src");
        let [picture] = pictures.as_slice() else { panic!("{pictures:?}") };

        for person in [&cast.sao_mai.hands, &cast.sao_mai.lead, &cast.brand.viewer] {
            let got = site.browser(person).await.visits(picture).await;
            got.must_be(StatusCode::OK);
            assert_eq!(got.header("content-type"), "image/webp");
            for secret in ["Pocket Camera", "Owner Name", "Owner's words!", "Exif"] {
                assert!(inputs::contains(&sent, secret), "{secret}");
                assert!(!inputs::contains(&got.bytes, secret), "{secret}");
            }
        }
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        rafiq.visits(picture).await.must_be(StatusCode::NOT_FOUND);
        // Nor is what was sent to be had: it is not kept.
        let original = picture.trim_end_matches("/480");
        hoa.visits(original).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn what_people_type_is_shown_as_text(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let evil = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>&amp;";
        cast.brand
            .edits(|spec| {
                let point = spec.points.points.iter_mut().find(|it| it.id == item("point-c"));
                let point = point.unwrap();
                point.name = evil.to_owned();
                point.how.note = evil.to_owned();
                spec.colourways.parts[0].name = evil.to_owned();
                spec.colourways.colourways[0].name = evil.to_owned();
            })
            .await;
        cast.brand.publishes("Odd names").await.unwrap();
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let path = page_of(&site, 2, "point-c");
        let form = linh.visits(&path).await.form(&path);
        let form = form.set("kind", "question").set("text", evil);
        let page = linh.sends_and_opens(form).await;
        assert_eq!(page.all(".said").last().unwrap(), evil);
        assert_eq!(page.all(".panel h1"), [evil]);
        // Sent back in its field when something is missing.
        let again = page.form(&path).set("text", evil);
        let again = linh.sends(again).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see("Choose what it is.");
        assert_eq!(again.form(&path).value("text"), evil);
        let part = linh.visits(&page_of(&site, 2, "part-1")).await;
        assert_eq!(part.all(".panel h1"), [evil]);
        for page in [page, again, part] {
            assert!(page.all("img[src='x']").is_empty());
            assert!(page.attributes("script", "src").iter().all(|src| src.starts_with("/static/")));
            assert!(page.all("script").iter().all(String::is_empty));
        }
    }
}

on_both! {
    async fn what_is_wrong_stands_beside_its_field_and_nothing_typed_is_lost(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let path = page_of(&site, 1, "point-c");
        let filled = linh.visits(&path).await.form(&path).set("kind", "question");

        let page = linh.sends(filled.clone().set("text", "  ")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("#ask-text-error"), ["Write a message."]);
        assert_eq!(page.attributes("input[name='kind'][checked]", "value"), ["question"]);

        let long = "a".repeat(4001);
        let page = linh.sends(filled.clone().set("text", &long)).await;
        page.must_see("Write at most 4000 letters.");
        assert_eq!(page.form(&path).value("text"), long);

        let filled = filled.set("text", "Look at this");
        let page = linh.sends(filled.clone().attach("photos", "notes.txt", b"no picture")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("notes.txt: This file is not a picture.");
        assert_eq!(page.form(&path).value("text"), "Look at this");

        let photo = inputs::png(&inputs::halves(8, 8));
        let five = (0..5).fold(filled, |form, n| form.attach("photos", &format!("{n}.png"), &photo));
        let page = linh.sends(five).await;
        page.must_see("Send at most 4 photographs at a time.");
        assert!(site.cast.brand.threads().await.is_empty());

        // What may not be asked is not offered, and not taken either.
        let form = linh.visits(&path).await.form(&path);
        let page = linh.sends(form.set("kind", "must_fix").set("text", "Do it")).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("Only the brand may do this.");
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        assert!(!oscar.visits(&path).await.has_form(&path));
    }
}

on_both! {
    async fn what_was_written_into_a_thread_that_closed_meanwhile_comes_back(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let thread = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = iris.opens(&format!("{}/threads/{thread}", site.style)).await;
        let answer = page.form(&of_thread(&site, &thread, "messages")).set("text", "Without it.");
        let agree = page.form(&of_thread(&site, &thread, "move")).set("move", "agree");
        cast.sao_mai.moves(&thread, fellseam::store::ThreadMove::Close).await.unwrap();

        let page = iris.sends(answer).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("This thread is closed. Open it again, or ask a new question.");
        page.must_see("Without it.");
        assert_eq!(moves(&page, &site, &thread), ["reopen"]);
        let page = iris.sends(agree).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("This cannot be done now. The thread is: closed.");
        page.link("Back to the style");
        assert_eq!(cast.brand.thread(&thread).await.messages.len(), 1);
    }
}

on_both! {
    async fn a_must_fix_is_changed_in_a_revision_and_seen_on_a_sample(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let mut iris = site.browser(&cast.brand.lead).await;
        let path = page_of(&site, 1, "point-c");
        let page = iris.visits(&path).await;
        let kinds = page.attributes("input[name='kind']", "value");
        assert_eq!(kinds, ["question", "must_fix", "suggestion"]);
        let form = page.form(&path).set("kind", "must_fix").set("text", "Too short");
        let again = iris.sends(form.clone()).await;
        assert_eq!(again.all("#ask-factory-error"), ["Choose a factory."]);
        let form = form.set("factory", cast.sao_mai.org.as_str());
        let page = iris.sends_and_opens(form).await;
        page.must_see("Asked by Iris, with Sao Mai Garment");
        page.must_see("Next: Sao Mai Garment answers.");
        let thread = only_thread(&site).await;
        // Not changed in any revision yet, so it cannot be said to be.
        assert_eq!(moves(&page, &site, &thread), ["close", "grant"]);
        page.must_see("it cannot be taken back");

        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let page = presses(&mut linh, &site, &thread, "agree").await;
        assert!(moves(&page, &site, &thread).is_empty());
        page.must_see("Next: Brand changes it and publishes a revision.");
        cast.brand.edits(|spec| set_base(spec, "point-c", "30")).await;
        cast.brand.publishes("Longer").await.unwrap();
        // It was agreed, so the revision carried it by itself.
        let page = iris.opens(&format!("{}/threads/{thread}", site.style)).await;
        page.must_see("You look at it on a sample next.");
        assert_eq!(words(&page), ["must-fix", "changed in revision 2"]);
        assert_eq!(moves(&page, &site, &thread), ["close", "grant"]);

        let typed = [(1, "point-a", "1"), (1, "point-c", "30")];
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &typed).await;
        let page = presses(&mut iris, &site, &thread, "verify").await;
        assert_eq!(words(&page), ["must-fix", "verified on a sample of revision 2"]);
        let state = cast.brand.state_of(&thread).await;
        assert_eq!(state, State::Verified { revision: 2 });
        cast.brand.decides(&round, Outcome::Remake, "The rest is off", &[]).await.unwrap();
    }
}

on_both! {
    async fn a_change_that_was_not_agreed_before_is_marked_by_hand(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let thread = cast.brand.insists(&cast.sao_mai, "point-c", "Too short").await.unwrap();
        cast.brand.edits(|spec| set_base(spec, "point-c", "30")).await;
        cast.brand.publishes("Longer").await.unwrap();
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = presses(&mut iris, &site, &thread, "mark_changed").await;
        assert_eq!(words(&page), ["must-fix", "changed in revision 2"]);
    }
}

on_both! {
    async fn the_brand_lets_pass_what_a_factory_asks_to_let_pass(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let thread = cast.sao_mai.asks_concession("point-c", "Half an inch over").await.unwrap();
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let page = linh.opens(&format!("{}/threads/{thread}", site.style)).await;
        page.must_see("Take the request back");
        assert_eq!(moves(&page, &site, &thread), ["close"]);
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = iris.opens(&format!("{}/threads/{thread}", site.style)).await;
        page.must_see("Decline the request");
        assert_eq!(moves(&page, &site, &thread), ["close", "grant"]);
        let page = presses(&mut iris, &site, &thread, "grant").await;
        assert_eq!(words(&page), ["concession request", "let pass"]);
        assert!(moves(&page, &site, &thread).is_empty());
        let mut oscar = site.browser(&cast.brand.viewer).await;
        let page = oscar.opens(&format!("{}/threads/{thread}", site.style)).await;
        assert!(page.forms().iter().all(|form| form.action == "/sign-out"));
    }
}

on_both! {
    async fn a_thread_on_an_item_that_was_removed_stays_and_says_so(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let thread = cast.sao_mai.asks("part-1", "Which mill?").await.unwrap();
        let other = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        cast.brand
            .edits(|spec| {
                let gone = item("part-1");
                for cells in spec.colourways.cells.values_mut() {
                    cells.remove(&gone);
                    cells.retain(|_, cell| {
                        let json = serde_json::to_string(cell).unwrap();
                        !json.contains("part-1")
                    });
                }
                spec.colourways.parts.retain(|part| part.id != gone);
                for material in &mut spec.materials.materials {
                    material.parts.retain(|part| *part != gone);
                    if material.parts.is_empty() {
                        material.parts.push(item("part-2"));
                    }
                }
                spec.colourways.cells.retain(|_, cells| !cells.is_empty());
                let left: Vec<_> = spec.colourways.parts.iter().map(|it| it.id.clone()).collect();
                for colourway in &spec.colourways.colourways {
                    let cells = spec.colourways.cells.entry(colourway.id.clone()).or_default();
                    for part in &left {
                        cells.entry(part.clone())
                            .or_insert(fellseam::spec::document::Cell::Natural {});
                    }
                }
                for drawing in &mut spec.drawings.drawings {
                    drawing.markers.retain(|marker| marker.item != gone);
                }
            })
            .await;
        cast.brand.publishes("Without that part").await.unwrap();
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let to = linh.visits(&format!("{}/threads/{thread}", site.style)).await.goes_to();
        assert_eq!(to, format!("{}#thread-{thread}", page_of(&site, 1, "part-1")));
        let page = linh.visits(&page_of(&site, 1, "part-1")).await;
        page.must_see("Superseded Do not sew from revision 1.");
        page.must_see("Revision 2 has this no more.");
        page.must_see("Which mill?");
        linh.visits(&page_of(&site, 2, "part-1")).await.must_be(StatusCode::NOT_FOUND);
        // What is still there is shown in the newest revision, with the thread from before.
        let to = linh.visits(&format!("{}/threads/{other}", site.style)).await.goes_to();
        assert_eq!(to, format!("{}#thread-{other}", page_of(&site, 2, "point-c")));
        let page = linh.visits(&page_of(&site, 2, "point-c")).await;
        page.must_see("raised on revision 1");
        let old = linh.visits(&page_of(&site, 1, "point-c")).await;
        let newer = old.link("Read this in revision 2");
        assert_eq!(newer, page_of(&site, 2, "point-c"));
    }
}

on_both! {
    async fn an_item_shows_what_the_revision_says_of_it(db) {
        let site = Site::with_revision(db).await;
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let revision = site.cast.brand.revision(1).await;
        let row = revision.frozen.chart.row(&item("point-c")).unwrap().clone();
        let page = hoa.visits(&page_of(&site, 1, "point-c")).await;
        let sizes = page.all(".by-size li");
        let codes: Vec<&str> = sizes.iter().filter_map(|it| it.split(' ').next()).collect();
        assert_eq!(codes, ["XS", "S", "M", "L", "XL"]);
        for (shown, value) in sizes.iter().zip(&row.values) {
            let sign = revision.frozen.decimal;
            let inches = value.show(fellseam::spec::Unit::Inch, row.step, sign);
            // Worked out here without the program: 0.1 cm, half away from zero.
            let tenths = (value.as_nm() + 500_000) / 1_000_000;
            let cm = format!("{}.{}", tenths / 10, tenths % 10);
            assert!(shown.contains(&inches), "{shown}: {inches}");
            assert!(shown.ends_with(&cm) || shown.ends_with(cm.trim_end_matches(".0")), "{shown}: {cm}");
        }
        assert_eq!(page.all(".marks .mark text"), ["C"]);
        let part = hoa.visits(&page_of(&site, 1, "part-1")).await;
        part.must_see("The colour in every colourway");
        assert_eq!(part.all("table.matrix tbody tr").len(), 2);
        for other in ["size-m", "colourway-ink", "drawing-front"] {
            hoa.visits(&page_of(&site, 1, other)).await.must_be(StatusCode::OK);
        }
        for gone in ["marker-c", "no-such-item"] {
            hoa.visits(&page_of(&site, 1, gone)).await.must_be(StatusCode::NOT_FOUND);
        }
        hoa.visits(&page_of(&site, 9, "point-c")).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn a_brand_without_a_factory_has_nobody_to_ask(db) {
        let site = Site::new(db).await;
        site.cast.brand.publishes("First issue").await.unwrap();
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = page_of(&site, 1, "point-c");
        let page = iris.visits(&path).await;
        page.must_see("This style is shared with no factory yet");
        assert!(!page.has_form(&path));
        page.link("Share the style");
    }
}

on_both! {
    async fn a_translation_is_put_beside_a_message_by_whoever_can_read_it(db) {
        let site = Site::with_revision(db).await;
        let thread = site.cast.sao_mai.asks("point-c", "Với bo gân?").await.unwrap();
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.opens(&format!("{}/threads/{thread}", site.style)).await;
        let message = site.cast.brand.thread(&thread).await.messages[0].id.clone();
        let to = of_thread(&site, &thread, &format!("messages/{message}/translation"));
        let form = page.form(&to);
        let languages = page.attributes(&format!("form[action='{to}'] option"), "value");
        assert!(!languages.contains(&"en".to_owned()), "it is typed in that one");
        let again = iris.sends(form.clone().set("text", " ")).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(again.all(&format!("form[action='{to}'] .error")).len(), 1);
        let form = form.set("language", "zh-Hans").set("text", "含罗纹吗？");
        let page = iris.sends_and_opens(form).await;
        page.must_see("The translation stands beside the message.");
        page.must_see("Với bo gân?");
        page.must_see("简体中文, translated by Iris");
        page.must_see("含罗纹吗？");
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.opens(&format!("{}/threads/{thread}", site.style)).await;
        page.must_see("含罗纹吗？");
        iris.opens(&format!("{}/ledger", site.style)).await.must_see(
            "Iris put a translation into 简体中文 beside a message in the question on C Body length.",
        );
        let mut nell = site.browser(&site.cast.brand.viewer).await;
        assert!(!nell.opens(&format!("{}/threads/{thread}", site.style)).await.has_form(&to));
    }
}
