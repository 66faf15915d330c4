//! What makes the stimulus easy to bear for one client. Chosen in preparation, carried by each plan.

use serde::{Deserialize, Serialize};

/// How the dot goes from one extreme to the other.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Sweep {
    /// Slow at the extremes, fastest half-way: a cosine of the phase.
    #[default]
    Sine,
    /// The same speed all the way, turning at once at each extreme. A set still starts and ends
    /// at rest, since its rate rises from 0 and falls to 0.
    Constant,
}

/// Colours of the dot and of its field. The figures stand in `web/styles/tokens.css`: one pair for
/// the dark page and one for the lighter page each. Every pair has a contrast of 3:1 or better.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Colours {
    /// Pale sand on dusk.
    #[default]
    Sand,
    /// Pale green on moss.
    Leaf,
    /// Pale blue on deep water.
    Lake,
    /// Grey on grey.
    Stone,
}

/// What a tone is made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Timbre {
    /// One pure tone.
    #[default]
    Round,
    /// The tone with two faint overtones.
    Warm,
    /// The tone struck: it dies away at once.
    Wood,
}

/// See the head of this file. The default is what is used when nothing was chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(default)]
pub struct Comfort {
    /// How the dot moves along its path.
    pub sweep: Sweep,
    /// Of the dot and its field.
    pub colours: Colours,
    /// Of the tones.
    pub timbre: Timbre,
    /// Of the tones, Hz, within `safety::PITCH_HZ`.
    pub pitch: u16,
    /// How long one tone sounds, ms, within `safety::TONE_MS`.
    pub tone_ms: u16,
    /// Loudness, percent of the most that the client's page will play, within `safety::LEVEL_PERCENT`.
    pub level: u8,
    /// With the hands channel the client's device buzzes at each extreme, once the client has said
    /// that it can be felt.
    pub vibration: bool,
}

impl Default for Comfort {
    /// Tones of 450 Hz and 120 ms at the full level: common practice, no source.
    fn default() -> Self {
        Comfort {
            sweep: Sweep::Sine,
            colours: Colours::Sand,
            timbre: Timbre::Round,
            pitch: 450,
            tone_ms: 120,
            level: 100,
            vibration: false,
        }
    }
}
