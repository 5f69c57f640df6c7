//! `fellseam demo`: the service with an invented brand, two invented factories and three styles.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use tokio::net::TcpListener;

use super::serve::{Door, start_log, until_stopped};
use super::{Ended, Place, open};
use crate::web::{App, Settings};

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
        let _ = (&self.data, self.reset);
        open::block_on(async {
            let place = Place {
                data: self.data.clone(),
                database: None,
            };
            let store = open::store(&place).await?;
            let files = open::files(&place).await?;
            let listener = TcpListener::bind(self.door.listen).await?;
            let public_url = format!("http://{}", listener.local_addr()?);
            let settings = Settings {
                public_url,
                demo: true,
            };
            let app = App::new(store, files, open::renderer()?, settings);
            until_stopped(app, listener).await?;
            Ok(ExitCode::SUCCESS)
        })?
    }
}
