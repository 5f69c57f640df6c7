//! The demo's pages, which are full: on a phone and on a large screen.

use crate::stage::Stage;
use crate::window::Window;

/// Opens every page that can be reached by links from a page, each kind of page a few times at
/// most. Each must be whole, quiet in the console and no wider than the window.
async fn looks_everywhere(window: &Window, from: &str) -> Vec<String> {
    let mut seen: Vec<String> = Vec::new();
    let mut kinds: Vec<String> = Vec::new();
    let mut ahead = vec![from.to_owned()];
    while let Some(path) = ahead.pop() {
        let kind = kind_of(&path);
        let often = kinds.iter().filter(|other| **other == kind).count() >= 2;
        if often || seen.contains(&path) {
            continue;
        }
        kinds.push(kind);
        window.opens(&path).await;
        let lost = window.sees("Not found").await || window.sees("This did not work").await;
        if lost {
            window.fails("a link leads nowhere").await;
        }
        let script = "return [...document.querySelectorAll('a[href^=\"/\"]')]
            .map((e) => e.getAttribute('href').split('#')[0])
            .filter((href) => href && !href.includes('/files/') && !href.endsWith('/document'))";
        let links = window.asks(script, &[]).await;
        let links = links.as_array().into_iter().flatten();
        ahead.extend(
            links
                .filter_map(|link| link.as_str())
                .map(ToOwned::to_owned),
        );
        seen.push(path);
    }
    seen
}

/// An address without what it names: two pages of one kind are enough.
fn kind_of(path: &str) -> String {
    let lists = [
        "styles",
        "revisions",
        "items",
        "rounds",
        "threads",
        "people",
        "seals",
        "inspections",
        "piece",
        "point",
        "wash",
        "with",
    ];
    let mut kind = String::new();
    let mut named = false;
    for part in path
        .split(['/', '?', '&', '='])
        .filter(|part| !part.is_empty())
    {
        kind.push_str(if named && part != "new" { "/*" } else { "/" });
        kind.push_str(if named && part != "new" { "" } else { part });
        named = lists.contains(&part);
    }
    kind
}

fn has_seen(seen: &[String], parts: &[&str]) {
    for part in parts {
        assert!(
            seen.iter().any(|path| path.contains(part)),
            "{part} is not among {seen:?}"
        );
    }
}

const SHARED: [&str; 6] = [
    "/revisions/",
    "/changes",
    "/items/",
    "/rounds/",
    "/ledger",
    "/me",
];

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_page_of_the_factory_fits_a_phone() {
    let stage = Stage::demo().await;
    for who in ["Merchandiser, Sao Mai", "Sample room, Sao Mai"] {
        let window = stage.of_demo(who, true).await;
        let seen = looks_everywhere(&window, "/").await;
        has_seen(&seen, &SHARED);
        has_seen(&seen, &["/measure", "/readings"]);
        window.closes().await;
    }
    let farida = stage.of_demo("Inspector, Meghna", true).await;
    let seen = looks_everywhere(&farida, "/").await;
    has_seen(&seen, &["/seals/", "/inspect", "/inspections/", "/piece"]);
    farida.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn every_page_of_the_brand_fits_a_large_screen() {
    let stage = Stage::demo().await;
    let iris = stage.of_demo("Designer", false).await;
    let seen = looks_everywhere(&iris, "/").await;
    has_seen(&seen, &SHARED);
    let brand = [
        "/styles",
        "/draft/header",
        "/draft/sizes",
        "/draft/drawings",
        "/draft/points",
    ];
    has_seen(&seen, &brand);
    has_seen(&seen, &["/draft/colourways", "/publish", "/rounds/new"]);
    iris.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_value_measured_without_a_connection_is_kept_and_sent_later() {
    let stage = Stage::demo().await;
    let hoa = stage.of_demo("Sample room, Sao Mai", true).await;
    hoa.presses("Measure and dispatch sample round 1").await;
    hoa.presses("Measure").await;
    let missing = "const field = [...document.querySelectorAll('input[name=value]')].find((e) => e.offsetParent);
        return field.defaultValue === ''";
    hoa.waits_until(missing).await;
    let name = hoa.reads_in(".measure-point:not([hidden]) h1").await;
    let spec = hoa.reads_in(".measure-point:not([hidden]) .number b").await;
    let field =
        "return [...document.querySelectorAll('input[name=value]')].find((e) => e.offsetParent).id";
    let id = hoa.asks(field, &[]).await;
    let id = id.as_str().expect("an id");
    let value = spec.split_whitespace().next().expect("a value");

    let here = hoa
        .asks("return location.pathname + location.search", &[])
        .await;

    hoa.connects(false).await;
    hoa.types(id, value).await;
    hoa.presses("Save, next").await;
    hoa.must_see("not sent yet: 1").await;
    let next = hoa.reads_in(".measure-point:not([hidden]) h1").await;
    assert_ne!(next, name, "the next point can be measured");

    hoa.connects(true).await;
    hoa.waits_until("return document.querySelector('.measure-waiting').hidden")
        .await;
    // The server has it: it stands in the page that it makes.
    hoa.opens(here.as_str().expect("an address")).await;
    let kept = hoa
        .asks(
            "return document.getElementById(arguments[0]).defaultValue",
            &[id],
        )
        .await;
    assert_eq!(kept, value);
    hoa.closes().await;
}
