// The plan of a set as the desk changes it: pure steps, the speed it amounts to, and what to say of that.
import { peakOf } from "../live/path";
import type { Channels } from "../wire/Channels";
import type { DeskView } from "../wire/DeskView";
import type { Path } from "../wire/Path";
import type { Plan } from "../wire/Plan";
import type { Preset } from "../wire/Preset";

/** Which part of the plan a step changes; `direction` is 1 or -1. */
export type Setting = "rate" | "width" | "dot" | "path" | "length" | "channels" | "purpose";
export type Direction = 1 | -1;

/** Steps stay inside these; the server refuses whatever lies outside its own limits. Hz, degrees, cycles. */
export const RATE = { least: 0.3, most: 2, step: 0.05 };
export const WIDTH = { least: 2, most: 40, step: 1 };
export const DOT_SIZES = [0.5, 1, 1.5, 2, 2.5, 3];
export const CYCLES = { least: 2, most: 200, step: 4, shortStep: 2 };
/** Up to here lengths go by the short step: resource work uses 2 to 6 cycles (Korn & Leeds 2002, from memory). */
const SHORT = 12;
/** A usual starting point: about 24 cycles, then fitted to the client (Shapiro 2018, from memory). */
export const USUAL_CYCLES = 24;

const PATHS: Path[] = ["across", "up_down", "falling", "rising", "eight"];
/** Hands bring their tones with them, so ears and hands together would be nothing else. */
const CHANNELS: Channels[] = [
  { eyes: true, ears: false, hands: false },
  { eyes: true, ears: true, hands: false },
  { eyes: false, ears: true, hands: false },
  { eyes: false, ears: false, hands: true },
  { eyes: true, ears: false, hands: true },
];

const hundredths = (value: number): number => Math.round(value * 100) / 100;
const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** The neighbour of `current` in `list`, round the end when `current` is known, else the first. */
function neighbour<T>(list: readonly T[], index: number, direction: Direction): T {
  const at = index < 0 ? 0 : (index + direction + list.length) % list.length;
  return list[at] as T;
}

function nextDot(dot: number, direction: Direction): number {
  const others = DOT_SIZES.filter((size) => (direction > 0 ? size > dot + 1e-6 : size < dot - 1e-6));
  return (direction > 0 ? others[0] : others.at(-1)) ?? dot;
}

function nextLength(plan: Plan, direction: Direction): Plan["length"] {
  if (plan.length.kind === "open") return { kind: "cycles", cycles: USUAL_CYCLES };
  const { cycles } = plan.length;
  const short = direction > 0 ? cycles < SHORT : cycles <= SHORT;
  const step = short ? CYCLES.shortStep : CYCLES.step;
  return { kind: "cycles", cycles: within(cycles + direction * step, CYCLES.least, CYCLES.most) };
}

function nextChannels(current: Channels, direction: Direction, eyesLocked: boolean): Channels {
  const allowed = CHANNELS.filter((channels) => !(eyesLocked && channels.eyes));
  const index = allowed.findIndex((channels) => sameFields(channels, current));
  return neighbour(allowed, index, direction);
}

/** `plan` one step further in one setting. `view` gives the widest path of that screen and the lock of the eyes. */
export function stepPlan(plan: Plan, setting: Setting, direction: Direction, view: DeskView): Plan {
  switch (setting) {
    case "rate":
      return { ...plan, rate: within(hundredths(plan.rate + direction * RATE.step), RATE.least, RATE.most) };
    case "width":
      return { ...plan, width: within(Math.round(plan.width + direction * WIDTH.step), WIDTH.least, WIDTH.most) };
    case "dot":
      return { ...plan, dot: nextDot(plan.dot, direction) };
    case "path":
      return { ...plan, path: neighbour(PATHS, PATHS.indexOf(plan.path), direction) };
    case "length":
      return { ...plan, length: nextLength(plan, direction) };
    case "channels":
      return { ...plan, channels: nextChannels(plan.channels, direction, view.eyes_locked) };
    case "purpose":
      return { ...plan, purpose: plan.purpose === "processing" ? "calm_place" : "processing" };
  }
}

/** Open-ended becomes the usual number of cycles, and the other way round. */
export function toggleOpen(plan: Plan): Plan {
  const length: Plan["length"] = plan.length.kind === "open" ? { kind: "cycles", cycles: USUAL_CYCLES } : { kind: "open" };
  return { ...plan, length };
}

/** `plan` with a preset's settings in it; what a preset leaves out stays. */
export function withPreset(plan: Plan, { channels, rate, width, length, purpose }: Preset): Plan {
  return { ...plan, channels, rate, width, length, purpose };
}

/** Whether two flat objects of one type hold the same. */
function sameFields<T extends object>(a: T, b: T): boolean {
  return (Object.keys(a) as (keyof T)[]).every((key) => a[key] === b[key]);
}

/** Whether both plans order the same. */
export function samePlan(a: Plan, b: Plan): boolean {
  return a.rate === b.rate && sameButRate(a, b);
}

/** Whether they differ in nothing but the rate, the one thing that may change while a set runs. */
export function sameButRate(a: Plan, b: Plan): boolean {
  const cycles = (plan: Plan): number => (plan.length.kind === "cycles" ? plan.length.cycles : 0);
  return (
    a.width === b.width &&
    a.dot === b.dot &&
    a.path === b.path &&
    a.purpose === b.purpose &&
    cycles(a) === cycles(b) &&
    sameFields(a.channels, b.channels) &&
    sameFields(a.comfort, b.comfort)
  );
}

/** Peak speed of the dot, degrees a second, for its path and sweep. */
export const peakSpeed = ({ path, comfort, width, rate }: Plan): number => width * peakOf(path, comfort.sweep, rate);

/** What to say of a peak speed: pursuit wears thin above about 60 and ends near 90 to 100 degrees a second. */
export function speedAdvice(degreesPerSecond: number): string | null {
  if (degreesPerSecond > 90) return "faster than eyes can follow: less width or rate is advised";
  if (degreesPerSecond > 60) return "eyes will catch up in small jumps";
  return null;
}
