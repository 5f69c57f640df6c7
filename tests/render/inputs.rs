//! Files to feed the child with, and eyes for what it gives back.

use std::io::Cursor;
use std::path::{Path, PathBuf};

use exif::experimental::Writer;
use exif::{Field, In, Rational, Tag, Value};
use fellseam::files::{Limits, Picture, RenderError, Rendered, Renderer};
use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{DynamicImage, GenericImageView, ImageEncoder, ImageFormat, Rgb, RgbImage};

/// The program under test.
pub fn program() -> PathBuf {
    env!("CARGO_BIN_EXE_fellseam").into()
}

pub fn renderer() -> Renderer {
    Renderer::new(program(), Limits::default(), None)
}

/// A shell script in `folder`, to stand in for a program.
pub fn script(folder: &Path, name: &str, text: &str) -> PathBuf {
    use std::os::unix::fs::PermissionsExt;
    let path = folder.join(name);
    std::fs::write(&path, format!("#!/bin/sh\n{text}\n")).unwrap();
    std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o755)).unwrap();
    path
}

pub fn unsupported(what: &str) -> Result<Rendered, RenderError> {
    Err(RenderError::Unsupported {
        what: what.to_owned(),
    })
}

pub const RED: Rgb<u8> = Rgb([200, 20, 20]);
pub const BLUE: Rgb<u8> = Rgb([20, 20, 200]);

/// The left half red, the right half blue.
pub fn halves(width: u32, height: u32) -> DynamicImage {
    RgbImage::from_fn(width, height, |x, _| if x < width / 2 { RED } else { BLUE }).into()
}

pub fn png(image: &DynamicImage) -> Vec<u8> {
    encoded(image, ImageFormat::Png)
}

pub fn encoded(image: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    image.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

pub fn png_with_profile(image: &DynamicImage, profile: &moxcms::ColorProfile) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    encoder.set_icc_profile(profile.encode().unwrap()).unwrap();
    image.write_with_encoder(encoder).unwrap();
    bytes
}

/// What a phone writes beside the pixels: orientation, place, owner, time.
fn phone_exif(orientation: u16) -> Vec<u8> {
    let degrees = |d: u32| Rational { num: d, denom: 1 };
    let ascii = |text: &str| Value::Ascii(vec![text.as_bytes().to_vec()]);
    let fields = [
        (Tag::Orientation, Value::Short(vec![orientation])),
        (Tag::DateTimeOriginal, ascii("2026:03:01 08:09:10")),
        (Tag::Make, ascii("Pocket Camera")),
        (Tag::Artist, ascii("Owner Name")),
        (Tag::GPSLatitudeRef, ascii("N")),
        (
            Tag::GPSLatitude,
            Value::Rational(vec![degrees(10), degrees(46), degrees(8)]),
        ),
    ]
    .map(|(tag, value)| Field {
        tag,
        ifd_num: In::PRIMARY,
        value,
    });
    let mut writer = Writer::new();
    for field in &fields {
        writer.push_field(field);
    }
    let mut exif = Cursor::new(Vec::new());
    writer.write(&mut exif, true).unwrap();
    exif.into_inner()
}

pub fn phone_png(image: &DynamicImage, orientation: u16) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    encoder.set_exif_metadata(phone_exif(orientation)).unwrap();
    image.write_with_encoder(encoder).unwrap();
    bytes
}

/// A phone's photograph, with a comment.
pub fn phone_jpeg(image: &DynamicImage, orientation: u16) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut encoder = JpegEncoder::new_with_quality(&mut bytes, 95);
    encoder.set_exif_metadata(phone_exif(orientation)).unwrap();
    image.write_with_encoder(encoder).unwrap();
    // A comment right after the start of the image.
    let comment = b"\xFF\xFE\x00\x10Owner's words!";
    bytes.splice(2..2, comment.iter().copied());
    bytes
}

/// A PNG of which only the header is there, claiming a size, with 8 or 16 bits of each of four
/// channels.
pub fn png_that_claims(width: u32, height: u32, bits: u8) -> Vec<u8> {
    let mut header = Vec::new();
    header.extend(width.to_be_bytes());
    header.extend(height.to_be_bytes());
    // RGB with transparency, no interlace.
    header.extend([bits, 6, 0, 0, 0]);
    let mut bytes = b"\x89PNG\r\n\x1A\n".to_vec();
    for (name, data) in [
        (b"IHDR", &header[..]),
        (b"IDAT", &[0x78, 0x9C, 3, 0, 0, 0, 0, 1]),
    ] {
        let mut crc = flate2::Crc::new();
        crc.update(name);
        crc.update(data);
        bytes.extend(u32::try_from(data.len()).unwrap().to_be_bytes());
        bytes.extend(name);
        bytes.extend(data);
        bytes.extend(crc.sum().to_be_bytes());
    }
    bytes
}

/// Filters within filters: a few hundred bytes that take minutes.
pub fn endless_svg() -> Vec<u8> {
    let (open, close) = ("<g filter=\"url(#f)\">".repeat(10), "</g>".repeat(10));
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000\" height=\"1000\">\
         <filter id=\"f\"><feMorphology operator=\"dilate\" radius=\"60\"/></filter>\
         {open}<rect width=\"1000\" height=\"1000\"/>{close}</svg>"
    )
    .into_bytes()
}

/// The pixel at a place given in fractions of the sides.
pub fn pixel(picture: &Picture, x: f64, y: f64) -> [u8; 3] {
    let image = image::load_from_memory_with_format(&picture.bytes, ImageFormat::WebP).unwrap();
    assert_eq!(image.dimensions(), (picture.width, picture.height));
    let at = |side: u32, part: f64| (f64::from(side) * part) as u32;
    let [r, g, b, a] = image
        .get_pixel(at(picture.width, x), at(picture.height, y))
        .0;
    assert_eq!(a, 255);
    [r, g, b]
}

/// Lossy pictures come near.
#[track_caller]
pub fn assert_near(found: [u8; 3], wanted: [u8; 3], within: u8) {
    let near = found
        .iter()
        .zip(wanted)
        .all(|(f, w)| f.abs_diff(w) <= within);
    assert!(near, "found {found:?}, wanted {wanted:?}");
}

/// The names of the chunks of a WebP file.
pub fn chunks(webp: &[u8]) -> Vec<String> {
    let mut rest = &webp[12..];
    let mut names = Vec::new();
    while rest.len() >= 8 {
        let length = u32::from_le_bytes(rest[4..8].try_into().unwrap()) as usize;
        names.push(String::from_utf8_lossy(&rest[..4]).into_owned());
        rest = &rest[(8 + length.next_multiple_of(2)).min(rest.len())..];
    }
    names
}

pub fn contains(bytes: &[u8], words: &str) -> bool {
    bytes
        .windows(words.len())
        .any(|here| here == words.as_bytes())
}
