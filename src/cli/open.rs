//! Opens what the other commands work on, with the real clock and the real chance.

use std::io;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use super::Place;
use crate::files::render::heic_converter;
use crate::files::{Files, Limits, Renderer};
use crate::store::{Db, Store, StoreError, World, later, stamp};

/// The world as it is.
pub fn world() -> World {
    world_behind(Arc::default())
}

/// The world with a clock that is so many seconds behind: the only place where the program asks it
/// for the time and for chance.
#[allow(
    clippy::disallowed_methods,
    reason = "the one place that hands in the real clock and chance"
)]
pub fn world_behind(seconds: Arc<AtomicI64>) -> World {
    World::new(
        move || {
            let behind = seconds.load(Ordering::Relaxed);
            later(&stamp(jiff::Timestamp::now()), -behind)
        },
        |bytes| {
            // Without chance no token is safe: better to stop than to go on.
            getrandom::fill(bytes).expect("the system gives random bytes");
        },
    )
}

/// The store of a place; its folder is made when it is not there.
pub async fn store(place: &Place, world: World) -> Result<Store, StoreError> {
    let address = match &place.database {
        Some(address) => address.clone(),
        None => {
            make_folder(&place.data).map_err(|cause| StoreError::Lock {
                path: place.data.clone(),
                cause,
            })?;
            format!("sqlite:{}", place.data.join("fellseam.db").display())
        }
    };
    Ok(Store::new(Db::open(&address).await?, world))
}

/// The folder of files of a place.
pub async fn files(place: &Place) -> io::Result<Files> {
    make_folder(&place.data)?;
    Files::open(place.data.join("files")).await
}

/// This same program, to be started again for each picture.
#[allow(
    clippy::disallowed_methods,
    reason = "where programs lie is the machine's to say, not a setting of ours"
)]
pub fn renderer() -> io::Result<Renderer> {
    let heic = std::env::var_os("PATH").and_then(|path| heic_converter(&path));
    let program = std::env::current_exe()?;
    Ok(Renderer::new(program, Limits::default(), heic))
}

/// Runs a command's asynchronous part.
pub fn block_on<T>(work: impl Future<Output = T>) -> io::Result<T> {
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .build()?;
    Ok(runtime.block_on(work))
}

fn make_folder(folder: &Path) -> io::Result<()> {
    std::fs::create_dir_all(folder)
}
