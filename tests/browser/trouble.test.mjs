// What goes wrong around a session: the database is gone, and everybody sits at one browser.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { stillOf } from './support/chromium.mjs';
import { Desk } from './support/desk.mjs';
import { enrol, fill, newClient, startSession } from './support/practice.mjs';
import { table, written } from './support/record.mjs';
import { CLIENT, LOCATION, Scene, TARGET, accessible, accessibleStill, openScene } from './support/scene.mjs';
import { Stage } from './support/stage.mjs';

let scene;
let desk;
let page;
before(async () => { scene = await openScene(); });
after(() => scene?.close());

const test = Scene.tests(() => scene, () => {
  desk = scene.desk;
  page = desk.page;
});

/** What a page's console says when the portal cannot reach its database. */
const NO_DATABASE = /status of 503/;

test('without the database a form is not saved, says so, is kept, and can be sent again', async () => {
  const forms = await scene.windowBeside(page);
  for (const one of [forms, page]) scene.excuse(one, NO_DATABASE);
  await forms.goto(`/clients/${scene.client}`);
  await forms.getByRole('link', { name: 'Add a target' }).click();
  await fill(forms, { ...TARGET, label: 'the second ferry <&>' });
  await scene.house.tell('database-stop');
  await forms.getByRole('button', { name: 'Save' }).click();
  await forms.getByRole('heading', { name: 'Not saved' }).waitFor();
  await forms.getByText('This page still holds what you typed.').waitFor();
  await accessible(forms, 'not saved');
  await forms.getByRole('button', { name: 'Send it again' }).click();
  await forms.getByRole('heading', { name: 'Not saved' }).waitFor();
  await scene.house.tell('database-start');
  await forms.getByRole('button', { name: 'Send it again' }).click();
  await forms.waitForURL(/\/targets\/[0-9a-f-]{36}$/);
  for (const words of ['the second ferry <&>', TARGET.picture, TARGET.positive_belief]) await forms.getByText(words).first().waitFor();
});

test('without the database the desk still stops, starts nothing, and keeps each entry until it is saved', async () => {
  const stage = await scene.joinAndAdmit();
  scene.excuse(page, NO_DATABASE);
  await desk.cycles(60);
  await desk.start();
  await desk.untilCycle(1);
  await scene.house.tell('database-stop');
  await desk.press('Escape');
  await desk.until('STOPPED');
  await stage.until('A short rest');
  await desk.press('w');
  await page.keyboard.type('colder, and further off');
  await desk.press('Enter', 's', '6');
  await desk.untilText('log', /not saved, trying again/);
  assert.doesNotMatch(await desk.text('log'), /saved \d\d:/);
  await accessible(page, 'desk, not saved');
  await scene.house.tell('database-start');
  await desk.untilSaved(2);
  const ratings = await scene.house.rows(`SELECT value FROM rating WHERE session_id = '${scene.session}' AND scale = 'sud' AND set_id IS NOT NULL`);
  assert.deepEqual(ratings, [{ value: 6 }], 'kept once');
  await scene.settle();
  await desk.start();
  await desk.press('Escape');
  await desk.until('STOPPED');
  // An ending is written behind.
  const ended = `SELECT s.number, e.ending FROM stimulus_set s JOIN set_ending e ON e.set_id = s.id WHERE s.session_id = '${scene.session}' ORDER BY 1`;
  assert.deepEqual(await written(() => scene.house.rows(ended), (sets) => sets.length >= 2), [{ number: 1, ending: 'stopped_by_clinician' }, { number: 2, ending: 'stopped_by_clinician' }]);
});

test('a desk whose closing does not come says so, has the list, and tries again when asked', async () => {
  scene.excuse(page, /closing\.js|ERR_FAILED|Failed to (load|fetch)/);
  await page.route('**/closing.js*', (route) => route.abort());
  await page.reload();
  await desk.until('WAITING');
  await desk.press('#');
  await desk.untilText('closing-status', /The closing did not come/);
  await page.getByRole('link', { name: 'closing list' }).waitFor();
  await page.unroute('**/closing.js*');
  await desk.press('#', '#');
  await desk.untilText('closing-status', /One key a line/);
});

/** Another device comes with a new link: it is at the door, in the band and in the tab's title, and nothing else has changed. */
async function secondDeviceAsks(both) {
  const { link, code } = await both.mint();
  const other = await scene.clientPage();
  await other.goto(link);
  await other.getByLabel('Six numbers').fill(code);
  await other.getByRole('button', { name: 'Join' }).click();
  const door = both.page.locator('[data-part="door"]');
  await door.waitFor();
  assert.equal(await both.page.title(), 'AT THE DOOR, READY - Desk, session 1');
  assert.equal(await both.word(), 'READY');
  const asked = await stillOf(both.page);
  await both.click('Refuse');
  await door.waitFor({ state: 'hidden' });
  assert.equal(await both.page.title(), 'READY - Desk, session 1');
  await accessibleStill(asked, 'desk, another device at the door');
  // The refusal.
  scene.excuse(other, /status of 409/);
}

test('a desk, a lead\'s page and a stage in one browser, and each keeps its place when another leaves', async () => {
  const own = await scene.memberPage();
  await enrol(own, await scene.house.leeward('member', 'invite', '--name', 'Sunniva Aske', '--role', 'clinician,lead'));
  await newClient(own, { ...CLIENT, name: 'Birger Lindal', addressed_as: 'Birger' });
  const client = new URL(own.url()).pathname.split('/')[2];
  await startSession(own, client);
  const both = new Desk(own);
  await both.until('WAITING');
  const [lead, field] = [await scene.windowBeside(own), await scene.windowBeside(own)];
  const stage = new Stage(field);
  await stage.join(await both.mint());
  await stage.skipCheck();
  await both.admit({ location: LOCATION });
  await both.sight();
  await both.cycles(6);
  await both.start();
  await lead.goto('/practice/caseload');
  assert.ok((await table(lead, 'By record number')).length >= 2);
  await both.until('READY');
  await secondDeviceAsks(both);
  await stage.tap('Leave');
  await field.waitForURL('**/left');
  await both.until('CLIENT HAS LEFT');
  // Whoever comes next is confirmed anew.
  for (const id of ['location-confirmed', 'private']) assert.equal(await own.locator(`#${id}`).isChecked(), false, id);
  assert.equal((await lead.reload()).status(), 200);
  assert.equal((await own.goto('/clients')).status(), 200);
});
