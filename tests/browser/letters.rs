//! Letters on a drawing: moved by keyboard, by pointer and by finger, taken off and put on again.

use serde_json::json;
use thirtyfour::Key;

use crate::entering::{founds, invites, joins};
use crate::garment;
use crate::stage::Stage;
use crate::window::Window;

/// What the fields of a letter say: percent from the left and from the top.
async fn place(window: &Window, letter: &str) -> Vec<String> {
    let script = "return [...document.querySelectorAll(
        `tr[data-letter='${arguments[0]}'] input[aria-label]`)].map((e) => e.value)";
    let found = window.asks(script, &[letter]).await;
    let found = found.as_array().cloned().unwrap_or_default();
    found
        .iter()
        .map(|value| value.as_str().unwrap_or_default().to_owned())
        .collect()
}

/// What has the focus, by its words.
async fn focus(window: &Window) -> String {
    let script = "return document.activeElement.getAttribute('aria-label') || ''";
    let found = window.asks(script, &[]).await;
    found.as_str().unwrap_or_default().to_owned()
}

/// The middle of an element in the window.
async fn middle(window: &Window, selector: &str) -> (f64, f64) {
    let script = "const at = document.querySelector(arguments[0]).getBoundingClientRect();
        return [at.left + at.width / 2, at.top + at.height / 2];";
    let found = window.asks(script, &[selector]).await;
    let at = |n: usize| found[n].as_f64().expect("it is on the page");
    (at(0), at(1))
}

async fn shows_the_drawing(window: &Window) {
    let script = "document.querySelector('[data-tray]').scrollIntoView(
        { block: 'start', behavior: 'instant' })";
    window.asks(script, &[]).await;
}

async fn fingers(window: &Window, path: &[(f64, f64)]) {
    for (n, (x, y)) in path.iter().enumerate() {
        let kind = if n == 0 { "touchStart" } else { "touchMove" };
        let touch = json!({"type": kind, "touchPoints": [{"x": x, "y": y}]});
        window.devtool("Input.dispatchTouchEvent", touch).await;
    }
    let end = json!({"type": "touchEnd", "touchPoints": []});
    window.devtool("Input.dispatchTouchEvent", end).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn letters_follow_the_keyboard_the_pointer_and_the_finger() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let nell = founds(&stage).await;
    let style = garment::starts(&nell).await;
    garment::says_what_it_is(&nell, &style).await;
    garment::writes_points(&nell, &style, false).await;
    garment::draws(&nell, &style, folder.path(), false).await;
    by_keyboard(&nell).await;
    back_into_the_tray(&nell).await;
    nell.presses("Save").await;
    nell.must_see("A Chest width: the letter is on no drawing.")
        .await;

    let link = invites(&nell, "Iris", "Designer · Harrow & Tide").await;
    let iris = stage.phone("Iris").await;
    joins(&iris, &link, "Iris").await;
    iris.opens(&format!("{style}/draft/drawings")).await;
    by_finger(&iris).await;
    iris.presses("Save").await;
    iris.must_see("Saved.").await;
    assert_eq!(place(&iris, "A").await, ["50", "50"]);
    iris.closes().await;
    nell.closes().await;
}

/// The drawing is 800 wide and 640 high: half a percent to the side is 0.62 percent down.
async fn by_keyboard(window: &Window) {
    assert_eq!(place(window, "C").await, ["36", "30"]);
    let mark = "document.querySelector('.mark[aria-label=\"C Body length\"]').focus()";
    window.asks(mark, &[]).await;
    window.keys(Key::Right + "").await;
    window.keys(Key::Down + "").await;
    assert_eq!(place(window, "C").await, ["36.5", "30.63"]);
    window.keys(Key::Shift + Key::Left).await;
    assert_eq!(place(window, "C").await, ["34", "30.63"]);
    window.keys(Key::Delete + "").await;
    assert_eq!(place(window, "C").await, ["", ""]);
    assert_eq!(focus(window).await, "C Body length", "its chip in the tray");
    window.keys(Key::Enter + "").await;
    assert_eq!(place(window, "C").await, ["50", "50"]);
}

async fn back_into_the_tray(window: &Window) {
    shows_the_drawing(window).await;
    let mark = middle(window, ".mark[aria-label='A Chest width'] .mark-face").await;
    window.drags(mark, (mark.0 + 40.0, mark.1)).await;
    let moved = place(window, "A").await;
    assert!(
        moved[0].parse::<f64>().is_ok_and(|x| x > 50.0),
        "{moved:?} is not to the right of 50"
    );
    let mark = middle(window, ".mark[aria-label='A Chest width'] .mark-face").await;
    let tray = middle(window, "[data-tray]").await;
    window.drags(mark, tray).await;
    assert_eq!(place(window, "A").await, ["", ""]);
}

/// The letter is held above the finger, which would hide it.
async fn by_finger(window: &Window) {
    shows_the_drawing(window).await;
    let chip = middle(window, ".chip[aria-label='A Chest width']").await;
    let (x, y) = middle(window, "[data-face]").await;
    fingers(
        window,
        &[chip, (chip.0 + 10.0, chip.1 + 40.0), (x, y + 44.0)],
    )
    .await;
    // Had the page scrolled under the finger, it would lie elsewhere.
    assert_eq!(place(window, "A").await, ["50", "50"]);
}
