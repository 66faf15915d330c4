// What the client sees, hears and taps to, as the browser draws and renders it, and how the desk chooses it.

import assert from 'node:assert/strict';
import { after, before, test as plain } from 'node:test';
import { fresh, motionOf, sampled, steps, watchDot } from '../support/motion.mjs';
import { keepPicture } from '../support/layout.mjs';
import { Scene, openScene } from '../support/scene.mjs';
import { bringTones, rendered } from '../support/tones.mjs';

let scene, desk, stage, page;
before(async () => { scene = await openScene(); });
after(() => scene?.close());

const test = Scene.tests(() => scene, async () => {
  desk = scene.desk;
  page = await scene.clientPage();
  await watchDot(page);
  await scene.join(page);
  stage = scene.stage;
  await stage.check();
  await scene.admit();
  await desk.cycles(4);
});

/** Presses a key until the part of the desk reads so. */
async function choose(key, part, wanted) {
  for (let tries = 0; tries < 8 && !(await desk.text(part)).startsWith(wanted); tries++) {
    const before = await desk.text(part);
    await desk.press(key);
    await desk.untilText(part, (text) => text !== before);
  }
  assert.ok((await desk.text(part)).startsWith(wanted), `${part} reads ${await desk.text(part)}`);
}

/** One set to its end. @returns its samples with the dot visible, from the rest before it moves: until then it lies where the set before left it */
async function oneSet() {
  await scene.settle();
  await fresh(page);
  await desk.start();
  await stage.untilPage('running');
  await desk.untilOver();
  // The screen may be a frame or two behind the room.
  await stage.untilPage((name) => name !== 'running');
  const seen = (await sampled(page)).samples.filter((one) => one.visible);
  const from = seen.find((one) => one.page === 'running').t + 100;
  return seen.filter(({ t }) => t > from);
}

test('every path is drawn in its own shape, without a jump, and ends where it began', async () => {
  const width = 2 * 600 * Math.tan((9 * Math.PI) / 180) * (204 / 53.98);
  // Extents in widths. The eight: loops of radius 1 / (2 + 2 √2), from end to end 1.390 widths long.
  for (const [path, wide, high, length] of [['up-down', 0, 1, 1], ['diagonal down', 0.7071, 0.7071, 1], ['diagonal up', 0.7071, 0.7071, 1], ['eight', 1, 0.4142, 1.3902]]) {
    await choose('p', 'path', path);
    const seen = await oneSet();
    // A path that does not fit is narrowed; the desk shows what was left, once the room has answered.
    const degrees = Number.parseFloat(await desk.text('width'));
    const px = width * Math.tan((degrees * Math.PI) / 360) / Math.tan((9 * Math.PI) / 180);
    const span = (axis) => Math.max(...seen.map((one) => one[axis])) - Math.min(...seen.map((one) => one[axis]));
    assert.ok(Math.abs(span('x') - wide * px) < 2 && Math.abs(span('y') - high * px) < 2, `${path}: ${span('x')} by ${span('y')} of ${px}`);
    const far = steps(seen).filter(({ step, dt }) => step > Math.PI * length * px * 1.3 * (dt / 1000) + 1);
    assert.deepEqual(far, [], `${path} jumps`);
    assert.ok(Math.hypot(seen.at(-1).x - seen[0].x, seen.at(-1).y - seen[0].y) < 1, `${path} ends at ${JSON.stringify(seen.at(-1))}, not ${JSON.stringify(seen[0])}`);
  }
  await choose('p', 'path', 'across');
});

test('hands: a figure of two sides instead of the dot, at most three flashes a second, and the desk says what is not ready', async () => {
  await choose('n', 'channels', 'taps');
  assert.doesNotMatch(await desk.text('departures'), /neither is ready/, 'the client has heard the tones');
  for (let i = 0; i < 20 && await desk.text('rate') !== '1.50 Hz'; i++) await desk.press('ArrowRight');
  await scene.settle();
  await page.evaluate(() => {
    globalThis.lit = [];
    const look = (t) => {
      const [left, right] = ['tap-left', 'tap-right'].map((id) => Number(getComputedStyle(document.getElementById(id)).opacity) > 0.5);
      const shown = getComputedStyle(document.getElementById('pacer')).visibility === 'visible';
      const side = !shown ? 'off' : left && right ? 'both' : left ? 'left' : right ? 'right' : 'none';
      if (globalThis.lit.at(-1)?.side !== side) globalThis.lit.push({ side, t });
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await fresh(page);
  await desk.start();
  await desk.untilCycle(2);
  await keepPicture(page, 'stage-hands');
  await desk.untilOver();
  await page.waitForFunction(() => globalThis.lit.at(-1).side === 'off');
  const lit = await page.evaluate(() => globalThis.lit);
  assert.deepEqual(lit.map(({ side }) => side), ['off', 'none', 'right', 'left', 'right', 'left', 'right', 'left', 'right', 'left', 'off']);
  // WCAG 2.2, 2.3.1: three flashes in any one second.
  for (const { t } of lit) assert.ok(lit.filter((one) => one.side !== 'off' && one.t > t && one.t < t + 1000).length <= 3);
  assert.equal(motionOf((await sampled(page)).samples), undefined, 'the dot stays away');
  assert.equal(await stage.heading(), 'A short rest');
  await desk.press('ArrowRight');
  await desk.untilText('message-1', /1\.5 Hz or less/);
});

test('the desk asks for left and right again; the page closes by itself when a set starts', async () => {
  await choose('n', 'channels', 'taps');
  await desk.press('q');
  await stage.until('Sound');
  await desk.start();
  await stage.untilPage('running');
  await desk.press('Escape');
  await desk.until('STOPPED');
  await scene.settle();
  await desk.press('q');
  await stage.until('Sound');
  await stage.tap('Play a tone');
  for (let i = 0; i < 3; i++) await stage.tap('Both sides, or not sure');
  await stage.tap('Go on');
  await desk.untilText('departures', /cannot tell left from right/);
  await desk.press('q');
  await stage.until('Sound');
  await stage.sides();
  await desk.untilText('departures', /^(?!.*left)/);
});

test('a rate tapped in rhythm is shown, and set by Enter alone', async () => {
  const before = await desk.text('rate');
  await desk.page.evaluate(() => {
    globalThis.tapped = [];
    addEventListener('keydown', ({ key }) => { if (key === 'y') globalThis.tapped.push(performance.now()); }, { capture: true });
  });
  for (let i = 0; i < 5; i++) {
    await desk.press('y');
    await desk.page.waitForTimeout(450);
  }
  await desk.untilText('message-1', /^Tapped \d\.\d\d Hz\. Enter sets it\.$/);
  assert.equal(await desk.text('rate'), before);
  const [, tapped] = /Tapped (.*? Hz)/.exec(await desk.messages());
  await desk.press('Enter');
  await desk.untilText('rate', tapped);
  // However unevenly the machine let the taps through: half a cycle is the median of what lay between them.
  const times = await desk.page.evaluate(() => globalThis.tapped);
  const gaps = times.slice(1).map((at, i) => at - times[i]).sort((a, b) => a - b);
  const expected = 1000 / (gaps[1] + gaps[2]);
  assert.ok(Math.abs(Number.parseFloat(tapped) / expected - 1) < 0.05, `${tapped}, not ${expected}`);
});

plain('rendered tones: on the extreme within 10 ms, on their side, as long, as high and no louder than chosen', async (t) => {
  const own = await scene.memberPage();
  await own.goto('/signin');
  await bringTones(own);
  const timeline = { segments: [{ starts_at: 500, lasts: 1000, phase: 0, rate_from: 0, rate_to: 1.2 }, { starts_at: 1500, lasts: 60_000, phase: 0.6, rate_from: 1.2, rate_to: 1.2 }] };
  // Phase is 0.6 s² in the ramp and 0.6 + 1.2 s after it.
  const extremes = [500 + Math.sqrt(0.5 / 0.6) * 1000, ...Array.from({ length: 15 }, (_, i) => 1500 + (((i + 2) / 2 - 0.6) / 1.2) * 1000)];
  for (const timbre of ['round', 'warm', 'wood']) {
    for (const [pitch, tone_ms, level] of [[450, 120, 100], [200, 200, 5], [1000, 40, 50]]) {
      const tones = await rendered(own, { timeline, seconds: 7.6, voice: { timbre, pitch, tone_ms, level } });
      const name = `${timbre} ${pitch} Hz ${tone_ms} ms`;
      const loud = tones.slice(-4);
      assert.equal(tones.length, extremes.filter((at) => at < 7600).length, name);
      const late = tones.map(({ at }, i) => at - extremes[i]);
      assert.ok(late.every((ms) => ms >= 0 && ms < 10), `${name}: ${late}`);
      assert.deepEqual(tones.map(({ side }) => side), tones.map((_, i) => (i % 2 === 0 ? 'right' : 'left')), name);
      for (const { peak } of tones) assert.ok(peak <= 0.18 * (level / 100) + 1e-3, `${name}: ${peak}`);
      for (const { lasts, hz } of loud) {
        assert.ok(lasts <= tone_ms && lasts > tone_ms * (timbre === 'wood' ? 0.4 : 0.8), `${name}: ${lasts} ms`);
        assert.ok(Math.abs(hz / pitch - 1) < 0.08, `${name}: ${hz} Hz`);
      }
      t.diagnostic(`${name}: at most ${Math.max(...late).toFixed(1)} ms after the extreme, peak ${Math.max(...tones.map(({ peak }) => peak)).toFixed(3)}`);
    }
  }
});
