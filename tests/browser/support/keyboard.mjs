// Using a page by keyboard alone.

/** A pointer on this page, or on a tab that it opens, is a trouble of that page from now on. Call it before the page is opened. */
export function noPointer(page) {
  return page.context().addInitScript(() => addEventListener('pointerdown', () => console.error('a pointer was used'), { capture: true }));
}

/** Goes on by Tab until `locator` has the focus; throws when it never does, or when a stop on the way shows no focus. */
export async function tabTo(page, locator) {
  await locator.first().waitFor();
  for (let stops = 0; stops < 120; stops++) {
    await page.keyboard.press('Tab');
    // WCAG 2.2, 2.4.7: the keyboard's focus is visible.
    const bare = await page.evaluate(() => {
      const { activeElement: at } = document;
      return at && at !== document.body && getComputedStyle(at).outlineStyle === 'none' ? at.outerHTML.slice(0, 120) : '';
    });
    if (bare) throw new Error(`no visible focus on ${bare}`);
    if (await locator.first().evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`no Tab leads to ${locator}`);
}

/** Goes to a link or button and presses Enter. */
export async function enter(page, role, name) {
  await tabTo(page, page.getByRole(role, { name }));
  await page.keyboard.press('Enter');
}

/** Goes to each field by Tab, in the order given, and types or chooses. Ends in the last field. */
export async function fillByKeys(page, fields) {
  for (const [name, value] of Object.entries(fields)) {
    const field = page.locator(`[name="${name}"]`);
    const kind = await field.first().evaluate((element) => (element.tagName === 'SELECT' ? 'select' : element.type));
    if (kind === 'radio') await choose(page, name, value);
    else {
      await tabTo(page, field);
      if (kind === 'checkbox') await page.keyboard.press('Space');
      else await page.keyboard.type(value);
    }
  }
}

/** A group of radio buttons has one place in the order of Tab; arrows go through it. */
async function choose(page, name, value) {
  await tabTo(page, page.locator(`[name="${name}"]`));
  await page.keyboard.press('Space');
  const chosen = () => page.evaluate((group) => document.querySelector(`[name="${group}"]:checked`)?.value, name);
  for (let presses = 0; (await chosen()) !== value; presses++) {
    if (presses > 12) throw new Error(`no arrow leads to ${name} ${value}`);
    await page.keyboard.press('ArrowDown');
  }
}
