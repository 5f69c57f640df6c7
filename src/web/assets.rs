//! Style sheets, scripts and the icon: compiled in, named with their digest, kept by browsers.

use std::sync::LazyLock;

use axum::extract::{Path, RawQuery};
use axum::http::{HeaderMap, StatusCode, header};
use axum::response::{IntoResponse, Response};

use super::problem::Problem;
use crate::spec::Digest;
use crate::spec::start::STARTS;

struct Asset {
    name: &'static str,
    media_type: &'static str,
    content: &'static str,
    /// The first 16 digits of the content's SHA-256.
    version: String,
}

impl Asset {
    fn new(name: &'static str, media_type: &'static str, content: &'static str) -> Asset {
        Asset {
            name,
            media_type,
            content,
            version: Digest::of(content.as_bytes()).as_str()[..16].to_owned(),
        }
    }
}

macro_rules! assets {
    ($($name:literal $media_type:literal [$($file:literal)*];)*) => {
        static ASSETS: LazyLock<Vec<Asset>> = LazyLock::new(|| {
            let mut assets = vec![$({
                let content = concat!($(include_str!(concat!("../../static/", $file))),*);
                Asset::new($name, $media_type, content)
            }),*];
            // Flats of the starts, which the page where a style is begun shows.
            let flats = STARTS.iter().map(|start| &start.flats[0]);
            assets.extend(flats.map(|flat| Asset::new(flat.name, "image/svg+xml", flat.svg)));
            assets
        });
    };
}

assets! {
    // One sheet instead of many: on a slow line every further file costs a round trip.
    "look.css" "text/css; charset=utf-8" [
        "fellseam.css" "frame.css" "form.css" "group.css" "table.css" "starts.css" "grid.css" "points.css"
        "drawing.css" "sheet.css" "plates.css" "measure.css" "thread.css" "exchange.css" "tray.css" "draft.css" "colour.css"
    ];
    "print.css" "text/css; charset=utf-8" ["print.css"];
    "icon.svg" "image/svg+xml" ["icon.svg"];
    "busy.js" "text/javascript; charset=utf-8" ["busy.js"];
    "colours.js" "text/javascript; charset=utf-8" ["colours.js"];
    "conflict.js" "text/javascript; charset=utf-8" ["conflict.js"];
    "grid.js" "text/javascript; charset=utf-8" ["grid.js"];
    "grid-cells.js" "text/javascript; charset=utf-8" ["grid-cells.js"];
    "grid-history.js" "text/javascript; charset=utf-8" ["grid-history.js"];
    "grid-how.js" "text/javascript; charset=utf-8" ["grid-how.js"];
    "grid-order.js" "text/javascript; charset=utf-8" ["grid-order.js"];
    "grid-values.js" "text/javascript; charset=utf-8" ["grid-values.js"];
    "drawing.js" "text/javascript; charset=utf-8" ["drawing.js"];
    "fold.js" "text/javascript; charset=utf-8" ["fold.js"];
    "groups.js" "text/javascript; charset=utf-8" ["groups.js"];
    "drawing-fields.js" "text/javascript; charset=utf-8" ["drawing-fields.js"];
    "drawing-geometry.js" "text/javascript; charset=utf-8" ["drawing-geometry.js"];
    "drawing-marks.js" "text/javascript; charset=utf-8" ["drawing-marks.js"];
    "drawing-pen.js" "text/javascript; charset=utf-8" ["drawing-pen.js"];
    "drawing-plate.js" "text/javascript; charset=utf-8" ["drawing-plate.js"];
    "keeper.js" "text/javascript; charset=utf-8" ["keeper.js"];
    "letters.js" "text/javascript; charset=utf-8" ["letters.js"];
    "measure.js" "text/javascript; charset=utf-8" ["measure.js"];
    "sign.js" "text/javascript; charset=utf-8" ["sign.js"];
    "together.js" "text/javascript; charset=utf-8" ["together.js"];
    "live.js" "text/javascript; charset=utf-8" ["live.js"];
    "instructions.js" "text/javascript; charset=utf-8" ["instructions.js"];
    "preview.js" "text/javascript; charset=utf-8" ["preview.js"];
    "panel.js" "text/javascript; charset=utf-8" ["panel.js"];
    "photo.js" "text/javascript; charset=utf-8" ["photo.js"];
    "sketch.js" "text/javascript; charset=utf-8" ["sketch.js"];
}

/// The address of an asset, with its version. A name that is not there stays without one, and
/// answers *not found*.
pub fn address(name: &str) -> String {
    match ASSETS.iter().find(|asset| asset.name == name) {
        Some(asset) => format!("/static/{name}?v={}", asset.version),
        None => format!("/static/{name}"),
    }
}

/// One asset. Under its version it never changes; a script that imports another by its bare name
/// asks again each time, and is told when nothing changed.
pub async fn show(
    Path(file): Path<String>,
    RawQuery(query): RawQuery,
    headers: HeaderMap,
) -> Result<Response, Problem> {
    let asset = ASSETS
        .iter()
        .find(|asset| asset.name == file)
        .ok_or(Problem::NotFound)?;
    let etag = format!("\"{}\"", asset.version);
    let versioned = query.is_some_and(|query| query == format!("v={}", asset.version));
    let keep = if versioned {
        "public, max-age=31536000, immutable"
    } else {
        "public, no-cache"
    };
    let known = headers
        .get(header::IF_NONE_MATCH)
        .is_some_and(|known| known.as_bytes() == etag.as_bytes());
    let about = [
        (header::CONTENT_TYPE, asset.media_type.to_owned()),
        (header::CACHE_CONTROL, keep.to_owned()),
        (header::ETAG, etag),
    ];
    if known {
        return Ok((StatusCode::NOT_MODIFIED, about).into_response());
    }
    // The script that keeps pages is for those of styles, not for those beside it.
    let scope = (asset.name == "keeper.js").then_some([("service-worker-allowed", "/styles/")]);
    Ok((scope, about, asset.content).into_response())
}
