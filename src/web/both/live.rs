//! Live updates: streams of server-sent events that say where to look again, and nothing else.
//!
//! A stream ends with the program and with the session. Session and share are looked at again at
//! every event; a factory hears nothing of another factory's threads and rounds.

use std::convert::Infallible;
use std::time::Duration;

use axum::extract::State;
use axum::http::{HeaderName, header};
use axum::response::sse::{Event, Sse};
use axum::response::{IntoResponse, Response};
use futures::stream::unfold;
use tokio::sync::watch;
use tokio::time::{Interval, MissedTickBehavior, interval};

use crate::access::{Actor, act, grant, grant_on};
use crate::notify::{News, Subscription};
use crate::spec::StyleId;
use crate::store::Audience;
use crate::web::App;
use crate::web::may::{May, MayOn};
use crate::web::page::Answer;
use crate::web::problem::Problem;

/// How often a silent stream says that it is there, for the proxies in between. A session that
/// ended meanwhile is found out at the latest then.
const BEAT: Duration = Duration::from_secs(15);
/// How long a browser waits before it opens a broken stream again.
const AGAIN: Duration = Duration::from_secs(3);
/// In the place of a style's id: look at everything.
const EVERYTHING: &str = "*";

/// What happens on one style.
pub async fn style(may: MayOn<act::Read>, State(app): State<App>) -> Answer {
    let style = may.permit.style().clone();
    Ok(stream(app, may.who.token, Some(style)))
}

/// What happens on any style that the reader may read.
pub async fn all(may: May<act::Enter>, State(app): State<App>) -> Answer {
    Ok(stream(app, may.who.token, None))
}

struct Stream {
    token: String,
    /// `None`: every style.
    style: Option<StyleId>,
    news: Subscription,
    stopping: watch::Receiver<bool>,
    beats: Interval,
    app: App,
}

fn stream(app: App, token: String, style: Option<StyleId>) -> Response {
    let mut beats = interval(BEAT);
    beats.set_missed_tick_behavior(MissedTickBehavior::Delay);
    let stream = Stream {
        token,
        style,
        news: app.notify.subscribe(),
        stopping: app.stopping.subscribe(),
        beats,
        app,
    };
    let events = unfold(stream, |mut stream| async {
        match stream.next().await {
            Ok(Some(event)) => Some((Ok::<_, Infallible>(event), stream)),
            Ok(None) => None,
            // The browser opens it again, or is told why it may not.
            Err(_) => None,
        }
    });
    let about = [
        (header::CACHE_CONTROL, "no-cache, no-transform"),
        // Proxies that collect answers would keep the events to themselves.
        (HeaderName::from_static("x-accel-buffering"), "no"),
    ];
    // Sse sets headers of its own: ours stand outside, and win.
    (about, Sse::new(events)).into_response()
}

impl Stream {
    /// The next thing to say; `None` at the end.
    async fn next(&mut self) -> Result<Option<Event>, Problem> {
        loop {
            let news = tokio::select! {
                _ = self.stopping.wait_for(|stopping| *stopping) => return Ok(None),
                _ = self.beats.tick() => None,
                news = self.news.next() => match news {
                    Some(news) => Some(news),
                    None => return Ok(None),
                },
            };
            if news.as_ref().is_some_and(|news| !self.may_concern(news)) {
                continue;
            }
            let Some(actor) = self.actor().await? else {
                return Ok(None);
            };
            let Some(news) = news else {
                return Ok(Some(Event::default().retry(AGAIN).comment("")));
            };
            match self.says(&actor, &news).await? {
                Said::Event(words) => return Ok(Some(Event::default().data(words))),
                Said::Nothing => {}
                Said::End => return Ok(None),
            }
        }
    }

    /// Sorts out what is of another style before anything is asked of the database.
    fn may_concern(&self, news: &News) -> bool {
        match (news, &self.style) {
            (News::Event(event), Some(style)) => event.style == *style,
            _ => true,
        }
    }

    /// Who listens, while their session lasts.
    async fn actor(&self) -> Result<Option<Actor>, Problem> {
        let session = self.app.store.session_unseen(&self.token).await?;
        Ok(session.map(|session| session.actor))
    }

    async fn says(&self, actor: &Actor, news: &News) -> Result<Said, Problem> {
        let enter = grant::<act::Enter>(actor)?;
        let (style, by_name) = match news {
            News::Resync => (self.style.as_ref(), true),
            News::Event(event) if !event.concerns(enter.tenant()) => return Ok(Said::Nothing),
            News::Event(event) => (
                Some(&event.style),
                matches!(event.audience, Audience::Factory(_)),
            ),
        };
        let readable = match style {
            Some(style) => self.may_read(actor, style).await?,
            None => false,
        };
        Ok(match news {
            News::Event(event) if readable => Said::Event(event.style.to_string()),
            _ if self.style.is_some() && !readable => Said::End,
            // Also when a share has just ended: what waited on the style waits no more.
            _ if by_name => Said::Event(EVERYTHING.to_owned()),
            _ => Said::Nothing,
        })
    }

    async fn may_read(&self, actor: &Actor, style: &StyleId) -> Result<bool, Problem> {
        let facts = self.app.store.style_facts(actor, style).await?;
        Ok(facts.is_some_and(|facts| grant_on::<act::Read>(actor, &facts).is_ok()))
    }
}

enum Said {
    Event(String),
    Nothing,
    End,
}
