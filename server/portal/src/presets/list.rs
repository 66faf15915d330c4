//! The page of all presets.

use askama::Template;
use axum::extract::State;
use axum::response::Html;
use leeward_core::safety;
use leeward_core::wire::{Length, Purpose};

use super::{StoredPreset, queries};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "presets/list.html")]
struct List {
    frame: Frame,
    groups: [Group; 2],
    archived: Vec<PresetLine>,
}

/// The presets of one purpose.
struct Group {
    id: &'static str,
    heading: &'static str,
    hint: &'static str,
    lines: Vec<PresetLine>,
}

struct PresetLine {
    kept: StoredPreset,
    /// The member may change it.
    open: bool,
    channels: String,
    width: String,
    length: String,
    /// How long such a set lasts; empty when open-ended.
    seconds: String,
}

/// `GET /presets`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame) -> Result<Html<String>, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("presets.view")).await?;
    let kept = queries::presets(&mut tx).await?;
    tx.commit().await?;
    let (archived, lines): (Vec<PresetLine>, Vec<PresetLine>) =
        kept.into_iter().map(|kept| line(kept, &member)).partition(|line| line.kept.archived);
    let (calm, processing) = lines.into_iter().partition(|line| line.kept.preset.purpose == Purpose::CalmPlace);
    let groups = [
        Group { id: "processing", heading: "Processing", hint: "For work on a target.", lines: processing },
        Group {
            id: "calm-place",
            heading: "Calm place",
            hint: "Short and slow, to strengthen a calm place. Never applied while a set runs.",
            lines: calm,
        },
    ];
    page(&List { frame, groups, archived })
}

fn line(kept: StoredPreset, member: &Member) -> PresetLine {
    let preset = &kept.preset;
    PresetLine {
        open: kept.owner.is_open_to(member),
        channels: codes::channels(preset.channels),
        width: preset.channels.seen(preset.width).map_or("no dot".into(), |width| format!("{width}\u{b0}")),
        length: codes::length(preset.length),
        seconds: match preset.length {
            Length::Cycles(cycles) => format!("{:.0} s", safety::set_ms(cycles, preset.rate) / 1_000.0),
            Length::Open => String::new(),
        },
        kept,
    }
}
