//! People and invitations.

use axum::http::StatusCode;

use crate::pages::Site;
use crate::support::database::on_both;

on_both! {
    async fn an_invited_person_comes_in_by_a_link_that_looking_does_not_spend(db) {
        let site = Site::new(db).await;
        let mut owner = site.browser(&site.cast.brand.owner).await;
        let page = owner.opens("/people").await;
        let form = page.form("/people").set("name", "Thảo");
        let sao_mai = format!("merchandiser {}", site.cast.sao_mai.org);
        let page = owner.sends(form.set("place", &sao_mai)).await;
        page.must_be(StatusCode::OK);
        let link = page.form_value("new-link");
        let path = link.strip_prefix("http://127.0.0.1:8640").expect("an address of ours");

        let mut phone = site.stranger();
        for _ in 0..3 {
            let page = phone.visits(path).await;
            page.must_be(StatusCode::OK);
            page.must_see("This link is for Thảo");
        }
        let join = phone.visits(path).await.form(path);
        let page = phone.sends_and_opens(join.clone().set("name", "Trần Thảo")).await;
        page.must_see("What needs me");
        page.must_see("Trần Thảo");

        let mut thief = site.stranger();
        thief.sends(join).await.must_be(StatusCode::GONE);
        thief.visits(path).await.must_be(StatusCode::GONE);
    }
}

on_both! {
    async fn a_merchandiser_sees_and_invites_only_their_own_people(db) {
        let site = Site::new(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits("/people").await;
        page.must_see("Hoa");
        assert!(!page.sees("Rafiq"));
        let rafiq = &site.cast.meghna.lead.actor.person;
        linh.posts(&format!("/people/{rafiq}/link"), &[]).await.must_be(StatusCode::NOT_FOUND);
        let hoa = &site.cast.sao_mai.hands.actor.person;
        linh.posts(&format!("/people/{hoa}/link"), &[]).await.must_be(StatusCode::OK);
        linh.posts(&format!("/people/{hoa}/end"), &[]).await.must_be(StatusCode::FORBIDDEN);
    }
}
