//! Every page of the program, as each of those sees it who may.

use axum::http::Method;
use std::collections::BTreeSet;

use super::look::{Look, is_page, route};
use crate::entering::{adds_factory, invites};
use crate::stage::Stage;
use crate::window::Window;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn axe_finds_nothing_on_a_large_screen() {
    finds_nothing(false).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn axe_finds_nothing_on_a_phone() {
    finds_nothing(true).await;
}

async fn finds_nothing(on_phone: bool) {
    let mut look = Look::new();
    founding(&mut look, on_phone).await;
    working(&mut look, on_phone).await;
    look.says_nothing();
    let table = fellseam::web::table();
    let pages = table.iter().filter(|route| route.method == Method::GET);
    let pages = pages.map(|route| route.path).filter(|path| is_page(path));
    let missed: BTreeSet<String> = pages
        .flat_map(
            |path| match path.contains("/draft/{section}") || path.contains("/history/") {
                true => SECTIONS
                    .iter()
                    .map(|it| path.replace("{section}", it))
                    .collect(),
                false => vec![path.to_owned()],
            },
        )
        .filter(|path| !look.pages.contains(path) && !NONE.contains(&path.as_str()))
        .collect();
    assert!(missed.is_empty(), "not looked at: {missed:#?}");
    let missed: Vec<&&str> = REFUSED
        .iter()
        .filter(|it| !look.refused.contains(**it))
        .collect();
    assert!(
        missed.is_empty(),
        "not refused: {missed:#?} of {:#?}",
        look.refused
    );
}

const SECTIONS: [&str; 10] = [
    "header",
    "sizes",
    "drawings",
    "points",
    "colourways",
    "materials",
    "construction",
    "artwork",
    "labels",
    "packing",
];

/// Sections without such a page, the address of a thread, which leads on to its item, and what is
/// behind the code on a print, which nothing links to.
const NONE: [&str; 12] = [
    "/styles/{style}/threads/{thread}",
    "/p/{code}",
    "/styles/{style}/draft/header/{item}",
    "/styles/{style}/draft/drawings/{item}",
    "/styles/{style}/draft/header/import",
    "/styles/{style}/draft/sizes/import",
    "/styles/{style}/draft/drawings/import",
    "/styles/{style}/draft/colourways/import",
    "/styles/{style}/draft/construction/import",
    "/styles/{style}/draft/artwork/import",
    "/styles/{style}/draft/labels/import",
    "/styles/{style}/draft/packing/import",
];

/// Forms that must have been seen with what is wrong in them.
const REFUSED: [&str; 22] = [
    "/sign-in",
    "/set-up/{key}",
    "/join/{key}",
    "/me",
    "/me/password",
    "/people",
    "/factories",
    "/styles",
    "/styles/{style}/copy",
    "/styles/{style}/draft/header",
    "/styles/{style}/draft/sizes",
    "/styles/{style}/draft/drawings",
    "/styles/{style}/draft/points",
    "/styles/{style}/draft/colourways",
    "/styles/{style}/draft/materials/{item}",
    "/styles/{style}/draft/artwork/{item}",
    "/styles/{style}/publish",
    "/styles/{style}/revisions/{number}/items/{item}",
    "/styles/{style}/threads/{thread}/messages",
    "/styles/{style}/rounds",
    "/styles/{style}/rounds/{round}/decide",
    "/styles/{style}/rounds/{round}/measure",
];

async fn opens(stage: &Stage, who: &str, on_phone: bool) -> Window {
    match on_phone {
        true => stage.phone(who).await,
        false => stage.desk(who).await,
    }
}

/// The ways in, and what an owner alone sees; a brand without a style.
async fn founding(look: &mut Look, on_phone: bool) {
    let stage = Stage::opens().await;
    let nell = opens(&stage, "Nell", on_phone).await;
    look.through(&nell).await;
    look.opens(&nell, "/sign-in").await;
    look.spoils(&nell, "/sign-in").await;
    look.opens(&nell, "/code").await;
    look.spoils(&nell, "/code").await;
    look.opens(&nell, stage.service.set_up()).await;
    look.spoils(&nell, stage.service.set_up()).await;
    nell.opens(stage.service.set_up()).await;
    nell.fills(&[
        ("brand", "Harrow & Tide"),
        ("name", "Nell"),
        ("login", "nell@harrow.example"),
        ("password", "four seams and a hem"),
    ])
    .await;
    nell.presses("Set up").await;
    nell.must_see("Nothing waits for you.").await;
    look.at(&nell, "nothing to do").await;
    look.opens(&nell, "/people").await;
    adds_factory(&nell, "Sao Mai Garment").await;
    let link = invites(&nell, "Iris", "Designer · Harrow & Tide").await;
    look.at(&nell, "a new link").await;

    let iris = opens(&stage, "Iris", on_phone).await;
    look.through(&iris).await;
    look.opens(&iris, &link).await;
    look.spoils(&iris, &link).await;
    iris.opens(&link).await;
    iris.fills(&[("name", "Iris")]).await;
    iris.presses("Come in").await;
    look.opens(&iris, &link).await;
    look.opens(&iris, "/nowhere").await;
    look.opens(&iris, "/numbers").await;
    // The empty sections of a new style.
    nell.opens("/styles").await;
    nell.fills(&[("number", "HT-301"), ("name", "Half-zip")])
        .await;
    nell.presses("Start the style").await;
    let header = nell.path().await;
    for path in look.walks(&nell, "/").await {
        if !path.contains("/draft/") {
            look.spoils(&nell, &path).await;
        }
    }
    conflicts(look, &nell, &iris, &header).await;
    nell.closes().await;
    iris.closes().await;
}

/// Both write into one header: the second meets the two versions.
async fn conflicts(look: &mut Look, nell: &Window, iris: &Window, header: &str) {
    iris.opens(header).await;
    nell.opens(header).await;
    for (window, season) in [(nell, "Autumn 2026"), (iris, "Spring 2027")] {
        window.fills(&[("season", season)]).await;
        window.presses("Save").await;
    }
    let path = iris.path().await;
    assert!(path.contains("/draft/conflict/"), "{path}");
    look.at(iris, "two versions").await;
}

/// The demo, which is full: as the designer, the merchandiser and the sample room.
async fn working(look: &mut Look, on_phone: bool) {
    let stage = Stage::demo().await;
    let mut spoilt = BTreeSet::new();
    let mut rounds = BTreeSet::new();
    for who in [
        "Merchandiser, Sao Mai",
        "Merchandiser, Meghna",
        "Sample room, Sao Mai",
        "Designer",
    ] {
        let window = stage.of_demo(who, on_phone).await;
        look.through(&window).await;
        let paths = look.walks(&window, "/").await;
        let here = paths.iter();
        let here = here.filter(|it| route(it) == "/styles/{style}/rounds/{round}");
        rounds.extend(here.cloned());
        for path in &paths {
            panel(look, &window, path).await;
        }
        if who == "Designer" {
            imports(look, &window, &paths).await;
            // What stands in the way of sealing, which only a round that may be sealed leads to; and of
            // every round the form that decides it.
            for round in &rounds {
                look.opens(&window, &format!("{round}/seal")).await;
                look.spoils(&window, round).await;
            }
        }
        // Each side has its own forms on a page that both have.
        for path in &paths {
            if spoilt.insert((who == "Designer", route(path))) {
                look.spoils(&window, path).await;
            }
        }
        window.closes().await;
    }
}

/// A size chart with mistakes, up to what it would change.
async fn imports(look: &mut Look, window: &Window, paths: &[String]) {
    let folder = tempfile::tempdir().expect("a temporary folder");
    let file = folder.path().join("chart.csv");
    std::fs::write(
        &file,
        "Letter,Name,Base,Minus\nB,Chest width,54,0.8\nC,Waist,abc,1\n,,12,\n",
    )
    .expect("a file");
    let path = paths.iter().find(|path| path.ends_with("/points/import"));
    window.opens(path.expect("the way to import")).await;
    window.presses("Read the file").await;
    window.must_see("Choose a file first.").await;
    look.at(window, "no file chosen").await;
    window.attaches("#file", &file).await;
    window.presses("Read the file").await;
    window.must_see("What the columns hold").await;
    look.at(window, "columns").await;
    window.presses("See what would change").await;
    window.must_see("can be read").await;
    look.at(window, "what an import would change").await;
}

/// The panel of an item beside its revision, as it is, and with its forms refused.
async fn panel(look: &mut Look, window: &Window, path: &str) {
    if route(path) != "/styles/{style}/revisions/{number}" {
        return;
    }
    window.opens(path).await;
    let script = "const link = [...document.querySelectorAll('a[href*=\"/items/\"]')]
        .find((e) => e.click && e.getClientRects().length > 0); link?.click(); return Boolean(link)";
    if window.asks(script, &[]).await == serde_json::json!(true) {
        window
            .waits_until("return document.querySelector('dialog[open] h1') !== null")
            .await;
        look.at(window, "an item beside its revision").await;
        look.spoils_one(window, 0).await;
    }
}
