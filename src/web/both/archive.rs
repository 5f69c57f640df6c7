//! A whole style as one archive to download: a revision for both sides, the draft for the brand.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::{Seek, SeekFrom};

use axum::extract::{Path, State};
use axum::http::header;
use axum::response::IntoResponse;
use tokio::sync::Semaphore;

use super::files::body;
use super::{number, plain};
use crate::access::{StylePermit, act};
use crate::files::Media;
use crate::print::archive::{Archive, Original};
use crate::spec::Digest;
use crate::store::{Fetchable, StoreError};
use crate::web::App;
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

/// An archive is put together on the disk, and holds one original at a time in memory. This many
/// are put together at once; whoever else asks, waits.
static AT_ONCE: Semaphore = Semaphore::const_new(2);

/// A revision: its exact bytes, and the files that it shows.
pub async fn revision(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
) -> Answer {
    let n = number(&n)?;
    let revision = app.store.revision(&may.permit, n).await?;
    let document = app.store.revision_bytes(&may.permit, n).await?;
    let frozen = &revision.frozen;
    let name = format!("{}-revision-{n}", plain(&frozen.spec.header.number));
    send(&app, &may.permit, name, document, &frozen.files).await
}

/// The draft as it is.
pub async fn draft(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path(_): Path<String>,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let read = may.permit.also()?;
    let document = serde_json::to_vec_pretty(&draft.spec);
    let document = document.map_err(|error| Problem::fault(&error))?;
    let name = format!("{}-draft", plain(&draft.spec.header.number));
    send(&app, &read, name, document, &draft.spec.files()).await
}

async fn send(
    app: &App,
    permit: &StylePermit<act::Read>,
    name: String,
    document: Vec<u8>,
    named: &BTreeSet<Digest>,
) -> Answer {
    let mut originals = Vec::with_capacity(named.len());
    for file in named {
        match app.store.original(permit, file).await {
            Ok(original) => originals.push(original),
            // A photograph: the document names it, and no original of it is kept.
            Err(StoreError::Missing) => {}
            Err(error) => return Err(error.into()),
        }
    }
    let file = {
        let turn = AT_ONCE.acquire().await;
        let _turn = turn.map_err(|closed| Problem::fault(&closed))?;
        let files = app.files.clone();
        let written = tokio::task::spawn_blocking(move || {
            let read = |file: &Digest| std::fs::read(files.path(file));
            write(&document, &originals, read)
        });
        written.await.map_err(std::io::Error::other)??
    };
    let length = file.metadata()?.len();
    let about = [
        (header::CONTENT_TYPE, "application/zip".to_owned()),
        (header::CONTENT_LENGTH, length.to_string()),
        (
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{name}.zip\""),
        ),
        (header::CACHE_CONTROL, "private, no-cache".to_owned()),
    ];
    Ok((about, body(tokio::fs::File::from_std(file))).into_response())
}

/// The archive in a file without a name, at its beginning.
fn write(
    document: &[u8],
    originals: &[Fetchable],
    read: impl Fn(&Digest) -> std::io::Result<Vec<u8>>,
) -> std::io::Result<File> {
    let mut archive = Archive::begin(tempfile::tempfile()?, document)?;
    for it in originals {
        let original = Original {
            file: &it.digest,
            name: &it.name,
            media_type: &it.media_type,
            ending: Media::from_mime(&it.media_type).map_or("bin", Media::extension),
        };
        archive.add(original, &read(&it.digest)?)?;
    }
    let mut file = archive.end()?;
    file.seek(SeekFrom::Start(0))?;
    Ok(file)
}
