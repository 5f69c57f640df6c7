//! Connections that only read.
//!
//! A pool asks a connection whether it lives at every return, and before the next use, which costs
//! as much as a small read. Here nobody asks: a read may be asked again, so on a connection that
//! turns out to be dead it is, on a new one.

use std::sync::{Mutex, MutexGuard, PoisonError};

use sqlx::{ConnectOptions, Connection};
use tokio::sync::{Semaphore, SemaphorePermit};

use super::StoreError;

/// As many connections as may be open, made when they are needed.
pub(super) struct Readers<C: Connection> {
    options: C::Options,
    idle: Mutex<Vec<C>>,
    turns: Semaphore,
}

/// A connection for one read. Dropped and not given back (the one who asked went away, or the
/// connection is dead) it is closed.
pub(super) struct Lent<'a, C: Connection> {
    pub connection: C,
    home: &'a Readers<C>,
    turn: SemaphorePermit<'a>,
}

impl<C: Connection> Readers<C> {
    pub fn new(options: C::Options, most: usize) -> Self {
        Self {
            options,
            idle: Mutex::default(),
            turns: Semaphore::new(most),
        }
    }

    /// Waits for a connection that is free.
    pub async fn lend(&self) -> Result<Lent<'_, C>, StoreError> {
        let turn = self.turns.acquire().await;
        let turn = turn.map_err(|_| StoreError::from(sqlx::Error::PoolClosed))?;
        let open = self.idle().pop();
        self.lent(open, turn).await
    }

    async fn lent<'a>(
        &'a self,
        open: Option<C>,
        turn: SemaphorePermit<'a>,
    ) -> Result<Lent<'a, C>, StoreError> {
        let connection = match open {
            Some(connection) => connection,
            None => self.options.connect().await?,
        };
        Ok(Lent {
            connection,
            home: self,
            turn,
        })
    }

    /// Closes the connections that nobody uses, and lends no more.
    pub async fn close(&self) {
        self.turns.close();
        let idle = std::mem::take(&mut *self.idle());
        for connection in idle {
            // It is not needed any more, however it ends.
            let _ = connection.close().await;
        }
    }

    fn idle(&self) -> MutexGuard<'_, Vec<C>> {
        // Nothing panics while it is held.
        self.idle.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl<'a, C: Connection> Lent<'a, C> {
    /// Gives it back with what was read. One that does not answer is closed instead.
    pub fn done<T>(self, read: Result<T, StoreError>) -> Result<T, StoreError> {
        if !gone(&read) && !self.home.turns.is_closed() {
            self.home.idle().push(self.connection);
        }
        read
    }

    /// A new connection instead of this one, which is dead; so are, most likely, the ones that
    /// were opened before.
    pub async fn renew(self) -> Result<Lent<'a, C>, StoreError> {
        self.home.idle().clear();
        self.home.lent(None, self.turn).await
    }
}

/// Whether a connection did not answer.
pub(super) fn gone<T>(read: &Result<T, StoreError>) -> bool {
    matches!(read, Err(StoreError::Unavailable(_)))
}

impl<C: Connection> std::fmt::Debug for Readers<C> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Readers({:?})", self.turns)
    }
}
