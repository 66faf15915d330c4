// How every page of a client's visit lies on small screens, on their sides, and with text of twice the size; and what Help leaves in
// sight. axe finds nothing on any of them.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { accessibilityViolations, launch } from '../support/chromium.mjs';
import { APPEARANCES, keepPicture, painted, PAPER } from '../support/layout.mjs';
import { closeSession } from '../support/practice.mjs';
import { CLOSING, openScene, Scene } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';
import { layoutFaults } from '../support/stage_layout.mjs';

const SIZES = [[390, 844], [320, 568], [844, 390], [568, 320]];
const DESKTOPS = [[1280, 800], [1920, 1080], [768, 1024]];
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

/** The page hears of its new size with the next frame. */
async function resize(page, [width, height]) {
  await page.setViewportSize({ width, height });
  await painted(page);
}

/** Holds the page against every size, with Help closed and open. */
async function lookAt({ page }, name) {
  const usual = page.viewportSize();
  const root = await page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize));
  const help = page.getByText('Help', { exact: true });
  faults.push(...(await accessibilityViolations(page)).map((fault) => `${name}: ${fault}`));
  for (const [width, height] of [...SIZES, ...DESKTOPS]) {
    await resize(page, [width, height]);
    const where = `${name} at ${width}x${height}, ${root} px`;
    // Beside Help there is no room on both sides of large text.
    const centred = height > width || width >= 35 * root;
    await inEveryAppearance(page, where, { centred });
    await keepPicture(page, `stage-${name}-${root}-${width}x${height}`);
    if (await help.isVisible()) {
      await help.click();
      await page.waitForSelector('body[data-help]');
      faults.push(...(await layoutFaults(page, { centred: height > width })).map((fault) => `${where}, Help open: ${fault}`));
      await keepPicture(page, `stage-${name}-help-${root}-${width}x${height}`);
      await help.click();
      await page.waitForSelector('body:not([data-help])');
    }
  }
  await onPaper(page, `${name} on paper, ${root} px`);
  await resize(page, [usual.width, usual.height]);
}

async function onPaper(page, where) {
  await resize(page, PAPER);
  await page.emulateMedia({ media: 'print', forcedColors: 'none', ...APPEARANCES.light });
  faults.push(...(await layoutFaults(page)).map((fault) => `${where}: ${fault}`));
  await keepPicture(page, `stage-${where}`);
  await page.emulateMedia({ media: 'screen' });
}

/** Light last: the page is left as it was. */
async function inEveryAppearance(page, where, layout) {
  for (const appearance of ['dark', 'forced', 'light']) {
    await page.emulateMedia({ forcedColors: 'none', ...APPEARANCES[appearance] });
    faults.push(...(await layoutFaults(page, layout)).map((fault) => `${where}, ${appearance}: ${fault}`));
  }
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
  await scene.admit();
  await stage.until('You are in');
  await lookAt(stage, 'ready');
  await desk.cycles(6);
  await desk.start();
  await stage.until('The dot rests');
  // With the dot, which a page of another size takes away.
  faults.push(...(await layoutFaults(page)).map((fault) => `between, with the dot: ${fault}`));
  await keepPicture(page, `stage-between-dot-${width}`);
  await lookAt(stage, 'between');
  await desk.press('Delete', '1');
  await stage.until('Here and now');
  await lookAt(stage, 'here-and-now');
  await desk.press('0', 'a', 's', '/');
  await stage.until('How bad is it right now?');
  await lookAt(stage, 'scale');
  await stage.tap('7');
  await desk.untilText('log', /SUD 7.*by the client/s);
  await stage.until(/The dot rests|A short rest/);
  await stage.tap('Stop');
  await page.getByText('The person you are meeting can see that you stopped.').waitFor();
  await lookAt(stage, 'stopped');
  await stage.tap('I need longer');
  await desk.untilText('messages', /The client needs longer/);
  await lookAt(stage, 'longer');
  await page.getByText('Help', { exact: true }).click();
  await stage.tap('Lighter page');
  await page.getByText('Help', { exact: true }).click();
  await lookAt(stage, 'lighter');
}

test('the pages on which a visit ends are whole too: after the closing, after leaving, and sent away', async () => {
  const { desk } = scene;
  const [first, second] = [await openStage(), await openStage()];
  await first.join(await desk.mint());
  await first.tap('Leave');
  await first.page.waitForURL('**/left');
  await lookAt(first, 'left');
  await second.join(await desk.mint());
  await desk.until('AT THE DOOR');
  await desk.click('Remove this device');
  await second.page.getByRole('heading', { name: /This page is closed|has ended/ }).waitFor();
  await lookAt(second, 'sent-away');
  const third = await openStage();
  await third.join(await desk.mint());
  await third.skipCheck();
  scene.stage = third;
  await scene.admit();
  await third.until('You are in');
  await closeSession(desk.page, CLOSING);
  await third.until('The meeting has ended.');
  await lookAt(third, 'end');
  sound();
});

test('while a set runs axe finds nothing; after a stop Help leaves "I am ready" in sight, and closes', async () => {
  const { desk } = scene;
  const stage = await openStage();
  const { page } = stage;
  await stage.join(await desk.mint());
  await stage.skipCheck();
  await scene.admit();
  await desk.cycles(60);
  await desk.start();
  await desk.untilCycle(2);
  assert.deepEqual(await accessibilityViolations(page), []);
  // A change of size would end the set: the picture is taken as it is.
  await keepPicture(page, 'stage-running');
  await stage.tapAnywhere();
  await desk.until('STOPPED BY CLIENT');
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
