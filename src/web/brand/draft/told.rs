//! What is to be said of files that came with a form: as codes in the address of the next page.

use crate::files::Warning;
use crate::language::Text;

/// An original that cannot be shown, and that has no preview yet.
pub const NOT_SHOWN: &str = "not-shown";

/// As it stands in the address of the next page.
pub fn code(warning: Warning) -> &'static str {
    match warning {
        Warning::LiveText => "live-text",
        Warning::TextLost => "text-lost",
        Warning::LinkedPictures => "linked",
        Warning::EmbeddedPictures => "embedded",
    }
}

/// The sentences of the codes that stand in an address, with dots between them.
pub fn sentences(t: Text, codes: &str) -> Vec<String> {
    let sentence = |code| {
        Some(match code {
            "live-text" => t.say("drawings-live-text"),
            "text-lost" => t.say("drawings-text-lost"),
            "linked" => t.say("drawings-linked"),
            "embedded" => t.say("drawings-embedded"),
            NOT_SHOWN => t.say("original-not-shown"),
            _ => return None,
        })
    };
    let all = codes.split('.').filter_map(sentence);
    all.map(|message| message.to_string()).collect()
}
