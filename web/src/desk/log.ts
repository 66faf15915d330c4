// The log of the session: sets and entries, kept and queued, as rows to draw. Pure.
import type { Change } from "../wire/Change";
import type { Ending } from "../wire/Ending";
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import type { SessionLog } from "../wire/SessionLog";
import type { SetView } from "../wire/SetView";
import { savingOf, type Item, type Queue, type Saving } from "./entries";
import type { DeskState } from "./model";
import { corrections, standing as stands, type Link } from "./standing";
import {
  channelWords,
  clockTime,
  degrees,
  ENDING_WORDS,
  foundWords,
  hertz,
  isBrokenOff,
  lengthWords,
  MOMENT_WORDS,
  PATH_WORDS,
  seenWords,
  triedWords,
} from "./words";

/** An entry with what is true of its saving. */
export interface Written {
  entry: Entry;
  item: Item | null;
  at: string | null;
}

export interface Chip {
  id: string;
  /** It is a rating on one of the scales. */
  rating: boolean;
  text: string;
  /** The same where there is little room: a rating without when it was asked. */
  short: string;
  /** "current", or history: taken back (may be put back) or replaced by a later one. */
  standing: "current" | "taken_back" | "replaced";
  saving: Saving;
  status: string;
  refused: boolean;
  /** What it says did not open: shown as such, and never corrected or taken back unseen. */
  unreadable: boolean;
}

/** One line of the log: a set, or what was written before the first. */
export interface Row {
  set: string | null;
  /** The set's number; "" before the first. */
  number: string;
  /** What was shown of what was planned and by which channels, such as "24 eyes" or "11/24 tones". */
  done: string;
  /** The whole order, to be read when the line is opened. */
  order: string;
  ending: string;
  /** It neither runs nor came to an end that was meant. */
  broken: boolean;
  /** What stands: words first, then marks and ratings, each as it is written. */
  said: string;
  rated: string;
  /** What is true of the saving of its latest entry, or of one that failed. */
  saving: Saving | null;
  status: string;
  chips: Chip[];
}

/** All entries in order, those of the record first, then those under way. */
export function written(log: SessionLog, queue: Queue): Written[] {
  const inLog = new Set(log.entries.map((kept) => kept.entry.id));
  const recorded = log.entries.map(({ entry, at }) => ({ entry, item: null, at }));
  const underWay = queue.filter((item) => !inLog.has(item.entry.id)).map((item) => ({ entry: item.entry, item, at: item.savedAt }));
  return [...recorded, ...underWay];
}

interface Linked extends Link {
  one: Written;
}

const isRefused = (one: Written): boolean => one.item?.problem?.kind === "refused";

/** What is in the record or on its way there; what was refused will not be unless it is sent again. */
const links = (all: Written[]): Linked[] =>
  all.filter((one) => !isRefused(one)).map((one) => ({ id: one.entry.id, replaces: one.entry.replaces, says: one.entry.value.kind !== "taken_back", one }));

/** Entries that stand, in the order and in the place they were asked: see standing.ts. */
export function standing(all: Written[]): Entry[] {
  return stands(links(all)).map(({ entry, first }) => ({ ...entry.one.entry, set: first.one.entry.set, moment: first.one.entry.moment }));
}

/** Those of them that are of this session's target, and of the whole of it. */
export function ofTarget(log: SessionLog, entries: Entry[]): Entry[] {
  return entries.filter((entry) => entry.segment === null && (entry.moment !== "reevaluation" || !log.other_reevaluated));
}

/** The set that a new entry belongs to: the one that runs, or the last one. */
export function presentSet(state: DeskState): string | null {
  return state.view?.set?.id ?? state.log.sets.at(-1)?.id ?? null;
}

/** That it was too much in the present set, or before the first: the entry that says so last. Null: nothing says so. */
export function tooMuchHere(state: DeskState): string | null {
  const set = presentSet(state);
  const said = standing(written(state.log, state.queue)).filter((entry) => entry.set === set && entry.value.kind === "too_much");
  return said.at(-1)?.id ?? null;
}

/** Change marks that stand, set by set, latest set first; null where none was made. */
export function currentChanges(state: DeskState): (Change | null)[] {
  const entries = standing(written(state.log, state.queue));
  return [...state.log.sets].reverse().map((set) => {
    const mark = entries.filter((entry) => entry.set === set.id && entry.value.kind === "change").at(-1);
    return mark?.value.kind === "change" ? mark.value.change : null;
  });
}

/** The last standing value of a scale, of this session's target, for the button that asks for it again. */
export function lastRating(state: DeskState, scale: "sud" | "voc"): number | null {
  const entry = ofTarget(state.log, standing(written(state.log, state.queue)))
    .filter((one) => one.value.kind === scale)
    .at(-1);
  return entry !== undefined && "value" in entry.value ? entry.value.value : null;
}

const inShort = ({ value, segment }: Entry): string =>
  "value" in value ? `${value.kind.toUpperCase()}${segment === null ? "" : ` of ${segment}:`} ${value.value}` : "";

/** `other`: the label of another target that a re-evaluation is of; "": it is of this one. */
function valueWords(entry: Entry, other: string): string {
  const moment = `${MOMENT_WORDS[entry.moment]}${entry.moment === "reevaluation" && other !== "" ? ` of ${other}` : ""}`;
  const asked = ` (${entry.segment === null ? moment : `segment ${entry.segment}`})`;
  switch (entry.value.kind) {
    case "words":
      return entry.value.words;
    case "change":
      return entry.value.change;
    case "sud":
    case "voc":
      return `${inShort(entry)}${entry.moment === "after_set" ? "" : asked}${entry.from_client ? ", by the client" : ""}`;
    case "saw":
      return `saw: ${seenWords(entry.value.saw)}`;
    case "tried":
      return `tried: ${triedWords(entry.value.rung)}`;
    case "scan":
    case "rehearsal":
    case "fits":
    case "belief":
    case "too_much":
    case "showed":
    case "unmeasured":
    case "reach":
      return foundWords(entry.value);
    case "answered":
    case "passed":
    case "time":
      return "";
    case "taken_back":
      return "taken back";
    case "unreadable":
      return "This entry does not open. Tell the administrator.";
  }
}

function statusOf(one: Written, now: number): { saving: Saving; status: string } {
  if (one.at !== null) return { saving: "saved", status: `saved ${clockTime(one.at)}` };
  if (one.item === null) return { saving: "saved", status: "saved" };
  const { saving, words } = savingOf(one.item, now);
  return { saving, status: words };
}

function chipOf(one: Written, all: Written[], now: number, other: string): Chip | null {
  if (one.entry.value.kind === "taken_back") return null;
  const next = corrections(links(all));
  const later = next.get(one.entry.id)?.one;
  const unreadable = one.entry.value.kind === "unreadable";
  const rating = one.entry.value.kind === "sud" || one.entry.value.kind === "voc";
  const chip = {
    id: one.entry.id,
    rating,
    text: valueWords(one.entry, other),
    short: inShort(one.entry) || valueWords(one.entry, other),
    refused: isRefused(one),
    unreadable,
    ...statusOf(one, now),
  };
  if (later === undefined) return { ...chip, ...notTakenBack(one, all, now), standing: "current" };
  if (later.entry.value.kind !== "taken_back") return { ...chip, standing: "replaced" };
  if (next.has(later.entry.id)) return null;
  const taken = statusOf(later, now);
  return { ...chip, ...taken, status: `taken back, ${taken.status}`, standing: "taken_back" };
}

/** A taking back that was refused has no chip of its own: its entry's says so. */
function notTakenBack(one: Written, all: Written[], now: number): Partial<Chip> {
  const refused = all.filter((other) => isRefused(other) && other.entry.replaces === one.entry.id && other.entry.value.kind === "taken_back").at(-1);
  if (refused === undefined) return {};
  const { saving, status } = statusOf(refused, now);
  return { saving, status: `not taken back, ${status}` };
}

const chipsFor = (set: string | null, all: Written[], now: number, other: string): Chip[] =>
  // What the opening found stands in its own panel.
  all.filter((one) => one.entry.set === set && one.entry.moment !== "opening").flatMap((one) => chipOf(one, all, now, other) ?? []);

function doneWords(set: LogSet): string {
  const done = set.cycles === null ? "?" : String(Math.floor(set.cycles + 0.01));
  if (set.plan === null) return `${done}/?`;
  const { length } = set.plan;
  const whole = length.kind === "open" || done === String(length.cycles) ? done : `${done}/${length.cycles}`;
  return `${whole} ${channelWords(set.plan)}`;
}

function orderWords({ plan }: LogSet): string {
  if (plan === null) return "its order does not open";
  const dot = plan.channels.eyes ? `, ${degrees(plan.width)}, ${PATH_WORDS[plan.path]}` : "";
  return `${lengthWords(plan.length)}, ${hertz(plan.rate)}${dot}, ${channelWords(plan)}`;
}

/** What a line says of its entries: what stands, and what is true of the saving of all. */
function line(chips: Chip[]): Pick<Row, "said" | "rated" | "saving" | "status"> {
  const current = chips.filter(({ standing }) => standing === "current");
  const undone = chips.filter(({ standing }) => standing === "taken_back").map(({ text }) => `taken back: ${text}`);
  const worst = chips.find(({ saving }) => saving === "failed") ?? chips.find(({ saving }) => saving === "queued") ?? chips.at(-1);
  return {
    said: (current.length === 0 ? undone : current.filter(({ rating }) => !rating).map(({ text }) => text)).join(" · "),
    rated: current
      .filter(({ rating }) => rating)
      .map(({ short }) => short)
      .join(", "),
    saving: worst?.saving ?? null,
    status: worst?.status ?? "",
  };
}

/** The log's rows, latest first; what was written before the first set comes last. `running`: the id of the set that is known to run. */
export function rows(log: SessionLog, queue: Queue, now: number, running: string | null): Row[] {
  // After a restart of the server the record has the end of a set no sooner than the session's.
  const endOf = (set: LogSet): Ending | null => set.ending ?? (set.id === running ? null : "unknown");
  const all = written(log, queue);
  const other = log.other_reevaluated ? (log.reevaluates ?? "") : "";
  const ofSets = [...log.sets].reverse().map((set): Row => {
    const end = endOf(set);
    const chips = chipsFor(set.id, all, now, other);
    const ending = end === null ? "running" : ENDING_WORDS[end];
    return { set: set.id, number: String(set.number), done: doneWords(set), order: orderWords(set), ending, broken: isBrokenOff(end), ...line(chips), chips };
  });
  const chips = chipsFor(null, all, now, other);
  if (chips.length === 0) return ofSets;
  return [...ofSets, { set: null, number: "", done: "before set 1", order: "before the first set", ending: "", broken: false, ...line(chips), chips }];
}

/** `log` with the room's present set in it; `cycles` as last heard from the client's page, null when unheard. */
export function withSet(log: SessionLog, set: SetView, cycles: number | null): SessionLog {
  const known = log.sets.find((one) => one.id === set.id);
  const row: LogSet = { id: set.id, number: set.number, plan: set.plan, cycles: cycles ?? known?.cycles ?? null, ending: set.ended };
  const others = log.sets.filter((one) => one.id !== set.id);
  return { ...log, sets: [...others, row].sort((a, b) => a.number - b.number) };
}

/** The server's log, with the cycles heard here where it has none yet, or where more may have been heard here. */
export function mergeLogs(server: SessionLog, here: SessionLog): SessionLog {
  const known = new Set(server.sets.map((set) => set.id));
  const sets = server.sets.map((set) => ({ ...set, cycles: cyclesOf(set, here.sets.find((one) => one.id === set.id)?.cycles ?? null) }));
  const unknown = here.sets.filter((set) => !known.has(set.id));
  return { ...server, sets: [...sets, ...unknown].sort((a, b) => a.number - b.number) };
}

/** Where the client's page has not told how the set ended, the server keeps what it wrote down last: once in a while. */
const UNTOLD: (Ending | null)[] = [null, "link_lost", "unknown"];

function cyclesOf({ cycles, ending }: LogSet, heard: number | null): number | null {
  if (cycles === null || heard === null) return cycles ?? heard;
  return UNTOLD.includes(ending) ? Math.max(cycles, heard) : cycles;
}
