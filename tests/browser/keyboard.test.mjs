// By keyboard alone, once through.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { Desk } from './support/desk.mjs';
import { enter, fillByKeys, noPointer, tabTo } from './support/keyboard.mjs';
import { setRows } from './support/record.mjs';
import { CLIENT, LOCATION, TARGET, openScene } from './support/scene.mjs';
import { signOut } from './support/practice.mjs';
import { Stage } from './support/stage.mjs';
import { story } from './support/story.mjs';

const CLOSING = {
  kind: 'incomplete', resource: 'the harbour', effect: 'settled', state: 'calm', companion: 'nobody',
  next_contact: 'Thursday',
};

const test = story();
let scene, page, client, desk, stage;
before(async () => {
  scene = await openScene();
  const enrolled = await scene.firstMember('Runa Halvard', 'clinician', { width: 455, height: 768 });
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
  await enter(page, 'button', 'Start session 1');
  await page.waitForURL('**/desk');
  scene.session = new URL(page.url()).pathname.split('/')[2];
  desk = scene.desk = new Desk(page);
  await desk.until('WAITING');
});

/** The client opens the link, types the code and passes over the check. */
async function joins() {
  await client.goto(await page.locator('#join-link').inputValue());
  stage = scene.stage = new Stage(client);
  await tabTo(client, client.getByLabel('Six numbers'));
  await client.keyboard.type(await desk.text('join-code'));
  await client.keyboard.press('Enter');
  await stage.until('A short check');
  await enter(client, 'button', 'Skip all');
  await stage.until('Please wait');
  await desk.untilText('seat-state', /^Somebody waits/);
}

test('the client joins, and the clinician admits', async () => {
  await enter(page, 'button', 'New link');
  await desk.untilText('join-code', /^\d{6}$/);
  await joins();
  await fillByKeys(page, { location: LOCATION, confirmed: true });
  await tabTo(page, page.locator('#private'));
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  await desk.until('HOLD');
  await desk.opening();
  await desk.sight();
  await desk.until('READY');
});

test('sets are started, changed, noted, rated, ended; and stopped by the client with Space and with Escape', async () => {
  await desk.cycles(12);
  await desk.start();
  await desk.untilCycle(1);
  await desk.press('ArrowRight', 'ArrowUp');
  await desk.untilText('messages', /only the rate can change/);
  await desk.until('READY');
  await desk.note({ words: 'quieter', mark: 'changing', sud: 10 });
  assert.equal(await page.evaluate(() => document.activeElement.id), 'desk', 'Enter leaves the words field');
  await desk.cycles(60);
  for (const key of ['Space', 'Escape']) {
    await desk.start();
    await desk.untilCycle(1);
    await stage.press(key);
    await desk.until('STOPPED BY CLIENT');
    await stage.until('Stopped.');
    await client.getByText('The person you are meeting can see that you stopped.').waitFor();
    await tabTo(client, client.getByRole('button', { name: 'I am ready' }));
    // A press so soon after the stop that it may belong to it is passed over.
    for (let tries = 0; tries < 100 && await stage.heading() === 'Stopped.'; tries++) await client.keyboard.press('Enter', { delay: 100 });
    await desk.until('READY');
  }
  await desk.press('.');
  await desk.untilText('length', '64 cycles');
  await desk.press('z');
  await desk.untilText('length', '60 cycles');
});

test('the clinician closes the session at the desk by keys, and the client, whose line was down, reads that it has ended', async () => {
  scene.link.cut();
  await desk.until('LINK LOST');
  const counted = await desk.close({ kind: 'Incomplete', used: CLOSING.resource, next: CLOSING.next_contact });
  console.log(`closing: ${counted} actions beyond its words`);
  assert.ok(counted <= 7, `${counted} actions`);
  await desk.until('CLOSED');
  scene.link.restore();
  await stage.until('The meeting has ended.');
  const endings = (await setRows(scene.house, scene.session)).map((row) => row.ending);
  assert.deepEqual(endings, ['done', 'stopped_by_client', 'stopped_by_client']);
});

test('from the sign-in on, a known client is let in by eight actions at most', async () => {
  let actions = 0;
  const press = async (role, name) => {
    actions += 1;
    await enter(page, role, name);
  };
  await page.goto('/clients');
  await enter(page, 'button', 'Sign out');
  await page.waitForURL('**/signin**');
  await press('button', 'Sign in with a passkey');
  await page.waitForURL('**/clients');
  await press('link', CLIENT.name);
  await page.waitForURL(/\/clients\/[0-9a-f-]{36}$/);
  await press('button', 'Start session 2');
  await page.waitForURL('**/desk');
  desk = scene.desk = new Desk(page);
  await desk.until('WAITING');
  await press('button', 'New link');
  await desk.untilText('join-code', /^\d{6}$/);
  await joins();
  await press('button', 'Same as last time');
  for (const confirmation of ['#location-confirmed', '#private']) {
    actions += 1;
    await tabTo(page, page.locator(confirmation));
    await page.keyboard.press('Space');
  }
  actions += 1;
  await page.keyboard.press('Enter');
  await desk.untilText('seat-state', 'The client is admitted.');
  console.log(`from the sign-in to admitting a known client: ${actions} actions, three of them confirmations`);
  assert.ok(actions <= 8, `${actions} actions`);
});

test('no pointer was used, and no page had any trouble', () => scene.calm({ lost: [client] }));
