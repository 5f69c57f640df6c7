//! Sheets to download: of a revision for both sides, of the draft for the brand.

use axum::extract::{Path, State};
use axum::http::{HeaderName, header};
use axum::response::IntoResponse;

use super::{number, plain};
use crate::access::act;
use crate::print::sheet::{Source, chart_csv, chart_xlsx, materials_csv, materials_xlsx};
use crate::spec::{DecimalSign, Section, grade};
use crate::web::App;
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

/// A sheet that can be downloaded.
#[derive(Debug, Clone, Copy)]
pub struct Download {
    section: Section,
    /// The end of its address.
    pub name: &'static str,
    /// The same in every language.
    pub kind: &'static str,
}

const fn download(section: Section, name: &'static str, kind: &'static str) -> Download {
    Download {
        section,
        name,
        kind,
    }
}

const DOWNLOADS: [Download; 4] = [
    download(Section::Points, "size-chart.xlsx", "XLSX"),
    download(Section::Points, "size-chart.csv", "CSV"),
    download(Section::Materials, "materials.xlsx", "XLSX"),
    download(Section::Materials, "materials.csv", "CSV"),
];

/// The sheets of a section; none of most.
pub fn downloads(section: Section) -> Vec<Download> {
    let mut all = DOWNLOADS.to_vec();
    all.retain(|it| it.section == section);
    all
}

/// A sheet of a revision: the frozen values, whatever the rules would give today.
pub async fn revision(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n, name)): Path<(String, String, String)>,
) -> Answer {
    let revision = app.store.revision(&may.permit, number(&n)?).await?;
    let frozen = &revision.frozen;
    let source = Source {
        t: may.who.t,
        spec: &frozen.spec,
        chart: Some(&frozen.chart),
        sign: frozen.decimal,
        revision: Some(frozen.number),
        made: &frozen.published,
    };
    send(&source, &name)
}

/// A sheet of the draft as it is.
pub async fn draft(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, name)): Path<(String, String)>,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let chart = grade(&draft.spec).chart(&draft.spec);
    let made = app.store.world().now();
    let source = Source {
        t: may.who.t,
        spec: &draft.spec,
        chart: chart.as_ref(),
        sign: DecimalSign::Point,
        revision: None,
        made: &made,
    };
    send(&source, &name)
}

fn send(source: &Source<'_>, name: &str) -> Answer {
    let bytes = match name {
        "size-chart.xlsx" => chart_xlsx(source),
        "size-chart.csv" => Ok(chart_csv(source)),
        "materials.xlsx" => materials_xlsx(source),
        "materials.csv" => Ok(materials_csv(source)),
        _ => return Err(Problem::NotFound),
    };
    let bytes = bytes.map_err(|error| Problem::fault(&error))?;
    let kind = match name.ends_with(".csv") {
        true => "text/csv; charset=utf-8",
        false => "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    };
    let plain = plain(&source.spec.header.number);
    let edition = source
        .revision
        .map_or("draft".to_owned(), |n| format!("revision-{n}"));
    let about: [(HeaderName, String); 3] = [
        (header::CONTENT_TYPE, kind.to_owned()),
        (
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{plain}-{edition}-{name}\""),
        ),
        (header::CACHE_CONTROL, "private, no-cache".to_owned()),
    ];
    Ok((about, bytes).into_response())
}
