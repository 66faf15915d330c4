// A client's page, looked at in every size it is used in.

import { accessibilityViolations } from './chromium.mjs';
import { APPEARANCES, extremes, keepPicture, painted, PAPER } from './layout.mjs';
import { layoutFaults } from './stage_layout.mjs';

/** Upright and turned, the phone of most clients first. */
export const SIZES = [[390, 844], [320, 568], [844, 390], [568, 320]];
const DESKTOPS = [[1280, 800], [1920, 1080], [768, 1024]];

/** The page hears of its new size with the next frame. */
export async function resize(page, [width, height]) {
  await page.setViewportSize({ width, height });
  await painted(page);
}

/** Holds a client's page against every size, or `sizes`, with Help closed and open. @returns its faults, a line each */
export async function lookAt({ page }, name, sizes = [...SIZES, ...DESKTOPS]) {
  const faults = [];
  const usual = page.viewportSize();
  const root = await page.evaluate(() => Number.parseFloat(getComputedStyle(document.documentElement).fontSize));
  const help = page.getByText('Help', { exact: true });
  faults.push(...(await accessibilityViolations(page)).map((fault) => `${name}: ${fault}`));
  for (const [width, height] of sizes) {
    await resize(page, [width, height]);
    const where = `${name} at ${width}x${height}, ${root} px`;
    // Beside Help there is no room on both sides of large text.
    const centred = height > width || width >= 35 * root;
    const appearances = extremes(sizes).some(([one]) => one === width) ? ['forced', 'light'] : ['light'];
    faults.push(...await inEachAppearance(page, where, appearances, { centred }));
    await keepPicture(page, `stage-${name}-${root}-${width}x${height}`);
    if (await help.isVisible()) {
      await help.click();
      await page.waitForSelector('body[data-help]');
      faults.push(...(await layoutFaults(page, { centred: height > width })).map((fault) => `${where}, Help open: ${fault}`));
      await keepPicture(page, `stage-${name}-help-${root}-${width}x${height}`);
      await help.click();
      await page.waitForSelector('body:not([data-help])');
    }
  }
  faults.push(...await onPaper(page, `${name} on paper, ${root} px`));
  await resize(page, [usual.width, usual.height]);
  return faults;
}

async function onPaper(page, where) {
  await resize(page, PAPER);
  await page.emulateMedia({ media: 'print', forcedColors: 'none', ...APPEARANCES.light });
  const faults = (await layoutFaults(page)).map((fault) => `${where}: ${fault}`);
  await keepPicture(page, `stage-${where}`);
  await page.emulateMedia({ media: 'screen' });
  return faults;
}

/** Light last: the page is left as it was. Dark is colours alone, see `layout.mjs`. */
async function inEachAppearance(page, where, appearances, layout) {
  const faults = [];
  for (const appearance of appearances) {
    await page.emulateMedia({ forcedColors: 'none', ...APPEARANCES[appearance] });
    faults.push(...(await layoutFaults(page, layout)).map((fault) => `${where}, ${appearance}: ${fault}`));
  }
  return faults;
}
