//! How the designer writes the half-zip HT-301, and publishes it.

use std::path::Path;

use thirtyfour::Key;

use crate::window::Window;

/// Its front, invented for this test.
const FRONT: &str = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"800\" height=\"640\" viewBox=\"0 0 800 640\">\
    <rect width=\"800\" height=\"640\" fill=\"#fff\"/>\
    <path d=\"M300 90Q400 130 500 90L640 160 700 420 620 440 560 300V560H240V300L180 440 100 420 160 160Z\" \
    fill=\"none\" stroke=\"#111\" stroke-width=\"4\"/><path d=\"M400 115V280\" stroke=\"#111\" stroke-width=\"3\"/></svg>";

/// The whole of it, from the new style to revision 1 in the factory's hands. Returns the style's path.
pub async fn reaches_the_factory(designer: &Window, folder: &Path, by_hand: bool) -> String {
    let style = starts(designer).await;
    says_what_it_is(designer, &style).await;
    writes_points(designer, &style, by_hand).await;
    draws(designer, &style, folder, by_hand).await;
    colours(designer, &style).await;
    materials(designer, &style).await;
    publishes(designer, &style, 1, "First issue").await;
    shares(designer, &style).await;
    style
}

/// Starts the style. Returns its path.
pub async fn starts(designer: &Window) -> String {
    designer.opens("/styles").await;
    designer.types("number", "HT-301").await;
    designer.types("name", "Half-zip").await;
    designer.presses("Start the style").await;
    let path = designer.path().await;
    let style = path.strip_suffix("/draft/header");
    style.expect("the header of the new draft").to_owned()
}

/// Sizes and header.
pub async fn says_what_it_is(designer: &Window, style: &str) {
    designer.opens(&format!("{style}/draft/sizes")).await;
    let sizes = [
        ("new-1.code", "S"),
        ("new-2.code", "M"),
        ("new-3.code", "L"),
    ];
    designer.fills(&sizes).await;
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
    designer.opens(&format!("{style}/draft/header")).await;
    designer
        .fills(&[("garment", "Half-zip pullover"), ("season", "Autumn 2026")])
        .await;
    designer.chooses("wearer", "Women").await;
    designer.chooses("unit", "inch").await;
    designer.chooses("base_size", "M").await;
    designer.chooses("measured", "As sewn").await;
    let tick = "document.querySelector('[name=markets][value=other]').click()";
    designer.asks(tick, &[]).await;
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
}

/// Two points of measure, and a third one that is typed on the keyboard when there is a script.
pub async fn writes_points(designer: &Window, style: &str, by_keyboard: bool) {
    designer.opens(&format!("{style}/draft/points")).await;
    designer
        .fills(&[
            ("new-1.name", "Chest width"),
            ("new-1.basis", "half"),
            ("new-1.base", "21 1/2"),
            ("new-1.minus", "3/8"),
            ("new-1.plus", "3/8"),
            ("new-1.grade", "1"),
            ("new-1.critical", "on"),
            ("new-1.key", "on"),
            ("new-1.direction", "width"),
            ("new-1.start", "left side seam, 1 in below the armhole"),
            ("new-1.end", "right side seam"),
            ("new-1.path", "straight"),
            ("new-2.name", "Bottom width"),
            ("new-2.basis", "half"),
            ("new-2.base", "20"),
            ("new-2.minus", "3/8"),
            ("new-2.plus", "3/8"),
            ("new-2.grade", "1"),
            ("new-2.direction", "width"),
            ("new-2.start", "left side seam, at the hem"),
            ("new-2.end", "right side seam"),
        ])
        .await;
    if by_keyboard {
        types_the_length(designer).await;
    } else {
        designer
            .fills(&[
                ("new-3.name", "Body length"),
                ("new-3.basis", "linear"),
                ("new-3.base", "28 1/2"),
                ("new-3.minus", "1/2"),
                ("new-3.plus", "1/2"),
                ("new-3.grade", "3/4"),
                ("new-3.direction", "length"),
                ("new-3.start", "high point of the shoulder"),
                ("new-3.end", "hem"),
            ])
            .await;
    }
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
    let length = designer
        .reads_in("tr:has([value='Body length']) td.calc")
        .await;
    assert_eq!(length.matches("27 3/4").count(), 1, "{length}");
}

/// C, Body length, with the keyboard alone; every size follows while the rule is typed.
async fn types_the_length(designer: &Window) {
    let row = "tr[data-row='new-3'] td.calc";
    designer.types("new-3.name", "Body length").await;
    designer.keys(Key::Tab + "Le").await;
    designer.keys(Key::Tab + "28 1/2").await;
    designer.keys(Key::Tab + "1/2").await;
    designer.keys(Key::Tab + "1/2").await;
    designer.keys(Key::Tab + "S-M 1/2").await;
    let gap = "the grade rule says nothing about the step from M to L";
    designer.must_see_in("tr[data-notes='new-3']", gap).await;
    assert_eq!(designer.value("new-3.basis").await, "linear");
    // Not saved yet, and not left: the rule is typed on.
    designer.keys(", M-L 1").await;
    designer
        .must_see_in(row, "28 71.1 28 1/2 72.4 29 1/2 74.9")
        .await;
    designer.must_not_see(gap).await;
    // Enter goes down, the arrow comes back with everything chosen, and typing replaces it.
    designer.keys(Key::Enter + "").await;
    designer.keys(Key::Up + "3/4").await;
    designer.must_see_in(row, "27 3/4").await;
    designer.must_see_in(row, "29 1/4").await;
    // How it is measured stands in the row that opens below.
    designer
        .fills(&[
            ("new-3.direction", "length"),
            ("new-3.start", "high point of the shoulder"),
            ("new-3.end", "hem"),
        ])
        .await;
    assert_eq!(designer.value("new-3.end").await, "hem");
}

/// A drawing, with the letters of all points: dragged on by hand, or typed.
pub async fn draws(designer: &Window, style: &str, folder: &Path, by_hand: bool) {
    let file = folder.join("half-zip-front.svg");
    std::fs::write(&file, FRONT).expect("a file");
    designer.opens(&format!("{style}/draft/drawings")).await;
    designer.attaches("input[name='new']", &file).await;
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
    let letters = [("A", 50.0, 45.0), ("B", 50.0, 85.0), ("C", 36.0, 30.0)];
    if by_hand {
        for (letter, x, y) in letters {
            drags_letter(designer, letter, x, y).await;
        }
    } else {
        for (letter, x, y) in letters {
            let row = format!("tr[data-letter='{letter}'] input[aria-label]");
            let script =
                "return [...document.querySelectorAll(arguments[0])].map((e) => e.name).join(' ')";
            let names = designer.asks(script, &[&row]).await;
            let names = names.as_str().unwrap_or_default().to_owned();
            let Some((left, top)) = names.split_once(' ') else {
                designer
                    .fails(&format!("no fields for {letter}: {names}"))
                    .await;
            };
            let (x, y) = (x.to_string(), y.to_string());
            designer.fills(&[(left, &x), (top, &y)]).await;
        }
    }
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
    let marks = designer.asks(
        "return document.querySelectorAll('svg.marks .mark').length",
        &[],
    );
    assert_eq!(marks.await, 3);
}

/// Drags a letter from the tray to a place of the drawing, in percent.
async fn drags_letter(designer: &Window, letter: &str, x: f64, y: f64) {
    let tray = "document.querySelector('[data-tray]').scrollIntoView({ block: 'start', behavior: 'instant' })";
    designer.asks(tray, &[]).await;
    let [left, top, wide, tall] = designer
        .place(&format!("[data-tray] .chip[aria-label^='{letter} ']"))
        .await;
    let chip = (left + wide / 2.0, top + tall / 2.0);
    let [left, top, wide, tall] = designer.place("[data-face]").await;
    let spot = (left + wide * x / 100.0, top + tall * y / 100.0);
    designer.drags(chip, spot).await;
    let script = "return [...document.querySelectorAll(`tr[data-letter='${arguments[0]}'] input[aria-label]`)]
        .map((e) => Number(e.value))";
    let typed = designer.asks(script, &[letter]).await;
    for (at, wanted) in [(0, x), (1, y)] {
        let got = typed[at].as_f64().unwrap_or_default();
        if (got - wanted).abs() > 1.0 {
            let why = format!("{letter} lies at {typed}, not at {x}, {y}; {chip:?} {spot:?}");
            designer.fails(&why).await;
        }
    }
}

/// Two parts in one colourway.
pub async fn colours(designer: &Window, style: &str) {
    designer.opens(&format!("{style}/draft/colourways")).await;
    designer
        .fills(&[
            ("new-1.name", "Main fabric"),
            ("new-2.name", "Neck tape"),
            ("new-9.code", "INK"),
            ("new-9.name", "Ink"),
            ("new-9.new-1.kind", "colour"),
            ("new-9.new-1.name", "Ink blue"),
            ("new-9.new-1.screen", "#1b2a49"),
            ("new-9.new-2.kind", "natural"),
        ])
        .await;
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
}

/// What the two parts are made of: begun in the list, and each tied to its part on its own page.
pub async fn materials(designer: &Window, style: &str) {
    designer.opens(&format!("{style}/draft/materials")).await;
    designer
        .fills(&[
            ("new-1-materials.letter", "F1"),
            ("new-1-materials.name", "Fleece"),
            ("new-1-materials.kind", "knitted_fabric"),
            ("new-2-materials.letter", "T1"),
            ("new-2-materials.name", "Neck tape"),
            ("new-2-materials.kind", "tape"),
        ])
        .await;
    designer.presses("Save").await;
    designer.must_see("Saved.").await;
    for (letter, part) in [("F1", 0), ("T1", 1)] {
        let row = format!("tr:has([value='{letter}']) a");
        let script = "return document.querySelector(arguments[0]).getAttribute('href')";
        let page = designer.asks(script, &[&row]).await;
        let page = page.as_str().expect("a link").to_owned();
        designer.opens(&page).await;
        let tick = format!("document.querySelectorAll('[name$=\".parts\"]')[{part}].click()");
        designer.asks(&tick, &[]).await;
        designer.presses("Save").await;
        designer.must_see("Saved.").await;
    }
}

/// Publishes the draft as this revision.
pub async fn publishes(designer: &Window, style: &str, revision: u32, reason: &str) {
    designer.opens(&format!("{style}/publish")).await;
    designer.must_see("Nothing has to be mended.").await;
    designer.types("reason", reason).await;
    designer
        .presses(&format!("Publish revision {revision}"))
        .await;
    designer.must_see("Published.").await;
    designer
        .must_see(&format!("Revision {revision} · Current"))
        .await;
}

/// Shares the style with the only factory that there is.
pub async fn shares(designer: &Window, style: &str) {
    designer.opens(style).await;
    designer.presses("Share with this factory").await;
    designer.must_see("Shared.").await;
}
