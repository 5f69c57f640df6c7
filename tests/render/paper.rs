//! Prints of the three whole specs, looked at through poppler's tools: what a reader of the PDF
//! finds, not what the program meant.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::process::Command;

use fellseam::exchange::revision::{Accepted, Frozen};
use fellseam::exchange::translation::Translations;
use fellseam::language::terms_of;
use fellseam::print::paper::{Band, Enclosed, NoPrint, Order, Paper, Parcel, Part, Use};
use fellseam::spec::check::RULES;
use fellseam::spec::document::FORMAT;
use fellseam::spec::{Book, DecimalSign, Digest, Spec, StyleId, Time, grade};

use super::inputs::renderer;
use super::packs::{originals, spec};

/// Points of a PDF in a millimetre.
const MM: f64 = 72.0 / 25.4;

fn frozen(spec: Spec) -> Frozen {
    Frozen {
        format: FORMAT,
        style: StyleId::new("style"),
        number: 1,
        previous: None,
        published: Time::try_from("2026-05-04T09:30:00.000Z".to_owned()).unwrap(),
        reason: "The first one.".to_owned(),
        chart: grade(&spec).chart(&spec).expect("a whole spec"),
        accepted: Vec::new(),
        compositions: Vec::new(),
        decimal: DecimalSign::Point,
        files: spec.files(),
        rules: RULES,
        corrections: Vec::new(),
        translations: Translations::new(&spec, &BTreeMap::new(), terms_of(&spec, Book::shipped())),
        spec,
    }
}

fn parcel(pack: &str, languages: &[&str], parts: &[Part]) -> Parcel {
    let (document, digest) = frozen(spec(pack)).seal().unwrap();
    let files = originals(pack).into_iter().flat_map(|(name, bytes)| {
        let file = Digest::of(&bytes);
        let of = |as_what| Enclosed {
            file: file.clone(),
            as_what,
            name: name.clone(),
            media_type: "image/svg+xml".to_owned(),
            bytes: bytes.clone(),
        };
        [of(Use::Picture), of(Use::Original)]
    });
    Parcel {
        order: Order {
            languages: languages.iter().map(|it| (*it).to_owned()).collect(),
            paper: Paper::A4,
            parts: parts.to_vec(),
            band: None,
            factory: "Sao Mai Garment".to_owned(),
            printed: "2026-05-05T07:08:00.000Z".to_owned(),
            address: "https://specs.example.org/p/a-word-that-nobody-guesses".to_owned(),
            digest: Some(digest),
        },
        document,
        before: Vec::new(),
        files: files.collect(),
        left_out: Vec::new(),
        beside: Translations::default(),
    }
}

async fn printed(parcel: &Parcel, folder: &Path) -> String {
    let pdf = renderer().paper(&parcel.pack()).await.expect("an answer");
    let path = folder.join("print.pdf");
    std::fs::write(&path, pdf.unwrap_or_else(|why| panic!("{why}"))).unwrap();
    path.to_string_lossy().into_owned()
}

/// What one of poppler's tools says.
fn tool(name: &str, arguments: &[&str]) -> String {
    let run = Command::new(name).args(arguments).output();
    let run = run.unwrap_or_else(|why| panic!("{name} (poppler-utils): {why}"));
    assert!(run.status.success(), "{name}: {run:?}");
    String::from_utf8_lossy(&run.stdout).into_owned()
}

/// The straight upright or level lines of a page in millimetres, by their ends.
fn lines(pdf: &str, page: usize) -> Vec<[f64; 4]> {
    let page = page.to_string();
    let svg = tool(
        "pdftocairo",
        &["-svg", "-noshrink", "-f", &page, "-l", &page, pdf, "-"],
    );
    let mut found = Vec::new();
    for path in svg.split("<path ").skip(1) {
        let attribute = |name: &str| {
            let at = path.find(&format!("{name}=\""))? + name.len() + 2;
            path[at..].split('"').next()
        };
        let Some(data) = attribute(" d").or_else(|| attribute("d")) else {
            continue;
        };
        let numbers: Vec<f64> = data
            .split(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-'))
            .filter_map(|it| it.parse().ok())
            .collect();
        let [x1, y1, x2, y2] = numbers[..] else {
            continue;
        };
        let matrix: Vec<f64> = attribute("transform")
            .unwrap_or("matrix(1,0,0,1,0,0)")
            .trim_start_matches("matrix(")
            .trim_end_matches(')')
            .split(',')
            .filter_map(|it| it.trim().parse().ok())
            .collect();
        let [a, b, c, d, e, f] = matrix[..] else {
            continue;
        };
        let to = |x: f64, y: f64| ((a * x + c * y + e) / MM, (b * x + d * y + f) / MM);
        let (from, to) = (to(x1, y1), to(x2, y2));
        found.push([from.0, from.1, to.0, to.1]);
    }
    found
}

#[tokio::test]
async fn the_ruler_measures_100_mm_and_its_marks_stand_a_millimetre_apart() {
    let folder = tempfile::tempdir().unwrap();
    for paper in Paper::ALL {
        let mut parcel = parcel("half-zip", &["en"], &[Part::Artwork]);
        parcel.order.paper = paper;
        let pdf = printed(&parcel, folder.path()).await;
        let lines = lines(&pdf, 1);
        let near = |a: f64, b: f64| (a - b).abs() <= 0.1;
        let long = lines
            .iter()
            .filter(|[x1, y1, x2, y2]| near(*y1, *y2) && near((x2 - x1).abs(), 100.0));
        let [x, y, ..] = *long.clone().next().expect("a line of 100 mm");
        let marks = lines.iter().filter(|[x1, y1, x2, y2]| {
            near(*x1, *x2) && near(y1.max(*y2), y) && (1.0..5.0).contains(&(y1 - y2).abs())
        });
        let mut marks: Vec<f64> = marks.map(|it| it[0] - x).collect();
        marks.sort_by(f64::total_cmp);
        assert_eq!(marks.len(), 101, "{paper:?}");
        for (at, mark) in marks.iter().enumerate() {
            assert!(near(*mark, at as f64), "{paper:?}: {mark} at {at}");
        }
    }
}

#[tokio::test]
async fn a_print_says_on_every_page_what_it_is() {
    let folder = tempfile::tempdir().unwrap();
    let mut parcel = parcel("trail-shorts", &["en", "zh-Hans"], &Part::ALL);
    parcel.order.band = Some(Band::Superseded(2));
    let pdf = printed(&parcel, folder.path()).await;
    let text = tool("pdftotext", &["-layout", &pdf, "-"]);
    let pages: Vec<&str> = text
        .split('\u{c}')
        .filter(|it| !it.trim().is_empty())
        .collect();
    let about = tool("pdfinfo", &[&pdf]);
    let fact = |name: &str| {
        let line = about.lines().find_map(|line| line.strip_prefix(name));
        line.unwrap_or_default().trim().to_owned()
    };
    assert_eq!(fact("Pages:"), pages.len().to_string());
    assert_eq!(fact("Tagged:"), "yes");
    assert!(pages.len() > 7, "{}", pages.len());
    let spec = spec("trail-shorts");
    let fingerprint = parcel.order.digest.as_ref().unwrap().fingerprint();
    let all = pages.len();
    for (page, number) in pages.iter().zip(1..) {
        for said in [
            spec.header.number.as_str(),
            fingerprint.as_str(),
            "2026-05-04",
            "2026-05-05 07:08 UTC",
            "Sao Mai Garment",
            "SUPERSEDED by revision 2",
            &format!("{number} / {all}"),
        ] {
            assert!(page.contains(said), "page {number} lacks {said:?}:\n{page}");
        }
    }
    // The drawings stay lines.
    let pictures = tool("pdfimages", &["-list", &pdf]);
    assert_eq!(pictures.lines().count(), 2, "{pictures}");
}

#[tokio::test]
async fn the_document_and_the_originals_are_attached_byte_for_byte() {
    let folder = tempfile::tempdir().unwrap();
    let parcel = parcel("rain-jacket", &["en", "vi"], &[Part::Artwork]);
    let pdf = printed(&parcel, folder.path()).await;
    let out = folder.path().join("attached");
    std::fs::create_dir(&out).unwrap();
    tool(
        "pdfdetach",
        &["-saveall", "-o", &out.to_string_lossy(), &pdf],
    );
    let files = std::fs::read_dir(&out)
        .unwrap()
        .map(|it| it.unwrap().path());
    let mut found: BTreeMap<String, Vec<u8>> = files
        .map(|path| {
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            (name, std::fs::read(&path).unwrap())
        })
        .collect();
    let document = found.extract_if(.., |name, _| name.ends_with(".json"));
    let document: Vec<Vec<u8>> = document.map(|(_, bytes)| bytes).collect();
    assert_eq!(document, [parcel.document]);
    assert_eq!(found, originals("rain-jacket"));
    let about = tool("pdfinfo", &["-meta", &pdf]);
    assert!(about.contains("<pdfaid:part>3</pdfaid:part>"), "{about}");
}

#[tokio::test]
async fn one_sheet_alone_is_printed_in_any_language() {
    let folder = tempfile::tempdir().unwrap();
    for (language, title) in [
        ("bn", "সেলাই"),
        ("hi", "सिलाई"),
        ("tr", "Dikim"),
        ("pt-BR", "Costura"),
        ("es", "Costura"),
    ] {
        let parcel = parcel("half-zip", &[language], &[Part::Sewing]);
        let pdf = printed(&parcel, folder.path()).await;
        let fonts = tool("pdffonts", &[&pdf]);
        // All of them are in the file.
        assert!(
            fonts.lines().skip(2).all(|it| it.contains(" yes yes")),
            "{fonts}"
        );
        if language != "bn" && language != "hi" {
            // Indic letters come out of a PDF in the order in which they are drawn.
            let text = tool("pdftotext", &[&pdf, "-"]);
            assert!(text.contains(title), "{language}:\n{text}");
        }
    }
}

#[tokio::test]
async fn a_letter_that_no_font_has_fails_the_print() {
    let mut shorts = spec("trail-shorts");
    // A letter for private use: no font of these has it.
    shorts.header.name.push('\u{e0ff}');
    let (document, digest) = frozen(shorts).seal().unwrap();
    let mut parcel = parcel("trail-shorts", &["en"], &[Part::Labels]);
    parcel.document = document;
    parcel.order.digest = Some(digest);
    let answer = renderer().paper(&parcel.pack()).await.unwrap();
    let refusal: NoPrint = serde_json::from_str(&answer.unwrap_err()).unwrap();
    assert_eq!(
        refusal,
        NoPrint::NoFont {
            letters: "\u{e0ff}".to_owned(),
            packages: String::new(),
        }
    );
}

#[tokio::test]
async fn a_print_says_which_warnings_were_accepted_and_which_originals_it_lacks() {
    let folder = tempfile::tempdir().unwrap();
    let mut shorts = frozen(spec("trail-shorts"));
    shorts.accepted.push(Accepted {
        code: "point-unkeyed".to_owned(),
        item: None,
        reason: "As the sealed sample shows.".to_owned(),
    });
    let (document, digest) = shorts.seal().unwrap();
    let mut parcel = parcel("trail-shorts", &["en"], &[Part::Identity]);
    parcel.document = document;
    parcel.order.digest = Some(digest);
    parcel.left_out = vec!["front-view.psd".to_owned()];
    let pdf = printed(&parcel, folder.path()).await;
    let text = tool("pdftotext", &["-layout", &pdf, "-"]);
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for said in [
        "Warnings that the brand accepted",
        "point-unkeyed Reason: As the sealed sample shows.",
        "Not attached, since the originals together are larger than 48 MB: front-view.psd.",
    ] {
        assert!(text.contains(said), "{said}: {text}");
    }
}

/// Units, codes of standards and formats: the same in every language.
const SAME: &[&str] = &[
    "UTC", "ISO", "cm", "mm", "in", "UTC", "tex", "RRGGBB", "XS", "XL", "CIE", "Lab", "D65", "A4",
];

/// What a brand wrote: texts, and not the words of the document's fixed sets, which look like
/// `knitted_fabric`.
fn written(value: &serde_json::Value, words: &mut BTreeSet<String>) {
    use serde_json::Value;

    match value {
        Value::String(text) => {
            let fixed = text
                .bytes()
                .all(|it| it.is_ascii_lowercase() || b"_0123456789".contains(&it));
            if !fixed || text.starts_with(char::is_numeric) {
                words.extend(latin(text).map(str::to_owned));
            }
        }
        Value::Array(values) => values.iter().for_each(|it| written(it, words)),
        Value::Object(members) => members.values().for_each(|it| written(it, words)),
        _ => {}
    }
}

/// The words in plain Latin letters.
fn latin(text: &str) -> impl Iterator<Item = &str> {
    let words = text.split(|letter: char| !letter.is_alphanumeric());
    words.filter(|word| word.len() > 1 && word.bytes().all(|it| it.is_ascii_alphabetic()))
}

/// In the language of which every letter is another one, what is left in plain letters is the brand's
/// or nobody's text.
#[tokio::test]
async fn no_sheet_says_what_no_file_of_texts_holds() {
    let folder = tempfile::tempdir().unwrap();
    for pack in ["half-zip", "rain-jacket", "trail-shorts"] {
        let parcel = parcel(pack, &["en-XA"], &Part::ALL);
        let pdf = printed(&parcel, folder.path()).await;
        let text = tool("pdftotext", &["-raw", &pdf, "-"]);
        let mut known: BTreeSet<String> = SAME.iter().map(|it| (*it).to_owned()).collect();
        // Words of a brand that look like those of a fixed set come last.
        known.extend(latin("The first one. Sao Mai Garment. slider").map(str::to_owned));
        let spec = spec(pack);
        // Labels say in which language they are by its tag.
        known.extend(spec.header.languages.iter().cloned());
        let document = serde_json::to_value(spec).expect("JSON");
        written(&document, &mut known);
        let foreign: BTreeSet<&str> = latin(&text).filter(|it| !known.contains(*it)).collect();
        assert!(foreign.is_empty(), "{pack}: {foreign:?}");
        assert!(
            text.contains("ŠÎÎžéé") || text.contains("Šîîžéé"),
            "it is in that language"
        );
    }
}

#[tokio::test]
async fn a_draft_has_beside_its_words_what_a_revision_would_freeze() {
    let folder = tempfile::tempdir().unwrap();
    let mut parcel = parcel("trail-shorts", &["en", "vi"], &[Part::Pattern]);
    let spec = spec("trail-shorts");
    parcel.order.digest = None;
    parcel.order.band = Some(Band::Draft);
    parcel.document = serde_json::to_vec(&spec).unwrap();
    let name = spec.points.points[0].name.clone();
    let own = BTreeMap::from([(
        "vi".to_owned(),
        BTreeMap::from([(name, "Eo của hãng".to_owned())]),
    )]);
    parcel.beside = Translations::new(&spec, &own, terms_of(&spec, Book::shipped()));
    let pdf = printed(&parcel, folder.path()).await;
    let text = tool("pdftotext", &["-layout", &pdf, "-"]);
    assert!(text.contains("= Eo của hãng"), "{text}");
    assert!(text.contains("≈ Giàng trong"), "{text}");
}
