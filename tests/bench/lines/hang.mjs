// The client's page hangs for 4 s in the middle of a set: the dot, filmed from outside, comes to rest by itself.

import { atMost } from '../support/judge.mjs';
import { openLive } from '../support/live.mjs';
import { film, movesOf } from '../support/pixels.mjs';

export default { name: 'page hung 4 s to rest', needs: ['portal', 'browser'], run };

const HANG = 4000;
const RATES = [0.3, 1, 2];
const PATHS = 4;

async function run() {
  const live = await openLive();
  try {
    const reader = await live.scene.near.newPage();
    const hangs = [];
    await smallDot(live.desk);
    for (let path = 0; path < PATHS; path++) {
      for (const rate of RATES) {
        await setRate(live.desk, rate);
        hangs.push({ rate, path: await live.desk.text('path'), ...await hang(live, reader, rate) });
      }
      await live.desk.press('p');
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

/** Runs in the page: nothing else does for `ms`. @returns when it began, ms since the epoch */
function hangPage(ms) {
  const begun = performance.now();
  while (performance.now() - begun < ms);
  return performance.timeOrigin + begun;
}

async function smallDot(desk) {
  for (let press = 0; press < 12 && !/dot (0\.\d|1(\.0)?)°/.test(await desk.text('dot-size')); press++) await desk.press('d');
}

async function setRate(desk, rate) {
  const wanted = `${rate.toFixed(2)} Hz`;
  for (let press = 0; press < 60; press++) {
    const shown = await desk.text('rate');
    if (shown === wanted) return;
    await desk.press(Number.parseFloat(shown) > rate ? 'ArrowLeft' : 'ArrowRight');
    await desk.page.waitForFunction((before) => document.querySelector('[data-part="rate"]').textContent !== before, shown);
  }
  throw new Error(`no way to ${wanted}`);
}
