//! What becomes of a photograph.

use fellseam::files::{Kind, Limits, Media, RenderError, Renderer};
use image::{DynamicImage, GrayImage, ImageFormat, Luma, Rgb, RgbImage, Rgba, RgbaImage};
use moxcms::ColorProfile;

use super::inputs::*;

fn widths(rendered: &fellseam::files::Rendered) -> Vec<u32> {
    rendered.pictures.iter().map(|p| p.width).collect()
}

#[tokio::test]
async fn a_phones_photograph_is_upright_and_tells_only_its_time() {
    let sent = phone_jpeg(&halves(600, 400), 6);
    for secret in ["Pocket Camera", "Owner Name", "Owner's words!", "Exif"] {
        assert!(contains(&sent, secret), "{secret}");
    }
    let photo = renderer().render(Kind::Photo, &sent).await.unwrap();
    assert_eq!((photo.width, photo.height), (400, 600));
    assert_eq!(photo.media, Media::Jpeg);
    assert_eq!(photo.taken.as_deref(), Some("2026-03-01T08:09:10"));
    assert_eq!(photo.pictures.len(), 1);

    let picture = &photo.pictures[0];
    assert_eq!((picture.width, picture.height), (400, 600));
    assert_near(pixel(picture, 0.5, 0.2), RED.0, 8);
    assert_near(pixel(picture, 0.5, 0.8), BLUE.0, 8);
    // Pixels and nothing else.
    assert_eq!(chunks(&picture.bytes), ["VP8 "]);
    for secret in ["Pocket", "Owner", "Exif", "2026"] {
        assert!(!contains(&picture.bytes, secret), "{secret}");
    }
}

#[tokio::test]
async fn every_orientation_comes_upright() {
    // Where the red half stands once upright, by the eight values of EXIF's orientation.
    let places = [
        (0.2, 0.5),
        (0.8, 0.5),
        (0.8, 0.5),
        (0.2, 0.5),
        (0.5, 0.2),
        (0.5, 0.2),
        (0.5, 0.8),
        (0.5, 0.8),
    ];
    let renderer = renderer();
    for (orientation, (x, y)) in (1..).zip(places) {
        let sent = phone_jpeg(&halves(64, 64), orientation);
        let photo = renderer.render(Kind::Photo, &sent).await.unwrap();
        assert_near(pixel(&photo.pictures[0], x, y), RED.0, 12);
        assert_near(pixel(&photo.pictures[0], 1.0 - x, 1.0 - y), BLUE.0, 12);
    }
}

#[tokio::test]
async fn pictures_are_made_narrower_and_never_wider() {
    let renderer = renderer();
    for (width, height, wanted) in [
        (300, 200, vec![300]),
        (480, 200, vec![480]),
        (800, 600, vec![480, 800]),
        (2048, 64, vec![480, 1080, 2048]),
        (3000, 1500, vec![480, 1080, 2048]),
        // 16 383 is as high as a WebP can be.
        (40, 20_000, vec![33]),
    ] {
        let photo = renderer
            .render(Kind::Photo, &png(&halves(width, height)))
            .await
            .unwrap();
        assert_eq!((photo.width, photo.height), (width, height));
        assert_eq!(widths(&photo), wanted, "{width} x {height}");
        let last = photo.pictures.last().unwrap();
        let aspect = f64::from(last.width) / f64::from(last.height);
        let true_aspect = f64::from(width) / f64::from(height);
        assert!((aspect / true_aspect - 1.0).abs() < 0.02, "{aspect}");
        assert_near(pixel(last, 0.2, 0.5), RED.0, 8);
    }
}

#[tokio::test]
async fn colours_are_converted_to_srgb() {
    // By the published formulas: Adobe RGB (1998), gamma 563/256, primaries against those of
    // IEC 61966-2-1; (120, 180, 100) has linear (0.1906, 0.4648, 0.1276), in sRGB's primaries
    // (0.0814, 0.4648, 0.1131), encoded (80, 181, 94).
    let colour = RgbImage::from_pixel(64, 64, Rgb([120, 180, 100])).into();
    let sent = png_with_profile(&colour, &ColorProfile::new_adobe_rgb());
    let photo = renderer().render(Kind::Photo, &sent).await.unwrap();
    assert_near(pixel(&photo.pictures[0], 0.5, 0.5), [80, 181, 94], 3);
    assert_eq!(chunks(&photo.pictures[0].bytes), ["VP8 "]);

    // Without a profile the numbers stand for sRGB.
    let photo = renderer().render(Kind::Photo, &png(&colour)).await.unwrap();
    assert_near(pixel(&photo.pictures[0], 0.5, 0.5), [120, 180, 100], 3);

    // Linear grey 128 is (128/255) of the light: sRGB 188.
    let grey = GrayImage::from_pixel(64, 64, Luma([128])).into();
    let sent = png_with_profile(&grey, &ColorProfile::new_gray_with_gamma(1.0));
    let photo = renderer().render(Kind::Photo, &sent).await.unwrap();
    assert_near(pixel(&photo.pictures[0], 0.5, 0.5), [188, 188, 188], 3);
}

#[tokio::test]
async fn what_is_transparent_becomes_white_paper() {
    // Black, of which half covers, beside nothing at all.
    let image = RgbaImage::from_fn(64, 64, |x, _| Rgba([0, 0, 0, if x < 32 { 128 } else { 0 }]));
    let colour = DynamicImage::from(image);
    let grey = DynamicImage::from(colour.to_luma_alpha8());
    let deep = DynamicImage::from(colour.to_rgba16());
    for image in [colour, grey, deep] {
        let drawing = renderer()
            .render(Kind::Drawing, &png(&image))
            .await
            .unwrap();
        assert_near(pixel(&drawing.pictures[0], 0.2, 0.5), [127; 3], 4);
        assert_near(pixel(&drawing.pictures[0], 0.8, 0.5), [255; 3], 4);
    }
}

#[tokio::test]
async fn the_content_decides_and_webp_is_taken() {
    let sent = encoded(&halves(64, 64), ImageFormat::WebP);
    let photo = renderer().render(Kind::Photo, &sent).await.unwrap();
    assert_eq!(photo.media, Media::Webp);
    assert_eq!(photo.taken, None);
    assert_near(pixel(&photo.pictures[0], 0.2, 0.5), RED.0, 12);
}

#[tokio::test]
async fn the_largest_picture_fits_the_memory_and_not_less_of_it() {
    // 49.99 megapixels with transparency: the most that may be unpacked.
    let (width, height) = (8660, 5773);
    let large = DynamicImage::from(RgbaImage::from_pixel(width, height, Rgba([9, 99, 9, 255])));
    let sent = png(&large);
    drop(large);
    let start = tokio::time::Instant::now();
    let photo = renderer().render(Kind::Photo, &sent).await.unwrap();
    println!("50 megapixels: {:?}", start.elapsed());
    assert_eq!(widths(&photo), [480, 1080, 2048]);

    let limits = Limits {
        memory: 300 * 1024 * 1024,
        ..Limits::default()
    };
    let small = Renderer::new(program(), limits, None);
    let refused = small.render(Kind::Photo, &sent).await;
    assert_eq!(refused, Err(RenderError::TooMuchMemory));
}
