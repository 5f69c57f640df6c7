//! Who should look at what again, as it happens: in this process, and where several instances share
//! a PostgreSQL, in all of them. Ids only; whoever hears of a change reads what they may.
//!
//! In one process the store's own channel tells. Across instances a notice may get lost, so it is
//! only a hint: what happened is read from the ledger, from where it was read last, and every two
//! seconds without any hint. A lost notice thus only delays.

mod across;
pub mod mail;

use tokio::sync::broadcast::{self, error::RecvError};
use tokio::task::{AbortHandle, JoinHandle};

use crate::store::{Event, Store};

/// How much a slow subscriber may be behind before it is told to look at everything.
const KEPT: usize = 1024;

/// What a subscriber hears.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum News {
    Event(Event),
    /// Something may have been missed: look at everything again.
    Resync,
}

/// The live updates of this process. Runs until it is dropped.
#[derive(Debug)]
pub struct Notify {
    out: broadcast::Sender<News>,
    tasks: Vec<AbortHandle>,
}

/// Hears everything that happens after it was made.
#[derive(Debug)]
pub struct Subscription(broadcast::Receiver<News>);

impl Notify {
    /// Starts listening to the store and, on PostgreSQL, to the other instances. Needs a runtime.
    pub fn start(store: &Store) -> Self {
        let out = broadcast::Sender::new(KEPT);
        let tasks: Vec<JoinHandle<()>> = match store.wire() {
            None => vec![tokio::spawn(within(store.listen(), out.clone()))],
            Some(wire) => across::start(store, &wire, &out),
        };
        Self {
            out,
            tasks: tasks.iter().map(JoinHandle::abort_handle).collect(),
        }
    }

    pub fn subscribe(&self) -> Subscription {
        Subscription(self.out.subscribe())
    }

    /// Tells no more. Before the database is closed, so that nothing asks it then.
    pub fn stop(&self) {
        for task in &self.tasks {
            task.abort();
        }
    }
}

impl Drop for Notify {
    fn drop(&mut self) {
        self.stop();
    }
}

impl Subscription {
    /// Waits for what happens next; `None` when there is no more to come.
    pub async fn next(&mut self) -> Option<News> {
        match self.0.recv().await {
            Ok(news) => Some(news),
            Err(RecvError::Lagged(_)) => Some(News::Resync),
            Err(RecvError::Closed) => None,
        }
    }
}

/// The only process: what its own store says is all there is.
async fn within(mut store: broadcast::Receiver<Event>, out: broadcast::Sender<News>) {
    while let Some(news) = heard(store.recv().await) {
        // Nobody listening is no fault.
        let _ = out.send(news);
    }
}

/// What the store's channel gave; `None` when it is closed.
fn heard(received: Result<Event, RecvError>) -> Option<News> {
    match received {
        Ok(event) => Some(News::Event(event)),
        Err(RecvError::Lagged(_)) => Some(News::Resync),
        Err(RecvError::Closed) => None,
    }
}
