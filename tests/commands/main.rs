//! The commands that work on spec files, as a script uses them: the real binary, its JSON, its
//! exit codes.

mod evaluate;

use std::io::{Cursor, Write};
use std::process::{Command, Stdio};

use fellseam::exchange::revision::Frozen;
use fellseam::print::archive::{Archive, Original};
use fellseam::spec::check;
use fellseam::spec::document::{FORMAT, Grade};
use fellseam::spec::example::half_zip;
use fellseam::spec::{DecimalSign, Digest, Entered, Length, Section, Spec, Unit};
use serde_json::{Value, json};

/// What a command printed and how it ended.
struct Ended {
    code: i32,
    out: String,
    err: String,
}

impl Ended {
    fn json(&self) -> Value {
        serde_json::from_str(&self.out).unwrap_or_else(|why| panic!("{why}: {}", self.out))
    }
}

/// Runs the program with this on its standard input.
fn fellseam(arguments: &[&str], input: &[u8]) -> Ended {
    let mut child = Command::new(env!("CARGO_BIN_EXE_fellseam"))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(input).unwrap();
    let ended = child.wait_with_output().unwrap();
    Ended {
        code: ended.status.code().expect("it ended by itself"),
        out: String::from_utf8(ended.stdout).unwrap(),
        err: String::from_utf8(ended.stderr).unwrap(),
    }
}

fn example() -> Spec {
    half_zip(Digest::of(b"front"))
}

/// As people write it: indented.
fn written(spec: &Spec) -> Vec<u8> {
    serde_json::to_vec_pretty(spec).unwrap()
}

/// A revision that was published long ago.
fn revision() -> Frozen {
    let mut revision = Frozen::read(include_bytes!("../golden/revision-format-1.json")).unwrap();
    revision.decimal = DecimalSign::Comma;
    revision
}

#[test]
fn the_schema_names_every_section() {
    let ended = fellseam(&["schema"], b"");
    assert_eq!(ended.code, 0);
    let schema = ended.json();
    for section in Section::ALL {
        let fields = &schema["properties"][section.name()]["properties"];
        assert!(fields.is_object(), "{}", section.name());
    }
    let wearers = &schema["properties"]["header"]["properties"]["wearer"]["enum"];
    assert!(wearers.as_array().unwrap().contains(&json!("women")));
}

#[test]
fn a_spec_without_faults_is_ready() {
    let ended = fellseam(&["ready", "-"], &written(&example()));
    assert_eq!(ended.code, 0, "{}", ended.out);
    let answer = ended.json();
    assert_eq!(answer["errors"], 0);
    assert_eq!(answer["rules"], check::RULES);
}

#[test]
fn a_fault_is_told_with_its_place_and_ends_with_one() {
    let mut spec = example();
    spec.points.points[1].minus = None;
    let ended = fellseam(&["ready", "-", "--language", "en"], &written(&spec));
    assert_eq!(ended.code, 1);
    let answer = ended.json();
    let findings = answer["findings"].as_array().unwrap();
    let minus = findings
        .iter()
        .find(|it| it["code"] == "point-minus-missing");
    let minus = minus.expect("it is found");
    assert_eq!(minus["severity"], "error");
    assert_eq!(minus["section"], "points");
    assert_eq!(minus["item"], "point-b");
    assert_eq!(minus["letter"], "B");
    assert_eq!(minus["field"], "minus");
    assert!(
        minus["sentence"]
            .as_str()
            .unwrap()
            .starts_with("B Bottom width")
    );
}

#[test]
fn a_chart_has_every_size_in_both_units() {
    let mut spec = example();
    // Between two steps of 1/8: exact and rounded differ.
    let Some(Grade::Segments { segments }) = &mut spec.points.points[1].grade else {
        panic!("it is graded in segments");
    };
    segments[1].step = Entered {
        nm: Length::nm(21 * 1_587_500),
        unit: Unit::Inch,
    };
    spec.points.points[2].grade = None;
    let ended = fellseam(&["chart", "-"], &written(&spec));
    assert_eq!(ended.code, 1, "a point has no line");
    let answer = ended.json();
    assert_eq!(answer["unit"], "inch");
    assert_eq!(answer["reference_unit"], "cm");
    let b = &answer["points"][1];
    assert_eq!(b["letter"], "B");
    let xl = &b["sizes"][4];
    assert_eq!(xl["code"], "XL");
    let length = |nm: i64, value: &str, reference: &str| json!({ "nm": nm, "value": value, "reference": reference });
    assert_eq!(xl["exact"], length(566_737_500, "22 5/16 in", "56.7 cm"));
    assert_eq!(xl["rounded"], length(568_325_000, "22 3/8 in", "56.8 cm"));
    assert_eq!(xl["minus"], length(6_350_000, "1/4 in", "0.6 cm"));
    let without = answer["without"].as_array().unwrap();
    // C itself, and J that follows it.
    assert_eq!(without.len(), 2, "{without:?}");
    assert_eq!(without[0]["why"], json!(["no grade"]));

    let whole = fellseam(&["chart", "-"], &written(&example()));
    assert_eq!(whole.code, 0);
    assert_eq!(whole.json()["without"], json!([]));
}

#[test]
fn a_revision_is_read_as_it_was_frozen() {
    let mut revision = revision();
    // The contract, even where today's program would round otherwise.
    revision.chart.rows[0].values[0] = Length::nm(25_400_000);
    let (bytes, _) = revision.seal().unwrap();
    for bytes in [bytes, serde_json::to_vec_pretty(&revision).unwrap()] {
        let ended = fellseam(&["chart", "-"], &bytes);
        assert_eq!(ended.code, 0, "{}", ended.err);
        let value = &ended.json()["points"][0]["sizes"][0]["rounded"];
        assert_eq!(value["value"], "1 in");
        assert_eq!(value["reference"], "2,5 cm", "its own decimal sign");
        assert_eq!(
            fellseam(&["ready", "-"], &bytes).json()["rules"],
            check::RULES
        );
    }
    revision.format = FORMAT + 1;
    let newer = serde_json::to_vec(&revision).unwrap();
    let ended = fellseam(&["chart", "-"], &newer);
    assert_eq!(ended.code, 2);
    assert!(
        ended.err.contains("this program reads 1 to"),
        "{}",
        ended.err
    );
}

#[test]
fn changes_are_told_as_data_and_in_words() {
    let folder = tempfile::tempdir().unwrap();
    let old = folder.path().join("old.json");
    std::fs::write(&old, written(&example())).unwrap();
    let old = old.to_str().unwrap();
    let same = fellseam(&["changes", old, old], b"");
    assert_eq!((same.code, same.json()), (0, json!({ "changes": [] })));

    let mut new = example();
    let Some(Grade::Segments { segments }) = &mut new.points.points[1].grade else {
        panic!("it is graded in segments");
    };
    segments[1].step.nm = Length::nm(24 * 1_587_500);
    new.construction.callouts.remove(1);
    let new = fellseam(&["changes", old, "-"], &written(&new));
    assert_eq!(new.code, 0, "{}", new.err);
    let answer = new.json();
    let [rule, callout] = &answer["changes"].as_array().unwrap()[..] else {
        panic!("{answer}");
    };
    assert_eq!(rule["section"], "points");
    assert_eq!(
        (&rule["list"], &rule["item"]),
        (&json!("points"), &json!("point-b"))
    );
    assert_eq!(
        (&rule["kind"], &rule["field"]),
        (&json!("changed"), &json!("grade"))
    );
    assert_eq!(
        rule["old"]["segments"]["segments"][1]["step"]["nm"],
        31_750_000
    );
    assert_eq!(
        rule["new"]["segments"]["segments"][1]["step"]["nm"],
        38_100_000
    );
    assert_eq!(
        rule["sizes"],
        json!([{ "size": "size-xl", "old": 565_150_000, "new": 571_500_000 }])
    );
    assert_eq!(
        rule["sentence"],
        "B Bottom width: Grade rule L–XL: 1 1/4 in (3.2 cm) → 1 1/2 in (3.8 cm) \
         (1 size changes, base M does not). XL 22 1/4 → 22 1/2 in"
    );
    assert_eq!(
        (&callout["kind"], &callout["item"]),
        (&json!("removed"), &json!("callout-2"))
    );
    assert_eq!(callout["old"]["letter"], "2");
}

#[test]
fn what_cannot_be_read_is_told_with_its_place_and_ends_with_two() {
    let spec = String::from_utf8(written(&example())).unwrap();
    let cases = [
        (
            spec.replace("\"season\"", "\"saeson\""),
            "$.header.saeson: an unknown field",
        ),
        (
            spec.replace("\"Shoal half-zip\"", "null"),
            "$.header.name: null",
        ),
        (
            spec.replace("\"Shoal half-zip\"", "1.5"),
            "$.header.name: a number that is not whole",
        ),
        (
            spec.replace("\"season\":", "\"name\": \"again\", \"season\":"),
            "$.header.name: the same key twice",
        ),
        (
            "{\n  \"header\": {\n    name".to_owned(),
            "not JSON at line 3, column 5",
        ),
        (String::new(), "not JSON at line 1, column 1"),
    ];
    for (given, said) in cases {
        for command in ["ready", "chart"] {
            let ended = fellseam(&[command, "-"], given.as_bytes());
            assert_eq!(ended.code, 2, "{said}: {}", ended.out);
            assert!(ended.err.contains(said), "{said}: {}", ended.err);
            assert_eq!(ended.out, "");
        }
    }
    let ended = fellseam(&["changes", "-", "no-such-file.json"], spec.as_bytes());
    assert_eq!(ended.code, 2);
    assert!(ended.err.contains("no-such-file.json: "), "{}", ended.err);
    let ended = fellseam(&["ready", "-", "--language", "tlh"], spec.as_bytes());
    assert_eq!(ended.code, 2);
    assert!(
        ended.err.contains("not among the languages: en"),
        "{}",
        ended.err
    );
}

/// A style as it is downloaded.
fn archived(document: &[u8], front: &[u8]) -> Vec<u8> {
    let mut archive = Archive::begin(Cursor::new(Vec::new()), document).unwrap();
    let original = Original {
        file: &Digest::of(front),
        name: "front.svg",
        media_type: "image/svg+xml",
        ending: "svg",
    };
    archive.add(original, front).unwrap();
    archive.end().unwrap().into_inner()
}

#[test]
fn an_archive_is_read_like_the_document_in_it() {
    let frozen = revision();
    let (revision, _) = frozen.seal().unwrap();
    for (document, command) in [
        (written(&example()), "ready"),
        (written(&example()), "chart"),
        (revision.clone(), "chart"),
    ] {
        let bare = fellseam(&[command, "-"], &document);
        let archived = fellseam(&[command, "-"], &archived(&document, b"front"));
        assert_eq!(archived.code, 0, "{}", archived.err);
        assert_eq!(archived.out, bare.out);
    }
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("HT-204.zip");
    std::fs::write(&file, archived(&revision, b"front")).unwrap();
    let same = fellseam(&["changes", file.to_str().unwrap(), "-"], &revision);
    assert_eq!((same.code, same.json()), (0, json!({ "changes": [] })));
}

#[test]
fn an_archive_that_is_none_is_told_and_ends_with_two() {
    let whole = archived(&written(&example()), b"front");
    let spoilt = |from: &[u8], to: &[u8]| {
        let mut bytes = whole.clone();
        let places: Vec<usize> = (0..bytes.len())
            .filter(|at| bytes[*at..].starts_with(from))
            .collect();
        assert!(!places.is_empty());
        for at in places {
            bytes[at..at + to.len()].copy_from_slice(to);
        }
        bytes
    };
    for (given, said) in [
        (whole[..whole.len() / 2].to_vec(), "the zip is damaged"),
        (
            spoilt(b"spec.json", b"../spec.j"),
            "\"../spec.j\" is no entry that an archive has",
        ),
        (
            spoilt(b"files.json", b"spec.json\0"),
            "is no entry that an archive has",
        ),
    ] {
        for command in ["ready", "chart"] {
            let ended = fellseam(&[command, "-"], &given);
            assert_eq!(ended.code, 2, "{said}: {}", ended.out);
            assert!(ended.err.contains(said), "{said}: {}", ended.err);
            assert_eq!(ended.out, "");
        }
    }
    // What is wrong within is told as of the document itself.
    let spec = String::from_utf8(written(&example())).unwrap();
    let spec = spec.replace("\"season\"", "\"saeson\"");
    let ended = fellseam(&["ready", "-"], &archived(spec.as_bytes(), b"front"));
    assert_eq!(ended.code, 2);
    assert!(
        ended.err.contains("$.header.saeson: an unknown field"),
        "{}",
        ended.err
    );
}

#[test]
fn the_doctor_says_what_a_plain_address_does_without() {
    for (address, said) in [
        (
            "https://specs.example.org",
            "offline: the measuring page opens again",
        ),
        ("http://specs.example.org", "offline: the address is plain"),
    ] {
        let ended = fellseam(&["doctor", "--public-url", address], b"");
        assert!(ended.out.starts_with(said), "{}", ended.out);
    }
    let ended = fellseam(&["doctor"], b"");
    assert!(
        ended
            .out
            .starts_with("offline: no public address is given."),
        "{}",
        ended.out
    );
}

#[test]
fn the_doctor_says_for_every_language_what_prints_it() {
    let ended = fellseam(&["doctor"], b"");
    for language in fellseam::language::Language::ALL {
        let line = format!("print {} ({}): ", language.tag(), language.own_name());
        let family = ended.out.lines().find_map(|it| it.strip_prefix(&line));
        let family = family.unwrap_or_else(|| panic!("no line {line}: {}", ended.out));
        assert!(
            family.contains("Sans") || family.contains("apt install fonts-"),
            "{family}"
        );
    }
}
