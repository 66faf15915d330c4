// From places on the screen back to phase, and what no eye should see on the way.

/** A place this far from where the path allows the dot to be is off it, px: the reading of a picture and of its time. */
const OFF = 2;
/** A step back by less is the reading's, px. */
const BACK = 1;
/** Steps in which the phase is looked for, cycles, and how far back. */
const STEP = 1 / 2000;
const BEHIND = 0.1;
/** What the reading of a picture's time is good for, ms. */
const LATE = 2;

/**
 * Follows the dot along its path from phase 0.
 *
 * @param frames `[{t, x, y}]` in order, from the rest before the set on
 * @param place phase => `{x, y}`, where the dot is to be, px of the page
 * @param fastest the highest rate that may be on the screen, Hz
 * @returns `{phase, jumps, reversals}`: the last phase, and how many pictures show the dot where it could not have got to,
 *   or further back than before
 */
export function followed(frames, place, fastest) {
  let [phase, jumps, reversals] = [0, 0, 0];
  let before = frames[0]?.t;
  for (const one of frames) {
    const most = (fastest * (one.t - before + LATE)) / 1000;
    before = one.t;
    const ahead = nearest(one, place, phase, phase + most);
    if (ahead.off <= OFF) {
      phase = ahead.phase;
      continue;
    }
    const behind = nearest(one, place, phase - BEHIND, phase);
    const back = distance(place(behind.phase), place(phase));
    if (behind.off <= OFF) {
      if (back > BACK) reversals++;
      continue;
    }
    jumps++;
    phase = nearest(one, place, phase, phase + 0.5).phase;
  }
  return { phase, jumps, reversals };
}

const distance = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

function nearest(one, place, from, to) {
  let best = { phase: from, off: distance(place(from), one) };
  for (let phase = from; phase <= to; phase += STEP) {
    const off = distance(place(phase), one);
    if (off < best.off) best = { phase, off };
  }
  return best;
}
