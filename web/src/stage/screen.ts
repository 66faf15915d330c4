/** Which page the client sees, read off the state. Pure. */
import { type Place, placeOf, type Step } from "./check";
import { admitted, endedAtOnce, type State, waitsForReady } from "./machine";
import type { Scale } from "../wire/Scale";

/** One page; `render` has its words. */
export type Page =
  | { name: "connecting" | "refused" | "waiting" | "waiting-alone" | "ready" | "ready-tones" | "ready-alone" | "between" | "between-still" | "running" }
  | { name: "lost" }
  | Question
  | Held
  /** A scale to rate on; `said`: the answer is on its way. */
  | { name: "pad"; scale: Scale; said: boolean }
  /** Something to steady by: the page's own words, or those of what has helped. Whatever holds the page stands beneath. */
  | { name: "steadying"; words: string | undefined; held: Held | undefined }
  | { name: "end"; words: string | undefined };

/** `asksReady`: nothing starts before the client's tap. `online`: the tap can be heard. `longer`: whether it may be said that more time is
 * needed, or was. */
export interface Held {
  readonly name: "held";
  readonly why: "stop" | "declined" | "page";
  readonly told: boolean;
  readonly asksReady: boolean;
  readonly online: boolean;
  readonly longer: "no" | "may" | "said";
}

/** A page of the check. */
export interface Question {
  readonly name: "check";
  readonly step: Step;
  /** Nothing where a question stands alone: one of those that cannot be skipped with all, or that the desk asks again. */
  readonly place: Place | undefined;
  /** There is a question before it. */
  readonly back: boolean;
  /** It was answered before. */
  readonly given: boolean;
}

/** See the head of this file. */
export function pageOf(state: State): Page {
  const { view } = state;
  if (view?.state === "closed") return { name: "end", words: view.closing_words ?? undefined };
  if (state.playing !== undefined) return { name: "running" };
  if (state.over) return { name: "end", words: undefined };
  if (state.link === "refused") return { name: "refused" };
  const put = putThere(state);
  if (put !== undefined) return put;
  if (state.halt === "stop") return held(state);
  if (state.check !== undefined) return question(state, state.check);
  if (state.link !== "open") return state.wasOpen ? { name: "lost" } : { name: "connecting" };
  if (!view) return { name: "connecting" };
  if (view.state === "waiting" || view.state === "at_the_door" || view.state === "left") return { name: view.desk_here ? "waiting" : "waiting-alone" };
  if (view.state === "link_lost" || (state.halt === "silence" && !view.desk_here)) return { name: "lost" };
  if (isHeld(state)) return held(state);
  if (!view.desk_here) return { name: "ready-alone" };
  if (state.motion === "declined") return { name: "ready-tones" };
  if (state.spent.size === 0) return { name: "ready" };
  // The dot stays where it came to rest by itself; one that was cut is gone, and there is nothing to say of it.
  const rests = view.set?.plan.channels.eyes && !endedAtOnce(view.set);
  return { name: rests ? "between" : "between-still" };
}

function question(state: State, step: Step): Question {
  const place = state.skipping ? undefined : placeOf(step, state.abilities);
  return { name: "check", step, place, back: state.trail.length > 0, given: state.given.has(step) };
}

const isHeld = ({ halt, view, readySaid }: State): boolean => halt !== undefined || (view?.needs.client_ready === true && !readySaid);

/** What the clinician has put on this page, while nobody is asked about the device and the line is open. */
function putThere(state: State): Page | undefined {
  const { view, check, link, rated } = state;
  if (!view || !admitted(view) || check !== undefined || link !== "open" || !view.desk_here) return undefined;
  if (view.pad) return { name: "pad", scale: view.pad.scale, said: rated !== undefined };
  if (!view.steadying) return undefined;
  const words = view.steadying.kind === "resource" ? view.steadying.words : undefined;
  return { name: "steadying", words, held: isHeld(state) ? held(state) : undefined };
}

function held(state: State): Held {
  const byClient = state.halt === "stop" || state.view?.state === "stopped_by_client";
  const why = !byClient ? "page" : state.motion === "declined" ? "declined" : "stop";
  const told = state.untold === undefined && state.view?.desk_knows === true;
  const asksReady = waitsForReady(state);
  const online = state.link === "open";
  const said = state.longerSaid || state.view?.longer === true;
  return { name: "held", why, told, asksReady, online, longer: !asksReady || !online || !byClient ? "no" : said ? "said" : "may" };
}
