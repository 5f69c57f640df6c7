//! What becomes of an SVG drawing, and of what may hide in one.

use fellseam::files::{Kind, Media, RenderError, Rendered, Warning};

use super::inputs::*;

async fn draw(svg: &str) -> Result<Rendered, RenderError> {
    renderer().render(Kind::Drawing, svg.as_bytes()).await
}

fn svg(inner: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" \
         width=\"1200\" height=\"800\">{inner}<rect width=\"600\" height=\"800\" fill=\"#c81414\"/>\
         </svg>"
    )
}

/// The cleaned SVG; its picture must show the rectangle of [`svg`].
fn cleaned(drawing: &Rendered) -> String {
    let [shown, preview] = &drawing.pictures[..] else {
        panic!("{} pictures", drawing.pictures.len());
    };
    assert_eq!((shown.media, preview.media), (Media::Svg, Media::Webp));
    assert_eq!((preview.width, preview.height), (1080, 720));
    assert_near(pixel(preview, 0.2, 0.9), [200, 20, 20], 8);
    assert_near(pixel(preview, 0.8, 0.9), [255, 255, 255], 8);
    String::from_utf8(shown.bytes.clone()).unwrap()
}

#[tokio::test]
async fn a_drawing_is_written_anew() {
    let drawing = draw(&svg("<!-- by me --><title>Words</title>"))
        .await
        .unwrap();
    assert_eq!(drawing.media, Media::Svg);
    assert_eq!((drawing.width, drawing.height), (1200, 800));
    assert_eq!((&drawing.taken, &drawing.warnings), (&None, &vec![]));
    let text = cleaned(&drawing);
    assert!(text.starts_with("<svg width=\"1200\" height=\"800\" viewBox=\"0 0 1200 800\""));
    assert!(text.contains("#c81414"), "{text}");
    assert!(!text.contains("by me") && !text.contains("Words"), "{text}");
}

#[tokio::test]
async fn a_small_size_keeps_its_aspect() {
    let drawing = draw(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 2.1 2.97\">\
         <path d=\"M0 0H2V2Z\"/></svg>",
    )
    .await
    .unwrap();
    assert_eq!((drawing.width, drawing.height), (707, 1000));
    let shown = &drawing.pictures[0];
    assert_eq!((shown.width, shown.height), (707, 1000));
    assert!(contains(&shown.bytes, "viewBox=\"0 0 2.1 2.97\""));
}

#[tokio::test]
async fn nothing_is_fetched_and_nothing_runs() {
    // A picture that is really there, so that reading it would show.
    let folder = tempfile::tempdir().unwrap();
    let secret = folder.path().join("secret.png");
    std::fs::write(&secret, png(&halves(8, 8))).unwrap();
    let secret = secret.display();

    for hidden in [
        "<image href=\"file:///etc/passwd\" width=\"9\" height=\"9\"/>".to_owned(),
        format!("<image href=\"{secret}\" width=\"9\" height=\"9\"/>"),
        format!("<image xlink:href=\"file://{secret}\" width=\"9\" height=\"9\"/>"),
        "<image href=\"http://host.example/x.png\" width=\"9\" height=\"9\"/>".to_owned(),
        format!(
            "<filter id=\"f\"><feImage xlink:href=\"{secret}\"/></filter>\
             <path d=\"M0 0H9V9Z\" filter=\"url(#f)\"/>"
        ),
        "<filter id=\"f\"><feImage href=\"http://host.example/x.png\"/></filter>\
         <path d=\"M0 0H9V9Z\" filter=\"url(#f)\"/>"
            .to_owned(),
    ] {
        let drawing = draw(&svg(&hidden)).await.unwrap();
        assert_eq!(drawing.warnings, [Warning::LinkedPictures], "{hidden}");
        let text = cleaned(&drawing);
        for word in [
            "<image",
            "href",
            "data:",
            "host.example",
            "secret",
            "passwd",
            "root:",
        ] {
            assert!(!text.contains(word), "{hidden} left {word} in {text}");
        }
    }

    for hidden in [
        "<script>alert(1)</script>",
        "<script href=\"http://host.example/x.js\"/>",
        "<g onload=\"alert(1)\" onclick=\"alert(1)\"><path d=\"M0 0H9V9Z\"/></g>",
        "<a href=\"javascript:alert(1)\"><path d=\"M0 0H9V9Z\"/></a>",
        "<foreignObject width=\"9\" height=\"9\"><p xmlns=\"http://www.w3.org/1999/xhtml\">\
         alert</p></foreignObject>",
        "<style>@import url(http://host.example/x.css); path { fill: url(http://host.example/) }\
         </style><path d=\"M0 0H9V9Z\"/>",
        "<path d=\"M0 0H9V9Z\" fill=\"url(http://host.example/x#alert)\" \
         style=\"filter:url(http://host.example/x#alert)\"/>",
        "<use href=\"http://host.example/x.svg#alert\"/>",
        "<set attributeName=\"href\" to=\"javascript:alert(1)\"/>",
        "<animate attributeName=\"onload\" values=\"alert(1)\"/>",
    ] {
        let text = cleaned(&draw(&svg(hidden)).await.unwrap());
        for word in [
            "alert",
            "script",
            "onload",
            "onclick",
            "host.example",
            "href",
            "@import",
        ] {
            assert!(!text.contains(word), "{hidden} left {word} in {text}");
        }
    }
}

#[tokio::test]
async fn entities_of_other_files_are_not_read() {
    let with = |entities: &str, inner: &str| format!("<!DOCTYPE svg [{entities}]>{}", svg(inner));
    // A drawing program's own entities are read, others are neither read nor skipped in silence.
    let drawing = draw(&with(
        "<!ENTITY shape \"M0 0H9V9Z\"><!ENTITY other SYSTEM \"file:///etc/passwd\">",
        "<path d=\"&shape;\" fill=\"#123456\"/>",
    ))
    .await
    .unwrap();
    let text = cleaned(&drawing);
    assert!(text.contains("#123456"), "{text}");
    assert!(
        !text.contains("ENTITY") && !text.contains("passwd"),
        "{text}"
    );

    for entities in [
        "<!ENTITY e SYSTEM \"file:///etc/passwd\">",
        "<!ENTITY e PUBLIC \"-\" \"http://host.example/\">",
        "<!ENTITY % p SYSTEM \"file:///etc/passwd\"> %p; <!ENTITY e \"x\">",
    ] {
        let drawing = draw(&with(entities, "<text y=\"50\">&e;</text>")).await;
        assert_eq!(drawing, Err(RenderError::Broken), "{entities}");
    }

    // The billion laughs: ten entities, each ten of the one before.
    let mut laughs = "<!ENTITY a0 \"ha\">".to_owned();
    for n in 1..10 {
        let before = format!("&a{};", n - 1).repeat(10);
        laughs += &format!("<!ENTITY a{n} \"{before}\">");
    }
    let drawing = draw(&with(&laughs, "<text y=\"50\">&a9;</text>")).await;
    assert_eq!(drawing, Err(RenderError::Broken));
}

#[tokio::test]
async fn an_embedded_photograph_does_not_slip_through() {
    use base64::Engine;
    let photo = phone_jpeg(&halves(8, 8), 1);
    let photo = base64::engine::general_purpose::STANDARD.encode(photo);
    let drawing = draw(&svg(&format!(
        "<image href=\"data:image/jpeg;base64,{photo}\" width=\"9\" height=\"9\"/>"
    )))
    .await
    .unwrap();
    assert_eq!(drawing.warnings, [Warning::EmbeddedPictures]);
    let text = cleaned(&drawing);
    assert!(
        !text.contains("image") && !text.contains("base64"),
        "{text}"
    );
}

#[tokio::test]
async fn text_becomes_outlines_and_the_sender_is_told() {
    let drawing = draw(&svg("<text x=\"700\" y=\"90\">Cuff</text>"))
        .await
        .unwrap();
    let text = cleaned(&drawing);
    assert!(!text.contains("<text") && !text.contains("Cuff"), "{text}");
    match drawing.warnings[..] {
        [Warning::LiveText] => assert!(text.matches("<path").count() > 1, "{text}"),
        [Warning::TextLost] => assert_eq!(text.matches("<path").count(), 1, "{text}"),
        ref other => panic!("{other:?}"),
    }
    // Blanks are no text.
    let drawing = draw(&svg("<text> \n </text>")).await.unwrap();
    assert_eq!(drawing.warnings, []);
}

#[tokio::test]
async fn a_drawing_that_unfolds_without_end_is_refused() {
    let mut folded = "<g id=\"a0\"><path d=\"M0 0H9V9Z\"/></g>".to_owned();
    for n in 1..9 {
        let before = format!("<use href=\"#a{}\"/>", n - 1).repeat(10);
        folded += &format!("<g id=\"a{n}\">{before}</g>");
    }
    let drawing = draw(&svg(&format!("<defs>{folded}</defs><use href=\"#a8\"/>"))).await;
    assert_eq!(drawing, Err(RenderError::TooLarge));

    let deep = "<g>".repeat(100_000) + &"</g>".repeat(100_000);
    let drawing = draw(&svg(&deep)).await;
    assert_eq!(drawing, Err(RenderError::TooLarge));

    let many = "<path/>".repeat(500_001);
    assert_eq!(draw(&svg(&many)).await, Err(RenderError::TooLarge));
}

#[tokio::test]
async fn an_id_cannot_break_out() {
    for id in [
        "a&lt;script/>",
        "a&amp;lt;script/>",
        "a&amp;e;",
        "&quot;/>&lt;script/>&lt;g id=&quot;",
    ] {
        let drawing = draw(&svg(&format!(
            "<g id=\"{id}\" opacity=\".5\"><path d=\"M0 0H9V9Z\"/></g>"
        )))
        .await;
        match drawing {
            Err(error) => assert_eq!(Err(error), unsupported("SVG with < or & in an id"), "{id}"),
            // Whole in its quotes, then: there is no such element.
            Ok(drawing) => {
                let text = cleaned(&drawing);
                assert!(!text.contains("<script"), "{id} in {text}");
            }
        }
    }
    assert_eq!(
        draw(&svg(
            "<g id=\"R&amp;D\" opacity=\".5\"><path d=\"M0 0H9V9Z\"/></g>"
        ))
        .await,
        unsupported("SVG with < or & in an id")
    );
}

#[tokio::test]
async fn what_is_no_svg_inside_is_damaged() {
    for broken in [
        "<svg xmlns=\"http://www.w3.org/2000/svg\"><path",
        "<svg>",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"0\"/>",
    ] {
        assert_eq!(draw(broken).await, Err(RenderError::Broken), "{broken}");
    }
    let mut latin = svg("<!-- caf\u{1} -->").into_bytes();
    for byte in &mut latin {
        if *byte == 1 {
            *byte = 0xE9;
        }
    }
    assert_eq!(
        renderer().render(Kind::Drawing, &latin).await,
        unsupported("SVG in another encoding than UTF-8")
    );
}
