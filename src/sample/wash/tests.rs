use super::*;
use crate::sample::contract::Place;

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn mm(mm: i64) -> Length {
    Length::nm(mm * 1_000_000)
}

fn contract(places: &[(&str, &str, Direction)]) -> Contract {
    let place = |(point, fabric, along): &(&str, &str, Direction)| Place {
        point: id(point),
        fabric: Some(id(fabric)),
        along: Some(*along),
        basis: None,
    };
    Contract {
        base: id("m"),
        sizes: vec![id("m")],
        points: places.iter().map(place).collect(),
        columns: BTreeMap::new(),
    }
}

fn values(of: &[(&str, i64)]) -> BTreeMap<ItemId, Length> {
    of.iter()
        .map(|(point, value)| (id(point), mm(*value)))
        .collect()
}

#[test]
fn four_per_cent_of_shrinkage_is_answered_by_1_0417() {
    let contract = contract(&[("a", "shell", Direction::Length)]);
    let washed = washed(&contract, &values(&[("a", 700)]), &values(&[("a", 672)]));
    let change = washed.points[&id("a")];
    assert_eq!(change.percent.to_string(), "-4");
    assert_eq!(change.correction.to_string(), "1.0417");
}

#[test]
fn each_fabric_is_told_along_each_direction() {
    let contract = contract(&[
        ("a", "shell", Direction::Length),
        ("b", "shell", Direction::Length),
        ("c", "shell", Direction::Width),
        ("d", "rib", Direction::Length),
    ]);
    let before = values(&[("a", 700), ("b", 300), ("c", 540), ("d", 60)]);
    let after = values(&[("a", 672), ("b", 287), ("c", 540), ("d", 61)]);
    let groups = washed(&contract, &before, &after).groups;
    let told: Vec<_> = groups
        .iter()
        .map(|it| (it.points.len(), it.together.percent.to_string()))
        .collect();
    // (672 + 287 − 1000) / 1000 = −4.1 %; the short point's millimetre counts as one of 1000.
    assert_eq!(told[0], (2, "-4.1".to_owned()));
    assert_eq!(told[1], (1, "0".to_owned()));
    assert_eq!(told[2], (1, "1.67".to_owned()));
    assert_eq!(groups.len(), 3);
}

/// Two readings that scatter by 1.5 mm each differ by 4.2 mm once in twenty times; of four points
/// together it takes twice that.
#[test]
fn what_measuring_explains_calls_for_no_correction() {
    let short = contract(&[("a", "cord", Direction::Length)]);
    let change = |before: i64, after: i64| {
        let before = values(&[("a", before)]);
        washed(&short, &before, &values(&[("a", after)])).groups[0].is_carried()
    };
    assert!(!change(26, 25), "3.8 % of next to nothing");
    assert!(!change(100, 96) && change(100, 95));
    let names = ["a", "b", "c", "d"];
    let long = contract(&names.map(|it| (it, "shell", Direction::Length)));
    let together = |after: [i64; 4]| {
        let before = values(&names.map(|it| (it, 100)));
        let after: Vec<(&str, i64)> = names.into_iter().zip(after).collect();
        washed(&long, &before, &values(&after)).groups[0].is_carried()
    };
    assert!(!together([98, 98, 98, 98]) && together([98, 97, 98, 98]));
}

#[test]
fn what_was_measured_once_has_not_changed() {
    let contract = contract(&[
        ("a", "shell", Direction::Length),
        ("b", "shell", Direction::Length),
    ]);
    let before = values(&[("a", 700), ("b", 0)]);
    let after = values(&[("b", 10), ("c", 20)]);
    let washed = washed(&contract, &before, &after);
    assert!(washed.points.is_empty() && washed.groups.is_empty());
}
