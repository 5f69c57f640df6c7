//! One fault planted in a whole spec: it is found, with what follows from it directly, and nothing
//! else is.

use std::collections::{BTreeMap, BTreeSet};

use fellseam::spec::check::{Code, check};
use fellseam::spec::grade;

use crate::packs::{PACKS, spec};
use crate::planted::faults;

/// What is left when a whole section is gone, which takes half of a spec with it.
const OF_NOTHING: [&str; 6] = [
    "sizes-none",
    "drawings-none",
    "points-none",
    "parts-none",
    "colourways-none",
    "materials-none",
];

#[test]
fn each_planted_fault_is_found_and_nothing_else() {
    let whole = BTreeMap::from(PACKS.map(|pack| (pack, spec(pack))));
    let mut wrong = Vec::new();
    for fault in faults() {
        let mut spec = whole[fault.pack].clone();
        (fault.plant)(&mut spec);
        let expected = [fault.follows, &[fault.told]].concat();
        let mut expected: Vec<(String, String)> = expected
            .iter()
            .map(|(code, item)| ((*code).to_owned(), (*item).to_owned()))
            .collect();
        let mut found: Vec<(String, String)> = check(&spec, &grade(&spec))
            .into_iter()
            .map(|it| {
                let item = it.item.map(|id| id.to_string());
                (it.code.name().to_owned(), item.unwrap_or_default())
            })
            .collect();
        expected.sort();
        found.sort();
        if found != expected {
            wrong.push(format!("{}, {:?}: {found:?}", fault.pack, fault.told));
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn every_check_has_its_fault() {
    let planted: BTreeSet<&str> = faults().iter().map(|fault| fault.told.0).collect();
    let codes = Code::ALL.iter().map(|code| code.name());
    let missing: Vec<&str> = codes
        .filter(|code| !planted.contains(code) && !OF_NOTHING.contains(code))
        .collect();
    assert_eq!(missing, [""; 0]);
}
