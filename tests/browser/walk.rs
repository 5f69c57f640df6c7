//! The loop, walked by a brand at a large screen and a factory on phones: publish a revision, ask
//! about a measurement, change it, sign, measure a sample, decide.

use std::path::{Path, PathBuf};

use image::{ImageFormat, Rgb, RgbImage};

use crate::entering::{adds_factory, founds, invites, joins};
use crate::garment;
use crate::samples;
use crate::stage::Stage;
use crate::window::Window;

/// Who takes part.
pub struct People {
    /// The designer, who has the large screen.
    pub iris: Window,
    /// The factory's merchandiser.
    pub linh: Window,
    /// Its sample room.
    pub hoa: Window,
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_style_goes_from_draft_to_a_decided_sample() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let people = enter(&stage, true).await;
    let People { iris, linh, hoa } = &people;

    let style = garment::starts(iris).await;
    garment::says_what_it_is(iris, &style).await;
    garment::writes_points(iris, &style, true).await;
    sees_errors(iris, &style).await;
    garment::draws(iris, &style, folder.path(), true).await;
    garment::colours(iris, &style).await;
    garment::materials(iris, &style).await;
    garment::publishes(iris, &style, 1, "First issue").await;
    garment::shares(iris, &style).await;

    let item = asks_about_the_length(linh, &style, &photograph(folder.path())).await;
    iris.opens(&item).await;
    let length = item.rsplit('/').next().expect("an id").to_owned();
    answers_live(iris, linh).await;
    must_fix_stops_signing(iris, linh, &style).await;

    changes_the_grade(iris, &style, &length).await;
    sees_what_changed(linh, &style).await;
    question_stops_signing(iris, linh, &style).await;
    signs_both(iris, linh, &style).await;

    let round = samples::asks(iris, &style).await;
    samples::starts(linh).await;
    samples::measures(hoa).await;
    samples::decides(iris, linh, hoa, &style, &round).await;
    ends(stage, people).await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn the_same_is_done_without_script() {
    let stage = Stage::opens().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let people = enter(&stage, false).await;
    let People { iris, linh, hoa } = &people;

    let style = garment::reaches_the_factory(iris, folder.path(), false).await;

    let item = asks_about_the_length(linh, &style, &photograph(folder.path())).await;
    iris.opens(&item).await;
    iris.must_see(QUESTION).await;
    answers(iris).await;
    linh.opens("/").await;
    linh.presses("Read the answer: question").await;
    linh.must_see(ANSWER).await;
    linh.presses("Close the question").await;
    linh.must_see("closed").await;
    question_refuses_a_signature(iris, linh, &style, &item).await;
    signs(linh, &style, 1).await;
    signs(iris, &style, 1).await;
    iris.opens(&style).await;
    iris.must_see("Signed by both").await;

    let round = samples::asks(iris, &style).await;
    samples::starts(linh).await;
    samples::measures_without_script(hoa, linh).await;
    samples::decides_without_script(iris, linh, &round).await;
    ends(stage, people).await;
}

const QUESTION: &str = "Is this measured with the rib? See the photograph.";
const ANSWER: &str = "Without the rib. The length ends at the seam.";

pub async fn enter(stage: &Stage, script: bool) -> People {
    let (nell, people) = enter_with_owner(stage, script).await;
    nell.closes().await;
    people
}

/// The same, with the brand's owner at a large screen.
pub async fn enter_with_owner(stage: &Stage, script: bool) -> (Window, People) {
    let nell = founds(stage).await;
    adds_factory(&nell, "Sao Mai Garment").await;
    let designer = invites(&nell, "Iris", "Designer · Harrow & Tide").await;
    let merchandiser = invites(&nell, "Linh", "Merchandiser · Sao Mai Garment").await;
    let sample_room = invites(&nell, "Hoa", "Sample room · Sao Mai Garment").await;
    let (iris, linh, hoa) = if script {
        tokio::join!(stage.desk("Iris"), stage.phone("Linh"), stage.phone("Hoa"))
    } else {
        tokio::join!(
            stage.desk_without_script("Iris"),
            stage.phone_without_script("Linh"),
            stage.phone_without_script("Hoa")
        )
    };
    joins(&iris, &designer, "Iris").await;
    joins(&linh, &merchandiser, "Linh").await;
    joins(&hoa, &sample_room, "Hoa").await;
    (nell, People { iris, linh, hoa })
}

pub async fn ends(stage: Stage, people: People) {
    people.iris.closes().await;
    people.linh.closes().await;
    people.hoa.closes().await;
    let said = stage.service.stops_and_audits().await;
    assert!(said.contains("1 styles,"), "{said}");
    assert!(said.contains("Everything holds."), "{said}");
}

async fn sees_errors(iris: &Window, style: &str) {
    iris.opens(&format!("{style}/publish")).await;
    iris.must_see("There is no drawing.").await;
    iris.must_see("To mend first").await;
    let buttons = iris.reads_in("main button").await;
    assert!(!buttons.contains("Publish"), "{buttons}");
    iris.presses("Open it").await;
    assert_eq!(iris.path().await, format!("{style}/draft/drawings"));
}

/// A phone's picture of a hem, larger than any screen.
pub fn photograph(folder: &Path) -> PathBuf {
    let file = folder.join("hem.jpg");
    let picture = RgbImage::from_fn(2400, 1800, |x, y| {
        let stitch = y % 90 < 6 && x % 40 < 26;
        Rgb(if stitch {
            [240, 240, 235]
        } else {
            [40, (y / 12) as u8, 90]
        })
    });
    picture
        .save_with_format(&file, ImageFormat::Jpeg)
        .expect("a file");
    file
}

/// From what needs her to the letter C, and a question with a photograph. Returns the item's path.
async fn asks_about_the_length(linh: &Window, style: &str, photograph: &Path) -> String {
    linh.opens("/").await;
    linh.presses("Read and acknowledge revision 1").await;
    assert_eq!(linh.path().await, format!("{style}/revisions/1"));
    linh.must_see("Size chart").await;
    linh.must_see("28 1/2").await;
    let written = linh.asks(
        "return document.querySelectorAll('main input[type=text], main textarea').length",
        &[],
    );
    assert_eq!(written.await, 0, "a revision is only read");
    linh.presses("C, Body length").await;
    linh.must_see("Nobody has asked about this yet.").await;
    let path = linh.path().await;
    assert!(
        path.starts_with(&format!("{style}/revisions/1/items/")),
        "{path}"
    );
    linh.fills(&[("kind", "question")]).await;
    linh.types("ask-text", QUESTION).await;
    linh.attaches("#ask-photos", photograph).await;
    linh.presses_in("#ask", "Send").await;
    linh.must_see_in(".thread", QUESTION).await;
    linh.waits_until(
        "const photo = document.querySelector('.photo img');
        photo?.scrollIntoView(); return Boolean(photo && photo.naturalWidth > 0);",
    )
    .await;
    path
}

pub async fn answers(iris: &Window) {
    let script = "return document.querySelector('form.answer textarea').id";
    let field = iris.asks(script, &[]).await;
    iris.types(field.as_str().expect("an id"), ANSWER).await;
    iris.presses_in("form.answer", "Send").await;
    iris.must_see_in(".thread", ANSWER).await;
}

/// Both have the item open: neither reloads.
async fn answers_live(iris: &Window, linh: &Window) {
    iris.must_see_in(".thread", QUESTION).await;
    linh.asks("window.stayed = true", &[]).await;
    answers(iris).await;
    linh.must_see_in(".thread", ANSWER).await;
    iris.asks("window.stayed = true", &[]).await;
    linh.presses("Close the question").await;
    linh.must_see_in(".thread", "closed").await;
    iris.must_see_in(".thread", "closed").await;
    for window in [iris, linh] {
        window.waits_until("return window.stayed === true").await;
    }
}

/// A must-fix on A keeps the factory from signing; the reason and the way on are shown.
async fn must_fix_stops_signing(iris: &Window, linh: &Window, style: &str) {
    let revision = format!("{style}/revisions/1");
    iris.opens(&revision).await;
    iris.presses("A, Chest width").await;
    // Beside the revision, which stays where it is.
    iris.must_see_in("dialog[open]", "Chest width").await;
    iris.must_see_in("#chart", "Size chart").await;
    iris.fills(&[("kind", "must_fix")]).await;
    iris.types(
        "ask-text",
        "The chest is measured one inch below the armhole.",
    )
    .await;
    iris.presses_in("#ask", "Send").await;
    iris.must_see_in(".thread", "one inch below").await;

    linh.opens(&revision).await;
    linh.must_see("Acknowledge this revision first, then sign it.")
        .await;
    linh.presses("Acknowledge revision 1").await;
    linh.must_see("Acknowledged.").await;
    linh.must_see_in("#sign", "You cannot sign yet").await;
    linh.must_see_in("#sign", "One must-fix is not changed in this revision")
        .await;
    linh.presses_in("#sign .blocks", "Open").await;
    linh.must_see("The chest is measured one inch below the armhole.")
        .await;

    iris.presses("Close the must-fix").await;
    iris.must_see_in(".thread", "closed").await;
    linh.opens(&revision).await;
    linh.must_see_in("#sign", "I sign as Linh, Merchandiser")
        .await;
}

/// An open question keeps both from signing; the reason and the way on are shown, and go when it is
/// closed.
async fn question_stops_signing(iris: &Window, linh: &Window, style: &str) {
    let revision = format!("{style}/revisions/2");
    linh.opens(&revision).await;
    linh.must_see_in("#sign", "I sign as Linh").await;
    linh.presses("B, Bottom width").await;
    linh.fills(&[("kind", "question")]).await;
    linh.types("ask-text", "Is the bottom measured with the rib?")
        .await;
    linh.presses_in("#ask", "Send").await;
    linh.must_see_in(".thread", "with the rib?").await;
    for window in [iris, linh] {
        window.opens("/").await;
        if window.who == "Linh" {
            window
                .must_see("Revision 2: see what is open before you can sign")
                .await;
        }
        window.opens(&revision).await;
        window.must_see_in("#sign", "You cannot sign yet").await;
        window.must_see_in("#sign", "One question is open.").await;
    }
    iris.presses_in("#sign .blocks", "Open the question: B Bottom width")
        .await;
    answers(iris).await;
    linh.presses_in("#sign .blocks", "Open the question: B Bottom width")
        .await;
    linh.presses("Close the question").await;
    linh.must_see_in(".thread", "closed").await;
}

/// A page that does not follow by itself still shows the form: what is sent from it is refused, with
/// the reason and the way on.
async fn question_refuses_a_signature(iris: &Window, linh: &Window, style: &str, item: &str) {
    linh.opens(&format!("{style}/revisions/1")).await;
    linh.presses("Acknowledge revision 1").await;
    linh.must_see_in("#sign", "I sign as Linh").await;
    iris.opens(item).await;
    iris.fills(&[("kind", "question")]).await;
    iris.types("ask-text", "Did the zip arrive?").await;
    iris.presses_in("#ask", "Send").await;
    iris.must_see("Did the zip arrive?").await;

    linh.presses_in("#sign", "I sign as Linh").await;
    linh.presses_in("#sign", "Sign").await;
    linh.must_see("One question is open. Answer it; the asker closes it. Then sign.")
        .await;
    linh.presses_in("main", "Open").await;
    linh.must_see("Did the zip arrive?").await;
    iris.presses("Close the question").await;
    iris.must_not_see("Close the question").await;
}

async fn changes_the_grade(iris: &Window, style: &str, length: &str) {
    iris.opens(&format!("{style}/draft/points")).await;
    let values = format!("tr[data-row='{length}'] td.calc");
    iris.types(&format!("{length}.grade"), "1").await;
    iris.must_see_in(&values, "27 1/2").await;
    iris.must_see_in(&values, "29 1/2").await;
    iris.presses("Save").await;
    iris.must_see("Saved.").await;
    iris.opens(&format!("{style}/publish")).await;
    iris.must_see("Changes since revision 1").await;
    iris.must_see_in(".changes", "Body length").await;
    garment::publishes(iris, style, 2, "The length grew too little.").await;
}

/// The old revision says so and cannot be signed; the new one shows every size, old and new.
async fn sees_what_changed(linh: &Window, style: &str) {
    linh.opens(&format!("{style}/revisions/1")).await;
    linh.must_see("Do not sew from this.").await;
    linh.must_see_in("#sign", "This is not the current revision. Revision 2 is.")
        .await;
    linh.presses_in("#sign .blocks", "Open revision 2").await;
    assert_eq!(linh.path().await, format!("{style}/revisions/2"));

    linh.opens("/").await;
    linh.presses("Read and acknowledge revision 2").await;
    linh.must_see("Your factory has not acknowledged revision 2.")
        .await;
    linh.presses("See what changed").await;
    linh.must_see("Compared with revision 1. It is the one that your factory acknowledged last.")
        .await;
    linh.must_see("The length grew too little.").await;
    let changes = linh.reads_in(".changes > li").await;
    for part in [
        "C",
        "Body length",
        "3/4",
        "S 27 3/4 27 1/2",
        "L 29 1/4 29 1/2",
    ] {
        assert!(changes.contains(part), "{part} is not in: {changes}");
    }
    for other in ["Chest width", "Bottom width"] {
        assert!(
            !changes.contains(other),
            "{other} did not change: {changes}"
        );
    }
    linh.presses("Read revision 2").await;
    linh.presses("Acknowledge revision 2").await;
    linh.must_see("Acknowledged.").await;
}

/// Signs a revision, after acknowledging it where that is still to do.
async fn signs(window: &Window, style: &str, revision: u32) {
    window.opens(&format!("{style}/revisions/{revision}")).await;
    let acknowledge = format!("Acknowledge revision {revision}");
    if window.sees(&acknowledge).await {
        window.presses(&acknowledge).await;
        window.must_see("Acknowledged.").await;
    }
    window
        .presses_in("#sign", &format!("I sign as {}", window.who))
        .await;
    window.presses_in("#sign", "Sign").await;
    window.must_see("Signed.").await;
    window.must_see_in("#sign .signed-name", &window.who).await;
}

async fn signs_both(iris: &Window, linh: &Window, style: &str) {
    signs(linh, style, 2).await;
    iris.opens("/").await;
    iris.must_see("Sign revision 2").await;
    signs(iris, style, 2).await;
    linh.must_see_in("#sign", "Signed by both").await;
    iris.opens(style).await;
    iris.must_see("Signed by both").await;
}
