// What the band says beside the state word: what is true at the client, what was ordered, whom to call. Pure.
import type { ClockError } from "../wire/ClockError";
import type { Device } from "../wire/Device";
import type { LogSet } from "../wire/LogSet";
import type { Plan } from "../wire/Plan";
import { likelyWords } from "./calibration";
import { course, type Scale } from "./course";
import { finding } from "./finding";
import { standing, written } from "./log";
import { isBusy, shownPlan, type DeskState } from "./model";
import { pageWords } from "./steady";
import { found } from "./opening";
import { peakSpeed, speedAdvice } from "./plan";
import { holdWords, stateWord, STOPS_BY_ITSELF, type StateWord } from "./status";
import { channelWords, cyclesWords, degrees, hertz, isBrokenOff, PATH_IN_SHORT } from "./words";

/** What the client is showing comes every 400 ms, and what a poor line lost once some 700 ms late. */
const STALE_SHOWING = 1200;
const SPREAD_WORTH_SAYING = 15;
/** Cycles in which a set comes to its rate: the ramp of 1 s (timeline/shape.rs) is half the rate long, 1 cycle at 2 Hz; heard up to 0.4 s late. */
const EASES_IN = 2;
/** So many characters of notes fit into their line of the narrow desk; what is more is counted, and stands in full under mechanics. */
const NOTES_FIT = 58;

/** Nobody is heard, so the band gives the number to call. */
export function isLost(state: DeskState, now: number): boolean {
  const word = stateWord(state, now);
  return word === "LINK LOST" || word === "CLIENT HAS LEFT" || (word === "UNKNOWN" && state.view !== null);
}

/** Beside the number to call: what became of the client's page. Empty unless nobody is heard. */
export function lostWords(state: DeskState, now: number): string {
  switch (isLost(state, now) ? stateWord(state, now) : null) {
    case "CLIENT HAS LEFT":
      return "The client has left the meeting. They can come back by the link and a new code.";
    case "UNKNOWN":
      // What the room did since it was last heard is not known: a start may have reached it.
      return `No word from the server. ${stopsWords(now - state.line.heardAt)}`;
    case "LINK LOST":
      return wasMoving(state) ? stopsWords(now - state.stateSince) : "Nothing was moving.";
    default:
      return "";
  }
}

/** As the room says it, which is heard: its last set was under way when the client's page was lost. */
const wasMoving = ({ view }: DeskState): boolean => view?.set !== null && (view?.set.ended === null || view?.set.ended === "link_lost");

/** `silence`: for how long nothing was heard, ms. */
function stopsWords(silence: number): string {
  return `The client's page ${silence < STOPS_BY_ITSELF ? "stops by itself within 3 s" : "has stopped by itself"}.`;
}

/** How long ago, in seconds, the last sign came from where it is missed; null when that is not known. `room`: room time. */
function sinceLastSign(state: DeskState, word: StateWord, now: number, room: number | null): number | null {
  if (word === "UNKNOWN") return now - state.line.heardAt;
  if (word === "CLIENT HAS LEFT") return now - state.stateSince;
  const heard = state.view?.stage_heard ?? null;
  return heard === null || room === null ? null : room - heard;
}

const spanWords = (ms: number): string => {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  return seconds < 100 ? `${seconds} s` : `${Math.floor(seconds / 60)} min ${seconds % 60} s`;
};

/** At the right of the state word: what a start needs, since when nobody was heard, or how far the set has come. */
export function asideWords(state: DeskState, now: number, room: number | null): string {
  const word = stateWord(state, now);
  if (word === "HOLD") return holdWords(state, now);
  if (!isLost(state, now)) return word === "UNKNOWN" || word === "CLOSED" ? "" : progressWords(state);
  const since = sinceLastSign(state, word, now, room);
  if (since === null) return "";
  return word === "CLIENT HAS LEFT" ? `${spanWords(since)} ago` : `${spanWords(since)} since the last sign`;
}

/** First line: what is true at the client, never more than was heard. */
export function showingWords(state: DeskState, now: number): string {
  const { view, showing } = state;
  if (view?.state === "closed") return shownInAll(state);
  if (isLost(state, now)) return "";
  if (view === null) return "nothing heard yet";
  if (!view.stage_here) return "the client's page is not connected";
  if (showing === null || showing.reading.set !== view.set?.id) return isBusy(state) ? "nothing shown yet" : "at rest";
  const { moving, rate, width, phase } = showing.reading;
  // The room has heard that it rests, or that it is another page by now: this reading is of before.
  if (moving && !isBusy(state) && !view.needs.rest) return "at rest";
  if (!moving) return isBusy(state) ? "at rest" : `at rest after ${cyclesWords(Math.floor(phase + 0.01))}`;
  // A set without the dot has no width.
  const wide = width > 0 ? ` · ${degrees(Math.round(width * 10) / 10)}` : "";
  const what = `${hertz(rate)}${wide} · cycle ${Math.floor(phase) + 1}${isComing(state, rate, phase) ? ", easing in" : ""}`;
  const age = now - showing.heardAt;
  if (age < STALE_SHOWING) return what;
  return `not heard for ${Math.floor(age / 1000)} s, last ${what}`;
}

/** A set begins slower than it was ordered: its first cycles are no fault. */
function isComing({ view }: DeskState, rate: number, phase: number): boolean {
  const ordered = view?.set?.plan.rate ?? rate;
  return view?.state !== "easing" && phase < EASES_IN && rate < ordered - 0.005;
}

/** Second line: what was asked for, with the peak speed it amounts to; of a session that is closed, what the ratings did. */
export function orderedWords(state: DeskState): string {
  if (state.view?.state === "closed") return ratedInAll(state);
  const plan = shownPlan(state);
  if (plan === null) return "";
  const { eyes } = plan.channels;
  const moves = eyes ? [degrees(plan.width), `${Math.round(peakSpeed(plan))}°/s`, PATH_IN_SHORT[plan.path]] : [];
  return [hertz(plan.rate), ...moves, channelWords(plan)].join(" · ");
}

/** What stands before it. */
export const orderedName = (state: DeskState): string => (state.wanted !== null && !state.wanted.agreed ? "not confirmed" : "ordered");

function shownInAll({ log, logRead }: DeskState): string {
  if (!logRead) return "";
  const { sets } = log;
  if (sets.length === 0) return "no set";
  const broken = sets.filter((set) => isBrokenOff(set.ending ?? "unknown")).length;
  return [`${sets.length} ${sets.length === 1 ? "set" : "sets"}`, cyclesInAll(sets), ...(broken > 0 ? [`${broken} broken off`] : [])].join(", ");
}

function cyclesInAll(sets: readonly LogSet[]): string {
  const heard = sets.flatMap(({ cycles }) => (cycles === null ? [] : [Math.floor(cycles + 0.01)]));
  if (heard.length === 0) return "what was shown was not heard";
  const least = heard.length < sets.length ? "at least " : "";
  return `${least}${cyclesWords(heard.reduce((sum, cycles) => sum + cycles, 0))} shown`;
}

const valuesOf = ({ log, queue }: DeskState, scale: Scale): number[] =>
  course(log, standing(written(log, queue)), scale).flatMap(({ value }) => (value === null ? [] : [value]));

const ratedInAll = (state: DeskState): string =>
  state.logRead ? (["sud", "voc"] as const).map((scale) => finding(scale.toUpperCase(), valuesOf(state, scale))).join("; ") : "";

/** Every departure from what is usual, first what the clinician can do something about. */
export function departures(state: DeskState): string[] {
  const plan = shownPlan(state);
  const device = state.view?.device;
  const words: string[] = [];
  if (device?.reduced_motion && !state.view?.needs.motion) words.push("client's device asks for less motion: tones or taps (n)");
  if (plan !== null) {
    if (device) words.push(...soundWords(plan, device));
    const advice = plan.channels.eyes ? speedAdvice(peakSpeed(plan)) : null;
    if (advice !== null) words.push(advice);
    if (device && plan.channels.eyes) words.push(...narrowedWords(plan, state), ...likelyWords(plan, device));
    if (plan.length.kind === "open") words.push("open-ended");
  }
  const page = pageWords(state.view);
  if (page !== "") words.push(page);
  if (plan?.purpose === "calm_place") words.push("for a calm place (t)");
  if (found(state).get("location")?.answer === "another_place") words.push("client is at another place than usual");
  if (state.view?.eyes_locked) words.push("eyes locked by a caution");
  if (device && !device.wake_lock) words.push("client's screen may sleep");
  if (!state.shortcuts) words.push("single keys are off");
  return words;
}

/** As many of `notes` as fit into one line, and how many there are besides. */
export function notesInShort(notes: readonly string[]): string {
  const all = notes.join("; ");
  if (all.length <= NOTES_FIT) return all;
  const rest = (count: number): string => `; ${notes.length - count} more (o)`;
  let fitting = 1;
  while (fitting < notes.length - 1 && notes.slice(0, fitting + 1).join("; ").length + rest(fitting + 1).length <= NOTES_FIT) fitting += 1;
  const line = notes.slice(0, fitting).join("; ");
  return fitting === notes.length ? line : `${line}${rest(fitting)}`;
}

/** Why the width is less than was asked for; it comes back with a screen that shows it. */
function narrowedWords(plan: Plan, state: DeskState): string[] {
  const { view } = state;
  if (view === null || isBusy(state) || view.asked_width <= plan.width) return [];
  return [`${degrees(plan.width)} of ${degrees(view.asked_width)} wide: client's screen shows no more`];
}

/** What is not ready of what the plan wants heard or felt. */
function soundWords({ channels, comfort }: Plan, device: Device): string[] {
  if (!channels.ears && !channels.hands) return [];
  const felt = comfort.vibration && device.vibration;
  if (channels.hands && !device.sound && !felt) return ["taps need sound or vibration: neither is ready"];
  if (!device.sound) return channels.ears ? ["client has not heard the test sound"] : [];
  if (device.sides === false) return ["client cannot tell left from right: ask again (q)"];
  return device.sides === null ? ["left and right not checked (q)"] : [];
}

/** Nothing while the clocks agree well; otherwise how far the preview may be from what the client's page shows, ms. */
export function apartWords({ view, showing }: DeskState, own: ClockError | null): string[] {
  const stage = showing !== null && showing.reading.set === view?.set?.id ? showing.reading.clock : null;
  if (own === null || stage === null) return [];
  // Both pages may be off, each its own way.
  const spread = Math.hypot(own.spread, stage.spread);
  return spread < SPREAD_WORTH_SAYING ? [] : [`preview about ${Math.round(spread)} ms apart, at worst ${Math.round(own.bound + stage.bound)}`];
}

/** How far the set has come, and for how long. */
export function progressWords(state: DeskState): string {
  const { view, showing } = state;
  if (view === null || view.set === null || !isBusy(state)) return "";
  const heard = showing !== null && showing.reading.set === view.set.id ? showing.reading : null;
  const done = heard === null ? 0 : Math.floor(heard.phase + 0.01);
  const { length } = view.set.plan;
  const cycles = length.kind === "open" ? cyclesWords(done) : `${done} of ${length.cycles}`;
  const begun = view.set.timeline.segments[0]?.starts_at;
  if (heard === null || begun === undefined) return cycles;
  const seconds = Math.max(0, Math.floor((heard.at - begun) / 1000));
  return `${cycles}, ${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}

/** The same as a part of the whole, 0 to 1; null when there is no whole, or nothing runs. */
export function progressPart({ view, showing }: DeskState): number | null {
  const set = view?.set;
  if (!set || set.ended !== null || set.plan.length.kind === "open") return null;
  const phase = showing?.reading.set === set.id ? showing.reading.phase : 0;
  return Math.min(1, Math.max(0, phase / set.plan.length.cycles));
}
