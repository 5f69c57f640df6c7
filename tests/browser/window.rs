//! One person's browser window, and what a person does in it.

use std::fmt::Debug;
use std::path::Path;
use std::sync::Arc;
use std::time::Duration;

use serde_json::{Value, json};
use tempfile::TempDir;
use thirtyfour::prelude::*;

use crate::stage::Chromedriver;

/// How long a page may take to show what is waited for.
const PATIENCE: Duration = Duration::from_secs(20);
const PAUSE: Duration = Duration::from_millis(100);

pub struct Window {
    pub driver: WebDriver,
    pub who: String,
    /// Of the service.
    pub address: String,
    pub width: u32,
    /// Whether scripts of the pages run.
    pub script: bool,
    pub _profile: TempDir,
    // After the session: who drives it goes last.
    pub _chromedriver: Arc<Chromedriver>,
}

/// Finds the last dialog that is open, or the page.
const ROOT: &str = "const root = [...document.querySelectorAll('dialog[open]')].at(-1) || document;
    const shown = (e) => e.getClientRects().length > 0 && getComputedStyle(e).visibility !== 'hidden';
    const plain = (text) => (text || '').replace(/\\s+/g, ' ').trim();";

impl Window {
    /// Opens an address: a path of the service, or a whole link of it.
    pub async fn opens(&self, address: &str) {
        let whole = match address.starts_with('/') {
            true => format!("{}{address}", self.address),
            false => address.to_owned(),
        };
        self.hopes(self.driver.goto(&whole).await).await;
        self.settles().await;
    }

    /// The path where the window is.
    pub async fn path(&self) -> String {
        let url = self.hopes(self.driver.current_url().await).await;
        url.path().to_owned()
    }

    /// Presses the button, link, label or unfolding line that says this, or else one whose words
    /// begin so.
    pub async fn presses(&self, words: &str) {
        self.presses_in("body", words).await;
    }

    /// The same inside the first shown element of a selector.
    pub async fn presses_in(&self, scope: &str, words: &str) {
        let script = format!(
            "{ROOT} const [scope, words] = arguments;
            const places = root === document || scope !== 'body' ? [...root.querySelectorAll(scope)] : [root];
            const all = places.filter(shown).flatMap((place) =>
                [...place.querySelectorAll('button, a[href], summary, label')])
                .filter((e) => shown(e) && !e.disabled && !e.closest('.visually-hidden'));
            const said = (e) => plain(e.innerText) || plain(e.getAttribute('aria-label'));
            return all.find((e) => said(e) === words)
                || all.find((e) => plain(e.getAttribute('aria-label')) === words)
                || all.find((e) => said(e).startsWith(words)) || null;"
        );
        self.clicks(&script, vec![json!(scope), json!(words)], words)
            .await;
    }

    /// Presses the button under the question whether somebody is sure, which was opened before.
    pub async fn is_sure(&self) {
        let script = format!(
            "{ROOT} return [...root.querySelectorAll('.sure[open] .danger')].find(shown) || null;"
        );
        self.clicks(&script, Vec::new(), "what somebody is sure of")
            .await;
    }

    /// Clicks the element that a script finds, as soon as it is there and can be clicked.
    async fn clicks(&self, script: &str, arguments: Vec<Value>, what: &str) {
        let mut why = String::new();
        for _ in 0..tries() {
            let found = self.driver.execute(script, arguments.clone()).await;
            let clicked = match found {
                Ok(found) if !found.json().is_null() => match found.element() {
                    Ok(element) => {
                        self.watches(&element).await;
                        let clicked = element.click().await;
                        if clicked.is_ok() {
                            self.waits_until("return !window.wasHere || !window.leaving")
                                .await;
                        }
                        clicked
                    }
                    Err(error) => Err(error),
                },
                Ok(_) => {
                    why = "it is not there".to_owned();
                    tokio::time::sleep(PAUSE).await;
                    continue;
                }
                Err(error) => Err(error),
            };
            match clicked {
                Ok(()) => return self.settles().await,
                // A live page may have put a fresh copy in its place just now.
                Err(error) => why = error.to_string().lines().take(3).collect(),
            }
            tokio::time::sleep(PAUSE).await;
        }
        self.fails(&format!("cannot press {what:?}: {why}")).await;
    }

    /// Leaves a word in the page about whether this element, pressed, leads to another page: the
    /// driver comes back from the press before a busy browser has gone there. With script only the
    /// press itself tells, since the page may answer it where it stands.
    async fn watches(&self, element: &WebElement) {
        let script = "const [e, script] = arguments;
            window.wasHere = true;
            const page = (address) => new URL(address, location.href).href.split('#')[0];
            const elsewhere = (a) => page(a.getAttribute('href')) !== page('');
            if (!script) {
                window.leaving = e.matches('button') ? e.form !== null : e.matches('a') && elsewhere(e);
                return;
            }
            window.leaving = false;
            addEventListener('click', (event) => {
                const a = event.target.closest('a[href]');
                if (a && !event.defaultPrevented && elsewhere(a)) window.leaving = true;
            }, { once: true });
            addEventListener('submit', (event) => {
                if (!event.defaultPrevented) window.leaving = true;
            }, { once: true });";
        let element = self.hopes(element.to_json()).await;
        let arguments = vec![element, json!(self.script)];
        self.hopes(self.driver.execute(script, arguments).await)
            .await;
    }

    /// Types into the field with this id, in place of what stood there.
    pub async fn types(&self, id: &str, text: &str) {
        let field = self.field(id).await;
        self.hopes(field.clear().await).await;
        self.hopes(field.send_keys(text).await).await;
    }

    /// Presses keys, wherever the focus is.
    pub async fn keys(&self, keys: impl Into<thirtyfour::TypingData>) {
        let focused = self.hopes(self.driver.active_element().await).await;
        self.hopes(focused.send_keys(keys).await).await;
    }

    /// Chooses the line with these words in a list.
    pub async fn chooses(&self, name: &str, words: &str) {
        let script = format!(
            "{ROOT} const list = [...root.querySelectorAll('select')].find((e) => e.name === arguments[0]);
            return [...(list?.options ?? [])].find((option) => plain(option.text) === arguments[1])?.value ?? null;"
        );
        match self.asks(&script, &[name, words]).await.as_str() {
            Some(value) => self.fills(&[(name, value)]).await,
            None => self.fails(&format!("{name} has no line {words:?}")).await,
        }
    }

    /// Chooses a file in the field that a selector finds.
    pub async fn attaches(&self, selector: &str, file: &Path) {
        let script = format!("{ROOT} return root.querySelector(arguments[0]);");
        let found = self.driver.execute(script, vec![json!(selector)]).await;
        let found = self.hopes(found).await;
        let field = self.hopes(found.element()).await;
        let file = file.to_str().expect("text");
        self.hopes(field.send_keys(file).await).await;
    }

    async fn field(&self, id: &str) -> WebElement {
        let found = self.driver.find(By::Css(format!("[id='{id}']"))).await;
        self.hopes(found).await
    }

    /// Fills many fields by name at once: a hand would do the same, only slower. A tick is set by
    /// `on` and taken away by an empty text; of several with one name that with this value is set.
    pub async fn fills(&self, fields: &[(&str, &str)]) {
        let script = format!(
            "{ROOT} const missing = [];
            for (const [name, value] of arguments[0]) {{
                const all = [...root.querySelectorAll('input, select, textarea')]
                    .filter((e) => e.name === name && e.type !== 'hidden');
                const many = all.length > 1 && ['radio', 'checkbox'].includes(all[0].type);
                const field = many ? all.find((e) => e.value === value) : all[0];
                if (!field) {{ missing.push(name + '=' + value); continue; }}
                if (field.type === 'radio') field.checked = true;
                else if (field.type === 'checkbox') field.checked = value !== '';
                else field.value = value;
                if (field.tagName === 'SELECT' && field.value !== value) missing.push(name + '=' + value);
                field.dispatchEvent(new Event('input', {{ bubbles: true }}));
                field.dispatchEvent(new Event('change', {{ bubbles: true }}));
            }}
            return missing;"
        );
        let done = self.driver.execute(script, vec![json!(fields)]).await;
        let done = self.hopes(done).await;
        if done.json().as_array().is_none_or(|all| !all.is_empty()) {
            self.fails(&format!("no such fields: {}", done.json()))
                .await;
        }
    }

    /// What stands in the field with this name.
    pub async fn value(&self, name: &str) -> String {
        let found = self
            .asks(
                &format!(
                    "{ROOT} const all = [...root.querySelectorAll('input, select, textarea')];
                    return all.find((e) => e.name === arguments[0] || e.id === arguments[0])?.value;"
                ),
                &[name],
            )
            .await;
        found.as_str().unwrap_or_default().to_owned()
    }

    /// Runs a script in the window and gives back what it returns.
    pub async fn asks(&self, script: &str, arguments: &[&str]) -> Value {
        let arguments: Vec<Value> = arguments.iter().map(|it| json!(it)).collect();
        let said = self.driver.execute(script, arguments).await;
        self.hopes(said).await.json().clone()
    }

    /// What is shown, runs of white space as one space.
    pub async fn reads(&self) -> String {
        self.reads_in("body").await
    }

    /// What the elements that a selector finds show.
    pub async fn reads_in(&self, selector: &str) -> String {
        let script = "return [...document.querySelectorAll(arguments[0])]
            .map((e) => e.innerText).join(' ')";
        let said = self.asks(script, &[selector]).await;
        let words: Vec<&str> = said
            .as_str()
            .unwrap_or_default()
            .split_whitespace()
            .collect();
        words.join(" ")
    }

    /// Waits until these words are shown; capitals do not matter, since a look may change them.
    pub async fn must_see(&self, words: &str) {
        self.must_see_in("body", words).await;
    }

    pub async fn must_see_in(&self, selector: &str, words: &str) {
        let wanted = words.to_lowercase();
        for _ in 0..tries() {
            if self
                .reads_in(selector)
                .await
                .to_lowercase()
                .contains(&wanted)
            {
                return;
            }
            tokio::time::sleep(PAUSE).await;
        }
        self.fails(&format!("does not see {words:?} in {selector}"))
            .await;
    }

    /// Whether these words are shown now.
    pub async fn sees(&self, words: &str) -> bool {
        let all = self.reads().await.to_lowercase();
        all.contains(&words.to_lowercase())
    }

    pub async fn must_not_see(&self, words: &str) {
        if self.sees(words).await {
            self.fails(&format!("sees {words:?}")).await;
        }
    }

    /// Waits until a script returns true.
    pub async fn waits_until(&self, script: &str) {
        for _ in 0..tries() {
            if self.asks(script, &[]).await == json!(true) {
                return;
            }
            tokio::time::sleep(PAUSE).await;
        }
        self.fails(&format!("waits in vain until {script}")).await;
    }

    /// The page is whole, complains of nothing, and does not scroll sideways.
    pub async fn settles(&self) {
        self.waits_until("return document.readyState === 'complete'")
            .await;
        let log = self.hopes(self.driver.browser_log().await).await;
        let here = self.hopes(self.driver.current_url().await).await;
        for line in log {
            // The answer that a page shows, such as a form with an error, is no error of the page.
            let shown =
                line.message.starts_with(here.as_str()) && line.message.contains("status of 4");
            // A test took the connection away.
            let cut = line.message.contains("ERR_INTERNET_DISCONNECTED");
            // The empty page that a browser begins with.
            let own = line.message.starts_with("chrome://");
            // The page asks before unsaved work is left, and a test touched nothing of it by hand.
            let unasked = line
                .message
                .contains("Blocked attempt to show a 'beforeunload'");
            if line.level == "SEVERE" && !shown && !cut && !own && !unasked {
                self.fails(&format!("the console says: {}", line.message))
                    .await;
            }
        }
        let wide = self
            .asks("return document.documentElement.scrollWidth", &[])
            .await;
        if wide.as_u64().unwrap_or(u64::MAX) > u64::from(self.width) {
            let script = "const wide = document.documentElement.clientWidth;
                return [...document.querySelectorAll('main *')].filter((e) =>
                    e.getBoundingClientRect().right > wide + 1 && !e.closest('.scroll'))
                    .slice(0, 5).map((e) => e.outerHTML.slice(0, 120)).join('\\n');";
            let culprits = self.asks(script, &[]).await;
            self.fails(&format!("scrolls sideways: {wide} pixels\n{culprits}"))
                .await;
        }
    }

    /// Forgets what the console said up to now.
    pub async fn forgets(&self) {
        self.hopes(self.driver.browser_log().await).await;
    }

    /// Moves a finger or a pointer: press here, over there, release. In pixels of the window.
    pub async fn drags(&self, from: (f64, f64), to: (f64, f64)) {
        let event = |kind: &str, (x, y): (f64, f64), buttons: u32| {
            json!({"type": kind, "x": x, "y": y, "button": "left", "buttons": buttons,
                "clickCount": 1, "pointerType": "mouse"})
        };
        let between = ((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0);
        for step in [
            event("mouseMoved", from, 0),
            event("mousePressed", from, 1),
            event("mouseMoved", between, 1),
            event("mouseMoved", to, 1),
            event("mouseReleased", to, 0),
        ] {
            self.devtool("Input.dispatchMouseEvent", step).await;
        }
    }

    /// The place of an element in the window as it is scrolled now: left, top, width, height, in
    /// pixels.
    pub async fn place(&self, selector: &str) -> [f64; 4] {
        let script = "const at = document.querySelector(arguments[0]).getBoundingClientRect();
            return [at.left, at.top, at.width, at.height];";
        let found = self.asks(script, &[selector]).await;
        let parts: Vec<f64> = found
            .as_array()
            .into_iter()
            .flatten()
            .filter_map(Value::as_f64)
            .collect();
        match parts.try_into() {
            Ok(place) => place,
            Err(_) => panic!("{selector} is nowhere: {found}"),
        }
    }

    /// Takes the connection away, or gives it back.
    pub async fn connects(&self, on: bool) {
        let network =
            json!({"offline": !on, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1});
        self.devtool("Network.enable", json!({})).await;
        self.devtool("Network.emulateNetworkConditions", network)
            .await;
    }

    /// A picture of what is shown.
    pub async fn photographs(&self) -> Vec<u8> {
        self.hopes(self.driver.screenshot_as_png().await).await
    }

    /// Closes the window, after a last look at the console.
    pub async fn closes(self) {
        self.settles().await;
        self.driver.quit().await.expect("Chromium closes");
    }

    pub async fn devtool(&self, command: &str, parameters: Value) -> Value {
        let done = self.driver.cdp().send_raw(command, parameters).await;
        self.hopes(done).await
    }

    async fn hopes<T, E: Debug>(&self, outcome: Result<T, E>) -> T {
        match outcome {
            Ok(value) => value,
            Err(error) => self.fails(&format!("{error:?}")).await,
        }
    }

    /// Fails the test, with what the window shows and a picture of it.
    pub async fn fails(&self, why: &str) -> ! {
        let address = self.driver.current_url().await;
        let address = address.map_or_else(|error| error.to_string(), |url| url.to_string());
        let shown = self
            .driver
            .execute("return document.body.innerText", Vec::new())
            .await;
        let shown = shown.map_or_else(|error| error.to_string(), |it| it.json().to_string());
        let picture = Path::new(env!("CARGO_TARGET_TMPDIR"));
        let picture = picture.join(format!("{}-{}.png", self.who, std::process::id()));
        // The picture helps to see why; the test fails with or without it.
        let _ = self.driver.screenshot(&picture).await;
        panic!(
            "{} at {address}: {why}\npicture: {}\n{}",
            self.who,
            picture.display(),
            shown.replace("\\n", "\n")
        );
    }
}

fn tries() -> u128 {
    PATIENCE.as_millis() / PAUSE.as_millis()
}
