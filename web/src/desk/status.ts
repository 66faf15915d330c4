// The state word, the tab's title and the message strip: pure functions of the state and the time. The rest of the band: band.ts.
import { nextWords } from "./between";
import { isSignedOut } from "./entries";
import { isAtTheDoor, isBusy, isLive, type DeskState } from "./model";
import { rhythmWords } from "./rhythm";
import { canSend, isHeldByTooMuch, isOnItsWay, missing, missingWords, whyNoStart } from "./orders";
import { timeWords } from "./time";
import type { RoomState } from "../wire/RoomState";
import { holdsInShort, needsInShort, orderName, otherPlanInShort, RECORD_REFUSES, RECORD_WAITS } from "./words";

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
  const words = [...needsInShort(view.needs), ...holdsInShort(view.holds), ...record, ...(refused === null ? [] : otherPlanInShort(refused))];
  if (words.length > 0) return `needs ${words.join(", ")}`;
  return isHeldByTooMuch(state, now) ? "was too much: asks twice" : "needs a second";
}

/** The tab's title: the state first, since a narrow tab shows no more; `page` is what the page is called. */
export function titleWords(state: DeskState, now: number, page: string): string {
  const word = stateWord(state, now);
  const words = isAtTheDoor(state) && word !== "AT THE DOOR" ? ["AT THE DOOR", word] : [word];
  return `${words.join(", ")} - ${page}`;
}

/** Another desk has control: this one looks on. */
export const isViewOnly = ({ view }: DeskState): boolean => view !== null && !view.in_control && view.state !== "closed";

/** What a screen reader is told, `strip` being what the strip says; seconds that count up are for the eye only, so that each message is heard once. */
export function spokenWords(state: DeskState, now: number, strip: readonly string[]): string {
  const spoken = [
    stateWord(state, now),
    keysOff(state) ? "keys off" : "",
    state.view?.seat_asked_for ? "At the door: another device asks to join" : "",
    holdWords(state, now),
    ...strip.slice(0, 2),
  ];
  return spoken
    .filter((one) => one !== "")
    .map((one) => one.replace(/\.$/, ""))
    .join(". ")
    .replace(/, \d+ s/g, "")
    .replace(/in \d+ s/g, "soon");
}

/** The page has no keyboard: keys do nothing here. */
export const keysOff = (state: DeskState): boolean => !state.focus.here;

/** The upper band takes a click as Stop: while the keys are off and just after, since the click itself brings the focus back first. */
export const bandStops = (state: DeskState, now: number): boolean => !state.focus.here || now - state.focus.since < 600;

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
  const time = timeWords(state, now);
  if (time !== null) words.push(time);
  const rhythm = rhythmWords(state.taps, now);
  if (rhythm !== null) words.push(rhythm);
  const notice = noticeWords(state, now);
  if (notice !== null) words.push(notice);
  if (state.reload && idle) words.push("This page is older than the server. Reload it now.");
  if (isViewOnly(state)) words.push("View only: another desk has control.");
  if (state.view?.state === "at_the_door" && !notReadyAtTheDoor) words.push("Somebody waits. Ask who it is and where, then admit (c).");
  if (notReadyAtTheDoor) words.push('They pressed Stop: they must tap "I am ready" before a set.');
  if (state.view?.holds.some(({ matter, against }) => against && matter === "risk"))
    words.push("Risk comes first: safety plan ('), card (m); then a short closing (#).");
  if (state.view !== null && idle && notice !== missingWords(state.view) && ["hold", "ready", "stopped", "stopped_by_client"].includes(state.view.state)) {
    words.push(...missing(state.view));
  }
  if (state.view?.longer) words.push("The client needs longer: wait for them. Nothing starts before their Ready.");
  if (state.view?.state === "link_lost") words.push('Nothing restarts by itself. When they are back: see and hear them; then they tap "I am ready".');
  const next = idle && state.view?.state !== "closed" ? nextWords(state.log.next) : null;
  if (next !== null) words.push(next);
  return words;
}

/** Where nothing else is to be said: what the keys at hand do. For the eye alone: a reader has the state word. */
export function usualWords(state: DeskState, now: number): string[] {
  if (keysOff(state) || !state.shortcuts) return [];
  switch (stateWord(state, now)) {
    case "READY":
      return [`Space starts set ${(state.view?.set?.number ?? state.log.sets.at(-1)?.number ?? 0) + 1}.`];
    case "RUNNING":
      return ["e ends at the next turn, Esc stops at once."];
    case "UNKNOWN":
      return ["Nothing can be sent until the server is heard again: go on by voice."];
    default:
      return [];
  }
}
