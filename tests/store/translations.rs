//! Translations: the newest counts, and a revision keeps what it was published with.

use fellseam::exchange::translation::Translated;

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn the_newest_translation_counts_until_it_is_taken_back(db) {
        let cast = Cast::with_revision(db).await;
        let brand = &cast.brand;
        brand.translates("vi", &[("Chest width", "one"), ("Hem", "two")]).await;
        brand.translates("vi", &[("Chest width", "three")]).await;
        brand.translates("tr", &[("Hem", "four")]).await;
        let now = || async {
            let all = cast.store.translations(&brand.reads().await).await.unwrap();
            let each = all.into_iter().map(|it| format!("{} {} {}", it.language, it.words, it.text));
            each.collect::<Vec<_>>()
        };
        assert_eq!(now().await, ["tr Hem four", "vi Chest width three", "vi Hem two"]);
        brand.translates("vi", &[("Hem", "")]).await;
        assert_eq!(now().await, ["tr Hem four", "vi Chest width three"]);
        assert_eq!(cast.store.audit().await.unwrap().faults, []);
    }
}

on_both! {
    async fn a_revision_keeps_the_translations_that_it_was_published_with(db) {
        let cast = Cast::with_revision(db).await;
        let brand = &cast.brand;
        let (spec, _) = brand.draft().await;
        let name = spec.points.points[0].name.clone();
        brand.translates("vi", &[(&name, "as published"), ("of no text here", "left out")]).await;
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        let n = brand.publishes("Longer").await.unwrap();
        let digest = brand.revision(n).await.digest;
        brand.translates("vi", &[(&name, "put right later")]).await;

        let revision = brand.revision(n).await;
        let kept = &revision.frozen.translations;
        assert_eq!(kept.beside("vi", &name), Some(Translated::Own("as published")));
        assert_eq!(kept.beside("vi", "of no text here"), None);
        assert_eq!(revision.digest, digest);
        // The program's words of the trade are kept as well.
        let term = spec.points.points.iter().find_map(|it| kept.beside("zh-Hans", &it.name));
        assert!(matches!(term, Some(Translated::Term(_))), "{term:?}");
        // The one before was published without.
        let first = brand.revision(1).await.frozen;
        let first = first.translations.beside("vi", &name);
        assert!(!matches!(first, Some(Translated::Own(_))), "{first:?}");
    }
}
