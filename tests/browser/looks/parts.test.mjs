// How the parts that pages of records are made of are worked: what a finger presses; a session that is closed by keyboard beside a
// video window.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { accessibilityViolations, launch } from '../support/chromium.mjs';
import { ID, signedInAs } from '../support/demo.mjs';
import { startHouse } from '../support/harness.mjs';
import { enter, fillByKeys, noPointer, tabTo } from '../support/keyboard.mjs';

const SIZES = [[1280, 800], [390, 844], [320, 568]];

let house, browser;
before(async () => {
  house = await startHouse({ demo: true });
  browser = await launch();
});
after(async () => {
  await browser?.close();
  await house?.stop();
});

/** In the page: what is pressed in tables and link rows and is smaller than 44 px, or lies on another such target. */
function tooClose() {
  const rows = 'td a, td button, td select, th[scope="row"] a, .links a, .links button, .actions a, .actions button, summary';
  const targets = [...document.querySelectorAll(rows)].filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('.unseen'));
  const boxes = targets.map((one) => ({ name: `${one.localName} "${one.textContent.trim()}"`, box: one.getBoundingClientRect() }));
  const small = boxes.filter(({ box }) => box.width < 43.5 || box.height < 43.5).map(({ name, box }) => `${name}: ${box.width.toFixed(1)} by ${box.height.toFixed(1)}`);
  const over = (a, b) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.5;
  const met = boxes.flatMap((one, at) => boxes.slice(at + 1).filter((other) => over(one.box, other.box)).map((other) => `${one.name} lies on ${other.name}`));
  return { count: targets.length, faults: [...small, ...met] };
}

// WCAG 2.2, 2.5.5 (target size, enhanced): 44 by 44 CSS px.
test('what a finger presses is 44 px, in tables too, and lies on nothing else that it presses', async () => {
  const faults = [];
  let count = 0;
  // Each is a way through links of tables, from the page at its beginning.
  for (const [role, ...way] of [
    ['clinician', '/parts', '/presets', '/account', '/clients', '#list tbody th a', 'table a[href^="/targets/"]'],
    ['clinician', '/clients', '#list tbody th a', 'table a[href^="/sessions/"]'],
    ['lead', '/handover', '/replacements', '/practice/caseload', 'table a[href^="/practice/clients/"]'],
    ['administrator', '/members'],
  ]) {
    const page = await signedInAs(browser, house, role, { hasTouch: true });
    for (const step of way) {
      await page.goto(step.startsWith('/') ? step : await page.locator(step).first().getAttribute('href'));
      for (const [width, height] of SIZES) {
        await page.setViewportSize({ width, height });
        const found = await page.evaluate(tooClose);
        count += found.count;
        faults.push(...found.faults.map((fault) => `${new URL(page.url()).pathname} at ${width}: ${fault}`));
      }
      await page.setViewportSize({ width: 1280, height: 800 });
    }
    await page.context().close();
  }
  assert.ok(count > 200, `${count} targets`);
  assert.deepEqual(faults, []);
});

test('a session is closed by keyboard at 455 by 768, with what was used last time at hand', async () => {
  const page = await signedInAs(browser, house, 'clinician', { width: 455, height: 768 });
  await page.goto('/clients');
  const clients = await page.locator('#list tbody th a').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
  let shown = '';
  for (const client of clients) {
    await page.goto(client);
    const start = page.getByRole('button', { name: /^Start session/ });
    if (!(await start.count()) || !/To settle: (?!Nothing)/.test(await page.locator('.opening').textContent())) continue;
    shown = (await page.locator('.opening').textContent()).match(/To settle: (.*?)\./)[1];
    await start.click();
    await page.waitForURL('**/desk');
    break;
  }
  assert.ok(shown, 'a client who was settled by something last time');
  const session = ID.exec(page.url())[0];
  await noPointer(page);
  await page.goto(`/sessions/${session}/close`);
  assert.deepEqual(await accessibilityViolations(page), []);
  assert.equal(await page.evaluate(() => document.scrollingElement.scrollWidth - innerWidth), 0, 'nothing scrolls sideways');
  assert.equal(await page.locator('[name="resource"]').inputValue(), '', 'nothing goes in by itself');
  await fillByKeys(page, { kind: 'incomplete' });
  await tabTo(page, page.getByRole('button', { name: 'Used again' }));
  await page.keyboard.press('Enter');
  const used = await page.locator('[name="resource"]').inputValue();
  assert.ok(used.startsWith(shown), `${used}, shown: ${shown}`);
  assert.equal(await page.evaluate(() => document.activeElement.name), 'resource', 'one goes on from the field');
  await fillByKeys(page, { effect: 'settled', state: 'calm', companion: 'nobody', next_contact: 'Friday by phone, we call' });
  await enter(page, 'button', 'Close the session');
  await page.waitForURL(`**/sessions/${session}`);
  await page.getByText(`${used}. Settled after it`).waitFor();
  assert.deepEqual(page.troubles, [], 'by keyboard alone');
});
