//! Two people at one draft, in two windows.

use thirtyfour::Key;

use crate::entering::{founds, invites, joins};
use crate::garment::{says_what_it_is, starts};
use crate::stage::Stage;
use crate::window::Window;

/// The id of the field with the focus.
async fn focused(window: &Window) -> String {
    let id = window.asks("return document.activeElement.id", &[]).await;
    id.as_str().unwrap_or_default().to_owned()
}

/// The id of the first point.
async fn point(window: &Window) -> String {
    let script = "return document.querySelector('tr[data-row] [name=row]').value";
    let id = window.asks(script, &[]).await;
    id.as_str().expect("a point").to_owned()
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn two_people_see_each_other_and_choose_between_their_versions() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let link = invites(&nell, "Iris", "Designer · Harrow & Tide").await;
    let iris = stage.desk("Iris").await;
    joins(&iris, &link, "Iris").await;
    let style = starts(&nell).await;
    says_what_it_is(&nell, &style).await;
    let points = format!("{style}/draft/points");
    nell.opens(&points).await;
    nell.fills(&[
        ("new-1.name", "Chest width"),
        ("new-1.base", "21"),
        ("new-1.grade", "1"),
    ])
    .await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    let a = point(&nell).await;
    let field = |name: &str| format!("{a}.{name}");

    // Each sees the other, without a reload.
    iris.opens(&points).await;
    iris.must_see("Nell has this section open").await;
    nell.must_see("Iris has this section open").await;

    // What Iris types is looked through as it stands.
    iris.fills(&[(field("base").as_str(), "22")]).await;
    iris.fills(&[(field("note").as_str(), "Over the rib")])
        .await;
    iris.must_see("As it is typed now. It is not saved yet.")
        .await;

    // Nell saves: Iris is told, and keeps what she typed.
    nell.fills(&[(field("base").as_str(), "23")]).await;
    nell.fills(&[(field("start").as_str(), "side seam")]).await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    iris.must_see("Nell saved this section at").await;
    assert_eq!(iris.value(&field("base")).await, "22");
    assert_eq!(iris.value(&field("note")).await, "Over the rib");

    // Her save shows both versions: only the field that both changed is asked about.
    iris.presses("Save").await;
    iris.must_see("Somebody saved this section while you were writing.")
        .await;
    let asked = "return [...document.querySelectorAll('form.conflict > section input[value=mine]')]
        .map((e) => e.name).join(' ')";
    assert_eq!(iris.asks(asked, &[]).await, format!("of.{a}.base"));
    iris.must_see("Only one of you changed: 2 fields, chosen already")
        .await;

    // By the keyboard: the arrow goes from hers to Nell's, and what is written is chosen.
    let mine = "document.querySelector('form.conflict > section input[value=mine]').focus()";
    iris.asks(mine, &[]).await;
    iris.keys(Key::Down).await;
    let chosen = "return document.querySelector('form.conflict > section input:checked').value";
    assert_eq!(iris.asks(chosen, &[]).await, "theirs");
    iris.types(&format!("typed.{a}.base"), "22 1/2").await;
    assert_eq!(iris.asks(chosen, &[]).await, "written");
    iris.keys(Key::Enter).await;
    iris.must_see("Saved.").await;
    assert_eq!(iris.value(&field("base")).await, "22 1/2");
    assert_eq!(iris.value(&field("note")).await, "Over the rib");
    assert_eq!(iris.value(&field("start")).await, "side seam");

    // Whoever goes is not shown any more.
    nell.must_see("Iris saved this section at").await;
    iris.opens("/styles").await;
    nell.waits_until("return !document.body.innerText.includes('Iris has this section open')")
        .await;
    iris.closes().await;
    nell.closes().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_finding_puts_the_focus_into_its_field() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    let style = starts(&nell).await;
    says_what_it_is(&nell, &style).await;
    let points = format!("{style}/draft/points");
    nell.opens(&points).await;
    nell.fills(&[("new-1.name", "Chest width")]).await;
    nell.presses("Save").await;
    nell.must_see("Saved.").await;
    let a = point(&nell).await;
    // In the grid of the same page, and the same once more.
    for _ in 0..2 {
        let script = "document.querySelector(`#findings a[href$='${arguments[0]}.base']`).click();
            return ''";
        nell.asks(script, &[&a]).await;
        nell.waits_until(&format!("return document.activeElement.id === '{a}.base'"))
            .await;
        nell.asks("document.activeElement.blur()", &[]).await;
    }
    // From another page, where a list of choices has the field.
    nell.opens(&format!("{points}#{a}.basis")).await;
    assert_eq!(focused(&nell).await, format!("{a}.basis"));
    // In a row's own page.
    nell.opens(&format!("{points}/{a}#{a}.panel")).await;
    assert_eq!(focused(&nell).await, format!("{a}.panel"));
    // Of several ticks, the first.
    nell.opens(&format!("{style}/draft/header#markets")).await;
    let first = "return document.activeElement.name === 'markets'";
    nell.waits_until(first).await;
    nell.closes().await;
}
