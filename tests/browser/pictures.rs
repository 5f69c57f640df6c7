//! The pictures of the README, from the demo:
//! `cargo nextest run --test browser --run-ignored only -E 'test(pictures)'`.

use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use serde_json::json;

use crate::stage::Stage;
use crate::window::Window;

/// What a page of text may weigh in a README.
const MOST: usize = 150 * 1024;

/// The same picture in 51 steps a colour, which nobody sees on a page of text, and packed well.
fn lighter(png: &[u8]) -> Vec<u8> {
    let mut picture = image::load_from_memory(png).expect("a picture").to_rgb8();
    for pixel in picture.pixels_mut() {
        pixel.0 = pixel.0.map(|value| value.saturating_add(2) / 5 * 5);
    }
    let mut packed = Vec::new();
    let encoder =
        PngEncoder::new_with_quality(&mut packed, CompressionType::Best, FilterType::NoFilter);
    picture.write_with_encoder(encoder).expect("a picture");
    packed
}

/// The page that is open, as it is seen first on a screen of this width and height.
async fn keeps(window: &Window, name: &str, width: u32, height: u32) {
    let screen =
        json!({"width": width, "height": height, "deviceScaleFactor": 1, "mobile": width < 600});
    window
        .devtool("Emulation.setDeviceMetricsOverride", screen)
        .await;
    window
        .devtool("Emulation.setScrollbarsHidden", json!({"hidden": true}))
        .await;
    window
        .waits_until("return [...document.images].every((e) => e.complete || e.loading === 'lazy')")
        .await;
    window.asks("document.activeElement?.blur()", &[]).await;
    let picture = lighter(&window.photographs().await);
    assert!(
        picture.len() < MOST,
        "{name} weighs {} bytes",
        picture.len()
    );
    std::fs::write(format!("tests/pictures/{name}.png"), picture).expect("a file");
}

/// On a desk, `height` tall, and on a phone.
async fn keeps_both(window: &Window, name: &str, path: &str, height: u32) {
    for (name, width, height) in [(name, 1440, height), (&format!("{name}-phone"), 360, 740)] {
        window.opens(path).await;
        keeps(window, name, width, height).await;
    }
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "makes the pictures of the README anew"]
async fn pictures_of_the_main_pages() {
    std::fs::create_dir_all("tests/pictures").expect("a folder");
    let stage = Stage::demo().await;
    let iris = stage.of_demo("Designer", false).await;
    iris.opens("/styles").await;
    iris.presses("HT-204").await;
    let style = iris.path().await;
    iris.presses("Open revision").await;
    let revision = iris.path().await;
    keeps_both(&iris, "review", &revision, 1000).await;
    keeps_both(&iris, "style", &style, 1000).await;
    for (section, height) in [
        ("points", 900),
        ("drawings", 1320),
        ("colourways", 900),
        ("materials", 900),
    ] {
        keeps_both(&iris, section, &format!("{style}/draft/{section}"), height).await;
    }
    iris.closes().await;
}
