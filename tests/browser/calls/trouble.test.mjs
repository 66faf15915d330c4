// What is in the way of picture and voice: each has its sentence for the client and for the desk, and the session goes on with what is left.

import assert from 'node:assert/strict';
import { after, before } from 'node:test';
import { checkWithCall, freeze, keepConnections, sees, skipRest, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../support/call.mjs';
import { launch } from '../support/chromium.mjs';
import { setRows } from '../support/record.mjs';
import { accessible, openScene, Scene } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';

const PHONE = { width: 390, height: 844, hasTouch: true };
/** Devices are there, and the browser asks before it gives them. */
const ASKS = ['--use-fake-device-for-media-stream=fps=10', '--allow-loopback-in-peer-connection'];
/** The browser gives what there is, and there is nothing. */
const NO_DEVICES = ['--use-fake-ui-for-media-stream', '--allow-loopback-in-peer-connection'];

let scene;
let desk;
before(async () => { scene = await openScene({ relay: true }); });
after(() => scene?.close());

const test = Scene.tests(() => scene, () => { desk = scene.desk; });

/** A client who has come to the question about picture and voice, in a browser with these flags. */
async function atTheQuestion(flags) {
  if (flags) scene.far = await launch({ flags: [...scene.link.flags, ...flags] });
  const page = await scene.clientPage(PHONE);
  await keepConnections(page);
  scene.stage = new Stage(page);
  await scene.stage.join(await desk.mint());
  for (const answer of ['Start', 'Done', 'It fits', 'About as long as my arm']) await scene.stage.tap(answer);
  await scene.stage.until('Picture and voice');
  return page;
}

/** Goes on without what is in the way, and is let in. */
async function goOn(page) {
  await scene.stage.tap('Go on without');
  await skipRest(scene.stage);
  await scene.admit();
  await page.locator('#call-said').waitFor();
}

/** A short set runs to its end, whatever the call does. */
async function setGoesOn() {
  await desk.cycles(6);
  await scene.settle();
  await desk.start();
  await scene.stage.untilPage('running');
  await desk.untilOver(20_000);
  assert.equal((await setRows(scene.house, scene.session)).at(-1).room_ending, 'done');
}

test('refused: the client reads how to allow it, the desk why nobody is seen, and a set goes on', async () => {
  const page = await atTheQuestion(ASKS);
  await page.context().grantPermissions([]);
  await scene.stage.tap('Camera and microphone');
  await page.getByText('The browser may not use your microphone.').waitFor();
  await page.getByText('allow the camera, then try again').waitFor();
  await accessible(page, 'refused');
  // Allowed now, and tried again.
  await page.context().grantPermissions(['microphone']);
  await scene.stage.tap('Try again');
  await page.getByText('The browser may not use your camera.').waitFor();
  assert.equal(await page.getByText('may not use your microphone').count(), 0, 'the microphone works');
  await goOn(page);
  await desk.untilText('face', /no picture: not allowed in their browser, sound on/);
  await page.getByText('The browser may not use your camera.').waitFor();
  await setGoesOn();
});

test('no devices: nothing is found, the client goes on without, and they speak by telephone', async () => {
  const page = await atTheQuestion(NO_DEVICES);
  await scene.stage.tap('Camera and microphone');
  await page.getByText('No microphone was found.').waitFor();
  await page.getByText('No camera was found.').waitFor();
  await goOn(page);
  await desk.untilText('face', /no picture: they have none, no sound: they have none/);
  await page.getByText('No microphone was found. Plug one in, or we talk by phone.').waitFor();
  await setGoesOn();
});

test('taken: another program has the camera, and the voice alone is sent', async () => {
  const page = await atTheQuestion();
  // No second program here takes a camera: the browser says what it then says (W3C, Media Capture and Streams: NotReadableError).
  await page.evaluate(() => {
    const given = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = (wanted) => (wanted.video ? Promise.reject(new DOMException('in use', 'NotReadableError')) : given(wanted));
  });
  await scene.stage.tap('Camera and microphone');
  await page.getByText('Your camera is in use by another program. Close that program, then try again.').waitFor();
  await goOn(page);
  await desk.untilText('face', /no picture: another program or a phone call has it, sound on/);
});

test('the desk\u2019s own camera and microphone refused: the desk says so with its cure, and sees the client all the same', async () => {
  await desk.page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('refused', 'NotAllowedError'));
  });
  await desk.page.reload();
  await desk.until('WAITING');
  await scene.join(await scene.clientPage(PHONE));
  await checkWithCall(scene.stage);
  await scene.admit();
  await sees(desk.page, THEIRS_AT_DESK);
  await desk.untilText('face', /Your microphone is not allowed: press the sign beside the address/);
  await scene.stage.page.getByText('They send no sound just now.').waitFor();
});

test('sound that stops coming is said, and the set comes to rest', async () => {
  const page = await atTheQuestion();
  await scene.stage.tap('Camera and microphone');
  await scene.stage.tap('Go on');
  await skipRest(scene.stage);
  await scene.admit();
  await sees(desk.page, THEIRS_AT_DESK);
  await sees(page, THEIRS_AT_STAGE);
  await desk.cycles(60);
  await scene.settle();
  await desk.start();
  await scene.stage.untilPage('running');
  await freeze(page, 'audio');
  await desk.untilText('face', /NO SOUND for \d s/);
  await desk.untilOver(12_000);
  assert.equal((await setRows(scene.house, scene.session)).at(-1).room_ending, 'unheard');
});

/** An aid presses with the click of a finger, and no finger comes down before it. */
async function readyByAnAid(page) {
  const button = page.getByRole('button', { name: 'I am ready' });
  await page.waitForTimeout(700); // so soon after a stop it may belong to the stop
  await button.evaluate((one) => one.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true, detail: 1 })));
  await button.waitFor({ state: 'detached' });
}

test('a tap on Mute or Leave in a running set stops it as any tap does, and mutes nobody and leaves nothing', async () => {
  const page = await atTheQuestion();
  const { stage } = scene;
  await stage.tap('Camera and microphone');
  await stage.tap('Go on');
  await skipRest(stage);
  await scene.admit();
  await sees(page, THEIRS_AT_STAGE);
  await desk.cycles(60);
  await scene.settle();
  for (const name of ['Mute', 'Leave']) {
    await desk.start();
    await stage.untilPage('running');
    const { x, y, width, height } = await page.getByRole('button', { name }).boundingBox();
    // With a finger, whose click goes to what lies there when it is lifted.
    await page.touchscreen.tap(x + width / 2, y + height / 2);
    await desk.until('STOPPED BY CLIENT');
    await desk.untilText('face', /picture on, sound on/);
    assert.equal(await page.getByText('You are muted').count(), 0);
    if (name === 'Mute') await readyByAnAid(page);
    else await stage.ready();
    await desk.until('READY');
  }
  await page.getByRole('button', { name: 'Leave' }).tap();
  await page.waitForURL('**/left');
});

test('a relay that does not answer: both read that it does not get through, and the session goes on', async () => {
  await scene.relay.stop();
  const page = await atTheQuestion();
  await scene.stage.tap('Camera and microphone');
  await scene.stage.tap('Go on');
  await skipRest(scene.stage);
  await scene.admit();
  await page.getByText('Picture and voice do not get through. We talk by phone.').waitFor({ timeout: 25_000 });
  await desk.untilText('face', /do not get through\. By telephone/);
  await setGoesOn();
});
