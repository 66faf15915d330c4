// The course of this session as a step line: a rating holds for its set, a set without one is a gap. Pure geometry.
import type { Entry } from "../wire/Entry";
import type { LogSet } from "../wire/LogSet";
import type { SessionLog } from "../wire/SessionLog";
import { finding } from "./finding";
import { ofTarget } from "./log";
import { ENDING_WORDS, isBrokenOff } from "./words";

export type Scale = "sud" | "voc";

export interface Point {
  /** A set's number; "start" for what was asked before the first set, or else the assessment; "close" for the close. */
  place: number | "start" | "close";
  value: number | null;
  /** "×": the set was stopped or interrupted; "?": its end is not known. */
  mark: "" | "×" | "?";
  /** How a set that has a mark ended. */
  ending: string;
}

/** Both ends of each scale. */
export const ENDS: Record<Scale, [number, number]> = { sud: [0, 10], voc: [1, 7] };
/** The drawing, in its own units: figures 13 high; at the right the last value has its name; beneath the sets' numbers lies the lane of marks. */
export const SIZE = { width: 430, left: 34, right: 52, top: 22, foot: 18, lane: 18 };
/** From the highest to the lowest value; a scale of seven needs less. */
const PLOT: Record<Scale, number> = { sud: 110, voc: 54 };
/** A figure, and the word "start" or "close", with what keeps it from its neighbour. */
const FIGURE = 17;
const WORD = 30;

function ratingOf(entries: Entry[], scale: Scale, fits: (entry: Entry) => boolean): number | null {
  const entry = entries.filter((one) => one.value.kind === scale && fits(one)).at(-1);
  return entry !== undefined && "value" in entry.value ? entry.value.value : null;
}

const markOf = ({ ending }: LogSet): Point["mark"] => (ending === "unknown" ? "?" : isBrokenOff(ending) ? "×" : "");

/** One point a set, led by the start and, if it was asked then, followed by the close. `standing` are the entries that stand. */
export function course(log: SessionLog, standing: Entry[], scale: Scale): Point[] {
  const own = ofTarget(log, standing);
  const atClose = (entry: Entry): boolean => entry.set === null && entry.moment === "closing";
  const start: Point = {
    place: "start",
    value: ratingOf(own, scale, (entry) => entry.set === null && !atClose(entry)) ?? log.start[scale],
    mark: "",
    ending: "",
  };
  const sets = log.sets.map(
    (set): Point => ({
      place: set.number,
      value: ratingOf(own, scale, (entry) => entry.set === set.id),
      mark: markOf(set),
      ending: set.ending === null ? "" : ENDING_WORDS[set.ending],
    }),
  );
  const close: Point = { place: "close", value: ratingOf(own, scale, atClose), mark: "", ending: "" };
  return close.value === null ? [start, ...sets] : [start, ...sets, close];
}

/** So many places there are at least, so that a short course does not look like a long one. */
const PLACES = 8;
const slot = (points: Point[]): number => (SIZE.width - SIZE.left - SIZE.right) / Math.max(PLACES, points.length);

/** Left edge of the place of point `index`. */
export const leftOf = (points: Point[], index: number): number => SIZE.left + index * slot(points);
export const middleOf = (points: Point[], index: number): number => leftOf(points, index) + slot(points) / 2;

/** Where the lowest value lies, and where the drawing ends: with a lane beneath when a set has a mark. */
export const baseOf = (scale: Scale): number => SIZE.top + PLOT[scale];
export const wholeHeight = (points: Point[], scale: Scale): number => baseOf(scale) + SIZE.foot + (points.some((point) => point.mark !== "") ? SIZE.lane : 0);

/** Height of a value, growing downwards as SVG has it. */
export function heightOf(value: number, scale: Scale): number {
  const [least, most] = ENDS[scale];
  return baseOf(scale) - ((value - least) / (most - least)) * PLOT[scale];
}

/** Where the last rating is; -1: there is none. */
export const lastRated = (points: Point[]): number => points.map(({ value }) => value !== null).lastIndexOf(true);

/** The rated points whose value is written above them: where it changes, as far as there is room. The last has its name at the right. */
export function labelled(points: Point[]): number[] {
  const last = lastRated(points);
  let before: number | null = null;
  let free = -Infinity;
  return points.flatMap(({ value }, index) => {
    const changed = value !== null && value !== before;
    before = value ?? before;
    const x = middleOf(points, index);
    if (!changed || index === last || x < free) return [];
    free = x + FIGURE;
    return [index];
  });
}

/** The places that are named at the foot: both ends, and as many numbers between them as have room. */
export function footed(points: Point[]): number[] {
  const every = Math.max(1, Math.ceil(FIGURE / slot(points)));
  const close = points.at(-1)?.place === "close" ? points.length - 1 : points.length;
  return points.flatMap(({ place }, index) => {
    if (typeof place !== "number") return [index];
    const clear = (from: number, room: number): boolean => Math.abs(middleOf(points, index) - middleOf(points, from)) >= room;
    return place % every === 0 && clear(0, WORD) && (close === points.length || clear(close, WORD)) ? [index] : [];
  });
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

const placeWords = (point: Point): string => (typeof point.place === "number" ? `after set ${point.place}` : `at the ${point.place}`);

/** What the ratings did, without a full stop: what the caption begins with. */
export const findingOf = (points: Point[], scale: Scale): string =>
  finding(
    scale.toUpperCase(),
    points.flatMap(({ value }) => (value === null ? [] : [value])),
  );

/** What the line says, as the session's page will. */
export function caption(points: Point[], scale: Scale): string {
  const rated = points.flatMap((point) => (point.value === null ? [] : [{ point, value: point.value }]));
  const isSet = (point: Point): boolean => typeof point.place === "number";
  const sets = points.filter(isSet).length;
  const says = findingOf(points, scale);
  const last = rated.at(-1);
  const marks = [
    points.some((point) => point.mark === "×") ? " × marks a set that was stopped." : "",
    points.some((point) => point.mark === "?") ? " ? marks a set whose end is not known." : "",
  ].join("");
  if (last === undefined) return `${says}.${marks}`;
  if (rated.length === 1) return `${says}, ${placeWords(last.point)}.${marks}`;
  const asked = sets === 0 ? "" : `asked after ${rated.filter(({ point }) => isSet(point)).length} of ${sets} ${sets === 1 ? "set" : "sets"}, `;
  return `${says} (${asked}last ${sets === 0 ? "asked " : ""}${placeWords(last.point)}).${marks}`;
}
