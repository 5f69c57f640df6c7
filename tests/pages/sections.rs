//! Every section of a complete spec stands on the page of its revision, with all that it says.

use std::collections::{BTreeMap, BTreeSet};

use axum::http::StatusCode;
use fellseam::exchange::refused::FindingKey;
use fellseam::language::{Language, shown};
use fellseam::spec::check::check;
use fellseam::spec::document::*;
use fellseam::spec::{Decimal, DecimalSign, Digest, Item, Section, Spec, StyleId, Unit, grade};
use fellseam::store::{FileKind, NewFile, NewPicture};

use crate::pages::{Page, Site};
use crate::support::cast::{Cast, inches, item};
use crate::support::database::on_both;
use crate::support::packs;
use crate::support::past::Past;

/// The spec as a style of its own, published with a reason for every warning and shared with Sao
/// Mai Garment.
async fn publishes(cast: &Cast, spec: &Spec, files: &[(String, Vec<u8>)]) -> StyleId {
    let lead = &cast.brand.lead;
    let style = cast.store.create_style(&lead.may(), spec).await.unwrap();
    for (name, bytes) in files {
        let digest = Digest::of(bytes);
        let picture = NewPicture {
            width: 800,
            height: 800,
            media_type: "image/svg+xml".to_owned(),
            digest: digest.clone(),
        };
        let file = NewFile {
            digest: &digest,
            kind: FileKind::Drawing,
            media_type: "image/svg+xml",
            name,
            size: bytes.len(),
            width: 800,
            height: 800,
            taken: None,
            pictures: &[picture],
        };
        let permit = lead.on(&style).await;
        cast.store.add_drawing(&permit, file).await.unwrap();
    }
    let warnings = check(spec, &grade(spec)).into_iter();
    let accepted: BTreeMap<FindingKey, String> = warnings
        .map(|finding| (FindingKey::of(&finding), "As agreed.".to_owned()))
        .collect();
    let brand = cast.brand.on(&style);
    brand
        .publishes_accepting("First issue", &accepted)
        .await
        .unwrap();
    brand.shares_with(&cast.sao_mai.on(&style)).await.unwrap();
    style
}

async fn reads(site: &Site, style: &StyleId) -> Page {
    let mut linh = site.browser(&site.cast.sao_mai.lead).await;
    let page = linh.visits(&format!("/styles/{style}/revisions/1")).await;
    page.must_be(StatusCode::OK);
    page
}

/// Where on the page a section stands.
fn places(section: Section) -> &'static str {
    match section {
        Section::Header => "h1, #identity, .exemption",
        Section::Sizes => "#sizes",
        Section::Drawings => "#drawings",
        Section::Points => "#chart, #how",
        Section::Colourways => "#colourways",
        Section::Materials => "#materials",
        Section::Construction => "#construction",
        Section::Artwork => "#artwork",
        Section::Labels => "#labels",
        Section::Packing => "#packing",
    }
}

/// Every single value of a field as its section shows it. The page writes some in its own way:
/// those have tests of their own, or are in the chart.
fn singles(spec: &Spec, field: &str, value: &Value, to: &mut BTreeSet<String>) {
    let t = Language::English.text();
    let all = |values: &mut dyn Iterator<Item = (&str, &Value)>, to: &mut BTreeSet<String>| {
        for (name, value) in values {
            singles(spec, name, value, to);
        }
    };
    match value {
        Value::Text(text) => {
            to.insert(text.clone());
        }
        Value::Decimal(number) => {
            to.insert(shown(number.show(DecimalSign::Point)));
        }
        // The tolerances are in the chart.
        Value::Length(_) if matches!(field, "minus" | "plus" | "lengths") => {}
        Value::Length(length) if matches!(field, "from" | "to") => {
            to.insert(length.exact(DecimalSign::Point));
        }
        Value::Length(length) if matches!(field, "band width" | "band height") => {
            to.insert(length.nm.exact(Unit::Mm, DecimalSign::Point));
        }
        Value::Length(_) => {
            let words = t.words(spec, DecimalSign::Point);
            to.insert(words.value(value, Some(field)));
        }
        Value::Number(number) if field != "from" && field != "to" => {
            to.insert(number.to_string());
        }
        Value::Word { .. } => {
            let word = t.words(spec, DecimalSign::Point).value(value, None);
            to.insert(word);
        }
        Value::Item(id) => {
            let item = spec.item(id).expect("it names what is there");
            let known = [item.letter(), item.name()];
            to.extend(
                known
                    .into_iter()
                    .find(|it| !it.is_empty())
                    .map(str::to_owned),
            );
        }
        Value::List(values) => all(&mut values.iter().map(|it| (field, it)), to),
        Value::ByItem(values) => all(&mut values.values().map(|it| (field, it)), to),
        Value::Group(values) => {
            let name = |name: &'static str| match (field, name) {
                ("bands", "width") => "band width",
                ("bands", "height") => "band height",
                _ => name,
            };
            all(&mut values.iter().map(|(it, value)| (name(it), value)), to);
        }
        _ => {}
    }
}

/// What a section says and its part of the page does not.
fn missing(spec: &Spec, page: &Page, section: Section) -> Vec<String> {
    let text = page.all(places(section)).join(" ").to_lowercase();
    let own = [(spec.fields(section), None)];
    let items = spec.items().filter(|item| item.section() == section);
    let items = items.map(|item| (item.fields(), Some(item)));
    let mut wanted = BTreeSet::new();
    for (fields, item) in own.into_iter().chain(items) {
        for (name, value) in &fields {
            // A view that has a title goes by it; lines and circles are drawn.
            let drawn = matches!(item, Some(Item::Drawing(_))) && name != "title";
            // The values are graded, rounded and shown in the chart.
            let graded = matches!(item, Some(Item::Point(_)))
                && matches!(name.as_ref(), "base" | "stretched_min" | "step" | "measure");
            if !drawn && !graded && !matches!(name.as_ref(), "unit" | "consumption.unit") {
                singles(spec, name, value, &mut wanted);
            }
        }
    }
    let squeezed = |it: &String| it.split_whitespace().collect::<Vec<_>>().join(" ");
    let wanted = wanted.iter().map(squeezed);
    wanted
        .filter(|it| !text.contains(&it.to_lowercase()))
        .collect()
}

on_both! {
    async fn every_section_of_a_complete_pack_is_on_the_page_whole(db) {
        let cast = Cast::new(db).await;
        let mut styles = Vec::new();
        for pack in packs::PACKS {
            let mut spec = packs::spec(pack);
            spec.header.number = format!("HT-9 {pack}");
            let files: Vec<_> = packs::originals(pack).into_iter().collect();
            styles.push((publishes(&cast, &spec, &files).await, spec, files));
        }
        let site = Site::of(cast, "http://127.0.0.1:8640", true).await;
        for (style, spec, files) in &styles {
            for (_, bytes) in files {
                site.files.put(bytes.clone()).await.unwrap();
            }
            let page = reads(&site, style).await;
            for section in Section::ALL.iter().copied() {
                let missing = missing(spec, &page, section);
                assert!(missing.is_empty(), "{}: {section:?}: {missing:#?}", spec.header.number);
            }
            // Every item has its place, and leads to its own page.
            for it in spec.items().filter(|it| !matches!(it, Item::Marker(_) | Item::DimensionLine(_) | Item::BlowUp(_))) {
                let href = format!("/styles/{style}/revisions/1/items/{}\"", it.id());
                assert!(page.text().contains(&href), "{it:?}");
            }
            // The factory gets every file that the document names.
            let mut linh = site.browser(&site.cast.sao_mai.lead).await;
            for (name, bytes) in files {
                let path = format!("/styles/{style}/files/{}", Digest::of(bytes));
                assert!(page.text().contains(&path), "{name}");
                assert_eq!(linh.visits(&path).await.bytes, *bytes, "{name}");
            }
            assert!(!page.text().contains("style=\""));
        }
    }
}

/// The example with what only some specs have.
fn with_rare_things(files: &[(String, Vec<u8>)]) -> Spec {
    let digest = |at: usize| Digest::of(&files[at].1);
    let mut spec = fellseam::spec::example::half_zip(digest(0));
    spec.header.number = "HT-208".to_owned();
    spec.header.exemptions = vec![Exemption {
        code: "CHILD-CORD-HOOD".to_owned(),
        reason: "The cord is sewn in at both ends.".to_owned(),
        by: "Nell, owner".to_owned(),
    }];
    spec.sizes.lengths = ["short", "long"]
        .map(|code| LengthOption {
            id: item(&format!("length-{code}")),
            code: code.to_owned(),
            ..LengthOption::default()
        })
        .into();
    let body = &mut spec.points.points[2];
    body.lengths.insert(item("length-short"), inches("-1"));
    body.lengths.insert(item("length-long"), inches("1 1/2"));
    body.pair_limit = Some(inches("1/4"));
    body.stretched_min = Some(inches("30"));
    let mut detail = spec.drawings.drawings[0].clone();
    detail.id = item("drawing-collar");
    detail.view = View::Detail;
    detail.title = "Collar".to_owned();
    detail.file = digest(1);
    for marker in &mut detail.markers {
        marker.id = item(&format!("{}-larger", marker.id));
    }
    let front = &mut spec.drawings.drawings[0];
    front.blow_ups.push(BlowUp {
        id: item("circle-collar"),
        drawing: item("drawing-collar"),
        at: Spot { x: 5000, y: 1000 },
        radius: 800,
    });
    front.lines.push(DimensionLine {
        id: item("dimension-a"),
        item: item("point-a"),
        from: Spot { x: 2000, y: 4000 },
        to: Spot { x: 8000, y: 4000 },
        via: Some(Spot { x: 5000, y: 5000 }),
    });
    spec.drawings.drawings.push(detail);
    spec.colourways.colourways[0].pieces = Some(1200);
    let ink = spec
        .colourways
        .cells
        .get_mut(&item("colourway-ink"))
        .unwrap();
    let Some(Cell::Colour(colour)) = ink.get_mut(&item("part-1")) else {
        panic!("the main fabric has a colour");
    };
    colour.substrate = "brushed jersey".to_owned();
    colour.approval = Some(Approval::Submitted);
    colour.lab = Some(Lab {
        l: Decimal::new(205, 1),
        a: Decimal::new(-12, 1),
        b: Decimal::new(-98, 1),
        illuminant: Illuminant::D65,
        observer: Observer::Ten,
    });
    spec
}

fn two_files() -> Vec<(String, Vec<u8>)> {
    let file = |name: &str| {
        (
            format!("{name}.svg"),
            format!("<svg>{name}</svg>").into_bytes(),
        )
    };
    vec![file("front"), file("collar")]
}

on_both! {
    async fn what_only_some_specs_have_is_read_where_it_belongs(db) {
        let cast = Cast::new(db).await;
        let files = two_files();
        let style = publishes(&cast, &with_rare_things(&files), &files).await;
        let site = Site::of(cast, "http://127.0.0.1:8640", true).await;
        let page = reads(&site, &style).await;
        // A rule set aside: which, why and by whom.
        assert_eq!(
            page.all(".exemption"),
            ["A rule does not apply here: CHILD-CORD-HOOD \
              Reason: The cord is sewn in at both ends. Says Nell, owner"]
        );
        // The second axis, in every size.
        assert_eq!(
            page.all(".lengths tbody tr"),
            [
                "C Body length short −1 26 1/4 66.7 26 7/8 68.3 27 1/2 69.9 28 1/8 71.4 28 3/4 73.0",
                "Body length long +1 1/2 28 3/4 73.0 29 3/8 74.6 30 76.2 30 5/8 77.8 31 1/4 79.4",
            ]
        );
        let how = page.all("#how tr[data-item=point-c]").join(" ");
        assert!(how.contains("Left and right may differ by 1/4 in (0.6 cm)"), "{how}");
        assert!(how.contains("Stretched, at least XS 28 3/4 S 29 3/8 M 30"), "{how}");
        // A curved line with its heads, and the circle that leads to the larger drawing.
        let path = page.attributes(".dimension[data-item=point-a] .dimension-line", "d");
        assert_eq!(path, ["M2000 4500Q5000 5625 8000 4500"]);
        assert_eq!(page.all(".dimension[data-item=point-a] .dimension-head").len(), 2);
        assert_eq!(page.attributes("a.blow-up", "href"), ["#row-drawing-collar"]);
        assert_eq!(page.all(".blow-up-tag"), ["→ 2"]);
        assert!(page.all("figure#row-drawing-collar figcaption")[0].starts_with("2 · Collar"));
        // Every kind of letter in a shape of its own.
        let shapes = page.attributes("#mark-callout-1 .mark-face", "d");
        assert_eq!(shapes, ["M0-215L215 0 0 215-215 0z"]);
        for kind in ["#mark-artwork-wave", "#mark-label-care"] {
            assert_ne!(page.attributes(&format!("{kind} .mark-face"), "d"), shapes);
        }
        // Their own pages show them alike.
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let items = format!("/styles/{style}/revisions/1/items");
        let own = linh.visits(&format!("{items}/callout-1")).await;
        assert_eq!(own.attributes(".mark-face", "d"), [shapes[0].as_str(); 2]);
        assert_eq!(own.all(".panel-head .letter.callout"), ["1"]);
        let own = linh.visits(&format!("{items}/point-a")).await;
        assert_eq!(own.attributes(".dimension-line", "d"), path);
        // What is known of a colour, computed for the screen from its reading.
        let cell = &page.all("#row-part-1 td")[0];
        for said in ["on brushed jersey", "L* 20.5 a* −1.2 b* −9.8 (D65, 10° observer)", "Lab dip sent"] {
            assert!(cell.contains(said), "{cell}");
        }
        assert_ne!(page.attributes("#row-part-1 td rect", "fill")[0], "#1f2a3c");
        page.must_see("1200 pieces planned");
        page.must_see("To be dyed for the planned pieces");
        page.must_see("how many pieces are planned is not said");
        // Care in words, with signs of our own beside them and none in their place.
        assert_eq!(page.all(".care li")[0], "Wash at 30 °C, mild");
        assert_eq!(page.all(".care .care-sign").len(), page.all(".care li").len());
        page.must_see("Not checked against the official text");
        page.must_see("Oberstoff: ");
        // Artwork at its true size, and in two distances.
        page.must_see("31.75 × 15.8750 mm");
        page.must_see("from Neck seam to its top: 5 in (12.7 cm)");
    }
}

on_both! {
    async fn threads_and_changes_stand_at_items_of_every_section(db) {
        let cast = Cast::new(db).await;
        let files = two_files();
        let style = publishes(&cast, &with_rare_things(&files), &files).await;
        let (brand, sao_mai) = (cast.brand.on(&style), cast.sao_mai.on(&style));
        sao_mai.acknowledges(1).await.unwrap();
        sao_mai.asks("material-zip", "Which mill?").await.unwrap();
        brand.insists(&sao_mai, "callout-2", "Stronger").await.unwrap();
        brand
            .edits(|spec| {
                spec.labels.labels[0].ground = "satin".to_owned();
                let mut line = spec.construction.lines[0].clone();
                line.id = item("line-new");
                line.name = "Yoke seam".to_owned();
                spec.construction.lines.push(line);
            })
            .await;
        let spec = brand.draft().await.0;
        let warnings = check(&spec, &grade(&spec)).into_iter();
        let accepted = warnings.map(|it| (FindingKey::of(&it), "As agreed.".to_owned())).collect();
        brand.publishes_accepting("Softer label", &accepted).await.unwrap();
        let site = Site::of(cast, "http://127.0.0.1:8640", true).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("/styles/{style}/revisions/2")).await;
        let words = |id: &str| page.all(&format!("#row-{id} .word"));
        assert_eq!(words("material-zip"), ["1 open"]);
        assert_eq!(words("callout-2"), ["1 must-fix"]);
        assert_eq!(page.all(".mark[data-item=callout-2] .mark-flag")[0], "!");
        assert_eq!(words("label-brand"), ["changed"]);
        assert_eq!(words("line-new"), ["new"]);
        assert!(words("material-tape").is_empty());
    }
}

on_both! {
    async fn a_revision_of_the_first_format_is_read_without_the_later_sections(db, address) {
        const FORMAT_1: &[u8] = include_bytes!("../golden/revision-format-1.json");
        let site = Site::with_revision(db).await;
        let hex: String = FORMAT_1.iter().map(|byte| format!("{byte:02x}")).collect();
        let bytes = match address.starts_with("sqlite:") {
            true => format!("X'{hex}'"),
            false => format!("'\\x{hex}'::bytea"),
        };
        let digest = Digest::of(FORMAT_1);
        let mut past = Past::the_guards(&address).await;
        let put = format!("UPDATE revision SET format = 1, bytes = {bytes}, digest = '{digest}'");
        assert_eq!(past.run(&put).await, 1);
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let page = linh.visits(&format!("{}/revisions/1", site.style)).await;
        page.must_be(StatusCode::OK);
        assert_eq!(page.all(".chart tbody tr").len(), 10);
        page.must_see("Seam to seam");
        for section in ["#sizes", "#materials", "#construction", "#artwork", "#labels", "#packing"] {
            assert!(page.all(section).is_empty(), "{section}");
            assert!(page.attributes(&format!(".contents a[href=\"{section}\"]"), "href").is_empty());
        }
    }
}
