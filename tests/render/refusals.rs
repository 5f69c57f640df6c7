//! Files that are not taken, each with a reason that a page can explain.

use std::path::Path;
use std::time::Duration;

use fellseam::files::{Kind, Limits, Media, RenderError, Renderer};
use image::{DynamicImage, ImageFormat, RgbImage};
use tokio::time::Instant;

use super::inputs::*;

/// A picture whose file is long enough to be cut.
fn noise() -> DynamicImage {
    let mut state = 1_u32;
    RgbImage::from_fn(256, 256, |_, _| {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let [a, b, c, _] = state.to_be_bytes();
        image::Rgb([a, b, c])
    })
    .into()
}

#[tokio::test]
async fn a_cut_off_picture_is_damaged() {
    let renderer = renderer();
    for format in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
        let whole = encoded(&noise(), format);
        assert!(renderer.render(Kind::Photo, &whole).await.is_ok());
        for cut in [whole.len() - 2, whole.len() * 6 / 10, 40] {
            // A PNG's last twelve bytes, its end chunk, hold no pixel.
            if format == ImageFormat::Png && cut == whole.len() - 2 {
                continue;
            }
            let answer = renderer.render(Kind::Photo, &whole[..cut]).await;
            assert_eq!(answer, Err(RenderError::Broken), "{format:?} to {cut}");
        }
    }
}

#[tokio::test]
async fn a_claim_of_size_is_refused_before_it_is_believed() {
    let start = Instant::now();
    let renderer = renderer();
    for (width, height, bits) in [
        (60_000, 60_000, 8),
        (50_000_001, 1, 8),
        (7072, 7072, 8),
        // Few enough pixels, but of 8 bytes each.
        (5800, 5800, 16),
    ] {
        let bomb = png_that_claims(width, height, bits);
        assert!(bomb.len() < 100);
        assert_eq!(
            renderer.render(Kind::Photo, &bomb).await,
            Err(RenderError::TooLarge),
            "{width} x {height}"
        );
    }
    // The same in a JPEG: its frame header holds height and width.
    let mut jpeg = encoded(&halves(16, 16), ImageFormat::Jpeg);
    let frame = jpeg.windows(2).position(|w| w == [0xFF, 0xC0]).unwrap();
    jpeg[frame + 5..frame + 9].copy_from_slice(&[0xFF, 0xDC, 0xFF, 0xDC]);
    assert_eq!(
        renderer.render(Kind::Photo, &jpeg).await,
        Err(RenderError::TooLarge)
    );
    let took = start.elapsed();
    println!("five claims of size: {took:?}");
    assert!(took < Duration::from_secs(5), "{took:?}");
}

#[tokio::test]
async fn a_file_is_what_it_holds() {
    let renderer = renderer();
    // Whatever it was called: no name is ever handed in.
    for text in ["just words", "", "<html><svg/></html>", "\u{FEFF}{}"] {
        assert_eq!(
            renderer.render(Kind::Photo, text.as_bytes()).await,
            Err(RenderError::NotAPicture),
            "{text}"
        );
    }
    for begins_well in [
        &b"\xFF\xD8\xFF and then words"[..],
        b"\xFF\xD8\xFF\xD9",
        b"\x89PNG\r\n\x1A\n and then words",
        b"RIFF\x10\x00\x00\x00WEBPVP8 and then words",
    ] {
        assert_eq!(
            renderer.render(Kind::Photo, begins_well).await,
            Err(RenderError::Broken),
            "{begins_well:?}"
        );
    }
    let drawing = b"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"/>";
    for (bytes, what) in [
        (&drawing[..], "SVG"),
        (b"%PDF-1.7", "PDF"),
        (b"GIF89a", "GIF"),
        (b"\x00\x00\x00\x18ftypavif\x00\x00\x00\x00mif1avif", "AVIF"),
    ] {
        let answer = renderer.render(Kind::Photo, bytes).await;
        assert_eq!(answer, unsupported(what));
    }
}

/// Enough of a HEIC file for its kind to be known.
const HEIC: &[u8] = b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic";

#[tokio::test]
async fn heic_needs_a_converter() {
    assert_eq!(
        renderer().render(Kind::Photo, HEIC).await,
        Err(RenderError::HeicUnsupported)
    );

    let folder = tempfile::tempdir().unwrap();
    // Its pixels are upright; its EXIF still speaks of the file as the phone wrote it.
    let made = phone_png(&halves(64, 64), 6);
    std::fs::write(folder.path().join("made.png"), made).unwrap();
    let converters = [
        "cmp -s \"$1\" \"$(dirname \"$0\")/sent.heic\" && cp \"$(dirname \"$0\")/made.png\" \"$2\"",
        "exit 3",
        "exit 0",
        "echo words > \"$2\"",
    ];
    std::fs::write(folder.path().join("sent.heic"), HEIC).unwrap();
    let mut answers = Vec::new();
    for (at, text) in converters.into_iter().enumerate() {
        let converter = script(folder.path(), &format!("heif-{at}"), text);
        let renderer = Renderer::new(program(), Limits::default(), Some(converter));
        answers.push(renderer.render(Kind::Photo, HEIC).await);
    }
    let photo = answers.remove(0).unwrap();
    assert_eq!((photo.media, photo.width), (Media::Heic, 64));
    assert_near(pixel(&photo.pictures[0], 0.2, 0.5), RED.0, 12);
    assert_eq!(photo.taken.as_deref(), Some("2026-03-01T08:09:10"));
    assert!(
        answers.iter().all(|a| *a == Err(RenderError::Broken)),
        "{answers:?}"
    );
}

#[test]
fn a_converter_is_found_by_the_path() {
    let folder = tempfile::tempdir().unwrap();
    let path = std::env::join_paths([Path::new("/nowhere"), folder.path()]).unwrap();
    assert_eq!(fellseam::files::render::heic_converter(&path), None);
    let program = script(folder.path(), "heif-convert", "");
    assert_eq!(
        fellseam::files::render::heic_converter(&path),
        Some(program)
    );
    let newer = script(folder.path(), "heif-dec", "");
    assert_eq!(fellseam::files::render::heic_converter(&path), Some(newer));
}
