// Every page, for everybody who may see it, at the sizes it is used in: it loads, it is quiet, axe finds nothing, nothing
// scrolls sideways. Pictures of all go to out/.

import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { after, before, test as plain } from 'node:test';
import { accessibilityViolations, launch, openPage, takePictures } from './support/chromium.mjs';
import { ID, idsOf, signedInAs } from './support/demo.mjs';
import { Desk } from './support/desk.mjs';
import { startHouse } from './support/harness.mjs';
import { newClient, startSession } from './support/practice.mjs';
import { CLIENT } from './support/scene.mjs';
import { Stage } from './support/stage.mjs';

const RECORDS = [[1280, 800], [390, 844]];
const DESK = [[1280, 800], [455, 768]];
// Upright and turned sideways.
const STAGE = [[390, 844], [320, 568], [844, 390], [568, 320]];
// WCAG 2.2, 1.4.10 (reflow): no scrolling in two dimensions at 320 CSS px; the others are sizes that pages are used in.
const WIDTHS = [1280, 455, 390, 320];

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

/** What is wrong with the page as it stands, after a look at its reflow, its accessibility and its troubles; takes pictures. */
async function look(page, name, sizes) {
  const usual = page.viewportSize();
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 800 });
    const over = await page.evaluate(() => document.scrollingElement.scrollWidth - innerWidth);
    if (over > 0) faults.push(`${name} at ${width}: ${over} px too wide`);
  }
  await takePictures(page, name, sizes);
  for (const [width, height] of sizes === STAGE ? STAGE : []) {
    await page.setViewportSize({ width, height });
    faults.push(...(await page.evaluate(covered)).map((what) => `${name} at ${width}x${height}: "${what}" lies under something`));
  }
  await page.setViewportSize(usual);
  faults.push(...(await accessibilityViolations(page)).map((fault) => `${name}: ${fault}`), ...page.troubles.map((line) => `${name}: ${line}`));
  page.troubles.length = 0;
  looks += 1;
}

/** In the page: what is there to be pressed, and cannot be, once it was scrolled to. */
function covered() {
  const controls = [...document.querySelectorAll('button, input, summary, main a')].filter((one) => one.checkVisibility({ visibilityProperty: true }));
  return controls.filter((one) => {
    one.scrollIntoView({ block: 'nearest' });
    const { x, y, width, height } = one.getBoundingClientRect();
    return !one.contains(document.elementFromPoint(x + width / 2, y + height / 2));
  }).map((one) => one.textContent || one.id);
}

/** Found by `look` since the last call; all of it is told at once. */
function sound(least) {
  assert.deepEqual(faults.splice(0), []);
  assert.ok(looks >= least, `${looks} looks`);
  looks = 0;
}

/** Opens each path of `paths`, named by the route that it belongs to, and looks at it. */
async function lookAt(page, who, paths, sizes = RECORDS) {
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
  await lookAt(page, 'client', [['/j'], ['/left']], STAGE);
  sound(9);
});

test('a clinician\'s pages', async () => {
  const page = await signedIn('clinician');
  await lookAt(page, 'clinician', [['/clients'], ['/clients', '/clients?find=zz'], ['/clients/new'], ['/presets'], ['/presets/new'], ['/account']]);
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
    ['/clients/{client}/comfort', `/clients/${clients[0]}/comfort`], ['/sessions/{session}/sets/{number}', `/sessions/${session}/sets/1`],
  ]);
  await ownPreset(page);
  await refusedPreset(page);
  const open = ID.exec(links.desk)[0];
  await lookAt(page, 'clinician', [['/sessions/{session}/close', `/sessions/${open}/close`]]);
  await lookAt(page, 'clinician', [['/sessions/{session}/desk', `/sessions/${open}/desk`]], DESK);
  await rehearse(page);
  sound(23);
});

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
  await look(page, 'clinician-preset-refused', RECORDS);
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
  await look(page, 'clinician-rehearsal-record', RECORDS);
}

test('the lead\'s and the administrator\'s pages', async () => {
  const lead = await signedIn('lead');
  const [client] = await idsOf(lead, 'table a[href^="/practice/clients/"]');
  await lookAt(lead, 'lead', [['/practice/caseload'], ['/practice/clients/{client}', `/practice/clients/${client}`], ['/account'], ['/handover'], ['/replacements'], ['/signin/again']]);
  const administrator = await signedIn('administrator');
  const [member] = await idsOf(administrator, 'a[href^="/members/"]');
  await lookAt(administrator, 'administrator', [['/members'], ['/members/{member}/end', `/members/${member}/end`], ['/account'], ['/practice/settings']]);
  await lookAt(administrator, 'administrator', [
    ['/members/{member}/roles', `/members/${member}/roles`], ['/members/{member}/passkey', `/members/${member}/passkey`], ['/handover', `/handover?from=${member}`],
  ]);
  sound(13);
});

/** A desk and a stage of a new session, of a client of their own. */
async function bothSides(options) {
  const page = await signedIn('clinician');
  await startSession(page, await newClient(page, CLIENT));
  const desk = new Desk(page);
  await desk.until('WAITING');
  return { desk, stage: new Stage(await openPage(browser, house.origin, { width: 390, height: 844, ...options })) };
}

/** What the network carries for a page and all that it asks for, bytes, bodies as they were sent. */
async function weigh(page, path) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Network.enable');
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  const carried = new Map();
  const encodings = new Set();
  cdp.on('Network.responseReceived', ({ requestId, response }) => {
    if (!response.url.startsWith('http')) return;
    carried.set(requestId, 0);
    encodings.add(response.headers['content-encoding']);
  });
  cdp.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => { if (carried.has(requestId)) carried.set(requestId, encodedDataLength); });
  await page.goto(path, { waitUntil: 'networkidle' });
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: false });
  return { bytes: [...carried.values()].reduce((sum, one) => sum + one, 0), requests: carried.size, encodings: [...encodings] };
}

test('the stage weighs 40 kB at most, the desk 60 kB, everything included', async (t) => {
  const { desk, stage } = await bothSides();
  const minted = await desk.mint();
  const join = await weigh(stage.page, minted.link);
  await stage.join(minted);
  const room = await weigh(stage.page, '/stage');
  const member = await signedIn('clinician');
  const live = await weigh(member, new URL(desk.page.url()).pathname);
  t.diagnostic(JSON.stringify({ join, room, live }));
  for (const { requests, encodings } of [join, room, live]) assert.ok(requests >= 3 && encodings.includes('gzip'), 'page, style and script, compressed');
  assert.ok(join.bytes + room.bytes <= 40_000, `${join.bytes} + ${room.bytes}`);
  assert.ok(live.bytes <= 60_000, `${live.bytes}`);
  await stage.tap('Leave');
});

test('the client\'s pages, from the check to the end of a set', async () => {
  const { desk, stage } = await bothSides();
  await stage.join(await desk.mint());
  visited.add('/stage');
  const check = [['Start'], ['Done'], ['It fits'], ['Close, like a phone in my hand'], [() => stage.sides()], ['Skip'], ['Skip']];
  for (const [step, answers] of check.entries()) {
    await look(stage.page, `stage-check-${step}`, STAGE);
    for (const answer of answers) await (answer instanceof Function ? answer() : stage.tap(answer));
    if (await stage.heading() === 'Please wait') break;
  }
  await stage.until('Please wait');
  await look(stage.page, 'stage-waiting', STAGE);
  await takePictures(desk.page, 'desk-somebody-waits', DESK);
  await desk.admit({ location: 'Room 4, Quay Street 2', callBack: '+44 20 7946 0000' });
  await stage.until('You are in');
  await look(stage.page, 'stage-ready', STAGE);
  await look(desk.page, 'desk-ready', DESK);
  await desk.sight();
  await desk.cycles(60);
  await desk.start();
  await desk.untilCycle(2);
  // A change of size would end the set: the picture is taken as it is.
  await takePictures(stage.page, 'stage-running', [[390, 844]]);
  assert.deepEqual(await accessibilityViolations(stage.page), []);
  await takePictures(desk.page, 'desk-running', DESK);
  await desk.press('e');
  await desk.untilOver();
  await desk.note({ words: 'the water is further away', mark: 'changing', sud: 6, voc: 3 });
  await look(stage.page, 'stage-between', STAGE);
  await desk.start();
  await desk.untilCycle(1);
  await stage.tapAnywhere();
  await desk.until('STOPPED BY CLIENT');
  await look(stage.page, 'stage-stopped', STAGE);
  await look(desk.page, 'desk-stopped', DESK);
  await helpCoversNothing(stage);
  for (const [key, panel] of [['m', 'card'], ['o', 'presets'], ['?', 'keys'], ['g', 'target'], ['s', 'pad']]) {
    await desk.press(key);
    await look(desk.page, `desk-${panel}`, DESK);
  }
  await desk.press('s', 'm', 'm');
  await stage.page.getByText('Help').click();
  await stage.tap('Lighter page');
  await look(stage.page, 'stage-lighter', STAGE);
  await stage.tap('Leave');
  await stage.page.waitForURL('**/left');
  sound(16);
});

/** On a page with "I am ready": Help leaves it in sight, a second tap closes it, and so does anything new. */
async function helpCoversNothing({ page }) {
  const help = page.getByText('Help', { exact: true });
  const open = () => page.locator('#help').evaluate((one) => one.open);
  const inSight = () => page.evaluate(() => {
    const button = document.querySelector('main .main');
    const { x, y, width, height, bottom } = button.getBoundingClientRect();
    return button.contains(document.elementFromPoint(x + width / 2, y + height / 2)) && y >= 0 && bottom <= innerHeight;
  });
  const usual = page.viewportSize();
  for (const [width, height] of STAGE) {
    await page.setViewportSize({ width, height });
    await help.click();
    assert.equal(await open(), true);
    assert.ok(await inSight(), `Help covers "I am ready" at ${width}x${height}`);
    await page.screenshot({ path: new URL(`out/stage-help-${width}.png`, import.meta.url).pathname });
    faults.push(...(await page.evaluate(covered)).map((what) => `Help at ${width}x${height}: "${what}" lies under something`));
    await help.click();
    assert.equal(await open(), false, 'a second tap');
  }
  await page.setViewportSize(usual);
  await help.click();
  await page.evaluate(() => document.querySelector('main .main').click());
  await page.waitForFunction(() => !document.querySelector('main .main'));
  assert.equal(await open(), false, 'anything new');
}

test('a system that asks for less motion sees none before its user has chosen', async () => {
  const { desk, stage } = await bothSides({ reducedMotion: 'reduce' });
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await stage.until('A moving dot');
  await look(stage.page, 'stage-check-motion', STAGE);
  await desk.admit({ location: 'Room 4, Quay Street 2', callBack: '+44 20 7946 0000' });
  const moving = () => stage.page.evaluate(() => [document.getAnimations().length, getComputedStyle(document.getElementById('dot')).visibility]);
  await stage.tap('No moving dot, tones or taps instead');
  await stage.until('Sound');
  await stage.tap('Skip');
  await desk.sight();
  // The page would not show it, so the desk does not start it, and says which plan would do.
  await desk.until('HOLD');
  await desk.untilText('messages', /asks for less motion: use tones or taps/);
  await desk.press('Space');
  await desk.untilText('messages', /^Not started/);
  assert.deepEqual(await moving(), [0, 'hidden']);
  await stage.page.getByText('soft tones will play, or show you when to tap').waitFor();
  await look(stage.page, 'stage-declined', STAGE);
  await look(desk.page, 'desk-hold', DESK);
  await stage.tap('Show the dot after all');
  // Long enough to be looked at, however slowly.
  await desk.cycles(60);
  await desk.start();
  await stage.page.waitForFunction(() => document.getAnimations().length > 0);
  sound(2);
});

test('no page is left out: every address that shows one was looked at', async (t) => {
  unfinished.delete(t.name);
  if (unfinished.size > 0) return t.skip(`not all was looked at: ${[...unfinished].join('; ')}`);
  const source = new URL('../../server/portal/src/', import.meta.url);
  const files = (await readdir(source, { recursive: true })).filter((name) => name.endsWith('.rs'));
  const text = (await Promise.all(files.map((name) => readFile(new URL(name, source), 'utf8')))).join('\n');
  const routes = [...text.matchAll(/\.get\(\s*"(\/[^"]*)",\s*(?:Rule::|Anybody|clinician|lead|administrator)/g)].map((match) => match[1]);
  assert.ok(routes.length >= 30, `${routes.length} routes`);
  const noPages = ['/livez', '/readyz', '/assets/{hash}/{name}', '/sessions/{session}/entries', '/stage/socket', '/sessions/{session}/desk/socket'];
  assert.deepEqual(routes.filter((route) => !visited.has(route) && !noPages.includes(route)), []);
});
