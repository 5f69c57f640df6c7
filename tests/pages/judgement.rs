//! What the measurements of a round say on its page.

use fellseam::access::Side;
use fellseam::exchange::round::Outcome;
use fellseam::sample::contract::{Contract, Piece, Reading};
use fellseam::sample::evaluation::evaluate;
use fellseam::spec::DecimalSign;
use fellseam::store::Round;

use crate::pages::Site;
use crate::support::cast::measured_round;
use crate::support::database::on_both;

const SIZES: [&str; 2] = ["size-m", "size-l"];

/// Every point of both pieces as the chart asks for, C longer by so many sixteenths of an inch.
async fn typed(site: &Site, longer: i64) -> Vec<(u32, String, String)> {
    let frozen = site.cast.brand.revision(1).await.frozen;
    let mut typed = Vec::new();
    for (number, size) in (1_u32..).zip(SIZES) {
        for row in &frozen.chart.rows {
            let at = frozen.chart.sizes.iter().position(|it| it.as_str() == size);
            let mut value = row.values[at.expect("a size")].as_nm();
            if row.point.as_str() == "point-c" {
                value += longer * 1_587_500;
            }
            let value = fellseam::spec::Length::nm(value);
            let unit = frozen.chart.unit;
            let text = value.show(unit, unit.fine_step(), DecimalSign::Point);
            typed.push((number, row.point.to_string(), text));
        }
    }
    typed
}

async fn measured(site: &Site, longer: i64) -> Round {
    let typed = typed(site, longer).await;
    let typed: Vec<(u32, &str, &str)> = typed
        .iter()
        .map(|(piece, point, value)| (*piece, point.as_str(), value.as_str()))
        .collect();
    let (brand, factory) = (&site.cast.brand, &site.cast.sao_mai);
    let id = measured_round(brand, factory, &SIZES, &typed).await;
    brand.round(&id).await
}

/// How many causes the pure code finds in the round.
fn causes(round: &Round) -> usize {
    let pieces = round.pieces.iter().map(|piece| Piece {
        id: piece.id.clone(),
        size: piece.size.clone(),
        readings: vec![Reading {
            by: "factory".to_owned(),
            values: round.values(&piece.id, Some(Side::Factory)),
        }],
    });
    let pieces: Vec<Piece> = pieces.collect();
    let contract = Contract::of(&round.frozen.spec, &round.frozen.chart);
    let diagnosis = evaluate(&contract, &pieces, &[]).diagnosis;
    diagnosis.expect("it was measured").findings.len()
}

on_both! {
    async fn a_rounds_page_says_why_it_is_off_and_watches_what_failed(db) {
        let site = Site::with_revision(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let asked = site.cast.brand.requests(&site.cast.sao_mai, &SIZES).await.unwrap();
        let page = iris.opens(&format!("{}/rounds/{asked}", site.style)).await;
        assert!(page.all(".judgement").is_empty(), "nothing was measured");

        let round = measured(&site, 8).await;
        let address = format!("{}/rounds/{}", site.style, round.id);
        for reader in [&mut iris, &mut hoa] {
            let page = reader.opens(&address).await;
            page.must_see("What the measurements say");
            let found = page.all(".causes strong");
            assert_eq!((found.len(), causes(&round)), (1, 1), "{found:?}");
            assert!(found[0].starts_with("C ") && found[0].contains("off by +1/2"), "{found:?}");
            assert_eq!(page.all(".cause-points li").len(), 1);
            let out = page.all(".judgement > .strips .strip-values");
            assert_eq!(out, ["1 · M ▲ +1/2 2 · L ▲ +1/2"]);
            assert_eq!(page.all(".judgement > .by-sizes li").len(), 1, "C, by size");
            let others = round.frozen.chart.rows.len() - 1;
            assert_eq!(page.all("#strips-within .strips > li").len(), others);
            assert_eq!(page.all("#steps tbody").len(), others + 1);
            assert!(!page.sees("Watch: failed in an earlier round"));
        }

        // Decided, and made again as the chart says: C is within now, and watched.
        site.cast.brand.decides(&round.id, Outcome::Remake, "C is long.", &[]).await.unwrap();
        let again = measured(&site, 0).await;
        let page = hoa.opens(&format!("{}/rounds/{}", site.style, again.id)).await;
        page.must_see("No cause is named.");
        page.must_see("failed before (Proto, sample round 2). It is within tolerance now: watch it.");
        assert_eq!(page.all("#row-point-c .col-name b").last().map(String::as_str), Some("watch"));
        assert_eq!(page.all(".judgement > .strips .letter"), ["C"], "watched points are in sight");
    }
}
