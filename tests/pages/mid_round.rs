//! A revision that is published while a round is under way.

use axum::http::StatusCode;

use crate::pages::Site;
use crate::rounds::Samples;
use crate::support::cast::set_base;
use crate::support::database::on_both;

on_both! {
    async fn a_revision_in_mid_round_asks_the_brand_to_continue_or_restart(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        let brand = &site.cast.brand;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let mut iris = site.browser(&brand.lead).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.opens(&round.base).await;
        page.must_see("Revision 2 exists. These samples are made to revision 1. The brand says whether they go on.");
        assert!(!page.has_form(&format!("{}/continue", round.base)));
        linh.posts(&format!("{}/continue", round.base), &[]).await.must_be(StatusCode::NOT_FOUND);
        let page = round.presses(&mut iris, "continue", "").await;
        assert!(!page.sees("Revision 2 exists."));
        page.must_see("goes on with these samples. Revision 2 does not change them.");

        brand.edits(|spec| set_base(spec, "point-c", "29")).await;
        brand.publishes("Longer still").await.unwrap();
        let page = iris.opens(&round.base).await;
        let form = page.form(&format!("{}/restart", round.base));
        assert_eq!(form.value("revision"), "3");
        let page = iris.sends_and_opens(form.clone()).await;
        page.must_see("Proto, sample round 2");
        page.must_see("Sao Mai Garment starts the work next.");
        page.must_see("Revision 3");
        iris.opens(&round.base).await.must_see("Restarted with revision 3.");
        // Pressed twice, it is not done twice.
        iris.sends(form).await.must_be(StatusCode::CONFLICT);
        assert_eq!(brand.rounds().await.len(), 2);
    }
}
