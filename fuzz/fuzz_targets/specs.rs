//! The example with some of its values exchanged, doubled or taken out, as the bytes say: deeper
//! than bytes that are no JSON mostly come.
#![no_main]

use std::sync::LazyLock;

use fellseam::spec::Digest;
use fellseam::spec::canon::from_json;
use fellseam::spec::document::Spec;
use fellseam::spec::example::half_zip;
use libfuzzer_sys::fuzz_target;
use serde_json::{Value, json};

static EXAMPLE: LazyLock<Value> = LazyLock::new(|| {
    let spec = half_zip(Digest::of(b"front"));
    serde_json::to_value(spec).expect("the example is JSON")
});

fuzz_target!(|bytes: &[u8]| {
    let mut spec = EXAMPLE.clone();
    let mut bytes = bytes.iter().copied();
    while let Some(edit) = bytes.next() {
        let taken = whole(&mut bytes, &spec);
        change(&mut spec, &mut bytes, edit, taken);
    }
    let written = serde_json::to_vec(&spec).expect("it is JSON");
    if let Ok(spec) = from_json::<Spec>(&written) {
        fellseam_fuzz::holds(&spec);
    }
});

/// The value that some bytes lead to.
fn whole(bytes: &mut impl Iterator<Item = u8>, spec: &Value) -> Value {
    let mut at = spec;
    for _ in 0..bytes.next().unwrap_or_default() % 8 {
        let n = usize::from(bytes.next().unwrap_or_default());
        let next = match at {
            Value::Array(items) => items.get(n % items.len().max(1)),
            Value::Object(fields) => fields.values().nth(n % fields.len().max(1)),
            _ => None,
        };
        match next {
            Some(next) => at = next,
            None => break,
        }
    }
    at.clone()
}

/// Changes the value that some bytes lead to.
fn change(at: &mut Value, bytes: &mut impl Iterator<Item = u8>, edit: u8, taken: Value) {
    let depth = bytes.next().unwrap_or_default() % 8;
    let mut at = at;
    for _ in 0..depth {
        let n = usize::from(bytes.next().unwrap_or_default());
        let empty = match at {
            Value::Array(items) => items.is_empty(),
            Value::Object(fields) => fields.is_empty(),
            _ => true,
        };
        if empty {
            break;
        }
        at = match at {
            Value::Array(items) => {
                let n = n % items.len();
                &mut items[n]
            }
            Value::Object(fields) => {
                let n = n % fields.len();
                fields.values_mut().nth(n).expect("n is within it")
            }
            _ => break,
        };
    }
    let n = i64::from(bytes.next().unwrap_or_default());
    match (edit % 8, at) {
        (0, Value::Array(items)) if !items.is_empty() => {
            let n = n as usize % items.len();
            items.remove(n);
        }
        (1, Value::Array(items)) if !items.is_empty() => {
            let doubled = items[n as usize % items.len()].clone();
            items.push(doubled);
        }
        (2, Value::Array(items)) if !items.is_empty() => {
            let len = items.len();
            items.swap(0, n as usize % len);
        }
        (0 | 1, Value::Object(fields)) if !fields.is_empty() => {
            let name = fields.keys().nth(n as usize % fields.len()).cloned();
            fields.remove(&name.expect("n is within it"));
        }
        (_, number @ Value::Number(_)) => {
            const EDGES: [i64; 8] = [
                0,
                1,
                -1,
                1_000_000_000_000,
                -1_000_000_000_000,
                396_875,
                255,
                10_000,
            ];
            *number = match edit % 8 {
                0..4 => json!(EDGES[n as usize % EDGES.len()]),
                4 => json!(n * 1_587_500),
                _ => json!(n * 1_000_000 - 128_000_000),
            };
        }
        (3, text @ Value::String(_)) => *text = json!(""),
        (4, text @ Value::String(_)) => *text = json!(n.to_string()),
        (5, Value::Bool(flag)) => *flag = !*flag,
        (6 | 7, at) => *at = taken,
        _ => {}
    }
}
