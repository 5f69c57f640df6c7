//! What the people of either side do.

use fellseam::access::{StylePermit, act};
use fellseam::exchange::approval::{Anchor, needed};
use fellseam::exchange::measuring::Reason;
use fellseam::exchange::thread;
use fellseam::spec::{Digest, ItemId, OrgId, PieceId, RoundId, SignatureId, ThreadId};
use fellseam::store::{
    FileKind, LedgerLine, Need, NewFile, NewMeasurement, NewSkip, NewThread, Revision, Round, Says,
    Sign, SignForm, StoreError, Submission, ThreadMove, ThreadView,
};

use super::{Party, inches, item, pictures};

impl Party {
    /// Writes into a thread.
    pub async fn says(&self, thread: &ThreadId, text: &str) -> Result<(), StoreError> {
        self.sends(thread, text, &[]).await
    }

    /// Writes into a thread, with photographs.
    pub async fn sends(
        &self,
        thread: &ThreadId,
        text: &str,
        photos: &[Digest],
    ) -> Result<(), StoreError> {
        let says = Says {
            text,
            language: "en",
            photos,
        };
        let permit = self.lead.on(&self.style).await;
        self.store.say(&permit, thread, says).await
    }

    /// Uploads a photograph, told from others by what is on it.
    pub async fn photographs(&self, what: &str) -> Digest {
        let digest = Digest::of(what.as_bytes());
        let file = NewFile {
            digest: &digest,
            kind: FileKind::Photo,
            media_type: "image/jpeg",
            name: "",
            size: 90_000,
            width: 2048,
            height: 1536,
            taken: Some("2026-03-02T14:31:00"),
            pictures: &pictures(&digest),
        };
        let permit: StylePermit<act::Answer> = self.lead.on(&self.style).await;
        self.store.add_photo(&permit, file).await.unwrap();
        digest
    }

    /// Moves a thread on.
    pub async fn moves(&self, thread: &ThreadId, to: ThreadMove) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.move_thread(&permit, thread, &to).await
    }

    /// Types values in: the piece's number, the point, the inches. Each under a key of its own.
    pub async fn measures(
        &self,
        round: &RoundId,
        typed: &[(u32, &str, &str)],
    ) -> Result<usize, StoreError> {
        let mut values = Vec::new();
        for (piece, point, typed) in typed {
            values.push(self.value(round, *piece, point, typed).await);
        }
        let permit = self.hands.on(&self.style).await;
        let kept = self.store.measure(&permit, round, &values).await?;
        assert!(kept.refused.is_empty(), "the keys are new");
        Ok(kept.new)
    }

    /// One typed value, under a new key.
    pub async fn value(
        &self,
        round: &RoundId,
        piece: u32,
        point: &str,
        typed: &str,
    ) -> NewMeasurement {
        let entered = inches(typed);
        NewMeasurement {
            piece: self.piece(round, piece).await,
            point: item(point),
            value: entered.nm,
            unit: entered.unit,
            wash: None,
            key: self.store.world().id(),
        }
    }

    /// The hands of the sample room say why a point was not measured.
    pub async fn skips(
        &self,
        round: &RoundId,
        piece: u32,
        point: &str,
        reason: Reason,
    ) -> Result<bool, StoreError> {
        let new = NewSkip {
            piece: self.piece(round, piece).await,
            point: item(point),
            reason,
            key: self.store.world().id(),
        };
        let permit = self.hands.on(&self.style).await;
        self.store.skip(&permit, round, &new).await
    }

    /// Adds a photograph to a piece, told from others by what is on it.
    pub async fn photographs_piece(
        &self,
        round: &RoundId,
        piece: u32,
        what: &str,
    ) -> Result<Option<usize>, StoreError> {
        let photo = self.photographs(what).await;
        let piece = self.piece(round, piece).await;
        let permit = self.lead.on(&self.style).await;
        self.store
            .photograph_piece(&permit, round, &piece, &[photo])
            .await
    }

    /// Puts a translation beside the newest message of a thread.
    pub async fn translates_newest(
        &self,
        thread: &ThreadId,
        language: &str,
        text: &str,
    ) -> Result<(), StoreError> {
        let message = self
            .thread(thread)
            .await
            .messages
            .pop()
            .expect("a message")
            .id;
        let permit = self.lead.on(&self.style).await;
        let store = &self.store;
        store
            .translate_message(&permit, thread, &message, language, text)
            .await
    }

    async fn piece(&self, round: &RoundId, number: u32) -> PieceId {
        let round = self.round(round).await;
        let piece = round.pieces.into_iter().find(|it| it.number == number);
        piece.expect("the piece").id
    }

    /// Signs what stands there now, as somebody who reads it first.
    pub async fn signs_round(&self, round: &RoundId) -> Result<SignatureId, StoreError> {
        let permit = self.lead.on(&self.style).await;
        let must_fixes = self.store.must_fixes_of(&permit, round).await.unwrap();
        let round = self.round(round).await;
        let record = round.record(must_fixes);
        let shown = record.map_or(round.digest, |record| record.digest().unwrap());
        self.signs(Sign::Round(&round.id), None, &shown).await
    }

    pub async fn signs(
        &self,
        what: Sign<'_>,
        org: Option<&OrgId>,
        shown: &Digest,
    ) -> Result<SignatureId, StoreError> {
        let form = SignForm {
            what,
            org,
            shown,
            screen: &Digest::of(b"I have read it, and agree."),
            language: "en",
            local_time: "2026-03-02T15:00:00+07:00",
        };
        let permit = self.lead.on(&self.style).await;
        self.store.sign(&permit, form).await
    }

    pub async fn reads(&self) -> StylePermit<act::Read> {
        self.lead.on(&self.style).await
    }

    pub async fn threads(&self) -> Vec<ThreadView> {
        self.store.threads(&self.reads().await).await.unwrap()
    }

    pub async fn thread(&self, id: &ThreadId) -> ThreadView {
        let threads = self.threads().await.into_iter();
        threads
            .into_iter()
            .find(|it| it.facts.id == *id)
            .expect("the thread")
    }

    pub async fn state_of(&self, thread: &ThreadId) -> thread::State {
        self.thread(thread).await.facts.state
    }

    /// What was submitted, as far as they see it.
    pub async fn submissions(&self) -> Vec<Submission> {
        self.store.submissions(&self.reads().await).await.unwrap()
    }

    /// Everything that the newest revision needs approved.
    pub async fn to_approve(&self) -> Vec<Anchor> {
        let newest = self.store.newest(&self.reads().await).await.unwrap();
        let spec = &newest.expect("a revision").frozen.spec;
        needed(spec).into_iter().map(|it| it.anchor).collect()
    }

    pub async fn rounds(&self) -> Vec<Round> {
        self.store.rounds(&self.reads().await).await.unwrap()
    }

    pub async fn round(&self, id: &RoundId) -> Round {
        self.store.round(&self.reads().await, id).await.unwrap()
    }

    pub async fn revision(&self, number: u32) -> Revision {
        let permit = self.reads().await;
        self.store.revision(&permit, number).await.unwrap()
    }

    pub async fn ledger(&self) -> Vec<LedgerLine> {
        self.store.ledger(&self.reads().await).await.unwrap()
    }

    pub async fn needs(&self) -> Vec<Need> {
        self.lead.needs().await
    }

    /// Raises a thread on an item of the newest revision.
    pub(super) async fn raises(
        &self,
        kind: thread::Kind,
        org: Option<&OrgId>,
        item: &str,
        text: &str,
    ) -> Result<ThreadId, StoreError> {
        let permit = self.reads().await;
        let newest = self.store.newest(&permit).await?.expect("a revision");
        let new = NewThread {
            item: &ItemId::new(item),
            revision: newest.number,
            kind,
            org,
            says: Says {
                text,
                language: "en",
                photos: &[],
            },
        };
        self.store.ask(&self.lead.on(&self.style).await, new).await
    }
}
