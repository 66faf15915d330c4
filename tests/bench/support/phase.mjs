// From places on the screen back to phase, and what no eye should see on the way.

/** A picture that shows the dot this far from a place may show it there, px: what the reading of a picture and of its time is good for... */
const NEAR = 1;
/** ...and on a path with bends the way from keyframe to keyframe, sixty a second, straight across them. */
const NEAR_IN_BENDS = 6;
/** Steps in which phases are told apart, cycles; how far back and ahead a dot is looked for that is not where it may be. */
const STEP = 1 / 4000;
const BEHIND = 0.1;
const AHEAD = 0.5;
/** What the reading of a picture's time is good for, ms. */
const LATE = 2;

/**
 * Follows the dot along its path from phase 0. Near a turn one place has two phases, so all phases that the dot may have are kept, and
 * each picture leaves those that it allows.
 *
 * @param frames `[{t, x, y}]` in order, from the rest before the set on
 * @param place phase => `{x, y}`, where the dot is to be, px of the page
 * @param fastest the highest rate that may be on the screen, Hz
 * @param bends whether the path has any
 * @returns `{phase, phases, rate, jumps, reversals}`: the last phase, all that the last picture allows (near a turn two ways look alike),
 *   the rate from the picture before it, cycles a ms, and how many pictures show the dot where it could not have got to, or further
 *   back than before
 */
export function followed(frames, place, fastest, bends = false) {
  const near = bends ? NEAR_IN_BENDS : NEAR;
  const [first] = frames;
  const rest = place(0);
  // A layer is drawn on whole px of the screen: the dot lies up to half a px from where it is, always the same.
  const shift = { x: first.x - rest.x, y: first.y - rest.y };
  const off = (one, step) => {
    const { x, y } = place(step * STEP);
    return Math.hypot(x + shift.x - one.x, y + shift.y - one.y);
  };
  let [may, jumps, reversals] = [[0], 0, 0];
  let before = may;
  for (const [i, one] of frames.entries()) {
    const way = Math.ceil((fastest * (one.t - (frames[i - 1] ?? one).t + LATE)) / 1000 / STEP);
    before = may;
    const allowed = reached(may, way).filter((step) => off(one, step) <= near);
    if (allowed.length > 0) {
      may = allowed;
      continue;
    }
    const behind = span(may[0] - BEHIND / STEP, may[0]).filter((step) => off(one, step) <= near);
    if (behind.length > 0) reversals++;
    else jumps++;
    may = behind.length > 0 ? behind : [nearest(span(may[0], may.at(-1) + AHEAD / STEP), one, off)];
  }
  const last = frames.at(-1);
  const phases = may.map((step) => step * STEP);
  const rate = Math.max(0, may.at(-1) - before.at(-1)) * STEP / (last.t - frames.at(-2).t);
  return { phase: nearest(may, last, off) * STEP, phases, rate, jumps, reversals };
}

/** Every step that lies up to `way` ahead of one of `from`, in order. */
function reached(from, way) {
  const found = [];
  for (const step of from) {
    for (let at = Math.max(step, (found.at(-1) ?? -Infinity) + 1); at <= step + way; at++) found.push(at);
  }
  return found;
}

const span = (from, to) => Array.from({ length: Math.floor(to - from) + 1 }, (_, i) => Math.ceil(from) + i);

const nearest = (steps, one, off) => steps.reduce((best, step) => (off(one, step) < off(one, best) ? step : best));
