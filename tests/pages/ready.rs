//! Ready sentences: one side chooses, each reads its own language.

use axum::http::StatusCode;
use fellseam::language::Language;

use crate::pages::{Browser, Site};
use crate::support::database::on_both;

/// Chooses the reader's language on their own page.
async fn speaks(browser: &mut Browser, language: Language) {
    let form = browser.visits("/me").await.form("/me");
    let form = form.set("language", language.tag());
    browser.sends(form).await.must_be(StatusCode::SEE_OTHER);
}

on_both! {
    async fn a_question_is_asked_and_answered_without_a_word_in_common(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        speaks(&mut linh, Language::Vietnamese).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;

        // From the item's page to the list, and one press sends it.
        let item = format!("{}/revisions/1/items/point-c", site.style);
        let ready = format!("{item}/ready");
        let page = linh.visits(&item).await;
        assert!(page.attributes("a.button", "href").contains(&ready));
        let page = linh.visits(&ready).await;
        page.must_see("Hãy gửi ảnh C Body length");
        let mut forms = page.forms().into_iter();
        let form = forms.rfind(|form| form.value("phrase") == "ask-photo");
        linh.sends(form.expect("it needs nothing more")).await.must_be(StatusCode::SEE_OTHER);

        let threads = site.cast.brand.threads().await;
        let [thread] = &threads[..] else { panic!("one thread") };
        let message = &thread.messages[0];
        assert_eq!(message.language, "zxx");
        let form = "{\"phrase\":\"ask-photo\",\"slots\":{\"item\":{\"item\":\"point-c\"}}}";
        assert_eq!(message.text.as_deref(), Some(form), "what is hashed is no sentence");
        iris.visits(&item).await.must_see("Please send a photo of C Body length.");
        iris.visits(&site.style).await.must_see("Please send a photo of C Body length.");
        linh.visits(&item).await.must_see("Hãy gửi ảnh C Body length");

        // The answer is filled in.
        let list = format!("{}/threads/{}/ready", site.style, thread.facts.id);
        let page = iris.visits(&format!("{list}?phrase=answer-value")).await;
        let form = page.form(&list);
        assert_eq!(form.value("item"), "point-c");
        assert_eq!(form.value("size"), "size-m", "the base size is proposed");
        let wrong = iris.sends(form.clone().set("value", "long")).await;
        wrong.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        wrong.must_see("“long” is not a measurement.");
        iris.sends(form.set("value", "28 1/2")).await.must_be(StatusCode::SEE_OTHER);
        iris.visits(&item).await.must_see("C Body length, size M: the right value is 28 1/2 in.");
        linh.visits(&item).await.must_see("cỡ M: số đo đúng là 28 1/2 in.");
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        rafiq.visits(&list).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn what_does_not_fit_is_not_sent(db) {
        let site = Site::with_revision(db).await;
        let thread = site.cast.sao_mai.asks("point-c", "How?").await.unwrap();
        let list = format!("{}/threads/{thread}/ready", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let unprocessable = StatusCode::UNPROCESSABLE_ENTITY;
        for (fields, status) in [
            (vec![("phrase", "sing")], StatusCode::BAD_REQUEST),
            (vec![("phrase", "date-ready"), ("date", "2026-02-30")], unprocessable),
            (vec![("phrase", "ask-photo"), ("item", "nothing")], unprocessable),
            (vec![("phrase", "material-none"), ("material", "point-c")], unprocessable),
            (vec![("phrase", "answer-changed"), ("revision", "7")], unprocessable),
            (vec![("phrase", "ship-cartons"), ("count", "many")], unprocessable),
            (vec![("phrase", "ship-cartons")], unprocessable),
        ] {
            let page = iris.posts(&list, &fields).await;
            assert_eq!(page.status, status, "{fields:?}: {}", page.reads());
        }
        assert_eq!(site.cast.brand.thread(&thread).await.messages.len(), 1);

        // An answer is no question, and only the brand insists.
        let new = format!("{}/revisions/1/items/point-c/ready", site.style);
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        for phrase in ["answer-yes", "fix-twisted"] {
            let page = linh.posts(&new, &[("phrase", phrase), ("item", "point-c")]).await;
            page.must_be(StatusCode::BAD_REQUEST);
        }
    }
}

on_both! {
    async fn the_brand_insists_by_a_sentence(db) {
        let site = Site::with_revision(db).await;
        let new = format!("{}/revisions/1/items/point-c/ready", site.style);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.visits(&format!("{new}?phrase=fix-large")).await;
        page.must_see("Sao Mai Garment");
        let form = page.form(&new).set("value", "3/8");
        iris.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let threads = site.cast.sao_mai.threads().await;
        assert_eq!(threads[0].facts.kind, fellseam::exchange::thread::Kind::MustFix);
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        speaks(&mut linh, Language::Bengali).await;
        let item = format!("{}/revisions/1/items/point-c", site.style);
        linh.visits(&item).await.must_see("3/8 in বড়। স্পেকে আনুন।");
    }
}
