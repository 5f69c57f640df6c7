//! What kind of file some bytes are, told by the bytes alone. A name or a declared type is what
//! the sender says about himself: neither is ever looked at.

use std::fmt;

use serde::{Deserialize, Serialize};

/// A kind of file that Fellseam takes or makes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Media {
    Jpeg,
    Png,
    Webp,
    Svg,
    Heic,
    Pdf,
    /// PostScript, encapsulated or not.
    Eps,
    /// Stitches for an embroidery machine, in whatever format that machine takes. Most of these
    /// formats begin with no mark of their own, so it is never told by the bytes.
    Stitches,
}

impl Media {
    /// Recognises a file by how it begins. `None` is everything else.
    ///
    /// That a file begins like a picture does not make it one: only decoding shows that.
    pub fn sniff(bytes: &[u8]) -> Option<Self> {
        match bytes {
            [0xFF, 0xD8, 0xFF, ..] => Some(Self::Jpeg),
            [0x89, b'P', b'N', b'G', 0x0D, 0x0A, 0x1A, 0x0A, ..] => Some(Self::Png),
            [
                b'R',
                b'I',
                b'F',
                b'F',
                _,
                _,
                _,
                _,
                b'W',
                b'E',
                b'B',
                b'P',
                ..,
            ] => Some(Self::Webp),
            [b'%', b'P', b'D', b'F', b'-', ..] => Some(Self::Pdf),
            // Alone, or behind the binary head that carries a preview (EPSF 3.0, 5.2).
            [b'%', b'!', b'P', b'S', ..] | [0xC5, 0xD0, 0xD3, 0xC6, ..] => Some(Self::Eps),
            _ if isobmff(bytes) == Some("HEIC") => Some(Self::Heic),
            _ if begins_like_svg(bytes) => Some(Self::Svg),
            _ => None,
        }
    }

    /// The type for a `Content-Type` header.
    pub fn mime(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
            Self::Webp => "image/webp",
            Self::Svg => "image/svg+xml",
            Self::Heic => "image/heic",
            Self::Pdf => "application/pdf",
            Self::Eps => "application/postscript",
            Self::Stitches => "application/octet-stream",
        }
    }

    /// The kind that [`mime`](Self::mime) names so.
    pub fn from_mime(mime: &str) -> Option<Self> {
        [
            Self::Jpeg,
            Self::Png,
            Self::Webp,
            Self::Svg,
            Self::Heic,
            Self::Pdf,
            Self::Eps,
            Self::Stitches,
        ]
        .into_iter()
        .find(|media| media.mime() == mime)
    }

    /// The ending of a name under which the file is downloaded, without the dot.
    pub fn extension(self) -> &'static str {
        match self {
            Self::Jpeg => "jpg",
            Self::Png => "png",
            Self::Webp => "webp",
            Self::Svg => "svg",
            Self::Heic => "heic",
            Self::Pdf => "pdf",
            Self::Eps => "eps",
            Self::Stitches => "bin",
        }
    }
}

impl fmt::Display for Media {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.mime())
    }
}

/// The name of a picture format that is known but not taken, so that the refusal can say which.
pub fn foreign(bytes: &[u8]) -> Option<&'static str> {
    match bytes {
        [b'G', b'I', b'F', b'8', ..] => Some("GIF"),
        [b'I', b'I', 42, 0, ..] | [b'M', b'M', 0, 42, ..] => Some("TIFF"),
        [b'B', b'M', _, _, _, _, 0, 0, 0, 0, ..] => Some("BMP"),
        [b'8', b'B', b'P', b'S', ..] => Some("PSD"),
        [0x1F, 0x8B, ..] => Some("SVGZ or another gzip file"),
        [0xFF, 0x0A, ..] => Some("JPEG XL"),
        _ => isobmff(bytes).filter(|name| *name != "HEIC"),
    }
}

/// Names the picture formats inside an ISO base media file (ISO/IEC 14496-12): a first box `ftyp`
/// with a major brand, a version and compatible brands (ISO/IEC 23008-12 for HEIC). The generic
/// major brand `mif1` is shared, so there the compatible brands decide.
fn isobmff(bytes: &[u8]) -> Option<&'static str> {
    let (size, rest) = bytes.split_first_chunk::<4>()?;
    let brands = rest.strip_prefix(b"ftyp")?;
    let size = usize::try_from(u32::from_be_bytes(*size)).ok()?;
    // The version between the brands is a number, small enough to be no brand.
    let (brands, _) = brands[..brands.len().min(size.checked_sub(8)?)].as_chunks::<4>();
    let mut named = None;
    for brand in brands {
        match brand {
            b"avif" | b"avis" => return Some("AVIF"),
            b"heic" | b"heix" | b"heim" | b"heis" | b"hevc" | b"hevx" => named = Some("HEIC"),
            _ => {}
        }
    }
    named
}

/// Whether the first element is `svg`, after what XML allows before it: byte-order mark, blanks,
/// declaration, comments, and a document type with its inner subset.
fn begins_like_svg(bytes: &[u8]) -> bool {
    // Enough for any preamble that a drawing program writes.
    let bytes = &bytes[..bytes.len().min(64 * 1024)];
    let mut rest = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
    loop {
        rest = rest.trim_ascii_start();
        let after = if rest.starts_with(b"<?") {
            past(rest, b"?>")
        } else if rest.starts_with(b"<!--") {
            past(rest, b"-->")
        } else if rest.starts_with(b"<!DOCTYPE") {
            let end = rest.iter().position(|byte| matches!(byte, b'>' | b'['));
            match end.map(|at| rest[at]) {
                Some(b'[') => past(rest, b"]").and_then(|rest| past(rest, b">")),
                _ => past(rest, b">"),
            }
        } else {
            return root_is_svg(rest);
        };
        match after {
            Some(after) => rest = after,
            None => return false,
        }
    }
}

fn root_is_svg(bytes: &[u8]) -> bool {
    let Some(name) = bytes.strip_prefix(b"<") else {
        return false;
    };
    let end = name
        .iter()
        .take(64)
        .position(|byte| byte.is_ascii_whitespace() || matches!(byte, b'>' | b'/'));
    let name = &name[..end.unwrap_or(0)];
    name == b"svg" || name.ends_with(b":svg")
}

fn past<'a>(bytes: &'a [u8], mark: &[u8]) -> Option<&'a [u8]> {
    let at = bytes.windows(mark.len()).position(|here| here == mark)?;
    Some(&bytes[at + mark.len()..])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_told_by_their_first_bytes() {
        for (bytes, media) in [
            (&b"\xFF\xD8\xFF\xE0\x00\x10JFIF"[..], Media::Jpeg),
            (b"\x89PNG\r\n\x1A\n", Media::Png),
            (b"RIFF\x10\x00\x00\x00WEBPVP8 ", Media::Webp),
            (b"%PDF-1.7", Media::Pdf),
            (b"%!PS-Adobe-3.0 EPSF-3.0", Media::Eps),
            (b"\xC5\xD0\xD3\xC6\x1E\x00", Media::Eps),
            (
                b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic",
                Media::Heic,
            ),
            (
                b"\x00\x00\x00\x18ftypmif1\x00\x00\x00\x00mif1heic",
                Media::Heic,
            ),
            (b"<svg xmlns='http://www.w3.org/2000/svg'/>", Media::Svg),
            (
                b"\xEF\xBB\xBF\n<?xml version='1.0'?>\n<!-- a > b --><s:svg/>",
                Media::Svg,
            ),
            (
                b"<!DOCTYPE svg PUBLIC 'x' 'y' [<!ENTITY a '<b>'>]>\n<svg>",
                Media::Svg,
            ),
        ] {
            assert_eq!(Media::sniff(bytes), Some(media), "{bytes:?}");
        }
    }

    #[test]
    fn what_only_looks_like_one_is_not_one() {
        for bytes in [
            &b""[..],
            b"hello",
            b"<",
            b"<svgx>",
            b"<html><svg></svg></html>",
            b"<!-- <svg> ",
            b"<!DOCTYPE svg [",
            b"GIF89a",
            b"\x00\x00\x00\x18ftypmif1\x00\x00\x00\x00mif1avif",
            b"\x00\x00\x00\x00ftypheic",
            b"RIFF\x10\x00\x00\x00WAVE",
        ] {
            assert_eq!(Media::sniff(bytes), None, "{bytes:?}");
        }
    }

    #[test]
    fn a_refusal_can_name_the_format() {
        assert_eq!(foreign(b"GIF89a"), Some("GIF"));
        assert_eq!(
            foreign(b"\x00\x00\x00\x18ftypavif\x00\x00\x00\x00mif1heic"),
            Some("AVIF")
        );
        assert_eq!(foreign(b"MM\x00\x2A\x00\x00"), Some("TIFF"));
        assert_eq!(foreign(b"some text"), None);
    }
}
