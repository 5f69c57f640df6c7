//! The drawings of the spec: brought, lettered, and drawn on.

use serde_json::{Value as Json, json};

use super::Writer;
use super::hand::{self, Wanted};
use super::same::{Ids, text};
use crate::window::Window;

const ENTER: &str = "\u{E007}";
const SHIFT_RIGHT: &str = "\u{E008}\u{E014}\u{E000}";
const NUDGES: &str = "\u{E014}\u{E014}\u{E015}";

impl Writer<'_> {
    /// All pictures at once, in the order of their drawings.
    pub async fn pictures(&mut self) {
        let drawings = &self.spec["drawings"]["drawings"];
        let all = drawings.as_array().expect("drawings");
        let files: Vec<String> = all
            .iter()
            .map(|drawing| {
                let file = self.pack.join(name(&text(&drawing["id"])));
                file.to_str().expect("text").to_owned()
            })
            .collect();
        self.window.opens(&self.draft("drawings")).await;
        // Several files go into one field as lines.
        let files = files.join("\n");
        self.window
            .attaches("input[name='new']", files.as_ref())
            .await;
        hand::saves(self.window).await;
        let made = hand::ids(self.window, "row").await;
        self.ids.learns(drawings, &made);
    }

    /// Letters by the hand and by the keys, lines and blow-ups by the keys; and then the exact place
    /// of each in the fields, which a hand would not hit to the hundredth of a percent.
    pub async fn letters_and_lines(&mut self) {
        self.window.opens(&self.draft("drawings")).await;
        let drawings = self.spec["drawings"]["drawings"]
            .as_array()
            .expect("drawings");
        for (n, drawing) in drawings.iter().enumerate() {
            let scope = format!("[id='row-{}']", self.ids.of(&text(&drawing["id"])));
            for (m, marker) in list(drawing, "markers").enumerate() {
                let item = self.ids.of(&text(&marker["item"]));
                if (n, m) == (0, 0) {
                    self.drags_on(&scope, &item, marker).await;
                } else {
                    self.puts_on(&scope, &item).await;
                }
            }
            for line in list(drawing, "lines") {
                self.draws_line(&scope, &self.ids.of(&text(&line["item"])))
                    .await;
            }
            for _ in list(drawing, "blow_ups") {
                self.draws_circle(&scope).await;
            }
            let wanted = self.places(&scope, drawing).await;
            hand::types_all(self.window, &scope, &wanted).await;
        }
        // Enter in a field saves.
        hand::leaves_by(self.window, ENTER).await;
        self.window.must_see("Saved.").await;
    }

    /// A letter from the tray onto its place, under the pointer.
    async fn drags_on(&self, scope: &str, item: &str, marker: &Json) {
        let into_view = format!(
            "document.querySelector(\"{scope} [data-tray]\").scrollIntoView({{ block: 'start', behavior: 'instant' }})"
        );
        self.window.asks(&into_view, &[]).await;
        let chip = format!("{scope} .chip[data-item='{item}']");
        let [left, top, wide, tall] = self.window.place(&chip).await;
        let from = (left + wide / 2.0, top + tall / 2.0);
        let [left, top, wide, tall] = self.window.place(&format!("{scope} [data-face]")).await;
        let part = |axis: &str| marker[axis].as_f64().expect("a place") / 10_000.0;
        let to = (left + wide * part("x"), top + tall * part("y"));
        self.window.drags(from, to).await;
        self.is_on(scope, item).await;
    }

    /// A letter from the tray onto the drawing by Enter, and moved by the arrows.
    async fn puts_on(&self, scope: &str, item: &str) {
        self.focuses(&format!("{scope} .chip[data-item='{item}']"))
            .await;
        self.window.keys(format!("{ENTER}{NUDGES}")).await;
        self.is_on(scope, item).await;
    }

    async fn is_on(&self, scope: &str, item: &str) {
        let script = "const row = document.querySelector(`${arguments[0]} tr[data-mark][data-item='${arguments[1]}']`);
            return [...row.querySelectorAll('input[aria-label]')].every((e) => e.value !== '')";
        if self.window.asks(script, &[scope, item]).await != json!(true) {
            self.window
                .fails(&format!("{item} is not on {scope}"))
                .await;
        }
    }

    /// A dimension line from a letter to the right of it.
    async fn draws_line(&self, scope: &str, item: &str) {
        self.focuses(&format!("{scope} .mark[data-item='{item}']"))
            .await;
        let drawn = format!("l{ENTER}{SHIFT_RIGHT}{SHIFT_RIGHT}{ENTER}");
        self.window.keys(drawn).await;
        let script = "return document.querySelectorAll(`${arguments[0]} tr[data-line][data-item='${arguments[1]}']`).length";
        if self.window.asks(script, &[scope, item]).await != json!(1) {
            self.window
                .fails(&format!("{item} has no line on {scope}"))
                .await;
        }
    }

    /// A blow-up in the middle of the drawing.
    async fn draws_circle(&self, scope: &str) {
        self.focuses(&format!("{scope} svg.marks")).await;
        let drawn = format!("b{ENTER}{SHIFT_RIGHT}{SHIFT_RIGHT}{ENTER}");
        self.window.keys(drawn).await;
    }

    async fn focuses(&self, selector: &str) {
        let script = "document.querySelector(arguments[0]).focus()";
        self.window.asks(script, &[selector]).await;
    }

    /// Where everything is to be, by the names of the fields.
    async fn places(&self, scope: &str, drawing: &Json) -> Wanted {
        let id = self.ids.of(&text(&drawing["id"]));
        let mut wanted = vec![(format!("{id}.view"), vec![text(&drawing["view"])])];
        if drawing.get("title").is_some() {
            wanted.push((format!("{id}.title"), vec![text(&drawing["title"])]));
        }
        let marks = keys(self.window, scope, "mark").await;
        for marker in list(drawing, "markers") {
            let item = self.ids.of(&text(&marker["item"]));
            let row = marks.iter().find(|(_, of)| *of == item).expect("a row");
            for axis in ["x", "y"] {
                wanted.push((format!("{}.{axis}", row.0), vec![percent(&marker[axis])]));
            }
        }
        let rows = keys(self.window, scope, "line").await;
        for line in list(drawing, "lines") {
            let item = self.ids.of(&text(&line["item"]));
            let row = rows.iter().find(|(_, of)| *of == item).expect("a row");
            for end in ["from", "to", "via"] {
                let spot = line.get(end).map(spot).unwrap_or_default();
                wanted.push((format!("{}.{end}", row.0), vec![spot]));
            }
        }
        let rows = keys(self.window, scope, "circle").await;
        for (row, circle) in rows.iter().zip(list(drawing, "blow_ups")) {
            let shown = id_of(&self.ids, &circle["drawing"]);
            wanted.push((format!("{}.drawing", row.0), vec![shown]));
            wanted.push((format!("{}.at", row.0), vec![spot(&circle["at"])]));
            wanted.push((
                format!("{}.radius", row.0),
                vec![percent(&circle["radius"])],
            ));
        }
        wanted
    }
}

fn id_of(ids: &Ids, json: &Json) -> String {
    ids.of(&text(json))
}

fn list<'a>(drawing: &'a Json, name: &str) -> impl Iterator<Item = &'a Json> + use<'a> {
    drawing[name].as_array().into_iter().flatten()
}

/// The keys of a drawing's rows, and the item of each.
async fn keys(window: &Window, scope: &str, kind: &str) -> Vec<(String, String)> {
    let script = "const [scope, kind] = arguments;
        return [...document.querySelectorAll(`${scope} tr[data-${kind}]`)]
            .map((row) => [row.dataset[kind], row.dataset.item ?? ''])";
    let found = window.asks(script, &[scope, kind]).await;
    serde_json::from_value(found).expect("pairs")
}

/// Ten-thousandths as percent.
fn percent(json: &Json) -> String {
    let value = json.as_u64().expect("a place");
    format!("{}.{:02}", value / 100, value % 100)
}

fn spot(json: &Json) -> String {
    format!("{} {}", percent(&json["x"]), percent(&json["y"]))
}

/// The file of a drawing.
fn name(drawing: &str) -> &'static str {
    match drawing {
        "drawing-front" => "front.svg",
        "drawing-back" => "back.svg",
        "drawing-collar" => "detail-collar.svg",
        "drawing-neck" => "detail-neck.svg",
        "drawing-cuff" => "detail-cuff.svg",
        "drawing-pocket" => "detail-pocket.svg",
        other => panic!("{other} has no file"),
    }
}
