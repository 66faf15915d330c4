// What members do on the pages of records, as they would: by links, fields and buttons.

import { watchTroubles } from './chromium.mjs';

/** Makes a passkey with an invitation's link; ends where the portal leads, signed in. */
export async function enrol(page, link, label = 'office laptop') {
  await page.goto(link);
  await page.getByLabel('Name of this passkey').fill(label);
  await page.getByRole('button', { name: 'Make a passkey' }).click();
  await page.waitForURL((url) => url.pathname !== '/enrol');
}

/** Signs in with a passkey that the page's device holds. */
export async function signIn(page) {
  await page.goto('/signin');
  await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/signin'));
}

export async function signOut(page) {
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.waitForURL('**/signin**');
}

/** Invites somebody as an administrator. @returns the link that is shown once */
export async function invite(page, name, roles) {
  await page.goto('/members');
  await page.getByLabel('Name', { exact: true }).fill(name);
  for (const role of roles) await page.getByRole('checkbox', { name: role }).check();
  await page.getByRole('button', { name: 'Make an invitation' }).click();
  return page.getByLabel('Link').inputValue();
}

/**
 * Opens the closing list from the desk by `open`, which comes to its link and follows it.
 *
 * @returns the list's page, a tab of its own, with its `troubles` as `openPage` has them
 */
export async function closingList(desk, open = () => toTheList(desk)) {
  const [opened] = await Promise.all([desk.waitForEvent('popup'), open()]);
  const list = watchTroubles(opened, new URL(desk.url()).origin);
  await list.waitForURL('**/close');
  return list;
}

/** From the desk's closing to its list, which is a page. */
async function toTheList(desk) {
  const link = desk.getByRole('link', { name: 'closing list' });
  if (!(await link.isVisible())) await desk.keyboard.press('#');
  // What the record says comes in above the link.
  await desk.waitForFunction(() => !['', 'The record is being read.'].includes(document.querySelector('[data-part="closing-status"]').textContent));
  await link.click();
}

/** Fills a form of records: texts by the field's name, choices (`radio` or `select`) by their value. */
export async function fill(page, fields) {
  for (const [name, value] of Object.entries(fields)) {
    const field = page.locator(`[name="${name}"]`);
    if (await field.first().getAttribute('type') === 'radio') await page.locator(`[name="${name}"][value="${value}"]`).check();
    else await field.fill(value);
  }
}

/** Closes the session of the desk on this page by its list. @returns the list's page, which has become the session's */
export async function closeSession(desk, fields) {
  const list = await closingList(desk);
  await fill(list, fields);
  await list.getByRole('button', { name: 'Close the session' }).click();
  await list.waitForURL(/\/sessions\/[0-9a-f-]{36}$/);
  return list;
}

/** Opens a record. @returns the client's id */
export async function newClient(page, fields) {
  await page.goto('/clients');
  await page.getByRole('link', { name: 'New client' }).click();
  await fill(page, fields);
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL(/\/clients\/[0-9a-f-]{36}$/);
  return lastPart(page);
}

/** Adds a target, from the client's page. @returns the target's id */
export async function newTarget(page, fields) {
  await page.getByRole('link', { name: 'Add a target' }).click();
  await fill(page, fields);
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL(/\/targets\/[0-9a-f-]{36}$/);
  return lastPart(page);
}

/** Fills the comfort sheet of a client. */
export async function fillComfort(page, client, fields) {
  await page.goto(`/clients/${client}/comfort`);
  await fill(page, fields);
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL((url) => !url.pathname.endsWith('/comfort'));
}

/** Starts a session from the client's page and ends at the desk. @returns the session's id */
export async function startSession(page, client, target) {
  await page.goto(`/clients/${client}`);
  if (target) await page.getByLabel('Target of this session').selectOption(target);
  await page.getByRole('button', { name: /^Start session/ }).click();
  await page.waitForURL(/\/sessions\/[0-9a-f-]{36}\/desk$/);
  return new URL(page.url()).pathname.split('/')[2];
}

const lastPart = (page) => new URL(page.url()).pathname.split('/').at(-1);
