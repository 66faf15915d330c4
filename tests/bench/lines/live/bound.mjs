// The bound that a page publishes, against its true error, in virtual time.

import { atMost, chance, quantile } from '../../support/judge.mjs';
import { anyClock, heardBeats, LINKS, traceOf, transit } from '../../support/link.mjs';

const SEEDS = 1000;
const UNTIL = 60_000;
const STEP = 100;
/** The page's and the server's oscillator may each be 50 ppm off; just under that, for the sums of rounding. */
const SKEW = 99.9e-6;
/** Rounding, ms. */
const EXACT = 1e-6;

/** [down, up] of each kind of link. Where all of the delay is in one direction and never varies, the error is all of the bound. */
const KINDS = [
  [LINKS.near, LINKS.near],
  [LINKS.far, LINKS.far],
  ...oneSided({ mid: 20, jitter: 5, loss: 0 }, { mid: 120, jitter: 5, loss: 0 }),
  ...oneSided({ mid: 20, jitter: 0, loss: 0 }, { mid: 120, jitter: 0, loss: 0 }),
  ...oneSided({ mid: 0, jitter: 0, loss: 0 }, { mid: 120, jitter: 0, loss: 0 }),
];

export default { name: 'published bound against true error', run };

async function run({ web }) {
  const { RoomClock } = await web('live/clock');
  const seen = Array.from({ length: SEEDS }, (_, seed) => [...observe(seed, RoomClock)]).flat();
  const below = seen.filter(({ error, bound }) => error > bound + EXACT).length;
  const nearest = seen.reduce((most, { error, bound }) => Math.max(most, error / bound), 0);
  const wide = quantile(seen.map(({ bound, half }) => bound / half), 0.5);
  const text = `${SEEDS} seeds, ${KINDS.length} kinds of link (one-sided 20/120 ms and 0/120 ms among them), the nearest error ${nearest.toFixed(3)} of its bound, `
    + `the bound ${wide.toFixed(2)}x half the least round trip (median); below the error in ${seen.length} readings:`;
  return atMost(below, 0, '', text);
}

function oneSided(quick, slow) {
  return [[quick, slow], [slow, quick]];
}

/** One page: now slewed, now stepped, and for some seconds without a beat. */
function* observe(seed, RoomClock) {
  const random = chance(seed);
  const clock = anyClock(random, SKEW);
  const [down, up] = KINDS[seed % KINDS.length];
  const trace = traceOf(UNTIL, () => transit(down, random), () => transit(up, random));
  const cut = { from: 5_000 + 40_000 * random(), lasts: 15_000 * random() };
  const beats = heardBeats(trace, clock).filter(({ arrival }) => arrival < cut.from || arrival > cut.from + cut.lasts);
  const half = Math.min(...trace.map((beat) => beat.down + beat.up)) / 2;
  const room = new RoomClock();
  let next = 0;
  for (let at = 0; at < UNTIL; at += STEP) {
    for (; next < beats.length && beats[next].arrival <= at; next++) room.onBeat(beats[next].beat, clock.page(beats[next].arrival));
    if (random() < 0.02) room.hold(random() < 0.7, clock.page(at));
    if (!room.known) continue;
    // Between the ticks of this loop as well.
    const page = clock.page(at + STEP * random());
    yield { error: Math.abs(room.roomTime(page) - clock.room(page)), bound: room.bound(page), half };
  }
}
