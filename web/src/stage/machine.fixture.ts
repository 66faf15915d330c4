// What the machine's tests feed it and read off it. Not part of any page.
import { usual } from "../live/comfort.fixture";
import { nothing } from "../live/needs.fixture";
import type { RoomState } from "../wire/RoomState";
import type { SetView } from "../wire/SetView";
import type { StageView } from "../wire/StageView";
import { type Effect, type Event, opened, reduce, type State } from "./machine";

export const plain = { reducedMotion: false, handheld: false, vibrates: false, wakeLock: false, call: false, fullScreen: false };
let seq = 0;

export function setView(id: string, change: Partial<SetView> = {}): SetView {
  const plan: SetView["plan"] = {
    rate: 1,
    width: 18,
    dot: 1.5,
    path: "across",
    length: { kind: "cycles", cycles: 24 },
    channels: { eyes: true, ears: false, hands: false },
    comfort: usual,
    purpose: "processing",
  };
  return { id, number: 1, plan, timeline: { segments: [] }, ended: null, ...change };
}

export function view(state: RoomState, change: Partial<StageView> = {}): StageView {
  const needs = nothing;
  const besides = { steadying: null, pad: null, longer: false };
  const said = { desk_knows: false, desk_here: true, figure: true, sides_asked: 0, closing_words: null };
  return { epoch: 1, seq: ++seq, state, needs, set: null, ...said, ...besides, ...change };
}

export const seen = (v: StageView, obstacle?: Extract<Event, { type: "view" }>["obstacle"]): Event => ({ type: "view", view: v, obstacle });
export const open: Event = { type: "link", state: "open" };

/** Runs events one after the other; the effects of the last, and of all. */
export function run(events: Event[], from: State = opened(plain)) {
  let state = from;
  let last: readonly Effect[] = [];
  const all: Effect[] = [];
  for (const event of events) {
    [state, last] = reduce(state, event);
    all.push(...last);
  }
  return { state, last, all };
}

export const sent = (effects: readonly Effect[]) => effects.flatMap((e) => (e.do === "send" ? [e.message.type] : []));
export const plays = (effects: readonly Effect[]) => effects.flatMap((e) => (e.do === "play" ? [e.set.id] : []));
export const ready: Event[] = [open, { type: "skip-all" }, seen(view("ready"))];
export const running = () => [...ready, seen(view("running", { set: setView("a") }))];
