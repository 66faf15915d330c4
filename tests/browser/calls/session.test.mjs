// A whole session on one phone-sized page, with picture, voice, tones and dot, through a real relay (coturn). What binds: relayed candidates and their
// pairs (RFC 8445, RFC 8656), what a description may say (RFC 8829).

import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { createHmac } from 'node:crypto';
import { after, before } from 'node:test';
import { promisify } from 'node:util';
import { checkWithCall, freeze, goesOn, keepConnections, looksAnew, sees, THEIRS_AT_DESK, THEIRS_AT_STAGE, waysOf } from '../support/call.mjs';
import { PROGRAMS } from '../support/harness.mjs';
import { setRows } from '../support/record.mjs';
import { startRelay } from '../support/relay.mjs';
import { LOCATION, accessible, openScene } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';
import { story } from '../support/story.mjs';

const test = story();
const PHONE = { width: 390, height: 844 };
let scene, desk, clinician, stage, client;

before(async () => {
  scene = await openScene({ relay: true });
});
after(() => scene?.close());

function hearCalls(page) {
  page.calls = [];
  page.on('websocket', (socket) => socket.on('framereceived', ({ payload }) => {
    const said = JSON.parse(payload);
    if (said.type === 'call') page.calls.push(said);
  }));
}

/** The pair of candidates in use on this page, as getStats has it. */
const pairOf = (page) => page.evaluate(async () => {
  const report = await globalThis.peers.at(-1).getStats();
  const all = [...report.values()];
  const transport = all.find((one) => one.type === 'transport');
  const pair = report.get(transport.selectedCandidatePairId);
  const [local, remote] = [report.get(pair.localCandidateId), report.get(pair.remoteCandidateId)];
  return { local: local.candidateType, remote: remote.candidateType, gathered: all.filter((one) => one.type === 'local-candidate').map((one) => one.candidateType) };
});

test('before the client is let in nobody sees or hears anybody: no way, no password, no media', async () => {
  desk = await scene.openDesk({ width: 455, height: 768 });
  clinician = desk.page;
  await keepConnections(clinician);
  hearCalls(clinician);
  await clinician.reload();
  await desk.until('WAITING');
  client = await scene.clientPage(PHONE);
  await keepConnections(client);
  hearCalls(client);
  stage = scene.stage = new Stage(client);
  await stage.join(await desk.mint());
  await checkWithCall(stage, (what) => accessible(client, what));
  await desk.until('AT THE DOOR');
  await clinician.waitForTimeout(1_500);
  // A desk that comes is told that whatever call it had is over: it may have come back.
  assert.deepEqual([client.calls, clinician.calls.filter(({ kind }) => kind !== 'over')], [[], []]);
  assert.deepEqual(await Promise.all([client, clinician].map((page) => page.evaluate(() => globalThis.peers.length))), [0, 0]);
  await desk.untilText('face', /Nobody is seen or heard before you let them in/);
});

test('let in, both see and hear each other by the relay alone', async () => {
  await desk.admit({ location: LOCATION });
  await sees(clinician, THEIRS_AT_DESK);
  await sees(client, THEIRS_AT_STAGE);
  await desk.untilText('face', /picture on, sound on/);
  for (const page of [client, clinician]) {
    const { local, remote, gathered } = await pairOf(page);
    assert.deepEqual([local, remote], ['relay', 'relay']);
    assert.deepEqual([...new Set(gathered)], ['relay'], 'the browser did not even look for others');
  }
  const said = JSON.stringify([client.calls, clinician.calls]);
  assert.ok(!/typ (host|srflx|prflx)/.test(said) && !/\.local/.test(said), 'no other way was passed on');
  await accessible(clinician, 'desk with the face');
  await accessible(client, 'client with the picture');
});

/** One address of each range that a relay must not pass on to, but that of this one itself: private, of providers, nobody's, anybody's. */
const DENIED = ['10.0.0.1', '172.16.0.1', '192.168.0.1', '100.64.0.1', '169.254.169.254', '0.0.0.1', '192.0.2.1'];

/** What `leeward doctor` says with these settings, whatever it ends with. */
const doctor = (env) => promisify(execFile)(`${PROGRAMS}/leeward`, ['doctor'], { env: { ...process.env, ...env } })
  .then(({ stdout }) => stdout, ({ stdout, stderr }) => `${stdout}\n${stderr}`);

test('the doctor finds the relay and its password well, and says what is wrong with its cure', async () => {
  const { env } = scene.relay;
  const said = await doctor(env);
  assert.match(said, /^well .*a password of ours is accepted$/m);
  assert.match(said, /^well .*another password is refused$/m);
  assert.match(said, /^well .*it passes on from one of its places to another$/m);
  for (const address of DENIED) assert.match(said, new RegExp(`^well .*nothing goes to ${address.replaceAll('.', '\\.')}$`, 'm'));
  assert.doesNotMatch(said, /PROBLEM/);
  const open = await startRelay(undefined, { open: true });
  const told = await doctor(open.env);
  await open.stop();
  // This one refuses by itself to send to what is no network.
  const passed = DENIED.filter((address) => address !== '0.0.0.1');
  for (const address of passed) assert.match(told, new RegExp(`^PROBLEM .*nothing goes to ${address.replaceAll('.', '\\.')}\n +It passes on to .*Take the denied-peer-ip lines`, 'm'));
  assert.match(told, new RegExp(`${passed.length} found`));
  assert.match(await doctor({ ...env, LEEWARD_RELAY_SECRET: 'another-secret-of-this-length' }), /^PROBLEM .*password of ours.*\n +.*LEEWARD_RELAY_SECRET/m);
  assert.match(await doctor({ ...env, LEEWARD_RELAY_URL: 'turn:127.0.0.1:9' }), /^PROBLEM .*reached\n +.*Is it running/m);
  assert.match(await doctor({}), /^relay: none is set/m);
});

test('the password is what relays make of its name, by an HMAC of Node, and holds ten minutes', () => {
  const { ways } = client.calls.find(({ kind }) => kind === 'begin');
  assert.equal(ways.relay_only, true);
  assert.equal(ways.credential, createHmac('sha1', scene.relay.secret).update(ways.username).digest('base64'));
  const left = Number(ways.username.split(':')[0]) - Date.now() / 1000;
  assert.ok(left > 500 && left <= 600, `${left} s`);
  const other = clinician.calls.find(({ kind }) => kind === 'begin').ways;
  assert.notEqual(other.username, ways.username, 'each page has its own');
});

test('a set with dot and tones runs beside the picture, and the dot\u2019s field is not covered', async () => {
  await desk.sight();
  await desk.cycles(12);
  await scene.settle();
  const more = clinician.getByText('More', { exact: true });
  await more.click();
  // A set closes Help: the field must not change its size by it, or the set would end.
  await client.getByText('Help', { exact: true }).click();
  await desk.start();
  await stage.untilPage('running');
  assert.equal(await more.isVisible(), false, 'what opens over the desk does not lie over STOP');
  const [picture, field] = await Promise.all([client.locator(THEIRS_AT_STAGE).boundingBox(), client.locator('#field').boundingBox()]);
  assert.ok(picture.y + picture.height <= field.y, `picture to ${picture.y + picture.height}, field from ${field.y}`);
  assert.ok(Number(await client.locator(THEIRS_AT_STAGE).evaluate((one) => getComputedStyle(one).opacity)) < 0.3, 'dimmed');
  await desk.untilOver();
  await desk.untilText('showing', 'at rest after 12 cycles');
  await more.waitFor();
  assert.equal(await more.locator('..').evaluate((one) => one.open), false, 'closed as the set began');
});

test('one tap mutes, and both are told so in words', async () => {
  await client.getByRole('button', { name: 'Mute' }).click();
  await client.getByText('You are muted. They cannot hear you.').waitFor();
  await desk.untilText('face', /no sound: muted/);
  await client.getByRole('button', { name: 'MUTED' }).click();
  await desk.untilText('face', /picture on, sound on/);
  await desk.press('Shift+M');
  await desk.untilText('face', /YOU ARE MUTED/);
  await client.getByText('They are muted just now.').waitFor();
  await desk.press('Shift+M');
  await desk.untilText('face', /picture on, sound on/);
});

test('a picture that stops in a set is said after two seconds, and after five the set comes to rest; the record has it', async () => {
  await desk.cycles(60);
  await scene.settle();
  await desk.start();
  await stage.untilPage('running');
  const goOn = await freeze(client);
  await desk.untilText('face', /NO PICTURE for \d s/);
  await desk.untilOver(12_000);
  const [, last] = await setRows(scene.house, scene.session);
  assert.equal(last.room_ending, 'unseen');
  await desk.untilText('messages', /see and hear them/);
  await goOn();
  await goesOn(clinician, THEIRS_AT_DESK);
});

test('another network on both sides at once: ways are looked for anew, and nobody reads that anything is lost', async () => {
  const before = await Promise.all([client, clinician].map(waysOf));
  await clinician.evaluate(() => {
    globalThis.said = [];
    const line = document.querySelector('.call-line');
    new MutationObserver(() => globalThis.said.push(line.textContent)).observe(line, { childList: true, characterData: true, subtree: true });
  });
  await Promise.all([client, clinician].map((page) => page.evaluate(() => { dispatchEvent(new Event('online')); })));
  for (const [i, page] of [client, clinician].entries()) await looksAnew(page, before[i]);
  await goesOn(client, THEIRS_AT_STAGE);
  await goesOn(clinician, THEIRS_AT_DESK);
  // Longer than it takes to find out that the two do not agree.
  await client.waitForTimeout(2_000);
  await desk.untilText('face', /picture on, sound on/);
  assert.deepEqual((await clinician.evaluate(() => globalThis.said)).filter((words) => /lost/.test(words)), []);
});

test('the session is closed by the list, and camera and microphone are let go of on both pages', async () => {
  const open = (page) => page.evaluate(() => globalThis.opened.filter(({ readyState }) => readyState === 'live').map(({ kind }) => kind).sort());
  assert.deepEqual(await Promise.all([client, clinician].map(open)), [['audio', 'video'], ['audio', 'video']]);
  await desk.note({ words: 'the ramp is further off', mark: 'changing', sud: 6 });
  await desk.close({ kind: 'Incomplete', used: 'slow breathing', next: 'Thursday' });
  await desk.until('CLOSED');
  await stage.until('The meeting has ended.');
  await desk.untilText('face', /^The session is closed/);
  assert.deepEqual(await Promise.all([client, clinician].map(open)), [[], []]);
  scene.calm();
});
