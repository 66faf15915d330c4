// How far the clocks of desk and stage disagree while a set runs, in virtual time, beside rules of others on the same traces.

import { atLeast, chance, rms } from '../../support/judge.mjs';
import { anyClock, BEAT, heardBeats, Lane, LINKS, traceOf, transit } from '../../support/link.mjs';
import { reader, timesyncOver } from '../../support/timesync.mjs';

/** Each trace, ms; what the two clocks say is compared from half a minute on, when every rule has all that it looks at. */
const UNTIL = 330_000;
const FROM = 30_000;
const STEP = 100;
const SEEDS = 12;
/** The exchanges of which the rule takes the one with the least round trip. */
const LAST = 60;

export default { name: 'clocks apart, virtual time', run };

async function run({ web }) {
  const { RoomClock } = await web('live/clock');
  return [await onLink(LINKS.near, 5, RoomClock), await onLink(LINKS.far, 6, RoomClock)];
}

async function onLink(link, times, RoomClock) {
  const rules = rulesFor(link, RoomClock);
  const apart = Object.fromEntries(Object.keys(rules).map((name) => [name, []]));
  for (let seed = 0; seed < SEEDS; seed++) {
    const pages = twoPages(link, chance(seed));
    for (const [name, rule] of Object.entries(rules)) apart[name].push(...await disagreements(pages, rule));
  }
  const figures = Object.entries(apart).map(([name, values]) => ({ name, rms: rms(values) }));
  const [ours, ...others] = figures;
  const best = others.reduce((a, b) => (b.rms < a.rms ? b : a));
  const said = figures.map((one) => `${one.name} ${one.rms.toFixed(2)}`).join(', ');
  return atLeast(best.rms / ours.rms, times, 'x', `${link.label}, ms rms: ${said}; better than the best other (${best.name}) by`);
}

/** Desk and stage, each on a link and with a clock of its own. */
function twoPages(link, random) {
  return [0, 1].map(() => {
    const takes = () => transit(link, random);
    return { clock: anyClock(random), trace: traceOf(UNTIL, takes, takes) };
  });
}

/**
 * Every rule is (trace, clock) => (at) => offset that the page has in use at room time `at`; ours is the first. The package
 * is run as it comes (5 exchanges a second apart, then none for an hour), and at our four a second, whose round follows
 * upon round, with its own 5 exchanges and with 60. A least round trip is known to its rule as soon as it is over.
 */
function rulesFor(link, RoomClock) {
  const fourASecond = { delay: Math.max(0, BEAT - 2 * link.mid), again: true };
  return {
    ours: (trace, clock) => ours(trace, clock, new RoomClock()),
    'least round trip of 60': leastRoundTrip,
    timesync: (trace, clock) => timesyncOver(trace, clock, {}),
    'timesync at 4/s': (trace, clock) => timesyncOver(trace, clock, { ...fourASecond, repeat: 5 }),
    'timesync at 4/s by 60': (trace, clock) => timesyncOver(trace, clock, { ...fourASecond, repeat: 60 }),
  };
}

/** As while a set runs: from before the first comparison on, corrections are slewed. */
function ours(trace, clock, room) {
  const beats = heardBeats(trace, clock);
  let next = 0;
  return (at) => {
    for (; next < beats.length && beats[next].arrival <= at; next++) {
      const { beat, arrival } = beats[next];
      room.onBeat(beat, clock.page(arrival));
      room.hold(arrival > FROM / 2, clock.page(arrival));
    }
    return room.roomTime(clock.page(at)) - clock.page(at);
  };
}

function leastRoundTrip(trace, clock) {
  const [down, up] = [new Lane(), new Lane()];
  const exchanges = trace.map((beat) => {
    const page = down.arrival(beat.sent, beat.down);
    const heard = up.arrival(page, beat.up);
    return { at: heard, trip: heard - beat.sent, offset: (beat.sent + heard) / 2 - clock.page(page) };
  });
  return reader(exchanges.map(({ at }, i) => {
    const last = exchanges.slice(Math.max(0, i + 1 - LAST), i + 1);
    return { at, offset: last.reduce((a, b) => (b.trip <= a.trip ? b : a)).offset };
  }));
}

async function disagreements(pages, rule) {
  const [desk, stage] = await Promise.all(pages.map(async ({ clock, trace }) => {
    const offset = await rule(trace, clock);
    return (at) => clock.page(at) + offset(at) - at;
  }));
  const found = [];
  for (let at = FROM; at < UNTIL - 1000; at += STEP) found.push(desk(at) - stage(at));
  return found;
}
