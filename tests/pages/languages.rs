//! What a factory reads in another language: every page that can be reached, and nothing on it that
//! is not in that language, but names, codes and what the brand wrote.

use std::collections::{BTreeMap, BTreeSet, VecDeque};

use axum::http::StatusCode;
use fellseam::exchange::approval::Verdict;
use fellseam::exchange::inspection::{Class, Decision};
use fellseam::exchange::round::{Kind, Materials, Outcome};
use fellseam::language::Language;
use fellseam::spec::SealId;
use fellseam::spec::document::Illuminant;
use scraper::{ElementRef, Html, Node};
use serde_json::Value;

use crate::pages::{Browser, Page, Site};
use crate::support::cast::{approved_round, lab, measured_round, set_base, small_lot};
use crate::support::database::on_both;

/// What is the same in every language: formats of files, units, codes of standards.
const SAME: &[&str] = &[
    "UTC", "HTTPS", "JSON", "JPEG", "PNG", "WebP", "SVG", "PDF", "XLSX", "ZIP", "CSV", "ISO", "cm",
    "mm", "inch", "in", "oz", "yd", "kg", "tex", "dtex", "den", "TOP", "PP", "CMC", "proto",
    "size", "fit", "AQL", "MIL", "STD", "II", "III",
];

/// Common small words of English, none of which is a word of another of the languages.
const ENGLISH: &[&str] = &[
    "the", "is", "are", "of", "and", "with", "this", "that", "not", "you", "your", "from", "which",
    "was", "has", "have", "what",
];

/// Attributes that are shown or read aloud.
const SPOKEN: &[&str] = &[
    "aria-label",
    "alt",
    "title",
    "placeholder",
    "data-label",
    "data-title",
];

/// A style with two revisions, every sort of thread, options that were submitted, a sealed sample
/// and lots inspected against it, a decided and an open sample round.
async fn busy(site: &Site) {
    let (brand, factory) = (&site.cast.brand, &site.cast.sao_mai);
    // A sealed sample, and one that much keeps from being sealed.
    let seal = site.cast.signed_seal().await;
    inspects(site, &seal).await;
    approved_round(brand, factory, Kind::PreProduction, Materials::Substitute).await;
    factory.acknowledges(1).await.unwrap();
    let question = factory.asks("point-a", "Rib?").await.unwrap();
    brand.says(&question, "Rib 2x2").await.unwrap();
    factory.suggests("part-1", "Softer?").await.unwrap();
    factory
        .asks_concession("callout-1", "Wider?")
        .await
        .unwrap();
    let things = factory.to_approve().await;
    let (read, unlike) = (lab("20", Illuminant::D65), lab("20", Illuminant::A));
    for (thing, reading) in [
        (0, Some(&read)),
        (0, Some(&unlike)),
        (1, Some(&read)),
        (2, None),
    ] {
        let photo = factory.photographs(&format!("option {thing}")).await;
        let option = factory
            .submits_with(&things[thing], "Softer?", reading, &[photo])
            .await
            .unwrap();
        let verdict = match thing {
            0 => Verdict::Approved,
            1 => Verdict::Rejected,
            _ => continue,
        };
        brand.judges(&option, verdict, "Once more").await.unwrap();
    }
    let typed = [(1, "point-c", "27 1/2")];
    let round = measured_round(brand, factory, &["size-m"], &typed).await;
    brand
        .decides(&round, Outcome::Remake, "Once more", &[])
        .await
        .unwrap();
    brand.edits(|spec| set_base(spec, "point-c", "28")).await;
    brand.publishes("Longer body").await.unwrap();
    let round = brand
        .requests(factory, &["size-m", "size-l"])
        .await
        .unwrap();
    factory.starts(&round).await.unwrap();
    factory
        .measures(&round, &[(1, "point-c", "31")])
        .await
        .unwrap();
    brand
        .insists(factory, "material-zip", "Longer")
        .await
        .unwrap();
}

/// A lot that is being inspected, with a corrected piece; one that was accepted, one that was sent
/// back, one that was not taken.
async fn inspects(site: &Site, seal: &SealId) {
    let (brand, linh) = (&site.cast.brand, &site.cast.sao_mai.lead);
    let (style, lot) = (&brand.style, small_lot());
    let seen = [
        (Class::Major, "point-c", "Softer?"),
        (Class::Critical, "", "Rib?"),
    ];
    let decisions = [None, None, Some(Decision::Rework), Some(Decision::Refused)];
    for (place, decision) in decisions.into_iter().enumerate() {
        let id = linh.begins(style, seal, &lot, None).await.unwrap();
        for piece in 1..=5 {
            linh.enters(style, &id, piece, &[], &[]).await.unwrap();
        }
        if place == 1 {
            linh.concludes(style, &id).await.unwrap();
            continue;
        }
        let measured = [("point-a", "22"), ("point-c", "28")];
        linh.enters(style, &id, 2, &seen, &measured).await.unwrap();
        if let Some(decision) = decision {
            linh.concludes(style, &id).await.unwrap();
            brand.decides_lot(&id, decision, "Once more").await.unwrap();
        }
    }
}

/// One item of every sort is enough, of the sentences to fill in one of every sort of slot, and of
/// inspected pieces one that was corrected.
fn is_wanted(href: &str) -> bool {
    let file = [
        "/files/",
        "/sheets/",
        "/document",
        "/archive",
        "/record/file",
        "/static/",
    ];
    let of_item = href.split_once("/items/").map(|(_, rest)| {
        let item = rest.split(['/', '?']).next().unwrap_or_default();
        let wanted = [
            "point-c",
            "part-1",
            "callout-1",
            "material-zip",
            "artwork-wave",
            "label-care",
            "drawing-front",
            "size-m",
            "line-neck",
        ];
        wanted.contains(&item) && (!rest.contains("/ready") || item == "point-c")
    });
    let phrase = href.split_once("?phrase=").map(|(list, phrase)| {
        let wanted = [
            "measured-says",
            "material-arrives",
            "date-closed",
            "ask-order",
        ];
        list.contains("/items/") && wanted.contains(&phrase)
    });
    let piece = !href.contains("/piece?") || href.ends_with("/piece?number=2");
    href.starts_with('/')
        && piece
        && !file.iter().any(|it| href.contains(it))
        && of_item.unwrap_or(true)
        && phrase.unwrap_or(true)
}

/// Every page that links lead to from the first one, in this language.
async fn reaches(browser: &mut Browser, language: Language) -> BTreeMap<String, Page> {
    let form = browser.visits("/me").await.form("/me");
    browser.sends(form.set("language", language.tag())).await;
    let mut waiting: VecDeque<String> = ["/", "/me", "/people", "/code", "/nowhere"]
        .map(str::to_owned)
        .into();
    let mut pages: BTreeMap<String, Page> = BTreeMap::new();
    while let Some(path) = waiting.pop_front() {
        if pages.contains_key(&path) {
            continue;
        }
        let page = browser.opens(&path).await;
        for href in page.attributes("a[href]", "href") {
            let href = href.split('#').next().unwrap_or_default().to_owned();
            if is_wanted(&href) {
                waiting.push_back(href);
            }
        }
        pages.insert(path, page);
    }
    pages
}

/// What a reader sees or hears of it in the page's own language, piece by piece.
fn shown(page: &Page, language: Language) -> Vec<String> {
    let html = Html::parse_document(&page.text());
    let root = html.root_element();
    assert_eq!(root.value().attr("lang"), Some(language.tag()));
    let mut pieces = Vec::new();
    collect(root, language, &mut pieces);
    pieces
}

fn collect(element: ElementRef<'_>, language: Language, pieces: &mut Vec<String>) {
    let value = element.value();
    let other = value
        .attr("lang")
        .is_some_and(|lang| lang != language.tag());
    // What people have written keeps their words, what a person types is theirs, and a fingerprint
    // may look like a word.
    let typed = ["script", "style", "textarea"].contains(&value.name());
    if other
        || typed
        || value.attr("class").is_some_and(|it| {
            it.split(' ')
                .any(|it| ["said", "fingerprint", "hash"].contains(&it))
        })
    {
        return;
    }
    for name in SPOKEN {
        pieces.extend(value.attr(name).map(str::to_owned));
    }
    for child in element.children() {
        match child.value() {
            Node::Text(text) => pieces.push(text.text.to_string()),
            Node::Element(_) => {
                let child = ElementRef::wrap(child).expect("an element");
                collect(child, language, pieces);
            }
            _ => {}
        }
    }
}

/// Everything that the brand wrote into its revisions, and the names of people, houses, files and
/// languages.
async fn written(browser: &mut Browser, site: &Site) -> Vec<String> {
    let names = [
        "Fellseam",
        "half-zip-front.svg",
        "Harrow & Tide",
        "Sao Mai Garment",
        "Linh",
        "Hoa",
        "Nell",
        "Iris",
        "Oscar",
        "First issue",
        "Longer body",
        "Once more",
        "Zip from stock, matt",
        "Kestrel Post 1182",
        "Rib?",
        "Rib 2x2",
        "Softer?",
        "Wider?",
        "Longer",
        "Bay 300, sphere",
    ];
    let mut all: BTreeSet<String> = names.map(str::to_owned).into();
    all.extend(Language::ALL.iter().map(|it| it.own_name().to_owned()));
    for number in [1, 2] {
        let path = format!("{}/revisions/{number}/document", site.style);
        let document = browser.visits(&path).await;
        document.must_be(StatusCode::OK);
        texts(
            &serde_json::from_slice(&document.bytes).expect("JSON"),
            &mut all,
        );
    }
    let mut all: Vec<String> = all.into_iter().filter(|text| text.len() > 1).collect();
    // A short text may be a part of a longer one.
    all.sort_by_key(|text| std::cmp::Reverse(text.len()));
    all
}

fn texts(value: &Value, all: &mut BTreeSet<String>) {
    match value {
        Value::String(text) => {
            all.insert(text.clone());
        }
        Value::Array(values) => values.iter().for_each(|it| texts(it, all)),
        Value::Object(members) => members.values().for_each(|it| texts(it, all)),
        _ => {}
    }
}

/// The words in Latin letters without marks, but those that are the same everywhere.
fn latin(piece: &str) -> Vec<&str> {
    let words = piece.split(|letter: char| !letter.is_alphanumeric());
    words
        .filter(|word| word.len() > 1 && word.bytes().all(|letter| letter.is_ascii_alphabetic()))
        .filter(|word| !SAME.contains(word))
        .collect()
}

/// The piece without what people wrote; `written` has the longest first.
fn without(piece: &str, written: &[String]) -> String {
    let mut rest = piece.split_whitespace().collect::<Vec<_>>().join(" ");
    for text in written {
        if rest.contains(text.as_str()) {
            rest = rest.replace(text.as_str(), " ");
        }
    }
    rest
}

/// The pieces of every page that hold a word for which `wrong` is true.
async fn complaints(
    browser: &mut Browser,
    language: Language,
    written: &[String],
    wrong: impl Fn(&str) -> bool,
) -> Vec<String> {
    let pages = reaches(browser, language).await;
    let mut complaints = BTreeSet::new();
    for (path, page) in &pages {
        for piece in shown(page, language) {
            // Most pieces have none, and are not looked at further.
            let suspect = latin(&piece).iter().any(|word| wrong(word));
            let rest = suspect.then(|| without(&piece, written));
            if rest.is_some_and(|rest| latin(&rest).iter().any(|word| wrong(word))) {
                let piece = piece.split_whitespace().collect::<Vec<_>>().join(" ");
                complaints.insert(format!("{path}: {piece}"));
            }
        }
    }
    // A style, two revisions with an item of each sort, their changes, rounds, the ledger ...
    assert!(pages.len() > 30, "only {} pages", pages.len());
    complaints.into_iter().collect()
}

on_both! {
    async fn no_page_of_a_factory_says_what_no_file_of_texts_holds(db) {
        let site = Site::with_revision(db).await;
        busy(&site).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let written = written(&mut linh, &site).await;
        let found = complaints(&mut linh, Language::Pseudo, &written, |_| true).await;
        assert!(found.is_empty(), "{} pieces:\n{}", found.len(), found.join("\n"));
    }
}

on_both! {
    async fn in_a_script_of_its_own_every_latin_word_is_a_name_a_code_or_the_brands(db) {
        let site = Site::with_revision(db).await;
        busy(&site).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let written = written(&mut linh, &site).await;
        for language in [Language::Chinese, Language::Bengali, Language::Hindi] {
            // A term stands beside the English words that it explains.
            let found = complaints(&mut linh, language, &written, |_| true).await;
            let found: Vec<_> = found.iter().filter(|it| !it.contains('≈')).collect();
            assert!(found.is_empty(), "{}: {found:#?}", language.tag());
        }
    }
}

on_both! {
    async fn in_latin_letters_no_english_is_left_either(db) {
        let site = Site::with_revision(db).await;
        busy(&site).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let written = written(&mut linh, &site).await;
        for language in [Language::Vietnamese, Language::Turkish, Language::Portuguese, Language::Spanish] {
            let english = |word: &str| ENGLISH.contains(&word.to_lowercase().as_str());
            let found = complaints(&mut linh, language, &written, english).await;
            assert!(found.is_empty(), "{}: {found:#?}", language.tag());
        }
    }
}

on_both! {
    async fn the_brands_word_stays_and_the_programs_stands_beside_it(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let revision = format!("{}/revisions/1", site.style);
        let page = linh.visits(&revision).await;
        assert!(page.all(".term").is_empty(), "who reads English needs none");

        let form = linh.visits("/me").await.form("/me").set("language", "vi");
        linh.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let page = linh.visits(&revision).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.attributes("html", "lang"), ["vi"]);
        let terms = page.all("#chart .term");
        assert!(terms.contains(&"≈ Dài tay".to_owned()), "{terms:?}");
        page.must_see("Sleeve length");
        page.must_see("Lời của nhãn hàng mới là chuẩn.");
        // Measurements look the same in every language.
        page.must_see("27 7/8");
    }
}

on_both! {
    async fn only_a_language_that_is_not_checked_is_said_to_be_so(db) {
        let site = Site::new(db).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        for path in ["/people", "/me"] {
            let page = nell.visits(path).await;
            page.must_see("not yet checked by a native speaker: 简体中文, Tiếng Việt");
            assert!(!page.sees("speaker: English"));
        }
        let mut iris = site.browser(&site.cast.brand.lead).await;
        assert!(!iris.visits("/me").await.sees("native speaker"), "an owner's matter");
    }
}
