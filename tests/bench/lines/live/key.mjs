// From the clinician's key to the first frame on the client's screen that it changed, over what the two lines' medians and one
// frame take by themselves.

import { fresh, sampled } from '../../../browser/support/motion.mjs';
import { atMost, quantile } from '../../support/judge.mjs';
import { LINKS } from '../../support/link.mjs';
import { openLive } from '../../support/live.mjs';

export default { name: 'key press to first changed frame', needs: ['portal', 'browser'], run };

const TRIES = 40;
/** A set takes so many pieces at most (MOST_SEGMENTS of leeward_core), and each step of the rate on the way back makes some. */
const IN_ONE_SET = 10;
/** Of a screen that shows sixty a second, ms. */
const FRAME = 1000 / 60;
/** Hz. From the slow one a key makes the fast one: the greater the change, the clearer its beginning. */
const [SLOW, FAST] = [0.5, 1.4];
/** The clock and the silence limit have seen their fill, ms. */
const LEARNING = 27_000;
/** Fewer frames of the rise than these make no line: it takes half a second, some thirty frames. */
const FEW = 8;
/** A dot this far from where it would be without the key can be told from it, px of the page. */
const VISIBLE = 1;

async function run() {
  // Side by side: for the most part both wait.
  return (await Promise.all([
    onLink(LINKS.near, { p50: 1.05, p95: 1.15 }),
    onLink(LINKS.far, { p50: 1.15 }),
  ])).flat();
}

async function onLink(link, goals) {
  // A dot of constant speed: its place is a straight line in time, and so is its departure from it.
  const live = await openLive({ link, comfort: { sweep: 'constant' } });
  try {
    await live.desk.press('u');
    await live.desk.page.evaluate(() => {
      globalThis.entered = [];
      addEventListener('keydown', (event) => { if (event.key === 'Enter') globalThis.entered.push(performance.timeOrigin + event.timeStamp); }, { capture: true });
    });
    await live.page.waitForTimeout(LEARNING);
    const floor = 2 * link.mid + FRAME;
    const changes = [];
    for (let i = 0; i < TRIES; i++) {
      if (i > 0 && i % IN_ONE_SET === 0) {
        await live.desk.press('Escape');
        await live.desk.until('STOPPED');
      }
      changes.push(await one(live));
    }
    const times = changes.map(({ took }) => took / floor);
    const late = changes.filter(({ leapt }) => leapt).length;
    const seen = (share) => (quantile(changes.map(({ seen: ms }) => ms), share) / floor).toFixed(2);
    const beside = `; the first frame in which it can be seen, ${VISIBLE} px off its old way: p50 ${seen(0.5)}x, p95 ${seen(0.95)}x`;
    const text = `${link.label}, ${TRIES} changes (${late} came when their rise was all but over), floor ${floor.toFixed(1)} ms,`;
    const judged = Object.entries(goals).map(([which, most]) => atMost(quantile(times, which === 'p50' ? 0.5 : 0.95), most, 'x', `${text} ${which}:`));
    return judged.map(({ verdict, text: words }) => ({ verdict, text: words + beside }));
  } finally {
    await live.close();
  }
}

/** One change in the middle of a set. @returns `{took, seen, leapt}`: from key to frame, and to the first that shows it, ms, and whether the dot's speed leapt */
async function one(live) {
  const { desk, page } = live;
  // A tapped rate is to a hundredth, the keys go by twentieths.
  while (Number.parseFloat(await desk.text('rate')) > SLOW + 0.05) await desk.press('ArrowLeft');
  if ((await desk.word()) !== 'RUNNING') await live.run();
  await page.waitForTimeout(1_000);
  await fresh(page);
  const offered = desk.page.waitForFunction(() => /Enter sets it/.test(document.body.innerText));
  for (let tap = 0; tap < 5; tap++) {
    await desk.press('y');
    if (tap < 4) await page.waitForTimeout(500 / FAST);
  }
  await offered;
  await desk.press('Enter');
  await page.waitForTimeout(1_800);
  const pressed = await desk.page.evaluate(() => globalThis.entered.at(-1));
  const { samples } = await sampled(page);
  const origin = await page.evaluate(() => performance.timeOrigin);
  const { drawn, seen, leapt } = firstChanged(samples.map(({ t, x }) => ({ t: t + origin, x })), pressed);
  return { took: drawn - pressed, seen: seen - pressed, leapt };
}

/**
 * The speed of the dot is level, rises on a straight line and is level again. Where that line begins tells more than the first
 * frame that differs, since the page also works in what its clock corrects. A piece that the line lost once comes when its rise
 * is over or nearly so; then the speed leaps, and the first frame past the middle of the two speeds is taken, which is no earlier
 * than the first that differs.
 *
 * @returns `{drawn, seen, leapt}`: when the first frame was drawn that the key changed, and the first that is visibly off, ms, and
 *   whether the speed leapt
 */
function firstChanged(samples, pressed) {
  const raw = samples.slice(1).map((one, i) => ({ t: (one.t + samples[i].t) / 2, v: (one.x - samples[i].x) / (one.t - samples[i].t), drawn: one.t }));
  const speeds = raw
    .filter(({ v }, i) => i > 0 && i + 1 < raw.length && v * raw[i - 1].v > 0 && v * raw[i + 1].v > 0 && Math.abs(v / raw[i - 1].v - 1) < 0.2)
    .map(({ t, v }) => ({ t, v: Math.abs(v) }));
  const middle = (from, to) => quantile(speeds.filter(({ t }) => t > from && t < to).map(({ v }) => v), 0.5);
  const [slow, fast] = [middle(-Infinity, pressed), middle(pressed + 1_200, Infinity)];
  if (!(fast > slow * 1.5)) throw new Error(`the samples show ${slow} px/ms, and then ${fast}`);
  const rising = speeds.filter(({ t, v }) => t > pressed && v > slow + 0.1 * (fast - slow) && v < slow + 0.9 * (fast - slow));
  const leapt = rising.length < FEW;
  const seen = firstOff(raw, pressed, slow);
  if (leapt) return { leapt, seen, drawn: raw.find(({ t, v }) => t > pressed && Math.abs(v) > (slow + fast) / 2).drawn };
  const begins = meets(rising, slow);
  return { leapt, seen, drawn: samples.find(({ t }) => t >= begins).t };
}

/** When the frame was drawn in which the dot had gone `VISIBLE` px further than at the speed `slow`; turns, where it stands, left out. */
function firstOff(raw, pressed, slow) {
  let off = 0;
  for (const [i, { v, t, drawn }] of raw.entries()) {
    const before = raw[i - 1];
    if (t <= pressed || !before || v * before.v <= 0) continue;
    off = Math.max(0, off + (Math.abs(v) - slow) * (drawn - before.drawn));
    if (off > VISIBLE) return drawn;
  }
  throw new Error('the dot was never seen off its old way');
}

/** When the straight line through points `{t, v}` is at `level`: Theil and Sen's, whom a few strange points do not move. */
function meets(points, level) {
  const slopes = points.flatMap((a, i) => points.slice(i + 1).map((b) => (b.v - a.v) / (b.t - a.t)));
  const slope = quantile(slopes, 0.5);
  return quantile(points.map(({ t, v }) => t - (v - level) / slope), 0.5);
}
