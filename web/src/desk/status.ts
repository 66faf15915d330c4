// What the upper band and the message strip say: pure functions of the state and the time.
import { currentChanges } from "./log";
import { isSignedOut } from "./entries";
import { isAtTheDoor, isBusy, isLive, shownPlan, type DeskState } from "./model";
import { likelyWords } from "./calibration";
import { peakSpeed, speedAdvice } from "./plan";
import { rhythmWords } from "./rhythm";
import { canSend, isOnItsWay, missing, missingWords, whyNoStart } from "./orders";
import type { ClockError } from "../wire/ClockError";
import type { Device } from "../wire/Device";
import type { Plan } from "../wire/Plan";
import type { RoomState } from "../wire/RoomState";
import { cyclesWords, degrees, hertz, needsInShort, orderName, otherPlanInShort, planWords, RECORD_REFUSES, RECORD_WAITS } from "./words";

export type StateWord =
  | "CONNECTING"
  | "UNKNOWN"
  | "WAITING"
  | "AT THE DOOR"
  | "CLIENT HAS LEFT"
  | "HOLD"
  | "READY"
  | "STARTING"
  | "RUNNING"
  | "EASING"
  | "STOPPED BY CLIENT"
  | "STOPPED"
  | "LINK LOST"
  | "CLOSED";

const WORDS: Record<RoomState, StateWord> = {
  waiting: "WAITING",
  at_the_door: "AT THE DOOR",
  left: "CLIENT HAS LEFT",
  hold: "HOLD",
  ready: "READY",
  starting: "STARTING",
  running: "RUNNING",
  easing: "EASING",
  stopped_by_client: "STOPPED BY CLIENT",
  stopped: "STOPPED",
  link_lost: "LINK LOST",
  closed: "CLOSED",
};

/** The invariant of the live session: nothing moves later than this after the last sign of the desk, ms. */
export const STOPS_BY_ITSELF = 3000;
/** Beats come four a second once the client is admitted, else one in 5 s: silence beyond these is two of them missed and more. */
const SILENCE_WHILE_LIVE = 1500;
const SILENCE_OTHERWISE = 11000;
const NOTICE_LASTS = 8000;
const NOT_CONFIRMED_AFTER = 1000;
/** What the client is showing comes every 400 ms, and what a poor line lost once some 700 ms late. */
const STALE_SHOWING = 1200;
const SPREAD_WORTH_SAYING = 15;

/** Nothing was heard of the server for so long that the room's state is unknown. */
export function isUnknown(state: DeskState, now: number): boolean {
  const silence = now - state.line.heardAt;
  if (state.view === null) return silence > STOPS_BY_ITSELF;
  // Of a line that has just come back the view is still that of the old one.
  return !canSend(state) || silence > (isLive(state) ? SILENCE_WHILE_LIVE : SILENCE_OTHERWISE);
}

/** The one state word. */
export function stateWord(state: DeskState, now: number): StateWord {
  if (state.view?.state === "closed") return "CLOSED";
  if (isUnknown(state, now)) return "UNKNOWN";
  if (state.view === null) return "CONNECTING";
  // Never kinder than the key: a start that is on its way, or that this page would not send, is not READY.
  if (state.view.state !== "ready" || whyNoStart(state, now) === null) return WORDS[state.view.state];
  return isOnItsWay(state, "start") ? "STARTING" : "HOLD";
}

/** Beside HOLD: what is missing, in a word or two each. */
export function holdWords(state: DeskState, now: number): string {
  const { view } = state;
  if (view === null || stateWord(state, now) !== "HOLD") return "";
  if (!view.in_control) return "needs control";
  const { refused } = view;
  const record = refused?.kind === "not_saved" ? ["the record"] : [];
  const words = [...needsInShort(view.needs), ...record, ...(refused === null ? [] : otherPlanInShort(refused))];
  return `needs ${words.length === 0 ? "a second" : words.join(", ")}`;
}

/** The tab's title: the state first, since a narrow tab shows no more; `page` is what the page is called. */
export function titleWords(state: DeskState, now: number, page: string): string {
  const word = stateWord(state, now);
  const words = isAtTheDoor(state) && word !== "AT THE DOOR" ? ["AT THE DOOR", word] : [word];
  return `${words.join(", ")} - ${page}`;
}

/** The page has no keyboard: keys do nothing here. */
export const keysOff = (state: DeskState): boolean => !state.focus.here;

/** The upper band takes a click as Stop: while the keys are off and just after, since the click itself brings the focus back first. */
export const bandStops = (state: DeskState, now: number): boolean => !state.focus.here || now - state.focus.since < 600;

const call = (callBack: string): string => (callBack === "" ? "Call the client." : `Call ${callBack}.`);

/** Second line of the band: what is true at the client, never more than was heard. */
export function showingWords(state: DeskState, now: number, callBack: string): string {
  const word = stateWord(state, now);
  if (word === "CLOSED") return "";
  if (word === "CLIENT HAS LEFT") return `${call(callBack)} The client has left the meeting. They can come back by the link and a new code.`;
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
  // The room has heard that it rests, or that it is another page by now: this reading is of before.
  if (moving && !isBusy(state) && !view.needs.rest) return "at rest";
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

/** Fourth line: advice on the speed, then every departure from what is usual . */
export function departures(state: DeskState): string[] {
  const plan = shownPlan(state);
  const device = state.view?.device;
  const words: string[] = [];
  if (plan !== null) {
    if (device) words.push(...soundWords(plan, device));
    const advice = plan.channels.eyes ? speedAdvice(peakSpeed(plan)) : null;
    if (advice !== null) words.push(advice);
    if (device && plan.channels.eyes) words.push(...narrowedWords(plan, state), ...likelyWords(plan, device));
    if (plan.length.kind === "open") words.push("open-ended");
  }
  if (state.view?.eyes_locked) words.push("eyes locked by a caution");
  if (device) {
    if (device.reduced_motion && !state.view?.needs.motion) words.push("client's device asks for less motion: tones or taps (n)");
    if (!device.wake_lock) words.push("client's screen may sleep");
  }
  if (!state.shortcuts) words.push("single keys are off");
  return words;
}

/** Why the width is less than was asked for; it comes back with a screen that shows it. */
function narrowedWords(plan: Plan, state: DeskState): string[] {
  const { view } = state;
  if (view === null || isBusy(state) || view.asked_width <= plan.width) return [];
  return [`${degrees(plan.width)} of the ${degrees(view.asked_width)} asked for: client's screen shows no more`];
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

const spanWords = (seconds: number): string =>
  seconds < 120 ? `${Math.round(seconds)} s` : seconds < 7200 ? `${Math.round(seconds / 60)} min` : `${Math.round(seconds / 3600)} h`;

/** The reserved message strip, most pressing first. */
export function stripWords(state: DeskState, now: number, roomNow: number | null): string[] {
  const words: string[] = [];
  const idle = !isBusy(state);
  const notReadyAtTheDoor = state.view?.state === "at_the_door" && state.view.needs.client_ready;
  if (state.view?.state === "closed") words.push("The session is closed.");
  const set = state.view?.clock_set ?? 0;
  if (set !== 0) words.push(`The server's clock was set ${set > 0 ? "forward" : "back"} by ${spanWords(Math.abs(set))}: times in this record may be wrong.`);
  if (state.view?.record_refuses) words.push(RECORD_REFUSES);
  if (state.sentAway === "signed_out") words.push("The server has closed this desk's line. Sign in again, then come back to this tab.");
  if (state.sentAway === "handed_over")
    words.push(
      "This desk is closed: the client was handed over, or you are no clinician here any more. The session itself goes on: agree by voice who leads it now.",
    );
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
  if (state.view !== null && !state.view.in_control && state.view.state !== "closed") words.push("View only: another desk has control.");
  if (notReadyAtTheDoor) words.push('They pressed Stop: they must tap "I am ready" before a set.');
  if (state.view !== null && idle && notice !== missingWords(state.view) && ["hold", "ready", "stopped", "stopped_by_client"].includes(state.view.state)) {
    words.push(...missing(state.view));
  }
  return words;
}

/** No change over two sets in a row, the usual working rule for "stuck" (clinical handbooks; common practice). */
export function isStuck(state: DeskState): boolean {
  const [last, before] = currentChanges(state);
  return last === "same" && before === "same";
}
