// Every way in which the dot must come to rest, and nothing starts by itself afterwards.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { Desk } from '../support/desk.mjs';
import { motionOf, sampled, steps, stillFor } from '../support/motion.mjs';
import { CLIENT, LOCATION, LOST_LINE, Scene, accessible, openScene } from '../support/scene.mjs';
import { inTheMeeting, lastEnding, run, staysAtRest } from '../support/under_way.mjs';

/** design: no motion more than 3 s after the last sign of the desk; `leeward_core::safety::SILENCE_ABSOLUTE_MS`. */
const AT_REST_WITHIN = 3000;

let scene, desk, stage, page, tab;
before(async () => { scene = await openScene(); });
after(() => scene?.close());

const test = Scene.tests(() => scene, async () => {
  ({ desk } = scene);
  tab = await inTheMeeting(scene);
  ({ stage } = scene);
  ({ page } = tab);
});

test('a line that is cut or falls silent: at rest within 3 s, always, and never a restart by itself', async (t) => {
  scene.excuse(page, LOST_LINE);
  for (const lose of ['cut', 'silence', 'cut']) {
    await run(scene);
    const before = await page.evaluate(() => performance.now());
    scene.link[lose]();
    const since = await page.evaluate(() => performance.now());
    await stillFor(page, 700);
    const { samples } = await sampled(page);
    const { last } = motionOf(samples);
    t.diagnostic(`${lose}: at rest after ${Math.round(last - since)} ms`);
    assert.deepEqual(steps(samples).filter((one) => one.page !== 'running'), [], 'no words say that it has stopped before it has');
    assert.ok(last > before, 'it had been moving');
    assert.ok(last - since <= AT_REST_WITHIN, `${lose}: moved for ${last - since} ms`);
    await stage.until('The line is down.');
    await accessible(page, 'line down');
    await desk.until('LINK LOST');
    scene.link.restore();
    await desk.until('STOPPED');
    await desk.untilText('showing', /^at rest after \d+ cycles?$/);
    await lastEnding(scene, 'link_lost');
    await staysAtRest(scene);
  }
});

test('a desk that goes away: at rest within 3 s, and a desk that comes back starts nothing', async () => {
  await run(scene);
  const before = await page.evaluate(() => performance.now());
  await desk.page.goto('about:blank');
  const since = await page.evaluate(() => performance.now());
  await stillFor(page, 700);
  const { last } = motionOf((await sampled(page)).samples);
  assert.ok(last > before && last - since <= AT_REST_WITHIN, `moved for ${last - since} ms`);
  await desk.page.goto(`/sessions/${scene.session}/desk`);
  await desk.until('STOPPED');
  await staysAtRest(scene);
  await lastEnding(scene, 'link_lost');
});

test('a hidden page stops, and a page that is shown again starts nothing', async () => {
  await run(scene);
  await tab.hide();
  await desk.until('STOPPED');
  assert.deepEqual(await page.evaluate(() => [document.visibilityState, document.getAnimations().length]), ['hidden', 0]);
  await tab.show();
  await stage.until('This page has stopped.');
  await staysAtRest(scene);
  await lastEnding(scene, 'page_interrupted');
});

test('a reload in the middle of a set starts nothing', async () => {
  await run(scene);
  await page.reload();
  await stage.until('A short check');
  await staysAtRest(scene);
  await desk.untilText('messages', /The client's page asks about their device\./);
  await stage.skipCheck();
  await desk.untilText('messages', /^(?!.*asks about their device)/);
  await staysAtRest(scene);
});

test('a second desk only looks on until it takes control', async () => {
  await run(scene);
  const other = new Desk(await scene.windowBeside(desk.page));
  await other.page.goto(`/sessions/${scene.session}/desk`);
  await other.until('RUNNING');
  await other.untilText('messages', /View only: another desk has control/);
  await other.press('ArrowRight');
  await other.untilText('messages', /view-only/);
  assert.equal(await desk.text('rate'), await other.text('rate'));
  await other.click('Take control');
  await desk.untilText('messages', /View only/);
  await desk.press('e');
  await desk.untilText('messages', /view-only/);
  await other.press('Escape');
  await desk.until('STOPPED');
  await desk.click('Take control');
  await other.untilText('messages', /View only/);
});

test('the server dies in the middle of a set: both sides stop, the card opens, and the set is in the record', async () => {
  for (const one of [page, desk.page]) scene.excuse(one, LOST_LINE);
  await run(scene);
  const before = await page.evaluate(() => performance.now());
  await scene.house.tell('portal-kill');
  const since = await page.evaluate(() => performance.now());
  await stillFor(page, 700);
  const { last } = motionOf((await sampled(page)).samples);
  assert.ok(last > before - 100 && last - since <= AT_REST_WITHIN, `moved for ${last - since} ms`);
  await desk.until('UNKNOWN');
  await desk.press('m');
  const card = desk.page.locator('[data-panel="card"]');
  await card.waitFor();
  assert.match(await card.innerText(), new RegExp(LOCATION));
  assert.ok((await card.innerText()).includes(CLIENT.phone) && (await card.innerText()).includes(CLIENT.contact_phone));
  await stage.until('The line is down.');
  await scene.house.tell('portal-start');
  await desk.until('HOLD');
  const shapeColour = () => desk.page.locator('[data-part="shape"]').evaluate((shape) => getComputedStyle(shape).color);
  const whileNeeded = await shapeColour();
  await staysAtRest(scene);
  await lastEnding(scene, 'link_lost');
  await run(scene);
  await desk.press('e');
  await desk.until('READY');
  assert.notEqual(await shapeColour(), whileNeeded, 'ready looks ready only when nothing is needed first');
});
