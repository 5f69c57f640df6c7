//! Sample rounds: asking, measuring, sending, deciding, signing.

use axum::body::Body;
use axum::http::{Method, Request, StatusCode, header};

use fellseam::exchange::round::Outcome;
use fellseam::spec::RoundId;

use crate::pages::{Browser, FormOf, Page, Site};
use crate::support::cast::set_base;
use crate::support::database::on_both;

/// A round's page, and what its people do there.
pub struct Samples {
    pub base: String,
    pub id: RoundId,
}

impl Samples {
    /// Asks Sao Mai Garment for these pieces of size M, through the page.
    pub async fn asked_for(site: &Site, count: &str) -> Samples {
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let page = iris.opens(&format!("{}/rounds/new", site.style)).await;
        page.must_be(StatusCode::OK);
        let form = page.form(&format!("{}/rounds", site.style));
        assert_eq!(form.value("count-size-m"), "1", "the base size is proposed");
        let page = iris.sends(form.set("count-size-m", count)).await;
        let to = page.goes_to();
        let base = to.split('?').next().expect("an address").to_owned();
        let id = base.rsplit('/').next().expect("an id");
        Samples {
            id: RoundId::new(id),
            base,
        }
    }

    fn measure(&self) -> String {
        format!("{}/measure", self.base)
    }

    /// The form of the point that the page shows.
    fn shown(page: &Page) -> FormOf {
        let shown = page.attributes(".measure-point:not([hidden]) form", "action");
        page.form(&shown[0])
    }

    /// Presses the one button of that form on the round's page.
    pub async fn presses(&self, who: &mut Browser, action: &str, mv: &str) -> Page {
        let page = who.opens(&self.base).await;
        let action = format!("{}/{action}", self.base);
        let form = page.forms().into_iter();
        let form = form.filter(|form| form.action == action);
        let mut form = form.filter(|form| form.value("move") == mv || mv.is_empty());
        let form = form
            .next_back()
            .unwrap_or_else(|| panic!("no button {mv}:\n{}", page.reads()));
        let form = match mv {
            "dispatch" => form.set("materials", "actual"),
            _ => form,
        };
        who.sends_and_opens(form).await
    }

    /// Types one value where the page stands, and saves it.
    async fn types(&self, who: &mut Browser, page: &Page, value: &str) -> Page {
        who.sends(Self::shown(page).set("value", value)).await
    }

    /// Measures every point of every piece that is missing: the spec's value, and for point C
    /// `body` instead, so that nothing looks copied.
    async fn measures_all(&self, site: &Site, who: &mut Browser, body: &str) {
        let round = site.cast.brand.round(&self.id).await;
        for _ in 0..round.pieces.len() * round.frozen.chart.rows.len() {
            let page = who.opens(&self.measure()).await;
            page.must_be(StatusCode::OK);
            let point = &page.attributes(".measure-point:not([hidden])", "data-point")[0];
            let spec = page.all(".measure-point:not([hidden]) .number b");
            let value = if point == "point-c" { body } else { &spec[0] };
            let saved = self.types(who, &page, value).await;
            assert_eq!(saved.status, StatusCode::SEE_OTHER, "{}", saved.reads());
        }
        who.opens(&self.measure()).await.must_see("all measured");
    }

    /// Two pieces, measured by the factory with point C too long, sent and received.
    async fn received(site: &Site) -> Samples {
        let round = Samples::asked_for(site, "2").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        round.measures_all(site, &mut hoa, "29").await;
        site.cast.sao_mai.dispatches(&round.id).await.unwrap();
        site.cast.brand.receives(&round.id).await.unwrap();
        round
    }
}

on_both! {
    async fn a_proto_walks_from_the_request_to_both_signatures(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "2").await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;

        let page = iris.opens(&round.base).await;
        page.must_see("Sao Mai Garment starts the work next.");
        page.must_see("0 of 20");
        hoa.opens(&round.base).await.must_see("Your merchandiser starts the work.");
        hoa.visits(&round.measure()).await.must_be(StatusCode::CONFLICT);
        let page = round.presses(&mut linh, "move", "start").await;
        page.must_see("Measure the pieces: 20 values are missing.");

        round.measures_all(&site, &mut hoa, "29").await;
        let page = linh.opens(&round.base).await;
        page.must_see("Everything is measured. Send the pieces, then say so here.");
        assert_eq!(page.all(".dev.over").len(), 2, "C on both pieces");
        page.must_see("▲ +1/2 over tolerance");
        round.presses(&mut linh, "move", "dispatch").await.must_see("dispatched");
        let page = round.presses(&mut iris, "receive", "receive").await;
        page.must_see("Measure the pieces, or check the factory’s values.");

        // The brand measures C of the first piece, a little less, and that is what counts.
        let measure = page.link("Measure");
        let page = iris.opens(&measure).await;
        let mut actions = page.attributes("form", "action").into_iter();
        let point_c = actions.rfind(|action| action.contains("point=point-c"));
        let page = iris.opens(&point_c.expect("a form for C")).await;
        round.types(&mut iris, &page, "28 15/16").await.goes_to();
        let page = round.presses(&mut iris, "receive", "finish_measuring").await;
        page.must_see("Decide on these samples.");
        page.must_see("Where the brand has measured, its value counts.");
        page.must_see("Factory 29 ▲ +1/2 over tolerance Brand 28 15/16 ▲ +7/16 over tolerance");

        let form = page.form(&format!("{}/decide", round.base));
        let proposed = form.value("text-point-c").to_owned();
        assert!(proposed.contains("Piece 1, size M: measured 28 15/16, the spec says 28 1/2 (+7/16)."));
        assert!(proposed.contains("Piece 2, size M: measured 29,"), "{proposed}");
        let form = form
            .set("outcome", "approved_with_changes")
            .set("text-point-c", "Shorten the body as measured.")
            .set("other-item", "part-1")
            .set("other-text", "Brush the fleece less.")
            .set("reason", "Good, but long.");
        let page = iris.sends_and_opens(form).await;
        page.must_see("approved with changes");
        page.must_see("Shorten the body as measured.");
        page.must_see("Brush the fleece less.");
        let threads = site.cast.sao_mai.threads().await;
        assert_eq!(threads.len(), 2);
        for thread in &threads {
            assert_eq!(thread.round.as_ref(), Some(&round.id));
            let link = format!("{}/threads/{}", site.style, thread.facts.id);
            assert!(page.attributes("a", "href").contains(&link));
        }

        // Both sign what they see; the sample room does not.
        let hoas = hoa.opens(&round.base).await;
        assert!(!hoas.has_form(&format!("{}/sign", round.base)));
        let page = iris.sends_and_opens(signing(&page, &round)).await;
        page.must_see("Not signed yet by: Factory.");
        let page = linh.opens(&round.base).await;
        page.must_see("I have read the decision on this sample round.");
        let form = signing(&page, &round).set("local_time", "2026-03-02T15:00:00+07:00");
        let page = linh.sends_and_opens(form).await;
        page.must_see("Both sides have signed. Nothing is left to do.");
        page.must_see("2026-03-02 15:00 UTC+07:00");
        for line in [
            "Iris (Harrow & Tide) asked for 2 pieces of revision 1.",
            "Linh (Sao Mai Garment) started work.",
            "Hoa (Sao Mai Garment) measured 20 values.",
            "Iris (Harrow & Tide) measured 1 value.",
            "Iris (Harrow & Tide) decided: approved with changes.",
            "Iris (Harrow & Tide) made a must-fix: C Body length.",
            "Linh (Sao Mai Garment) signed the decision.",
        ] {
            page.must_see(line);
        }
    }
}

/// The signing form, ticked.
fn signing(page: &Page, round: &Samples) -> FormOf {
    let form = page.form(&format!("{}/sign", round.base));
    form.set("agree", "yes")
}

on_both! {
    async fn a_value_that_is_sent_twice_counts_once(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let page = hoa.opens(&round.measure()).await;
        let form = Samples::shown(&page).set("value", "21 5/8");
        let first = hoa.sends(form.clone()).await.goes_to();
        assert!(first.contains("point=point-b"), "{first}");
        assert_eq!(hoa.sends(form.clone()).await.goes_to(), first);
        let measured = site.cast.sao_mai.round(&round.id).await.measurements;
        assert_eq!(measured.len(), 1);

        // The same key with another value is refused, and the form comes back with a new key.
        let page = hoa.sends(form.clone().set("value", "21 3/4")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("This form was sent before with another value.");
        let again = Samples::shown(&page);
        assert_eq!(again.value("value"), "21 3/4");
        assert_ne!(again.value("key"), form.value("key"));
        hoa.sends(again).await.goes_to();
        let values = site.cast.sao_mai.round(&round.id).await.measurements;
        assert_eq!(values.len(), 2, "a correction stands beside the first value");
    }
}

on_both! {
    async fn a_script_sends_values_and_is_answered_in_kind(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let page = hoa.opens(&round.measure()).await;
        let action = Samples::shown(&page).action;
        let token = hoa.token().await;
        let send = |token: String, body: &'static str| {
            Request::builder()
                .method(Method::POST)
                .uri(&action)
                .header(header::ACCEPT, "application/json")
                .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
                .header("x-fellseam-token", token)
                .body(Body::from(body))
                .expect("a request")
        };
        let page = hoa.asks(send(token.clone(), "value=43&key=k1&anyway=")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.text().contains("\"ask\":true"), "{}", page.text());
        let page = hoa.asks(send(token.clone(), "value=wide&key=k2")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        assert!(page.text().contains("\"error\":true"), "{}", page.text());
        for _ in 0..2 {
            let page = hoa.asks(send(token.clone(), "value=43&key=k1&anyway=43")).await;
            page.must_be(StatusCode::OK);
            assert!(page.text().contains("point=point-b"), "{}", page.text());
        }
        let page = hoa.asks(send(String::new(), "value=21&key=k3")).await;
        page.must_be(StatusCode::FORBIDDEN);
        let measured = site.cast.sao_mai.round(&round.id).await.measurements;
        assert_eq!(measured.len(), 1);
    }
}

on_both! {
    async fn a_slip_of_the_hand_is_asked_about_before_it_is_saved(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let count = || async { site.cast.sao_mai.round(&round.id).await.measurements.len() };

        let first = hoa.opens(&round.measure()).await;
        first.must_see("HALF laid flat");
        for (value, sentence) in [
            ("43", "43 in is about twice the spec."),
            ("10 3/4", "10 3/4 in is about half the spec."),
            ("54 1/2", "54 1/2 in looks like centimetres."),
            ("8 1/2", "8 1/2 in looks like inches."),
            ("215", "215 in is about ten times the spec."),
            ("2.15", "2.15 in is about a tenth of the spec."),
            ("wide", "“wide” is not a measurement."),
            ("-21", "A measurement is more than zero."),
        ] {
            let page = round.types(&mut hoa, &first, value).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(sentence);
            assert_eq!(Samples::shown(&page).value("value"), value);
        }
        assert_eq!(count().await, 0);

        // An answer holds for the value that it was given for, and for no other.
        let asked = Samples::shown(&round.types(&mut hoa, &first, "43").await);
        let other = asked.clone().set("value", "215").set("anyway", "43");
        hoa.sends(other).await.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        hoa.sends(asked.set("anyway", "43")).await.goes_to();
        assert_eq!(count().await, 1);
    }
}

on_both! {
    async fn a_whole_piece_is_asked_about_when_it_is_complete(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "2").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let chart = site.cast.sao_mai.revision(1).await.frozen.chart.clone();
        let figure = |size: &str, row: usize| {
            let value = chart.rows[row].values[chart.sizes.iter().position(|s| s.as_str() == size).unwrap()];
            value.exact(chart.unit, fellseam::spec::DecimalSign::Point)
        };
        let last = chart.rows.len() - 1;
        for (size, sentence) in [
            ("size-m", "Every value is the same as the spec."),
            ("size-l", "This piece fits size L better."),
        ] {
            let mut page = hoa.opens(&round.measure()).await;
            for row in 0..last {
                let to = round.types(&mut hoa, &page, &figure(size, row)).await.goes_to();
                page = hoa.opens(&to).await;
            }
            let page = round.types(&mut hoa, &page, &figure(size, last)).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(sentence);
            let form = Samples::shown(&page);
            let value = form.value("value").to_owned();
            hoa.sends(form.set("anyway", &value)).await.goes_to();
        }
        assert_eq!(site.cast.sao_mai.round(&round.id).await.summary().missing, 0);
    }
}

on_both! {
    async fn each_role_moves_only_what_is_its_own(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut oscar = site.browser(&site.cast.brand.viewer).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let mut rafiq = site.browser(&site.cast.meghna.lead).await;
        let to = |action: &str| format!("{}/{action}", round.base);

        let dispatch = [("move", "dispatch")];
        hoa.posts(&to("move"), &[("move", "start")]).await.must_be(StatusCode::FORBIDDEN);
        iris.posts(&to("move"), &[("move", "start")]).await.must_be(StatusCode::FORBIDDEN);
        linh.posts(&to("move"), &dispatch).await.must_be(StatusCode::CONFLICT);
        linh.posts(&to("move"), &[("move", "start")]).await.goes_to();
        hoa.visits(&to("measure")).await.must_be(StatusCode::OK);
        hoa.posts(&to("move"), &dispatch).await.must_be(StatusCode::FORBIDDEN);
        assert!(!hoa.opens(&round.base).await.has_form(&to("move")));
        assert!(linh.opens(&round.base).await.has_form(&to("move")));
        // The brand does not measure before the pieces are there, and a viewer never.
        iris.visits(&to("measure")).await.must_be(StatusCode::CONFLICT);
        oscar.opens(&round.base).await.must_be(StatusCode::OK);
        oscar.visits(&to("measure")).await.must_be(StatusCode::FORBIDDEN);
        oscar.posts(&to("decide"), &[("outcome", "cancelled")]).await.must_be(StatusCode::FORBIDDEN);
        linh.posts(&to("receive"), &[("move", "receive")]).await.must_be(StatusCode::NOT_FOUND);

        for path in [round.base.clone(), to("measure"), format!("{}/rounds/new", site.style)] {
            rafiq.visits(&path).await.must_be(StatusCode::NOT_FOUND);
        }
        for action in ["move", "receive", "continue", "measure", "decide", "sign"] {
            rafiq.posts(&to(action), &dispatch).await.must_be(StatusCode::NOT_FOUND);
        }
        // Shared as well, the other factory still learns nothing of a round that is not its own.
        site.cast.brand.shares_with(&site.cast.meghna).await.unwrap();
        rafiq.visits(&round.base).await.must_be(StatusCode::NOT_FOUND);
        rafiq.visits(&to("measure")).await.must_be(StatusCode::NOT_FOUND);
        rafiq.posts(&to("move"), &dispatch).await.must_be(StatusCode::NOT_FOUND);
    }
}

on_both! {
    async fn after_the_decision_values_are_only_corrected(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::asked_for(&site, "1").await;
        site.cast.sao_mai.starts(&round.id).await.unwrap();
        let mut hoa = site.browser(&site.cast.sao_mai.hands).await;
        let page = hoa.opens(&round.measure()).await;
        round.types(&mut hoa, &page, "21 5/8").await.goes_to();
        let brand = &site.cast.brand;
        brand.decides(&round.id, Outcome::Remake, "Cut it again.", &[]).await.unwrap();

        // Point A has a value to correct; point B takes none any more.
        let page = hoa.opens(&round.measure()).await;
        let a = Samples::shown(&page);
        assert_eq!(a.value("value"), "21 5/8");
        let b = a.action.replace("point-a", "point-b");
        let added = "The round is decided. A value can only be corrected now, not added.";
        hoa.opens(&b).await.must_see(added);
        hoa.posts(&b, &[("value", "20 1/8"), ("key", "k")]).await.must_be(StatusCode::CONFLICT);
        hoa.sends(a.set("value", "21 1/4")).await.goes_to();
        assert_eq!(site.cast.sao_mai.round(&round.id).await.measurements.len(), 2);
    }
}

on_both! {
    async fn a_signature_is_for_what_was_on_the_screen(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::received(&site).await;
        let brand = &site.cast.brand;
        brand.finishes_measuring(&round.id).await.unwrap();
        brand.decides(&round.id, Outcome::Approved, "", &[]).await.unwrap();
        let mut iris = site.browser(&brand.lead).await;
        let read = iris.opens(&round.base).await;
        // A correction comes in after the page was read.
        site.cast.sao_mai.measures(&round.id, &[(1, "point-b", "20 1/8")]).await.unwrap();
        let page = iris.sends(signing(&read, &round)).await;
        page.must_be(StatusCode::CONFLICT);
        page.must_see("This changed after you opened the page.");
        // Without the tick nothing is signed.
        let unticked = iris.opens(&round.base).await.form(&format!("{}/sign", round.base));
        iris.sends(unticked).await.must_be(StatusCode::BAD_REQUEST);
        let read = iris.opens(&round.base).await;
        iris.sends(signing(&read, &round)).await.goes_to();

        // An open question keeps the factory from signing, and the page says which.
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        site.cast.sao_mai.asks("point-c", "Is that with the rib?").await.unwrap();
        let page = linh.opens(&round.base).await;
        page.must_see("You cannot sign yet");
        page.must_see("One question is open.");
        assert!(!page.has_form(&format!("{}/sign", round.base)));
    }
}

on_both! {
    async fn a_decision_that_is_refused_keeps_what_was_written(db) {
        let site = Site::with_revision(db).await;
        let round = Samples::received(&site).await;
        let to = format!("{}/decide", round.base);
        let mut iris = site.browser(&site.cast.brand.lead).await;
        // Before measuring is done only a remake or an end can be decided.
        let page = iris.opens(&round.base).await;
        assert_eq!(page.attributes("input[name=outcome]", "value"), ["remake", "cancelled"]);
        site.cast.brand.finishes_measuring(&round.id).await.unwrap();

        let form = iris.opens(&round.base).await.form(&to).set("reason", "Nearly there.");
        iris.sends(form.clone()).await.must_see("Choose what you decide.");
        let none = form.clone().untick("change").set("outcome", "approved_with_changes");
        let page = iris.sends(none).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Say what must change: at least one item, with words.");
        let again = page.form(&to);
        assert_eq!(again.value("reason"), "Nearly there.");
        assert_eq!(again.value("outcome"), "approved_with_changes");
        assert_eq!(again.value("change"), "", "the tick stays away");
        let page = iris.sends(form.set("outcome", "remake").set("reason", "")).await;
        page.must_see("Write a reason.");
    }
}

on_both! {
    async fn a_request_says_what_is_wrong_with_it(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let new = format!("{}/rounds/new", site.style);
        let to = format!("{}/rounds", site.style);
        iris.opens(&new).await.must_see("There is no current revision. Publish one first.");
        site.cast.brand.publishes("First issue").await.unwrap();
        iris.opens(&new).await.must_see("This style is not shared with a factory yet.");
        site.cast.brand.shares_with(&site.cast.sao_mai).await.unwrap();
        site.cast.brand.shares_with(&site.cast.meghna).await.unwrap();

        let form = iris.opens(&new).await.form(&to);
        let page = iris.sends(form.clone().set("count-size-m", "many")).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose the factory.");
        page.must_see("Write a whole number from 0 to 50.");
        let form = form.set("org", site.cast.meghna.org.as_str());
        let page = iris.sends(form.clone().set("count-size-m", "")).await;
        page.must_see("at least one piece");
        // What was on the screen is what is asked for: not a revision that came in between.
        site.cast.brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
        site.cast.brand.publishes("Longer").await.unwrap();
        let page = iris.sends(form.clone().set("kind", "size_set")).await;
        page.must_see("Revision 2 is.");
        let form = iris.opens(&new).await.form(&to).set("org", site.cast.meghna.org.as_str());
        let form = form.set("kind", "size_set").set("count-size-xl", "2");
        let page = iris.sends_and_opens(form).await;
        page.must_see("Size set, sample round 1");
        page.must_see("0 of 30");
    }
}
