//! Refusals: the sentences are the language room's; the ways on are links of this site.

use crate::exchange::Refused;
use crate::files::RenderError;
use crate::language::Text;
use crate::spec::{StyleId, ThreadId};

/// A link that leads out of a refusal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WayOn {
    pub href: String,
    pub label: String,
}

/// Where to go from a refusal on this style.
pub fn ways_on(t: Text, why: &Refused, style: &StyleId) -> Vec<WayOn> {
    let base = format!("/styles/{style}");
    let way = |href: String, label: String| WayOn { href, label };
    let threads = |ids: &[ThreadId]| -> Vec<WayOn> {
        ids.iter()
            .enumerate()
            .map(|(n, id)| {
                let label = t.say("way-on-thread").with("number", n + 1);
                way(format!("{base}/threads/{id}"), label.to_string())
            })
            .collect()
    };
    match why {
        Refused::OpenQuestions { threads: ids }
        | Refused::MustFixOpen { threads: ids }
        | Refused::MustFixUnchanged { threads: ids } => threads(ids),
        Refused::NotCurrent {
            current: Some(current),
        } => vec![way(
            format!("{base}/revisions/{current}"),
            t.say("way-on-current")
                .with("revision", current)
                .to_string(),
        )],
        Refused::SectionMoved { .. } | Refused::ErrorsRemain { .. } => vec![way(
            format!("{base}/publish"),
            t.say("way-on-publish").to_string(),
        )],
        _ => vec![way(base, t.say("way-on-style").to_string())],
    }
}

/// Why a file was not taken, and what to send instead.
pub fn upload(t: Text, why: &RenderError) -> String {
    let message = match why {
        RenderError::TooLarge => t.say("upload-too-large"),
        RenderError::NotAPicture => t.say("upload-not-a-picture"),
        RenderError::Unsupported { what } => t.say("upload-unsupported").with("what", what),
        RenderError::HeicUnsupported => t.say("upload-heic"),
        RenderError::TooSlow | RenderError::TooMuchMemory => t.say("upload-too-heavy"),
        RenderError::Broken => t.say("upload-broken"),
        RenderError::Failed { .. } => t.say("upload-failed"),
    };
    message.to_string()
}
