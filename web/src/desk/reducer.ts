// The desk's one rule book: (state, event, now) -> (state, commands). No DOM, no clock, no randomness.
import type { DeskView } from "../wire/DeskView";
import type { SetView } from "../wire/SetView";
import type { Showing } from "../wire/Showing";
import type { ToDesk } from "../wire/ToDesk";
import { digitBetween } from "./between";
import { failed, hurry, kept, type Queue } from "./entries";
import { mergeLogs, presentSet, withSet } from "./log";
import { isBusy, isLive, OUTSIDE, TAKE_DIGITS, type Action, type Command, type DeskEvent, type DeskState, type Lower, type Step } from "./model";
import {
  applyPreset,
  changeSetting,
  isOnItsWay,
  orderAnswered,
  resendAfterBreak,
  say,
  sendOrder,
  setTapped,
  start,
  stop,
  undoSetting,
  unchanged,
} from "./orders";
import { asBefore, choose, digit, togglePass } from "./opening";
import { offered, toSegment, writeOffer } from "./phase";
import { samePlan } from "./plan";
import { reachDigit } from "./reach";
import { askClient, followPage, followRating, putOnPage, tooMuch } from "./steady";
import { tapped } from "./rhythm";
import { arm, armAt, editAgain, mark, nextMoment, pump, putBack, rate, saveWords, sendAgain, takeBack } from "./ratings";

/** After a set the evidence needs a moment to arrive before the log is worth reading again, ms. */
const EVIDENCE_TAKES = 1500;
const LOG_RETRY = 3000;
/** So many sets of rooms that are gone are handed back. What is older was handed back that often. */
const HANDED_BACK = 8;

const isOlder = (view: DeskView, known: DeskView | null): boolean =>
  known !== null && (view.epoch < known.epoch || (view.epoch === known.epoch && view.seq < known.seq));

const STOPS = ["stopped", "stopped_by_client", "link_lost"];

/** What a new state word brings with it. */
function enterState(state: DeskState, view: DeskView, now: number): DeskState {
  const was = state.view?.state;
  if (was === view.state) return state;
  const stopped = isBusy(state) && STOPS.includes(view.state);
  const begins = view.state === "running" || view.state === "starting";
  const closed = view.state === "closed";
  // Who has left is called; the log says how far they came.
  const joins = view.state === "waiting" || view.state === "at_the_door";
  // Who has been let in is asked what has to be asked.
  const left = state.lower === "join" ? (view.holds.length > 0 ? "opening" : "log") : state.lower;
  // What comes up in a set is written down: the opening must not lie over that.
  const lower: Lower = joins ? "join" : begins && left === "opening" ? "log" : left;
  // The room of a session that is closed answers nothing more.
  const pending = closed ? [] : state.pending;
  const begun = state.begun ?? (isLive({ ...state, view }) ? now : null);
  // Admitting has answered some of the opening.
  const admitted = OUTSIDE.includes(was ?? "waiting") && isLive({ ...state, view });
  const log = admitted ? { logIs: "due" as const, logDue: now } : {};
  return { ...state, ...log, stateSince: now, stoppedAt: stopped ? now : state.stoppedAt, armed: begins || closed ? null : state.armed, lower, pending, begun };
}

const heardCycles = (state: DeskState, set: string): number | null => (state.showing?.reading.set === set ? state.showing.reading.phase : null);

function recordSet(state: DeskState, view: DeskView, now: number): DeskState {
  if (view.set === null) return state;
  const known = state.log.sets.find((set) => set.id === view.set?.id);
  const ends = view.set.ended !== null && known?.ending === null;
  const log = withSet(state.log, view.set, heardCycles(state, view.set.id));
  return ends ? { ...state, log, logIs: "due", logDue: now + EVIDENCE_TAKES } : { ...state, log };
}

/** A plan that the room has taken over is no longer only wanted. */
function settleWanted(state: DeskState, view: DeskView): DeskState {
  const wanted = state.wanted;
  if (wanted === null) return state;
  const open = state.pending.some((pending) => pending.order.kind === "plan");
  const settled = wanted.agreed || (!open && samePlan(view.plan, wanted.plan));
  return settled ? { ...state, wanted: null } : state;
}

function hearView(state: DeskState, view: DeskView, now: number): Step {
  if (isOlder(view, state.view)) return unchanged(state);
  const entered = settleWanted(recordSet(enterState(state, view, now), view, now), view);
  const next = { ...entered, view };
  if (state.line.synced) return followRating(followPage(unchanged(next), view, now), view, now);
  const anew = { ...next, gone: goneSets(state, view), line: { ...next.line, synced: true } };
  const step = resendAfterBreak(anew, view, now);
  return { ...step, commands: [...step.commands, ...handBack(anew.gone, view)] };
}

const isAnew = (before: DeskView | null, view: DeskView): boolean => before !== null && before.epoch !== view.epoch;

/** What rooms that are gone showed here last, the latest at the end. */
function goneSets({ view: before, gone }: DeskState, view: DeskView): readonly SetView[] {
  return before?.set && isAnew(before, view) ? [...gone, before.set].slice(-HANDED_BACK) : gone;
}

/** A room may go before it has written down what it showed, and so may the next one, with what was handed back to it; or the line, before it is read. */
function handBack(gone: readonly SetView[], view: DeskView): Command[] {
  if (view.state === "closed") return [];
  return gone.map((set) => ({ kind: "send", message: { type: "hand_back", set } }));
}

function hearShowing(state: DeskState, reading: Showing, now: number): DeskState {
  const set = state.log.sets.find((one) => one.id === reading.set);
  const sets = state.log.sets.map((one) => (one.id === set?.id ? { ...one, cycles: reading.phase } : one));
  return { ...state, showing: { reading, heardAt: now }, log: { ...state.log, sets } };
}

function hear(before: DeskState, message: ToDesk, now: number): Step {
  const state = { ...before, line: { ...before.line, heardAt: now } };
  switch (message.type) {
    case "beat":
    // What is said of the call is the call's: see main.ts.
    case "call":
      return unchanged(state);
    case "view":
      return hearView(state, message, now);
    case "answer": {
      const refused = message.refused !== null && state.pending.some(({ id, order }) => id === message.id && order.kind === "show");
      return orderAnswered(refused ? { ...state, putting: null } : state, message.id, message.refused, now);
    }
    case "showing":
      return unchanged(hearShowing(state, message, now));
    case "reload":
      return unchanged({ ...state, reload: true });
  }
}

/** Asks for the server's log when it is due. */
function fetchLog(step: Step, now: number): Step {
  if (step.state.logIs !== "due" || step.state.logDue > now) return step;
  return { state: { ...step.state, logIs: "loading" }, commands: [...step.commands, { kind: "load_log" }] };
}

const BEAR_ON_NEXT: readonly string[] = ["change", "saw", "tried", "sud", "voc", "scan", "rehearsal", "fits", "belief", "answered", "passed", "taken_back"];

/** What bears on the phase, and on the offer of what comes next, is answered by the server's rules: its log is read anew. */
function dueWith(queue: Queue, id: string, now: number): Partial<DeskState> {
  const entry = queue.find((item) => item.entry.id === id)?.entry;
  return entry !== undefined && BEAR_ON_NEXT.includes(entry.value.kind) ? { logIs: "due", logDue: now } : {};
}

/** The line opened or broke. Entries that waited for it go at once. */
function lineChanged(state: DeskState, { open, sentAway = null, over = false }: Extract<DeskEvent, { kind: "line" }>, now: number): Step {
  const queue = open ? hurry(state.queue, now) : state.queue;
  // Closed in another window while this one was away: no view came to say so.
  const view = over && state.view !== null ? { ...state.view, state: "closed" as const } : state.view;
  const entered = view === null ? state : enterState(state, view, now);
  return unchanged({ ...entered, queue, sentAway, view, line: { ...state.line, open, synced: false } });
}

function pageFocus(state: DeskState, here: boolean, now: number): Step {
  if (state.focus.here === here) return unchanged(state);
  // Coming back is often coming back from signing in.
  return unchanged({ ...state, queue: here ? hurry(state.queue, now) : state.queue, focus: { here, since: now } });
}

/** Digits belong to one thing at a time: showing the presets, which stand with the mechanics, puts the rating away. */
function toggleLower(state: DeskState, shown: Lower): Step {
  const lower = state.lower === shown ? "log" : shown;
  return unchanged({
    ...state,
    lower,
    armed: TAKE_DIGITS.includes(lower) ? null : state.armed,
    opening: { chosen: null, passing: false },
  });
}

/** Marks, ratings and words are seen while they are given: a panel over them gives way, and so do the digits' presets. */
function showEntries(state: DeskState): DeskState {
  const covered = !state.wide || TAKE_DIGITS.includes(state.lower);
  return covered && state.lower !== "log" ? { ...state, lower: "log" } : state;
}

/** What still has a meaning in a session that is closed: to look, and to keep what was written. */
const AFTER_CLOSING: readonly Action["kind"][] = [
  "stop",
  "lower",
  "open_row",
  "toggle_private",
  "toggle_preview",
  "toggle_shortcuts",
  "to_words",
  "save_words",
  "mark",
  "take_back",
  "put_back",
  "retry",
  "edit",
];

function act(state: DeskState, action: Action, id: string, words: string, now: number): Step {
  if (state.view?.state === "closed" && !AFTER_CLOSING.includes(action.kind)) return say(state, "The session is closed.", now);
  switch (action.kind) {
    case "stop":
      return stop(state, now);
    case "start":
      return start(state, now);
    case "end":
    case "extend":
      return isBusy(state) ? sendOrder(state, { kind: action.kind }, now) : say(state, "No set is running.", now);
    case "sight":
      return state.view !== null && !state.view.needs.sight ? say(state, "Said already; nothing waits for it.", now) : sendOrder(state, { kind: "sight" }, now);
    case "cannot_see":
    case "take_control":
      return sendOrder(state, { kind: action.kind }, now);
    case "unseen":
      return isOnItsWay(state, "unseen") ? unchanged(state) : sendOrder(state, { kind: "unseen", missing: action.missing }, now);
    case "watch":
      return sendOrder(state, { kind: "watch", off: action.off }, now);
    case "mute":
      // The call's own: see main.ts.
      return unchanged(state);
    case "step":
      return changeSetting(state, action.setting, action.direction, now);
    case "toggle_open":
      return changeSetting(state, "open", 1, now);
    case "undo_setting":
      return undoSetting(state, now);
    case "preset":
      return applyPreset(state, action.index, now);
    case "tap":
      return unchanged({ ...state, taps: tapped(state.taps, now) });
    case "set_tapped":
      return setTapped(state, now);
    case "ask_sides":
      return isBusy(state) ? say(state, "Not while a set runs.", now) : sendOrder(state, { kind: "ask_sides" }, now);
    case "to_words":
      return { state: showEntries(state), commands: [{ kind: "focus", on: "words" }] };
    case "save_words":
      return saveWords(state, words, id, now);
    case "mark":
      return mark(showEntries(state), action.change, id, now);
    case "arm":
      return arm(showEntries(state), action.scale);
    case "rate":
      return rate(state, action.value, id, now);
    case "next_moment":
      return nextMoment(state);
    case "take_back":
      return takeBack(state, action.entry, id, now);
    case "put_back":
      return putBack(state, action.entry, id, now);
    case "retry":
      return sendAgain(state, action.entry, now);
    case "edit":
      return editAgain(state, action.entry);
    case "opening_digit":
      return digit(state, action.value, id, now);
    case "between_digit":
      return digitBetween(state, action.value, id, now);
    case "phase_digit":
      return phaseDigit(state, action.value, id, words, now);
    case "steady_digit":
      return putOnPage(state, action.value, id, now);
    case "reach_digit":
      return reachDigit(state, action.value, id, now);
    case "too_much":
      return tooMuch(state, id, now);
    case "ask_client":
      return askClient(state, now);
    case "found":
      return writeOffer(state, action.value, id, now);
    case "arm_at":
      return askedFor(armAt(showEntries(state), action.scale, action.moment, action.segment), action.scale, now);
    case "segment":
      return toSegment(state, action.to);
    case "closing_digit":
    case "turn":
    case "closing_enter":
    case "closing_move":
    case "to_admission":
      return unchanged(state);
    case "assess":
      return { state: { ...state, lower: "phase" }, commands: [{ kind: "focus", on: "assessment" }] };
    case "as_before":
      return asBefore(state, id, now);
    case "toggle_pass":
      return togglePass(state, now);
    case "choose":
      return choose(state, action.matter);
    case "open_row":
      return unchanged({ ...state, openRow: state.openRow === action.row ? null : action.row });
    case "lower":
      return toggleLower(state, action.shown);
    case "toggle_private":
      return unchanged({ ...state, private: !state.private });
    case "toggle_preview":
      return unchanged({ ...state, preview: !state.preview });
    case "toggle_shortcuts":
      return unchanged({ ...state, shortcuts: !state.shortcuts });
  }
}

/** The digits mean another thing from now on: that is said. */
function askedFor({ state }: Step, scale: "sud" | "voc", now: number): Step {
  return say(state, scale === "sud" ? "SUD: press its number now, 0 to 9, t for 10." : "VOC: press its number now, 1 to 7.", now);
}

function phaseDigit(state: DeskState, value: number, id: string, words: string, now: number): Step {
  const does = offered(state, value);
  return does === null ? say(state, "This number has nothing in this phase.", now) : act(state, does, id, words, now);
}

/** One event. */
export function step(state: DeskState, event: DeskEvent, now: number): Step {
  switch (event.kind) {
    case "tick":
      return fetchLog(pump(unchanged(state), now), now);
    case "line":
      return pump(lineChanged(state, event, now), now);
    case "heard":
      return hear(state, event.message, now);
    case "action":
      return act(state, event.action, event.id, event.words, now);
    case "page_focus":
      return pageFocus(state, event.here, now);
    case "words_typed":
      return unchanged({ ...state, wordsFor: event.empty ? undefined : state.wordsFor === undefined ? presentSet(state) : state.wordsFor });
    case "window":
      return unchanged({ ...state, wide: event.wide });
    case "kept":
      return fetchLog(pump(unchanged({ ...state, ...dueWith(state.queue, event.kept.id, now), queue: kept(state.queue, event.kept) }), now), now);
    case "not_kept":
      return pump(unchanged({ ...state, queue: failed(state.queue, event.id, event.problem, now) }), now);
    case "log":
      // A set that ended meanwhile has made the log due once more.
      return unchanged({ ...state, logIs: state.logIs === "due" ? "due" : "loaded", logRead: true, log: mergeLogs(event.log, state.log) });
    case "log_failed":
      return unchanged({ ...state, logIs: "due", logDue: now + LOG_RETRY });
    case "assessed":
      return fetchLog(say({ ...state, logIs: "due", logDue: now }, event.words, now), now);
    case "notice":
      return say(state, event.words, now);
  }
}
