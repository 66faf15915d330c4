// Jumps and reversals on the screen over a million random rate changes, in time and late, by a clock that is corrected all
// the while, through the player itself; and with windows cut off by a desk that falls silent.

import { atMost, chance } from '../../support/judge.mjs';
import { changed, ended, RATES, started } from '../../support/orders.mjs';
import { Page } from '../../support/stage.mjs';

const CHANGES = 1_000_000;
/** Changes in one set. */
const IN_SET = 150;
/** ms between two changes, at most: far nearer than anybody could order, but for one set in fifty. */
const BETWEEN = 50;
const ORDINARY = { share: 0.02, between: 1_000 };
/** How far ahead of its time a change reaches the page, ms: below 0 it is late. */
const AHEAD = { least: -400, most: 250 };
/** CATCH_UP of web/src/stage/shown.ts. */
const CATCH_UP = 0.3;
/** SLEW of web/src/live/clock.ts, ms per ms. */
const SLEW = 0.005;
/** Rounding, cycles and widths of the path. */
const EXACT = 1e-9;
const PATHS = ['across', 'up_down', 'falling', 'rising', 'eight'];
const SWEEPS = ['sine', 'constant'];

export default { name: 'jumps and reversals', run };

async function run({ web }) {
  const parts = Object.assign({}, ...await Promise.all(['stage/watchdog', 'stage/player', 'live/timeline', 'live/path'].map(web)));
  const places = PATHS.flatMap((path) => SWEEPS.map((sweep) => (phase) => parts.unitAt(path, sweep, phase)));
  const watch = new Watch(places);
  const random = chance(1);
  for (let changes = 0; changes < CHANGES; ) changes += playSet(random, parts, watch);
  const text = `${CHANGES} random rate changes, ${PATHS.length} paths by ${SWEEPS.length} sweeps, ${watch.samples} samples 1 ms apart:`;
  return [atMost(watch.jumps, 0, '', `${text} jumps`), atMost(watch.reversals, 0, '', `${text} reversals`)];
}

/** Counts what no eye should see. */
class Watch {
  jumps = 0;
  reversals = 0;
  samples = 0;
  #places;
  #limits;
  #before;

  constructor(places) {
    this.#places = places;
    this.#limits = places.map(greatestStep);
  }

  begin(phase) {
    this.#before = { phase, points: this.#places.map((place) => place(phase)) };
  }

  see(phase) {
    const { phase: from, points: before } = this.#before;
    this.samples++;
    if (phase === from) return;
    const points = this.#places.map((place) => place(phase));
    // Put so that what is no number counts as well.
    if (!points.every((point, i) => apart(point, before[i]) <= this.#limits[i])) this.jumps++;
    if (!(phase >= from - EXACT)) this.reversals++;
    this.#before = { phase, points };
  }
}

const apart = (a, b) => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);

/** What the greatest rate that may be ordered, with catching up on top, makes of a path in 1 ms. */
function greatestStep(place) {
  const step = (RATES.most * (1 + CATCH_UP)) / 1000;
  let greatest = 0;
  for (let phase = 0; phase < 1; phase += step / 8) greatest = Math.max(greatest, apart(place(phase), place(phase + step)));
  return greatest + EXACT;
}

/** @returns the changes that reached the page while something moved */
function playSet(random, { Watchdog, Player, phaseAt }, watch) {
  const clock = new WorkedClock(random);
  const page = new Page(clock, new Watchdog(), Player, phaseAt);
  const rate = () => between(random, RATES.least, RATES.most);
  let segments = started(1_500, rate());
  const pause = random() < ORDINARY.share ? ORDINARY.between : BETWEEN;
  let changes = 0;
  let next = between(random, 1_000, 3_000);
  const silentFrom = random() < 0.1 ? between(random, 3_000, 6_000) : Infinity;
  for (let now = 0; !page.rested; now++) {
    clock.pass(now);
    if (now % 250 === 0 && now < silentFrom) page.beat({ id: now, sent: clock.roomTime(now), echo: null, desk_silent: 0, desk_trip: 0 }, now);
    if (now === 0) {
      page.play(page.view(segments), now);
      watch.begin(page.phase(now));
    } else if (now >= next && changes < IN_SET) {
      const at = Math.max(1_500, clock.roomTime(now) + between(random, AHEAD.least, AHEAD.most));
      segments = ++changes === IN_SET ? ended(segments, at) : changed(segments, at, rate());
      page.play(page.view(segments), now);
      next = now + pause * random();
    } else if (now % 100 === 0) page.tick(now);
    watch.see(page.phase(now));
  }
  return changes;
}

const between = (random, least, most) => least + (most - least) * random();

/** A room clock that is being corrected all the time, as fast as it ever is, one way or the other. */
class WorkedClock {
  known = true;
  #offset = 0;
  #way = 1;

  constructor(random) {
    this.random = random;
  }

  pass(now) {
    if (now % 250 === 0) this.#way = Math.sign(this.random() - 0.5);
    this.#offset += this.#way * SLEW;
  }

  onBeat() {}
  hold() {}

  roomTime(page) {
    return page + this.#offset;
  }

  pageTime(room) {
    return room - this.#offset;
  }
}
