// What the clinician writes down beside the sets: words, marks, ratings, and their undoing. Append-only.
import type { Entry } from "../wire/Entry";
import type { EntryValue } from "../wire/EntryValue";
import type { Moment } from "../wire/Moment";
import { add, nextToSend, remove, retry, sent } from "./entries";
import { presentSet, standing, written } from "./log";
import type { DeskState, Scale, Step } from "./model";
import { say, unchanged } from "./orders";

const MOMENTS: Moment[] = ["assessment", "after_set", "back_at_target", "installation", "closing", "reevaluation"];
export const MOST_WORDS = 2000;

/** Sends the entry whose turn it is. */
export function pump(step: Step, now: number): Step {
  const entry = nextToSend(step.state.queue, now);
  if (entry === null) return step;
  return { state: { ...step.state, queue: sent(step.state.queue, entry.id) }, commands: [...step.commands, { kind: "save", entry }] };
}

/** An entry as it is written: of no segment, and by the clinician, where nothing else is said. */
type Draft = Omit<Entry, "segment" | "from_client"> & Partial<Pick<Entry, "segment" | "from_client">>;

function write(state: DeskState, draft: Draft, now: number): Step {
  const entry: Entry = { segment: null, from_client: false, ...draft };
  return pump(unchanged({ ...state, queue: add(state.queue, entry, now), notice: null }), now);
}

const usualMoment = (scale: Scale, set: string | null): Moment => (set === null ? "assessment" : scale === "voc" ? "installation" : "after_set");

/** Arms a scale, or puts it away when it was armed. Nothing is preselected. */
export function arm(state: DeskState, scale: Scale): Step {
  if (state.armed?.scale === scale) return unchanged({ ...state, armed: null });
  return armAt(state, scale, usualMoment(scale, presentSet(state)), null);
}

/** Arms a scale for this moment of the protocol. */
export function armAt(state: DeskState, scale: Scale, moment: Moment, segment: number | null): Step {
  return unchanged({ ...state, armed: { scale, moment, segment }, notice: null });
}

/** The next moment of the protocol for the armed rating. */
export function nextMoment(state: DeskState): Step {
  if (state.armed === null) return unchanged(state);
  const moment = MOMENTS[(MOMENTS.indexOf(state.armed.moment) + 1) % MOMENTS.length] ?? state.armed.moment;
  return unchanged({ ...state, armed: { ...state.armed, moment } });
}

/** Of these there may be several in one place: they add, and correct nothing. */
const ADD: readonly EntryValue["kind"][] = ["words", "scan", "rehearsal", "belief", "fits", "too_much", "showed", "unmeasured", "reach"];

/** The standing entry that a new one of this kind corrects: same set, same moment, same segment. */
function corrected(state: DeskState, set: string | null, moment: Moment, kind: EntryValue["kind"], segment: number | null): string | null {
  if (ADD.includes(kind)) return null;
  const here = (entry: Entry): boolean => entry.set === set && entry.moment === moment && entry.segment === segment;
  const earlier = standing(written(state.log, state.queue)).filter((entry) => here(entry) && entry.value.kind === kind);
  return earlier.at(-1)?.id ?? null;
}

/** Writes what was said in the opening. It corrects nothing: of two answers the later one counts. */
export function writeOpening(state: DeskState, id: string, value: EntryValue, now: number): Step {
  return write(state, { id, set: null, replaces: null, moment: "opening", value }, now);
}

/** Writes what was seen or tried beside a set. It corrects nothing: of both there may be several. */
export function writeOfSet(state: DeskState, id: string, set: string, value: EntryValue, now: number): Step {
  return write(state, { id, set, replaces: null, moment: plainMoment(set), value }, now);
}

/** Takes a rating that was asked at this moment of the protocol, whatever is armed. */
export function rateAt(state: DeskState, scale: Scale, value: number, moment: Moment, id: string, now: number): Step {
  return writeValue(state, id, presentSet(state), moment, { kind: scale, value }, now);
}

/** Writes what was found or done in the hour: at its set, or before the first. */
export function writeFound(
  state: DeskState,
  id: string,
  set: string | null,
  value: EntryValue,
  now: number,
  more: Partial<Pick<Entry, "moment" | "from_client">> = {},
): Step {
  const moment = more.moment ?? plainMoment(set);
  const replaces = corrected(state, set, moment, value.kind, null);
  return write(state, { id, set, replaces, moment, value, from_client: more.from_client ?? false }, now);
}

function writeValue(state: DeskState, id: string, set: string | null, moment: Moment, value: EntryValue, now: number, segment: number | null = null): Step {
  return write(state, { id, set, replaces: corrected(state, set, moment, value.kind, segment), moment, value, segment }, now);
}

/** Takes a rating for the armed scale. A value off the scale is asked about, never turned into another. */
export function rate(state: DeskState, value: number, id: string, now: number): Step {
  if (state.armed === null) return say(state, "Which scale? First s for SUD or v for VOC, then the number.", now);
  const { scale, moment, segment } = state.armed;
  const [least, most] = scale === "sud" ? [0, 10] : [1, 7];
  if (value < least || value > most) {
    return say(state, `VOC runs from 1 (completely false) to 7 (completely true), so ${value} is not on it. Ask again, then press 1 to 7.`, now);
  }
  return writeValue({ ...state, armed: null }, id, presentSet(state), moment, { kind: scale, value }, now, segment);
}

const plainMoment = (set: string | null): Moment => (set === null ? "assessment" : "after_set");

/** One-key mark of what came up. */
export function mark(state: DeskState, change: "changing" | "same" | "settled", id: string, now: number): Step {
  const set = presentSet(state);
  if (set === null) return say(state, "A mark belongs to a set. None has run yet.", now);
  return writeValue(state, id, set, plainMoment(set), { kind: "change", change }, now);
}

/** Saves the words field, if anything is in it, and gives the keys back. */
export function saveWords(state: DeskState, words: string, id: string, now: number): Step {
  const set = state.wordsFor === undefined ? presentSet(state) : state.wordsFor;
  const text = words.trim();
  const done: Step = {
    state: { ...state, wordsFor: undefined },
    commands: [
      { kind: "fill_words", words: "" },
      { kind: "focus", on: "keys" },
    ],
  };
  if (text === "") return done;
  // The wire counts characters as the server does, not UTF-16 units.
  if ([...text].length > MOST_WORDS) return say(state, `At most ${MOST_WORDS} characters. Shorten it; nothing is lost.`, now);
  const step = writeValue(done.state, id, set, plainMoment(set), { kind: "words", words: text }, now);
  return { state: step.state, commands: [...step.commands, ...done.commands] };
}

const find = (state: DeskState, id: string): Entry | undefined => written(state.log, state.queue).find((one) => one.entry.id === id)?.entry;

/** Takes an entry back; the record keeps both. */
export function takeBack(state: DeskState, entry: string, id: string, now: number): Step {
  const original = find(state, entry);
  if (original === undefined) return unchanged(state);
  return write(state, { id, set: original.set, replaces: entry, moment: original.moment, value: { kind: "taken_back" } }, now);
}

/** Writes an entry that was taken back once more. */
export function putBack(state: DeskState, entry: string, id: string, now: number): Step {
  const original = find(state, entry);
  const taken = written(state.log, state.queue)
    .filter((one) => one.entry.replaces === entry && one.entry.value.kind === "taken_back")
    .at(-1);
  if (original === undefined || taken === undefined) return unchanged(state);
  return write(state, { ...original, id, replaces: taken.entry.id }, now);
}

/** Sends a failed entry again now. */
export function sendAgain(state: DeskState, entry: string, now: number): Step {
  return pump(unchanged({ ...state, queue: retry(state.queue, entry, now) }), now);
}

/** Brings refused words back into the field. */
export function editAgain(state: DeskState, entry: string): Step {
  const original = find(state, entry);
  if (original?.value.kind !== "words") return unchanged(state);
  return {
    state: { ...state, queue: remove(state.queue, entry), wordsFor: original.set },
    commands: [
      { kind: "fill_words", words: original.value.words },
      { kind: "focus", on: "words" },
    ],
  };
}
