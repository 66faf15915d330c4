// What the desk knows, what can happen to it, and what it asks for. Times are page time, ms.
import type { Change } from "../wire/Change";
import type { DeskView } from "../wire/DeskView";
import type { Entry } from "../wire/Entry";
import type { EntryValue } from "../wire/EntryValue";
import type { FromDesk } from "../wire/FromDesk";
import type { Saved } from "../wire/Saved";
import type { Matter } from "../wire/Matter";
import type { Missing } from "../wire/Missing";
import type { Moment } from "../wire/Moment";
import type { Order } from "../wire/Order";
import type { Plan } from "../wire/Plan";
import type { Preset } from "../wire/Preset";
import type { RoomState } from "../wire/RoomState";
import type { SessionLog } from "../wire/SessionLog";
import type { SetView } from "../wire/SetView";
import type { Showed } from "../wire/Showed";
import type { Steadying } from "../wire/Steadying";
import type { Showing } from "../wire/Showing";
import type { ToDesk } from "../wire/ToDesk";
import type { Unwatched } from "../wire/Unwatched";
import type { Problem, Queue } from "./entries";
import type { Direction, Setting } from "./plan";
import type { Taps } from "./rhythm";

/** What is open below the controls, or beside them in a wide window, where target and card have places of their own. */
export type Lower = "log" | "join" | "opening" | "phase" | "between" | "steady" | "safety" | "closing" | "card" | "target" | "mechanics" | "keys";
/** Panels that stand over the entries and take the digits while they show. */
export const TAKE_DIGITS: readonly Lower[] = ["mechanics", "opening", "phase", "between", "steady", "closing", "card", "target"];
export type Scale = "sud" | "voc";

/** What the clinician does, by key or by button. */
export type Action =
  | { kind: "stop" }
  | { kind: "start" }
  | { kind: "end" }
  | { kind: "extend" }
  | { kind: "sight" }
  | { kind: "cannot_see" }
  /** The desk's own microphone, off and on. */
  | { kind: "mute" }
  /** Nothing came of the client for too long. */
  | { kind: "unseen"; missing: Missing }
  | { kind: "watch"; off: Unwatched | null }
  | { kind: "take_control" }
  | { kind: "step"; setting: Setting; direction: Direction }
  | { kind: "toggle_open" }
  | { kind: "undo_setting" }
  | { kind: "preset"; index: number }
  | { kind: "tap" }
  | { kind: "set_tapped" }
  | { kind: "ask_sides" }
  | { kind: "to_words" }
  | { kind: "save_words" }
  | { kind: "mark"; change: Change }
  | { kind: "arm"; scale: Scale }
  | { kind: "rate"; value: number }
  | { kind: "next_moment" }
  | { kind: "take_back"; entry: string }
  | { kind: "put_back"; entry: string }
  /** A digit of the opening; 10: t. */
  | { kind: "opening_digit"; value: number }
  /** A digit of what was seen or tried. */
  | { kind: "between_digit"; value: number }
  /** A digit of the card: a step on the way after a client who is gone. */
  | { kind: "reach_digit"; value: number }
  /** A digit of what the phase offers. */
  | { kind: "phase_digit"; value: number }
  /** A digit of what the client's page may show. */
  | { kind: "steady_digit"; value: number }
  /** It is too much: everything stops, and what steadies this client is in front. */
  | { kind: "too_much" }
  /** The armed scale is opened on the client's page, or taken away there. */
  | { kind: "ask_client" }
  | { kind: "found"; value: EntryValue }
  | { kind: "arm_at"; scale: Scale; moment: Moment; segment: number | null }
  | { kind: "segment"; to: number }
  | { kind: "assess" }
  /** To what is to be confirmed next before somebody is let in. */
  | { kind: "to_admission" }
  /** Of the closing, which its own panel carries out. */
  | { kind: "closing_digit"; value: number }
  | { kind: "turn"; value: number }
  | { kind: "closing_enter" }
  | { kind: "closing_move"; by: 1 | -1 }
  | { kind: "as_before" }
  | { kind: "toggle_pass" }
  | { kind: "choose"; matter: Matter }
  | { kind: "retry"; entry: string }
  | { kind: "edit"; entry: string }
  /** `row`: a set's id, "" for what came before the first. */
  | { kind: "open_row"; row: string }
  | { kind: "lower"; shown: Lower }
  | { kind: "toggle_preview" }
  | { kind: "toggle_private" }
  | { kind: "toggle_shortcuts" };

export type DeskEvent =
  | { kind: "tick" }
  /** `sentAway`: the server closed the line for good, see `SentAway`; `over`: because the session has ended. */
  | { kind: "line"; open: boolean; sentAway?: SentAway | null; over?: boolean }
  | { kind: "heard"; message: ToDesk }
  /** `id` is a fresh UUID, used when the action writes an entry; `words` what the field holds. */
  | { kind: "action"; action: Action; id: string; words: string }
  | { kind: "page_focus"; here: boolean }
  | { kind: "words_typed"; empty: boolean }
  /** `wide`: there is room for panels beside the column. */
  | { kind: "window"; wide: boolean }
  | { kind: "kept"; kept: Saved }
  | { kind: "not_kept"; id: string; problem: Problem }
  | { kind: "log"; log: SessionLog }
  | { kind: "log_failed" }
  /** An assessment was kept beside the queue. */
  | { kind: "assessed"; words: string }
  | { kind: "notice"; words: string };

/** How long it is, and how much of that is kept for closing, minutes. */
export interface Appointment {
  minutes: number;
  reserve: number;
}

/** What the page must do after a step, in order. */
export type Command =
  | { kind: "send"; message: FromDesk }
  | { kind: "save"; entry: Entry }
  | { kind: "load_log" }
  | { kind: "focus"; on: "keys" | "words" | "assessment" }
  | { kind: "fill_words"; words: string };

/** An order without its answer. */
export interface Pending {
  id: number;
  order: Order;
  since: number;
}

/** Why the server closed the line for good: the sign-in has ended (or a rule was broken), or the client is somebody else's now. */
export type SentAway = "signed_out" | "handed_over";

export interface DeskState {
  /** The socket to the server; `synced`: a view has come over it since it opened. */
  line: { open: boolean; synced: boolean; heardAt: number };
  view: DeskView | null;
  /** What rooms that are gone showed last, to be handed back to those that come. */
  gone: readonly SetView[];
  /** When the present state word began. */
  stateSince: number;
  showing: { reading: Showing; heardAt: number } | null;
  /** When the clinician or anything else last stopped a set. */
  stoppedAt: number;
  pending: Pending[];
  nextOrder: number;
  /** The plan as chosen here and not yet in a view. `agreed`: the server said yes to it. */
  wanted: { plan: Plan; agreed: boolean } | null;
  /** Plans before each change of a setting, the latest last. */
  earlierPlans: Plan[];
  lastStep: { setting: string; at: number } | null;
  /** Of the key that sets the rate by rhythm. */
  taps: Taps;
  /** The answer to the last press; `missing`: it says what a start still needs. */
  notice: { words: string; since: number; missing: boolean } | null;
  /** Whether this page has the keyboard, and since when. */
  focus: { here: boolean; since: number };
  shortcuts: boolean;
  preview: boolean;
  /** Name, place and number are hidden, for whoever shows this screen to others. */
  private: boolean;
  /** There is room for panels beside the column: they cover nothing. */
  wide: boolean;
  /** When the client was let in for the first time; null: not yet. */
  begun: number | null;
  /** How long an appointment of this practice usually is, and how much of that is kept for closing, minutes. */
  usualTime: Appointment;
  /** `segment`: of a recent event, which one is rated. */
  armed: { scale: Scale; moment: Moment; segment: number | null } | null;
  /** The segment of a recent event that is rated next. */
  segment: number;
  /** What has helped this client, as their page may show it, in the order of the digits from 2. */
  resources: readonly string[];
  /** Asked of the room and not yet seen there: what the client's page is to show, and the entry that will say so. */
  putting: { id: string; showed: Showed; steadying: Steadying | null } | null;
  /** After it was too much: the entry that said so, and when going on was asked for once. */
  goOn: { after: string; at: number } | null;
  /** The last rating from the client's page that was heard here. */
  heardRating: string | null;
  lower: Lower;
  /** Of the opening: the matter that was chosen by hand, and whether the digits say why it is gone past. */
  opening: { chosen: Matter | null; passing: boolean };
  /** The line of the log that is open: a set's id, "" for what came before the first. */
  openRow: string | null;
  /** In the order of the digits, as the page came with them. */
  presets: readonly Preset[];
  /** The set that the words being typed belong to: undefined when none are. */
  wordsFor: string | null | undefined;
  queue: Queue;
  log: SessionLog;
  /** Whether the server's log was read at least once, and whether it is due to be read (again). */
  logRead: boolean;
  logIs: "due" | "loading" | "loaded";
  logDue: number;
  /** The server has closed the line for good. */
  sentAway: SentAway | null;
  /** The server is newer than this page. */
  reload: boolean;
}

export interface Step {
  state: DeskState;
  commands: Command[];
}

/** A session's log before it was read. */
export const EMPTY_LOG: SessionLog = {
  sets: [],
  entries: [],
  start: { sud: null, voc: null },
  other_reevaluated: false,
  procedure: null,
  next: null,
  reevaluates: null,
  opened_before: [],
  phase: "opening",
  asks: [],
};

/** The desk before anything was heard. */
export function freshDesk(now: number): DeskState {
  return {
    line: { open: false, synced: false, heardAt: now },
    view: null,
    gone: [],
    stateSince: now,
    showing: null,
    stoppedAt: -Infinity,
    pending: [],
    nextOrder: 1,
    wanted: null,
    earlierPlans: [],
    lastStep: null,
    taps: [],
    notice: null,
    focus: { here: true, since: -Infinity },
    shortcuts: true,
    preview: true,
    private: false,
    wide: false,
    begun: null,
    usualTime: { minutes: 50, reserve: 10 },
    armed: null,
    segment: 1,
    resources: [],
    putting: null,
    goOn: null,
    heardRating: null,
    lower: "log",
    opening: { chosen: null, passing: false },
    openRow: null,
    presets: [],
    wordsFor: undefined,
    queue: [],
    log: EMPTY_LOG,
    logRead: false,
    logIs: "due",
    logDue: now,
    sentAway: null,
    reload: false,
  };
}

/** The plan as the clinician sees it: the chosen one, else the room's. */
export function shownPlan(state: DeskState): Plan | null {
  return state.wanted?.plan ?? state.view?.plan ?? null;
}

/** Nobody is admitted. */
export const OUTSIDE: readonly RoomState[] = ["waiting", "at_the_door", "left", "closed"];
/** The client is admitted and the session goes on. */
export const isLive = ({ view }: DeskState): boolean => view !== null && !OUTSIDE.includes(view.state);

/** A set that takes orders: in the record and not over. */
export const hasSet = ({ view }: DeskState): boolean => view?.set?.ended === null && (view.state === "starting" || view.state === "running");

/** Somebody waits to be let in, or another device asks. */
export const isAtTheDoor = ({ view }: DeskState): boolean => view !== null && view.state !== "closed" && (view.state === "at_the_door" || view.seat_asked_for);

/** A set runs, eases or is about to. */
export function isBusy(state: DeskState): boolean {
  const word = state.view?.state;
  return word === "running" || word === "easing" || word === "starting";
}
