// Every sentence of the desk that depends on what happens. Words first; shape and colour follow them.
import type { Ending } from "../wire/Ending";
import type { EntryValue } from "../wire/EntryValue";
import type { Hold } from "../wire/Hold";
import type { Length } from "../wire/Length";
import type { Matter } from "../wire/Matter";
import type { Moment } from "../wire/Moment";
import type { Needs } from "../wire/Needs";
import type { Order } from "../wire/Order";
import type { Path } from "../wire/Path";
import type { Plan } from "../wire/Plan";
import type { Purpose } from "../wire/Purpose";
import type { ReachStep } from "../wire/ReachStep";
import type { Refusal } from "../wire/Refusal";
import type { Rung } from "../wire/Rung";
import type { Saw } from "../wire/Saw";

export const degrees = (value: number): string => `${Number.isInteger(value) ? value : value.toFixed(1)}°`;
export const hertz = (value: number): string => `${value.toFixed(2)} Hz`;

const two = (value: number): string => String(value).padStart(2, "0");
/** How many hours the practice's clock has. */
export type Hours = 12 | 24;
let hours: Hours = 24;
/** From now on times are written so. */
export function writeTimesWith(wanted: Hours): void {
  hours = wanted;
}

function timeOf(date: Date, rest: string): string {
  const hour = date.getHours();
  return hours === 24 ? `${two(hour)}${rest}` : `${hour % 12 === 0 ? 12 : hour % 12}${rest} ${hour < 12 ? "am" : "pm"}`;
}

/** Hours, minutes and seconds on this computer's clock. */
export function clockTime(instant: string): string {
  const date = new Date(instant);
  return timeOf(date, `:${two(date.getMinutes())}:${two(date.getSeconds())}`);
}

/** Hours and minutes. */
export const clockMinute = (date: Date): string => timeOf(date, `:${two(date.getMinutes())}`);

export const PATH_WORDS: Record<Path, string> = { across: "across", up_down: "up-down", falling: "diagonal down", rising: "diagonal up", eight: "eight" };

export const PURPOSE_WORDS: Record<Purpose, string> = { processing: "reprocessing", calm_place: "a calm place" };

/** The same beside figures. */
export const PATH_IN_SHORT: Record<Path, string> = { ...PATH_WORDS, falling: "diagonal", rising: "diagonal" };

export const channelWords = ({ channels: { eyes, ears, hands } }: Plan): string =>
  [eyes ? "eyes" : "", ears ? "tones" : "", hands ? "taps" : ""].filter((word) => word !== "").join(" + ");

export const cyclesWords = (count: number): string => `${count} ${count === 1 ? "cycle" : "cycles"}`;

export const lengthWords = (length: Length): string => (length.kind === "open" ? "open-ended" : cyclesWords(length.cycles));

export const MOMENT_WORDS: Record<Moment, string> = {
  assessment: "assessment",
  after_set: "after a set",
  back_at_target: "back at the target",
  installation: "installation",
  closing: "closing",
  reevaluation: "re-evaluation",
  opening: "opening",
};

/** How a set ended, short enough for a row; a planned end needs no word. */
export const ENDING_WORDS: Record<Ending, string> = {
  done: "",
  ended_by_clinician: "ended",
  stopped_by_clinician: "stopped",
  stopped_by_client: "stopped by client",
  cannot_see: "client not seen",
  unseen: "no picture of the client",
  unheard: "no sound of the client",
  page_interrupted: "client's page interrupted",
  link_lost: "link lost",
  hard_limit: "ended at the limit",
  unknown: "end unknown",
};

const MEANT: (Ending | null)[] = [null, "done", "ended_by_clinician", "hard_limit"];
/** Whether a set was stopped, interrupted, or its end is not known; null while it runs. */
export const isBrokenOff = (ending: Ending | null): boolean => !MEANT.includes(ending);

const ORDER_NAMES: Record<Order["kind"], string> = {
  take_control: "Take control",
  sight: "I can see and hear them",
  cannot_see: "I can't see them",
  unseen: "No picture or sound: come to rest",
  watch: "Rest when nothing comes of the client",
  start: "Start",
  stop: "Stop",
  end: "End",
  extend: "Extend",
  ask_sides: "Ask for left and right",
  show: "Put on the client's page",
  ask: "Ask on the client's page",
  plan: "Change of settings",
};
export const orderName = (order: Order): string => ORDER_NAMES[order.kind];

/** Why an order was refused, and what to do. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.kind) {
    case "old_epoch":
      return "the server has restarted. Look at the state, then press again.";
    case "not_in_control":
      return "this desk is view-only. Take control first.";
    case "wrong_state":
      return "does not fit the present state. Nothing was changed.";
    case "needs":
      return "something is needed first.";
    case "held":
      return "the opening (f) holds it.";
    case "limit":
      return refusal.limit;
    case "too_wide":
      return `That screen cannot show this width. The widest that fits is ${degrees(Math.floor(refusal.widest * 10) / 10)}.`;
    case "eyes_locked":
      return "The eyes are locked by a caution in the record. Use tones or taps.";
    case "not_saved":
      return "the record could not be written, so nothing was started. Press again.";
  }
}

/** Nothing is written any more, and will not be. */
export const RECORD_REFUSES = "Nothing gets into the record any more, so no set starts. Go on by voice; write down what you need.";
/** While the record does not answer: what becomes of entries, and what the start key does. */
export const RECORD_WAITS = "The record does not answer: what is entered now waits on this page, and no set starts. Stop and rate work.";

/** What must happen before a set may start. */
export function needsWords(needs: Needs): string[] {
  const words: string[] = [];
  if (needs.stage) words.push("The client's page is not heard.");
  if (needs.client_ready) words.push('The client must tap "I am ready".');
  if (needs.check) words.push("The client's page asks about their device.");
  if (needs.motion) words.push("The client's device asks for less motion: use tones or taps (n).");
  if (needs.sound) words.push("The client has not heard the test sound: ask (q), or use the dot (n).");
  if (needs.sight) words.push("Say that you can see and hear them (i).");
  if (needs.rest) words.push("The client's page has not said that it rests.");
  if (needs.desk) words.push("Your line is slow: their page would take you for lost.");
  if (needs.pause) words.push("A second must pass after a stop.");
  return words;
}

/** The same in a word or two each, for beside the state word. */
export function needsInShort(needs: Needs): string[] {
  const short: [boolean, string][] = [
    [needs.stage, "client's page"],
    [needs.client_ready, "client's Ready"],
    [needs.check, "device check"],
    [needs.motion, "tones or taps (n)"],
    [needs.sound, "test sound (q)"],
    [needs.sight, "your sight (i)"],
    [needs.rest, "their rest"],
    [needs.desk, "your line"],
    [needs.pause, "a second"],
  ];
  return short.flatMap(([missing, words]) => (missing ? [words] : []));
}

/** What plan would be taken instead of one that was refused; nothing when it was not the plan. */
export function otherPlanInShort({ kind }: Refusal): string[] {
  switch (kind) {
    case "eyes_locked":
      return ["tones or taps (n)"];
    case "too_wide":
      return ["less width"];
    case "limit":
      return ["a plan within the limits"];
    default:
      return [];
  }
}

/** The refusals that the plan itself brings: another plan may start. */
export const isOfPlan = (refusal: Refusal): boolean => otherPlanInShort(refusal).length > 0;

const MATTER_IN_SHORT: Record<Matter, string> = {
  location: "place",
  privacy: "privacy",
  nearby: "who is near",
  contact: "contact",
  risk: "risk",
  fitness: "fitness",
  consent: "consent",
  line_drop: "lost line",
  arrival: "arrival",
  agreed: "agreements",
  reevaluation: "re-evaluation",
  assessment: "assessment",
  reprocessing: "no reprocessing today",
  time: "time",
};

/** What of the opening holds a start, in a word or two; many are one. */
export function holdsInShort(holds: readonly Hold[]): string[] {
  if (holds.length === 0) return [];
  return holds.length > 2 ? ["the opening (f)"] : [`${holds.map((hold) => MATTER_IN_SHORT[hold.matter]).join(", ")} (f)`];
}

/** The same as a sentence. */
export function holdsWords(holds: readonly Hold[]): string[] {
  if (holds.length === 0) return [];
  const [against, open] = [holds.filter((hold) => hold.against), holds.filter((hold) => !hold.against)];
  const names = (list: readonly Hold[]): string => list.map((hold) => MATTER_IN_SHORT[hold.matter]).join(", ");
  const words: string[] = [];
  if (open.length > 2) words.push(`The opening (f): ${open.length} lines are open.`);
  else if (open.length > 0) words.push(`The opening (f) is open: ${names(open)}.`);
  if (against.length > 0) words.push(`The opening (f) speaks against it: ${names(against)}.`);
  return words;
}

/** What the clinician may have seen, in the order of the digits, from 1. */
export const SEEN: readonly (readonly [Saw, string])[] = [
  ["glazed", "glazed"],
  ["tears", "tears"],
  ["numb", "numb"],
  ["far_away", "far away"],
  ["other", "something else"],
];

/** What may be tried when it does not move, in the order of the digits, from 6; the last is 0. Common practice (clinical reference 1.5, sources 17 and 18, second-hand). */
export const TRIED: readonly (readonly [Rung, string])[] = [
  ["arousal", "ground, resource, shorter sets"],
  ["mechanics", "speed, direction, width, channel"],
  ["focus", "body, sound, another part"],
  ["earlier", "earlier memory, belief in the way"],
  ["interweave", "a few words of your own"],
];

export const seenWords = (saw: Saw): string => SEEN.find(([code]) => code === saw)?.[1] ?? saw;
export const triedWords = (rung: Rung): string => TRIED.find(([code]) => code === rung)?.[1] ?? rung;

/** Steps on the way after a client who is gone, in the order of the digits, from 1: within what is safe to call and message. Common practice, no source. */
export const REACH: readonly (readonly [ReachStep, string])[] = [
  ["no_answer", "called, no answer"],
  ["messaged", "message left"],
  ["contact_called", "contact called"],
  ["welfare_asked", "somebody looks in"],
  ["help_called", "help called"],
  ["reached", "reached"],
  ["safe", "known to be safe"],
];

export const reachWords = (step: ReachStep): string => REACH.find(([code]) => code === step)?.[1] ?? step;

/** What was found or done beside sets and ratings; "" for other entries. */
export function foundWords(value: EntryValue): string {
  switch (value.kind) {
    case "scan":
      return value.scan === "clear" ? "scan clear" : "scan: something is felt";
    case "rehearsal":
      return value.rehearsal === "undisturbed" ? "rehearsed: nothing disturbed" : "rehearsed: something disturbed";
    case "fits":
      return `${value.scale.toUpperCase()} fits the facts`;
    case "belief":
      return value.belief === "still" ? "the belief still fits" : "another belief fits better";
    case "too_much":
      return "too much";
    case "showed":
      return { orient: "shown: here and now", resource: "shown: what has helped", nothing: "taken off the client's page" }[value.showed];
    case "reach":
      return `looking for them: ${reachWords(value.step)}`;
    case "unmeasured":
      return `not measured: ${{ in_person: "in the same room", without: "without stimulation", own_tapping: "their own tapping" }[value.way]}`;
    default:
      return "";
  }
}
