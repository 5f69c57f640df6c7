//! One style, shared, agreed upon, withdrawn.

use axum::http::StatusCode;
use fellseam::exchange::round::Outcome;
use fellseam::store::ThreadMove;

use crate::pages::Site;
use crate::support::cast::measured_round;
use crate::support::database::on_both;

on_both! {
    async fn a_factory_sees_what_is_published_and_nothing_of_a_draft(db) {
        let site = Site::with_revision(db).await;
        site.cast.brand.edits(|spec| spec.header.name = "Shoal quarter-zip".to_owned()).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&site.style).await;
        page.must_be(StatusCode::OK);
        page.must_see("Shoal quarter-zip");
        page.must_see("The draft is not the same as the newest revision");
        page.must_see("Shared with");
        assert!(!page.link("Points of measure").is_empty());

        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&site.style).await;
        page.must_be(StatusCode::OK);
        page.must_see("Shoal half-zip");
        page.must_see("Revision 1 · Current");
        for word in ["quarter-zip", "Draft", "Shared with", "Meghna", "Points of measure"] {
            assert!(!page.sees(word), "{word}: {}", page.reads());
        }
        assert!(page.forms().iter().all(|form| form.action == "/sign-out"));
    }
}

on_both! {
    async fn a_style_is_shared_and_a_share_ends(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        rafiq.visits(&site.style).await.must_be(StatusCode::NOT_FOUND);

        let share = format!("{}/share", site.style);
        let page = iris.visits(&site.style).await;
        let offered = page.form(&share);
        assert_eq!(offered.value("factory"), site.cast.meghna.org.as_str());
        let page = iris.sends_and_opens(offered).await;
        page.must_see("Meghna Knit Works");
        assert!(!page.has_form(&share), "there is no other factory");
        let page = rafiq.visits(&site.style).await;
        page.must_be(StatusCode::OK);
        assert!(!page.sees("Sao Mai"));

        let unshare = format!("{}/unshare", site.style);
        let meghna = site.cast.meghna.org.as_str();
        iris.posts(&unshare, &[("factory", meghna)]).await.must_be(StatusCode::SEE_OTHER);
        rafiq.visits(&site.style).await.must_be(StatusCode::NOT_FOUND);
        let page = iris.visits(&site.style).await;
        page.must_see("ended 2026-03-02");
        let sao_mai = page.form(&unshare);
        assert_eq!(sao_mai.value("factory"), site.cast.sao_mai.org.as_str());

        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let page = oscar.visits(&site.style).await;
        page.must_be(StatusCode::OK);
        assert!(!page.has_form(&unshare) && !page.has_form(&share));
        oscar.posts(&unshare, &[("factory", meghna)]).await.must_be(StatusCode::FORBIDDEN);
    }
}

on_both! {
    async fn the_page_tells_who_agreed_and_whose_move_is_next(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.sao_mai.acknowledges(1).await.unwrap();
        cast.sao_mai.signs_revision(1).await.unwrap();
        let asked = cast.sao_mai.asks("point-c", "Is this with the rib?").await.unwrap();
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &[(1, "point-c", "20")]).await;

        let mut iris = site.browser(&cast.brand.lead).await;
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let page = iris.visits(&site.style).await;
        page.must_see("Signed by the factory Acknowledged by Linh, 2026-03-02 Signed for the factory by Linh, 2026-03-02");
        page.must_see("Is this with the rib? Sao Mai Garment open you");
        page.must_see("Proto, round 1 Sao Mai Garment 1 measured you");
        let page = linh.visits(&site.style).await;
        page.must_see("Is this with the rib? open the brand");
        page.must_see("Proto, round 1 1 measured the brand");
        assert_eq!(page.link("Proto, round 1"), format!("{}/rounds/{round}", site.style));

        cast.brand.says(&asked, "Without.").await.unwrap();
        let page = linh.visits(&site.style).await;
        page.must_see("Is this with the rib? answered you");
        cast.sao_mai.moves(&asked, ThreadMove::Close).await.unwrap();
        cast.brand.decides(&round, Outcome::Remake, "Cut anew", &[]).await.unwrap();
        let page = iris.visits(&site.style).await;
        page.must_see("Nothing is open.");
        page.must_see("Proto, round 1 Sao Mai Garment 1 remake");
    }
}

on_both! {
    async fn an_owner_withdraws_a_revision_with_a_reason_and_nobody_else(db) {
        let site = Site::with_revision(db).await;
        let path = format!("{}/revisions/1/withdraw", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        assert!(!iris.visits(&site.style).await.has_form(&path));
        let why = [("reason", "The zip is too short")];
        iris.posts(&path, &why).await.must_be(StatusCode::FORBIDDEN);
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        linh.posts(&path, &why).await.must_be(StatusCode::NOT_FOUND);

        let mut nell = site.browser(&site.cast.brand.owner).await;
        let form = nell.visits(&site.style).await.form(&path);
        let page = nell.sends(form.clone().set("reason", "  ")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("#withdraw-reason-error").len(), 1);
        linh.visits(&site.style).await.must_see("Revision 1 · Current");

        let page = nell.sends_and_opens(form.set("reason", "The zip is too short")).await;
        page.must_see("Revision 1 · Withdrawn");
        assert!(!page.has_form(&path));
        let page = linh.visits(&site.style).await;
        page.must_see("Stop. Do not work from it: The zip is too short");
        nell.posts(&path, &why).await.must_be(StatusCode::CONFLICT);
        nell.posts(&format!("{}/revisions/9/withdraw", site.style), &why).await.must_be(StatusCode::NOT_FOUND);
    }
}
