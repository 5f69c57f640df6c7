//! What a factory does.

use fellseam::exchange::approval::Anchor;
use fellseam::exchange::{round, thread};
use fellseam::spec::document::Lab;
use fellseam::spec::{Digest, RoundId, SignatureId, StyleId, SubmissionId, ThreadId};
use fellseam::store::{NewSubmission, Sign, StoreError};

use super::Factory;

impl Factory {
    /// The same people at work on another style.
    pub fn on(&self, style: &StyleId) -> Factory {
        let mut other = self.clone();
        other.party.style = style.clone();
        other
    }

    pub async fn acknowledges(&self, revision: u32) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.acknowledge(&permit, revision).await
    }

    /// Asks about an item of the newest revision.
    pub async fn asks(&self, item: &str, text: &str) -> Result<ThreadId, StoreError> {
        self.raises(thread::Kind::Question, None, item, text).await
    }

    pub async fn suggests(&self, item: &str, text: &str) -> Result<ThreadId, StoreError> {
        let kind = thread::Kind::Suggestion;
        self.raises(kind, None, item, text).await
    }

    /// Asks to let something pass.
    pub async fn asks_concession(&self, item: &str, text: &str) -> Result<ThreadId, StoreError> {
        let kind = thread::Kind::Concession;
        self.raises(kind, None, item, text).await
    }

    pub async fn starts(&self, round: &RoundId) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.start_round(&permit, round).await
    }

    pub async fn dispatches(&self, round: &RoundId) -> Result<(), StoreError> {
        self.dispatches_as(round, round::Materials::Substitute)
            .await
    }

    /// Sends pieces of these materials.
    pub async fn dispatches_as(
        &self,
        round: &RoundId,
        materials: round::Materials,
    ) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        let sending = round::Sending {
            materials,
            substitutes: "Zip from stock, matt",
            parcel: "Kestrel Post 1182",
        };
        self.store.dispatch_round(&permit, round, sending).await
    }

    /// Submits an option for the newest revision, with a photograph of its own.
    pub async fn submits(&self, anchor: &Anchor, note: &str) -> Result<SubmissionId, StoreError> {
        let photo = self.photographs(&format!("{note} {anchor:?}")).await;
        self.submits_with(anchor, note, None, &[photo]).await
    }

    /// The same with a reading, and these photographs.
    pub async fn submits_with(
        &self,
        anchor: &Anchor,
        note: &str,
        reading: Option<&Lab>,
        photos: &[Digest],
    ) -> Result<SubmissionId, StoreError> {
        let newest = self.store.newest(&self.reads().await).await?;
        let new = NewSubmission {
            revision: newest.expect("a revision").number,
            anchor,
            note,
            language: "en",
            reading,
            instrument: reading.map_or("", |_| "Bay 300, sphere"),
            photos,
        };
        let permit = self.lead.on(&self.style).await;
        self.store.submit(&permit, new).await
    }

    pub async fn signs_revision(&self, number: u32) -> Result<SignatureId, StoreError> {
        let shown = self.revision(number).await.digest;
        self.signs(Sign::Revision(number), None, &shown).await
    }
}
