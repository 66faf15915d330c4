// The processor time of the client's browser while a set of the eyes runs, beside that of a browser with nothing but one CSS
// animation: once without sound, and once with the sound held open in both.

import { besideBare } from '../support/beside.mjs';
import { atMost } from '../support/judge.mjs';

export default { name: 'processor time', needs: ['portal', 'browser'], run };

const SECONDS = 25;

async function run() {
  return [await one(false, 'without sound'), await one(true, 'the sound open in both')];
}

function one(sound, label) {
  return besideBare({ sound }, async (...both) => {
    const [stage, control] = await Promise.all(both.map(spent));
    const share = (seconds) => `${((100 * seconds) / SECONDS).toFixed(1)} %`;
    return atMost(stage / control, 1.5, 'x', `${label}, ${SECONDS} s of a set, whole browser: ${share(stage)} of one core, beside it ${share(control)}:`);
  });
}

/** Processor time of all of a browser's processes in `SECONDS`, s. */
async function spent({ browser, page }) {
  const cdp = await browser.newBrowserCDPSession();
  const total = async () => (await cdp.send('SystemInfo.getProcessInfo')).processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
  const before = await total();
  await page.waitForTimeout(SECONDS * 1000);
  return (await total()) - before;
}
