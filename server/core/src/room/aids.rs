//! What the clinician puts on the client's page beside the sets, and what the client says there. Nothing of it moves, starts or stops a set.

use super::orders::{Carried, Done};
use super::{MomentKind, Room};
use crate::wire::{ByClient, Pad, Refusal, SeatState, Steadying};

/// Characters of a resource on the client's page.
const MOST_WORDS: usize = 300;

/// See the module.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Aids {
    /// What the client's page shows to steady by.
    pub steadying: Option<Steadying>,
    /// The scale that is open there.
    pub pad: Option<Pad>,
    /// How often one was opened.
    pub asked: u32,
    /// What came from the last one.
    pub rated: Option<ByClient>,
    /// After a stop the client has said that they need longer.
    pub longer: bool,
}

impl Room {
    /// Puts something to steady by on the client's page, or takes it away.
    pub(super) fn order_show(&mut self, steadying: Option<Steadying>) -> Done {
        if let Some(Steadying::Resource { words }) = &steadying
            && (words.trim().is_empty() || words.chars().count() > MOST_WORDS)
        {
            return Err(Refusal::Limit { limit: format!("What the client's page shows has 1 to {MOST_WORDS} characters.") });
        }
        self.may_put()?;
        self.aids.steadying = steadying;
        Ok(Carried::Now)
    }

    /// Opens a scale on the client's page, or takes it away.
    pub(super) fn order_ask(&mut self, pad: Option<Pad>) -> Done {
        self.may_put()?;
        if pad.is_some() {
            let needs = self.needs();
            if needs.stage || needs.check {
                return Err(Refusal::Needs);
            }
            self.aids.rated = None;
            self.aids.asked += 1;
        }
        self.aids.pad = pad;
        Ok(Carried::Now)
    }

    fn may_put(&self) -> Result<(), Refusal> {
        if self.is_live() && !self.is_active() { Ok(()) } else { Err(Refusal::WrongState) }
    }

    /// The client's page shows a set from now on, and nothing beside it.
    pub(super) fn put_away(&mut self) {
        (self.aids.steadying, self.aids.pad, self.aids.longer) = (None, None, false);
    }

    /// What came from the scale. The page tells it until a view shows it, so what was heard already changes nothing.
    pub(super) fn client_rated(&mut self, id: String, asked: u32, value: Option<u8>) -> Result<(), &'static str> {
        if !is_uuid(&id) {
            return Err("a rating without an id");
        }
        if asked == self.aids.asked
            && let Some(pad) = self.aids.pad.take()
        {
            if value.is_some_and(|value| !pad.scale.has(value)) {
                return Err("an impossible rating");
            }
            self.aids.rated = Some(ByClient { id, pad, value });
        }
        self.show_again();
        Ok(())
    }

    /// Only while something waits for the client's Ready: that is when they may be waited for.
    pub(super) fn client_longer(&mut self) {
        if self.seat == SeatState::Admitted && self.need_ready && !self.aids.longer {
            self.aids.longer = true;
            self.record_moment(MomentKind::ClientLonger);
        }
        self.show_again();
    }
}

/// As RFC 9562 writes one.
fn is_uuid(text: &str) -> bool {
    let dash = |at| matches!(at, 8 | 13 | 18 | 23);
    text.len() == 36 && text.bytes().enumerate().all(|(at, byte)| if dash(at) { byte == b'-' } else { byte.is_ascii_hexdigit() })
}
