//! The brand translates what it wrote; a factory reads it beside the original, and a later
//! translation with its day.

use axum::http::StatusCode;

use crate::pages::Site;
use crate::support::cast::set_base;
use crate::support::database::on_both;

on_both! {
    async fn a_factory_reads_the_brands_translation_beside_the_original(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        let mut iris = site.browser(&brand.lead).await;
        let address = format!("{}/translations?in=vi", site.style);
        let page = iris.visits(&address).await;
        page.must_be(StatusCode::OK);
        page.must_see("Tiếng Việt");
        let name = brand.draft().await.0.points.points[0].name.clone();
        let key = key_of(&name);
        let page = iris.sends_and_opens(page.form(&address).set(&key, "Ngang ngực, đo thẳng")).await;
        page.must_see("1 of");
        // Sent again as it is, nothing new is kept.
        let before = brand.ledger().await.len();
        iris.sends(page.form(&address)).await;
        assert_eq!(brand.ledger().await.len(), before);

        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let form = linh.visits("/me").await.form("/me").set("language", "vi");
        linh.sends(form).await;
        let revision = format!("{}/revisions/2", site.style);
        let page = linh.visits(&revision).await;
        page.must_see(&name);
        page.must_see("= Ngang ngực, đo thẳng");
        let item = format!("{revision}/items/point-a");
        linh.visits(&item).await.must_see("= Ngang ngực, đo thẳng");
        // A reader of the original sees the original.
        assert!(!iris.visits(&revision).await.sees("Ngang ngực"));

        let page = iris.visits(&address).await;
        iris.sends(page.form(&address).set(&key, "Vòng ngực nửa")).await;
        for address in [&revision, &item] {
            let page = linh.visits(address).await;
            page.must_see("= Ngang ngực, đo thẳng");
            page.must_see("= Vòng ngực nửa (");
        }
        // Revision 1 was published before either.
        let page = linh.visits(&format!("{}/revisions/1", site.style)).await;
        page.must_see("= Vòng ngực nửa (");
        assert!(!page.sees("đo thẳng"));
    }
}

on_both! {
    async fn of_two_who_translate_at_once_neither_is_lost(db) {
        let site = Site::with_revision(db).await;
        let brand = &site.cast.brand;
        let mut iris = site.browser(&brand.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let address = format!("{}/translations?in=vi", site.style);
        let spec = brand.draft().await.0;
        let [chest, length] = [0, 1].map(|at| key_of(&spec.points.points[at].name));
        let (hers, theirs) = (iris.visits(&address).await, nell.visits(&address).await);
        iris.sends(hers.form(&address).set(&chest, "của Iris")).await;

        // Another text: both stay, though the second page knew nothing of the first.
        nell.sends(theirs.form(&address).set(&length, "của Nell")).await.must_be(StatusCode::SEE_OTHER);
        let page = iris.visits(&address).await;
        let kept = |key: &str| page.form(&address).value(key).to_owned();
        assert_eq!((kept(&chest), kept(&length)), ("của Iris".to_owned(), "của Nell".to_owned()));

        // The same text: the second is told, keeps what was typed, and may put it in its place.
        let again = nell.sends(theirs.form(&address).set(&chest, "cũng của Nell")).await;
        again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        again.must_see("Somebody wrote “của Iris” here in the meantime.");
        assert_eq!(again.form(&address).value(&chest), "cũng của Nell");
        assert_eq!(iris.visits(&address).await.form(&address).value(&chest), "của Iris");
        nell.sends(again.form(&address)).await.must_be(StatusCode::SEE_OTHER);
        assert_eq!(iris.visits(&address).await.form(&address).value(&chest), "cũng của Nell");
    }
}

/// The name of the field of a text, as the page has it.
fn key_of(words: &str) -> String {
    let digest = fellseam::spec::Digest::of(words.as_bytes());
    format!("t-{}", &digest.as_str()[..20])
}

on_both! {
    async fn no_language_that_the_program_does_not_speak(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        for tag in ["xx", "en"] {
            let page = iris.visits(&format!("{}/translations?in={tag}", site.style)).await;
            page.must_be(StatusCode::NOT_FOUND);
        }
    }
}
