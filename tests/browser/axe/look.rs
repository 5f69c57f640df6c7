//! Looks at pages with axe-core.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::time::Duration;

use serde_json::{Value as Json, json};

use crate::window::Window;

/// Unfolds what can be, and asks axe-core. Its rule on the size of targets (WCAG 2.2, level AA) has
/// to be asked for.
const ASK: &str = "
    for (const details of document.querySelectorAll('details')) details.open = true;
    const plain = (text) => text.replace(/\\s+/g, ' ').trim();
    return axe.run(document, { resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } })
        .then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map((node) => {
            const why = [...node.any, ...node.all, ...node.none].map((check) => check.message);
            return `${id}: ${plain(node.html).slice(0, 200)}: ${plain(why.join('; ')).slice(0, 300)}`;
        })));";

/// Fills the form at this place among the shown ones wrongly and sends it. Returns nothing where
/// there is none, `false` where nothing of it can be wrong, otherwise where it goes.
///
/// Wrong are words for a number, nothing for what must be there, no tick where one is asked for, and
/// the signs that no size may have.
const SPOIL: &str = "
    const root = [...document.querySelectorAll('dialog[open]')].at(-1) || document;
    const shown = (e) => e.getClientRects().length > 0;
    const form = [...root.querySelectorAll('form')].filter(shown)[Number(arguments[0])];
    if (!form) return null;
    const must = ['number', 'name', 'brand', 'login', 'password', 'old_password', 'factory', 'text', 'reason', 'mask', 'code'];
    let spoilt = false;
    for (const field of form.elements) {
        if (!shown(field) || field.disabled || field.matches('button, select, fieldset, [type=file], [type=color], output')) continue;
        const pick = field.matches('[type=checkbox], [type=radio]');
        const number = field.matches('[inputmode=decimal], [inputmode=numeric]') || field.name.endsWith('.screen');
        if (pick && !field.required) continue;
        if (pick) field.checked = false;
        else if (number) field.value = 'abc';
        else if (field.name.endsWith('.code')) field.value = 'a,b';
        else if (field.required || must.includes(field.name)) field.value = '';
        else continue;
        spoilt = true;
    }
    if (!spoilt) return false;
    form.noValidate = true;
    window.wasHere = true;
    form.requestSubmit([...form.querySelectorAll('button:not([type=button])')].find(shown));
    return new URL(form.action).pathname;";

/// Whether a page, or its panel, shows that something was wrong.
const WRONG: &str = "
    const root = [...document.querySelectorAll('dialog[open]')].at(-1) || document;
    return document.readyState === 'complete'
        && root.querySelector('[aria-invalid=true], .notice.refusal, .error:not(:empty)') !== null;";

/// What was looked at, and what axe-core said.
pub struct Look {
    source: String,
    /// What it complained of, and where first.
    complaints: BTreeMap<String, String>,
    /// The pages, by their routes.
    pub pages: BTreeSet<String>,
    /// The routes whose forms were refused.
    pub refused: BTreeSet<String>,
}

impl Look {
    pub fn new() -> Look {
        let built = Path::new(env!("CARGO_TARGET_TMPDIR")).parent();
        let file = built
            .expect("a folder")
            .join("axe/node_modules/axe-core/axe.min.js");
        let source = std::fs::read_to_string(&file);
        Look {
            source: source.expect("axe-core, which `sh tests/run.sh --axe` fetches"),
            complaints: BTreeMap::new(),
            pages: BTreeSet::new(),
            refused: BTreeSet::new(),
        }
    }

    /// Lends a window the program, on every page that it opens from now on. It comes by the
    /// browser's own tools, which no policy of a page keeps out.
    pub async fn through(&self, window: &Window) {
        let source = json!({"source": self.source});
        window
            .devtool("Page.addScriptToEvaluateOnNewDocument", source)
            .await;
    }

    /// Looks at what is shown now.
    pub async fn at(&mut self, window: &Window, state: &str) {
        let begun = tokio::time::Instant::now();
        let said = window.asks(ASK, &[]).await;
        if begun.elapsed() > Duration::from_secs(3) {
            println!(
                "{} s: {}, {state}",
                begun.elapsed().as_secs(),
                window.path().await
            );
        }
        let said = said.as_array().expect("a list of complaints");
        for complaint in said.iter().filter_map(Json::as_str) {
            let first = self.complaints.entry(complaint.to_owned());
            first.or_insert_with(|| format!("{}, {}, {state}", window.who, window.width));
        }
        self.pages.insert(route(&window.path().await));
    }

    /// Opens a page and looks at it.
    pub async fn opens(&mut self, window: &Window, path: &str) {
        window.opens(path).await;
        self.at(window, path).await;
    }

    /// Looks at every page that can be reached by links, at most two of one kind. Returns their
    /// paths.
    pub async fn walks(&mut self, window: &Window, from: &str) -> Vec<String> {
        let mut seen: Vec<String> = Vec::new();
        let mut kinds: BTreeMap<String, usize> = BTreeMap::new();
        let mut ahead = vec![from.to_owned()];
        while let Some(path) = ahead.pop() {
            let kind = route(&path);
            let count = kinds.entry(kind.clone()).or_default();
            if *count >= most(&kind) || seen.contains(&path) {
                continue;
            }
            *count += 1;
            self.opens(window, &path).await;
            let script = "return [...document.querySelectorAll('a[href^=\"/\"]:not([download])')]
                .map((e) => e.getAttribute('href').split('#')[0]).filter((href) => href !== '')";
            let links = window.asks(script, &[]).await;
            let links = links.as_array().into_iter().flatten();
            let links = links.filter_map(Json::as_str).map(str::to_owned);
            ahead.extend(links.filter(|link| is_page(&route(link))));
            seen.push(path);
        }
        seen
    }

    /// Fills every form of a page wrongly, and looks at what is answered.
    pub async fn spoils(&mut self, window: &Window, path: &str) {
        for n in 0.. {
            // A refused form is shown under an address that only takes forms: a live page that asks
            // there again meets nothing, and says so in the console.
            window.forgets().await;
            window.opens(path).await;
            if !self.spoils_one(window, n).await {
                return;
            }
        }
    }

    /// The same with one form of what is shown now. Returns whether it is there.
    pub async fn spoils_one(&mut self, window: &Window, n: usize) -> bool {
        let there = window.asks(SPOIL, &[&n.to_string()]).await;
        let Some(action) = there.as_str() else {
            return there == json!(false);
        };
        // A form that was taken leads to a page without an error.
        for _ in 0..20 {
            tokio::time::sleep(Duration::from_millis(100)).await;
            if window.asks(WRONG, &[]).await == json!(true) {
                window.settles().await;
                self.at(window, &format!("{action}, refused")).await;
                self.refused.insert(route(action));
                break;
            }
            if window.asks("return !window.wasHere", &[]).await == json!(true) {
                break;
            }
        }
        true
    }

    pub fn says_nothing(&self) {
        let all: Vec<String> = self
            .complaints
            .iter()
            .map(|(what, at)| format!("{at}:\n  {what}"))
            .collect();
        println!(
            "{} pages, {} forms refused",
            self.pages.len(),
            self.refused.len()
        );
        assert!(
            all.is_empty(),
            "{} complaints:\n{}",
            all.len(),
            all.join("\n")
        );
    }
}

fn most(kind: &str) -> usize {
    match kind {
        // The demo's styles and rounds are each at another stage.
        "/styles/{style}" => 4,
        "/styles/{style}/rounds/{round}" => 3,
        _ if kind.contains("/draft/") || kind.contains("/history/") => 1,
        _ => 2,
    }
}

/// The route of a path, by the table of the program; each section of a spec counts for itself.
pub fn route(path: &str) -> String {
    let path = path.split(['?', '#']).next().unwrap_or_default();
    let parts: Vec<&str> = path.split('/').collect();
    let fits = |pattern: &str| {
        let pattern: Vec<&str> = pattern.split('/').collect();
        let same = |(part, of): (&&str, &&str)| part == of || of.starts_with('{');
        pattern.len() == parts.len()
            && pattern
                .iter()
                .zip(&parts)
                .all(|(of, part)| same((part, of)))
    };
    let table = fellseam::web::table();
    let fitting = table
        .iter()
        .map(|route| route.path)
        .filter(|pattern| fits(pattern));
    let found = fitting.min_by_key(|pattern| pattern.matches('{').count());
    let Some(found) = found else {
        return "nowhere".to_owned();
    };
    let place = found.split('/').position(|part| part == "{section}");
    place.map_or(found.to_owned(), |place| {
        found.replace("{section}", parts[place])
    })
}

/// Whether a route is a page for people: no file, no stream, nothing for machines.
pub fn is_page(route: &str) -> bool {
    let other = [
        "/files/",
        "/sheets/",
        "/static/",
        "/document",
        "/archive",
        "/paper",
        "/record/file",
        "/live",
        "/healthz",
    ];
    route != "nowhere" && other.iter().all(|part| !route.contains(part))
}
