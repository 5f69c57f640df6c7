//! What a designer begins with, and what is drawn beside a form while it is typed.

use serde_json::json;

use crate::stage::Stage;
use crate::window::Window;

const ARROW_RIGHT: &str = "\u{E014}";

/// Where the first link leads that the selector finds.
async fn leads(window: &Window, selector: &str) -> String {
    let script = "return document.querySelector(arguments[0])?.getAttribute('href') ?? ''";
    let href = window.asks(script, &[selector]).await;
    match href.as_str() {
        Some(href) if !href.is_empty() => href.to_owned(),
        _ => window.fails(&format!("there is no {selector}")).await,
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_style_is_begun_by_keyboard_with_a_kind_of_garment() {
    let stage = Stage::demo().await;
    let iris = stage.of_demo("Designer", false).await;
    iris.opens("/styles").await;
    // One Tab stops at the chosen one of the starts, the arrows choose.
    iris.asks("document.querySelector('[name=start]').focus()", &[])
        .await;
    iris.keys(ARROW_RIGHT).await;
    let chosen = "return document.querySelector('[name=start]:checked').value";
    assert_eq!(iris.asks(chosen, &[]).await, json!("t_shirt"));
    iris.fills(&[("number", "HT-412"), ("name", "Shingle T-shirt")])
        .await;
    iris.presses("Start the style").await;
    let header = iris.path().await;
    let style = header.strip_suffix("/draft/header").expect("a draft");

    // Nothing is left to invent: every section is ready, and its flat is seen.
    iris.must_see("Sections ready: 10 · with errors: 0 · empty: 0")
        .await;
    iris.opens(&format!("{style}/draft/drawings")).await;
    let drawn = "return [...document.querySelectorAll('[data-face] img')]
        .filter((it) => it.complete && it.naturalWidth > 0).length > 0";
    iris.waits_until(drawn).await;
    iris.opens(&format!("{style}/draft/points")).await;
    let filled = "return [...document.querySelectorAll('[name$=\".base\"]')].filter((it) => it.value !== '').length";
    let filled = iris.asks(filled, &[]).await;
    assert!(filled.as_u64().is_some_and(|count| count >= 10), "{filled}");

    // Kept as a start of the brand's own, it is offered like the others.
    iris.opens(style).await;
    iris.presses("Keep as a start").await;
    iris.must_see("New styles can begin with the draft of this one.")
        .await;
    iris.opens("/styles").await;
    iris.must_see_in(".starts", "HT-412 Shingle T-shirt").await;
    iris.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_typed_is_drawn_beside_it_and_not_saved() {
    let stage = Stage::demo().await;
    let iris = stage.of_demo("Designer", false).await;
    iris.opens("/styles").await;
    let jacket = "return [...document.querySelectorAll('a[href^=\"/styles/\"]')]
        .find((it) => it.textContent.includes('Puddle')).getAttribute('href')";
    let jacket = iris.asks(jacket, &[]).await;
    let jacket = jacket.as_str().expect("the jacket").to_owned();
    iris.opens(&format!("{jacket}/draft/artwork")).await;
    let artwork = leads(&iris, "#section td a[href*='/draft/artwork/']").await;
    iris.opens(&artwork).await;
    let width = "return document.querySelector('[name$=\".bands.0.width\"]').id";
    let width = iris.asks(width, &[]).await;
    let width = width.as_str().expect("a field").to_owned();
    let saved = iris.value(&width).await;
    assert!(!iris.reads_in("[data-shown]").await.contains("73 ×"));

    iris.types(&width, "7.3").await;
    iris.must_see_in("[data-shown]", "True size · 73 × 126 mm")
        .await;

    iris.opens(&artwork).await;
    assert_eq!(iris.value(&width).await, saved, "nothing was saved");
    iris.closes().await;
}
