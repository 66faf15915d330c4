// When tones sound against the phase that the screen shows: the page's own scheduler drives a context that renders its audio,
// and each tone is found again in the samples.

import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

import { launch } from '../../../browser/support/chromium.mjs';
import { onsets } from '../../../browser/support/tones.mjs';
import { atMost, chance, quantile } from '../../support/judge.mjs';
import { changed, RATES, started } from '../../support/orders.mjs';

export default { name: 'tones against phase', needs: ['browser'], run };

const WEB = fileURLToPath(new URL('../../../../web/', import.meta.url));
const RUNS = 8;
const SECONDS = 40;
/** Changes come so far apart, ms, and so long before (or, below 0, after) their time. */
const BETWEEN = { least: 400, most: 4_000 };
const AHEAD = { least: -150, most: 250 };
/** The sound card's clock runs up to so much faster or slower. */
const SKEW = 100e-6;
/** One reading of the output's time is off by up to so much, ms: half of a callback of 20 ms (from memory). */
const READING = 10;
/** ITU-R BT.1359-1: from here on, sound before picture and sound after picture are detected, ms. */
const DETECTED = { before: -45, after: 125 };
/** A tone farther than this from any extreme belongs to none, ms: half the least time from extreme to extreme. */
const NEAR = 1000 / (4 * RATES.most);

async function run() {
  const browser = await launch();
  try {
    const page = await browser.newPage();
    await page.evaluate(await bundled());
    const runs = [];
    for (let seed = 0; seed < RUNS; seed++) runs.push(await one(page, chance(seed)));
    return judge(runs);
  } finally {
    await browser.close();
  }
}

function judge(runs) {
  const off = runs.flatMap(({ found }) => found);
  const sizes = off.map(Math.abs);
  const outside = off.filter((ms) => ms < DETECTED.before || ms > DETECTED.after).length;
  const lost = runs.reduce((sum, { missing, stray }) => sum + missing + stray, 0);
  const text = `${off.length} tones in ${RUNS} runs of ${SECONDS} s with random rate changes,`;
  return [
    atMost(quantile(sizes, 0.95), 10, ' ms', `${text} p95 (p50 ${quantile(sizes, 0.5).toFixed(2)}, most ${Math.max(...sizes).toFixed(2)}):`),
    atMost(outside, 0, '', `${text} outside the -45 to +125 ms of ITU-R BT.1359:`),
    atMost(lost, 0, '', `${text} extremes without a tone on their side, and tones without an extreme:`),
  ];
}

async function bundled() {
  const { build } = createRequire(`${WEB}package.json`)('esbuild');
  const contents = `export { Tones } from './src/stage/tones'; export { joined } from './src/stage/shown'; export { phaseAt } from './src/live/timeline';`;
  const { outputFiles: [{ text }] } = await build({
    stdin: { contents, resolveDir: WEB, loader: 'ts' }, bundle: true, write: false, format: 'iife', globalName: 'parts', target: 'es2021',
  });
  return `${text}; globalThis.parts = parts; globalThis.onsets = ${onsets};`;
}

async function one(page, random) {
  const skew = SKEW * (2 * random() - 1);
  const noise = Array.from({ length: SECONDS * 10 }, () => READING * (2 * random() - 1));
  const { crossings, heard } = await page.evaluate(play, { orders: ordersOf(random), seconds: SECONDS, skew, noise });
  const found = [];
  let missing = 0;
  for (const { at, side } of crossings) {
    const i = heard.findIndex((tone) => tone.side === side && Math.abs(tone.at - at) < NEAR);
    if (i < 0) missing++;
    else found.push(heard.splice(i, 1)[0].at - at);
  }
  return { found, missing, stray: heard.length };
}

/** `[{at, segments}]`: from page time `at` on, ms, the page knows this timeline. */
function ordersOf(random) {
  const between = (range) => range.least + (range.most - range.least) * random();
  let segments = started(1_500, between(RATES));
  const orders = [{ at: 0, segments }];
  for (let at = 3_000; at < SECONDS * 1000; at += between(BETWEEN)) {
    segments = changed(segments, at + between(AHEAD), between(RATES));
    orders.push({ at, segments });
  }
  return orders;
}

/**
 * Runs in the page: the page's own tones over a context that renders, halted every 100 ms as the page's timer would.
 *
 * @returns when the shown phase reached each extreme, and when each tone is heard: `{at, side}`, page time, ms
 */
async function play({ orders, seconds, skew, noise }) {
  const { Tones, joined, phaseAt } = globalThis.parts;
  const [rate, tick] = [48_000, 100];
  const context = new OfflineAudioContext(2, seconds * rate, rate);
  const pageOf = (contextMs) => contextMs / (1 + skew);
  let now = 0;
  // What a context that plays has and one that renders has not.
  Object.defineProperty(context, 'state', { value: 'running' });
  context.resume = async () => {};
  context.getOutputTimestamp = () => ({ contextTime: (now * (1 + skew)) / 1000, performanceTime: now + noise[Math.floor(now / tick)] });
  globalThis.AudioContext = function Rendering() { return context; };

  const tones = new Tones(() => {});
  await tones.open();
  const voice = { timbre: 'round', pitch: 450, tone_ms: 120, level: 100 };
  let shown = { segments: orders[0].segments };
  let order = 0;
  const crossings = [];
  let before = 0;
  const step = () => {
    for (; order + 1 < orders.length && orders[order + 1].at <= now; order++) shown = joined(shown, { segments: orders[order + 1].segments }, now + 50);
    tones.schedule(shown, voice, now, Infinity);
    for (let at = now; at < now + tick; at += 0.25) {
      const phase = phaseAt(shown, at);
      if (Math.floor(phase * 2) > Math.floor(before * 2)) crossings.push({ at, side: Math.floor(phase * 2) % 2 === 0 ? 'left' : 'right' });
      before = phase;
    }
  };
  const resume = OfflineAudioContext.prototype.resume.bind(context);
  for (let at = tick; at < (seconds - 1) * 1000; at += tick) {
    context.suspend(at / 1000).then(() => { now = pageOf(at); step(); return resume(); });
  }
  const heard = globalThis.onsets(await context.startRendering()).map(({ side, at }) => ({ side, at: pageOf(at) }));
  // The last half second may have been ordered but not rendered.
  const until = (seconds - 1.5) * 1000;
  return { crossings: crossings.filter(({ at }) => at < until), heard: heard.filter(({ at }) => at < until) };
}
