// What the upper band and the message strip say: pure functions of the state and the time.
import { currentChanges } from "./log";
import { isSignedOut } from "./entries";
import { isBusy, shownPlan, type DeskState } from "./model";
import { likelyWords } from "./calibration";
import { peakSpeed, speedAdvice } from "./plan";
import { rhythmWords } from "./rhythm";
import { canSend, missingWords } from "./orders";
import type { ClockError } from "../wire/ClockError";
import type { Device } from "../wire/Device";
import type { Plan } from "../wire/Plan";
import { cyclesWords, degrees, hertz, needsWords, orderName, planWords, RECORD_WAITS } from "./words";

export type StateWord =
  | "CONNECTING" | "UNKNOWN" | "WAITING" | "READY" | "STARTING" | "RUNNING" | "EASING" | "STOPPED BY CLIENT" | "STOPPED" | "LINK LOST" | "CLOSED";

/** The invariant of the live session: nothing moves later than this after the last sign of the desk, ms. */
export const STOPS_BY_ITSELF = 3000;
/** Beats come four a second from READY to EASING, else one in 5 s: silence beyond these is two of them missed and more. */
const SILENCE_WHILE_LIVE = 1500;
const SILENCE_OTHERWISE = 11000;
const NOTICE_LASTS = 8000;
const NOT_CONFIRMED_AFTER = 1000;
/** What the client is showing comes every 400 ms, and what a poor line lost once some 700 ms late. */
const STALE_SHOWING = 1200;
const SPREAD_WORTH_SAYING = 15;

/** Nothing was heard of the server for so long that the room's state is unknown. */
export function isUnknown(state: DeskState, now: number): boolean {
  const live = state.view !== null && (isBusy(state) || state.view.state === "ready");
  const silence = now - state.line.heardAt;
  if (state.view === null) return silence > STOPS_BY_ITSELF;
  return !state.line.open || silence > (live ? SILENCE_WHILE_LIVE : SILENCE_OTHERWISE);
}

/** The one state word. */
export function stateWord(state: DeskState, now: number): StateWord {
  if (state.view?.state === "closed") return "CLOSED";
  if (isUnknown(state, now)) return "UNKNOWN";
  switch (state.view?.state) {
    case undefined: return "CONNECTING";
    case "waiting": return "WAITING";
    case "ready": return "READY";
    case "starting": return "STARTING";
    case "running": return "RUNNING";
    case "easing": return "EASING";
    case "stopped_by_client": return "STOPPED BY CLIENT";
    case "stopped": return "STOPPED";
    case "link_lost": return "LINK LOST";
  }
}

/** The page has no keyboard: keys do nothing here. */
export const keysOff = (state: DeskState): boolean => !state.focus.here;

/** The upper band takes a click as Stop: while the keys are off and just after, since the click itself brings the focus back first. */
export const bandStops = (state: DeskState, now: number): boolean => !state.focus.here || now - state.focus.since < 600;

const call = (callBack: string): string => (callBack === "" ? "Call the client." : `Call ${callBack}.`);

/** Second line of the band: what is true at the client, never more than was heard. */
export function showingWords(state: DeskState, now: number, callBack: string): string {
  const word = stateWord(state, now);
  if (word === "UNKNOWN" && state.view !== null) {
    const still = now - state.line.heardAt < STOPS_BY_ITSELF;
    return `${call(callBack)} No word from the server: the client's page ${still ? "stops by itself within 3 s" : "has stopped by itself"}.`;
  }
  if (word === "LINK LOST") {
    const still = now - state.stateSince < STOPS_BY_ITSELF;
    return `${call(callBack)} The client's page ${still ? "stops by itself within 3 s" : "has stopped by itself"}.`;
  }
  return clientShows(state, now);
}

function clientShows(state: DeskState, now: number): string {
  const { view, showing } = state;
  if (view === null) return "nothing heard yet";
  if (!view.stage_here) return "the client's page is not connected";
  if (showing === null || showing.reading.set !== view.set?.id) return isBusy(state) ? "nothing shown yet" : "at rest";
  const { moving, rate, width, phase } = showing.reading;
  if (!moving) return isBusy(state) ? "at rest" : `at rest after ${cyclesWords(Math.floor(phase + 0.01))}`;
  // A set without the dot has no width.
  const wide = width > 0 ? `, ${degrees(Math.round(width * 10) / 10)}` : "";
  const what = `${hertz(rate)}${wide}, cycle ${Math.floor(phase) + 1}`;
  const age = now - showing.heardAt;
  if (age < STALE_SHOWING) return what;
  return `not heard for ${Math.floor(age / 1000)} s, last ${what}`;
}

/** Third line: what was asked for, with the peak speed it amounts to. */
export function orderedWords(state: DeskState): string {
  const plan = shownPlan(state);
  if (plan === null) return "";
  const speed = plan.channels.eyes ? `, ${Math.round(peakSpeed(plan))}°/s at its peak` : "";
  const unsure = state.wanted !== null && !state.wanted.agreed ? " (not confirmed)" : "";
  return `${planWords(plan)}${speed}${unsure}`;
}

/** Fourth line: advice on the speed, then every departure from what is usual (statement S18 of the desk). */
export function departures(state: DeskState): string[] {
  const plan = shownPlan(state);
  const device = state.view?.device;
  const words: string[] = [];
  if (plan !== null) {
    if (device) words.push(...soundWords(plan, device));
    const advice = plan.channels.eyes ? speedAdvice(peakSpeed(plan)) : null;
    if (advice !== null) words.push(advice);
    if (device && plan.channels.eyes) words.push(...likelyWords(plan, device));
    if (plan.length.kind === "open") words.push("open-ended");
  }
  if (state.view?.eyes_locked) words.push("eyes locked by a caution");
  if (device) {
    if (device.reduced_motion) words.push("client's device asks for less motion: tones or taps (n)");
    if (!device.wake_lock) words.push("client's screen may sleep");
  }
  if (!state.shortcuts) words.push("single keys are off");
  return words;
}

/** What is not ready of what the plan wants heard or felt. */
function soundWords({ channels, comfort }: Plan, device: Device): string[] {
  if (!channels.ears && !channels.hands) return [];
  const felt = comfort.vibration && device.vibration;
  if (channels.hands && !device.sound && !felt) return ["taps need sound or vibration: neither is ready at the client's"];
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

/** When the session must be closing, against the wall clock. Both in ms since 1970; `closeBy` null when none was set. */
export function closeByWords(closeBy: number | null, wall: number): string {
  if (closeBy === null) return "";
  const at = new Date(closeBy);
  const clock = `${String(at.getHours()).padStart(2, "0")}:${String(at.getMinutes()).padStart(2, "0")}`;
  const minutes = Math.ceil((closeBy - wall) / 60000);
  return minutes > 0 ? `close by ${clock}, ${minutes} min` : `close now, was ${clock}`;
}

/** Whether the set nears its hard limit: room time `roomNow`, null when the clock is not known. */
export function limitWords(state: DeskState, roomNow: number | null): string | null {
  const end = state.view?.hard_end;
  if (end === null || end === undefined || roomNow === null || !isBusy(state)) return null;
  const seconds = Math.ceil((end - roomNow) / 1000);
  return seconds <= 15 ? `The set ends at its limit in ${Math.max(0, seconds)} s.` : null;
}

function pendingWords(state: DeskState, now: number): string[] {
  return state.pending.flatMap((pending) => {
    const age = now - pending.since;
    if (!canSend(state)) return [`${orderName(pending.order)}: not sent, no connection. It goes when the line is back.`];
    if (age >= NOT_CONFIRMED_AFTER) return [`${orderName(pending.order)}: not confirmed, ${Math.floor(age / 1000)} s`];
    return pending.order.kind === "stop" ? ["Stop sent, not confirmed."] : [];
  });
}

/** The answer to the last press, while it is new and what it says is missing still is. */
function noticeWords({ view, notice }: DeskState, now: number): string | null {
  if (notice === null || now - notice.since >= NOTICE_LASTS) return null;
  const stale = notice.missing && (view === null || missingWords(view) !== notice.words);
  return stale ? null : notice.words;
}

/** The reserved message strip, most pressing first. */
export function stripWords(state: DeskState, now: number, roomNow: number | null): string[] {
  const words: string[] = [];
  const idle = !isBusy(state);
  if (state.view?.state === "closed") words.push("The session is closed.");
  if (state.sentAway) words.push("The server has closed this desk's line. Sign in again, then come back to this tab.");
  if (isSignedOut(state.queue)) words.push("You are signed out. Entries wait here; sign in again.");
  if (state.view?.record_waits) words.push(RECORD_WAITS);
  words.push(...pendingWords(state, now));
  const limit = limitWords(state, roomNow);
  if (limit !== null) words.push(limit);
  const rhythm = rhythmWords(state.taps, now);
  if (rhythm !== null) words.push(rhythm);
  const notice = noticeWords(state, now);
  if (notice !== null) words.push(notice);
  if (state.reload && idle) words.push("This page is older than the server. Reload it now.");
  if (state.view !== null && !state.view.in_control) words.push("View only: another desk has control.");
  if (state.view !== null && idle && notice !== missingWords(state.view) && ["ready", "stopped", "stopped_by_client"].includes(state.view.state)) {
    words.push(...needsWords({ ...state.view.needs, pause: false }));
  }
  return words;
}

/** No change over two sets in a row, the usual working rule for "stuck" (clinical handbooks; common practice). */
export function isStuck(state: DeskState): boolean {
  const [last, before] = currentChanges(state);
  return last === "same" && before === "same";
}
