// When it is too much, and what the client's page shows to steady by. Pure.
import type { DeskView } from "../wire/DeskView";
import type { Showed } from "../wire/Showed";
import type { Steadying } from "../wire/Steadying";
import { presentSet } from "./log";
import { isLive, type DeskState, type Step } from "./model";
import { say, sendOrder, stop } from "./orders";
import { writeFound } from "./ratings";

/** One key: everything stops, it is written down that it was too much, and this client's signs and way back are in front. */
export function tooMuch(state: DeskState, id: string, now: number): Step {
  const stopped = stop({ ...state, armed: null, lower: "steady" }, now);
  if (!isLive(state)) return stopped;
  const kept = writeFound(stopped.state, id, presentSet(state), { kind: "too_much" }, now);
  return { state: kept.state, commands: [...stopped.commands, ...kept.commands] };
}

/** What a digit of the panel puts on the client's page: 1 the page's own words, 2 and on what has helped, 0 nothing. Undefined: none. */
export function steadyingOf(state: DeskState, value: number): Steadying | null | undefined {
  if (value === 0) return null;
  if (value === 1) return { kind: "orient" };
  const words = state.resources[value - 2];
  return words === undefined ? undefined : { kind: "resource", words };
}

/** Asks the room to put it there. What came of it is written down once the room has done it. */
export function putOnPage(state: DeskState, value: number, id: string, now: number): Step {
  const steadying = steadyingOf(state, value);
  if (steadying === undefined) return say(state, "This number has nothing to show. 1 is the page's own words, 0 takes them away.", now);
  if (!isLive(state)) return say(state, "The client is not here, so their page shows nothing.", now);
  const showed: Showed = steadying === null ? "nothing" : steadying.kind;
  const step = sendOrder(state, { kind: "show", steadying }, now);
  return { state: { ...step.state, putting: { id, showed, steadying } }, commands: step.commands };
}

const same = (a: Steadying | null, b: Steadying | null): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The room has done what was asked: it is written down. */
export function followPage(step: Step, view: DeskView, now: number): Step {
  const { putting } = step.state;
  if (putting === null || !same(view.steadying, putting.steadying)) return step;
  const kept = writeFound({ ...step.state, putting: null }, putting.id, presentSet(step.state), { kind: "showed", showed: putting.showed }, now);
  return { state: kept.state, commands: [...step.commands, ...kept.commands] };
}

/** What stands on the client's page, in a few words; "" for nothing. */
export function pageWords(view: DeskView | null): string {
  if (view?.pad) return `${view.pad.scale.toUpperCase()} is open on the client's page (/)`;
  if (!view?.steadying) return "";
  return view.steadying.kind === "orient" ? "client's page: here and now" : "client's page: what has helped";
}

/** Which digit of the panel stands on the client's page. */
export function standsOnPage(state: DeskState, value: number): boolean {
  const steadying = steadyingOf(state, value);
  return steadying !== undefined && state.view !== null && same(steadying, state.view.steadying);
}

/** Opens the armed scale on the client's page, or takes it away. */
export function askClient(state: DeskState, now: number): Step {
  const { view, armed } = state;
  if (view?.pad) return sendOrder(state, { kind: "ask", pad: null }, now);
  if (armed === null) return say(state, "Which scale? First s for SUD or v for VOC, then / asks it on the client's page.", now);
  if (armed.segment !== null) return say(state, "A segment is asked aloud: the client's page knows the whole only.", now);
  if (!isLive(state)) return say(state, "The client is not here, so they cannot be asked.", now);
  return sendOrder({ ...state, armed: null }, { kind: "ask", pad: { scale: armed.scale, moment: armed.moment } }, now);
}

/** A rating that came from the client's page is written down under the id that it brought: once, whoever hears it. */
export function followRating(step: Step, view: DeskView, now: number): Step {
  const { rated } = view;
  const { state } = step;
  if (rated === null || rated.id === state.heardRating || !view.in_control) return step;
  const heard = { ...state, heardRating: rated.id };
  if (rated.value === null) {
    const said = say(heard, "The client passed the rating over.", now);
    return { state: said.state, commands: [...step.commands, ...said.commands] };
  }
  const value = { kind: rated.pad.scale, value: rated.value };
  const kept = writeFound(heard, rated.id, presentSet(heard), value, now, { moment: rated.pad.moment, from_client: true });
  return { state: kept.state, commands: [...step.commands, ...kept.commands] };
}
