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

test('a plan is put in order by keyboard, and by drawing a row to its place', async () => {
  await page.goto('/clients');
  await page.locator('#list tbody a').first().click();
  await page.waitForURL(/clients\/[0-9a-f-]{36}$/);
  const client = page.url();
  for (const label of ['the towpath', 'the lock']) {
    await page.goto(`${client}/targets/new`);
    await page.locator('#label').fill(label);
    await page.getByLabel('Past: a memory').check();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.waitForURL(/targets\/[0-9a-f-]{36}/);
  }
  await page.goto(`${client}/plan`);
  const order = () => page.locator('table[data-order] th a').allTextContents();
  const before = await order();
  const last = before.length - 1;
  assert.deepEqual(before.slice(-2), ['the towpath', 'the lock']);

  await page.getByRole('button', { name: 'Up the lock' }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/plan(\?.*)?#target-/);
  assert.deepEqual((await order()).slice(-2), ['the lock', 'the towpath']);

  // From the last place to the first, and Escape on the way leaves all as it is.
  const row = (at) => page.locator('table[data-order] tbody tr').nth(at);
  const middle = async (at) => {
    const box = await row(at).boundingBox();
    return [box.x + 8, box.y + box.height / 2];
  };
  await page.locator('[data-order-hint]').waitFor();
  for (const stays of [true, false]) {
    await row(last).scrollIntoViewIfNeeded();
    await page.mouse.move(...(await middle(last)));
    await page.mouse.down();
    const [x, y] = await middle(0);
    await page.mouse.move(x, y - 6, { steps: 6 });
    assert.equal(await page.locator('tr.drawn').count(), 1);
    if (stays) await page.keyboard.press('Escape');
    await page.mouse.up();
    if (stays) assert.deepEqual((await order()).slice(-2), ['the lock', 'the towpath']);
    else await page.waitForFunction(() => document.querySelector('table[data-order] th a')?.textContent === 'the towpath');
  }
});
