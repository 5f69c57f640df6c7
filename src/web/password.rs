//! Passwords by argon2id, off the async threads and only a few at a time: each takes 19 MiB.

use std::sync::Arc;

use argon2::password_hash::{PasswordHasher, PasswordVerifier, phc::PasswordHash};
use argon2::{Algorithm, Argon2, Params, Version};
use tokio::sync::Semaphore;
use tokio::task::spawn_blocking;

/// The shortest password that is taken.
pub const SHORTEST: usize = 10;

/// Hashes and checks passwords.
pub struct Passwords {
    places: Arc<Semaphore>,
}

impl Default for Passwords {
    fn default() -> Self {
        Self {
            places: Arc::new(Semaphore::new(4)),
        }
    }
}

/// The OWASP password storage cheat sheet's second choice for argon2id: 19 MiB, 2 passes, 1 lane.
fn argon2() -> Argon2<'static> {
    let params = Params::new(19 * 1024, 2, 1, None).expect("constants within argon2's bounds");
    Argon2::new(Algorithm::Argon2id, Version::V0x13, params)
}

impl Passwords {
    /// The hash to store, with a salt of its own.
    pub async fn hash(&self, password: String) -> Result<String, argon2::password_hash::Error> {
        self.work(move || {
            argon2()
                .hash_password(password.as_bytes())
                .map(|hash| hash.to_string())
        })
        .await
    }

    /// Whether the password is right. Without a stored hash it takes the same time to say no.
    pub async fn check(&self, password: String, stored: Option<String>) -> bool {
        // The hash of no password anybody has: made here, checked like any other.
        const NOBODY: &str = "$argon2id$v=19$m=19456,t=2,p=1$AAAAAAAAAAAAAAAAAAAAAA$\
            AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA";
        self.work(move || {
            let known = stored.is_some();
            let stored = stored.unwrap_or_else(|| NOBODY.to_owned());
            let right = PasswordHash::new(&stored)
                .is_ok_and(|hash| argon2().verify_password(password.as_bytes(), &hash).is_ok());
            right && known
        })
        .await
    }

    async fn work<T: Send + 'static>(&self, job: impl FnOnce() -> T + Send + 'static) -> T {
        let place = Arc::clone(&self.places)
            .acquire_owned()
            .await
            .expect("the semaphore is never closed");
        let done = spawn_blocking(move || {
            let _place = place;
            job()
        });
        match done.await {
            Ok(value) => value,
            Err(panicked) => std::panic::resume_unwind(panicked.into_panic()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn only_the_right_password_opens() {
        let passwords = Passwords::default();
        let hash = passwords.hash("felled twice".into()).await.unwrap();
        assert!(
            hash.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"),
            "{hash}"
        );
        assert!(
            passwords
                .check("felled twice".into(), Some(hash.clone()))
                .await
        );
        assert!(!passwords.check("felled once".into(), Some(hash)).await);
        assert!(!passwords.check("felled twice".into(), None).await);
    }
}
