// The pages of records in every window and appearance they are used in: nothing is cut off, stands on something else or scrolls sideways.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { accessibilityViolations, launch } from './support/chromium.mjs';
import { idsOf, signedInAs } from './support/demo.mjs';
import { startHouse } from './support/harness.mjs';
import { appear, APPEARANCES, faultsAt } from './support/layout.mjs';

const SIZES = [[1280, 800], [1920, 1080], [768, 1024], [455, 768], [390, 844], [844, 390], [320, 568]];
const ALL = Object.keys(APPEARANCES);

let house, browser;
before(async () => {
  house = await startHouse({ demo: true });
  browser = await launch();
});
after(async () => {
  await browser?.close();
  await house?.stop();
});

/** What is wrong with the pages of these paths, `[name, path, pictures]`. */
async function faultsOf(page, pages) {
  const found = [];
  for (const [name, path, pictures = []] of pages) {
    assert.equal((await page.goto(path)).status(), 200, path);
    found.push(...await faultsAt(page, name, SIZES, ALL, { pictures }));
    for (const appearance of ['dark', 'light']) {
      await appear(page, APPEARANCES[appearance]);
      found.push(...(await accessibilityViolations(page)).map((fault) => `${name} ${appearance}: ${fault}`));
    }
  }
  return found;
}

test('a clinician\'s pages', async () => {
  const page = await signedInAs(browser, house, 'clinician');
  await page.goto('/clients');
  const clients = await idsOf(page, 'table a[href^="/clients/"]');
  await page.goto(`/clients/${clients[0]}`);
  const [target] = await idsOf(page, 'table a[href^="/targets/"]');
  const sessions = await idsOf(page, 'table a[href^="/sessions/"]');
  const session = sessions.at(-1);
  assert.deepEqual(await faultsOf(page, [
    ['caseload', '/clients', ['1280x800-light', '1280x800-dark', '390x844-light', '320x568-light']],
    ['client', `/clients/${clients[0]}`, ['1280x800-light', '1280x800-dark', '390x844-light', '718x1046-print']],
    ['session', `/sessions/${session}`, ['1280x800-light', '390x844-light', '1280x800-large', '718x1046-print']],
    ['target', `/targets/${target}`, ['1280x800-light']],
    ['set', `/sessions/${session}/sets/1`, ['1280x800-light']],
    ['note', `/sessions/${session}/note`],
    ['client-form', `/clients/${clients[0]}/edit`, ['1280x800-light']],
    ['comfort', `/clients/${clients[0]}/comfort`, ['1280x800-light']],
    ['presets', '/presets', ['1280x800-light']],
    ['preset-form', '/presets/new'],
    ['account', '/account', ['1280x800-light']],
  ]), []);
});

test('a lead\'s and an administrator\'s pages', async () => {
  const lead = await signedInAs(browser, house, 'lead');
  await lead.goto('/practice/caseload');
  const [client] = await idsOf(lead, 'table a[href^="/practice/clients/"]');
  assert.deepEqual(await faultsOf(lead, [
    ['practice', '/practice/caseload', ['1280x800-light', '1280x800-dark', '1920x1080-light', '390x844-light']],
    ['practice-client', `/practice/clients/${client}`, ['1280x800-light']],
    ['handover', '/handover'],
  ]), []);
  const administrator = await signedInAs(browser, house, 'administrator');
  await administrator.goto('/members');
  const [member] = await idsOf(administrator, 'a[href^="/members/"]');
  assert.deepEqual(await faultsOf(administrator, [
    ['members', '/members', ['1280x800-light', '390x844-light']],
    ['member-roles', `/members/${member}/roles`],
  ]), []);
});
