// Habits of good software, as a browser has them: "Saved" is said once, numbers and links are copied by a button.

import assert from 'node:assert/strict';
import { after, afterEach, before, test } from 'node:test';
import { accessibilityViolations } from './support/chromium.mjs';
import { openScene } from './support/scene.mjs';

let scene;
let page;
before(async () => {
  scene = await openScene();
  const desk = await scene.openDesk();
  page = await desk.page.context().newPage();
});
afterEach(() => page?.context().clearPermissions());
after(() => scene?.close());

const copy = (name) => page.getByRole('button', { name });

test('what was kept is said once, with its time', async () => {
  await page.goto('/presets/new');
  for (const [label, value] of [['Name', 'Evening pace'], ['Rate, Hz', '0.9'], ['Width, degrees', '16'], ['Length, cycles', '30']]) await page.getByLabel(label).fill(value);
  for (const label of ['your own', 'Processing: work on a target', 'Eyes: the moving dot']) await page.getByLabel(label).check();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText(/^Saved \d\d:\d\d$/).waitFor();
  await page.waitForFunction(() => location.search === '');
  assert.deepEqual(await accessibilityViolations(page), []);
  await page.reload();
  await page.getByRole('heading', { name: 'Presets', level: 1 }).waitFor();
  assert.equal(await page.getByText(/^Saved /).count(), 0);
});

test('a number to call is copied', async () => {
  await page.goto('/clients');
  await page.locator('#list tbody th a').first().click();
  const number = await page.locator('#phone').textContent();
  const button = copy('Copy the call-back number');
  assert.ok((await button.boundingBox()).height >= 44, 'large enough for a finger');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await button.click();
  await page.getByText('Copied', { exact: true }).waitFor();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), number);
  assert.deepEqual(await accessibilityViolations(page), []);
});

test('where the clipboard is closed, the text is selected', async () => {
  await page.evaluate(() => { navigator.clipboard.writeText = () => Promise.reject(new Error('closed')); });
  await copy('Copy the call-back number').click();
  await page.getByText('Selected: copy it by hand').waitFor();
  assert.equal(await page.evaluate(() => getSelection().toString()), await page.locator('#phone').textContent());
});

test('a link to be sent is copied whole', async () => {
  await page.goto('/account');
  await page.getByRole('button', { name: 'Make a link for another device' }).click();
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await copy('Copy the link').click();
  await page.getByText('Copied', { exact: true }).waitFor();
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), await page.locator('#link').inputValue());
});

test('the title of a refused form says so', async () => {
  await page.goto('/clients/new');
  await page.locator('#phone').fill('no number');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForFunction(() => document.activeElement?.getAttribute('role') === 'alert');
  assert.match(await page.title(), /^Not saved: New client · /);
});

test('what came back unsaved is asked about before it is left', async () => {
  const asked = [];
  page.on('dialog', (dialog) => { asked.push(dialog.type()); dialog.accept(); });
  // A browser asks only where somebody did something.
  await page.locator('h1').click();
  await page.goto('/clients');
  assert.deepEqual(asked, ['beforeunload']);
});
