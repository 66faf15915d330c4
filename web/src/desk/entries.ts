// The queue of entries on their way into the record: in memory only, one at a time, in order, never lost while the page lives.
import type { Entry } from "../wire/Entry";
import type { Saved } from "../wire/Saved";

/** Why an entry is not in the record yet. Only `refused` needs the clinician; the others are tried again. */
export type Problem = { kind: "offline" } | { kind: "server" } | { kind: "signed_out" } | { kind: "refused"; words: string };

export interface Item {
  entry: Entry;
  /** When it was written. */
  since: number;
  /** On its way at this moment. */
  sending: boolean;
  tries: number;
  /** Not before this. */
  due: number;
  problem: Problem | null;
  /** Server's time of keeping, RFC 3339, once it is in the record. */
  savedAt: string | null;
}

export type Queue = readonly Item[];

/** An entry that is not saved after this long reads "not saved". */
export const NOT_SAVED_AFTER = 4000;
const WAITS = [1000, 2000, 4000, 5000];

const change = (queue: Queue, id: string, to: (item: Item) => Item): Queue => queue.map((item) => (item.entry.id === id ? to(item) : item));

/** `queue` with one more entry at its end. */
export function add(queue: Queue, entry: Entry, now: number): Queue {
  return [...queue, { entry, since: now, sending: false, tries: 0, due: now, problem: null, savedAt: null }];
}

const isOpen = (item: Item): boolean => item.savedAt === null && item.problem?.kind !== "refused";

/** The entry to send now, if any. Later ones wait for it: an entry must not arrive before the one it replaces. */
export function nextToSend(queue: Queue, now: number): Entry | null {
  const first = queue.find(isOpen);
  return first !== undefined && !first.sending && first.due <= now ? first.entry : null;
}

/** Marks an entry as on its way. */
export function sent(queue: Queue, id: string): Queue {
  return change(queue, id, (item) => ({ ...item, sending: true, tries: item.tries + 1 }));
}

/** The server has it. */
export function kept(queue: Queue, answer: Saved): Queue {
  return change(queue, answer.id, (item) => ({ ...item, sending: false, problem: null, savedAt: answer.at }));
}

/** The try failed; unless it was refused it is due again after a wait that grows to 5 s. */
export function failed(queue: Queue, id: string, problem: Problem, now: number): Queue {
  return change(queue, id, (item) => {
    const wait = WAITS[Math.min(item.tries, WAITS.length) - 1] ?? WAITS[0] ?? 0;
    return { ...item, sending: false, problem, due: now + wait };
  });
}

/** Sends it again at once, a refused one too. */
export function retry(queue: Queue, id: string, now: number): Queue {
  return change(queue, id, (item) => ({ ...item, due: now, problem: item.problem?.kind === "refused" ? null : item.problem }));
}

/** Everything that waits for its next try is due now: the line or the sign-in is back. */
export function hurry(queue: Queue, now: number): Queue {
  return queue.map((item) => ({ ...item, due: Math.min(item.due, now) }));
}

/** Takes a refused entry out, to be written anew. */
export function remove(queue: Queue, id: string): Queue {
  return queue.filter((item) => !(item.entry.id === id && item.problem?.kind === "refused"));
}

/** Whether leaving the page now would lose something. */
export function hasUnsaved(queue: Queue): boolean {
  return queue.some((item) => item.savedAt === null);
}

/** The sign-in has run out: at least one entry waits for a new one. */
export function isSignedOut(queue: Queue): boolean {
  return queue.some((item) => item.savedAt === null && item.problem?.kind === "signed_out");
}

export type Saving = "saved" | "queued" | "failed";

/** What is true of an entry now, and in words but for the time of a saved one. */
export function savingOf(item: Item, now: number): { saving: Saving; words: string } {
  if (item.savedAt !== null) return { saving: "saved", words: "saved" };
  if (item.problem?.kind === "refused") return { saving: "failed", words: `not saved: ${item.problem.words}` };
  if (item.problem?.kind === "signed_out") return { saving: "failed", words: "not saved: sign in again, it is kept here" };
  if (now - item.since >= NOT_SAVED_AFTER) return { saving: "failed", words: "not saved, trying again" };
  return { saving: "queued", words: "queued" };
}
