/**
 * The client's page as a pure reducer: (state, event) -> state and what to do. It alone decides
 * what may move. Three rules hold whatever happens:
 * - a set that came to rest on this page never moves again, whatever views arrive;
 * - nothing moves before the check is done, or on a page that did not see the set from its start;
 * - nobody is said to be told before a view says that they are.
 */
import type { SocketState } from "../live/socket";
import type { Ending } from "../wire/Ending";
import type { FromStage } from "../wire/FromStage";
import type { Interruption } from "../wire/Interruption";
import type { RoomState } from "../wire/RoomState";
import type { SetView } from "../wire/SetView";
import type { StageView } from "../wire/StageView";
import type { Abilities, Step } from "./check";
import { answer, askMotion, goBack, isChecking, type Motion, type Questions, skip, skipAll, unanswered } from "./questions";

/** What this page has yet to be heard about: repeated until a view shows it. */
export interface Untold {
  readonly message: Extract<FromStage, { type: "stop" | "interrupted" }>;
  /** The set it ended, or `undefined` when none ran. */
  readonly set: string | undefined;
  /** It went out on the connection that is open now. */
  readonly sent: boolean;
}

/** See the head of this file. */
export interface State extends Questions {
  readonly link: SocketState;
  /** The line was open before. */
  readonly wasOpen: boolean;
  /** The session ended while this page was away. */
  readonly over: boolean;
  readonly view: StageView | undefined;
  /** The set that moves or sounds. */
  readonly playing: string | undefined;
  /** Every set that came to rest on this page, or was not let on. */
  readonly spent: ReadonlySet<string>;
  /** Why this page is held: the client's Stop or an interruption that no Ready has followed. */
  readonly halt: "stop" | Interruption | undefined;
  readonly untold: Untold | undefined;
  /** A rating that the room has still to hear, and to which question it is the answer. */
  readonly rated: { readonly id: string; readonly asked: number; readonly value: number | null } | undefined;
  /** The client has said that they need longer. */
  readonly longerSaid: boolean;
  /** The client tapped Ready, and no later view has come. */
  readonly readySaid: boolean;
  /** A newer page is waiting: reload once nothing moves. */
  readonly reload: boolean;
}

/** What can happen. */
export type Event =
  /** `over`: the server says that the session has ended. */
  | { type: "link"; state: SocketState; over?: boolean }
  /** `obstacle`: why a set that starts now could not be shown (the page is hidden, it came too late). */
  | { type: "view"; view: StageView; obstacle: Interruption | undefined }
  | { type: "stop" }
  | { type: "interrupted"; cause: Interruption }
  /** The set came to its own end on the screen. */
  | { type: "finished" }
  | { type: "ready" }
  /** On the scale that is open; `value` null: passed over. */
  | { type: "rated"; id: string; value: number | null }
  | { type: "longer" }
  | { type: "answered"; step: Step; motion?: Motion }
  /** Passed over: what was answered before stays. */
  | { type: "skipped"; step: Step }
  | { type: "skip-all" }
  /** From `step` to the question before it. */
  | { type: "back"; step: Step }
  | { type: "reduced-motion" }
  | { type: "reload" }
  /** Time has passed: what is untold may be said again. */
  | { type: "again" };

/** What to do, in order. */
export type Effect =
  | { do: "play"; set: SetView }
  /** At once, whatever still moves: what eases to rest too, and nothing where all is at rest. */
  | { do: "cut"; ending: Ending }
  /** Within 600 ms. */
  | { do: "ease"; ending: Ending }
  | { do: "send"; message: FromStage }
  | { do: "reload" };

export type Outcome = readonly [State, readonly Effect[]];

/** The page as it is opened. */
export function opened(abilities: Abilities): State {
  return {
    ...unanswered(abilities),
    link: "connecting",
    wasOpen: false,
    over: false,
    view: undefined,
    playing: undefined,
    spent: new Set(),
    halt: undefined,
    untold: undefined,
    rated: undefined,
    longerSaid: false,
    readySaid: false,
    reload: false,
  };
}

/** One step. */
export function reduce(state: State, event: Event): Outcome {
  switch (event.type) {
    case "link":
      return onLink({ ...state, over: state.over || event.over === true }, event.state);
    case "view":
      return onView(state, event.view, event.obstacle);
    case "stop":
      return halted(state, "stop");
    case "interrupted":
      return onInterrupted(state, event.cause);
    case "finished":
      return reloadIfDue({ ...spend(state, state.playing), playing: undefined });
    case "ready":
      return onReady(state);
    case "answered":
      return [answer(state, event.step, event.motion), []];
    case "skipped":
      return [skip(state, event.step), []];
    case "skip-all":
      return [skipAll(state), []];
    case "back":
      return [goBack(state, event.step), []];
    case "reduced-motion":
      return onReducedMotion(state);
    case "reload":
      return reloadIfDue({ ...state, reload: true });
    case "rated":
      return onRated(state, event.id, event.value);
    case "longer":
      return waitsForReady(state) ? tell({ ...state, longerSaid: true }) : [state, []];
    case "again":
      return tell(state);
  }
}

function onLink(state: State, link: SocketState): Outcome {
  const untold = state.untold && { ...state.untold, sent: false };
  const next = { ...state, link, untold, wasOpen: state.wasOpen || link === "open" };
  return link === "open" ? tell(next) : [{ ...next, readySaid: false }, []];
}

function onView(state: State, view: StageView, obstacle: Interruption | undefined): Outcome {
  if (state.view && isOlder(view, state.view)) return [state, []];
  const seen = {
    ...agreed({ ...state, view, ...beside(state, view), untold: stillUntold(state.untold, view) }, view),
    readySaid: false,
    check: asksSides(state, view) ? ("sides" as const) : state.check,
  };
  const set = view.set ?? undefined;
  const anew = state.view !== undefined && view.epoch > state.view.epoch;
  const ending = cutBy(seen, set, anew);
  if (ending === undefined) return follow(seen, set, obstacle);
  const [next, effects] = follow({ ...spend(seen, seen.playing), playing: undefined }, set, obstacle);
  return [next, [{ do: "cut", ending }, ...effects]];
}

/**
 * This page's hold and the room's word for it. Once the room is ready and has heard why, a hold that needed no tap is over: the client must
 * not read that they can rest while the next press at the desk starts a set. And a hold that the room does not know of, because it began
 * anew or the news was lost, is told again: it must not say that it is ready while this page would refuse.
 */
function agreed(state: State, view: StageView): State {
  const { halt, untold } = state;
  if (halt === undefined || untold !== undefined) return state;
  if (!waitsForClient(state)) return view.state === "ready" ? { ...state, halt: undefined } : state;
  if (!hears(view) || view.needs.client_ready || state.readySaid) return state;
  const message: Untold["message"] = halt === "stop" ? { type: "stop" } : { type: "interrupted", cause: halt };
  return { ...state, untold: { message, set: undefined, sent: false } };
}

/** How a view ends what moves here there and then: the set that plays, or one that eases to rest by itself. */
function cutBy({ playing, spent }: State, set: SetView | undefined, anew: boolean): Ending | undefined {
  const atOnce = set && endedAtOnce(set) ? (set.ended ?? undefined) : undefined;
  // A lost line is why it eases.
  if (playing === undefined) return set && spent.has(set.id) && atOnce !== "link_lost" ? atOnce : undefined;
  if (set?.id !== playing) return "unknown";
  return anew ? (set.ended ?? "unknown") : atOnce;
}

/** Plays, goes on playing, or refuses the set of the latest view. */
function follow(state: State, set: SetView | undefined, obstacle: Interruption | undefined): Outcome {
  if (!set || state.spent.has(set.id)) return reloadIfDue(state);
  if (state.playing === set.id) return [state, [{ do: "play", set }]];
  if (set.ended !== null || !moves(state.view)) return reloadIfDue(state);
  if (set.plan.channels.eyes && state.motion !== "welcome" && !isChecking(state)) return halted(spend(state, set.id), "stop", set.id);
  const why = obstacle ?? (isChecking(state) || waitsForClient(state) ? "hidden" : undefined);
  if (why) return halted(spend(state, set.id), why, set.id);
  return [{ ...state, check: undefined, playing: set.id, halt: undefined }, [{ do: "play", set }]];
}

/** The page holds still; the room hears why. */
function halted(state: State, cause: "stop" | Interruption, refused?: string): Outcome {
  const set = state.playing ?? refused;
  const message: Untold["message"] = cause === "stop" ? { type: "stop" } : { type: "interrupted", cause };
  const held = { ...spend(state, set), playing: undefined, halt: cause, readySaid: false };
  // A Stop outranks an interruption that is still untold, never the other way round.
  const keeps = state.untold?.message.type === "stop" && cause !== "stop";
  const [next, effects] = tell(keeps ? held : { ...held, untold: { message, set, sent: false } });
  if (cause !== "silence") return [next, [{ do: "cut", ending: endingOf(cause) }, ...effects]];
  return [next, state.playing === undefined ? effects : [{ do: "ease", ending: "link_lost" }, ...effects]];
}

/** While no set plays only a hidden page matters: no set may start into it before the client's Ready. */
function onInterrupted(state: State, cause: Interruption): Outcome {
  const matters = state.playing !== undefined || (cause === "hidden" && !waitsForClient(state) && state.check === undefined && admitted(state.view));
  return matters ? halted(state, cause) : [state, []];
}

function onReady(state: State): Outcome {
  // Before the client was let in, or with the line down, Ready only takes back this page's own hold.
  if (state.link !== "open") return [state, []];
  const free = { ...state, halt: undefined, longerSaid: false, readySaid: true };
  return hears(state.view) ? [free, [{ do: "send", message: { type: "ready" } }]] : [{ ...free, untold: undefined }, []];
}

/** The system began to ask for less movement: a dot that moves stops, and the client is asked. */
function onReducedMotion(state: State): Outcome {
  const asked = askMotion(state);
  return state.playing === undefined ? [asked, []] : halted(asked, "stop");
}

/** The page repeats what it has to tell until a view shows it. */
function tell(state: State): Outcome {
  const [next, effects] = tellWhy(state);
  return [next, [...effects, ...besides(next).map((message): Effect => ({ do: "send", message }))]];
}

/** A rating, and that more time is needed. */
function besides({ view, link, rated, longerSaid }: State): FromStage[] {
  if (link !== "open" || !admitted(view)) return [];
  const messages: FromStage[] = [];
  if (rated !== undefined && view?.pad?.asked === rated.asked) messages.push({ type: "rated", ...rated });
  if (longerSaid && view?.needs.client_ready && !view.longer) messages.push({ type: "longer" });
  return messages;
}

/** What of these a new view leaves: an answer to another question is none, and a new room has asked nothing yet. */
function beside({ view: last, rated, longerSaid }: State, view: StageView): Pick<State, "rated" | "longerSaid"> {
  const anew = last !== undefined && view.epoch > last.epoch;
  const open = rated !== undefined && !anew && view.pad?.asked === rated.asked;
  return { rated: open ? rated : undefined, longerSaid: longerSaid && view.needs.client_ready };
}

function onRated(state: State, id: string, value: number | null): Outcome {
  const asked = state.view?.pad?.asked;
  return asked === undefined || state.rated !== undefined ? [state, []] : tell({ ...state, rated: { id, asked, value } });
}

function tellWhy(state: State): Outcome {
  const heard = state.untold?.message.type === "stop" ? hears(state.view) : admitted(state.view);
  if (!state.untold || state.link !== "open" || !heard) return [state, []];
  return [{ ...state, untold: { ...state.untold, sent: true } }, [{ do: "send", message: state.untold.message }]];
}

function reloadIfDue(state: State): Outcome {
  return [state, state.reload && state.playing === undefined ? [{ do: "reload" }] : []];
}

function spend(state: State, set: string | undefined): State {
  return set === undefined ? state : { ...state, spent: new Set([...state.spent, set]) };
}

/** The room, or this page alone, waits for the client's Ready. */
export const waitsForReady = (state: State): boolean => waitsForClient(state) || state.view?.needs.client_ready === true;

/** Whether a view shows what was to be told; only what went out on this connection can be shown. */
function stillUntold(untold: Untold | undefined, view: StageView): Untold | undefined {
  if (!untold || view.state === "closed") return undefined;
  if (!untold.sent) return untold;
  const runs = untold.set !== undefined && view.set?.id === untold.set && view.set.ended === null;
  const shown = untold.message.type === "stop" ? view.state === "stopped_by_client" || view.needs.client_ready : true;
  return runs || !shown ? untold : undefined;
}

/** The desk has asked for the check of left and right since the last view, and nothing more pressing is open. */
function asksSides({ view: last, playing, check, halt }: State, view: StageView): boolean {
  const asked = last !== undefined && last.epoch === view.epoch && view.sides_asked > last.sides_asked;
  return asked && admitted(view) && playing === undefined && check === undefined && halt === undefined;
}

/** Nothing may start before the client's Ready. After a lost line or a turned screen the clinician may go on. */
export const waitsForClient = ({ halt }: State): boolean => halt !== undefined && halt !== "silence" && halt !== "resized";

/** The same view again is taken in too: it may be the answer to what this page repeated. */
const isOlder = (view: StageView, than: StageView): boolean => view.epoch < than.epoch || (view.epoch === than.epoch && view.seq < than.seq);

/** A set is shown to the client while the room is in one of these. It is starting until this page says that it moves. */
const moves = (view: StageView | undefined): boolean => view?.state === "starting" || view?.state === "running" || view?.state === "easing";

const OUTSIDE: readonly RoomState[] = ["waiting", "at_the_door", "left", "closed"];

/** The client was let in. Before that the room takes little but answers. */
export const admitted = (view: StageView | undefined): boolean => view !== undefined && !OUTSIDE.includes(view.state);

/** The room takes a Stop and a Ready: at the door as well. */
const hears = (view: StageView | undefined): boolean => admitted(view) || view?.state === "at_the_door";

/** Ends that are in the timeline of a set, and come by themselves. */
const AT_REST: readonly Ending[] = ["done", "ended_by_clinician", "hard_limit", "unseen", "unheard"];

/** Whether a set was ended there and then. */
export function endedAtOnce({ ended }: SetView): boolean {
  return ended !== null && !AT_REST.includes(ended);
}

const endingOf = (cause: "stop" | Interruption): Ending => (cause === "stop" ? "stopped_by_client" : "page_interrupted");
