//! A round's pieces beside their values: measured in another state, left out with a reason,
//! photographed; and every value side by side.

use axum::http::StatusCode;

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::{Cast, set_base};
use crate::support::database::on_both;
use crate::threads::inputs;

use fellseam::spec::RoundId;

/// A round in work, of a piece in M for each of `count`.
async fn in_work(cast: &Cast, count: usize) -> RoundId {
    let round = cast
        .brand
        .requests(&cast.sao_mai, &vec!["size-m"; count])
        .await
        .unwrap();
    cast.sao_mai.starts(&round).await.unwrap();
    round
}

fn base(site: &Site, round: &RoundId) -> String {
    format!("{}/rounds/{round}", site.style)
}

/// The form of the point that the page shows.
fn shown(page: &Page) -> FormOf {
    page.form(&page.attributes(".measure-point:not([hidden]) form", "action")[0])
}

/// The page of every value, with the form that saves.
async fn readings(browser: &mut Browser, base: &str) -> (Page, FormOf) {
    let to = format!("{base}/readings");
    let page = browser.opens(&to).await;
    let form = page.form(&to);
    (page, form)
}

on_both! {
    async fn a_point_is_left_out_with_a_reason_that_both_sides_read(db) {
        let site = Site::with_revision(db).await;
        let round = in_work(&site.cast, 1).await;
        let base = base(&site, &round);
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let page = hoa.opens(&format!("{base}/measure")).await;
        page.must_see("Why is it not measured?");
        let first = page.all(".measure-point:not([hidden]) .letter")[0].clone();
        let page = hoa.sends_and_opens(shown(&page).set("skip", "damaged")).await;
        assert_ne!(page.all(".measure-point:not([hidden]) .letter")[0], first, "on to the next");
        page.must_see("9 missing");
        let back = hoa.opens(&format!("{base}/measure?point=point-a")).await;
        back.must_see("Left out: The piece is damaged here");
        hoa.sends(shown(&back).set("skip", "no-such-reason")).await.must_be(StatusCode::BAD_REQUEST);

        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.opens(&base).await;
        page.must_see("The piece is damaged here");
        page.must_see("Point left out");
        page.must_see("9");
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        linh.opens(&base).await.must_see("Measure the pieces: 9 values are missing.");
        iris.opens(&format!("{}/ledger", site.style)).await.must_see(
            "Hoa left out A Chest width, piece 1 of round 1 (Proto): The piece is damaged here.",
        );
        // A value takes its place.
        let page = hoa.sends_and_opens(shown(&back).set("value", "21 1/2")).await;
        page.must_see("9 missing");
        hoa.opens(&format!("{base}/measure?point=point-a")).await;
        assert!(!iris.opens(&base).await.all("td.dev").iter().any(|it| it.contains("damaged")));
    }
}

on_both! {
    async fn a_washed_piece_says_what_the_pattern_needs(db) {
        let site = Site::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &site.cast;
        brand.edits(|spec| set_base(spec, "point-c", "28")).await;
        brand.publishes("A round number").await.unwrap();
        let round = in_work(&site.cast, 1).await;
        let base = base(&site, &round);
        sao_mai.measures(&round, &[(1, "point-c", "25")]).await.unwrap();
        let mut hoa = site.browser(&sao_mai.hands).await;
        let page = hoa.opens(&base).await;
        let page = hoa.opens(&page.link("Measure: After washing")).await;
        page.must_see("Piece 1 · M · After washing");
        assert!(page.all(".measure-skip").is_empty(), "nothing is due in this state");
        let page = hoa.opens(&format!("{base}/measure?wash=after&point=point-c")).await;
        // 25 in − 4 %.
        hoa.sends(shown(&page).set("value", "24")).await.goes_to();
        let page = hoa.opens(&base).await;
        page.must_see("−4 % by washing. Make the pattern × 1.0417 there.");
        page.must_see("C Body length");
        assert!(page.all("td.dev").iter().all(|it| !it.contains("24 ")), "it is not judged");
        hoa.visits(&format!("{base}/measure?wash=before")).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn photographs_of_a_piece_are_added_and_seen_by_both(db) {
        let site = Site::with_revision(db).await;
        let round = in_work(&site.cast, 1).await;
        let base = base(&site, &round);
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let to = format!("{base}/photographs");
        let form = hoa.opens(&base).await.form(&to);
        let page = hoa.sends(form.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose or take a photograph.");
        let broken = form.clone().attach("photos", "note.txt", b"no picture");
        hoa.sends(broken).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        let photo = inputs::phone_jpeg(&inputs::halves(600, 400), 6);
        let twice = form.attach("photos", "front.jpg", &photo).attach("photos", "same.jpg", &photo);
        let page = hoa.sends_and_opens(twice).await;
        page.must_see("The photographs are there.");
        assert_eq!(page.attributes("#photographs img", "src").len(), 1, "one picture, chosen twice");
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.opens(&base).await;
        page.must_see("Factory, Hoa");
        let picture = page.attributes("#photographs img", "src");
        iris.opens(&picture[0]).await.must_be(StatusCode::OK);
        site.cast.brand.decides(&round, fellseam::exchange::round::Outcome::Cancelled, "No", &[]).await.unwrap();
        assert!(!hoa.opens(&base).await.has_form(&to), "nothing is added to what was decided");
    }
}

on_both! {
    async fn every_value_is_saved_side_by_side_or_none_is(db) {
        let site = Site::with_revision(db).await;
        let round = in_work(&site.cast, 2).await;
        let base = base(&site, &round);
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let (page, form) = readings(&mut hoa, &base).await;
        page.must_see("An emptied field keeps the value that is there.");
        let typed = form.clone().set("v-1-point-c", "28 3/8").set("v-2-point-c", "twenty");
        let again = hoa.sends(typed.clone()).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see("Nothing was saved. Look at the marked values.");
        assert_eq!(again.form(&format!("{base}/readings")).value("v-1-point-c"), "28 3/8");
        assert!(site.cast.brand.round(&round).await.measurements.is_empty());

        // A slip is asked about, and saved when it is answered for just these values.
        let typed = typed.set("v-2-point-c", "57");
        let again = hoa.sends(typed).await;
        again.must_see("Piece 2, C: 57 in is about twice the spec.");
        let form = again.form(&format!("{base}/readings"));
        let answer = again.attributes("button[name=anyway]", "value")[0].clone();
        let other = form.clone().set("v-2-point-c", "56 7/8").set("anyway", &answer);
        hoa.sends(other).await.must_see("about twice the spec");
        let agreed = form.set("anyway", &answer);
        let to = hoa.sends(agreed.clone()).await.goes_to();
        assert_eq!(to, format!("{base}?said=measured"));
        assert_eq!(site.cast.brand.round(&round).await.measurements.len(), 2);
        // The form once more, as a browser sends it after going back.
        hoa.sends(agreed).await.goes_to();
        assert_eq!(site.cast.brand.round(&round).await.measurements.len(), 2);
        let (_, form) = readings(&mut hoa, &base).await;
        let form = form.set("v-1-point-c", "").set("v-1-point-a", "21 1/4");
        hoa.sends(form).await.goes_to();
        let seen = site.cast.brand.round(&round).await;
        assert_eq!(seen.measurements.len(), 3, "what was emptied stays as it was");
    }
}

on_both! {
    async fn values_are_pasted_or_read_from_a_sheet_to_be_looked_at_first(db) {
        let site = Site::with_revision(db).await;
        let round = in_work(&site.cast, 3).await;
        let base = base(&site, &round);
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let (_, form) = readings(&mut hoa, &base).await;
        let to = format!("{base}/readings");
        let fills = form.clone().set("do", "fill");
        hoa.sends(fills.clone()).await.must_see("Paste values, or choose a file.");
        let page = hoa.sends(fills.clone().set("pasted", "Zip\t3")).await;
        page.must_see("No row begins with the letter or the name of a point");

        let sheet = "\tSpec\t2\t3\nC\t28 1/2\t28 3/8\t28 5/8\nHood\t\t1\t2\n";
        let page = hoa.sends(fills.clone().set("pasted", sheet)).await;
        page.must_be(StatusCode::OK);
        page.must_see("2 values were put into their fields.");
        page.must_see("A3: “Hood” is no point of this chart");
        page.must_see("Nothing is saved yet.");
        let filled = page.form(&to);
        assert_eq!(filled.value("v-2-point-c"), "28 3/8");
        assert_eq!(filled.value("v-3-point-c"), "28 5/8");
        assert!(site.cast.brand.round(&round).await.measurements.is_empty());
        hoa.sends(filled).await.goes_to();
        assert_eq!(site.cast.brand.round(&round).await.measurements.len(), 2);

        // A file, whose column goes to the chosen piece.
        let file = fills.set("first", "3").attach("file", "floor.csv", b"Body length;29\n");
        let page = hoa.sends(file).await;
        page.must_see("1 value was put into its field.");
        assert_eq!(page.form(&to).value("v-3-point-c"), "29");
        let mut tam = site.browser(&site.cast.meghna.hands).await;
        tam.visits(&to).await.must_be(StatusCode::NOT_FOUND);
    }
}
