use std::collections::BTreeMap;

use proptest::prelude::*;
use serde::Deserialize;
use serde_json::json;

use super::*;
use crate::spec::document::{Cell, MeasuringState, Spec};

fn written(value: &Value) -> Result<String, String> {
    to_canonical(value)
        .map(|bytes| String::from_utf8(bytes).unwrap())
        .map_err(|error| error.to_string())
}

fn read<T: DeserializeOwned>(text: &str) -> Result<T, CanonError> {
    from_canonical(text.as_bytes())
}

/// The path and the fault of a text that is refused.
fn refusal<T: DeserializeOwned + fmt::Debug>(text: &str) -> (String, CanonFault) {
    let error = read::<T>(text).unwrap_err();
    (error.path(), error.fault)
}

#[test]
fn text_is_escaped_as_in_the_example_of_rfc_8785() {
    // RFC 8785 sections 3.2.2 to 3.2.4, the member "string"; its other members hold floating
    // point and null, which are refused.
    let input = r#"{"string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/"}"#;
    let value: Value = serde_json::from_str(input).unwrap();
    assert_eq!(
        to_canonical(&value).unwrap(),
        b"{\"string\":\"\xe2\x82\xac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}"
    );
    assert_eq!(
        written(&json!({"literals": [null, true, false]})),
        Err("$.literals[0]: null: what is absent is left out".to_owned())
    );
    assert_eq!(
        written(&json!({"numbers": [4.5]})),
        Err("$.numbers[0]: a number that is not whole: write it as text".to_owned())
    );
    assert_eq!(
        written(&json!("\u{8}\t\n\u{c}\r\u{1f}\u{7f}</script>")),
        Ok("\"\\b\\t\\n\\f\\r\\u001f\u{7f}</script>\"".to_owned())
    );
}

#[test]
fn keys_are_sorted_as_in_the_example_of_rfc_8785() {
    // RFC 8785 section 3.2.3. The last key is not in normalization form C, so that only the order
    // can be held against the example; the rest is written whole.
    let sorted = [
        "\r",
        "1",
        "\u{80}",
        "\u{f6}",
        "\u{20ac}",
        "\u{1f600}",
        "\u{fb33}",
    ];
    let mut keys = [
        "\u{20ac}",
        "\r",
        "\u{fb33}",
        "1",
        "\u{1f600}",
        "\u{80}",
        "\u{f6}",
    ];
    keys.sort_by(|a, b| utf16_order(a, b));
    assert_eq!(keys, sorted);

    let input = r#"{"\u20ac": "Euro Sign", "\r": "Carriage Return", "1": "One",
        "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control",
        "\u00f6": "Latin Small Letter O With Diaeresis"}"#;
    let value: Value = serde_json::from_str(input).unwrap();
    assert_eq!(
        written(&value).unwrap(),
        "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u{80}\":\"Control\",\
         \"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\",\
         \"😀\":\"Emoji: Grinning Face\"}"
    );
    let value = json!({"\u{fb33}": "Hebrew Letter Dalet With Dagesh"});
    assert_eq!(to_canonical(&value).unwrap_err().fault, CanonFault::NotNfc);
    // Above the surrogates but below the supplementary planes: code units, not code points.
    assert_eq!(
        written(&json!({"\u{ff5e}": 1, "\u{1f600}": 2})).unwrap(),
        "{\"\u{1f600}\":2,\"\u{ff5e}\":1}"
    );
}

#[test]
fn keys_are_sorted_without_regard_to_language() {
    // The "french" test data beside RFC 8785 (github.com/cyberphone/json-canonicalization).
    let value = json!({
        "peach": "This sorting order",
        "péché": "is wrong according to French",
        "pêche": "but canonicalization MUST",
        "sin": "ingnore locale",
    });
    assert_eq!(
        written(&value).unwrap(),
        r#"{"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ingnore locale"}"#
    );
}

#[test]
fn integers_are_those_that_every_reader_keeps() {
    // RFC 8785 appendix B: zero is `0`; 2^53 and ~2^68 are integers that are not exact everywhere.
    assert_eq!(written(&json!(0)).unwrap(), "0");
    assert_eq!(
        written(&json!(9_007_199_254_740_991_i64)).unwrap(),
        "9007199254740991"
    );
    assert_eq!(
        written(&json!(-9_007_199_254_740_991_i64)).unwrap(),
        "-9007199254740991"
    );
    for beyond in [
        json!(9_007_199_254_740_992_i64),
        json!(-9_007_199_254_740_992_i64),
        json!(u64::MAX),
        json!(i64::MIN),
    ] {
        let error = to_canonical(&json!({ "n": beyond })).unwrap_err();
        assert_eq!(error.fault, CanonFault::IntegerTooLarge);
        assert_eq!(error.path(), "$.n");
    }
    for beyond in [
        "9007199254740992",
        "-9007199254740992",
        "295147905179352830000",
    ] {
        let text = format!("[1,{beyond}]");
        assert_eq!(
            refusal::<Value>(&text),
            ("$[1]".to_owned(), CanonFault::IntegerTooLarge)
        );
    }
    assert_eq!(to_canonical(&f64::NAN).unwrap_err().fault, CanonFault::Null);
    assert_eq!(to_canonical(&-0.0).unwrap_err().fault, CanonFault::Float);
}

#[test]
fn what_a_canonical_document_cannot_hold_is_refused_with_its_path() {
    use CanonFault::*;
    for (text, path, fault) in [
        (r#"{"a":{"b":1,"b":1}}"#, "$.a.b", DuplicateKey),
        (r#"{"a":[1,2.0]}"#, "$.a[1]", Float),
        (r#"{"a":1e3}"#, "$.a", Float),
        (r#"{"a":[{"b c":null}]}"#, r#"$.a[0]["b c"]"#, Null),
        (r#"{"a":"x\u0000"}"#, "$.a", Nul),
        ("{\"a\":\"e\u{301}\"}", "$.a", NotNfc),
        ("[{\"e\u{301}\":1}]", "$[0]", NotNfc),
        ("", "$", Syntax { at: 0 }),
        ("{", "$", Syntax { at: 1 }),
        ("[1,]", "$[1]", Syntax { at: 3 }),
        ("[1 2]", "$", Syntax { at: 3 }),
        ("{\"a\":1}x", "$", Syntax { at: 7 }),
        ("[01]", "$[0]", Syntax { at: 1 }),
        ("[-]", "$[0]", Syntax { at: 1 }),
        ("[+1]", "$[0]", Syntax { at: 1 }),
        ("\"a\nb\"", "$", Syntax { at: 2 }),
        ("\"a", "$", Syntax { at: 1 }),
        (r#""\x""#, "$", Syntax { at: 2 }),
        (r#""\ud83d""#, "$", Syntax { at: 7 }),
        (r#""\ud83d\u0041""#, "$", Syntax { at: 13 }),
        (r#""\ude00""#, "$", Syntax { at: 7 }),
        (r#""\u+123""#, "$", Syntax { at: 3 }),
    ] {
        assert_eq!(refusal::<Value>(text), (path.to_owned(), fault), "{text}");
    }
    assert_eq!(
        from_canonical::<Value>(b"\"\xff\"").unwrap_err().fault,
        Syntax { at: 1 }
    );
    let deep = "[".repeat(100_000);
    assert_eq!(refusal::<Value>(&deep).1, TooDeep);
}

#[test]
fn another_writing_of_the_same_is_not_canonical() {
    for (text, at) in [
        (r#"{"b":1,"a":2}"#, 2),
        (r#"{ "a":2}"#, 1),
        ("[1] ", 3),
        (r#"["\u0041"]"#, 2),
        (r#"["\u001F"]"#, 7),
        (r#"["\/"]"#, 2),
        ("[-0]", 1),
    ] {
        assert_eq!(
            refusal::<Value>(text).1,
            CanonFault::NotCanonical { at },
            "{text}"
        );
    }
}

#[test]
fn what_the_type_refuses_has_its_path() {
    let (path, fault) = refusal::<Spec>(r#"{"header":{"colour":"red"}}"#);
    assert_eq!(
        (path.as_str(), fault),
        ("$.header.colour", CanonFault::UnknownField)
    );
    let (path, fault) = refusal::<Spec>(r#"{"sizes":{"sizes":[{"code":"M"}]}}"#);
    assert_eq!(path, "$.sizes.sizes[0]");
    assert_eq!(fault, CanonFault::Refused("missing field `id`".to_owned()));
    let point = r#"{"points":{"points":[{"base":{"nm":1000000000001,"unit":"cm"},"id":"a","letter":"A","name":"x"}]}}"#;
    let (path, fault) = refusal::<Spec>(point);
    assert_eq!(path, "$.points.points[0].base.nm");
    assert!(matches!(fault, CanonFault::Refused(_)));
    let (path, _) = refusal::<Spec>(r#"{"header":{"unit":"yard"}}"#);
    assert_eq!(path, "$.header.unit");
    let (path, _) = refusal::<Spec>(r#"{"header":{"measured":{"after_washes":300}}}"#);
    assert_eq!(path, "$.header.measured.after_washes");
    let (path, _) = refusal::<Spec>(r#"{"header":{"measured":{"after_washes":1,"as_sewn":1}}}"#);
    assert_eq!(path, "$.header.measured");
    let (path, fault) = refusal::<Cell>(r#"{"natural":{"a":1}}"#);
    assert_eq!(
        (path.as_str(), fault),
        ("$.natural.a", CanonFault::UnknownField)
    );
    assert_eq!(refusal::<MeasuringState>(r#""after_washes""#).0, "$");
    assert_eq!(refusal::<MeasuringState>(r#"{"as_sewn":1}"#).0, "$");
    assert_eq!(refusal::<(u8, u8)>("[1,2,3]").0, "$");
    assert_eq!(refusal::<(u8, u8)>("[1]").0, "$");
}

/// One of each shape that a document may be made of.
#[derive(Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Shapes {
    option: Option<u8>,
    newtype: Newtype,
    pair: (i16, bool),
    map: BTreeMap<Newtype, Vec<Kind>>,
}

#[derive(Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
struct Newtype(String);

#[derive(Debug, PartialEq, Serialize, Deserialize)]
enum Kind {
    Unit,
    One(i64),
    Two(i64, String),
    Named { a: char },
}

#[test]
fn every_shape_comes_back() {
    let shapes = Shapes {
        option: Some(7),
        newtype: Newtype("n".to_owned()),
        pair: (-3, true),
        map: BTreeMap::from([(
            Newtype("k".to_owned()),
            vec![
                Kind::Unit,
                Kind::One(5),
                Kind::Two(6, "t".to_owned()),
                Kind::Named { a: 'é' },
            ],
        )]),
    };
    let bytes = to_canonical(&shapes).unwrap();
    assert_eq!(from_canonical::<Shapes>(&bytes).unwrap(), shapes);
}

#[test]
fn text_is_composed_at_the_edge() {
    assert_eq!(nfc("Cafe\u{301}"), "Caf\u{e9}");
    assert!(written(&json!(nfc("Cafe\u{301}"))).is_ok());
}

fn any_text() -> impl Strategy<Value = String> {
    "\\PC{0,8}|[\"\\\\/\u{1}-\u{1f}a-zé€😀\u{80}]{0,8}".prop_map(|text| nfc(&text))
}

fn any_value() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        any::<bool>().prop_map(Value::from),
        (-MAX_INTEGER..=MAX_INTEGER).prop_map(Value::from),
        any_text().prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 40, 6, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            proptest::collection::hash_map(any_text(), inner, 0..6)
                .prop_map(|fields| Value::Object(fields.into_iter().collect())),
        ]
    })
}

proptest! {
    #[test]
    fn reading_and_writing_again_gives_the_same_bytes(value in any_value()) {
        let bytes = to_canonical(&value).unwrap();
        let read: Value = from_canonical(&bytes).unwrap();
        prop_assert_eq!(&read, &value);
        prop_assert_eq!(to_canonical(&read).unwrap(), bytes.clone());
        // As people write it, it says the same.
        let written = serde_json::to_vec_pretty(&value).unwrap();
        prop_assert_eq!(from_json::<Value>(&written).unwrap(), value.clone());
        // An independent parser agrees on what the bytes say.
        prop_assert_eq!(serde_json::from_slice::<Value>(&bytes).unwrap(), value);
    }

    #[test]
    fn reading_never_panics(bytes in proptest::collection::vec(any::<u8>(), 0..64)) {
        let _ = from_canonical::<Value>(&bytes);
    }

    #[test]
    fn what_is_read_is_what_a_common_parser_reads(text in "[\\[\\]{}:,\"\\\\u0-9aeE.+ -]{0,24}") {
        if let Ok(value) = from_canonical::<Value>(text.as_bytes()) {
            prop_assert_eq!(serde_json::from_str::<Value>(&text).unwrap(), value);
        }
    }
}
