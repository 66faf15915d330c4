// Opens the three links of ./deploy/demo in three browser contexts. Prints what each shows; throws if one shows nothing.

import assert from 'node:assert/strict';
import { launch, openPage } from './support/chromium.mjs';

const LINKS = {
  'clinician\'s desk': process.env.LEEWARD_DEMO_DESK,
  'practice lead': process.env.LEEWARD_DEMO_LEAD,
  'client': process.env.LEEWARD_DEMO_CLIENT,
};

const browser = await launch();
try {
  for (const [who, link] of Object.entries(LINKS)) {
    const page = await openPage(browser, new URL(link).origin);
    const response = await page.goto(link);
    assert.equal(response.status(), 200, `${who}: ${link} answered ${response.status()}`);
    const heading = (await page.locator('h1').first().innerText()).trim();
    assert.notEqual(heading, '', `${who}: no heading`);
    assert.deepEqual(page.troubles, [], who);
    console.log(`${who}: ${heading}`);
  }
} finally {
  await browser.close();
}
