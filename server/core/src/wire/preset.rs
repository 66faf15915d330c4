//! Presets: settings of a set under a name.

use serde::{Deserialize, Serialize};

use super::{Channels, Length, Plan};

/// What a set is for, or a preset.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
#[serde(rename_all = "snake_case")]
pub enum Purpose {
    /// Work on a target.
    #[default]
    Processing,
    /// Short and slow, to strengthen a calm place.
    CalmPlace,
}

/// Settings under a name. What it leaves out stays as it was.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(test, derive(ts_rs::TS), ts(export))]
pub struct Preset {
    /// 1 to 40 characters.
    pub name: String,
    /// See [`Purpose`].
    pub purpose: Purpose,
    /// See [`Plan::channels`].
    pub channels: Channels,
    /// See [`Plan::rate`].
    pub rate: f64,
    /// See [`Plan::width`].
    pub width: f64,
    /// See [`Plan::length`].
    pub length: Length,
}

impl Preset {
    /// `plan` with this preset's settings in it.
    pub fn applied_to(&self, plan: Plan) -> Plan {
        Plan { channels: self.channels, rate: self.rate, width: self.width, length: self.length, purpose: self.purpose, ..plan }
    }
}
