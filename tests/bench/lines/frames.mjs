// Frames that the compositor did not draw while the script of the page is blocked 200 ms in every second, beside an empty page
// with one CSS animation that is blocked as well.

import { besideBare } from '../support/beside.mjs';

export default { name: 'lost frames', needs: ['portal', 'browser'], run };

const SECONDS = 40;
const AT_MOST = 1.1;
/** Losses up to this share of what was due come and go by chance on both pages: they are not told apart. */
const CHANCE = 0.001;
/** Frames of a second, by which it is said how often the two differed either way: what only one way is seldom is not chance. */
const SECOND = 60;
/** The two are blocked in turns, so far apart, ms: together they would hold two processors, and draw on none. */
const APART = 500;
/** When the bare page loses more than this share itself, the machine is too busy to tell. */
const NOISY = 0.1;

async function run() {
  return besideBare({}, async (...both) => {
    await Promise.all(both.map(({ page }, i) => page.evaluate(blockEverySecond, i * APART)));
    return judge(...await Promise.all(both.map(drawn)));
  });
}

function judge(stage, control) {
  const share = ({ lost, due }) => Math.max(lost / due, CHANCE);
  const ratio = share(stage) / share(control);
  const words = ({ lost, due }) => `${lost} of ${due}`;
  const seconds = stage.bySecond.map((lost, i) => lost - (control.bySecond[i] ?? 0));
  const count = (of) => seconds.filter(of).length;
  const text = `${SECONDS} s, blocked 200 ms in every second, the two in turns: ${words(stage)} lost, beside it ${words(control)}; `
    + `of ${seconds.length} seconds ${count((more) => more > 0)} lost more than the bare page's, ${count((more) => more < 0)} fewer; `
    + `ratio of all (one in ${1 / CHANCE} counts as chance) ${ratio.toFixed(2)}, at most ${AT_MOST}`;
  if (control.lost > NOISY * control.due) return { verdict: 'NOISY', text };
  return { verdict: ratio <= AT_MOST ? 'PASS' : 'SHORT', text };
}

/** Runs in a page: blocks its script `at` ms after each full second of the machine's time. */
function blockEverySecond(at) {
  const block = () => { for (const since = performance.now(); performance.now() - since < 200;); };
  setTimeout(() => { setInterval(block, 1_000); }, (at - (Date.now() % 1_000) + 1_000) % 1_000);
}

/**
 * Watches the frames of a browser's one page that moves.
 *
 * @returns `{due, lost, bySecond}`: how many frames the display asked for from the first drawn to the last, how many of them were not
 *   drawn, and how many of those in each second
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
  const [first, drew] = [Math.min(...numbers), new Set(numbers)];
  const due = Math.max(...numbers) - first + 1;
  const missed = Array.from({ length: due }, (_, i) => i).filter((i) => !drew.has(first + i));
  const bySecond = Array.from({ length: Math.ceil(due / SECOND) }, (_, s) => missed.filter((i) => Math.floor(i / SECOND) === s).length);
  return { due, lost: missed.length, bySecond };
}
