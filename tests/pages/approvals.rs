//! Lab dips, strike-offs and trims: submitting options and deciding them, as browsers do.

use axum::http::StatusCode;
use fellseam::exchange::approval::{Anchor, Kind};
use fellseam::spec::Spec;
use fellseam::spec::document::{Cell, Illuminant};

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::{item, lab, pictures};
use crate::support::database::on_both;
use crate::threads::inputs;

fn here(site: &Site) -> String {
    format!("{}/approvals", site.style)
}

/// The spec says what the ink colour measures.
fn measured(spec: &mut Spec) {
    let row = spec.colourways.cells.get_mut(&item("colourway-ink"));
    let cell = row.and_then(|row| row.get_mut(&item("part-1")));
    let Some(Cell::Colour(colour)) = cell else {
        panic!("the ink colour");
    };
    colour.lab = Some(lab("20", Illuminant::D65));
}

/// The half-zip whose ink colour has a reading, and a photograph of a dip.
async fn site_with_reading(db: fellseam::store::Db) -> (Site, Vec<u8>) {
    let site = Site::new(db).await;
    site.cast.brand.edits(measured).await;
    site.cast.brand.publishes("First issue").await.unwrap();
    site.cast
        .brand
        .shares_with(&site.cast.sao_mai)
        .await
        .unwrap();
    (site, inputs::phone_jpeg(&inputs::halves(600, 400), 6))
}

/// The form that submits an option for this item.
fn submitting(page: &Page, of: &str) -> FormOf {
    let forms = page.forms().into_iter();
    let mut forms = forms.filter(|form| form.action.ends_with("/approvals"));
    forms
        .find(|form| form.value("item") == of)
        .unwrap_or_else(|| panic!("no form for {of}:\n{}", page.reads()))
}

fn deciding(page: &Page) -> FormOf {
    let mut forms = page.forms().into_iter();
    let form = forms.find(|form| form.action.ends_with("/decide"));
    form.unwrap_or_else(|| panic!("nothing to decide:\n{}", page.reads()))
}

fn with_reading(form: FormOf, l: &str, light: &str) -> FormOf {
    let form = form.set("l", l).set("a", "1").set("b", "-12");
    let form = form.set("illuminant", light).set("observer", "10");
    form.set("instrument", "Bay 300, sphere")
}

async fn things(browser: &mut Browser, site: &Site) -> Page {
    let page = browser.opens(&here(site)).await;
    page.must_be(StatusCode::OK);
    page
}

on_both! {
    async fn a_lab_dip_walks_from_its_first_option_to_the_approval(db) {
        let (site, photo) = site_with_reading(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let style = linh.opens(&site.style).await;
        let page = linh.opens(&style.link("Approvals")).await;
        page.must_see("Next: Sao Mai Garment submits an option.");
        page.must_see("The spec says L* 20 a* 1 b* −12 (D65, 10° observer)");
        assert_eq!(page.all("article.panel").len(), 5);

        // A photograph is asked for; half a reading is none.
        let form = submitting(&page, "part-1").set("note", "First bath");
        let page = linh.sends(form.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Add a photograph");
        let half = form.clone().set("l", "26").attach("photos", "dip.jpg", &photo);
        let page = linh.sends(half).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose one.");
        let again = submitting(&page, "part-1");
        assert_eq!((again.value("note"), again.value("l")), ("First bath", "26"));

        let form = with_reading(again, "26", "d65").attach("photos", "dip.jpg", &photo);
        let page = linh.sends_and_opens(form).await;
        page.must_see("Option A");
        page.must_see("Next: Brand decides.");
        page.must_see("▲ Over the limit (CMC(2:1), at most 1)");
        let shown = page.attributes(".photo img", "src");
        linh.visits(&shown[0]).await.must_be(StatusCode::OK);

        iris.opens("/").await.must_see("Decide on what was submitted to be approved: 1");
        let page = things(&mut iris, &site).await;
        page.must_see("Bay 300, sphere");
        let form = deciding(&page).set("verdict", "rejected");
        let page = iris.sends(form.clone()).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Write a reason.");
        iris.sends_and_opens(form.set("reason", "Too light")).await.must_see("Too light");

        let page = things(&mut linh, &site).await;
        page.must_see("rejected");
        let form = with_reading(submitting(&page, "part-1"), "26.5", "d65");
        linh.sends_and_opens(form.attach("photos", "dip.jpg", &photo)).await.must_see("Option B");
        let page = things(&mut iris, &site).await;
        let page = iris.sends_and_opens(deciding(&page).set("verdict", "approved")).await;
        page.must_see("Option B is approved.");
        page.must_see("Approved although over the limit.");
        assert!(!page.sees("Rejected although"), "A was over it, too");
    }
}

on_both! {
    async fn readings_that_are_not_alike_are_not_compared(db) {
        let (site, photo) = site_with_reading(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = things(&mut linh, &site).await;
        let form = with_reading(submitting(&page, "part-1"), "20", "a");
        let page = linh.sends_and_opens(form.attach("photos", "dip.jpg", &photo)).await;
        page.must_see("One was measured under D65, the other under A: such readings cannot be compared.");
        assert!(!page.sees("the limit ("), "so it neither passes nor fails");
        // The sand of the rib has no reading in the spec.
        let form = with_reading(submitting(&page, "part-2"), "80", "d65");
        let page = linh.sends_and_opens(form.attach("photos", "dip.jpg", &photo)).await;
        page.must_see("The spec has no reading of this colour: there is nothing to compare with.");
        let form = with_reading(submitting(&page, "part-1"), "20.2", "d65");
        let page = linh.sends_and_opens(form.attach("photos", "dip.jpg", &photo)).await;
        page.must_see("Within the limit (CMC(2:1), at most 1)");
        let zip = submitting(&page, "material-zip");
        assert_eq!(zip.value("l"), "", "a zip is not read");
    }
}

on_both! {
    async fn an_owner_sets_the_limit_for_all(db) {
        let (site, photo) = site_with_reading(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = things(&mut linh, &site).await;
        page.must_see("The brand has set none: this one is common practice, no source.");
        let form = with_reading(submitting(&page, "part-1"), "20.5", "d65");
        linh.sends_and_opens(form.attach("photos", "dip.jpg", &photo)).await.must_see("Within the limit");
        let limit = format!("{}/limit", here(&site));
        assert!(!things(&mut iris, &site).await.has_form(&limit));
        let form = things(&mut nell, &site).await.form(&limit);
        for wrong in ["", "0", "-1", "much"] {
            let page = nell.sends(form.clone().set("most", wrong)).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        }
        let form = form.set("formula", "CIEDE2000").set("most", "0,3");
        nell.sends_and_opens(form).await.must_see("CIEDE2000, at most 0.3");
        things(&mut linh, &site).await.must_see("▲ Over the limit (CIEDE2000, at most 0.3)");
    }
}

on_both! {
    async fn the_brand_chooses_the_factory_and_a_factory_sees_itself(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let wave = cast.sao_mai.to_approve().await.into_iter();
        let wave: Vec<Anchor> = wave.filter(|it| it.kind == Kind::StrikeOff).collect();
        let photo = cast.sao_mai.photographs("strike-off").await;
        for picture in pictures(&photo) {
            site.files.put(format!("{photo} {} pixels wide", picture.width)).await.unwrap();
        }
        let photos = [photo.clone()];
        let option = cast.sao_mai.submits_with(&wave[0], "On loopback", None, &photos).await.unwrap();
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = things(&mut iris, &site).await;
        let other = page.link("Sao Mai Garment");
        assert!(!page.sees("On loopback"), "Meghna comes first by its name");
        iris.opens(&other).await.must_see("On loopback");

        let mut rafiq = site.browser(&cast.meghna.lead).await;
        for path in [here(&site), format!("{}?with={}", here(&site), cast.sao_mai.org)] {
            let page = rafiq.opens(&path).await;
            assert!(!page.sees("On loopback") && !page.sees("Sao Mai"));
        }
        let picture = format!("{}/files/{photo}/320", site.style);
        rafiq.visits(&picture).await.must_be(StatusCode::NOT_FOUND);
        iris.visits(&picture).await.must_be(StatusCode::OK);
        let decide = format!("{}/{option}/decide", here(&site));
        rafiq.posts(&decide, &[("verdict", "approved")]).await.must_be(StatusCode::NOT_FOUND);
        let mut hoa = site.browser(&cast.sao_mai.hands).await;
        assert!(!things(&mut hoa, &site).await.has_form(&here(&site)), "the floor reads");
    }
}

on_both! {
    async fn a_stale_form_is_refused_with_the_way_on(db) {
        let (site, photo) = site_with_reading(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let form = submitting(&things(&mut linh, &site).await, "material-zip");
        let form = form.attach("photos", "zip.jpg", &photo);
        linh.sends_and_opens(form.clone()).await.must_see("Option A");
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let option = deciding(&things(&mut iris, &site).await);
        iris.sends_and_opens(option.clone().set("verdict", "approved")).await;
        let page = iris.sends(option.set("verdict", "approved")).await;
        page.must_see("This option is decided already: approved.");

        site.cast.brand.edits(|spec| spec.materials.materials[2].zip.puller = "metal".to_owned()).await;
        site.cast.brand.publishes("Metal puller").await.unwrap();
        let page = linh.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This is not the current revision. Revision 2 is.");
        page.must_see("changed since it was approved");
        page.must_see("Made for what revision 1 said, which has changed since");
    }
}
