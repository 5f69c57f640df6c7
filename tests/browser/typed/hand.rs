//! A hand on the keyboard: goes through a form by Tab, types into its fields, ticks and chooses in
//! them, and presses its button.

use serde_json::{Value as Json, json};

use crate::window::Window;

/// What is to stand in fields, by their names: a text, the value of a choice, `on` for a tick, the
/// values of several ticks of one name, the entries of a list in one line.
pub type Wanted = Vec<(String, Vec<String>)>;

/// Finds out where Tab stops within an element, and what of a wish has a field there.
///
/// A choice is made as people make it: by typing its words, or by the arrow keys where another
/// choice begins with the same words.
const WAY: &str = "
    const [scope, wanted] = arguments;
    const shown = (e) => e.getClientRects().length > 0 && getComputedStyle(e).visibility !== 'hidden';
    const place = document.querySelector(scope);
    const stops = [...place.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex]')]
        .filter((e) => e.tabIndex >= 0 && e.type !== 'hidden' && !e.matches(':disabled') && shown(e))
        // Of those that exclude each other Tab stops at the chosen one.
        .filter((e) => e.type !== 'radio' || e.checked);
    const plain = (text) => text.replace(/\\s+/g, ' ').trim();
    const named = (name) => stops.filter((e) => e.name === name && e.type !== 'file');
    const CONTROL = '\\uE009', NULL = '\\uE000', DOWN = '\\uE015', UP = '\\uE013', DELETE = '\\uE017';

    // What a field holds when the wish is done.
    const wish = new Map();
    const missing = [];
    for (const [name, values] of wanted) {
        const fields = named(name);
        if (fields.length === 0) missing.push(name);
        const many = fields.some((e) => e.type === 'checkbox' && e.hasAttribute('value'));
        for (const e of fields) {
            if (many) wish.set(e, values.includes(e.value));
            else wish.set(e, e.type === 'checkbox' ? values[0] === 'on' : values.join(', '));
        }
        if (many) for (const value of values) {
            if (!fields.some((e) => e.value === value)) missing.push(`${name}=${value}`);
        }
    }
    const holds = (e) => (e.type === 'checkbox' ? e.checked : e.value);

    function keys(e) {
        const is = wish.get(e);
        if (e.type === 'checkbox') return ' ';
        if (e.tagName !== 'SELECT') return (e.value === '' ? '' : `${CONTROL}a${NULL}`) + (is || DELETE);
        const options = [...e.options];
        const to = options.findIndex((option) => option.value === is);
        if (to < 0) { missing.push(`${e.name}=${is}`); return ''; }
        const words = plain(options[to].text);
        const alike = options.filter((option) =>
            plain(option.text).toLowerCase().startsWith(words.toLowerCase()));
        if (alike.length === 1) return words;
        const far = to - e.selectedIndex;
        return (far > 0 ? DOWN : UP).repeat(Math.abs(far));
    }
";

/// Types into the fields within `scope` that are not yet as wished, from the first to the last of
/// them by Tab. Returns the names of those that there is no field for.
pub async fn types(window: &Window, scope: &str, wanted: &Wanted) -> Vec<String> {
    let script = format!(
        "{WAY}
        const open = stops.filter((e) => wish.has(e) && holds(e) !== wish.get(e));
        if (open.length === 0) return {{ keys: '', missing, wrong: [] }};
        // What is written into the last group of a list brings the next one, and with it more stops:
        // so far at once, and no farther.
        const ends = open.flatMap((e) => {{
            const part = e.closest('.fields.part:last-child');
            return part ? [stops.indexOf(open.findLast((other) => part.contains(other)))] : [];
        }});
        const first = stops.indexOf(open[0]);
        const last = Math.min(stops.indexOf(open.at(-1)), ...ends);
        open[0].focus();
        const all = stops.slice(first, last + 1).map((e) => (open.includes(e) ? keys(e) : ''));
        const wrong = open.map((e) => `${{e.name}}: ${{holds(e)}}, not ${{wish.get(e)}}`);
        return {{ keys: all.join('\\uE004'), missing, wrong }};"
    );
    let mut wrong = Vec::new();
    // A busy machine may part the letters of a choice so far that each counts for itself: whoever
    // types sees it, and types again.
    for _ in 0..30 {
        let way = runs(window, &script, scope, wanted).await;
        let keys = way["keys"].as_str().unwrap_or_default().to_owned();
        if keys.is_empty() {
            return texts(&way["missing"]);
        }
        // A few fields at a time: the driver answers when all keys are pressed, and a busy machine
        // may take longer over a whole drawing than the answer is waited for.
        let fields: Vec<&str> = keys.split_inclusive('\u{E004}').collect();
        for some in fields.chunks(12) {
            window.keys(some.concat()).await;
        }
        wrong = texts(&way["wrong"]);
    }
    window
        .fails(&format!("typed, but: {}", wrong.join("\n")))
        .await
}

/// The same where there must be a field for everything.
pub async fn types_all(window: &Window, scope: &str, wanted: &Wanted) {
    let missing = types(window, scope, wanted).await;
    if !missing.is_empty() {
        window
            .fails(&format!("there is no field for {missing:?}"))
            .await;
    }
}

/// Goes on by Tab to the button with these words, and presses Enter on it.
pub async fn presses(window: &Window, scope: &str, words: &str) {
    // The wish is only the button here.
    let way = WAY.replace("of wanted)", "of [])");
    let script = format!(
        "{way}
        const there = stops.findIndex((e) => e.tagName === 'BUTTON' && plain(e.textContent) === wanted);
        if (there < 0) return null;
        if (!stops.includes(document.activeElement)) stops[there].focus();
        const far = there - stops.indexOf(document.activeElement);
        return (far >= 0 ? '\\uE004' : '\\uE008\\uE004\\uE000').repeat(Math.abs(far));"
    );
    let arguments = vec![json!(scope), json!(words)];
    let way = window.driver.execute(&script, arguments).await;
    let way = way.expect("the page answers").json().clone();
    let Some(way) = way.as_str() else {
        window.fails(&format!("there is no button {words:?}")).await;
    };
    leaves_by(window, &format!("{way}\u{E007}")).await;
}

/// Presses keys that lead to another page, and waits for it.
pub async fn leaves_by(window: &Window, keys: &str) {
    window.asks("window.wasHere = true", &[]).await;
    window.keys(keys.to_owned()).await;
    window
        .waits_until("return !window.wasHere && document.readyState === 'complete'")
        .await;
    window.settles().await;
}

/// Saves by the form's own button.
pub async fn saves(window: &Window) {
    presses(window, "form#section", "Save").await;
    window.must_see("Saved.").await;
}

/// Writes into all the fields of a page and saves, and once more while that brings fields that were
/// not there: a list of groups has two empty ones at a time.
pub async fn writes(window: &Window, path: &str, wanted: &Wanted) {
    let mut wanted = wanted.clone();
    while !wanted.is_empty() {
        window.opens(path).await;
        let missing = types(window, "form#section", &wanted).await;
        saves(window).await;
        let before = wanted.len();
        wanted.retain(|(name, _)| missing.contains(name));
        if wanted.len() == before {
            window
                .fails(&format!("there is no field for {missing:?}"))
                .await;
        }
    }
}

/// Puts a block of cells on the clipboard of the machine, as a spreadsheet does: cells parted by
/// tabs, lines by line ends.
pub async fn copies(window: &Window, cells: &[Vec<String>]) {
    let lines: Vec<String> = cells.iter().map(|line| line.join("\t")).collect();
    let grant = json!({"permissions": ["clipboardReadWrite", "clipboardSanitizedWrite"]});
    window.devtool("Browser.grantPermissions", grant).await;
    // Only the window in front of somebody may write there, and without a screen none is.
    let front = json!({"enabled": true});
    window
        .devtool("Emulation.setFocusEmulationEnabled", front)
        .await;
    let script = "return navigator.clipboard.writeText(arguments[0]).then(() => true, String)";
    let put = window.asks(script, &[&(lines.join("\r\n") + "\r\n")]).await;
    assert_eq!(put, true);
}

/// Pastes what is on the clipboard into the cell with this name, and those right of it and below.
pub async fn pastes(window: &Window, cell: &str) {
    let script = "document.getElementsByName(arguments[0])[0].focus()";
    window.asks(script, &[cell]).await;
    window.keys("\u{E009}v\u{E000}".to_owned()).await;
}

/// The columns of a table that are typed in, by the names of their fields: those of a row, and of
/// what opens below it.
pub async fn columns(window: &Window, table: &str) -> Vec<String> {
    let script = "const row = document.querySelector(arguments[0]).querySelector('tr[data-row]');
        const rows = [row];
        const next = () => rows.at(-1).nextElementSibling;
        while (next() && !next().dataset.row) rows.push(next());
        const aside = ['remove', 'wording', 'keep'];
        return rows.flatMap((each) => [...each.querySelectorAll('input:not([type=hidden]), select')])
            .map((e) => e.name.slice(row.dataset.row.length + 1)).filter((name) => !aside.includes(name))";
    texts(&window.asks(script, &[table]).await)
}

/// The values of all hidden fields of a name that are no new rows: the ids of a list.
pub async fn ids(window: &Window, name: &str) -> Vec<String> {
    let script = "return [...document.getElementsByName(arguments[0])].map((e) => e.value)
        .filter((value) => !value.startsWith('new-'))";
    texts(&window.asks(script, &[name]).await)
}

async fn runs(window: &Window, script: &str, scope: &str, wanted: &Wanted) -> Json {
    let arguments = vec![json!(scope), json!(wanted)];
    let said = window.driver.execute(script, arguments).await;
    match said {
        Ok(said) => said.json().clone(),
        Err(error) => window.fails(&error.to_string()).await,
    }
}

pub fn texts(json: &Json) -> Vec<String> {
    let all = json.as_array().into_iter().flatten();
    all.filter_map(Json::as_str).map(str::to_owned).collect()
}
