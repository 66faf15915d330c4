// The npm package `timesync`, its own distributed file, in virtual time: it is given timers of ours.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInNewContext } from 'node:vm';

import { BEAT, Lane } from './link.mjs';

const code = readFileSync(createRequire(import.meta.url).resolve('timesync/dist/timesync.js'), 'utf8');

/** Events by time; what is due at the same time runs in the order it was planned. */
class Timers {
  now = 0;
  #planned = [];
  #count = 0;

  plan(at, act) {
    const event = { at, order: this.#count++, act };
    let place = this.#planned.length;
    while (place > 0 && this.#planned[place - 1].at > at) place--;
    this.#planned.splice(place, 0, event);
    return event;
  }

  drop(event) {
    this.#planned = this.#planned.filter((other) => other !== event);
  }

  /** Runs all that is due by `until`; `setImmediate` lets every promise settle in between. */
  async run(until) {
    while (this.#planned.length > 0 && this.#planned[0].at <= until) {
      const { at, act } = this.#planned.shift();
      this.now = at;
      act();
      await new Promise(setImmediate);
    }
    this.now = until;
  }
}

/**
 * Runs it over a trace: requests and answers take what the beat of the same moment takes, on a socket of their own.
 *
 * @param {object} options `delay` and `repeat` as the package calls them; with `again` a new round follows each round at
 *   once, otherwise the package's own interval stands, an hour
 * @returns {Promise<(at: number) => number>} the offset, room time - page time, that was in use at room time `at`
 */
export async function timesyncOver(trace, clock, { again, ...options }) {
  const timers = new Timers();
  const library = load(timers);
  const [up, down] = [new Lane(), new Lane()];
  const slot = slotOf(trace);
  const offsets = [];
  const sync = library.create({
    ...options,
    ...(again ? { interval: null } : {}),
    server: 'room',
    now: () => clock.page(timers.now),
  });
  sync.send = (_to, { id }) => {
    const asked = up.arrival(timers.now, slot(timers.now).up);
    timers.plan(asked, () => {
      const back = down.arrival(timers.now, slot(timers.now).down);
      timers.plan(back, () => sync.receive('room', { jsonrpc: '2.0', id, result: asked }));
    });
    return Promise.resolve();
  };
  sync.on('change', (offset) => offsets.push({ at: timers.now, offset }));
  const round = () => sync.sync().then(round);
  if (again) round();
  await timers.run(trace.at(-1).sent);
  return reader(offsets);
}

/** The file as a page would load it. Its only interval is longer than any trace, so one turn of it is enough. */
function load(timers) {
  const module = { exports: {} };
  runInNewContext(code, {
    module,
    exports: module.exports,
    window: { Promise },
    document: {},
    console,
    setTimeout: (act, wait = 0) => timers.plan(timers.now + wait, act),
    clearTimeout: (event) => timers.drop(event),
    setInterval: (act, wait) => timers.plan(timers.now + wait, act),
    clearInterval: (event) => timers.drop(event),
  });
  return module.exports;
}

/** The beat of the trace that is the last one sent at a time; times come in order. */
function slotOf(trace) {
  return (at) => trace[Math.max(0, trace.findLastIndex((beat) => beat.sent <= at))];
}

/** The last of `offsets` at a time; times come in order. */
export function reader(offsets) {
  let next = 0;
  return (at) => {
    while (next < offsets.length && offsets[next].at <= at) next++;
    return next > 0 ? offsets[next - 1].offset : NaN;
  };
}
