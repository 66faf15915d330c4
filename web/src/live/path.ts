/**
 * From phase to a place on the screen: the twin of `leeward_core::path`. Both are bound to
 * tests/reference/timeline.json.
 *
 * A *unit position* is measured from the middle of the field in widths of the path, so that each
 * path runs from -0.5 to 0.5. x grows to the right and y downwards, in every language: text
 * mirrors, the stimulus does not.
 */
import type { Path } from "../wire/Path";
import type { Sweep } from "../wire/Sweep";

/** A place or a direction; see above for its unit. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

const DIAGONAL = Math.SQRT1_2;

/** The direction from the end that phase 0 stands for to the other, of length 1. */
const DIRECTION: Record<Exclude<Path, "eight">, Point> = {
  across: { x: 1, y: 0 },
  up_down: { x: 0, y: 1 },
  falling: { x: DIAGONAL, y: DIAGONAL },
  rising: { x: DIAGONAL, y: -DIAGONAL },
};

/** Radius of the loops of the eight, in its widths: lines at 45 degrees through the middle touch both. */
const LOOP = 1 / (2 * (1 + Math.SQRT2));
/** The way through the eight from one end to the other: twice 135 degrees of arc, and the line between. */
const EIGHT = (1.5 * Math.PI + 2) * LOOP;

/** Share of the way from the first extreme to the other that is done at `phase` (0 to 1). */
const wayAt = (sweep: Sweep, phase: number): number => (sweep === "sine" ? 0.5 - Math.cos(2 * Math.PI * phase) / 2 : 1 - Math.abs(2 * phase - 1));

/** Over the upper side of the left loop, down through the middle, along the lower side of the right loop. */
function eightAt(way: number): Point {
  const gone = (way - 0.5) * EIGHT;
  const distance = Math.abs(gone);
  if (distance <= LOOP) return { x: gone * DIAGONAL, y: gone * DIAGONAL };
  const radius = Math.sign(gone) * LOOP;
  const angle = 0.75 * Math.PI - (distance - LOOP) / LOOP;
  return { x: radius * (Math.SQRT2 + Math.cos(angle)), y: radius * Math.sin(angle) };
}

/** The unit position at `phase` (cycles). */
export function unitAt(path: Path, sweep: Sweep, phase: number): Point {
  const within = phase - Math.floor(phase);
  const way = wayAt(sweep, within);
  if (path === "eight") {
    const { x, y } = eightAt(way);
    // On the way back the loops are run through on their other side.
    return { x, y: within < 0.5 ? y : -y };
  }
  const { x, y } = DIRECTION[path];
  return { x: (way - 0.5) * x, y: (way - 0.5) * y };
}

/** The place at `phase` in CSS px from the middle of the field, for a path `width` px wide. */
export function placeAt(path: Path, sweep: Sweep, phase: number, width: number): Point {
  const { x, y } = unitAt(path, sweep, phase);
  return { x: x * width, y: y * width };
}

/** How far the path reaches along x and y, in its widths. */
export function extentOf(path: Path): Point {
  if (path === "eight") return { x: 1, y: 2 * LOOP };
  const { x, y } = DIRECTION[path];
  return { x: Math.abs(x), y: Math.abs(y) };
}

/** The highest speed, in widths a second, at `rate` Hz: times the width in degrees it is degrees a second. */
export const peakOf = (path: Path, sweep: Sweep, rate: number): number => (path === "eight" ? EIGHT : 1) * (sweep === "sine" ? Math.PI : 2) * rate;

/** The widest path, in px, on which a dot of `dot` px stays whole within a field of that size. */
export function widestPath(path: Path, field: { width: number; height: number }, dot: number): number {
  const { x, y } = extentOf(path);
  const fits = (side: number, share: number) => (share === 0 ? Infinity : (side - dot) / share);
  return Math.max(0, Math.min(fits(field.width, x), fits(field.height, y)));
}

/** Which side is reached at a whole or half `phase`: 0, 1, 2 ... are "first", 0.5, 1.5 ... "second". */
export const extremeAt = (phase: number): "first" | "second" => (Math.round(phase * 2) % 2 === 0 ? "first" : "second");
