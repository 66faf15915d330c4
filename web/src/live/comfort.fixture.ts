// What a plan carries when nothing was chosen (`leeward_core::wire::Comfort::default`), for tests. Not part of any page.
import type { Comfort } from "../wire/Comfort";

export const usual: Comfort = { sweep: "sine", colours: "sand", timbre: "round", pitch: 450, tone_ms: 120, level: 100, vibration: false };
