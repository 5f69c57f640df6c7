//! What waits for whom.

use fellseam::exchange::round::{Outcome, State};
use fellseam::store::{Need, ThreadMove, Turn, What};

use crate::support::cast::*;
use crate::support::database::on_both;

/// What waits, in short: `acknowledge 1`, `sign 1`, `settle 1`, `answer point-c`, `read point-c`,
/// `change point-c`, `round in_work`.
fn short(needs: Vec<Need>) -> Vec<String> {
    needs
        .into_iter()
        .map(|need| match need.what {
            What::Acknowledge { revision } => format!("acknowledge {revision}"),
            What::SignRevision { revision, blocks } => match blocks.is_empty() {
                true => format!("sign {revision}"),
                false => format!("settle {revision}"),
            },
            What::Thread { item, turn, .. } => match turn {
                Turn::Read => format!("read {item}"),
                Turn::Answer => format!("answer {item}"),
                Turn::Change => format!("change {item}"),
            },
            What::Round { state, .. } => format!("round {}", state.name()),
            What::Approvals { count, .. } => format!("approvals {count}"),
            What::Seal { round, .. } => format!("seal {round}"),
            What::Inspection { state, .. } => format!("inspection {}", state.name()),
        })
        .collect()
}

on_both! {
    async fn a_revision_waits_to_be_acknowledged_and_then_signed(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        assert_eq!(short(sao_mai.needs().await), ["acknowledge 1"]);
        assert_eq!(short(sao_mai.hands.needs().await), ["acknowledge 1"], "the floor sees it too");
        assert!(brand.needs().await.is_empty());
        assert!(meghna.needs().await.is_empty());
        assert_eq!(sao_mai.needs().await[0].org_name, "Sao Mai Garment");

        sao_mai.acknowledges(1).await.unwrap();
        assert_eq!(short(sao_mai.needs().await), ["sign 1"]);
        assert_eq!(short(brand.needs().await), ["sign 1"]);
        sao_mai.signs_revision(1).await.unwrap();
        assert!(sao_mai.needs().await.is_empty());
        assert_eq!(short(brand.needs().await), ["sign 1"]);
        brand.signs_revision(sao_mai, 1).await.unwrap();
        assert!(brand.needs().await.is_empty());

        // A newer one begins again; a withdrawn one asks nothing of anybody.
        brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        brand.publishes("Longer").await.unwrap();
        assert_eq!(short(sao_mai.needs().await), ["acknowledge 2"]);
        brand.withdraws(2, "Wrong").await.unwrap();
        assert!(sao_mai.needs().await.is_empty());
    }
}

on_both! {
    async fn a_thread_waits_for_the_side_whose_turn_it_is(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        brand.signs_revision(sao_mai, 1).await.unwrap();

        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        assert_eq!(short(brand.needs().await), ["answer point-c"]);
        assert!(sao_mai.needs().await.is_empty());
        brand.says(&thread, "Without it.").await.unwrap();
        assert!(brand.needs().await.is_empty());
        assert_eq!(short(sao_mai.needs().await), ["read point-c"]);
        sao_mai.says(&thread, "At the side too?").await.unwrap();
        assert_eq!(short(brand.needs().await), ["answer point-c"]);
        brand.says(&thread, "Yes.").await.unwrap();
        sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        assert!(brand.needs().await.is_empty() && sao_mai.needs().await.is_empty());

        let fix = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();
        assert_eq!(short(sao_mai.needs().await), ["answer point-a"]);
        sao_mai.moves(&fix, ThreadMove::Agree).await.unwrap();
        assert!(sao_mai.needs().await.is_empty());
        assert_eq!(short(brand.needs().await), ["change point-a"]);
        brand.edits(|spec| set_base(spec, "point-a", "23 1/4")).await;
        brand.publishes("Wider").await.unwrap();
        assert!(brand.needs().await.is_empty(), "the revision carries it");
    }
}

on_both! {
    async fn what_is_open_is_settled_before_it_is_signed(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        brand.shares_with(meghna).await.unwrap();
        for factory in [sao_mai, meghna] {
            factory.acknowledges(1).await.unwrap();
        }
        let thread = sao_mai.asks("point-c", "With the rib?").await.unwrap();
        let fix = brand.insists(sao_mai, "point-a", "Wider").await.unwrap();
        let all = ["sign 1", "settle 1"];
        let signs = |needs| short(needs).into_iter().filter(|it| all.contains(&it.as_str()));
        assert_eq!(signs(sao_mai.needs().await).collect::<Vec<_>>(), ["settle 1"]);
        assert_eq!(signs(meghna.needs().await).collect::<Vec<_>>(), ["sign 1"], "its own are none");
        let mut of_brand: Vec<_> = signs(brand.needs().await).collect();
        of_brand.sort();
        assert_eq!(of_brand, ["settle 1", "sign 1"], "one for each factory");
        sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        assert_eq!(signs(sao_mai.needs().await).collect::<Vec<_>>(), ["settle 1"], "the must-fix");
        brand.moves(&fix, ThreadMove::Grant).await.unwrap();
        assert_eq!(signs(sao_mai.needs().await).collect::<Vec<_>>(), ["sign 1"]);
        brand.asks(sao_mai, "point-b", "Did the rib arrive?").await.unwrap();
        assert_eq!(signs(sao_mai.needs().await).collect::<Vec<_>>(), ["settle 1"]);
    }
}

on_both! {
    async fn a_round_waits_for_who_has_it_in_hand(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, .. } = &cast;
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.signs_revision(1).await.unwrap();
        brand.signs_revision(sao_mai, 1).await.unwrap();

        let round = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        assert_eq!(short(sao_mai.needs().await), ["round requested"]);
        assert!(brand.needs().await.is_empty());
        sao_mai.starts(&round).await.unwrap();
        assert_eq!(short(sao_mai.hands.needs().await), ["round in_work"]);
        sao_mai.measures(&round, &[(1, "point-c", "28 1/2")]).await.unwrap();
        sao_mai.dispatches(&round).await.unwrap();
        assert!(sao_mai.needs().await.is_empty());
        assert_eq!(short(brand.needs().await), ["round dispatched"]);
        brand.receives(&round).await.unwrap();
        assert_eq!(short(brand.needs().await), ["round received"]);
        brand.finishes_measuring(&round).await.unwrap();
        assert_eq!(short(brand.needs().await), ["round measured"]);
        brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        assert_eq!(brand.round(&round).await.state, State::Decided(Outcome::Approved));
        for needs in [brand.needs().await, sao_mai.needs().await] {
            assert_eq!(short(needs), ["round approved"], "to be signed");
        }
        sao_mai.signs_round(&round).await.unwrap();
        assert!(sao_mai.needs().await.is_empty());
        brand.signs_round(&round).await.unwrap();
        assert!(brand.needs().await.is_empty());

        let dropped = brand.requests(sao_mai, &["size-m"]).await.unwrap();
        brand.decides(&dropped, Outcome::Cancelled, "Dropped", &[]).await.unwrap();
        assert!(brand.needs().await.is_empty() && sao_mai.needs().await.is_empty());
    }
}

on_both! {
    async fn what_waits_longest_comes_first_over_all_styles(db) {
        let cast = Cast::with_revision(db).await;
        let Cast { brand, sao_mai, meghna, .. } = &cast;
        let style = brand.lead.starts(&another_style()).await;
        let second = brand.on(&style);
        second.publishes("First issue").await.unwrap();
        second.shares_with(meghna).await.unwrap();
        meghna.on(&style).asks("point-a", "So wide?").await.unwrap();
        sao_mai.asks("point-c", "With the rib?").await.unwrap();
        meghna.on(&style).acknowledges(1).await.unwrap();

        let needs = brand.needs().await;
        let styles: Vec<_> = needs.iter().map(|need| (&*need.number, &*need.org_name)).collect();
        assert_eq!(
            styles,
            [
                ("HT-205", "Meghna Knit Works"),
                ("HT-204", "Sao Mai Garment"),
                ("HT-205", "Meghna Knit Works"),
            ]
        );
        assert!(needs.is_sorted_by_key(|need| need.since.clone()));
        assert_eq!(short(needs), ["answer point-a", "answer point-c", "settle 1"]);
        assert_eq!(short(meghna.needs().await), ["settle 1"]);
        brand.ends_share_with(sao_mai).await.unwrap();
        assert_eq!(short(brand.needs().await), ["answer point-a", "settle 1"]);
    }
}
