// Picture and voice at the desk, in every window it is used in: nothing is cut off or covered, whatever the call says.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { freeze, keepConnections, sees, skipRest, THEIRS_AT_DESK } from '../support/call.mjs';
import { accessibilityViolations } from '../support/chromium.mjs';
import { faultsAt } from '../support/layout.mjs';
import { openScene } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';

const DESKS = [[1280, 800], [455, 768], [1920, 1080], [768, 1024], [390, 844], [320, 568]];
const PICTURES = ['1280x800-light', '455x768-light', '390x844-light', '320x568-light', '1280x800-dark', '1280x800-large'];

let scene;
before(async () => { scene = await openScene({ relay: true }); });
after(() => scene?.close());

test('the desk: before, with a picture, muted, with More open, and when the picture stops', async () => {
  const faults = [];
  const desk = await scene.openDesk();
  const look = async (name) => {
    faults.push(...await faultsAt(desk.page, `desk-call-${name}`, DESKS, ['light', 'dark', 'forced', 'large'], { pictures: PICTURES }));
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
