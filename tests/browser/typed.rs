//! A whole spec, the half-zip of the demo, is written from an empty style until it can be published:
//! by keyboard, with blocks pasted from a spreadsheet and drawings drawn on; and what is then
//! published says what the fixture says.

mod drawn;
mod hand;
mod same;

use std::collections::BTreeSet;
use std::path::PathBuf;
use tokio::time::Instant;

use serde_json::Value as Json;

use self::hand::Wanted;
use self::same::{Ids, cells, fields, plain, text};
use crate::entering::founds;
use crate::stage::Stage;
use crate::window::Window;

/// Who writes, what, and what of it is written already.
struct Writer<'a> {
    window: &'a Window,
    spec: &'a Json,
    /// The folder of the spec and of its drawings.
    pack: PathBuf,
    /// The path of the style.
    style: String,
    ids: Ids,
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_whole_spec_is_typed_pasted_drawn_and_published() {
    let pack = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src/cli/demo/packs/half-zip");
    let spec = std::fs::read(pack.join("spec.json")).expect("the fixture");
    let spec: Json = serde_json::from_slice(&spec).expect("JSON");
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let mut writer = Writer {
        window: &nell,
        spec: &spec,
        pack,
        style: String::new(),
        ids: Ids::default(),
    };
    let began = Instant::now();
    macro_rules! step {
        ($($what:ident)*) => {$(
            let from = Instant::now();
            writer.$what().await;
            println!("{:>5.1} s {}", from.elapsed().as_secs_f64(), stringify!($what));
        )*};
    }
    step! {
        starts sizes header bodies parts cells_of_the_matrix colours pieces pictures points
        points_further materials seams callouts artwork labels packing letters_and_lines
    }
    writer.publishes().await;
    println!("{:.0} s in all", began.elapsed().as_secs_f64());

    let script = "return fetch(`${arguments[0]}/revisions/1/document`).then((it) => it.text())";
    let document = nell.asks(script, &[&writer.style]).await;
    let document: Json = serde_json::from_str(&text(&document)).expect("JSON");
    let differences = same::differences(&document["spec"], &spec);
    assert!(differences.is_empty(), "{}", differences.join("\n"));
    // Nothing had to be excused, and the files are the fixture's, byte for byte.
    assert_eq!(document.get("findings"), None);
    let files: BTreeSet<String> = hand::texts(&document["files"]).into_iter().collect();
    let drawings = spec["drawings"]["drawings"].as_array().expect("drawings");
    let artworks = spec["artwork"]["artworks"].as_array().expect("artworks");
    let named = drawings.iter().chain(artworks);
    let named: BTreeSet<String> = named.map(|it| text(&it["file"])).collect();
    assert_eq!(files, named);
    nell.closes().await;
    let said = stage.service.stops_and_audits().await;
    assert!(said.contains("Everything holds."), "{said}");
}

/// What the matrix has no room for: a colour's own page has.
const OF_ITS_PAGE: [&str; 3] = [".substrate", ".lab.", ".approval"];

impl Writer<'_> {
    fn draft(&self, section: &str) -> String {
        format!("{}/draft/{section}", self.style)
    }

    /// A record of the fixture as fields named after its item, or after nothing.
    fn of(&self, at: &str, json: &Json) -> Wanted {
        fields(at, json, &self.ids)
    }

    async fn starts(&mut self) {
        self.window.opens("/styles").await;
        let header = &self.spec["header"];
        let wanted = vec![
            ("number".to_owned(), vec![text(&header["number"])]),
            ("name".to_owned(), vec![text(&header["name"])]),
        ];
        hand::types_all(self.window, "form[action='/styles']", &wanted).await;
        hand::leaves_by(self.window, "\u{E007}").await;
        let path = self.window.path().await;
        let style = path.strip_suffix("/draft/header");
        self.style = style.expect("the header of the new draft").to_owned();
    }

    /// Pastes a list into the first empty row of its table, saves, and learns its ids. `rows` is the
    /// name of the hidden fields that hold the keys of the rows.
    async fn pastes(&mut self, section: &str, rows: &str, list: &Json, new: &str) {
        self.window.opens(&self.draft(section)).await;
        let table = format!("table.grid[data-hand]:has([name='{rows}'])");
        let columns = hand::columns(self.window, &table).await;
        let spec = self.spec;
        let block = cells(list, &columns, |row, column| match column {
            "grade" => same::grade(&row["grade"], spec),
            column if row["how"].get(column).is_some() => plain(&row["how"], column),
            column => plain(row, column),
        });
        hand::copies(self.window, &block).await;
        hand::pastes(self.window, &format!("{new}.{}", columns[0])).await;
        hand::leaves_by(self.window, "\u{E009}s\u{E000}").await;
        self.window.must_see("Saved.").await;
        let made = hand::ids(self.window, rows).await;
        self.ids.learns(list, &made);
    }

    async fn sizes(&mut self) {
        let sizes = &self.spec["sizes"];
        self.pastes("sizes", "row", &sizes["sizes"], "new-1").await;
        let system = vec![("system".to_owned(), vec![text(&sizes["system"])])];
        hand::types_all(self.window, "form#section", &system).await;
        hand::saves(self.window).await;
    }

    async fn header(&mut self) {
        self.window.opens(&self.draft("header")).await;
        let wanted = self.of("", &self.spec["header"]);
        hand::types_all(self.window, "form#section", &wanted).await;
        hand::saves(self.window).await;
    }

    /// All fields of the items of a list on their own pages, but those that its table had.
    async fn further(&mut self, section: &str, list: &Json, but: &[&str]) {
        for item in list.as_array().into_iter().flatten() {
            let id = self.ids.of(&text(&item["id"]));
            let mut wanted = self.of(&id, item);
            wanted.retain(|(name, _)| {
                let field = name.strip_prefix(&format!("{id}.")).unwrap_or(name);
                !but.contains(&field)
            });
            let page = format!("{}/{id}", self.draft(section));
            hand::writes(self.window, &page, &wanted).await;
        }
    }

    /// The body that each size is for.
    async fn bodies(&mut self) {
        let sizes = &self.spec["sizes"]["sizes"];
        self.further("sizes", sizes, &["code", "label"]).await;
    }

    /// The heads of the matrix: parts and colourways, as many at a time as there are empty ones.
    async fn parts(&mut self) {
        let colourways = &self.spec["colourways"];
        let lists = [
            ("part", "parts", "letter"),
            ("colourway", "colourways", "code"),
        ];
        self.window.opens(&self.draft("colourways")).await;
        loop {
            let mut wanted = Wanted::new();
            for (field, list, label) in lists {
                let list = colourways[list].as_array().expect("a list");
                let script =
                    "return [...document.getElementsByName(arguments[0])].map((e) => e.value)";
                let keys = hand::texts(&self.window.asks(script, &[field]).await);
                for (key, item) in keys.iter().zip(list) {
                    wanted.push((format!("{key}.{label}"), vec![text(&item[label])]));
                    wanted.push((format!("{key}.name"), vec![text(&item["name"])]));
                    if let Some(number) = item.get("number") {
                        wanted.push((format!("{key}.number"), vec![text(number)]));
                    }
                }
            }
            hand::types_all(self.window, "form#section", &wanted).await;
            hand::presses(self.window, "form#section", "Save, and give me more rows").await;
            let mut whole = true;
            for (field, list, _) in lists {
                let made = hand::ids(self.window, field).await.len();
                whole &= made == colourways[list].as_array().map_or(0, Vec::len);
            }
            if whole {
                break;
            }
        }
        for (field, list, _) in lists {
            let made = hand::ids(self.window, field).await;
            self.ids.learns(&colourways[list], &made);
        }
    }

    async fn cells_of_the_matrix(&mut self) {
        self.window.opens(&self.draft("colourways")).await;
        let rows = self.spec["colourways"]["cells"].as_object().expect("cells");
        for (colourway, row) in rows {
            for (part, cell) in row.as_object().expect("a row") {
                let at = format!("{}.{}", self.ids.of(colourway), self.ids.of(part));
                self.cell(&at, cell).await;
            }
        }
        hand::saves(self.window).await;
    }

    /// One cell: first its kind, upon which the fields of a colour open.
    async fn cell(&self, at: &str, cell: &Json) {
        let kind = match cell {
            Json::Object(_) if cell.get("colour").is_some() => "colour".to_owned(),
            Json::Object(_) if cell.get("none").is_some() => "none".to_owned(),
            Json::Object(_) if cell.get("natural").is_some() => "natural".to_owned(),
            other => format!(
                "match {}",
                self.ids.of(&text(&other["dyed_to_match"]["part"]))
            ),
        };
        let scope = format!("td:has([name='{at}.kind'])");
        let scope = scope.as_str();
        let wanted = vec![(format!("{at}.kind"), vec![kind])];
        hand::types_all(self.window, scope, &wanted).await;
        if let Some(colour) = cell.get("colour") {
            let mut wanted = self.of(at, colour);
            wanted.retain(|(name, _)| !OF_ITS_PAGE.iter().any(|field| name.contains(field)));
            hand::types_all(self.window, scope, &wanted).await;
        }
    }

    async fn colours(&mut self) {
        let rows = self.spec["colourways"]["cells"].as_object().expect("cells");
        for (colourway, row) in rows {
            for (part, cell) in row.as_object().expect("a row") {
                let Some(colour) = cell.get("colour") else {
                    continue;
                };
                let (colourway, part) = (self.ids.of(colourway), self.ids.of(part));
                let page = format!("{}/{colourway}/{part}", self.draft("colourways"));
                let wanted = self.of("", colour).into_iter();
                let wanted = wanted.map(|(name, values)| match name.strip_prefix("lab.") {
                    Some(field) => (field.to_owned(), values),
                    None => (name, values),
                });
                hand::writes(self.window, &page, &wanted.collect()).await;
            }
        }
    }

    /// What a colourway has on its own page: how many are to be made of it.
    async fn pieces(&mut self) {
        let colourways = &self.spec["colourways"]["colourways"];
        self.further("colourways", colourways, &["code", "name", "number"])
            .await;
    }

    async fn points(&mut self) {
        let points = &self.spec["points"]["points"];
        self.pastes("points", "row", points, "new-1").await;
    }

    /// What the grid has no column for.
    async fn points_further(&mut self) {
        let grid = [
            "letter",
            "name",
            "basis",
            "direction",
            "key",
            "critical",
            "minus",
            "plus",
            "step",
            "base",
            "how.start",
            "how.end",
            "how.path",
            "how.note",
            "how.stretched",
            "how.closure",
            "how.side",
        ];
        for point in self.spec["points"]["points"]
            .as_array()
            .into_iter()
            .flatten()
        {
            let mut point = point.clone();
            point.as_object_mut().expect("a point").remove("grade");
            let list = Json::Array(vec![point]);
            self.further("points", &list, &grid).await;
        }
    }

    async fn materials(&mut self) {
        let materials = &self.spec["materials"]["materials"];
        self.pastes("materials", "materials", materials, "new-1-materials")
            .await;
        let row = ["letter", "name", "kind", "supplier", "reference"];
        self.further("materials", materials, &row).await;
    }

    async fn seams(&mut self) {
        let lines = &self.spec["construction"]["lines"];
        self.pastes("construction", "lines", lines, "new-1-lines")
            .await;
    }

    async fn callouts(&mut self) {
        let callouts = &self.spec["construction"]["callouts"];
        self.pastes("construction", "callouts", callouts, "new-1-callouts")
            .await;
        let row = ["letter", "place", "text", "stitch", "seam"];
        self.further("construction", callouts, &row).await;
    }

    async fn artwork(&mut self) {
        let artworks = &self.spec["artwork"]["artworks"];
        self.pastes("artwork", "artworks", artworks, "new-1-artworks")
            .await;
        let id = self.ids.of("artwork-emblem");
        self.window
            .opens(&format!("{}/{id}", self.draft("artwork")))
            .await;
        let original = self.pack.join("artwork-emblem.svg");
        self.window
            .attaches(&format!("[id='{id}.file']"), &original)
            .await;
        hand::saves(self.window).await;
        let row = ["letter", "name", "method", "form", "file"];
        self.further("artwork", artworks, &row).await;
    }

    async fn labels(&mut self) {
        let section = &self.spec["labels"];
        self.window.opens(&self.draft("labels")).await;
        let care = self.of("care", &section["care"]);
        hand::types_all(self.window, "form#section", &care).await;
        hand::saves(self.window).await;
        let labels = &section["labels"];
        self.pastes("labels", "labels", labels, "new-1-labels")
            .await;
        self.further("labels", labels, &["letter", "name", "kind", "made"])
            .await;
    }

    async fn packing(&mut self) {
        let section = &self.spec["packing"];
        self.window.opens(&self.draft("packing")).await;
        let mut own = section.clone();
        for list in ["steps", "ratio"] {
            own.as_object_mut().expect("a section").remove(list);
        }
        let own = self.of("", &own);
        hand::types_all(self.window, "form#section", &own).await;
        hand::saves(self.window).await;
        self.pastes("packing", "steps", &section["steps"], "new-1-steps")
            .await;
        self.pastes("packing", "ratio", &section["ratio"], "new-1-ratio")
            .await;
        self.further("packing", &section["ratio"], &["name"]).await;
    }

    /// Ready to publish: nothing to mend, no warning to excuse.
    async fn publishes(&self) {
        self.window.opens(&format!("{}/publish", self.style)).await;
        self.window.must_see("Nothing has to be mended.").await;
        let scope = "form[action$='/publish']";
        let reason = vec![("reason".to_owned(), vec!["First revision.".to_owned()])];
        hand::types_all(self.window, scope, &reason).await;
        hand::presses(self.window, scope, "Publish revision 1").await;
        self.window.must_see("Published.").await;
    }
}
