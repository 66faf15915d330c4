/**
 * From phase to a place on the screen: the twin of `leeward_core::path`.
 *
 * A *unit position* is measured from the middle of the field in widths of the path, so that each
 * path runs from -0.5 to 0.5 along its own line. x grows to the right and y downwards, in every
 * language: text mirrors, the stimulus does not.
 */
import type { Path } from "../wire/Path";

/** A place or a direction; see above for its unit. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

const DIAGONAL = Math.SQRT1_2;

/** The direction from the end that phase 0 stands for to the other, of length 1. */
const DIRECTION: Record<Path, Point> = {
  across: { x: 1, y: 0 },
  up_down: { x: 0, y: 1 },
  falling: { x: DIAGONAL, y: DIAGONAL },
  rising: { x: DIAGONAL, y: -DIAGONAL },
};

/** Where along its line the dot is, -0.5 to 0.5: a cosine, at rest at both ends. */
export const alongAt = (phase: number): number => -Math.cos(2 * Math.PI * phase) / 2;

/** The unit position at `phase` (cycles). */
export function unitAt(path: Path, phase: number): Point {
  const along = alongAt(phase);
  const { x, y } = DIRECTION[path];
  return { x: along * x, y: along * y };
}

/** The place at `phase` in CSS px from the middle of the field, for a path `width` px long. */
export function placeAt(path: Path, phase: number, width: number): Point {
  const { x, y } = unitAt(path, phase);
  return { x: x * width, y: y * width };
}

/** The longest path, in px, on which a dot of `dot` px stays whole within a field of that size. */
export function longestPath(path: Path, field: { width: number; height: number }, dot: number): number {
  const { x, y } = DIRECTION[path];
  const fits = (side: number, share: number) => (share === 0 ? Infinity : (side - dot) / Math.abs(share));
  return Math.max(0, Math.min(fits(field.width, x), fits(field.height, y)));
}

/** Which side is reached at a whole or half `phase`: 0, 1, 2 ... are "first", 0.5, 1.5 ... "second". */
export const extremeAt = (phase: number): "first" | "second" => (Math.round(phase * 2) % 2 === 0 ? "first" : "second");
