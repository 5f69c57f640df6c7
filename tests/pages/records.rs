//! The signed record: read on its page, downloaded, checked elsewhere, and held against the ledger.

use std::process::Command;

use axum::http::StatusCode;
use fellseam::exchange::record::{Key, PublicKey, check};
use fellseam::exchange::round::Outcome;

use crate::pages::Site;
use crate::support::cast::measured_round;
use crate::support::database::on_both;
use crate::support::past::Past;

/// Both sides have signed revision 1.
async fn signed(site: &Site) {
    let cast = &site.cast;
    cast.sao_mai.acknowledges(1).await.unwrap();
    cast.sao_mai.signs_revision(1).await.unwrap();
    cast.brand.signs_revision(&cast.sao_mai, 1).await.unwrap();
}

async fn key(site: &Site) -> PublicKey {
    site.cast.store.record_key().await.unwrap().public()
}

on_both! {
    async fn what_both_signed_is_downloaded_by_either_and_holds(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let revision = format!("{}/revisions/1", site.style);
        assert!(!linh.visits(&revision).await.sees("Signed record"));
        signed(&site).await;
        let link = linh.visits(&revision).await.attributes("a[href*='/record']", "href");
        let page = linh.visits(&link[0]).await;
        page.must_be(StatusCode::OK);
        page.must_see("Linh");
        page.must_see("Iris");
        let key = key(&site).await;
        page.must_see(&format!("--key {key}"));

        let mut iris = site.browser(&site.cast.brand.lead).await;
        for browser in [&mut linh, &mut iris] {
            let page = browser.visits(&link[0]).await;
            let file = page.attributes("a[download]", "href");
            let file = browser.visits(&file[0]).await;
            assert!(file.header("content-disposition").starts_with("attachment"));
            let checked = check(&file.bytes, &key).expect("a record");
            assert_eq!(checked.doubts, []);
            let names: Vec<_> = checked.record.signatures.iter().map(|it| it.name.as_deref()).collect();
            assert_eq!(names, [Some("Linh"), Some("Iris")]);
            let digest = site.cast.brand.revision(1).await.digest;
            assert_eq!(checked.record.subject.digest, Some(digest));
        }
    }
}

/// What `fellseam check-record` ends with, and what it prints.
fn checks(bytes: &[u8], key: &PublicKey) -> (Option<i32>, String) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let file = folder.path().join("record.json");
    std::fs::write(&file, bytes).expect("a file");
    let mut program = Command::new(env!("CARGO_BIN_EXE_fellseam"));
    let program = program
        .arg("check-record")
        .arg(&file)
        .arg("--key")
        .arg(key.to_string());
    let ended = program.output().expect("it runs");
    let said = [ended.stdout, ended.stderr].concat();
    (
        ended.status.code(),
        String::from_utf8_lossy(&said).into_owned(),
    )
}

on_both! {
    async fn a_changed_byte_is_named_on_any_machine(db) {
        let site = Site::with_revision(db).await;
        signed(&site).await;
        let key = key(&site).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let file = linh.visits(&format!("{}/revisions/1/record/file", site.style)).await;
        let (code, said) = checks(&file.bytes, &key);
        assert_eq!(code, Some(0), "{said}");
        assert!(said.contains("by Linh") && said.contains("Everything holds."), "{said}");

        let text = String::from_utf8(file.bytes.clone()).expect("text");
        let forged = text.replacen("\"name\":\"Linh\"", "\"name\":\"Lina\"", 1);
        assert_ne!(forged, text);
        let (code, said) = checks(forged.as_bytes(), &key);
        assert_eq!(code, Some(1), "{said}");
        assert!(said.contains("record.signatures[0].name"), "{said}");

        // Another service's key, and what is no record.
        let other = Key::new([3; 32]).public();
        let (code, said) = checks(&file.bytes, &other);
        assert_eq!(code, Some(1), "{said}");
        assert!(said.contains("record.key") && said.contains("signature"), "{said}");
        assert_eq!(checks(b"{}", &key).0, Some(2));
    }
}

on_both! {
    async fn a_round_has_a_record_with_its_measurements(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &[(1, "point-c", "26 1/2")]).await;
        cast.brand.decides(&round, Outcome::Approved, "Good", &[]).await.unwrap();
        cast.brand.signs_round(&round).await.unwrap();
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let file = format!("{}/rounds/{round}/record/file", site.style);
        let file = linh.visits(&file).await;
        let checked = check(&file.bytes, &key(&site).await).expect("a record");
        assert_eq!(checked.doubts, []);
        let content = checked.record.subject.content.expect("what was signed");
        assert!(content.contains("point-c"), "{content}");
        // Another factory knows of none of it.
        let mut rafiq = site.browser(&cast.meghna.lead).await;
        let file = format!("{}/rounds/{round}/record/file", site.style);
        rafiq.visits(&file).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn a_ledger_that_was_written_anew_is_found_by_a_record_kept_elsewhere(db, address) {
        let site = Site::with_revision(db).await;
        signed(&site).await;
        let store = &site.cast.store;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let file = format!("{}/revisions/1/record/file?with={}", site.style, site.cast.sao_mai.org);
        let file = iris.visits(&file).await;
        let record = check(&file.bytes, &key(&site).await).expect("a record").record;
        assert_eq!(store.audit_against(&record).await.unwrap(), None);

        // The last entry is cut off.
        let last = record.chain.head.seq;
        let mut past = Past::the_guards(&address).await;
        past.run(&format!("DELETE FROM ledger WHERE seq = {last} AND style = '{}'", site.cast.brand.style)).await;
        let fault = store.audit_against(&record).await.unwrap().expect("a fault");
        assert_eq!(fault.what, format!("ledger entry {last}"));
    }
}
