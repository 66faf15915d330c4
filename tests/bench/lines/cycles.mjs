// Cycles in the record against cycles counted from the screen's pictures: sets with random rate changes, ended by their plan,
// by either party or by a cut of the line.

import { chance } from '../support/judge.mjs';
import { openLive } from '../support/live.mjs';
import { RATES } from '../support/orders.mjs';
import { followed } from '../support/phase.mjs';
import { film } from '../support/pixels.mjs';

export default { name: 'cycles recorded against filmed', needs: ['portal', 'browser'], run };

const SETS = 200;
/** Sessions side by side. */
const AT_ONCE = 3;
/** The pages show tenths of a cycle. */
const EQUAL = 0.05;
/** CATCH_UP of web/src/stage/shown.ts. */
const CATCH_UP = 0.3;
/** How a set ends, and how many in twenty. */
const ENDINGS = { plan: 9, clinician_stops: 3, clinician_ends: 2, client_stops: 3, line_cut: 3 };

async function run({ web }) {
  const { unitAt } = await web('live/path');
  const place = (phase) => unitAt('across', 'sine', phase);
  const shares = Array.from({ length: AT_ONCE }, (_, i) => Math.floor(SETS / AT_ONCE) + (i < SETS % AT_ONCE ? 1 : 0));
  const sets = (await Promise.all(shares.map((count, i) => session(count, place, chance(i))))).flat();
  const equal = sets.filter(({ recorded, filmed }) => recorded !== null && Math.abs(recorded - filmed) <= EQUAL).length;
  const unknown = sets.filter(({ recorded }) => recorded === null).length;
  const worst = sets.reduce((most, { recorded, filmed }) => Math.max(most, recorded === null ? 0 : Math.abs(recorded - filmed)), 0);
  const off = sets.reduce((sum, { jumps }) => sum + jumps, 0);
  const cycles = sets.reduce((sum, { filmed }) => sum + filmed, 0);
  const text = `${sets.length} sets, ${cycles.toFixed(1)} cycles filmed: ${equal} equal to a tenth, ${unknown} marked unknown, the farthest ${worst.toFixed(3)} apart`;
  // Where the film itself lost the dot, it is no measure.
  if (off > 0) return { verdict: 'NOISY', text: `${text}; ${off} pictures show the dot off its way` };
  return { verdict: equal + unknown === sets.length ? 'PASS' : 'SHORT', text };
}

/** @returns `[{recorded, filmed, jumps}]`, cycles; recorded is null where the record says that it is not known */
async function session(count, unit, random) {
  const live = await openLive({ view: { width: 480, height: 320 } });
  try {
    const reader = await live.reader();
    await live.desk.cycles(3);
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
  const reel = await film(live.page, reader);
  const ending = drawn(random);
  // Past the rest, somewhere in the set.
  await live.page.waitForTimeout(1_500 + 600 * random());
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
  const { phase, jumps, reversals } = followed(await reel.stop(), place, RATES.most * (1 + CATCH_UP));
  return { ending, filmed: phase, jumps: jumps + reversals };
}

function drawn(random) {
  let left = 20 * random();
  return Object.entries(ENDINGS).find(([, share]) => (left -= share) < 0)[0];
}
