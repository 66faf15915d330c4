//! What the record calls the things that happen in a room. Part of the data: never change one.

use leeward_core::room::{Cause, MomentKind};
use leeward_core::wire::{Ending, Interruption, Unwatched};

/// As `wire::Ending` writes it.
pub(super) const fn ending(ending: Ending) -> &'static str {
    match ending {
        Ending::Done => "done",
        Ending::EndedByClinician => "ended_by_clinician",
        Ending::StoppedByClinician => "stopped_by_clinician",
        Ending::StoppedByClient => "stopped_by_client",
        Ending::CannotSee => "cannot_see",
        Ending::Unseen => "unseen",
        Ending::Unheard => "unheard",
        Ending::PageInterrupted => "page_interrupted",
        Ending::LinkLost => "link_lost",
        Ending::HardLimit => "hard_limit",
        Ending::Unknown => "unknown",
    }
}

/// Why there is a new timeline. What stopped a set stands in its ending.
pub(super) const fn cause(cause: Cause) -> &'static str {
    match cause {
        Cause::Started => "started",
        Cause::Rate => "rate",
        Cause::Extended => "extended",
        Cause::End => "end",
        Cause::Eased(_) => "eased",
        Cause::Stopped(_) => "stopped",
    }
}

/// What happened beside the sets.
pub(super) const fn moment(kind: MomentKind) -> &'static str {
    match kind {
        MomentKind::Sight => "sight",
        MomentKind::CannotSee => "cannot_see",
        MomentKind::Unseen => "unseen",
        MomentKind::Unheard => "unheard",
        MomentKind::Watched(None) => "watched",
        MomentKind::Watched(Some(Unwatched::SoundOnly)) => "unwatched_sound_only",
        MomentKind::Watched(Some(Unwatched::OtherMeans)) => "unwatched_other_means",
        MomentKind::ControlTaken => "control_taken",
        MomentKind::StageLost => "stage_lost",
        MomentKind::StageBack => "stage_back",
        MomentKind::DeskLost => "desk_lost",
        MomentKind::DeskBack => "desk_back",
        MomentKind::ClientReady => "client_ready",
        MomentKind::ClientStop => "client_stop",
        MomentKind::ClientLonger => "client_longer",
        MomentKind::ClientLeft => "client_left",
        MomentKind::Interrupted(Interruption::Hidden) => "interrupted_hidden",
        MomentKind::Interrupted(Interruption::FullScreenLeft) => "interrupted_full_screen_left",
        MomentKind::Interrupted(Interruption::Resized) => "interrupted_resized",
        MomentKind::Interrupted(Interruption::SoundLost) => "interrupted_sound_lost",
        MomentKind::Interrupted(Interruption::Silence) => "interrupted_silence",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn endings_are_called_as_on_the_wire() {
        use Ending::*;
        for each in [
            Done,
            EndedByClinician,
            StoppedByClinician,
            StoppedByClient,
            CannotSee,
            Unseen,
            Unheard,
            PageInterrupted,
            LinkLost,
            HardLimit,
            Unknown,
        ] {
            assert_eq!(serde_json::to_value(each).unwrap(), ending(each));
        }
    }
}
