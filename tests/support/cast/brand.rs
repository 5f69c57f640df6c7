//! What the brand does.

use std::collections::BTreeMap;

use fellseam::exchange::approval::Verdict;
use fellseam::exchange::refused::FindingKey;
use fellseam::exchange::round::{self, Change, Outcome};
use fellseam::exchange::thread;
use fellseam::language::terms_of;
use fellseam::spec::units::DecimalSign;
use fellseam::spec::{RoundId, Section, SignatureId, Spec, StyleId, SubmissionId, ThreadId};
use fellseam::store::{Decide, NewRound, Publish, Retranslated, Saved, Sign, StoreError, Versions};

use super::{Brand, Factory, item};

impl Brand {
    /// The same people at work on another style.
    pub fn on(&self, style: &StyleId) -> Brand {
        let mut other = self.clone();
        other.party.style = style.clone();
        other
    }

    pub async fn shares_with(&self, factory: &Factory) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.share(&permit, &factory.org).await
    }

    pub async fn ends_share_with(&self, factory: &Factory) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.end_share(&permit, &factory.org).await
    }

    pub async fn draft(&self) -> (Spec, Versions) {
        let permit = self.lead.on(&self.style).await;
        let draft = self.store.draft(&permit).await.unwrap();
        (draft.spec, draft.versions)
    }

    /// Saves every section that the edit changes, over the version that was read.
    pub async fn edits(&self, edit: impl FnOnce(&mut Spec)) {
        let (old, versions) = self.draft().await;
        let mut new = old.clone();
        edit(&mut new);
        for section in Section::ALL.iter().copied() {
            let changed = match section {
                Section::Header => old.header != new.header,
                Section::Sizes => old.sizes != new.sizes,
                Section::Drawings => old.drawings != new.drawings,
                Section::Points => old.points != new.points,
                Section::Colourways => old.colourways != new.colourways,
                Section::Materials => old.materials != new.materials,
                Section::Construction => old.construction != new.construction,
                Section::Artwork => old.artwork != new.artwork,
                Section::Labels => old.labels != new.labels,
                Section::Packing => old.packing != new.packing,
            };
            if changed {
                let saved = self.saves(section, versions[&section], &new).await.unwrap();
                assert_eq!(saved, Saved::Won(versions[&section] + 1));
            }
        }
    }

    /// Saves one section of `spec` over version `base`.
    pub async fn saves(
        &self,
        section: Section,
        base: i64,
        spec: &Spec,
    ) -> Result<Saved, StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.save_section(&permit, section, base, spec).await
    }

    /// Keeps translations into a language: words and their text.
    pub async fn translates(&self, language: &str, texts: &[(&str, &str)]) {
        let now = self.store.translations(&self.reads().await).await.unwrap();
        let read = |words: &str| {
            let own = now
                .iter()
                .find(|it| it.language == language && it.words == words);
            own.map_or_else(String::new, |it| it.text.clone())
        };
        let wanted = texts.iter().map(|(words, text)| {
            let wanted = Retranslated {
                read: read(words),
                text: (*text).to_owned(),
            };
            ((*words).to_owned(), wanted)
        });
        let wanted = wanted.collect();
        let permit = self.lead.on(&self.style).await;
        let moved = self.store.translate(&permit, language, &wanted).await;
        assert!(moved.unwrap().is_empty(), "nobody else wrote");
    }

    /// Publishes the draft as it is now.
    pub async fn publishes(&self, reason: &str) -> Result<u32, StoreError> {
        self.publishes_accepting(reason, &BTreeMap::new()).await
    }

    /// Publishes the draft as it is now, with reasons for its warnings.
    pub async fn publishes_accepting(
        &self,
        reason: &str,
        accepted: &BTreeMap<FindingKey, String>,
    ) -> Result<u32, StoreError> {
        let form = Publish {
            reason,
            shown: &self.draft().await.1,
            accepted,
            decimal: DecimalSign::Point,
            terms: terms_of,
        };
        let permit = self.lead.on(&self.style).await;
        self.store.publish(&permit, form).await
    }

    /// The number of the newest revision; 0 before the first.
    pub async fn reads_newest(&self) -> u32 {
        let newest = self.store.newest(&self.reads().await).await.unwrap();
        newest.map_or(0, |newest| newest.number)
    }

    pub async fn withdraws(&self, revision: u32, reason: &str) -> Result<(), StoreError> {
        let permit = self.owner.on(&self.style).await;
        self.store.withdraw(&permit, revision, reason).await
    }

    /// Asks a factory about an item of the newest revision.
    pub async fn asks(
        &self,
        factory: &Factory,
        item: &str,
        text: &str,
    ) -> Result<ThreadId, StoreError> {
        let kind = thread::Kind::Question;
        self.raises(kind, Some(&factory.org), item, text).await
    }

    /// Raises a must-fix with a factory on an item of the newest revision.
    pub async fn insists(
        &self,
        factory: &Factory,
        item: &str,
        text: &str,
    ) -> Result<ThreadId, StoreError> {
        let kind = thread::Kind::MustFix;
        self.raises(kind, Some(&factory.org), item, text).await
    }

    /// Asks a factory for a proto of the current revision, a piece of each of these sizes.
    pub async fn requests(&self, factory: &Factory, sizes: &[&str]) -> Result<RoundId, StoreError> {
        self.requests_a(round::Kind::Proto, factory, sizes).await
    }

    /// Asks for a round of this kind.
    pub async fn requests_a(
        &self,
        kind: round::Kind,
        factory: &Factory,
        sizes: &[&str],
    ) -> Result<RoundId, StoreError> {
        let newest = self.store.newest(&self.reads().await).await?;
        let new = NewRound {
            org: &factory.org,
            kind,
            revision: newest.expect("a revision").number,
            pieces: &sizes.iter().map(|size| item(size)).collect::<Vec<_>>(),
        };
        let permit = self.lead.on(&self.style).await;
        self.store.request_round(&permit, new).await
    }

    pub async fn receives(&self, round: &RoundId) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        let step = round::Move::Receive;
        self.store.receive_round(&permit, round, step).await
    }

    pub async fn finishes_measuring(&self, round: &RoundId) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        let step = round::Move::FinishMeasuring;
        self.store.receive_round(&permit, round, step).await
    }

    pub async fn continues(&self, round: &RoundId) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store.continue_round(&permit, round).await
    }

    /// Ends a round for the revision of this number, and asks for it anew.
    pub async fn restarts(&self, round: &RoundId, revision: u32) -> Result<RoundId, StoreError> {
        let permit = self.lead.on(&self.style).await;
        self.store
            .restart_round(&permit, round, revision, "Restarted")
            .await
    }

    /// Decides a round; `changes` are items with what must change about them.
    pub async fn decides(
        &self,
        round: &RoundId,
        outcome: Outcome,
        reason: &str,
        changes: &[(&str, &str)],
    ) -> Result<(), StoreError> {
        let change = |(id, text): &(&str, &str)| Change {
            item: item(id),
            text: (*text).to_owned(),
        };
        let form = Decide {
            outcome,
            reason,
            changes: &changes.iter().map(change).collect::<Vec<_>>(),
            language: "en",
        };
        let permit = self.lead.on(&self.style).await;
        self.store.decide(&permit, round, form).await
    }

    /// Approves an option, or rejects it.
    pub async fn judges(
        &self,
        option: &SubmissionId,
        verdict: Verdict,
        reason: &str,
    ) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        let judged = self
            .store
            .judge_submission(&permit, option, verdict, reason);
        judged.await
    }

    pub async fn signs_revision(
        &self,
        factory: &Factory,
        number: u32,
    ) -> Result<SignatureId, StoreError> {
        let shown = self.revision(number).await.digest;
        let what = Sign::Revision(number);
        self.signs(what, Some(&factory.org), &shown).await
    }
}
