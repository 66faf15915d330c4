//! Writes entries without a pause, as the desk's queue sends them: one at a time, in order, each again until it is kept.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

use leeward::base::clock::{Machine, World};
use leeward::base::ids::new_id;
use leeward_core::wire::{Change, Entry, EntryValue, Moment};
use leeward_tests::Browser;
use tokio::time::{sleep, timeout};
use uuid::Uuid;

/// Between two entries; before a try is repeated. The desk gives a try up after 4 s.
const PACE: Duration = Duration::from_millis(120);
const WAIT: Duration = Duration::from_millis(250);
const PATIENCE: Duration = Duration::from_secs(4);

pub struct Writer {
    stop: Arc<AtomicBool>,
    task: tokio::task::JoinHandle<Written>,
}

/// What came of it.
#[derive(Default)]
pub struct Written {
    /// The server said that it has these.
    pub kept: Vec<Entry>,
    /// So many tries had no answer, or one that said "not now".
    pub again: usize,
}

impl Writer {
    pub fn begin(clinician: Browser, session: Uuid) -> Self {
        let stop = Arc::new(AtomicBool::new(false));
        let task = tokio::spawn(write(clinician, format!("/sessions/{session}/entries"), stop.clone()));
        Self { stop, task }
    }

    /// Waits until the last one is kept.
    pub async fn finish(self) -> Written {
        self.stop.store(true, Ordering::SeqCst);
        self.task.await.unwrap()
    }
}

async fn write(mut clinician: Browser, path: String, stop: Arc<AtomicBool>) -> Written {
    let mut written = Written::default();
    while !stop.load(Ordering::SeqCst) {
        let entry = next(&written.kept);
        loop {
            match timeout(PATIENCE, clinician.try_post_json(&path, &entry)).await {
                Ok(Some(answer)) if answer.status == 200 => {
                    assert_eq!(answer.json()["id"], entry.id.as_str());
                    break;
                }
                Ok(Some(answer)) => assert!(answer.status >= 500, "{}: {}", answer.status, answer.body),
                _ => {}
            }
            written.again += 1;
            sleep(WAIT).await;
        }
        written.kept.push(entry);
        sleep(PACE).await;
    }
    written
}

/// Ratings and words in turn; each tenth one corrects the one five before it, which is a SUD as well.
fn next(kept: &[Entry]) -> Entry {
    let number = kept.len();
    let value = match number % 5 {
        0 => EntryValue::Sud { value: u8::try_from(number % 11).unwrap_or_default() },
        1 => EntryValue::Voc { value: u8::try_from(1 + number % 7).unwrap_or_default() },
        2 => EntryValue::Words { words: format!("number {number}") },
        3 => EntryValue::Change { change: Change::Changing },
        _ => EntryValue::Sud { value: u8::try_from((number / 5) % 11).unwrap_or_default() },
    };
    let replaces = (number % 10 == 9).then(|| kept[number - 5].id.clone());
    Entry {
        id: new_id(&(Arc::new(Machine) as World)).to_string(),
        set: None,
        replaces,
        moment: Moment::BackAtTarget,
        segment: None,
        from_client: false,
        value,
    }
}
