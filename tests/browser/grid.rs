//! The grid of points under the hand: blocks from a spreadsheet, undo, fill down, copy.

use thirtyfour::Key;

use crate::entering::founds;
use crate::garment::{says_what_it_is, starts};
use crate::stage::Stage;
use crate::window::Window;

/// What a spreadsheet puts on the clipboard: 60 rows of 12 cells, some quoted, words for choices.
fn block() -> String {
    let line = |n: usize| {
        let basis = if n.is_multiple_of(2) { "Half" } else { "full" };
        let (letter, name) = (format!("Q{n}"), format!("Point {n}"));
        [
            &letter,
            &name,
            basis,
            "28 1/2\"",
            "1/4",
            "\"3/8\"",
            "1/2",
            "1/8",
            "x",
            "",
            "Across the width",
            "\"the \"\"left\"\" seam\"",
        ]
        .join("\t")
    };
    let lines: Vec<String> = (1..=60).map(line).collect();
    lines.join("\r\n") + "\r\n"
}

/// Pastes into the cell that has the focus. Returns how long the page was busy with it, in
/// milliseconds.
async fn pastes(window: &Window, text: &str) -> f64 {
    let script = "const data = new DataTransfer();
        data.setData('text/plain', arguments[0]);
        const event = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true });
        const start = performance.now();
        document.activeElement.dispatchEvent(event);
        return performance.now() - start";
    let took = window.asks(script, &[text]).await;
    took.as_f64().expect("milliseconds")
}

/// How long the shortest question for the values took so far, there and back, in milliseconds.
async fn regrades(window: &Window) -> f64 {
    let script = "const all = performance.getEntriesByType('resource')
        .filter((entry) => entry.name.endsWith('/points/grade') && entry.responseEnd);
        return Math.min(...all.map((entry) => entry.responseEnd - entry.requestStart))";
    let took = window.asks(script, &[]).await;
    took.as_f64().expect("milliseconds")
}

async fn copies(window: &Window) -> String {
    let script = "const data = new DataTransfer();
        const event = new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true });
        document.activeElement.dispatchEvent(event);
        return data.getData('text/plain')";
    let copied = window.asks(script, &[]).await;
    copied.as_str().unwrap_or_default().to_owned()
}

pub async fn puts_the_hand_on(window: &Window, field: &str) {
    let script =
        "const field = document.getElementById(arguments[0]); field.focus(); field.select()";
    window.asks(script, &[field]).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_block_from_a_spreadsheet_lands_right_and_is_saved() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let style = starts(&nell).await;
    says_what_it_is(&nell, &style).await;
    nell.opens(&format!("{style}/draft/points")).await;
    puts_the_hand_on(&nell, "new-1.letter").await;
    let mut times = vec![pastes(&nell, &block()).await];
    for _ in 0..4 {
        assert_eq!(nell.value("new-60.name").await, "Point 60");
        nell.keys(Key::Control + "z").await;
        puts_the_hand_on(&nell, "new-1.letter").await;
        times.push(pastes(&nell, &block()).await);
    }
    // The other programs of the machine make it slower, never faster.
    let took = times.iter().copied().fold(f64::INFINITY, f64::min);
    println!("60 x 12 cells pasted in {took:.0} ms, of {times:.0?}");
    assert!(took < 300.0, "{times:?} ms");
    for n in [1, 60] {
        for (field, expected) in [
            ("letter", format!("Q{n}").as_str()),
            ("name", &format!("Point {n}")),
            ("basis", if n == 1 { "full" } else { "half" }),
            ("base", "28 1/2\""),
            ("minus", "1/4"),
            ("plus", "3/8"),
            ("grade", "1/2"),
            ("step", "1/8"),
            ("direction", "width"),
            ("start", "the \"left\" seam"),
        ] {
            assert_eq!(nell.value(&format!("new-{n}.{field}")).await, expected);
        }
        let row = format!("tr[data-row='new-{n}'] td.calc");
        nell.must_see_in(&row, "28 71.1 28 1/2 72.4 29 73.7").await;
    }
    let asked = regrades(&nell).await;
    println!("60 points graded again in {asked:.1} ms, there and back");
    assert!(asked < 50.0, "{asked} ms");
    // One step back takes all of it away, one step forth brings it again.
    nell.keys(Key::Control + "z").await;
    assert_eq!(nell.value("new-60.name").await, "");
    nell.keys(Key::Control + "y").await;
    assert_eq!(nell.value("new-60.name").await, "Point 60");
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    nell.must_see_in("tr:has([value='Point 60']) td.calc", "28 1/2")
        .await;
    let saved = "return document.querySelectorAll('tr[data-row] [name$=\".base\"][value=\"28 1/2\"]').length";
    assert_eq!(nell.asks(saved, &[]).await, 60);
    nell.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_chosen_block_is_filled_down_copied_and_emptied() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let style = starts(&nell).await;
    says_what_it_is(&nell, &style).await;
    nell.opens(&format!("{style}/draft/points")).await;
    nell.fills(&[
        ("new-1.base", "20"),
        ("new-1.minus", "1/4"),
        ("new-2.base", "21"),
    ])
    .await;
    puts_the_hand_on(&nell, "new-1.base").await;
    nell.keys(Key::Shift + Key::Down + Key::Down + Key::Right)
        .await;
    assert_eq!(copies(&nell).await, "20\t1/4\n21\t\n\t");
    nell.keys(Key::Control + "d").await;
    assert_eq!(copies(&nell).await, "20\t1/4\n20\t1/4\n20\t1/4");
    nell.keys(Key::Delete + "").await;
    assert_eq!(copies(&nell).await, "\t\n\t\n\t");
    nell.keys(Key::Control + "z").await;
    nell.keys(Key::Control + "z").await;
    let bases = ["new-1.base", "new-2.base", "new-3.base"];
    for (field, expected) in bases.into_iter().zip(["20", "21", ""]) {
        assert_eq!(nell.value(field).await, expected);
    }
    // A choice takes only its own words, and says so for as long as nothing else is done: the
    // values that come back meanwhile wipe nothing away.
    puts_the_hand_on(&nell, "new-1.name").await;
    pastes(&nell, "Chest\tround\n").await;
    tokio::time::sleep(std::time::Duration::from_millis(600)).await;
    nell.must_see("they take only one of their choices").await;
    assert_eq!(nell.value("new-1.name").await, "Chest");
    assert_eq!(nell.value("new-1.basis").await, "");
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    nell.closes().await;
}
