//! Files: a drawing's original to download, and pictures to look at.
//!
//! A stranger chose these bytes. Whatever they hold, a browser that opens one by its address runs
//! nothing of it and lets it reach nothing: no other type than the one said, no script, no loading,
//! an origin of its own.

use axum::body::Body;
use axum::extract::{Path, State};
use axum::http::{HeaderMap, HeaderName, StatusCode, header};
use axum::response::IntoResponse;
use futures::stream::try_unfold;
use tokio::fs::File;
use tokio::io::AsyncReadExt;

use crate::access::act;
use crate::files::Media;
use crate::spec::Digest;
use crate::store::Fetchable;
use crate::web::App;
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

const POLICY: &str = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

/// Bytes that are read from the disk at a time.
const PART: usize = 64 * 1024;

/// A drawing's original, byte for byte, as a download.
pub async fn original(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, file)): Path<(String, String)>,
    headers: HeaderMap,
) -> Answer {
    let digest = Digest::try_from(file).map_err(|_| Problem::NotFound)?;
    let found = app.store.original(&may.permit, &digest).await?;
    send(&app, &headers, &found, &attachment(&found)).await
}

/// The picture of a drawing or photograph that suits this width in pixels.
pub async fn picture(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, file, width)): Path<(String, String, String)>,
    headers: HeaderMap,
) -> Answer {
    let digest = Digest::try_from(file).map_err(|_| Problem::NotFound)?;
    let width = width.parse().map_err(|_| Problem::NotFound)?;
    let found = app.store.picture(&may.permit, &digest, width).await?;
    send(&app, &headers, &found, "inline").await
}

async fn send(app: &App, headers: &HeaderMap, found: &Fetchable, disposition: &str) -> Answer {
    // What lies under an address never changes, but leave to see it may end: only this person's
    // browser keeps it.
    let etag = format!("\"{}\"", found.digest);
    let about: [(HeaderName, &str); 3] = [
        (header::ETAG, &etag),
        (
            header::CACHE_CONTROL,
            "private, max-age=31536000, immutable",
        ),
        (header::CONTENT_SECURITY_POLICY, POLICY),
    ];
    let known = headers
        .get(header::IF_NONE_MATCH)
        .is_some_and(|known| known.as_bytes() == etag.as_bytes());
    if known {
        return Ok((StatusCode::NOT_MODIFIED, about).into_response());
    }
    let (file, length) = app.files.stream(&found.digest).await?;
    let kind = [
        (header::CONTENT_TYPE, found.media_type.clone()),
        (header::CONTENT_LENGTH, length.to_string()),
        (header::CONTENT_DISPOSITION, disposition.to_owned()),
    ];
    Ok((about, kind, body(file)).into_response())
}

/// A file from where it is read, part by part.
pub(super) fn body(file: File) -> Body {
    Body::from_stream(try_unfold(file, async |mut file| {
        let mut part = vec![0; PART];
        let read = file.read(&mut part).await?;
        part.truncate(read);
        Ok::<_, std::io::Error>((read > 0).then_some((part, file)))
    }))
}

/// `Content-Disposition` with the sender's name for the file (RFC 6266), but the ending that its
/// content has: the name may lie.
fn attachment(found: &Fetchable) -> String {
    let name = found.name.rsplit(['/', '\\']).next().unwrap_or_default();
    let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
    let stem = if stem.is_empty() { "drawing" } else { stem };
    let ending = match Media::from_mime(&found.media_type) {
        // A machine goes by the ending. Only what machines take: no ending that a desk opens.
        Some(Media::Stitches) => stitch_ending(name),
        known => known.map_or("bin", Media::extension),
    };
    let plain: String = stem
        .chars()
        .map(|c| match c {
            'a'..='z' | 'A'..='Z' | '0'..='9' | ' ' | '-' | '_' | '(' | ')' => c,
            _ => '_',
        })
        .collect();
    // RFC 8187: all but its `attr-char` in percent form.
    let exact: String = stem
        .bytes()
        .map(|byte| match byte {
            b'a'..=b'z' | b'A'..=b'Z' | b'0'..=b'9' | b'-' | b'_' => char::from(byte).to_string(),
            _ => format!("%{byte:02X}"),
        })
        .collect();
    format!("attachment; filename=\"{plain}.{ending}\"; filename*=UTF-8''{exact}.{ending}")
}

/// The endings that embroidery machines of all makes go by.
const STITCHES: [&str; 8] = ["dst", "dsb", "exp", "hus", "jef", "pes", "vp3", "xxx"];

fn stitch_ending(name: &str) -> &'static str {
    let ending = name.rsplit_once('.').map_or("", |(_, ending)| ending);
    let ending = ending.to_ascii_lowercase();
    let known = STITCHES.iter().find(|it| **it == ending);
    known.copied().unwrap_or(Media::Stitches.extension())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(name: &str) -> String {
        typed(name, Media::Svg)
    }

    fn typed(name: &str, media: Media) -> String {
        attachment(&Fetchable {
            digest: Digest::of(b""),
            media_type: media.mime().to_owned(),
            name: name.to_owned(),
            taken: None,
        })
    }

    #[test]
    fn stitches_keep_an_ending_that_a_machine_knows_and_no_other() {
        for (name, ending) in [
            ("emblem.DST", "dst"),
            ("emblem.exe", "bin"),
            ("emblem", "bin"),
            ("emblem.dst.html", "bin"),
        ] {
            let said = typed(name, Media::Stitches);
            assert!(said.ends_with(&format!(".{ending}")), "{name}: {said}");
        }
    }

    #[test]
    fn a_download_keeps_its_name_and_cannot_lie_about_its_kind() {
        assert_eq!(
            named("front v2.svg"),
            "attachment; filename=\"front v2.svg\"; filename*=UTF-8''front%20v2.svg"
        );
        assert_eq!(
            named("../áo\" x.html"),
            "attachment; filename=\"_o_ x.svg\"; filename*=UTF-8''%C3%A1o%22%20x.svg"
        );
        assert_eq!(
            named(""),
            "attachment; filename=\"drawing.svg\"; filename*=UTF-8''drawing.svg"
        );
    }
}
