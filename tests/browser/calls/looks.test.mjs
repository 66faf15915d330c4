// Picture and voice on both pages, as they lie in every size they are used in: nothing is cut off, covered or too small, whatever the call says.

import assert from 'node:assert/strict';
import { after, before, test as plain } from 'node:test';
import { freeze, keepConnections, sees, skipRest, sparing, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../support/call.mjs';
import { accessibilityViolations, launch } from '../support/chromium.mjs';
import { faultsAt } from '../support/layout.mjs';
import { openScene } from '../support/scene.mjs';
import { lookAt, SIZES } from '../support/stage_look.mjs';
import { Stage } from '../support/stage.mjs';

const DESKS = [[1280, 800], [455, 768], [1920, 1080], [768, 1024], [390, 844], [320, 568]];
const PICTURES = ['1280x800-light', '455x768-light', '390x844-light', '320x568-light', '1280x800-large'];
/** The reader's own size of text, 32 px for 16. */
const LARGE = '--blink-settings=defaultFontSize=32';

let scene;
before(async () => { scene = await openScene({ relay: true }); });
after(() => scene?.close());

for (const [text, flags] of [['text as it is', []], ['text of twice the size', [LARGE]]]) {
  plain(`the client's page, ${text}`, async () => {
    const faults = [];
    const look = async (name) => faults.push(...await lookAt(scene.stage, `call-${name}`, [...SIZES, [1280, 800]]));
    try {
      await throughTheCall(flags, look);
      assert.deepEqual(faults, []);
    } finally {
      await scene.leave();
    }
  });
}

/** From the question about picture and voice to a stop, with all that the call says on the way. */
async function throughTheCall(flags, look) {
  scene.far = await launch({ flags: [...scene.link.flags, ...scene.devices, ...flags] });
  const desk = await scene.openDesk();
  await keepConnections(desk.page);
  await desk.page.reload();
  const page = await scene.clientPage({ width: SIZES[0][0], height: SIZES[0][1], reducedMotion: 'reduce' });
  await keepConnections(page);
  const stage = scene.stage = new Stage(page);
  await stage.join(await scene.desk.mint());
  for (const answer of ['Start', 'Done', 'It fits', 'About as long as my arm', 'Yes, show the dot']) await stage.tap(answer);
  await stage.until('Picture and voice');
  await look('question');
  await stage.tap('Camera and microphone');
  await page.waitForFunction(() => document.querySelector('main .self').videoWidth > 0);
  await look('own-picture');
  await stage.tap('Go on');
  await skipRest(stage);
  await scene.admit();
  await sees(page, THEIRS_AT_STAGE);
  await sparing(page, desk.page);
  await look('in');
  await page.getByRole('button', { name: 'Mute' }).click();
  await page.getByText('You are muted.').waitFor();
  await look('muted');
  await page.getByRole('button', { name: 'MUTED' }).click();
  await scene.desk.cycles(6);
  await scene.settle();
  await scene.desk.start();
  await scene.desk.untilOver(20_000);
  await look('between');
  await stage.tap('Stop');
  await page.getByText('The person you are meeting can see that you stopped.').waitFor();
  await look('stopped');
}

plain('the desk: before, with a picture, muted, with More open, and when the picture stops', async () => {
  const faults = [];
  const desk = await scene.openDesk();
  await keepConnections(desk.page);
  await desk.page.reload();
  const look = async (name) => {
    faults.push(...await faultsAt(desk.page, `desk-call-${name}`, DESKS, ['light', 'forced', 'large'], { pictures: PICTURES }));
    faults.push(...(await accessibilityViolations(desk.page)).map((fault) => `${name}: ${fault}`));
  };
  try {
    await look('before');
    const page = await scene.clientPage({ width: 390, height: 844 });
    await keepConnections(page);
    const stage = scene.stage = new Stage(page);
    await stage.join(await desk.mint());
    for (const answer of ['Start', 'Done', 'It fits', 'About as long as my arm', 'Camera and microphone', 'Go on']) await stage.tap(answer);
    await skipRest(stage);
    await scene.admit();
    await sees(desk.page, THEIRS_AT_DESK);
    await sparing(page, desk.page);
    await look('there');
    await desk.press('Shift+M');
    await desk.untilText('face', /YOU ARE MUTED/);
    await look('muted');
    await desk.press('Shift+M');
    await desk.page.getByText('More', { exact: true }).click();
    await look('more');
    await desk.page.getByText('More', { exact: true }).click();
    await freeze(page);
    await desk.untilText('face', /NO PICTURE for \d+ s/);
    await look('frozen');
    assert.deepEqual(faults, []);
  } finally {
    await scene.leave();
  }
});
