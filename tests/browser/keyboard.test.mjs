// By keyboard alone, once through; and what keys must never do.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { Desk } from './support/desk.mjs';
import { enter, fillByKeys, noPointer, tabTo } from './support/keyboard.mjs';
import { setRows } from './support/record.mjs';
import { CLIENT, LOCATION, TARGET, accessible, openScene } from './support/scene.mjs';
import { signOut } from './support/practice.mjs';
import { Stage } from './support/stage.mjs';

const NARROW = { width: 455, height: 768 };
const CLOSING = {
  kind: 'incomplete', target_status: 'incomplete', resource: 'the harbour', effect: 'settled', state: 'calm', companion: 'nobody',
  next_contact: 'Thursday',
};

let scene, page, client, desk, stage;
before(async () => {
  scene = await openScene();
  const enrolled = await scene.firstMember('Runa Halvard', 'clinician', NARROW);
  await signOut(enrolled);
  page = enrolled;
  await noPointer(page);
  client = await scene.clientPage({ width: 390, height: 844 });
  await noPointer(client);
});
after(() => scene?.close());

test('the clinician signs in, enters client and target, and starts a session', async () => {
  await page.goto('/signin');
  await enter(page, 'button', 'Sign in with a passkey');
  await page.waitForURL('**/clients');
  await enter(page, 'link', 'New client');
  await page.waitForURL('**/clients/new');
  await fillByKeys(page, CLIENT);
  await enter(page, 'button', 'Save');
  await page.waitForURL(/\/clients\/[0-9a-f-]{36}$/);
  const record = page.url();
  await enter(page, 'link', 'Add a target');
  await page.waitForURL('**/targets/new');
  await fillByKeys(page, { label: TARGET.label, prong: TARGET.prong, picture: TARGET.picture, voc: TARGET.voc, sud: TARGET.sud });
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/targets\/[0-9a-f-]{36}$/);
  await page.goto(record);
  await tabTo(page, page.getByLabel('Target of this session'));
  await page.keyboard.type('1');
  await enter(page, 'button', 'Start a session');
  await page.waitForURL('**/desk');
  scene.session = new URL(page.url()).pathname.split('/')[2];
  desk = scene.desk = new Desk(page);
  await desk.until('WAITING');
});

test('the client joins, and the clinician admits', async () => {
  await enter(page, 'button', 'New link');
  await desk.untilText('join-code', /^\d{6}$/);
  await client.goto(await page.locator('#join-link').inputValue());
  stage = scene.stage = new Stage(client);
  await tabTo(client, client.getByLabel('Six numbers'));
  await client.keyboard.type(await desk.text('join-code'));
  await client.keyboard.press('Enter');
  await stage.until('A short check');
  await enter(client, 'button', 'Skip all');
  await stage.until('Please wait');
  await desk.untilText('seat-state', /^Somebody waits/);
  await fillByKeys(page, { location: LOCATION, confirmed: true });
  await tabTo(page, page.locator('#private'));
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await desk.until('HOLD');
  await desk.sight();
  await desk.until('READY');
});

test('sets are started, changed, noted, rated, ended; and stopped by the client with Space and with Escape', async () => {
  await desk.cycles(6);
  await desk.start();
  await desk.untilCycle(1);
  await desk.press('ArrowRight', 'ArrowUp');
  await desk.untilText('messages', /only the rate can change/);
  await desk.until('READY', 15_000);
  await desk.note({ words: 'quieter', mark: 'changing', sud: 10 });
  assert.equal(await page.evaluate(() => document.activeElement.id), 'desk', 'Enter leaves the words field');
  for (const key of ['Space', 'Escape']) {
    await desk.start();
    await desk.untilCycle(1);
    await client.keyboard.press(key);
    await desk.until('STOPPED BY CLIENT');
    await stage.until('Stopped.');
    await client.getByText('The person you are meeting can see that you stopped.').waitFor();
    await tabTo(client, client.getByRole('button', { name: 'I am ready' }));
    // A press so soon after the stop that it may belong to it is passed over.
    while (await stage.heading() === 'Stopped.') {
      await client.keyboard.press('Enter');
      await client.waitForTimeout(100);
    }
    await desk.until('READY');
  }
  await desk.press('.');
  await desk.untilText('length', '8 cycles');
  await desk.press('z');
  await desk.untilText('length', '6 cycles');
});

test('Space never starts while a set runs, nor within a second of a stop, and clicks no button that has the focus', async () => {
  await tabTo(page, page.locator('[data-act="end"]'));
  await desk.start();
  await desk.untilCycle(1);
  const number = await desk.text('next-set');
  for (const act of ['end', 'stop']) {
    await page.locator(`.controls [data-act="${act}"]`).focus();
    await desk.press('Space');
  }
  await desk.untilCycle(2);
  assert.deepEqual([await desk.word(), await desk.text('next-set')], ['RUNNING', number]);
  // At once the set may still run for all the desk knows; after that it is the stop that counts.
  await desk.press('Escape', 'Space');
  await desk.until('STOPPED');
  await desk.press('Space');
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
  assert.equal((await setRows(scene.house, scene.session)).at(-1).room_ending, 'stopped_by_clinician');
});

test('without the keyboard the desk says KEYS OFF, and its whole band stops', async () => {
  await desk.start();
  const other = await page.context().newPage();
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: false });
  await other.bringToFront();
  await page.locator('[data-part="keys-off"]').waitFor();
  const [band, off] = await Promise.all([page.locator('.band').boundingBox(), page.locator('[data-part="band-stop"]').boundingBox()]);
  assert.ok(off.width >= 0.98 * band.width && off.height >= 0.9 * band.height, 'as large as the band');
  assert.equal(await desk.word(), 'RUNNING');
  // The one pointer that is meant: without the keys there is no other way.
  await page.locator('[data-part="band-stop"]').click();
  await desk.until('READY');
  await page.bringToFront();
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await page.locator('[data-part="keys-off"]').waitFor({ state: 'hidden' });
  await other.close();
  page.troubles = page.troubles.filter((line) => !line.includes('a pointer was used'));
});

/** Every control's box, by what it does. */
const boxes = () => page.locator('.band, .controls button, .controls output, .bar .button, .bar button, .entries button, #words').evaluateAll((controls) =>
  Object.fromEntries(controls.map((control, i) => {
    const { x, y, width, height } = control.getBoundingClientRect();
    return [`${i} ${control.dataset.act ?? control.id} ${control.dataset.setting ?? ''}`, [x, y, width, height].map(Math.round)];
  })));

test('no control moves from state to state, and nothing scrolls sideways at 455 and 320', async () => {
  const seen = { READY: await boxes() };
  assert.ok(Object.keys(seen.READY).length >= 30, 'all controls');
  await desk.start();
  await desk.untilCycle(1);
  seen.RUNNING = await boxes();
  await client.keyboard.press('Space');
  await desk.until('STOPPED BY CLIENT');
  seen['STOPPED BY CLIENT'] = await boxes();
  scene.link.cut();
  await desk.until('LINK LOST');
  seen['LINK LOST'] = await boxes();
  await accessible(page, 'desk, link lost');
  await stage.until('Stopped.');
  await accessible(client, 'stopped, and the line down');
  for (const width of [455, 320]) {
    await page.setViewportSize({ width, height: 768 });
    assert.ok(await page.evaluate(() => document.scrollingElement.scrollWidth <= innerWidth), `desk at ${width}`);
  }
  await page.setViewportSize(NARROW);
  for (const key of ['m', 'c', '?', 'g', 's']) {
    await desk.press(key);
    seen[`with ${key}`] = await boxes();
  }
  await desk.press('s', 'm', 'm');
  for (const [state, there] of Object.entries(seen)) assert.deepEqual(there, seen.READY, state);
});

test('the clinician closes the session by keyboard, and the client, whose line was down, reads that it has ended', async () => {
  const list = await scene.closingList(page, () => enter(page, 'link', 'closing'));
  await fillByKeys(list, CLOSING);
  await enter(list, 'button', 'Close the session');
  await list.waitForURL(`**/sessions/${scene.session}`);
  await desk.until('CLOSED');
  scene.link.restore();
  await stage.until('The meeting has ended.', 20_000);
  const endings = (await setRows(scene.house, scene.session)).map((row) => row.ending);
  assert.deepEqual(endings, ['done', 'stopped_by_client', 'stopped_by_client', 'stopped_by_clinician', 'stopped_by_clinician', 'stopped_by_clinician', 'stopped_by_client']);
});

test('no pointer was used, and no page had any trouble', () => scene.calm({ lost: [client] }));
