//! Measurements that were taken elsewhere: what the command says of them.

use serde_json::{Value, json};

use super::fellseam;

/// Eight points of a shell in three sizes.
fn paper() -> Value {
    let point = |id: &str, direction: &str, values: [&str; 3]| {
        json!({
            "id": id,
            "letter": id.to_uppercase(),
            "name": format!("Point {id}"),
            "fabric": "shell",
            "direction": direction,
            "minus": "0.5",
            "plus": "0,5",
            "values": { "S": values[0], "M": values[1], "L": values[2] },
        })
    };
    json!({
        "unit": "cm",
        "base_size": "M",
        "sizes": ["S", "M", "L"],
        "points": [
            point("a", "length", ["68", "70", "72"]),
            point("b", "length", ["60.5", "62", "63.5"]),
            point("c", "length", ["23", "24", "25"]),
            point("d", "length", ["35.2", "36", "36.8"]),
            point("e", "width", ["52", "54", "56"]),
            point("f", "width", ["40.5", "42", "43.5"]),
            point("g", "width", ["17.4", "18", "18.6"]),
            point("h", "width", ["14.5", "15", "15.5"]),
        ],
        "pieces": [{
            "id": "P1",
            "size": "M",
            "measured": [{
                "by": "factory",
                "values": {
                    "a": "67.3", "b": "59.4", "c": "23.1", "d": "34.5",
                    "e": "54.5", "f": "42.1", "g": "17.9", "h": "15.1",
                },
            }],
            "washed": { "a": "66.0", "e": "54.5" },
        }],
        "earlier": [{ "round": "proto", "failed": ["a", "h"] }],
    })
}

fn evaluate(paper: &Value) -> (i32, Value) {
    let ended = fellseam(&["evaluate", "-"], paper.to_string().as_bytes());
    assert!(ended.err.is_empty(), "{}", ended.err);
    (ended.code, ended.json())
}

#[test]
fn a_shrunk_fabric_is_explained_with_its_correction() {
    let (code, answer) = evaluate(&paper());
    assert_eq!(code, 1, "values are out");
    assert_eq!(
        (&answer["measured"], &answer["missing"]),
        (&json!(8), &json!(0))
    );
    let [finding] = &answer["findings"].as_array().unwrap()[..] else {
        panic!("{}", answer["findings"]);
    };
    assert_eq!(finding["cause"], "proportional_shift");
    assert_eq!(
        (&finding["fabric"], &finding["direction"]),
        (&json!("shell"), &json!("length"))
    );
    assert_eq!(finding["points"], json!(["a", "b", "c", "d"]));
    let share: f64 = finding["figures"]["share"]
        .as_str()
        .unwrap()
        .parse()
        .unwrap();
    assert!((-4.3..=-3.7).contains(&share), "{share}");
    let sentence = finding["sentence"].as_str().unwrap();
    assert!(
        sentence.starts_with("shell, along the length: "),
        "{sentence}"
    );
    assert_eq!(answer["repeatability"]["source"], "assumed");
    assert_eq!(answer["repeatability"]["deviation"]["value"], "0.15");
    // Exactly on tolerance passes.
    let verdicts = answer["verdicts"].as_array().unwrap();
    let of = |point: &str| verdicts.iter().find(|it| it["point"] == point).unwrap();
    assert_eq!(
        (&of("e")["verdict"], &of("e")["used_permille"]),
        (&json!("within"), &json!(1000))
    );
    assert_eq!(
        (&of("a")["verdict"], &of("a")["by"]["value"]),
        (&json!("under"), &json!("2.2"))
    );
    assert_eq!(
        of("a")["deviation"],
        json!({ "nm": -27_000_000, "value": "-2.7" })
    );
}

#[test]
fn the_rest_of_the_answer_is_there() {
    let (_, answer) = evaluate(&paper());
    assert_eq!(answer["failed"], json!(["a", "b", "c", "d"]));
    let watch = answer["watch"].as_array().unwrap();
    assert_eq!(watch.len(), 2);
    assert_eq!(
        (&watch[0]["point"], &watch[0]["out"]),
        (&json!("a"), &json!(1))
    );
    assert_eq!(
        (&watch[1]["point"], &watch[1]["out"]),
        (&json!("h"), &json!(0))
    );
    let wash = answer["wash"].as_array().unwrap();
    // (66.0 − 67.3) / 67.3 = −1.93 %; 67.3 / 66.0 = 1.0197.
    assert_eq!(
        (&wash[0]["percent"], &wash[0]["correction"]),
        (&json!("-1.93"), &json!("1.0197"))
    );
    assert_eq!(
        (&wash[1]["percent"], &wash[1]["correction"]),
        (&json!("0"), &json!(null)),
        "no more than measuring explains"
    );
    assert_eq!(answer["steps"], json!([]), "one size has none");
}

#[test]
fn a_round_without_faults_ends_with_nothing_said() {
    let mut good = paper();
    good["pieces"][0]["measured"][0]["values"] =
        json!({ "a": "70.1", "b": "61,8", "c": "24", "e": "54.2 cm", "h": "15.1" });
    let (code, answer) = evaluate(&good);
    assert_eq!(code, 0);
    assert_eq!(answer["findings"], json!([]));
    assert_eq!(answer["missing"], 3);
    let nobody = json!([]);
    good["pieces"] = nobody.clone();
    let (code, answer) = evaluate(&good);
    assert_eq!((code, &answer["verdicts"]), (0, &nobody));
    assert_eq!(answer["repeatability"], Value::Null);
}

/// What is wrong with a paper.
type Change = fn(&mut Value);

#[test]
fn what_does_not_fit_is_told_with_its_path() {
    let refused = |change: Change| {
        let mut paper = paper();
        change(&mut paper);
        let ended = fellseam(&["evaluate", "-"], paper.to_string().as_bytes());
        assert_eq!((ended.code, ended.out.as_str()), (2, ""), "{}", ended.err);
        ended.err
    };
    let cases: [(Change, &str); 9] = [
        (
            |it| it["points"][1]["colour"] = json!("red"),
            "points[1].colour",
        ),
        (
            |it| it["pieces"][0]["size"] = json!("XL"),
            "pieces[0].size: XL is none of the sizes",
        ),
        (
            |it| it["pieces"][0]["measured"][0]["values"]["z"] = json!("1"),
            "pieces[0].measured[0].values: z is none of the points",
        ),
        (
            |it| it["pieces"][0]["measured"][0]["values"]["a"] = json!("long"),
            "pieces[0].measured[0].values.a: “long”",
        ),
        (
            |it| it["points"][0]["minus"] = json!("-0.5"),
            "points[0].minus",
        ),
        (
            |it| it["points"][0]["values"] = json!({ "S": "1", "M": "2" }),
            "points[0].values: L is missing",
        ),
        (|it| it["base_size"] = json!("XS"), "base_size"),
        (
            |it| it["points"][1]["id"] = json!("a"),
            "points: a is there twice",
        ),
        (
            |it| it["pieces"][0]["measured"][0]["values"]["a"] = json!(67.3),
            "write it as text",
        ),
    ];
    for (change, piece) in cases {
        let err = refused(change);
        assert!(err.contains(piece), "{piece}: {err}");
    }
}
