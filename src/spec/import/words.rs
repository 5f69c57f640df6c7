//! Words that sheets of the trade use, besides those of the document. Common practice, no source.

use crate::spec::decimal::Decimal;
use crate::spec::document::{Basis, Fibre, MaterialKind, Measured, Share, Word};

/// Small letters, one space between words, without the signs that only dress a head up.
pub fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars().flat_map(char::to_lowercase) {
        match c {
            '−' | '–' | '—' => out.push('-'),
            c if c.is_alphanumeric() || "+-±²/#".contains(c) => out.push(c),
            _ => out.push(' '),
        }
    }
    out.split_whitespace().collect::<Vec<_>>().join(" ")
}

pub fn yes_or_no(text: &str) -> Option<bool> {
    match text {
        "yes" | "y" | "x" | "true" | "1" | "key" | "critical" => Some(true),
        "no" | "n" | "false" | "0" | "-" => Some(false),
        _ => None,
    }
}

pub fn basis(text: &str) -> Option<Basis> {
    match text {
        "half" | "1/2" | "flat" | "laid flat" | "across" | "half laid flat" => Some(Basis::Half),
        "full"
        | "1/1"
        | "full all the way round"
        | "all round"
        | "round"
        | "circumference"
        | "girth"
        | "total" => Some(Basis::Full),
        "linear" | "length" | "a length" | "straight" => Some(Basis::Linear),
        _ => None,
    }
}

pub fn kind(text: &str) -> Option<MaterialKind> {
    let found = match text {
        "woven" | "woven cloth" => MaterialKind::WovenFabric,
        "knit" | "knitted" | "jersey" | "rib" | "fleece" => MaterialKind::KnittedFabric,
        "fabric" | "cloth" | "nonwoven" => MaterialKind::OtherFabric,
        "fusing" | "fusible" | "interfacing" => MaterialKind::Interlining,
        "wadding" | "filling" => MaterialKind::Padding,
        "zipper" | "zip fastener" => MaterialKind::Zip,
        "cord" | "drawstring" => MaterialKind::Drawcord,
        "cord end" | "aglet" => MaterialKind::CordTip,
        "toggle" | "cord lock" => MaterialKind::CordStop,
        "grommet" => MaterialKind::Eyelet,
        "elastic tape" | "elastic band" => MaterialKind::Elastic,
        "snap button" | "press stud" => MaterialKind::Snap,
        "sewing thread" => MaterialKind::Thread,
        "heat transfer" => MaterialKind::Transfer,
        "reflective trim" => MaterialKind::Reflective,
        "badge" => MaterialKind::Patch,
        "tag" | "care label" | "brand label" => MaterialKind::Label,
        "polybag" | "bag" | "carton" => MaterialKind::Packing,
        other => return MaterialKind::from_word(&other.replace([' ', '-'], "_")),
    };
    Some(found)
}

/// What an amount counts.
pub fn measured(text: &str) -> Option<Measured> {
    match text {
        "m" | "metre" | "metres" | "meter" | "meters" | "mtr" | "lm" => Some(Measured::Metre),
        "m²" | "m2" | "sqm" | "sq m" | "square metre" | "square metres" | "square meter" => {
            Some(Measured::SquareMetre)
        }
        "pc" | "pcs" | "pce" | "piece" | "pieces" | "ea" | "each" | "unit" | "units" => {
            Some(Measured::Piece)
        }
        "g" | "gr" | "gram" | "grams" => Some(Measured::Gram),
        _ => None,
    }
}

/// Generic names in English, with names that are usual in North America, and the codes of ISO
/// 2076 that sheets most often carry.
fn fibre(text: &str) -> Option<Fibre> {
    let found = match text {
        "co" => Fibre::Cotton,
        "wo" => Fibre::Wool,
        "se" => Fibre::Silk,
        "li" | "flax" => Fibre::Linen,
        "cv" | "rayon" => Fibre::Viscose,
        "cmd" => Fibre::Modal,
        "cly" => Fibre::Lyocell,
        "pes" | "poly" => Fibre::Polyester,
        "pa" | "nylon" => Fibre::Polyamide,
        "pan" => Fibre::Acrylic,
        "pp" => Fibre::Polypropylene,
        "el" | "ea" | "spandex" => Fibre::Elastane,
        other => {
            return Fibre::from_word(&other.replace([' ', '-'], "_"))
                .filter(|fibre| *fibre != Fibre::Other);
        }
    };
    Some(found)
}

/// Why a composition is not taken.
pub enum NotAComposition {
    Unreadable,
    Fibre(String),
}

/// `80% cotton 20% polyester`, `cotton 80 %, polyester 20 %`, `100% cotton`.
pub fn composition(text: &str) -> Result<Vec<Share>, NotAComposition> {
    let mut shares = Vec::new();
    let mut number = String::new();
    let mut name = String::new();
    // Each share has one number and one name; which comes first is told by the first sign.
    let first = text.trim_start().chars().next();
    let number_first = first.is_some_and(|c| c.is_ascii_digit());
    let mut finish = |number: &mut String, name: &mut String| {
        let percent = Decimal::read(number.trim_end_matches([',', '.']));
        let plain = plain(name);
        let (Ok(percent), false) = (percent, plain.is_empty()) else {
            return Err(NotAComposition::Unreadable);
        };
        let fibre = fibre(&plain).ok_or_else(|| NotAComposition::Fibre(name.trim().to_owned()))?;
        shares.push(Share {
            fibre: Some(fibre),
            percent: Some(percent),
            ..Share::default()
        });
        number.clear();
        name.clear();
        Ok(())
    };
    let letters: Vec<char> = text.chars().collect();
    for (at, c) in letters.iter().copied().enumerate() {
        let digit = |at: Option<usize>| {
            at.and_then(|at| letters.get(at))
                .is_some_and(char::is_ascii_digit)
        };
        let sign = matches!(c, '.' | ',') && digit(at.checked_sub(1)) && digit(at.checked_add(1));
        if c.is_ascii_digit() || sign {
            // The other half of the share before is whole: this begins the next one.
            if number_first && !name.trim().is_empty() {
                finish(&mut number, &mut name)?;
            }
            if !number_first && name.trim().is_empty() {
                return Err(NotAComposition::Unreadable);
            }
            number.push(c);
        } else if c.is_alphabetic() || matches!(c, '-' | ' ' | '_') {
            if !number_first && !number.is_empty() && c.is_alphabetic() {
                finish(&mut number, &mut name)?;
            }
            name.push(c);
        } else if !matches!(c, '%' | ',' | ';' | '/' | '+' | '\n' | '.') {
            return Err(NotAComposition::Unreadable);
        } else {
            name.push(' ');
        }
    }
    finish(&mut number, &mut name)?;
    Ok(shares)
}
