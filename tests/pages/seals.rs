//! Sealing a sample: what keeps it from being sealed, the ways on, and both signatures.

use axum::http::StatusCode;
use fellseam::exchange::record::check;
use fellseam::exchange::round::{Kind, Materials};
use fellseam::spec::RoundId;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::{approved_round, measured_round};
use crate::support::database::on_both;

fn sealing(site: &Site, round: &RoundId) -> String {
    format!("{}/rounds/{round}/seal", site.style)
}

/// What stands in the list of what blocks.
async fn blocks(browser: &mut Browser, site: &Site, round: &RoundId) -> Vec<String> {
    let page = browser.opens(&sealing(site, round)).await;
    page.must_be(StatusCode::OK);
    page.all(".blocks > li > p")
}

#[track_caller]
fn must_say(blocks: &[String], sentences: &[&str]) {
    assert_eq!(blocks.len(), sentences.len(), "{blocks:#?}");
    for (block, sentence) in blocks.iter().zip(sentences) {
        assert!(block.starts_with(sentence), "{sentence:?}: {blocks:#?}");
    }
}

/// Moves a thread on through its page's address.
async fn moves(browser: &mut Browser, link: &str, mv: &str) {
    let page = browser
        .posts(&format!("{link}/move"), &[("move", mv)])
        .await;
    page.must_be(StatusCode::SEE_OTHER);
}

on_both! {
    async fn every_block_is_told_with_its_way_on_until_nothing_is_left(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let (brand, sao_mai) = (&cast.brand, &cast.sao_mai);
        let mut nell = site.browser(&brand.owner).await;
        let mut iris = site.browser(&brand.lead).await;
        let mut linh = site.browser(&sao_mai.lead).await;

        let proto = measured_round(brand, sao_mai, &["size-m"], &[(1, "point-c", "28 1/2")]).await;
        must_say(&blocks(&mut nell, &site, &proto).await, &[
            "This is a round of the kind: Proto.",
            "This round is: measured.",
            "No size set with these sizes and this chart is approved",
            "Not approved yet: 5.",
            "The pieces are made of substitute materials.",
            "Critical points out of tolerance, or not measured, on a piece to be kept: 1.",
        ]);

        let substitute = approved_round(brand, sao_mai, Kind::PreProduction, Materials::Substitute);
        let round = substitute.await;
        let question = sao_mai.asks("point-a", "Rib?").await.unwrap();
        brand.insists(sao_mai, "point-e", "Shorter sleeves").await.unwrap();
        let told = blocks(&mut linh, &site, &round).await;
        must_say(&told, &[
            "Only an owner of the brand seals a sample.",
            "Questions are open: 1.",
            "Must-fixes that nobody has seen mended on a sample: 1.",
            "No size set with these sizes and this chart is approved",
            "Not approved yet: 5.",
            "The pieces are made of substitute materials.",
        ]);
        assert!(told[4].contains("Lab dip: Ink (F1 Brushed loopback jersey), Lab dip: Sand (F2 2 × 2 rib), Strike-off: "), "{told:#?}");
        assert_eq!(blocks(&mut iris, &site, &round).await, told, "a designer neither");
        let page = nell.opens(&sealing(&site, &round)).await;
        assert!(!page.has_form(&sealing(&site, &round)));
        let page = nell.posts(&sealing(&site, &round), &[("keep-1", "yes"), ("tag-1", "1"), ("place-1", "x")]).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("Questions are open: 1.");

        // Each by its way on.
        let page = nell.opens(&sealing(&site, &round)).await;
        moves(&mut linh, &page.link("question"), "close").await;
        assert!(page.link("question").ends_with(question.as_str()));
        moves(&mut iris, &page.link("must-fix"), "grant").await;
        let page = nell.opens(&sealing(&site, &round)).await;
        assert!(!page.sees("Questions are open") && !page.sees("Must-fixes that"));
        nell.opens(&page.link("Approvals")).await.must_see("Next: Sao Mai Garment submits an option.");
        for thing in sao_mai.to_approve().await {
            let option = sao_mai.submits(&thing, "As asked").await.unwrap();
            let decide = format!("{}/approvals/{option}/decide", site.style);
            iris.posts(&decide, &[("verdict", "approved")]).await.must_be(StatusCode::SEE_OTHER);
        }
        nell.opens(&page.link("Ask for another round")).await.must_be(StatusCode::OK);
        approved_round(brand, sao_mai, Kind::SizeSet, Materials::Actual).await;
        must_say(&blocks(&mut nell, &site, &round).await, &["The pieces are made of substitute materials."]);
        let round = approved_round(brand, sao_mai, Kind::PreProduction, Materials::Actual).await;
        must_say(&blocks(&mut nell, &site, &round).await, &[]);

        // A newer revision with the same chart: another round, and neither size set nor approvals.
        brand.edits(|spec| spec.header.contrast_fabric = "2 × 2 rib".to_owned()).await;
        brand.publishes("Fabric in words").await.unwrap();
        must_say(&blocks(&mut nell, &site, &round).await, &["This is not the current revision. Revision 2 is."]);
        let round = approved_round(brand, sao_mai, Kind::TopOfProduction, Materials::Actual).await;
        must_say(&blocks(&mut nell, &site, &round).await, &[]);

        // A corrected value puts a critical point out: a concession on it lets it pass.
        sao_mai.measures(&round, &[(1, "point-a", "22 1/8")]).await.unwrap();
        let told = blocks(&mut nell, &site, &round).await;
        must_say(&told, &["Critical points out of tolerance, or not measured, on a piece to be kept: 1."]);
        assert!(told[0].contains("A Chest width"), "{told:?}");
        let page = nell.opens(&sealing(&site, &round)).await;
        linh.opens(&page.link("A Chest width")).await.must_see("Ask about this");
        let pass = sao_mai.asks_concession("point-a", "From stock").await.unwrap();
        moves(&mut iris, &format!("{}/threads/{pass}", site.style), "grant").await;
        let page = nell.opens(&sealing(&site, &round)).await;
        page.must_see("Nothing keeps it from being sealed");
        page.must_see("It rests on approvals: 5. Concessions that count: 1.");
    }
}

/// The page of the first piece's seal, from the filled form.
async fn seals(site: &Site, nell: &mut Browser, round: &RoundId) -> Page {
    let here = sealing(site, round);
    let form = nell.opens(&here).await.form(&here);
    let form = form.tick("keep-1", "yes").set("tag-1", "HT-17");
    let form = form
        .set("keeper-1", "factory")
        .set("place-1", "Shelf 3, Linh");
    let page = nell.sends_and_opens(form).await;
    page.must_be(StatusCode::OK);
    page
}

on_both! {
    async fn a_sealed_sample_is_signed_by_both_and_kept_in_a_record(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = cast.ready_to_seal().await;
        let mut nell = site.browser(&cast.brand.owner).await;
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = nell.opens(&format!("{}/rounds/{round}", site.style)).await;
        let here = page.link("Seal this sample");
        let form = nell.opens(&here).await.form(&here);
        let page = nell.sends(form.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose at least one piece.");
        let page = nell.sends(form.tick("keep-1", "yes").set("tag-1", "HT-17")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Write something here.");
        assert_eq!(page.form(&here).value("tag-1"), "HT-17");

        let page = seals(&site, &mut nell, &round).await;
        page.must_see("Waits for both signatures");
        page.must_see("It says nothing about safety or legal compliance.");
        page.must_see("HT-17 Piece 1, size M Factory Shelf 3, Linh");
        page.must_see("Lab dip: Ink (F1 Brushed loopback jersey), Option A");
        let again = nell.opens(&here).await;
        let seal = again.link("Open the seal");
        linh.opens("/").await.must_see("Sign the seal of sample round 2, Pre-production");
        for browser in [&mut linh, &mut nell] {
            let style = browser.opens(&site.style).await;
            assert!(style.attributes("a", "href").contains(&seal), "{}", style.reads());
        }

        let page = linh.opens(&seal).await;
        page.must_see("My factory will make the bulk to them and to the revision.");
        let sign = format!("{seal}/sign");
        let page = linh.sends_and_opens(page.form(&sign).set("agree", "yes")).await;
        page.must_see("Waits for the signature of: Brand");
        let page = iris.opens(&seal).await;
        page.must_see("We will judge the bulk by them and by the revision.");
        let page = iris.sends_and_opens(page.form(&sign).set("agree", "yes")).await;
        assert_eq!(page.all(".next-step .word"), ["Sealed"]);
        assert!(!linh.opens(&seal).await.has_form(&sign));

        let record = page.link("Signed record");
        let page = linh.opens(&record).await;
        page.must_see("Sealed sample");
        let file = page.attributes("a[download]", "href");
        let file = linh.visits(&file[0]).await;
        let key = cast.store.record_key().await.unwrap().public();
        let checked = check(&file.bytes, &key).expect("a record");
        assert_eq!(checked.doubts, []);
        let names: Vec<_> = checked.record.signatures.iter().map(|it| it.name.as_deref()).collect();
        assert_eq!(names, [Some("Linh"), Some("Iris")]);
        let content = checked.record.subject.content.expect("what was signed");
        assert!(content.contains("HT-17") && !content.contains("Shelf 3"), "{content}");

        let ledger = linh.opens(&format!("{}/ledger", site.style)).await;
        ledger.must_see("Nell sealed pieces of round 2 (Pre-production): 1.");
        ledger.must_see("Linh signed the seal of round 2 (Pre-production).");
        ledger.must_see("Iris approved option A of P1 Main fabric (Lab dip).");

        // Another factory knows of none of it.
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        for path in [&seal, &record, &here] {
            rafiq.visits(path).await.must_be(StatusCode::NOT_FOUND);
        }
        cast.brand.edits(|spec| spec.header.contrast_fabric = "2 × 2 rib".to_owned()).await;
        cast.brand.publishes("Fabric in words").await.unwrap();
        linh.opens(&seal).await.must_see("Revision 2 is current. These pieces were made to revision 1.");
    }
}

on_both! {
    async fn a_side_signs_a_seal_once(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = cast.ready_to_seal().await;
        let mut nell = site.browser(&cast.brand.owner).await;
        let page = seals(&site, &mut nell, &round).await;
        let sign = page.forms().into_iter().find(|it| it.action.ends_with("/sign"));
        let sign = sign.expect("an owner signs, too");
        nell.sends(sign.clone().set("agree", "yes")).await.must_be(StatusCode::SEE_OTHER);
        let page = nell.sends(sign.set("agree", "yes")).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("Your side has signed this already.");
    }
}
