//! Several instances on one PostgreSQL.

use std::collections::BTreeSet;
use std::time::Duration;

use tokio::sync::{broadcast, mpsc};
use tokio::task::JoinHandle;
use tokio::time::{MissedTickBehavior, interval, sleep};

use super::{News, heard};
use crate::spec::StyleId;
use crate::store::{Audience, Ear, Event, Known, Store, StoreError, Wire};

/// How often every style's head is compared, hint or none.
const LOOK: Duration = Duration::from_secs(2);
/// How long to wait before a lost line is tried again.
const AGAIN: Duration = Duration::from_secs(1);
/// How many styles one notice names: with ids of 36 letters, well under PostgreSQL's 8 000 bytes.
const NAMED: usize = 200;
/// Before a style's id: its draft moved, which no ledger tells.
const DRAFT: char = '~';

/// What makes the reader look.
enum Hint {
    Said(String),
    /// The line was lost for a while.
    Gap,
}

pub(super) fn start(
    store: &Store,
    wire: &Wire,
    out: &broadcast::Sender<News>,
) -> Vec<JoinHandle<()>> {
    let (hints, heard) = mpsc::channel(64);
    let reader = Reader {
        store: store.clone(),
        out: out.clone(),
        known: None,
        me: store.world().id(),
    };
    vec![
        tokio::spawn(speak(store.listen(), wire.clone(), reader.me.clone())),
        tokio::spawn(listen(wire.clone(), hints)),
        tokio::spawn(reader.run(store.listen(), heard)),
    ]
}

/// Tells the others what happened here, beginning with who says it. Everything that happens while
/// one notice is on its way goes into the next one.
async fn speak(mut store: broadcast::Receiver<Event>, wire: Wire, me: String) {
    while let Some(first) = heard(store.recv().await) {
        let mut words = BTreeSet::new();
        let mut next = Some(first);
        while let Some(news) = next {
            // After a gap the others find out by themselves, at their next look.
            if let News::Event(event) = news {
                words.insert(word(&event));
            }
            next = match words.len() {
                NAMED => None,
                _ => store.try_recv().ok().map(News::Event),
            };
        }
        let words: Vec<String> = [me.clone()].into_iter().chain(words).collect();
        if let Err(cause) = wire.speak(&words.join(" ")).await {
            tracing::warn!(%cause, "other instances are not told: they will find out late");
        }
    }
}

fn word(event: &Event) -> String {
    match event.audience {
        Audience::Brand => format!("{DRAFT}{}", event.style),
        Audience::Factory(_) | Audience::All => event.style.to_string(),
    }
}

/// Passes on what is said, and keeps the line up.
async fn listen(wire: Wire, hints: mpsc::Sender<Hint>) {
    loop {
        match wire.listen().await {
            Ok(ear) => {
                // Whatever was said before is not known.
                let told = hints.send(Hint::Gap).await;
                if told.is_err() || pass_on(ear, &hints).await.is_none() {
                    return;
                }
            }
            Err(cause) => tracing::warn!(%cause, "the line to other instances is down"),
        }
        sleep(AGAIN).await;
    }
}

/// Until the line breaks for good; `None` when nobody wants the hints any more.
async fn pass_on(mut ear: Ear, hints: &mpsc::Sender<Hint>) -> Option<()> {
    loop {
        let hint = match ear.hear().await {
            Ok(Some(words)) => Hint::Said(words),
            Ok(None) => Hint::Gap,
            Err(cause) => {
                tracing::warn!(%cause, "the line to other instances broke");
                return Some(());
            }
        };
        hints.send(hint).await.ok()?;
    }
}

/// Reads from the ledger what happened, and tells it.
struct Reader {
    store: Store,
    out: broadcast::Sender<News>,
    /// How far each ledger was read; `None` before the first look.
    known: Option<Known>,
    /// The name of this instance, which has told its own events already.
    me: String,
}

impl Reader {
    async fn run(mut self, mut own: broadcast::Receiver<Event>, mut hints: mpsc::Receiver<Hint>) {
        let mut ticks = interval(LOOK);
        ticks.set_missed_tick_behavior(MissedTickBehavior::Delay);
        loop {
            let looked = tokio::select! {
                received = own.recv() => match heard(received) {
                    Some(News::Event(event)) => self.hint(&word(&event)).await,
                    Some(News::Resync) => self.gap().await,
                    None => return,
                },
                hint = hints.recv() => match hint {
                    Some(Hint::Said(notice)) => match notice.split_once(' ') {
                        Some((sender, words)) if sender != self.me => self.hint(words).await,
                        _ => Ok(()),
                    },
                    Some(Hint::Gap) => self.gap().await,
                    None => return,
                },
                _ = ticks.tick() => self.look_at_all().await,
            };
            if let Err(cause) = looked {
                // What was not read now is read at the next look.
                tracing::warn!(%cause, "the ledgers cannot be read");
            }
        }
    }

    async fn hint(&mut self, words: &str) -> Result<(), StoreError> {
        for word in words.split_whitespace() {
            match word.strip_prefix(DRAFT) {
                Some(style) => self.tell(News::Event(Event {
                    style: StyleId::new(style),
                    audience: Audience::Brand,
                })),
                None => self.look_at(&StyleId::new(word)).await?,
            }
        }
        Ok(())
    }

    /// Drafts may have moved, too: nothing but looking tells.
    async fn gap(&mut self) -> Result<(), StoreError> {
        self.tell(News::Resync);
        self.look_at_all().await
    }

    async fn look_at_all(&mut self) -> Result<(), StoreError> {
        let heads = self.store.heads().await?;
        let Some(known) = &self.known else {
            self.known = Some(heads);
            // Whoever subscribed before may have missed what came before this look.
            self.tell(News::Resync);
            return Ok(());
        };
        let moved: Vec<StyleId> = heads
            .into_iter()
            .filter(|(style, seq)| known.get(style) < Some(seq))
            .map(|(style, _)| style)
            .collect();
        for style in moved {
            self.look_at(&style).await?;
        }
        Ok(())
    }

    /// Tells what this style's ledger has beyond what was told. Before the first look there is
    /// nothing to go on from, and that look tells everybody.
    async fn look_at(&mut self, style: &StyleId) -> Result<(), StoreError> {
        let Some(known) = &mut self.known else {
            return Ok(());
        };
        let seq = known.get(style).copied().unwrap_or(0);
        let (events, last) = self.store.events_after(style, seq).await?;
        known.insert(style.clone(), last);
        for event in events {
            self.tell(News::Event(event));
        }
        Ok(())
    }

    /// Nobody listening is no fault.
    fn tell(&self, news: News) {
        let _ = self.out.send(news);
    }
}
