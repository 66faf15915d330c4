// Every page of records, for everybody who may see it, in every window and appearance it is used in: it loads, it is quiet, axe finds
// nothing, nothing is cut off, stands on something else or scrolls sideways. The desk's states and the client's pages have files of
// their own.

import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { after, before, test as plain } from 'node:test';
import { accessibilityViolations, launch, openPage } from '../support/chromium.mjs';
import { ID, idsOf, signedInAs } from '../support/demo.mjs';
import { startHouse } from '../support/harness.mjs';
import { appear, APPEARANCES, faultsAt, keepPicture } from '../support/layout.mjs';

const SIZES = [[1280, 800], [1920, 1080], [768, 1024], [455, 768], [390, 844], [844, 390], [320, 568]];
const DESK = [[1280, 800], [455, 768]];
/** Of pages that are made of the parts of others. */
const FORMS = [[1280, 800], [390, 844], [320, 568]];
const PICTURES = ['1280x800-light', '390x844-light', '718x1046-print'];

/** Paths that were looked at, as they stand in the list of routes. */
const visited = new Set();
const faults = [];
/** Tests that did not come to their end: what they would have visited was not. */
const unfinished = new Set();
let looks = 0;

let house, browser, links;
before(async () => {
  house = await startHouse({ demo: true });
  links = await house.links();
  browser = await launch();
});
after(async () => {
  await browser?.close();
  await house?.stop();
});

/** Tests that leave no page open and no look behind them; those that failed are counted. */
function test(name, act) {
  plain(name, async (t) => {
    unfinished.add(name);
    faults.length = looks = 0;
    try {
      await act(t);
      unfinished.delete(name);
    } finally {
      for (const context of browser.contexts()) await context.close();
    }
  });
}

const signedIn = (role) => signedInAs(browser, house, role);

/** What is wrong with the page as it stands. */
async function look(page, name, sizes = SIZES) {
  faults.push(
    ...await faultsAt(page, name, sizes, ['light', 'forced', 'large', 'print'], { pictures: PICTURES }),
  );
  for (const appearance of ['dark', 'light']) {
    await appear(page, APPEARANCES[appearance]);
    if (appearance === 'dark') await keepPicture(page, `${name}-dark`);
    faults.push(...(await accessibilityViolations(page)).map((fault) => `${name} ${appearance}: ${fault}`));
  }
  faults.push(...page.troubles.map((line) => `${name}: ${line}`));
  page.troubles.length = 0;
  looks += 1;
}

/** Found by `look` since the last call; all of it is told at once. */
function sound(least) {
  assert.deepEqual(faults.splice(0), []);
  assert.ok(looks >= least, `${looks} looks`);
  looks = 0;
}

/** Opens each path of `paths`, named by the route that it belongs to, and looks at it. */
async function lookAt(page, who, paths, sizes = SIZES) {
  for (const [route, path = route, status = 200] of paths) {
    const response = await page.goto(path);
    assert.equal(response.status(), status, path);
    if (status !== 200) page.troubles = page.troubles.filter((line) => !line.includes(String(status)));
    visited.add(route);
    await look(page, `${who}${route.replaceAll(/[^a-z]+/g, '-').replace(/-$/, '')}${path.includes('?') ? '-2' : ''}`, sizes);
  }
}

test('nobody\'s pages', async () => {
  const page = await openPage(browser, house.origin);
  await lookAt(page, 'nobody', [['/'], ['/signin'], ['/enrol'], ['/signin/done'], ['/demo/{role}', '/demo/clinician'], ['/parts'], ['/none', '/none', 404]]);
  await lookAt(page, 'client', [['/left']]);
  sound(8);
});

test('a clinician\'s pages', async () => {
  const page = await signedIn('clinician');
  await lookAt(page, 'clinician', [['/clients'], ['/clients', '/clients?find=zz'], ['/clients/new'], ['/presets'], ['/presets/new'], ['/account'], ['/account/mail']]);
  await page.goto('/clients');
  const clients = await idsOf(page, 'table a[href^="/clients/"]');
  assert.ok(clients.length >= 2, `${clients.length} clients`);
  await page.goto(`/clients/${clients[0]}`);
  const [target] = await idsOf(page, 'table a[href^="/targets/"]');
  const [session] = await idsOf(page, 'table tr:last-child a[href^="/sessions/"]');
  await lookAt(page, 'clinician', [
    ['/clients/{client}', `/clients/${clients[0]}`], ['/clients/{client}/edit', `/clients/${clients[0]}/edit`],
    ['/clients/{client}/targets/new', `/clients/${clients[0]}/targets/new`], ['/targets/{target}', `/targets/${target}`],
    ['/targets/{target}/edit', `/targets/${target}/edit`], ['/sessions/{session}', `/sessions/${session}`],
    ['/sessions/{session}', `/sessions/${session}?print=notes`], ['/sessions/{session}/note', `/sessions/${session}/note`],
  ]);
  await lookAt(page, 'clinician', [
    ['/clients/{client}/safety-plan', `/clients/${clients[0]}/safety-plan`], ['/clients/{client}/safety-plan/edit', `/clients/${clients[0]}/safety-plan/edit`],
    ['/clients/{client}/safety-plan/copy', `/clients/${clients[0]}/safety-plan/copy`], ['/clients/{client}/plan', `/clients/${clients[0]}/plan`], ['/clients/{client}/clusters/new', `/clients/${clients[0]}/clusters/new`],
    ['/clients/{client}/clusters/{number}/edit', `/clients/${clients[0]}/clusters/1/edit`],
  ]);
  await lookAt(page, 'clinician', [
    ['/clients/{client}/steadying', `/clients/${clients[0]}/steadying`], ['/clients/{client}/steadying/edit', `/clients/${clients[0]}/steadying/edit`],
    ['/clients/{client}/events', `/clients/${clients[0]}/events`], ['/clients/{client}/events/new', `/clients/${clients[0]}/events/new`],
    ['/clients/{client}/reach', `/clients/${clients[0]}/reach`], ['/clients/{client}/resources/new', `/clients/${clients[0]}/resources/new`],
    ['/clients/{client}/resources/{number}/edit', `/clients/${clients[0]}/resources/1/edit`],
  ]);
  await lookAt(page, 'clinician', [
    ['/clients/{client}/comfort', `/clients/${clients[0]}/comfort`], ['/sessions/{session}/sets/{number}', `/sessions/${session}/sets/1`],
  ]);
  await formWithAFlag(page, clients[0]);
  await lookAt(page, 'clinician', [
    ['/clients/{client}/measures', `/clients/${clients[0]}/measures`], ['/clients/{client}/measures/new/{measure}', `/clients/${clients[0]}/measures/new/phq9`],
    ['/clients/{client}/episodes/{number}', `/clients/${clients[0]}/episodes/1`], ['/clients/{client}', `/clients/${clients[0]}`], ['/clients'],
  ]);
  await asked(page, clients[0]);
  await ownPreset(page);
  await refusedPreset(page);
  const open = ID.exec(links.desk)[0];
  await lookAt(page, 'clinician', [['/sessions/{session}/close', `/sessions/${open}/close`]]);
  await lookAt(page, 'clinician', [['/sessions/{session}/desk', `/sessions/${open}/desk`]], DESK);
  await rehearse(page);
  sound(45);
});

/** Asks for a form, and looks at the pages around it. */
async function asked(page, client) {
  const path = `/clients/${client}/askings`;
  await page.goto(path);
  const open = page.getByRole('button', { name: 'Take this asking back' });
  if (await open.count() > 0) await open.click();
  await lookAt(page, 'clinician', [['/clients/{client}/askings/new', `${path}/new`], ['/clients/{client}/askings/schedule', `${path}/schedule`]], FORMS);
  await page.goto(`${path}/new`);
  for (const name of ['pcl5', 'phq9', 'gad7']) await page.locator(`[name="${name}"]`).uncheck();
  await page.locator('[name="who5"]').check();
  for (const name of ['from', 'due']) await page.locator(`[name="${name}"]`).fill(new Date(Date.now() + 40 * 86_400_000).toISOString().slice(0, 10));
  await page.getByRole('button', { name: 'Ask, and make the link' }).click();
  await page.getByRole('button', { name: 'Make a new link' }).waitFor();
  await lookAt(page, 'clinician', [['/clients/{client}/askings', path]], FORMS);
}

/** Enters a form by keys alone, one an item, which raises a flag; and looks at its page. */
async function formWithAFlag(page, client) {
  await page.goto(`/clients/${client}/measures/new/phq9`);
  await page.locator('[name="item_1"]').first().focus();
  await page.keyboard.press('9');
  assert.equal(await page.locator('[name="item_1"]:checked').count(), 0, '9 is no answer');
  for (const key of ['2', '1', '-', 'Backspace', '3', '0', '1', '2', '1', '0', '1']) await page.keyboard.press(key);
  assert.deepEqual(await page.locator('.items :checked').evaluateAll((all) => all.map(({ value }) => value)), ['2', '1', '3', '0', '1', '2', '1', '0', '1']);
  await page.keyboard.press('Enter');
  await page.getByText('was answered with 1 or more').waitFor();
  const path = new URL(page.url()).pathname;
  await lookAt(page, 'clinician', [['/clients/{client}/measures/{number}', path]]);
}

/** Makes a preset of one's own by the form, and looks at its page. */
async function ownPreset(page) {
  await page.goto('/presets/new');
  for (const [label, value] of [['Name', 'Evening pace'], ['Rate, Hz', '0.9'], ['Width, degrees', '16'], ['Length, cycles', '30']]) await page.getByLabel(label).fill(value);
  for (const label of ['your own', 'Processing: work on a target', 'Eyes: the moving dot']) await page.getByLabel(label).check();
  await page.getByRole('button', { name: 'Save' }).click();
  await page.waitForURL('**/presets');
  const [preset] = await idsOf(page, 'a[href^="/presets/"][href$="/edit"]');
  await lookAt(page, 'clinician', [['/presets/{preset}/edit', `/presets/${preset}/edit`]]);
}

/** What a form looks like that was not saved. */
async function refusedPreset(page) {
  await page.goto('/presets/new');
  await page.getByLabel('Rate, Hz').fill('9');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('The rate must be between 0.3 and 2 Hz.').first().waitFor();
  page.troubles = page.troubles.filter((line) => !line.includes('422'));
  await look(page, 'clinician-preset-refused');
}

/** Opens a rehearsal by its button, and looks at what says so. */
async function rehearse(page) {
  await page.goto('/clients');
  await page.getByRole('button', { name: 'Rehearse' }).click();
  await page.waitForURL('**/desk');
  const session = ID.exec(page.url())[0];
  await page.getByText('REHEARSAL', { exact: true }).waitFor();
  await look(page, 'clinician-rehearsal-desk', DESK);
  await lookAt(page, 'clinician-rehearsal', [['/sessions/{session}', `/sessions/${session}`]]);
  await page.goto('/clients');
  await page.getByRole('link', { name: 'Rehearsals so far' }).click();
  await look(page, 'clinician-rehearsal-record');
}

test('the lead\'s and the administrator\'s pages', async () => {
  const lead = await signedIn('lead');
  await lead.goto('/practice/caseload');
  const [client] = await idsOf(lead, 'table a[href^="/practice/clients/"]');
  await lookAt(lead, 'lead', [['/practice'], ['/practice/caseload'], ['/practice/clients/{client}', `/practice/clients/${client}`], ['/account'], ['/handover'], ['/replacements'], ['/signin/again']]);
  await lookAt(lead, 'lead', [['/practice/wordings'], ['/practice/wordings/{measure}', '/practice/wordings/pcl5'], ['/practice/wordings/{measure}', '/practice/wordings/iesr']], FORMS);
  const administrator = await signedIn('administrator');
  const [member] = await idsOf(administrator, 'a[href^="/members/"]');
  await lookAt(administrator, 'administrator', [['/members'], ['/members/{member}/end', `/members/${member}/end`], ['/account'], ['/practice/settings']]);
  await lookAt(administrator, 'administrator', [['/practice/settings/measures']], FORMS);
  await lookAt(administrator, 'administrator', [
    ['/members/{member}/roles', `/members/${member}/roles`], ['/members/{member}/passkey', `/members/${member}/passkey`], ['/handover', `/handover?from=${member}`],
  ]);
  sound(17);
});

test('no page is left out: every address that shows one was looked at', async (t) => {
  unfinished.delete(t.name);
  if (unfinished.size > 0) return t.skip(`not all was looked at: ${[...unfinished].join('; ')}`);
  const source = new URL('../../../server/portal/src/', import.meta.url);
  const files = (await readdir(source, { recursive: true })).filter((name) => name.endsWith('.rs'));
  const text = (await Promise.all(files.map((name) => readFile(new URL(name, source), 'utf8')))).join('\n');
  const routes = [...text.matchAll(/\.get\(\s*"(\/[^"]*)",\s*(?:Rule::|KEEPERS|Anybody|clinician|lead|administrator)/g)].map((match) => match[1]);
  assert.ok(routes.length >= 30, `${routes.length} routes`);
  // A client's pages are those of stage.test.mjs and forms.test.mjs.
  const elsewhere = ['/j', '/stage', '/q', '/q/forms', '/q/thanks'];
  const noPages = ['/livez', '/readyz', '/assets/{hash}/{name}', '/sessions/{session}/entries', '/sessions/{session}/closing', '/stage/socket', '/sessions/{session}/desk/socket'];
  assert.deepEqual(routes.filter((route) => !visited.has(route) && ![...elsewhere, ...noPages].includes(route)), []);
});
