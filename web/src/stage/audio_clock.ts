/**
 * The audio clock as a straight line over page time, fitted to the last readings of the output by
 * least squares; one reading alone is off by many ms. Pure.
 */

/** What is heard at page time `page` (ms) is the sample of context time `context` (s). */
export interface Reading {
  readonly page: number;
  readonly context: number;
}

/** context = at.context + slope · (page - at.page) / 1000. */
export interface FittedLine {
  readonly at: Reading;
  readonly slope: number;
}

/** Readings kept, and the least that make a line. */
const KEPT = 32;
const LEAST = 4;
/** A reading this far from the middle one is no part of the line, ms. */
const STRAY = 40;
/** Clocks of real devices differ by far less; a steeper line comes from noise. */
const MOST_SKEW = 5e-4;
/** A shorter span says nothing of the slope, ms. */
const SPAN = 1_000;

/** The middle value; 0 of none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return ((sorted[middle] ?? 0) + (sorted[sorted.length - 1 - middle] ?? 0)) / 2;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const apart = ({ page, context }: Reading): number => page - context * 1000;

/** The line through `readings`; `undefined` while there are too few. */
export function fitted(readings: readonly Reading[]): FittedLine | undefined {
  const middle = median(readings.map(apart));
  const good = readings.filter((reading) => Math.abs(apart(reading) - middle) <= STRAY);
  if (good.length < LEAST) return undefined;
  const at = { page: mean(good.map(({ page }) => page)), context: mean(good.map(({ context }) => context)) };
  const sum = (of: (reading: Reading) => number) => good.reduce((total, reading) => total + of(reading), 0);
  const spread = sum(({ page }) => (page - at.page) ** 2);
  const slope = (sum(({ page, context }) => (page - at.page) * (context - at.context)) / spread) * 1000;
  const span = Math.max(...good.map(({ page }) => page)) - Math.min(...good.map(({ page }) => page));
  return { at, slope: span >= SPAN && Math.abs(slope - 1) <= MOST_SKEW ? slope : 1 };
}

/** Context time (s) that is heard at page time `page` (ms). */
export const contextTime = ({ at, slope }: FittedLine, page: number): number => at.context + (slope * (page - at.page)) / 1000;

/** See the head of this file. */
export class AudioClock {
  private readings: Reading[] = [];

  /** Takes in a reading; the same one again adds nothing. */
  read(reading: Reading): void {
    if (this.readings[this.readings.length - 1]?.context === reading.context) return;
    this.readings = [...this.readings, reading].slice(-KEPT);
  }

  /** Forgets all: after a pause of the sound the old readings lie on another line. */
  restart(): void {
    this.readings = [];
  }

  /** See [fitted]. */
  get line(): FittedLine | undefined {
    return fitted(this.readings);
  }
}
