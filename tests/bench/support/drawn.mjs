// Which frames of a page that moves its compositor drew.

/** Frames of a second. */
const SECOND = 60;
/** Losses up to this share of what was due come and go by chance on both pages: they are not told apart. */
const CHANCE = 0.001;
/** When the page beside it loses more than this share itself, the machine is too busy to tell. */
const NOISY = 0.1;

/**
 * Watches the frames of a browser's one page that moves, for so many seconds.
 *
 * @returns `{due, lost, bySecond}`: how many frames the display asked for from the first drawn to the last, how many of them were not
 *   drawn, and how many of those in each second: what differs only one way is seldom chance
 */
export async function drawn({ browser, page }, seconds) {
  const cdp = await browser.newBrowserCDPSession();
  const events = [];
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...value));
  const complete = new Promise((resolve) => { cdp.once('Tracing.tracingComplete', resolve); });
  await cdp.send('Tracing.start', { traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline.frame'], excludedCategories: ['*'] }, transferMode: 'ReportEvents' });
  await page.waitForTimeout(seconds * 1000);
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

/** What two pages lost at the same time, of `drawn`: PASS when the first lost at most `most` times what the one beside it did. */
export function compared(page, beside, most, what) {
  const share = ({ lost, due }) => Math.max(lost / due, CHANCE);
  const ratio = share(page) / share(beside);
  const words = ({ lost, due }) => `${lost} of ${due}`;
  const seconds = page.bySecond.map((lost, i) => lost - (beside.bySecond[i] ?? 0));
  const count = (of) => seconds.filter(of).length;
  const text = `${what} ${words(page)} lost, beside it ${words(beside)}; `
    + `of ${seconds.length} seconds ${count((more) => more > 0)} lost more than the page beside it, ${count((more) => more < 0)} fewer; `
    + `ratio of all (one in ${1 / CHANCE} counts as chance) ${ratio.toFixed(2)}, at most ${most}`;
  if (beside.lost > NOISY * beside.due) return { verdict: 'NOISY', text };
  return { verdict: ratio <= most ? 'PASS' : 'SHORT', text };
}
