// What the machine's tests feed it. Not part of any page.
import { usual } from "../live/comfort.fixture";
import type { RoomState } from "../wire/RoomState";
import type { SetView } from "../wire/SetView";
import type { StageView } from "../wire/StageView";

export const plain = { reducedMotion: false, handheld: false, vibrates: false, wakeLock: false, fullScreen: false };
let seq = 0;

export function setView(id: string, change: Partial<SetView> = {}): SetView {
  const plan: SetView["plan"] = { rate: 1, width: 18, dot: 1.5, path: "across", length: { kind: "cycles", cycles: 24 }, channels: { eyes: true, ears: false, hands: false }, comfort: usual };
  return { id, number: 1, plan, timeline: { segments: [] }, ended: null, ...change };
}

export function view(state: RoomState, change: Partial<StageView> = {}): StageView {
  const needs = { sight: false, client_ready: false, stage: false, check: false, pause: false };
  return { epoch: 1, seq: ++seq, state, needs, set: null, desk_knows: false, desk_here: true, figure: true, sides_asked: 0, closing_words: null, ...change };
}
