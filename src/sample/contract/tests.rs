use super::*;
use crate::spec::grade;

fn mm(mm: i64) -> Length {
    Length::nm(mm * 1_000_000)
}

#[test]
fn parts_of_one_fabric_are_one_group_and_a_part_without_is_its_own() {
    let mut spec = Spec::default();
    spec.points.points = serde_json::from_value(serde_json::json!([
        {"id": "a", "letter": "A", "name": "Chest", "part": "body", "direction": "width"},
        {"id": "b", "letter": "B", "name": "Sleeve", "part": "sleeve", "direction": "length"},
        {"id": "c", "letter": "C", "name": "Zip", "part": "zip"},
        {"id": "d", "letter": "D", "name": "Anything"},
    ]))
    .expect("points");
    spec.materials.materials = serde_json::from_value(serde_json::json!([
        {"id": "shell", "kind": "knitted_fabric", "parts": ["body", "sleeve"]},
        {"id": "coil", "kind": "zip", "parts": ["zip"]},
    ]))
    .expect("materials");
    let mut chart = Chart {
        unit: crate::spec::Unit::Cm,
        base_size: ItemId::new("m"),
        sizes: vec![ItemId::new("m")],
        rows: Vec::new(),
        lengths: Vec::new(),
    };
    assert!(grade(&spec).chart(&spec).is_none(), "it has no sizes");
    for point in ["a", "b", "c", "d"] {
        chart.rows.push(crate::spec::chart::Row {
            point: ItemId::new(point),
            values: vec![mm(500)],
            minus: mm(5),
            plus: mm(5),
            step: mm(1),
            tolerances: BTreeMap::new(),
            pair_limit: None,
            stretched: Vec::new(),
        });
    }
    let contract = Contract::of(&spec, &chart);
    let fabrics: Vec<_> = contract
        .points
        .iter()
        .map(|it| it.fabric.as_ref().map(ItemId::as_str))
        .collect();
    assert_eq!(fabrics, [Some("shell"), Some("shell"), Some("zip"), None]);
    assert_eq!(contract.points[0].along, Some(Direction::Width));
    assert_eq!(contract.columns[&ItemId::new("m")].len(), 4);
}

#[test]
fn several_who_measured_count_alike() {
    let reading = |value: Option<i64>| Reading {
        by: String::new(),
        values: value
            .map(|value| (ItemId::new("a"), Length::nm(value)))
            .into_iter()
            .collect(),
    };
    let mean = |values: [Option<i64>; 3]| {
        let piece = Piece {
            id: PieceId::new("1"),
            size: ItemId::new("m"),
            readings: values.map(reading).to_vec(),
        };
        piece.values().get(&ItemId::new("a")).copied()
    };
    assert_eq!(mean([Some(10), Some(20), None]), Some(Length::nm(15)));
    assert_eq!(mean([Some(10), Some(11), None]), Some(Length::nm(11)));
    assert_eq!(mean([Some(-10), Some(-11), None]), Some(Length::nm(-10)));
    assert_eq!(mean([Some(10), None, None]), Some(Length::nm(10)));
    assert_eq!(mean([None, None, None]), None);
}
