/**
 * The stimulus as a pure function of room time: the twin of `leeward_core::timeline`. Both are
 * bound to tests/reference/timeline.json.
 *
 * Units: times are room time in ms, phase is in cycles since the set began, rates are in Hz.
 */
import type { Segment } from "../wire/Segment";
import type { Timeline } from "../wire/Timeline";

/** The same timeline `by` ms later. */
export const shifted = (timeline: Timeline, by: number): Timeline => ({
  segments: timeline.segments.map((segment) => ({ ...segment, starts_at: segment.starts_at + by })),
});

/** Room time of a segment's end, ms. */
export const endOfSegment = (segment: Segment): number => segment.starts_at + segment.lasts;

/** Cycles shown by the end of a segment. */
export const phaseAfter = (segment: Segment): number => phaseWithin(segment, segment.lasts / 1000);

/** The phase at room time `at`: at rest before the first segment and after the last. 0 when empty. */
export function phaseAt({ segments }: Timeline, at: number): number {
  const segment = begunAt(segments, at);
  if (!segment) return segments[0]?.phase ?? 0;
  return phaseWithin(segment, (Math.min(at, endOfSegment(segment)) - segment.starts_at) / 1000);
}

/** The rate at room time `at`, Hz: 0 before the first segment and from the end of the last. */
export function rateAt({ segments }: Timeline, at: number): number {
  const segment = begunAt(segments, at);
  const last = segments[segments.length - 1];
  if (!segment || !last || at >= endOfSegment(last)) return 0;
  const share = Math.min(1, (at - segment.starts_at) / segment.lasts);
  return segment.rate_from + (segment.rate_to - segment.rate_from) * share;
}

/** Room time at which the first segment begins, ms; `undefined` when there is none. */
export const startOf = (timeline: Timeline): number | undefined => timeline.segments[0]?.starts_at;

/** Room time at which all has come to rest, ms; `undefined` when there is no segment. */
export function endOf(timeline: Timeline): number | undefined {
  const last = timeline.segments[timeline.segments.length - 1];
  return last && endOfSegment(last);
}

/** The last segment that has begun. It counts until the next one begins, which rounding may put a hair after its end. */
function begunAt(segments: readonly Segment[], at: number): Segment | undefined {
  for (let i = segments.length - 1; i >= 0; i--) {
    const segment = segments[i];
    if (segment && segment.starts_at <= at) return segment;
  }
  return undefined;
}

function phaseWithin(segment: Segment, seconds: number): number {
  const gain = (segment.rate_to - segment.rate_from) / (2 * (segment.lasts / 1000));
  return segment.phase + segment.rate_from * seconds + gain * seconds * seconds;
}
