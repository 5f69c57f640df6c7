//! Cases of the callouts.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::CalloutTextMissing, Some("callout-1"), Some("text"),
        |s| callout(s, "1").text = " ".to_owned(),
        |s| callout(s, "1").place.clear()),
    (Code::StitchUnknown, Some("callout-1"), Some("stitch"),
        |s| callout(s, "1").stitch = "999".to_owned(),
        |s| callout(s, "1").stitch = "401+504".to_owned()),
    (Code::SeamCodeUnlike, Some("callout-1"), Some("seam_code"),
        |s| callout(s, "1").seam_code = "2.04.06".to_owned(),
        |s| callout(s, "1").seam_code = "1.01.01".to_owned()),
];
