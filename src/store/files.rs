//! What is known of files: what they are, what was made of them, and where they are used, which
//! decides who may fetch them. The bytes lie in the room `files`.

use super::act::{StyleAct, number};
use super::{Read, Store, StoreError, values};
use crate::access::{BringsPhotos, StylePermit, act};
use crate::spec::{Digest, StyleId};

/// What a file is kept for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileKind {
    /// The original is kept byte for byte.
    Drawing,
    /// Only re-encoded pictures and the time it was taken are kept.
    Photo,
}

impl FileKind {
    fn name(self) -> &'static str {
        match self {
            FileKind::Drawing => "drawing",
            FileKind::Photo => "photo",
        }
    }
}

/// A file to be known.
#[derive(Debug, Clone)]
pub struct NewFile<'a> {
    pub digest: &'a Digest,
    pub kind: FileKind,
    pub media_type: &'a str,
    /// As the sender's machine called it; empty for a photograph.
    pub name: &'a str,
    pub size: usize,
    pub width: u32,
    pub height: u32,
    /// When a photograph says it was taken.
    pub taken: Option<&'a str>,
    pub pictures: &'a [NewPicture],
}

/// A smaller or sanitised picture made of a file.
#[derive(Debug, Clone)]
pub struct NewPicture {
    pub width: u32,
    pub height: u32,
    pub media_type: String,
    pub digest: Digest,
}

/// A file that may be fetched.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Fetchable {
    pub digest: Digest,
    pub media_type: String,
    pub name: String,
    pub taken: Option<String>,
}

/// What is known of a file that stands in a style.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct StyleFile {
    pub digest: Digest,
    /// As the sender's machine called it.
    pub name: String,
    pub width: u32,
    pub height: u32,
    /// There is a picture of it to look at.
    pub pictured: bool,
}

impl Store {
    /// A drawing's original and its pictures, for the draft of the style.
    ///
    /// Errors: `Missing` when the permit does not hold any more.
    pub async fn add_drawing(
        &self,
        permit: &StylePermit<act::Write>,
        file: NewFile<'_>,
    ) -> Result<(), StoreError> {
        let act = self.act(permit).await?;
        insert_file(&act, &file).await?;
        act.tx
            .run(
                "INSERT INTO file_use (style, file, revision, org) VALUES ($1, $2, 0, '') \
                 ON CONFLICT (style, file, revision, org) DO NOTHING",
                values![permit.style(), file.digest],
            )
            .await?;
        act.commit().await
    }

    /// A photograph's pictures. Until a message brings it, nobody can fetch it, and it is erased
    /// with the person who sent it here.
    ///
    /// Errors: `Missing` when the permit does not hold any more.
    pub async fn add_photo<A: BringsPhotos>(
        &self,
        permit: &StylePermit<A>,
        file: NewFile<'_>,
    ) -> Result<(), StoreError> {
        // An act, so that nobody uploads while they are being erased.
        let act = self.act(permit).await?;
        insert_file(&act, &file).await?;
        act.tx
            .run(
                "INSERT INTO photo_upload (file, person) VALUES ($1, $2) \
                 ON CONFLICT (file, person) DO NOTHING",
                values![file.digest, permit.person()],
            )
            .await?;
        act.commit().await
    }

    /// The original of a file that the holder may read: the brand all of the style's, a factory
    /// those of published revisions and of its own exchange. A photograph has no original.
    ///
    /// Errors: `Missing` when it is not there for the holder.
    pub async fn original(
        &self,
        permit: &StylePermit<act::Read>,
        file: &Digest,
    ) -> Result<Fetchable, StoreError> {
        self.db
            .one(
                "SELECT f.digest, f.media_type, f.name, f.taken FROM file f \
                 WHERE f.digest = $1 AND f.kind <> 'photo' AND EXISTS (SELECT 1 FROM file_use u \
                     WHERE u.file = f.digest AND u.style = $2 \
                     AND (CAST($3 AS TEXT) IS NULL OR u.org = $3 OR (u.org = '' \
                         AND u.revision > 0)))",
                values![file, permit.style(), permit.tenant()],
            )
            .await
    }

    /// The smallest picture of a file that is at least `width` pixels wide, or the widest; of an SVG
    /// the cleaned SVG, which is sharp at every width. By the same rule as
    /// [`original`](Self::original).
    pub async fn picture(
        &self,
        permit: &StylePermit<act::Read>,
        file: &Digest,
        width: u32,
    ) -> Result<Fetchable, StoreError> {
        self.db
            .one(
                "SELECT p.digest, p.media_type, f.name, f.taken FROM picture p \
                 JOIN file f ON f.digest = p.of_file \
                 WHERE f.digest = $1 AND EXISTS (SELECT 1 FROM file_use u \
                     WHERE u.file = f.digest AND u.style = $2 \
                     AND (CAST($3 AS TEXT) IS NULL OR u.org = $3 OR (u.org = '' \
                         AND u.revision > 0))) \
                 ORDER BY CASE WHEN p.media_type = 'image/svg+xml' THEN 0 ELSE 1 END, \
                 CASE WHEN p.width >= $4 THEN 0 ELSE 1 END, \
                 CASE WHEN p.width >= $4 THEN p.width ELSE -p.width END",
                values![file, permit.style(), permit.tenant(), width],
            )
            .await
    }

    /// The files of the style's published revisions.
    pub async fn published_files(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<StyleFile>, StoreError> {
        self.style_files(permit.style(), 1).await
    }

    /// The files of the style's draft and of its published revisions.
    pub async fn draft_files(
        &self,
        permit: &StylePermit<act::Review>,
    ) -> Result<Vec<StyleFile>, StoreError> {
        self.style_files(permit.style(), 0).await
    }

    /// Those that are used from this revision on; the draft counts as 0.
    async fn style_files(&self, style: &StyleId, from: i64) -> Result<Vec<StyleFile>, StoreError> {
        let rows: Vec<(Digest, String, i64, i64, i64)> = self
            .db
            .all(
                "SELECT f.digest, f.name, f.width, f.height, \
                 (SELECT COUNT(*) FROM picture p WHERE p.of_file = f.digest) FROM file f \
                 WHERE EXISTS (SELECT 1 FROM file_use u WHERE u.file = f.digest \
                     AND u.style = $1 AND u.org = '' AND u.revision >= $2)",
                values![style, from],
            )
            .await?;
        let files = rows.into_iter();
        let files = files.map(|(digest, name, width, height, pictures)| {
            let row = digest.as_str();
            Ok(StyleFile {
                width: number("file", "width", row, width)?,
                height: number("file", "height", row, height)?,
                name,
                pictured: pictures > 0,
                digest,
            })
        });
        files.collect()
    }

    /// Width and height of a drawing that was added for the style and can be shown: a draft's drawings
    /// are no others.
    ///
    /// Errors: `Missing` when it was not.
    pub async fn drawing_size(
        &self,
        permit: &StylePermit<act::Write>,
        file: &Digest,
    ) -> Result<(u32, u32), StoreError> {
        let (width, height): (i64, i64) = self
            .db
            .one(
                "SELECT f.width, f.height FROM file f JOIN file_use u ON u.file = f.digest \
                 WHERE f.digest = $1 AND u.style = $2 AND f.kind = 'drawing' AND f.width > 0",
                values![file, permit.style()],
            )
            .await?;
        let row = file.as_str();
        Ok((
            number("file", "width", row, width)?,
            number("file", "height", row, height)?,
        ))
    }
}

async fn insert_file(act: &StyleAct<'_>, file: &NewFile<'_>) -> Result<(), StoreError> {
    let tx = &act.tx;
    tx.run(
        "INSERT INTO file (digest, kind, media_type, name, size, width, height, taken, made_at) \
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9) ON CONFLICT (digest) DO NOTHING",
        values![
            file.digest,
            file.kind.name(),
            file.media_type,
            file.name,
            i64::try_from(file.size).unwrap_or(i64::MAX),
            file.width,
            file.height,
            file.taken,
            act.at
        ],
    )
    .await?;
    for picture in file.pictures {
        tx.run(
            "INSERT INTO picture (of_file, width, height, media_type, digest) \
             VALUES ($1, $2, $3, $4, $5) ON CONFLICT (of_file, width) DO NOTHING",
            values![
                file.digest,
                picture.width,
                picture.height,
                picture.media_type,
                picture.digest
            ],
        )
        .await?;
    }
    Ok(())
}
