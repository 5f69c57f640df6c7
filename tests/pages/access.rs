//! Who gets which answer: every route, every kind of visitor.

use std::collections::BTreeSet;

use axum::body::Body;
use axum::http::{Method, Request, StatusCode, header};
use fellseam::store::Db;
use fellseam::web::table;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::{Person, drawing, small_lot};
use crate::support::database::on_both;

/// The visitors, in the order of the table's columns: nobody; the brand's owner, designer and
/// viewer; merchandiser, sample room and inspector of the factory that the style is shared with;
/// merchandiser and sample room of the factory that it is not shared with.
const VISITORS: usize = 9;

/// `s`: sent to sign in · `y`: heard, whatever comes of it · `n`: not for this role (403) ·
/// `x`: no such thing (404).
const TABLE: &str = "
    GET  /healthz                                          y y y y y y y y y
    GET  /static/{file}                                    y y y y y y y y y
    GET  /sign-in                                          y y y y y y y y y
    POST /sign-in                                          y y y y y y y y y
    GET  /set-up/{key}                                     x x x x x x x x x
    POST /set-up/{key}                                     x x x x x x x x x
    GET  /join/{key}                                       y y y y y y y y y
    POST /join/{key}                                       y y y y y y y y y
    GET  /p/{code}                                         x x x x x x x x x
    GET  /code                                             y y y y y y y y y
    POST /code                                             y y y y y y y y y

    GET  /                                                 s y y y y y y y y
    POST /sign-out                                         s y y y y y y y y
    POST /sign-out-everywhere                              s y y y y y y y y
    GET  /me                                               s y y y y y y y y
    POST /me                                               s y y y y y y y y
    POST /me/password                                      s y y y y y y y y
    POST /me/code                                          s y y y y y y y y
    POST /me/mail                                          s y y y y y y y y
    GET  /numbers                                          s y n n n n n n n
    POST /numbers                                          s y n n n n n n n
    GET  /wordings                                         s y y y n n n n n
    POST /wordings                                         s x x n n n n n n
    GET  /tables                                           s y n n n n n n n
    GET  /tables/{table}                                   s y n n n n n n n
    GET  /tables/{table}/{row}                             s y n n n n n n n
    POST /tables/{table}/{row}                             s y n n n n n n n
    GET  /people                                           s y n n y n n y n
    POST /people                                           s y n n y n n y n
    POST /people/{person}/link                             s y n n y n n x n
    POST /people/{person}/end                              s y n n n n n n n
    POST /factories                                        s y n n n n n n n
    GET  /live                                             s y y y y y y y y

    GET  /styles                                           s y y y n n n n n
    POST /styles                                           s y y n n n n n n
    GET  /styles/{style}                                   s y y y y y y x x
    GET  /styles/{style}/history/{section}                 s y y y x x x x x
    POST /styles/{style}/history/{section}                 s y y n x x x x x
    POST /styles/{style}/start                             s y y n x x x x x
    GET  /styles/{style}/copy                              s y y n x x x x x
    POST /styles/{style}/copy                              s y y n x x x x x
    GET  /styles/{style}/draft/changes                     s y y y x x x x x
    GET  /styles/{style}/draft/{section}                   s y y y x x x x x
    POST /styles/{style}/draft/{section}                   s y y n x x x x x
    GET  /styles/{style}/draft/{section}/{item}            s x x x x x x x x
    POST /styles/{style}/draft/{section}/{item}            s x x n x x x x x
    POST /styles/{style}/draft/{section}/here              s y y y x x x x x
    GET  /styles/{style}/draft/points/copy                 s y y n x x x x x
    POST /styles/{style}/draft/points/copy                 s y y n x x x x x
    POST /styles/{style}/draft/{section}/{item}/preview    s x x n x x x x x
    POST /styles/{style}/draft/{section}/preview           s x x n x x x x x
    GET  /styles/{style}/draft/colourways/{colourway}/{part}   s y y y x x x x x
    POST /styles/{style}/draft/colourways/{colourway}/{part}   s y y n x x x x x
    POST /styles/{style}/draft/points/grade                s y y n x x x x x
    POST /styles/{style}/draft/points/letters              s y y n x x x x x
    GET  /styles/{style}/draft/conflict/{save}             s x x n x x x x x
    POST /styles/{style}/draft/conflict/{save}             s x x n x x x x x
    GET  /styles/{style}/draft/{section}/import            s x x n x x x x x
    POST /styles/{style}/draft/{section}/import            s x x n x x x x x
    GET  /styles/{style}/draft/sheets/{file}               s x x x x x x x x
    GET  /styles/{style}/revisions/{number}/sheets/{file}  s x x x x x x x x
    GET  /styles/{style}/draft/print                       s y y y x x x x x
    GET  /styles/{style}/draft/paper                       s y y y x x x x x
    GET  /styles/{style}/revisions/{number}/print          s y y y y y y x x
    GET  /styles/{style}/revisions/{number}/paper          s y y y y y y x x
    GET  /styles/{style}/draft/archive                     s y y y x x x x x
    GET  /styles/{style}/revisions/{number}/archive        s y y y y y y x x
    GET  /styles/{style}/translations                      s y y y x x x x x
    POST /styles/{style}/translations                      s y y n x x x x x
    GET  /styles/{style}/publish                           s y y n x x x x x
    POST /styles/{style}/publish                           s y y n x x x x x
    POST /styles/{style}/share                             s x x n x x x x x
    POST /styles/{style}/unshare                           s x x n x x x x x
    POST /styles/{style}/revisions/{number}/withdraw       s y n n x x x x x
    GET  /styles/{style}/revisions/{number}                s y y y y y y x x
    GET  /styles/{style}/revisions/{number}/document       s y y y y y y x x
    GET  /styles/{style}/revisions/{number}/changes        s y y y y y y x x
    GET  /styles/{style}/revisions/{number}/record         s y y y y y y x x
    GET  /styles/{style}/revisions/{number}/record/file    s y y y y y y x x
    GET  /styles/{style}/rounds/{round}/record             s y y y y y y x x
    GET  /styles/{style}/rounds/{round}/record/file        s y y y y y y x x
    POST /styles/{style}/revisions/{number}/acknowledge    s n n n y n n x x
    POST /styles/{style}/revisions/{number}/sign           s y y n y n n x x
    GET  /styles/{style}/revisions/{number}/items/{item}   s y y y y y y x x
    POST /styles/{style}/revisions/{number}/items/{item}   s y y n y y n x x
    GET  /styles/{style}/threads/{thread}                  s y y y y y y x x
    POST /styles/{style}/threads/{thread}/messages         s y y n y y n x x
    POST /styles/{style}/threads/{thread}/move             s y y n y y n x x
    POST /styles/{style}/threads/{thread}/messages/{message}/translation s y y n y y n x x
    GET  /styles/{style}/threads/{thread}/ready            s y y n y y n x x
    POST /styles/{style}/threads/{thread}/ready            s y y n y y n x x
    GET  /styles/{style}/revisions/{number}/items/{item}/ready s y y n y y n x x
    POST /styles/{style}/revisions/{number}/items/{item}/ready s y y n y y n x x
    GET  /styles/{style}/approvals                         s y y y y y y x x
    POST /styles/{style}/approvals                         s n n n y n n x x
    POST /styles/{style}/approvals/limit                   s y n n x x x x x
    POST /styles/{style}/approvals/{submission}/decide     s y y n x x x x x
    GET  /styles/{style}/rounds/new                        s y y n x x x x x
    POST /styles/{style}/rounds                            s y y n x x x x x
    GET  /styles/{style}/rounds/{round}                    s y y y y y y x x
    POST /styles/{style}/rounds/{round}/move               s n n n y n n x x
    POST /styles/{style}/rounds/{round}/receive            s y y n x x x x x
    POST /styles/{style}/rounds/{round}/continue           s y y n x x x x x
    POST /styles/{style}/rounds/{round}/restart            s y y n x x x x x
    GET  /styles/{style}/rounds/{round}/readings           s y y n y y n x x
    POST /styles/{style}/rounds/{round}/readings           s y y n y y n x x
    POST /styles/{style}/rounds/{round}/photographs        s y y n y y n x x
    GET  /styles/{style}/rounds/{round}/measure            s y y n y y n x x
    POST /styles/{style}/rounds/{round}/measure            s y y n y y n x x
    POST /styles/{style}/rounds/{round}/decide             s y y n x x x x x
    POST /styles/{style}/rounds/{round}/sign               s y y n y n n x x
    GET  /styles/{style}/rounds/{round}/seal               s y y y y y y x x
    POST /styles/{style}/rounds/{round}/seal               s y n n x x x x x
    GET  /styles/{style}/seals/{seal}                      s y y y y y y x x
    POST /styles/{style}/seals/{seal}/sign                 s y y n y n n x x
    GET  /styles/{style}/seals/{seal}/inspect              s y y y y y y x x
    POST /styles/{style}/seals/{seal}/inspect              s y y n y n y x x
    GET  /styles/{style}/inspections/{inspection}          s y y y y y y x x
    GET  /styles/{style}/inspections/{inspection}/piece    s y y n y n y x x
    POST /styles/{style}/inspections/{inspection}/piece    s y y n y n y x x
    POST /styles/{style}/inspections/{inspection}/conclude s y y n y n y x x
    POST /styles/{style}/inspections/{inspection}/decide   s y y n x x x x x
    GET  /styles/{style}/seals/{seal}/record               s y y y y y y x x
    GET  /styles/{style}/seals/{seal}/record/file          s y y y y y y x x
    GET  /styles/{style}/ledger                            s y y y y y y x x
    GET  /styles/{style}/files/{file}                      s y y y y y y x x
    GET  /styles/{style}/files/{file}/{width}              s y y y y y y x x
    GET  /styles/{style}/live                              s y y y y y y x x
";

/// One row: method, path, and a letter for each visitor.
fn rows() -> Vec<(Method, &'static str, Vec<char>)> {
    let lines = TABLE.lines().map(str::trim).filter(|line| !line.is_empty());
    lines
        .map(|line| {
            let mut words = line.split_whitespace();
            let method = words.next().expect("a method").parse().expect("a method");
            let path = words.next().expect("a path");
            let letters: Vec<char> = words
                .map(|word| word.chars().next().expect("one"))
                .collect();
            assert_eq!(letters.len(), VISITORS, "{line}");
            (method, path, letters)
        })
        .collect()
}

#[test]
fn every_route_has_a_row_and_every_row_a_route() {
    let of_table: BTreeSet<String> = rows()
        .iter()
        .map(|(method, path, _)| format!("{method} {path}"))
        .collect();
    let of_router: BTreeSet<String> = table()
        .iter()
        .map(|route| format!("{} {}", route.method, route.path))
        .collect();
    let without_row: Vec<_> = of_router.difference(&of_table).collect();
    assert!(
        without_row.is_empty(),
        "routes without a row: {without_row:#?}"
    );
    let without_route: Vec<_> = of_table.difference(&of_router).collect();
    assert!(
        without_route.is_empty(),
        "rows without a route: {without_route:#?}"
    );
}

#[test]
fn a_factory_without_a_share_gets_404_on_every_route_of_the_style() {
    let of_style: Vec<_> = rows()
        .into_iter()
        .filter(|(_, path, _)| path.contains("{style}"))
        .collect();
    assert!(of_style.len() > 30);
    for (method, path, letters) in of_style {
        assert_eq!(letters[VISITORS - 2..], ['x', 'x'], "{method} {path}");
    }
}

#[test]
fn a_factory_gets_404_where_there_is_something_for_the_brand_alone() {
    for (method, path, letters) in rows() {
        let factory = &letters[4..7];
        let drafts = path.contains("/draft/")
            || path.ends_with("/copy")
            || path.ends_with("/start")
            || path.contains("/history/")
            || path.ends_with("/publish");
        assert!(!drafts || factory == ['x'; 3], "{method} {path}");
        assert!(
            !path.contains("{style}") || factory != ['n'; 3],
            "{method} {path}: either somebody there may, or nobody knows of it"
        );
    }
}

#[test]
fn only_the_short_public_list_answers_nobody() {
    for route in table() {
        let rows = rows();
        let row = rows
            .iter()
            .find(|(method, path, _)| *method == route.method && *path == route.path);
        let nobody = row.map_or('?', |(.., letters)| letters[0]);
        assert_eq!(
            route.public,
            nobody != 's',
            "{} {}",
            route.method,
            route.path
        );
    }
}

/// A style with something behind every path, and the paths' ids.
struct Place {
    site: Site,
    inspector: Person,
    ids: Vec<(&'static str, String)>,
}

impl Place {
    async fn new(db: Db) -> Place {
        let site = Site::with_revision(db).await;
        let cast = &site.cast;
        let seal = cast.signed_seal().await;
        let inspector = cast.inspector().await;
        let style = &cast.brand.style;
        let inspection = inspector.begins(style, &seal, &small_lot(), None).await;
        let inspection = inspection.unwrap();
        let submission = cast.sao_mai.submissions().await.remove(0).id;
        let thread = cast.sao_mai.asks("point-a", "With the rib?").await.unwrap();
        let round = cast
            .brand
            .requests(&cast.sao_mai, &["size-m"])
            .await
            .unwrap();
        let owner = &cast.brand.owner;
        let sao_mai = &cast.sao_mai.org;
        let role = fellseam::access::Role::SampleRoom;
        let newcomer = owner.names("Tâm", sao_mai, role, "vi").await;
        let ids = vec![
            ("{file}", drawing().to_string()),
            ("{width}", "480".to_owned()),
            ("{key}", "no-such-key".to_owned()),
            ("{code}", "no-such-code".to_owned()),
            ("{person}", newcomer.actor.person.to_string()),
            ("{style}", cast.brand.style.to_string()),
            ("{section}", "header".to_owned()),
            ("{save}", "no-such-save".to_owned()),
            ("{number}", "1".to_owned()),
            ("{item}", "point-a".to_owned()),
            ("{colourway}", "colourway-ink".to_owned()),
            ("{part}", "part-1".to_owned()),
            ("{table}", "component_names".to_owned()),
            ("{row}", "main.de".to_owned()),
            (
                "{message}",
                cast.sao_mai.thread(&thread).await.messages[0]
                    .id
                    .to_string(),
            ),
            ("{thread}", thread.to_string()),
            ("{round}", round.to_string()),
            ("{submission}", submission.to_string()),
            ("{seal}", seal.to_string()),
            ("{inspection}", inspection.to_string()),
        ];
        Place {
            site,
            inspector,
            ids,
        }
    }

    fn path(&self, pattern: &str) -> String {
        if pattern == "/static/{file}" {
            return "/static/look.css".to_owned();
        }
        if pattern.ends_with("/paper") {
            // Without the drawings, whose bytes here are no pictures.
            return self.path(&pattern.replace("/paper", "/paper?part=labels&second="));
        }
        let fill = |path: String, (name, id): &(&str, String)| path.replace(name, id);
        self.ids.iter().fold(pattern.to_owned(), fill)
    }

    fn people(&self) -> [Option<Person>; VISITORS] {
        let cast = &self.site.cast;
        [
            None,
            Some(cast.brand.owner.clone()),
            Some(cast.brand.lead.clone()),
            Some(cast.brand.viewer.clone()),
            Some(cast.sao_mai.lead.clone()),
            Some(cast.sao_mai.hands.clone()),
            Some(self.inspector.clone()),
            Some(cast.meghna.lead.clone()),
            Some(cast.meghna.hands.clone()),
        ]
    }

    async fn browser(&self, person: Option<&Person>) -> Browser {
        match person {
            Some(person) => self.site.browser(person).await,
            None => self.site.stranger(),
        }
    }
}

async fn answer(browser: &mut Browser, method: &Method, path: &str) -> Page {
    if method == Method::POST {
        return browser.posts(path, &[]).await;
    }
    // A stream of events has no end to wait for: its head is the answer.
    let request = Request::builder().method(Method::GET).uri(path);
    if path.ends_with("/live") {
        return browser
            .asks_for_head(request.body(Body::empty()).expect("a request"))
            .await;
    }
    browser
        .asks(request.body(Body::empty()).expect("a request"))
        .await
}

fn letter(page: &Page) -> char {
    let to = page.headers.get(header::LOCATION);
    let to = to.and_then(|to| to.to_str().ok()).unwrap_or_default();
    match page.status {
        StatusCode::SEE_OTHER if to.starts_with("/sign-in?then=") => 's',
        StatusCode::NOT_FOUND => 'x',
        StatusCode::FORBIDDEN => 'n',
        status if status.is_server_error() => '!',
        _ => 'y',
    }
}

on_both! {
    async fn everybody_gets_the_answer_of_the_table(db) {
        let place = Place::new(db).await;
        let people = place.people();
        let mut wrong = Vec::new();
        for (method, pattern, letters) in rows() {
            let path = place.path(pattern);
            for (at, (person, expected)) in (1..).zip(people.iter().zip(letters)) {
                let mut browser = place.browser(person.as_ref()).await;
                // Each from elsewhere: so many wrong keys from one address are too many.
                browser.peer = Some([192, 0, 2, at]);
                let page = answer(&mut browser, &method, &path).await;
                let got = letter(&page);
                if got != expected {
                    let who = person.as_ref().map_or("nobody", |person| person.name);
                    wrong.push(format!(
                        "{method} {pattern} by {who}: {got} ({}), not {expected}",
                        page.status
                    ));
                }
            }
        }
        assert!(wrong.is_empty(), "{wrong:#?}");
    }
}
