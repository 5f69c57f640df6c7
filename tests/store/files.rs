//! Files: who may fetch what, and which picture is given.

use fellseam::access::act;
use fellseam::spec::Digest;
use fellseam::store::{FileKind, NewFile, NewPicture, Store};

use crate::support::cast::*;
use crate::support::database::on_both;

async fn add_drawing(store: &Store, brand: &Brand, what: &str) -> Digest {
    let digest = Digest::of(what.as_bytes());
    let file = NewFile {
        digest: &digest,
        kind: FileKind::Drawing,
        media_type: "image/png",
        name: what,
        size: 1024,
        width: 800,
        height: 900,
        taken: None,
        pictures: &pictures(&digest),
    };
    let permit = brand.lead.on(&brand.style).await;
    store.add_drawing(&permit, file).await.unwrap();
    digest
}

on_both! {
    async fn a_factory_fetches_the_drawings_of_published_revisions(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let back = add_drawing(store, brand, "back.png").await;
        let (ours, theirs) = (brand.reads().await, sao_mai.reads().await);
        let original = store.original(&theirs, &drawing()).await.unwrap();
        assert_eq!(original.digest, drawing());
        assert_eq!(&*original.media_type, "image/svg+xml");
        assert_eq!(&*original.name, "half-zip-front.svg");

        // One of the draft is the brand's alone, and no revision's until it is published.
        assert!(store.original(&ours, &back).await.is_ok());
        assert!(is_missing(&store.original(&theirs, &back).await));
        assert!(is_missing(&store.picture(&theirs, &back, 320).await));
        brand.edits(|spec| {
            let mut drawing = spec.drawings.drawings[0].clone();
            drawing.id = item("drawing-back");
            drawing.file = back.clone();
            drawing.markers.clear();
            spec.drawings.drawings.push(drawing);
        }).await;
        brand.publishes("With the back").await.unwrap();
        assert!(store.original(&theirs, &back).await.is_ok());
        assert!(store.picture(&theirs, &back, 320).await.is_ok());
    }
}

on_both! {
    async fn a_file_of_another_style_is_not_there(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, sao_mai, .. } = &cast;
        let mut spec = another_style();
        spec.drawings.drawings[0].file = Digest::of(b"another front");
        let style = brand.lead.starts(&spec).await;
        let other = brand.on(&style);
        assert!(is_missing(&store.original(&other.reads().await, &drawing()).await));
        let permit = other.lead.on::<act::Write>(&style).await;
        assert!(is_missing(&store.drawing_size(&permit, &drawing()).await));
        let size = store.drawing_size(&permit, &Digest::of(b"another front")).await.unwrap();
        let drawn = &spec.drawings.drawings[0];
        assert_eq!(size, (drawn.width, drawn.height));
        // A photograph is no drawing, even of the style's own exchange.
        let thread = sao_mai.asks("point-c", "Like this?").await.unwrap();
        let photo = sao_mai.photographs("the hem").await;
        sao_mai.sends(&thread, "See", std::slice::from_ref(&photo)).await.unwrap();
        let permit = brand.lead.on::<act::Write>(&brand.style).await;
        assert!(is_missing(&store.drawing_size(&permit, &photo).await));
    }
}

on_both! {
    async fn the_smallest_picture_that_is_wide_enough_is_given(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        let reads = brand.reads().await;
        for (wanted, given) in [(1, 0), (320, 0), (321, 1), (1280, 1), (4000, 1)] {
            let picture = store.picture(&reads, &drawing(), wanted).await.unwrap();
            assert_eq!(picture.digest, pictures(&drawing())[given].digest, "{wanted}");
            assert_eq!(&*picture.media_type, "image/webp");
        }
    }
}

on_both! {
    async fn a_file_that_is_added_again_stays_what_it_was(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { store, brand, .. } = &cast;
        let again = NewFile {
            digest: &drawing(),
            kind: FileKind::Drawing,
            media_type: "text/html",
            name: "evil.html",
            size: 1,
            width: 1,
            height: 1,
            taken: None,
            pictures: &[NewPicture {
                width: 320,
                height: 1,
                media_type: "text/html".to_owned(),
                digest: Digest::of(b"evil"),
            }],
        };
        let permit = brand.lead.on(&brand.style).await;
        store.add_drawing(&permit, again).await.unwrap();
        let reads = brand.reads().await;
        let original = store.original(&reads, &drawing()).await.unwrap();
        assert_eq!(&*original.media_type, "image/svg+xml");
        let picture = store.picture(&reads, &drawing(), 320).await.unwrap();
        assert_eq!(picture.digest, pictures(&drawing())[0].digest);
    }
}

on_both! {
    async fn known_files_are_originals_of_drawings_and_all_pictures(db) {
        let cast = Cast::with_revision(db).await;
        let photo = cast.sao_mai.photographs("the hem").await;
        let known = cast.store.known_files().await.unwrap();
        let mut expected = vec![drawing()];
        for file in [drawing(), photo] {
            expected.extend(pictures(&file).into_iter().map(|picture| picture.digest));
        }
        expected.sort();
        assert_eq!(known, expected);
    }
}
