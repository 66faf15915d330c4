// Sets and their changes as the room orders them: the shapes of leeward_core's timeline::shape, without its refusals.

/** RATE_HZ of leeward_core::safety, Hz. */
export const RATES = { least: 0.3, most: 2 };
const RAMP = 1_000;
const SHIFT = 500;
const EASE = 600;
/** Hz a second. */
const STEEPEST = 2;
const LONGEST = 360_000;
/** Longer than HISTORY of web/src/stage/shown.ts and the latest order, ms. */
const LOOKED_BACK = 5_000;

const endOf = ({ starts_at, lasts }) => starts_at + lasts;
const gained = ({ lasts, rate_from, rate_to }) => ((rate_from + rate_to) / 2) * (lasts / 1000);

/** A set without planned end that first moves at room time `at`. */
export const started = (at, rate) => drawn({ at, phase: 0, rate: 0 }, [[rate, RAMP], [rate, LONGEST - 2 * RAMP], [0, RAMP]]);

/** From room time `at` on at another rate. */
export function changed(timeline, at, rate) {
  const pen = penAt(timeline, at);
  const shift = Math.max(SHIFT, (Math.abs(rate - pen.rate) / STEEPEST) * 1000);
  return cut(timeline, at).concat(drawn(pen, [[rate, shift], [rate, LONGEST - 2 * RAMP], [0, RAMP]]));
}

/** From room time `at` on to the next extreme that can be reached gently. */
export function ended(timeline, at) {
  const pen = penAt(timeline, at);
  const rate = Math.max(pen.rate, RATES.least);
  const shift = rate > pen.rate ? SHIFT : 0;
  const [shifted, eased] = [((pen.rate + rate) / 2) * (shift / 1000), (rate / 2) * (EASE / 1000)];
  const cruise = Math.ceil((pen.phase + shifted + eased) * 2) / 2 - pen.phase - shifted - eased;
  return cut(timeline, at).concat(drawn(pen, [[rate, shift], [rate, (cruise / rate) * 1000], [0, EASE]]));
}

/** What comes before `at`. The room keeps all of a set; here what no page looks back on any more is left out, for speed. */
function cut(segments, at) {
  const kept = segments.filter((segment) => segment.starts_at < at && endOf(segment) > at - LOOKED_BACK);
  const last = kept.pop();
  if (!last) return [];
  const lasts = Math.min(last.lasts, at - last.starts_at);
  return [...kept, { ...last, lasts, rate_to: last.rate_from + (last.rate_to - last.rate_from) * (lasts / last.lasts) }];
}

function penAt(segments, at) {
  const last = cut(segments, at).at(-1);
  return last ? { at, phase: last.phase + gained(last), rate: last.rate_to } : { at, phase: segments[0].phase, rate: 0 };
}

function drawn({ at, phase, rate }, strokes) {
  const segments = [];
  for (const [rate_to, lasts] of strokes) {
    if (lasts <= 0) continue;
    const before = segments.at(-1);
    const segment = { starts_at: before ? endOf(before) : at, lasts, phase: before ? before.phase + gained(before) : phase, rate_from: before ? before.rate_to : rate, rate_to };
    segments.push(segment);
  }
  return segments;
}
