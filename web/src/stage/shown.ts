/**
 * What this screen shows, as a timeline of its own: the ordered one, bent so that the dot never
 * jumps and never goes backwards. An order that arrives late keeps the phase on the screen and
 * works the difference in at 30 % of the speed at most. Pure; the unit of time is the caller's,
 * as long as both timelines share it.
 */
import { endOf, endOfSegment, phaseAfter, phaseAt, rateAt } from "../live/timeline";
import type { Segment } from "../wire/Segment";
import type { Timeline } from "../wire/Timeline";

/** How much faster or slower than ordered the dot may go to catch up. */
const CATCH_UP = 0.3;
/** Cycles that nobody can see: 0.3 px on a path of 1,000 px. */
const SAME = 1e-4;
/** Cycles that are rounding: less than this is not worked in, as a step backwards it would be none. */
const EXACT = 1e-9;
/** The rate at which a dot left short of its end is brought there, Hz: the least that is ordered. */
const LEAST_RATE = 0.3;

/** How far back the shown timeline can still be read, ms: longer than any window is old. */
const HISTORY = 2_000;

const rest = (starts_at: number, lasts: number, phase: number): Segment => ({ starts_at, lasts, phase, rate_from: 0, rate_to: 0 });

/** At rest at the first phase of `ordered` until `until`. */
export const resting = (ordered: Timeline, from: number, until: number): Timeline => ({
  segments: [rest(from, until - from, ordered.segments[0]?.phase ?? 0)],
});

/** As `shown` for the last 2 s until `at`; from there it follows `ordered`, from the phase on the screen. */
export function joined(shown: Timeline, ordered: Timeline, at: number): Timeline {
  const phase = phaseAt(shown, at);
  const ahead = phase - phaseAt(ordered, at);
  const last = ordered.segments[ordered.segments.length - 1];
  const end = last ? phaseAfter(last) : phase;
  const past = between(shown, at - HISTORY, at);
  const kept = past.length > 0 ? past : [rest(at - 1, 1, phase)];
  if (phase > end + SAME) return { segments: [...kept, ...onToExtreme(phase, at, rateAt(shown, at))] };
  const onward = between(ordered, at, Infinity);
  if (Math.abs(ahead) <= EXACT) return { segments: [...kept, ...onward] };
  const bent = bend(onward, at, phase, ahead);
  return { segments: [...kept, ...(ahead > 0 ? cutAtPhase(bent, end) : broughtTo(bent, at, phase, end))] };
}

/** As `shown` for the last 2 s until `at`, then to rest within `lasts` ms, wherever that is. */
export function eased(shown: Timeline, at: number, lasts: number): Timeline {
  const end = endOf(shown);
  if (end === undefined || end <= at + lasts) return shown;
  const stop: Segment = { starts_at: at, lasts, phase: phaseAt(shown, at), rate_from: rateAt(shown, at), rate_to: 0 };
  return { segments: [...between(shown, at - HISTORY, at), stop] };
}

/** Every time from `from` up to `to` at which an extreme is reached, with its phase (0.5, 1, 1.5 ...). */
export function extremes(shown: Timeline, from: number, to: number): { at: number; phase: number }[] {
  const found: { at: number; phase: number }[] = [];
  for (const segment of between(shown, from, to)) {
    const after = phaseAfter(segment);
    for (let half = Math.floor(segment.phase * 2 + 1e-9) + 1; half / 2 <= after + 1e-9; half++) {
      const seconds = secondsTo(segment, half / 2 - segment.phase);
      found.push({ at: segment.starts_at + seconds * 1000, phase: half / 2 });
    }
  }
  return found;
}

/** The pieces of a timeline within [from, to]; a rest before its first segment becomes a segment. */
function between(timeline: Timeline, from: number, to: number): Segment[] {
  const pieces: Segment[] = [];
  const first = timeline.segments[0];
  if (first && Number.isFinite(from) && from < first.starts_at) {
    pieces.push(rest(from, Math.min(to, first.starts_at) - from, first.phase));
  }
  for (const segment of timeline.segments) {
    const starts = Math.max(from, segment.starts_at);
    const ends = Math.min(to, endOfSegment(segment));
    if (ends > starts) pieces.push(piece(segment, starts, ends));
  }
  return pieces;
}

function piece(segment: Segment, starts: number, ends: number): Segment {
  if (starts === segment.starts_at && ends === endOfSegment(segment)) return segment;
  const slope = (segment.rate_to - segment.rate_from) / segment.lasts;
  return {
    starts_at: starts,
    lasts: ends - starts,
    phase: phaseAt({ segments: [segment] }, starts),
    rate_from: segment.rate_from + slope * (starts - segment.starts_at),
    rate_to: segment.rate_from + slope * (ends - segment.starts_at),
  };
}

/** Seconds into a segment after which it has gained `cycles`. */
function secondsTo(segment: Segment, cycles: number): number {
  const half = (segment.rate_to - segment.rate_from) / (2 * (segment.lasts / 1000));
  const root = Math.sqrt(Math.max(0, segment.rate_from ** 2 + 4 * half * cycles));
  // The stable form of the quadratic formula: it holds for a steady rate (half = 0) as well.
  return Math.min(segment.lasts / 1000, (2 * cycles) / (segment.rate_from + root));
}

/** Runs `segments` faster or slower until `ahead` cycles are worked in; phases start anew at `phase`. */
function bend(segments: Segment[], at: number, phase: number, ahead: number): Segment[] {
  const factor = 1 - Math.sign(ahead) * CATCH_UP;
  let left = Math.abs(ahead) / CATCH_UP;
  const bent: Segment[] = [];
  const add = (segment: Segment, by: number) => {
    const before = bent[bent.length - 1];
    bent.push({ ...segment, phase: before ? phaseAfter(before) : phase, rate_from: segment.rate_from * by, rate_to: segment.rate_to * by });
  };
  for (const segment of segments) {
    const gain = phaseAfter(segment) - segment.phase;
    if (left <= 0) add(segment, 1);
    else if (gain <= left) add(segment, factor);
    else {
      const turn = segment.starts_at + secondsTo(segment, left) * 1000;
      for (const [part, by] of [
        [piece(segment, segment.starts_at, turn), factor],
        [piece(segment, turn, endOfSegment(segment)), 1],
      ] as const) {
        if (part.lasts > 0) add(part, by);
      }
    }
    left -= gain;
  }
  return bent.length > 0 ? bent : [rest(at, 1, phase)];
}

/** Ends where `phase` is reached: an extreme, where the dot stands still anyway. */
function cutAtPhase(segments: Segment[], phase: number): Segment[] {
  const kept: Segment[] = [];
  for (const segment of segments) {
    const after = phaseAfter(segment);
    if (after <= phase + SAME) {
      kept.push(segment);
      continue;
    }
    const seconds = secondsTo(segment, phase - segment.phase);
    if (seconds > 0) kept.push(piece(segment, segment.starts_at, segment.starts_at + seconds * 1000));
    break;
  }
  return kept;
}

/** Adds a gentle last piece when the ordered end came before the dot got there. */
function broughtTo(segments: Segment[], at: number, phase: number, end: number): Segment[] {
  const last = segments[segments.length - 1];
  const reached = last ? phaseAfter(last) : phase;
  const missing = end - reached;
  if (missing <= SAME) return segments;
  const starts = last ? endOfSegment(last) : at;
  const lasts = (missing / LEAST_RATE) * 1000;
  const up: Segment = { starts_at: starts, lasts, phase: reached, rate_from: 0, rate_to: LEAST_RATE };
  return [...segments, up, { starts_at: starts + lasts, lasts, phase: phaseAfter(up), rate_from: LEAST_RATE, rate_to: 0 }];
}

/** The order's end is behind the dot: on to the next extreme as it goes, and no further. */
function onToExtreme(phase: number, at: number, rate: number): Segment[] {
  const missing = Math.ceil(phase * 2 - SAME) / 2 - phase;
  if (missing <= SAME) return [rest(at, 1, phase)];
  const steady = Math.max(rate, LEAST_RATE);
  return [{ starts_at: at, lasts: (missing / steady) * 1000, phase, rate_from: steady, rate_to: steady }];
}
