//! What others should look at again. Ids only: who listens reads what they may.

use tokio::sync::broadcast;

use super::Store;
use crate::spec::{OrgId, StyleId};

/// Something happened on a style.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    pub style: StyleId,
    pub audience: Audience,
}

/// Whom it concerns.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Audience {
    /// The brand alone: drafts and internal notes.
    Brand,
    /// The brand and this factory.
    Factory(OrgId),
    /// The brand and every factory that the style is shared with.
    All,
}

impl Audience {
    /// Whom an entry of the ledger concerns.
    pub(super) fn of(visible_to: Option<OrgId>, internal: bool) -> Self {
        match visible_to {
            _ if internal => Audience::Brand,
            Some(org) => Audience::Factory(org),
            None => Audience::All,
        }
    }
}

impl Event {
    /// Whether somebody whose permit has this tenant should look.
    pub fn concerns(&self, tenant: Option<&OrgId>) -> bool {
        match (&self.audience, tenant) {
            (_, None) | (Audience::All, _) => true,
            (Audience::Brand, Some(_)) => false,
            (Audience::Factory(org), Some(tenant)) => org == tenant,
        }
    }
}

impl Store {
    /// Everything that happens from now on, in this process.
    pub fn listen(&self) -> broadcast::Receiver<Event> {
        self.events.subscribe()
    }

    /// Tells those who listen; nobody listening is no fault.
    pub(super) fn tell(&self, event: Event) {
        let _ = self.events.send(event);
    }
}
