// A client's visit: the check with its places, Back and Skip; waiting; less motion; the end.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { closeSession } from './support/practice.mjs';
import { CLOSING, openScene, Scene } from './support/scene.mjs';
import { Stage } from './support/stage.mjs';
import { pressable } from './support/stage_layout.mjs';

/** The short side of a card, mm: ISO/IEC 7810, ID-1. */
const CARD_HEIGHT = 53.98;

let scene;
before(async () => { scene = await openScene(); });
after(() => scene?.close());
const test = Scene.tests(() => scene);

/** The desk of the test, and its client's page. */
async function bothSides(options) {
  return { desk: scene.desk, stage: new Stage(await scene.clientPage({ width: 390, height: 844, ...options })) };
}

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
  const { desk, stage } = await bothSides({ reducedMotion: 'reduce' });
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
  await closeSession(desk.page, CLOSING);
  await stage.until('The meeting has ended.');
  await page.getByText('If you meet again, you will get a new link.').waitFor();
  await page.getByText('Until Thursday.').waitFor();
  assert.deepEqual(await pressable(page), []);
  await page.keyboard.press('Tab');
  assert.ok(['BODY', 'H1'].includes(await page.evaluate(() => document.activeElement.tagName)));
  await stage.press('Escape');
  assert.equal(await stage.heading(), 'The meeting has ended.');
});

test('after leaving nothing is left to press, and a device that is sent away has nothing either', async () => {
  const { desk, stage } = await bothSides();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.tap('Leave');
  await page.waitForURL('**/left');
  await page.getByText('To come back, open your link once more.').waitFor();
  assert.deepEqual(await pressable(page), []);
  const other = new Stage(await scene.clientPage({ width: 390, height: 844 }));
  await other.join(await desk.mint());
  await desk.until('AT THE DOOR');
  await desk.click('Remove this device');
  await other.page.getByRole('heading', { name: /This page is closed|has ended/ }).waitFor();
  assert.deepEqual(await pressable(other.page), []);
});

test('a system that asks for less motion sees none before its user has chosen', async () => {
  const { desk, stage } = await bothSides({ reducedMotion: 'reduce' });
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await stage.until('A moving dot');
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
  await stage.tap('Show the dot after all');
  await desk.start();
  await stage.page.waitForFunction(() => document.getAnimations().length > 0);
});
