//! Cases of the callouts.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::CalloutTextMissing, Some("callout-1"), Some("text"),
        |s| callout(s, "1").text = " ".to_owned(),
        |s| callout(s, "1").place.clear()),
];
