//! The signed record of a revision or a round: as a page to print, and as the file to keep.

use askama::Template;
use axum::extract::{Path, State};
use axum::http::{StatusCode, header};
use axum::response::IntoResponse;

use super::{number, plain};
use crate::access::{Side, act};
use crate::exchange::record::{Given, Record};
use crate::exchange::signature::{Statement, SubjectKind};
use crate::language::{Language, Text};
use crate::spec::{OrgId, RoundId};
use crate::store::Sign;
use crate::web::App;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, page};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/record.html")]
struct RecordPage {
    t: Text,
    frame: Frame,
    record: Record,
    /// How the file is called.
    file: String,
    /// Where it is fetched from.
    href: String,
}

impl RecordPage {
    fn is_round(&self) -> bool {
        self.record.subject.kind == SubjectKind::Round
    }

    fn brand(&self) -> String {
        self.t.name(&Side::Brand).to_string()
    }

    fn factory(&self) -> String {
        self.t.name(&Side::Factory).to_string()
    }

    fn statement(&self, given: &Given) -> String {
        self.t.statement(given.statement).to_string()
    }

    fn name(&self, given: &Given) -> String {
        name_or_erased(self.t, given.name.as_deref())
    }

    /// Values were corrected after this signature.
    fn moved(&self, given: &Given) -> bool {
        self.record.subject.digest.as_ref() != Some(&given.digest)
    }

    /// What checks the file, to be typed as it stands.
    fn command(&self) -> String {
        format!(
            "fellseam check-record {} --key {}",
            self.file, self.record.key
        )
    }

    /// The page of what is signed.
    fn back(&self) -> String {
        let (style, subject) = (&self.record.style.id, &self.record.subject);
        match subject.kind {
            SubjectKind::Revision => format!("/styles/{style}/revisions/{}", subject.number),
            SubjectKind::Round => format!("/styles/{style}/rounds/{}", subject.id),
        }
    }
}

pub async fn revision(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
) -> Answer {
    let n = number(&n)?;
    shown(&may, &app, Sign::Revision(n)).await
}

pub async fn revision_file(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
) -> Answer {
    let n = number(&n)?;
    sent(&may, &app, Sign::Revision(n)).await
}

pub async fn round(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
) -> Answer {
    shown(&may, &app, Sign::Round(&RoundId::new(round))).await
}

pub async fn round_file(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
) -> Answer {
    sent(&may, &app, Sign::Round(&RoundId::new(round))).await
}

async fn shown(may: &MayOn<act::Read>, app: &App, what: Sign<'_>) -> Answer {
    let (record, _) = made(may, app, what).await?;
    let address = &may.who.address;
    let (path, asked) = address.split_once('?').unwrap_or((address, ""));
    let mark = if asked.is_empty() { "" } else { "?" };
    page(&RecordPage {
        t: may.who.t,
        frame: may.who.frame(),
        file: file_name(&record),
        href: format!("{path}/file{mark}{asked}"),
        record,
    })
}

async fn sent(may: &MayOn<act::Read>, app: &App, what: Sign<'_>) -> Answer {
    let (record, bytes) = made(may, app, what).await?;
    let about = [
        (header::CONTENT_TYPE, "application/json".to_owned()),
        (
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{}\"", file_name(&record)),
        ),
        // It carries the moment at which it was written.
        (header::CACHE_CONTROL, "private, no-store".to_owned()),
    ];
    Ok((StatusCode::OK, about, bytes).into_response())
}

async fn made(
    may: &MayOn<act::Read>,
    app: &App,
    what: Sign<'_>,
) -> Result<(Record, Vec<u8>), Problem> {
    let org = match with(&may.who) {
        Some(org) => Some(org),
        // Without a choice there is nothing to name.
        None => {
            let mut shares = app.store.shares(&may.permit).await?.into_iter();
            shares.next().map(|share| share.org)
        }
    };
    let words = |language: &str, statement: Statement| {
        let language = Language::from_tag(language).unwrap_or(Language::ORIGINAL);
        language.text().statement(statement).to_string()
    };
    let record = app
        .store
        .signed_record(&may.permit, what, org.as_ref(), words);
    Ok(record.await?)
}

/// The factory that the address names.
fn with(who: &Who) -> Option<OrgId> {
    let (_, asked) = who.address.split_once('?')?;
    form_urlencoded::parse(asked.as_bytes())
        .find(|(name, _)| name == "with")
        .map(|(_, org)| OrgId::new(org))
}

fn file_name(record: &Record) -> String {
    let subject = &record.subject;
    let number = plain(&record.style.number);
    format!(
        "{number}-{}-{}-record.json",
        subject.kind.name(),
        subject.number
    )
}
