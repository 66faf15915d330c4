// The browser tests stand on these helpers, so the helpers are tested first, each against what it must be able to see.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import { after, before, test } from 'node:test';
import { accessibilityViolations, addPasskeyDevice, launch, openPage, openWindow } from './support/chromium.mjs';
import { openLink } from './support/link.mjs';

const POLICY = "default-src 'self'; script-src 'self'; require-trusted-types-for 'script'; trusted-types 'none'";
const GOOD = '<!doctype html><html lang="en"><title>Good</title><main><h1>Good</h1><p>Text.</p></main>';
const BAD = '<!doctype html><title>Bad</title><img src="/dot.png"><input>';

let server, origin, browser;

before(async () => {
  server = createServer((request, response) => {
    response.setHeader('content-type', 'text/html');
    if (request.url !== '/open') response.setHeader('content-security-policy', POLICY);
    response.end(request.url === '/bad' ? BAD : GOOD);
  });
  server.on('upgrade', echo);
  await new Promise((resolve) => { server.listen(0, '127.0.0.1', resolve); });
  origin = `http://localhost:${server.address().port}`;
  browser = await launch();
});

after(async () => {
  await browser?.close();
  server.close();
});

test('axe runs under a strict policy and tells a good page from a bad one', async () => {
  const page = await openPage(browser, origin);
  await page.goto('/');
  assert.deepEqual(await accessibilityViolations(page), []);
  await page.goto('/bad');
  const found = (await accessibilityViolations(page)).map((line) => line.split(':')[0]);
  // WCAG 2.2: 3.1.1 language of the page, 1.1.1 text alternatives, 4.1.2 name of a control.
  for (const rule of ['html-has-lang', 'image-alt', 'label']) assert.ok(found.includes(rule), `${rule} in ${found}`);
});

test('a passkey is made and used, and refused when its user is not verified', async () => {
  const page = await openPage(browser, origin);
  const device = await addPasskeyDevice(page);
  await page.goto('/');
  await page.evaluate(makePasskey);
  const [credential] = await device.credentials();
  assert.equal(credential.rpId, 'localhost');
  assert.equal(credential.isResidentCredential, true);
  // Web Authentication Level 2, section 6.1: bit 0 of the flags, byte 32, is user present, bit 2 user verified.
  assert.equal((await page.evaluate(usePasskey))[32] & 0b101, 0b101);
  await device.setUserVerified(false);
  await assert.rejects(page.evaluate(usePasskey), /NotAllowedError/);
});

test('a page in trouble is seen to be', async () => {
  const page = await openPage(browser, origin);
  await page.goto('/open');
  assert.deepEqual(page.troubles, []);
  await Promise.all([page.waitForEvent('pageerror'), page.evaluate(() => { setTimeout(() => { throw new Error('thrown'); }); })]);
  await page.evaluate((foreign) => fetch(foreign).catch(() => {}), origin.replace('localhost', '127.0.0.1'));
  assert.ok(page.troubles.some((line) => line.includes('thrown')), String(page.troubles));
  assert.ok(page.troubles.some((line) => line.startsWith('foreign request')), String(page.troubles));
});

test('a state that has passed is found, in the background too; one that was there before the act is not', async () => {
  const page = await openPage(browser, origin);
  await page.goto('/open');
  const other = await page.context().newPage();
  await other.bringToFront();
  const say = (...words) => page.evaluate(async (all) => {
    const part = document.querySelector('p');
    part.dataset.part = 'word';
    for (const word of all) {
      part.textContent = word;
      await Promise.resolve();
    }
  }, words);
  await say('READY', 'RUNNING', 'STOPPED', 'READY');
  await page.history.until('word', 'STOPPED');
  await assert.rejects(page.history.until('word', 'RUNNING', 200), /never read RUNNING.*it reads "READY", and went by "READY"/, 'it came before what was waited for');
  await page.history.until('word', 'READY');
  await page.history.until('word', 'READY');
  await say('RUNNING', 'READY');
  page.history.act();
  await assert.rejects(page.history.until('word', /RUN/, 200), /went by nothing/);
  await say('STOPPED');
  await page.history.until('word', (word) => word.startsWith('STOP'));
  await page.goto('/');
  await assert.rejects(page.history.until('word', 'STOPPED', 200), /never read STOPPED/, 'another document says nothing yet');
});

test('a window beside another leaves it in front', async () => {
  const page = await openPage(browser, origin);
  await page.goto('/open');
  const beside = await openWindow(page, origin);
  await beside.goto('/open');
  const frames = (one) => one.evaluate(() => new Promise((resolve) => { requestAnimationFrame(() => requestAnimationFrame(() => resolve(document.visibilityState))); }));
  assert.deepEqual(await Promise.all([page, beside].map(frames)), ['visible', 'visible']);
  assert.deepEqual(beside.troubles, []);
});

test('a link is slowed, silenced and cut for an open socket, and the page keeps its origin', async () => {
  const link = await openLink(origin);
  const near = await launch({ flags: link.flags });
  try {
    const page = await openPage(near, origin);
    await page.goto('/open');
    assert.equal(await page.evaluate(() => location.origin), origin);
    await page.evaluate(openSocket);
    link.setDelay(150);
    const slow = await page.evaluate(roundTrip, 5000);
    // Timers count whole milliseconds, so each way may come a little early.
    assert.ok(slow >= 298 && slow < 5000, `150 ms each way took ${slow} ms`);
    link.setDelay(0);
    const quick = await page.evaluate(roundTrip, 5000);
    assert.ok(quick < slow, `${quick} ms without delay, ${slow} ms with it`);
    link.silence();
    assert.equal(await page.evaluate(roundTrip, 500), Infinity);
    assert.equal(await page.evaluate(() => globalThis.socket.readyState), 1, 'silence is not the end of a connection');
    link.restore();
    await page.evaluate(openSocket);
    link.cut();
    await page.waitForFunction(() => globalThis.socket.readyState === 3);
    await assert.rejects(page.evaluate(openSocket), /no socket/);
  } finally {
    await near.close();
    await link.close();
  }
});

// RFC 6455, section 4.2.2: the accept value. Section 5: short text frames, answered unmasked.
function echo(request, socket) {
  const accept = createHash('sha1').update(`${request.headers['sec-websocket-key']}258EAFA5-E914-47DA-95CA-C5AB0DC85B11`).digest('base64');
  socket.write(`HTTP/1.1 101 Switching Protocols\r\nupgrade: websocket\r\nconnection: upgrade\r\nsec-websocket-accept: ${accept}\r\n\r\n`);
  socket.on('data', (frame) => { if ((frame[0] & 15) === 1) socket.write(Buffer.from([0x81, 1, 0x2e])); });
  socket.on('error', () => {});
}

function openSocket() {
  return new Promise((resolve, reject) => {
    globalThis.socket = new WebSocket(`ws://${location.host}/`);
    globalThis.socket.onopen = () => resolve();
    globalThis.socket.onerror = () => reject(new Error('no socket'));
  });
}

function roundTrip(patience) {
  const sent = performance.now();
  return new Promise((resolve) => {
    globalThis.socket.onmessage = () => resolve(performance.now() - sent);
    setTimeout(() => resolve(Infinity), patience);
    globalThis.socket.send('.');
  });
}

function makePasskey() {
  return navigator.credentials.create({
    publicKey: {
      challenge: new Uint8Array(32),
      rp: { name: 'Test' },
      user: { id: new Uint8Array([1]), name: 'a', displayName: 'a' },
      pubKeyCredParams: [{ type: 'public-key', alg: -7 }],
      authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
    },
  }).then(() => undefined);
}

async function usePasskey() {
  const publicKey = { challenge: new Uint8Array(32), userVerification: 'required', timeout: 3000 };
  const { response } = await navigator.credentials.get({ publicKey });
  return [...new Uint8Array(response.authenticatorData)];
}
