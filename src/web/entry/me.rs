//! One's own name, language, password and devices.

use askama::Template;
use axum::extract::State;
use axum::response::IntoResponse;

use super::{credentials, language, name};
use crate::access::{Role, act};
use crate::language::{Language, Text};
use crate::notify::mail::is_address;
use crate::print::qr;
use crate::store::StoreError;
use crate::web::App;
use crate::web::form::{Errors, Form};
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::May;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::visit::set_session;

#[derive(Template)]
#[template(path = "entry/me.html")]
struct MePage {
    t: Text,
    frame: Frame,
    name: String,
    role: Role,
    org: String,
    languages: &'static [Language],
    language: Language,
    /// Empty: no password yet.
    login: String,
    errors: Errors,
    /// Where to tell what waits; `None`: the installation sends no mail.
    mail: Option<String>,
    /// A code for a second device, just made.
    code: Option<Code>,
}

struct Code {
    /// In two groups of four.
    shown: String,
    /// Where it is typed.
    address: String,
    /// The way to that address as a picture: the SVG path of its dark squares and the number of
    /// squares on a side; `None` when it would lead to this machine only.
    qr: Option<qr::Square>,
}

pub async fn show(may: May<act::Enter>, State(app): State<App>) -> Answer {
    page(&me(&may, &app, Errors::default(), None).await?)
}

pub async fn submit(may: May<act::Enter>, State(app): State<App>, form: Form) -> Answer {
    let mut errors = Errors::default();
    let name = name(may.who.t, &form.fields, "name", &mut errors);
    if !errors.is_empty() {
        return page_again(&me(&may, &app, errors, None).await?);
    }
    let language = language(may.who.t, &form.fields);
    app.store.rename(&may.permit, &name, language.tag()).await?;
    go("/me?said=saved")
}

pub async fn password(may: May<act::Enter>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let mut errors = Errors::default();
    let (login, password) = credentials(t, &form.fields, &mut errors);
    // Whoever found an open browser must not be able to take the account over.
    if let Some(now) = app.store.login(&may.permit).await? {
        let key = format!("login {now}");
        if !app.attempts.open(&key) {
            return Err(Problem::TooManyTries);
        }
        let (_, hash) = app.store.password(&now).await?.unzip();
        let old = form.fields.raw("old_password").to_owned();
        if !app.passwords.check(old, hash).await {
            app.attempts.wrong(&key);
            errors.add("old_password", t.say("error-password-wrong"));
        }
    }
    if !errors.is_empty() {
        return page_again(&me(&may, &app, errors, None).await?);
    }
    let hash = app.passwords.hash(password).await;
    let hash = hash.map_err(|cause| Problem::fault(&cause))?;
    match app.store.set_password(&may.permit, &login, &hash).await {
        Ok(token) => {
            let to = go("/me?said=saved")?;
            Ok(([set_session(&app, &token)], to).into_response())
        }
        Err(StoreError::Unique(_)) => {
            errors.add("login", t.say("error-login-taken"));
            page_again(&me(&may, &app, errors, None).await?)
        }
        Err(other) => Err(other.into()),
    }
}

pub async fn code(may: May<act::Enter>, State(app): State<App>, _form: Form) -> Answer {
    let code = app.store.new_code(&may.permit).await?;
    let address = format!("{}/code", app.settings.public_url);
    let code = Code {
        shown: format!("{}-{}", &code[..4], &code[4..]),
        qr: (app.settings.demo || app.settings.reachable())
            .then(|| qr::square(&address))
            .flatten(),
        address,
    };
    page(&me(&may, &app, Errors::default(), Some(code)).await?)
}

pub async fn mail(may: May<act::Enter>, State(app): State<App>, form: Form) -> Answer {
    let address = form.fields.text("mail");
    if !address.is_empty() && !is_address(address) {
        let mut errors = Errors::default();
        errors.add("mail", may.who.t.say("error-mail-address"));
        let page = me(&may, &app, errors, None).await?;
        return page_again(&MePage {
            mail: Some(address.to_owned()),
            ..page
        });
    }
    let address = Some(address).filter(|it| !it.is_empty());
    app.store.set_mail_address(&may.permit, address).await?;
    go("/me?said=saved")
}

async fn me(
    may: &May<act::Enter>,
    app: &App,
    errors: Errors,
    code: Option<Code>,
) -> Result<MePage, Problem> {
    let session = &may.who.session;
    let t = may.who.t;
    Ok(MePage {
        t,
        frame: may.who.frame(),
        name: name_or_erased(t, session.name.as_deref()),
        role: may.permit.role(),
        org: session.org_name.clone(),
        languages: Language::ALL,
        language: t.language(),
        login: app.store.login(&may.permit).await?.unwrap_or_default(),
        errors,
        mail: match app.settings.mails {
            true => Some(
                app.store
                    .mail_address(&may.permit)
                    .await?
                    .unwrap_or_default(),
            ),
            false => None,
        },
        code,
    })
}
