// The watchdog of the client's page in virtual time: sets that it stops though nobody was lost, and what it needs to stop
// one when somebody was.

import { atMost, chance } from '../../support/judge.mjs';
import { BEAT, Lane, LINKS, signsOf, toldOf, transit } from '../../support/link.mjs';
import { restAfterCut } from '../../support/stage.mjs';

const HOURS = 100;
/** For what is printed beside it. */
const LESS_HOURS = 20;
const HOUR = 3_600_000;
/** How often the page looks, ms: TICK of web/src/stage/main.ts. */
const TICK = 100;
/**
 * Without a sign for this long and what is borne of its round trip the room gives up the desk, and the stage, ms: SILENCE_MS and
 * STAGE_SILENCE_MS of leeward_core.
 */
const DESK_LOST = 1_500;
const STAGE_LOST = 2_000;
/** Stops nearer to each other than this are one: a set has to be started again first. */
const ONE_STOP = 10_000;
/** A phone on the move: twelve times an hour nothing passes for half a second to four. */
const HANDOVERS = { every: HOUR / 12, least: 500, most: 4_000 };
const CUTS = 200;

export default { name: 'silence, virtual time', run };

async function run({ web }) {
  const parts = Object.assign({}, ...await Promise.all(['stage/watchdog', 'stage/player', 'live/clock', 'live/timeline'].map(web)));
  return [
    falseStops(LINKS.near, { most: 0, hours: 100 }, parts),
    falseStops(LINKS.far, { most: 1, hours: 3 }, parts),
    cutToRest(LINKS.near, 1500, parts),
    cutToRest(LINKS.far, 2200, parts),
  ];
}

function falseStops(link, { most, hours }, parts) {
  const stay = () => () => false;
  const stops = (stopsIn(HOURS, link, parts, stay) / HOURS) * hours;
  const beside = [`${rate(stopsIn(LESS_HOURS, link, parts, handovers))} with phone handovers of 0.5 to 4 s twelve times an hour`];
  if (link.loss > 0) beside.push(`${rate(stopsIn(LESS_HOURS, { ...link, timeoutsAlone: true }, parts, stay))} if TCP had its timeouts alone`);
  return atMost(stops, most, '', `${link.label}, ${HOURS} h (stops an hour: ${beside.join(', ')}), false stops in ${hours} h:`);
}

const rate = (stops) => (stops / LESS_HOURS).toFixed(1);

function stopsIn(hours, link, { Watchdog, LEAST_LIMIT }, outages) {
  let stops = 0;
  for (let hour = 0; hour < hours; hour++) stops += countApart(stopsInHour(link, chance(hour), new Watchdog(), LEAST_LIMIT, outages));
  return stops;
}

function countApart(times) {
  let [count, last] = [0, -Infinity];
  for (const at of times.sort((a, b) => a - b)) {
    if (at - last > ONE_STOP) count++;
    last = at;
  }
  return count;
}

/** When something stopped a set in an hour in which all were there. The page's clock is taken as right. */
function stopsInHour(link, random, dog, least, outages) {
  const away = outages(random);
  const desk = exchanges(link, random, 0, () => false);
  const stage = exchanges(link, random, BEAT * random(), away);
  const signs = signsOf(desk);
  return [...silences(signs, DESK_LOST), ...silences(signsOf(stage), STAGE_LOST), ...stopsOfPage(stage, signs, dog, least, TICK * random())];
}

/** An hour of beats to one page: sent, arrived there, its answer heard. */
function exchanges(link, random, phase, away) {
  const [down, up] = [new Lane(), new Lane()];
  return Array.from({ length: HOUR / BEAT }, (_, i) => {
    const sent = phase + i * BEAT;
    const arrived = down.arrival(sent, transit(link, random, sent, away));
    return { sent, arrived, heard: up.arrival(arrived, transit(link, random, arrived, away)) };
  });
}

/** When the room gave a page up: by the age of its last sign, not by when that arrived. */
const silences = (signs, limit) =>
  signs.flatMap((sign, i) => {
    const last = signs[i - 1];
    return last !== undefined && sign.heard - last.alive >= limit + last.trip ? [sign.heard] : [];
  });

/** The page hears of the desk what the server had heard when it sent the beat. */
function stopsOfPage(beats, signs, dog, least, phase) {
  const stops = [];
  let [next, sign] = [0, -1];
  for (let now = phase; now < HOUR; now += TICK) {
    for (; next < beats.length && beats[next].arrived <= now; next++) {
      const { sent, arrived } = beats[next];
      while (signs[sign + 1]?.heard <= sent) sign++;
      const { desk_silent, desk_trip } = toldOf(signs[sign], sent);
      dog.onBeat(sent, arrived, desk_silent, desk_trip, true);
    }
    const silence = dog.silence(now);
    // No limit is lower than `least`: so most of the time it need not be asked.
    if (silence > least && Number.isFinite(silence) && dog.tooSilent(now)) stops.push(now);
  }
  return stops;
}

function handovers(random) {
  const { every, least, most } = HANDOVERS;
  const gaps = Array.from({ length: HOUR / every }, (_, i) => {
    const from = (i + 0.9 * random()) * every;
    return { from, to: from + least + (most - least) * random() };
  });
  return (at) => gaps.some(({ from, to }) => at >= from && at < to);
}

function cutToRest(link, most, parts) {
  const rests = Array.from({ length: CUTS }, (_, seed) => restAfterCut(link, chance(seed), seed % 2 ? 'desk' : 'stage', parts));
  return atMost(Math.max(...rests), most, ' ms', `${link.label}, a link cut to rest, either end, the slowest of ${CUTS} (mean ${(rests.reduce((a, b) => a + b) / CUTS).toFixed(0)}):`);
}
