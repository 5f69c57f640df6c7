//! Going on with a round or a signature while something is missing or open.

use axum::http::StatusCode;
use fellseam::exchange::round::{Outcome, State};
use fellseam::store::ThreadMove;

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::measured_round;
use crate::support::database::on_both;

fn move_form(page: &Page, action: &str, mv: &str) -> FormOf {
    let mut forms = page.forms().into_iter();
    let form = forms.find(|form| form.action.ends_with(action) && form.value("move") == mv);
    form.unwrap_or_else(|| panic!("no button {mv}:\n{}", page.reads()))
}

on_both! {
    async fn missing_values_are_asked_about_once_before_a_round_goes_on(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = cast.brand.requests(&cast.sao_mai, &["size-m", "size-l"]).await.unwrap();
        cast.sao_mai.starts(&round).await.unwrap();
        let points = cast.brand.revision(1).await.frozen.spec.points.points.clone();
        for point in &points {
            cast.sao_mai.measures(&round, &[(2, point.id.as_str(), "20")]).await.unwrap();
        }
        cast.sao_mai.measures(&round, &[(1, "point-c", "28 1/2")]).await.unwrap();
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let mut iris = site.browser(&cast.brand.lead).await;
        let path = format!("{}/rounds/{round}", site.style);
        let state = async || cast.brand.round(&round).await.state;

        let asks = async |who: &mut Browser, action: &str, mv: &str, button: &str| {
            let before = state().await;
            let page = who.opens(&path).await;
            assert!(page.all("#unfinished").is_empty(), "nothing was pressed yet");
            let mut form = move_form(&page, action, mv);
            if mv == "dispatch" {
                form = form.set("materials", "substitute").set("substitutes", "Zip, matt");
            }
            let asked = who.sends(form).await;
            asked.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            let streams = asked.attributes("[data-stream]", "data-stream");
            assert!(streams.is_empty(), "there is no page at the form's address to look at again");
            assert_eq!(state().await, before, "nothing has happened");
            let asked_of = asked.all("#unfinished").join(" ");
            assert!(asked_of.contains(&format!("{} values are missing.", points.len() - 1)));
            assert!(asked_of.contains("Piece 1, size M : A Chest width, B "), "{asked_of}");
            assert!(!asked_of.contains("Piece 2") && !asked_of.contains("C Body length"));
            assert!(asked_of.contains(button), "{asked_of}");
            who.opens(&asked.link("Piece 1, size M")).await.must_see("Piece 1");
            let anyway = asked.forms().into_iter();
            let mut anyway = anyway.filter(|form| form.value("move") == mv);
            let form = anyway.next().expect("the button").set("anyway", "yes");
            who.sends(form).await.goes_to();
        };
        asks(&mut linh, "/move", "dispatch", "The pieces are sent, without these values").await;
        assert_eq!(state().await, State::Dispatched);
        let page = iris.opens(&path).await;
        iris.sends(move_form(&page, "/receive", "receive")).await.goes_to();
        asks(&mut iris, "/receive", "finish_measuring", "Finish anyway").await;
        assert_eq!(state().await, State::Measured);
    }
}

on_both! {
    async fn who_cannot_sign_yet_is_told_what_is_open(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let mut iris = site.browser(&cast.brand.lead).await;
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        cast.sao_mai.acknowledges(1).await.unwrap();
        let thread = cast.sao_mai.asks("point-c", "With the rib?").await.unwrap();
        cast.brand.says(&thread, "Without it.").await.unwrap();
        let measured = [(1, "point-c", "28 1/2")];
        let round = measured_round(&cast.brand, &cast.sao_mai, &["size-m"], &measured).await;
        cast.brand.decides(&round, Outcome::Approved, "", &[]).await.unwrap();
        let path = format!("{}/rounds/{round}", site.style);

        for who in [&mut iris, &mut linh] {
            let needs = who.opens("/").await;
            needs.must_see("Revision 1: see what is open before you can sign");
            needs.must_see("Sample round 1, Proto: see what is open before you can sign");
            assert!(!needs.sees("Sign revision 1") && !needs.sees("Sign the decision"));
            let page = who.opens(&path).await;
            page.must_see("A question is open. Settle it, then sign the decision.");
            assert!(!page.sees("Read the decision, then sign it."));
        }
        cast.sao_mai.moves(&thread, ThreadMove::Close).await.unwrap();
        for who in [&mut iris, &mut linh] {
            let needs = who.opens("/").await;
            needs.must_see("Sign revision 1");
            needs.must_see("Sign the decision on sample round 1");
            who.opens(&path).await.must_see("Read the decision, then sign it.");
        }
    }
}

on_both! {
    async fn what_the_pieces_are_made_of_is_said_before_they_are_sent(db) {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let round = cast.brand.requests(&cast.sao_mai, &["size-m"]).await.unwrap();
        cast.sao_mai.starts(&round).await.unwrap();
        let path = format!("{}/rounds/{round}", site.style);
        let mut linh = site.browser(&cast.sao_mai.lead).await;
        let mut hoa = site.browser(&cast.sao_mai.hands).await;
        assert!(hoa.opens(&path).await.all("#send").is_empty(), "a merchandiser's to say");

        let page = linh.opens(&path).await;
        let form = || move_form(&page, "/move", "dispatch");
        let stale = form();
        let long = "x".repeat(5000);
        for (materials, substitutes, parcel, complaint) in [
            ("", "", "", "Say what the pieces are made of."),
            ("gold", "", "", "Say what the pieces are made of."),
            ("substitute", "  ", "", "Say which materials stand in the place of which."),
            ("actual", "", &long, "too long"),
        ] {
            let form = form().set("materials", materials).set("substitutes", substitutes);
            let again = linh.sends(form.set("parcel", parcel)).await;
            again.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            let said = again.all("[role=alert]").join(" ");
            assert!(said.contains(complaint), "{complaint}: {said}");
            assert_eq!(cast.brand.round(&round).await.state, State::InWork);
        }

        let form = form().set("materials", "substitute").set("substitutes", "Zip <matt>");
        linh.sends(form.set("parcel", "Kestrel Post 7").set("anyway", "yes")).await.goes_to();
        let page = linh.opens(&path).await;
        page.must_see("substitutes: Zip <matt>");
        page.must_see("Kestrel Post 7");
        // Sent once: somebody else who had the same form open is told, and nothing is kept twice.
        let late = linh.sends(stale.set("materials", "actual").set("anyway", "yes")).await;
        late.must_be(StatusCode::CONFLICT);
        let sent = cast.brand.round(&round).await.dispatch.expect("it was sent");
        assert_eq!(sent.substitutes.as_deref(), Some("Zip <matt>"));
    }
}
