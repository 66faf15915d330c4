// The course of this session as a step line: a rating holds for its set, a set without one is a gap. Pure geometry.
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import { isBrokenOff } from "./words";

export type Scale = "sud" | "voc";

export interface Point {
  /** 0 is the baseline or what was asked before the first set. */
  set: number;
  value: number | null;
  /** The set was stopped or broken off. */
  stopped: boolean;
}

/** Both ends of each scale. */
export const ENDS: Record<Scale, [number, number]> = { sud: [0, 10], voc: [1, 7] };
/** The drawing, in its own units. */
export const SIZE = { width: 300, height: 120, left: 24, right: 8, top: 10, bottom: 22 };

function valueOf(entries: Entry[], set: string | null, scale: Scale): number | null {
  const entry = entries.filter((one) => one.set === set && one.value.kind === scale).at(-1);
  return entry !== undefined && "value" in entry.value ? entry.value.value : null;
}

/** One point a set, led by the baseline. `standing` are the entries that stand. */
export function course(sets: LogSet[], standing: Entry[], scale: Scale, baseline: number | null): Point[] {
  const first: Point = { set: 0, value: valueOf(standing, null, scale) ?? baseline, stopped: false };
  const others = sets.map((set) => ({
    set: set.number, value: valueOf(standing, set.id, scale), stopped: isBrokenOff(set.ending),
  }));
  return [first, ...others];
}

const slot = (points: Point[]): number => (SIZE.width - SIZE.left - SIZE.right) / Math.max(1, points.length);

/** Left edge of the place of point `index`. */
export const leftOf = (points: Point[], index: number): number => SIZE.left + index * slot(points);
export const middleOf = (points: Point[], index: number): number => leftOf(points, index) + slot(points) / 2;

/** Height of a value, growing downwards as SVG has it. */
export function heightOf(value: number, scale: Scale): number {
  const [least, most] = ENDS[scale];
  return SIZE.height - SIZE.bottom - ((value - least) / (most - least)) * (SIZE.height - SIZE.top - SIZE.bottom);
}

/** The step line as an SVG path: level over each rated set, a riser between neighbours, nothing over a gap. */
export function stepLine(points: Point[], scale: Scale): string {
  return points
    .map((point, index) => {
      if (point.value === null) return "";
      const joined = index > 0 && points[index - 1]?.value !== null;
      const y = heightOf(point.value, scale).toFixed(1);
      const from = leftOf(points, index).toFixed(1);
      return `${joined ? "L" : "M"}${from} ${y}H${leftOf(points, index + 1).toFixed(1)}`;
    })
    .join("");
}

/** What the line says, in one sentence. */
export function finding(points: Point[], scale: Scale): string {
  const name = scale.toUpperCase();
  const rated = points.filter((point) => point.value !== null);
  const first = rated[0];
  const last = rated.at(-1);
  if (first === undefined || last === undefined) return `${name}: none asked yet.`;
  const sets = points.length - 1;
  const asked = rated.filter((point) => point.set > 0).length;
  const where = (point: Point): string => (point.set === 0 ? "before the first set" : `after set ${point.set}`);
  const change = first === last ? `${first.value} ${where(first)}` : `${first.value} ${where(first)}, ${last.value} ${where(last)}`;
  const broken = points.some((point) => point.stopped) ? " × marks a set that was broken off." : "";
  return `${name} ${change}; asked after ${asked} of ${sets} ${sets === 1 ? "set" : "sets"}.${broken}`;
}
