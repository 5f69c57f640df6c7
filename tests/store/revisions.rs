//! Publishing.

use crate::support::cast::*;
use crate::support::database::on_both;

on_both! {
    async fn smoke(db) {
        let cast = Cast::with_revision(db).await;
        let thread = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        cast.brand.says(&thread, "Without.").await.unwrap();
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &[(1, "point-c", "28 1/2")]).await;
        cast.brand.decides(&round, fellseam::exchange::round::Outcome::ApprovedWithChanges, "x", &[("point-c", "Longer")]).await.unwrap();
        let audit = cast.store.audit().await.unwrap();
        assert!(audit.faults.is_empty(), "{:#?}", audit);
    }
}
