// Jumps and reversals of the dot as filmed from the screen, over random rate changes by the desk's keys, on every path.

import { atMost, chance } from '../../support/judge.mjs';
import { openLive, PATHS } from '../../support/live.mjs';
import { RATES } from '../../support/orders.mjs';
import { followed } from '../../support/phase.mjs';
import { film } from '../../support/pixels.mjs';

export default { name: 'jumps and reversals, filmed', needs: ['portal', 'browser'], run };

const CHANGES = 40;
/** ms between changes, and presses of the key in one change, a twentieth of a hertz each. */
const BETWEEN = { least: 100, most: 500 };
const PRESSES = 6;
/** CATCH_UP of web/src/stage/shown.ts. */
const CATCH_UP = 0.3;

async function run({ web }) {
  const { unitAt } = await web('live/path');
  const live = await openLive();
  try {
    const reader = await live.reader();
    const random = chance(1);
    const total = { frames: 0, cycles: 0, jumps: 0, reversals: 0 };
    await live.desk.press('u');
    for (const [name, path] of Object.entries(PATHS)) {
      await live.choose('p', 'path', name);
      await live.begin();
      const place = await live.path((phase) => unitAt(path, 'sine', phase));
      const reel = await film(live.page, reader);
      await change(live, random);
      await live.desk.press('Escape');
      await live.rested();
      const frames = await reel.stop();
      const { phase, jumps, reversals } = followed(frames, place, RATES.most * (1 + CATCH_UP), path === 'eight');
      total.frames += frames.length;
      total.cycles += phase;
      total.jumps += jumps;
      total.reversals += reversals;
    }
    const text = `${CHANGES * Object.keys(PATHS).length} random rate changes, ${Object.keys(PATHS).length} paths, ${total.frames} frames, ${total.cycles.toFixed(1)} cycles:`;
    return [atMost(total.jumps, 0, '', `${text} jumps`), atMost(total.reversals, 0, '', `${text} reversals`)];
  } finally {
    await live.close();
  }
}

async function change({ page, desk }, random) {
  await page.waitForTimeout(2_500);
  for (let i = 0; i < CHANGES; i++) {
    const key = random() < 0.5 ? 'ArrowLeft' : 'ArrowRight';
    for (let press = Math.ceil(PRESSES * random()); press > 0; press--) await desk.press(key);
    await page.waitForTimeout(BETWEEN.least + (BETWEEN.most - BETWEEN.least) * random());
  }
}
