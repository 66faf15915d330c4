// A client with Firefox: the check, picture and voice through the relay, a set, and the way out.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { keepPeers, sees, THEIRS_AT_DESK, THEIRS_AT_STAGE } from '../support/call.mjs';
import { openFirefox } from '../support/firefox.mjs';
import { setRows } from '../support/record.mjs';
import { openScene } from '../support/scene.mjs';

let scene, client;
before(async () => {
  scene = await openScene({ relay: true });
  client = await openFirefox({ width: 390, height: 844 });
});
after(async () => {
  await client?.close();
  await scene?.close();
});

test('a whole visit by Firefox, the desk by Chromium', async () => {
  const { page } = client;
  await page.evaluateOnNewDocument(keepPeers);
  const desk = await scene.openDesk();
  await client.join(await desk.mint());
  for (const answer of ['Start', 'Done', 'It fits', 'About as long as my arm', 'Camera and microphone']) await client.tap(answer);
  await page.waitForFunction(() => document.querySelector('main .self')?.videoWidth > 0);
  await client.tap('Go on');
  await client.tap('Play a tone');
  // On a machine without an output Firefox plays nothing, and the page says so; elsewhere the test hears nothing.
  if (await client.one('I hear nothing', 'Go on') === 'I hear nothing') await client.tap('I hear nothing');
  await client.tap('Go on');
  while (await client.heading() !== 'Please wait') await client.tap('Skip');
  await scene.admit();
  await sees(desk.page, THEIRS_AT_DESK);
  await client.goesOn(THEIRS_AT_STAGE);
  await desk.untilText('face', /picture on, sound on/);
  assert.deepEqual(await page.evaluate(pairInUse), { local: 'relay', remote: 'relay' });
  await desk.cycles(6);
  await client.until('You are in');
  await desk.start();
  await page.waitForFunction(() => document.body.dataset.page === 'running');
  await desk.untilOver(20_000);
  assert.equal((await setRows(scene.house, scene.session)).at(-1).room_ending, 'done');
  await client.tap('Leave');
  await desk.until('CLIENT HAS LEFT');
});

/** Runs in the page: the kinds of the candidates in use (W3C, Identifiers for WebRTC's Statistics API); Firefox names the pair by itself. */
async function pairInUse() {
  const report = await globalThis.peers.at(-1).getStats();
  const pair = [...report.values()].find(({ type, selected, nominated, state }) => type === 'candidate-pair' && (selected || nominated) && state === 'succeeded');
  return { local: report.get(pair.localCandidateId).candidateType, remote: report.get(pair.remoteCandidateId).candidateType };
}
