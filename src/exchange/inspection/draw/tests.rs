use proptest::prelude::*;

use super::*;
use crate::exchange::inspection::Sort;
use crate::spec::ItemId;

fn group(size: &str, pieces: u32) -> Group {
    let sort = Sort {
        colourway: ItemId::new("ink"),
        size: ItemId::new(size),
    };
    Group { sort, pieces }
}

/// 1200 pieces.
fn lot() -> [Group; 4] {
    [("s", 300), ("m", 500), ("l", 395), ("xl", 5)].map(|(size, pieces)| group(size, pieces))
}

#[test]
fn pieces_are_drawn_in_proportion_and_one_of_each() {
    // 80 of 1200: 20, 33 1/3, 26 1/3 and 1/3; the one of four sorts that would have none takes the
    // one that the second has beyond its share.
    assert_eq!(draw(&lot(), 80), [20, 33, 26, 1]);
    assert_eq!(draw(&lot(), 3), [1, 1, 1, 0], "three cannot be one of four");
    assert_eq!(draw(&lot(), 4), [1, 1, 1, 1]);
    assert_eq!(draw(&lot(), 5000), [300, 500, 395, 5]);
    assert_eq!(draw(&[], 5), [0_u32; 0]);
}

fn groups() -> impl Strategy<Value = Vec<Group>> {
    let one = prop_oneof![Just(0u32), 1u32..6, 1u32..100_000];
    proptest::collection::vec(one, 1..30).prop_map(|all| {
        let group = |(at, pieces): (usize, u32)| group(&at.to_string(), pieces);
        all.into_iter().enumerate().map(group).collect()
    })
}

proptest! {
    #[test]
    fn a_draw_is_the_sample_and_no_more_than_there_is(groups in groups(), sample in 0u32..3000) {
        let drawn = draw(&groups, sample);
        let lot: u64 = groups.iter().map(|it| u64::from(it.pieces)).sum();
        let all: u64 = drawn.iter().map(|it| u64::from(*it)).sum();
        prop_assert_eq!(drawn.len(), groups.len());
        prop_assert_eq!(all, u64::from(sample).min(lot));
        let filled = groups.iter().filter(|it| it.pieces > 0).count() as u64;
        for (group, drawn) in groups.iter().zip(&drawn) {
            prop_assert!(*drawn <= group.pieces);
            if filled <= all && group.pieces > 0 {
                prop_assert!(*drawn >= 1);
            }
            // But for the one that a small group must have, beyond its share by less than one.
            let share = u128::from(group.pieces) * u128::from(all);
            let mine = u128::from(*drawn) * u128::from(lot);
            prop_assert!(*drawn == 1 || mine < share + u128::from(lot.max(1)));
        }
    }
}
