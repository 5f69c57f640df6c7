//! Checking and publishing a draft.

use axum::http::StatusCode;
use fellseam::exchange::thread::State;
use fellseam::spec::DecimalSign;
use fellseam::store::ThreadMove;

use crate::pages::Site;
use crate::support::cast::{inches, set_base};
use crate::support::database::on_both;

on_both! {
    async fn a_draft_with_errors_is_not_published(db) {
        let site = Site::new(db).await;
        let publish = format!("{}/publish", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let ready = iris.visits(&publish).await;
        ready.must_see("Nothing has to be mended.");
        let form = ready.form(&publish).set("reason", "First issue");

        site.cast.brand.edits(|spec| spec.points.points[2].base = None).await;
        let page = iris.visits(&publish).await;
        page.must_be(StatusCode::OK);
        page.must_see("1 error keeps the draft from being published.");
        page.must_see("C Body length: the value at the base size is missing.");
        assert_eq!(page.link("Open it"), format!("{}/draft/points#point-c.base", site.style));
        assert!(page.all("main form button").is_empty(), "there is nothing to press");

        let points = page.form(&publish).value("points.version").to_owned();
        let page = iris.sends(form.set("points.version", &points)).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("It was not published");
        page.must_see("C Body length: the value at the base size is missing.");
        assert_eq!(site.cast.brand.reads_newest().await, 0);
    }
}

on_both! {
    async fn a_revision_is_published_with_its_reason_and_its_decimal_sign(db) {
        let site = Site::new(db).await;
        let brand = &site.cast.brand;
        let publish = format!("{}/publish", site.style);
        let mut iris = site.browser(&brand.lead).await;
        let form = iris.visits(&publish).await.form(&publish);
        assert_eq!(form.value("decimal"), "point");
        let page = iris.sends(form.clone().set("decimal", "comma")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("#reason-error").len(), 1);
        assert_eq!(page.form(&publish).value("decimal"), "comma");
        let page = iris.sends_and_opens(form.set("decimal", "comma").set("reason", "First issue")).await;
        page.must_see("Revision 1 · Current");
        page.must_see("First issue");
        assert_eq!(brand.revision(1).await.frozen.decimal, DecimalSign::Comma);

        // The next one begins with the same sign, and there is nothing to publish yet.
        let page = iris.visits(&publish).await;
        page.must_see("The draft says the same as revision 1.");
        let form = page.form(&publish);
        assert_eq!(form.value("decimal"), "comma");
        let page = iris.sends(form.set("reason", "Again")).await;
        page.must_be(StatusCode::CONFLICT);
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let page = iris.visits(&publish).await;
        page.must_see("Changes since revision 1");
        page.must_see("28 3/4");
        let form = page.form(&publish).set("reason", "Longer");
        iris.sends_and_opens(form).await.must_see("Revision 2 · Current");
        assert_eq!(brand.revision(2).await.frozen.reason, "Longer");
    }
}

on_both! {
    async fn a_warning_is_published_only_with_a_reason_which_the_next_page_remembers(db) {
        let site = Site::new(db).await;
        let brand = &site.cast.brand;
        let publish = format!("{}/publish", site.style);
        brand.edits(|spec| spec.points.points[0].step = Some(inches("1"))).await;
        let mut iris = site.browser(&brand.lead).await;
        let page = iris.visits(&publish).await;
        page.must_see("Is this meant?");
        let form = page.form(&publish).set("reason", "First issue");
        let field = "step-coarse.point-a.reason";
        assert_eq!(form.value(field), "");
        let page = iris.sends(form.clone().set(field, " ")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(page.all("#step-coarse\\.point-a\\.reason\\.error").len(), 1);
        assert_eq!(page.form(&publish).value("reason"), "First issue");
        let page = iris.sends(form.set(field, "The cloth moves more")).await;
        page.must_be(StatusCode::SEE_OTHER);
        let accepted = &brand.revision(1).await.frozen.accepted;
        let reasons: Vec<_> = accepted.iter().map(|it| (it.code.as_str(), it.reason.as_str())).collect();
        assert!(reasons.contains(&("step-coarse", "The cloth moves more")), "{reasons:?}");

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let page = iris.visits(&publish).await;
        assert_eq!(page.form(&publish).value(field), "The cloth moves more");
    }
}

on_both! {
    async fn what_somebody_saved_in_between_is_not_published_unread(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        let publish = format!("{}/publish", site.style);
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let mut iris = site.browser(&brand.lead).await;
        let form = iris.visits(&publish).await.form(&publish).set("reason", "Longer");
        brand.edits(|spec| set_base(spec, "point-d", "30")).await;

        let page = iris.sends(form).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("It was not published");
        page.must_see("Saved since you opened the page: Points of measure");
        assert_eq!(brand.reads_newest().await, 1);
        // The page that comes back shows what moved, and keeps what was typed.
        page.must_see("30");
        let form = page.form(&publish);
        assert_eq!(form.value("reason"), "Longer");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(brand.reads_newest().await, 2);
    }
}

on_both! {
    async fn an_agreed_must_fix_has_to_be_changed(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        let fix = brand.insists(&site.cast.sao_mai, "point-c", "One inch longer").await.unwrap();
        site.cast.sao_mai.moves(&fix, ThreadMove::Agree).await.unwrap();
        brand.edits(|spec| set_base(spec, "point-d", "30")).await;
        let publish = format!("{}/publish", site.style);
        let mut iris = site.browser(&brand.lead).await;
        let page = iris.visits(&publish).await;
        page.must_see("C Body length not changed yet");
        let page = iris.sends(page.form(&publish).set("reason", "Wider")).await;
        page.must_be(StatusCode::CONFLICT);
        assert!(page.link("Open thread 1").ends_with(&format!("/threads/{fix}")));

        brand.edits(|spec| set_base(spec, "point-c", "29")).await;
        let page = iris.visits(&publish).await;
        page.must_see("C Body length changed");
        iris.sends(page.form(&publish).set("reason", "Longer")).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(brand.state_of(&fix).await, State::Changed { revision: 2 });
    }
}
