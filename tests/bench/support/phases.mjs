// Two dots that are drawn of one timeline by two pages: how far apart their times are.

/** The sine is read where it is steep: up to this share of the way from its middle to an extreme. */
const STEEP = 0.7;
/** Readings further from each other have a frame missing between them: nothing is read between those, ms. */
const FRAMES = 60;
/** At least this share of the frames of a set, 60 a second, has to give a reading. */
const ENOUGH = 0.25;

/**
 * By how many ms the stage's dot was ahead of the desk's preview at the same moment of the machine's time, in every frame of the last
 * `lasts` ms in which both are where the sine is steep.
 *
 * @param pages `{desk, stage}` as `witnessed` of witness.mjs gives them, while a set across by sine runs at one rate
 */
export function apart({ desk, stage }, lasts) {
  const until = Math.min(desk.dots.at(-1).t, stage.dots.at(-1).t);
  const rate = cruise(desk.lines.at(-1).views.at(-1));
  const [shown, drawn] = [desk, stage].map(({ dots }) => delays(dots.filter(({ t }) => t >= until - lasts && t <= until), rate));
  const values = [];
  let next = 1;
  for (const { t, delay } of shown) {
    while (next < drawn.length - 1 && drawn[next].t < t) next++;
    const [before, after] = [drawn[next - 1], drawn[next]];
    if (before.t > t || after.t < t || after.t - before.t > FRAMES) continue;
    const here = before.delay + ((after.delay - before.delay) * (t - before.t)) / (after.t - before.t);
    values.push(wrapped(delay - here, 1000 / rate));
  }
  const expected = ENOUGH * 0.06 * lasts;
  if (values.length < expected) throw new Error(`${values.length} readings of ${shown.length} and ${drawn.length} frames, fewer than ${expected}`);
  return values;
}

/** The rate of the longest segment of a set, Hz. */
function cruise({ set }) {
  const longest = set.timeline.segments.reduce((a, b) => (b.lasts > a.lasts ? b : a));
  if (longest.rate_from !== longest.rate_to) throw new Error('the set has no rate of its own');
  return longest.rate_from;
}

/**
 * At what time a dot's cycle began, ms, less whole cycles, from each place where it can be told well: x = middle - amplitude * cos(phase),
 * where the middle and the amplitude are found by least squares over all places.
 */
function delays(dots, rate) {
  const omega = (2 * Math.PI * rate) / 1000;
  const { middle, amplitude, begun } = fitted(dots, omega);
  return dots.flatMap(({ t, x }) => {
    const way = (middle - x) / amplitude;
    if (Math.abs(way) > STEEP) return [];
    // Of the two phases with that cosine, the one on the side that the whole makes likely.
    const likely = wrapped(omega * (t - begun), 2 * Math.PI);
    const phase = Math.sign(likely) * Math.acos(way);
    return [{ t, delay: begun + (likely - phase) / omega }];
  });
}

/** The sine nearest to all places: its middle and amplitude, px, and when a cycle of it began, ms. */
function fitted(dots, omega) {
  const from = dots[0].t;
  const rows = dots.map(({ t, x }) => ({ basis: [1, Math.cos(omega * (t - from)), Math.sin(omega * (t - from))], x }));
  const sum = (of) => rows.reduce((total, row) => total + of(row), 0);
  const matrix = [0, 1, 2].map((i) => [...[0, 1, 2].map((j) => sum(({ basis }) => basis[i] * basis[j])), sum(({ basis, x }) => basis[i] * x)]);
  const [middle, cosine, sine] = solved(matrix);
  return { middle, amplitude: Math.hypot(cosine, sine), begun: from + Math.atan2(-sine, -cosine) / omega };
}

/** Solves three equations, each a row of three factors and the right side, by elimination; the normal equations need no pivots. */
function solved(rows) {
  for (let i = 0; i < rows.length; i++) {
    for (let k = 0; k < rows.length; k++) {
      if (k === i) continue;
      const factor = rows[k][i] / rows[i][i];
      rows[k] = rows[k].map((value, j) => value - factor * rows[i][j]);
    }
  }
  return rows.map((row, i) => row.at(-1) / row[i]);
}

/** `value` less whole periods: from minus half of one to half of one. */
const wrapped = (value, period) => value - period * Math.round(value / period);
