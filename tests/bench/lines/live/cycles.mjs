// Cycles in the record against cycles counted from the screen's pictures: sets with random rate changes, ended by their plan,
// by either party or by a cut of the line.

import { chance, quantile } from '../../support/judge.mjs';
import { openLive } from '../../support/live.mjs';
import { RATES } from '../../support/orders.mjs';
import { followed } from '../../support/phase.mjs';
import { film } from '../../support/pixels.mjs';

export default { name: 'cycles recorded against filmed', needs: ['portal', 'browser'], run };

const SETS = 200;
/** Sessions side by side. */
const AT_ONCE = 3;
/** One picture in so many frames: more of them at once would keep this machine from drawing. */
const EVERY = 2;
/** Of a screen that shows sixty a second, ms. */
const FRAME = 1000 / 60;
/** Most of the rest before it moves need not be filmed, ms. */
const RESTS = 500;
/** The pages show tenths of a cycle. */
const EQUAL = 0.05;
/** Without a picture for longer than this after the last of the dot the film does not tell how far it got, ms... */
const BLIND = 3.5 * FRAME;
/** ...which may be so with this share of the sets. */
const UNTOLD = 0.1;
/** CATCH_UP of web/src/stage/shown.ts. */
const CATCH_UP = 0.3;
/** How a set ends, and how many in twenty. */
const ENDINGS = { plan: 9, clinician_stops: 3, clinician_ends: 2, client_stops: 3, line_cut: 3 };

async function run({ web }) {
  const { unitAt } = await web('live/path');
  const place = (phase) => unitAt('across', 'sine', phase);
  const shares = Array.from({ length: AT_ONCE }, (_, i) => Math.floor(SETS / AT_ONCE) + (i < SETS % AT_ONCE ? 1 : 0));
  const sets = (await Promise.all(shares.map((count, i) => session(count, place, chance(i))))).flat();
  const told = sets.filter(({ blind }) => blind <= BLIND);
  const known = told.filter(({ recorded }) => recorded !== null);
  const apart = known.map(({ recorded, phases, on }) => Math.min(...phases.map((phase) => Math.max(phase - recorded, recorded - phase - on, 0))));
  const equal = apart.filter((cycles) => cycles <= EQUAL).length;
  const unknown = told.length - known.length;
  const off = sets.reduce((sum, { jumps }) => sum + jumps, 0);
  const cycles = sets.reduce((sum, { filmed }) => sum + filmed, 0);
  const text = `${sets.length} sets, ${cycles.toFixed(1)} cycles filmed: ${equal} of ${told.length} equal to a tenth, ${unknown} marked unknown, `
    + `apart by ${quantile(apart, 0.5).toFixed(3)} (median) to ${Math.max(...apart).toFixed(3)}`;
  const untold = sets.length - told.length;
  const doubt = [
    ...(untold > 0 ? [`the end of ${untold} is not on film`] : []),
    ...(off > 0 ? [`${off} pictures show the dot off its way`] : []),
  ].map((words) => `; ${words}`).join('');
  // Where the film itself lost the dot, it is no measure.
  if (off > 0 || untold > UNTOLD * sets.length) return { verdict: 'NOISY', text: text + doubt };
  return { verdict: equal + unknown === told.length ? 'PASS' : 'SHORT', text: text + doubt };
}

/**
 * @returns `[{recorded, filmed, phases, on, blind, jumps}]`, cycles: filmed the likeliest of `phases`, which look alike; on what may have
 *   come after the last picture; recorded is null where the record says that it is not known; blind as in `Film`
 */
async function session(count, unit, random) {
  const live = await openLive({ view: { width: 420, height: 240 } });
  try {
    const reader = await live.reader();
    await live.desk.cycles(2);
    await live.rate(1.4);
    const filmed = [];
    for (let i = 0; i < count; i++) filmed.push(await one(live, reader, unit, random));
    await live.begin(); // all that was to be sent of the sets before has been taken by now
    const recorded = await live.scene.house.rows(`SELECT s.number, max(e.phase) AS cycles, bool_or(e.ending IS NOT NULL) AS whole
      FROM stimulus_set s LEFT JOIN set_evidence e ON e.set_id = s.id WHERE s.session_id = '${live.scene.session}' GROUP BY s.number ORDER BY s.number`);
    return filmed.map((set, i) => ({ ...set, recorded: recorded[i].whole ? recorded[i].cycles : null }));
  } finally {
    await live.close();
  }
}

async function one(live, reader, unit, random) {
  await live.begin();
  const place = await live.path(unit);
  await live.page.waitForTimeout(RESTS);
  const reel = await film(live.page, reader, EVERY);
  const ending = drawn(random);
  // Somewhere in the set.
  await live.page.waitForTimeout(1_500 - RESTS + 600 * random());
  for (let changes = Math.floor(3 * random()); changes > 0; changes--) {
    for (let press = Math.ceil(4 * random()); press > 0; press--) await live.desk.press(random() < 0.5 ? 'ArrowLeft' : 'ArrowRight');
    await live.page.waitForTimeout(300 * random());
  }
  if (ending === 'clinician_stops') await live.desk.press('Escape');
  if (ending === 'clinician_ends') await live.desk.press('e');
  if (ending === 'client_stops') await live.page.keyboard.press('Space');
  if (ending === 'line_cut') live.scene.link.cut();
  await live.page.waitForFunction(() => document.body.dataset.page !== 'running');
  await live.rested(150);
  if (ending === 'line_cut') live.scene.link.restore();
  const { phase, phases, rate, jumps, reversals } = followed(await reel.stop(), place, RATES.most * (1 + CATCH_UP));
  // Between the last picture of the dot and the next one, without it, it may have gone on for all frames but that one.
  const on = rate * Math.max(0, reel.blind - FRAME);
  return { filmed: phase, phases, on, blind: reel.blind, jumps: jumps + reversals };
}

function drawn(random) {
  let left = 20 * random();
  return Object.entries(ENDINGS).find(([, share]) => (left -= share) < 0)[0];
}
