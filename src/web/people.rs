//! People and factories: an owner sees all, a merchandiser their own people.

use askama::Template;
use axum::extract::{Path, State};

use super::App;
use super::form::{Errors, Form};
use super::frame::{Frame, name_or_erased};
use super::may::May;
use super::page::{Answer, go, page, page_again};
use super::problem::Problem;
use crate::access::{Permit, Role, Side, act, grant};
use crate::language::{Language, Text};
use crate::print::qr;
use crate::spec::{OrgId, PersonId};
use crate::store::{NewPerson, Organisation, Person};

#[derive(Template)]
#[template(path = "people.html")]
struct PeoplePage {
    t: Text,
    frame: Frame,
    people: Vec<Person>,
    me: PersonId,
    /// Where the holder can add people, with the roles that are there.
    places: Vec<Place>,
    /// May add factories and end people's access.
    governs: bool,
    languages: &'static [Language],
    errors: Errors,
    /// A link that was just made: shown once, since only its hash is kept.
    link: Option<Link>,
}

struct Place {
    org: OrgId,
    name: String,
    roles: Vec<Role>,
}

struct Link {
    name: String,
    address: String,
    /// `None`: the address would lead to this machine only.
    qr: Option<qr::Square>,
    /// The address cannot be opened on another machine.
    unreachable: bool,
}

impl PeoplePage {
    fn shown(&self, person: &Person) -> String {
        name_or_erased(self.t, person.name.as_deref())
    }
}

pub async fn show(may: May<act::Invite>, State(app): State<App>) -> Answer {
    page(&people(&may, &app, Errors::default(), None).await?)
}

pub async fn add(may: May<act::Invite>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let name = form.fields.text("name");
    let mut errors = Errors::default();
    if name.is_empty() {
        errors.add("name", t.say("error-name-missing"));
    } else if name.chars().count() > 100 {
        errors.add("name", t.say("error-name-long"));
    }
    // Both in one choice, so that no role of the wrong side can be chosen.
    let place = form.fields.text("place").split_once(' ');
    let place = place.and_then(|(role, org)| Some((Role::from_name(role)?, OrgId::new(org))));
    let Some((role, org)) = place.filter(|_| errors.is_empty()) else {
        if errors.is_empty() {
            errors.add("place", t.say("error-place-missing"));
        }
        return page_again(&people(&may, &app, errors, None).await?);
    };
    let language = Language::from_tag(form.fields.text("language")).unwrap_or(t.language());
    let new = NewPerson {
        org: &org,
        role,
        name,
        language: language.tag(),
    };
    let person = app.store.add_person(&may.permit, new).await?;
    let link = new_link(&may.permit, &app, &person, name.to_owned()).await?;
    page(&people(&may, &app, Errors::default(), Some(link)).await?)
}

pub async fn link(
    may: May<act::Invite>,
    State(app): State<App>,
    Path(person): Path<String>,
    _form: Form,
) -> Answer {
    let person = PersonId::new(person);
    let known = app.store.people(&may.permit).await?;
    let name = known
        .iter()
        .find(|other| other.id == person)
        .ok_or(Problem::NotFound)
        .map(|person| name_or_erased(may.who.t, person.name.as_deref()))?;
    let link = new_link(&may.permit, &app, &person, name).await?;
    page(&people(&may, &app, Errors::default(), Some(link)).await?)
}

pub async fn end(
    may: May<act::Govern>,
    State(app): State<App>,
    Path(person): Path<String>,
    _form: Form,
) -> Answer {
    app.store
        .end_access(&may.permit, &PersonId::new(person))
        .await?;
    go("/people?said=ended")
}

pub async fn add_factory(may: May<act::Govern>, State(app): State<App>, form: Form) -> Answer {
    let name = form.fields.text("factory");
    if name.is_empty() || name.chars().count() > 100 {
        let mut errors = Errors::default();
        errors.add("factory", may.who.t.say("error-name-missing"));
        let invite = May {
            permit: grant::<act::Invite>(&may.who.session.actor)?,
            who: may.who,
        };
        return page_again(&people(&invite, &app, errors, None).await?);
    }
    app.store.add_factory(&may.permit, name).await?;
    go("/people?said=made")
}

async fn new_link(
    permit: &Permit<act::Invite>,
    app: &App,
    person: &PersonId,
    name: String,
) -> Result<Link, Problem> {
    let key = app.store.new_link(permit, person).await?;
    let address = format!("{}/join/{key}", app.settings.public_url);
    let printable = app.settings.demo || app.settings.reachable();
    Ok(Link {
        name,
        qr: printable.then(|| qr::square(&address)).flatten(),
        unreachable: !app.settings.reachable(),
        address,
    })
}

async fn people(
    may: &May<act::Invite>,
    app: &App,
    errors: Errors,
    link: Option<Link>,
) -> Result<PeoplePage, Problem> {
    let actor = &may.who.session.actor;
    let roles = |side: Side| {
        Role::ALL
            .into_iter()
            .filter(move |role| role.side() == side)
    };
    let mut places = Vec::new();
    let own = |side| Place {
        org: actor.org.clone(),
        name: may.who.session.org_name.clone(),
        roles: roles(side).collect(),
    };
    places.push(own(actor.side()));
    if let Ok(permit) = grant::<act::Browse>(actor) {
        let factories: Vec<Organisation> = app.store.factories(&permit).await?;
        places.extend(factories.into_iter().map(|factory| Place {
            org: factory.id,
            name: factory.name,
            roles: roles(Side::Factory).collect(),
        }));
    }
    Ok(PeoplePage {
        t: may.who.t,
        frame: may.who.frame(),
        people: app.store.people(&may.permit).await?,
        me: actor.person.clone(),
        places,
        governs: actor.role == Role::Owner,
        languages: Language::ALL,
        errors,
        link,
    })
}
