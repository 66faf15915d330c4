// The desk in every state, in every window it is used in: nothing moves from state to state, nothing is cut off, and each state is told
// by a word and a shape.

import assert from 'node:assert/strict';
import { after, before, test as plain } from 'node:test';
import { accessibilityViolations, openStill, stillOf } from '../support/chromium.mjs';
import { appear, APPEARANCES, faultsAt, keepPicture, painted } from '../support/layout.mjs';
import { Desk, LONG } from '../support/desk.mjs';
import { accessible, LOCATION, LOST_LINE, openScene, TARGET } from '../support/scene.mjs';
import { fill } from '../support/practice.mjs';
import { story } from '../support/story.mjs';

const SIZES = [[455, 768], [1280, 800], [1920, 1080], [768, 1024], [390, 844], [320, 568]];
const MORE = ['forced', 'large', 'print'];
const CLOSING = { kind: 'incomplete', resource: 'the harbour', effect: 'settled', state: 'calm', companion: 'nobody', next_contact: 'Thursday' };

const test = story();
let scene, desk, stage;
/** The page on which stills are shown. */
let viewer;
/** Every control's box by size and state: `{ '455x768': { READY: {...} } }`. */
const places = {};
const faults = [];

before(async () => {
  scene = await openScene();
  desk = await scene.openDesk();
});
after(() => scene?.close());

/** Every control's box, by what it does; of what stands in the strip, which is reserved for it, and in the log, none. */
function boxes() {
  const controls = document.querySelectorAll('.band, .strip, .console button, .console .button, .console output, .checks p, #words');
  return Object.fromEntries([...controls].filter((one) => !one.closest('.log, .seat') && (one.matches('.band, .strip') || !one.closest('.band, .strip'))).map((one, index) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return [`${index} ${one.dataset.act ?? one.id} ${one.dataset.setting ?? one.dataset.value ?? ''}`, [x, y, width, height].map((side) => Math.round(side * 2) / 2)];
  }));
}

const SAID = /^(WAITING|AT THE DOOR|HOLD|READY|RUNNING|STOPPED|STOPPED BY CLIENT|LINK LOST|CLIENT HAS LEFT|UNKNOWN|CLOSED)$/;

/** From here on target and card stand beside the column: main.ts has it as 66 times the reader's size of text. Twice that size leaves room in none of the windows. */
const WIDE = 66 * 16;
const isWide = ([width]) => width >= WIDE;

/** A desk as it is now, in a wide window and in a narrow one. */
async function stillsOf(page) {
  const usual = page.viewportSize();
  const stills = {};
  for (const [kind, [width, height]] of [['narrow', SIZES[0]], ['wide', SIZES[1]]]) {
    await page.setViewportSize({ width, height });
    await painted(page);
    stills[kind] = await stillOf(page);
  }
  await page.setViewportSize(usual);
  return stills;
}

/**
 * Looks at a desk as it is now, or as it was (`stills`), in every size; `all`: in every appearance too. Its state word is `state` where that is one.
 * The desk itself is not held up: one that is answers too late on a slow machine, and is in another state before all is seen.
 */
async function look(state, { all = false, pictures = [], stills } = {}) {
  const { wide, narrow } = stills ?? await stillsOf(desk.page);
  const lies = async (page, sizes, appearances, act) => faults.push(...await faultsAt(page, `desk-${state}`, sizes, appearances, { pictures, act }));
  for (const [still, sizes] of [[narrow, SIZES.filter((size) => !isWide(size))], [wide, SIZES.filter(isWide)]]) {
    const page = viewer = await openStill(still, viewer);
    if (SAID.test(state)) assert.equal(await new Desk(page).word(), state);
    await lies(page, sizes, ['light'], async (at) => { (places[at] ??= {})[state] = await page.evaluate(boxes); });
    if (all) await lies(page, sizes, ['forced']);
    if (all && still === narrow) await lies(page, SIZES, ['large', 'print']);
    if (still === wide) await seenByAxe(page, state, all);
  }
}

async function seenByAxe(page, state, all) {
  faults.push(...(await accessibilityViolations(page)).map((fault) => `desk-${state}: ${fault}`));
  if (!all) return;
  await appear(page, APPEARANCES.dark);
  await keepPicture(page, `desk-${state}-dark`);
  faults.push(...(await accessibilityViolations(page)).map((fault) => `desk-${state} dark: ${fault}`));
  await appear(page, APPEARANCES.light);
}

/** Runs in the page: keeps the boxes of states that pass by themselves, as they are painted, in `window.passed` by their words. */
function catchPassing(boxesNow, words) {
  window.passed = {};
  const part = document.querySelector('[data-part="word"]');
  new MutationObserver(() => requestAnimationFrame(() => {
    const word = part.textContent;
    if (words.includes(word)) window.passed[word] ??= boxesNow();
  })).observe(part, { childList: true, characterData: true, subtree: true });
}

test('before the client: waiting, at the door, admitted and not yet seen', async () => {
  await desk.until('WAITING');
  await look('WAITING', { all: true, pictures: ['1280x800-light', '455x768-light'] });
  await scene.join(await scene.clientPage({ width: 390, height: 844 }));
  stage = scene.stage;
  await stage.skipCheck();
  await desk.until('AT THE DOOR');
  await look('AT THE DOOR', { all: true, pictures: ['1280x800-light', '455x768-light', '320x568-light'] });
  await desk.admit({ location: LOCATION });
  await desk.until('HOLD');
  await look('HOLD', { all: true, pictures: ['1280x800-light', '455x768-light'] });
});

test('ready, running, and between sets', async () => {
  await desk.sight();
  await desk.until('READY');
  await desk.cycles(LONG);
  await look('READY', { all: true, pictures: ['1280x800-light', '455x768-light', '1920x1080-light', '320x568-light', '1280x800-large', '1280x800-forced'] });
  await desk.start();
  await desk.untilCycle(1);
  const running = await stillsOf(desk.page);
  await desk.press('e');
  await desk.untilOver();
  await look('RUNNING', { all: true, pictures: ['1280x800-light', '455x768-light'], stills: running });
  await desk.note({ words: 'the ramp, and cold hands', mark: 'same', sud: 7, voc: 3 });
  await desk.until('READY');
  await look('between sets', { all: true, pictures: ['455x768-light', '390x844-light', '768x1024-light'] });
  await desk.start();
  await desk.untilCycle(1);
  const again = await stillsOf(desk.page);
  await desk.press('Escape');
  await desk.until('STOPPED');
  // A stop is over within a second or two, unless the client cannot be seen.
  await desk.press('x');
  await look('STOPPED', { all: true, pictures: ['1280x800-light'] });
  await look('RUNNING again', { all: true, pictures: ['1920x1080-light'], stills: again });
  await desk.sight();
  await desk.until('READY');
});

test('states that pass by themselves: a set that begins and one that eases to rest', async () => {
  const { page } = desk;
  const usual = page.viewportSize();
  await page.evaluate(`(${catchPassing})(${boxes}, ['STARTING', 'EASING'])`);
  for (const [width, height] of SIZES) {
    await page.setViewportSize({ width, height });
    await page.evaluate(() => { window.passed = {}; });
    await desk.start();
    await desk.press('e');
    await desk.untilOver();
    const passed = await page.evaluate(() => window.passed);
    assert.deepEqual(Object.keys(passed), ['STARTING', 'EASING']);
    Object.assign(places[`${width}x${height}-light`], passed);
    await desk.until('READY');
  }
  await page.setViewportSize(usual);
});

test('a desk that only looks on, and a desk without its keys', async () => {
  const { page } = desk;
  const onlooker = new Desk(await scene.windowBeside(page));
  await onlooker.page.goto(page.url());
  await onlooker.until('HOLD');
  await onlooker.page.locator('[data-part="view-only"]').waitFor();
  await onlooker.page.bringToFront();
  await look('VIEW ONLY', { all: true, pictures: ['1280x800-light', '320x568-light'], stills: await stillsOf(onlooker.page) });
  await onlooker.page.close();
  await withoutKeys(page, () => look('KEYS OFF', { all: true, pictures: ['1280x800-light', '320x568-light'] }));
});

/** Acts while the page has no keyboard: a tab lies over it, and nothing but that takes it. */
async function withoutKeys(page, act) {
  const other = await page.context().newPage();
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: false });
  await other.bringToFront();
  const off = page.locator('[data-part="keys-off"]');
  await off.waitFor();
  await act();
  assert.ok(await off.isVisible());
  await page.bringToFront();
  await cdp.send('Emulation.setFocusEmulationEnabled', { enabled: true });
  await off.waitFor({ state: 'hidden' });
  await other.close();
}

test('panels, an armed scale, and names that are hidden move nothing either', async () => {
  await desk.note({ words: 'further away', mark: 'changing', sud: 5 });
  for (const [key, name] of [['f', 'opening'], [';', 'phase'], ['-', 'between'], ["'", 'safety'], ['m', 'card'], ['o', 'mechanics'], ['c', 'link'], ['?', 'keys'], ['g', 'target']]) {
    await desk.press(key);
    await look(name, { pictures: ['455x768-light', '1280x800-light'] });
    await desk.press('a');
  }
  await scene.settle();
  await desk.press('Delete');
  // Not READY until going on was asked for twice.
  await desk.until('HOLD');
  await desk.untilText('progress', 'was too much: asks twice');
  await look('too much', { all: true, pictures: ['455x768-light', '1280x800-light', '320x568-light'] });
  await desk.press('a');
  for (const [key, name] of [['s', 'SUD armed'], ['v', 'VOC armed']]) {
    await desk.press(key);
    await look(name, { pictures: ['455x768-light'] });
    await desk.press(key);
  }
  await desk.press('r');
  await look('hidden', { all: true, pictures: ['455x768-light', '1280x800-light'] });
  const { page } = desk;
  assert.equal(await page.locator('.who h1 .private').evaluate((name) => getComputedStyle(name).visibility), 'hidden');
  await desk.press('r');
  await page.locator('[data-part="log"] .line').first().click();
  await look('an open line');
  await desk.press('a');
  await page.locator('[data-part="log"] .line').first().click();
});

test('a picture of the client has its room: everything else still fits', async () => {
  const { page } = desk;
  const put = (into, name) => page.evaluate(([where, kind]) => {
    const made = Object.assign(document.createElement('div'), { className: kind, textContent: kind });
    document.querySelector(where).prepend(made);
  }, [into, name]);
  const take = (name) => page.evaluate((kind) => document.querySelector(`.${kind}`).remove(), name);
  for (const [into, name] of [['.view', 'face']]) {
    await put(into, name);
    faults.push(...await faultsAt(page, `desk with a ${name}`, [[455, 768], [1280, 800], [1920, 1080], [390, 844]], ['light'], {
      pictures: ['455x768-light', '1280x800-light'],
      act: async (at) => {
        const { y, height } = await page.locator('.tabs').boundingBox();
        assert.ok(at.startsWith('390') || y + height <= Number(/x(\d+)/.exec(at)[1]), `${name} at ${at}: the index is at ${y + height}`);
      },
    }));
    await take(name);
  }
});

test('the client stops, the line is lost, the client leaves', async () => {
  await scene.settle();
  await desk.start();
  await desk.untilCycle(1);
  await stage.press('Space');
  await desk.until('STOPPED BY CLIENT');
  await look('STOPPED BY CLIENT', { all: true, pictures: ['1280x800-light', '455x768-light', '320x568-light'] });
  await desk.untilText('announce-now', /^STOPPED BY CLIENT/);
  scene.excuse(stage.page, LOST_LINE);
  scene.link.cut();
  await desk.until('LINK LOST');
  await look('LINK LOST', { all: true, pictures: ['1280x800-light', '455x768-light', '320x568-light', '1280x800-forced'] });
  await desk.untilText('announce-now', /^LINK LOST/);
  assert.equal(await desk.text('announce'), '', 'said once');
  await copiesTheNumber();
  scene.link.restore();
  await desk.until('STOPPED BY CLIENT');
  await stage.tap('Leave');
  await stage.page.waitForURL('**/left');
  await desk.until('CLIENT HAS LEFT');
  await look('CLIENT HAS LEFT', { all: true, pictures: ['1280x800-light'] });
});

/** What Copy puts on the clipboard is the number that stands there. */
async function copiesTheNumber() {
  const { page } = desk;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await desk.untilText('copy-number', 'Copied');
  assert.equal(`Call ${await page.evaluate(() => navigator.clipboard.readText())}`, await desk.text('call-known'));
}

test('without the server, and closed', async () => {
  scene.excuse(desk.page, LOST_LINE);
  await scene.house.tell('portal-kill');
  await desk.until('UNKNOWN');
  await look('UNKNOWN', { all: true, pictures: ['1280x800-light'] });
  await scene.house.tell('portal-start');
  await desk.until('CLIENT HAS LEFT');
  const list = await scene.closingList(desk.page);
  faults.push(...await faultsAt(list, 'closing', [...SIZES, [844, 390]], ['light', ...MORE], { pictures: ['1280x800-light', '455x768-light', '390x844-light'] }));
  await fill(list, CLOSING);
  await list.getByRole('button', { name: 'Close the session' }).click();
  await list.waitForURL(`**/sessions/${scene.session}`);
  await desk.until('CLOSED');
  assert.match(await desk.text('showing'), new RegExp(`^${3 + SIZES.length} sets, \\d+ cycles shown, 2 broken off$`));
  assert.match(await desk.text('ordered'), new RegExp(`^SUD fell from ${TARGET.sud} to 5; VOC`));
  await look('CLOSED', { all: true, pictures: ['1280x800-light', '455x768-light'] });
  await accessible(list, 'the session\'s page');
});

plain('nothing was cut off, stood on something else or scrolled sideways; axe found nothing', () => {
  assert.deepEqual(faults, []);
});

test('every box of every control is the same in all states', () => {
  assert.equal(Object.keys(places).length, SIZES.length);
  for (const [size, states] of Object.entries(places)) {
    const { READY, ...others } = states;
    assert.ok(Object.keys(READY).length >= 40, `${Object.keys(READY).length} controls`);
    assert.ok(Object.keys(others).length >= 20, `${Object.keys(others)}`);
    for (const [state, there] of Object.entries(others)) assert.deepEqual(there, READY, `${size} ${state}`);
  }
});

/** Runs in an empty page: each shape as it is drawn beside the state word, 28 px in one colour, as a list of its dark pixels. */
async function inkOf(shapes) {
  const canvas = Object.assign(document.createElement('canvas'), { width: 28, height: 28 });
  const context = canvas.getContext('2d', { willReadFrequently: true });
  const drawn = {};
  for (const [name, inner] of shapes) {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 24" width="28" height="28" color="#000">${inner}</svg>`;
    const image = Object.assign(new Image(), { src: `data:image/svg+xml,${encodeURIComponent(svg)}` });
    await image.decode();
    context.clearRect(0, 0, 28, 28);
    context.drawImage(image, 0, 0, 28, 28);
    const { data } = context.getImageData(0, 0, 28, 28);
    drawn[name] = Array.from({ length: 28 * 28 }, (_, i) => i).filter((i) => data[4 * i + 3] > 127);
  }
  return drawn;
}

test('each state has a shape of its own, told apart without any colour', async () => {
  const shapes = await desk.page.evaluate(() => [...document.querySelectorAll('symbol[id^="shape-"]')].map((one) => [one.id.slice(6), one.innerHTML]));
  const blank = await (await scene.near.newContext()).newPage();
  const drawn = Object.entries(await blank.evaluate(inkOf, shapes)).filter(([name]) => !['met', 'open'].includes(name));
  assert.equal(drawn.length, 16, 'twelve states of the room, and connecting, unknown, keys off, view only');
  for (const [i, [name, ink]] of drawn.entries()) {
    assert.ok(ink.length > 60, `${name} has ${ink.length} dark pixels`);
    for (const [other, otherInk] of drawn.slice(i + 1)) {
      const both = new Set([...ink, ...otherInk]);
      const shared = ink.filter((pixel) => otherInk.includes(pixel)).length;
      assert.ok(1 - shared / both.size > 0.4, `${name} and ${other} share ${shared} of ${both.size} pixels`);
    }
  }
});
