//! The revision page: what a factory makes a style from, acknowledges and signs.

use std::collections::BTreeMap;

use axum::http::StatusCode;
use fellseam::exchange::refused::FindingKey;
use fellseam::spec::check::check;
use fellseam::spec::document::{Cell, Grade};
use fellseam::spec::{Digest, grade};
use fellseam::store::ThreadMove;

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::{Cast, Person, inches, item, set_base};
use crate::support::database::on_both;
use crate::support::large::{POINTS, SIZES, large};
use crate::support::past::Past;

fn address(site: &Site, revision: u32) -> String {
    format!("{}/revisions/{revision}", site.style)
}

async fn opens(site: &Site, person: &Person, revision: u32) -> (Browser, Page) {
    let mut browser = site.browser(person).await;
    let page = browser.opens(&address(site, revision)).await;
    page.must_be(StatusCode::OK);
    (browser, page)
}

/// The signing form, ticked.
fn signing(site: &Site, page: &Page, revision: u32) -> FormOf {
    let form = page.form(&format!("{}/sign", address(site, revision)));
    form.set("agree", "yes")
}

on_both! {
    async fn a_factory_reads_every_figure_in_both_units(db) {
        let site = Site::with_revision(db).await;
        let (mut linh, page) = opens(&site, &site.cast.sao_mai.lead, 1).await;
        page.must_see("Revision 1 is current");
        page.must_see("First issue");
        // Letters on the drawing and in the chart, tied by the item, each a link to it.
        assert_eq!(page.all(".marks .mark").len(), 18);
        // Points in circles, parts in squares.
        assert_eq!(page.all(".marks circle.mark-face").len(), 10);
        assert_eq!(page.all(".marks rect").len(), 2);
        let items = page.attributes(".mark[data-item=point-a]", "href");
        assert_eq!(items, [format!("{}/items/point-a", address(&site, 1))]);
        // 38 % of a height of 900 where the width of 800 is 10 000.
        let places = page.attributes("#mark-point-a", "transform");
        assert_eq!(places, ["translate(5000 4275)"]);
        // One line of the chart: letter, name and basis, every size in inches with centimetres.
        let row = page.all("#row-point-a > *");
        assert_eq!(
            row,
            [
                "A",
                "Chest width Half (laid flat) · Key point Critical",
                "19 1/2 49.5",
                "20 1/2 52.1",
                "21 1/2 54.6",
                "22 1/2 57.2",
                "23 3/4 60.3",
                "−3/8 (−0.9) +3/8 (+0.9)",
            ]
        );
        assert_eq!(page.all(".chart tbody tr").len(), 10);
        // The base size is the one that a phone shows first.
        assert_eq!(page.attributes("input[name=chart-size][checked]", "id"), ["chart-size-3"]);
        page.must_see("armhole seam, 1 in down");
        page.must_see("After garment finish");
        // Colours in words; a screen value only as a square.
        page.must_see("Ink H&T Ink");
        page.must_see("dyed to match P1");
        page.must_see("natural");
        page.must_see("none");
        assert!(!page.text().contains("style=\""));

        // The bytes that were hashed, to keep.
        let document = linh.visits(&page.link("Download the document")).await;
        assert_eq!(document.header("content-type"), "application/json");
        let name = document.header("content-disposition");
        assert_eq!(name, "attachment; filename=\"HT-204-revision-1.json\"");
        let digest = Digest::of(&document.bytes);
        assert_eq!(digest, site.cast.sao_mai.revision(1).await.digest);
        page.must_see(&digest.fingerprint());
        // The drawing's original.
        let original = linh.visits(&page.link("Original file")).await;
        original.must_be(StatusCode::OK);
        for nowhere in [address(&site, 2), address(&site, 0), format!("{}/revisions/x", site.style)] {
            linh.visits(&nowhere).await.must_be(StatusCode::NOT_FOUND);
        }
    }
}

on_both! {
    async fn both_sides_sign_what_they_read(db) {
        let site = Site::with_revision(db).await;
        let linh = &site.cast.sao_mai.lead;
        // The sample room reads the same page, and has nothing to send on it.
        let (_, hoas) = opens(&site, &site.cast.sao_mai.hands, 1).await;
        hoas.must_see("Ask your merchandiser to acknowledge it.");
        let forms: Vec<String> = hoas.forms().into_iter().map(|form| form.action).collect();
        assert_eq!(forms, ["/sign-out"]);

        let (mut phone, page) = opens(&site, linh, 1).await;
        page.must_see("You cannot sign yet");
        assert_eq!(page.link("Acknowledge it"), "#acknowledge");
        let form = page.form(&format!("{}/acknowledge", address(&site, 1)));
        let page = phone.sends_and_opens(form.clone()).await;
        page.must_see("Acknowledged.");
        assert!(!page.has_form(&form.action));
        let again = phone.sends(form).await;
        again.must_be(StatusCode::CONFLICT);
        again.must_see("Your factory has acknowledged this revision already.");

        page.must_see("My factory will make the style to it.");
        page.must_see("I sign as Linh, Merchandiser");
        let form = signing(&site, &page, 1);
        assert_eq!(form.value("digest").len(), 64);
        let unticked = form.clone().untick("agree");
        phone.sends(unticked).await.must_be(StatusCode::BAD_REQUEST);
        let form = form.set("local_time", "2026-03-02T15:00:00+07:00");
        let page = phone.sends_and_opens(form.clone()).await;
        page.must_see("Signed.");
        page.must_see("Linh");
        page.must_see("2026-03-02 15:00 UTC+07:00");
        page.must_see("Signed by the factory");
        let again = phone.sends(form.clone()).await;
        again.must_be(StatusCode::CONFLICT);

        // What is kept is the digest of the screen that the form came from.
        let reads = site.cast.sao_mai.reads().await;
        let kept = site.cast.store.signatures(&reads).await.unwrap();
        assert_eq!(kept.len(), 1);
        assert_eq!(kept[0].screen.as_str(), form.value("screen"));
        assert_eq!(kept[0].digest.as_str(), form.value("digest"));

        let (mut desk, page) = opens(&site, &site.cast.brand.lead, 1).await;
        page.must_see("Sao Mai Garment Signed by the factory");
        page.must_see("We will judge what arrives by it.");
        // Without script there is no local time: UTC stands for it.
        let page = desk.sends_and_opens(signing(&site, &page, 1)).await;
        page.must_see("Signed by both");
        assert!(!page.has_form(&format!("{}/sign", address(&site, 1))));
        let kept = site.cast.store.signatures(&reads).await.unwrap();
        assert!(kept[1].local_time.ends_with('Z'));
        assert_ne!(kept[0].screen, kept[1].screen);
    }
}

on_both! {
    async fn a_screen_that_is_not_this_one_is_not_signed(db) {
        let site = Site::with_revision(db).await;
        site.cast.sao_mai.acknowledges(1).await.unwrap();
        let (mut phone, page) = opens(&site, &site.cast.sao_mai.lead, 1).await;
        let form = signing(&site, &page, 1);
        let other = Digest::of(b"another screen").to_string();
        for field in ["screen", "digest"] {
            let page = phone.sends(form.clone().set(field, &other)).await;
            page.must_be(StatusCode::CONFLICT);
            page.must_see("This changed after you opened the page.");
        }
        // The same figures to the same words give the same digest, however often they are shown.
        let page = phone.opens(&address(&site, 1)).await;
        assert_eq!(signing(&site, &page, 1).value("screen"), form.value("screen"));
        // Another figure gives another.
        site.cast.brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        site.cast.brand.publishes("Longer").await.unwrap();
        site.cast.sao_mai.acknowledges(2).await.unwrap();
        let page = phone.opens(&address(&site, 2)).await;
        assert_ne!(signing(&site, &page, 2).value("screen"), form.value("screen"));
    }
}

on_both! {
    async fn what_blocks_a_signature_is_said_with_the_way_on(db) {
        let site = Site::with_revision(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        sao_mai.acknowledges(1).await.unwrap();
        let (mut phone, page) = opens(&site, &sao_mai.lead, 1).await;
        let ready = signing(&site, &page, 1);
        let question = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let must_fix = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();

        for person in [&sao_mai.lead, &brand.lead] {
            let (_, page) = opens(&site, person, 1).await;
            page.must_see("You cannot sign yet");
            page.must_see("One question is open. Answer it; the asker closes it.");
            page.must_see("One must-fix is not changed in this revision and not let pass.");
            let thread = |id| format!("{}/threads/{id}", site.style);
            assert_eq!(page.link("Open the question: C Body length"), thread(&question));
            assert_eq!(page.link("Open the must-fix: A Chest width"), thread(&must_fix));
            // Seen where the item is, too.
            assert_eq!(page.all(".mark[data-item=point-c] .mark-flag"), ["?"]);
            assert_eq!(page.all(".mark[data-item=point-a] .mark-flag"), ["!"]);
            assert!(page.all("#row-point-a .word").contains(&"1 must-fix".to_owned()));
        }
        let refused = phone.sends(ready.clone()).await;
        refused.must_be(StatusCode::CONFLICT);
        refused.must_see("One question is open.");
        assert_eq!(refused.link("Open thread 1"), format!("{}/threads/{question}", site.style));

        sao_mai.moves(&question, ThreadMove::Close).await.unwrap();
        let refused = phone.sends(ready.clone()).await;
        refused.must_be(StatusCode::CONFLICT);
        refused.must_see("One must-fix is not changed");

        // A newer revision: the old page says what to use, and is signed no more.
        brand.edits(|spec| set_base(spec, "point-a", "22")).await;
        brand.publishes("Wider chest").await.unwrap();
        let refused = phone.sends(ready).await;
        refused.must_be(StatusCode::CONFLICT);
        assert_eq!(refused.link("Open revision 2"), address(&site, 2));
        let page = phone.opens(&address(&site, 1)).await;
        page.must_see("Superseded Do not sew from this.");
        page.must_see("This is not the current revision. Revision 2 is.");
        assert_eq!(page.link("Use revision 2"), address(&site, 2));
        assert_eq!(page.link("See what changed"), format!("{}/changes?since=1", address(&site, 2)));

        brand.withdraws(2, "The zip is too short").await.unwrap();
        let page = phone.opens(&address(&site, 2)).await;
        page.must_see("Withdrawn Stop. Do not sew from this: The zip is too short");
        page.must_see("No revision is current.");
        assert_eq!(page.attributes(".band", "data-state"), ["withdrawn"]);
        let page = phone.opens(&address(&site, 1)).await;
        page.must_see("No revision is current.");
    }
}

on_both! {
    async fn one_person_does_not_sign_for_both_sides(db, address_of_db) {
        let site = Site::with_revision(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        // Linh has moved to the brand since.
        let mut past = Past::the_guards(&address_of_db).await;
        let moved = format!(
            "UPDATE person SET org = '{}', role = 'designer' WHERE id = '{}'",
            brand.org, sao_mai.lead.actor.person
        );
        assert_eq!(past.run(&moved).await, 1);
        let (mut linh, page) = opens(&site, &sao_mai.lead, 1).await;
        page.must_see("You have signed for the other side of this style.");
        assert!(!page.has_form(&format!("{}/sign", address(&site, 1))));
        // Not even with a form that a colleague was shown.
        let (_, page) = opens(&site, &brand.lead, 1).await;
        let form = signing(&site, &page, 1);
        let form = form.set("token", &linh.token().await);
        let refused = linh.sends(form).await;
        refused.must_be(StatusCode::CONFLICT);
        refused.must_see("One person never signs for both sides: somebody else must sign.");
    }
}

on_both! {
    async fn what_changed_since_it_was_acknowledged_is_marked_in_its_place(db) {
        let site = Site::with_revision(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        sao_mai.acknowledges(1).await.unwrap();
        brand
            .edits(|spec| {
                let Some(Grade::Segments { segments }) = &mut spec.points.points[0].grade else {
                    panic!("the chest is graded in segments");
                };
                segments[1].step = inches("1 1/2");
                spec.points.points[1].plus = Some(inches("1/2"));
                let ink = spec.colourways.cells.get_mut(&item("colourway-ink")).unwrap();
                ink.insert(item("part-4"), Cell::Natural {});
            })
            .await;
        brand.publishes("Wider in XL").await.unwrap();
        let (mut phone, page) = opens(&site, &sao_mai.lead, 2).await;
        page.must_see("Your factory has not acknowledged revision 2.");
        page.must_see("3 changes since revision 1, which your factory acknowledged last.");
        assert_eq!(page.link("See what changed"), format!("{}/changes?since=1", address(&site, 2)));
        assert_eq!(
            page.all(".chart td.changed"),
            ["23 3/4 24 61.0", "−1/4 (−0.6) +1/4 +1/2 (+1.2)"]
        );
        assert_eq!(page.all(".chart del"), ["23 3/4", "+1/4"]);
        assert_eq!(page.all(".matrix td.changed"), ["Rust · H&T Rust · #b4532a natural"]);
        assert!(page.all("#row-point-a .word").contains(&"changed".to_owned()));
        // The brand has acknowledged nothing, and reads the revision as it is.
        let (_, brands) = opens(&site, &brand.lead, 2).await;
        assert!(brands.all(".changed").is_empty() && !brands.sees("has not acknowledged"));
        // Acknowledged, so does the factory.
        sao_mai.acknowledges(2).await.unwrap();
        let page = phone.opens(&address(&site, 2)).await;
        assert!(page.all(".changed").is_empty() && page.all("del").is_empty());
        // The other revisions, to compare.
        let compare = page.attributes("td a[href*=changes]", "href");
        assert_eq!(compare, [format!("{}/changes?since=1", address(&site, 2))]);
    }
}

on_both! {
    async fn a_factory_sees_its_own_part_of_the_page_alone(db) {
        let site = Site::with_revision(db).await;
        let (brand, meghna) = (&site.cast.brand, &site.cast.meghna);
        brand.shares_with(meghna).await.unwrap();
        site.cast.sao_mai.acknowledges(1).await.unwrap();
        site.cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let (_, page) = opens(&site, &meghna.lead, 1).await;
        assert!(!page.sees("Sao Mai") && page.all(".mark-flag").is_empty());
        page.must_see("Your factory has not acknowledged revision 1.");
        let (_, page) = opens(&site, &brand.lead, 1).await;
        page.must_see("Meghna Knit Works Shared");
        page.must_see("Sao Mai Garment Acknowledged");
        // The brand signs with each by itself: nothing is open with Meghna.
        let forms = page.forms().into_iter();
        let forms: Vec<FormOf> = forms.filter(|form| form.action.ends_with("/sign")).collect();
        assert_eq!(forms.len(), 1);
        assert_eq!(forms[0].value("org"), meghna.org.as_str());
    }
}

on_both! {
    async fn a_warning_that_was_accepted_stands_there_with_its_reason(db) {
        let site = Site::new(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        // A piece of one size can pass as the next one.
        brand
            .edits(|spec| spec.points.points[0].plus = Some(inches("5/8")))
            .await;
        let spec = brand.draft().await.0;
        let warnings = check(&spec, &grade(&spec)).into_iter();
        let accepted: BTreeMap<FindingKey, String> = warnings
            .map(|finding| (FindingKey::of(&finding), "Sizes are told by their labels.".to_owned()))
            .collect();
        assert_eq!(accepted.len(), 1);
        brand.publishes_accepting("First issue", &accepted).await.unwrap();
        brand.shares_with(sao_mai).await.unwrap();
        let (_, page) = opens(&site, &sao_mai.lead, 1).await;
        page.must_see("Warnings that the brand accepted");
        page.must_see("A Chest width: this point is critical, and a piece of size XS can pass as S");
        page.must_see("Reason: Sizes are told by their labels.");
    }
}

on_both! {
    async fn the_page_of_a_large_style_is_light(db) {
        let cast = Cast::with_revision(db).await;
        let style = cast.brand.lead.starts(&large()).await;
        let (brand, sao_mai) = (cast.brand.on(&style), cast.sao_mai.on(&style));
        brand.publishes("First issue").await.unwrap();
        brand.shares_with(&sao_mai).await.unwrap();
        let site = Site::of(cast, "http://127.0.0.1:8640", true).await;
        let mut phone = site.browser(&sao_mai.lead).await;
        let path = format!("/styles/{style}/revisions/1");
        let plain = phone.visits(&path).await;
        assert_eq!(plain.all(".chart tbody tr").len(), POINTS);
        assert_eq!(plain.all(".chart tbody td.turn").len(), POINTS * SIZES);
        phone.headers.insert("accept-encoding", "gzip".parse().unwrap());
        let zipped = phone.visits(&path).await;
        let (whole, sent) = (plain.bytes.len(), zipped.bytes.len());
        println!("{POINTS} points in {SIZES} sizes: {whole} bytes, {sent} compressed");
        assert!(sent < 100 * 1024, "{sent}");
    }
}
