// The way after a client who is gone: one digit a step, each with its time. Pure.
import { standing, written } from "./log";
import type { DeskState, Step } from "./model";
import { say } from "./orders";
import { writeFound } from "./ratings";
import { clockMinute, REACH, reachWords } from "./words";

/** A digit while the card shows. */
export function reachDigit(state: DeskState, value: number, id: string, now: number): Step {
  const step = REACH[value - 1]?.[0];
  if (step === undefined) return say(state, "This number means nothing on the card.", now);
  return writeFound(state, id, null, { kind: "reach", step }, now);
}

/** What was done so far, first to last, such as "14:02 called, no answer". */
export function stepsSoFar(state: DeskState): string[] {
  const all = written(state.log, state.queue);
  const at = (id: string): string => {
    const kept = all.find(({ entry }) => entry.id === id)?.at;
    return kept === null || kept === undefined ? "now" : clockMinute(new Date(kept));
  };
  return standing(all).flatMap(({ id, value }) => (value.kind === "reach" ? [`${at(id)} ${reachWords(value.step)}`] : []));
}
