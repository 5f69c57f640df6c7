//! Photographs and raster drawings: decoded, made upright, opaque and sRGB, and encoded anew, so
//! that nothing of the file but its pixels is left: no place, no owner, no embedded preview.

use std::borrow::Cow;
use std::io::Cursor;

use exif::{Exif, In, Tag, Value};
use image::error::{ImageError, UnsupportedErrorKind};
use image::imageops::FilterType;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, RgbImage};
use moxcms::{ColorProfile, DataColorSpace, Layout, TransformOptions};

use super::{WIDTHS, fit, webp};
use crate::files::render::{MAX_BYTES, MAX_PIXELS};
use crate::files::{Media, Picture, RenderError, Rendered};

/// `media` is what was sent: `bytes`, or HEIC of which they are the converted picture.
pub fn render(media: Media, bytes: Vec<u8>) -> Result<Rendered, RenderError> {
    let format = match Media::sniff(&bytes) {
        Some(Media::Jpeg) if !jpeg_is_whole(&bytes) => return Err(RenderError::Broken),
        Some(Media::Jpeg) => ImageFormat::Jpeg,
        Some(Media::Png) => ImageFormat::Png,
        Some(Media::Webp) => ImageFormat::WebP,
        _ => return Err(RenderError::NotAPicture),
    };
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    let mut limits = image::Limits::no_limits();
    limits.max_alloc = Some(MAX_BYTES);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(refusal)?;
    // A few bytes may claim any size: they are held to it before anything is unpacked.
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) > MAX_PIXELS || decoder.total_bytes() > MAX_BYTES {
        return Err(RenderError::TooLarge);
    }
    // Metadata that cannot be read is as good as none: it is dropped in any case.
    let exif = decoder.exif_metadata().ok().flatten().and_then(read_exif);
    let profile = decoder.icc_profile().ok().flatten();
    let profile = profile.and_then(|icc| ColorProfile::new_from_slice(&icc).ok());

    let mut image = opaque(DynamicImage::from_decoder(decoder).map_err(refusal)?);
    if media != Media::Heic {
        // HEIC turns by properties of its own (`irot`, `imir` of ISO/IEC 23008-12), which the
        // converter has applied. A phone's EXIF says the same once more.
        let turned = exif.as_ref().map_or(Orientation::NoTransforms, orientation);
        image.apply_orientation(turned);
    }
    let (width, height) = (image.width(), image.height());

    let widest = WIDTHS[WIDTHS.len() - 1].min(width);
    // Before the colours are converted: that is a few million pixels less to convert.
    let largest = srgb(shrink(&image, fit(width, height, widest)), profile)?;
    drop(image);
    let mut pictures: Vec<Picture> = Vec::new();
    for wanted in WIDTHS.into_iter().filter(|w| *w < widest).chain([widest]) {
        let (new_width, new_height) = fit(width, height, wanted);
        // Of a very long strip several widths come out the same.
        if pictures.last().is_none_or(|last| last.width != new_width) {
            let small = shrink(&largest, (new_width, new_height));
            pictures.push(webp(small.as_bytes(), new_width, new_height)?);
        }
    }
    Ok(Rendered {
        media,
        width,
        height,
        taken: exif.as_ref().and_then(taken),
        warnings: Vec::new(),
        pictures,
    })
}

fn refusal(error: ImageError) -> RenderError {
    match error {
        ImageError::Limits(_) => RenderError::TooLarge,
        ImageError::Unsupported(error) => RenderError::Unsupported {
            what: match error.kind() {
                UnsupportedErrorKind::GenericFeature(what) => what.clone(),
                other => format!("{other:?}"),
            },
        },
        _ => RenderError::Broken,
    }
}

/// 8-bit grey or RGB on white paper. White, since what is transparent in a drawing is paper, and
/// lines on nothing would vanish on a dark screen.
fn opaque(image: DynamicImage) -> DynamicImage {
    let over_white = |value: u8, alpha: u8| {
        let (value, alpha) = (u32::from(value), u32::from(alpha));
        // At most 255 * 255 / 255.
        ((value * alpha + 255 * (255 - alpha) + 127) / 255) as u8
    };
    let (alpha, colour) = (image.color().has_alpha(), image.color().has_color());
    match (colour, alpha) {
        (true, false) => DynamicImage::ImageRgb8(image.into_rgb8()),
        (false, false) => DynamicImage::ImageLuma8(image.into_luma8()),
        (true, true) => {
            let image = image.into_rgba8();
            let (width, height) = image.dimensions();
            let mut rgb = RgbImage::new(width, height);
            for (to, from) in rgb.pixels_mut().zip(image.pixels()) {
                let [r, g, b, a] = from.0;
                to.0 = [r, g, b].map(|value| over_white(value, a));
            }
            DynamicImage::ImageRgb8(rgb)
        }
        (false, true) => {
            let image = image.into_luma_alpha8();
            let (width, height) = image.dimensions();
            let mut grey = image::GrayImage::new(width, height);
            for (to, from) in grey.pixels_mut().zip(image.pixels()) {
                let [value, alpha] = from.0;
                to.0 = [over_white(value, alpha)];
            }
            DynamicImage::ImageLuma8(grey)
        }
    }
}

fn shrink(image: &DynamicImage, (width, height): (u32, u32)) -> Cow<'_, DynamicImage> {
    if (width, height) == (image.width(), image.height()) {
        Cow::Borrowed(image)
    } else {
        Cow::Owned(image.resize_exact(width, height, FilterType::CatmullRom))
    }
}

/// Converts from the colour space that the file names. Without a profile, or with one that does
/// not fit the pixels (CMYK), they are taken as sRGB, as browsers do.
fn srgb(
    image: Cow<'_, DynamicImage>,
    profile: Option<ColorProfile>,
) -> Result<DynamicImage, RenderError> {
    let (source, layout) = match *image {
        DynamicImage::ImageLuma8(_) => (DataColorSpace::Gray, Layout::Gray),
        _ => (DataColorSpace::Rgb, Layout::Rgb),
    };
    let transform = profile
        .filter(|profile| profile.color_space == source)
        .and_then(|profile| {
            let srgb = ColorProfile::new_srgb();
            profile
                .create_transform_8bit(layout, &srgb, Layout::Rgb, TransformOptions::default())
                .ok()
        });
    let rgb = match transform {
        None => image.into_owned().into_rgb8(),
        Some(transform) => {
            let mut rgb = RgbImage::new(image.width(), image.height());
            transform
                .transform(image.as_bytes(), &mut rgb)
                .map_err(|error| RenderError::Failed {
                    why: format!("colours: {error}"),
                })?;
            rgb
        }
    };
    Ok(rgb.into())
}

fn read_exif(bytes: Vec<u8>) -> Option<Exif> {
    // Some programs put JPEG's marker before the data in other formats too.
    let bytes = match bytes.strip_prefix(b"Exif\0\0") {
        Some(bytes) => bytes.to_vec(),
        None => bytes,
    };
    exif::Reader::new().read_raw(bytes).ok()
}

fn orientation(exif: &Exif) -> Orientation {
    exif.get_field(Tag::Orientation, In::PRIMARY)
        .and_then(|field| field.value.get_uint(0))
        .and_then(|value| u8::try_from(value).ok())
        .and_then(Orientation::from_exif)
        .unwrap_or(Orientation::NoTransforms)
}

/// `DateTimeOriginal` as `YYYY-MM-DDTHH:MM:SS`. Held to its shape, so that no other text of the
/// file gets through by this field.
fn taken(exif: &Exif) -> Option<String> {
    let field = exif.get_field(Tag::DateTimeOriginal, In::PRIMARY)?;
    let Value::Ascii(texts) = &field.value else {
        return None;
    };
    let time = exif::DateTime::from_ascii(texts.first()?).ok()?;
    let sane = (1..=12).contains(&time.month)
        && (1..=31).contains(&time.day)
        && time.hour < 24
        && time.minute < 60
        && time.second <= 60;
    sane.then(|| {
        format!(
            "{:04}-{:02}-{:02}T{:02}:{:02}:{:02}",
            time.year, time.month, time.day, time.hour, time.minute, time.second
        )
    })
}

/// Whether a JPEG goes on to its end mark (ITU-T T.81, B.1.1). The decoder fills what is missing
/// with grey; a photograph cut off by a lost signal would then be kept as if it were whole.
fn jpeg_is_whole(bytes: &[u8]) -> bool {
    const END: u8 = 0xD9;
    let mut at = 2;
    loop {
        // To the next mark: inside a scan an FF is data when 00 follows, and a restart mark when
        // D0 to D7 follows.
        let Some(found) = bytes.get(at..).and_then(|rest| {
            rest.windows(2)
                .position(|pair| pair[0] == 0xFF && !matches!(pair[1], 0 | 0xD0..=0xD7 | 0xFF))
        }) else {
            return false;
        };
        at += found;
        let mark = bytes[at + 1];
        if mark == END {
            return true;
        }
        let Some(length) = bytes.get(at + 2..at + 4) else {
            return false;
        };
        // A segment is stepped over whole: the preview inside EXIF has end marks of its own. So is
        // the scan's header; its data is then searched for the next mark.
        at += 2 + usize::from(u16::from_be_bytes([length[0], length[1]]));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_jpeg_ends_with_its_own_end_mark() {
        let preview = [0xFF, 0xE1, 0x00, 0x06, 0xFF, 0xD8, 0xFF, 0xD9];
        let scan = [0xFF, 0xDA, 0x00, 0x02, 1, 0xFF, 0x00, 0xFF, 0xD3, 2];
        let cut = [&[0xFF, 0xD8][..], &preview, &scan].concat();
        assert!(!jpeg_is_whole(&cut));
        assert!(!jpeg_is_whole(&cut[..7]));
        assert!(jpeg_is_whole(&[&cut[..], &[0xFF, 0xFF, 0xD9]].concat()));
        // What cameras append after it is no matter.
        assert!(jpeg_is_whole(&[&cut[..], &[0xFF, 0xD9, 0, 0]].concat()));
    }
}
