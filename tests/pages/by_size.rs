//! A tolerance of one size: shown where it stands, and judged by.

use fellseam::spec::document::Tolerance;

use crate::pages::Site;
use crate::support::cast::{inches, item, measured_round};
use crate::support::database::on_both;

on_both! {
    async fn a_size_is_shown_and_judged_by_its_own_tolerance(db) {
        let site = Site::with_revision(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        brand
            .edits(|spec| {
                let wider = Tolerance { minus: None, plus: Some(inches("1/2")) };
                spec.points.points[1].tolerances.insert(item("size-xl"), wider);
            })
            .await;
        brand.publishes("XL may be wider").await.unwrap();
        sao_mai.acknowledges(2).await.unwrap();
        let mut hoa = site.browser(&sao_mai.hands).await;
        let revision = format!("{}/revisions/2", site.style);

        let page = hoa.opens(&revision).await;
        let cells = page.all("#row-point-b td.turn");
        assert_eq!(cells[4], "22 1/4 56.5 −1/4 +1/2");
        assert!(cells[..4].iter().all(|cell| !cell.contains('+')), "{cells:?}");
        let page = hoa.opens(&format!("{revision}/items/point-b")).await;
        let sizes = page.all(".by-size li");
        assert!(sizes[4].ends_with("−1/4 +1/2") && !sizes[2].contains('+'), "{sizes:?}");

        let round = brand.requests(sao_mai, &["size-m", "size-xl"]).await.unwrap();
        sao_mai.starts(&round).await.unwrap();
        let base = format!("{}/rounds/{round}", site.style);
        let pieces = sao_mai.round(&round).await.pieces;
        for (piece, tolerance) in pieces.iter().zip(["−1/4 +1/4", "−1/4 +1/2"]) {
            let page = hoa.opens(&format!("{base}/measure?piece={}&point=point-b", piece.id)).await;
            let asked = page.all(".measure-point:not([hidden]) .number small");
            assert_eq!(asked, [tolerance]);
        }
        // Each is 3/8 wider than its size.
        let typed = [(1, "point-b", "20 3/8"), (2, "point-b", "22 5/8")];
        sao_mai.measures(&round, &typed).await.unwrap();
        let page = hoa.opens(&base).await;
        let row = page.all("#row-point-b td");
        assert_eq!(row[1], "20 −1/4 +1/4", "{row:?}");
        assert_eq!(row[3], "22 1/4 −1/4 +1/2", "{row:?}");
        assert!(row[2].contains('▲') && !row[4].contains('▲'), "{row:?}");
    }
}

on_both! {
    async fn a_suggestion_says_the_tolerance_of_each_size_that_is_out(db) {
        let site = Site::with_revision(db).await;
        let (brand, sao_mai) = (&site.cast.brand, &site.cast.sao_mai);
        brand
            .edits(|spec| {
                let wider = Tolerance { minus: None, plus: Some(inches("1/2")) };
                spec.points.points[1].tolerances.insert(item("size-xl"), wider);
            })
            .await;
        brand.publishes("XL may be wider").await.unwrap();
        sao_mai.acknowledges(2).await.unwrap();
        let typed = [(1, "point-b", "21"), (2, "point-b", "23")];
        let round = measured_round(brand, sao_mai, &["size-m", "size-xl"], &typed).await;
        let mut iris = site.browser(&brand.lead).await;
        let base = format!("{}/rounds/{round}", site.style);
        let page = iris.opens(&base).await;
        let form = page.form(&format!("{base}/decide"));
        let text = form.value("text-point-b");
        let wanted = "Bring it within M −1/4 +1/4, XL −1/4 +1/2 in.";
        assert!(text.ends_with(wanted), "{text}");
    }
}
