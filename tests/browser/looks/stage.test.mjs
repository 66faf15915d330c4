// How every page of a client's visit lies on small screens, on their sides, and with text of twice the size; and what Help leaves in
// sight. axe finds nothing on any of them.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { launch, stillOf } from '../support/chromium.mjs';
import { LONG } from '../support/desk.mjs';
import { keepPicture } from '../support/layout.mjs';
import { closeSession } from '../support/practice.mjs';
import { accessibleStill, CLOSING, openScene, Scene } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';
import { layoutFaults } from '../support/stage_layout.mjs';
import { lookAt, resize, SIZES } from '../support/stage_look.mjs';

/** The reader's own size of text, 32 px for 16. */
const LARGE = '--blink-settings=defaultFontSize=32';

let scene;
before(async () => { scene = await openScene(); });
after(() => scene?.close());
const faults = [];
const test = Scene.tests(() => scene, () => { faults.length = 0; });
const sound = () => assert.deepEqual(faults.splice(0), []);

async function openStage(options) {
  return new Stage(await scene.clientPage({ width: 390, height: 844, ...options }));
}

/** Holds the page against every size. */
async function look(stage, name) {
  faults.push(...await lookAt(stage, name));
}

for (const [text, flags, size] of [['text as it is', [], SIZES[0]], ['text of twice the size', [LARGE], SIZES[1]]]) {
  test(`${text}: every page is whole, apart, in the middle and can be pressed, upright and turned`, async () => {
    scene.far = await launch({ flags: [...scene.link.flags, ...flags] });
    await lookThrough(size);
    sound();
  });
}

/** From the link to a stop, each page at every size. */
async function lookThrough([width, height]) {
  const { desk } = scene;
  const stage = await openStage({ width, height, reducedMotion: 'reduce' });
  const { page } = stage;
  const minted = await desk.mint();
  await page.goto(minted.link);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByText('Please type all six numbers.').waitFor();
  await page.getByLabel('Six numbers').fill('888888');
  await look(stage, 'join');
  await stage.join(minted);
  await look(stage, 'check-0');
  const answers = ['Start', 'Done', 'It fits', 'Close, like a phone in my hand', 'Yes, show the dot', 'Play a tone', 'I hear nothing', 'Go on', 'Skip', 'Skip'];
  for (const [step, answer] of answers.entries()) {
    await stage.tap(answer);
    await look(stage, `check-${step + 1}`);
    if (await stage.heading() === 'Please wait') break;
  }
  await stage.until('Please wait');
  await look(stage, 'waiting');
  await scene.admit();
  await stage.until('You are in');
  await look(stage, 'ready');
  await desk.cycles(6);
  await desk.start();
  await stage.until('The dot rests');
  // With the dot, which a page of another size takes away.
  faults.push(...(await layoutFaults(page)).map((fault) => `between, with the dot: ${fault}`));
  await keepPicture(page, `stage-between-dot-${width}`);
  await look(stage, 'between');
  await desk.press('Delete', '1');
  await stage.until('Here and now');
  await look(stage, 'here-and-now');
  await desk.press('0', 'a', 's', '/');
  await stage.until('How bad is it right now?');
  await look(stage, 'scale');
  await stage.tap('7');
  await desk.untilText('log', /SUD 7.*by the client/s);
  await stage.until(/The dot rests|A short rest/);
  await stage.tap('Stop');
  await page.getByText('The person you are meeting can see that you stopped.').waitFor();
  await look(stage, 'stopped');
  await stage.tap('I need longer');
  await desk.untilText('messages', /The client needs longer/);
  await look(stage, 'longer');
  await page.getByText('Help', { exact: true }).click();
  await stage.tap('Lighter page');
  await page.getByText('Help', { exact: true }).click();
  await look(stage, 'lighter');
}

test('the pages on which a visit ends are whole too: after the closing, after leaving, and sent away', async () => {
  const { desk } = scene;
  const [first, second] = [await openStage(), await openStage()];
  await first.join(await desk.mint());
  await first.tap('Leave');
  await first.page.waitForURL('**/left');
  await look(first, 'left');
  await second.join(await desk.mint());
  await desk.until('AT THE DOOR');
  await desk.click('Remove this device');
  await second.page.getByRole('heading', { name: /This page is closed|has ended/ }).waitFor();
  await look(second, 'sent-away');
  const third = await openStage();
  await third.join(await desk.mint());
  await third.skipCheck();
  scene.stage = third;
  await scene.admit();
  await third.until('You are in');
  await closeSession(desk.page, CLOSING);
  await third.until('The meeting has ended.');
  await look(third, 'end');
  sound();
});

test('while a set runs axe finds nothing; after a stop Help leaves "I am ready" in sight, and closes', async () => {
  const { desk } = scene;
  const stage = await openStage();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await scene.admit();
  await desk.cycles(LONG);
  await desk.start();
  await desk.untilCycle(2);
  const running = await stillOf(page);
  // A change of size would end the set: the picture is taken as it is.
  await keepPicture(page, 'stage-running');
  await stage.tapAnywhere();
  await desk.until('STOPPED BY CLIENT');
  await accessibleStill(running, 'running');
  // What is new closes Help, and this comes last.
  await page.getByText('The person you are meeting can see that you stopped.').waitFor();
  const help = page.getByText('Help', { exact: true });
  for (const size of SIZES) {
    await resize(page, size);
    await help.click();
    assert.equal(await isOpen(page), true);
    assert.ok(await page.evaluate(mainInSight), `Help covers "I am ready" at ${size}`);
    await help.click();
    assert.equal(await isOpen(page), false, 'a second tap');
  }
  await resize(page, SIZES[0]);
  await help.click();
  await page.evaluate(() => document.querySelector('main .main').click());
  await page.waitForFunction(() => !document.querySelector('main .main'));
  assert.equal(await isOpen(page), false, 'anything new');
});

const isOpen = (page) => page.locator('#help').evaluate((one) => one.open);

/** Runs in the page: whether the main button can be pressed without scrolling. */
function mainInSight() {
  const button = document.querySelector('main .main');
  const { x, y, width, height, bottom } = button.getBoundingClientRect();
  return button.contains(document.elementFromPoint(x + width / 2, y + height / 2)) && y >= 0 && bottom <= innerHeight;
}
