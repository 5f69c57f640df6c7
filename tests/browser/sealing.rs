//! From the proto to the sealed sample, in the browser: every block is met once and resolved by its
//! way on.

use std::path::Path;

use crate::garment;
use crate::stage::Stage;
use crate::walk::{People, answers, ends, enter_with_owner, photograph};
use crate::window::Window;

/// A, B and C of one piece in M: near the spec, so that nothing looks copied.
const RIGHT: &str = "A 21 5/8\nB 19 7/8\nC 28 1/2";
const LONG: &str = "A 21 5/8\nB 19 7/8\nC 29 1/4";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_sample_goes_from_the_proto_to_its_seal() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let (nell, people) = enter_with_owner(&stage, true).await;
    let People { iris, linh, .. } = &people;
    let style = garment::reaches_the_factory(iris, folder.path(), false).await;
    acknowledges(linh, &style, 1).await;

    // The proto is too long, and a proto is not sealed.
    let proto = makes(&people, &style, "proto", LONG, "actual").await;
    iris.fills(&[("outcome", "approved_with_changes")]).await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see("Must-fixes from this decision").await;
    iris.opens(&format!("{proto}/seal")).await;
    iris.must_see("Only an owner of the brand seals a sample.")
        .await;
    nell.opens(&format!("{proto}/seal")).await;
    for block in [
        "This is a round of the kind: Proto.",
        "This round is: approved with changes.",
    ] {
        nell.must_see_in(".blocks", block).await;
    }

    // Revision 2 carries the change, and the fit sample shows it.
    iris.opens(&format!("{style}/draft/points")).await;
    let length = "return document.querySelector(\"tr:has([value='Body length'])\").dataset.row";
    let length = iris.asks(length, &[]).await;
    let length = length.as_str().expect("an id").to_owned();
    iris.fills(&[(&format!("{length}.base"), "29 1/4")]).await;
    iris.presses("Save").await;
    iris.must_see("Saved.").await;
    garment::publishes(iris, &style, 2, "The length as it was made.").await;
    acknowledges(linh, &style, 2).await;
    iris.opens(&format!("{style}/revisions/2/items/{length}"))
        .await;
    iris.presses("It is changed in revision 2").await;
    iris.must_see_in(".thread", "changed in revision 2").await;
    let right = RIGHT.replace("28 1/2", "29 1/8");
    makes(&people, &style, "fit", &right, "actual").await;
    approves(iris).await;

    // A pre-production sample of substitutes, with everything still to do.
    let substitute = makes(&people, &style, "pre_production", &right, "substitute").await;
    approves(iris).await;
    linh.opens(&format!("{style}/revisions/2")).await;
    linh.presses("B, Bottom width").await;
    linh.fills(&[("kind", "question")]).await;
    linh.types("ask-text", "With the rib?").await;
    linh.presses_in("#ask", "Send").await;
    linh.must_see_in(".thread", "With the rib?").await;
    let seal = format!("{substitute}/seal");
    nell.opens(&seal).await;
    for block in [
        "Questions are open: 1.",
        "Must-fixes that nobody has seen mended on a sample: 1.",
        "No size set with these sizes and this chart is approved",
        "Not approved yet:",
        "The pieces are made of substitute materials.",
    ] {
        nell.must_see_in(".blocks", block).await;
    }

    // One after the other, by the way on that stands beside it.
    nell.presses_in(".blocks", "Open the question").await;
    nell.must_see("With the rib?").await;
    iris.opens(&nell.path().await).await;
    answers(iris).await;
    linh.must_see("Close the question").await;
    linh.presses("Close the question").await;
    linh.must_see_in(".thread", "closed").await;
    nell.opens(&seal).await;
    nell.must_not_see("Questions are open").await;
    nell.presses_in(".blocks", "Open the must-fix").await;
    iris.opens(&nell.path().await).await;
    iris.presses("It is right on sample round 3").await;
    iris.must_see_in(".thread", "verified on a sample").await;
    nell.opens(&seal).await;
    nell.must_not_see("Must-fixes that nobody").await;
    nell.presses_in(".blocks", "Approvals").await;
    let approvals = nell.path().await;
    submits_all(linh, &approvals, &photograph(folder.path())).await;
    approves_all(iris, &approvals).await;
    nell.opens(&seal).await;
    nell.must_not_see("Not approved yet").await;
    makes(&people, &style, "size_set", &right, "actual").await;
    approves(iris).await;
    nell.opens(&seal).await;
    let blocks = nell.reads_in(".blocks").await;
    assert!(
        blocks.starts_with("The pieces are made of substitute materials."),
        "{blocks}"
    );

    // Of actual materials; and then a newer revision comes.
    let actual = makes(&people, &style, "pre_production", &right, "actual").await;
    approves(iris).await;
    nell.opens(&format!("{actual}/seal")).await;
    nell.must_see("Nothing keeps it from being sealed").await;
    iris.opens(&format!("{style}/draft/header")).await;
    iris.types("contrast_fabric", "2 × 2 rib").await;
    iris.presses("Save").await;
    iris.must_see("Saved.").await;
    garment::publishes(iris, &style, 3, "The rib in words.").await;
    acknowledges(linh, &style, 3).await;
    nell.opens(&format!("{actual}/seal")).await;
    nell.must_see_in(
        ".blocks",
        "This is not the current revision. Revision 3 is.",
    )
    .await;

    // The first pieces of the order: a critical point comes out wide, and is let pass.
    let wide = right.replace("A 21 5/8", "A 21 1/2");
    let first = makes(&people, &style, "top_of_production", &wide, "actual").await;
    approves(iris).await;
    linh.opens(&format!("{first}/readings")).await;
    linh.fills(&[(&format!("v-1-{}", point(linh, "A").await), "22 1/8")])
        .await;
    linh.presses("Save all").await;
    linh.must_see("▲ +5/8").await;
    let seal = format!("{first}/seal");
    nell.opens(&seal).await;
    nell.must_see_in(
        ".blocks",
        "Critical points out of tolerance, or not measured",
    )
    .await;
    nell.must_see_in(".blocks", "A Chest width").await;
    linh.opens(&format!("{style}/revisions/3")).await;
    linh.presses("A, Chest width").await;
    linh.fills(&[("kind", "concession")]).await;
    linh.types("ask-text", "Five eighths wider, from this bale.")
        .await;
    linh.presses_in("#ask", "Send").await;
    linh.must_see_in(".thread", "from this bale").await;
    nell.presses_in(".blocks", "A Chest width").await;
    nell.presses("Let it pass").await;
    nell.is_sure().await;
    nell.must_see("let pass").await;

    // Sealed by the owner, signed by both.
    nell.opens(&seal).await;
    nell.must_see("Concessions that count: 1.").await;
    nell.fills(&[
        ("keep-1", "on"),
        ("tag-1", "HT-0001"),
        ("keeper-1", "factory"),
        ("place-1", "Shelf 3"),
    ])
    .await;
    nell.presses("Seal this sample").await;
    nell.is_sure().await;
    nell.must_see("Waits for both signatures").await;
    let sealed = nell.path().await;
    for window in [linh, iris] {
        window.opens(&sealed).await;
        window
            .presses_in("#sign", &format!("I sign as {}", window.who))
            .await;
        window.presses_in("#sign", "Sign").await;
        window.must_see("Signed.").await;
    }
    iris.must_see_in(".next-step", "Sealed").await;
    iris.presses("Signed record").await;
    iris.must_see("Sealed sample").await;
    for name in ["Linh", "Iris"] {
        iris.must_see(name).await;
    }
    nell.closes().await;
    ends(stage, people).await;
}

async fn acknowledges(linh: &Window, style: &str, revision: u32) {
    linh.opens(&format!("{style}/revisions/{revision}")).await;
    linh.presses(&format!("Acknowledge revision {revision}"))
        .await;
    linh.must_see("Acknowledged.").await;
}

/// A round of one piece in M, from the request to the end of measuring. The sample room pastes what
/// it measured. Returns the round's path, where the designer is.
async fn makes(people: &People, style: &str, kind: &str, values: &str, materials: &str) -> String {
    let People { iris, linh, hoa } = people;
    iris.opens(&format!("{style}/rounds/new")).await;
    iris.fills(&[("kind", kind)]).await;
    iris.presses("Ask for samples").await;
    iris.must_see("starts the work next").await;
    let round = iris.path().await;
    linh.opens(&round).await;
    linh.presses("Start work").await;
    linh.must_see("3 values are missing").await;
    hoa.opens(&format!("{round}/readings")).await;
    hoa.presses("Paste, or open a sheet").await;
    hoa.fills(&[("pasted", values)]).await;
    hoa.presses("Put into the fields").await;
    hoa.must_see("3 values were put into their fields.").await;
    hoa.presses("Save all").await;
    hoa.must_see("3 of 3").await;
    linh.opens(&round).await;
    linh.fills(&[("materials", materials)]).await;
    if materials == "substitute" {
        linh.fills(&[("substitutes", "Tape from stock")]).await;
    }
    linh.presses("The pieces are sent").await;
    linh.must_see("Done.").await;
    iris.opens(&round).await;
    iris.presses("The pieces have arrived").await;
    iris.presses("Measuring is done").await;
    iris.must_see("Decide on these samples.").await;
    round
}

async fn approves(iris: &Window) {
    iris.fills(&[("outcome", "approved")]).await;
    iris.presses_in("#decide", "Decide").await;
    iris.must_see("Decided.").await;
}

/// The id of the point with this letter, from the fields of the page.
async fn point(window: &Window, letter: &str) -> String {
    let script = "return [...document.querySelectorAll('tr[data-row]')]
        .find((row) => row.querySelector('.letter').textContent === arguments[0]).dataset.row";
    let found = window.asks(script, &[letter]).await;
    found.as_str().expect("an id").to_owned()
}

/// An option for each thing that needs to be approved, with a photograph.
async fn submits_all(linh: &Window, approvals: &str, photograph: &Path) {
    linh.opens(approvals).await;
    let count = "return document.querySelectorAll('article.panel').length";
    let count = linh.asks(count, &[]).await.as_u64().expect("a count");
    assert!(count > 1, "{count}");
    for place in 1..=count {
        let thing = format!("#thing-{place}");
        linh.presses_in(&thing, "Submit an option").await;
        linh.attaches(&format!("{thing} input[type=file]"), photograph)
            .await;
        linh.presses_in(&format!("{thing} form"), "Submit this option")
            .await;
        linh.must_see_in(&thing, "Option A").await;
    }
}

async fn approves_all(iris: &Window, approvals: &str) {
    iris.opens(approvals).await;
    let waits = "return document.querySelectorAll('input[name=verdict][value=approved]').length";
    while iris.asks(waits, &[]).await.as_u64() > Some(0) {
        iris.presses_in("article.panel form", "approved").await;
        iris.presses_in("article.panel form", "Decide").await;
        iris.must_see("Decided.").await;
    }
}
