// The rate set by tapping a key in rhythm: one tap a side, as on the knees. Pure; times are page time, ms.
import { RATE } from "./plan";

/** The taps so far, the latest last. */
export type Taps = readonly number[];

/** So many intervals make a rate; their median is it. */
const INTERVALS = 4;
/** A pause this long begins anew: half a cycle at the least rate takes 1.7 s. */
const TOO_LONG = 2500;
/** A rate that nobody takes up is dropped after this. */
const OFFERED_FOR = 8000;

/** One more tap. */
export function tapped(taps: Taps, now: number): Taps {
  const goesOn = taps.length > 0 && now - taps[taps.length - 1]! <= TOO_LONG;
  return [...(goesOn ? taps : []), now].slice(-(INTERVALS + 1));
}

/** Cycles a second, to hundredths: two sides make a cycle. Null while there are too few taps. */
export function tappedRate(taps: Taps): number | null {
  if (taps.length <= INTERVALS) return null;
  const intervals = taps
    .slice(1)
    .map((at, i) => at - taps[i]!)
    .sort((a, b) => a - b);
  const median = (intervals[INTERVALS / 2 - 1]! + intervals[INTERVALS / 2]!) / 2;
  return Math.round(100_000 / (2 * median)) / 100;
}

/** The tapped rate that Enter would set now: within the limits, and not long ago. */
export function offeredRate(taps: Taps, now: number): number | null {
  const rate = tappedRate(taps);
  const fresh = now - (taps[taps.length - 1] ?? -Infinity) < OFFERED_FOR;
  return rate !== null && fresh && rate >= RATE.least && rate <= RATE.most ? rate : null;
}

/** What to say of the taps so far; null when there is nothing. */
export function rhythmWords(taps: Taps, now: number): string | null {
  const last = taps[taps.length - 1];
  if (last === undefined || now - last >= OFFERED_FOR) return null;
  const rate = tappedRate(taps);
  if (rate === null) return now - last > TOO_LONG ? null : `Tap on, once a side: ${INTERVALS + 1 - taps.length} more.`;
  if (offeredRate(taps, now) === null) return `Tapped ${rate.toFixed(2)} Hz, outside ${RATE.least} to ${RATE.most} Hz: nothing to set.`;
  return `Tapped ${rate.toFixed(2)} Hz. Enter sets it.`;
}
