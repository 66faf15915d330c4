// Frames that the compositor did not draw while the script of the page is blocked 200 ms in every second, beside an empty page
// with one CSS animation that is blocked as well.

import { besideBare } from '../support/beside.mjs';

export default { name: 'lost frames', needs: ['portal', 'browser'], run };

const SECONDS = 40;
const AT_MOST = 1.1;
/** Losses up to this share of what was due come and go by chance on both pages: they are not told apart. */
const CHANCE = 0.001;
/** When the bare page loses more than this share itself, the machine is too busy to tell. */
const NOISY = 0.1;

async function run() {
  return besideBare({}, async (...both) => {
    await Promise.all(both.map(({ page }) => page.evaluate(blockEverySecond)));
    return judge(...await Promise.all(both.map(drawn)));
  });
}

function judge(stage, control) {
  const share = ({ lost, due }) => Math.max(lost / due, CHANCE);
  const ratio = share(stage) / share(control);
  const text = `${SECONDS} s, blocked 200 ms in every second: ${stage.lost} of ${stage.due} lost, beside it ${control.lost} of ${control.due}; `
    + `ratio (one in ${1 / CHANCE} counts as chance) ${ratio.toFixed(2)}, at most ${AT_MOST}`;
  if (control.lost > NOISY * control.due) return { verdict: 'NOISY', text };
  return { verdict: ratio <= AT_MOST ? 'PASS' : 'SHORT', text };
}

/** Runs in a page. */
function blockEverySecond() {
  setInterval(() => { for (const since = performance.now(); performance.now() - since < 200;); }, 1_000);
}

/**
 * Watches the frames of a browser's one page that moves.
 *
 * @returns `{due, lost}`: how many frames the display asked for from the first drawn to the last, and how many of them were not drawn
 */
async function drawn({ browser, page }) {
  const cdp = await browser.newBrowserCDPSession();
  const events = [];
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...value));
  const complete = new Promise((resolve) => { cdp.once('Tracing.tracingComplete', resolve); });
  await cdp.send('Tracing.start', { traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline.frame'], excludedCategories: ['*'] }, transferMode: 'ReportEvents' });
  await page.waitForTimeout(SECONDS * 1000);
  await cdp.send('Tracing.end');
  await complete;
  await cdp.detach();
  const byTree = new Map();
  for (const { name, pid, args } of events) {
    if (name !== 'DrawFrame') continue;
    const tree = `${pid} ${args.layerTreeId}`;
    byTree.set(tree, [...(byTree.get(tree) ?? []), args.frameSeqId]);
  }
  const [numbers] = [...byTree.values()].sort((a, b) => b.length - a.length);
  const due = Math.max(...numbers) - Math.min(...numbers) + 1;
  return { due, lost: due - new Set(numbers).size };
}
