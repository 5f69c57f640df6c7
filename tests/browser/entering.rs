//! Setting up, inviting, joining.

use crate::stage::Stage;
use crate::window::Window;

/// Founds Harrow & Tide with Nell as its owner.
pub async fn founds(stage: &Stage) -> Window {
    let nell = stage.desk("Nell").await;
    nell.opens(stage.service.set_up()).await;
    nell.types("brand", "Harrow & Tide").await;
    nell.types("name", "Nell").await;
    nell.types("login", "nell@harrow.example").await;
    nell.types("password", "four seams and a hem").await;
    nell.presses("Set up").await;
    nell.must_see("Nothing waits for you.").await;
    nell
}

/// Adds a factory.
pub async fn adds_factory(owner: &Window, name: &str) {
    owner.opens("/people").await;
    owner.types("factory", name).await;
    owner.presses("Add factory").await;
    owner.must_see("Made.").await;
}

/// Invites somebody: `place` is a line of the choice, as `Merchandiser · Sao Mai Garment`.
/// Returns the link.
pub async fn invites(owner: &Window, name: &str, place: &str) -> String {
    owner.opens("/people").await;
    owner.types("name", name).await;
    owner.chooses("place", place).await;
    owner.presses("Make a link").await;
    owner.must_see(&format!("A link for {name}")).await;
    owner.value("new-link").await
}

/// Comes in by a link.
pub async fn joins(window: &Window, link: &str, name: &str) {
    window.opens(link).await;
    window.must_see(&format!("This link is for {name}")).await;
    window.presses("Come in").await;
    window.must_see("What needs me").await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn a_brand_is_founded_and_a_merchandiser_joins_on_a_phone() {
    let stage = Stage::opens().await;
    let nell = founds(&stage).await;
    adds_factory(&nell, "Sao Mai Garment").await;
    let link = invites(&nell, "Linh", "Merchandiser · Sao Mai Garment").await;

    let linh = stage.phone("Linh").await;
    joins(&linh, &link, "Linh").await;
    linh.must_see("No style is shared with you yet.").await;
    assert_eq!(linh.path().await, "/");
    linh.must_not_see("Add a factory").await;

    // The link was hers alone, and once.
    let stranger = stage.phone("a stranger").await;
    stranger.opens(&link).await;
    stranger.must_see("This link does not work").await;
    stranger.closes().await;

    nell.opens("/styles").await;
    nell.presses("People").await;
    nell.must_see("Linh").await;
    linh.closes().await;
    nell.closes().await;
    let said = stage.service.stops_and_audits().await;
    assert!(said.contains("Everything holds."), "{said}");
}
