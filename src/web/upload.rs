//! Uploaded pictures: read by the render child, kept in the room `files`, made known to the store.

use super::App;
use super::form::Upload;
use super::problem::Problem;
use crate::access::{BringsPhotos, StylePermit, act};
use crate::files::media::foreign;
use crate::files::{Kind, Media, Picture, Warning};
use crate::spec::Digest;
use crate::store::{FileKind, NewFile, NewPicture};

/// A drawing that was taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Drawn {
    /// Of the original, byte for byte.
    pub file: Digest,
    /// What the original is.
    pub media: Media,
    /// Size of the original: pixels, or an SVG's user units; 0 of what cannot be shown.
    pub width: u32,
    pub height: u32,
    /// What the sender should be told about it.
    pub warnings: Vec<Warning>,
}

/// A drawing that is kept and that no style uses yet.
pub struct Kept {
    drawn: Drawn,
    name: String,
    size: usize,
    pictures: Vec<NewPicture>,
}

/// Keeps the original of a drawing and the pictures made of it, for the draft of the style.
///
/// Errors: [`Problem::Upload`] says why the file cannot be taken.
pub async fn drawing(
    app: &App,
    permit: &StylePermit<act::Write>,
    upload: Upload,
) -> Result<Drawn, Problem> {
    keep_drawing(app, upload.name, upload.bytes)
        .await?
        .used_by(app, permit)
        .await
}

/// Keeps the original of an artwork byte for byte, for the draft of the style: a picture as a
/// drawing is; PDF, PostScript and, where they are meant, stitches without looking into them.
///
/// Errors: [`Problem::Upload`] says why the file cannot be taken.
pub async fn original(
    app: &App,
    permit: &StylePermit<act::Write>,
    upload: Upload,
    stitches: bool,
) -> Result<Drawn, Problem> {
    let media = match Media::sniff(&upload.bytes) {
        Some(media @ (Media::Pdf | Media::Eps)) => media,
        // A picture of a kind that is not taken is no stitches.
        None if stitches && foreign(&upload.bytes).is_none() => Media::Stitches,
        _ => return drawing(app, permit, upload).await,
    };
    let size = upload.bytes.len();
    let kept = Kept {
        drawn: Drawn {
            file: app.files.put(upload.bytes).await?,
            media,
            width: 0,
            height: 0,
            warnings: Vec::new(),
        },
        name: upload.name,
        size,
        pictures: Vec::new(),
    };
    kept.used_by(app, permit).await
}

/// Keeps the original of a drawing and the pictures made of it, before there is a style for it.
///
/// Errors: [`Problem::Upload`] says why the file cannot be taken.
pub async fn keep_drawing(app: &App, name: String, bytes: Vec<u8>) -> Result<Kept, Problem> {
    let rendered = app.renderer.render(Kind::Drawing, &bytes).await?;
    let size = bytes.len();
    let file = app.files.put(bytes).await?;
    Ok(Kept {
        drawn: Drawn {
            file,
            media: rendered.media,
            width: rendered.width,
            height: rendered.height,
            warnings: rendered.warnings,
        },
        name,
        size,
        pictures: keep(app, rendered.pictures).await?,
    })
}

impl Kept {
    /// Makes it known as a drawing of the style's draft.
    pub async fn used_by(
        self,
        app: &App,
        permit: &StylePermit<act::Write>,
    ) -> Result<Drawn, Problem> {
        let new = NewFile {
            digest: &self.drawn.file,
            kind: FileKind::Drawing,
            media_type: self.drawn.media.mime(),
            name: &self.name,
            size: self.size,
            width: self.drawn.width,
            height: self.drawn.height,
            taken: None,
            pictures: &self.pictures,
        };
        app.store.add_drawing(permit, new).await?;
        Ok(self.drawn)
    }
}

/// Keeps the pictures made of a photograph, and gives the name that a message brings it by. Of the
/// bytes that were sent nothing is kept: they may tell where and by whom it was taken.
///
/// Errors: [`Problem::Upload`] says why the file cannot be taken.
pub async fn photo<A: BringsPhotos>(
    app: &App,
    permit: &StylePermit<A>,
    upload: Upload,
) -> Result<Digest, Problem> {
    let rendered = app.renderer.render(Kind::Photo, &upload.bytes).await?;
    let Some(widest) = rendered.pictures.last().cloned() else {
        return Err(Problem::fault(&"a photograph without a picture"));
    };
    let name = photo_name(&widest);
    let pictures = keep(app, rendered.pictures).await?;
    let new = NewFile {
        digest: &name,
        kind: FileKind::Photo,
        media_type: widest.media.mime(),
        name: "",
        size: widest.bytes.len(),
        width: rendered.width,
        height: rendered.height,
        taken: rendered.taken.as_deref(),
        pictures: &pictures,
    };
    app.store.add_photo(permit, new).await?;
    Ok(name)
}

/// Keeps a photograph of a colour as it was dyed, for the draft of the style. It becomes part of the
/// document, so its widest picture takes the place of an original; of the bytes that were sent
/// nothing is kept.
///
/// Errors: [`Problem::Upload`] says why the file cannot be taken.
pub async fn as_dyed(
    app: &App,
    permit: &StylePermit<act::Write>,
    upload: Upload,
) -> Result<Digest, Problem> {
    let rendered = app.renderer.render(Kind::Photo, &upload.bytes).await?;
    let Some(widest) = rendered.pictures.last().cloned() else {
        return Err(Problem::fault(&"a photograph without a picture"));
    };
    let size = widest.bytes.len();
    let file = app.files.put(widest.bytes).await?;
    let kept = Kept {
        drawn: Drawn {
            file,
            media: widest.media,
            width: widest.width,
            height: widest.height,
            warnings: Vec::new(),
        },
        // A phone's name for it tells the day.
        name: String::new(),
        size,
        pictures: keep(app, rendered.pictures).await?,
    };
    Ok(kept.used_by(app, permit).await?.file)
}

/// Follows from the widest picture, so that whoever holds the name can check what it names. Not
/// that picture's own digest: somebody may download it and upload it again as a drawing, and the
/// two are kept, shown and erased by different rules.
fn photo_name(widest: &Picture) -> Digest {
    let picture = Digest::of(&widest.bytes);
    Digest::of(format!("photograph {picture}").as_bytes())
}

async fn keep(app: &App, pictures: Vec<Picture>) -> Result<Vec<NewPicture>, Problem> {
    let mut kept = Vec::with_capacity(pictures.len());
    for picture in pictures {
        kept.push(NewPicture {
            width: picture.width,
            height: picture.height,
            media_type: picture.media.mime().to_owned(),
            digest: app.files.put(picture.bytes).await?,
        });
    }
    Ok(kept)
}
