// How far the desk's preview and the client's dot are apart in time while a set runs over emulated links, and how soon after a
// page has opened its socket its clock is right.

import { atMost, quantile, rms } from '../../support/judge.mjs';
import { LINKS } from '../../support/link.mjs';
import { apart } from '../../support/phases.mjs';
import { lockedAfter, roomZero } from '../../support/replay.mjs';
import { FarSession } from '../../support/far.mjs';
import { NoTun, whyNoTun } from '../../support/tun.mjs';

/** The control: what the apparatus itself makes of pages that have the portal beside them. */
const CONTROL = { link: { label: 'no delay', mid: 0, jitter: 0, loss: 0 }, from: 5_000, lasts: 20_000, most: 0.5 };
/**
 * From when after the pages' clocks have begun they are compared, and for how long, ms; how far they may be apart, ms rms, over so
 * many sets: the packets that happen to be quick in one alone make it half or twice that of another on the poor link.
 */
const NEAR = { link: LINKS.near, from: 30_000, lasts: 60_000, most: 1.0, sets: 1 };
const FAR = { link: LINKS.far, from: 30_000, lasts: 45_000, most: 2.5, sets: 2 };
/** Fresh loads of the desk, each watched for so long, until its clock stays near; ms. */
const LOCK = { link: LINKS.near, loads: 8, watched: 4_000, near: 5, most: 2_500 };

export default { name: 'clocks apart, live', needs: ['portal', 'browser'], run };

async function run({ web }) {
  const reason = whyNoTun();
  if (reason) return { verdict: 'SKIP', text: reason };
  const session = new FarSession();
  try {
    await session.open();
    return await measure(session, (await web('live/clock')).RoomClock);
  } catch (fault) {
    if (fault instanceof NoTun) return { verdict: 'SKIP', text: `no emulated link can be made here: ${fault.message}` };
    throw fault;
  } finally {
    await session.close();
  }
}

async function measure(session, RoomClock) {
  const control = await session.set(CONTROL);
  const { zero, bound } = roomZero(control.desk, RoomClock);
  const results = [
    await part(NEAR, async () => compared(NEAR, await several(session, NEAR))),
    await part(LOCK, async () => locked(await session.loads(LOCK), zero, RoomClock)),
    await part(FAR, async () => compared(FAR, await several(session, FAR))),
  ];
  const off = rms(apart(control, CONTROL.lasts));
  const said = `control without delay ${off.toFixed(2)} ms rms apart, the room's time known to ${bound.toFixed(2)} ms`;
  return results.map(({ verdict, text }) => ({ verdict: off < CONTROL.most ? verdict : 'NOISY', text: `${text}; ${said}` }));
}

/** A part that could not be measured, say because its set was stopped, takes nothing from the others. */
async function part({ link }, measured) {
  return measured().catch((fault) => ({ verdict: 'SHORT', text: `${link.label} each way: could not be measured: ${fault.message}` }));
}

/** One set after the other. @returns the pages of each */
async function several(session, what) {
  const seen = [];
  for (let i = 0; i < what.sets; i++) seen.push(await session.set(what));
  return seen;
}

function compared({ link, lasts, most }, sets) {
  const each = sets.map((pages) => apart(pages, lasts));
  const values = each.flat();
  const sizes = values.map(Math.abs);
  const alone = each.length > 1 ? `, each set alone ${each.map((one) => rms(one).toFixed(2)).join(' and ')}` : '';
  const beside = `p95 ${quantile(sizes, 0.95).toFixed(2)}, most ${Math.max(...sizes).toFixed(2)}, ${values.length} readings in ${sets.length} x ${lasts / 1000} s${alone}`;
  return atMost(rms(values), most, ' ms', `${link.label} each way, desk and stage apart by, rms (${beside}):`);
}

function locked(pages, zero, RoomClock) {
  const after = pages.map((page) => lockedAfter(page, zero, LOCK, RoomClock));
  return atMost(Math.max(...after), LOCK.most, ' ms', `${LOCK.link.label} each way, within ${LOCK.near} ms to stay, the slowest of ${after.length} loads (median ${quantile(after, 0.5)}):`);
}
