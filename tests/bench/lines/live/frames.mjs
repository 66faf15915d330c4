// Frames that the compositor did not draw while the script of the page is blocked 200 ms in every second, beside an empty page
// with one CSS animation that is blocked as well.

import { besideBare } from '../../support/beside.mjs';
import { compared, drawn } from '../../support/drawn.mjs';

export default { name: 'lost frames', needs: ['portal', 'browser'], run };

const SECONDS = 40;
const AT_MOST = 1.1;
/** The two are blocked in turns, so far apart, ms: together they would hold two processors, and draw on none. */
const APART = 500;

async function run() {
  return besideBare({}, async (...both) => {
    await Promise.all(both.map(({ page }, i) => page.evaluate(blockEverySecond, i * APART)));
    const [stage, bare] = await Promise.all(both.map((one) => drawn(one, SECONDS)));
    return compared(stage, bare, AT_MOST, `${SECONDS} s, blocked 200 ms in every second, the two in turns:`);
  });
}

/** Runs in a page: blocks its script `at` ms after each full second of the machine's time. */
function blockEverySecond(at) {
  const block = () => { for (const since = performance.now(); performance.now() - since < 200;); };
  setTimeout(() => { setInterval(block, 1_000); }, (at - (Date.now() % 1_000) + 1_000) % 1_000);
}
