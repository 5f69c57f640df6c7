//! What others should look at again. Ids only: who listens reads what they may.

use tokio::sync::broadcast;

use super::Store;
use crate::spec::{OrgId, StyleId};

/// Something happened on a style.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    pub style: StyleId,
    /// The one factory that it concerns; `None`: the brand and every factory it is shared with.
    pub org: Option<OrgId>,
}

impl Store {
    /// Everything that happens from now on, in this process.
    pub fn listen(&self) -> broadcast::Receiver<Event> {
        self.events.subscribe()
    }

    /// Tells those who listen; nobody listening is no fault.
    pub fn tell(&self, style: &StyleId, org: Option<OrgId>) {
        let _ = self.events.send(Event {
            style: style.clone(),
            org,
        });
    }
}
