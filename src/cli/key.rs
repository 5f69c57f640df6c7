//! `fellseam key`: the public key that records of this installation are checked with.

use std::process::ExitCode;

use clap::Args;

use super::{Ended, Place, open};

#[derive(Debug, Args)]
pub struct Key {
    #[command(flatten)]
    place: Place,
}

impl Key {
    pub fn run(self) -> Ended {
        open::block_on(async {
            let store = open::store(&self.place, open::world()).await?;
            println!("{}", store.record_key().await?.public());
            store.close().await;
            Ok(ExitCode::SUCCESS)
        })?
    }
}
