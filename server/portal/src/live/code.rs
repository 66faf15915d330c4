//! The spoken code: six digits, told by telephone, kept as Argon2id.
//!
//! Cost: 19 MiB, two passes, one lane (OWASP Password Storage Cheat Sheet, its first recommendation
//! for Argon2id). What protects the code is the count of five tries and the ten minutes; the hash
//! keeps a stolen database from telling it.

use argon2::password_hash::phc::{Output, ParamsString, PasswordHash, Salt};
use argon2::{Algorithm, Argon2, Block, Params, Version};
use tokio::sync::{Mutex, Semaphore, SemaphorePermit};
use tokio::task::spawn_blocking;

use crate::base::clock::World;
use crate::store::error::Error;

const MEMORY_KIB: u32 = 19 * 1024;
const PASSES: u32 = 2;
const LANES: u32 = 1;

/// The 19 MiB, used by one after another and never given back: what each hash allocates for itself stays with the
/// allocator, thread by thread. Empty until the first code.
static MEMORY: Mutex<Vec<Block>> = Mutex::const_new(Vec::new());

/// So many may wait for it. Each takes some 30 ms, so that the last one is done well within a second.
static QUEUE: Semaphore = Semaphore::const_new(24);

/// A place in the queue, to be taken before a try at a code is counted: whoever is turned away has lost none.
pub struct Turn(#[expect(dead_code, reason = "held, and let go when it is dropped")] SemaphorePermit<'static>);

/// Stands in line.
///
/// # Errors
/// [`Error::Busy`] when the line is too long.
pub fn turn() -> Result<Turn, Error> {
    let busy = Error::Busy("Many people are joining at this moment. Nothing was counted against you: try again in a few seconds.");
    QUEUE.try_acquire().map(Turn).map_err(|_| busy)
}

impl Turn {
    /// What the database keeps of `code`, in PHC form.
    ///
    /// # Errors
    /// [`Error::Inner`] when it cannot be hashed.
    pub async fn seal(self, world: &World, code: String) -> Result<String, Error> {
        let mut salt = [0; 16];
        world.fill(&mut salt);
        let params = Params::new(MEMORY_KIB, PASSES, LANES, None).map_err(fault)?;
        Ok(hash(params, code, Salt::new(&salt).map_err(fault)?).await?.to_string())
    }

    /// Whether `typed` is the code that was kept.
    ///
    /// # Errors
    /// [`Error::Inner`] when it cannot be hashed.
    pub async fn matches(self, kept: String, typed: String) -> Result<bool, Error> {
        let kept = PasswordHash::new(&kept).map_err(fault)?;
        let (params, salt) = (Params::try_from(&kept).map_err(fault)?, kept.salt.ok_or_else(|| fault("no salt"))?);
        // Compared in constant time: see `Output`.
        Ok(kept.hash.is_some() && hash(params, typed, salt).await?.hash == kept.hash)
    }
}

async fn hash(params: Params, code: String, salt: Salt) -> Result<PasswordHash, Error> {
    let mut memory = MEMORY.lock().await;
    let work = move || {
        let blocks = memory.len().max(params.block_count());
        memory.resize(blocks, Block::new());
        let (mut out, string) = ([0; Params::DEFAULT_OUTPUT_LEN], ParamsString::try_from(&params).map_err(fault)?);
        let argon = Argon2::new(Algorithm::Argon2id, Version::V0x13, params);
        argon.hash_password_into_with_memory(code.as_bytes(), &salt, &mut out, memory.as_mut_slice()).map_err(fault)?;
        Ok(PasswordHash {
            algorithm: Algorithm::Argon2id.ident(),
            version: Some(Version::V0x13.into()),
            params: string,
            salt: Some(salt),
            hash: Some(Output::new(&out).map_err(fault)?),
        })
    };
    spawn_blocking(work).await.map_err(fault)?
}

fn fault(fault: impl std::fmt::Display) -> Error {
    Error::Inner(format!("spoken code: {fault}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::base::clock::Machine;
    use argon2::PasswordVerifier;
    use std::sync::Arc;

    /// Against the library's own check, which takes memory of its own.
    #[tokio::test]
    async fn only_the_code_itself_matches_and_a_line_that_is_too_long_is_said_to_be_so() {
        let world: World = Arc::new(Machine);
        let kept = turn().unwrap().seal(&world, "042917".into()).await.unwrap();
        // OWASP's figures, and the form of a PHC string (memory).
        assert!(kept.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"), "{kept}");
        assert!(Argon2::default().verify_password(b"042917", kept.as_str()).is_ok());
        assert!(turn().unwrap().matches(kept.clone(), "042917".into()).await.unwrap());
        for wrong in ["042918", "42917", "", "------"] {
            assert!(!turn().unwrap().matches(kept.clone(), wrong.into()).await.unwrap());
        }
        // Here, because there is one line for the whole process.
        let line: Vec<_> = std::iter::from_fn(|| turn().ok()).take(1_000).collect();
        assert!(line.len() <= 24, "{}", line.len());
        assert!(matches!(turn(), Err(Error::Busy(_))));
        drop(line);
        assert!(turn().is_ok());
    }
}
