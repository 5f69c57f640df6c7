//! What is to be mended leads to where it is mended.

use std::collections::{BTreeMap, BTreeSet};

use fellseam::spec::check::check;
use fellseam::spec::document::Exemption;
use fellseam::spec::grade;

use crate::pages::{Page, Site};
use crate::support::database::{on_both, on_sqlite};
use crate::support::faults::faults;
use crate::support::packs;

/// What one can act on, or write in.
const CONTROLS: &str = "input:not([type=hidden]), select, textarea, button, summary, a[href]";

/// Why one who follows the link stands before nothing that could be mended; `None` where something
/// can.
fn idle(page: &Page, anchor: &str) -> Option<&'static str> {
    // A row, or the form of a section, is where something is missing that has no field of its own.
    let whole = anchor.starts_with("row-") || anchor == "section";
    let at = format!("[id=\"{anchor}\"]");
    let [found, control, within] = [
        at.clone(),
        format!("{at}:is({CONTROLS})"),
        format!("{at} :is({CONTROLS})"),
    ]
    .map(|selector| {
        !page.attributes(&selector, "id").is_empty() || !page.all(&selector).is_empty()
    });
    match (found, control, within) {
        (false, _, _) => Some("is not there"),
        (_, true, _) => None,
        (_, _, true) if whole || is_group(page, &at) => None,
        _ => Some("is no control"),
    }
}

/// A group of fields, such as the ticks of one question.
fn is_group(page: &Page, at: &str) -> bool {
    let groups = format!("{at}:is(fieldset, [role=group], details, td, .field)");
    !page.all(&groups).is_empty()
}

/// Hundreds of pages, and nothing in them comes to depend on the database.
async fn leads_to_controls(pack: &str) {
    on_sqlite(async |db, _| {
        let site = Site::new(db).await;
        // The owner, who may mend everything.
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let mut wrong = BTreeSet::new();
        let mut followed = BTreeSet::new();
        let mut planted = BTreeSet::new();
        for fault in faults().into_iter().filter(|fault| fault.pack == pack) {
            planted.insert(fault.told.0.to_owned());
            let mut spec = packs::spec(fault.pack);
            (fault.plant)(&mut spec);
            site.cast.brand.edits(|draft| *draft = spec.clone()).await;
            let told = check(&spec, &grade(&spec));
            let publish = nell.visits(&format!("{}/publish", site.style)).await;
            let ways = publish.attributes(".findings a", "href");
            let codes = publish.all(".findings code");
            assert_eq!(codes.len(), told.len(), "{:?}", fault.told);
            let mut pages: BTreeMap<String, Page> = BTreeMap::new();
            for (way, code) in ways.iter().zip(&codes) {
                let (path, anchor) = way.split_once('#').expect("an anchor");
                if !pages.contains_key(path) {
                    pages.insert(path.to_owned(), nell.visits(path).await);
                }
                let page = &pages[path];
                followed.insert(code.clone());
                if let Some(why) = idle(page, anchor) {
                    let path = path.trim_start_matches(&site.style);
                    wrong.insert(format!("{code}: {path}#{anchor} {why} ({})", page.status));
                }
            }
        }
        assert!(
            planted.is_subset(&followed) && !planted.is_empty(),
            "{followed:?}"
        );
        let wrong: Vec<String> = wrong.into_iter().collect();
        assert!(
            wrong.is_empty(),
            "{} of {}\n{}",
            wrong.len(),
            followed.len(),
            wrong.join("\n")
        );
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_finding_of_a_half_zip_leads_to_a_control() {
    leads_to_controls("half-zip").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_finding_of_a_rain_jacket_leads_to_a_control() {
    leads_to_controls("rain-jacket").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_finding_of_trail_shorts_leads_to_a_control() {
    leads_to_controls("trail-shorts").await;
}

on_both! {
    async fn who_cannot_set_rules_aside_is_told_who_can(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let exemption = Exemption {
            code: "hood-cord".to_owned(),
            ..Exemption::default()
        };
        site.cast.brand.edits(|draft| draft.header.exemptions.push(exemption)).await;
        let header = iris.visits(&format!("{}/draft/header", site.style)).await;
        let aside = header.all("#exemptions");
        assert_eq!(aside.len(), 1);
        assert!(aside[0].contains("hood-cord"), "{aside:?}");
        assert!(aside[0].contains("Only an owner can complete or remove these"), "{aside:?}");
    }
}
