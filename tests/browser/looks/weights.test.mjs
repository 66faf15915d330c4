// What the network carries for a page and all that it asks for, bodies as they were sent.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { launch, openPage } from '../support/chromium.mjs';
import { idsOf, signedInAs } from '../support/demo.mjs';
import { Desk } from '../support/desk.mjs';
import { startHouse } from '../support/harness.mjs';
import { newClient, startSession } from '../support/practice.mjs';
import { CLIENT } from '../support/scene.mjs';
import { Stage } from '../support/stage.mjs';

let house, browser;
before(async () => {
  house = await startHouse({ demo: true });
  browser = await launch();
});
after(async () => {
  await browser?.close();
  await house?.stop();
});

/** The page of this path with nothing kept from before: `{bytes, requests, encodings}`. */
async function weigh(page, path) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Network.enable');
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  const carried = new Map();
  const encodings = new Set();
  cdp.on('Network.responseReceived', ({ requestId, response }) => {
    if (!response.url.startsWith('http')) return;
    carried.set(requestId, 0);
    encodings.add(response.headers['content-encoding']);
  });
  cdp.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => { if (carried.has(requestId)) carried.set(requestId, encodedDataLength); });
  await page.goto(path, { waitUntil: 'networkidle' });
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: false });
  await cdp.detach();
  const weight = { bytes: [...carried.values()].reduce((sum, one) => sum + one, 0), requests: carried.size, encodings: [...encodings] };
  assert.ok(weight.requests >= 2 && weight.encodings.includes('gzip'), `${path}: a page and its style, compressed: ${JSON.stringify(weight)}`);
  return weight;
}

test('the stage weighs 40 kB at most, the desk 60 kB, everything included but the closing, 8 kB', async (t) => {
  const page = await signedInAs(browser, house, 'clinician');
  await startSession(page, await newClient(page, CLIENT));
  const desk = new Desk(page);
  await desk.until('WAITING');
  const stage = new Stage(await openPage(browser, house.origin, { width: 390, height: 844 }));
  const minted = await desk.mint();
  const join = await weigh(stage.page, minted.link);
  await stage.join(minted);
  const room = await weigh(stage.page, '/stage');
  const member = await signedInAs(browser, house, 'clinician');
  const live = await weigh(member, new URL(desk.page.url()).pathname);
  // The closing's own script comes three seconds later.
  const late = () => performance.getEntriesByType('resource').find((one) => one.name.endsWith('/closing.js'))?.encodedBodySize;
  const closing = await (await member.waitForFunction(late)).jsonValue();
  t.diagnostic(JSON.stringify({ join, room, live, closing }));
  assert.ok(join.bytes + room.bytes <= 40_000, `${join.bytes} + ${room.bytes}`);
  assert.ok(live.bytes <= 60_000, `${live.bytes}`);
  assert.ok(closing > 0 && closing <= 8_000, `the closing: ${closing}`);
});

test('a page of records weighs 20 kB at most, everything included', async (t) => {
  const clinician = await signedInAs(browser, house, 'clinician');
  const lead = await signedInAs(browser, house, 'lead');
  await clinician.goto('/clients');
  const [client] = await idsOf(clinician, 'table a[href^="/clients/"]');
  await clinician.goto(`/clients/${client}`);
  const [target] = await idsOf(clinician, 'table a[href^="/targets/"]');
  const session = (await idsOf(clinician, 'table a[href^="/sessions/"]')).at(-1);
  await lead.goto('/practice/caseload');
  const [seen] = await idsOf(lead, 'table a[href^="/practice/clients/"]');
  const weights = {};
  for (const [page, ...paths] of [
    [clinician, '/clients', `/clients/${client}`, `/clients/${client}/edit`, `/clients/${client}/comfort`, `/targets/${target}`, `/sessions/${session}`, `/sessions/${session}/note`, '/presets', '/account'],
    [lead, '/practice/caseload', `/practice/clients/${seen}`, '/handover'],
  ]) {
    for (const path of paths) weights[path] = (await weigh(page, path)).bytes;
  }
  t.diagnostic(JSON.stringify(weights));
  for (const [path, bytes] of Object.entries(weights)) assert.ok(bytes <= 20_000, `${path}: ${bytes}`);
});
