//! Points in another order and under other letters, by keys, pointer and buttons, and back again; how
//! they are measured, in the row that opens.

use thirtyfour::Key;

use crate::entering::founds;
use crate::garment::{says_what_it_is, starts};
use crate::grid::puts_the_hand_on;
use crate::stage::Stage;
use crate::window::Window;

/// Three points: C follows A.
async fn opens_the_grid(stage: &Stage) -> (Window, String) {
    let nell = founds(stage).await;
    let style = starts(&nell).await;
    says_what_it_is(&nell, &style).await;
    nell.opens(&format!("{style}/draft/points")).await;
    nell.fills(&[
        ("new-1.name", "Front length"),
        ("new-1.base", "20"),
        ("new-1.grade", "1"),
        ("new-2.name", "Chest width"),
        ("new-2.base", "21"),
        ("new-2.grade", "1/2"),
        ("new-3.name", "Zip length"),
        ("new-3.base", "18"),
        ("new-3.grade", "=A - 2"),
    ])
    .await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    (nell, style)
}

/// What the column of this field holds, from the first row down; empty rows left out.
async fn column(window: &Window, field: &str) -> Vec<String> {
    let script = "return [...document.querySelectorAll('table.points tbody tr[data-row]')]
        .filter((row) => row.querySelector('[name$=\".name\"]').value)
        .map((row) => row.querySelector(`[name$='.${arguments[0]}']`).value)";
    let found = window.asks(script, &[field]).await;
    let found = found.as_array().expect("a list").iter();
    found
        .map(|it| it.as_str().expect("text").to_owned())
        .collect()
}

/// The id of the field of the row with this name.
async fn field(window: &Window, name: &str, field: &str) -> String {
    let script = "const row = [...document.querySelectorAll('tr[data-row]')]
        .find((row) => row.querySelector('[name$=\".name\"]').value === arguments[0]);
        return `${row.dataset.row}.${arguments[1]}`";
    let id = window.asks(script, &[name, field]).await;
    id.as_str().expect("an id").to_owned()
}

async fn must_be(window: &Window, names: [&str; 3]) {
    assert_eq!(column(window, "name").await, names);
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn rows_are_moved_by_keys_buttons_and_pointer_and_lettered_anew() {
    let stage = Stage::opens().await;
    let (nell, style) = opens_the_grid(&stage).await;
    let as_written = ["Front length", "Chest width", "Zip length"];
    must_be(&nell, as_written).await;
    let zip = field(&nell, "Zip length", "name").await;
    puts_the_hand_on(&nell, &zip).await;
    nell.keys(Key::Alt + Key::Up + Key::Up).await;
    let zip_first = ["Zip length", "Front length", "Chest width"];
    must_be(&nell, zip_first).await;
    nell.must_see("C is row 1 of 5 now.").await;
    // The hand stays on the row, and there is none above the first.
    assert_eq!(
        nell.asks("return document.activeElement.id", &[]).await,
        zip.as_str()
    );
    nell.keys(Key::Alt + Key::Up).await;
    must_be(&nell, zip_first).await;

    nell.keys(Key::Control + "z").await;
    must_be(&nell, ["Front length", "Zip length", "Chest width"]).await;
    nell.presses("Undo").await;
    must_be(&nell, as_written).await;
    nell.presses("Redo").await;
    nell.keys(Key::Enter + "").await;
    must_be(&nell, zip_first).await;

    // With a pointer, by the handle: the first row to the end of the three.
    let handle = format!(
        "[data-row='{}'] [data-handle]",
        zip.trim_end_matches(".name")
    );
    let chest = field(&nell, "Chest width", "name").await;
    let chest = format!("[data-row='{}']", chest.trim_end_matches(".name"));
    let [left, top, width, height] = nell.place(&handle).await;
    let [_, row_top, _, row_height] = nell.place(&chest).await;
    let from = (left + width / 2.0, top + height / 2.0);
    nell.drags(from, (from.0, row_top + row_height - 4.0)).await;
    must_be(&nell, as_written).await;
    // Back to the top with the button of the opened row.
    puts_the_hand_on(&nell, &zip).await;
    nell.keys(Key::Alt + Key::Enter).await;
    nell.presses_in("tr.how", "Move up").await;
    nell.presses_in("tr.how", "Move up").await;
    must_be(&nell, zip_first).await;

    nell.presses("Letter in this order").await;
    nell.must_see("The letters follow the rows.").await;
    assert_eq!(column(&nell, "letter").await, ["A", "B", "C"]);
    assert_eq!(column(&nell, "grade").await, ["=B - 2", "1", "1/2"]);
    nell.presses("Undo").await;
    assert_eq!(column(&nell, "letter").await, ["C", "A", "B"]);
    assert_eq!(column(&nell, "grade").await, ["=A - 2", "1", "1/2"]);
    nell.presses("Redo").await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    must_be(&nell, zip_first).await;
    assert_eq!(column(&nell, "letter").await, ["A", "B", "C"]);
    assert_eq!(column(&nell, "grade").await, ["=B - 2", "1", "1/2"]);
    nell.must_see_in(
        "tr:has([value='Zip length']) td.calc",
        "17 43.2 18 45.7 19 48.3",
    )
    .await;
    assert_eq!(nell.path().await, format!("{style}/draft/points"));
    nell.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn how_a_point_is_measured_opens_below_its_row() {
    let stage = Stage::opens().await;
    let (nell, style) = opens_the_grid(&stage).await;
    let name = field(&nell, "Chest width", "name").await;
    let row = name.trim_end_matches(".name").to_owned();
    let start = format!("{row}.start");
    let line = format!("[id='row-{row}'] summary");
    nell.must_see_in(&line, "to be written").await;
    puts_the_hand_on(&nell, &name).await;
    nell.keys(Key::Alt + Key::Enter).await;
    let focused = "return document.activeElement.id";
    assert_eq!(nell.asks(focused, &[]).await, start.as_str());
    // A wording of the library, by its name and Enter, and back.
    let wording = format!("{row}.wording");
    puts_the_hand_on(&nell, &wording).await;
    nell.keys("Chest width" + Key::Enter).await;
    nell.must_see("The wording is taken.").await;
    nell.must_see_in(&line, "left side seam where the armhole ends →")
        .await;
    assert_eq!(nell.value(&format!("{row}.path")).await, "straight");
    nell.presses("Undo").await;
    nell.must_see_in(&line, "to be written").await;
    assert_eq!(nell.value(&start).await, "");
    nell.presses("Redo").await;
    puts_the_hand_on(&nell, &start).await;
    nell.keys(Key::Alt + Key::Enter).await;
    assert_eq!(nell.asks(focused, &[]).await, name.as_str());
    // Down the column of starts: the next row opens.
    puts_the_hand_on(&nell, &name).await;
    nell.keys(Key::Alt + Key::Enter).await;
    nell.keys(Key::Down + "upper end of the teeth").await;
    let zip = field(&nell, "Zip length", "start").await;
    assert_eq!(nell.asks(focused, &[]).await, zip.as_str());
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    assert_eq!(
        nell.value(&start).await,
        "left side seam where the armhole ends"
    );
    assert_eq!(nell.value(&zip).await, "upper end of the teeth");
    // A finding leads into the row, which opens.
    let end = field(&nell, "Zip length", "end").await;
    nell.opens(&format!("{style}/draft/points#{end}")).await;
    assert_eq!(nell.asks(focused, &[]).await, end.as_str());
    nell.closes().await;
}
