//! The signed record of a revision, a round or a seal: as a page to print, and as the file to keep.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Path, Query, State};
use axum::http::header;
use axum::response::IntoResponse;

use super::{number, plain};
use crate::access::{Side, act};
use crate::exchange::record::{Given, Record};
use crate::exchange::signature::{Statement, SubjectKind};
use crate::language::{Language, Text};
use crate::spec::{OrgId, RoundId, SealId};
use crate::store::Sign;
use crate::web::App;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::MayOn;
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
}

impl RecordPage {
    /// A seal has its round's number.
    fn is_round(&self) -> bool {
        self.record.subject.kind != SubjectKind::Revision
    }

    fn is_seal(&self) -> bool {
        self.record.subject.kind == SubjectKind::Seal
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

    /// Where the file is.
    fn href(&self) -> String {
        format!(
            "{}/record/file?with={}",
            self.back(),
            self.record.factory.id
        )
    }

    /// The page of what is signed.
    fn back(&self) -> String {
        let (style, subject) = (&self.record.style.id, &self.record.subject);
        match subject.kind {
            SubjectKind::Revision => format!("/styles/{style}/revisions/{}", subject.number),
            SubjectKind::Round => format!("/styles/{style}/rounds/{}", subject.id),
            SubjectKind::Seal => format!("/styles/{style}/seals/{}", subject.id),
        }
    }
}

/// The factory that the address names, `?with=`.
type Asked = Query<BTreeMap<String, String>>;

pub async fn revision(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    shown(&may, &app, Sign::Revision(number(&n)?), &asked).await
}

pub async fn revision_file(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    sent(&may, &app, Sign::Revision(number(&n)?), &asked).await
}

pub async fn round(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    shown(&may, &app, Sign::Round(&RoundId::new(round)), &asked).await
}

pub async fn round_file(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    sent(&may, &app, Sign::Round(&RoundId::new(round)), &asked).await
}

pub async fn seal(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, seal)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    shown(&may, &app, Sign::Seal(&SealId::new(seal)), &asked).await
}

pub async fn seal_file(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, seal)): Path<(String, String)>,
    Query(asked): Asked,
) -> Answer {
    sent(&may, &app, Sign::Seal(&SealId::new(seal)), &asked).await
}

async fn shown(
    may: &MayOn<act::Read>,
    app: &App,
    what: Sign<'_>,
    asked: &BTreeMap<String, String>,
) -> Answer {
    let (record, _) = made(may, app, what, asked).await?;
    page(&RecordPage {
        t: may.who.t,
        frame: may.who.frame(),
        file: file_name(&record),
        record,
    })
}

async fn sent(
    may: &MayOn<act::Read>,
    app: &App,
    what: Sign<'_>,
    asked: &BTreeMap<String, String>,
) -> Answer {
    let (record, bytes) = made(may, app, what, asked).await?;
    let about = [
        (header::CONTENT_TYPE, "application/json".to_owned()),
        (
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{}\"", file_name(&record)),
        ),
        // It carries the moment at which it was written.
        (header::CACHE_CONTROL, "private, no-store".to_owned()),
    ];
    Ok((about, bytes).into_response())
}

async fn made(
    may: &MayOn<act::Read>,
    app: &App,
    what: Sign<'_>,
    asked: &BTreeMap<String, String>,
) -> Result<(Record, Vec<u8>), Problem> {
    let org = match asked.get("with") {
        Some(org) => Some(OrgId::new(org)),
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

fn file_name(record: &Record) -> String {
    let subject = &record.subject;
    let number = plain(&record.style.number);
    format!(
        "{number}-{}-{}-record.json",
        subject.kind.name(),
        subject.number
    )
}
