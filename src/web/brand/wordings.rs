//! The library of how points are measured: the brand's own wordings, and those of the program.

use askama::Template;
use axum::extract::State;

use crate::access::{Actor, Permit, act, grant};
use crate::language::Text;
use crate::spec::document::{HowToMeasure, Word};
use crate::spec::wording::{Wording, shipped};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::Frame;
use crate::web::may::May;
use crate::web::page::{Answer, go, page};
use crate::web::problem::Problem;

pub struct Library {
    own: Vec<Wording>,
    shipped: Vec<Wording>,
}

/// A wording as a list of choices holds it: words for the choices, empty for none.
pub struct WordingLine<'a> {
    pub name: &'a str,
    pub how: &'a HowToMeasure,
    pub path: &'static str,
    pub closure: &'static str,
    pub side: &'static str,
    /// Whose wording it is.
    pub whose: String,
}

impl Library {
    /// For somebody of the brand.
    pub async fn read(app: &App, actor: &Actor) -> Result<Library, Problem> {
        let browse: Permit<act::Browse> = grant(actor)?;
        Ok(Library {
            own: app.store.own_wordings(&browse).await?,
            shipped: shipped(),
        })
    }

    /// A wording by its name; the brand's own comes first.
    pub fn find(&self, name: &str) -> Option<&Wording> {
        let name = name.to_lowercase();
        let mut all = self.own.iter().chain(&self.shipped);
        all.find(|wording| wording.name.to_lowercase() == name)
    }

    /// All wordings that can be named.
    pub fn lines(&self, t: Text) -> Vec<WordingLine<'_>> {
        let own = t.say("wordings-own").to_string();
        let of_program = t.say("wordings-shipped").to_string();
        let hidden = |wording: &&Wording| {
            let found = self.find(&wording.name);
            found.is_some_and(|found| std::ptr::eq(found, *wording))
        };
        let shipped = self.shipped.iter().filter(hidden);
        let all = self.own.iter().map(|wording| (wording, &own));
        all.chain(shipped.map(|wording| (wording, &of_program)))
            .map(|(Wording { name, how }, whose)| WordingLine {
                name,
                how,
                path: how.path.map_or("", Word::word),
                closure: how.closure.map_or("", Word::word),
                side: how.side.map_or("", Word::word),
                whose: whose.clone(),
            })
            .collect()
    }
}

#[derive(Template)]
#[template(path = "brand/wordings.html")]
struct WordingsPage {
    t: Text,
    frame: Frame,
    library: Library,
    /// May take one out.
    writes: bool,
}

pub async fn show(may: May<act::Browse>, State(app): State<App>) -> Answer {
    let actor = &may.who.session.actor;
    page(&WordingsPage {
        t: may.who.t,
        frame: may.who.frame(),
        library: Library::read(&app, actor).await?,
        writes: grant::<act::Create>(actor).is_ok(),
    })
}

/// Takes one of the brand's own out.
pub async fn forget(may: May<act::Create>, State(app): State<App>, form: Form) -> Answer {
    let name = form.fields.text("name");
    app.store.forget_wording(&may.permit, name).await?;
    go("/wordings?said=saved")
}
