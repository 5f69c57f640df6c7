//! The ledger as each side reads it.

use axum::http::StatusCode;
use fellseam::exchange::round::Outcome;
use fellseam::store::ThreadMove;

use crate::pages::Site;
use crate::support::cast::{measured_round, set_base};
use crate::support::database::on_both;

on_both! {
    async fn every_act_is_a_sentence_newest_first_and_a_factory_reads_its_own_part(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        cast.brand.shares_with(&cast.meghna).await.unwrap();
        let asked = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let photo = cast.sao_mai.photographs("the rib").await;
        cast.sao_mai.sends(&asked, "Like this", std::slice::from_ref(&photo)).await.unwrap();
        cast.brand.says(&asked, "Without").await.unwrap();
        cast.sao_mai.moves(&asked, ThreadMove::Close).await.unwrap();
        cast.sao_mai.acknowledges(1).await.unwrap();
        cast.sao_mai.signs_revision(1).await.unwrap();
        let typed = [(1, "point-c", "26 1/2"), (1, "point-a", "21 1/2"), (1, "point-d", "17")];
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &typed).await;
        cast.brand.decides(&round, Outcome::ApprovedWithChanges, "Nearly", &[("point-c", "Longer")]).await.unwrap();
        cast.brand.signs_round(&round).await.unwrap();
        cast.meghna.asks("point-a", "Which thread?").await.unwrap();
        let fix = cast.brand.threads().await.into_iter().find(|it| it.round.is_some()).unwrap();
        cast.sao_mai.moves(&fix.facts.id, ThreadMove::Agree).await.unwrap();
        cast.brand.edits(|spec| set_base(spec, "point-c", "29")).await;
        cast.brand.publishes("Longer body").await.unwrap();
        cast.brand.withdraws(2, "The wrong zip").await.unwrap();
        cast.brand.ends_share_with(&cast.meghna).await.unwrap();

        let path = format!("{}/ledger", site.style);
        let mut iris = site.browser(&cast.brand.lead).await;
        let page = iris.visits(&path).await;
        page.must_be(StatusCode::OK);
        assert!(!page.text().contains("{$"), "{}", page.reads());
        let all = page.all("ol.ledger > li > div > p:first-child");
        let expected = [
            "Iris ended the share with Meghna Knit Works.",
            "Nell withdrew revision 2.",
            "Iris carried the must-fix on C Body length into revision 2.",
            "Iris published revision 2.",
            "Linh agreed to the must-fix on C Body length.",
            "Rafiq raised a question on A Chest width, revision 1.",
            "Iris signed round 1 (Proto).",
            "Iris raised a must-fix on C Body length, revision 1.",
            "Iris decided round 1 (Proto): approved with changes.",
            "Iris finished measuring round 1 (Proto).",
            "Iris received the pieces of round 1 (Proto).",
            "Linh sent the pieces of round 1 (Proto).",
            "Hoa measured 3 values in round 1 (Proto).",
            "Linh started round 1 (Proto).",
            "Iris asked for round 1 (Proto): 1 piece, made to revision 1.",
            "Linh signed revision 1.",
            "Linh acknowledged revision 1.",
            "Linh closed the question on C Body length.",
            "Iris wrote in the question on C Body length.",
            "Linh wrote in the question on C Body length, with a photograph.",
            "Linh raised a question on C Body length, revision 1.",
            "Iris shared the style with Meghna Knit Works.",
            "Iris shared the style with Sao Mai Garment.",
            "Iris published revision 1.",
            "Iris started the style.",
        ];
        assert_eq!(all, expected);
        page.must_see("Hoa measured 26 1/2 in at C Body length, piece 1 of round 1 (Proto).");
        for quote in ["Longer body", "The wrong zip", "Nearly", "First issue"] {
            assert!(page.all("ol.ledger q").iter().any(|it| it == quote), "{quote}");
        }
        let head = cast.store.head(&cast.brand.reads().await).await.unwrap();
        page.must_see(&format!("Hash of the last one {}", head.hash.fingerprint()));
        page.must_see("For the brand only");
        page.must_see("Harrow & Tide · With Meghna Knit Works");

        let mut hoa = site.browser(&cast.sao_mai.hands).await;
        let page = hoa.visits(&path).await;
        page.must_be(StatusCode::OK);
        let own = page.all("ol.ledger > li > div > p:first-child");
        let concerns = |it: &&&str| !it.contains("Meghna") && !it.contains("Rafiq") && !it.contains("started the style");
        assert_eq!(own, expected.iter().filter(concerns).copied().collect::<Vec<_>>());
        for word in ["Meghna", "Rafiq", "For the brand only"] {
            assert!(!page.sees(word), "{word}");
        }
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        rafiq.visits(&path).await.must_be(StatusCode::NOT_FOUND);
    }
}
