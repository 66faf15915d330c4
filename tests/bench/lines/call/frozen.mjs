// A client's picture that stops coming: how soon the desk says so, and that it says nothing of a good line.

import { freeze, goesOn, THEIRS_AT_DESK } from '../../../browser/support/call.mjs';
import { atMost, quantile } from '../../support/judge.mjs';
import { openLive } from '../../support/live.mjs';

export default { name: 'frozen picture noticed', needs: ['portal', 'browser', 'relay'], run };

const TRIES = 20;
const AT_MOST = 2_500;
const GOOD_MINUTES = 10;

async function run() {
  const live = await openLive({ call: true });
  try {
    await live.desk.page.evaluate(keepNotices);
    const waits = [];
    for (let i = 0; i < TRIES; i++) waits.push(await one(live));
    const noticed = atMost(quantile(waits, 0.95), AT_MOST, ' ms', `p95 of ${TRIES}:`);
    const before = (await notices(live)).length;
    await goodLine(live);
    const untrue = (await notices(live)).length - before;
    return [noticed, atMost(untrue, 0, ' notices', `in ${GOOD_MINUTES} minutes of a good line, sets running:`)];
  } finally {
    await live.close();
  }
}

async function one({ desk, page }) {
  const before = await desk.page.evaluate(() => globalThis.notices.length);
  const since = await page.evaluate(() => Date.now());
  const goOn = await freeze(page);
  await desk.page.waitForFunction((n) => globalThis.notices.length > n, before, { timeout: 20_000 });
  const noticed = await desk.page.evaluate((n) => globalThis.notices[n], before);
  await goOn();
  await goesOn(desk.page, THEIRS_AT_DESK);
  return noticed - since;
}

/** Sets without an end that the client follows, one after the other, for the whole time. */
async function goodLine(live) {
  await live.desk.press('u');
  for (const since = Date.now(); Date.now() - since < GOOD_MINUTES * 60_000;) {
    if ((await live.desk.word()) !== 'RUNNING') await live.run();
    await live.page.waitForTimeout(1_000);
  }
}

const notices = ({ desk }) => desk.page.evaluate(() => globalThis.notices);

/** Runs in the desk: when it began to say that nothing comes, each time, by the machine's clock. */
function keepNotices() {
  globalThis.notices = [];
  const line = document.querySelector('.call-line');
  let said = false;
  new MutationObserver(() => {
    const says = /NO (PICTURE|SOUND)/.test(line.textContent);
    if (says && !said) globalThis.notices.push(Date.now());
    said = says;
  }).observe(line, { childList: true, characterData: true, subtree: true });
}
