// The processor time of the client's browser while a set runs, beside that of a browser with nothing but one CSS animation.

import { launch } from '../../browser/support/chromium.mjs';
import { bareAnimation } from '../support/beside.mjs';
import { openLive } from '../support/live.mjs';
import { atMost } from '../support/judge.mjs';

export default { name: 'processor time', needs: ['portal', 'browser'], run };

const SECONDS = 30;

async function run() {
  const live = await openLive();
  const beside = await launch();
  try {
    await live.desk.press('u');
    const bare = await (await beside.newContext({ viewport: live.page.viewportSize() })).newPage();
    await bareAnimation(bare, { width: 500, dot: 30, seconds: 1 });
    await live.run();
    await live.unwatch();
    const [stage, control] = await Promise.all([spent(live.scene.far, live.page), spent(beside, bare)]);
    if ((await live.desk.word()) !== 'RUNNING') throw new Error(`the set ended while it was measured: ${await live.desk.word()}`);
    const share = (seconds) => `${((100 * seconds) / SECONDS).toFixed(1)} %`;
    return atMost(stage / control, 1.5, 'x', `${SECONDS} s of a set, whole browser: ${share(stage)} of one core, beside it ${share(control)}:`);
  } finally {
    await beside.close();
    await live.close();
  }
}

/** Processor time of all of a browser's processes in `SECONDS`, s. */
async function spent(browser, page) {
  const cdp = await browser.newBrowserCDPSession();
  const total = async () => (await cdp.send('SystemInfo.getProcessInfo')).processInfo.reduce((sum, { cpuTime }) => sum + cpuTime, 0);
  const before = await total();
  await page.waitForTimeout(SECONDS * 1000);
  return (await total()) - before;
}
