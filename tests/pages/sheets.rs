//! Sheets in and out, without script.

use axum::http::StatusCode;
use fellseam::spec::document::{Grade, MaterialKind};
use fellseam::spec::{Section, Unit, grade};
use rust_xlsxwriter::{ExcelDateTime, Format, Formula, Workbook};

use crate::pages::{Browser, Page, Site};
use crate::support::cast::inches;
use crate::support::database::on_both;

fn import(site: &Site, section: &str) -> String {
    format!("{}/draft/{section}/import", site.style)
}

/// The page after a file was sent.
async fn brings(browser: &mut Browser, path: &str, name: &str, bytes: &[u8]) -> Page {
    let form = browser.visits(path).await.form(path);
    browser.sends(form.attach("file", name, bytes)).await
}

/// A chart as a brand keeps it: a title, other heads, a heading within, and cells that cannot be
/// read.
fn chart() -> Vec<u8> {
    let mut book = Workbook::new();
    book.add_worksheet()
        .set_name("Notes")
        .unwrap()
        .write(0, 0, "Ask Nell")
        .unwrap();
    let sheet = book.add_worksheet();
    sheet.set_name("Chart").unwrap();
    sheet
        .merge_range(0, 0, 0, 7, "Shoal half-zip, inches", &Format::new())
        .unwrap();
    let heads = [
        "POM",
        "Description",
        "Tol (+/-)",
        "XS",
        "S",
        "M",
        "L",
        "XL",
        "Remembered by",
    ];
    for (column, head) in (0..).zip(heads) {
        sheet.write(2, column, head).unwrap();
    }
    let mut row = |row: u32, letter: &str, name: &str, values: [f64; 5]| {
        sheet.write(row, 0, letter).unwrap();
        sheet.write(row, 1, name).unwrap();
        for (column, value) in (3..).zip(values) {
            sheet.write(row, column, value).unwrap();
        }
    };
    row(3, "C", "Body length", [27.0, 27.5, 28.0, 28.5, 29.25]);
    row(5, "X", "Pocket opening", [6.0, 6.0, 6.0, 6.0, 6.0]);
    row(6, "Y", "Elbow", [7.0, 7.5, 8.0, 8.5, 9.0]);
    row(7, "Z", "Vent", [3.0, 3.0, 3.0, 3.0, 3.0]);
    sheet.write(4, 1, "POCKETS").unwrap();
    let last = Formula::new("=D6").set_result("6");
    sheet.write_formula(5, 7, last).unwrap();
    let july = ExcelDateTime::from_ymd(2026, 7, 1).unwrap();
    let date = Format::new().set_num_format("d-mmm");
    sheet.write_datetime_with_format(6, 4, july, &date).unwrap();
    sheet.write(7, 2, "plenty").unwrap();
    book.save_to_buffer().unwrap()
}

on_both! {
    async fn a_size_chart_is_matched_looked_at_and_only_then_saved(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let before = site.cast.brand.draft().await;
        let path = import(&site, "points");
        let draft = iris.visits(&format!("{}/draft/points", site.style)).await;
        assert_eq!(draft.link("Import from a sheet"), path);

        let page = brings(&mut iris, &path, "chart.xlsx", &chart()).await;
        page.must_be(StatusCode::OK);
        page.must_see("What the columns hold");
        page.must_see("Column H: XL");
        page.must_see("leave out");
        let form = page.form(&path);
        // The second sheet, its third row, and its unit are found.
        assert_eq!((form.value("sheet"), form.value("head"), form.value("unit")), ("1", "3", "inch"));
        assert_eq!(form.value("column.0"), "letter");
        assert_eq!(form.value("column.2"), "tolerance");
        assert_eq!(form.value("column.7"), "size.size-xl");
        assert_eq!(form.value("column.8"), "");

        let page = iris.sends(form.set("do", "preview")).await;
        page.must_be(StatusCode::OK);
        page.must_see("2 rows can be read.");
        page.must_see("Pocket opening");
        page.must_see("E7 The spreadsheet has made a date of this.");
        page.must_see("C8 “plenty” is not a measurement.");
        page.must_see("B5 “POCKETS” stands alone in its row");
        page.must_see("1 cell is a formula. Its last value was taken: H6");
        assert_eq!(site.cast.brand.draft().await, before, "only looked at");

        let form = page.form(&path).set("do", "save");
        let page = iris.sends(form).await;
        assert_eq!(page.goes_to(), format!("{}/draft/points?said=saved", site.style));
        let (after, versions) = site.cast.brand.draft().await;
        assert_ne!(versions[&Section::Points], before.1[&Section::Points]);
        let (old, new) = (&before.0.points.points, &after.points.points);
        assert_eq!(new.len(), old.len() + 1);
        let pocket = new.last().unwrap();
        assert_eq!((pocket.letter.as_str(), pocket.base), ("X", Some(inches("6"))));
        assert_eq!(pocket.grade, Some(Grade::Same {}));
        let c = after.point(&old[2].id).unwrap();
        let graded = grade(&after);
        let values = &graded.values(&c.id).unwrap().rounded;
        let wanted = ["27", "27 1/2", "28", "28 1/2", "29 1/4"].map(|it| inches(it).nm);
        assert_eq!(*values, wanted);
        // What no row named is as it was.
        let kept = old.iter().zip(new).filter(|(old, _)| old.id != c.id);
        for (old, new) in kept {
            assert_eq!(old, new);
        }
    }
}

on_both! {
    async fn a_draft_that_moved_while_it_was_looked_at_is_not_overwritten(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let mut nell = site.browser(&site.cast.brand.owner).await;
        let path = import(&site, "points");
        let text = "Letter,Name\nA,Chest at the armhole\n";
        let page = brings(&mut iris, &path, "names.csv", text.as_bytes()).await;
        let preview = iris.sends(page.form(&path).set("do", "preview")).await;

        // Nell's save of the same section is met as any other.
        let points = format!("{}/draft/points", site.style);
        let form = nell.visits(&points).await.form(&points).set("point-b.name", "Hem, relaxed");
        nell.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let page = iris.sends(preview.form(&path).set("do", "save")).await;
        let conflict = page.goes_to();
        assert!(conflict.contains("/draft/conflict/"), "{conflict}");
        let names = site.cast.brand.draft().await.0.points.points;
        assert_ne!(names[0].name, "Chest at the armhole");

        // What the rows are read by has changed: one more look.
        let page = brings(&mut iris, &path, "names.csv", text.as_bytes()).await;
        let preview = iris.sends(page.form(&path).set("do", "preview")).await;
        let header = format!("{}/draft/header", site.style);
        let form = nell.visits(&header).await.form(&header).set("season", "Winter");
        nell.sends(form).await.must_be(StatusCode::SEE_OTHER);
        let page = iris.sends(preview.form(&path).set("do", "save")).await;
        page.must_be(StatusCode::OK);
        page.must_see("Sizes or header were changed while you were looking.");
        let page = iris.sends(page.form(&path).set("do", "save")).await;
        assert_eq!(page.goes_to(), format!("{points}?said=saved"));
        let names = site.cast.brand.draft().await.0.points.points;
        assert_eq!(names[0].name, "Chest at the armhole");
        assert_eq!(names[1].name, "Hem, relaxed");
    }
}

on_both! {
    async fn columns_are_chosen_and_doubtful_choices_refused(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = import(&site, "materials");
        let text = "Old list\nA1;B1;C1\nNew list\nLetter;What;Kind\nN1;Side tape;tape\n";
        let page = brings(&mut iris, &path, "list.csv", text.as_bytes()).await;
        let form = page.form(&path);
        assert_eq!((form.value("head"), form.value("column.1")), ("4", ""));
        let form = form.set("head", "4").set("column.1", "letter").set("do", "preview");
        let page = iris.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Two columns hold “Letter”.");
        let form = page.form(&path).set("column.0", "").set("column.1", "").set("do", "preview");
        let page = iris.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Say which column holds the letters or the names");
        let page = iris.sends(page.form(&path).set("head", "99").set("do", "preview")).await;
        page.must_see("Write the number of a row of the sheet, or 0.");
        let page = iris.sends(page.form(&path).set("head", "4").set("do", "look")).await;
        let form = page.form(&path);
        assert_eq!((form.value("column.0"), form.value("column.2")), ("letter", "kind"));
        let page = iris.sends(form.set("column.1", "name").set("do", "preview")).await;
        page.must_see("1 row can be read.");
        // Back, with what was chosen.
        let back = iris.sends(page.form(&path).set("do", "columns")).await;
        assert_eq!(back.form(&path).value("column.1"), "name");
        let page = iris.sends(page.form(&path).set("do", "save")).await;
        page.must_be(StatusCode::SEE_OTHER);
        let (spec, _) = site.cast.brand.draft().await;
        let tape = spec.materials.materials.last().unwrap();
        assert_eq!((tape.name.as_str(), tape.kind), ("Side tape", Some(MaterialKind::Tape)));
    }
}

on_both! {
    async fn a_file_that_is_not_taken_is_explained(db) {
        let site = Site::new(db).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let path = import(&site, "points");
        let form = iris.visits(&path).await.form(&path);
        let page = iris.sends(form).await;
        page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
        page.must_see("Choose a file first.");
        for (bytes, sentence) in [
            (&b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"[..], "XLS is not read here. Save it as XLSX and send that."),
            (b"PK\x03\x04 and no more", "The file is damaged."),
            (b"L\xE4nge", "Save it as “CSV UTF-8”"),
            (&"1,2\n".repeat(5000).into_bytes(), "A2001 lies beyond 2000 rows and 100 columns."),
        ] {
            let page = brings(&mut iris, &path, "x.xlsx", bytes).await;
            page.must_be(StatusCode::UNPROCESSABLE_ENTITY);
            page.must_see(sentence);
        }
        // What no page of ours sends.
        for forged in ["", "nonsense", "[]", "[{\"name\":\"\",\"rows\":[[{\"t\":\"a\\u0000b\"}]]}]"] {
            let fields = [("sheets", forged), ("sheet", "0"), ("head", "0"), ("do", "save")];
            let page = iris.posts(&path, &fields).await;
            page.must_be(StatusCode::BAD_REQUEST);
        }
        for section in ["sizes", "packing", "nothing"] {
            iris.visits(&import(&site, section)).await.must_be(StatusCode::NOT_FOUND);
        }
    }
}

on_both! {
    async fn both_sides_download_what_was_frozen_and_the_brand_its_draft(db) {
        let site = Site::with_revision(db).await;
        let mut linh = site.browser(&site.cast.sao_mai.lead).await;
        let mut iris = site.browser(&site.cast.brand.lead).await;
        let revision = format!("{}/revisions/1", site.style);
        let links = linh.visits(&revision).await;
        assert!(links.sees("Download XLSX") && links.sees("Download CSV"));
        for (name, kind) in [
            ("size-chart.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
            ("size-chart.csv", "text/csv; charset=utf-8"),
            ("materials.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
            ("materials.csv", "text/csv; charset=utf-8"),
        ] {
            let path = format!("{revision}/sheets/{name}");
            let theirs = linh.visits(&path).await;
            theirs.must_be(StatusCode::OK);
            assert_eq!(theirs.header("content-type"), kind);
            let file = format!("attachment; filename=\"HT-204-revision-1-{name}\"");
            assert_eq!(theirs.header("content-disposition"), file);
            assert_eq!(theirs.bytes, iris.visits(&path).await.bytes);
            let draft = format!("{}/draft/sheets/{name}", site.style);
            iris.visits(&draft).await.must_be(StatusCode::OK);
            linh.visits(&draft).await.must_be(StatusCode::NOT_FOUND);
        }
        // What is sent out and brought in again changes nothing.
        let before = site.cast.brand.draft().await;
        assert_eq!(before.0.header.unit, Some(Unit::Inch));
        for (section, name) in [("points", "size-chart.xlsx"), ("materials", "materials.xlsx"), ("points", "size-chart.csv")] {
            let sheet = iris.visits(&format!("{}/draft/sheets/{name}", site.style)).await.bytes;
            let path = import(&site, section);
            let page = brings(&mut iris, &path, name, &sheet).await;
            let page = iris.sends(page.form(&path).set("do", "preview")).await;
            page.must_see("The draft has all of this already.");
            assert!(!page.sees("What cannot be read"), "{section}: {}", page.reads());
        }
        assert_eq!(site.cast.brand.draft().await, before);
    }
}
