//! Samples in a browser: asked for, measured on a phone, judged, decided.

use crate::stage::Stage;
use crate::window::Window;

/// Piece by piece, A, B and C in inches: the length of the first piece is too long, that of the
/// second too short.
pub const MEASURED: [[&str; 3]; 2] = [
    ["21 5/8", "20 1/8", "29 1/4"],
    ["21 1/2", "19 7/8", "27 3/4"],
];

/// A proto of two pieces in size M. Returns the round's path.
pub async fn asks(iris: &Window, style: &str) -> String {
    iris.opens(style).await;
    iris.presses("Ask for a sample round").await;
    iris.fills(&[("kind", "proto")]).await;
    let script = "return [...document.querySelectorAll('.counts label')]
        .find((e) => e.innerText.trim().startsWith('M')).htmlFor";
    let count = iris.asks(script, &[]).await;
    iris.types(count.as_str().expect("an id"), "2").await;
    iris.presses("Ask for samples").await;
    iris.must_see("Proto, sample round 1").await;
    iris.path().await
}

/// The merchandiser begins.
pub async fn starts(linh: &Window) {
    linh.opens("/").await;
    linh.presses("Start sample round 1").await;
    linh.presses("Start work").await;
    linh.must_see("6 values are missing").await;
}

/// Point by point with the keypad, piece by piece.
pub async fn measures(hoa: &Window) {
    hoa.opens("/").await;
    hoa.presses("Measure and dispatch sample round 1").await;
    hoa.presses("Measure").await;
    hoa.waits_until("return !document.querySelector('.keypad').hidden")
        .await;
    let names = ["Chest width", "Bottom width", "Body length"];
    for (piece, values) in MEASURED.iter().enumerate() {
        for (name, value) in names.iter().zip(values) {
            hoa.must_see_in(".measure-pieces summary", &format!("Piece {}", piece + 1))
                .await;
            hoa.must_see_in(".measure-point:not([hidden]) h1", name)
                .await;
            types_on_keypad(hoa, value).await;
            hoa.presses("Save, next").await;
        }
    }
    hoa.waits_until("return document.querySelector('.measure-waiting')?.hidden !== false")
        .await;
}

/// The same without script, a page for each value. After the first piece the merchandiser is asked
/// about the second.
pub async fn measures_without_script(hoa: &Window, linh: &Window) {
    for (piece, values) in MEASURED.iter().enumerate() {
        hoa.opens("/").await;
        hoa.presses("Measure and dispatch sample round 1").await;
        hoa.presses("Measure").await;
        for value in values {
            hoa.must_see(&format!("Piece {}", piece + 1)).await;
            let field =
                "[...document.querySelectorAll('input[name=value]')].find((e) => e.offsetParent)";
            let id = hoa.asks(&format!("return {field}.id"), &[]).await;
            hoa.types(id.as_str().expect("an id"), value).await;
            hoa.presses("Save, next").await;
        }
        if piece == 0 {
            linh.opens("/").await;
            linh.presses("Measure and dispatch sample round 1").await;
            linh.fills(&[("materials", "actual")]).await;
            linh.presses("The pieces are sent").await;
            linh.must_see_in("#unfinished", "3 values are missing.")
                .await;
            linh.must_see_in("#unfinished", "Piece 2, size M").await;
            linh.must_see_in("#unfinished", "C Body length").await;
        }
    }
    hoa.opens("/").await;
    linh.opens("/").await;
    linh.presses("Measure and dispatch sample round 1").await;
    linh.must_see("▲ +3/4").await;
    linh.must_see("Everything is measured.").await;
}

/// Sent, received, decided and signed without script.
pub async fn decides_without_script(iris: &Window, linh: &Window, round: &str) {
    linh.fills(&[("materials", "actual")]).await;
    linh.presses("The pieces are sent").await;
    linh.must_see("Done.").await;
    iris.opens(round).await;
    iris.presses("The pieces have arrived").await;
    iris.presses("Measuring is done").await;
    iris.must_see("Decide on these samples.").await;
    // Without words: the form comes back as it was filled in.
    iris.fills(&[("outcome", "remake")]).await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see_in("#decide [role=alert]", "Write a reason.")
        .await;
    let chosen = "return document.querySelector('input[name=outcome]:checked')?.value";
    assert_eq!(iris.asks(chosen, &[]).await, "remake");
    iris.types("reason", "The length is not even.").await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see("Decided.").await;
    iris.must_see("The length is not even.").await;
    for window in [iris, linh] {
        window.opens(round).await;
        window.must_see("decided: remake.").await;
        window
            .presses_in("#sign", &format!("I sign as {}", window.who))
            .await;
        window.presses_in("#sign", "Sign").await;
        window.must_see("Signed.").await;
    }
}

/// `21 5/8` is 2, 1, ½, ⅛: every sixteenth is within four keys.
pub async fn types_on_keypad(hoa: &Window, value: &str) {
    let (whole, part) = value.split_once(' ').unwrap_or((value, ""));
    for digit in whole.chars() {
        hoa.presses_in(".keypad", &digit.to_string()).await;
    }
    let keys: &[&str] = match part {
        "" => &[],
        "1/8" => &["⅛"],
        "1/4" => &["¼"],
        "1/2" => &["½"],
        "5/8" => &["½", "⅛"],
        "3/4" => &["½", "¼"],
        "7/8" => &["½", "¼", "⅛"],
        other => panic!("no keys for {other}"),
    };
    for key in keys {
        hoa.presses_in(".keypad", key).await;
    }
    let shown = "return [...document.querySelectorAll('input[name=value]')].find((e) => e.offsetParent).value";
    assert_eq!(hoa.asks(shown, &[]).await, value);
}

/// Both see what is out; the designer approves with changes, which become must-fixes.
pub async fn decides(iris: &Window, linh: &Window, hoa: &Window, style: &str, round: &str) {
    linh.opens(round).await;
    // One piece at a time on a phone.
    linh.presses_in(".one-of", "1 · M").await;
    linh.must_see_in("table.chart", "▲ +3/4").await;
    let other = "return ![...document.querySelectorAll('table.chart td')]
        .some((it) => it.offsetParent && it.innerText.includes('▼ −3/4'))";
    linh.waits_until(other).await;
    linh.presses_in(".one-of", "2 · M").await;
    linh.must_see_in("table.chart", "▼ −3/4").await;
    iris.opens(round).await;
    iris.must_see_in("table.chart", "▲ +3/4").await;
    iris.must_see_in("table.chart", "▼ −3/4").await;
    linh.fills(&[("materials", "actual")]).await;
    linh.presses("The pieces are sent").await;
    linh.must_see("Done.").await;
    // The designer's page follows by itself.
    iris.presses("The pieces have arrived").await;
    iris.presses("Measuring is done").await;
    iris.must_see("Decide on these samples.").await;
    iris.fills(&[("outcome", "approved_with_changes")]).await;
    iris.types("reason", "Right, but for the length.").await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see("Decided.").await;
    iris.must_see("approved with changes").await;
    iris.must_see("Must-fixes from this decision").await;
    for window in [iris, linh] {
        window.opens(round).await;
        window.must_see("measured 6 values.").await;
        window.must_see("decided: approved with changes.").await;
        window.must_see("made a must-fix: C Body length.").await;
        window
            .presses_in("#sign", &format!("I sign as {}", window.who))
            .await;
        window.presses_in("#sign", "Sign").await;
        window.must_see("Signed.").await;
    }
    hoa.opens(style).await;
    hoa.must_see("must-fix").await;
    iris.opens(style).await;
    iris.presses("Ledger").await;
    for line in ["Iris", "Linh", "Hoa"] {
        iris.must_see(line).await;
    }
}

/// Whatever the moment at which the tab, the line or the server goes: nothing that was typed is lost,
/// nothing counts twice.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn nothing_typed_is_lost_when_the_line_the_tab_or_the_server_goes() {
    let mut stage = Stage::demo().await;
    let hoa = stage.of_demo("Sample room, Sao Mai", true).await;
    hoa.presses("Measure and dispatch sample round").await;
    hoa.presses("Measure").await;
    hoa.must_see("This page opens again without a connection.")
        .await;
    let page = hoa.driver.current_url().await.expect("an address");

    // The line goes, a value is typed, and the page is opened again: it comes with its drawing, and
    // the value stands in its field.
    hoa.connects(false).await;
    let first = types_one(&hoa, "53").await;
    hoa.forgets().await;
    hoa.driver.goto(page.as_str()).await.expect("it is kept");
    hoa.waits_until("return document.readyState === 'complete'")
        .await;
    hoa.must_see_in(".measure-waiting", "1").await;
    assert_eq!(value_of(&hoa, &first).await, "53");
    let drawn = "const picture = document.querySelector('.measure-point:not([hidden]) image, .measure-point image');
        return fetch(picture.getAttribute('href')).then((it) => it.ok);";
    let drawn = hoa
        .driver
        .execute(drawn, Vec::new())
        .await
        .expect("a script");
    assert_eq!(
        drawn.json(),
        &serde_json::json!(true),
        "its drawing is kept"
    );

    // The server goes while a second value waits; it comes back, and so does the line.
    hoa.presses("Skip").await;
    hoa.presses("Later: next point").await;
    let second = types_one(&hoa, "54").await;
    stage.service.dies().await;
    hoa.forgets().await;
    // The tab goes as well, with all that its page knew.
    hoa.driver.goto("about:blank").await.expect("it is left");
    stage.service.comes_back().await;
    hoa.connects(true).await;
    hoa.driver.goto(page.as_str()).await.expect("it opens");
    hoa.waits_until("return document.querySelector('.measure-waiting')?.hidden === true")
        .await;
    hoa.forgets().await;
    assert_ne!(first, second);
    for (point, typed) in [(&first, "53.0"), (&second, "54.0")] {
        hoa.opens(page.as_str()).await;
        let kept = format!(
            "return document.querySelector('[data-point=\"{point}\"] input[name=value]').defaultValue"
        );
        assert_eq!(hoa.asks(&kept, &[]).await, typed);
    }
    hoa.closes().await;
    let said = stage.service.stops_and_audits().await;
    assert!(said.contains("Everything holds."), "{said}");
    // The demo's own, nine of this round and 312 of the sealed one's style, and these two once each.
    assert!(said.contains(" 323 measurements,"), "{said}");
}

/// Types a value at the point that is shown, and goes on. Returns the point.
async fn types_one(hoa: &Window, value: &str) -> String {
    let point = "return document.querySelector('.measure-point:not([hidden])').dataset.point";
    let here = hoa.asks(point, &[]).await;
    let here = here.as_str().expect("an id").to_owned();
    hoa.types(&format!("value-{here}"), value).await;
    hoa.presses("Save, next").await;
    hoa.waits_until(&format!(
        "return document.querySelector('.measure-point:not([hidden])').dataset.point !== '{here}'"
    ))
    .await;
    here
}

async fn value_of(hoa: &Window, point: &str) -> String {
    let script =
        "return document.querySelector(`[data-point=\"${arguments[0]}\"] input[name=value]`).value";
    let value = hoa.asks(script, &[point]).await;
    value.as_str().expect("a text").to_owned()
}
