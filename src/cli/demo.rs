//! `fellseam demo`: the service with an invented brand, two invented factories and four styles.

mod cast;
mod folder;
mod guide;
mod packs;
mod story;
#[cfg(test)]
mod tests;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use tokio::net::TcpListener;

use self::folder::Folder;
use self::story::Behind;
use super::serve::{Door, asked_to_stop, start_log, until_stopped};
use super::{Ended, Place, open};
use crate::spec::PersonId;
use crate::web::{App, Settings};

/// A sentence for the one who started the demo.
type Failed = Box<dyn std::error::Error>;

#[derive(Debug, Args)]
pub struct Demo {
    #[command(flatten)]
    door: Door,
    /// The folder of the demo.
    #[arg(long, value_name = "FOLDER", default_value = "fellseam-demo")]
    data: PathBuf,
    /// Forget what was done in the demo and begin anew.
    #[arg(long)]
    reset: bool,
}

impl Demo {
    pub fn run(self) -> Ended {
        start_log(self.door.log);
        let mut folder = Folder::take(&self.data)?;
        open::block_on(async {
            let listener = TcpListener::bind(self.door.listen).await?;
            let settings = Settings {
                public_url: format!("http://{}", listener.local_addr()?),
                demo: true,
                behind_proxy: false,
                mails: false,
            };
            let place = Place {
                data: self.data.clone(),
                database: None,
            };
            let owner = match folder.owner().filter(|_| !self.reset) {
                Some(owner) => owner.clone(),
                None => {
                    // Also what an earlier start left behind when it was stopped half-way.
                    folder.clear()?;
                    let owner = fill(&place, &settings).await?;
                    folder.is_filled(owner.clone())?;
                    owner
                }
            };
            let store = open::store(&place, open::world()).await?;
            let asked = asked_to_stop()?;
            println!(
                "{}",
                guide::guide(&store, &owner, &settings.public_url).await?
            );
            let files = open::files(&place).await?;
            let app = App::new(store, files, open::renderer()?, settings);
            until_stopped(app, listener, asked).await?;
            Ok(ExitCode::SUCCESS)
        })?
    }
}

/// Tells the story in a place without anything.
async fn fill(place: &Place, settings: &Settings) -> Result<PersonId, Failed> {
    println!("Filling {} for the first time ...", place.data.display());
    let behind = Behind::default();
    let store = open::store(place, open::world_behind(behind.clone())).await?;
    let files = open::files(place).await?;
    let app = App::new(store, files, open::renderer()?, settings.clone());
    let owner = story::tell(&app, &behind).await;
    app.stop();
    app.store.close().await;
    owner
}
