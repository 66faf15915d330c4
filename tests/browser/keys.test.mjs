// What keys must never do, and what they must always do.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { tabTo } from './support/keyboard.mjs';
import { setRows, written } from './support/record.mjs';
import { Scene, openScene } from './support/scene.mjs';

/** The width at which the desk stands beside a video call. */
const NARROW = { width: 455, height: 768 };

let scene, page, client, desk, stage;
before(async () => { scene = await openScene(); });
after(() => scene?.close());

const test = Scene.tests(() => scene, async () => {
  desk = scene.desk;
  page = desk.page;
  await page.setViewportSize(NARROW);
  stage = await scene.joinAndAdmit({ width: 390, height: 844 });
  client = stage.page;
  // Long enough for whatever is done meanwhile, however slowly.
  await desk.cycles(60);
});

test('Space never starts while a set runs, nor within a second of a stop, and clicks no button that has the focus', async () => {
  await tabTo(page, page.locator('[data-act="end"]'));
  await desk.start();
  await desk.untilCycle(1);
  const number = await desk.text('next-set');
  for (const act of ['end', 'stop']) {
    await page.locator(`.main [data-act="${act}"]`).focus();
    await desk.press('Space');
  }
  await desk.untilCycle(2);
  assert.deepEqual([await desk.word(), await desk.text('next-set')], ['RUNNING', number]);
  // At once the set may still run for all the desk knows; after that it is the stop that counts.
  await desk.pressAtOnce(['Escape', ' '], 'STOPPED', ' ');
  await desk.until('STOPPED');
  await desk.untilText('messages', /Not within a second of a stop/);
  await desk.until('READY');
  await page.waitForSelector('[data-part="start"]:not([aria-disabled])');
  assert.equal(await desk.word(), 'READY', 'the press was not kept for later');
});

test('Escape stops from the words field, and what was typed stays', async () => {
  await desk.start();
  await desk.press('w');
  await page.keyboard.type('12 e i x Space ');
  assert.equal(await desk.word(), 'RUNNING', 'in the field, keys type');
  await page.keyboard.press('Escape');
  await desk.until('READY');
  assert.equal(await page.locator('#words').inputValue(), '12 e i x Space ');
  await page.keyboard.press('Enter');
  const sets = await written(() => setRows(scene.house, scene.session), (rows) => rows.every((row) => row.room_ending !== null));
  assert.deepEqual(sets.map((row) => row.room_ending), ['stopped_by_clinician']);
});

test('without the keyboard the desk says KEYS OFF, and its whole band stops', async () => {
  await desk.start();
  // A tab, so that the desk is in the background: nothing but that takes its keyboard.
  const other = await page.context().newPage();
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: false });
  await other.bringToFront();
  await page.locator('[data-part="keys-off"]').waitFor();
  const [band, off] = await Promise.all([page.locator('.band').boundingBox(), page.locator('[data-part="band-stop"]').boundingBox()]);
  assert.ok(off.width >= 0.98 * band.width && off.height >= 0.9 * band.height, 'as large as the band');
  assert.equal(await desk.word(), 'RUNNING');
  await page.locator('[data-part="band-stop"]').click();
  await desk.until('READY');
  await page.bringToFront();
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await page.locator('[data-part="keys-off"]').waitFor({ state: 'hidden' });
  await other.close();
});
