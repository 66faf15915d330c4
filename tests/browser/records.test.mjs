// What pages of records do better with a script: found as one types, asked before a changed form is left, read from what was refused.

import assert from 'node:assert/strict';
import { after, afterEach, before, test } from 'node:test';
import { openScene } from './support/scene.mjs';

let scene;
let page;
before(async () => {
  scene = await openScene();
  const desk = await scene.openDesk();
  page = await desk.page.context().newPage();
});
afterEach(() => page?.context().setOffline(false));
after(() => scene?.close());

const field = () => page.getByLabel('Find by name or record number');

test('a client is found as one types, and the address says so', async () => {
  await page.goto('/clients');
  await page.locator('#list tbody tr').waitFor();
  await field().pressSequentially('zzz');
  await page.getByText('None of the 1 records fits “zzz”.').waitFor();
  assert.match(page.url(), /find=zzz/);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'find', 'one types on');
  for (let i = 0; i < 3; i++) await page.keyboard.press('Backspace');
  await page.locator('#list tbody tr').waitFor();
});

test('a line that is gone is not passed over', async () => {
  await page.context().setOffline(true);
  await field().pressSequentially('q');
  await page.locator('#list').waitFor({ state: 'detached' });
});

test('a changed form asks once before it is left, an unchanged one does not', async () => {
  const asked = [];
  page.on('dialog', (dialog) => { asked.push(dialog.type()); dialog.accept(); });
  await page.goto('/clients/new');
  await page.goto('/clients');
  assert.deepEqual(asked, []);
  await page.goto('/clients/new');
  await page.locator('#name').click();
  await page.keyboard.type('Somebody');
  await page.goto('/clients');
  assert.deepEqual(asked, ['beforeunload']);
});

test('a refused form is read from its summary', async () => {
  await page.goto('/clients/new');
  await page.locator('#phone').fill('no number');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'alert');
});
