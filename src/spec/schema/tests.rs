use std::collections::BTreeMap;

use super::*;
use crate::spec::decimal::Decimal;
use crate::spec::example::half_zip;
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::Entered;

/// What of a document the schema does not allow, by its place: the part of JSON Schema that is
/// used here.
fn faults(schema: &Json, at: &Json, json: &Json, place: &str, found: &mut Vec<String>) {
    if let Some(name) = at["$ref"].as_str() {
        let name = name.strip_prefix("#/$defs/").expect("a kind");
        let kind = &schema["$defs"][name];
        assert!(kind.is_object(), "no kind {name}");
        return faults(schema, kind, json, place, found);
    }
    if let Some(words) = at["enum"].as_array() {
        if !words.contains(json) {
            found.push(format!("{place}: {json}"));
        }
        return;
    }
    if let Some(each) = at["oneOf"].as_array() {
        let fits = each.iter().filter(|one| {
            let mut found = Vec::new();
            faults(schema, one, json, place, &mut found);
            found.is_empty()
        });
        if fits.count() != 1 {
            found.push(format!("{place}: {json}"));
        }
        return;
    }
    match (at["type"].as_str(), json) {
        (Some("string"), Json::String(_)) | (Some("boolean"), Json::Bool(_)) => {}
        (Some("integer"), Json::Number(number)) => {
            let (low, high) = (at["minimum"].as_i64(), at["maximum"].as_i64());
            let number = number.as_i64().unwrap();
            if low.is_some_and(|low| number < low) || high.is_some_and(|high| number > high) {
                found.push(format!("{place}: {number}"));
            }
        }
        (Some("array"), Json::Array(items)) => {
            for (index, item) in items.iter().enumerate() {
                faults(
                    schema,
                    &at["items"],
                    item,
                    &format!("{place}[{index}]"),
                    found,
                );
            }
        }
        (Some("object"), Json::Object(fields)) => {
            let required = at["required"].as_array().into_iter().flatten();
            let missing = required.filter(|name| !fields.contains_key(name.as_str().unwrap()));
            found.extend(missing.map(|name| format!("{place}: no {name}")));
            for (name, value) in fields {
                let place = format!("{place}.{name}");
                match (&at["properties"][name], &at["additionalProperties"]) {
                    (Json::Null, Json::Bool(false)) => found.push(format!("{place}: unknown")),
                    (Json::Null, other) => faults(schema, other, value, &place, found),
                    (field, _) => faults(schema, field, value, &place, found),
                }
            }
        }
        _ => found.push(format!("{place}: {json}")),
    }
}

fn judged(json: &Json) -> Vec<String> {
    let schema = schema();
    let mut found = Vec::new();
    faults(&schema, &schema, json, "$", &mut found);
    found
}

fn written(spec: &Spec) -> Json {
    serde_json::to_value(spec).unwrap()
}

fn example() -> Spec {
    half_zip(Digest::of(b"front"))
}

#[test]
fn what_the_program_writes_fits_its_schema() {
    assert_eq!(judged(&written(&example())), [""; 0]);
    assert_eq!(judged(&written(&Spec::default())), [""; 0]);
    let cm = |nm: i64| Entered {
        nm: Length::nm(nm),
        unit: Unit::Cm,
    };
    let id = |name: &str| ItemId::new(name);
    let grades = [
        Grade::Same {},
        Grade::Explicit {
            values: BTreeMap::from([(id("size-m"), cm(1))]),
        },
        Grade::Derived {
            from: id("point-c"),
            offset: cm(-1),
        },
    ];
    let lab = Lab {
        l: Decimal::new(505, 1),
        a: Decimal::new(-3, 0),
        b: Decimal::new(0, 0),
        illuminant: Illuminant::D65,
        observer: Observer::Ten,
    };
    let colour = Colour {
        name: "Ink".to_owned(),
        lab: Some(lab),
        photo: Some(Digest::of(b"dyed")),
        approval: Some(Approval::Asked),
        ..Colour::default()
    };
    let part = id("part-1");
    let cells = [
        Cell::None {},
        Cell::Natural {},
        Cell::DyedToMatch { part },
        Cell::Colour(colour),
    ];
    let mut spec = example();
    spec.header.measured = Some(MeasuringState::AfterWashes(3));
    for (point, grade) in spec.points.points.iter_mut().zip(grades) {
        point.grade = Some(grade);
    }
    let row = spec.colourways.cells.values_mut().next().unwrap();
    row.extend((1..).map(|n| id(&format!("part-{n}"))).zip(cells));
    let drawing = &mut spec.drawings.drawings[0];
    drawing.lines.push(DimensionLine {
        id: id("line"),
        item: id("point-a"),
        from: Spot::default(),
        to: Spot { x: 1, y: 2 },
        via: Some(Spot::default()),
    });
    drawing.blow_ups.push(BlowUp {
        id: id("circle"),
        drawing: id("drawing-front"),
        at: Spot::default(),
        radius: 4,
    });
    let yarn = Yarn {
        count: Some(Decimal::new(20, 0)),
        system: Some(YarnSystem::Tex),
        ply: None,
    };
    spec.materials.materials[0].fabric.structure = Some(Structure::Knitted(Knitted {
        yarn: Some(yarn),
        ..Knitted::default()
    }));
    assert_eq!(judged(&written(&spec)), [""; 0]);
}

#[test]
fn what_the_program_refuses_does_not_fit() {
    let with = |path: &str, value: Json| {
        let mut json = written(&example());
        *json.pointer_mut(path).expect("it is there") = value;
        judged(&json)
    };
    assert_eq!(with("/header/name", json!(1)), ["$.header.name: 1"]);
    assert_eq!(
        with("/header/wearer", json!("cats")),
        ["$.header.wearer: \"cats\""]
    );
    assert_eq!(
        with("/points/points/0/base", json!({ "nm": 1, "unit": "ell" })),
        ["$.points.points[0].base.unit: \"ell\""]
    );
    let grade = json!({ "same": {}, "derived": {} });
    assert_eq!(with("/points/points/0/grade", grade).len(), 1);
    assert_eq!(
        with("/construction/lines/0", json!({ "nam": "x" })),
        [
            "$.construction.lines[0]: no \"id\"",
            "$.construction.lines[0].nam: unknown"
        ]
    );
}
