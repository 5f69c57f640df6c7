//! What the code on a print leads to: whether that print still holds, in one word, without signing
//! in. Says nothing else of the style.

use askama::Template;
use axum::Extension;
use axum::extract::{Path, State};
use axum::http::{HeaderName, header};
use axum::response::IntoResponse;

use crate::exchange::revision::Standing;
use crate::language::Text;
use crate::web::App;
use crate::web::frame::Frame;
use crate::web::page::{Answer, page};
use crate::web::visit::Visitor;

#[derive(Template)]
#[template(path = "both/now.html")]
struct NowPage {
    t: Text,
    frame: Frame,
    number: String,
    fingerprint: Option<String>,
    word: String,
    /// `current`, `superseded`, `withdrawn`, `draft`.
    state: &'static str,
    what: String,
    changes: Option<usize>,
    /// `09:30`.
    checked: String,
    /// Where the signed-in read more.
    more: Option<String>,
}

pub async fn show(
    State(app): State<App>,
    Extension(visitor): Extension<Visitor>,
    Path(code): Path<String>,
) -> Answer {
    let printed = app.store.printed(&code).await?;
    let t = visitor.t;
    let signed_in = visitor.visit.is_some();
    let style = &printed.style;
    let now = app.store.world().now();
    let checked = now.as_str().get(11..16).unwrap_or_default().to_owned();
    let mut now = NowPage {
        t,
        frame: Frame::outside(t),
        number: printed.number,
        fingerprint: None,
        word: t.say("now-draft").to_string(),
        state: "draft",
        what: t.say("now-draft-stop").to_string(),
        changes: None,
        checked,
        more: None,
    };
    if let Some(revision) = printed.revision {
        let n = revision.number;
        let here = format!("/styles/{style}/revisions/{n}");
        now.fingerprint = Some(revision.digest.fingerprint());
        now.state = revision.standing.name();
        now.changes = revision.changes;
        let (word, current) = match &revision.standing {
            Standing::Current => (t.say("now-current"), Some(n)),
            Standing::Superseded { current, .. } => (t.say("now-superseded"), *current),
            Standing::Withdrawn { current, .. } => (t.say("now-withdrawn"), *current),
        };
        now.word = word.to_string();
        now.what = match current {
            Some(current) if current == n => t.say("now-go").with("revision", n).to_string(),
            Some(current) => t.say("now-stop").with("revision", current).to_string(),
            None => t.say("revision-none-current").to_string(),
        };
        now.more = signed_in.then(|| match current {
            Some(current) if current != n => {
                format!("/styles/{style}/revisions/{current}/changes?since={n}")
            }
            _ => here,
        });
    }
    let about = [
        (header::CACHE_CONTROL, "no-store"),
        (
            HeaderName::from_static("x-robots-tag"),
            "noindex, nofollow, noarchive",
        ),
    ];
    Ok((about, page(&now)?).into_response())
}
