// The processor time of the client's browser while a set of the eyes runs, beside that of a browser with nothing but one CSS
// animation: without sound, with the sound held open in both, and on a processor that is six times slower for scripts in both.

import { besideBare } from '../../support/beside.mjs';
import { atMost } from '../../support/judge.mjs';

export default { name: 'processor time', needs: ['portal', 'browser'], run };

const SECONDS = 25;

async function run() {
  return [await one({}, 'without sound'), await one({ sound: true }, 'the sound open in both'), await one({ slower: 6 }, 'scripts six times slower in both')];
}

function one({ sound = false, slower = 1 }, label) {
  return besideBare({ sound }, async (...both) => {
    await Promise.all(both.map(({ page }) => slow(page, slower)));
    const [stage, control] = await Promise.all(both.map(spent));
    const share = (seconds) => `${((100 * seconds) / SECONDS).toFixed(1)} %`;
    return atMost(stage / control, 1.5, 'x', `${label}, ${SECONDS} s of a set, whole browser: ${share(stage)} of one core, beside it ${share(control)}:`);
  });
}

/**
 * Makes a page's scripts take `times` as long, as on a poor device: Chromium's own way (`Emulation.setCPUThrottlingRate` of its DevTools
 * Protocol), which holds the thread up by work of its own, so that this shows as processor time too.
 */
async function slow(page, times) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** Processor time of all of a browser's processes in `SECONDS`, s. */
async function spent({ browser, page }) {
  const cdp = await browser.newBrowserCDPSession();
  const total = async () => (await cdp.send('SystemInfo.getProcessInfo')).processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
  const before = await total();
  await page.waitForTimeout(SECONDS * 1000);
  return (await total()) - before;
}
