//! SVG drawings. What is shown is never what was sent: the file is read into usvg's tree of plain
//! shapes and written anew, which leaves no script, no event, no link, no foreign content, no
//! entity and no comment. Text becomes outlines.
//!
//! The written SVG is checked once more by another rule (a list of what may be in it), and drawn
//! once: a drawing that cannot be drawn here in the time given would hang every reader's browser.

use std::sync::Arc;

use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::roxmltree::{self, Document, Node, ParsingOptions};
use resvg::usvg::{self, ImageHrefResolver, Indent, Tree, WriteOptions, fontdb};

use super::{fit, webp};
use crate::files::{Media, Picture, RenderError, Rendered, Warning};

/// Text of an SVG, read or written, in bytes. A dense flat drawing has a few hundred kilobytes.
const MAX_TEXT: usize = 16 * 1024 * 1024;

/// XML nodes; usvg has a limit of its own after unfolding `use`.
const MAX_NODES: u32 = 500_000;

/// Width of the trial, in pixels, whose picture serves for small previews.
const TRIAL: u32 = 1080;

/// The longer side of the written SVG has at least this many units, so that its whole numbers give
/// the true aspect, by which letters are placed.
const LEAST_SIDE: f32 = 1000.0;

const SVG: &str = "http://www.w3.org/2000/svg";

pub fn render(bytes: &[u8]) -> Result<Rendered, RenderError> {
    if bytes.len() > MAX_TEXT {
        return Err(RenderError::TooLarge);
    }
    let text = std::str::from_utf8(bytes).map_err(|_| RenderError::Unsupported {
        what: "SVG in another encoding than UTF-8".to_owned(),
    })?;
    let options = ParsingOptions {
        // Drawing programs write entities of their own into a document type. Those of other files
        // are not read: without a resolver naming one is an error.
        allow_dtd: true,
        nodes_limit: MAX_NODES,
        entity_resolver: None,
    };
    let document = Document::parse_with_options(text, options).map_err(refusal)?;
    let has_text = document.descendants().any(is_text);
    let mut warnings = pictures_left_out(&document);

    let mut options = usvg::Options {
        image_href_resolver: nothing(),
        ..usvg::Options::default()
    };
    if has_text {
        // Only now: reading the machine's fonts takes longer than many a drawing.
        let fonts = system_fonts();
        warnings.push(if fonts.is_empty() {
            Warning::TextLost
        } else {
            Warning::LiveText
        });
        options.fontdb = Arc::new(fonts);
    }
    let tree = Tree::from_xmltree(&document, &options).map_err(|error| match error {
        usvg::Error::ElementsLimitReached => RenderError::TooLarge,
        usvg::Error::ParsingFailed(error) => refusal(error),
        _ => RenderError::Broken,
    })?;

    let (width, height) = whole_size(tree.size());
    let written = write(&tree, width, height)?;
    Ok(Rendered {
        media: Media::Svg,
        width,
        height,
        taken: None,
        warnings,
        pictures: vec![written, trial(&tree, width, height)?],
    })
}

fn refusal(error: roxmltree::Error) -> RenderError {
    use roxmltree::Error::{AttributesLimitReached, NamespacesLimitReached, NodesLimitReached};
    match error {
        NodesLimitReached | AttributesLimitReached | NamespacesLimitReached => {
            RenderError::TooLarge
        }
        _ => RenderError::Broken,
    }
}

/// usvg's own resolver reads files of this machine, and would pass on an embedded photograph with
/// all that its metadata tells. This one resolves nothing.
fn nothing() -> ImageHrefResolver<'static> {
    ImageHrefResolver {
        resolve_data: Box::new(|_, _, _| None),
        resolve_string: Box::new(|_, _| None),
    }
}

fn is_text(node: Node) -> bool {
    node.has_tag_name((SVG, "text"))
        && node
            .descendants()
            .any(|inner| inner.is_text() && inner.text().is_some_and(|t| !t.trim().is_empty()))
}

fn pictures_left_out(document: &Document) -> Vec<Warning> {
    let (mut linked, mut embedded) = (false, false);
    for node in document.descendants() {
        if !matches!(node.tag_name().name(), "image" | "feImage") {
            continue;
        }
        for href in node.attributes().filter(|a| a.name() == "href") {
            let href = href.value().trim_start();
            if href
                .get(..5)
                .is_some_and(|scheme| scheme.eq_ignore_ascii_case("data:"))
            {
                embedded = true;
            } else if !href.starts_with('#') {
                linked = true;
            }
        }
    }
    let mut warnings = Vec::new();
    warnings.extend(linked.then_some(Warning::LinkedPictures));
    warnings.extend(embedded.then_some(Warning::EmbeddedPictures));
    warnings
}

/// The machine's fonts, without those whose letters are pictures (they would put pictures into the
/// written SVG). Names that are missing here fall back to a plain face, rather than to nothing.
fn system_fonts() -> fontdb::Database {
    const PLAIN: [&str; 5] = [
        "Noto Sans",
        "DejaVu Sans",
        "Liberation Sans",
        "Arial",
        "Helvetica",
    ];
    let mut fonts = fontdb::Database::new();
    fonts.load_system_fonts();
    let of_pictures: Vec<_> = fonts
        .faces()
        .filter(|face| face.families.iter().any(|(name, _)| name.contains("Emoji")))
        .map(|face| face.id)
        .collect();
    for id in of_pictures {
        fonts.remove_face(id);
    }
    let has = |wanted: &str| {
        fonts
            .faces()
            .any(|face| face.families.iter().any(|(name, _)| name == wanted))
    };
    let plain = PLAIN
        .into_iter()
        .find(|name| has(name))
        .map(str::to_owned)
        .or_else(|| Some(fonts.faces().next()?.families.first()?.0.clone()));
    if let Some(plain) = plain {
        // usvg's last resort is the family called serif.
        fonts.set_serif_family(&plain);
        fonts.set_sans_serif_family(&plain);
        fonts.set_cursive_family(&plain);
        fonts.set_fantasy_family(&plain);
        fonts.set_monospace_family(plain);
    }
    fonts
}

fn whole_size(size: usvg::Size) -> (u32, u32) {
    let longer = size.width().max(size.height());
    let scale = (LEAST_SIDE / longer).max(1.0);
    // A float casts to the nearest number that there is: no side is too long.
    let whole = |side: f32| ((side * scale).round() as u32).max(1);
    (whole(size.width()), whole(size.height()))
}

fn write(tree: &Tree, width: u32, height: u32) -> Result<Picture, RenderError> {
    let size = tree.size();
    let options = WriteOptions {
        indent: Indent::None,
        ..WriteOptions::default()
    };
    let text = tree.to_string(&options);
    // usvg gives the size without a `viewBox`; with one the picture scales with its place.
    let own = format!(
        "<svg width=\"{}\" height=\"{}\"",
        size.width(),
        size.height()
    );
    let inner = text.strip_prefix(&own).ok_or_else(|| RenderError::Failed {
        why: "the SVG writer begins otherwise than known".to_owned(),
    })?;
    let text = format!(
        "<svg width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {} {}\"{inner}",
        size.width(),
        size.height()
    );
    if text.len() > MAX_TEXT {
        return Err(RenderError::TooLarge);
    }
    prove_clean(&text)?;
    Ok(Picture {
        media: Media::Svg,
        width,
        height,
        bytes: text.into_bytes(),
    })
}

/// Refuses a written SVG that holds anything but shapes, paint and filters that refer to each
/// other. usvg writes nothing else, but what it does is not ours to promise.
fn prove_clean(text: &str) -> Result<(), RenderError> {
    const ELEMENTS: [&str; 11] = [
        "svg",
        "defs",
        "g",
        "path",
        "linearGradient",
        "radialGradient",
        "stop",
        "pattern",
        "clipPath",
        "mask",
        "filter",
    ];
    // usvg does not escape an id. One that would need it is rare: refused rather than repaired.
    let document = Document::parse(text).map_err(|_| RenderError::Unsupported {
        what: "SVG with < or & in an id".to_owned(),
    })?;
    let clean = document.descendants().all(|node| {
        let name = node.tag_name();
        let known = name.namespace() == Some(SVG)
            && (ELEMENTS.contains(&name.name()) || name.name().starts_with("fe"));
        match node.node_type() {
            roxmltree::NodeType::Root => true,
            roxmltree::NodeType::Element => known && node.attributes().all(refers_within),
            roxmltree::NodeType::Text => node.text().is_none_or(|text| text.trim().is_empty()),
            _ => false,
        }
    });
    if clean {
        Ok(())
    } else {
        Err(RenderError::Broken)
    }
}

/// No event, and no reference but to an element of the same file.
fn refers_within(attribute: roxmltree::Attribute) -> bool {
    let (name, value) = (attribute.name(), attribute.value());
    if name == "id" {
        return true;
    }
    if name == "href" {
        return value.starts_with('#');
    }
    !name.starts_with("on")
        && value
            .match_indices("url(")
            .all(|(at, _)| value[at..].starts_with("url(#"))
}

fn trial(tree: &Tree, width: u32, height: u32) -> Result<Picture, RenderError> {
    let (width, height) = fit(width, height, TRIAL);
    let mut pixels = Pixmap::new(width, height).ok_or(RenderError::TooLarge)?;
    pixels.fill(Color::WHITE);
    let scale = Transform::from_scale(
        width as f32 / tree.size().width(),
        height as f32 / tree.size().height(),
    );
    resvg::render(tree, scale, &mut pixels.as_mut());
    // On white paper every pixel is opaque: its colour stands as it is.
    let rgb: Vec<u8> = pixels
        .pixels()
        .iter()
        .flat_map(|pixel| [pixel.red(), pixel.green(), pixel.blue()])
        .collect();
    webp(&rgb, width, height)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_shapes_that_refer_to_each_other_are_clean() {
        let svg = |inner: &str| {
            format!(
                "<svg xmlns=\"{SVG}\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">{inner}</svg>"
            )
        };
        assert!(prove_clean(&svg("<g id=\"a\"><path fill=\"url(#p)\"/></g>")).is_ok());
        for dirty in [
            "<script>1</script>",
            "<g onload=\"1\"/>",
            "<image xlink:href=\"data:image/png;base64,AA\"/>",
            "<feImage xlink:href=\"http://x/\"/>",
            "<path fill=\"url(#a) url(http://x/)\"/>",
            "<g xmlns=\"http://www.w3.org/1999/xhtml\"/>",
            "<g>words</g>",
            "<g id=\"<script/>\"/>",
            "&e;",
            "<!-- words -->",
        ] {
            assert!(prove_clean(&svg(dirty)).is_err(), "{dirty}");
        }
    }

    #[test]
    fn a_small_drawing_keeps_its_aspect_in_whole_numbers() {
        let size = |w, h| usvg::Size::from_wh(w, h).expect("positive");
        assert_eq!(whole_size(size(21.0, 29.7)), (707, 1000));
        assert_eq!(whole_size(size(1200.0, 800.0)), (1200, 800));
        assert_eq!(whole_size(size(1e9, 1e-9)), (1_000_000_000, 1));
    }
}
