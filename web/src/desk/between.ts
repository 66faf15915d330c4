// Between two sets: what the clinician saw, what was tried, and what the rules offer next. Pure; the rules are the server's.
import type { Next } from "../wire/Next";
import type { Rung } from "../wire/Rung";
import type { Saw } from "../wire/Saw";
import { presentSet, standing, written } from "./log";
import type { DeskState, Step } from "./model";
import { say } from "./orders";
import { writeOfSet } from "./ratings";
import { SEEN, TRIED } from "./words";

/** What a digit writes, in words; "" for none. */
export function digitWords(value: number): string {
  return SEEN[value - 1]?.[1] ?? TRIED[value === 0 ? 4 : value - 6]?.[1] ?? "";
}

/** A digit while the panel shows: a mark beside the set that runs or ran last. */
export function digitBetween(state: DeskState, value: number, id: string, now: number): Step {
  const set = presentSet(state);
  if (set === null) return say(state, "This belongs to a set. None has run yet.", now);
  const saw = SEEN[value - 1]?.[0];
  if (saw !== undefined) return writeOfSet(state, id, set, { kind: "saw", saw }, now);
  const rung = TRIED[value === 0 ? 4 : value - 6]?.[0];
  if (rung === undefined) return say(state, "This number means nothing here.", now);
  return writeOfSet(state, id, set, { kind: "tried", rung }, now);
}

/** What stands beside the present set. */
export function beside(state: DeskState): { saw: Saw[]; tried: Rung[] } {
  const set = presentSet(state);
  const own = standing(written(state.log, state.queue)).filter((entry) => entry.set === set);
  return {
    saw: own.flatMap(({ value }) => (value.kind === "saw" ? [value.saw] : [])),
    tried: own.flatMap(({ value }) => (value.kind === "tried" ? [value.rung] : [])),
  };
}

const SHORT: Record<Rung, string> = {
  arousal: "grounding",
  mechanics: "mechanics",
  focus: "focus",
  earlier: "earlier memory or belief",
  interweave: "your own words",
};

/** What is offered next, as the strip says it: an offer, never an instruction. Null: nothing. */
export function nextWords(next: Next | null): string | null {
  if (next === null) return null;
  if (next.kind === "back_to_target") return "Settled twice in a row: back to the target, and SUD (s)?";
  const left = next.ladder.filter((rung) => !next.tried.includes(rung));
  const offer = (left.length === 0 ? next.ladder : left).map((rung) => SHORT[rung]).join(", ");
  const sign = next.why === "same" ? "The same in a row" : "SUD no lower at two returns";
  return `${sign}: ${offer}? You decide (-).`;
}
