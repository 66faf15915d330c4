/**
 * Whether left is left: the client says from which side each of three tones came. Who hears both
 * sides at once guesses it right once in six. Pure.
 */
import type { Side } from "./tone";

/** What the client answers; `null`: both sides, or not sure. */
export type Heard = Side | null;

/** Three sides in random order, never all the same. `random` gives 0 to 1, 1 excluded. */
export function randomSides(random: () => number): Side[] {
  const odd = Math.floor(random() * 3);
  const usual: Side = random() < 0.5 ? "left" : "right";
  const other: Side = usual === "left" ? "right" : "left";
  return [0, 1, 2].map((i) => (i === odd ? other : usual));
}

/** Whether every tone was heard on its side. */
export const allHeard = (played: readonly Side[], heard: readonly Heard[]): boolean =>
  played.length === heard.length && played.every((side, i) => side === heard[i]);
