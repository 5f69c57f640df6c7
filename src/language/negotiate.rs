//! The language for somebody who has not chosen one.

use super::texts::Language;

impl Language {
    /// The best of ours for an `Accept-Language` header (RFC 9110, 12.5.4), else the original.
    pub fn negotiate(header: &str) -> Language {
        let tags: Vec<&str> = Language::ALL.iter().map(|it| it.tag()).collect();
        best(header, &tags).map_or(Language::ORIGINAL, |index| Language::ALL[index])
    }
}

/// Which of `ours` the reader likes best: by weight, then in the order of the header.
fn best(header: &str, ours: &[&str]) -> Option<usize> {
    let mut ranges: Vec<(f32, &str)> = header.split(',').filter_map(range).collect();
    // Stable: equal weights stay in their order.
    ranges.sort_by(|a, b| b.0.total_cmp(&a.0));
    ranges
        .into_iter()
        .find_map(|(_, range)| ours.iter().position(|tag| fits(range, tag)))
}

/// One `de-CH;q=0.8` of the header; weight 0 means *not this one*.
fn range(text: &str) -> Option<(f32, &str)> {
    let mut parts = text.split(';').map(str::trim);
    let tag = parts.next().filter(|tag| !tag.is_empty())?;
    let weight = match parts.find_map(|part| part.strip_prefix("q=")) {
        None => 1.0,
        Some(weight) => weight.parse().ok().filter(|w| (0.0..=1.0).contains(w))?,
    };
    (weight > 0.0).then_some((weight, tag))
}

/// Another region's variety is still better than a foreign language, another script is not.
fn fits(range: &str, tag: &str) -> bool {
    let (language, script) = language_and_script(tag);
    let (wanted, wanted_script) = language_and_script(range);
    wanted == language && (script.is_none() || wanted_script.is_none() || wanted_script == script)
}

fn language_and_script(tag: &str) -> (String, Option<String>) {
    let tag = tag.to_ascii_lowercase();
    let mut subtags = tag.split('-');
    let language = subtags.next().unwrap_or_default().to_owned();
    let script = subtags.find_map(|subtag| match (language.as_str(), subtag) {
        // Readers' programs name the region and mean the script.
        ("zh", "tw" | "hk" | "mo") => Some("hant".to_owned()),
        _ if subtag.len() == 4 => Some(subtag.to_owned()),
        _ => None,
    });
    (language, script)
}

#[cfg(test)]
mod tests {
    use super::*;

    const OURS: [&str; 4] = ["en", "zh-Hans", "vi", "pt-BR"];

    fn chosen(header: &str) -> Option<&'static str> {
        best(header, &OURS).map(|index| OURS[index])
    }

    #[test]
    fn the_highest_weight_that_we_have_wins() {
        assert_eq!(chosen("vi-VN,vi;q=0.9,en;q=0.8"), Some("vi"));
        assert_eq!(chosen("en;q=0.4, vi;q=0.7"), Some("vi"));
        assert_eq!(chosen("de, fr;q=0.9, PT;q=0.1"), Some("pt-BR"));
        assert_eq!(chosen("en-GB, vi"), Some("en"));
    }

    #[test]
    fn a_refused_or_broken_range_is_passed_over() {
        assert_eq!(chosen("vi;q=0, en;q=0.1"), Some("en"));
        assert_eq!(chosen("vi;q=much, en;q=0.1"), Some("en"));
        assert_eq!(chosen("vi;q=NaN"), None);
        assert_eq!(chosen(" , ;q=1, *"), None);
    }

    #[test]
    fn another_script_is_not_offered() {
        assert_eq!(chosen("zh-CN"), Some("zh-Hans"));
        assert_eq!(chosen("zh"), Some("zh-Hans"));
        assert_eq!(chosen("zh-TW, zh-Hant;q=0.9"), None);
    }

    #[test]
    fn without_a_match_it_is_the_original() {
        assert_eq!(Language::negotiate(""), Language::ORIGINAL);
        assert_eq!(Language::negotiate("xx-XX, en-US;q=0.5"), Language::English);
    }
}
