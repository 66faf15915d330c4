// The demo's people and their pages.

import { openPage } from './chromium.mjs';

/** A page of the demo's member with this role, signed in. */
export async function signedInAs(browser, house, role, options) {
  const page = await openPage(browser, house.origin, options);
  await page.goto(`/demo/${role}`);
  await page.getByRole('button', { name: `Sign in as ${role}` }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/demo'));
  return page;
}

export const ID = /[0-9a-f]{8}-[0-9a-f-]{27}/;

/** The ids in the addresses of the links that fit, in the order in which they stand. */
export const idsOf = (page, selector) => page.locator(selector).evaluateAll((found, id) => found.map((link) => new RegExp(id).exec(link.href)?.[0]), ID.source);
