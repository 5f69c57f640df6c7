//! Inspecting bulk: what keeps from it, the plan, entering pieces, concluding, deciding.

use std::collections::BTreeSet;

use axum::http::StatusCode;
use fellseam::exchange::inspection::Decision;
use fellseam::spec::{InspectionId, SealId};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::{Cast, Person, small_lot};
use crate::support::database::on_both;

fn beginning(site: &Site, seal: &SealId) -> String {
    format!("{}/seals/{seal}/inspect", site.style)
}

fn address(site: &Site, id: &InspectionId) -> String {
    format!("{}/inspections/{id}", site.style)
}

/// The form of a lot of ten pieces: six in ink and M, four in chalk and L.
fn ten(form: FormOf) -> FormOf {
    form.set("pieces-1-3", "6").set("pieces-2-4", "4")
}

/// The form with the button pressed that begins what its page shows.
fn begins(page: &Page, here: &str) -> FormOf {
    let shown = page.attributes("button[name=begin]", "value");
    page.form(here).set("begin", &shown[0])
}

/// An inspector, and the inspection of a small lot that they have begun.
async fn begun(cast: &Cast) -> (Person, InspectionId) {
    let seal = cast.signed_seal().await;
    let minh = cast.inspector().await;
    let style = &cast.brand.style;
    let id = minh.begins(style, &seal, &small_lot(), None).await;
    (minh, id.unwrap())
}

on_both! {
    async fn what_keeps_bulk_from_being_inspected_is_told_with_its_way_on(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = cast.ready_to_seal().await;
        let seal = cast.seals(&round, &[("HT-17", "Shelf 3")]).await.unwrap();
        let here = beginning(&site, &seal);
        let minh = cast.inspector().await;
        let mut minh = site.browser(&minh).await;
        let page = minh.opens(&here).await;
        page.must_be(StatusCode::OK);
        page.must_see("What keeps bulk from being inspected: 1");
        page.must_see("Not signed yet by: Factory, Brand.");
        assert!(!page.has_form(&here));
        let seal_page = minh.opens(&page.link("Open the seal")).await;
        seal_page.must_see("Bulk is inspected against a seal that both sides have signed.");
        seal_page.must_see("No bulk was inspected against it yet.");
        let early = minh.posts(&here, &[("pieces-1-3", "6")]).await;
        early.must_be(StatusCode::CONFLICT);
        early.must_see("Not signed yet by: Factory, Brand.");
        cast.signs_seal(&cast.sao_mai, &seal).await;
        cast.signs_seal(&cast.brand, &seal).await;
        let page = minh.opens(&here).await;
        assert!(page.has_form(&here) && !page.sees("What keeps bulk"));
        // Whoever may not inspect reads the same, without a form.
        for who in [&cast.sao_mai.hands, &cast.brand.viewer] {
            let page = site.browser(who).await.opens(&here).await;
            page.must_be(StatusCode::OK);
            assert!(!page.has_form(&here), "{}", who.name);
        }
        cast.brand.edits(|spec| spec.header.contrast_fabric = "2 × 2 rib".to_owned()).await;
        cast.brand.publishes("Fabric in words").await.unwrap();
        let page = minh.opens(&here).await;
        page.must_see("This is not the current revision. Revision 2 is.");
        minh.opens(&page.link("Open revision 2")).await.must_be(StatusCode::OK);
        cast.brand.ends_share_with(&cast.sao_mai).await.unwrap();
        minh.visits(&here).await.must_be(StatusCode::NOT_FOUND);
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = iris.opens(&here).await;
        page.must_see("What keeps bulk from being inspected: 2");
        page.must_see("This style is not shared with the factory now.");
    }
}

on_both! {
    async fn a_lot_shows_its_plan_before_it_is_begun(db) {
        let site = Site::with_revision(db).await;
        let seal = site.cast.signed_seal().await;
        let here = beginning(&site, &seal);
        let minh = site.cast.inspector().await;
        let mut minh = site.browser(&minh).await;
        let page = minh.opens(&format!("{}/seals/{seal}", site.style)).await;
        let page = minh.opens(&page.link("Inspect bulk")).await;
        page.must_see("Passing this inspection says nothing about safety. A licensed laboratory and local law decide that.");
        page.must_see("Level II with 2.5 and 4.0 is common practice, no source.");
        let form = page.form(&here);
        assert_eq!((form.value("level"), form.value("major"), form.value("minor")), ("II", "2.5", "4.0"));
        assert!(page.attributes("button[name=begin]", "value").is_empty(), "nothing was shown yet");

        let none = minh.sends(form.clone()).await;
        none.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        none.must_see("Say how many pieces of which colourway and size the lot has");
        for wrong in ["1.5", "-3", "10000001", "many"] {
            let page = minh.sends(ten(form.clone()).set("pieces-1-1", wrong)).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see("Write a whole number from 0 to 10000000.");
            assert_eq!(page.form(&here).value("pieces-1-1"), wrong);
        }
        let page = minh.sends(ten(form.clone())).await;
        page.must_be(StatusCode::OK);
        page.must_see("5 of 10 pieces are inspected");
        // Letter B at 2.5: an arrow down to C, five pieces, none of them defective.
        page.must_see("major 2.5 B → C 5 0 1");
        page.must_see("minor 4.0 B 3 0 1");
        page.must_see("Ink M 6 3");
        page.must_see("Chalk L 4 2");
        page.must_see("at least one of each where the sample allows it: common practice, no source.");
        // Another lot than the one whose plan was shown is not begun.
        let other = begins(&page, &here).set("pieces-1-3", "60");
        let moved = minh.sends(other).await;
        moved.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        moved.must_see("The lot was changed after its plan was shown.");
        moved.must_see("20 of 64 pieces are inspected");
        let large = form.clone().set("pieces-1-3", "1200").set("major", "0.65").set("minor", "6.5");
        let page = minh.sends(large).await;
        page.must_see("major 0.65 Not checked against the official text J 80 1 2");
        let whole = form.set("pieces-1-3", "3").set("level", "III");
        minh.sends(whole).await.must_see("every piece of the lot");
        let page = minh.sends_and_opens(begins(&moved, &here)).await;
        page.must_be(StatusCode::OK);
        page.must_see("Bulk inspection 1");
        page.must_see("0 of 20");
    }
}

/// Opens the next piece that is due.
async fn next(browser: &mut Browser, page: &Page) -> (Page, FormOf) {
    let page = browser.opens(&page.link("Inspect a piece")).await;
    page.must_be(StatusCode::OK);
    let form = page
        .forms()
        .into_iter()
        .find(|it| it.action.ends_with("/piece"));
    let form = form.expect("a form for a piece");
    (page, form)
}

on_both! {
    async fn an_inspector_enters_pieces_and_the_brand_decides(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let (minh, id) = begun(cast).await;
        let here = address(&site, &id);
        let mut minh = site.browser(&minh).await;
        let mut iris = site.browser(&cast.brand.lead).await;
        let needs = minh.opens("/").await;
        let page = minh.opens(&needs.link("Inspect bulk: inspection 1")).await;
        page.must_see("Inspect the pieces: 0 of 5 are done.");
        let svg = page.attributes("svg.curve", "viewBox");
        assert_eq!(svg, ["0 0 340 240"]);
        page.must_see("Likelihood of acceptance");
        page.must_see("Share defective");
        assert_eq!(page.attributes("svg.curve polyline", "stroke-dasharray"), ["7 4"], "told apart without colour");

        let (page, form) = next(&mut minh, &page).await;
        page.must_see("Piece 1 · Ink · M");
        page.must_see("Critical: it can hurt somebody; when in doubt, choose this.");
        page.must_see("A Chest width critical");
        page.must_see("21 1/2 −3/8 +3/8 in");
        let page = minh.sends_and_opens(form).await;
        page.must_see("Saved.");
        page.must_see("Piece 2 · Ink · M");
        let form = page.forms().into_iter().find(|it| it.action.ends_with("/piece")).unwrap();
        let form = form
            .set("class-1", "minor").set("item-1", "point-c").set("times-1", "3")
            .set("class-2", "major").set("words-2", "Open seam")
            .set("value-point-a", "22");
        let page = minh.sends_and_opens(form).await;
        page.must_see("Piece 3 · Ink · M");
        let page = minh.opens(&here).await;
        assert_eq!(page.all("#piece-2 .word"), ["major"]);
        let defects = page.all("#piece-2 ul li");
        assert_eq!(defects, ["minor × 3: C Body length", "major Open seam", "major: A Chest width ▲ +1/2"]);
        page.must_see("Pieces that count as major: 1. At most 0 may be accepted.");
        page.must_see("What was found rejects the lot. Conclude the inspection.");
        page.must_see("Without a defect: 1");

        // A correction takes the older entry's place, and leaves it to be read.
        let page = minh.opens(&page.link("Correct")).await;
        page.must_see("This piece was entered before.");
        let form = page.forms().into_iter().find(|it| it.action.ends_with("/piece")).unwrap();
        assert_eq!((form.value("words-2"), form.value("value-point-a")), ("Open seam", "22"));
        let form = form.set("class-2", "").set("words-2", "").set("value-point-a", "21 1/2");
        let page = minh.sends_and_opens(form).await;
        page.must_see("Corrected entries: 1");
        assert_eq!(page.all("#piece-2 .word"), ["minor"]);
        page.must_see("Pieces that count as minor: 1. At most 0 may be accepted.");

        let page = minh.sends_and_opens(page.form(&format!("{here}/conclude"))).await;
        assert_eq!(page.all(".next-step .word"), ["rejected"]);
        page.must_see("The brand decides on this lot.");
        assert!(!page.has_form(&format!("{here}/decide")));
        assert!(page.reads().matches("says nothing about safety").count() >= 2);
        let needs = iris.opens("/").await;
        let page = iris.opens(&needs.link("Decide on the lot of bulk inspection 1")).await;
        let decide = page.form(&format!("{here}/decide"));
        let choices = page.attributes("#decide input[name=decision]", "value");
        assert_eq!(choices, ["concession", "rework", "refused"]);
        let page = iris.sends(decide.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose one.");
        let page = iris.sends(decide.clone().set("decision", "rework")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Write a reason. Others will read it later.");
        let page = iris.sends_and_opens(decide.set("decision", "rework").set("reason", "Press them")).await;
        page.must_see("sent back to be mended");
        page.must_see("Press them");

        // Mended, it is inspected again: the lot as it was, with its plan.
        let needs = minh.opens("/").await;
        let page = minh.opens(&needs.link("Mend the lot of bulk inspection 1")).await;
        let page = minh.opens(&page.link("Inspect the mended lot")).await;
        page.must_see("Mended after Bulk inspection 1");
        let to = page.forms().into_iter().find(|it| it.action.ends_with("/inspect")).unwrap();
        assert_eq!(to.value("pieces-1-3"), "6");
        let grown = minh.sends(to.clone().set("pieces-1-3", "7")).await;
        let grown = minh.sends(begins(&grown, &to.action)).await;
        grown.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        grown.must_see("A mended lot has no more pieces of any colourway and size than before.");
        let page = minh.sends_and_opens(begins(&page, &to.action)).await;
        page.must_see("Bulk inspection 2");
        let mut form = next(&mut minh, &page).await.1;
        let mut last = page;
        for _ in 0..5 {
            last = minh.sends_and_opens(form.clone()).await;
            let again = last.forms().into_iter().find(|it| it.action.ends_with("/piece"));
            form = again.unwrap_or(form);
        }
        last.must_see("The sample is inspected. Conclude the inspection.");
        let conclude = last.forms().into_iter().find(|it| it.action.ends_with("/conclude"));
        let page = minh.sends_and_opens(conclude.unwrap()).await;
        assert_eq!(page.all(".next-step .word"), ["accepted"]);
        let needs = iris.opens("/").await;
        let page = iris.opens(&needs.link("Decide on the lot of bulk inspection 2")).await;
        let choices = page.attributes("#decide input[name=decision]", "value");
        assert_eq!(choices, ["released", "rework", "refused"]);
        let decide = page.forms().into_iter().find(|it| it.action.ends_with("/decide")).unwrap();
        iris.sends_and_opens(decide.set("decision", "released")).await.must_see("Nothing is left to do here.");

        let style = iris.opens(&site.style).await;
        style.must_see("Bulk inspection 2 Sao Mai Garment 1 released");
        style.must_see("Bulk inspection 1 Sao Mai Garment 1 sent back to be mended");
        let ledger = iris.opens(&format!("{}/ledger", site.style)).await;
        ledger.must_see("Minh began bulk inspection 1. Pieces in the lot: 10.");
        ledger.must_see("Minh inspected pieces in bulk inspection 1: 3.");
        ledger.must_see("Minh concluded bulk inspection 2: accepted.");
        ledger.must_see("Iris decided on bulk inspection 1: sent back to be mended.");
        ledger.must_see("Press them");
        assert_eq!(cast.store.audit().await.unwrap().faults, []);

        // Another factory knows of none of it.
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        for path in [here.clone(), format!("{here}/piece")] {
            rafiq.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        }
        rafiq.posts(&format!("{here}/conclude"), &[]).await.must_be(StatusCode::NOT_FOUND);
        assert!(!rafiq.opens(&site.style).await.sees("Bulk inspection"));
    }
}

on_both! {
    async fn what_is_wrong_with_a_piece_stands_beside_it(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let (minh, id) = begun(cast).await;
        let here = address(&site, &id);
        let piece = format!("{here}/piece");
        let mut minh = site.browser(&minh).await;
        let form = minh.opens(&piece).await.form(&piece);
        let wrong = async |minh: &mut Browser, form: FormOf, sentence: &str| {
            let page = minh.sends(form).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(sentence);
            page
        };
        let page = wrong(&mut minh, form.clone().set("words-1", "Open seam"), "Choose critical, major or minor.").await;
        assert_eq!(page.form(&piece).value("words-1"), "Open seam");
        wrong(&mut minh, form.clone().set("class-1", "minor"), "Say where the defect is, or what it is in words.").await;
        let many = form.clone().set("class-1", "minor").set("item-1", "part-1").set("times-1", "1001");
        wrong(&mut minh, many, "Write a whole number from 1 to 1000.").await;
        wrong(&mut minh, form.clone().set("value-point-a", "wide"), "“wide” is not a measurement.").await;
        wrong(&mut minh, form.clone().set("value-point-a", "0"), "A measurement is more than zero.").await;
        // Centimetres in a field for inches: asked about, and saved when it is said to be right.
        let slip = form.clone().set("value-point-a", "54 3/4");
        let page = wrong(&mut minh, slip, "A Chest width: 54 3/4 in looks like centimetres. Measure again.").await;
        let right = page.attributes("button[name=anyway]", "value").remove(0);
        let other = page.form(&piece).set("anyway", &right).set("value-point-a", "54 1/2");
        wrong(&mut minh, other, "looks like centimetres").await;
        let page = minh.sends_and_opens(page.form(&piece).set("anyway", &right)).await;
        page.must_see("Piece 2");

        // More rows, and nothing that was typed is gone.
        let more = page.form(&piece).set("class-1", "major").set("words-1", "Stain").set("more", "yes");
        let page = minh.sends(more).await;
        page.must_be(StatusCode::OK);
        let form = page.form(&piece);
        assert_eq!((form.value("words-1"), form.value("times-5")), ("Stain", "1"));

        // Another colourway, by its link.
        let page = minh.opens(&page.link("Chalk · L")).await;
        page.must_see("Piece 2 · Chalk · L");

        // A form that was sent before, with something else.
        let sent = page.form(&piece);
        minh.sends(sent.clone()).await.must_be(StatusCode::SEE_OTHER);
        minh.sends(sent.clone()).await.must_be(StatusCode::SEE_OTHER);
        let page = wrong(&mut minh, sent.set("class-1", "minor").set("words-1", "Stain"), "This form was sent before with another value.").await;
        // That piece is there now: what is sent anew becomes the next, after one more look.
        let page = wrong(&mut minh, page.form(&piece), "Yours is piece 3 now: save it once more.").await;
        assert_eq!(page.form(&piece).value("number"), "3");
        minh.sends(page.form(&piece)).await.must_be(StatusCode::SEE_OTHER);
        let now = cast.brand.inspection(&id).await;
        assert_eq!(now.newest()[&3].defects[0].words.as_deref(), Some("Stain"));

        // Two correct one piece: the second reads first.
        let page = minh.opens(&format!("{piece}?number=3")).await;
        let mine = page.form(&piece).set("words-1", "Oil");
        minh.sends(page.form(&piece).set("words-1", "Rust")).await.must_be(StatusCode::SEE_OTHER);
        let mine = mine.set("key", "another key");
        let page = wrong(&mut minh, mine, "Somebody entered this piece after you opened the page.").await;
        minh.sends(page.form(&piece)).await.must_be(StatusCode::SEE_OTHER);
        let now = cast.brand.inspection(&id).await;
        assert_eq!(now.newest()[&3].defects[0].words.as_deref(), Some("Oil"));

        for gone in ["number=0", "number=11", "colourway=colourway-ink&size=size-xl"] {
            minh.visits(&format!("{piece}?{gone}")).await.must_be(StatusCode::NOT_FOUND);
        }
        minh.posts(&piece, &[("number", "1")]).await.must_be(StatusCode::NOT_FOUND);
        minh.posts(&piece, &[]).await.must_be(StatusCode::BAD_REQUEST);
    }
}

on_both! {
    async fn a_critical_defect_ends_it_and_nothing_comes_late(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let (person, id) = begun(cast).await;
        let here = address(&site, &id);
        let piece = format!("{here}/piece");
        let mut minh = site.browser(&person).await;
        let mut iris = site.browser(&cast.brand.lead).await;
        let early = minh.posts(&format!("{here}/conclude"), &[]).await;
        early.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        early.must_see("Pieces of the sample that are not inspected yet: 5. Inspect them first.");
        let early = iris.posts(&format!("{here}/decide"), &[("decision", "released")]).await;
        early.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        early.must_see("This cannot be done now. The inspection is: open.");

        let page = minh.opens(&here).await;
        let page = minh.opens(&page.link("Critical defect beyond the sample")).await;
        page.must_see("The sample has 5 pieces. A piece beyond it is entered only for a critical defect.");
        let form = page.form(&piece);
        let page = minh.sends(form.clone().set("class-1", "major").set("words-1", "Stain")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let page = minh.sends_and_opens(form.set("class-1", "critical").set("words-1", "Needle tip")).await;
        page.must_see("Pieces with a critical defect: 1. One is enough.");
        let open = minh.opens(&piece).await.form(&piece);
        minh.sends_and_opens(page.form(&format!("{here}/conclude"))).await.must_see("rejected");

        for page in [minh.sends(open).await, minh.opens(&piece).await] {
            page.must_be(StatusCode::CONFLICT);
            page.must_see("This cannot be done now. The inspection is: rejected.");
        }
        let page = iris.opens(&here).await;
        page.must_see("Such a lot is only sent back or refused.");
        let choices = page.attributes("#decide input[name=decision]", "value");
        assert_eq!(choices, ["rework", "refused"]);
        let decide = page.form(&format!("{here}/decide")).set("reason", "Only one");
        let page = iris.sends(decide.clone().set("decision", "concession")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Pieces with a critical defect: 1. Such a lot is only sent back or refused.");
        assert_eq!(page.form(&format!("{here}/decide")).value("reason"), "Only one");
        let page = iris.sends(decide.clone().set("decision", "released")).await;
        page.must_see("The lot is rejected and cannot be released.");
        iris.sends_and_opens(decide.clone().set("decision", "refused")).await.must_see("Nothing is left to do here.");
        let page = iris.sends(decide.set("decision", "refused")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This cannot be done now. The inspection is: refused.");
    }
}

on_both! {
    async fn a_newer_revision_and_what_was_let_pass_are_told(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let pass = cast.sao_mai.asks_concession("point-a", "From stock").await.unwrap();
        cast.brand.moves(&pass, fellseam::store::ThreadMove::Grant).await.unwrap();
        let (minh, id) = begun(cast).await;
        let here = address(&site, &id);
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let page = linh.opens(&here).await;
        page.must_see("Here they count as defects all the same: the brand decides.");
        assert!(page.link("concession request: A Chest width").ends_with(pass.as_str()));
        cast.brand.edits(|spec| spec.header.contrast_fabric = "2 × 2 rib".to_owned()).await;
        cast.brand.publishes("Fabric in words").await.unwrap();
        linh.opens(&here).await.must_see("Revision 2 is current. These pieces were made to revision 1.");

        // A lot that was accepted may be refused all the same; a concession on it makes no sense.
        let style = &cast.brand.style;
        for piece in 1..=5 {
            minh.enters(style, &id, piece, &[], &[]).await.unwrap();
        }
        minh.concludes(style, &id).await.unwrap();
        let mut iris = site.browser(&cast.brand.lead).await;
        let form = iris.opens(&here).await.form(&format!("{here}/decide"));
        let page = iris.sends(form.clone().set("decision", Decision::Concession.name()).set("reason", "Fine")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("The lot is accepted: there is nothing to let pass.");
        let page = iris.sends_and_opens(form.set("decision", "refused").set("reason", "Too late")).await;
        page.must_see("Too late");
    }
}

on_both! {
    async fn an_inspector_is_offered_nothing_that_is_not_theirs(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let (brand, sao_mai) = (&cast.brand, &cast.sao_mai);
        let (person, _) = begun(cast).await;
        sao_mai.asks("point-a", "Rib?").await.unwrap();
        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        sao_mai.starts(&round).await.unwrap();
        let mut minh = site.browser(&person).await;
        let needs = minh.opens("/").await.all(".needs b");
        assert_eq!(needs.iter().filter(|it| !it.starts_with("HT-204")).count(), 1, "{needs:?}");
        let mut waiting = vec!["/".to_owned(), "/me".to_owned()];
        let (mut seen, mut actions) = (BTreeSet::new(), BTreeSet::new());
        while let Some(path) = waiting.pop() {
            let many = path.contains("/items/") && !path.ends_with("/items/point-a");
            let files = ["/files/", "/sheets/", "/paper", "/archive", "/file", "/document", "/static/"];
            let skipped = many || files.iter().any(|it| path.contains(it)) || !path.starts_with('/');
            if skipped || !seen.insert(path.clone()) {
                continue;
            }
            let page = minh.opens(&path).await;
            assert!(page.status.is_success(), "{path}: {}", page.status);
            let links = page.attributes("a[href]", "href").into_iter();
            waiting.extend(links.map(|it| it.split('#').next().unwrap_or_default().to_owned()));
            actions.extend(page.forms().into_iter().map(|it| it.action));
        }
        assert!(seen.len() > 15, "{seen:#?}");
        actions.retain(|it| !it.starts_with("/sign-out"));
        assert!(actions.iter().any(|it| it.ends_with("/piece")), "{actions:?}");
        for action in &actions {
            let page = minh.posts(action, &[]).await;
            let theirs = page.status != StatusCode::FORBIDDEN && page.status != StatusCode::NOT_FOUND;
            assert!(theirs, "{action}: {}", page.status);
        }
    }
}

on_both! {
    async fn an_owner_is_told_what_an_inspector_reads(db) {
        let site = Site::new(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let page = nell.opens("/people").await;
        page.must_see("Inspector · Sao Mai Garment");
        page.must_see("An inspector of a third party is added to the factory whose lots they inspect.");
        let place = format!("inspector {}", site.cast.sao_mai.org);
        let form = page.form("/people").set("name", "Minh").set("place", &place);
        nell.sends(form).await.must_see("A link for Minh");
    }
}
