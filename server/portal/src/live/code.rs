//! The spoken code: six digits, told by telephone, kept as Argon2id.
//!
//! Cost: 19 MiB, two passes, one lane (OWASP Password Storage Cheat Sheet, its first recommendation
//! for Argon2id). What protects the code is the count of five tries and the ten minutes; the hash
//! keeps a stolen database from telling it.

use std::sync::LazyLock;

use argon2::password_hash::phc::PasswordHash;
use argon2::{Algorithm, Argon2, Params, PasswordHasher, PasswordVerifier, Version};
use tokio::sync::Semaphore;
use tokio::task::spawn_blocking;

use crate::clock::World;
use crate::error::Error;

const MEMORY_KIB: u32 = 19 * 1024;
const PASSES: u32 = 2;
const LANES: u32 = 1;

/// So many at once at most: each takes 19 MiB and a core.
static AT_ONCE: Semaphore = Semaphore::const_new(4);

/// Hashed when there is no link, so that the answer takes as long.
static NOBODYS: LazyLock<Option<String>> = LazyLock::new(|| hash("------", &[0; 16]).ok());

/// What the database keeps of `code`, in PHC form.
///
/// # Errors
/// [`Error::Inner`] when it cannot be hashed.
pub async fn seal(world: &World, code: String) -> Result<String, Error> {
    let mut salt = [0; 16];
    world.fill(&mut salt);
    at_length(move || hash(&code, &salt)).await?
}

/// Whether `typed` is the code that was kept; takes as long, and says no, when none was.
///
/// # Errors
/// [`Error::Inner`] when it cannot be hashed.
pub async fn matches(kept: Option<String>, typed: String) -> Result<bool, Error> {
    at_length(move || {
        let there = kept.is_some();
        let phc = kept.or_else(|| NOBODYS.clone()).ok_or_else(|| fault("no hash"))?;
        let phc = PasswordHash::new(&phc).map_err(fault)?;
        Ok(argon()?.verify_password(typed.as_bytes(), &phc).is_ok() && there)
    })
    .await?
}

async fn at_length<T: Send + 'static>(work: impl FnOnce() -> T + Send + 'static) -> Result<T, Error> {
    let permit = AT_ONCE.acquire().await.map_err(fault)?;
    let done = spawn_blocking(work).await.map_err(fault);
    drop(permit);
    done
}

fn hash(code: &str, salt: &[u8]) -> Result<String, Error> {
    Ok(argon()?.hash_password_with_salt(code.as_bytes(), salt).map_err(fault)?.to_string())
}

fn argon() -> Result<Argon2<'static>, Error> {
    let params = Params::new(MEMORY_KIB, PASSES, LANES, None).map_err(fault)?;
    Ok(Argon2::new(Algorithm::Argon2id, Version::V0x13, params))
}

fn fault(fault: impl std::fmt::Display) -> Error {
    Error::Inner(format!("spoken code: {fault}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clock::Machine;
    use std::sync::Arc;

    #[tokio::test]
    async fn only_the_code_itself_matches() {
        let world: World = Arc::new(Machine);
        let kept = seal(&world, "042917".into()).await.unwrap();
        // OWASP's figures, and the form of a PHC string (memory).
        assert!(kept.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"), "{kept}");
        assert!(matches(Some(kept.clone()), "042917".into()).await.unwrap());
        for wrong in ["042918", "42917", "", "------"] {
            assert!(!matches(Some(kept.clone()), wrong.into()).await.unwrap());
        }
    }

    #[tokio::test]
    async fn without_a_link_nothing_matches() {
        assert!(!matches(None, "------".into()).await.unwrap());
        assert!(!matches(None, "000000".into()).await.unwrap());
    }
}
