// A client fills in forms on a phone, by a link, between sessions; what was chosen is kept; a flag reaches a person and is closed.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { accessibilityViolations, launch, openPage } from './support/chromium.mjs';
import { signedInAs } from './support/demo.mjs';
import { startHouse } from './support/harness.mjs';
import { appear, APPEARANCES, faultsAt } from './support/layout.mjs';
import { newClient } from './support/practice.mjs';

const PHONE = { width: 390, height: 844, hasTouch: true, isMobile: true };
const SIZES = [[390, 844], [320, 568], [844, 390], [455, 768], [1280, 800]];

let house, browser, clinician, client, link;
before(async () => {
  house = await startHouse({ demo: true });
  browser = await launch();
  clinician = await signedInAs(browser, house, 'clinician');
  client = await newClient(clinician, { name: 'Rosalind Amberley', phone: '020 7946 0111', seizures: 'no', eye_condition: 'no' });
});
after(async () => {
  await browser?.close();
  await house?.stop();
});

/** Asks a client for these forms from today on; each form may be answered once in its own time. @returns the link */
async function ask(forms, whom = client) {
  await clinician.goto(`/clients/${whom}/askings`);
  const open = clinician.getByRole('button', { name: 'Take this asking back' });
  if (await open.count() > 0) await open.click();
  await clinician.goto(`/clients/${whom}/askings/new`);
  for (const form of forms) await clinician.locator(`[name="${form}"]`).check();
  const today = await clinician.evaluate(() => new Date().toLocaleDateString('sv', { timeZone: 'Europe/London' }));
  for (const name of ['from', 'due']) await clinician.locator(`[name="${name}"]`).fill(today);
  await clinician.getByRole('button', { name: 'Ask, and make the link' }).click();
  await clinician.getByRole('button', { name: 'Make a new link' }).waitFor();
  return clinician.locator('#link').textContent();
}

/** A phone on which taps are counted. */
async function phoneAt(address) {
  const page = await openPage(browser, house.origin, PHONE);
  await page.goto(address);
  page.taps = 0;
  page.press = async (locator) => {
    page.taps += 1;
    await locator.tap();
  };
  return page;
}

const answer = (page, item, value) => page.locator(`#item_${item} label`, { has: page.locator(`[value="${value}"]`) });

async function sound(page, name) {
  const faults = await faultsAt(page, name, SIZES, ['light', 'forced', 'large']);
  await appear(page, APPEARANCES.dark);
  assert.deepEqual([...faults, ...(await accessibilityViolations(page)), ...page.troubles], []);
}

test('twenty questions are answered with at most 22 taps, from the link to what is said at the end', async () => {
  link = await ask(['pcl5']);
  const phone = await phoneAt(link);
  assert.equal(new URL(phone.url()).hash, '', 'the address does not keep the link');
  await sound(phone, 'open');
  await phone.press(phone.getByRole('button', { name: 'Open' }));
  await phone.waitForURL('**/q/forms');
  await phone.getByText('On weekdays, from nine to five.').waitFor();
  await phone.getByText('night line').waitFor();
  await sound(phone, 'first question');
  for (let item = 1; item <= 20; item++) {
    await phone.press(answer(phone, item, item % 4));
    if (item === 7) {
      await phone.getByText('What you chose is kept.').waitFor();
      await phone.reload();
      await phone.locator('#item_8').waitFor();
      assert.equal(await phone.locator('#place').textContent(), '8 of 20', 'it goes on where it was left');
      await sound(phone, 'eighth question');
    }
  }
  await phone.getByText('That was the last one.').waitFor();
  await phone.press(phone.getByRole('button', { name: 'Send', exact: true }));
  await phone.waitForURL('**/q/thanks');
  await phone.getByText('night line').waitFor();
  assert.ok(phone.taps <= 22, `${phone.taps} taps`);
  await sound(phone, 'thanks');
  await clinician.goto(`/clients/${client}/measures`);
  // 5 times 1 + 2 + 3 + 0.
  const row = clinician.getByRole('row').filter({ hasText: 'PCL-5' }).last();
  assert.ok((await row.locator('th, td').allTextContents()).some((cell) => /^30\b/.test(cell.trim())), await row.textContent());
});

test('an answer about death reaches a person, and is closed in one action', async () => {
  link = await ask(['phq9']);
  const phone = await phoneAt(link);
  await phone.press(phone.getByRole('button', { name: 'Open' }));
  await phone.waitForURL('**/q/forms');
  for (let item = 1; item <= 9; item++) await phone.press(answer(phone, item, item === 9 ? 1 : 0));
  await phone.press(phone.getByRole('button', { name: 'Send', exact: true }));
  await phone.waitForURL('**/q/thanks');
  await phone.getByText('night line').waitFor();
  await clinician.goto('/clients');
  await clinician.getByText('PHQ-9, item 9').waitFor();
  await clinician.getByRole('link', { name: 'Look, and write it down' }).first().click();
  await clinician.getByText('was answered with 1 or more').waitFor();
  assert.equal(await clinician.getByRole('button', { name: 'Take this form back' }).count(), 0, 'not while it is open');
  await clinician.getByRole('button', { name: 'Known, looked at today, the plan stands' }).click();
  await clinician.getByText('known, looked at today, the plan stands').waitFor();
  await clinician.getByRole('button', { name: 'Take this form back' }).waitFor();
});

test('all of it goes by keyboard, on one page too, and what is missing is named', async () => {
  link = await ask(['gad7']);
  const page = await openPage(browser, house.origin);
  await page.goto(link);
  await page.getByRole('button', { name: 'Open' }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/q/forms');
  await page.locator('#item_1 input').first().focus();
  await page.keyboard.press('Space');
  await page.waitForFunction(() => document.activeElement?.name === 'item_2', undefined, { timeout: 5000 });
  await page.keyboard.press('ArrowDown');
  assert.equal(await page.locator('#place').textContent(), '2 of 7', 'an arrow chooses and does not go on');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.name === 'item_3');
  await page.getByRole('button', { name: 'Show all at once' }).focus();
  await page.keyboard.press('Enter');
  await page.locator('#item_7').waitFor();
  await sound(page, 'all questions');
  await page.locator('#item_7 input').first().focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Send', exact: true }).focus();
  assert.equal(new URL(page.url()).pathname, '/q/forms', 'Enter on an answer sends nothing');
  await page.keyboard.press('Enter');
  await page.getByText('Not sent yet.').waitFor();
  assert.equal(await page.title(), 'Not sent yet: Questions');
  assert.equal(await page.locator('fieldset .error').count(), 5);
  assert.equal(await page.evaluate(() => document.activeElement?.name), 'item_3', 'at the first that is missing');
  page.troubles = page.troubles.filter((line) => !line.includes('422'));
  await sound(page, 'incomplete');
  for (let item = 3; item <= 7; item++) {
    await page.locator(`#item_${item} [value="-"]`).focus();
    await page.keyboard.press('Space');
  }
  await page.getByRole('button', { name: 'Send', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/q/thanks');
});

test('what was passed over is come back to, and a client may decline', async () => {
  link = await ask(['who5']);
  const phone = await phoneAt(link);
  await phone.press(phone.getByRole('button', { name: 'Open' }));
  await phone.waitForURL('**/q/forms');
  await phone.press(answer(phone, 1, 2));
  await phone.press(phone.getByRole('button', { name: 'Next' }));
  for (let item = 3; item <= 5; item++) await phone.press(answer(phone, item, 2));
  await phone.getByText('2 of 5. Please answer this one').waitFor();
  await sound(phone, 'passed over');
  await phone.press(answer(phone, 2, 2));
  await phone.press(phone.getByRole('button', { name: 'Next' }));
  await phone.press(phone.getByText('I would rather not answer'));
  await sound(phone, 'declining');
  await phone.press(phone.getByRole('button', { name: 'Yes, do not answer' }));
  await phone.getByText('You chose not to answer.').waitFor();
  await clinician.goto(`/clients/${client}/askings`);
  await clinician.getByText('declined by the client').waitFor();
});

test('a line that is gone loses nothing: it is said, tried again, and nothing is sent meanwhile', async () => {
  link = await ask(['who5']);
  const phone = await phoneAt(link);
  await phone.press(phone.getByRole('button', { name: 'Open' }));
  await phone.waitForURL('**/q/forms');
  for (let item = 1; item <= 4; item++) await phone.press(answer(phone, item, 3));
  await phone.getByText('What you chose is kept.').waitFor();
  await phone.context().setOffline(true);
  await phone.press(answer(phone, 5, 4));
  await phone.getByText('not kept yet').waitFor();
  await phone.press(phone.getByRole('button', { name: 'Send', exact: true }));
  await phone.getByText('You seem to be offline.').waitFor();
  assert.equal(new URL(phone.url()).pathname, '/q/forms');
  await phone.context().setOffline(false);
  await phone.getByText('What you chose is kept.').waitFor();
  await phone.reload();
  assert.equal(await phone.locator('#item_5 input:checked').inputValue(), '4', 'it came through');
  await phone.press(phone.getByRole('button', { name: 'Send', exact: true }));
  await phone.waitForURL('**/q/thanks');
});

test('two pages of one form do not overwrite each other, and a lost answer is no other page', async () => {
  const other = await newClient(clinician, { name: 'Silas Corrigan', phone: '020 7946 0222', seizures: 'no', eye_condition: 'no' });
  link = await ask(['gad7'], other);
  const phone = await phoneAt(link);
  await phone.press(phone.getByRole('button', { name: 'Open' }));
  await phone.waitForURL('**/q/forms');
  // The first sending reaches the portal, and its answer does not come back.
  let lost = 0;
  await phone.route('**/q/draft', async (route) => {
    await route.fetch();
    lost += 1;
    await (lost === 1 ? route.abort() : route.continue());
  });
  await phone.press(answer(phone, 1, 3));
  await phone.getByText('not kept yet').waitFor();
  await phone.press(answer(phone, 2, 3));
  await phone.getByText('What you chose is kept.').waitFor();
  await phone.unroute('**/q/draft');
  const tablet = await phoneAt(link);
  await tablet.press(tablet.getByRole('button', { name: 'Open' }));
  await tablet.waitForURL('**/q/forms');
  assert.equal(await tablet.locator('#place').textContent(), '3 of 7', 'it goes on where the phone was');
  for (let item = 3; item <= 7; item++) await tablet.press(answer(tablet, item, 0));
  await tablet.getByText('What you chose is kept.').waitFor();
  phone.troubles = [];
  await phone.press(answer(phone, 3, 3));
  await phone.getByText('You went on with this on another page').waitFor();
  await tablet.press(tablet.getByRole('button', { name: 'Send', exact: true }));
  await tablet.waitForURL('**/q/thanks');
  await clinician.goto(`/clients/${other}/measures`);
  const row = clinician.getByRole('row').filter({ hasText: 'GAD-7' }).last();
  assert.ok((await row.locator('th, td').allTextContents()).some((cell) => /^6\b/.test(cell.trim())), await row.textContent());
});
