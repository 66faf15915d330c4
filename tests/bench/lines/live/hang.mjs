// The client's page hangs for 4 s in the middle of a set: the dot, filmed from outside, comes to rest by itself.

import { atMost } from '../../support/judge.mjs';
import { openLive, PATHS } from '../../support/live.mjs';
import { film, movesOf } from '../../support/pixels.mjs';

export default { name: 'page hung 4 s to rest', needs: ['portal', 'browser'], run };

const HANG = 4000;
const RATES = [0.3, 1, 2];

async function run() {
  const live = await openLive();
  try {
    const reader = await live.reader();
    const hangs = [];
    // The fastest rate is for small dots.
    await live.choose('Shift+D', 'dot-size', 'dot 1°');
    for (const path of Object.keys(PATHS)) {
      await live.choose('p', 'path', path);
      for (const rate of RATES) {
        await live.rate(rate);
        hangs.push({ rate, path, ...await hang(live, reader, rate) });
      }
    }
    return judge(hangs);
  } finally {
    await live.close();
  }
}

function judge(hangs) {
  const worst = (pick) => hangs.reduce((a, b) => (pick(b) > pick(a) ? b : a));
  const slowest = worst((one) => one.moved);
  const hardest = worst((one) => one.arrival);
  return [
    atMost(slowest.moved, 2200, ' ms', `the slowest of ${hangs.length}, ${slowest.rate} Hz ${slowest.path}:`),
    atMost(hardest.arrival, 0.1, '', `speed of its last step over its fastest, the hardest of ${hangs.length}, ${hardest.rate} Hz ${hardest.path}:`),
  ];
}

async function hang({ scene, desk, page, ...live }, reader, rate) {
  await scene.settle();
  await desk.start();
  // Past the rest and the ramp.
  await page.waitForTimeout(2500 + 250 / rate);
  const reel = await film(page, reader);
  await page.waitForTimeout(300);
  const begun = await page.evaluate(hangPage, HANG);
  const frames = await reel.stop();
  await desk.until('STOPPED', 20_000).catch(() => desk.until('LINK LOST'));
  const moving = movesOf(frames).filter(({ t }) => t > begun && t < begun + HANG - 100);
  if (moving.length < 10) throw new Error(`the film shows ${moving.length} moving frames at ${rate} Hz`);
  const speed = ({ step, dt }) => step / dt;
  const last = moving.at(-1);
  return {
    moved: last.t - begun,
    arrival: speed(last) / Math.max(...moving.map(speed)),
  };
}

/** Runs in the page: nothing else does for `ms`. @returns when it began, page time, ms */
function hangPage(ms) {
  const begun = performance.now();
  while (performance.now() - begun < ms);
  return begun;
}
