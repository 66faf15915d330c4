// A client's visit: the check with its places, Back and Skip; waiting; the end. And how every page of it lies on small screens, on
// their sides, and with text of twice the size.

import assert from 'node:assert/strict';
import { mkdir } from 'node:fs/promises';
import { after, before, test as plain } from 'node:test';
import { launch, openPage } from './support/chromium.mjs';
import { Desk } from './support/desk.mjs';
import { startHouse } from './support/harness.mjs';
import { layoutFaults, pressable } from './support/stage_layout.mjs';
import { closingList, fill, newClient, startSession } from './support/practice.mjs';
import { CLIENT } from './support/scene.mjs';
import { Stage } from './support/stage.mjs';

const SIZES = [[390, 844], [320, 568], [844, 390], [568, 320]];
/** The short side of a card, mm: ISO/IEC 7810, ID-1. */
const CARD_HEIGHT = 53.98;
const OUT = new URL('out/', import.meta.url);

let house, near, far, large;
before(async () => {
  await mkdir(OUT, { recursive: true });
  house = await startHouse({ demo: true });
  near = await launch();
  far = await launch();
  // The reader's own size of text, 32 px for 16.
  large = await launch({ flags: ['--blink-settings=defaultFontSize=32'] });
});
after(async () => {
  for (const browser of [near, far, large]) await browser?.close();
  await house?.stop();
});

const faults = [];
function test(name, act) {
  plain(name, async () => {
    faults.length = 0;
    try {
      await act();
    } finally {
      for (const browser of [near, far, large]) for (const context of browser.contexts()) await context.close();
    }
  });
}

/** A desk of a new session, and its client's page in `browser`. */
async function bothSides(browser = far, options = {}) {
  const page = await openPage(near, house.origin);
  await page.goto('/demo/clinician');
  await page.getByRole('button', { name: 'Sign in as clinician' }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/demo'));
  await startSession(page, await newClient(page, CLIENT));
  const desk = new Desk(page);
  await desk.until('WAITING');
  return { desk, stage: new Stage(await openPage(browser, house.origin, { width: 390, height: 844, ...options })) };
}

/** Holds the page against every size, with Help closed and open; pictures of all go to out/. */
async function lookAt({ page }, name) {
  const usual = page.viewportSize();
  const root = await page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize));
  const help = page.getByText('Help', { exact: true });
  for (const [width, height] of SIZES) {
    await page.setViewportSize({ width, height });
    const where = `${name} at ${width}x${height}, ${root} px`;
    // Beside Help there is no room on both sides of large text.
    const centred = height > width || width >= 35 * root;
    faults.push(...(await layoutFaults(page, { centred })).map((fault) => `${where}: ${fault}`));
    await page.screenshot({ path: new URL(`visit-${name}-${root}-${width}x${height}.png`, OUT).pathname });
    if (await help.isVisible()) {
      await help.click();
      await page.waitForSelector('body[data-help]');
      faults.push(...(await layoutFaults(page, { centred: height > width })).map((fault) => `${where}, Help open: ${fault}`));
      await page.screenshot({ path: new URL(`visit-${name}-help-${root}-${width}x${height}.png`, OUT).pathname });
      await help.click();
      await page.waitForSelector('body:not([data-help])');
    }
  }
  await page.setViewportSize(usual);
}

const sound = () => assert.deepEqual(faults.splice(0), []);
const place = ({ page }) => page.locator('.place').innerText();
const admit = (desk) => desk.admit({ location: 'Room 4, Quay Street 2', callBack: '+44 20 7946 0000' });

/** What the page tells the room about its device from now on, the latest last. */
function devicesTold(page) {
  const told = [];
  page.on('websocket', (socket) => socket.on('framesent', ({ payload }) => {
    const message = JSON.parse(payload);
    if (message.device) told.push(message.device);
  }));
  return told;
}

/** Ends the session at the desk. */
async function close(desk) {
  const list = await closingList(desk.page);
  await fill(list, { kind: 'no_reprocessing', resource: 'slow breathing', effect: 'settled', state: 'calm', companion: 'nobody', next_contact: 'Thursday', client_words: 'Until Thursday.' });
  await list.getByRole('button', { name: 'Close the session' }).click();
  await list.waitForURL(/\/sessions\/[0-9a-f-]{36}$/);
}

test('the check says where one is, leads back to what was answered, and is passed over step by step', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  const told = devicesTold(page);
  await stage.join(await desk.mint());
  assert.equal(await page.locator('.place').count(), 0, 'the first page asks nothing');
  await stage.tap('Start');
  const steps = Number(/^1 of (\d)$/.exec(await place(stage))[1]);
  await stage.tap('Done');
  await page.getByLabel('Width of the box').fill('300');
  await stage.tap('It fits');
  assert.equal(await place(stage), `3 of ${steps}`);
  await stage.tap('Close, like a phone in my hand');
  await stage.until('Sound');
  await stage.tap('Back');
  assert.equal(await stage.heading(), 'Where you sit');
  const kept = page.getByRole('button', { name: 'Close, like a phone in my hand', pressed: true });
  await kept.waitFor();
  await stage.tap('Back');
  assert.equal(await page.getByLabel('Width of the box').inputValue(), '300');
  await stage.tap('Skip');
  await kept.waitFor();
  await page.getByText('Your answer is kept.').waitFor();
  await stage.tap('About as long as my arm');
  for (let at = 4; at <= steps; at++) {
    assert.equal(await place(stage), `${at} of ${steps}`);
    await stage.tap('Skip');
  }
  await stage.until('Please wait');
  await admit(desk);
  // The room was told each answer, the last one last.
  const { px_per_mm, distance_mm, sound: heard, checking } = told.at(-1);
  assert.deepEqual({ px_per_mm: Math.round(px_per_mm * CARD_HEIGHT), distance_mm, heard, checking }, { px_per_mm: 300, distance_mm: 600, heard: false, checking: false });
  assert.deepEqual(page.troubles, []);
});

test('what a question opens can be left too: while tones are heard, and by who has answered nothing', async () => {
  const { desk, stage } = await bothSides(far, { reducedMotion: 'reduce' });
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await stage.until('A moving dot');
  await stage.tap('Back');
  assert.equal(await stage.heading(), 'A short check');
  await stage.skipCheck();
  await stage.page.getByText('If you skip this, you will see no moving dot.').waitFor();
  await stage.tap('Skip');
  await stage.until('Sound');
  await stage.tap('Play a tone');
  await stage.page.getByText('Which side did the tone come from?').waitFor();
  await stage.tap('Skip');
  await stage.until('Please wait');
  await admit(desk);
  await stage.page.getByText('soft tones will play, or show you when to tap').waitFor();
  await desk.sight();
  await desk.until('HOLD');
  await desk.untilText('messages', /asks for less motion: use tones or taps/);
});

test('left and right, asked again by the desk, can be skipped: then they are not known any more', async () => {
  const { desk, stage } = await bothSides();
  const told = devicesTold(stage.page);
  await stage.join(await desk.mint());
  await stage.check();
  await stage.until('Please wait');
  await admit(desk);
  await stage.until('You are in');
  assert.deepEqual([told.at(-1).sound, told.at(-1).sides], [true, true]);
  await desk.press('q');
  await stage.until('Sound');
  assert.deepEqual([await stage.page.locator('.place').count(), await stage.page.getByRole('button', { name: 'Back' }).count()], [0, 0]);
  await stage.tap('Skip');
  await stage.until('You are in');
  assert.deepEqual([told.at(-1).sound, told.at(-1).sides], [true, null]);
});

test('waiting has a quiet sign, which is for the eye alone and does not move', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await stage.until('Please wait');
  const sign = page.locator('main svg');
  assert.equal(await sign.getAttribute('aria-hidden'), 'true');
  assert.equal(await page.getByText('You will meet').count(), 0, 'no practice allows it yet');
  const before = await page.locator('main').screenshot();
  await page.waitForTimeout(1_500);
  assert.ok(before.equals(await page.locator('main').screenshot()), 'it moved');
  assert.equal(await page.evaluate(() => document.getAnimations().length), 0);
});

test('whom the client meets stands on the page that waits, and on no other', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  // As the portal's template has it where the practice allows it.
  await page.addInitScript(() => addEventListener('DOMContentLoaded', () => {
    const [meets, sentence] = ['template', 'p'].map((tag) => document.createElement(tag));
    meets.id = 'meets';
    sentence.textContent = 'You will meet Ines Tarrow.';
    meets.content.append(sentence);
    document.head.append(meets);
  }));
  await stage.join(await desk.mint());
  assert.equal(await page.getByText('Ines Tarrow').count(), 0);
  await stage.skipCheck();
  await stage.until('Please wait');
  await page.getByText('You will meet Ines Tarrow.').waitFor();
  await admit(desk);
  await stage.until('You are in');
  assert.equal(await page.getByText('Ines Tarrow').count(), 0);
});

test('at the end nothing is left to press, and the page says what comes', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await stage.until('Please wait');
  await admit(desk);
  await stage.until('You are in');
  await close(desk);
  await stage.until('The meeting has ended.');
  await page.getByText('If you meet again, you will get a new link.').waitFor();
  await page.getByText('Until Thursday.').waitFor();
  assert.deepEqual(await pressable(page), []);
  await page.keyboard.press('Tab');
  assert.ok(['BODY', 'H1'].includes(await page.evaluate(() => document.activeElement.tagName)));
  await stage.press('Escape');
  assert.equal(await stage.heading(), 'The meeting has ended.');
  await lookAt(stage, 'end');
  sound();
});

test('after leaving nothing is left to press, and a device that is sent away has nothing either', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.tap('Leave');
  await page.waitForURL('**/left');
  await page.getByText('To come back, open your link once more.').waitFor();
  assert.deepEqual(await pressable(page), []);
  await lookAt(stage, 'left');
  const other = new Stage(await openPage(far, house.origin, { width: 390, height: 844 }));
  await other.join(await desk.mint());
  await desk.until('AT THE DOOR');
  await desk.click('Remove this device');
  await other.page.getByRole('heading', { name: /This page is closed|has ended/ }).waitFor();
  assert.deepEqual(await pressable(other.page), []);
  await lookAt(other, 'sent-away');
  sound();
});

for (const [text, browser, size] of [['text as it is', () => far, SIZES[0]], ['text of twice the size', () => large, SIZES[1]]]) {
  test(`${text}: every page is whole, apart, in the middle and can be pressed, upright and turned`, () => lookThrough(browser(), size));
}

/** From the link to a stop, each page at every size. */
async function lookThrough(browser, [width, height]) {
  const { desk, stage } = await bothSides(browser, { width, height, reducedMotion: 'reduce' });
  const { page } = stage;
  const minted = await desk.mint();
  await page.goto(minted.link);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByText('Please type all six numbers.').waitFor();
  await page.getByLabel('Six numbers').fill('888888');
  await lookAt(stage, 'join');
  await stage.join(minted);
  await lookAt(stage, 'check-0');
  const answers = ['Start', 'Done', 'It fits', 'Close, like a phone in my hand', 'Yes, show the dot', 'Play a tone', 'I hear nothing', 'Go on', 'Skip', 'Skip'];
  for (const [step, answer] of answers.entries()) {
    await stage.tap(answer);
    await lookAt(stage, `check-${step + 1}`);
    if (await stage.heading() === 'Please wait') break;
  }
  await stage.until('Please wait');
  await lookAt(stage, 'waiting');
  await admit(desk);
  await stage.until('You are in');
  await lookAt(stage, 'ready');
  await desk.sight();
  await desk.cycles(6);
  await desk.start();
  await stage.until('The dot rests');
  // With the dot, which a page of another size takes away.
  faults.push(...(await layoutFaults(page)).map((fault) => `between, with the dot: ${fault}`));
  await page.screenshot({ path: new URL(`visit-between-dot-${width}.png`, OUT).pathname });
  await lookAt(stage, 'between');
  await stage.tap('Stop');
  await page.getByText('The person you are meeting can see that you stopped.').waitFor();
  await lookAt(stage, 'stopped');
  sound();
}
