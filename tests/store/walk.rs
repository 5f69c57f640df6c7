//! A whole walk: something of everything that a style can have.

use fellseam::exchange::approval::Verdict;
use fellseam::exchange::inspection::{Class, Decision};
use fellseam::exchange::measuring::{Reason, Wash};
use fellseam::exchange::round::Outcome;
use fellseam::spec::document::Illuminant;
use fellseam::store::{Db, NewMeasurement, ThreadMove};

use crate::support::cast::*;

/// Three revisions, the first withdrawn; two factories; answered, changed and granted threads with
/// photographs, and a translated message; options that were approved, rejected and not decided; a
/// sealed sample and a lot inspected against it; a remade round, and one that went on past a newer
/// revision and was approved with changes, of which a piece was washed, a point left out and a piece
/// photographed; signatures of both sides on a revision and a round, and of one on another; a share
/// that ended.
pub async fn whole_walk(db: Db) -> Cast {
    let cast = Cast::with_revision(db).await;
    let Cast {
        brand,
        sao_mai,
        meghna,
        ..
    } = &cast;
    brand.shares_with(meghna).await.unwrap();
    meghna.acknowledges(1).await.unwrap();
    brand.withdraws(1, "The rib is wrong.").await.unwrap();

    let question = sao_mai.asks("point-c", "With the rib?").await.unwrap();
    let hem = sao_mai.photographs("the hem").await;
    let cuff = sao_mai.photographs("the cuff").await;
    sao_mai
        .sends(&question, "See here", &[hem.clone(), cuff])
        .await
        .unwrap();
    brand.says(&question, "Without it.").await.unwrap();
    sao_mai.moves(&question, ThreadMove::Close).await.unwrap();
    let longer = brand.insists(sao_mai, "point-c", "Longer").await.unwrap();
    sao_mai.says(&longer, "By how much?").await.unwrap();
    brand
        .translates_newest(&longer, "vi", "Bao nhiêu?")
        .await
        .unwrap();
    brand.says(&longer, "1/4 in").await.unwrap();
    sao_mai.moves(&longer, ThreadMove::Agree).await.unwrap();

    brand
        .edits(|spec| set_base(spec, "point-c", "28 3/4"))
        .await;
    brand
        .translates("vi", &[("Chest width", "Ngang ngực")])
        .await;
    brand.publishes("Longer, and the right rib").await.unwrap();
    sao_mai.acknowledges(2).await.unwrap();
    sao_mai.signs_revision(2).await.unwrap();
    brand.signs_revision(sao_mai, 2).await.unwrap();
    let pass = sao_mai
        .asks_concession("point-a", "1/2 in wider, from stock")
        .await;
    let pass = pass.unwrap();
    brand.moves(&pass, ThreadMove::Grant).await.unwrap();

    // A lab dip with a reading that is approved, a strike-off that is not, and a zip that waits.
    let [ink, _, wave, zip, _] = <[_; 5]>::try_from(sao_mai.to_approve().await).unwrap();
    let reading = lab("20", Illuminant::D65);
    let dip = sao_mai
        .submits_with(&ink, "Second bath", Some(&reading), &[hem])
        .await
        .unwrap();
    brand.judges(&dip, Verdict::Approved, "").await.unwrap();
    let strike = sao_mai.submits(&wave, "On loopback").await.unwrap();
    brand
        .judges(&strike, Verdict::Rejected, "Too thin")
        .await
        .unwrap();
    sao_mai.submits(&zip, "Matt").await.unwrap();

    // A lot that was rejected for two defects of a piece, sent back, and is inspected again.
    let seal = cast.signed_seal_with(meghna).await;
    let (style, rafiq) = (&brand.style, &meghna.lead);
    let lot = small_lot();
    let first = rafiq.begins(style, &seal, &lot, None).await.unwrap();
    let seen = [
        (Class::Major, "point-c", "Crooked"),
        (Class::Minor, "", "Oil stain"),
    ];
    let measured = [("point-a", "21 1/2")];
    rafiq
        .enters(style, &first, 1, &[], &measured)
        .await
        .unwrap();
    rafiq.enters(style, &first, 2, &seen, &[]).await.unwrap();
    rafiq.concludes(style, &first).await.unwrap();
    brand
        .decides_lot(&first, Decision::Rework, "Press and sort it")
        .await
        .unwrap();
    rafiq
        .begins(style, &seal, &lot, Some(&first))
        .await
        .unwrap();

    let first = measured_round(brand, sao_mai, &["size-m"], &[(1, "point-c", "28")]).await;
    brand
        .decides(&first, Outcome::Remake, "Too short", &[])
        .await
        .unwrap();

    let second = brand
        .requests(sao_mai, &["size-m", "size-l"])
        .await
        .unwrap();
    sao_mai.starts(&second).await.unwrap();
    brand
        .edits(|spec| set_base(spec, "point-e", "25 1/4"))
        .await;
    brand.publishes("Sleeves").await.unwrap();
    brand.continues(&second).await.unwrap();
    let typed = [(1, "point-c", "28 3/4"), (2, "point-c", "29 1/2")];
    sao_mai.measures(&second, &typed).await.unwrap();
    let washed = sao_mai.value(&second, 1, "point-c", "28").await;
    let washed = NewMeasurement {
        wash: Some(Wash::After),
        ..washed
    };
    let hands = sao_mai.hands.on(&brand.style).await;
    let kept = cast.store.measure(&hands, &second, &[washed]).await;
    assert_eq!(kept.unwrap().new, 1);
    let skipped = sao_mai.skips(&second, 2, "point-a", Reason::Damaged).await;
    assert!(skipped.unwrap());
    sao_mai
        .photographs_piece(&second, 2, "the damage")
        .await
        .unwrap();
    sao_mai.dispatches(&second).await.unwrap();
    brand.receives(&second).await.unwrap();
    brand
        .measures(&second, &[(1, "point-c", "28 7/8")])
        .await
        .unwrap();
    brand.finishes_measuring(&second).await.unwrap();
    brand
        .moves(&longer, ThreadMove::Verify(second.clone()))
        .await
        .unwrap();
    let changes = [("point-e", "Shorter sleeves"), ("part-2", "Softer rib")];
    brand
        .decides(&second, Outcome::ApprovedWithChanges, "Nearly", &changes)
        .await
        .unwrap();
    sao_mai.signs_round(&second).await.unwrap();
    brand.signs_round(&second).await.unwrap();
    sao_mai
        .measures(&second, &[(1, "point-c", "28 5/8")])
        .await
        .unwrap();

    // The brand has not signed this one yet.
    sao_mai.signs_round(&first).await.unwrap();

    brand.ends_share_with(meghna).await.unwrap();
    cast
}
