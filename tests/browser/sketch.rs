//! Drawing on a photograph with a finger before it is sent.

use image::{ImageFormat, Rgb, RgbImage};

use crate::stage::Stage;
use crate::window::Window;

/// How many pixels of the first photograph on the page are of the ink that marks are drawn in.
const INKED: &str = "
    const photo = document.querySelector('.thread .photo img');
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [photo.naturalWidth, photo.naturalHeight];
    const pen = canvas.getContext('2d');
    pen.drawImage(photo, 0, 0);
    const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
    let inked = 0;
    for (let i = 0; i < data.length; i += 4) {
        if (data[i] > 130 && data[i + 1] < 70 && data[i + 2] < 120) inked += 1;
    }
    return inked;";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_drawn_on_a_photograph_is_sent_with_it() {
    let stage = Stage::demo().await;
    let folder = tempfile::tempdir().expect("a temporary folder");
    let file = folder.path().join("grey.jpg");
    let grey = RgbImage::from_pixel(1200, 900, Rgb([120, 130, 125]));
    grey.save_with_format(&file, ImageFormat::Jpeg)
        .expect("a file");
    let rafiq = stage.of_demo("Merchandiser, Meghna", true).await;
    rafiq.presses("Read and acknowledge revision 1").await;
    rafiq.presses("A, Waist").await;
    rafiq.fills(&[("kind", "question")]).await;
    rafiq.types("ask-text", "Is it meant here?").await;
    rafiq.attaches("#ask-photos", &file).await;
    rafiq.must_see_in("#ask .sketch", "Circle").await;

    // Without a tool nothing is drawn; taken back, a circle is gone; an arrow and a dimension stay.
    draws(&rafiq, 0.2, 0.8).await;
    rafiq.presses_in("#ask .sketch", "○ Circle").await;
    draws(&rafiq, 0.1, 0.3).await;
    rafiq.presses_in("#ask .sketch", "↶ Take back").await;
    rafiq.presses_in("#ask .sketch", "→ Arrow").await;
    draws(&rafiq, 0.4, 0.8).await;
    rafiq.presses_in("#ask .sketch", "↔ Dimension").await;
    let value = "const field = document.querySelector('#ask [data-value]');
        field.value = '12.5 cm'; field.dispatchEvent(new Event('input', { bubbles: true }));";
    rafiq.asks(value, &[]).await;
    draws(&rafiq, 0.2, 0.6).await;
    rafiq.presses_in("#ask", "Send").await;
    rafiq.must_see_in(".thread", "Is it meant here?").await;
    rafiq
        .waits_until(
            "const photo = document.querySelector('.thread .photo img');
            photo?.scrollIntoView(); return Boolean(photo && photo.naturalWidth > 0);",
        )
        .await;
    let inked = rafiq.asks(INKED, &[]).await.as_u64().expect("a count");
    assert!((300..40_000).contains(&inked), "{inked} pixels are inked");
    rafiq.closes().await;
    let said = stage.service.stops_and_audits().await;
    assert!(said.contains("Everything holds."), "{said}");
}

/// A stroke across the picture, from one share of its width and height to another.
async fn draws(window: &Window, from: f64, to: f64) {
    let show = "document.querySelector('#ask .sketch canvas')
        .scrollIntoView({ block: 'center', behavior: 'instant' })";
    window.asks(show, &[]).await;
    let [left, top, wide, tall] = window.place("#ask .sketch canvas").await;
    let spot = |share: f64| (left + wide * share, top + tall * share);
    window.drags(spot(from), spot(to)).await;
}
