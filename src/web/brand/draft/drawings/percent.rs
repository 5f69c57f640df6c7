//! Places on a drawing as people write them: percent from the left and from the top.

use crate::spec::document::Spot;

/// Ten-thousandths as percent: `50`, `12.3`, `12.34`.
pub fn percent(ten_thousandths: u16) -> String {
    let (whole, rest) = (ten_thousandths / 100, ten_thousandths % 100);
    match (rest, rest % 10) {
        (0, _) => whole.to_string(),
        (_, 0) => format!("{whole}.{}", rest / 10),
        _ => format!("{whole}.{rest:02}"),
    }
}

/// Percent from 0 to 100 with at most two decimals as ten-thousandths.
pub fn ten_thousandths(typed: &str) -> Option<u16> {
    let number = typed.strip_suffix('%').unwrap_or(typed).trim_end();
    let (whole, rest) = number.split_once(['.', ',']).unwrap_or((number, "0"));
    let digits = |text: &str, most: usize| {
        (1..=most).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit())
    };
    if !digits(whole, 3) || !digits(rest, 2) {
        return None;
    }
    let value: u32 = format!("{whole}{rest:0<2}").parse().ok()?;
    u16::try_from(value).ok().filter(|value| *value <= 10_000)
}

/// `42.5 30`: from the left, from the top.
pub fn written(spot: Spot) -> String {
    format!("{} {}", percent(spot.x), percent(spot.y))
}

/// The two numbers of a place, with a space, a stroke or a semicolon between them; or a comma,
/// where it cannot be a decimal sign.
pub fn spot(typed: &str) -> Option<Spot> {
    let parts = typed.split(|c: char| c.is_whitespace() || c == '/' || c == ';');
    let parts = parts.map(|part| part.trim_end_matches(','));
    let parts: Vec<&str> = parts.filter(|it| !it.is_empty() && *it != "%").collect();
    let (x, y) = match parts[..] {
        [x, y] => (x, y),
        [both] if both.matches(',').count() == 1 => both.split_once(',')?,
        _ => return None,
    };
    Some(Spot {
        x: ten_thousandths(x)?,
        y: ten_thousandths(y)?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn percent_is_exact_both_ways() {
        for value in 0..=10_000 {
            assert_eq!(ten_thousandths(&percent(value)), Some(value));
        }
        assert_eq!(percent(1_230), "12.3");
        assert_eq!(percent(1_203), "12.03");
        assert_eq!(ten_thousandths("12,5 %"), Some(1_250));
        assert_eq!(ten_thousandths("007"), Some(700));
        for wrong in [
            "", "%", ".5", "5.", "-1", "100.01", "101", "999", "1.234", "a", "1e1",
        ] {
            assert_eq!(ten_thousandths(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_place_is_read_as_people_write_it() {
        let place = Spot { x: 4_250, y: 3_000 };
        assert_eq!(written(place), "42.5 30");
        for typed in [
            "42.5 30",
            "42,5 30",
            "42.5, 30",
            "42.5,30",
            "42.5 / 30",
            "42.5;30",
            "42,5 % 30 %",
            "42.5% 30%",
            "  42.50   30.0 ",
        ] {
            assert_eq!(spot(typed), Some(place), "{typed}");
        }
        // With a decimal comma as well nobody can tell where the second number begins.
        for wrong in [
            "",
            "42.5",
            "42,5,30",
            "42,5,30,1",
            "1 2 3",
            "1 101",
            "a 5",
            "1,",
        ] {
            assert_eq!(spot(wrong), None, "{wrong}");
        }
    }
}
