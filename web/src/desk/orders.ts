// Orders to the room: sent with the epoch the desk saw, kept until answered, never claimed before.
import type { DeskView } from "../wire/DeskView";
import type { Order } from "../wire/Order";
import type { Plan } from "../wire/Plan";
import type { Refusal } from "../wire/Refusal";
import { tooMuchHere } from "./log";
import { isBusy, isLive, shownPlan, type DeskState, type Step } from "./model";
import { sameButRate, samePlan, stepPlan, toggleOpen, withPreset, type Direction, type Setting } from "./plan";
import { offeredRate } from "./rhythm";
import { holdsWords, isOfPlan, needsWords, orderName, RECORD_REFUSES, RECORD_WAITS, refusalWords } from "./words";

/** No set starts sooner than this after a stop, ms. */
export const PAUSE_AFTER_STOP = 1000;
/** After it was too much a start is asked twice; the second press counts from so long after the first, and for so long, ms. */
const NO_DOUBLE_TAP = 800;
const ASKED_AGAIN = 8000;
export const WAS_TOO_MUCH = "It was too much here. Not started: Space once more when they are steady and want to go on.";
/** Steps of one setting closer together than this are undone together, ms. */
const ONE_CHANGE = 2000;
/** A stop so soon after one without an answer is the same press, ms. */
const HELD_KEY = 250;

/** Orders that do no harm when they come late: they are sent again after a break of the line. */
const isSafeLate = (order: Order): boolean => ["stop", "end", "cannot_see", "unseen"].includes(order.kind);

export const unchanged = (state: DeskState): Step => ({ state, commands: [] });
export const say = (state: DeskState, words: string, now: number, missing = false): Step => ({
  state: { ...state, notice: { words, since: now, missing } },
  commands: [],
});

/** The orders can reach the server: the line is open and a view has come over it. */
export const canSend = (state: DeskState): boolean => state.line.open && state.line.synced && state.view !== null;

/** Sends an order, or keeps one that is safe late until the line is back. */
export function sendOrder(state: DeskState, order: Order, now: number): Step {
  if (!canSend(state) && !isSafeLate(order)) return say(state, `${orderName(order)}: not sent, no connection to the server.`, now);
  const pending = { id: state.nextOrder, order, since: now };
  const next = { ...state, nextOrder: state.nextOrder + 1, pending: [...state.pending, pending], notice: null };
  if (!canSend(state) || state.view === null) return unchanged(next);
  return { state: next, commands: [{ kind: "send", message: { type: "order", epoch: state.view.epoch, id: pending.id, order } }] };
}

/** First view after the line came back: late orders that are safe go again, the others are given up and said so. */
export function resendAfterBreak(state: DeskState, view: DeskView, now: number): Step {
  const again = state.pending.filter((pending) => isSafeLate(pending.order));
  const dropped = state.pending.filter((pending) => !isSafeLate(pending.order));
  const names = dropped.map((pending) => orderName(pending.order)).join(", ");
  const notice =
    names === "" ? state.notice : { words: `${names}: unanswered when the connection broke. Look at the state, then press again.`, since: now, missing: false };
  return {
    state: { ...state, pending: again, notice, wanted: null },
    commands: again.map(({ id, order }) => ({ kind: "send", message: { type: "order", epoch: view.epoch, id, order } })),
  };
}

function planAnswered(state: DeskState, asked: Plan, refused: Refusal | null, now: number): Step {
  if (refused !== null) return say({ ...state, wanted: null, earlierPlans: state.earlierPlans.slice(0, -1) }, refusalWords(refused), now);
  const wanted = state.wanted;
  if (wanted === null) return unchanged(state);
  if (!samePlan(wanted.plan, asked)) return sendOrder(state, { kind: "plan", plan: wanted.plan }, now);
  const settled = state.view !== null && samePlan(state.view.plan, asked);
  return unchanged({ ...state, wanted: settled ? null : { plan: wanted.plan, agreed: true } });
}

/** What became of an order. */
export function orderAnswered(state: DeskState, id: number, refused: Refusal | null, now: number): Step {
  const answered = state.pending.find((pending) => pending.id === id);
  if (answered === undefined) return unchanged(state);
  const rest = { ...state, pending: state.pending.filter((pending) => pending.id !== id) };
  if (answered.order.kind === "plan") return planAnswered(rest, answered.order.plan, refused, now);
  if (refused === null) return unchanged(rest);
  // Sent again so late that nothing runs any more: what it was for has come about.
  if (["stop", "unseen"].includes(answered.order.kind) && refused.kind === "wrong_state") return unchanged(rest);
  const missed =
    (refused.kind === "needs" || refused.kind === "held") && answered.order.kind === "start" && rest.view !== null ? missingWords(rest.view) : null;
  return missed === null ? say(rest, `${orderName(answered.order)}: ${refusalWords(refused)}`, now) : say(rest, missed, now, true);
}

export const isOnItsWay = (state: DeskState, kind: Order["kind"]): boolean => state.pending.some((pending) => pending.order.kind === kind);

/** Why no set may start now: words, or "" when the press is simply not meant (one runs, or is starting). Null: it may. */
export function whyNoStart(state: DeskState, now: number): string | null {
  const view = state.view;
  if (isBusy(state) || isOnItsWay(state, "start")) return "";
  if (view === null || !canSend(state)) return "Nothing was started: no connection to the server.";
  if (view.state === "closed") return "The session is closed.";
  if (view.state === "left") return "The client has left.";
  if (!isLive(state)) return "The client has not been admitted.";
  if (!view.in_control) return refusalWords({ kind: "not_in_control" });
  const missed = missingWords(view, state.wanted !== null);
  if (missed !== null) return missed;
  if (view.refused?.kind === "not_saved") return view.record_refuses ? RECORD_REFUSES : RECORD_WAITS;
  // The room counts from when it heard of a stop, which is later when the client's line was down.
  if (view.needs.pause || now - state.stoppedAt < PAUSE_AFTER_STOP) return "Not within a second of a stop. Press again.";
  return isHeldByTooMuch(state, now) ? WAS_TOO_MUCH : null;
}

/** It was too much, and nobody has said since that they want to go on. A calm place may be what steadies them. */
export function isHeldByTooMuch(state: DeskState, now: number): boolean {
  const much = tooMuchHere(state);
  const { goOn } = state;
  const since = goOn?.after === much ? now - goOn.at : Number.POSITIVE_INFINITY;
  return much !== null && shownPlan(state)?.purpose !== "calm_place" && (since < NO_DOUBLE_TAP || since >= ASKED_AGAIN);
}

/** What a start still needs, sentence by sentence. What the room has against its plan counts for nothing when another is on its way. */
export function missing(view: DeskView, otherPlan = false): string[] {
  const ofPlan = otherPlan ? { motion: false, sound: false } : {};
  // The second after a stop is the answer while it lasts; the client's page needs less of it to come to rest.
  const rest = view.needs.rest && !view.needs.pause;
  // Of another plan that is on its way the opening may say otherwise: the room will.
  const words = [...needsWords({ ...view.needs, ...ofPlan, rest, pause: false }), ...(otherPlan ? [] : holdsWords(view.holds))];
  return view.refused !== null && isOfPlan(view.refused) && !otherPlan ? [...words, refusalWords(view.refused)] : words;
}

/** The same as the answer to a press; null: nothing. */
export function missingWords(view: DeskView, otherPlan = false): string | null {
  const words = missing(view, otherPlan);
  return words.length === 0 ? null : `Not started. ${words.join(" ")}`;
}

/** Starts the next set, the newest plan first. */
export function start(state: DeskState, now: number): Step {
  const why = whyNoStart(state, now);
  if (why === WAS_TOO_MUCH) return say({ ...state, goOn: { after: tooMuchHere(state) ?? "", at: now } }, why, now);
  if (why !== null) return why === "" ? unchanged(state) : say(state, why, now, state.view !== null && why === missingWords(state.view));
  const asked = [...state.pending].reverse().find((pending) => pending.order.kind === "plan")?.order;
  const wanted = state.wanted;
  const late = wanted !== null && !wanted.agreed && !(asked?.kind === "plan" && samePlan(asked.plan, wanted.plan));
  const planned = late ? sendOrder(state, { kind: "plan", plan: wanted.plan }, now) : unchanged(state);
  const started = sendOrder({ ...planned.state, armed: null }, { kind: "start" }, now);
  return { state: started.state, commands: [...planned.commands, ...started.commands] };
}

/** Stops at once. Always sent: the view may be a moment behind the room. A held key does not flood the line. */
export function stop(state: DeskState, now: number): Step {
  // No room is left to answer it.
  if (state.view?.state === "closed") return say(state, "The session is closed: nothing moves.", now);
  const held = state.pending.some((pending) => pending.order.kind === "stop" && now - pending.since < HELD_KEY);
  if (held) return unchanged({ ...state, stoppedAt: now });
  return sendOrder({ ...state, stoppedAt: now }, { kind: "stop" }, now);
}

function orderPlan(state: DeskState, plan: Plan, now: number): Step {
  const next = { ...state, wanted: { plan, agreed: false }, notice: null };
  return isOnItsWay(state, "plan") ? unchanged(next) : sendOrder(next, { kind: "plan", plan }, now);
}

/** Why this plan may not be ordered now, or null. */
function whyNoPlan(state: DeskState, from: Plan, to: Plan): string | null {
  const view = state.view;
  if (view === null || !canSend(state)) return "Nothing was changed: no connection to the server.";
  if (!view.in_control) return refusalWords({ kind: "not_in_control" });
  if (isBusy(state) && !sameButRate(from, to)) return "While a set runs only the rate can change.";
  // A preset that is too wide gets what fits, as a screen that becomes narrower does: the room sees to both.
  const byItself = samePlan({ ...to, width: from.width }, from);
  const tooWide = byItself && view.widest !== null && to.width > from.width && to.width > view.widest;
  return tooWide && view.widest !== null ? refusalWords({ kind: "too_wide", widest: view.widest }) : null;
}

/** Changes one setting by one step, or opens or closes the length when `setting` is "open". */
export function changeSetting(state: DeskState, setting: Setting | "open", direction: Direction, now: number): Step {
  const from = shownPlan(state);
  if (from === null || state.view === null) return say(state, "Nothing was changed: no connection to the server.", now);
  const to = setting === "open" ? toggleOpen(from) : stepPlan(from, setting, direction, state.view);
  if (samePlan(from, to)) return unchanged(state);
  const why = whyNoPlan(state, from, to);
  if (why !== null) return say(state, why, now);
  const goesOn = state.lastStep !== null && state.lastStep.setting === setting && now - state.lastStep.at < ONE_CHANGE;
  const earlierPlans = goesOn ? state.earlierPlans : [...state.earlierPlans, from];
  return orderPlan({ ...state, earlierPlans, lastStep: { setting, at: now } }, to, now);
}

/** Applies a preset to the next set, or as far as a change of the plan goes to the one that runs; the list gives way to the log. */
export function applyPreset(state: DeskState, index: number, now: number): Step {
  const preset = state.presets[index];
  const from = shownPlan(state);
  if (preset === undefined) return say(state, "No preset has this number.", now);
  if (from === null) return say(state, "Nothing was changed: no connection to the server.", now);
  if (preset.purpose === "calm_place" && isBusy(state)) return say(state, "Calm-place presets are not for a set that runs.", now);
  const to = withPreset(from, preset);
  const why = samePlan(from, to) ? null : whyNoPlan(state, from, to);
  if (why !== null) return say(state, why, now);
  const words = `${preset.purpose === "calm_place" ? "Calm place" : "Preset"}: ${preset.name}${isBusy(state) ? "" : ", for the next set"}.`;
  const shown: DeskState = { ...state, lower: "log" };
  if (samePlan(from, to)) return say(shown, words, now);
  const ordered = orderPlan({ ...shown, earlierPlans: [...state.earlierPlans, from], lastStep: null }, to, now);
  return { ...ordered, state: { ...ordered.state, notice: { words, since: now, missing: false } } };
}

/** Sets the rate that was tapped, when one is on offer. */
export function setTapped(state: DeskState, now: number): Step {
  const from = shownPlan(state);
  const rate = offeredRate(state.taps, now);
  if (from === null || rate === null) return unchanged(state);
  const to = { ...from, rate };
  const why = whyNoPlan(state, from, to);
  if (why !== null) return say(state, why, now);
  return orderPlan({ ...state, taps: [], earlierPlans: [...state.earlierPlans, from], lastStep: null }, to, now);
}

/** Goes back to the plan before the last change of a setting. */
export function undoSetting(state: DeskState, now: number): Step {
  const from = shownPlan(state);
  const to = state.earlierPlans.at(-1);
  if (from === null || to === undefined) return say(state, "No change of a setting to undo.", now);
  const why = whyNoPlan(state, from, to);
  if (why !== null) return say(state, why, now);
  return orderPlan({ ...state, earlierPlans: state.earlierPlans.slice(0, -1), lastStep: null }, to, now);
}
