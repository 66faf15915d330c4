//! What the clinician puts on the client's page beside the sets: something to steady by, or a scale to rate on.

use serde::{Deserialize, Serialize};

use super::Moment;

/// Something to steady by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Steadying {
    /// The page's own words about here and now.
    Orient,
    /// What has helped this client before.
    Resource {
        /// In the client's words, 1 to 300 characters. The room hands them on and keeps them nowhere.
        words: String,
    },
}

/// One of the two scales.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Scale {
    /// 0 to 10.
    Sud,
    /// 1 to 7.
    Voc,
}

impl Scale {
    /// Whether a value lies on it.
    pub fn has(self, value: u8) -> bool {
        match self {
            Self::Sud => crate::scale::Sud::new(value).is_ok(),
            Self::Voc => crate::scale::Voc::new(value).is_ok(),
        }
    }
}

/// A scale that is open on the client's page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Pad {
    /// Which.
    pub scale: Scale,
    /// When in the protocol it is asked.
    pub moment: Moment,
}

/// The same as the client's page knows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct OpenPad {
    /// Which scale.
    pub scale: Scale,
    /// Counts what was asked in this room: an answer names what it is to.
    pub asked: u32,
}

/// What came from it. The desk in control writes it down as an entry under this id, so that it is kept once.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct ByClient {
    /// A UUID made by the client's page.
    pub id: String,
    /// What was asked.
    pub pad: Pad,
    /// `None`: the client passed it over.
    pub value: Option<u8>,
}
