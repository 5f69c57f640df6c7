//! Dimension lines and blow-ups, drawn by pointer and by the keys alone; taken back; zoomed; saved.
//! Pictures that are pasted and dropped. Letters that are tidied.

use serde_json::{Value, json};
use thirtyfour::Key;

use crate::entering::founds;
use crate::garment;
use crate::stage::Stage;
use crate::window::Window;

const DETAIL: &str = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 400 400'><circle cx='200' cy='200' r='150' fill='none' stroke='#111'/></svg>";

const WHOLE: &str = "document.querySelector('[data-tools]').scrollIntoView({ block: 'start', behavior: 'instant' });";

/// What the rows of the first drawing's lines say: point, from, to, bend.
async fn lines(window: &Window) -> Vec<[String; 4]> {
    let script = "return [...document.querySelectorAll('[data-lines]')[0].rows].map((row) =>
        [...row.querySelectorAll('select, input[aria-label]')].map((e) =>
            e.selectedOptions ? e.selectedOptions[0].text.split(' ')[0] : e.value))
        .filter((row) => row[1] !== '')";
    let rows = window.asks(script, &[]).await;
    serde_json::from_value(rows).expect("four texts a row")
}

fn line(item: &str, from: &str, to: &str, bend: &str) -> [String; 4] {
    [item, from, to, bend].map(ToOwned::to_owned)
}

/// The place in the window of a place on the first drawing, in percent, as it is zoomed now.
async fn at(window: &Window, x: f64, y: f64) -> (f64, f64) {
    let script = "const svg = document.querySelector('svg.marks');
        const box = svg.getBoundingClientRect();
        const view = svg.viewBox.baseVal;
        const tall = 10000 * document.querySelector('[data-face] img').height
            / document.querySelector('[data-face] img').width;
        const [x, y] = [...arguments].map(Number);
        return [box.left + (x * 100 - view.x) / view.width * box.width,
            box.top + (y / 100 * tall - view.y) / view.height * box.height];";
    let found = window.asks(script, &[&x.to_string(), &y.to_string()]).await;
    let part = |n: usize| found[n].as_f64().expect("a number");
    (part(0), part(1))
}

async fn clicks(window: &Window, (x, y): (f64, f64), shift: bool) {
    for (kind, buttons) in [("mouseMoved", 0), ("mousePressed", 1), ("mouseReleased", 0)] {
        let event = json!({"type": kind, "x": x, "y": y, "button": "left", "buttons": buttons,
            "clickCount": 1, "modifiers": if shift { 8 } else { 0 }});
        window.devtool("Input.dispatchMouseEvent", event).await;
    }
}

async fn takes(window: &Window, tool: &str) {
    let script = format!(
        "{WHOLE} document.querySelector(`[data-press=${{arguments[0]}}], [data-tool=${{arguments[0]}}]`).click()"
    );
    window.asks(&script, &[tool]).await;
}

async fn said(window: &Window) -> String {
    let said = "return document.querySelector('[data-said]').value";
    let said = window.asks(said, &[]).await;
    said.as_str().unwrap_or_default().to_owned()
}

async fn focused(window: &Window) -> String {
    let script = "return document.activeElement.getAttribute('aria-label') || ''";
    let found = window.asks(script, &[]).await;
    found.as_str().unwrap_or_default().to_owned()
}

/// The keys pressed together with Control.
async fn control(window: &Window, keys: &str) {
    window.keys(Key::Control + keys).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn lines_are_drawn_by_pointer_and_by_keys_and_saved() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let nell = founds(&stage).await;
    let style = garment::starts(&nell).await;
    garment::says_what_it_is(&nell, &style).await;
    garment::writes_points(&nell, &style, false).await;
    garment::draws(&nell, &style, folder.path(), false).await;
    pastes_a_detail(&nell).await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    by_pointer(&nell).await;
    takes_back(&nell).await;
    by_keys(&nell).await;
    zooms(&nell).await;
    blows_up(&nell).await;
    highlights(&nell).await;
    let drawn = lines(&nell).await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    assert_eq!(lines(&nell).await, drawn);
    assert_eq!(circle(&nell).await, json!(["50 20", "11"]));
    nell.closes().await;
}

/// From the clipboard, and once more dropped on the page: two drawings, added when it is saved.
async fn pastes_a_detail(window: &Window) {
    let script = "const data = new DataTransfer();
        data.items.add(new File([arguments[0]], arguments[1], { type: 'image/svg+xml' }));
        const init = { bubbles: true, cancelable: true, clipboardData: data, dataTransfer: data };
        const event = arguments[2] === 'paste' ? new ClipboardEvent('paste', init) : new DragEvent('drop', init);
        (arguments[2] === 'paste' ? document.body : document.querySelector('h1')).dispatchEvent(event);
        return event.defaultPrevented";
    let pasted = window
        .asks(script, &[DETAIL, "zip detail.svg", "paste"])
        .await;
    assert_eq!(pasted, true);
    window.must_see("Added when you save: zip detail.svg").await;
    let other = DETAIL.replace("150", "120");
    let dropped = window
        .asks(script, &[&other, "hem detail.svg", "drop"])
        .await;
    assert_eq!(dropped, true);
    window.must_see("zip detail.svg, hem detail.svg").await;
    assert!(said(window).await.contains("hem detail.svg"));
}

/// A with Shift, straight across though the hand was not; then its middle is dragged down.
async fn by_pointer(window: &Window) {
    takes(window, "line").await;
    assert!(
        said(window)
            .await
            .starts_with("A Chest width: set where it starts.")
    );
    clicks(window, at(window, 20.0, 40.0).await, false).await;
    assert_eq!(
        said(window).await,
        "Started at 20 % from the left, 40 % from the top. Set where it ends."
    );
    clicks(window, at(window, 80.0, 41.0).await, true).await;
    assert_eq!(lines(window).await, [line("A", "20 40", "80 40", "")]);
    assert_eq!(focused(window).await, "Line A Chest width");
    window
        .drags(at(window, 50.0, 40.0).await, at(window, 50.0, 45.0).await)
        .await;
    let [bent] = <[_; 1]>::try_from(lines(window).await).expect("one line");
    near(&bent[3], 50.0, 50.0);

    // B, in one stroke; where it comes near the end of A it takes hold of it.
    takes(window, "line").await;
    let (x, y) = at(window, 20.0, 40.0).await;
    window
        .drags(at(window, 20.0, 80.0).await, (x + 4.0, y + 3.0))
        .await;
    let both = lines(window).await;
    assert_eq!(both.len(), 2);
    assert_eq!(both[1], line("B", "20 80", "20 40", ""));
}

fn near(spot: &str, x: f64, y: f64) {
    let parts: Vec<f64> = spot.split(' ').filter_map(|it| it.parse().ok()).collect();
    let off = parts
        .iter()
        .zip([x, y])
        .map(|(got, wanted)| (got - wanted).abs());
    assert!(
        parts.len() == 2 && off.fold(0.0, f64::max) < 0.6,
        "{spot} is not {x} {y}"
    );
}

async fn takes_back(window: &Window) {
    let both = lines(window).await;
    control(window, "z").await;
    assert_eq!(lines(window).await, both[..1]);
    control(window, "z").await;
    assert_eq!(lines(window).await, [line("A", "20 40", "80 40", "")]);
    takes(window, "undo").await;
    assert!(lines(window).await.is_empty());
    takes(window, "undo").await;
    takes(window, "undo").await;
    assert!(said(window).await.starts_with("There is nothing more"));
    takes(window, "redo").await;
    for _ in 0..2 {
        window.keys(Key::Control + (Key::Shift + "z")).await;
    }
    assert_eq!(lines(window).await, both);
    // What was typed elsewhere on the page is taken back as well.
    let title = window
        .asks(
            "return document.querySelector('[name$=\".title\"]').name",
            &[],
        )
        .await;
    let title = title.as_str().expect("a name").to_owned();
    window.fills(&[(&title, "Front")]).await;
    takes(window, "undo").await;
    assert_eq!(window.value(&title).await, "");
}

/// C, with the keys alone: from its letter down, and bent to the left.
async fn by_keys(window: &Window) {
    let script = "document.querySelector('.mark[aria-label=\"C Body length\"]').focus()";
    window.asks(script, &[]).await;
    window
        .must_see_in("[data-press=offer]", "Draw the line of C")
        .await;
    window.keys("l").await;
    window.keys(Key::Shift + Key::Up).await;
    window.keys(Key::Enter + "").await;
    for _ in 0..4 {
        window.keys(Key::Shift + Key::Down).await;
    }
    window.keys(Key::Left + "").await;
    window.keys(Key::Right + "").await;
    window.keys(Key::Enter + "").await;
    // 800 wide and 640 high: 2.5 percent of the width are 3.125 of the height.
    assert_eq!(
        lines(window).await[2],
        line("C", "36 26.88", "36 39.38", "")
    );
    assert_eq!(focused(window).await, "Line C Body length");
    window.keys(Key::Tab + "").await;
    assert_eq!(focused(window).await, "Start of line C");
    window.keys(Key::Tab + "").await;
    assert_eq!(focused(window).await, "Bend of line C");
    window.keys(Key::Left + "").await;
    window.keys(Key::Left + "").await;
    assert_eq!(
        lines(window).await[2],
        line("C", "36 26.88", "36 39.38", "34 33.13")
    );
    window.keys(Key::Tab + "").await;
    assert_eq!(focused(window).await, "End of line C");
    window.keys(Key::Alt + Key::Right).await;
    assert_eq!(
        lines(window).await[2],
        line("C", "36 26.88", "36.1 39.38", "34 33.13")
    );
    assert_eq!(
        said(window).await,
        "End of line C moved to 36.1 % from the left, 39.38 % from the top."
    );
    // Off with it, and back.
    window.keys(Key::Delete + "").await;
    assert_eq!(lines(window).await.len(), 2);
    assert_eq!(said(window).await, "Line C Body length is off the drawing.");
    control(window, "z").await;
    assert_eq!(lines(window).await.len(), 3);
    // Begun and given up.
    window.keys("l").await;
    window.keys(Key::Enter + "").await;
    window.keys(Key::Escape + "").await;
    window.keys(Key::Escape + "").await;
    assert_eq!(lines(window).await.len(), 3);
    assert_eq!(said(window).await, "Stopped.");
}

/// With the wheel; what lies under the pointer stays there (a browser tells whole pixels), and what
/// is then moved lands where it is put.
async fn zooms(window: &Window) {
    window.asks(WHOLE, &[]).await;
    let before = at(window, 80.0, 40.0).await;
    let wheel = json!({"type": "mouseWheel", "x": before.0, "y": before.1, "deltaX": 0,
        "deltaY": -440, "modifiers": 2});
    window.devtool("Input.dispatchMouseEvent", wheel).await;
    window.must_see_in("[data-zoom]", "300 %").await;
    let after = at(window, 80.0, 40.0).await;
    assert!(
        (before.0 - after.0).hypot(before.1 - after.1) < 3.0,
        "{before:?} {after:?}"
    );
    // The letter at its place, as large as before.
    let script =
        "const at = document.querySelector('.grip-at [class=grip]')?.getBoundingClientRect();
        const face = document.querySelector('.mark .mark-face').getBoundingClientRect();
        return [face.width, Boolean(at)]";
    let size = window.asks(script, &[]).await;
    let size = size[0].as_f64().expect("a width");
    assert!((24.0..30.0).contains(&size), "{size} pixels");
    let drawn = lines(window).await;
    window.drags(after, at(window, 82.0, 44.0).await).await;
    let moved = lines(window).await;
    assert_eq!(moved[0][2], "82 44", "{drawn:?}");
    assert_eq!(moved[0][1], drawn[0][1]);
    takes(window, "whole").await;
    window.must_see_in("[data-zoom]", "100 %").await;
    let tip = window.asks(
        "const at = document.querySelectorAll('.dimension .mark-hit')[2].getBoundingClientRect();
        return [at.left + at.width / 2, at.top + at.height / 2]", &[]).await;
    let wanted = at(window, 82.0, 44.0).await;
    let off = (tip[0].as_f64().unwrap_or_default() - wanted.0)
        .hypot(tip[1].as_f64().unwrap_or_default() - wanted.1);
    assert!(off < 1.0, "{tip} is not {wanted:?}");
}

async fn blows_up(window: &Window) {
    takes(window, "circle").await;
    let detail = "const list = document.querySelector('[data-shows] select');
        list.value = [...list.options].at(-1).value";
    window.asks(detail, &[]).await;
    window
        .drags(at(window, 50.0, 20.0).await, at(window, 60.0, 20.0).await)
        .await;
    assert_eq!(circle(window).await, json!(["50 20", "10"]));
    window.keys(Key::Tab + "").await;
    window.keys(Key::Up + "").await;
    window.keys(Key::Right + "").await;
    assert_eq!(circle(window).await, json!(["50 20", "11"]));
}

/// Middle and radius of the first blow-up.
async fn circle(window: &Window) -> Value {
    let script = "const row = document.querySelector('[data-circles]').rows[0];
        return [...row.querySelectorAll('input[aria-label]')].map((e) => e.value)";
    window.asks(script, &[]).await
}

/// A letter and its rows, both ways.
async fn highlights(window: &Window) {
    let script = "document.querySelector('.mark[aria-label=\"B Bottom width\"]').focus();
        return [document.querySelector('tr[data-letter=B]').matches('.is-chosen.is-lit'),
            document.querySelector('tr[data-letter=A]').matches('.is-chosen, .is-lit')]";
    assert_eq!(window.asks(script, &[]).await, json!([true, false]));
    let script = "document.querySelector('tr[data-letter=A] input[aria-label]').focus();
        return ['A Chest width', 'B Bottom width'].map((name) =>
            document.querySelector(`.mark[aria-label='${name}']`).parentElement.matches('.is-chosen'))";
    assert_eq!(window.asks(script, &[]).await, json!([true, false]));
}

/// Three hundred sheets with up to thirty letters each: none covers another, no leader crosses
/// another, letters without a line stay, and the same comes out twice.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn tidy_letters_cover_nothing_and_cross_nothing() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let script = "return import('/static/drawing-geometry.js').then(({ tidy, crosses, distance }) => {
        let seed = 7;
        const random = (most) => { seed = (seed * 16807) % 2147483647; return (seed / 2147483647) * most; };
        const sheet = { room: 400, width: 10000, height: 8000 };
        const place = () => ({ x: Math.round(random(10000)), y: Math.round(random(8000)) });
        let [wrong, crossed, covered] = [[], 0, 0];
        const pairs = (places, letters) => {
            let [cover, cross] = [0, 0];
            for (let i = 0; i < places.length; i += 1) for (let j = 0; j < i; j += 1) {
                const led = letters[i].anchor && letters[j].anchor;
                if ((letters[i].anchor || letters[j].anchor) && distance(places[i], places[j]) < 400) cover += 1;
                if (led && crosses(places[i], letters[i].anchor, places[j], letters[j].anchor)) cross += 1;
            }
            return { cover, cross };
        };
        for (let n = 0; n < 300; n += 1) {
            const letters = Array.from({ length: 1 + (n % 30) }, () =>
                ({ at: place(), anchor: random(1) < 0.8 ? place() : null }));
            const before = pairs(letters.map((letter) => letter.at), letters);
            crossed += before.cross;
            covered += before.cover;
            const places = tidy(letters, sheet);
            const after = pairs(places, letters);
            const again = tidy(letters.map((letter, i) => ({ ...letter, at: places[i] })), sheet);
            const stays = letters.every((letter, i) => letter.anchor || distance(letter.at, places[i]) === 0);
            const same = JSON.stringify(tidy(letters, sheet)) === JSON.stringify(places);
            const rests = JSON.stringify(again) === JSON.stringify(places);
            if (after.cover || after.cross || !stays || !same || !rests) wrong.push([n, after, stays, same, rests]);
        }
        return { wrong, crossed, covered };
    })";
    let found = nell.asks(script, &[]).await;
    assert_eq!(found["wrong"], json!([]), "{found}");
    let before = ["crossed", "covered"].map(|name| found[name].as_u64().unwrap_or_default());
    println!("{before:?} crossings and covered letters before, none after");
    assert!(before.iter().all(|count| *count > 100), "{before:?}");
    nell.closes().await;
}
