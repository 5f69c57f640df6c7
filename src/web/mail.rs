//! What waits for somebody, by mail: one letter when something new does, never the same twice, in
//! their language, with a link to each thing and the end of each style's chain.

use std::collections::{BTreeMap, BTreeSet};
use std::time::Duration;

use super::App;
use super::needs::{Line, lines};
use crate::access::{act, grant, grant_on};
use crate::language::{Language, Text};
use crate::notify::mail::{Letter, NotSent, Post};
use crate::spec::{Digest, StyleId};
use crate::store::{Recipient, StoreError};

/// Sends what is to be sent, again and again.
pub async fn every(app: App, post: Post, pause: Duration) {
    loop {
        if let Err(why) = send_out(&app, &post).await {
            tracing::error!(%why, "mails were not sent");
        }
        tokio::time::sleep(pause).await;
    }
}

/// Sends a letter to everybody for whom something new waits. Returns how many went out.
///
/// What was told is kept after the server took the letter: a fall in between sends it twice rather
/// than never.
pub async fn send_out(app: &App, post: &Post) -> Result<usize, StoreError> {
    let (mut sent, mut open) = (0, false);
    for to in app.store.recipients().await? {
        let Ok(permit) = grant::<act::Enter>(&to.actor) else {
            continue;
        };
        let language = Language::from_tag(&to.language).unwrap_or(Language::ORIGINAL);
        let t = language.text();
        let needs = app.store.needs(&permit).await?;
        let said = lines(Language::ORIGINAL.text(), to.actor.role, needs.clone());
        let now: BTreeSet<String> = said.iter().map(short_hash).collect();
        if now == to.told {
            continue;
        }
        if !now.is_subset(&to.told) {
            if !open && let Err(why) = post.opens().await {
                tracing::warn!(%why, "mails wait for the next time");
                return Ok(sent);
            }
            open = true;
            let waiting = lines(t, to.actor.role, needs);
            let letter = letter(app, t, &to, waiting).await?;
            match post.send(&letter).await {
                Ok(()) => sent += 1,
                Err(NotSent::Later(why)) => {
                    tracing::warn!(%why, "a mail waits for the next time");
                    continue;
                }
                // Counted as told: it would fail again each time.
                Err(NotSent::Never(why)) => tracing::warn!(%why, "a mail cannot be delivered"),
            }
        }
        app.store.keep_told(&to, &now).await?;
    }
    Ok(sent)
}

/// What tells one thing from another: by its words in the original, whatever the language is.
fn short_hash(line: &Line) -> String {
    Digest::of(format!("{} {}", line.href, line.what).as_bytes()).as_str()[..16].to_owned()
}

async fn letter(
    app: &App,
    t: Text,
    to: &Recipient,
    waiting: Vec<Line>,
) -> Result<Letter, StoreError> {
    let count = waiting.len();
    let mut of_style: BTreeMap<(String, StyleId), Vec<Line>> = BTreeMap::new();
    for line in waiting {
        let key = (line.style.clone(), line.of.clone());
        of_style.entry(key).or_default().push(line);
    }
    let name = to.name.as_deref().unwrap_or_default();
    let mut text = format!("{}\n\n", t.say("mail-hello").with("name", name));
    for ((style, id), lines) in of_style {
        text += &format!("{style}\n");
        for line in lines {
            let url = format!("{}{}", app.settings.public_url, line.href);
            text += &format!("- {}\n  {url}\n", line.what);
        }
        let facts = app.store.style_facts(&to.actor, &id).await?;
        let read = facts.and_then(|facts| grant_on::<act::Read>(&to.actor, &facts).ok());
        if let Some(read) = read {
            let head = app.store.head(&read).await?;
            let chain = t.say("mail-chain").with("entries", head.seq.to_string());
            text += &format!("  {} {}\n", chain, head.hash);
        }
        text.push('\n');
    }
    text += &format!("{}\n{}/me\n", t.say("mail-why"), app.settings.public_url);
    Ok(Letter {
        to: to.address.clone(),
        subject: t.say("mail-subject").with("count", count).to_string(),
        text,
    })
}
